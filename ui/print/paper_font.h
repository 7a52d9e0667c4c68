#pragma once

#include "core/exchange/print/text_measure.h"

#include <QFont>
#include <QFontMetricsF>

namespace pipwright::ui {

/// The face of everything printed, without hinting and so large that sizes are exact; whoever
/// draws with it scales by kPaperFontPixels.
QFont paperFont(bool bold);
inline constexpr int kPaperFontPixels = 1000;

/// Measures text as page_painter.h draws it.
class FontMeasure : public TextMeasure {
  public:
    FontMeasure();
    [[nodiscard]] Micrometres width(const std::string& text, double points,
                                    bool bold) const override;

  private:
    QFontMetricsF m_regular;
    QFontMetricsF m_bold;
};

} // namespace pipwright::ui
