#include "core/orchard/dictionary.h"

#include "sample-data/generator/figures.h"
#include "sample-data/generator/tables.h"
#include "sample-data/generator/world.h"

namespace pipwright::sample {

namespace {

Person personOf(std::string name, std::string initials, bool tastes, std::string place,
                std::string notes) {
    Person person;
    person.name = std::move(name);
    person.initials = std::move(initials);
    person.tastes = tastes;
    person.grows = !tastes;
    person.place = std::move(place);
    person.notes = std::move(notes);
    return person;
}

void openBook(World& world) {
    auto& scribe = world.scribe;
    scribe.openBook("Orchard of the Vennick valley", "Annis Tarrow");
    scribe.begin("The breeder and her two pieces of ground");
    world.annis.name = "AT";
    world.annis.truth = {0.0, 1.0, 0.1, 0.65, 0.7};
    world.annis.id = scribe
                         .add(personOf("Annis Tarrow", "AT", true, "Nether Vennick",
                                       "Raises the seedlings and keeps this book."))
                         .id;
    scribe.setWriter(world.annis.id);
    Site field;
    field.name = "Low Farfield";
    field.latitude = 52.3;
    field.longitude = -2.7;
    field.elevation = 118;
    field.hemisphere = Hemisphere::north;
    field.timeZone = "Europe/London";
    field.notes = "Open field by the Vennick brook, heavy loam, late frosts at the low end.";
    world.field = scribe.add(field).id;
    Site garden = field;
    garden.name = "Wallgarth";
    garden.elevation = 164;
    garden.notes = "Walled garden behind the house: frame trees, the south wall, a nursery bed.";
    world.garden = scribe.add(garden).id;
    scribe.finish();
}

Row rowOf(SiteId site, int number, std::string name, double bearing, std::string zero,
          double length) {
    Row row;
    row.record.site = site;
    row.record.number = number;
    row.record.name = std::move(name);
    row.record.bearing = bearing;
    row.record.zeroEnd = std::move(zero);
    row.record.length = length;
    return row;
}

void stake(World& world, Row row, int places, double spacing) {
    row.record = world.scribe.add(row.record);
    for (int ordinal = 1; ordinal <= places; ++ordinal) {
        Place place;
        place.record.row = row.record.id;
        place.record.ordinal = ordinal;
        place.record.distance = roundedTo(ordinal * spacing, 0.01);
        Chance chance(row.record.name + " gap " + std::to_string(ordinal));
        if (places == 60 && ordinal != 4 && chance.happens(0.035)) {
            place.gap = true;
            place.record.notes = chance.happens(0.5) ? "left free: ledge of rock a hand deep"
                                                     : "left free: the drain runs here";
        }
        place.record = world.scribe.add(place.record);
        row.places.push_back(place);
    }
    world.rows.push_back(std::move(row));
}

void stakeRows(World& world) {
    auto& scribe = world.scribe;
    scribe.begin("Rows staked and taped: eight in the field, three in the garden");
    stake(world, rowOf(world.field, 1, "A", 12, "the end by the gate", 50), 20, 2.5);
    for (int letter = 1; letter < 8; ++letter) {
        stake(world,
              rowOf(world.field, letter + 1, std::string(1, static_cast<char>('A' + letter)), 12,
                    "the end by the gate", 51),
              60, 0.85);
    }
    stake(world, rowOf(world.garden, 1, "Frame walk", 95, "the west door", 26), 6, 4.0);
    stake(world, rowOf(world.garden, 2, "South wall", 95, "the west door", 24), 14, 1.6);
    stake(world, rowOf(world.garden, 3, "Nursery bed", 95, "the water butt", 12), 30, 0.35);
    scribe.finish();
}

Genotype genotypeOf(const CultivarRow& row) {
    Genotype genotype;
    genotype.code = row.code;
    genotype.name = row.name;
    genotype.kind = GenotypeKind::cultivar;
    genotype.species = shippedSpeciesId(row.species);
    genotype.ploidy = row.ploidy;
    genotype.selfAlleles = row.selfAlleles;
    genotype.benchmark = row.benchmark;
    genotype.origin = row.origin;
    return genotype;
}

void enterCultivars(World& world) {
    auto& scribe = world.scribe;
    scribe.begin("Sixteen benchmarks, July to October, and two for other use");
    for (const CultivarRow& row : cultivars()) {
        Strain strain;
        strain.record = genotypeOf(row);
        strain.truth = row.truth;
        world.addStrain(strain);
    }
    for (const char* name : {"M.9", "MM.106", "Quince A", "St Julien A"}) {
        Strain stock;
        stock.record.code = name;
        stock.record.kind = GenotypeKind::rootstock;
        stock.record.species =
            shippedSpeciesId(std::string_view(name) == "Quince A"      ? "quince"
                             : std::string_view(name) == "St Julien A" ? "plum"
                                                                       : "apple");
        world.addStrain(stock);
    }
    scribe.finish();
}

std::string stockFor(const std::string& species) {
    if (species == "pear") {
        return "Quince A";
    }
    return species == "plum" ? "St Julien A" : "MM.106";
}

void plantCultivar(World& world, const std::string& code, std::size_t row, std::size_t place,
                   const std::string& stock, int firstCrop) {
    Tree tree;
    tree.strain = world.strainOf.at(code);
    tree.row = row;
    tree.place = place;
    tree.firstCrop = firstCrop;
    tree.record.kind = PlantKind::grafted;
    tree.record.position = world.rows[row].places[place].record.id;
    tree.record.stock = world.strain(stock).record.id;
    tree.record.planted = world.scribe.today();
    tree.record.state = PlantState::growing;
    world.addTree(tree, IdentityBasis::tagAndMap);
}

void plantStandards(World& world) {
    world.scribe.begin("Row A planted with the benchmarks, in the order of their season");
    std::size_t place = 0;
    for (const CultivarRow& row : cultivars()) {
        plantCultivar(world, row.code, kRowA, place++, stockFor(row.species), 2016);
    }
    plantCultivar(world, "MAR", kRowA, place++, "MM.106", 2016);
    plantCultivar(world, "LAD", kRowA, place, "MM.106", 2016);
    world.scribe.finish();
}

void plantFrames(World& world) {
    world.scribe.begin("Six Scarlet Mummer planted for frames along the walk");
    for (std::size_t place = 0; place < 6; ++place) {
        plantCultivar(world, "MUM", kFrameWalk, place, "MM.106", 9999);
    }
    world.scribe.finish();
}

void friendsCome(World& world) {
    auto& scribe = world.scribe;
    scribe.begin("Bodo and Corra will taste with us");
    world.bodo.name = "BQ";
    world.bodo.truth = {1.2, 0.5, -0.1, 0.5, 0.2};
    Person bodo = personOf("Bodo Quill", "BQ", true, "Nether Vennick",
                           "Likes everything; it is the order of his likings that tells.");
    bodo.healthNotes = "Raw plums make his mouth itch; he passes on them.";
    world.bodo.id = scribe.add(bodo).id;
    world.corra.name = "CV";
    world.corra.truth = {-0.4, 1.1, 0.75, 0.7, 0.1};
    world.corra.id = scribe
                         .add(personOf("Corra Venn", "CV", true, "Upper Vennick",
                                       "Only acid will do. A sweet apple is a turnip to her."))
                         .id;
    scribe.finish();
}

void growersJoin(World& world) {
    auto& scribe = world.scribe;
    scribe.begin("Two growers who will try our wood");
    world.ines = scribe
                     .add(personOf("Ines Marrow", "IM", false, "Costa Tourane, 900 km south",
                                   "Terraces in the sun, 240 m; writes long letters."))
                     .id;
    world.torben = scribe
                       .add(personOf("Torben Oake", "TO", false, "Hale Fell, 410 m",
                                     "Upland garden, late springs; writes on postcards."))
                       .id;
    scribe.finish();
}

} // namespace

void tellSetting(World& world) {
    auto& agenda = world.agenda;
    agenda.add(on(2013, 3, 2), 540, [&world] { openBook(world); });
    agenda.add(on(2013, 3, 3), 560, [&world] { enterCultivars(world); });
    agenda.add(on(2013, 11, 9), 980, [&world] { stakeRows(world); });
    agenda.add(on(2013, 11, 16), 960, [&world] { plantStandards(world); });
    agenda.add(on(2014, 11, 22), 900, [&world] { plantFrames(world); });
    agenda.add(on(2018, 7, 14), 500, [&world] { friendsCome(world); });
    agenda.add(on(2021, 1, 17), 1140, [&world] { growersJoin(world); });
}

} // namespace pipwright::sample
