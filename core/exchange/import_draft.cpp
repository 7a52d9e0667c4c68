#include "core/exchange/import_draft.h"

#include "core/orchard/dictionary.h"
#include "core/season/crop_season.h"

#include <algorithm>
#include <charconv>

namespace pipwright {

namespace {

void say(std::string& said, const std::string& words) {
    said += (said.empty() ? "" : "; ") + words;
}

std::optional<std::int64_t> numberIn(const std::string& text) {
    std::int64_t number = 0;
    const char* const end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, number);
    return error == std::errc{} && stop == end && !text.empty() ? std::optional(number)
                                                                : std::nullopt;
}

template <typename Id>
std::optional<Id> firstOf(const std::vector<Uuid>& found) {
    return found.empty() ? std::nullopt : std::optional(Id(found.front()));
}

} // namespace

ParentCell parentCell(const std::string& text) {
    std::string key = wordKey(text);
    std::erase(key, '.');
    if (key.empty() || key == "?" || key == "unknown") {
        return {};
    }
    if (key == "op" || key == "open" || key == "openpollinated" || key == "openpollination") {
        return {std::nullopt, Pollination::open};
    }
    if (key == "self" || key == "selfed" || key == "selfing") {
        return {std::nullopt, Pollination::self};
    }
    return {text, Pollination::controlled};
}

template <typename Thing>
Outcome ImportDraft::load(Drafts<Thing>& drafts) {
    return m_store.scan(KindOf<Thing>::value, {}, [&drafts](const Record& record) {
        drafts.know(fromRecord<Thing>(record));
        return true;
    });
}

Outcome ImportDraft::loadAll() {
    for (auto outcome : {load(sites), load(rows), load(positions), load(species), load(genotypes),
                         load(crosses), load(parentages), load(plants), load(identities),
                         load(persons), load(tastings), load(m_traits), load(m_states)}) {
        if (!outcome) {
            return outcome;
        }
    }
    return m_store.scan(Kind::alias, {}, [this](const Record& record) {
        const auto alias = fromRecord<Alias>(record);
        m_genotypeNames.addAlias(alias.text, alias.genotype.uuid);
        return true;
    });
}

Result<std::unique_ptr<ImportDraft>> ImportDraft::over(const Store& store, UuidMaker& ids,
                                                       Date today) {
    std::unique_ptr<ImportDraft> draft(new ImportDraft(store, ids, today));
    if (auto outcome = draft->loadAll(); !outcome) {
        return outcome.problem();
    }
    draft->indexNames();
    draft->indexPlaces();
    draft->makeDictionary();
    return draft;
}

void ImportDraft::indexNames() {
    genotypes.forEach([this](const Genotype& one) {
        for (const auto& name : {one.code, one.name}) {
            if (!name.empty()) {
                m_genotypeNames.add(name, one.id.uuid);
            }
        }
    });
    crosses.forEach([this](const Cross& one) {
        m_crossNames.add(one.code, one.id.uuid);
        m_crossByParents.emplace(keyOfCross(one), one.id);
    });
    parentages.forEach(
        [this](const Parentage& one) { parentagesOf[one.genotype.uuid].push_back(one.id); });
    sites.forEach([this](const Site& one) { m_siteNames.add(one.name, one.id.uuid); });
    species.forEach([this](const Species& one) {
        m_speciesNames.add(one.name, one.id.uuid);
        m_speciesNames.addAlias(one.latin, one.id.uuid);
    });
    persons.forEach([this](const Person& one) {
        m_personNames.add(one.name, one.id.uuid);
        m_personNames.addAlias(one.initials, one.id.uuid);
    });
}

void ImportDraft::indexPlaces() {
    positions.forEach([this](const Position& one) {
        m_positionByOrdinal.emplace(std::pair(one.row.uuid, one.ordinal), one.id);
    });
    std::unordered_map<Uuid, const Identity*> counts; // of a plant, the newest that is not void
    identities.forEach([&counts](const Identity& one) {
        const Identity*& newest = counts[one.plant.uuid];
        if (one.voidReason.empty() &&
            (newest == nullptr ||
             std::tuple(newest->asserted, newest->id) < std::tuple(one.asserted, one.id))) {
            newest = &one;
        }
    });
    plants.forEach([&](const Plant& one) {
        const auto identity = counts.find(one.id.uuid);
        if (identity != counts.end() && identity->second != nullptr && identity->second->genotype) {
            m_genotypeOf.emplace(one.id.uuid, *identity->second->genotype);
            m_plantsOf[identity->second->genotype->uuid].push_back(one.id);
        }
        if (one.position) {
            m_plantsAt[one.position->uuid].push_back(one.id);
        }
        if (!one.tag.empty()) {
            m_tags.add(one.tag, one.id.uuid);
        }
    });
}

ImportDraft::CrossKey ImportDraft::keyOfCross(const Cross& cross) {
    return {cross.seedParent ? cross.seedParent->uuid : Uuid{},
            cross.pollenParent ? cross.pollenParent->uuid : Uuid{},
            cross.pollenParent ? Pollination::controlled : cross.pollination,
            cross.cropYear ? cross.cropYear->year : 0};
}

std::optional<GenotypeId> ImportDraft::genotype(LineCells& cells, TableField field,
                                                const std::string& name) {
    const auto& all = m_genotypeNames.find(name);
    if (all.size() > 1) {
        std::string codes;
        for (const Uuid& id : all) {
            codes += (codes.empty() ? "" : ", ") + genotypes.at(id).code;
        }
        cells.fault(field, "\"" + name + "\" could be any of: " + codes + ".",
                    "Write the code of the one that is meant, exactly.");
    }
    return firstOf<GenotypeId>(all);
}

std::optional<CrossId> ImportDraft::cross(LineCells& cells, const std::string& code) {
    const auto& all = m_crossNames.find(code);
    if (all.size() > 1) {
        cells.fault(TableField::cross, "several crosses are called \"" + code + "\".",
                    "Give them codes of their own in the book first.");
    }
    return firstOf<CrossId>(all);
}

std::optional<PlaceCell> ImportDraft::place(LineCells& cells) {
    using enum TableField;
    PlaceCell found;
    found.site =
        cells.isEmpty(TableField::site) ? cells.recipe().site : cells.text(TableField::site);
    std::string ordinal = cells.text(TableField::place);
    found.row = cells.text(TableField::row);
    TableField field = TableField::place;
    if (const std::string both = cells.text(rowAndPlace); !both.empty()) {
        field = rowAndPlace;
        const std::size_t slash = both.rfind('/');
        found.row = std::string(trimmed(std::string_view(both).substr(0, slash)));
        ordinal = slash == std::string::npos ? "" : std::string(trimmed(both.substr(slash + 1)));
    }
    if (found.row.empty() && ordinal.empty()) {
        return std::nullopt;
    }
    const auto number = numberIn(ordinal);
    if (found.row.empty() || !number || *number < 0) {
        cells.fault(field, "row and position do not say where the tree stands.",
                    "Give both, the position as a whole number (together as 3/14).");
        return std::nullopt;
    }
    found.ordinal = *number;
    return found;
}

std::optional<SiteId> ImportDraft::site(LineCells& cells, const std::string& name) {
    if (!name.empty()) {
        return firstOf<SiteId>(m_siteNames.find(name));
    }
    if (sites.size() > 1) {
        cells.fault(TableField::site,
                    "the book has several sites, and the line does not say which.",
                    "Assign a column to the site, or name the site in the recipe.");
    }
    std::optional<SiteId> only;
    sites.forEach([&only](const Site& one) { only = one.id; });
    return only;
}

std::optional<TrialRowId> ImportDraft::row(std::optional<SiteId> site,
                                           const std::string& name) const {
    std::optional<TrialRowId> found;
    const auto number = numberIn(name);
    rows.forEach([&](const TrialRow& one) {
        const bool called =
            one.name.empty() ? number == one.number : wordKey(one.name) == wordKey(name);
        if (site == one.site && called) {
            found = one.id;
        }
    });
    return found;
}

std::optional<PositionId> ImportDraft::position(TrialRowId inRow, std::int64_t ordinal) const {
    const auto found = m_positionByOrdinal.find({inRow.uuid, ordinal});
    return found == m_positionByOrdinal.end() ? std::nullopt : std::optional(found->second);
}

const std::vector<PlantId>& ImportDraft::plantsOf(GenotypeId id) const {
    static const std::vector<PlantId> none;
    const auto all = m_plantsOf.find(id.uuid);
    return all == m_plantsOf.end() ? none : all->second;
}

const std::vector<PlantId>& ImportDraft::plantsAt(PositionId id) const {
    static const std::vector<PlantId> none;
    const auto all = m_plantsAt.find(id.uuid);
    return all == m_plantsAt.end() ? none : all->second;
}

std::optional<GenotypeId> ImportDraft::genotypeOf(PlantId plant) const {
    const auto known = m_genotypeOf.find(plant.uuid);
    return known == m_genotypeOf.end() ? std::nullopt : std::optional(known->second);
}

bool ImportDraft::isDead(PlantId plant) const {
    const PlantState state = plants.at(plant.uuid).state;
    return state == PlantState::dead || state == PlantState::removed;
}

CropYear ImportDraft::cropYear(std::optional<PlantId> plant, Date day) const {
    if (plant && plants.at(plant->uuid).position) {
        const auto& where = positions.at(plants.at(plant->uuid).position->uuid);
        const auto& ground = sites.at(rows.at(where.row.uuid).site.uuid);
        if (ground.hemisphere != Hemisphere::unknown) {
            return proposedCropYear(day,
                                    ground.hemisphere == Hemisphere::south ? SeasonSide::southern
                                                                           : SeasonSide::northern,
                                    CropRecord::fruit);
        }
    }
    return CropYear{day.year()};
}

void ImportDraft::makeDictionary() {
    for (const auto& one : shippedSpecies()) {
        if (!species.contains(one.id.uuid)) {
            m_speciesNames.add(one.name, one.id.uuid);
            m_speciesNames.addAlias(one.latin, one.id.uuid);
            species.create(one);
        }
    }
    for (const auto& one : shippedTraits()) {
        if (!m_traits.contains(one.id.uuid)) {
            m_traits.create(one);
        }
    }
    for (const auto& one : shippedTraitStates()) {
        if (!m_states.contains(one.id.uuid)) {
            m_states.create(one);
        }
    }
}

GenotypeId ImportDraft::genotypeFor(std::optional<GenotypeId> known, const std::string& code,
                                    std::string& said) {
    if (known) {
        return *known;
    }
    // Made by an earlier cell of the same line?
    if (const auto made = firstOf<GenotypeId>(m_genotypeNames.find(code))) {
        return *made;
    }
    auto one = fresh<Genotype>();
    one.code = code;
    m_genotypeNames.add(code, one.id.uuid);
    say(said, "new genotype " + code);
    return genotypes.create(one).id;
}

TrialRowId ImportDraft::rowFor(SiteId ground, const std::string& name, std::string& said) {
    if (const auto known = row(ground, name)) {
        return *known;
    }
    auto one = fresh<TrialRow>();
    one.site = ground;
    if (const auto number = numberIn(name)) {
        one.number = *number;
    } else {
        one.name = name;
        rows.forEach([&](const TrialRow& other) {
            one.number = other.site == ground ? std::max(one.number, other.number) : one.number;
        });
        ++one.number;
    }
    say(said, "new row " + name);
    return rows.create(one).id;
}

PositionId ImportDraft::positionFor(const PlaceCell& where, std::optional<SiteId> known,
                                    std::string& said) {
    if (!known) {
        auto ground = fresh<Site>();
        ground.name = where.site.empty() ? "Orchard" : where.site;
        m_siteNames.add(ground.name, ground.id.uuid);
        say(said, "new site " + ground.name);
        known = sites.create(ground).id;
    }
    const TrialRowId inRow = rowFor(*known, where.row, said);
    if (const auto there = position(inRow, where.ordinal)) {
        return *there;
    }
    auto one = fresh<Position>();
    one.row = inRow;
    one.ordinal = where.ordinal;
    m_positionByOrdinal.emplace(std::pair(inRow.uuid, one.ordinal), one.id);
    return positions.create(one).id;
}

CrossId ImportDraft::crossFor(std::optional<GenotypeId> seed, std::optional<GenotypeId> pollen,
                              Pollination pollination, std::optional<CropYear> year,
                              const std::string& code, std::string& said) {
    auto one = fresh<Cross>();
    one.seedParent = seed;
    one.pollenParent = pollen;
    one.pollination = pollination;
    one.cropYear = year;
    const auto called = [this](const std::optional<GenotypeId>& id) {
        return id ? genotypes.at(id->uuid).called() : std::string("?");
    };
    if (code.empty()) {
        if (const auto known = m_crossByParents.find(keyOfCross(one));
            known != m_crossByParents.end()) {
            return known->second;
        }
        one.code = called(seed) + " x " +
                   (pollination == Pollination::open ? "open" : called(pollen)) +
                   (year ? " " + std::to_string(year->year) : "");
    } else {
        one.code = code;
    }
    m_crossByParents.emplace(keyOfCross(one), one.id);
    m_crossNames.add(one.code, one.id.uuid);
    say(said, "new cross " + one.code);
    return crosses.create(one).id;
}

SpeciesId ImportDraft::speciesFor(const std::string& name, std::string& said) {
    if (const auto known = firstOf<SpeciesId>(m_speciesNames.find(name))) {
        return *known;
    }
    auto one = fresh<Species>();
    one.name = name;
    m_speciesNames.add(name, one.id.uuid);
    say(said, "new species " + name);
    return species.create(one).id;
}

PersonId ImportDraft::personFor(const std::string& name, std::string& said) {
    if (const auto known = firstOf<PersonId>(m_personNames.find(name))) {
        return *known;
    }
    auto one = fresh<Person>();
    one.name = name;
    one.tastes = true;
    m_personNames.add(name, one.id.uuid);
    say(said, "new person " + name);
    return persons.create(one).id;
}

PlantId ImportDraft::newPlant(Plant plant, GenotypeId of, Identity identity) {
    m_plantsOf[of.uuid].push_back(plant.id);
    m_genotypeOf.emplace(plant.id.uuid, of);
    if (plant.position) {
        m_plantsAt[plant.position->uuid].push_back(plant.id);
    }
    if (!plant.tag.empty()) {
        m_tags.add(plant.tag, plant.id.uuid);
    }
    identity.plant = plant.id;
    identity.genotype = of;
    identities.create(std::move(identity));
    return plants.create(std::move(plant)).id;
}

void ImportDraft::addTo(ChangeSet& set) const {
    const auto add = [&set](const auto&... drafts) { (drafts.addTo(set), ...); };
    add(persons, sites, rows, positions, species, m_traits, m_states, crosses, genotypes,
        parentages, plants, identities, decisions, tastings, lots, scores, observations);
}

} // namespace pipwright
