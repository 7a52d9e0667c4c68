#include "sample-data/generator/observing.h"

#include <cstdlib>

namespace pipwright::sample {

Observation observationOf(World& world, std::string_view trait) {
    Observation observation;
    observation.trait = shippedTraitId(trait);
    observation.date = world.scribe.today();
    observation.cropYear = CropYear{world.scribe.today().year()};
    observation.person = world.annis.id;
    return observation;
}

void observeMark(World& world, const Tree& tree, WalkMark mark, const std::string& words) {
    Observation observation = observationOf(world, trait_key::kRipeningState);
    observation.plant = tree.record.id;
    observation.state = stateOf(mark);
    observation.words = words;
    world.scribe.add(observation);
}

void observeState(World& world, const Tree& tree, std::string_view trait, std::string_view state,
                  const std::string& words) {
    Observation observation = observationOf(world, trait);
    observation.plant = tree.record.id;
    observation.state = shippedStateId(trait, state);
    observation.words = words;
    world.scribe.add(observation);
}

void observeNote(World& world, const Tree& tree, const std::string& words) {
    Observation observation = observationOf(world, trait_key::kNote);
    observation.plant = tree.record.id;
    observation.words = words;
    world.scribe.add(observation);
}

void observeDay(World& world, const Tree& tree, std::string_view trait, Date day) {
    Observation observation = observationOf(world, trait);
    observation.plant = tree.record.id;
    observation.valueDate = day;
    world.scribe.add(observation);
}

void observeNumber(World& world, const Tree& tree, std::string_view trait, const std::string& typed,
                   const std::string& instrument) {
    Observation observation = observationOf(world, trait);
    observation.plant = tree.record.id;
    observation.typed = typed;
    observation.instrument = instrument;
    observation.qualifier = Qualifier::exact;
    const bool marked = typed.front() == '~' || typed.front() == '<' || typed.front() == '>';
    const std::string number = marked ? typed.substr(1) : typed;
    if (marked) {
        observation.qualifier = typed.front() == '~'   ? Qualifier::about
                                : typed.front() == '<' ? Qualifier::lessThan
                                                       : Qualifier::greaterThan;
    }
    char* rest = nullptr;
    observation.value = std::strtod(number.c_str(), &rest);
    if (*rest == '-') {
        observation.qualifier = Qualifier::range;
        observation.valueTo = std::strtod(rest + 1, nullptr);
    }
    world.scribe.add(observation);
}

void note(World& world, const std::string& code, const std::string& words) {
    world.scribe.begin("Note on " + code);
    observeNote(world, world.tree(code), words);
    world.scribe.finish();
}

} // namespace pipwright::sample
