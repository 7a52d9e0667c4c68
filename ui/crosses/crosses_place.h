#pragma once

#include "core/evaluation/orchard_view.h"

#include <QWidget>

#include <vector>

class QStackedWidget;
class QTableView;

namespace pipwright::ui {

class CrossTableModel;
class FlowText;
class OpenBook;
class OutlookPanel;
class RaisingPanel;

/// The place "Crosses": every cross with its way from flowers to trees, and how its children fare;
/// below, what a cross promises, made or only thought of, and how many seeds it takes.
class CrossesPlace : public QWidget {
    Q_OBJECT

  public:
    explicit CrossesPlace(OpenBook& book, QWidget* parent = nullptr);

    [[nodiscard]] QTableView* table() const { return m_table; }
    [[nodiscard]] OutlookPanel* outlook() const { return m_outlook; }
    [[nodiscard]] RaisingPanel* raising() const { return m_raising; }

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    QWidget* buildPromise();
    void refresh();
    void showCurrent();
    void selectFamily();

    OpenBook& m_book;
    QStackedWidget* m_pages;
    QTableView* m_table;
    CrossTableModel* m_model;
    FlowText* m_words;
    OutlookPanel* m_outlook;
    RaisingPanel* m_raising;
    bool m_keepsTyped = false; ///< the table is filled anew below parents that somebody typed
    bool m_stale = true;       ///< the book has moved since the table was filled
};

} // namespace pipwright::ui
