#pragma once

#include "core/evaluation/living_copies.h"

#include <QWidget>

#include <optional>
#include <vector>

namespace pipwright::ui {

/// A frame tree from above, north up, and from the side with heights: every limb with its clone
/// and colour mark. Click a limb, or go from one to the next with the arrows; the list beside it
/// says the same in words.
class FrameTreeView : public QWidget {
    Q_OBJECT

  public:
    explicit FrameTreeView(QWidget* parent = nullptr);

    void setLimbs(const QString& treeName, std::vector<FrameLimb> limbs);
    /// The limb drawn as chosen; nothing for none.
    void setChosen(std::optional<int> limb);
    [[nodiscard]] std::optional<int> chosen() const { return m_chosen; }
    /// Where the limb's end is drawn from above; for tests of clicking.
    [[nodiscard]] QPointF endFromAbove(int limb) const;
    [[nodiscard]] QSize sizeHint() const override { return {560, 280}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {360, 200}; }

  Q_SIGNALS:
    void limbChosen(int limb);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    [[nodiscard]] QPointF centre() const;
    [[nodiscard]] double reach() const;
    [[nodiscard]] double sideOf(double height) const;
    [[nodiscard]] QPointF endFromSide(int limb) const;
    void drawFromAbove(QPainter& painter) const;
    void drawFromSide(QPainter& painter) const;
    void drawLimb(QPainter& painter, int limb, const QPointF& from, const QPointF& to,
                  bool labelled) const;
    [[nodiscard]] const FrameLimb& limbAt(int limb) const {
        return m_limbs[static_cast<std::size_t>(limb)];
    }

    QString m_name;
    std::vector<FrameLimb> m_limbs;
    std::optional<int> m_chosen;
};

} // namespace pipwright::ui
