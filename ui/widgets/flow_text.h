#pragma once

#include <QLabel>
#include <QString>

namespace pipwright::ui {

/// A paragraph that wraps. Plain text always: what a user typed is never taken for markup. It can
/// be selected with mouse and keyboard to be copied.
class FlowText : public QLabel {
    Q_OBJECT

  public:
    enum class Weight { body, strong, heading, second, small, fault };

    explicit FlowText(const QString& text = {}, Weight weight = Weight::body,
                      QWidget* parent = nullptr);
    void setWeight(Weight weight);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void dress();

    Weight m_weight;
    bool m_dressing = false;
};

/// One line that ends in an ellipsis when there is no room; the tooltip then has all of it.
class ElidedText : public QWidget {
    Q_OBJECT

  public:
    explicit ElidedText(QWidget* parent = nullptr);
    void setText(const QString& text);
    [[nodiscard]] const QString& text() const { return m_text; }
    void setSecond(bool second);
    [[nodiscard]] bool isElided() const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void refreshToolTip();

    QString m_text;
    bool m_second = false;
};

} // namespace pipwright::ui
