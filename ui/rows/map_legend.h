#pragma once

#include "ui/rows/cell_colouring.h"

#include <QWidget>

class QAbstractButton;
class QLabel;
class QVBoxLayout;

namespace pipwright::ui {

/// What the colours of the map mean, how many cells each has; pressing a line selects its trees.
class MapLegend : public QWidget {
    Q_OBJECT

  public:
    explicit MapLegend(QWidget* parent = nullptr);

    void setColouring(const CellColouring& colouring);
    [[nodiscard]] std::size_t lineCount() const { return m_lines.size(); }
    [[nodiscard]] QAbstractButton* line(std::size_t entry) const { return m_lines[entry]; }

  Q_SIGNALS:
    /// The cells of one line, for selecting them.
    void entryChosen(std::size_t entry);

  private:
    QLabel* m_title;
    QVBoxLayout* m_column;
    std::vector<QAbstractButton*> m_lines;
};

} // namespace pipwright::ui
