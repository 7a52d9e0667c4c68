#include "ui/tree/fruit_words.h"

#include "core/orchard/dictionary.h"
#include "core/orchard/fruit_traits.h"
#include "ui/widgets/number_text.h"

#include <QCoreApplication>

namespace pipwright::ui {

namespace {

struct FruitWords {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::FruitWords)
};

/// "12.6 °Brix", "12 to 13 °Brix", with the number of readings when there are several.
QString readingText(const MeanReading& mean, int decimals, const QString& unit) {
    QString text = numberText(mean.low, decimals);
    if (text != numberText(mean.high, decimals)) {
        text = FruitWords::tr("%1 to %2").arg(text, numberText(mean.high, decimals));
    }
    if (!unit.isEmpty()) {
        text += QStringLiteral("\u00A0") + unit;
    }
    return mean.readings == 1 ? text
                              : FruitWords::tr("%1 (mean of %2)").arg(text).arg(mean.readings);
}

QString derivedText(const DerivedValue& value, int decimals) {
    const QString low = numberText(value.low, decimals);
    const QString high = numberText(value.high, decimals);
    return low == high ? low : FruitWords::tr("%1 to %2").arg(low, high);
}

QString correctionLine(const Result<BrixAt20>& at20) {
    if (!at20) {
        return FruitWords::tr("Not corrected to 20 °C: the table goes from 10 to 30 °C and up to "
                              "30 °Brix.");
    }
    const QString value =
        FruitWords::tr("%1 °Brix at 20 °C (%2; table of 1936)")
            .arg(numberText(at20->value.number(), 1), signedText(at20->correction.number(), 2));
    return at20->fromPrint
               ? value
               : FruitWords::tr("%1; above 21 °C its rows are not proofread").arg(value);
}

QString ratioLine(const FruitDay& day) {
    return FruitWords::tr("Sugar to acid %1, from %2 and %3")
        .arg(derivedText(*day.ratio, 1), readingText(*day.solids, 1, QStringLiteral("°Brix")),
             readingText(*day.acidity, 1, QStringLiteral("g/L")));
}

QString streifLine(const FruitDay& day) {
    return FruitWords::tr("Streif index %1 by kgf, %2 by N (do not mix the two); from %3, %4 and "
                          "starch %5 of 10")
        .arg(derivedText(*day.streifKilograms, 3), derivedText(*day.streifNewtons, 2),
             readingText(*day.firmness, 1, QStringLiteral("kgf")),
             readingText(*day.solids, 1, QStringLiteral("°Brix")), readingText(*day.starch, 1, {}));
}

} // namespace

QString instrumentHint(std::string_view traitKey) {
    if (traitKey == trait_key::kFirmness) {
        return FruitWords::tr("probe: 11 mm or 8 mm");
    }
    if (traitKey == trait_key::kSolubleSolids) {
        return FruitWords::tr("ATC, or without it the juice's temperature, as 17 °C");
    }
    if (traitKey == trait_key::kDaysGood) {
        return FruitWords::tr("where it was kept: counter, fridge, cellar");
    }
    return {};
}

QString measuringCaution(std::string_view traitKey) {
    if (traitKey == trait_key::kStarchEight || traitKey == trait_key::kStarchTen) {
        return FruitWords::tr(
            "Iodine is poisonous: nobody eats what it touched, no animal gets it, and it does not "
            "go on the compost. Keep the bottle dark, marked and away from children and pets. "
            "Povidone-iodine does not show starch.");
    }
    if (traitKey == trait_key::kAcidity) {
        return FruitWords::tr(
            "Alkali burns: goggles and gloves, never a pipette by mouth, bottles marked. Nobody "
            "tastes juice that was titrated.");
    }
    return {};
}

QStringList fruitLines(const Observation& one, std::span<const FruitDay> days) {
    QStringList lines;
    if (one.trait == shippedTraitId(trait_key::kSolubleSolids)) {
        if (const auto at20 = solidsAt20(one)) {
            lines << correctionLine(*at20);
        }
    }
    for (const FruitDay& day : days) {
        if (day.ratio && day.ratioBeside == one.id) {
            lines << ratioLine(day);
        }
        if (day.streifBeside != one.id) {
            continue;
        }
        if (day.streifKilograms) {
            lines << streifLine(day);
        } else if (day.firmnessWithoutProbe > 0 && day.solids) {
            lines << FruitWords::tr("No Streif index: it needs firmness of the 11 mm probe, named "
                                    "as the instrument.");
        }
    }
    return lines;
}

} // namespace pipwright::ui
