#pragma once

#include "core/orchard/words.h"

#include <QString>

#include <optional>

/// The letters of a sheet that stand for the condition of a lot. A letter, or the beginning of the
/// word, or nothing and ? for unknown.
namespace pipwright::ui {

/// t picked ripe, e picked early, d dropped that day, g on the ground longer, s shaken off.
std::optional<Origin> originTyped(const QString& typed);
/// 1 green to 7 gone by.
std::optional<Ripeness> ripenessTyped(const QString& typed);
/// s sound, i insect inside, b pecked by a bird, c cracked or split, r rotten in part.
std::optional<Soundness> soundnessTyped(const QString& typed);

/// "t picked ripe · e picked early · ..."
QString originLetters();
QString ripenessLetters();
QString soundnessLetters();
QString pathLetters();

} // namespace pipwright::ui
