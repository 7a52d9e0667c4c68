#include "tests/ui/rows/random_scene.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <random>

namespace pipwright::ui::testing {

namespace {

constexpr std::array kSiteNames = {"Upper bank", "Long acre", "Mill croft", "Far close"};

std::string numbered(const char* form, int one, int other) {
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), form, one, other);
    return text.data();
}

Stage stageOf(int roll, bool young) {
    if (young) {
        return roll < 30 ? Stage::nursery : Stage::juvenile;
    }
    constexpr std::array<std::pair<int, Stage>, 9> limits = {{{430, Stage::bearing},
                                                              {560, Stage::juvenile},
                                                              {760, Stage::culled},
                                                              {880, Stage::watched},
                                                              {930, Stage::selection},
                                                              {955, Stage::advanced},
                                                              {967, Stage::named},
                                                              {975, Stage::released},
                                                              {1000, Stage::parent}}};
    for (const auto& [limit, stage] : limits) {
        if (roll < limit) {
            return stage;
        }
    }
    return Stage::unknown;
}

class Planter {
  public:
    explicit Planter(unsigned seed) : m_random(seed) {}

    int roll() { return static_cast<int>(m_random() % 1000); }

    void plantRow(MapSceneBuilder& builder, int places, bool tape) {
        double metres = 0.6;
        bool young = roll() < 200;
        for (int place = 1; place <= places; ++place) {
            if (roll() < 40) {
                young = roll() < 250;
                m_year = 13 + roll() % 11;
            }
            metres += 1.1 + roll() / 5000.0 + (roll() < 15 ? 1.5 : 0.0);
            PlaceFacts facts = tree(place, young);
            if (tape) {
                facts.tapeMetres = metres;
            }
            if (roll() < 60) {
                facts.plant = {};
                facts.code.clear();
                facts.shortCode.clear();
            }
            builder.addPlace(facts);
            if (roll() < 8 && !facts.plant.isNil()) {
                PlaceFacts second = tree(place, true);
                second.tapeMetres = facts.tapeMetres;
                builder.addPlace(second);
            }
        }
    }

  private:
    PlaceFacts tree(int place, bool young) {
        ++m_count;
        PlaceFacts facts;
        facts.plant = treeNumber(m_count);
        facts.ordinal = place;
        facts.code = numbered("AT%02d-%03d", m_year, m_count % 1000);
        facts.shortCode = numbered("%2$03d", 0, m_count % 1000);
        facts.stage = stageOf(roll(), young);
        const int state = roll();
        facts.state = state < 45   ? PlantState::dead
                      : state < 55 ? PlantState::lost
                      : state < 65 ? PlantState::removed
                                   : PlantState::growing;
        facts.identity = roll() < 30 ? Confidence::byMap : Confidence::sure;
        const auto mark = [&](int chance, CellMark which) {
            facts.marks |= roll() < chance ? static_cast<std::uint8_t>(which) : std::uint8_t{0};
        };
        mark(25, CellMark::noteToday);
        mark(40, CellMark::graftWish);
        mark(80, CellMark::photo);
        mark(60, CellMark::earlierPlants);
        return facts;
    }

    std::mt19937 m_random;
    int m_count = 0;
    int m_year = 17;
};

} // namespace

Uuid treeNumber(int number) {
    return Uuid::named("tree " + std::to_string(number));
}

ScenePointer randomScene(const OrchardShape& shape) {
    MapSceneBuilder builder;
    Planter planter(shape.seed);
    for (int site = 0; site < shape.sites; ++site) {
        builder.addSite(kSiteNames[static_cast<std::size_t>(site) % kSiteNames.size()]);
        for (int row = 1; row <= shape.rowsPerSite; ++row) {
            const int places =
                shape.ragged ? shape.places - planter.roll() * shape.places / 4000 : shape.places;
            builder.addRow({std::to_string(row), places * 1.25, "N to S"});
            planter.plantRow(builder, places, shape.tape);
        }
    }
    return builder.finish();
}

ScenePointer plainScene(int rows, int places) {
    MapSceneBuilder builder;
    builder.addSite("Upper bank");
    int count = 0;
    for (int row = 1; row <= rows; ++row) {
        builder.addRow({std::to_string(row), std::nullopt, ""});
        for (int place = 1; place <= places; ++place) {
            PlaceFacts facts;
            facts.plant = treeNumber(++count);
            facts.ordinal = place;
            facts.code = numbered("R%d-%03d", row, place);
            facts.shortCode = numbered("%2$03d", row, place);
            facts.stage = Stage::bearing;
            builder.addPlace(facts);
        }
    }
    return builder.finish();
}

OrchardValues randomValues(const MapScene& scene, unsigned seed) {
    OrchardValues values;
    std::mt19937 random(seed);
    std::normal_distribution<double> normal(0, 1);
    constexpr int kFamilies = 25;
    for (int family = 0; family < kFamilies; ++family) {
        values.families.push_back(QStringLiteral("Ash Tarn x Pollen %1").arg(family + 1));
    }
    int family = 0;
    for (const MapCell& cell : scene.cells()) {
        if (random() % 18 == 0) {
            family = static_cast<int>(random() % kFamilies);
        }
        values.familyOf.push_back(cell.isGap() ? -1 : family);
        const bool bears = cell.stage >= Stage::bearing && cell.stage <= Stage::parent;
        const auto some = [&](double value) {
            return bears && random() % 5 > 0 ? std::optional(value) : std::nullopt;
        };
        values.liking.push_back(some(std::clamp(5.4 + 1.4 * normal(random), 1.0, 9.0)));
        values.weeks.push_back(some(std::round(std::clamp(35 + 4 * normal(random), 28.0, 43.0))));
        values.difference.push_back(some(normal(random)));
        values.doubt.push_back(0.3 + 0.7 * std::abs(normal(random)));
    }
    return values;
}

} // namespace pipwright::ui::testing
