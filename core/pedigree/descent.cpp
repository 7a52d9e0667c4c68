#include "core/pedigree/descent.h"

#include <utility>

namespace pipwright {

Descent Descent::of(std::string name) {
    return {Form::named, std::move(name), {}};
}

Descent Descent::cross(Descent seed, Descent pollen) {
    if (seed.form == Form::named && seed == pollen) {
        return selfing(std::move(seed));
    }
    Descent descent{Form::crossed, {}, {}};
    descent.parents.push_back(std::move(seed));
    descent.parents.push_back(std::move(pollen));
    return descent;
}

Descent Descent::selfing(Descent seed) {
    Descent descent{Form::selfed, {}, {}};
    descent.parents.push_back(std::move(seed));
    return descent;
}

Descent Descent::openPollination(Descent seed) {
    Descent descent{Form::openPollinated, {}, {}};
    descent.parents.push_back(std::move(seed));
    return descent;
}

Descent descentOf(const Pedigree& pedigree, int genotype, int generationsBack,
                  const GenotypeName& nameOf, const std::function<bool(int)>& isOpenPollinated) {
    const Parents both = pedigree.parentsOf(genotype);
    if (generationsBack <= 0 || (!both.seed && !both.pollen)) {
        return Descent::of(nameOf(genotype));
    }
    const auto of = [&](std::optional<int> parent) {
        return parent ? descentOf(pedigree, *parent, generationsBack - 1, nameOf, isOpenPollinated)
                      : Descent::nothingKnown();
    };
    if (both.seed == both.pollen) {
        return Descent::selfing(of(both.seed));
    }
    if (!both.pollen && isOpenPollinated(genotype)) {
        return Descent::openPollination(of(both.seed));
    }
    return Descent::cross(of(both.seed), of(both.pollen));
}

} // namespace pipwright
