#include "core/statistics/augmented_block.h"

#include "core/statistics/refusal.h"

#include <cmath>
#include <numeric>
#include <string>

namespace pipwright {

namespace {

std::optional<Problem> faultOf(std::span<const EntryRecord> records, std::size_t entries,
                               std::size_t blocks) {
    if (records.empty()) {
        return unusable("There are no records to adjust.", "Score the trees first.");
    }
    std::vector<bool> entrySeen(entries, false);
    std::vector<bool> blockSeen(blocks, false);
    for (const EntryRecord& record : records) {
        if (record.entry >= entries || record.block >= blocks) {
            return unusable("A record names an entry or block that does not exist.",
                            "Number them from 0 without gaps.");
        }
        if (!std::isfinite(record.value)) {
            return unusable("A value is not a finite number.", "Leave out what was not measured.");
        }
        entrySeen[record.entry] = true;
        blockSeen[record.block] = true;
    }
    for (const auto& seen : {entrySeen, blockSeen}) {
        for (const bool one : seen) {
            if (!one) {
                return unusable("An entry or a block has no record.", "Leave it out.");
            }
        }
    }
    return std::nullopt;
}

std::size_t rootOf(std::vector<std::size_t>& parents, std::size_t member) {
    while (parents[member] != member) {
        parents[member] = parents[parents[member]];
        member = parents[member];
    }
    return member;
}

/// A block that shares no entry, over any number of steps, with block 0.
std::optional<std::size_t> blockApart(std::span<const EntryRecord> records, std::size_t entries,
                                      std::size_t blocks) {
    std::vector<std::size_t> parents(entries + blocks);
    std::iota(parents.begin(), parents.end(), std::size_t{0});
    for (const EntryRecord& record : records) {
        parents[rootOf(parents, record.entry)] = rootOf(parents, entries + record.block);
    }
    for (std::size_t block = 1; block < blocks; ++block) {
        if (rootOf(parents, entries + block) != rootOf(parents, entries)) {
            return block;
        }
    }
    return std::nullopt;
}

} // namespace

Result<BlockAdjustment> BlockAdjustment::of(std::span<const EntryRecord> records,
                                            std::size_t entries, std::size_t blocks) {
    if (auto fault = faultOf(records, entries, blocks)) {
        return *fault;
    }
    if (const auto apart = blockApart(records, entries, blocks)) {
        return unusable("Blocks 1 and " + std::to_string(*apart + 1) +
                            " share no entry, not even through others, so they have no common "
                            "scale.",
                        "Plant the same check trees in all, or look at them one by one.");
    }
    BlockAdjustment fit;
    const std::vector<double> entryMeans = fit.countRecords(records, entries, blocks);
    const auto inverse = inverseOfPositive(fit.blockEquations(records, blocks));
    if (!inverse) {
        return undecided("The block effects could not be told apart.",
                         "Let the blocks share more check trees.");
    }
    std::vector<double> right(blocks, 0);
    for (const EntryRecord& record : records) {
        right[record.block] += record.value - entryMeans[record.entry];
    }
    fit.m_blockCovariance = *inverse;
    fit.m_blockEffects = inverse->times(right);
    fit.m_adjustedMeans = entryMeans;
    const std::vector<double> shifts = fit.m_shares.times(fit.m_blockEffects);
    for (std::size_t entry = 0; entry < entries; ++entry) {
        fit.m_adjustedMeans[entry] -= shifts[entry];
    }
    double squares = 0;
    for (const EntryRecord& record : records) {
        const double residual =
            record.value - fit.m_adjustedMeans[record.entry] - fit.m_blockEffects[record.block];
        squares += residual * residual;
    }
    fit.m_residualDegrees =
        static_cast<int>(records.size() + 1) - static_cast<int>(entries) - static_cast<int>(blocks);
    if (fit.m_residualDegrees > 0) {
        fit.m_residualVariance = squares / fit.m_residualDegrees;
    }
    return fit;
}

std::vector<double> BlockAdjustment::countRecords(std::span<const EntryRecord> records,
                                                  std::size_t entries, std::size_t blocks) {
    m_replicates.assign(entries, 0);
    m_shares = DenseMatrix(entries, blocks);
    std::vector<double> means(entries, 0);
    for (const EntryRecord& record : records) {
        m_replicates[record.entry] += 1;
        m_shares(record.entry, record.block) += 1;
        means[record.entry] += record.value;
    }
    for (std::size_t entry = 0; entry < entries; ++entry) {
        means[entry] /= m_replicates[entry];
        for (std::size_t block = 0; block < blocks; ++block) {
            m_shares(entry, block) /= m_replicates[entry];
        }
    }
    return means;
}

DenseMatrix BlockAdjustment::blockEquations(std::span<const EntryRecord> records,
                                            std::size_t blocks) const {
    DenseMatrix equations(blocks, blocks);
    for (const EntryRecord& record : records) {
        equations(record.block, record.block) += 1;
    }
    for (std::size_t i = 0; i < blocks; ++i) {
        for (std::size_t j = 0; j < blocks; ++j) {
            equations(i, j) += 1;
            for (std::size_t entry = 0; entry < m_replicates.size(); ++entry) {
                equations(i, j) -= m_replicates[entry] * m_shares(entry, i) * m_shares(entry, j);
            }
        }
    }
    return equations;
}

Result<double> BlockAdjustment::differenceError(std::size_t first, std::size_t second) const {
    if (first >= m_adjustedMeans.size() || second >= m_adjustedMeans.size()) {
        return unusable("There is no such entry.", "Choose one of the trial.");
    }
    if (!m_residualVariance) {
        return unusable("Nothing was repeated, so the error cannot be estimated.",
                        "Plant check trees in every block.");
    }
    if (first == second) {
        return 0.0;
    }
    std::vector<double> gap(m_blockEffects.size());
    for (std::size_t block = 0; block < gap.size(); ++block) {
        gap[block] = m_shares(first, block) - m_shares(second, block);
    }
    // Entry means and block effects are uncorrelated.
    return std::sqrt(*m_residualVariance * (1 / m_replicates[first] + 1 / m_replicates[second] +
                                            m_blockCovariance.form(gap, gap)));
}

} // namespace pipwright
