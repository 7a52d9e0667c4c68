#pragma once

#include "core/evaluation/merit/corrected_records.h"
#include "core/evaluation/merit/settle.h"
#include "ui/book/merit_desk.h"

#include <QObject>

#include <memory>
#include <optional>
#include <vector>

namespace pipwright::ui {

/// Where the merit of one seedling comes from, with some corrections switched off perhaps, and
/// what would settle its verdict.
struct MeritDetail {
    MeritReportPointer report;
    Index genotype = 0;
    MeritOptions options;
    std::optional<MeritModel> model; ///< as switched
    std::optional<MeritWaterfall> waterfall;
    std::vector<CorrectedRecord> records;
    std::optional<UncertainValue> ahead; ///< of the rung the verdict hangs on, as switched
    std::optional<double> above;         ///< P(better than it), as switched
    std::optional<Index> reference;
    std::optional<Problem> lack; ///< why there is no waterfall
    std::optional<SettlingQuestion> question;
    std::vector<SettlingPower> powers; ///< with all corrections, whatever is switched
    std::optional<std::size_t> next;   ///< the most telling one of one sitting
    std::vector<YearOutlook> years;
};

/// Works details out beside the window; the newest question wins.
class MeritDetailReader : public QObject {
    Q_OBJECT

  public:
    explicit MeritDetailReader(QObject* parent = nullptr);
    ~MeritDetailReader() override;

    void ask(const MeritReportPointer& report, Index genotype, const MeritOptions& options);
    [[nodiscard]] bool isWorking() const { return m_working; }

  Q_SIGNALS:
    void ready(const std::shared_ptr<const pipwright::ui::MeritDetail>& detail);

  private:
    int m_number = 0;
    bool m_working = false;
    std::shared_ptr<bool> m_alive = std::make_shared<bool>(true);
};

} // namespace pipwright::ui
