#pragma once

#include "ui/widgets/icons.h"

#include <QList>
#include <QString>
#include <QWidget>

class QButtonGroup;
class QToolButton;
class QVBoxLayout;

namespace pipwright::ui {

/// The places of the window, one under the other, with icon and word. Click, arrow keys and Space,
/// or Alt with the digit of the place.
class NavigationRail : public QWidget {
    Q_OBJECT

  public:
    explicit NavigationRail(QWidget* parent = nullptr);

    /// `key` names the place in the program and the settings; `title` is what the user reads.
    void addPlace(const QString& key, IconName icon, const QString& title);
    /// Shows the place as chosen; says nothing when it already was, ignores unknown keys.
    void setCurrent(const QString& key);
    /// Empty before the first place is chosen.
    [[nodiscard]] QString current() const;
    [[nodiscard]] QStringList places() const;
    /// The button of a place, or null.
    [[nodiscard]] QToolButton* button(const QString& key) const;

  Q_SIGNALS:
    void placeChosen(const QString& key);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

  private:
    void choose(int index);

    QVBoxLayout* m_layout;
    QButtonGroup* m_group;
    QStringList m_keys;
};

} // namespace pipwright::ui
