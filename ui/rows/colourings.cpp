#include "ui/rows/cell_colouring.h"
#include "ui/rows/map_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <array>
#include <cmath>

namespace pipwright::ui {

namespace {

struct Colourings {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::Colourings)
};

constexpr std::size_t kMostLines = 9;

CellColouring blank(const MapScene& scene, QString title, ColourScale scale) {
    CellColouring colouring;
    colouring.title = std::move(title);
    colouring.scale = scale;
    colouring.entryOf.assign(scene.cells().size(), CellColouring::kNoEntry);
    return colouring;
}

/// Puts the cells that hold a tree into the lines that `lineOf` says; negative is none.
template <typename LineOf>
void fillLines(CellColouring& colouring, const MapScene& scene, LineOf lineOf) {
    for (CellIndex cell = 0; cell < scene.cells().size(); ++cell) {
        if (scene.cells()[cell].isGap()) {
            continue;
        }
        const int line = lineOf(cell);
        if (line >= 0 && static_cast<std::size_t>(line) < colouring.legend.size()) {
            colouring.entryOf[cell] = static_cast<std::uint16_t>(line);
            ++colouring.legend[static_cast<std::size_t>(line)].count;
        }
    }
}

template <typename Value>
std::optional<Value> at(std::span<const std::optional<Value>> values, CellIndex cell) {
    return cell < values.size() ? values[cell] : std::nullopt;
}

/// Lines of even, round steps that cover the values.
struct Steps {
    double first = 0;
    double width = 1;
    std::size_t count = 0;

    [[nodiscard]] int lineOf(double value) const {
        const double line = std::floor((value - first) / width + 1e-9);
        return static_cast<int>(std::clamp(line, 0.0, static_cast<double>(count) - 1));
    }
};

/// The smallest of 1, 2, 5, 10, ... (times a power of ten) that is not below `wanted`.
double roundStep(double wanted) {
    const double power = std::pow(10.0, std::floor(std::log10(wanted)));
    for (const double factor : {1.0, 2.0, 5.0}) {
        if (factor * power >= wanted * (1 - 1e-9)) {
            return factor * power;
        }
    }
    return 10 * power;
}

Steps stepsFor(double low, double high, bool whole) {
    if (whole && high - low < static_cast<double>(kMostLines)) {
        return {std::floor(low), 1, static_cast<std::size_t>(high - std::floor(low)) + 1};
    }
    if (high <= low) {
        return {low, 1, 1};
    }
    if (whole) {
        const double first = std::floor(low);
        const double width = std::ceil((high - first + 1) / static_cast<double>(kMostLines));
        return {first, width, static_cast<std::size_t>(std::floor((high - first) / width)) + 1};
    }
    for (double width = roundStep((high - low) / static_cast<double>(kMostLines));;
         width = roundStep(width * 1.5)) {
        const double first = std::floor(low / width + 1e-9) * width;
        const auto count = static_cast<std::size_t>(std::floor((high - first) / width + 1e-9)) + 1;
        // The highest value may sit on the edge of the last line: it belongs to that line.
        const bool onEdge = first + static_cast<double>(count - 1) * width >= high - 1e-9;
        const std::size_t lines = onEdge && count > 1 ? count - 1 : count;
        if (lines <= kMostLines) {
            return {first, width, lines};
        }
    }
}

QString stepLabel(const Steps& steps, std::size_t line, const RampChoice& choice) {
    const double low = steps.first + static_cast<double>(line) * steps.width;
    const double high = choice.whole ? low + steps.width - 1 : low + steps.width;
    int decimals = choice.decimals;
    while (decimals < 6 && std::abs(steps.width * std::pow(10, decimals) -
                                    std::round(steps.width * std::pow(10, decimals))) > 1e-6) {
        ++decimals;
    }
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    const QString unit = choice.unit.isEmpty() ? QString() : QStringLiteral(" ") + choice.unit;
    const QString from = locale.toString(low, 'f', choice.whole ? 0 : decimals);
    if (choice.whole && high <= low) {
        return from + unit;
    }
    return from + QStringLiteral("–") + locale.toString(high, 'f', choice.whole ? 0 : decimals) +
           unit;
}

} // namespace

CellColouring colourByStage(const MapScene& scene) {
    CellColouring colouring = blank(scene, Colourings::tr("Stage"), ColourScale::stages);
    std::array<int, 16> lineOf{};
    lineOf.fill(-1);
    std::array<std::size_t, 16> counts{};
    for (const MapCell& cell : scene.cells()) {
        counts[static_cast<std::size_t>(cell.stage)] += cell.isGap() ? 0 : 1;
    }
    for (const Stage stage : stagesInOrder()) {
        if (counts[static_cast<std::size_t>(stage)] > 0) {
            lineOf[static_cast<std::size_t>(stage)] = static_cast<int>(colouring.legend.size());
            colouring.legend.push_back({stageWord(stage), {}, 0, 0, stage});
        }
    }
    fillLines(colouring, scene, [&](CellIndex cell) {
        return lineOf[static_cast<std::size_t>(scene.cells()[cell].stage)];
    });
    return colouring;
}

CellColouring colourByIdentity(const MapScene& scene) {
    constexpr std::array order = {Confidence::sure, Confidence::byMap, Confidence::byFruit,
                                  Confidence::unknown};
    std::vector<int> classOf(scene.cells().size(), -1);
    std::vector<QString> labels;
    for (const Confidence confidence : order) {
        labels.push_back(identityWord(confidence));
    }
    for (std::size_t cell = 0; cell < classOf.size(); ++cell) {
        const auto found = std::find(order.begin(), order.end(), scene.cells()[cell].identity);
        classOf[cell] = static_cast<int>(found - order.begin());
    }
    return colourByClasses(scene, Colourings::tr("Identity"), classOf, labels, false);
}

CellColouring colourByFamily(const MapScene& scene, std::span<const int> familyOf,
                             std::span<const QString> names) {
    return colourByClasses(scene, Colourings::tr("Family"), familyOf, names, false);
}

CellColouring colourByClasses(const MapScene& scene, QString title, std::span<const int> classOf,
                              std::span<const QString> labels, bool ordered) {
    CellColouring colouring =
        blank(scene, std::move(title), ordered ? ColourScale::ramp : ColourScale::categories);
    for (std::size_t line = 0; line < labels.size(); ++line) {
        const double tone =
            labels.size() < 2 ? 0.5
                              : static_cast<double>(line) / static_cast<double>(labels.size() - 1);
        const QString letter = ordered ? QString::number(line + 1) : categoricalLetter(line);
        colouring.legend.push_back({labels[line], letter, 0, tone, Stage::unknown});
    }
    fillLines(colouring, scene,
              [&](CellIndex cell) { return cell < classOf.size() ? classOf[cell] : -1; });
    return colouring;
}

CellColouring colourByValues(const MapScene& scene, std::span<const std::optional<double>> values,
                             const RampChoice& choice) {
    CellColouring colouring = blank(scene, choice.title, ColourScale::ramp);
    std::optional<double> low;
    std::optional<double> high;
    for (CellIndex cell = 0; cell < scene.cells().size(); ++cell) {
        const auto value = at(values, cell);
        if (value && std::isfinite(*value) && !scene.cells()[cell].isGap()) {
            low = std::min(low.value_or(*value), *value);
            high = std::max(high.value_or(*value), *value);
        }
    }
    if (!low) {
        return colouring;
    }
    const Steps steps = stepsFor(*low, *high, choice.whole);
    for (std::size_t line = 0; line < steps.count; ++line) {
        const double tone = (static_cast<double>(line) + 0.5) / static_cast<double>(steps.count);
        colouring.legend.push_back({stepLabel(steps, line, choice), QString::number(line + 1), 0,
                                    choice.lowFirst ? tone : 1 - tone, Stage::unknown});
    }
    fillLines(colouring, scene, [&](CellIndex cell) {
        const auto value = at(values, cell);
        return value && std::isfinite(*value) ? steps.lineOf(*value) : -1;
    });
    return colouring;
}

CellColouring colourByFirstFruitYear(const MapScene& scene,
                                     std::span<const std::optional<double>> years) {
    return colourByValues(scene, years,
                          {Colourings::tr("First fruit (crop year)"), {}, 0, true, true});
}

CellColouring colourByFairLots(const MapScene& scene, std::span<const std::optional<double>> lots) {
    return colourByValues(scene, lots, {Colourings::tr("Fair lots"), {}, 0, true, true});
}

CellColouring colourByLiking(const MapScene& scene, std::span<const std::optional<double>> liking) {
    return colourByValues(scene, liking,
                          {Colourings::tr("Latest liking (1 to 9)"), {}, 0, false, true});
}

CellColouring colourByHarvestWeek(const MapScene& scene,
                                  std::span<const std::optional<double>> weeks, int calendarYear) {
    return colourByValues(scene, weeks,
                          {Colourings::tr("Usual harvest week, calendar of %1").arg(calendarYear),
                           {},
                           0,
                           true,
                           true});
}

CellColouring colourByScab(const MapScene& scene, std::span<const std::optional<double>> scab) {
    return colourByValues(scene, scab,
                          {Colourings::tr("Scab (1 none to 9 worst)"), {}, 0, true, false});
}

CellColouring colourByLastVisited(const MapScene& scene,
                                  std::span<const std::optional<double>> daysAgo) {
    const std::array<QString, 5> labels = {
        Colourings::tr("today or yesterday"), Colourings::tr("within a week"),
        Colourings::tr("within a month"), Colourings::tr("within a year"),
        Colourings::tr("longer ago")};
    constexpr std::array limits = {1.0, 7.0, 31.0, 366.0};
    std::vector<int> classOf(scene.cells().size(), -1);
    for (CellIndex cell = 0; cell < classOf.size(); ++cell) {
        if (const auto days = at(daysAgo, cell)) {
            const auto limit = std::lower_bound(limits.begin(), limits.end(), *days);
            classOf[cell] = static_cast<int>(limit - limits.begin());
        }
    }
    return colourByClasses(scene, Colourings::tr("Last visited"), classOf, labels, true);
}

CellColouring colourByDifference(const MapScene& scene, QString title,
                                 std::span<const std::optional<double>> difference,
                                 std::span<const std::optional<double>> halfInterval) {
    CellColouring colouring = blank(scene, std::move(title), ColourScale::twoEnded);
    const std::array<QString, 3> labels = {Colourings::tr("worse beyond doubt"),
                                           Colourings::tr("within doubt"),
                                           Colourings::tr("better beyond doubt")};
    const std::array<QString, 3> letters = {QStringLiteral("−"), QStringLiteral("≈"),
                                            QStringLiteral("+")};
    for (std::size_t line = 0; line < labels.size(); ++line) {
        colouring.legend.push_back(
            {labels[line], letters[line], 0, static_cast<double>(line) * 0.5, Stage::unknown});
    }
    double largest = 0;
    for (CellIndex cell = 0; cell < scene.cells().size(); ++cell) {
        largest = std::max(largest, std::abs(at(difference, cell).value_or(0)));
    }
    colouring.toneOf.assign(scene.cells().size(), 0.5F);
    colouring.fullnessOf.assign(scene.cells().size(), 0.0F);
    fillLines(colouring, scene, [&](CellIndex cell) {
        const auto value = at(difference, cell);
        if (!value) {
            return -1;
        }
        const double size = std::abs(*value);
        const auto doubt = at(halfInterval, cell);
        const double sureness = doubt && size + *doubt > 0 ? size / (size + *doubt) : 0;
        colouring.toneOf[cell] =
            static_cast<float>(largest > 0 ? 0.5 + 0.5 * *value / largest : 0.5);
        colouring.fullnessOf[cell] = static_cast<float>(sureness);
        if (!doubt || size <= *doubt) {
            return 1;
        }
        return *value > 0 ? 2 : 0;
    });
    return colouring;
}

} // namespace pipwright::ui
