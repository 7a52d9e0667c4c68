#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "sample-data/generator/agenda.h"
#include "sample-data/generator/scribe.h"
#include "sample-data/generator/truth.h"

namespace pipwright::sample {

/// What a taster was heard to say of a genotype.
struct Heard {
    Date date;
    std::string who;
    double liking = 0.0;
    bool blind = false;
    bool fair = false; ///< ripe, sound, picked, fresh
};

/// A genotype with what is true of it and what was heard of it.
struct Strain {
    Genotype record;
    Truth truth;
    bool own = false;
    bool told = false; ///< its decisions are told by hand
    int sown = 0;
    Stage stage = Stage::unknown;
    std::vector<Heard> heard;
};

/// A plant that can fruit.
struct Tree {
    Plant record;
    std::size_t strain = 0;
    int firstCrop = 9999;
    std::size_t row = 0;
    std::size_t place = 0;
    int markYear = 0;
    WalkMark mark = WalkMark::unknown;
    std::optional<Date> seen; ///< since when this year she knows that it bears
    std::size_t identity = 0; ///< its newest assertion in World::identities
};

struct Place {
    Position record;
    std::optional<std::size_t> tree;
    std::optional<Date> free; ///< since when, after an earlier plant
    bool gap = false;
};

struct Row {
    TrialRow record;
    std::vector<Place> places;
};

/// How a tree bears in a year.
struct Fruiting {
    bool bears = false;
    CropLoad load = CropLoad::unknown;
    int cropNumber = 0;
    GoodDays days;
};

struct Taster {
    std::string name;
    PersonId id;
    TasterTruth truth;
};

/// The invented valley: what is true, what stands where, what was written down.
struct World {
    explicit World(Store& store) : scribe(store, 2013'0302) {}

    Scribe scribe;
    Agenda agenda;
    Taster annis, bodo, corra;
    PersonId ines, torben;
    SiteId field, garden;
    std::vector<Row> rows;
    std::vector<Strain> strains;
    std::vector<Tree> trees;
    std::vector<Identity> identities;
    std::map<std::string, Cross> crosses;
    std::map<std::string, std::size_t> strainOf; ///< by code
    std::map<std::string, std::size_t> treeOf;   ///< first tree of a code
    std::map<int, std::map<std::string, std::size_t>> limbs;

    Strain& strain(const std::string& code) { return strains[strainOf.at(code)]; }
    Tree& tree(const std::string& code) { return trees[treeOf.at(code)]; }
    Strain& strain(const Tree& tree) { return strains[tree.strain]; }
    bool stands(const Tree& tree) const { return tree.record.state == PlantState::growing; }

    /// Whether anybody knows which genotype the tree is.
    bool isKnown(const Tree& tree) const { return identities[tree.identity].genotype.has_value(); }

    /// Adds a genotype to the change set begun.
    std::size_t addStrain(Strain strain);
    /// Adds a plant with the assertion that it is its genotype.
    std::size_t addTree(Tree tree, IdentityBasis basis);
    /// Adds a decision, unless the genotype already stands there or further.
    void decide(Strain& strain, Stage stage, const std::string& reason);
    /// Takes a tree away: dead, lost or removed, with the reason; its place is free.
    void takeAway(Tree& tree, PlantState state, const std::string& reason);
    Fruiting fruiting(const Tree& tree, int year);
    /// What was heard in a year, as "14 September 2023 blind: AT 6.5, BQ 7.0".
    std::string evidence(const Strain& strain, int year) const;
};

/// Rows by their place in World::rows.
enum RowPlace : std::size_t { kRowA = 0, kRowB, kRowC, kRowD, kRowE, kRowF, kRowG, kRowH };
inline constexpr std::size_t kFrameWalk = 8;
inline constexpr std::size_t kSouthWall = 9;
inline constexpr std::size_t kNurseryBed = 10;

/// The morning on which the book stands; the walk of that day is not yet in it.
inline Date thisMorning() {
    return on(2026, 8, 22);
}

// Each of these puts its part of the years on the agenda.
void tellSetting(World& world);
void tellCrosses(World& world);
void tellFieldwork(World& world);
void tellWalks(World& world);
void tellSittings(World& world);
void tellMeetings(World& world);
void tellLosses(World& world);
void tellGrafting(World& world);
void tellLetters(World& world);
void tellEarlyStories(World& world);
void tellLateStories(World& world);
void tellSlots(World& world);
void tellPhotos(World& world);
void tellWeather(World& world);

} // namespace pipwright::sample
