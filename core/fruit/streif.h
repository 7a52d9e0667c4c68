#pragma once

#include "core/fruit/firmness.h"
#include "core/fruit/juice.h"
#include "core/fruit/starch.h"
#include "core/units/quantity.h"
#include "core/units/result.h"

namespace pipwright {

/// The picking index of Streif with the firmness in kilograms (of the apple probe, about per square
/// centimetre): the convention of KOB Bavendorf.
using StreifKilograms = Quantity<struct StreifKilogramUnit>;
/// The same with the firmness in newtons, 9.80665 times as high: the convention of NIAB and of
/// DLR Rheinland-Pfalz. A window published in one is meaningless in the other.
using StreifNewtons = Quantity<struct StreifNewtonUnit>;

/// What the index is made of, all of the same fruit on the same day. It falls as fruit ripens.
struct StreifParts {
    Firmness<AppleProbe> firmness;
    Brix solids;
    StarchIndex<StarchTen> starch;
};

/// Firmness / (soluble solids x starch). A Problem when there are no soluble solids.
Result<StreifKilograms> streifInKilograms(const StreifParts& parts);
Result<StreifNewtons> streifInNewtons(const StreifParts& parts);

} // namespace pipwright
