#include "ui/rows/filter_spec.h"

#include <QStringList>

#include <algorithm>
#include <array>

namespace pipwright::ui {

namespace {

/// One word of the text, ready to be looked for.
struct SoughtWord {
    std::string folded;
    std::vector<bool> inFamily; ///< does the family's name hold it?
    std::string row;            ///< of row/place
    std::optional<int> place;

    SoughtWord(const QString& word, const FilterFacts& facts)
        : folded(word.toCaseFolded().toStdString()) {
        for (const QString& family : facts.families) {
            inFamily.push_back(family.contains(word, Qt::CaseInsensitive));
        }
        const qsizetype slash = word.lastIndexOf(QLatin1Char('/'));
        bool isNumber = false;
        const int number = word.mid(slash + 1).toInt(&isNumber);
        if (slash > 0 && isNumber) {
            row = word.left(slash).toStdString();
            place = number;
        }
    }

    [[nodiscard]] bool isIn(const MapScene& scene, const MapRow& inRow, const MapCell& cell,
                            int family) const {
        if (scene.text(cell.folded).find(folded) != std::string_view::npos) {
            return true;
        }
        if (family >= 0 && static_cast<std::size_t>(family) < inFamily.size() &&
            inFamily[static_cast<std::size_t>(family)]) {
            return true;
        }
        return place == cell.ordinal && row == inRow.name;
    }
};

class Sieve {
  public:
    Sieve(const FilterSpec& spec, const FilterFacts& facts) : m_spec(spec), m_facts(facts) {
        const QStringList words =
            spec.text.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
        for (const QString& word : words) {
            m_words.emplace_back(word, facts);
        }
        m_stages.fill(spec.stages.empty());
        for (const Stage stage : spec.stages) {
            m_stages[static_cast<std::size_t>(stage)] = true;
        }
        if (spec.family) {
            const auto found =
                std::find(facts.families.begin(), facts.families.end(), *spec.family);
            // A family that is not here any more lets nothing through.
            m_family = found == facts.families.end()
                           ? -2
                           : static_cast<int>(found - facts.families.begin());
        }
        for (const TraitBound& bound : spec.bounds) {
            const auto found = std::find_if(
                facts.traits.begin(), facts.traits.end(),
                [&bound](const FilterTrait& trait) { return trait.key == bound.trait; });
            m_traits.push_back(found == facts.traits.end() ? nullptr : &*found);
        }
    }

    [[nodiscard]] bool passes(const MapScene& scene, const MapRow& row, CellIndex index) const {
        const MapCell& cell = scene.cells()[index];
        if (cell.isGap() || !m_stages[static_cast<std::size_t>(cell.stage)]) {
            return false;
        }
        const int family = index < m_facts.familyOf.size() ? m_facts.familyOf[index] : -1;
        if (m_family && family != *m_family) {
            return false;
        }
        for (std::size_t i = 0; i < m_traits.size(); ++i) {
            if (!isWithin(m_traits[i], m_spec.bounds[i], index)) {
                return false;
            }
        }
        return std::all_of(m_words.begin(), m_words.end(), [&](const SoughtWord& word) {
            return word.isIn(scene, row, cell, family);
        });
    }

  private:
    static bool isWithin(const FilterTrait* trait, const TraitBound& bound, CellIndex cell) {
        if (!trait || cell >= trait->values.size() || !trait->values[cell]) {
            return false;
        }
        const double value = *trait->values[cell];
        return (!bound.low || value >= *bound.low) && (!bound.high || value <= *bound.high);
    }

    const FilterSpec& m_spec;
    const FilterFacts& m_facts;
    std::vector<SoughtWord> m_words;
    std::array<bool, Words<Stage>::words.size()> m_stages{};
    std::optional<int> m_family;
    std::vector<const FilterTrait*> m_traits;
};

} // namespace

CellSet shownBy(const FilterSpec& spec, const MapScene& scene, const FilterFacts& facts) {
    if (spec.isEmpty()) {
        return {};
    }
    const Sieve sieve(spec, facts);
    CellSet shown(scene.cells().size(), false);
    for (const MapRow& row : scene.rows()) {
        for (std::uint32_t i = 0; i < row.cellCount; ++i) {
            const CellIndex cell = row.firstCell + i;
            shown[cell] = sieve.passes(scene, row, cell);
        }
    }
    return shown;
}

std::size_t shownCount(const CellSet& shown, const MapScene& scene) {
    return shown.empty() ? scene.treeCount()
                         : static_cast<std::size_t>(std::count(shown.begin(), shown.end(), true));
}

} // namespace pipwright::ui
