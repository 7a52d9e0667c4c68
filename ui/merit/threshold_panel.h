#pragma once

#include "ui/book/merit_settings.h"

#include <QWidget>

#include <array>
#include <vector>

class QComboBox;
class QDoubleSpinBox;
class QPushButton;
class QSpinBox;

namespace pipwright::ui {

class FlowText;

/// The breeder's own thresholds, from where on something is suggested; kept at once, with a way
/// back to the proposals.
class ThresholdPanel : public QWidget {
    Q_OBJECT

  public:
    explicit ThresholdPanel(QWidget* parent = nullptr);

    /// Without a signal.
    void setChoices(const KeptChoices& choices);
    [[nodiscard]] const KeptChoices& choices() const { return m_choices; }
    [[nodiscard]] QDoubleSpinBox* margin() const { return m_margin; }
    [[nodiscard]] QSpinBox* watchAboveFloor() const { return m_chances[0].box; }
    [[nodiscard]] QSpinBox* cullBelowFloor() const { return m_chances[1].box; }
    [[nodiscard]] QPushButton* resetButton() const { return m_reset; }
    [[nodiscard]] FlowText* refusal() const { return m_refusal; }

  Q_SIGNALS:
    /// Never with choices that contradict each other: those are refused in words.
    void changed(const pipwright::ui::KeptChoices& choices);

  private:
    struct ChanceLine {
        double VerdictThresholds::*member;
        QSpinBox* box;
    };
    void build();
    void take();
    void fill();

    KeptChoices m_choices;
    QDoubleSpinBox* m_margin;
    std::array<ChanceLine, 4> m_chances;
    QSpinBox* m_years;
    QSpinBox* m_lots;
    QComboBox* m_purpose;
    QPushButton* m_reset;
    FlowText* m_refusal;
};

} // namespace pipwright::ui
