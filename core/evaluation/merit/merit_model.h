#pragma once

#include "core/evaluation/merit/merit_priors.h"
#include "core/evaluation/merit/trait_records.h"
#include "core/statistics/dense_matrix.h"
#include "core/statistics/mixed_model_fit.h"

#include <memory>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

/// Merit: the true liking (or other trait) of a genotype, as a fair, prime, fresh lot would show it
/// to an average taster on an average day of an average year.
///
///     y = level + genotype + genotype x crop year + plant + lot + taster + sitting + crop year
///         + condition effects + e
///
/// genotype ~ N(0, A v) with A from the pedigree, the other terms independent, the residual of
/// each taster his own. Condition effects have normal priors (corrections.h) that the book's own
/// data move; variances have scaled-inverse-chi-square priors and are estimated by restricted
/// likelihood with them (Henderson 1975; Chung et al. 2013). Fair and unfair lots all count, an
/// unfair one with the noise of its conditions added.
namespace pipwright {

/// What of the model is switched on, and what it believes.
struct MeritOptions {
    bool pedigree = true; ///< seedlings borrow from parents and sibs
    bool tasterLevels = true;
    bool sittings = true;
    bool cropYears = true;
    bool tasterNoise = true; ///< a residual variance for each taster with enough scores
    std::set<Correction> off;
    std::optional<MeritPriors> priors; ///< nothing: likingPriors() or traitPriors()
};

/// How a term stands in a model.
enum class TermFooting {
    estimated, ///< its variance is learned from this book, with a little help of the prior
    assumed,   ///< the book cannot tell it from another term: the prior's variance is taken
    absent,    ///< no record has it, or it is switched off
};

/// A term of a fitted model: what to say of it in words.
struct TermReport {
    MeritTerm term = MeritTerm::genotype;
    TermFooting footing = TermFooting::absent;
    double variance = 0; ///< squared units of the trait
    int levels = 0;
};

/// A condition as this book sees it.
struct ConditionReport {
    std::uint8_t condition = 0; ///< place in conditionClasses()
    int records = 0;
    UncertainValue believed; ///< before, in units of the trait
    UncertainValue found;    ///< after
};

/// A taster as this book sees him.
struct TasterReport {
    PersonId taster;
    int scores = 0;
    UncertainValue level;  ///< above the average taster, in units of the trait
    double noise = 0;      ///< residual standard deviation
    bool ownNoise = false; ///< learned from his own scores
};

/// What the book says of one genotype.
struct GenotypeMerit {
    Index genotype = 0;
    UncertainValue merit;   ///< units of the trait; the error is a standard deviation
    double reliability = 0; ///< 0 to 1: squared correlation of estimate and truth
    double rawMean = 0;     ///< of its records as they stand; 0 without records
    int records = 0;
    int fairRecords = 0;
    int lots = 0;
    int fairLots = 0;
    int tasters = 0;
    int sittings = 0;
    int cropYears = 0;

    [[nodiscard]] bool seen() const { return records > 0; }
};

/// One step from the raw mean of a genotype's records to its merit.
struct MeritStep {
    enum class Kind { condition, taster, sitting, cropYear, shrinkage };
    Kind kind = Kind::condition;
    Correction correction = Correction::origin; ///< of a condition
    double change = 0;                          ///< units of the trait, added
    int records = 0;                            ///< how many records it touches
    bool off = false;                           ///< switched off: no change
};

/// From the mean as eaten to the merit. The shrinkage is what the model does not believe to last:
/// luck of year, tree, fruit and moment, less what family and level lend.
struct MeritWaterfall {
    double rawMean = 0;
    std::vector<MeritStep> steps; ///< rawMean and all changes add up to the merit
    UncertainValue merit;
};

/// Who descends from whom, and what they are called.
struct MeritFamilies {
    std::shared_ptr<const Pedigree> pedigree;
    std::shared_ptr<const std::vector<std::string>> names;
};

/// A fitted merit model. A value, cheap to copy, safe to read from several threads.
class MeritModel {
  public:
    /// Fits to all records. Genotypes are those with records and their ancestors.
    /// Problem badInput, as a sentence: no records, all alike, none linked to a genotype, a ring
    /// in the pedigree. Problem cancelled.
    static Result<MeritModel> fit(const OrchardView& view, TraitRecords records,
                                  const MeritOptions& options = {}, std::stop_token stop = {});
    /// The same of any pedigree; the records' genotypes are its members.
    static Result<MeritModel> fit(MeritFamilies families, TraitRecords records,
                                  const MeritOptions& options = {}, std::stop_token stop = {});
    /// The same records with other switches, at the variances found already: fast.
    [[nodiscard]] Result<MeritModel> switched(const MeritOptions& options) const;

    [[nodiscard]] const TraitRecords& records() const;
    [[nodiscard]] const MeritOptions& options() const;
    /// One a genotype of the model, in the order of their indices.
    [[nodiscard]] const std::vector<GenotypeMerit>& merits() const;
    [[nodiscard]] const GenotypeMerit* meritOf(Index genotype) const;
    [[nodiscard]] std::vector<TermReport> terms() const;
    [[nodiscard]] std::vector<ConditionReport> conditions() const;
    [[nodiscard]] std::vector<TasterReport> tasters() const;
    [[nodiscard]] double residualVariance() const; ///< of a fair lot and a typical taster
    [[nodiscard]] bool converged() const;
    /// Standard deviation of the trait's values, for scales to be told by.
    [[nodiscard]] double spread() const;

    /// Covariances of the merits of some genotypes (rows) with all (columns, as in merits()).
    /// Problem badInput: a genotype the model does not have.
    [[nodiscard]] Result<DenseMatrix> covariances(std::span<const Index> references) const;
    /// The difference of two merits with its own standard error.
    [[nodiscard]] Result<UncertainValue> difference(Index genotype, Index reference) const;
    /// From raw to corrected. Problem badInput: a genotype without records.
    [[nodiscard]] Result<MeritWaterfall> waterfall(Index genotype) const;

    /// The equations behind it, for questions of one's own.
    [[nodiscard]] const MixedFit& mixedFit() const;
    /// The merit of a genotype of the model as a contrast of them.
    [[nodiscard]] std::optional<Contrast> contrastOf(Index genotype) const;
    /// The effect of a term in one of records(); nothing when it has none.
    [[nodiscard]] std::optional<EffectRef> effectOf(MeritTerm term, std::size_t record) const;
    /// What was found or assumed; of an absent term what the prior believes.
    [[nodiscard]] double varianceOf(MeritTerm term) const;

    struct Content;

  private:
    explicit MeritModel(std::shared_ptr<const Content> content) : m_content(std::move(content)) {}
    std::shared_ptr<const Content> m_content;
};

} // namespace pipwright
