#include "tests/bench/against_r/cases.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <exception>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

// Usage: against_r --names            the cases, one a line
//        against_r --heading          the heading of the table
//        against_r CASE FOLDER        one line of it; 1 when a limit is missed, 2 when it failed

namespace pipwright::bench {
namespace {

using Report = std::map<std::string, std::vector<double>>;

/// What R found: a word and its numbers on each line. Empty when R was not asked.
Report readReport(const std::filesystem::path& file) {
    Report report;
    std::ifstream stream(file);
    for (std::string line; std::getline(stream, line);) {
        std::istringstream words(line);
        std::string what;
        words >> what;
        for (double number = 0; words >> number;) {
            report[what].push_back(number);
        }
    }
    return report;
}

double peakMegabytes() {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);) {
        if (line.starts_with("VmHWM:")) {
            return std::strtod(line.c_str() + 6, nullptr) / 1024;
        }
    }
    return 0;
}

/// Seconds of processor time, which other programs do not lengthen.
double busySeconds() {
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

/// Of a call: the median of as many as a second allows, 101 at most.
double seconds(const std::function<Result<MixedFit>()>& call) {
    std::vector<double> times;
    double sum = 0;
    while (times.empty() || (sum < 1 && times.size() < 101)) {
        const double begin = busySeconds();
        const auto fit = call();
        times.push_back(busySeconds() - begin);
        sum += times.back();
    }
    const auto middle = times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2);
    std::nth_element(times.begin(), middle, times.end());
    return *middle;
}

/// The largest difference of two lists, each number over the scale given for it.
template <typename Scale>
double largest(const std::vector<double>& ours, const std::vector<double>& theirs, Scale scale) {
    if (ours.size() != theirs.size()) {
        return std::nan("");
    }
    double worst = 0;
    for (std::size_t i = 0; i < ours.size(); ++i) {
        worst = std::max(worst, std::abs(ours[i] - theirs[i]) / scale(i));
    }
    return worst;
}

struct Differences {
    double criterion = 0;   ///< ours less theirs
    double variances = 0;   ///< relative to each
    double fixed = 0;       ///< in standard errors
    double predictions = 0; ///< in residual standard deviations
};

Differences compare(const MixedFit& fit, const Report& report) {
    const auto theirs = [&](const char* what) {
        const auto found = report.find(what);
        return found == report.end() ? std::vector<double>{} : found->second;
    };
    std::vector<double> variances;
    for (const VarianceComponent& component : fit.varianceComponents()) {
        variances.push_back(component.value);
    }
    std::vector<double> fixed;
    for (const FixedEffect& effect : fit.fixedEffects()) {
        fixed.push_back(effect.estimate);
    }
    std::vector<double> predictions;
    for (const RandomEffects& effects : fit.randomEffects()) {
        predictions.insert(predictions.end(), effects.predictions.begin(),
                           effects.predictions.end());
    }
    const std::vector<double> known = theirs("variances");
    Differences differences;
    differences.criterion = fit.criterion() - theirs("criterion").at(0);
    differences.variances =
        largest(variances, known, [&](std::size_t i) { return std::abs(known[i]); });
    differences.fixed = largest(fixed, theirs("fixed"),
                                [&](std::size_t i) { return fit.fixedEffects()[i].standardError; });
    if (report.contains("predictions")) {
        const double unit = std::sqrt(fit.residualVariance());
        differences.predictions =
            largest(predictions, theirs("predictions"), [unit](std::size_t) { return unit; });
    }
    return differences;
}

void heading() {
    std::printf("%-16s %9s %9s %7s %6s %7s %6s %7s %10s %9s %9s %9s\n", "fit", "R, ms", "ours, ms",
                "ratio", "least", "MB", "most", "R, MB", "criterion", "variances", "fixed",
                "effects");
}

class Row {
  public:
    explicit Row(const std::string& name) { std::printf("%-16s", name.c_str()); }
    void show(int width, int digits, std::optional<double> value) {
        if (value) {
            std::printf(" %*.*f", width, digits, *value);
        } else {
            std::printf(" %*s", width, "-");
        }
    }
    void showSmall(int width, double value) { std::printf(" %*.1e", width, value); }
    void require(bool met, const char* what) {
        if (!met) {
            m_missed += m_missed.empty() ? what : std::string(", ") + what;
        }
    }
    /// Ends the line; 1 when a limit was missed.
    int end() {
        std::printf("%s%s\n", m_missed.empty() ? "" : "   MISSED: ", m_missed.c_str());
        return m_missed.empty() ? 0 : 1;
    }

  private:
    std::string m_missed;
};

void showDifferences(Row& row, const MixedFit& fit, const Report& report, const Limits& limits) {
    const Differences differences = compare(fit, report);
    row.showSmall(10, differences.criterion);
    row.showSmall(9, differences.variances);
    row.showSmall(9, differences.fixed);
    row.showSmall(9, differences.predictions);
    if (limits.criterion) {
        const double high = differences.criterion;
        const double off = limits.onlyBetter ? std::max(0.0, high) : std::abs(high);
        row.require(off <= *limits.criterion, "criterion");
    }
    if (!limits.onlyBetter) {
        row.require(differences.variances <= 1e-4, "variances");
        row.require(differences.fixed <= 1e-3, "fixed effects");
        row.require(differences.predictions <= 1e-3, "effects");
    }
}

int measure(const Case& which, const std::filesystem::path& folder) {
    const auto call = which.prepare(Columns(folder, which.name));
    const auto fit = call();
    if (!fit) {
        std::printf("%-16s FAILED: %s\n", which.name.c_str(), fit.problem().sentence().c_str());
        return 2;
    }
    const double ours = seconds(call);
    const double megabytes = peakMegabytes();
    const Report report = readReport(folder / (which.name + ".r"));
    const bool compared = report.contains("seconds");

    Row row(which.name);
    const auto theirs = [&](const char* what) {
        return compared ? std::optional{report.at(what).at(0)} : std::nullopt;
    };
    const std::optional<double> ratio =
        compared ? std::optional{*theirs("seconds") / ours} : std::nullopt;
    row.show(9, 1, compared ? std::optional{1000 * *theirs("seconds")} : std::nullopt);
    row.show(9, 3, 1000 * ours);
    row.show(7, 1, ratio);
    row.show(6, 0, which.limits.ratio);
    row.show(7, 1, megabytes);
    row.show(6, 0, which.limits.megabytes);
    row.show(7, 0, theirs("megabytes"));
    row.require(fit->converged(), "convergence");
    row.require(!which.limits.seconds || ours <= *which.limits.seconds, "time");
    row.require(!which.limits.megabytes || megabytes <= *which.limits.megabytes, "memory");
    if (compared) {
        row.require(!which.limits.ratio || *ratio >= *which.limits.ratio, "ratio");
        showDifferences(row, *fit, report, which.limits);
    }
    return row.end();
}

int run(const std::vector<std::string>& words) {
    const std::vector<Case> cases = allCases();
    if (words == std::vector<std::string>{"--names"}) {
        for (const Case& each : cases) {
            std::printf("%s\n", each.name.c_str());
        }
        return 0;
    }
    if (words == std::vector<std::string>{"--heading"}) {
        heading();
        return 0;
    }
    for (const Case& each : cases) {
        if (words.size() == 2 && each.name == words[0]) {
            return measure(each, words[1]);
        }
    }
    std::fprintf(stderr, "usage: against_r --names | --heading | CASE FOLDER\n");
    return 2;
}

} // namespace
} // namespace pipwright::bench

int main(int argc, char** argv) {
    try {
        return pipwright::bench::run(std::vector<std::string>(argv + 1, argv + argc));
    } catch (const std::exception& fault) {
        std::fprintf(stderr, "against_r: %s\n", fault.what());
        return 2;
    }
}
