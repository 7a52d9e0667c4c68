#pragma once

#include <QComboBox>

#include <vector>

namespace pipwright::ui {

/// A way of colouring the map that can be chosen.
struct ColourChoice {
    QString key;
    QString title;
};

/// The built-in ways, in the order a breeder asks for them: stage, family, firstFruit, liking,
/// fairLots, harvestWeek, scab, identity, lastVisited.
std::vector<ColourChoice> builtInColourChoices();

/// "Colour by": says the key of what was chosen.
class ColourChooser : public QComboBox {
    Q_OBJECT

  public:
    explicit ColourChooser(QWidget* parent = nullptr);

    /// The built-in ways, then these traits; what was chosen stays chosen where it still exists.
    void setTraits(const std::vector<ColourChoice>& traits);
    [[nodiscard]] QString chosen() const { return currentData().toString(); }
    void choose(const QString& key);

  Q_SIGNALS:
    void colourChosen(const QString& key);
};

} // namespace pipwright::ui
