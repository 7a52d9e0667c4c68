#include "core/exchange/print/tree_papers.h"

#include "core/orchard/dictionary.h"

#include <array>
#include <cstdio>

namespace pipwright {

namespace {

std::string yearOf(const OrchardView& view, const PlantEntry& plant) {
    if (plant.genotype) {
        const GenotypeEntry& genotype = view.genotypes()[*plant.genotype];
        const Cross* made = genotype.cross ? view.cross(*genotype.cross) : nullptr;
        if (made != nullptr && made->cropYear) {
            return std::to_string(made->cropYear->year);
        }
    }
    return plant.planted ? std::to_string(plant.planted->year()) : std::string{};
}

std::string placeInRow(const Position& position) {
    std::string text = std::to_string(position.ordinal);
    if (position.distance) {
        std::array<char, 32> metres{};
        const int length =
            std::snprintf(metres.data(), metres.size(), " · %.2f m", *position.distance);
        text.append(metres.data(), static_cast<std::size_t>(length));
    }
    return text;
}

Result<std::string> newestNote(const Store& store, PlantId plant) {
    const auto observations = store.where<Observation>("plant", plant.uuid);
    if (!observations) {
        return observations.problem();
    }
    const TraitId note = shippedTraitId(trait_key::kNote);
    const Observation* newest = nullptr;
    for (const Observation& one : *observations) {
        if (one.trait == note && one.voidReason.empty() &&
            (newest == nullptr || one.date >= newest->date)) {
            newest = &one;
        }
    }
    if (newest == nullptr) {
        return std::string{};
    }
    return (newest->date ? newest->date->iso() + ": " : std::string{}) + newest->words;
}

} // namespace

LabelText labelOf(const OrchardView& view, Index plant) {
    const PlantEntry& entry = view.plants()[plant];
    LabelText label;
    label.code = view.plantCode(plant);
    label.cross = entry.genotype ? view.crossText(*entry.genotype) : std::string{};
    label.year = yearOf(view, entry);
    label.labelCode = entry.id.uuid.labelCode();
    if (const auto place = view.placeOf(plant)) {
        label.place = view.sites()[place->site].name + ", " + view.placeText(plant, false);
    }
    return label;
}

Result<TreesToWalk> treesToWalk(const OrchardView& view, const Store& store,
                                std::span<const Index> plants) {
    TreesToWalk walk;
    std::vector<int> orderOfRow(view.rows().size());
    for (std::size_t i = 0; i < view.rowsInOrder().size(); ++i) {
        orderOfRow[view.rowsInOrder()[i]] = static_cast<int>(i);
    }
    for (const Index plant : plants) {
        const auto place = view.placeOf(plant);
        if (!place) {
            walk.nowhere.push_back(plant);
            continue;
        }
        const Position& position = view.positions()[place->position];
        auto note = newestNote(store, view.plants()[plant].id);
        if (!note) {
            return note.problem();
        }
        WalkingTree tree;
        tree.site = view.sites()[place->site].name;
        tree.row = view.rowName(place->row);
        tree.rowOrder = orderOfRow[place->row];
        tree.alongRow = position.distance.value_or(static_cast<double>(position.ordinal));
        tree.code = view.plantCode(plant);
        tree.place = placeInRow(position);
        tree.lastNote = std::move(*note);
        walk.trees.push_back(std::move(tree));
    }
    return walk;
}

} // namespace pipwright
