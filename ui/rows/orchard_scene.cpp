#include "ui/rows/orchard_scene.h"

#include "core/evaluation/usual_ripening.h"
#include "ui/book/book_words.h"
#include "ui/rows/map_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <map>

namespace pipwright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::OrchardScene)
};

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

bool standsHere(const PlantEntry& plant) {
    return plant.state == PlantState::growing || plant.state == PlantState::unknown;
}

/// The part of a code that tells sisters apart: what stands behind the last dash or blank.
std::string shortOf(const std::string& code) {
    const auto cut = code.find_last_of("- ");
    return cut == std::string::npos || cut + 1 == code.size() ? code : code.substr(cut + 1);
}

std::uint8_t bit(CellMark mark) {
    return static_cast<std::uint8_t>(mark);
}

std::uint8_t ownMarks(const OrchardView& view, Index plant) {
    std::uint8_t marks = 0;
    const auto genotype = view.plants()[plant].genotype;
    if (genotype && view.genotypeFacts(*genotype).openWishes > 0) {
        marks |= bit(CellMark::graftWish);
    }
    if (view.plantFacts(plant).photos > 0) {
        marks |= bit(CellMark::photo);
    }
    return marks;
}

PlaceFacts factsOf(const OrchardView& view, Index plant) {
    const PlantEntry& entry = view.plants()[plant];
    PlaceFacts facts;
    facts.plant = entry.id.uuid;
    facts.code = view.plantCode(plant);
    facts.shortCode = shortOf(facts.code);
    facts.state = entry.state;
    facts.identity = entry.confidence;
    if (entry.genotype) {
        facts.stage = view.genotypes()[*entry.genotype].stage;
    }
    facts.marks = ownMarks(view, plant);
    return facts;
}

void addPosition(MapSceneBuilder& builder, const OrchardView& view, Index at) {
    const Position& position = view.positions()[at];
    const auto& plants = view.plantsAt(at);
    const auto standing = [&view](Index plant) {
        return !view.plants()[plant].erased && standsHere(view.plants()[plant]);
    };
    const auto place = [&](PlaceFacts facts) {
        facts.ordinal = static_cast<int>(position.ordinal);
        facts.tapeMetres = position.distance;
        builder.addPlace(facts);
    };
    std::size_t shown = 0;
    for (const Index plant : plants) {
        if (standing(plant)) {
            PlaceFacts facts = factsOf(view, plant);
            if (shown == 0 && plants.size() > 1 && plant != plants.front()) {
                facts.marks |= bit(CellMark::earlierPlants);
            }
            place(facts);
            ++shown;
        }
    }
    if (shown > 0) {
        return;
    }
    // Nothing grows here now: show the last plant as what became of it, else a gap.
    for (auto plant = plants.rbegin(); plant != plants.rend(); ++plant) {
        if (!view.plants()[*plant].erased) {
            PlaceFacts facts = factsOf(view, *plant);
            if (plants.size() > 1) {
                facts.marks |= bit(CellMark::earlierPlants);
            }
            place(facts);
            return;
        }
    }
    place({});
}

/// A number for each cell from a function of its plant.
template <typename Value>
std::vector<std::optional<double>> column(const std::vector<std::optional<Index>>& plants,
                                          Value value) {
    std::vector<std::optional<double>> numbers(plants.size());
    for (std::size_t i = 0; i < plants.size(); ++i) {
        if (plants[i]) {
            if (const auto one = value(*plants[i])) {
                numbers[i] = static_cast<double>(*one);
            }
        }
    }
    return numbers;
}

struct Families {
    std::vector<QString> names;
    std::vector<int> ofCell;
};

Families familiesOf(const OrchardView& view, const std::vector<std::optional<Index>>& plants) {
    Families families;
    families.ofCell.assign(plants.size(), -1);
    std::map<Uuid, int> seen;
    for (std::size_t i = 0; i < plants.size(); ++i) {
        const auto genotype =
            plants[i] ? view.plants()[*plants[i]].genotype : std::optional<Index>{};
        const auto cross = genotype ? view.genotypes()[*genotype].cross : std::nullopt;
        if (!cross) {
            continue;
        }
        const auto [at, fresh] = seen.try_emplace(cross->uuid, static_cast<int>(seen.size()));
        if (fresh) {
            const Cross* made = view.cross(*cross);
            QString name = crossWords(view, *genotype);
            if (made != nullptr && !made->code.empty()) {
                name = text(made->code) + QStringLiteral("  ") + name;
            }
            families.names.push_back(name);
        }
        families.ofCell[i] = at->second;
    }
    return families;
}

/// The week of the usual first ripe day: the tree's own where it was walked, else its genotype's.
std::optional<int> harvestWeekOf(const OrchardView& view, Index plant, Date today) {
    const auto own = view.plantFacts(plant).usualRipeDay;
    const auto day = own ? own : view.factsOfPlant(plant).usualRipeDay;
    return day ? std::optional(harvestWeekIn(*day, today.year())) : std::nullopt;
}

QString harvestWeekTitle(Date today) {
    return Words::tr("usual harvest week (ISO, %1)", "year of the calendar").arg(today.year());
}

std::optional<double> daysSince(const std::optional<Date>& day, Date today) {
    return day ? std::optional(static_cast<double>(daysBetween(*day, today))) : std::nullopt;
}

} // namespace

ScenePointer sceneOf(const OrchardView& view) {
    MapSceneBuilder builder;
    std::optional<Uuid> site;
    for (const Index row : view.rowsInOrder()) {
        const TrialRow& one = view.rows()[row];
        if (site != one.site.uuid) {
            site = one.site.uuid;
            const auto found =
                std::find_if(view.sites().begin(), view.sites().end(),
                             [&one](const Site& candidate) { return candidate.id == one.site; });
            builder.addSite(found == view.sites().end() ? std::string{} : found->name);
        }
        RowFacts facts;
        facts.name = view.rowName(row);
        facts.lengthMetres = one.length;
        facts.bearing = one.zeroEnd;
        builder.addRow(facts);
        for (const Index position : view.positionsOf(row)) {
            addPosition(builder, view, position);
        }
    }
    return builder.finish();
}

bool needNewScene(const std::vector<Change>& changes) {
    const auto touches = [](const Change& change, std::initializer_list<std::string_view> names) {
        return std::any_of(change.fields.begin(), change.fields.end(), [&](const auto& field) {
            const auto name = fieldsOf(change.kind)[field.field].name;
            return std::find(names.begin(), names.end(), name) != names.end();
        });
    };
    if (changes.empty()) {
        return true;
    }
    return std::any_of(changes.begin(), changes.end(), [&touches](const Change& change) {
        switch (change.kind) {
        case Kind::site:
        case Kind::trialRow:
        case Kind::position:
        case Kind::identity:
            return true;
        case Kind::plant:
            // A lost tree makes room for the one planted after it.
            return change.what != ChangeWhat::edited ||
                   touches(change, {"position", "tag", "state"});
        case Kind::genotype:
            return touches(change, {"code", "name"});
        default:
            return false;
        }
    });
}

std::vector<CellStanding> looksOtherwise(const MapScene& scene, const OrchardView& view,
                                         const std::vector<std::optional<Index>>& plants) {
    const auto ofPlace =
        static_cast<std::uint8_t>(bit(CellMark::earlierPlants) | bit(CellMark::secondPlant));
    std::vector<CellStanding> looks;
    for (CellIndex at = 0; at < plants.size(); ++at) {
        if (!plants[at]) {
            continue;
        }
        const MapCell& cell = scene.cells()[at];
        const PlantEntry& entry = view.plants()[*plants[at]];
        CellStanding look{
            at, Stage::unknown, entry.state, entry.confidence,
            static_cast<std::uint8_t>((cell.marks & ofPlace) | ownMarks(view, *plants[at]))};
        if (entry.genotype) {
            look.stage = view.genotypes()[*entry.genotype].stage;
        }
        if (look.stage != cell.stage || look.state != cell.state ||
            look.identity != cell.identity || look.marks != cell.marks) {
            looks.push_back(look);
        }
    }
    return looks;
}

std::vector<std::optional<Index>> plantsOfCells(const MapScene& scene, const OrchardView& view) {
    std::vector<std::optional<Index>> plants;
    plants.reserve(scene.cells().size());
    for (const MapCell& cell : scene.cells()) {
        plants.push_back(cell.isGap() ? std::nullopt : view.plant(PlantId(cell.plant)));
    }
    return plants;
}

FilterFacts filterFactsOf(const OrchardView& view, const std::vector<std::optional<Index>>& plants,
                          Date today) {
    FilterFacts facts;
    Families families = familiesOf(view, plants);
    facts.families = std::move(families.names);
    facts.familyOf = std::move(families.ofCell);
    facts.traits.push_back(
        {QStringLiteral("liking"), Words::tr("latest liking (1 to 9)"), 1,
         column(plants, [&view](Index plant) { return view.factsOfPlant(plant).latestLiking; })});
    facts.traits.push_back({QStringLiteral("fairLots"), Words::tr("fair lots"), 0,
                            column(plants, [&view](Index plant) {
                                return std::optional(view.factsOfPlant(plant).fairLots);
                            })});
    facts.traits.push_back({QStringLiteral("harvestWeek"), harvestWeekTitle(today), 0,
                            column(plants, [&view, today](Index plant) {
                                return harvestWeekOf(view, plant, today);
                            })});
    facts.traits.push_back(
        {QStringLiteral("firstFruit"), Words::tr("first fruit (crop year)"), 0,
         column(plants, [&view](Index plant) { return view.plantFacts(plant).firstFruitYear; })});
    return facts;
}

std::vector<std::optional<double>>
valuesOfCells(const std::vector<std::optional<Index>>& plants,
              const std::vector<std::optional<double>>& ofPlants) {
    return column(plants, [&ofPlants](Index plant) {
        return plant < ofPlants.size() ? ofPlants[plant] : std::nullopt;
    });
}

CellColouring colouringOf(const QString& key, const MapScene& scene, const OrchardView& view,
                          const std::vector<std::optional<Index>>& plants, Date today) {
    if (key == QLatin1String("family")) {
        const Families families = familiesOf(view, plants);
        return colourByFamily(scene, families.ofCell, families.names);
    }
    if (key == QLatin1String("firstFruit")) {
        return colourByFirstFruitYear(scene, column(plants, [&view](Index plant) {
                                          return view.plantFacts(plant).firstFruitYear;
                                      }));
    }
    if (key == QLatin1String("liking")) {
        return colourByLiking(scene, column(plants, [&view](Index plant) {
                                  return view.factsOfPlant(plant).latestLiking;
                              }));
    }
    if (key == QLatin1String("fairLots")) {
        return colourByFairLots(scene, column(plants, [&view](Index plant) {
                                    return std::optional(view.factsOfPlant(plant).fairLots);
                                }));
    }
    if (key == QLatin1String("harvestWeek")) {
        return colourByHarvestWeek(
            scene,
            column(plants,
                   [&view, today](Index plant) { return harvestWeekOf(view, plant, today); }),
            today.year());
    }
    if (key == QLatin1String("scab")) {
        if (const Trait* scab = view.traitByKey("scab")) {
            std::vector<std::optional<double>> worst(view.plants().size());
            for (Index plant = 0; plant < worst.size(); ++plant) {
                if (const auto state = view.plantFacts(plant).worstScab) {
                    worst[plant] = *state;
                }
            }
            return colouringByTrait(*scab, scene, view, plants, worst);
        }
    }
    if (key == QLatin1String("identity")) {
        return colourByIdentity(scene);
    }
    if (key == QLatin1String("lastVisited")) {
        return colourByLastVisited(scene, column(plants, [&view, today](Index plant) {
                                       return daysSince(view.plantFacts(plant).lastVisited, today);
                                   }));
    }
    return colourByStage(scene);
}

CellColouring colouringByTrait(const Trait& trait, const MapScene& scene, const OrchardView& view,
                               const std::vector<std::optional<Index>>& plants,
                               const std::vector<std::optional<double>>& values) {
    const auto valueOf = [&values](Index plant) {
        return plant < values.size() ? values[plant] : std::nullopt;
    };
    const auto states = view.statesOf(trait.id);
    if (states.empty()) {
        RampChoice choice;
        choice.title = traitName(trait);
        choice.unit = text(trait.unit);
        choice.decimals = 1;
        choice.lowFirst = trait.direction != Direction::lowerIsBetter;
        return colourByValues(scene, column(plants, valueOf), choice);
    }
    std::vector<QString> labels;
    for (const TraitState* state : states) {
        labels.push_back(traitStateName(*state));
    }
    std::vector<int> classes(plants.size(), -1);
    for (std::size_t i = 0; i < plants.size(); ++i) {
        const auto rank = plants[i] ? valueOf(*plants[i]) : std::nullopt;
        for (std::size_t s = 0; rank && s < states.size(); ++s) {
            if (static_cast<double>(states[s]->rank) == *rank) {
                classes[i] = static_cast<int>(s);
            }
        }
    }
    return colourByClasses(scene, traitName(trait), classes, labels,
                           trait.scale == ScaleKind::ordinal);
}

HoverWords hoverWordsOf(const OrchardView& view, Index plant) {
    HoverWords words;
    const PlantEntry& entry = view.plants()[plant];
    words.title = text(view.plantCode(plant));
    if (entry.genotype) {
        const GenotypeEntry& genotype = view.genotypes()[*entry.genotype];
        if (!genotype.name.empty() && genotype.name != genotype.code) {
            words.title += QStringLiteral(" · ") + text(genotype.name);
        }
        const QString cross = crossWords(view, *entry.genotype);
        if (!cross.isEmpty()) {
            words.lines << cross;
        }
        words.lines << stageWord(genotype.stage);
    }
    words.lines << Words::tr("place %1").arg(text(view.placeText(plant)));
    words.lines << identityWord(entry.confidence);
    const GenotypeFacts& facts = view.factsOfPlant(plant);
    if (facts.latestLiking) {
        words.lines << Words::tr("latest liking %1 as eaten, mean of %n score(s)", nullptr,
                                 facts.latestScores)
                           .arg(QLocale().toString(*facts.latestLiking, 'f', 1));
    }
    if (facts.lots > 0) {
        words.lines << Words::tr("%n lot(s) tasted", nullptr, facts.lots) +
                           Words::tr(", %n of them fair", nullptr, facts.fairLots);
    }
    if (const auto visited = view.plantFacts(plant).lastVisited) {
        words.lines << Words::tr("last visited %1").arg(text(visited->iso()));
    }
    return words;
}

std::vector<TreeColumn> columnsOf(ScenePointer scene, OrchardView::Pointer view,
                                  std::vector<std::optional<Index>> plants, Date today) {
    auto columns = sceneColumns(scene);
    const auto shared =
        std::make_shared<const std::vector<std::optional<Index>>>(std::move(plants));
    const auto add = [&](const char* key, const QString& title, int decimals, auto value) {
        columns.push_back({QString::fromLatin1(key), title,
                           [shared, view, value](CellIndex cell) -> QVariant {
                               const auto plant = (*shared)[cell];
                               return plant ? value(*view, *plant) : QVariant{};
                           },
                           decimals});
    };
    const auto orNothing = [](const auto& value) {
        return value ? QVariant(static_cast<double>(*value)) : QVariant{};
    };
    add("cross", Words::tr("family"), -1, [](const OrchardView& v, Index plant) {
        const auto genotype = v.plants()[plant].genotype;
        return genotype ? QVariant(crossWords(v, *genotype)) : QVariant{};
    });
    add("liking", Words::tr("latest liking (1 to 9)"), 1,
        [orNothing](const OrchardView& v, Index plant) {
            return orNothing(v.factsOfPlant(plant).latestLiking);
        });
    add("scores", Words::tr("scores in it"), 0, [](const OrchardView& v, Index plant) {
        const GenotypeFacts& facts = v.factsOfPlant(plant);
        return facts.latestLiking ? QVariant(facts.latestScores) : QVariant{};
    });
    add("fairLots", Words::tr("fair lots"), 0,
        [](const OrchardView& v, Index plant) { return QVariant(v.factsOfPlant(plant).fairLots); });
    add("harvestWeek", harvestWeekTitle(today), 0,
        [orNothing, today](const OrchardView& v, Index plant) {
            return orNothing(harvestWeekOf(v, plant, today));
        });
    add("lastVisited", Words::tr("last visited"), -1, [](const OrchardView& v, Index plant) {
        const auto day = v.plantFacts(plant).lastVisited;
        return day ? QVariant(text(day->iso())) : QVariant{};
    });
    return columns;
}

} // namespace pipwright::ui
