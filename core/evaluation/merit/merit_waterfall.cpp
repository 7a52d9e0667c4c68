#include "core/evaluation/merit/merit_content.h"

#include <array>
#include <set>
#include <utility>

namespace pipwright {

namespace {

std::size_t indexOf(std::int32_t number) {
    return static_cast<std::size_t>(number);
}

/// Sums what the model takes off the records of one genotype, a record at a time.
class WaterfallBuilder {
  public:
    WaterfallBuilder(const MeritModel::Content& content, const GenotypeMerit& merit)
        : m_content(content),
          m_share(1.0 / merit.records), m_waterfall{merit.rawMean, {}, merit.merit} {
        const MeritOptions& options = content.options;
        for (int i = 0; i < kCorrectionCount; ++i) {
            m_conditions[indexOf(i)].correction = static_cast<Correction>(i);
            m_conditions[indexOf(i)].off = options.off.contains(static_cast<Correction>(i));
        }
        m_moments[0].second.off = !options.tasterLevels;
        m_moments[1].second.off = !options.sittings;
        m_moments[2].second.off = !options.cropYears;
    }

    void add(std::size_t record) {
        addConditions(m_content.records->records[record]);
        for (auto& [term, step] : m_moments) {
            const std::int32_t at = m_content.design.termAt[static_cast<std::size_t>(term)];
            const std::int32_t level =
                m_content.design.codes[static_cast<std::size_t>(term)][record];
            step.records += level >= 0 ? 1 : 0;
            if (at >= 0 && level >= 0) {
                step.change -= m_share * effect(at, level);
            }
        }
    }

    /// What is left after all steps is the shrinkage.
    MeritWaterfall take(int records) {
        for (const MeritStep& step : m_conditions) {
            keep(step);
        }
        for (const auto& [term, step] : m_moments) {
            keep(step);
        }
        MeritStep rest{MeritStep::Kind::shrinkage};
        rest.records = records;
        rest.change = m_waterfall.merit.value - m_waterfall.rawMean;
        for (const MeritStep& step : m_waterfall.steps) {
            rest.change -= step.change;
        }
        m_waterfall.steps.push_back(rest);
        return std::move(m_waterfall);
    }

  private:
    [[nodiscard]] double effect(std::int32_t term, std::int32_t level) const {
        return m_content.fit.randomEffects()[indexOf(term)].prediction(level);
    }

    void addConditions(const TraitRecord& record) {
        std::set<Correction> touched;
        for (const ConditionAmount& one : record.conditions) {
            const ConditionClass& belief = m_content.design.priors.conditions[one.condition];
            const ConditionTerm& mine = m_content.design.conditions[one.condition];
            MeritStep& step = m_conditions[static_cast<std::size_t>(belief.correction)];
            step.records += touched.insert(belief.correction).second ? 1 : 0;
            if (!step.off) {
                const double found = mine.term < 0 ? 0 : mine.sd * effect(mine.term, mine.level);
                step.change -= m_share * static_cast<double>(one.amount) * (belief.mean + found);
            }
        }
    }

    void keep(const MeritStep& step) {
        if (step.records > 0 && (step.off || step.change != 0)) {
            m_waterfall.steps.push_back(step);
        }
    }

    const MeritModel::Content& m_content;
    double m_share;
    MeritWaterfall m_waterfall;
    std::array<MeritStep, kCorrectionCount> m_conditions{};
    std::array<std::pair<MeritTerm, MeritStep>, 3> m_moments = {
        std::pair{MeritTerm::taster, MeritStep{MeritStep::Kind::taster}},
        std::pair{MeritTerm::sitting, MeritStep{MeritStep::Kind::sitting}},
        std::pair{MeritTerm::cropYear, MeritStep{MeritStep::Kind::cropYear}}};
};

} // namespace

Problem meritUnknown() {
    return {ProblemCode::badInput, "Nothing is known of the merit of that genotype.",
            "Choose one that has been tasted, or a parent of one.", "genotype"};
}

Result<MeritWaterfall> MeritModel::waterfall(Index genotype) const {
    const GenotypeMerit* merit = meritOf(genotype);
    if (merit == nullptr || !merit->seen()) {
        return meritUnknown();
    }
    WaterfallBuilder builder(*m_content, *merit);
    for (std::size_t i = 0; i < records().records.size(); ++i) {
        if (records().records[i].genotype == genotype) {
            builder.add(i);
        }
    }
    return builder.take(merit->records);
}

} // namespace pipwright
