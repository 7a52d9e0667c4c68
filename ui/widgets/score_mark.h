#pragma once

#include "ui/widgets/theme.h"

#include <QRectF>
#include <QString>
#include <QWidget>

#include <optional>

class QPainter;

namespace pipwright::ui {

/// A number with its doubt, on a scale.
struct IntervalDot {
    double value = 0;
    std::optional<double> low{}; ///< where the interval begins and ends; nothing when not known
    std::optional<double> high{};
    double scaleLow = 1;
    double scaleHigh = 9;
    bool uncertain = false; ///< open dot, paler line
    QColor colour{};        ///< leaf when not valid
};

/// Draws the dot on a hairline scale across `area`, with its interval; an interval that leaves the
/// scale ends in an arrow.
void drawIntervalDot(QPainter& painter, const QRectF& area, const IntervalDot& dot,
                     const Theme& theme);

/// A score in a line: the dot on its scale, the number with its doubt, and what it rests on.
class ScoreMark : public QWidget {
    Q_OBJECT

  public:
    explicit ScoreMark(QWidget* parent = nullptr);

    /// `text` is the number in words ("7.4 ± 0.6 of 9"), `evidence` what it rests on ("two fair
    /// lots, one taster").
    void setScore(const IntervalDot& dot, const QString& text, const QString& evidence);
    /// No number yet; `evidence` says what would settle it.
    void setNone(const QString& evidence);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void describe();

    std::optional<IntervalDot> m_dot;
    QString m_text;
    QString m_evidence;
};

} // namespace pipwright::ui
