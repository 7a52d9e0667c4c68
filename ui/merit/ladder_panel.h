#pragma once

#include "core/history/ladder_edits.h"
#include "ui/book/merit_desk.h"

#include <QWidget>

#include <array>
#include <optional>

class QComboBox;
class QPushButton;

namespace pipwright::ui {

class FlowText;
class NoticeBar;
class OpenBook;

/// The ladder of a slot: floor, best and famous name, each proposed by the data or elected. The
/// season of the crop year is cut here, and benchmarks are elected to their rungs; every election
/// can be undone like any edit.
class LadderPanel : public QWidget {
    Q_OBJECT

  public:
    explicit LadderPanel(OpenBook& book, QWidget* parent = nullptr);

    void setReport(const MeritReportPointer& report);
    /// Shows the slot this seedling belongs to.
    void follow(Index genotype);
    [[nodiscard]] QComboBox* slotChoice() const { return m_slots; }
    [[nodiscard]] QComboBox* rungChoice(Rung rung) const { return line(rung).choice; }
    [[nodiscard]] QPushButton* electButton(Rung rung) const { return line(rung).elect; }
    [[nodiscard]] FlowText* rungWords(Rung rung) const { return line(rung).words; }
    [[nodiscard]] QPushButton* cutButton() const { return m_cut; }

  private:
    struct Line {
        Rung rung = Rung::unknown;
        QComboBox* choice = nullptr;
        QPushButton* elect = nullptr;
        FlowText* words = nullptr;
    };

    [[nodiscard]] const Line& line(Rung rung) const;
    [[nodiscard]] const SeasonLadders* ladders() const;
    [[nodiscard]] const SlotLadder* slot() const;
    void present();
    void presentRung(const Line& line);
    void elect(const Line& line);
    void cut();
    [[nodiscard]] Result<SeasonAsCut> asCut(const SeasonLadders& ladders) const;

    OpenBook& m_book;
    MeritReportPointer m_report;
    QComboBox* m_slots;
    FlowText* m_about;
    QPushButton* m_cut;
    NoticeBar* m_notice;
    std::array<Line, 3> m_rungs;
};

} // namespace pipwright::ui
