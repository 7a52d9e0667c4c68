#pragma once

#include "core/evaluation/comparison.h"

#include <QWidget>

#include <memory>
#include <optional>
#include <utility>
#include <vector>

class QLabel;
class QStackedWidget;
class QPushButton;
class QTimer;
class QToolButton;

namespace pipwright::ui {

class CompareLegend;
class CompareModel;
class CompareReader;
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
    [[nodiscard]] CompareLegend* legend() const { return m_legend; }
    [[nodiscard]] QPushButton* printButton() const { return m_print; }
    /// The genotypes shown: laid beside, or proposed.
    [[nodiscard]] std::vector<Index> shown() const;
    /// What is shown was proposed, not chosen.
    [[nodiscard]] bool isProposal() const;
    /// The benchmarks offered, each by its button: those that ripen within two weeks of the first
    /// column, nearest first, and those further off or of unknown season.
    [[nodiscard]] const std::vector<QToolButton*>& nearOffers() const { return m_near.buttons; }
    [[nodiscard]] const std::vector<QToolButton*>& farOffers() const { return m_far.buttons; }
    /// What is shown is what was last asked for.
    [[nodiscard]] bool isSettled() const;
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
    /// A line of offers under its words.
    struct OfferLine {
        QWidget* line;
        QLabel* words;
        std::vector<QToolButton*> buttons{};
    };

    void build();
    QWidget* buildTablePage();
    QWidget* buildPaperPage();
    void want();
    void read();
    void takeUp(const Comparison& comparison);
    [[nodiscard]] QString whatIsShown() const;
    void offerBenchmarks();
    void offer(OfferLine& line, Index genotype, const QString& when);
    /// Which offer has the focus, so that the keys can go on among those that come after it.
    [[nodiscard]] std::optional<std::pair<bool, std::size_t>> focusedOffer() const;
    void focusOffer(bool near, std::size_t at);
    void readPhotos();
    void takeOrder(const std::vector<Index>& order);
    [[nodiscard]] std::vector<Index> proposed() const;

    OpenBook& m_book;
    CompareModel* m_model;
    CompareTable* m_table;
    QStackedWidget* m_pages;
    EmptyPlace* m_empty;
    FlowText* m_what;
    CompareLegend* m_legend;
    NoticeBar* m_notice;
    QPushButton* m_print;
    OfferLine m_near;
    OfferLine m_far;
    CompareReader* m_reader;
    PaperPanel* m_paper;
    QTimer* m_soon;
    bool m_stale = true;
    int m_photoToken = 0;
    std::shared_ptr<bool> m_alive = std::make_shared<bool>(true);
};

} // namespace pipwright::ui
