#pragma once

#include "core/evaluation/merit/verdict.h"

namespace pipwright::ui {

/// The breeder's own thresholds, kept in the desktop's usual place for settings.
struct KeptChoices {
    VerdictThresholds thresholds;
    Purpose purpose = Purpose::dessert;

    bool operator==(const KeptChoices&) const = default;
    [[nodiscard]] VerdictChoices choices() const { return {thresholds, proposedLimits(purpose)}; }
};

/// The proposals where nothing was kept, or what was kept contradicts itself.
KeptChoices keptChoices();
void keepChoices(const KeptChoices& choices);

} // namespace pipwright::ui
