#pragma once

#include "core/evaluation/orchard_view.h"

#include <QString>

#include <span>
#include <string_view>

/// What a book says in words of the program, in the window's language. The words of a user (a trait
/// of his own, a shipped one he has renamed) stay as he wrote them.
namespace pipwright::ui {

QString traitName(const Trait& trait);
QString traitStateName(const TraitState& state);
QString speciesName(const Species& species);
/// "Ash Tarn x Russet Moor", "Odo's Russet x open"; see OrchardView::crossText.
QString crossWords(const OrchardView& view, Index genotype);
/// A kind, field or vocabulary word as the journal keeps it: "void_reason" is "void reason".
QString journalWord(std::string_view key);

/// All of the above that are translated, in English.
std::span<const char* const> shippedWords();

} // namespace pipwright::ui
