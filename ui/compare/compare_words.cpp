#include "ui/compare/compare_words.h"

#include "core/evaluation/usual_ripening.h"
#include "core/orchard/dictionary.h"
#include "ui/book/book_words.h"
#include "ui/book/orchard_words.h"
#include "ui/widgets/number_text.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

struct CompareTexts {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::Compare)
};

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

/// A day of the crop year in the calendar of a year: "14 Aug".
QString dayWords(int calendarYear, int day) {
    const Date date = dateInCalendar(day, calendarYear);
    return CompareTexts::tr("%1 %2", "day and month")
        .arg(date.day())
        .arg(monthText(static_cast<int>(date.month())));
}

QString meanWords(const ComparedTrait& mean, int decimals, const QString& unit) {
    // Values without any spread do not make a mean certain: then n alone speaks.
    const bool spread = mean.standardError && *mean.standardError > 0;
    return doubtText(mean.mean, spread ? mean.standardError : std::nullopt, decimals, unit);
}

QString groundWords(const ScoreGround& ground, bool fair) {
    const QString scores = fair
                               ? CompareTexts::tr("%n fair score(s)", nullptr, ground.scores)
                               : CompareTexts::tr("%n score(s), none fair", nullptr, ground.scores);
    return QStringLiteral("%1, %2, %3")
        .arg(scores, CompareTexts::tr("%n taster(s)", nullptr, ground.tasters),
             CompareTexts::tr("%n crop year(s)", nullptr, ground.cropYears));
}

int decimalsFor(double value) {
    return std::abs(value) >= 20 ? 0 : 1;
}

QString stateName(const OrchardView& view, TraitId trait, std::int64_t rank) {
    for (const TraitState* state : view.statesOf(trait)) {
        if (state->rank == rank) {
            return traitStateName(*state);
        }
    }
    return QString::number(rank);
}

/// States as often as they were seen: "yellow (3), green (1)".
QString countedStates(const OrchardView& view, const ComparedTrait& compared) {
    std::vector<std::pair<std::int64_t, int>> seen(compared.states.begin(), compared.states.end());
    std::stable_sort(seen.begin(), seen.end(),
                     [](const auto& a, const auto& b) { return a.second > b.second; });
    QStringList parts;
    for (const auto& [rank, times] : seen) {
        parts << QStringLiteral("%1 (%2)").arg(stateName(view, compared.trait, rank)).arg(times);
    }
    return parts.join(QStringLiteral(", "));
}

QString ordinalWords(const OrchardView& view, const ComparedTrait& compared) {
    const auto nearest = static_cast<std::int64_t>(std::lround(compared.mean));
    const QString mean = QStringLiteral("%1: %2").arg(stateName(view, compared.trait, nearest),
                                                      meanWords(compared, 1, {}));
    const QString low =
        stateName(view, compared.trait, static_cast<std::int64_t>(std::lround(compared.lowest)));
    const QString high =
        stateName(view, compared.trait, static_cast<std::int64_t>(std::lround(compared.highest)));
    if (low == high) {
        return CompareTexts::tr("%1 (n = %2)").arg(mean).arg(compared.count);
    }
    return CompareTexts::tr("%1 (%2 to %3, n = %4)").arg(mean, low, high).arg(compared.count);
}

} // namespace

QString headWords(const OrchardView& view, const ComparedGenotype& column) {
    const GenotypeEntry& entry = view.genotypes()[column.genotype];
    QStringList parts;
    if (!entry.name.empty() && entry.code != entry.name) {
        parts << text(entry.code);
    }
    if (entry.benchmark) {
        parts << CompareTexts::tr("benchmark");
    }
    if (entry.stage != Stage::unknown) {
        parts << (entry.stageSince ? CompareTexts::tr("%1 since %2")
                                         .arg(stageWord(entry.stage), dateText(*entry.stageSince))
                                   : stageWord(entry.stage));
    }
    if (column.plant) {
        const QString place = text(view.placeText(*column.plant, false));
        if (!place.isEmpty()) {
            parts << CompareTexts::tr("stands at %1").arg(place);
        }
    }
    return text(entry.called()) + QLatin1Char('\n') + parts.join(QStringLiteral(" · "));
}

QString pedigreeWords(const OrchardView& view, const ComparedGenotype& column) {
    const QString parents = crossWords(view, column.genotype);
    const QString purdy = text(column.purdy);
    if (parents.isEmpty() || parents == QStringLiteral("? x ?")) {
        return CompareTexts::tr("parents not known");
    }
    const bool tellsMore = purdy.count(QLatin1Char('/')) > 1; // than the parents alone
    return tellsMore ? parents + QLatin1Char('\n') + purdy : parents;
}

QString windowWords(const ComparedGenotype& column, int calendarYear) {
    const ComparedSeason& season = column.season;
    const auto ripe = std::count_if(season.windows.begin(), season.windows.end(),
                                    [](const auto& one) { return one.firstRipe.has_value(); });
    if (ripe == 0 || !season.usualFirst) {
        return season.windows.empty()
                   ? CompareTexts::tr("never walked: a walk mark (W) at the tree starts it")
                   : CompareTexts::tr("never yet seen ripe");
    }
    const QString first = dayWords(calendarYear, *season.usualFirst);
    const QString last = dayWords(calendarYear, season.usualLast.value_or(*season.usualFirst));
    QString words = first == last ? CompareTexts::tr("ripe about %1").arg(first)
                                  : CompareTexts::tr("usually ripe %1 to %2").arg(first, last);
    words +=
        CompareTexts::tr(", from week %1").arg(harvestWeekIn(*season.usualFirst, calendarYear));
    words += CompareTexts::tr(" (%n crop year(s))", nullptr, static_cast<int>(ripe));
    return words;
}

QString windowYearWords(const ComparedGenotype& column) {
    QStringList lines;
    for (const ComparedWindow& window : column.season.windows) {
        const auto day = [&window](int one) { return dayWords(window.cropYear, one); };
        QString seen;
        if (!window.firstRipe) {
            seen = window.stillGreen
                       ? CompareTexts::tr("still green on %1").arg(day(*window.stillGreen))
                       : CompareTexts::tr("not seen ripe");
        } else if (window.over) {
            seen = CompareTexts::tr("ripe from %1, over by %2")
                       .arg(day(*window.firstRipe), day(*window.over));
        } else if (window.lastRipe && *window.lastRipe != *window.firstRipe) {
            seen = CompareTexts::tr("ripe from %1 to %2, its end not seen")
                       .arg(day(*window.firstRipe), day(*window.lastRipe));
        } else {
            seen = CompareTexts::tr("ripe on %1, its end not seen").arg(day(*window.firstRipe));
        }
        lines << CompareTexts::tr("%1: %2", "crop year, what was seen")
                     .arg(window.cropYear)
                     .arg(seen);
    }
    return lines.join(QLatin1Char('\n'));
}

QString likingWords(const ComparedGenotype& column) {
    if (column.fairLiking) {
        return QStringLiteral("%1 (%2)").arg(meanWords(*column.fairLiking, 1, {}),
                                             groundWords(column.fairGround, true));
    }
    if (column.anyLiking) {
        return CompareTexts::tr("no fair score yet; %1 from %2")
            .arg(meanWords(*column.anyLiking, 1, {}), groundWords(column.anyGround, false));
    }
    return CompareTexts::tr("not tasted yet");
}

QString keepingWords(const ComparedGenotype& column) {
    QStringList lines;
    if (const ComparedTrait* good = traitOf(column, shippedTraitId(trait_key::kDaysGood))) {
        lines << CompareTexts::tr("stays good %1 off the tree (n = %2)")
                     .arg(meanWords(*good, 0, CompareTexts::tr("d", "days")))
                     .arg(good->count);
    }
    const ComparedKeeping& keeping = column.keeping;
    if (keeping.liking) {
        const QString longest = CompareTexts::tr("up to %n day(s)", nullptr, *keeping.longestDays);
        lines << CompareTexts::tr("kept more than %1 days: %2 (%3, %4)")
                     .arg(kFairDays)
                     .arg(meanWords(*keeping.liking, 1, {}),
                          CompareTexts::tr("%n score(s)", nullptr, keeping.liking->count),
                          keeping.longestPath == StoragePath::unknown
                              ? longest
                              : longest + QStringLiteral(", ") + storageWord(keeping.longestPath));
    } else if (lines.isEmpty()) {
        lines << CompareTexts::tr("not yet tasted after more than %1 days off the tree")
                     .arg(kFairDays);
    }
    return lines.join(QLatin1Char('\n'));
}

QString traitWords(const OrchardView& view, const ComparedTrait& compared) {
    const Trait* trait = view.trait(compared.trait);
    if (trait == nullptr) {
        return {};
    }
    if (trait->scale == ScaleKind::nominal) {
        return countedStates(view, compared);
    }
    if (!compared.states.empty()) {
        return ordinalWords(view, compared);
    }
    const int decimals = decimalsFor(compared.mean);
    const QString mean = meanWords(compared, decimals, text(trait->unit));
    if (compared.count == 1) {
        return CompareTexts::tr("%1 (n = 1)").arg(mean);
    }
    return CompareTexts::tr("%1 (%2 to %3, n = %4)")
        .arg(mean, numberText(compared.lowest, decimals), numberText(compared.highest, decimals))
        .arg(compared.count);
}

QString evidenceWords(const ComparedGenotype& column) {
    const GenotypeFacts& facts = column.facts;
    if (facts.lots == 0) {
        return CompareTexts::tr("no lot tasted");
    }
    const QStringList parts = {
        CompareTexts::tr("%1 fair of %n lot(s)", nullptr, facts.lots).arg(facts.fairLots),
        CompareTexts::tr("%n crop year(s)", nullptr, column.anyGround.cropYears),
        CompareTexts::tr("%n sitting(s)", nullptr, column.anyGround.sittings),
        CompareTexts::tr("%n taster(s)", nullptr, column.anyGround.tasters)};
    return parts.join(QStringLiteral(", "));
}

QString saidWords(const ComparedGenotype& column) {
    QStringList parts;
    for (const SaidWords& one : column.said) {
        parts << (one.times > 1 ? QStringLiteral("%1 (%2)").arg(text(one.words)).arg(one.times)
                                : text(one.words));
    }
    return parts.isEmpty() ? QStringLiteral("–") : parts.join(QStringLiteral(", "));
}

QString differenceWords(const std::optional<MeanDifference>& difference, const QString& unit,
                        const QString& reference) {
    if (!difference || !difference->beyondDoubt) {
        return {};
    }
    const double size = std::abs(difference->difference);
    const QString amount = doubtText(size, difference->standardError, decimalsFor(size), unit);
    return difference->difference > 0 ? CompareTexts::tr("▲ %1 above %2").arg(amount, reference)
                                      : CompareTexts::tr("▼ %1 below %2").arg(amount, reference);
}

QString traitTitle(const Trait& trait) {
    const QString name =
        trait.unit.empty()
            ? traitName(trait)
            : CompareTexts::tr("%1, %2", "trait, unit").arg(traitName(trait), text(trait.unit));
    switch (trait.direction) {
    case Direction::higherIsBetter:
        return CompareTexts::tr("%1\n(more is better)").arg(name);
    case Direction::lowerIsBetter:
        return CompareTexts::tr("%1\n(less is better)").arg(name);
    default:
        return name;
    }
}

QString topicTitle(const std::string& topic) {
    if (topic == "fruit") {
        return CompareTexts::tr("Fruit");
    }
    if (topic == "taste") {
        return CompareTexts::tr("In the mouth");
    }
    if (topic == "disease") {
        return CompareTexts::tr("Disease");
    }
    if (topic == "tree") {
        return CompareTexts::tr("Tree");
    }
    return topic.empty() ? CompareTexts::tr("Other traits") : text(topic);
}

QString legendWords() {
    return CompareTexts::tr(
        "▲ ▼: the mean differs from that of the first column by more than two standard errors of "
        "the difference (three values or more on both sides), as eaten, not yet adjusted for "
        "taster and condition. ± is one standard error. Usual is the median of the crop years; "
        "its days and weeks are those of this year's calendar.");
}

const ComparedTrait* traitOf(const ComparedGenotype& column, TraitId trait) {
    const auto found = std::find_if(column.traits.begin(), column.traits.end(),
                                    [&trait](const auto& one) { return one.trait == trait; });
    return found == column.traits.end() ? nullptr : &*found;
}

} // namespace pipwright::ui
