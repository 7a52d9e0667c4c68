#pragma once

#include "core/evaluation/living_copies.h"
#include "core/orchard/words.h"

#include <QString>
#include <QStringList>

namespace pipwright::ui {

QString wishStateWord(WishState state);
/// In the order of a wish's life.
const std::vector<WishState>& wishStates();
const std::vector<GraftMethod>& graftMethods();
QString checkpointWord(GraftCheckpoint checkpoint);
/// "3 plants on 2 trees, Ashcroft"; "only tree, Ashcroft"; "none alive".
QString copiesWords(const LivingCopies& copies);
/// "20° (NNE), 140 cm up, 1st from the trunk, white"
QString limbWords(const FrameLimb& limb);
/// "NNE" of 20 degrees.
QString compassWord(double degrees);

} // namespace pipwright::ui
