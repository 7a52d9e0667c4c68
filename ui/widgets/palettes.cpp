#include "ui/widgets/palettes.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace pipwright::ui {

namespace {

// Okabe & Ito's order, black last so that the first families have a hue.
constexpr std::array<QRgb, kCategoricalCount> kCategorical{
    0xFF0072B2, 0xFFE69F00, 0xFF009E73, 0xFFCC79A7, 0xFF56B4E9, 0xFFD55E00, 0xFFF0E442, 0xFF000000,
};

constexpr std::array<QRgb, 12> kCividis{
    0xFF00204D, 0xFF00306F, 0xFF2A406C, 0xFF48526B, 0xFF5E626E, 0xFF727374,
    0xFF878479, 0xFF9E9677, 0xFFB6A971, 0xFFD0BE67, 0xFFEAD357, 0xFFFFEA46,
};

// The ends are far from the surface, the middle is near it: nothing to see where nothing is.
constexpr std::array<QRgb, 5> kBalanceLight{0xFF9A4A00, 0xFFE59A4B, 0xFFF1EFE9, 0xFF7FB2DC,
                                            0xFF0B5394};
constexpr std::array<QRgb, 5> kBalanceDark{0xFFFFB667, 0xFFB9722C, 0xFF3A433D, 0xFF3F7FB5,
                                           0xFF9CCBF2};

QColor between(std::span<const QRgb> stops, double share) {
    const double place = std::clamp(share, 0.0, 1.0) * static_cast<double>(stops.size() - 1);
    const auto lower = std::min(static_cast<std::size_t>(place), stops.size() - 2);
    const double part = place - static_cast<double>(lower);
    const QColor from(stops[lower]);
    const QColor to(stops[lower + 1]);
    const auto mix = [part](int a, int b) {
        return static_cast<int>(std::lround((1 - part) * a + part * b));
    };
    return {mix(from.red(), to.red()), mix(from.green(), to.green()), mix(from.blue(), to.blue())};
}

QColor textOn(const QColor& fill) {
    for (const QColor& text : {lightTheme().ink, QColor(Qt::white)}) {
        if (contrastRatio(text, fill) >= 4.5) {
            return text;
        }
    }
    return Qt::black; // reaches 4.5:1 wherever white does not
}

} // namespace

MarkColour markColour(const QColor& fill, const Theme& theme) {
    return {fill, withContrast(fill, theme.surface, 3.0), textOn(fill)};
}

MarkColour categoricalColour(std::size_t index, const Theme& theme) {
    const std::size_t place = index % kCategoricalCount;
    const bool isBlack = place == kCategoricalCount - 1;
    return markColour(isBlack ? theme.ink : QColor(kCategorical[place]), theme);
}

QString categoricalLetter(std::size_t index) {
    QString letters;
    for (std::size_t rest = index + 1; rest > 0; rest = (rest - 1) / 26) {
        letters.prepend(QChar(static_cast<char16_t>(u'A' + (rest - 1) % 26)));
    }
    return letters;
}

MarkColour rampColour(double share, const Theme& theme) {
    return markColour(between(kCividis, std::isfinite(share) ? share : 0), theme);
}

MarkColour balanceColour(double balance, const Theme& theme) {
    const double share = std::isfinite(balance) ? (balance + 1) / 2 : 0.5;
    return markColour(between(theme.dark ? kBalanceDark : kBalanceLight, share), theme);
}

} // namespace pipwright::ui
