#include "core/evaluation/fruit_day.h"

#include "core/fruit/instrument.h"
#include "core/fruit/streif.h"
#include "core/orchard/dictionary.h"
#include "core/orchard/fruit_traits.h"
#include "core/orchard/inexact_value.h"

#include <algorithm>
#include <map>

namespace pipwright {

namespace {

/// Sums the readings of a trait up to their mean.
class Readings {
  public:
    void add(double low, double high) {
        m_low += low;
        m_high += high;
        ++m_number;
    }
    [[nodiscard]] std::optional<MeanReading> mean() const {
        if (m_number == 0) {
            return std::nullopt;
        }
        return MeanReading{m_low / m_number, m_high / m_number, m_number};
    }

  private:
    double m_low = 0;
    double m_high = 0;
    int m_number = 0;
};

struct DayReadings {
    FruitDay day;
    Readings solids;
    Readings acidity;
    Readings firmness;
    Readings starch;
};

struct Keys {
    TraitId solids = shippedTraitId(trait_key::kSolubleSolids);
    TraitId acidity = shippedTraitId(trait_key::kAcidity);
    TraitId firmness = shippedTraitId(trait_key::kFirmness);
    TraitId starch = shippedTraitId(trait_key::kStarchTen);
};

/// What was measured on: a plant, a genotype or a lot.
std::optional<Uuid> subjectOf(const Observation& one) {
    if (one.lot) {
        return one.lot->uuid;
    }
    if (one.plant) {
        return one.plant->uuid;
    }
    return one.genotype ? std::optional(one.genotype->uuid) : std::nullopt;
}

std::optional<MeanReading> boundsOf(const Observation& one) {
    const auto value = valueOf(one);
    const bool open =
        one.qualifier == Qualifier::lessThan || one.qualifier == Qualifier::greaterThan;
    if (!value || open) {
        return std::nullopt;
    }
    return MeanReading{value->low, value->high.value_or(value->low), 1};
}

void take(DayReadings& day, const Observation& one, const MeanReading& read, const Keys& keys) {
    if (one.trait == keys.solids) {
        const auto at20 = solidsAt20(one);
        const double correction = at20 && *at20 ? (*at20)->correction.number() : 0;
        day.solids.add(read.low + correction, read.high + correction);
        day.day.ratioBeside = one.id;
    } else if (one.trait == keys.acidity) {
        day.acidity.add(read.low, read.high);
    } else if (one.trait == keys.starch) {
        day.starch.add(read.low, read.high);
        day.day.streifBeside = one.id;
    } else if (probeNamed(one.instrument) == NamedProbe::apple) {
        day.firmness.add(read.low, read.high);
    } else {
        ++day.day.firmnessWithoutProbe;
    }
}

std::optional<double> streifOf(double kilograms, double brix, double step) {
    const auto firmness = Firmness<AppleProbe>::of(toNewtons(KilogramsForce{kilograms}));
    const auto starch = StarchIndex<StarchTen>::of(step);
    if (!firmness || !starch) {
        return std::nullopt;
    }
    const auto index = streifInKilograms({*firmness, Brix{brix}, *starch});
    return index ? std::optional(index->number()) : std::nullopt;
}

void derive(FruitDay& day) {
    if (day.solids && day.acidity) {
        const auto low = sugarAcidRatio(Brix{day.solids->low}, GramsPerLitre{day.acidity->high});
        const auto high = sugarAcidRatio(Brix{day.solids->high}, GramsPerLitre{day.acidity->low});
        if (low && high) {
            day.ratio = DerivedValue{*low, *high};
        }
    }
    if (day.firmness && day.solids && day.starch) {
        const auto low = streifOf(day.firmness->low, day.solids->high, day.starch->high);
        const auto high = streifOf(day.firmness->high, day.solids->low, day.starch->low);
        if (low && high) {
            const double newtons = toNewtons(KilogramsForce{1}).number();
            day.streifKilograms = DerivedValue{*low, *high};
            day.streifNewtons = DerivedValue{*low * newtons, *high * newtons};
        }
    }
}

} // namespace

std::optional<Result<BrixAt20>> solidsAt20(const Observation& solids) {
    const auto juice = juiceTemperatureNamed(solids.instrument);
    if (!juice || !solids.value) {
        return std::nullopt;
    }
    return brixAt20(Brix{*solids.value}, *juice, Refractometer::uncompensated);
}

std::vector<FruitDay> fruitDays(std::span<const Observation> observations) {
    const Keys keys;
    std::map<std::pair<Date, Uuid>, DayReadings> days;
    for (const Observation& one : observations) {
        const bool measured = one.trait == keys.solids || one.trait == keys.acidity ||
                              one.trait == keys.firmness || one.trait == keys.starch;
        const auto subject = subjectOf(one);
        const auto read = boundsOf(one);
        if (!measured || !subject || !read || !one.date || one.dateTo || !one.voidReason.empty()) {
            continue;
        }
        DayReadings& day = days[{*one.date, *subject}];
        day.day.date = *one.date;
        take(day, one, *read, keys);
    }
    std::vector<FruitDay> result;
    result.reserve(days.size());
    for (auto& [when, day] : days) {
        day.day.solids = day.solids.mean();
        day.day.acidity = day.acidity.mean();
        day.day.firmness = day.firmness.mean();
        day.day.starch = day.starch.mean();
        derive(day.day);
        result.push_back(day.day);
    }
    return result;
}

} // namespace pipwright
