#pragma once

#include "core/evaluation/merit/merit_model.h"
#include "core/evaluation/sitting_agreement.h"
#include "core/statistics/intraclass_correlation.h"

#include <optional>
#include <string>
#include <vector>

/// Who tastes like whom, who likes everything, and whose scores tell fruits apart. All in units of
/// the trait (points of liking).
namespace pipwright {

/// Whether a taster's scores tell genotypes apart, from those he scored twice or more: one-way
/// analysis of variance of his scores, freed of condition, sitting and crop year.
struct Discrimination {
    int genotypes = 0;
    int scores = 0;
    double ratio = 0;  ///< mean square between genotypes over that within them
    double pValue = 1; ///< of that ratio, if he could not tell them apart at all
    /// Share of the variance that lies between genotypes, not below 0: (B - W) / (B + (n0 - 1) W)
    /// with n0 scores a genotype (Searle, Casella & McCulloch 1992, Variance Components, ch. 3).
    double share = 0;
};

/// One taster, told with what is behind each figure.
struct TasterAccount {
    PersonId taster;
    int scores = 0;
    int genotypes = 0;
    int sittings = 0;
    UncertainValue level; ///< above the average taster
    double spread = 0;    ///< standard deviation of the scores as they stand: use of the scale
    double noise = 0;     ///< residual standard deviation in the merit model
    bool ownNoise = false;
    /// The same genotype, in the same state, twice in one sitting (Bland & Altman 1996).
    std::optional<PointSpread> repeat;
    std::optional<Discrimination> discrimination;
    /// Shares no genotype with anybody else, so that kind fruit and a kind taster look the same.
    bool linkedToNobody = false;
};

/// How far the tasters agree, over the lots that all of some of them scored.
struct PanelAgreement {
    std::vector<PersonId> tasters; ///< two or more
    int lots = 0;                  ///< scored by every one of them
    FriedmanTest order;            ///< Kendall's W is `order.concordance`
    std::optional<IntraclassCorrelations> correlations;

    [[nodiscard]] double pValue() const { return order.exactPValue.value_or(order.pValue); }
};

struct TasterReports {
    std::vector<TasterAccount> tasters; ///< most scores first
    /// Over the tasters and lots that make the largest full table; nothing with fewer than three
    /// lots in common.
    std::optional<PanelAgreement> agreement;
};

/// Problem badInput: a book in which no record names its taster.
Result<TasterReports> tasterReports(const MeritModel& model);

/// One kind and plain sentence: "Mara Thorne scores 0.4 points above the average taster (95 %: 0.1
/// to 0.7) and comes back to the same fruit within 0.6 points."
std::string sentenceOf(const TasterAccount& sheet, const std::string& name);
/// "Of 12 lots that all 3 scored the order agrees well (Kendall's W 0.71, p under 1 %)."
std::string sentenceOf(const PanelAgreement& agreement);

} // namespace pipwright
