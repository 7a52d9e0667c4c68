#pragma once

#include "core/evaluation/evidence.h"
#include "core/history/store.h"
#include "core/orchard/orchard.h"
#include "core/pedigree/pedigree.h"
#include "core/units/chunked.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <unordered_map>
#include <vector>

namespace pipwright {

/// Place of a thing in one of the lists of an OrchardView; the same in later views of the book.
using Index = std::uint32_t;

/// What the map and the lists need of a plant. To edit one, get the Plant from the store.
struct PlantEntry {
    PlantId id;
    std::string tag;
    PlantKind kind = PlantKind::unknown;
    PlantState state = PlantState::unknown;
    std::optional<Index> position;
    std::optional<PlantId> frame;
    std::optional<Date> planted;
    // From the identity assertion that counts:
    std::optional<IdentityId> identity;
    std::optional<Index> genotype;
    IdentityBasis basis = IdentityBasis::unknown;
    Confidence confidence = Confidence::unknown;
    std::optional<Date> asserted;
    std::optional<Date> confirmed;
    bool erased = false; ///< taken back by an undo; its place in the list stays empty
};

/// What the map and the lists need of a genotype.
struct GenotypeEntry {
    GenotypeId id;
    std::string code;
    std::string name;
    GenotypeKind kind = GenotypeKind::unknown;
    std::optional<SpeciesId> species;
    std::optional<CrossId> cross;
    std::optional<std::int64_t> ploidy;
    bool benchmark = false;
    // From the decision that counts:
    Stage stage = Stage::unknown;
    std::optional<Date> stageSince;
    bool erased = false;

    /// The name if it has one, else the code.
    [[nodiscard]] const std::string& called() const { return name.empty() ? code : name; }
};

/// A genotype's parents as the book believes them now.
struct ParentsOf {
    std::optional<Index> seed;
    std::optional<Index> pollen;
    Pollination pollination = Pollination::unknown;
    bool asserted = false; ///< by a Parentage, not by the cross alone
};

/// The place a plant stands in.
struct Place {
    Index site = 0;
    Index row = 0;
    Index position = 0;
};

/// The whole orchard as it stands, immutable and cheap to copy: what the screens read. Made from
/// the store once, then carried along by each change set.
class OrchardView {
  public:
    using Pointer = std::shared_ptr<const OrchardView>;

    /// Places, plants, genotypes, pedigree and stages: enough to show the map. The evidence is
    /// empty; see withEvidence.
    static Result<Pointer> load(const Store& store);
    /// The same with the evidence of every tree, from one pass over tastings and observations.
    [[nodiscard]] Result<Pointer> withEvidence(const Store& store) const;
    /// The view after these changes, which are in the store already.
    [[nodiscard]] Result<Pointer> after(const std::vector<Change>& changes,
                                        const Store& store) const;

    // Lists. Sites, rows and positions come in walking order through sitesInOrder() and so on.
    [[nodiscard]] const std::vector<Site>& sites() const { return m_places->sites; }
    [[nodiscard]] const std::vector<TrialRow>& rows() const { return m_places->rows; }
    [[nodiscard]] const std::vector<Position>& positions() const { return m_places->positions; }
    [[nodiscard]] const Chunked<PlantEntry>& plants() const { return m_plants; }
    [[nodiscard]] const Chunked<GenotypeEntry>& genotypes() const { return m_genotypes; }
    [[nodiscard]] const std::vector<Cross>& crosses() const { return m_words->crosses; }
    [[nodiscard]] const std::vector<Species>& species() const { return m_words->species; }
    [[nodiscard]] const std::vector<Person>& persons() const { return m_words->persons; }
    [[nodiscard]] const std::vector<Trait>& traits() const { return m_words->traits; }
    [[nodiscard]] const std::vector<TraitState>& traitStates() const { return m_words->states; }
    [[nodiscard]] const BookFacts& facts() const { return m_words->facts; }

    // Walking order: sites by name, rows by number, positions by ordinal.
    [[nodiscard]] const std::vector<Index>& rowsInOrder() const { return m_places->rowsInOrder; }
    [[nodiscard]] const std::vector<Index>& positionsOf(Index row) const {
        return m_places->positionsOfRow[row];
    }
    /// Newest last; usually one, two when two plants stand together or one was replanted.
    [[nodiscard]] const std::vector<Index>& plantsAt(Index position) const;
    [[nodiscard]] const std::vector<Index>& plantsOf(Index genotype) const;

    // By id.
    [[nodiscard]] std::optional<Index> plant(PlantId id) const;
    [[nodiscard]] std::optional<Index> genotype(GenotypeId id) const;
    [[nodiscard]] const Cross* cross(CrossId id) const;
    [[nodiscard]] const Species* species(SpeciesId id) const;
    [[nodiscard]] const Person* person(PersonId id) const;
    [[nodiscard]] const Trait* trait(TraitId id) const;
    [[nodiscard]] const TraitState* traitState(TraitStateId id) const;
    /// The shipped trait of that key; nothing when the book lacks it.
    [[nodiscard]] const Trait* traitByKey(std::string_view key) const;
    /// States of a trait by rank.
    [[nodiscard]] std::vector<const TraitState*> statesOf(TraitId id) const;
    /// The genotype a code, name or exact alias stands for; case and blanks do not matter.
    [[nodiscard]] std::optional<Index> genotypeCalled(std::string_view text) const;

    // Derived.
    [[nodiscard]] std::optional<Place> placeOf(Index plant) const;
    /// "C/14", "C/14 · 3.40 m" with distance; "" when it stands nowhere known.
    [[nodiscard]] std::string placeText(Index plant, bool withDistance = true) const;
    [[nodiscard]] std::string rowName(Index row) const;
    /// The genotype's code, else the plant's tag, else "unknown".
    [[nodiscard]] std::string plantCode(Index plant) const;
    [[nodiscard]] ParentsOf parentsOf(Index genotype) const;
    /// "Ash Tarn x Russet Moor"; "?" for an unknown parent, "open" for open pollination.
    [[nodiscard]] std::string crossText(Index genotype) const;
    /// The plant to show for a genotype: growing first, own roots first.
    [[nodiscard]] std::optional<Index> plantFor(Index genotype) const;
    [[nodiscard]] Hemisphere hemisphereOf(Index plant) const;
    /// Whole pedigree, a genotype's index as its number; a Problem names a ring.
    [[nodiscard]] Result<Pedigree> pedigree() const;

    // Evidence.
    [[nodiscard]] bool hasEvidence() const { return m_hasEvidence; }
    [[nodiscard]] const PlantFacts& plantFacts(Index plant) const { return m_plantFacts[plant]; }
    [[nodiscard]] const GenotypeFacts& genotypeFacts(Index genotype) const {
        return m_genotypeFacts[genotype];
    }
    /// The facts of a plant's genotype; empty facts when the plant is not identified.
    [[nodiscard]] const GenotypeFacts& factsOfPlant(Index plant) const;

  private:
    friend class ViewLoader;
    friend class ViewUpdater;

    /// Ids of the list's things; copies share the bulk.
    class IdIndex {
      public:
        IdIndex() = default;
        explicit IdIndex(std::shared_ptr<const std::unordered_map<Uuid, Index>> bulk)
            : m_bulk(std::move(bulk)) {}
        void add(const Uuid& id, Index at);
        [[nodiscard]] std::optional<Index> find(const Uuid& id) const;

      private:
        std::shared_ptr<const std::unordered_map<Uuid, Index>> m_bulk;
        std::unordered_map<Uuid, Index> m_fresh;
    };

    struct Places {
        std::vector<Site> sites;
        std::vector<TrialRow> rows;
        std::vector<Position> positions;
        std::unordered_map<Uuid, Index> siteAt;
        std::unordered_map<Uuid, Index> rowAt;
        std::unordered_map<Uuid, Index> positionAt;
        std::vector<Index> rowsInOrder;
        std::vector<std::vector<Index>> positionsOfRow;
    };

    struct BookWords {
        BookFacts facts;
        std::vector<Cross> crosses;
        std::vector<Species> species;
        std::vector<Person> persons;
        std::vector<Trait> traits;
        std::vector<TraitState> states;
        std::vector<Alias> aliases;
        std::vector<Parentage> parentages;
        std::unordered_map<Uuid, Index> at; ///< of all the lists above together
        std::unordered_map<Uuid, std::vector<Index>> parentagesOf;
    };

    std::shared_ptr<const Places> m_places;
    std::shared_ptr<const BookWords> m_words;
    Chunked<PlantEntry> m_plants;
    Chunked<GenotypeEntry> m_genotypes;
    IdIndex m_plantAt;
    IdIndex m_genotypeAt;
    Chunked<std::vector<Index>> m_plantsAtPosition;
    Chunked<std::vector<Index>> m_plantsOfGenotype;
    Chunked<PlantFacts> m_plantFacts;
    Chunked<GenotypeFacts> m_genotypeFacts;
    bool m_hasEvidence = false;
};

/// The latest value of a trait for every plant: the number, or the rank of the worded state;
/// nothing where it was never observed or all is void. Genotype-wide observations count for all
/// its plants.
Result<std::vector<std::optional<double>>> traitColumn(const OrchardView& view, const Store& store,
                                                       TraitId trait);

} // namespace pipwright
