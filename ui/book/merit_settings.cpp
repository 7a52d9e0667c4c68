#include "ui/book/merit_settings.h"

#include <QSettings>
#include <QString>

#include <array>
#include <utility>

namespace pipwright::ui {

namespace {

using Chance = double VerdictThresholds::*;
constexpr std::array kFigures = {
    std::pair{"merit/margin", Chance{&VerdictThresholds::margin}},
    std::pair{"merit/watch-above-floor", Chance{&VerdictThresholds::watchAboveFloor}},
    std::pair{"merit/back-up-above-best", Chance{&VerdictThresholds::backUpAboveBest}},
    std::pair{"merit/name-above-best", Chance{&VerdictThresholds::nameAboveBest}},
    std::pair{"merit/cull-below-floor", Chance{&VerdictThresholds::cullBelowFloor}},
};
using Count = int VerdictThresholds::*;
constexpr std::array kCounts = {
    std::pair{"merit/name-crop-years", Count{&VerdictThresholds::nameCropYears}},
    std::pair{"merit/fair-lots", Count{&VerdictThresholds::fairLots}},
};

} // namespace

KeptChoices keptChoices() {
    const QSettings settings;
    KeptChoices kept;
    for (const auto& [key, member] : kFigures) {
        kept.thresholds.*member =
            settings.value(QLatin1String(key), kept.thresholds.*member).toDouble();
    }
    for (const auto& [key, member] : kCounts) {
        kept.thresholds.*member =
            settings.value(QLatin1String(key), kept.thresholds.*member).toInt();
    }
    if (!checkThresholds(kept.thresholds)) {
        kept.thresholds = {};
    }
    const std::string purpose =
        settings.value(QStringLiteral("merit/purpose")).toString().toStdString();
    kept.purpose = purposeFromKey(purpose).value_or(Purpose::dessert);
    return kept;
}

void keepChoices(const KeptChoices& choices) {
    QSettings settings;
    for (const auto& [key, member] : kFigures) {
        settings.setValue(QLatin1String(key), choices.thresholds.*member);
    }
    for (const auto& [key, member] : kCounts) {
        settings.setValue(QLatin1String(key), choices.thresholds.*member);
    }
    const std::string_view purpose = keyOf(choices.purpose);
    settings.setValue(QStringLiteral("merit/purpose"),
                      QString::fromUtf8(purpose.data(), static_cast<qsizetype>(purpose.size())));
}

} // namespace pipwright::ui
