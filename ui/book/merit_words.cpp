#include "ui/book/merit_words.h"

#include "core/evaluation/usual_ripening.h"
#include "ui/book/orchard_words.h"
#include "ui/widgets/number_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include <array>

namespace pipwright::ui {

namespace {

struct MeritTexts {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::MeritWords)
};

/// Keys of conditionClasses(), for the translators.
[[maybe_unused]] constexpr std::array kStates = {
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "picked early"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "dropped today"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "on the ground longer"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "shaken"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "origin unknown"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "insect"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "bird"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "split"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "rot"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "paper bag"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "cloth bag"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "clear bag"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "green"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "getting there"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "early prime"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "late prime"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "on its way out"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "gone"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "ripeness unknown"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "storage unknown"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "sunny side"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "inside"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "low"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "lone fruit"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "light crop"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "heavy crop"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "first crop"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "second crop"),
    QT_TRANSLATE_NOOP("pipwright::ui::MeritWords", "own seedling, sighted"),
};

QString rungName(const OrchardView& view, const RungOdds& odds) {
    const QString name = QString::fromStdString(view.genotypes()[odds.reference].called());
    return odds.borrowed ? MeritTexts::tr("%1 (of a neighbouring slot)").arg(name) : name;
}

QString betterThan(const OrchardView& view, const RungOdds& odds) {
    return MeritTexts::tr("better than %1: %2").arg(rungName(view, odds), chanceText(odds.above));
}

QString figureWords(FaultKind kind, double figure) {
    return kind == FaultKind::split ? chanceText(figure)
           : kind == FaultKind::shortKeeping
               ? MeritTexts::tr("%n day(s)", nullptr, static_cast<int>(figure))
               : numberText(figure, 1);
}

} // namespace

QString suggestionWord(Suggestion suggestion) {
    switch (suggestion) {
    case Suggestion::notEnoughYet:
        return MeritTexts::tr("not enough yet");
    case Suggestion::cull:
        return MeritTexts::tr("cull");
    case Suggestion::again:
        return MeritTexts::tr("taste again");
    case Suggestion::watch:
        return MeritTexts::tr("watch");
    case Suggestion::backUpNow:
        return MeritTexts::tr("back up now");
    case Suggestion::nameTalk:
        return MeritTexts::tr("talk of a name");
    case Suggestion::parentOnly:
        return MeritTexts::tr("parent only");
    case Suggestion::none:
        break;
    }
    return MeritTexts::tr("decided");
}

QString lackWords(LadderLack lack) {
    switch (lack) {
    case LadderLack::none:
        return {};
    case LadderLack::noLadders:
        return MeritTexts::tr("The book has no benchmark of its species to beat.");
    case LadderLack::unknownSeason:
        return MeritTexts::tr("Nobody knows when it ripens, so nobody knows what it has to beat: "
                              "mark it ripe on a walk.");
    case LadderLack::outsideSlots:
        return MeritTexts::tr("It ripens outside all slots of the season: cut one for it.");
    case LadderLack::benchmarkUnseen:
        break;
    }
    return MeritTexts::tr("No benchmark of its slot or the slots beside it was ever tasted: taste "
                          "one.");
}

QString reasonWords(const OrchardView& view, const SeedlingVerdict& verdict,
                    const VerdictChoices& choices) {
    const VerdictThresholds& limits = choices.thresholds;
    const RungOdds* floor = verdict.floor ? &*verdict.floor : nullptr;
    const RungOdds* best = verdict.best ? &*verdict.best : nullptr;
    floor = floor == nullptr ? best : floor;
    best = best == nullptr ? floor : best;
    switch (verdict.reason) {
    case SuggestionReason::neverTasted:
        return MeritTexts::tr("It has fruited, but nobody has scored it yet.");
    case SuggestionReason::nothingToBeat:
        return lackWords(verdict.lack);
    case SuggestionReason::noFairLot:
        return MeritTexts::tr("Fair lots: %1 of %2, where %3 are asked for. Taste it at its prime.")
            .arg(verdict.evidence.fairLots)
            .arg(verdict.evidence.lots)
            .arg(limits.fairLots);
    case SuggestionReason::belowFloor:
        return MeritTexts::tr("Worse than %1: %2; from %3 on it may go.")
            .arg(rungName(view, *floor), chanceText(floor->below()),
                 chanceText(limits.cullBelowFloor));
    case SuggestionReason::faulty:
        return MeritTexts::tr("Ruled out: %1. And %2.")
            .arg(faultWords(verdict.faults.front()), betterThan(view, *floor));
    case SuggestionReason::goodButFaulty:
        return MeritTexts::tr("Ruled out: %1. But %2; of use as a parent.")
            .arg(faultWords(verdict.faults.front()), betterThan(view, *floor));
    case SuggestionReason::undecided:
        return MeritTexts::tr("Undecided, %1: too little to watch it, too much to cull it.")
            .arg(betterThan(view, *floor));
    case SuggestionReason::aboveFloor:
        return MeritTexts::tr("Its chance to be %1; from %2 on it is watched.")
            .arg(betterThan(view, *floor), chanceText(limits.watchAboveFloor));
    case SuggestionReason::aboveBestOneTree:
        return MeritTexts::tr("Its chance to be %1, and one accident would end it.")
            .arg(betterThan(view, *best));
    case SuggestionReason::aboveBestTooFewYears:
        return MeritTexts::tr("Its chance to be %1, but crop years tasted: %2 of %3 asked for.")
            .arg(betterThan(view, *best))
            .arg(verdict.evidence.cropYears)
            .arg(limits.nameCropYears);
    case SuggestionReason::aboveBest:
        return MeritTexts::tr("Its chance to be %1; from %2 on a name is talked of.")
            .arg(betterThan(view, *best), chanceText(limits.nameAboveBest));
    case SuggestionReason::settledAlready:
        break;
    }
    return MeritTexts::tr("Decided already: %1.").arg(stageWord(verdict.stage));
}

QString evidenceWords(const GenotypeMerit& evidence) {
    if (!evidence.seen()) {
        return MeritTexts::tr("never tasted");
    }
    const QStringList parts = {
        MeritTexts::tr("%n lot(s), %1 fair", nullptr, evidence.lots).arg(evidence.fairLots),
        MeritTexts::tr("%n taster(s)", nullptr, evidence.tasters),
        MeritTexts::tr("%n crop year(s)", nullptr, evidence.cropYears)};
    return parts.join(QStringLiteral(", "));
}

QString meritWords(const SeedlingVerdict& verdict) {
    return verdict.basis == MeritBasis::none
               ? MeritTexts::tr("not known yet")
               : doubtText(verdict.merit.value, verdict.merit.standardError, 1);
}

QString verdictLine(const OrchardView& view, const SeedlingVerdict& verdict) {
    QString line = meritWords(verdict);
    if (verdict.basis == MeritBasis::relatives) {
        line = MeritTexts::tr("%1 by its relatives alone").arg(line);
    }
    if (verdict.best) {
        line += QStringLiteral("; ") +
                MeritTexts::tr("P(beats best of its slot, %1) %2")
                    .arg(rungName(view, *verdict.best), chanceText(verdict.best->above));
    } else if (verdict.floor) {
        line += QStringLiteral("; ") +
                MeritTexts::tr("P(beats floor of its slot, %1) %2")
                    .arg(rungName(view, *verdict.floor), chanceText(verdict.floor->above));
    } else {
        line += QStringLiteral(". ") + lackWords(verdict.lack);
    }
    return line;
}

QString faultName(FaultKind kind) {
    switch (kind) {
    case FaultKind::scab:
        return MeritTexts::tr("scab");
    case FaultKind::mildew:
        return MeritTexts::tr("mildew");
    case FaultKind::fireBlight:
        return MeritTexts::tr("fire blight");
    case FaultKind::drop:
        return MeritTexts::tr("drop");
    case FaultKind::split:
        return MeritTexts::tr("splitting");
    case FaultKind::mealiness:
        return MeritTexts::tr("mealiness");
    case FaultKind::shortKeeping:
        break;
    }
    return MeritTexts::tr("short keeping");
}

QString faultWords(const Fault& fault) {
    QString words =
        QStringLiteral("%1 %2").arg(faultName(fault.kind), figureWords(fault.kind, fault.figure));
    if (fault.cropYear) {
        words = MeritTexts::tr("%1 in %2").arg(words).arg(*fault.cropYear);
    }
    return MeritTexts::tr("%1, ruled out at %2 (%n reading(s))", nullptr, fault.readings)
        .arg(words, figureWords(fault.kind, fault.limit));
}

QString gateWords(Gate gate) {
    switch (gate) {
    case Gate::beforeFruit:
        return MeritTexts::tr("Is it healthy and strong enough to keep its place until it fruits?");
    case Gate::firstFruit:
        return MeritTexts::tr("Does its fruit earn another tasting?");
    case Gate::watchToSelection:
        return MeritTexts::tr("Is it ahead of the best of its days, in more than one crop and at "
                              "its prime, and are its faults bearable?");
    case Gate::selectionToAdvanced:
        return MeritTexts::tr("Does it do the same on other stocks and sites, does it crop and "
                              "keep, and do others like it?");
    case Gate::naming:
        return MeritTexts::tr("Can it be told from what there is, is its wood clean, and is a name "
                              "free for it?");
    case Gate::none:
        break;
    }
    return {};
}

QString groundWords(RungGround ground) {
    switch (ground) {
    case RungGround::elected:
        return MeritTexts::tr("elected for this crop year");
    case RungGround::carriedOver:
        return MeritTexts::tr("elected for an earlier crop year");
    case RungGround::highestMerit:
        return MeritTexts::tr("proposed: the highest merit of the slot");
    case RungGround::lowestMerit:
        return MeritTexts::tr("proposed: the lowest merit of the slot still kept");
    case RungGround::lowerQuartile:
        return MeritTexts::tr("proposed: three in four of the slot are better");
    case RungGround::knownBefore:
        return MeritTexts::tr("proposed: most often the famous name before");
    case RungGround::mostTasted:
        break;
    }
    return MeritTexts::tr("proposed: the one of the slot with most scores");
}

QString rungWord(Rung rung) {
    return rung == Rung::floor  ? MeritTexts::tr("floor")
           : rung == Rung::best ? MeritTexts::tr("best")
                                : MeritTexts::tr("famous name");
}

QString purposeWord(Purpose purpose) {
    switch (purpose) {
    case Purpose::dessert:
        return MeritTexts::tr("dessert fruit");
    case Purpose::cooking:
        return MeritTexts::tr("cooking fruit");
    case Purpose::cider:
        return MeritTexts::tr("cider fruit");
    case Purpose::keeper:
        break;
    }
    return MeritTexts::tr("keeper");
}

QString correctionWord(Correction correction) {
    switch (correction) {
    case Correction::origin:
        return MeritTexts::tr("how it came off the tree");
    case Correction::soundness:
        return MeritTexts::tr("soundness");
    case Correction::bag:
        return MeritTexts::tr("bagging");
    case Correction::ripeness:
        return MeritTexts::tr("ripeness");
    case Correction::storage:
        return MeritTexts::tr("store and days");
    case Correction::canopyPlace:
        return MeritTexts::tr("place in the canopy");
    case Correction::cropLoad:
        return MeritTexts::tr("crop load");
    case Correction::cropNumber:
        return MeritTexts::tr("first or second crop");
    case Correction::servingOrder:
        return MeritTexts::tr("place in the serving order");
    case Correction::hope:
        break;
    }
    return MeritTexts::tr("hope (own seedling, sighted)");
}

QString stepWord(const MeritStep& step) {
    switch (step.kind) {
    case MeritStep::Kind::condition:
        return correctionWord(step.correction);
    case MeritStep::Kind::taster:
        return MeritTexts::tr("how high the tasters score");
    case MeritStep::Kind::sitting:
        return MeritTexts::tr("the sitting");
    case MeritStep::Kind::cropYear:
        return MeritTexts::tr("the crop year");
    case MeritStep::Kind::shrinkage:
        break;
    }
    return MeritTexts::tr("luck taken off, family added");
}

QString conditionWord(const ConditionAmount& amount) {
    const std::string key(conditionClasses()[amount.condition].key);
    const int number = static_cast<int>(amount.amount);
    if (key == "day on the counter") {
        return MeritTexts::tr("%n day(s) on the counter", nullptr, number);
    }
    if (key == "day in the refrigerator") {
        return MeritTexts::tr("%n day(s) in the refrigerator", nullptr, number);
    }
    if (key == "day in the cellar") {
        return MeritTexts::tr("%n day(s) in the cellar", nullptr, number);
    }
    if (key == "place in the order") {
        return MeritTexts::tr("place %1 in the serving order").arg(number + 1);
    }
    return MeritTexts::tr(key.c_str());
}

QString planWords(const TastingPlan& plan) {
    QStringList parts;
    parts << (plan.withReference
                  ? MeritTexts::tr("%n fair lot(s) beside the benchmark", nullptr, plan.lots)
                  : MeritTexts::tr("%n fair lot(s)", nullptr, plan.lots));
    if (plan.sittings > 1) {
        parts << MeritTexts::tr("at each of %n sitting(s)", nullptr, plan.sittings);
    }
    parts << MeritTexts::tr("%n taster(s)", nullptr, plan.tasters);
    parts << (plan.blind ? MeritTexts::tr("blind") : MeritTexts::tr("sighted"));
    parts << (plan.cropYears > 1
                  ? MeritTexts::tr("in each of %n crop year(s)", nullptr, plan.cropYears)
              : plan.thisYear ? MeritTexts::tr("this crop year")
                              : MeritTexts::tr("next crop year"));
    return parts.join(QStringLiteral(", "));
}

QString slotWords(const SlotLadder& slot, int calendarYear) {
    if (!slot.name.empty()) {
        return QString::fromStdString(slot.name);
    }
    const auto day = [calendarYear](int dayOfYear) {
        const Date date = dateInCalendar(dayOfYear, calendarYear);
        return MeritTexts::tr("%1 %2", "day of the month, month")
            .arg(date.day())
            .arg(monthText(static_cast<int>(date.month())));
    };
    return MeritTexts::tr("%1 to %2").arg(day(slot.days.first), day(slot.days.last));
}

} // namespace pipwright::ui
