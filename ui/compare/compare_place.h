#pragma once

#include "core/evaluation/comparison.h"

#include <QWidget>

#include <memory>
#include <vector>

class QStackedWidget;
class QPushButton;
class QTimer;
class QToolButton;

namespace pipwright::ui {

class CompareModel;
class CompareTable;
class EmptyPlace;
class FlowText;
class NoticeBar;
class OpenBook;
class PaperPanel;

/// The place "Compare": two to eight genotypes side by side. With fewer laid beside, the selected
/// tree and the benchmarks of its weeks are proposed.
class ComparePlace : public QWidget {
    Q_OBJECT

  public:
    explicit ComparePlace(OpenBook& book, QWidget* parent = nullptr);
    ~ComparePlace() override;

    [[nodiscard]] CompareTable* table() const { return m_table; }
    [[nodiscard]] CompareModel* model() const { return m_model; }
    [[nodiscard]] PaperPanel* paper() const { return m_paper; }
    [[nodiscard]] QPushButton* printButton() const { return m_print; }
    /// The genotypes shown: laid beside, or proposed.
    [[nodiscard]] std::vector<Index> shown() const;
    /// What is shown was proposed, not chosen.
    [[nodiscard]] bool isProposal() const;
    /// The benchmarks offered, nearest first, each by its button.
    [[nodiscard]] std::vector<QToolButton*> offers() const { return m_offers; }
    void showPaper();
    void showTable();
    [[nodiscard]] bool isPaper() const;

  Q_SIGNALS:
    /// Enter on a tree: it is selected, its sheet is wanted.
    void treeActivated();

  protected:
    void showEvent(QShowEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void build();
    QWidget* buildTablePage();
    QWidget* buildPaperPage();
    void want();
    void read();
    void offerBenchmarks();
    void readPhotos();
    void takeOrder(const std::vector<Index>& order);
    [[nodiscard]] std::vector<Index> proposed() const;

    OpenBook& m_book;
    CompareModel* m_model;
    CompareTable* m_table;
    QStackedWidget* m_pages;
    EmptyPlace* m_empty;
    FlowText* m_what;
    FlowText* m_legend;
    NoticeBar* m_notice;
    QPushButton* m_print;
    QWidget* m_offerRow;
    std::vector<QToolButton*> m_offers;
    PaperPanel* m_paper;
    QTimer* m_soon;
    bool m_stale = true;
    int m_photoToken = 0;
    std::shared_ptr<bool> m_alive = std::make_shared<bool>(true);
};

} // namespace pipwright::ui
