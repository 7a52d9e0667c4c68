#include "ui/tree/entry_form.h"

#include "core/units/text.h"

#include <QCoreApplication>

namespace pipwright::ui {

namespace {

struct EntryWords {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::EntryWords)
};

std::vector<Index> growingAt(const OrchardView& view, const std::string& wanted) {
    std::vector<Index> found;
    for (Index plant = 0; plant < view.plants().size(); ++plant) {
        const PlantEntry& entry = view.plants()[plant];
        if (!entry.erased && entry.position && entry.state == PlantState::growing &&
            foldedForSearch(view.placeText(plant, false)) == wanted) {
            found.push_back(plant);
        }
    }
    return found;
}

} // namespace

Problem missing(const QString& what, const QString& remedy) {
    return {ProblemCode::badInput, what.toStdString(), remedy.toStdString(), ""};
}

Result<Index> plantTyped(const OrchardView& view, const QString& typed) {
    const std::string wanted = foldedForSearch(typed.toStdString());
    if (wanted.empty()) {
        return missing(EntryWords::tr("No tree is named."),
                       EntryWords::tr("Type its code, or its row/place, as C/14."));
    }
    if (const auto genotype = view.genotypeCalled(wanted)) {
        if (const auto plant = view.plantFor(*genotype)) {
            return *plant;
        }
    }
    for (Index plant = 0; plant < view.plants().size(); ++plant) {
        if (!view.plants()[plant].erased && foldedForSearch(view.plants()[plant].tag) == wanted) {
            return plant;
        }
    }
    const std::vector<Index> here = growingAt(view, wanted);
    if (here.size() == 1) {
        return here.front();
    }
    if (here.size() > 1) {
        return missing(EntryWords::tr("More than one plant stands at %1.").arg(typed.trimmed()),
                       EntryWords::tr("Type the code of the one that is meant."));
    }
    return missing(EntryWords::tr("No plant is called \"%1\".").arg(typed.trimmed()),
                   EntryWords::tr("Type a code that is in the book, or a row/place, as C/14."));
}

} // namespace pipwright::ui
