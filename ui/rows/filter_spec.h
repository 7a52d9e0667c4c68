#pragma once

#include "ui/rows/map_scene.h"

#include <QString>

#include <optional>
#include <vector>

namespace pipwright::ui {

/// A trait must lie between two values, both included; an open end is no limit. Trees without a
/// value do not pass.
struct TraitBound {
    QString trait; ///< key of a FilterTrait
    std::optional<double> low;
    std::optional<double> high;
    bool operator==(const TraitBound&) const = default;
};

/// What a person wants to see of the map. Everything that is set must hold.
struct FilterSpec {
    QString text;              ///< words that must all be found in code, family or row/place
    std::vector<Stage> stages; ///< any of them; none is no limit
    std::optional<QString> family;
    std::vector<TraitBound> bounds;

    [[nodiscard]] bool isEmpty() const {
        return text.trimmed().isEmpty() && stages.empty() && !family && bounds.empty();
    }
    bool operator==(const FilterSpec&) const = default;
};

/// A column a filter may ask for.
struct FilterTrait {
    QString key;
    QString title; ///< with the unit
    int decimals = 1;
    /// One a cell; empty while nobody has asked for a trait that must be read from the book.
    std::vector<std::optional<double>> values;
};

/// What a filter knows about the cells beside the scene itself.
struct FilterFacts {
    std::vector<QString> families;
    std::vector<int> familyOf; ///< index into families for each cell, or -1
    std::vector<FilterTrait> traits;
};

/// The cells that pass. An empty spec gives an empty set, which means all. Gaps never pass.
CellSet shownBy(const FilterSpec& spec, const MapScene& scene, const FilterFacts& facts);
/// Trees that pass.
std::size_t shownCount(const CellSet& shown, const MapScene& scene);

} // namespace pipwright::ui
