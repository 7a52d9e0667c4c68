#include "ui/tree/tree_words.h"

#include "core/history/edits.h"
#include "core/orchard/fruit_traits.h"
#include "ui/book/book_words.h"
#include "ui/book/orchard_words.h"
#include "ui/tree/fruit_words.h"
#include "ui/tree/life_marks.h"
#include "ui/tree/tree_facts.h"
#include "ui/widgets/number_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace pipwright::ui {

namespace {

struct TreeWords {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::TreeWords)
};

template <typename Thing>
Voiding voidingOf(const Thing& thing, const QString& what) {
    return {what, [thing, what](const std::string& reason) {
                return voided(thing, reason, what.toStdString());
            }};
}

QString scoreLine(const OrchardView& view, const Score& score) {
    QString line = personWords(view, score.taster);
    if (score.liking) {
        line += QLatin1Char(' ') + numberText(*score.liking, 1);
    }
    if (score.verdict != Verdict::unknown) {
        line += QStringLiteral(", ") + verdictWord(score.verdict);
    }
    if (!score.words.empty()) {
        line += QStringLiteral(": ") + QString::fromStdString(score.words);
    }
    return line;
}

/// What was measured on the fruit of a lot, and what follows from it.
QStringList measuredLines(const OrchardView& view, const TastedLot& tasted) {
    static constexpr std::array kMeasured = {trait_key::kSolubleSolids, trait_key::kAcidity,
                                             trait_key::kFirmness, trait_key::kStarchEight,
                                             trait_key::kStarchTen};
    const std::vector<FruitDay> days = fruitDays(tasted.intensities);
    QStringList lines;
    for (const Observation& one : tasted.intensities) {
        const Trait* trait = one.voidReason.empty() ? view.trait(one.trait) : nullptr;
        if (trait == nullptr ||
            std::find(kMeasured.begin(), kMeasured.end(), trait->key) == kMeasured.end()) {
            continue;
        }
        lines << TreeWords::tr("%1: %2", "trait, value")
                     .arg(traitName(*trait), valueWords(view, one));
        lines << fruitLines(one, days);
    }
    return lines;
}

RecordWords wordsOf(const OrchardView& view, const TastedLot& tasted) {
    RecordWords words;
    words.heading = dateText(tasted.tasting.date);
    const auto liking = tasted.meanLiking();
    if (liking) {
        words.heading += TreeWords::tr(" · %1 as eaten").arg(numberText(*liking, 1));
        IntervalDot dot;
        dot.value = *liking;
        dot.uncertain = !tasted.fairness.fair();
        for (const Score& score : tasted.scores) {
            if (score.liking) {
                dot.low = std::min(dot.low.value_or(*score.liking), *score.liking);
                dot.high = std::max(dot.high.value_or(*score.liking), *score.liking);
            }
        }
        words.dot = dot;
    }
    if (!tasted.tasting.title.empty()) {
        words.heading += QStringLiteral(" · ") + QString::fromStdString(tasted.tasting.title);
    }
    words.quiet << conditionWords(tasted.lot) + QStringLiteral("; ") +
                       fairnessWords(tasted.fairness);
    words.lines << measuredLines(view, tasted);
    words.lot = KeptLot{tasted.lot, tasted.tasting.date};
    for (const Score& score : tasted.scores) {
        words.lines << scoreLine(view, score);
        words.voidings.push_back(voidingOf(
            score, TreeWords::tr("the score of %1 of %2")
                       .arg(personWords(view, score.taster), dateText(tasted.tasting.date))));
    }
    return words;
}

struct Dated {
    Date day;
    RecordWords words;
};

Dated datedOf(const OrchardView& view, const Observation& one, std::span<const FruitDay> days) {
    const Trait* trait = view.trait(one.trait);
    const QString name = trait != nullptr ? traitName(*trait) : TreeWords::tr("observation");
    RecordWords words;
    const QString who =
        one.person ? QStringLiteral(" · ") + personWords(view, one.person) : QString();
    words.heading = dayWords(one) + QStringLiteral(" · ") + name;
    if (one.words.empty()) {
        words.heading += QStringLiteral(": ") + valueWords(view, one) + who;
    } else {
        words.heading += who;
        words.lines << valueWords(view, one);
    }
    if (!one.instrument.empty()) {
        words.quiet << TreeWords::tr("with %1").arg(QString::fromStdString(one.instrument));
    }
    words.lines << fruitLines(one, days);
    words.voidings.push_back(
        voidingOf(one, TreeWords::tr("the %1 of %2").arg(name, dayWords(one))));
    return {one.date.value_or(Date()), std::move(words)};
}

Dated datedOf(const OrchardView& view, const Decision& one) {
    RecordWords words;
    words.heading = TreeWords::tr("%1 · decided: %2").arg(dateText(one.date), stageWord(one.stage));
    if (one.person) {
        words.heading += QStringLiteral(" · ") + personWords(view, one.person);
    }
    if (!one.reason.empty()) {
        words.lines << QString::fromStdString(one.reason);
    }
    words.voidings.push_back(
        voidingOf(one, TreeWords::tr("the decision of %1").arg(dateText(one.date))));
    return {one.date, std::move(words)};
}

Dated datedOf(const OrchardView& view, const GraftWish& one) {
    RecordWords words;
    const QString state = one.state == WishState::open      ? TreeWords::tr("open")
                          : one.state == WishState::ordered ? TreeWords::tr("ordered")
                          : one.state == WishState::done    ? TreeWords::tr("done")
                          : one.state == WishState::dropped ? TreeWords::tr("dropped")
                                                            : TreeWords::tr("state not known");
    words.heading =
        TreeWords::tr("%1 · %n graft(s) wished, %2", nullptr, static_cast<int>(one.number))
            .arg(one.wished ? dateText(*one.wished) : TreeWords::tr("no date"), state);
    words.lines << QString::fromStdString(one.reason);
    if (one.person) {
        words.lines << personWords(view, one.person);
    }
    words.lines.removeAll(QString());
    return {one.wished.value_or(Date()), std::move(words)};
}

Dated datedOf(const GraftedOrder& one) {
    RecordWords words;
    words.heading =
        TreeWords::tr("%1 · %n graft(s), %2", nullptr, static_cast<int>(one.order.number))
            .arg(one.order.date ? dateText(*one.order.date)
                                : QString::fromStdString(one.order.season),
                 graftMethodWord(one.order.method));
    if (!one.order.ontoWords.empty()) {
        words.lines << TreeWords::tr("onto %1").arg(QString::fromStdString(one.order.ontoWords));
    }
    for (const GraftCheck& check : one.checks) {
        words.lines << TreeWords::tr("%1: %2 alive %3")
                           .arg(check.date ? dateText(*check.date) : TreeWords::tr("no date"))
                           .arg(check.alive)
                           .arg(QString::fromStdString(check.cause));
    }
    return {one.order.date.value_or(Date()), std::move(words)};
}

} // namespace

std::vector<RecordWords> tastingWords(const TreeFacts& facts) {
    std::vector<RecordWords> all;
    for (auto tasted = facts.life.tastings.rbegin(); tasted != facts.life.tastings.rend();
         ++tasted) {
        all.push_back(wordsOf(*facts.view, *tasted));
    }
    return all;
}

std::vector<RecordWords> seenWords(const TreeFacts& facts) {
    std::vector<Dated> dated;
    const std::vector<FruitDay> days = fruitDays(facts.life.observations);
    for (const Observation& one : facts.life.observations) {
        dated.push_back(datedOf(*facts.view, one, days));
    }
    for (const Decision& one : facts.life.decisions) {
        dated.push_back(datedOf(*facts.view, one));
    }
    for (const GraftWish& one : facts.life.wishes) {
        dated.push_back(datedOf(*facts.view, one));
    }
    for (const GraftedOrder& one : facts.life.orders) {
        dated.push_back(datedOf(one));
    }
    std::stable_sort(dated.begin(), dated.end(),
                     [](const Dated& a, const Dated& b) { return a.day > b.day; });
    std::vector<RecordWords> words;
    words.reserve(dated.size());
    for (Dated& one : dated) {
        words.push_back(std::move(one.words));
    }
    return words;
}

} // namespace pipwright::ui
