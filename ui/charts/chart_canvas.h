#pragma once

#include "ui/charts/chart_drawing.h"

#include <QPixmap>
#include <QWidget>

#include <memory>
#include <optional>
#include <vector>

namespace pipwright::ui {

/// Shows a drawing, finds the mark under the pointer, and goes from mark to mark by keyboard. The
/// picture is kept: a move of the pointer repaints one ring.
class ChartCanvas : public QWidget {
    Q_OBJECT

  public:
    explicit ChartCanvas(QWidget* parent = nullptr);
    ~ChartCanvas() override;

    void setSpec(const ChartSpec& spec);
    void setShown(const std::vector<bool>& shown);
    void setHighlighted(std::optional<std::size_t> series);
    [[nodiscard]] std::optional<std::size_t> highlighted() const { return m_highlighted; }
    /// The mark that has the keyboard or the pointer.
    [[nodiscard]] const ChartMark* currentMark() const;
    /// Its words: label, tooltip, or the numbers when it has neither.
    [[nodiscard]] QString currentWords() const;
    /// As laid out now.
    [[nodiscard]] const ChartDrawing& drawing();
    /// How many times the picture was made anew.
    [[nodiscard]] int picturesMade() const { return m_picturesMade; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  Q_SIGNALS:
    void currentChanged();
    void markActivated(const QString& id);

  protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

  private:
    void forget();
    void setCurrent(std::optional<std::size_t> placed);
    void step(int by);
    void stepSeries(int by);
    void activate();
    const QPixmap& picture();

    ChartSpec m_spec;
    std::vector<bool> m_shown;
    std::optional<std::size_t> m_highlighted;
    std::optional<std::size_t> m_current; ///< index into drawing().marks()
    std::unique_ptr<ChartDrawing> m_drawing;
    QPixmap m_picture;
    int m_picturesMade = 0;
};

} // namespace pipwright::ui
