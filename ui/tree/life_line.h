#pragma once

#include "ui/tree/life_marks.h"

#include <QWidget>

#include <optional>
#include <vector>

namespace pipwright::ui {

class FlowText;
class LifeLegend;

/// The drawing of the time line: one lane a crop year, all on one axis of months.
class LifeDrawing : public QWidget {
    Q_OBJECT

  public:
    explicit LifeDrawing(QWidget* parent = nullptr);

    void setLanes(std::vector<LifeLane> lanes);
    [[nodiscard]] const std::vector<LifeLane>& lanes() const { return m_lanes; }
    /// The words of the mark under the cursor or the keys; empty when there is none.
    [[nodiscard]] QString currentWords() const;
    /// Middle of a mark, for whoever points at it.
    [[nodiscard]] QPointF pointOf(std::size_t lane, std::size_t mark) const;
    [[nodiscard]] QSize sizeHint() const override;

  Q_SIGNALS:
    void currentWordsChanged(const QString& words);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

  private:
    /// A mark of a lane, or its window when there is no such mark.
    struct Spot {
        std::size_t lane = 0;
        std::size_t mark = 0;
        bool operator==(const Spot&) const = default;
    };

    [[nodiscard]] int marksOf(std::size_t lane) const;
    [[nodiscard]] double xOf(int cropYear, Date date) const;
    /// Decisions, grafts and notes of one week stand side by side.
    [[nodiscard]] double wordMarkX(const LifeLane& lane, std::size_t mark) const;
    [[nodiscard]] QRectF laneRect(std::size_t lane) const;
    [[nodiscard]] QRectF windowRect(std::size_t lane) const;
    [[nodiscard]] std::optional<Spot> spotAt(QPointF point) const;
    void setCurrent(std::optional<Spot> spot);
    void paintAxis(QPainter& painter) const;
    void paintLane(QPainter& painter, std::size_t lane) const;
    void paintWindow(QPainter& painter, std::size_t lane) const;

    std::vector<LifeLane> m_lanes;
    std::optional<Spot> m_current;
    int m_firstDay = 0; ///< of the axis, days since 1 January of the crop year
    int m_lastDay = 365;
};

/// The legend of the marks that occur, the time line, and the words of the mark pointed at.
class LifeLine : public QWidget {
    Q_OBJECT

  public:
    explicit LifeLine(QWidget* parent = nullptr);

    void show(const TreeFacts& facts);
    using QWidget::show;
    [[nodiscard]] LifeDrawing* drawing() const { return m_drawing; }
    [[nodiscard]] LifeLegend* legend() const { return m_legend; }

  private:
    LifeLegend* m_legend;
    LifeDrawing* m_drawing;
    FlowText* m_words;
    QString m_hint;
};

} // namespace pipwright::ui
