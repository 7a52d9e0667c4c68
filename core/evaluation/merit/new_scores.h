#pragma once

#include "core/evaluation/merit/settle.h"
#include "core/statistics/dense_matrix.h"

#include <array>
#include <optional>
#include <vector>

namespace pipwright {

/// What scores to come would tell: by how much they shrink the variance of the difference, and
/// that of the genotype alone.
struct ToldByScores {
    double ofDifference = 0;
    double ofGenotype = 0;
};

/// All that a new score of a seedling or its reference has in common with the scores of the book,
/// with the covariances as fitted.
class KnownEffects {
  public:
    /// With the tasters who gave most scores. Problem badInput: a genotype the model does not have.
    static Result<KnownEffects> of(const MeritModel& model, const SettlingQuestion& question,
                                   int tasters);

    /// Problem internal when the covariances do not fit together.
    [[nodiscard]] Result<ToldByScores> toldBy(const TastingPlan& plan) const;
    /// As fitted.
    [[nodiscard]] double differenceVariance() const;
    [[nodiscard]] double reliabilityAfter(double told) const;

  private:
    /// Which effects of the model a score of one genotype shares; nothing: none, it is new.
    struct Shared {
        std::size_t merit = 0;
        std::optional<std::size_t> plant;
        std::optional<std::size_t> genotypeYear; ///< of the crop year running
    };
    struct Taster {
        std::optional<std::size_t> effect;
        bool stranger = false;
        double noise = 0; ///< residual variance
    };
    class ScoreList;

    explicit KnownEffects(const MeritModel& model) : m_model(model) {}
    void gather(const SettlingQuestion& question, int tasters);
    std::size_t add(Contrast contrast);
    std::optional<std::size_t> addEffect(MeritTerm term, std::optional<std::size_t> record);

    MeritModel m_model;
    std::vector<Contrast> m_contrasts;
    DenseMatrix m_covariance;
    std::array<Shared, 2> m_shared; ///< seedling, reference
    std::size_t m_genotype = 0;     ///< the seedling's effect without the level
    std::optional<std::size_t> m_cropYear;
    std::vector<Taster> m_tasters;
    double m_reliability = 0;
    double m_hopeVariance = 0;
};

} // namespace pipwright
