#pragma once

#include <QFrame>
#include <QString>
#include <QStringList>

class QLabel;

namespace pipwright::ui {

/// What is told of a tree while the pointer or the cursor rests on it.
struct HoverWords {
    QString title;
    QStringList lines;
};

/// A small card beside a cell. It takes no focus and lets the pointer through.
class MapHoverCard : public QFrame {
    Q_OBJECT

  public:
    explicit MapHoverCard(QWidget* parent);

    /// Shows the words below the cell, or where there is room. `cell` is in global coordinates.
    void showFor(const HoverWords& words, const QRect& cell);
    /// Title and lines as one text (for tests and screen readers).
    [[nodiscard]] QString text() const;

  private:
    void dress();

    QLabel* m_title;
    QLabel* m_lines;
};

} // namespace pipwright::ui
