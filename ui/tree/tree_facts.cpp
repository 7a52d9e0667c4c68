#include "ui/tree/tree_facts.h"

#include "core/pedigree/descent.h"
#include "core/pedigree/inbreeding.h"
#include "core/pedigree/purdy.h"
#include "ui/book/open_book.h"

#include <algorithm>
#include <map>

namespace pipwright::ui {

namespace {

constexpr int kGenerations = 3;

/// F of one genotype, from its own ancestors alone: the others do not change it.
double inbreedingOf(const Pedigree& pedigree, int genotype) {
    std::map<int, int> numberOf;
    std::vector<int> members{genotype};
    numberOf[genotype] = 0;
    for (std::size_t at = 0; at < members.size(); ++at) {
        const Parents parents = pedigree.parentsOf(members[at]);
        for (const auto& parent : {parents.seed, parents.pollen}) {
            if (parent && numberOf.emplace(*parent, static_cast<int>(members.size())).second) {
                members.push_back(*parent);
            }
        }
    }
    const auto numbered = [&numberOf](const std::optional<int>& parent) {
        return parent ? std::optional(numberOf.at(*parent)) : std::nullopt;
    };
    std::vector<Parents> few;
    few.reserve(members.size());
    for (const int member : members) {
        const Parents parents = pedigree.parentsOf(member);
        few.push_back({numbered(parents.seed), numbered(parents.pollen)});
    }
    const auto part = Pedigree::of(few, [](int) { return std::string(); });
    return part ? inbreeding(*part).front() : 0.0;
}

template <typename Thing>
void note(std::unordered_set<Uuid>& records, const std::vector<Thing>& things) {
    for (const Thing& thing : things) {
        records.insert(thing.id.uuid);
    }
}

void noteLife(TreeFacts& facts) {
    auto& records = facts.records;
    const TreeLife& life = facts.life;
    note(records, life.identities);
    note(records, life.plantsOfGenotype);
    note(records, life.aliases);
    note(records, life.parentages);
    note(records, life.observations);
    note(records, life.decisions);
    note(records, life.wishes);
    note(records, life.photos);
    for (const TastedLot& tasted : life.tastings) {
        records.insert(tasted.lot.id.uuid);
        records.insert(tasted.tasting.id.uuid);
        note(records, tasted.scores);
    }
    for (const GraftedOrder& grafted : life.orders) {
        records.insert(grafted.order.id.uuid);
    }
}

void notePlaceAndKin(TreeFacts& facts) {
    const OrchardView& view = *facts.view;
    if (facts.plant) {
        facts.records.insert(view.plants()[*facts.plant].id.uuid);
        if (const auto place = view.placeOf(*facts.plant)) {
            facts.records.insert(view.positions()[place->position].id.uuid);
            facts.records.insert(view.rows()[place->row].id.uuid);
        }
    }
    if (facts.genotype) {
        const GenotypeEntry& entry = view.genotypes()[*facts.genotype];
        facts.records.insert(entry.id.uuid);
        if (entry.cross) {
            facts.records.insert(entry.cross->uuid);
        }
    }
    for (int number = 1; facts.ancestry && number <= facts.ancestry->depth(); ++number) {
        for (const auto& one : facts.ancestry->generation(number)) {
            if (one) {
                facts.records.insert(view.genotypes()[static_cast<Index>(*one)].id.uuid);
            }
        }
    }
}

bool changesKin(const Change& change) {
    return change.kind == Kind::parentage || change.kind == Kind::cross ||
           change.kind == Kind::genotype;
}

} // namespace

QString TreeFacts::code() const {
    if (plant) {
        return QString::fromStdString(view->plantCode(*plant));
    }
    return genotype ? QString::fromStdString(view->genotypes()[*genotype].code) : QString();
}

const Identity* TreeFacts::identity() const {
    if (!plant) {
        return nullptr;
    }
    const auto counts = view->plants()[*plant].identity;
    const auto found = std::find_if(life.identities.begin(), life.identities.end(),
                                    [&counts](const Identity& one) { return one.id == counts; });
    return found == life.identities.end() ? nullptr : &*found;
}

Result<std::optional<TreeFacts>> TreeReader::read() {
    TreeFacts facts;
    facts.view = m_book.view();
    facts.plant = m_book.currentPlant();
    facts.genotype = m_book.currentGenotype();
    if (!facts.plant && !facts.genotype) {
        return std::optional<TreeFacts>{};
    }
    auto life = facts.plant ? lifeOfPlant(*facts.view, m_book.store(), *facts.plant)
                            : lifeOfGenotype(*facts.view, m_book.store(), *facts.genotype);
    if (!life) {
        return life.problem();
    }
    facts.life = std::move(*life);
    if (facts.plant) {
        facts.hemisphere = facts.view->hemisphereOf(*facts.plant);
    } else if (!facts.view->sites().empty()) {
        facts.hemisphere = facts.view->sites().front().hemisphere;
    }
    readKin(facts);
    noteLife(facts);
    notePlaceAndKin(facts);
    return std::optional<TreeFacts>{std::move(facts)};
}

void TreeReader::readKin(TreeFacts& facts) {
    if (!facts.genotype) {
        return;
    }
    const OrchardView& view = *facts.view;
    const GenotypeEntry& entry = view.genotypes()[*facts.genotype];
    const Species* species = entry.species ? view.species(*entry.species) : nullptr;
    facts.ploidy = entry.ploidy         ? entry.ploidy
                   : species != nullptr ? species->ploidy
                                        : std::nullopt;
    if (!m_pedigree || m_pedigree->size() != static_cast<int>(view.genotypes().size())) {
        auto pedigree = view.pedigree();
        if (!pedigree) {
            return;
        }
        m_pedigree = std::move(*pedigree);
    }
    const int number = static_cast<int>(*facts.genotype);
    facts.ancestry.emplace(*m_pedigree, number, kGenerations);
    facts.relatives = relativesOf(*m_pedigree, number);
    const Descent descent = descentOf(
        *m_pedigree, number, kGenerations,
        [&view](int one) { return view.genotypes()[static_cast<Index>(one)].called(); },
        [&view](int one) {
            return view.parentsOf(static_cast<Index>(one)).pollination == Pollination::open;
        });
    facts.purdy = QString::fromStdString(writePurdy(descent));
    const Parents& parents = m_pedigree->parentsOf(number);
    if (parents.seed && parents.pollen && facts.ploidy.value_or(2) == 2) {
        facts.inbreeding = inbreedingOf(*m_pedigree, number);
    }
}

void TreeReader::heed(const std::vector<Change>& changes) {
    if (changes.empty() || std::any_of(changes.begin(), changes.end(), changesKin)) {
        m_pedigree.reset();
    }
}

bool TreeReader::touch(const std::vector<Change>& changes, const TreeFacts& facts) {
    const auto speaksOf = [&facts](const Value& value) {
        const auto* uuid = std::get_if<Uuid>(&value);
        return uuid != nullptr && facts.records.contains(*uuid);
    };
    return changes.empty() || std::any_of(changes.begin(), changes.end(), [&](const Change& one) {
               return changesKin(one) || one.kind == Kind::person ||
                      facts.records.contains(one.record) ||
                      std::any_of(one.fields.begin(), one.fields.end(),
                                  [&](const FieldChange& field) {
                                      return speaksOf(field.before) || speaksOf(field.after);
                                  });
           });
}

} // namespace pipwright::ui
