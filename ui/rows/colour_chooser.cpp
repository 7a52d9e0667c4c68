#include "ui/rows/colour_chooser.h"

#include <QCoreApplication>
#include <QSignalBlocker>

#include <algorithm>

namespace pipwright::ui {

namespace {

struct ColourChoices {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::ColourChoices)
};

} // namespace

std::vector<ColourChoice> builtInColourChoices() {
    return {{QStringLiteral("stage"), ColourChoices::tr("Stage")},
            {QStringLiteral("family"), ColourChoices::tr("Family")},
            {QStringLiteral("firstFruit"), ColourChoices::tr("First fruit year")},
            {QStringLiteral("liking"), ColourChoices::tr("Latest liking")},
            {QStringLiteral("fairLots"), ColourChoices::tr("Number of fair lots")},
            {QStringLiteral("harvestWeek"), ColourChoices::tr("Harvest week")},
            {QStringLiteral("scab"), ColourChoices::tr("Scab")},
            {QStringLiteral("identity"), ColourChoices::tr("Identity")},
            {QStringLiteral("lastVisited"), ColourChoices::tr("Last visited")}};
}

ColourChooser::ColourChooser(QWidget* parent) : QComboBox(parent) {
    setAccessibleName(tr("Colour by"));
    setToolTip(tr("What the colours of the map show"));
    setTraits({});
    connect(this, &QComboBox::currentIndexChanged, this, [this] { Q_EMIT colourChosen(chosen()); });
}

void ColourChooser::setTraits(const std::vector<ColourChoice>& traits) {
    const QString before = chosen();
    {
        const QSignalBlocker quiet(this);
        clear();
        for (const ColourChoice& choice : builtInColourChoices()) {
            addItem(choice.title, choice.key);
        }
        if (!traits.empty()) {
            insertSeparator(count());
        }
        for (const ColourChoice& trait : traits) {
            addItem(trait.title, trait.key);
        }
        setCurrentIndex(std::max(0, findData(before)));
    }
    if (!before.isEmpty() && chosen() != before) {
        Q_EMIT colourChosen(chosen());
    }
}

void ColourChooser::choose(const QString& key) {
    const int index = findData(key);
    if (index >= 0) {
        setCurrentIndex(index);
    }
}

} // namespace pipwright::ui
