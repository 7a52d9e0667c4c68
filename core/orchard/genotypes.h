#pragma once

#include "core/orchard/kinds.h"
#include "core/orchard/words.h"
#include "core/season/crop_year.h"
#include "core/season/date.h"

#include <cstdint>
#include <optional>
#include <string>

namespace pipwright {

/// A species and how it differs: species differ by this data, never by branches in the code.
struct Species {
    SpeciesId id;
    std::string key;
    std::string name;
    std::string latin;
    std::optional<std::int64_t> ploidy;
    YesNo selfCompatible = YesNo::unknown;
    RipeningPath ripeningPath = RipeningPath::unknown;
    std::optional<double> seedsPerFruit;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("key", self.key, "stable key of a shipped species; empty for the user's own");
        visit("name", self.name, "common name");
        visit("latin", self.latin, "botanical name");
        visit("ploidy", self.ploidy, "usual number of chromosome sets");
        visit("self_compatible", self.selfCompatible, "whether its own pollen sets seed");
        visit("ripening_path", self.ripeningPath, "how it gets from tree to prime");
        visit("seeds_per_fruit", self.seedsPerFruit, "good seeds in a fruit, typical");
        visit("notes", self.notes, "anything else");
    }
};

/// A cross made in a year; the seedlings raised from it are its family.
struct Cross {
    CrossId id;
    std::string code;
    std::optional<SpeciesId> species;
    std::optional<GenotypeId> seedParent;
    std::optional<GenotypeId> pollenParent;
    Pollination pollination = Pollination::unknown;
    std::optional<CropYear> cropYear;
    Purity purity = Purity::unknown;
    std::optional<std::int64_t> flowers;
    std::optional<std::int64_t> fruitsSet;
    std::optional<std::int64_t> seedsGot;
    std::optional<std::int64_t> seedsSown;
    std::optional<std::int64_t> germinated;
    std::optional<std::int64_t> planted;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("code", self.code, "the breeder's code of the cross");
        visit("species", self.species, "species of the family");
        visit("seed_parent", self.seedParent, "the mother");
        visit("pollen_parent", self.pollenParent, "the father, if known");
        visit("pollination", self.pollination, "how the pollen came");
        visit("crop_year", self.cropYear, "year of the bloom");
        visit("purity", self.purity, "how sure it had only the chosen pollen");
        visit("flowers", self.flowers, "flowers pollinated");
        visit("fruits_set", self.fruitsSet, "fruits set");
        visit("seeds_got", self.seedsGot, "seeds got");
        visit("seeds_sown", self.seedsSown, "seeds sown");
        visit("germinated", self.germinated, "seeds germinated");
        visit("planted", self.planted, "seedlings planted out");
        visit("notes", self.notes, "anything else");
    }
};

/// A genetic individual. Its parents are those of its cross unless a Parentage says otherwise.
struct Genotype {
    GenotypeId id;
    std::string code;
    std::string name;
    GenotypeKind kind = GenotypeKind::unknown;
    std::optional<SpeciesId> species;
    std::optional<CrossId> cross;
    std::optional<std::int64_t> ploidy;
    std::string selfAlleles;
    bool benchmark = false;
    std::string origin;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("code", self.code, "the breeder's code, any pattern");
        visit("name", self.name, "name, once it has one");
        visit("kind", self.kind, "seedling, selection, cultivar or rootstock");
        visit("species", self.species, "species");
        visit("cross", self.cross, "the cross it came from");
        visit("ploidy", self.ploidy, "number of chromosome sets, if it differs or was counted");
        visit("s_alleles", self.selfAlleles, "self-incompatibility alleles, as S2 S5");
        visit("benchmark", self.benchmark, "1 if others are judged against it");
        visit("origin", self.origin, "where it came from");
        visit("notes", self.notes, "anything else");
    }

    /// The name if it has one, else the code.
    [[nodiscard]] const std::string& called() const { return name.empty() ? code : name; }
};

/// Another name or code under which a genotype went.
struct Alias {
    AliasId id;
    GenotypeId genotype;
    std::string text;
    AliasKind kind = AliasKind::unknown;
    std::optional<Date> since;
    std::string notes;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("genotype", self.genotype, "whose alias");
        visit("text", self.text, "the other name or code");
        visit("kind", self.kind, "what sort of name");
        visit("since", self.since, "from when it was used");
        visit("notes", self.notes, "anything else");
    }
};

/// A dated assertion about one parent. Several candidates may stand side by side; the newest that
/// is not void and has the best confidence counts.
struct Parentage {
    ParentageId id;
    GenotypeId genotype;
    ParentRole role = ParentRole::unknown;
    std::optional<GenotypeId> parent;
    Pollination pollination = Pollination::unknown;
    Confidence confidence = Confidence::unknown;
    std::optional<Date> asserted;
    std::string evidence;
    std::string voidReason;

    template <typename Self, typename Visitor>
    static void fields(Self& self, Visitor& visit) {
        visit("genotype", self.genotype, "the child");
        visit("role", self.role, "seed or pollen parent");
        visit("parent", self.parent, "the parent, if it is in the book");
        visit("pollination", self.pollination, "how the pollen came");
        visit("confidence", self.confidence, "how sure");
        visit("asserted", self.asserted, "day it was asserted");
        visit("evidence", self.evidence, "on what grounds");
        visit("void_reason", self.voidReason, "why it no longer counts; empty while it does");
    }
};

} // namespace pipwright
