#pragma once

#include "core/evaluation/season_chart.h"

#include <QWidget>

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

class QComboBox;
class QLabel;

namespace pipwright::ui {

class ChartPanel;
class OpenBook;

/// The place "Season": one crop year by ISO week. The windows of the benchmarks and of the selected
/// trees as walked, liking by week, and the week's best benchmark as the bar to beat.
class SeasonPlace : public QWidget {
    Q_OBJECT

  public:
    explicit SeasonPlace(OpenBook& book, QWidget* parent = nullptr);
    ~SeasonPlace() override;

    [[nodiscard]] ChartPanel* chart() const { return m_chart; }
    [[nodiscard]] QComboBox* yearChoice() const { return m_year; }
    [[nodiscard]] QComboBox* speciesChoice() const { return m_species; }

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    struct Answer {
        std::vector<int> seasons;
        Result<ChartSpec> chart;
    };

    void refresh();
    void refreshIfSeen();
    void read();
    void take(std::uint64_t question, const Answer& answer);
    void fillYears(const std::vector<int>& seasons);
    void fillSpecies();
    [[nodiscard]] std::vector<Index> chosenGenotypes() const;
    [[nodiscard]] std::optional<SpeciesId> chosenSpecies() const;
    [[nodiscard]] SeasonChartRequest request() const;
    [[nodiscard]] QString yearText(int year) const;

    OpenBook& m_book;
    QComboBox* m_year;
    QComboBox* m_species;
    QLabel* m_words;
    ChartPanel* m_chart;
    bool m_stale = true;
    bool m_filling = false;
    std::uint64_t m_question = 0; ///< counts what was asked, so that late answers are dropped
    std::shared_ptr<bool> m_alive = std::make_shared<bool>(true);
};

} // namespace pipwright::ui
