#include "core/exchange/import_draft.h"

// Which tree a line of scores or walk marks speaks of.
namespace pipwright {

TreeFound ImportDraft::found(PlantId plant) const {
    TreeFound tree{plant, genotypeOf(plant), plants.at(plant.uuid).tag};
    if (tree.genotype) {
        tree.code = genotypes.at(tree.genotype->uuid).code;
    }
    return tree;
}

std::optional<TreeFound> ImportDraft::tree(LineCells& cells) {
    using enum TableField;
    const bool hasCode = !cells.isEmpty(code);
    const bool hasTag = !cells.isEmpty(tag);
    const auto where = this->place(cells);
    if (!cells.good()) {
        return std::nullopt;
    }
    if (!hasCode && !hasTag && !where) {
        cells.fault(code, "the line does not say which tree it is about.",
                    "Give a code, a tag, or row and position.");
        return std::nullopt;
    }
    if (!where) {
        return treeCalled(cells, hasTag ? tag : code);
    }
    auto standing = treeAt(cells, *where);
    if (standing && hasCode) {
        const auto wanted = genotype(cells, code, cells.text(code));
        if (!wanted || wanted != standing->genotype) {
            cells.fault(
                code, "at this place stands " + standing->code + ", not " + cells.text(code) + ".",
                "Correct the code or the place.");
        }
    }
    return cells.good() ? standing : std::nullopt;
}

std::optional<TreeFound> ImportDraft::treeAt(LineCells& cells, const PlaceCell& where) {
    const TableField field =
        cells.isEmpty(TableField::rowAndPlace) ? TableField::place : TableField::rowAndPlace;
    const auto ground = site(cells, where.site);
    const auto inRow = ground ? row(*ground, where.row) : std::nullopt;
    const auto there = inRow ? position(*inRow, where.ordinal) : std::nullopt;
    std::vector<PlantId> standing;
    for (const PlantId plant : there ? plantsAt(*there) : std::vector<PlantId>{}) {
        if (!isDead(plant)) {
            standing.push_back(plant);
        }
    }
    const std::string spot = where.row + "/" + std::to_string(where.ordinal);
    if (standing.empty() && cells.good()) {
        cells.fault(field, "no tree of the book stands at " + spot + ".",
                    "Correct the place, or import the trees first.");
    } else if (standing.size() > 1) {
        cells.fault(field, "several trees stand at " + spot + ".", "Give the code or tag instead.");
    }
    return cells.good() ? std::optional(found(standing.front())) : std::nullopt;
}

std::optional<TreeFound> ImportDraft::treeCalled(LineCells& cells, TableField field) {
    const std::string name = cells.text(field);
    const auto known = field == TableField::tag ? std::nullopt : genotype(cells, field, name);
    if (!cells.good()) {
        return std::nullopt;
    }
    if (known) {
        return plantOfGenotype(cells, field, *known);
    }
    const auto& tagged = m_tags.find(name);
    if (tagged.size() == 1) {
        return found(PlantId(tagged.front()));
    }
    if (tagged.empty()) {
        cells.fault(field, "no tree of the book is called \"" + name + "\".",
                    "Correct it, add it to the book as an alias, or import the trees first.");
    } else {
        cells.fault(field, "several tags say \"" + name + "\".", "Give row and position instead.");
    }
    return std::nullopt;
}

/// The living plant of a genotype: of several the one on its own roots; without any, the record is
/// the genotype's.
std::optional<TreeFound> ImportDraft::plantOfGenotype(LineCells& cells, TableField field,
                                                      GenotypeId id) {
    std::vector<PlantId> living;
    std::vector<PlantId> ownRoots;
    for (const PlantId plant : plantsOf(id)) {
        if (!isDead(plant)) {
            living.push_back(plant);
            if (plants.at(plant.uuid).kind == PlantKind::ownRoots) {
                ownRoots.push_back(plant);
            }
        }
    }
    const auto& choice = living.size() > 1 && ownRoots.size() == 1 ? ownRoots : living;
    if (choice.size() > 1) {
        cells.fault(field,
                    cells.text(field) + " stands in " + std::to_string(choice.size()) + " places.",
                    "Assign a column to the tag, or to row and position.");
        return std::nullopt;
    }
    return choice.empty() ? TreeFound{std::nullopt, id, genotypes.at(id.uuid).code}
                          : found(choice.front());
}

} // namespace pipwright
