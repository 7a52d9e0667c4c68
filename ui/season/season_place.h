#pragma once

#include "core/evaluation/season_chart.h"

#include <QWidget>

#include <memory>
#include <optional>
#include <vector>

class QComboBox;
class QTimer;

namespace pipwright::ui {

class ChartPanel;
class ElidedText;
class FlowText;
class NoticeBar;
class OpenBook;

/// The place "Season": when the benchmarks and the selected trees of one crop year were ripe and
/// how they were liked, week by week. Reads in the background where the book can be read twice;
/// an answer that is no longer wanted is dropped.
class SeasonPlace : public QWidget {
    Q_OBJECT

  public:
    explicit SeasonPlace(OpenBook& book, QWidget* parent = nullptr);
    ~SeasonPlace() override;

    [[nodiscard]] ChartPanel* chart() const { return m_chart; }
    /// Says which of the selected trees have nothing to draw; hidden when all have.
    [[nodiscard]] FlowText* without() const { return m_without; }
    [[nodiscard]] QComboBox* yearChoice() const { return m_seasons; }
    [[nodiscard]] QComboBox* speciesChoice() const { return m_species; }
    /// The crop year shown; nothing before the first was read.
    [[nodiscard]] std::optional<int> cropYear() const;
    /// The trees drawn beside the benchmarks: selected, current and laid beside.
    [[nodiscard]] std::vector<Index> shownGenotypes() const;
    /// What is wanted has been read and drawn.
    [[nodiscard]] bool isSettled() const;

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    struct Answer {
        std::optional<std::vector<int>> seasons; ///< when they had to be read
        SeasonChartRequest request;
        Result<ChartSpec> chart = ChartSpec{};
    };
    struct Question {
        OrchardView::Pointer view;
        SeasonChartRequest request;
        bool readSeasons = false;
        bool chooseSeason = false; ///< the crop year is for the reader to choose
        std::vector<int> seasons;
        Date today;
    };

    static Answer answerTo(const Question& question, const Store& store);
    void build();
    void want(bool seasonsToo);
    void read();
    void take(int token, const Answer& answer);
    void offerSeasons(int chosen);
    void offerSpecies();
    void activate(const QString& id);
    [[nodiscard]] Question question() const;
    /// Of which chosen trees the chart has nothing, and when they usually ripen.
    [[nodiscard]] QString nothingSeenOf(const Answer& answer) const;

    OpenBook& m_book;
    QComboBox* m_seasons;
    QComboBox* m_species;
    ElidedText* m_trees;
    FlowText* m_without;
    NoticeBar* m_notice;
    ChartPanel* m_chart;
    QTimer* m_soon;
    std::vector<int> m_known;
    std::optional<int> m_chosen; ///< by the user; else the running season
    bool m_seasonsStale = true;
    bool m_stale = true;
    bool m_speciesChosen = false;
    int m_token = 0;    ///< of the newest question
    int m_answered = 0; ///< of the newest answer drawn
    std::shared_ptr<bool> m_alive = std::make_shared<bool>(true);
};

} // namespace pipwright::ui
