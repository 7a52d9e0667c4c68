#pragma once

#include "core/history/record.h"

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace pipwright {

/// What makes somebody a parent: an assertion, or the cross a genotype came from.
struct ParentLink {
    Kind kind = Kind::parentage;
    Uuid record;
    std::int64_t line = 0; ///< as given with the record
};

/// A ring of ancestors: their codes, each the parent of the next and the last of the first, and
/// the link that would best be doubted.
struct PedigreeRing {
    std::vector<std::string> codes;
    ParentLink link;

    /// "AP17-001 > AP19-004 > AP17-001"
    [[nodiscard]] std::string text() const;
};

/// Gathers who is whose parent from records as they go by, and finds who would be their own
/// ancestor. A genotype's parents are those of its cross, unless an assertion that is not void
/// says otherwise: of several the one with the best confidence counts, then the newest.
class PedigreeRings {
  public:
    /// Takes up crosses, genotypes and parentages; other kinds are passed over. `line` comes back
    /// in the ring's link.
    void note(const Record& record, std::int64_t line);
    /// The rings, at most `most` of them, each with a link of its own.
    [[nodiscard]] std::vector<PedigreeRing> find(std::size_t most = 20) const;

  private:
    using Pair = std::array<std::optional<Uuid>, 2>; // seed parent, pollen parent
    struct Child {
        std::string code;
        std::optional<Uuid> cross;
        std::int64_t line = 0;
    };
    struct Assertion {
        std::optional<Uuid> parent;
        int confidence = 0; // the greater the surer
        std::optional<Date> asserted;
        Uuid id;
        std::int64_t line = 0;
    };
    struct Link {
        int parent = 0;
        ParentLink from;
    };
    using Links = std::vector<std::array<std::optional<Link>, 2>>;

    void noteAssertion(const Record& record, std::int64_t line);
    [[nodiscard]] Links links(const std::unordered_map<Uuid, int>& numbers,
                              const std::vector<Uuid>& children) const;

    std::unordered_map<Uuid, Pair> m_crosses;
    std::unordered_map<Uuid, Child> m_children;
    std::unordered_map<Uuid, std::array<std::optional<Assertion>, 2>> m_assertions;
};

} // namespace pipwright
