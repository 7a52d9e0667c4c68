#pragma once

#include "core/evaluation/tree_life.h"
#include "core/pedigree/pedigree.h"
#include "core/pedigree/relatives.h"

#include <QString>

#include <memory>
#include <optional>
#include <unordered_set>

namespace pipwright::ui {

class OpenBook;

/// Everything the sheet shows of one tree, read at once.
struct TreeFacts {
    OrchardView::Pointer view;
    std::optional<Index> plant;
    std::optional<Index> genotype;
    TreeLife life;
    Hemisphere hemisphere = Hemisphere::unknown;

    // Kin; empty when the plant is not identified.
    std::optional<Ancestry> ancestry; ///< three generations
    Relatives relatives;
    QString purdy;
    std::optional<double> inbreeding;   ///< F, of diploids with both parents known
    std::optional<std::int64_t> ploidy; ///< of the genotype, else usual for its species

    std::unordered_set<Uuid> records; ///< whatever the sheet speaks of

    [[nodiscard]] QString code() const;
    /// The assertion of identity that counts; nothing when there is none.
    [[nodiscard]] const Identity* identity() const;
};

/// Reads the facts, and keeps the pedigree between trees as long as nobody's parents change.
class TreeReader {
  public:
    explicit TreeReader(const OpenBook& book) : m_book(book) {}

    /// Of the selected tree; the optional is empty when none is selected.
    Result<std::optional<TreeFacts>> read();
    /// Forgets the pedigree when these changes touch it.
    void heed(const std::vector<Change>& changes);
    /// Whether the changes touch something the facts speak of.
    static bool touch(const std::vector<Change>& changes, const TreeFacts& facts);

  private:
    void readKin(TreeFacts& facts);

    const OpenBook& m_book;
    std::optional<Pedigree> m_pedigree;
};

} // namespace pipwright::ui
