#pragma once

#include "ui/rows/map_scene.h"
#include "ui/widgets/palettes.h"

#include <QColor>
#include <QString>

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace pipwright::ui {

/// Where the colours of a colouring come from.
enum class ColourScale { stages, categories, ramp, twoEnded };

/// One line of the legend: never a colour alone, always a letter or the stage's shape too.
struct LegendEntry {
    QString label;
    QString letter;               ///< one or two characters, drawn in the cells as well
    std::size_t count = 0;        ///< cells of this entry
    double tone = 0;              ///< 0 to 1, on a ramp
    Stage stage = Stage::unknown; ///< on the scale of stages

    bool operator==(const LegendEntry&) const = default;
};

/// How the cells of one scene are coloured: computed elsewhere, handed to the map as values.
struct CellColouring {
    static constexpr std::uint16_t kNoEntry = 0xffff;

    QString title; ///< what the colour means, with its unit
    ColourScale scale = ColourScale::stages;
    std::vector<LegendEntry> legend;
    std::vector<std::uint16_t> entryOf; ///< legend entry of each cell, or kNoEntry
    std::vector<float> toneOf;          ///< 0 to 1 on a ramp; empty when the entry's tone will do
    std::vector<float> fullnessOf;      ///< 0 to 1: how sure; empty when no doubt is shown

    [[nodiscard]] std::optional<std::size_t> entry(CellIndex cell) const {
        if (cell >= entryOf.size() || entryOf[cell] == kNoEntry) {
            return std::nullopt;
        }
        return entryOf[cell];
    }
    /// The colour of a cell; nothing when it has no value.
    [[nodiscard]] std::optional<QColor> fill(CellIndex cell, const Theme& theme) const;
    /// The colour of a line of the legend.
    [[nodiscard]] std::optional<QColor> entryFill(std::size_t entry, const Theme& theme) const;
    /// The cells of one line of the legend.
    [[nodiscard]] CellSet cellsOf(std::size_t entry) const;

    bool operator==(const CellColouring&) const = default;
};

/// How a column of numbers is cut into the lines of a legend.
struct RampChoice {
    QString title;        ///< with the unit
    QString unit;         ///< written after the numbers of the legend; may be empty
    int decimals = 0;     ///< digits after the point in the legend
    bool whole = false;   ///< the numbers are counts, years or weeks: one line each when few
    bool lowFirst = true; ///< false turns the ramp: the deep end is the low one
};

/// The colour of a line of a legend that stands at `index` in it.
std::optional<QColor> entryFill(const LegendEntry& entry, std::size_t index, ColourScale scale,
                                const Theme& theme);
/// The fill of a stage, pale to deep; nothing for stages drawn as an outline or a hatch.
std::optional<QColor> stageFill(Stage stage, const Theme& theme);

CellColouring colourByStage(const MapScene& scene);
CellColouring colourByIdentity(const MapScene& scene);
/// `familyOf` holds an index into `names` for each cell, or -1. Letters beside the eight hues.
CellColouring colourByFamily(const MapScene& scene, std::span<const int> familyOf,
                             std::span<const QString> names);
/// Any worded scale: `classOf` holds an index into `labels`, or -1. Ordered scales get the ramp,
/// unordered ones the hues.
CellColouring colourByClasses(const MapScene& scene, QString title, std::span<const int> classOf,
                              std::span<const QString> labels, bool ordered);
/// Any numeric trait, cut into at most nine lines of even steps.
CellColouring colourByValues(const MapScene& scene, std::span<const std::optional<double>> values,
                             const RampChoice& choice);
CellColouring colourByFirstFruitYear(const MapScene& scene,
                                     std::span<const std::optional<double>> years);
CellColouring colourByFairLots(const MapScene& scene, std::span<const std::optional<double>> lots);
/// Latest liking, 1 to 9.
CellColouring colourByLiking(const MapScene& scene, std::span<const std::optional<double>> liking);
/// Harvest week of the season (its running number, so that no week follows after the last).
CellColouring colourByHarvestWeek(const MapScene& scene,
                                  std::span<const std::optional<double>> weeks, int calendarYear);
/// Scab on the scale of 1 (none) to 9 (worst).
CellColouring colourByScab(const MapScene& scene, std::span<const std::optional<double>> scab);
/// Days since the tree was last looked at, in classes a walker thinks in.
CellColouring colourByLastVisited(const MapScene& scene,
                                  std::span<const std::optional<double>> daysAgo);
/// Better or worse than the benchmark: the difference decides the hue, and the half-width of its
/// interval how much of the cell is filled (a difference as large as its doubt fills half).
CellColouring colourByDifference(const MapScene& scene, QString title,
                                 std::span<const std::optional<double>> difference,
                                 std::span<const std::optional<double>> halfInterval);

} // namespace pipwright::ui
