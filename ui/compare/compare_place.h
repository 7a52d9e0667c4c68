#pragma once

#include "core/evaluation/orchard_view.h"

#include <QWidget>

#include <vector>

class QLabel;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace pipwright::ui {

class CompareDelegate;
class CompareModel;
class FlowLayout;
class OpenBook;

/// The place "Compare": two to eight genotypes side by side, on common scales. The first column is
/// what the others are compared with.
class ComparePlace : public QWidget {
    Q_OBJECT

  public:
    explicit ComparePlace(OpenBook& book, QWidget* parent = nullptr);

    [[nodiscard]] QTableView* table() const { return m_table; }
    [[nodiscard]] QPushButton* printButton() const { return m_print; }
    /// The genotypes shown now: those laid beside, or the selected tree with the benchmarks nearest
    /// to its weeks when nothing was laid beside.
    [[nodiscard]] const std::vector<Index>& shown() const { return m_shown; }
    /// Writes the comparison as a PDF; the Problem says why not.
    Outcome writePdfTo(const QString& path) const;

  protected:
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void build();
    void refreshIfSeen();
    void refresh();
    void offerBenchmarks();
    void removeColumn(int column);
    void moveColumn(int column, int by);
    void fitColumns();
    [[nodiscard]] std::vector<Index> proposed() const;

    OpenBook& m_book;
    CompareModel* m_model;
    CompareDelegate* m_delegate;
    QTableView* m_table;
    QStackedWidget* m_pages;
    QWidget* m_offers;
    QLabel* m_words;
    QPushButton* m_print;
    std::vector<Index> m_shown;
    bool m_stale = true;
};

} // namespace pipwright::ui
