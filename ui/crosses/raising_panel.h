#pragma once

#include "core/plan/raising.h"

#include <QWidget>

class QComboBox;
class QSpinBox;

namespace pipwright::ui {

class FlowText;

/// How many seeds a goal asks for, and whether what was counted fits simple inheritance.
class RaisingPanel : public QWidget {
    Q_OBJECT

  public:
    explicit RaisingPanel(QWidget* parent = nullptr);

    /// What the book tells of earlier seeds of the species.
    void setRecord(const RaisingRecord& record);

    [[nodiscard]] QSpinBox* oneParentOnce() const { return m_oneParentOnce; }
    [[nodiscard]] QSpinBox* bothTwice() const { return m_bothTwice; }
    [[nodiscard]] QSpinBox* plants() const { return m_plants; }
    [[nodiscard]] QSpinBox* seenWith() const { return m_seenWith; }
    [[nodiscard]] QSpinBox* seenWithout() const { return m_seenWithout; }
    [[nodiscard]] FlowText* advice() const { return m_advice; }
    [[nodiscard]] FlowText* verdict() const { return m_verdict; }

  private:
    void build();
    void say();

    RaisingRecord m_record;
    QSpinBox* m_oneParentOnce;
    QSpinBox* m_bothOnce;
    QSpinBox* m_bothTwice;
    QSpinBox* m_plants;
    QComboBox* m_assurance;
    QSpinBox* m_seenWith;
    QSpinBox* m_seenWithout;
    FlowText* m_advice;
    FlowText* m_verdict;
};

} // namespace pipwright::ui
