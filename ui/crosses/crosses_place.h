#pragma once

#include "core/evaluation/orchard_view.h"

#include <QWidget>

#include <vector>

class QLabel;
class QStackedWidget;
class QTableView;

namespace pipwright::ui {

class CrossTableModel;
class OpenBook;

/// The place "Crosses": every cross with its way from flowers to trees, and how its children fare.
class CrossesPlace : public QWidget {
    Q_OBJECT

  public:
    explicit CrossesPlace(OpenBook& book, QWidget* parent = nullptr);

    [[nodiscard]] QTableView* table() const { return m_table; }

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void refresh();
    void selectFamily();

    OpenBook& m_book;
    QStackedWidget* m_pages;
    QTableView* m_table;
    CrossTableModel* m_model;
    QLabel* m_words;
    bool m_stale = true; ///< the book has moved since the table was filled
};

} // namespace pipwright::ui
