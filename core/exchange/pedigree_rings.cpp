#include "core/exchange/pedigree_rings.h"

#include "core/orchard/orchard.h"
#include "core/pedigree/pedigree.h"

#include <algorithm>
#include <tuple>

namespace pipwright {

namespace {

template <typename Thing>
std::optional<Uuid> uuidOf(const std::optional<Id<Thing>>& id) {
    return id ? std::optional(id->uuid) : std::nullopt;
}

int rankOf(Confidence confidence) {
    switch (confidence) {
    case Confidence::sure:
        return 3;
    case Confidence::byMap:
        return 2;
    case Confidence::byFruit:
        return 1;
    case Confidence::unknown:
        break;
    }
    return 0;
}

} // namespace

std::string PedigreeRing::text() const {
    std::string text;
    for (const auto& code : codes) {
        text += code + " > ";
    }
    return codes.empty() ? text : text + codes.front();
}

void PedigreeRings::note(const Record& record, std::int64_t line) {
    if (record.kind == Kind::cross) {
        const auto cross = fromRecord<Cross>(record);
        m_crosses[record.id] = {uuidOf(cross.seedParent), uuidOf(cross.pollenParent)};
    } else if (record.kind == Kind::genotype) {
        const auto genotype = fromRecord<Genotype>(record);
        m_children[record.id] = {genotype.code.empty() ? genotype.called() : genotype.code,
                                 uuidOf(genotype.cross), line};
    } else if (record.kind == Kind::parentage) {
        noteAssertion(record, line);
    }
}

void PedigreeRings::noteAssertion(const Record& record, std::int64_t line) {
    const auto parentage = fromRecord<Parentage>(record);
    if (!parentage.voidReason.empty() || parentage.role == ParentRole::unknown) {
        return;
    }
    auto& known = m_assertions[parentage.genotype.uuid][parentage.role == ParentRole::seed ? 0 : 1];
    const Assertion next{uuidOf(parentage.parent), rankOf(parentage.confidence), parentage.asserted,
                         record.id, line};
    const auto weight = [](const Assertion& one) {
        return std::tuple(one.confidence, one.asserted, one.id);
    };
    if (!known || weight(*known) < weight(next)) {
        known = next;
    }
}

PedigreeRings::Links PedigreeRings::links(const std::unordered_map<Uuid, int>& numbers,
                                          const std::vector<Uuid>& children) const {
    Links all(children.size());
    for (std::size_t i = 0; i < children.size(); ++i) {
        const Child& child = m_children.at(children[i]);
        const auto asserted = m_assertions.find(children[i]);
        const auto cross = child.cross ? m_crosses.find(*child.cross) : m_crosses.end();
        for (const std::size_t role : {std::size_t{0}, std::size_t{1}}) {
            std::optional<Uuid> parent;
            ParentLink from{Kind::genotype, children[i], child.line};
            if (asserted != m_assertions.end() && asserted->second[role]) {
                parent = asserted->second[role]->parent;
                from = {Kind::parentage, asserted->second[role]->id, asserted->second[role]->line};
            } else if (cross != m_crosses.end()) {
                parent = cross->second[role];
            }
            const auto number = parent ? numbers.find(*parent) : numbers.end();
            if (number != numbers.end()) {
                all[i][role] = Link{number->second, from};
            }
        }
    }
    return all;
}

std::vector<PedigreeRing> PedigreeRings::find(std::size_t most) const {
    std::vector<Uuid> children;
    children.reserve(m_children.size());
    for (const auto& [id, child] : m_children) {
        children.push_back(id);
    }
    std::sort(children.begin(), children.end()); // the same rings in every run
    std::unordered_map<Uuid, int> numbers;
    std::vector<Parents> parents(children.size());
    for (std::size_t i = 0; i < children.size(); ++i) {
        numbers.emplace(children[i], static_cast<int>(i));
    }
    const Links from = links(numbers, children);
    for (std::size_t i = 0; i < children.size(); ++i) {
        const auto parentOf = [&](std::size_t role) {
            return from[i][role] ? std::optional(from[i][role]->parent) : std::nullopt;
        };
        parents[i] = {parentOf(0), parentOf(1)};
    }
    std::vector<PedigreeRing> rings;
    while (rings.size() < most) {
        const auto ring = ringAmong(parents);
        if (!ring) {
            break;
        }
        PedigreeRing found;
        std::size_t doubted = 0;
        std::size_t doubtedRole = 0;
        bool chosen = false;
        for (std::size_t i = 0; i < ring->size(); ++i) {
            const auto child = static_cast<std::size_t>((*ring)[i]);
            const int parent = (*ring)[(i + ring->size() - 1) % ring->size()];
            found.codes.push_back(m_children.at(children[child]).code);
            const std::size_t role = parents[child].seed == parent ? 0 : 1;
            const ParentLink& link = from[child][role]->from;
            // An assertion is doubted rather than the cross, the later line rather than the
            // earlier.
            const bool better =
                !chosen || std::tuple(link.kind == Kind::parentage, link.line) >
                               std::tuple(found.link.kind == Kind::parentage, found.link.line);
            if (better) {
                std::tie(found.link, doubted, doubtedRole, chosen) =
                    std::tuple(link, child, role, true);
            }
        }
        (doubtedRole == 0 ? parents[doubted].seed : parents[doubted].pollen).reset();
        rings.push_back(std::move(found));
    }
    return rings;
}

} // namespace pipwright
