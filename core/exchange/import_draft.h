#pragma once

#include "core/exchange/drafts.h"
#include "core/exchange/line_cells.h"
#include "core/exchange/name_index.h"
#include "core/history/store.h"
#include "core/orchard/orchard.h"

#include <map>
#include <memory>
#include <set>
#include <string>
#include <tuple>
#include <unordered_map>
#include <vector>

namespace pipwright {

/// A parent as a cell gives it: by name, or only how the pollen came, or nothing.
struct ParentCell {
    std::optional<std::string> name;
    Pollination pollination = Pollination::unknown;
};
ParentCell parentCell(const std::string& text);

/// Row and position as the cells of a line give them.
struct PlaceCell {
    std::string site; ///< may be empty
    std::string row;
    std::int64_t ordinal = 0;
};

/// A tree that a line of scores or walk marks speaks of.
struct TreeFound {
    std::optional<PlantId> plant;
    std::optional<GenotypeId> genotype;
    std::string code;
};

/// The book as it is to be after an import: what is there, and what the lines add to it.
class ImportDraft {
  public:
    static Result<std::unique_ptr<ImportDraft>> over(const Store& store, UuidMaker& ids,
                                                     Date today);

    [[nodiscard]] const Store& store() const { return m_store; }
    [[nodiscard]] Date today() const { return m_today; }
    template <typename Thing>
    Thing fresh() {
        Thing thing;
        thing.id = decltype(thing.id)(m_ids.make());
        return thing;
    }

    // Looking up; a fault of the line where something is called alike.

    /// The one genotype of that name, or nothing; more than one is a fault.
    std::optional<GenotypeId> genotype(LineCells& cells, TableField field, const std::string& name);
    std::optional<CrossId> cross(LineCells& cells, const std::string& code);
    std::optional<PlaceCell> place(LineCells& cells);
    std::optional<SiteId> site(LineCells& cells, const std::string& name);
    std::optional<TrialRowId> row(std::optional<SiteId> site, const std::string& name) const;
    [[nodiscard]] std::optional<PositionId> position(TrialRowId row, std::int64_t ordinal) const;
    /// By code, tag and place, as far as the line has them; a fault when there is none or several.
    std::optional<TreeFound> tree(LineCells& cells);
    /// The crop year of fruit seen on that day where the plant stands.
    [[nodiscard]] CropYear cropYear(std::optional<PlantId> plant, Date day) const;
    [[nodiscard]] const std::vector<PlantId>& plantsOf(GenotypeId genotype) const;
    [[nodiscard]] const std::vector<PlantId>& plantsAt(PositionId position) const;
    [[nodiscard]] std::optional<GenotypeId> genotypeOf(PlantId plant) const;
    [[nodiscard]] bool isDead(PlantId plant) const;

    // Making; each tells in `said` what it made.

    GenotypeId genotypeFor(std::optional<GenotypeId> known, const std::string& code,
                           std::string& said);
    PositionId positionFor(const PlaceCell& place, std::optional<SiteId> site, std::string& said);
    /// The cross of these parents in that year, if there is one, or a new one. `code` may be empty.
    CrossId crossFor(std::optional<GenotypeId> seed, std::optional<GenotypeId> pollen,
                     Pollination pollination, std::optional<CropYear> year, const std::string& code,
                     std::string& said);
    SpeciesId speciesFor(const std::string& name, std::string& said);
    PersonId personFor(const std::string& name, std::string& said);
    PlantId newPlant(Plant plant, GenotypeId genotype, Identity identity);
    void makeDictionary();

    /// All of it, in an order in which what is referred to stands first where that can be.
    void addTo(ChangeSet& set) const;

    Drafts<Site> sites;
    Drafts<TrialRow> rows;
    Drafts<Position> positions;
    Drafts<Species> species;
    Drafts<Genotype> genotypes;
    Drafts<Cross> crosses;
    Drafts<Parentage> parentages;
    Drafts<Plant> plants;
    Drafts<Identity> identities;
    Drafts<Decision> decisions;
    Drafts<Person> persons;
    Drafts<Tasting> tastings;
    Drafts<Lot> lots;
    Drafts<Score> scores;
    Drafts<Observation> observations;

    // What is fetched from the book only when a line speaks of it, and what lines add.
    using Subject = std::pair<Uuid, Uuid>; ///< tasting, and plant or genotype
    std::map<Subject, std::vector<LotId>> lotsOf;
    std::unordered_map<Uuid, std::vector<ScoreId>> scoresOf;             ///< by lot
    std::unordered_map<Uuid, std::vector<ObservationId>> observationsOf; ///< by plant or genotype
    std::unordered_map<Uuid, std::vector<ParentageId>> parentagesOf;     ///< by child
    std::set<Uuid> fetchedTastings;

  private:
    ImportDraft(const Store& store, UuidMaker& ids, Date today)
        : m_store(store), m_ids(ids), m_today(today) {}

    template <typename Thing>
    Outcome load(Drafts<Thing>& drafts);
    Outcome loadAll();
    void indexNames();
    void indexPlaces();
    using CrossKey = std::tuple<Uuid, Uuid, Pollination, int>;
    static CrossKey keyOfCross(const Cross& cross);
    std::optional<TreeFound> treeAt(LineCells& cells, const PlaceCell& place);
    std::optional<TreeFound> treeCalled(LineCells& cells, TableField field);
    std::optional<TreeFound> plantOfGenotype(LineCells& cells, TableField field, GenotypeId id);
    TreeFound found(PlantId plant) const;
    TrialRowId rowFor(SiteId site, const std::string& name, std::string& said);

    const Store& m_store;
    UuidMaker& m_ids;
    Date m_today;
    NameIndex m_genotypeNames;
    NameIndex m_crossNames;
    NameIndex m_siteNames;
    NameIndex m_speciesNames;
    NameIndex m_personNames;
    NameIndex m_tags;
    std::map<CrossKey, CrossId> m_crossByParents;
    std::map<std::pair<Uuid, std::int64_t>, PositionId> m_positionByOrdinal;
    std::unordered_map<Uuid, std::vector<PlantId>> m_plantsOf;
    std::unordered_map<Uuid, std::vector<PlantId>> m_plantsAt;
    std::unordered_map<Uuid, GenotypeId> m_genotypeOf; // by plant
    Drafts<Trait> m_traits;
    Drafts<TraitState> m_states;
};

/// The planning of one line, by the sort of table. Faults of the line are told through its cells;
/// then nothing of it may have been made.
bool planTree(LineCells& cells, ImportDraft& draft, std::string& said);
bool planParents(LineCells& cells, ImportDraft& draft, std::string& said);
bool planScore(LineCells& cells, ImportDraft& draft, std::string& said);
bool planWalkMark(LineCells& cells, ImportDraft& draft, std::string& said);

} // namespace pipwright
