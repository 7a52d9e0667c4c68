#include "ui/tree/life_marks.h"

#include "core/orchard/dictionary.h"
#include "ui/book/book_words.h"
#include "ui/book/orchard_words.h"
#include "ui/tree/tree_facts.h"
#include "ui/widgets/number_text.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <map>

namespace pipwright::ui {

namespace {

struct LifeWords {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::LifeWords)
};

LifeMark markOf(const TastedLot& tasted) {
    LifeMark mark;
    mark.shape = tasted.fairness.fair()    ? LifeMark::Shape::fair
                 : tasted.fairness.unclear ? LifeMark::Shape::unclear
                                           : LifeMark::Shape::unfair;
    mark.date = tasted.tasting.date;
    mark.liking = tasted.meanLiking();
    for (const Score& score : tasted.scores) {
        if (score.liking) {
            mark.lowest = std::min(mark.lowest.value_or(*score.liking), *score.liking);
            mark.highest = std::max(mark.highest.value_or(*score.liking), *score.liking);
        }
    }
    const QString liking =
        !mark.liking ? LifeWords::tr("tasted, no liking given")
        : *mark.lowest == *mark.highest
            ? LifeWords::tr("liked %1 of 9 as eaten").arg(numberText(*mark.liking, 1))
            : LifeWords::tr("liked %1 of 9 as eaten, scores from %2 to %3")
                  .arg(numberText(*mark.liking, 1), numberText(*mark.lowest, 1),
                       numberText(*mark.highest, 1));
    mark.words = LifeWords::tr("%1: %2; %3; %4")
                     .arg(dateText(mark.date), liking, conditionWords(tasted.lot),
                          fairnessWords(tasted.fairness));
    return mark;
}

std::optional<LifeMark> markOf(const OrchardView& view, const Observation& one) {
    const Trait* trait = view.trait(one.trait);
    if (trait == nullptr || !one.date) {
        return std::nullopt;
    }
    LifeMark mark;
    mark.date = one.valueDate.value_or(*one.date);
    if (trait->topic == "bloom") {
        mark.shape = LifeMark::Shape::bloom;
    } else if (trait->topic == "disease") {
        mark.shape = LifeMark::Shape::disease;
    } else if (trait->key == trait_key::kDrop) {
        if (one.state == shippedStateId(trait_key::kDrop, "none")) {
            return std::nullopt;
        }
        mark.shape = LifeMark::Shape::drop;
    } else if (trait->key == trait_key::kNote) {
        mark.shape = LifeMark::Shape::note;
        mark.words = LifeWords::tr("%1: noted: %2")
                         .arg(dayWords(one), QString::fromStdString(one.words).simplified());
        return mark;
    } else {
        return std::nullopt;
    }
    mark.words =
        LifeWords::tr("%1: %2 %3").arg(dayWords(one), traitName(*trait), valueWords(view, one));
    return mark;
}

LifeMark markOf(const Decision& decision) {
    LifeMark mark;
    mark.shape = LifeMark::Shape::decision;
    mark.date = decision.date;
    mark.words =
        LifeWords::tr("%1: decided \"%2\"").arg(dateText(decision.date), stageWord(decision.stage));
    if (!decision.reason.empty()) {
        mark.words += QStringLiteral(", ") + QString::fromStdString(decision.reason);
    }
    return mark;
}

LifeMark markOf(const GraftedOrder& grafted) {
    LifeMark mark;
    mark.shape = LifeMark::Shape::graft;
    mark.date = *grafted.order.date;
    mark.words =
        LifeWords::tr("%1: %n graft(s), %2", nullptr, static_cast<int>(grafted.order.number))
            .arg(dateText(mark.date), graftMethodWord(grafted.order.method));
    if (!grafted.order.ontoWords.empty()) {
        mark.words +=
            LifeWords::tr(" onto %1").arg(QString::fromStdString(grafted.order.ontoWords));
    }
    if (!grafted.checks.empty()) {
        mark.words += LifeWords::tr("; %1 alive at the last look").arg(grafted.checks.back().alive);
    }
    return mark;
}

} // namespace

QString windowWords(const ObservedWindow& window) {
    QStringList words;
    if (window.stillGreen) {
        words << LifeWords::tr("still green on %1").arg(dateText(*window.stillGreen));
    }
    if (window.firstRipe) {
        words << (window.lastRipe && *window.lastRipe != *window.firstRipe
                      ? LifeWords::tr("seen ripe %1 to %2")
                            .arg(dateText(*window.firstRipe), dateText(*window.lastRipe))
                      : LifeWords::tr("seen ripe on %1").arg(dateText(*window.firstRipe)));
        if (!window.stillGreen) {
            words << LifeWords::tr("its beginning was not seen");
        }
    }
    if (window.over) {
        words << LifeWords::tr("over by %1").arg(dateText(*window.over));
    } else if (window.firstRipe) {
        words << LifeWords::tr("its end was not seen");
    }
    return words.join(QStringLiteral(", "));
}

std::vector<LifeLane> lifeLanes(const TreeFacts& facts) {
    std::map<int, LifeLane, std::greater<>> lanes;
    const auto lane = [&lanes](int year) -> LifeLane& {
        LifeLane& one = lanes[year];
        one.cropYear = year;
        return one;
    };
    const TraitId load = shippedTraitId(trait_key::kCropLoad);
    for (const LifeYear& year : facts.life.years) {
        LifeLane& one = lane(year.cropYear);
        one.window = year.window;
        one.windowWords = windowWords(year.window);
        for (const Observation& seen : year.observations) {
            if (seen.trait == load) {
                one.cropLoad = valueWords(*facts.view, seen);
            } else if (auto mark = markOf(*facts.view, seen)) {
                one.marks.push_back(std::move(*mark));
            }
        }
        for (const TastedLot& tasted : year.tastings) {
            one.marks.push_back(markOf(tasted));
        }
        for (const Decision& decision : year.decisions) {
            one.marks.push_back(markOf(decision));
        }
    }
    for (const GraftedOrder& grafted : facts.life.orders) {
        if (grafted.order.date) {
            lane(grafted.order.date->year()).marks.push_back(markOf(grafted));
        }
    }
    std::vector<LifeLane> newestFirst;
    for (auto& [year, one] : lanes) {
        const bool says = !one.marks.empty() || !one.window.empty() || !one.cropLoad.isEmpty();
        if (!says) {
            continue; // other observations stand in the list below
        }
        std::stable_sort(one.marks.begin(), one.marks.end(),
                         [](const LifeMark& a, const LifeMark& b) { return a.date < b.date; });
        newestFirst.push_back(std::move(one));
    }
    return newestFirst;
}

} // namespace pipwright::ui
