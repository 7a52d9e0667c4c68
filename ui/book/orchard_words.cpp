#include "ui/book/orchard_words.h"

#include "core/orchard/inexact_value.h"
#include "ui/book/book_words.h"
#include "ui/widgets/number_text.h"

#include <QCoreApplication>
#include <QLocale>

#include <array>

namespace pipwright::ui {

namespace {

// The first words of these stood with the map; their context keeps its name for translators.
struct MapWords {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::MapWords)
};
struct OrchardWords {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::OrchardWords)
};

constexpr std::array kStages = {Stage::planned, Stage::seed,     Stage::nursery,   Stage::juvenile,
                                Stage::bearing, Stage::watched,  Stage::selection, Stage::advanced,
                                Stage::named,   Stage::released, Stage::parent,    Stage::culled,
                                Stage::unknown};

} // namespace

QString stageWord(Stage stage) {
    switch (stage) {
    case Stage::planned:
        return MapWords::tr("planned");
    case Stage::seed:
        return MapWords::tr("seed");
    case Stage::nursery:
        return MapWords::tr("nursery");
    case Stage::juvenile:
        return MapWords::tr("juvenile");
    case Stage::bearing:
        return MapWords::tr("bearing");
    case Stage::watched:
        return MapWords::tr("watched");
    case Stage::selection:
        return MapWords::tr("selection");
    case Stage::advanced:
        return MapWords::tr("advanced");
    case Stage::named:
        return MapWords::tr("named");
    case Stage::released:
        return MapWords::tr("released");
    case Stage::parent:
        return MapWords::tr("kept as parent");
    case Stage::culled:
        return MapWords::tr("culled");
    case Stage::unknown:
        break;
    }
    return MapWords::tr("stage unknown");
}

QString stateWord(PlantState state) {
    switch (state) {
    case PlantState::growing:
        return MapWords::tr("growing");
    case PlantState::lost:
        return MapWords::tr("lost");
    case PlantState::dead:
        return MapWords::tr("dead");
    case PlantState::removed:
        return MapWords::tr("removed");
    case PlantState::unknown:
        break;
    }
    return MapWords::tr("state unknown");
}

QString identityWord(Confidence confidence) {
    switch (confidence) {
    case Confidence::sure:
        return MapWords::tr("identity sure");
    case Confidence::byMap:
        return MapWords::tr("identity by map only");
    case Confidence::byFruit:
        return MapWords::tr("identity by fruit only");
    case Confidence::unknown:
        break;
    }
    return MapWords::tr("identity unsure");
}

QString basisWord(IdentityBasis basis) {
    switch (basis) {
    case IdentityBasis::tagAndMap:
        return OrchardWords::tr("tag and map agree");
    case IdentityBasis::tagOnly:
        return OrchardWords::tr("by its tag");
    case IdentityBasis::mapOnly:
        return OrchardWords::tr("by the map");
    case IdentityBasis::graftRecord:
        return OrchardWords::tr("by the grafting record");
    case IdentityBasis::fruit:
        return OrchardWords::tr("by its fruit");
    case IdentityBasis::guess:
        return OrchardWords::tr("a guess");
    case IdentityBasis::unknown:
        break;
    }
    return OrchardWords::tr("basis not known");
}

std::span<const Stage> stagesInOrder() {
    return kStages;
}

QString walkMarkWord(WalkMark mark) {
    switch (mark) {
    case WalkMark::notYet:
        return OrchardWords::tr("not yet");
    case WalkMark::ripening:
        return OrchardWords::tr("ripening");
    case WalkMark::ripe:
        return OrchardWords::tr("ripe");
    case WalkMark::over:
        return OrchardWords::tr("over");
    case WalkMark::gone:
        return OrchardWords::tr("gone");
    case WalkMark::unknown:
        break;
    }
    return OrchardWords::tr("not known");
}

QString plantKindWord(PlantKind kind) {
    switch (kind) {
    case PlantKind::ownRoots:
        return OrchardWords::tr("on its own roots");
    case PlantKind::grafted:
        return OrchardWords::tr("grafted");
    case PlantKind::limb:
        return OrchardWords::tr("limb of a frame tree");
    case PlantKind::unknown:
        break;
    }
    return OrchardWords::tr("roots not known");
}

QString originWord(Origin origin) {
    switch (origin) {
    case Origin::pickedRipe:
        return OrchardWords::tr("picked ripe");
    case Origin::pickedEarly:
        return OrchardWords::tr("picked early");
    case Origin::droppedToday:
        return OrchardWords::tr("dropped that day");
    case Origin::onGroundLonger:
        return OrchardWords::tr("on the ground longer");
    case Origin::shaken:
        return OrchardWords::tr("shaken off");
    case Origin::unknown:
        break;
    }
    return OrchardWords::tr("not known");
}

QString soundnessWord(Soundness soundness) {
    switch (soundness) {
    case Soundness::sound:
        return OrchardWords::tr("sound");
    case Soundness::insect:
        return OrchardWords::tr("insect inside");
    case Soundness::bird:
        return OrchardWords::tr("pecked");
    case Soundness::split:
        return OrchardWords::tr("split");
    case Soundness::rot:
        return OrchardWords::tr("rotten in part");
    case Soundness::unknown:
        break;
    }
    return OrchardWords::tr("not known");
}

QString ripenessWord(Ripeness ripeness) {
    switch (ripeness) {
    case Ripeness::green:
        return OrchardWords::tr("green");
    case Ripeness::gettingThere:
        return OrchardWords::tr("getting there");
    case Ripeness::earlyPrime:
        return OrchardWords::tr("early prime");
    case Ripeness::prime:
        return OrchardWords::tr("prime");
    case Ripeness::latePrime:
        return OrchardWords::tr("late prime");
    case Ripeness::onItsWayOut:
        return OrchardWords::tr("on its way out");
    case Ripeness::gone:
        return OrchardWords::tr("gone by");
    case Ripeness::unknown:
        break;
    }
    return OrchardWords::tr("not known");
}

QString storageWord(StoragePath path) {
    switch (path) {
    case StoragePath::none:
        return OrchardWords::tr("straight off the tree");
    case StoragePath::counter:
        return OrchardWords::tr("counter");
    case StoragePath::fridge:
        return OrchardWords::tr("fridge");
    case StoragePath::cellar:
        return OrchardWords::tr("cellar");
    case StoragePath::chained:
        return OrchardWords::tr("several places");
    case StoragePath::unknown:
        break;
    }
    return OrchardWords::tr("not known");
}

QString bagWord(Bag bag) {
    switch (bag) {
    case Bag::none:
        return OrchardWords::tr("no bag");
    case Bag::paper:
        return OrchardWords::tr("paper bag");
    case Bag::organza:
        return OrchardWords::tr("organza bag");
    case Bag::clear:
        return OrchardWords::tr("clear bag");
    case Bag::unknown:
        break;
    }
    return OrchardWords::tr("not known");
}

QString canopyWord(CanopyPlace place) {
    switch (place) {
    case CanopyPlace::top:
        return OrchardWords::tr("from the top");
    case CanopyPlace::sunSide:
        return OrchardWords::tr("from the sunny side");
    case CanopyPlace::inside:
        return OrchardWords::tr("from inside the crown");
    case CanopyPlace::low:
        return OrchardWords::tr("from low down");
    case CanopyPlace::unknown:
        break;
    }
    return OrchardWords::tr("not known");
}

QString cropLoadWord(CropLoad load) {
    switch (load) {
    case CropLoad::lone:
        return OrchardWords::tr("a lone fruit");
    case CropLoad::light:
        return OrchardWords::tr("light crop");
    case CropLoad::medium:
        return OrchardWords::tr("medium crop");
    case CropLoad::heavy:
        return OrchardWords::tr("heavy crop");
    case CropLoad::unknown:
        break;
    }
    return OrchardWords::tr("not known");
}

QString verdictWord(Verdict verdict) {
    switch (verdict) {
    case Verdict::cull:
        return OrchardWords::tr("cull it");
    case Verdict::noReasonToKeep:
        return OrchardWords::tr("no reason to keep it");
    case Verdict::again:
        return OrchardWords::tr("taste again");
    case Verdict::watch:
        return OrchardWords::tr("watch it");
    case Verdict::backUpNow:
        return OrchardWords::tr("back it up now");
    case Verdict::parentOnly:
        return OrchardWords::tr("for a parent only");
    case Verdict::nameTalk:
        return OrchardWords::tr("talk of a name");
    case Verdict::unknown:
        break;
    }
    return OrchardWords::tr("no verdict");
}

QString graftMethodWord(GraftMethod method) {
    switch (method) {
    case GraftMethod::whipAndTongue:
        return OrchardWords::tr("whip and tongue");
    case GraftMethod::cleft:
        return OrchardWords::tr("cleft");
    case GraftMethod::bark:
        return OrchardWords::tr("bark");
    case GraftMethod::chipBud:
        return OrchardWords::tr("chip bud");
    case GraftMethod::tBud:
        return OrchardWords::tr("T bud");
    case GraftMethod::other:
        return OrchardWords::tr("another method");
    case GraftMethod::unknown:
        break;
    }
    return OrchardWords::tr("method not known");
}

QString unfairnessWord(Unfairness reason) {
    switch (reason) {
    case Unfairness::pickedEarly:
        return OrchardWords::tr("picked early");
    case Unfairness::fallen:
        return OrchardWords::tr("fallen");
    case Unfairness::hurt:
        return OrchardWords::tr("hurt");
    case Unfairness::underRipe:
        return OrchardWords::tr("under-ripe");
    case Unfairness::overRipe:
        return OrchardWords::tr("over-ripe");
    case Unfairness::keptTooLong:
        return OrchardWords::tr("kept more than 7 days");
    case Unfairness::bagged:
        return OrchardWords::tr("grown in a paper bag");
    case Unfairness::firstCrop:
        return OrchardWords::tr("first crop");
    case Unfairness::originUnknown:
        return OrchardWords::tr("origin not known");
    case Unfairness::ripenessUnknown:
        return OrchardWords::tr("ripeness not known");
    }
    return {};
}

QString conditionWords(const Lot& lot) {
    QStringList words;
    if (lot.origin != Origin::unknown) {
        words << originWord(lot.origin);
    }
    if (lot.bag != Bag::unknown && lot.bag != Bag::none) {
        words << bagWord(lot.bag);
    }
    if (lot.soundness != Soundness::unknown) {
        words << soundnessWord(lot.soundness);
    }
    if (lot.storage == StoragePath::none) {
        words << storageWord(lot.storage);
    }
    // In the order fruit usually goes.
    if (lot.daysInCellar.value_or(0) > 0) {
        words << OrchardWords::tr("%n day(s) in the cellar", nullptr,
                                  static_cast<int>(*lot.daysInCellar));
    }
    if (lot.daysInFridge.value_or(0) > 0) {
        words << OrchardWords::tr("%n day(s) in the fridge", nullptr,
                                  static_cast<int>(*lot.daysInFridge));
    }
    if (lot.daysOnCounter.value_or(0) > 0) {
        words << OrchardWords::tr("%n day(s) on the counter", nullptr,
                                  static_cast<int>(*lot.daysOnCounter));
    }
    if (lot.ripeness != Ripeness::unknown) {
        words << ripenessWord(lot.ripeness);
    }
    if (lot.canopyPlace != CanopyPlace::unknown) {
        words << canopyWord(lot.canopyPlace);
    }
    if (lot.cropLoad != CropLoad::unknown) {
        words << cropLoadWord(lot.cropLoad);
    }
    return words.isEmpty() ? OrchardWords::tr("condition not known")
                           : words.join(QStringLiteral(", "));
}

QString fairnessWords(const Fairness& fairness) {
    if (fairness.fair()) {
        return OrchardWords::tr("fair");
    }
    QStringList reasons;
    for (const Unfairness reason : fairness.reasons) {
        reasons << unfairnessWord(reason);
    }
    const QString list = reasons.join(QStringLiteral(", "));
    return fairness.unclear ? OrchardWords::tr("unclear: %1").arg(list)
                            : OrchardWords::tr("not fair: %1").arg(list);
}

QString valueWords(const OrchardView& view, const Observation& observation) {
    QStringList words;
    const Trait* trait = view.trait(observation.trait);
    if (const TraitState* state =
            observation.state ? view.traitState(*observation.state) : nullptr) {
        words << traitStateName(*state);
    } else if (const auto value = valueOf(observation)) {
        const QString unit = trait != nullptr ? QString::fromStdString(trait->unit) : QString();
        const QString low = QLocale().toString(value->low, 'g', 6);
        QString number = low;
        if (value->qualifier == Qualifier::range && value->high) {
            number =
                OrchardWords::tr("%1 to %2").arg(low, QLocale().toString(*value->high, 'g', 6));
        } else if (value->qualifier == Qualifier::about) {
            number = OrchardWords::tr("about %1").arg(low);
        } else if (value->qualifier == Qualifier::lessThan) {
            number = OrchardWords::tr("under %1").arg(low);
        } else if (value->qualifier == Qualifier::greaterThan) {
            number = OrchardWords::tr("over %1").arg(low);
        }
        words << (unit.isEmpty() ? number : number + QChar(0xA0) + unit);
        if (!value->unitTyped.empty() && QString::fromStdString(value->unitTyped) != unit) {
            words.last() +=
                OrchardWords::tr(" (written as %1)").arg(QString::fromStdString(value->typed));
        }
    } else if (observation.valueDate) {
        words << dateText(*observation.valueDate);
    }
    if (!observation.words.empty()) {
        words << QString::fromStdString(observation.words);
    }
    return words.join(QStringLiteral(", "));
}

QString dayWords(const Observation& observation) {
    if (!observation.date) {
        return OrchardWords::tr("no date");
    }
    if (observation.dateTo && *observation.dateTo != *observation.date) {
        const QString span = dateSpanText(*observation.date, *observation.dateTo);
        return observation.dateTyped.empty()
                   ? span
                   : OrchardWords::tr("%1 (%2)").arg(QString::fromStdString(observation.dateTyped),
                                                     span);
    }
    return dateText(*observation.date);
}

QString personWords(const OrchardView& view, const std::optional<PersonId>& person) {
    const Person* one = person ? view.person(*person) : nullptr;
    return one == nullptr ? OrchardWords::tr("somebody") : QString::fromStdString(one->name);
}

} // namespace pipwright::ui
