#pragma once

#include "core/evaluation/orchard_view.h"

#include <string_view>
#include <vector>

namespace pipwright {

/// Fills an OrchardView from a store. Only orchard_view_*.cpp use it.
class ViewLoader {
  public:
    explicit ViewLoader(const Store& store) : m_store(store) {}

    Result<std::shared_ptr<OrchardView>> load();

    // Parts, also used after a change.
    Outcome loadPlaces(OrchardView& view) const;
    Outcome loadWords(OrchardView& view) const;
    Outcome loadEvidence(OrchardView& view) const;

  private:
    Outcome loadGenotypes(OrchardView& view) const;
    Outcome loadPlants(OrchardView& view) const;
    Outcome loadStages(OrchardView& view) const;
    Outcome loadIdentities(OrchardView& view) const;

    const Store& m_store;
};

/// The scan request for those fields of a kind.
ScanRequest onlyFields(Kind kind, std::initializer_list<std::string_view> names);

/// Where a plant of that standing belongs in the list of its position: newest last.
void linkPlant(Chunked<std::vector<Index>>& lists, Index at, Index plant);
void unlinkPlant(Chunked<std::vector<Index>>& lists, Index at, Index plant);

} // namespace pipwright
