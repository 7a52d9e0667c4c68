#pragma once

#include "core/evaluation/orchard_view.h"
#include "ui/widgets/finder_line.h"

#include <QString>

#include <optional>
#include <vector>

namespace pipwright::ui {

class OpenBook;

/// What the finder line offers for a text: trees by code, name or row/place first, then records
/// whose words match (notes, tastings, decisions, people, families), then commands.
std::vector<FoundThing> foundIn(const OpenBook& book, const QString& text);

/// Where a found thing leads.
struct FoundTarget {
    std::optional<Index> plant;
    std::optional<Index> genotype;
    QString command; ///< id of an action (see actions.h)
};
FoundTarget foundTarget(const OpenBook& book, const QString& id);

} // namespace pipwright::ui
