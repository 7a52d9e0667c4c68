#include "core/history/ladder_edits.h"

#include <algorithm>

namespace pipwright {

namespace {

std::string rungInSentence(Rung rung) {
    switch (rung) {
    case Rung::floor:
        return "Floor";
    case Rung::best:
        return "Best";
    case Rung::famous:
        return "Famous name";
    case Rung::unknown:
        break;
    }
    return "Rung";
}

std::string slotInSentence(const Slot& slot) {
    return slot.name.empty() ? slot.first.iso() + " to " + slot.last.iso() : slot.name;
}

Election electionOf(SlotId slot, const RungChoice& choice, const EditContext& context) {
    Election election;
    election.id = ElectionId(context.ids->make());
    election.slot = slot;
    election.rung = choice.rung;
    election.genotype = choice.genotype;
    election.elected = context.day;
    election.reason = choice.reason;
    return election;
}

int daysShared(const Slot& slot, const CutSlot& cut) {
    return std::max(0, daysBetween(std::max(slot.first, cut.first), std::min(slot.last, cut.last)) +
                           1);
}

/// The slot not yet used that shares most days with the cut.
const Slot* slotToMove(const CutSlot& cut, const SeasonAsCut& before,
                       const std::vector<SlotId>& used) {
    const Slot* chosen = nullptr;
    int most = 0;
    for (const Slot& slot : before.slots) {
        const int shared = daysShared(slot, cut);
        if (shared > most && std::find(used.begin(), used.end(), slot.id) == used.end()) {
            most = shared;
            chosen = &slot;
        }
    }
    return chosen;
}

} // namespace

ChangeSet electRung(const Slot& slot, const RungChoice& choice, const std::string& code,
                    const EditContext& context) {
    ChangeSet set;
    set.sentence = rungInSentence(choice.rung) + " of " + slotInSentence(slot) + ": " + code;
    set.person = context.person;
    set.create(electionOf(slot.id, choice, context));
    return set;
}

ChangeSet cutSlots(CropYear cropYear, const std::string& label, std::optional<SpeciesId> species,
                   std::span<const CutSlot> slots, const SeasonAsCut& before,
                   const EditContext& context) {
    ChangeSet set;
    set.sentence = "Season of " + label + " cut into " + std::to_string(slots.size()) +
                   (slots.size() == 1 ? " slot" : " slots");
    set.person = context.person;
    std::vector<SlotId> used;
    std::vector<Election> chosen;
    for (const CutSlot& cut : slots) {
        const Slot* old = slotToMove(cut, before, used);
        Slot slot = old != nullptr ? *old : Slot{};
        slot.cropYear = cropYear;
        slot.species = species;
        slot.first = cut.first;
        slot.last = cut.last;
        slot.name = cut.name;
        if (old != nullptr) {
            used.push_back(old->id);
            set.edit(*old, slot);
        } else {
            slot.id = SlotId(context.ids->make());
            set.create(slot);
        }
        for (const RungChoice& choice : cut.rungs) {
            chosen.push_back(electionOf(slot.id, choice, context));
        }
    }
    for (const Election& election : chosen) {
        set.create(election);
    }
    for (const Slot& slot : before.slots) {
        if (std::find(used.begin(), used.end(), slot.id) != used.end()) {
            continue;
        }
        for (const Election& election : before.elections) {
            if (election.slot == slot.id) {
                set.erase(election);
            }
        }
        set.erase(slot);
    }
    return set;
}

} // namespace pipwright
