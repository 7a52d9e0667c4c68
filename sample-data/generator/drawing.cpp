#include "sample-data/generator/drawing.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

namespace pipwright::sample {

namespace {

struct Colours {
    const char* ground;
    const char* cheek;
    const char* flesh;
};

Colours coloursOf(Hue hue) {
    switch (hue) {
    case Hue::red:
        return {"#b3202c", "#7d1220", "#f6edd8"};
    case Hue::striped:
        return {"#e3c04a", "#c23a2e", "#f8efd2"};
    case Hue::gold:
        return {"#e6bf3f", "#d98f33", "#f9f0cf"};
    case Hue::green:
        return {"#93ab4c", "#a9b765", "#f3f2d6"};
    case Hue::russet:
        return {"#a8823f", "#8b6a35", "#f5ecce"};
    case Hue::blue:
        return {"#3f4370", "#6a6f9e", "#d8c26a"};
    }
    return {"#999999", "#777777", "#eeeeee"};
}

std::string number(double value) {
    const auto tenths = static_cast<long>(std::lround(value * 10));
    const std::string whole = std::to_string(tenths / 10);
    return tenths % 10 == 0 ? whole : whole + "." + std::to_string(std::labs(tenths % 10));
}

/// Half an outline from the stalk down to the eye, as parts of the half width and half height.
using HalfOutline = std::array<std::array<double, 2>, 7>;

constexpr HalfOutline kRound = {
    {{0, -0.78}, {0.35, -1.1}, {1, -0.95}, {1, -0.1}, {1, 0.6}, {0.35, 1.05}, {0, 0.9}}};
constexpr HalfOutline kBottle = {
    {{0, -1}, {0.45, -1.05}, {0.3, -0.5}, {0.6, -0.15}, {1.05, 0.1}, {0.9, 1}, {0, 0.93}}};

/// The outline about a middle, its two halves alike.
std::string outline(const HalfOutline& half, double x, double y, double wide, double high) {
    const auto at = [&](std::size_t point, double side) {
        return number(x + side * half[point][0] * wide) + " " + number(y + half[point][1] * high) +
               " ";
    };
    std::string path = "M" + at(0, 1);
    for (const std::size_t point : {1U, 4U}) {
        path += "C" + at(point, 1) + at(point + 1, 1) + at(point + 2, 1);
    }
    for (const std::size_t point : {5U, 2U}) {
        path += "C" + at(point, -1) + at(point - 1, -1) + at(point - 2, -1);
    }
    return path + "Z";
}

std::string stripes(double x, double y, double wide, double high, const char* colour) {
    std::string path;
    for (const double part : {-0.75, -0.5, -0.25, 0.05, 0.3, 0.55, 0.78}) {
        path += "M" + number(x + 0.2 * part * wide) + " " + number(y - 0.74 * high) + "Q" +
                number(x + 1.25 * part * wide) + " " + number(y) + " " +
                number(x + 0.6 * part * wide) + " " + number(y + 0.7 * high);
    }
    return "<path d=\"" + path + "\" stroke=\"" + colour +
           "\" stroke-width=\"3\" fill=\"none\" opacity=\".8\"/>";
}

std::string cheek(double x, double y, double wide, double high, const char* colour) {
    return "<ellipse cx=\"" + number(x + 0.3 * wide) + "\" cy=\"" + number(y - 0.1 * high) +
           "\" rx=\"" + number(0.5 * wide) + "\" ry=\"" + number(0.6 * high) + "\" fill=\"" +
           colour + "\" opacity=\".55\"/>";
}

std::string core(double x, double y, double wide, double high, bool stone) {
    if (stone) {
        return "<ellipse cx=\"" + number(x) + "\" cy=\"" + number(y) + "\" rx=\"" +
               number(0.3 * wide) + "\" ry=\"" + number(0.5 * high) + "\" fill=\"#8a6a45\"/>";
    }
    std::string text = "<path d=\"" + outline(kRound, x, y, 0.42 * wide, 0.4 * high) +
                       "\" fill=\"none\" stroke=\"#c7b98a\"/>";
    for (const double side : {-0.12, 0.12}) {
        text += "<ellipse cx=\"" + number(x + side * wide) + "\" cy=\"" + number(y) +
                "\" rx=\"3\" ry=\"6\" fill=\"#5b3a1e\"/>";
    }
    return text;
}

} // namespace

std::string drawnFruit(const Truth& truth, bool pear, const std::string& key) {
    Chance chance(key + " drawn");
    const Colours colours = coloursOf(truth.hue);
    // The radius in mm of a ball of that mass, a little less dense than water; 1.6 units to the mm.
    const double radius = 0.6204 * std::cbrt(truth.mass) * 10 * 1.06;
    const double wide = std::clamp(radius * 1.6, 22.0, 78.0);
    const bool stone = truth.hue == Hue::blue;
    const double high = wide * (pear ? 1.25 : stone ? 1.15 : chance.between(0.84, 0.98));
    const HalfOutline& form = pear ? kBottle : kRound;
    const double belly = pear ? 100 + 0.45 * high : 100; // where the fruit is widest
    const double deep = pear ? 0.6 * high : high;
    std::string svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 352 192\">"
                      "<rect width=\"352\" height=\"192\" fill=\"#f4f1ea\"/><path d=\"";
    for (int x = 16; x < 352; x += 16) {
        svg += "M" + std::to_string(x) + " 0V192";
    }
    for (int y = 16; y < 192; y += 16) {
        svg += "M0 " + std::to_string(y) + "H352";
    }
    svg += "\" stroke=\"#d9d3c5\" stroke-width=\".6\"/>";
    const std::string whole = outline(form, 90, 100, wide, high);
    svg += "<path d=\"M90 " + number(100 + (form[0][1] + 0.08) * high) +
           "q4 -10 9 -14\" stroke=\"#5c4326\" "
           "stroke-width=\"3\" fill=\"none\"/><path d=\"" +
           whole + "\" fill=\"" + colours.ground + "\"/>";
    svg += truth.hue == Hue::striped ? stripes(90, belly, wide, deep, colours.cheek)
                                     : cheek(90, belly, wide, deep, colours.cheek);
    svg += "<path d=\"" + outline(form, 262, 100, wide, high) + "\" fill=\"" + colours.flesh +
           "\" stroke=\"" + colours.ground + "\" stroke-width=\"3\"/>";
    svg += core(262, belly, wide, deep, stone) + "</svg>\n";
    return svg;
}

} // namespace pipwright::sample
