#pragma once

#include <QColor>
#include <QFont>
#include <QString>

#include <optional>

class QApplication;
class QWidget;

namespace pipwright::ui {

enum class ThemeChoice { system, light, dark };

/// The word kept in the settings: "system", "light", "dark".
QString keyOf(ThemeChoice choice);
/// `system` for every other word.
ThemeChoice themeChoiceFromKey(const QString& key);

/// The colours, type and measures everything is drawn with. Colours are named for what they mean.
struct Theme {
    bool dark = false;

    QColor paper;     ///< behind everything
    QColor surface;   ///< fields, tables, cards
    QColor raised;    ///< buttons, headers, the rail
    QColor ink;       ///< text and marks
    QColor secondInk; ///< text of less weight
    QColor line;      ///< hairlines and frames
    QColor leaf;      ///< action
    QColor russet;    ///< attention
    QColor sky;       ///< focus and links
    QColor blood;     ///< fault
    QColor onLeaf;    ///< text on leaf
    QColor onSky;     ///< text on sky
    QColor wash;      ///< behind what is selected or under the pointer, carries ink

    /// Points: small print, body, heading. There are no other sizes.
    double smallPoints = 8.5;
    double bodyPoints = 10;
    double headingPoints = 14;
    /// Logical pixels: between things that belong together, between groups, around a page.
    int gap = 4;
    int space = 8;
    int margin = 16;
    int radius = 4; ///< of corners

    [[nodiscard]] QFont smallFont() const;
    [[nodiscard]] QFont bodyFont() const;
    [[nodiscard]] QFont strongFont() const; ///< body with weight
    [[nodiscard]] QFont headingFont() const;
};

/// Paper on a desk. Printing always uses it.
const Theme& lightTheme();
/// The same in the evening.
const Theme& darkTheme();

/// The theme a widget is drawn in, by its palette. Custom-painted widgets ask for it while
/// painting; when the theme changes Qt sends them QEvent::PaletteChange and repaints them.
const Theme& themeOf(const QWidget* widget);
/// The theme of the application's palette.
const Theme& currentTheme();

/// Sets style, palette, font and style sheet. `system` follows the lightness of the palette the
/// desktop gave at start.
void applyTheme(QApplication& application, ThemeChoice choice);

/// Whether anything may move. Kept by the application, true at first.
void setMotion(QApplication& application, bool moves);
/// Length of a transition: 120 ms, or 0 when nothing may move.
int motionMilliseconds();

/// Contrast of two opaque colours, 1 to 21 (WCAG 2.1, "contrast ratio" from relative luminance).
double contrastRatio(const QColor& one, const QColor& other);
/// `top` seen through its alpha over an opaque `bottom`.
QColor blended(const QColor& top, const QColor& bottom);
/// `hue` made darker or lighter, whichever is the way from `background`, until the contrast is
/// reached; unchanged when it already is.
QColor withContrast(const QColor& hue, const QColor& background, double ratio);

} // namespace pipwright::ui
