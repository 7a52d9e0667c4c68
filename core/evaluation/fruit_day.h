#pragma once

#include "core/fruit/juice.h"
#include "core/orchard/traits.h"
#include "core/season/date.h"

#include <optional>
#include <span>
#include <vector>

namespace pipwright {

/// The mean of one or more readings of a trait, from its lowest to its highest possible value
/// (they are one when every reading was exact).
struct MeanReading {
    double low = 0;
    double high = 0;
    int readings = 0;
};

/// A value that follows from readings, between the values that their ends give.
struct DerivedValue {
    double low = 0;
    double high = 0;
};

/// What the readings on the fruit of one plant, genotype or lot on one day give together. Readings
/// of "under" or "over" so much stay out.
struct FruitDay {
    Date date;
    std::optional<MeanReading> solids;   ///< degrees Brix, brought to 20 degrees Celsius
    std::optional<MeanReading> acidity;  ///< g/L of malic acid
    std::optional<MeanReading> firmness; ///< kgf, of readings that name the apple probe
    std::optional<MeanReading> starch;   ///< by the chart of ten steps
    int firmnessWithoutProbe = 0; ///< readings of firmness that name no probe, or that for pears

    std::optional<DerivedValue> ratio; ///< soluble solids over acid in percent
    std::optional<DerivedValue> streifKilograms;
    std::optional<DerivedValue> streifNewtons;

    /// The observation beside which the ratio is read (of soluble solids) and the Streif index
    /// (of starch): the last of the day.
    ObservationId ratioBeside;
    ObservationId streifBeside;
};

/// The days on which anything of it was measured, in the order of the observations' days; void
/// observations and those of inexact days stay out.
std::vector<FruitDay> fruitDays(std::span<const Observation> observations);

/// A reading of soluble solids brought to 20 degrees, when its instrument names the temperature of
/// the juice; nothing when it does not, and a Problem where the table ends.
std::optional<Result<BrixAt20>> solidsAt20(const Observation& solids);

} // namespace pipwright
