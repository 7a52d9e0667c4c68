#pragma once

#include "ui/widgets/icons.h"

#include <QString>
#include <QWidget>

class QPushButton;

namespace pipwright::ui {

class FlowText;

/// What a place shows when it has nothing yet: what would fill it, and the first step.
class EmptyPlace : public QWidget {
    Q_OBJECT

  public:
    explicit EmptyPlace(IconName icon, const QString& heading, const QString& explanation,
                        QWidget* parent = nullptr);
    void setWords(const QString& heading, const QString& explanation);
    /// Offers the step as a button; an empty text takes it away.
    void setFirstStep(const QString& text);
    [[nodiscard]] QPushButton* firstStepButton() const { return m_step; }

  Q_SIGNALS:
    void firstStepWanted();

  private:
    FlowText* m_heading;
    FlowText* m_explanation;
    QPushButton* m_step;
};

} // namespace pipwright::ui
