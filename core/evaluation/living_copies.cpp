#include "core/evaluation/living_copies.h"

#include "core/units/text.h"

#include <algorithm>
#include <map>
#include <set>

namespace pipwright {

LivingCopies livingCopies(const OrchardView& view, Index genotype) {
    LivingCopies copies;
    std::set<Index> stems;
    std::set<std::string, NaturalLess> sites;
    for (const Index plant : view.plantsOf(genotype)) {
        const PlantEntry& entry = view.plants()[plant];
        if (entry.erased || entry.state != PlantState::growing) {
            continue;
        }
        ++copies.plants;
        const auto frame = entry.frame ? view.plant(*entry.frame) : std::nullopt;
        const Index stem = frame.value_or(plant);
        stems.insert(stem);
        if (const auto place = view.placeOf(stem)) {
            sites.insert(view.sites()[place->site].name);
        }
    }
    copies.stems = static_cast<int>(stems.size());
    copies.sites.assign(sites.begin(), sites.end());
    return copies;
}

std::vector<FrameTree> frameTrees(const OrchardView& view) {
    std::map<Index, int> limbs;
    for (Index plant = 0; plant < view.plants().size(); ++plant) {
        const PlantEntry& entry = view.plants()[plant];
        if (entry.erased || !entry.frame) {
            continue;
        }
        if (const auto frame = view.plant(*entry.frame)) {
            limbs[*frame] += entry.state == PlantState::growing ? 1 : 0;
        }
    }
    std::vector<FrameTree> trees;
    for (const auto& [plant, growing] : limbs) {
        FrameTree tree{plant, view.plantCode(plant), growing};
        const std::string place = view.placeText(plant, false);
        tree.name += place.empty() ? "" : ", " + place;
        trees.push_back(std::move(tree));
    }
    std::stable_sort(trees.begin(), trees.end(), [](const FrameTree& a, const FrameTree& b) {
        return naturalOrder(a.name, b.name) < 0;
    });
    return trees;
}

Result<std::vector<FrameLimb>> limbsOf(const OrchardView& view, const Store& store, Index frame) {
    auto plants = store.where<Plant>("frame", view.plants()[frame].id.uuid);
    if (!plants) {
        return plants.problem();
    }
    std::vector<FrameLimb> limbs;
    for (const Plant& plant : *plants) {
        if (const auto at = view.plant(plant.id)) {
            limbs.push_back({*at, view.plantCode(*at), plant.state, plant.limbBearing,
                             plant.limbHeight, plant.limbOrder, plant.limbMark});
        }
    }
    std::stable_sort(limbs.begin(), limbs.end(), [](const FrameLimb& a, const FrameLimb& b) {
        return std::pair(a.height, a.order) < std::pair(b.height, b.order);
    });
    return limbs;
}

} // namespace pipwright
