#pragma once

#include "core/evaluation/merit/settle.h"
#include "core/evaluation/merit/verdict.h"
#include "core/evaluation/orchard_view.h"

#include <QString>

/// Verdicts and what leads to them, in the window's language.
namespace pipwright::ui {

/// "cull", "back up now", "not enough yet" ...
QString suggestionWord(Suggestion suggestion);
/// Why that is suggested, with the figures, as one sentence.
QString reasonWords(const OrchardView& view, const SeedlingVerdict& verdict,
                    const VerdictChoices& choices);
/// "2 fair lots of 5, 3 tasters, 2 crop years"; "never tasted".
QString evidenceWords(const GenotypeMerit& evidence);
/// "7.4 ± 0.6"; "not known yet" without a merit.
QString meritWords(const SeedlingVerdict& verdict);
/// "7.4 ± 0.6; P(beats best of its slot, Odo) 57 %": one line, with what is missing in words.
QString verdictLine(const OrchardView& view, const SeedlingVerdict& verdict);
/// "scab 5.0 in 2024, ruled out from 4.0 on (3 readings)".
QString faultWords(const Fault& fault);
QString faultName(FaultKind kind);
/// Why there is no rung to be held against; empty when there is one.
QString lackWords(LadderLack lack);
/// What is asked at the gate a seedling stands before; empty where there is none.
QString gateWords(Gate gate);
/// Why a benchmark stands on a rung.
QString groundWords(RungGround ground);
QString rungWord(Rung rung);
QString purposeWord(Purpose purpose);
/// "ripeness", "store and days" ...
QString correctionWord(Correction correction);
/// A step of the waterfall: "ripeness", "tasters", "what will not last" ...
QString stepWord(const MeritStep& step);
/// A state of a lot: "dropped today", "4 days in the refrigerator".
QString conditionWord(const ConditionAmount& amount);
/// "one fair lot beside the benchmark, 3 tasters, blind, this crop year".
QString planWords(const TastingPlan& plan);
/// A slot by its name, else by its days: "28 Aug to 8 Sep".
QString slotWords(const SlotLadder& slot, int calendarYear);

} // namespace pipwright::ui
