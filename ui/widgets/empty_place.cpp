#include "ui/widgets/empty_place.h"

#include "ui/widgets/flow_text.h"

#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

constexpr int kPlaceIcon = 48;
constexpr int kTextWidth = 440;

/// Keeps to the application's theme, which a pixmap label would not.
class IconLabel : public QWidget {
  public:
    IconLabel(IconName name, QWidget* parent) : QWidget(parent), m_icon(icon(name)) {
        setFixedSize(kPlaceIcon, kPlaceIcon);
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        m_icon.paint(&painter, rect());
    }

  private:
    QIcon m_icon;
};

} // namespace

EmptyPlace::EmptyPlace(IconName name, const QString& heading, const QString& explanation,
                       QWidget* parent)
    : QWidget(parent), m_heading(new FlowText(heading, FlowText::Weight::heading, this)),
      m_explanation(new FlowText(explanation, FlowText::Weight::second, this)),
      m_step(new QPushButton(this)) {
    const Theme& theme = themeOf(this);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(theme.margin, theme.margin, theme.margin, theme.margin);
    layout->setSpacing(theme.space);
    layout->addStretch(2);
    layout->addWidget(new IconLabel(name, this), 0, Qt::AlignHCenter);
    for (FlowText* text : {m_heading, m_explanation}) {
        text->setAlignment(Qt::AlignHCenter);
        text->setMinimumWidth(200);
        text->setMaximumWidth(kTextWidth);
        auto* line = new QHBoxLayout;
        line->addStretch(1);
        line->addWidget(text, 1000);
        line->addStretch(1);
        layout->addLayout(line);
    }
    layout->addSpacing(theme.space);
    layout->addWidget(m_step, 0, Qt::AlignHCenter);
    layout->addStretch(3);
    m_step->hide();
    m_step->setAutoDefault(true);
    setWords(heading, explanation);
    connect(m_step, &QPushButton::clicked, this, &EmptyPlace::firstStepWanted);
}

void EmptyPlace::setWords(const QString& heading, const QString& explanation) {
    m_heading->setText(heading);
    m_explanation->setText(explanation);
    setAccessibleName(heading);
    setAccessibleDescription(explanation);
}

void EmptyPlace::setFirstStep(const QString& text) {
    m_step->setText(text);
    m_step->setAccessibleName(text);
    m_step->setVisible(!text.isEmpty());
}

} // namespace pipwright::ui
