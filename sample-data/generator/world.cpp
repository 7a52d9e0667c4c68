#include "sample-data/generator/world.h"

#include "sample-data/generator/figures.h"

namespace pipwright::sample {

std::size_t World::addStrain(Strain strain) {
    strain.record = scribe.add(strain.record);
    const std::string code = strain.record.code;
    strains.push_back(std::move(strain));
    strainOf[code] = strains.size() - 1;
    return strains.size() - 1;
}

std::size_t World::addTree(Tree tree, IdentityBasis basis) {
    tree.record = scribe.add(tree.record);
    Identity identity;
    identity.plant = tree.record.id;
    identity.genotype = strains[tree.strain].record.id;
    identity.basis = basis;
    identity.confidence = Confidence::sure;
    identity.asserted = scribe.today();
    identity.confirmed = scribe.today();
    identity.person = annis.id;
    identities.push_back(scribe.add(identity));
    tree.identity = identities.size() - 1;
    trees.push_back(tree);
    const std::size_t index = trees.size() - 1;
    if (tree.record.position) {
        auto& place = rows[tree.row].places[tree.place];
        if (!place.tree) {
            place.tree = index;
        }
        place.free.reset();
    }
    treeOf.emplace(strains[tree.strain].record.code, index);
    return index;
}

void World::decide(Strain& strain, Stage stage, const std::string& reason) {
    const bool ended = strain.stage == Stage::culled || strain.stage == Stage::parent;
    if (ended || stage <= strain.stage) {
        return;
    }
    strain.stage = stage;
    Decision decision;
    decision.genotype = strain.record.id;
    decision.stage = stage;
    decision.date = scribe.today();
    decision.reason = reason;
    decision.person = annis.id;
    scribe.add(decision);
}

void World::takeAway(Tree& tree, PlantState state, const std::string& reason) {
    scribe.edit(tree.record, [&](Plant& plant) {
        plant.state = state;
        plant.stateSince = scribe.today();
        plant.stateReason = reason;
    });
    if (tree.record.position) {
        auto& place = rows[tree.row].places[tree.place];
        place.tree.reset();
        place.free = scribe.today();
    }
}

Fruiting World::fruiting(const Tree& tree, int year) {
    Fruiting fruiting;
    if (year < tree.firstCrop) {
        return fruiting;
    }
    const Strain& kind = strains[tree.strain];
    const auto bearsIn = [&](int crop) {
        Chance chance(kind.record.code + " bears " + std::to_string(crop));
        return crop == tree.firstCrop || kind.told || !kind.own ||
               chance.happens(seasonOf(crop).lateFrost ? 0.45 : 0.78);
    };
    for (int crop = tree.firstCrop; crop <= year; ++crop) {
        fruiting.cropNumber += bearsIn(crop) ? 1 : 0;
    }
    fruiting.bears = bearsIn(year);
    Chance chance(kind.record.code + " load " + std::to_string(year));
    const double draw = chance.unit() - (seasonOf(year).lateFrost ? 0.4 : 0.0);
    if (fruiting.cropNumber == 1) {
        fruiting.load = draw < 0.6 ? CropLoad::lone : CropLoad::light;
    } else {
        fruiting.load = draw < 0.3    ? CropLoad::light
                        : draw < 0.75 ? CropLoad::medium
                                      : CropLoad::heavy;
    }
    fruiting.days = goodDaysOf(kind.truth, kind.record.code, year);
    return fruiting;
}

std::string World::evidence(const Strain& strain, int year) const {
    std::string text;
    std::optional<Date> day;
    for (const Heard& heard : strain.heard) {
        if (heard.date.year() != year) {
            continue;
        }
        if (day != heard.date) {
            text +=
                (text.empty() ? "" : "; ") + spoken(heard.date) + (heard.blind ? " blind: " : ": ");
            day = heard.date;
        } else {
            text += ", ";
        }
        text += heard.who + " " + inHalves(heard.liking);
    }
    return text;
}

} // namespace pipwright::sample
