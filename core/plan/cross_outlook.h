#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/history/store.h"
#include "core/pedigree/self_incompatibility.h"
#include "core/plan/possible_alleles.h"
#include "core/units/result.h"

#include <optional>
#include <string>
#include <vector>

namespace pipwright {

/// Two genotypes of the book whose pollen and style are to meet, or have met.
struct CrossOfTwo {
    std::optional<Index> seedParent;
    std::optional<Index> pollenParent;
    /// Says how the pollen came where no pollen parent is named; `self` makes it the seed parent.
    Pollination pollination = Pollination::controlled;
    std::optional<CropYear> year; ///< of the bloom
    std::optional<CrossId> made;  ///< the cross in the book, if it is one
};

/// What a founder is expected to give the seedlings.
struct FounderPart {
    Index founder;
    double share; ///< 0 to 1
};

/// What any of the other trees would mean as the unknown father of open-pollinated seedlings.
struct AnyFather {
    int fathers = 0;              ///< growing genotypes of the species beside the seed parent
    double meanInbreeding = 0;    ///< F of the seedlings, if each is as likely
    double mostInbreeding = 0;    ///< if it was the nearest relative ...
    std::optional<Index> nearest; ///< ... this one; nothing when none is related
};

/// Why S alleles say nothing, or that they do.
enum class SWord {
    predicted,
    notSelfIncompatible, ///< the species' own pollen sets seed
    pollenUnknown,
    allelesMissing, ///< of one parent or both
    unreadable      ///< what stands in the book as S alleles cannot be read
};

/// What can be said of a cross before its seedlings bear.
struct CrossOutlook {
    // Self-incompatibility.
    SWord sWord = SWord::allelesMissing;
    std::optional<SCompatibility> compatibility; ///< when predicted
    std::string seedAlleles;                     ///< as written in the book
    std::string pollenAlleles;
    /// Where alleles are missing: what each of the two may have, by its own parents; and what
    /// becomes of the pollen, when that says something of both.
    std::vector<SClass> seedPossible;
    std::vector<SClass> pollenPossible;
    std::optional<PossiblePollen> possible;
    /// It is not known whether the species rejects its own pollen; the prediction holds if so.
    bool incompatibilityUnsure = false;
    std::vector<Index> contradicted; ///< seedlings whose S alleles these parents cannot give

    // Kinship.
    std::optional<double> inbreeding;   ///< F of the seedlings; nothing with an unknown parent
    std::optional<Problem> noF;         ///< why F is not computed, though both are known
    std::optional<AnyFather> anyFather; ///< of an open pollination
    std::vector<FounderPart> founders;  ///< the largest first
    double unknownShare = 0;            ///< of the ancestry; F may be higher by what it hides
    bool unsureShares = false; ///< a triploid ancestor, of which parent two sets is not known

    // Warnings.
    std::vector<Index> triploids; ///< among the two
    std::vector<Index> tooYoung;  ///< parents that came from no earlier bloom than this one
};

/// Reads what the book knows of the two. Problem: the pedigree has a ring, the store fails.
Result<CrossOutlook> outlookOf(const OrchardView& view, const Store& store,
                               const CrossOfTwo& cross);

} // namespace pipwright
