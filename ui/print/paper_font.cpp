#include "ui/print/paper_font.h"

#include <QString>

#include <cmath>

namespace pipwright::ui {

QFont paperFont(bool bold) {
    QFont font(QStringLiteral("Noto Sans"));
    font.setPixelSize(kPaperFontPixels);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setWeight(bold ? QFont::Bold : QFont::Normal);
    return font;
}

FontMeasure::FontMeasure() : m_regular(paperFont(false)), m_bold(paperFont(true)) {}

Micrometres FontMeasure::width(const std::string& text, double points, bool bold) const {
    const QFontMetricsF& metrics = bold ? m_bold : m_regular;
    const double em = metrics.horizontalAdvance(QString::fromStdString(text)) / kPaperFontPixels;
    // Rounded up: what is said to fit does fit.
    return {static_cast<std::int32_t>(std::ceil(em * points * 25400.0 / 72.0))};
}

} // namespace pipwright::ui
