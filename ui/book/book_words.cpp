#include "ui/book/book_words.h"

#include "core/orchard/dictionary.h"

#include <QCoreApplication>

#include <unordered_map>

namespace pipwright::ui {

namespace {

QString translated(const std::string& english) {
    return QCoreApplication::translate("pipwright::ui::BookWords", english.c_str());
}

/// The names under which a dictionary ships, by id.
template <typename Thing>
std::unordered_map<Uuid, std::string> namesOf(const std::vector<Thing>& things) {
    std::unordered_map<Uuid, std::string> names;
    for (const Thing& thing : things) {
        names.emplace(thing.id.uuid, thing.name);
    }
    return names;
}

/// Translated while it still has the name it shipped with.
template <typename Thing>
QString nameIn(const std::unordered_map<Uuid, std::string>& shipped, const Thing& thing) {
    const auto known = shipped.find(thing.id.uuid);
    return known != shipped.end() && known->second == thing.name
               ? translated(thing.name)
               : QString::fromStdString(thing.name);
}

} // namespace

QString traitName(const Trait& trait) {
    static const auto shipped = namesOf(shippedTraits());
    return nameIn(shipped, trait);
}

QString traitStateName(const TraitState& state) {
    static const auto shipped = namesOf(shippedTraitStates());
    return nameIn(shipped, state);
}

QString speciesName(const Species& species) {
    static const auto shipped = namesOf(shippedSpecies());
    return nameIn(shipped, species);
}

QString crossWords(const OrchardView& view, Index genotype) {
    QString words = QString::fromStdString(view.crossText(genotype));
    const QString open = QStringLiteral(" x open");
    if (words.endsWith(open) && view.parentsOf(genotype).pollination == Pollination::open) {
        words.chop(open.size());
        words += QStringLiteral(" x ") + translated("open");
    }
    return words;
}

QString journalWord(std::string_view key) {
    std::string words(key);
    for (char& one : words) {
        one = one == '_' ? ' ' : one;
    }
    return translated(words);
}

} // namespace pipwright::ui
