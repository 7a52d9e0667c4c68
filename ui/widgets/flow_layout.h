#pragma once

#include <QLayout>
#include <QList>

namespace pipwright::ui {

/// Puts things side by side and goes on in the next line when a line is full, as words do.
class FlowLayout : public QLayout {
  public:
    explicit FlowLayout(QWidget* parent = nullptr, int gap = 4);
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override;
    [[nodiscard]] int count() const override;
    [[nodiscard]] QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override;
    [[nodiscard]] bool hasHeightForWidth() const override;
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

  private:
    /// Returns the height used; moves the items only when `moves`.
    int arrange(const QRect& rect, bool moves) const;

    QList<QLayoutItem*> m_items;
    int m_gap;
};

} // namespace pipwright::ui
