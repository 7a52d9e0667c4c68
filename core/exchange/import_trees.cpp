#include "core/exchange/import_draft.h"

#include <algorithm>

namespace pipwright {

namespace {

using enum TableField;

/// The parents of a line, looked up; faults where a name is not clear.
struct ParentsOfLine {
    ParentCell seed;
    ParentCell pollen;
    std::optional<GenotypeId> seedKnown;
    std::optional<GenotypeId> pollenKnown;
    std::optional<CropYear> year;

    [[nodiscard]] bool given() const {
        return seed.name || pollen.name || pollen.pollination != Pollination::unknown;
    }
};

ParentsOfLine parentsOf(LineCells& cells, ImportDraft& draft) {
    ParentsOfLine parents;
    parents.seed = parentCell(cells.text(seedParent));
    parents.pollen = parentCell(cells.text(pollenParent));
    if (!parents.seed.name && parents.seed.pollination != Pollination::unknown) {
        cells.fault(seedParent, "a mother cannot be open or self.",
                    "Write her code, or ? for unknown; open and self belong to the pollen parent.");
    }
    if (parents.seed.name) {
        parents.seedKnown = draft.genotype(cells, seedParent, *parents.seed.name);
    }
    if (parents.pollen.name) {
        parents.pollenKnown = draft.genotype(cells, pollenParent, *parents.pollen.name);
    }
    if (const auto number = cells.wholeNumber(year)) {
        if (*number < 1800 || *number > draft.today().year()) {
            cells.fault(year, "\"" + cells.text(year) + "\" cannot be the year of a cross.",
                        "Write a year with four digits that is not to come.");
        } else {
            parents.year = CropYear{static_cast<int>(*number)};
        }
    }
    return parents;
}

struct MadeParents {
    std::optional<GenotypeId> seed;
    std::optional<GenotypeId> pollen;
};

MadeParents makeParents(const ParentsOfLine& parents, ImportDraft& draft, std::string& said) {
    MadeParents made;
    if (parents.seed.name) {
        made.seed = draft.genotypeFor(parents.seedKnown, *parents.seed.name, said);
    }
    if (parents.pollen.name) {
        made.pollen = draft.genotypeFor(parents.pollenKnown, *parents.pollen.name, said);
    } else if (parents.pollen.pollination == Pollination::self) {
        made.pollen = made.seed;
    }
    return made;
}

/// Whether a cross of the book says something else than the line.
bool contradicts(const Cross& cross, const ParentsOfLine& parents) {
    const bool seed =
        parents.seed.name && cross.seedParent && cross.seedParent != parents.seedKnown;
    const bool pollen =
        parents.pollen.name && cross.pollenParent && cross.pollenParent != parents.pollenKnown;
    return seed || pollen;
}

/// What the line knows of a cross and the cross does not.
void completeCross(CrossId id, const ParentsOfLine& parents, const MadeParents& made,
                   ImportDraft& draft) {
    Cross after = draft.crosses.at(id.uuid);
    after.seedParent = after.seedParent ? after.seedParent : made.seed;
    after.pollenParent = after.pollenParent ? after.pollenParent : made.pollen;
    after.cropYear = after.cropYear ? after.cropYear : parents.year;
    if (after.pollination == Pollination::unknown) {
        after.pollination = parents.pollen.pollination;
    }
    if (!(toRecord(after) == toRecord(draft.crosses.at(id.uuid)))) {
        draft.crosses.edit(id.uuid) = after;
    }
}

/// One assertion about one parent, beside what the book believes.
void assertParent(GenotypeId child, ParentRole role, std::optional<GenotypeId> parent,
                  Pollination pollination, const LineCells& cells, ImportDraft& draft) {
    auto one = draft.fresh<Parentage>();
    one.genotype = child;
    one.role = role;
    one.parent = parent;
    one.pollination = role == ParentRole::pollen ? pollination : Pollination::unknown;
    one.asserted = draft.today();
    one.evidence = cells.tableName() + ", line " + std::to_string(cells.number());
    draft.parentages.create(one);
    draft.parentagesOf[child.uuid].push_back(one.id);
}

/// The assertion of the book that says the same.
bool isAsserted(GenotypeId child, ParentRole role, std::optional<GenotypeId> parent,
                const ImportDraft& draft) {
    const auto known = draft.parentagesOf.find(child.uuid);
    if (known == draft.parentagesOf.end()) {
        return false;
    }
    return std::any_of(known->second.begin(), known->second.end(), [&](ParentageId id) {
        const Parentage& one = draft.parentages.at(id.uuid);
        return one.role == role && one.parent == parent && one.voidReason.empty();
    });
}

/// Gives the child its parents: through a cross where it has none, else by assertions. True when
/// that changes anything.
bool giveParents(GenotypeId child, const ParentsOfLine& parents, const std::string& crossCode,
                 std::optional<CrossId> crossKnown, const LineCells& cells, ImportDraft& draft,
                 std::string& said) {
    const MadeParents made = makeParents(parents, draft, said);
    const auto current = draft.genotypes.at(child.uuid).cross;
    if (!current) {
        const CrossId cross =
            crossKnown ? *crossKnown
                       : draft.crossFor(made.seed, made.pollen, parents.pollen.pollination,
                                        parents.year, crossCode, said);
        if (crossKnown) {
            completeCross(cross, parents, made, draft);
        }
        draft.genotypes.edit(child.uuid).cross = cross;
        return true;
    }
    bool changed = false;
    const Cross& known = draft.crosses.at(current->uuid);
    const auto differs = [&](ParentRole role, std::optional<GenotypeId> believed,
                             std::optional<GenotypeId> given) {
        if (given && given != believed && !isAsserted(child, role, given, draft)) {
            assertParent(child, role, given, parents.pollen.pollination, cells, draft);
            said +=
                (said.empty() ? "" : "; ") + std::string("asserted beside the cross of the book");
            changed = true;
        }
    };
    differs(ParentRole::seed, known.seedParent, made.seed);
    differs(ParentRole::pollen, known.pollenParent, made.pollen);
    return changed;
}

struct TreeOfLine {
    std::string code;
    std::string name;
    std::optional<GenotypeId> known;
    ParentsOfLine parents;
    std::string crossCode;
    std::optional<CrossId> crossKnown;
    std::optional<PlaceCell> place;
    std::optional<SiteId> site;
    std::optional<double> distance;
    std::optional<InexactDate> planted;
    Stage stage = Stage::unknown;
};

TreeOfLine readTree(LineCells& cells, ImportDraft& draft) {
    TreeOfLine tree;
    tree.name = cells.text(TableField::name);
    tree.code = cells.isEmpty(code) ? tree.name : cells.text(code);
    if (tree.code.empty()) {
        cells.fault(code, "the tree has neither code nor name.", "Give it a code.");
    } else {
        tree.known = draft.genotype(cells, code, tree.code);
    }
    tree.parents = parentsOf(cells, draft);
    tree.crossCode = cells.text(cross);
    if (!tree.crossCode.empty()) {
        tree.crossKnown = draft.cross(cells, tree.crossCode);
        if (tree.crossKnown && contradicts(draft.crosses.at(tree.crossKnown->uuid), tree.parents)) {
            cells.fault(cross, "the cross " + tree.crossCode + " has other parents.",
                        "Correct the cross or the parents of this line.");
        }
    }
    tree.place = draft.place(cells);
    if (tree.place) {
        tree.site = draft.site(cells, tree.place->site);
    }
    tree.distance = cells.number(distance);
    if (tree.distance && (*tree.distance < 0 || *tree.distance > 100'000)) {
        cells.fault(distance, "a tape distance of " + cells.text(distance) + " m cannot be right.",
                    "Write metres from the start of the row.");
    }
    tree.planted = cells.date(planted);
    tree.stage = cells.word<Stage>(stage);
    return tree;
}

/// The plant of that genotype that the line speaks of, if the book has it.
std::optional<PlantId> plantInBook(const TreeOfLine& tree, GenotypeId id,
                                   const ImportDraft& draft) {
    if (!tree.place) {
        const auto& all = draft.plantsOf(id);
        return all.empty() ? std::nullopt : std::optional(all.front());
    }
    const auto row = tree.site ? draft.row(*tree.site, tree.place->row) : std::nullopt;
    const auto there = row ? draft.position(*row, tree.place->ordinal) : std::nullopt;
    for (const PlantId plant : there ? draft.plantsAt(*there) : std::vector<PlantId>{}) {
        if (draft.genotypeOf(plant) == id) {
            return plant;
        }
    }
    return std::nullopt;
}

void makePlant(const TreeOfLine& tree, GenotypeId id, const LineCells& cells, ImportDraft& draft,
               std::string& said) {
    auto plant = draft.fresh<Plant>();
    auto identity = draft.fresh<Identity>();
    if (tree.place) {
        plant.position = draft.positionFor(*tree.place, tree.site, said);
        if (tree.distance && !draft.positions.at(plant.position->uuid).distance) {
            draft.positions.edit(plant.position->uuid).distance = tree.distance;
        }
        for (const PlantId other : draft.plantsAt(*plant.position)) {
            if (const auto held = draft.genotypeOf(other); held && !draft.isDead(other)) {
                said += (said.empty() ? "" : "; ") + std::string("beside ") +
                        draft.genotypes.at(held->uuid).code + ", which stands there too";
            }
        }
        identity.basis = IdentityBasis::mapOnly;
        identity.confidence = Confidence::byMap;
    }
    const bool seedling = draft.genotypes.at(id.uuid).kind == GenotypeKind::seedling;
    plant.kind = seedling && draft.plantsOf(id).empty() ? PlantKind::ownRoots : PlantKind::unknown;
    plant.tag = cells.text(tag);
    plant.state = PlantState::growing;
    plant.notes = cells.text(notes);
    if (tree.planted) {
        plant.planted = tree.planted->from;
        plant.plantedTyped = tree.planted->isOneDay() ? "" : tree.planted->typed;
    }
    identity.asserted = draft.today();
    identity.notes = cells.tableName() + ", line " + std::to_string(cells.number());
    draft.newPlant(std::move(plant), id, std::move(identity));
}

GenotypeId makeGenotype(const TreeOfLine& tree, const LineCells& cells, ImportDraft& draft,
                        std::string& said) {
    std::string ignored; // "new tree ..." says it
    const bool isNew = !tree.known;
    const GenotypeId id = draft.genotypeFor(tree.known, tree.code, ignored);
    if (isNew) {
        said = "new tree " + tree.code;
        Genotype& one = draft.genotypes.edit(id.uuid);
        one.name = tree.name;
        const bool raised = tree.parents.given() || !tree.crossCode.empty();
        one.kind = raised ? GenotypeKind::seedling : GenotypeKind::unknown;
        if (!cells.isEmpty(species)) {
            one.species = draft.speciesFor(cells.text(species), said);
        }
    }
    return id;
}

} // namespace

bool planTree(LineCells& cells, ImportDraft& draft, std::string& said) {
    const TreeOfLine tree = readTree(cells, draft);
    if (!cells.good()) {
        return false;
    }
    const GenotypeId id = makeGenotype(tree, cells, draft, said);
    bool changed = !tree.known;
    if (tree.parents.given() || !tree.crossCode.empty()) {
        changed =
            giveParents(id, tree.parents, tree.crossCode, tree.crossKnown, cells, draft, said) ||
            changed;
    }
    if (!plantInBook(tree, id, draft)) {
        said += (said.empty() ? "" : "; ") + std::string(tree.known ? "another plant" : "planted") +
                (tree.place ? " at " + tree.place->row + "/" + std::to_string(tree.place->ordinal)
                            : std::string());
        makePlant(tree, id, cells, draft, said);
        changed = true;
    }
    if (tree.stage != Stage::unknown && changed) {
        auto decision = draft.fresh<Decision>();
        decision.genotype = id;
        decision.stage = tree.stage;
        decision.date = draft.today();
        decision.reason = "as in " + cells.tableName();
        draft.decisions.create(decision);
    }
    return changed;
}

bool planParents(LineCells& cells, ImportDraft& draft, std::string& said) {
    const std::string child = cells.text(code);
    std::optional<GenotypeId> known;
    if (child.empty()) {
        cells.fault(code, "the line does not say whose parents these are.",
                    "Give the child's code.");
    } else {
        known = draft.genotype(cells, code, child);
    }
    const ParentsOfLine parents = parentsOf(cells, draft);
    const std::string crossCode = cells.text(cross);
    std::optional<CrossId> crossKnown;
    if (!crossCode.empty()) {
        crossKnown = draft.cross(cells, crossCode);
        if (crossKnown && contradicts(draft.crosses.at(crossKnown->uuid), parents)) {
            cells.fault(cross, "the cross " + crossCode + " has other parents.",
                        "Correct the cross or the parents of this line.");
        }
    }
    if (!cells.good()) {
        return false;
    }
    if (!parents.given() && crossCode.empty()) {
        said = "no parent is known";
        return false;
    }
    const GenotypeId id = draft.genotypeFor(known, child, said);
    return giveParents(id, parents, crossCode, crossKnown, cells, draft, said);
}

} // namespace pipwright
