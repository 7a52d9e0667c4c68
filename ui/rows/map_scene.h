#pragma once

#include "core/orchard/words.h"
#include "core/units/uuid.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// What the row map shows: sites, their rows, and the places of each row, as plain values that
/// never change once made. The map never asks the book; a new state of the book is a new scene.
namespace pipwright::ui {

/// Number of a cell in its scene, counted along the rows in true order.
using CellIndex = std::uint32_t;

/// One flag a cell: is it meant? (A filter's answer, for example.) Empty means "all".
using CellSet = std::vector<bool>;

/// Small marks a cell may wear beside its stage.
enum class CellMark : std::uint8_t {
    noteToday = 1,
    graftWish = 2,
    photo = 4,
    earlierPlants = 8,
    secondPlant = 16, ///< another plant stands at the same place; the builder finds these itself
};

/// A piece of the scene's pool of texts.
struct TextRange {
    std::uint32_t offset = 0;
    std::uint32_t length = 0; ///< bytes of UTF-8
};

struct MapCell {
    Uuid plant; ///< nil for a gap
    std::int32_t ordinal = 0;
    std::optional<float> tapeMetres; ///< from the zero stake, where it was measured
    TextRange shortCode;
    TextRange code;
    TextRange folded; ///< the code in folded case, for searching
    Stage stage = Stage::unknown;
    PlantState state = PlantState::unknown;
    Confidence identity = Confidence::unknown;
    std::uint8_t marks = 0;

    [[nodiscard]] bool isGap() const { return plant.isNil(); }
    [[nodiscard]] bool has(CellMark mark) const {
        return (marks & static_cast<std::uint8_t>(mark)) != 0;
    }
};

/// What of a cell an edit may change without moving or renaming its tree.
struct CellStanding {
    CellIndex cell = 0;
    Stage stage = Stage::unknown;
    PlantState state = PlantState::unknown;
    Confidence identity = Confidence::unknown;
    std::uint8_t marks = 0;
};

struct MapRow {
    std::uint32_t site = 0;
    std::string name;                   ///< "3", "3a": as the breeder numbers it
    std::optional<double> lengthMetres; ///< by the tape
    std::string bearing;                ///< words, such as "N to S"; may be empty
    CellIndex firstCell = 0;
    std::uint32_t cellCount = 0;
};

struct MapSite {
    std::string name;
    std::uint32_t firstRow = 0;
    std::uint32_t rowCount = 0;
};

class MapScene {
  public:
    [[nodiscard]] std::span<const MapSite> sites() const { return m_sites; }
    [[nodiscard]] std::span<const MapRow> rows() const { return m_rows; }
    [[nodiscard]] std::span<const MapCell> cells() const { return m_cells; }
    [[nodiscard]] std::span<const MapCell> cellsOf(const MapRow& row) const {
        return cells().subspan(row.firstCell, row.cellCount);
    }
    [[nodiscard]] std::string_view text(TextRange range) const {
        return std::string_view(m_texts).substr(range.offset, range.length);
    }
    /// The cell of a plant; nothing when it does not stand in this scene.
    [[nodiscard]] std::optional<CellIndex> find(const Uuid& plant) const;
    /// The row (index into rows()) of a cell. The cell must exist.
    [[nodiscard]] std::uint32_t rowOf(CellIndex cell) const;
    /// Cells that hold a plant.
    [[nodiscard]] std::size_t treeCount() const { return m_byPlant.size(); }
    [[nodiscard]] bool hasTapeDistances() const { return m_hasTape; }
    /// The same scene with these cells looking otherwise.
    [[nodiscard]] std::shared_ptr<const MapScene> with(std::span<const CellStanding> looks) const;

  private:
    friend class MapSceneBuilder;
    std::vector<MapSite> m_sites;
    std::vector<MapRow> m_rows;
    std::vector<MapCell> m_cells;
    std::string m_texts;
    std::vector<CellIndex> m_byPlant; ///< sorted by plant
    bool m_hasTape = false;
};

using ScenePointer = std::shared_ptr<const MapScene>;

/// What is told about a row.
struct RowFacts {
    std::string name;
    std::optional<double> lengthMetres;
    std::string bearing;
};

/// What is told about a place and the plant in it. A place with two plants is told twice.
struct PlaceFacts {
    Uuid plant; ///< nil for a gap
    int ordinal = 0;
    std::optional<double> tapeMetres;
    std::string shortCode;
    std::string code;
    Stage stage = Stage::unknown;
    PlantState state = PlantState::growing;
    Confidence identity = Confidence::sure;
    std::uint8_t marks = 0; ///< CellMark values, or-ed
};

/// Collects sites, rows and places in any order of places and makes the scene.
class MapSceneBuilder {
  public:
    void addSite(std::string name);
    /// A row of the site added last (a nameless site is made when there is none).
    void addRow(RowFacts facts);
    /// A place of the row added last (a nameless row is made when there is none).
    void addPlace(const PlaceFacts& facts);
    /// Sorts each row by ordinal, marks places with two plants, and hands out the scene. The
    /// builder is empty afterwards.
    [[nodiscard]] ScenePointer finish();

  private:
    TextRange keep(std::string_view text);
    void sortRow(const MapRow& row);

    MapScene m_scene;
};

} // namespace pipwright::ui
