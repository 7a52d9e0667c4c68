#pragma once

#include "core/evaluation/orchard_view.h"

#include <QWidget>

#include <vector>

class QLabel;
class QTabWidget;

namespace pipwright::ui {

class LabelPanel;
class OpenBook;
class PaperPanel;

/// The place "Paper": what to print for today's work. Labels of chosen plants, and the sheet for a
/// walk.
class PaperPlace : public QWidget {
    Q_OBJECT

  public:
    explicit PaperPlace(OpenBook& book, QWidget* parent = nullptr);

    void showLabels(const std::vector<Index>& plants);
    void showWalk(const std::vector<Index>& plants);

    [[nodiscard]] LabelPanel* labels() const { return m_labels; }
    [[nodiscard]] PaperPanel* walk() const { return m_walk; }
    [[nodiscard]] QTabWidget* tabs() const { return m_tabs; }

  private:
    void refreshLabels();
    void refreshWalk();
    void fromSelection();

    OpenBook& m_book;
    QTabWidget* m_tabs;
    LabelPanel* m_labels;
    PaperPanel* m_walk;
    QLabel* m_labelWords;
    QLabel* m_walkWords;
    std::vector<Index> m_labelled;
    std::vector<Index> m_walked;
};

} // namespace pipwright::ui
