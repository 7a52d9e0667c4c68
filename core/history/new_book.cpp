#include "core/history/new_book.h"

#include "core/orchard/dictionary.h"

namespace pipwright {

ChangeSet newBook(const std::string& title, const std::string& owner, UuidMaker& ids) {
    ChangeSet set;
    set.sentence = "New book with the shipped traits and species";
    BookFacts facts;
    facts.id = BookFactsId(ids.make());
    facts.title = title;
    facts.owner = owner;
    set.create(facts);
    for (const Species& species : shippedSpecies()) {
        set.create(species);
    }
    for (const Trait& trait : shippedTraits()) {
        set.create(trait);
    }
    for (const TraitState& state : shippedTraitStates()) {
        set.create(state);
    }
    return set;
}

} // namespace pipwright
