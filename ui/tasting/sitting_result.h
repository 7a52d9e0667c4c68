#pragma once

#include "core/evaluation/sitting_agreement.h"

#include <QStandardItemModel>
#include <QWidget>

namespace pipwright::ui {

class FlowText;
class OpenBook;
class PlainTable;

/// What a blind sitting says once its key is open, in the order in which it should be heard:
/// whether the tasters agree, what a score is worth by the hidden benchmark, and only then who is
/// where.
class SittingResult : public QWidget {
    Q_OBJECT

  public:
    explicit SittingResult(OpenBook& book, QWidget* parent = nullptr);

    /// False for a sitting without an opened key: it has nothing to say here.
    bool showSitting(const std::vector<TastingId>& tastings);

    [[nodiscard]] QString agreement() const;
    [[nodiscard]] QString repeatError() const;
    [[nodiscard]] QString ranking() const;
    [[nodiscard]] PlainTable* table() const { return m_table; }

  private:
    [[nodiscard]] QString agreementWords(const Sitting& sitting) const;
    [[nodiscard]] QString repeatWords(const Sitting& sitting) const;
    void showRanking(const Sitting& sitting);

    OpenBook& m_book;
    FlowText* m_heading;
    FlowText* m_early;
    FlowText* m_agreement;
    FlowText* m_repeat;
    FlowText* m_ranking;
    PlainTable* m_table;
    QStandardItemModel* m_cells;
};

} // namespace pipwright::ui
