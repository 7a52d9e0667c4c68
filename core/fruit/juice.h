#pragma once

#include "core/units/quantity.h"
#include "core/units/result.h"

#include <string_view>

namespace pipwright {

/// Soluble solids of the juice as a refractometer shows them: percent by mass of sucrose that
/// would bend light alike.
using Brix = Quantity<struct DegreeBrixUnit>;

/// Grams of an acid in a litre of juice. A tenth of it is what the trade calls percent.
using GramsPerLitre = Quantity<struct GramPerLitreUnit>;
/// Grams of an acid in a hundred grams of juice or flesh: percent by mass.
using GramsPer100Grams = Quantity<struct GramPer100GramUnit>;
using Millilitres = Quantity<struct MillilitreUnit>;
/// Moles of alkali in a litre.
using MolesPerLitre = Quantity<struct MolePerLitreUnit>;

/// A refractometer either corrects for the temperature of the juice itself ("ATC") or not.
enum class Refractometer { compensated, uncompensated };

/// A reading brought to 20 degrees Celsius.
struct BrixAt20 {
    Brix value;
    Brix correction; ///< what was added; zero for a compensated refractometer
    /// Whether the rows of the table it comes from were read in print; else they are remembered
    /// numbers (above 21 degrees), to be trusted to a few hundredths only.
    bool fromPrint = true;
};

/// Which of the two official tables the correction follows: they differ by up to 0.02.
inline constexpr std::string_view kBrixTable =
    "international sugar table of 1936 for refractometers set at 20 degrees Celsius";

/// The reading at 20 degrees, by kBrixTable between its rows and columns in straight lines. A
/// Problem outside the table (10 to 30 degrees Celsius, 0 to 30 Brix). A compensated refractometer
/// has done it already: nothing is added, at any temperature.
Result<BrixAt20> brixAt20(Brix reading, Celsius juice, Refractometer refractometer);

/// The acid that the result is expressed in.
enum class Acid { malic, citric, tartaric };

/// Grams of acid that one mole of alkali neutralises. The trade rounds them (67, 64, 75); printed
/// results mostly come from these.
enum class AcidEquivalent {
    rounded,
    exact, ///< from the molar masses 134.0874, 192.1235 and 150.0868 g/mol
};

double gramsPerMoleOfAlkali(Acid acid, AcidEquivalent equivalent);

/// Alkali of a known strength used until the end point (pH 8.1 to 8.2). It burns eyes and skin:
/// goggles and gloves, never a pipette by mouth, and nobody tastes the juice afterwards.
struct Titration {
    Millilitres alkali;
    MolesPerLitre strength;
};

/// Acid of a sample measured by volume. A Problem for a sample of nothing, negative amounts, NaN.
Result<GramsPerLitre> acidOf(const Titration& titration, Millilitres sample, Acid acid,
                             AcidEquivalent equivalent = AcidEquivalent::rounded);

/// Acid of a sample that was weighed.
Result<GramsPer100Grams> acidOf(const Titration& titration, Grams sample, Acid acid,
                                AcidEquivalent equivalent = AcidEquivalent::rounded);

/// The same acidity in terms of another acid, as malic for a table that is in citric.
GramsPerLitre inTermsOf(Acid wanted, GramsPerLitre acidity, Acid given,
                        AcidEquivalent equivalent = AcidEquivalent::rounded);

/// Soluble solids over acid in percent (g in 100 mL): how sweet the juice is for its acid. A
/// Problem when there is no acid.
Result<double> sugarAcidRatio(Brix solids, GramsPerLitre acidity);

/// Soluble solids less a multiple of the acid in percent; the multiple depends on the kind of
/// fruit and is the user's.
Result<Brix> sugarLessAcid(Brix solids, GramsPerLitre acidity, double multiple);

} // namespace pipwright
