#pragma once

#include "core/evaluation/fairness.h"
#include "core/evaluation/orchard_view.h"
#include "core/orchard/orchard.h"

#include <QString>
#include <QStringList>

#include <span>

/// The vocabularies of the book in the window's language.
namespace pipwright::ui {

/// "watched", "selection" ...
QString stageWord(Stage stage);
/// "growing", "lost" ...
QString stateWord(PlantState state);
/// "identity sure", "identity by map only" ...
QString identityWord(Confidence confidence);
/// What an identity rests on: "tag and map agree" ...
QString basisWord(IdentityBasis basis);
/// Stages in the order of a life, as legends and menus list them.
std::span<const Stage> stagesInOrder();

QString walkMarkWord(WalkMark mark);
QString plantKindWord(PlantKind kind);
QString originWord(Origin origin);
QString soundnessWord(Soundness soundness);
QString ripenessWord(Ripeness ripeness);
QString storageWord(StoragePath path);
QString bagWord(Bag bag);
QString canopyWord(CanopyPlace place);
QString cropLoadWord(CropLoad load);
QString verdictWord(Verdict verdict);
QString graftMethodWord(GraftMethod method);
QString unfairnessWord(Unfairness reason);

/// The condition of a lot as a list of words: "fallen today, 3 days in the fridge, late prime".
/// What is not known is left out; "condition not known" when nothing is.
QString conditionWords(const Lot& lot);
/// "fair", "not fair: fallen, over-ripe" or "unclear: ripeness not known".
QString fairnessWords(const Fairness& fairness);
/// The value of an observation with its unit, its doubt, its words: "about 13 °Brix",
/// "slight", "22 Aug 2026".
QString valueWords(const OrchardView& view, const Observation& observation);
/// The day, or the words the day was written in and the days they mean.
QString dayWords(const Observation& observation);
/// "MT" or the name; "somebody" when nobody is named.
QString personWords(const OrchardView& view, const std::optional<PersonId>& person);

} // namespace pipwright::ui
