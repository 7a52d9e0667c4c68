# One fit by R: lme4 (Bates et al. 2015) or survival. Writes the columns it used, as raw numbers,
# for the other side to read, and what it found and needed.
#
#   Rscript fits.R CASE FOLDER [--animal]
#
# The time is that of the plain call. What is compared comes from a second fit with the optimiser's
# tolerance tightened, as the plain one stops early; of a million records only the plain one.
suppressMessages(library(lme4))
arguments <- commandArgs(TRUE)
case <- arguments[1]
folder <- arguments[2]
with_animal <- "--animal" %in% arguments
set.seed(20260613)

tight <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-12, maxfun = 1e5),
                     calc.derivs = FALSE)

put <- function(column, values) {
    file <- file(file.path(folder, paste0(case, ".", column)), "wb")
    if (is.factor(values)) {
        codes <- as.integer(values) - 1L
        codes[is.na(codes)] <- -1L
        writeBin(codes, file, size = 4L)
    } else {
        values[is.na(values)] <- NaN
        writeBin(as.double(values), file, size = 8L)
    }
    close(file)
}

found <- character()
say <- function(what, values) {
    found <<- c(found, paste(c(what, sprintf("%.12g", values)), collapse = " "))
}

# Seconds of processor time, which other programs do not lengthen.
busy <- function(times) times[["user.self"]] + times[["sys.self"]]

# Seconds of a call: the median of several where it is short.
seconds <- function(call) {
    once <- function() { gc(); busy(system.time(call())) }
    first <- once()
    if (first > 5) return(first)
    inner <- max(1, floor(0.05 / max(first, 1e-3)))
    repeated <- function() for (i in seq_len(inner)) call()
    median(replicate(5, { gc(); busy(system.time(repeated())) / inner }))
}

peak_megabytes <- function() {
    status <- readLines("/proc/self/status")
    as.numeric(gsub("[^0-9]", "", grep("^VmHWM", status, value = TRUE))) / 1024
}

say_fit <- function(model, terms) {
    covariances <- VarCorr(model)
    values <- c()
    predictions <- c()
    for (term in terms) {
        matrix <- covariances[[term]]
        for (row in seq_len(nrow(matrix))) values <- c(values, matrix[row, seq_len(row)])
        frame <- ranef(model, condVar = FALSE)[[sub("[.]1$", "", term)]]
        if (ncol(frame) > nrow(matrix)) frame <- frame[, rownames(matrix), drop = FALSE]
        predictions <- c(predictions, t(as.matrix(frame)))
    }
    say("criterion", if (isREML(model)) REMLcrit(model) else deviance(model))
    say("variances", c(values, sigma(model)^2))
    say("fixed", fixef(model))
    say("predictions", predictions)
}

# lmer on a data frame; terms in the order in which the other side has them.
compare_lmer <- function(formula, data, terms, tighten = TRUE) {
    kept <- NULL
    say("seconds", seconds(function() kept <<- suppressMessages(suppressWarnings(
        lmer(formula, data)))))
    say("megabytes", peak_megabytes())
    if (tighten) {
        kept <- suppressMessages(suppressWarnings(lmer(formula, data, control = tight)))
    }
    say_fit(kept, terms)
}

put_all <- function(data, columns) for (column in columns) put(column, data[[column]])

ratings <- function(trees, tasters) {
    records <- 1000000L
    tree <- sample.int(trees, records, replace = TRUE)
    taster <- sample.int(tasters, records, replace = TRUE)
    liking <- 5 + rnorm(trees, 0, 0.8)[tree] + rnorm(tasters, 0, 0.5)[taster] + rnorm(records)
    data.frame(liking = liking, tree = factor(tree), taster = factor(taster))
}

cases <- list(
    dyestuff = function() {
        put_all(Dyestuff, c("Yield", "Batch"))
        compare_lmer(Yield ~ 1 + (1 | Batch), Dyestuff, "Batch")
    },
    penicillin = function() {
        put_all(Penicillin, c("diameter", "plate", "sample"))
        compare_lmer(diameter ~ 1 + (1 | plate) + (1 | sample), Penicillin, c("plate", "sample"))
    },
    pastes = function() {
        put_all(Pastes, c("strength", "batch", "sample"))
        compare_lmer(strength ~ 1 + (1 | sample) + (1 | batch), Pastes, c("sample", "batch"))
    },
    sleepstudy = function() {
        put_all(sleepstudy, c("Reaction", "Days", "Subject"))
        compare_lmer(Reaction ~ Days + (Days | Subject), sleepstudy, "Subject")
    },
    cake = function() {
        cake$block <- interaction(cake$recipe, cake$replicate, drop = TRUE)
        put_all(cake, c("angle", "recipe", "temperature", "block"))
        compare_lmer(angle ~ recipe * temperature + (1 | block), cake, "block")
    },
    insteval = function() {
        put_all(InstEval, c("y", "service", "s", "d"))
        compare_lmer(y ~ service + (1 | s) + (1 | d), InstEval, c("s", "d"))
    },
    insteval_three = function() {
        put_all(InstEval, c("y", "service", "s", "d", "dept"))
        compare_lmer(y ~ service + (1 | s) + (1 | d) + (1 | dept), InstEval, c("s", "d", "dept"))
    },
    million = function() {
        data <- ratings(20000, 1000)
        put_all(data, names(data))
        compare_lmer(liking ~ 1 + (1 | tree) + (1 | taster), data, c("tree", "taster"), FALSE)
    },
    million_small = function() {
        data <- ratings(50000, 40)
        put_all(data, names(data))
        compare_lmer(liking ~ 1 + (1 | tree) + (1 | taster), data, c("tree", "taster"), FALSE)
    },
    carrots = function() {
        data(carrots, package = "lmerTest")
        put_all(carrots, c("Preference", "Consumer", "Product"))
        compare_lmer(Preference ~ 1 + (1 | Consumer) + (1 | Product), carrots,
                     c("Consumer", "Product"))
    },
    carrots_product = function() {
        data(carrots, package = "lmerTest")
        put_all(carrots, c("Preference", "Consumer", "Product"))
        compare_lmer(Preference ~ Product + (1 | Consumer), carrots, "Consumer")
    },
    ham = function() {
        data(ham, package = "lmerTest")
        put_all(ham, c("Informed.liking", "Consumer", "Product"))
        compare_lmer(Informed.liking ~ 1 + (1 | Consumer) + (1 | Product), ham,
                     c("Consumer", "Product"))
    },
    ham_pairs = function() {
        data(ham, package = "lmerTest")
        ham$pair <- interaction(ham$Consumer, ham$Product, drop = TRUE)
        put_all(ham, c("Informed.liking", "Consumer", "Product", "Information", "pair"))
        compare_lmer(Informed.liking ~ Product + Information + (1 | pair) + (1 | Consumer), ham,
                     c("pair", "Consumer"))
    }
)

# 150 seedlings over five crop years, one or two lots a year, eight lots a sitting, four tasters.
cases$merit <- function() {
    lots <- expand.grid(genotype = 1:150, year = 1:5)
    lots <- lots[rep(seq_len(nrow(lots)), 1 + rbinom(nrow(lots), 1, 0.4)), ]
    lots <- lots[order(lots$year, runif(nrow(lots))), ]
    lots$lot <- seq_len(nrow(lots))
    lots$sitting <- (lots$lot - 1) %/% 8 + 1
    data <- merge(lots, data.frame(taster = 1:4), by = NULL)
    data <- data[order(data$lot, data$taster), ]
    data <- data[runif(nrow(data)) < 0.7, ]
    season <- interaction(data$genotype, data$year)
    data$season <- factor(season, levels = unique(season))
    data$liking <- 5.5 + rnorm(150, 0, 0.9)[data$genotype] +
        rnorm(nlevels(data$season), 0, 0.5)[as.integer(data$season)] +
        rnorm(nrow(lots), 0, 0.55)[data$lot] + rnorm(4, 0, 0.7)[data$taster] +
        rnorm(max(lots$sitting), 0, 0.4)[data$sitting] + rnorm(nrow(data))
    for (column in c("genotype", "year", "lot", "taster", "sitting"))
        data[[column]] <- factor(data[[column]])
    put_all(data, c("liking", "genotype", "year", "lot", "taster", "sitting"))
    compare_lmer(liking ~ 1 + (1 | genotype) + (1 | season) + (1 | lot) + (1 | taster) +
                     (1 | sitting), data, c("genotype", "season", "lot", "taster", "sitting"))
}

# 40 founders, 149 of their children, 300 families of these, 50,000 seedlings, 300,000 records.
# lme4 knows no pedigree: its Z is multiplied by T D^1/2, where A = T D T'.
cases$animal <- function() {
    parents <- rbind(matrix(NA, 40, 2), t(replicate(149, sample.int(40, 2))))
    families <- t(replicate(300, sample.int(189, 2)))
    parents <- rbind(parents, families[sample.int(300, 50000, replace = TRUE), ])
    members <- nrow(parents)
    known <- !is.na(parents[, 1])
    put("seed", factor(parents[, 1], levels = seq_len(members)))
    put("pollen", factor(parents[, 2], levels = seq_len(members)))
    # Parents are not inbred, so a seedling's own part is half the variance.
    own <- ifelse(known, 0.5, 1)
    lineage <- sparseMatrix(i = rep(which(known), 2), j = c(parents[known, ]), x = 0.5,
                            dims = c(members, members))
    # Three generations: (I - P)^-1 = I + P + P P.
    root <- (Diagonal(members) + lineage + lineage %*% lineage) %*% Diagonal(members, sqrt(own))
    records <- 300000L
    member <- sample.int(50000, records, replace = TRUE) + 189L
    taster <- factor(sample.int(12, records, replace = TRUE), levels = 1:12)
    year <- factor(sample.int(25, records, replace = TRUE), levels = 1:25)
    plant <- factor(member)
    liking <- 5 + as.vector(root %*% rnorm(members, 0, 0.9))[member] +
        rnorm(50189, 0, 0.4)[member] + rnorm(12, 0, 0.5)[taster] + rnorm(25, 0, 0.3)[year] +
        rnorm(records)
    put("liking", liking)
    put("member", factor(member, levels = seq_len(members)))
    put("plant", plant)
    put("taster", taster)
    put("year", year)
    if (!with_animal) return(invisible())
    data <- data.frame(liking, plant, taster, year)
    say("seconds", busy(system.time({
        parts <- lFormula(liking ~ year + (1 | plant) + (1 | taster), data)
        terms <- parts$reTrms
        design <- sparseMatrix(i = member, j = seq_len(records), x = 1,
                               dims = c(members, records))
        terms$Zt <- rbind(t(root) %*% design, terms$Zt)
        levels <- c(members, nlevels(plant), nlevels(taster))
        terms$theta <- c(1, 1, 1)
        terms$lower <- c(0, 0, 0)
        terms$Lind <- rep(1:3, levels)
        terms$Lambdat <- as(as(Diagonal(sum(levels)), "generalMatrix"), "CsparseMatrix")
        terms$Gp <- as.integer(c(0, cumsum(levels)))
        value <- mkLmerDevfun(parts$fr, parts$X, terms, TRUE)
        best <- optimizeLmer(value)
    })))
    say("megabytes", peak_megabytes())
    value(best$par)
    inner <- environment(value)
    scale <- (inner$resp$wrss() + inner$pp$sqrL(1)) / (records - ncol(parts$X))
    say("criterion", best$fval)
    say("variances", c(best$par^2 * scale, scale))
    say("fixed", inner$pp$beta(1))
}

# Keeping life in days, on the log scale: survival regression with normal errors.
compare_survival <- function(low, high, group) {
    library(survival)
    put("low", log(low))
    put("high", log(high))
    put("group", group)
    left <- ifelse(is.finite(low) & low > 0, low, NA)
    right <- ifelse(is.finite(high), high, NA)
    formula <- if (nlevels(group) > 1) {
        Surv(left, right, type = "interval2") ~ group
    } else {
        Surv(left, right, type = "interval2") ~ 1
    }
    call <- function() survreg(formula, dist = "lognormal",
                               control = survreg.control(rel.tolerance = 1e-12, maxiter = 100))
    say("seconds", seconds(call))
    say("megabytes", peak_megabytes())
    fit <- call()
    exact <- is.finite(left) & is.finite(right) & left == right
    # R's likelihood is of days; ours of their logarithms.
    say("criterion", -2 * (fit$loglik[2] + sum(log(left[which(exact)]))))
    say("variances", fit$scale^2)
    say("fixed", coef(fit))
}

cases$keeping <- function() {
    compare_survival(c(7, 10, 14, 14, 21, 21, 28, 28, 35, 21, 42, 42),
                     c(10, 14, 21, 21, 28, 28, 35, 35, 42, Inf, Inf, Inf), factor(rep("all", 12)))
}
cases$keeping_groups <- function() {
    days <- c(12, 15, 18, 21, 21, 25, 30, 30, 20, 26, 31, 35, 40, 42, 42, 42)
    gone <- c(1, 1, 1, 1, 1, 1, 1, 0, 1, 1, 1, 1, 1, 0, 0, 0)
    compare_survival(days, ifelse(gone == 1, days, Inf), factor(rep(c("A", "B"), each = 8)))
}
cases$keeping_many <- function() {
    group <- factor(sample.int(4, 5000, replace = TRUE))
    life <- exp(3 + c(0, 0.2, 0.4, 0.1)[group] + rnorm(5000, 0, 0.4))
    looks <- c(0, 7, 14, 21, 28, 35, 42, Inf)
    at <- findInterval(life, looks)
    compare_survival(looks[at], looks[at + 1], group)
}

if (is.null(cases[[case]])) stop("There is no case named ", case)
cases[[case]]()
writeLines(found, file.path(folder, paste0(case, ".r")))
