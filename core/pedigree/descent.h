#pragma once

#include "core/pedigree/pedigree.h"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace pipwright {

/// What is known of where a genotype comes from, as words: a name, or a cross of two descents.
struct Descent {
    enum class Form {
        unknown,        ///< nothing is known
        named,          ///< by its name alone
        crossed,        ///< parents[0] as seed parent, parents[1] as pollen parent
        selfed,         ///< parents[0] with its own pollen
        openPollinated, ///< parents[0] with pollen of whatever flew
    };

    Form form = Form::unknown;
    std::string name; ///< when named
    std::vector<Descent> parents;

    static Descent nothingKnown() { return {}; }
    static Descent of(std::string name);
    /// A cross of a name with itself is a selfing.
    static Descent cross(Descent seed, Descent pollen);
    static Descent selfing(Descent seed);
    static Descent openPollination(Descent seed);

    bool operator==(const Descent&) const = default;
};

/// The descent of a genotype, back over so many generations or to those without known parents.
/// A genotype whose pollen parent is unknown is open pollinated if `isOpenPollinated` says so.
Descent descentOf(const Pedigree& pedigree, int genotype, int generationsBack,
                  const GenotypeName& nameOf, const std::function<bool(int)>& isOpenPollinated);

} // namespace pipwright
