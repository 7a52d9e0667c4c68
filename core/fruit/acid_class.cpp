#include "core/fruit/acid_class.h"

#include <cmath>

namespace pipwright {

std::optional<JuiceAcidity> juiceAcidity(GramsPerLitre malic) {
    // The classes are printed in hundredths of a percent, which are tenths of a gram in a litre.
    const double tenths = std::round(malic.number() * 10);
    if (!std::isfinite(tenths) || tenths < 0) {
        return std::nullopt;
    }
    if (tenths < 10) {
        return JuiceAcidity::veryLow;
    }
    if (tenths <= 35) {
        return JuiceAcidity::low;
    }
    if (tenths <= 60) {
        return JuiceAcidity::medium;
    }
    return tenths <= 90 ? JuiceAcidity::high : JuiceAcidity::veryHigh;
}

std::optional<CiderKind> ciderKind(GramsPerLitre malic, GramsPerLitre tannin) {
    constexpr double kAcid = 4.5;
    constexpr double kTannin = 2;
    const double acid = malic.number();
    const double bitter = tannin.number();
    if (!(acid >= 0) || !(bitter >= 0) || acid == kAcid || bitter == kTannin) { // NaN too
        return std::nullopt;
    }
    if (acid > kAcid) {
        return bitter > kTannin ? CiderKind::bittersharp : CiderKind::sharp;
    }
    return bitter > kTannin ? CiderKind::bittersweet : CiderKind::sweet;
}

} // namespace pipwright
