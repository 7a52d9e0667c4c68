#include "ui/widgets/theme.h"

#include <QApplication>
#include <QPalette>
#include <QStyle>
#include <QStyleFactory>
#include <QVariant>
#include <QWidget>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

constexpr const char* kSystemIsDark = "pipwright.systemIsDark";
constexpr const char* kMoves = "pipwright.moves";
constexpr int kMotionMilliseconds = 120;

QFont fontOf(double points, QFont::Weight weight) {
    QFont font(QStringLiteral("Noto Sans"));
    font.setPointSizeF(points);
    font.setWeight(weight);
    return font;
}

Theme makeLightTheme() {
    Theme theme;
    theme.paper = QColor(0xFB, 0xFA, 0xF7);
    theme.surface = QColor(0xFF, 0xFF, 0xFF);
    theme.raised = QColor(0xF3, 0xF2, 0xED);
    theme.ink = QColor(0x1F, 0x2A, 0x24);
    theme.secondInk = QColor(0x5B, 0x66, 0x5F);
    theme.line = QColor(0xD9, 0xDD, 0xD6);
    theme.leaf = QColor(0x2F, 0x6B, 0x4F);
    theme.russet = QColor(0xA8, 0x57, 0x2B);
    theme.sky = QColor(0x1F, 0x6A, 0x9A);
    theme.blood = QColor(0xA1, 0x2B, 0x2B);
    theme.onLeaf = QColor(0xFF, 0xFF, 0xFF);
    theme.onSky = QColor(0xFF, 0xFF, 0xFF);
    theme.wash = QColor(0xEA, 0xF2, 0xEC);
    return theme;
}

Theme makeDarkTheme() {
    Theme theme;
    theme.dark = true;
    theme.paper = QColor(0x14, 0x18, 0x15);
    theme.surface = QColor(0x1C, 0x22, 0x1E);
    theme.raised = QColor(0x22, 0x29, 0x25);
    theme.ink = QColor(0xE8, 0xEC, 0xE7);
    theme.secondInk = QColor(0x9B, 0xA6, 0x9E);
    theme.line = QColor(0x2F, 0x38, 0x33);
    theme.leaf = QColor(0x7F, 0xC6, 0xA0);
    theme.russet = QColor(0xE0, 0xA0, 0x70);
    theme.sky = QColor(0x7D, 0xB7, 0xDD);
    theme.blood = QColor(0xE5, 0x80, 0x80);
    theme.onLeaf = QColor(0x14, 0x18, 0x15);
    theme.onSky = QColor(0x14, 0x18, 0x15);
    theme.wash = QColor(0x29, 0x35, 0x2E);
    return theme;
}

QPalette paletteOf(const Theme& theme) {
    QPalette palette;
    const auto set = [&palette](QPalette::ColorRole role, const QColor& colour) {
        palette.setColor(role, colour);
    };
    set(QPalette::Window, theme.paper);
    set(QPalette::WindowText, theme.ink);
    set(QPalette::Base, theme.surface);
    set(QPalette::AlternateBase, theme.paper);
    set(QPalette::Text, theme.ink);
    set(QPalette::PlaceholderText, theme.secondInk);
    set(QPalette::Button, theme.raised);
    set(QPalette::ButtonText, theme.ink);
    set(QPalette::BrightText, theme.blood);
    set(QPalette::ToolTipBase, theme.surface);
    set(QPalette::ToolTipText, theme.ink);
    set(QPalette::Highlight, theme.sky);
    set(QPalette::HighlightedText, theme.onSky);
    set(QPalette::Link, theme.sky);
    set(QPalette::LinkVisited, theme.sky);
    set(QPalette::Light, theme.surface);
    set(QPalette::Midlight, theme.line);
    set(QPalette::Mid, theme.line);
    set(QPalette::Dark, theme.secondInk);
    set(QPalette::Shadow, theme.dark ? QColor(Qt::black) : theme.secondInk);
    // What cannot be used is paler, but still legible: somebody will want to know why.
    const QColor pale = withContrast(theme.line, theme.paper, 3.0);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, pale);
    }
    return palette;
}

QString styleSheetOf(const Theme& theme) {
    return QStringLiteral("QToolTip { background: %1; color: %2; border: 1px solid %3;"
                          " padding: 4px 6px; }"
                          "QHeaderView::section { background: %4; color: %5; border: none;"
                          " border-bottom: 1px solid %3; padding: 4px 8px; }"
                          "QTableView { gridline-color: %3; }"
                          "QLineEdit { background: %1; border: 1px solid %6; border-radius: 3px;"
                          " padding: 2px 4px; }"
                          "QLineEdit:focus { border: 2px solid %7; padding: 1px 3px; }"
                          "QAbstractSpinBox QLineEdit, QComboBox QLineEdit, QAbstractItemView"
                          " QLineEdit { border: none; padding: 0px; }"
                          "QPushButton { padding: 3px 10px; }")
        .arg(theme.surface.name(), theme.ink.name(), theme.line.name(), theme.raised.name(),
             theme.secondInk.name(), withContrast(theme.line, theme.surface, 3.0).name(),
             theme.sky.name());
}

bool isDark(const QPalette& palette) {
    return palette.color(QPalette::Window).lightnessF() < 0.5F;
}

double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

} // namespace

QString keyOf(ThemeChoice choice) {
    switch (choice) {
    case ThemeChoice::light:
        return QStringLiteral("light");
    case ThemeChoice::dark:
        return QStringLiteral("dark");
    case ThemeChoice::system:
        break;
    }
    return QStringLiteral("system");
}

ThemeChoice themeChoiceFromKey(const QString& key) {
    for (const auto choice : {ThemeChoice::light, ThemeChoice::dark}) {
        if (keyOf(choice) == key) {
            return choice;
        }
    }
    return ThemeChoice::system;
}

QFont Theme::smallFont() const {
    return fontOf(smallPoints, QFont::Normal);
}
QFont Theme::bodyFont() const {
    return fontOf(bodyPoints, QFont::Normal);
}
QFont Theme::strongFont() const {
    return fontOf(bodyPoints, QFont::DemiBold);
}
QFont Theme::headingFont() const {
    return fontOf(headingPoints, QFont::DemiBold);
}

const Theme& lightTheme() {
    static const Theme theme = makeLightTheme();
    return theme;
}

const Theme& darkTheme() {
    static const Theme theme = makeDarkTheme();
    return theme;
}

const Theme& themeOf(const QWidget* widget) {
    return isDark(widget->palette()) ? darkTheme() : lightTheme();
}

const Theme& currentTheme() {
    return isDark(QGuiApplication::palette()) ? darkTheme() : lightTheme();
}

void applyTheme(QApplication& application, ThemeChoice choice) {
    // The desktop's palette is seen once, before ours covers it.
    if (!application.property(kSystemIsDark).isValid()) {
        application.setProperty(kSystemIsDark, isDark(QGuiApplication::palette()));
    }
    const bool dark = choice == ThemeChoice::dark || (choice == ThemeChoice::system &&
                                                      application.property(kSystemIsDark).toBool());
    const Theme& theme = dark ? darkTheme() : lightTheme();
    if (application.style()->name().compare(QStringLiteral("fusion"), Qt::CaseInsensitive) != 0) {
        QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    }
    QApplication::setFont(theme.bodyFont());
    QApplication::setPalette(paletteOf(theme));
    application.setStyleSheet(styleSheetOf(theme));
}

void setMotion(QApplication& application, bool moves) {
    application.setProperty(kMoves, moves);
}

int motionMilliseconds() {
    const QVariant moves = QCoreApplication::instance()->property(kMoves);
    return moves.isValid() && !moves.toBool() ? 0 : kMotionMilliseconds;
}

double contrastRatio(const QColor& one, const QColor& other) {
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

QColor blended(const QColor& top, const QColor& bottom) {
    const float share = top.alphaF();
    const auto mix = [share](float upper, float lower) {
        return share * upper + (1 - share) * lower;
    };
    return QColor::fromRgbF(mix(top.redF(), bottom.redF()), mix(top.greenF(), bottom.greenF()),
                            mix(top.blueF(), bottom.blueF()));
}

QColor withContrast(const QColor& hue, const QColor& background, double ratio) {
    const bool lighter = luminance(background) < 0.18;
    const QColor end = lighter ? QColor(Qt::white) : QColor(Qt::black);
    QColor colour = hue;
    for (int step = 1; step <= 50 && contrastRatio(colour, background) < ratio; ++step) {
        QColor veil = end;
        veil.setAlphaF(static_cast<float>(step) / 50);
        colour = blended(veil, hue);
    }
    return colour;
}

} // namespace pipwright::ui
