#pragma once

#include "ui/tree/life_marks.h"

#include <QColor>
#include <QPointF>
#include <QStringList>
#include <QWidget>

#include <vector>

class QPainter;

namespace pipwright::ui {

struct Theme;

/// The ink a mark of the time line is drawn in.
QColor lifeMarkInk(LifeMark::Shape shape, const Theme& theme);
/// Draws a mark of the time line around its middle, about 12 logical pixels wide.
void paintLifeMark(QPainter& painter, LifeMark::Shape shape, QPointF at, const Theme& theme);
/// What the mark stands for, in a word or two.
QString lifeMarkWord(LifeMark::Shape shape);

/// What the marks of the time line mean, each drawn with its word; only those that occur.
class LifeLegend : public QWidget {
    Q_OBJECT

  public:
    explicit LifeLegend(QWidget* parent = nullptr);

    void setLanes(const std::vector<LifeLane>& lanes);
    /// The words in the order they stand there.
    [[nodiscard]] QStringList words() const { return m_words; }

  private:
    QStringList m_words;
};

} // namespace pipwright::ui
