#pragma once

#include "core/evaluation/merit/verdict.h"

#include <string>
#include <string_view>

/// Verdicts in English, for the command line and for lists; the window has words of its own.
namespace pipwright {

/// Stable keys, as the command line prints them: "back_up_now", "above_best" and so on.
std::string_view keyOf(Suggestion suggestion);
std::string_view keyOf(SuggestionReason reason);
std::string_view keyOf(LadderLack lack);
std::string_view keyOf(RungGround ground);
std::string_view keyOf(RipeningBasis basis);
std::string_view keyOf(MeritBasis basis);
std::string_view keyOf(Gate gate);

/// What is asked at a gate; "" where there is none.
std::string_view questionOf(Gate gate);
/// Why a benchmark stands on a rung: "proposed: the highest expected merit of the slot".
std::string_view sentenceOf(RungGround ground);
/// "2 fair lots of 5, 3 tasters, 4 sittings, 2 crop years".
std::string evidenceLine(const GenotypeMerit& evidence);
/// "scab 4.0 in 2024, 4 rules it out (3 readings)".
std::string sentenceOf(const Fault& fault);
/// Why the suggestion, with the figures it rests on, as one sentence.
std::string reasonSentence(const OrchardView& view, const SeedlingVerdict& verdict,
                           const VerdictChoices& choices);
/// "84 %", "over 99 %", "under 1 %".
std::string percentText(double chance);

} // namespace pipwright
