#include "core/evaluation/merit/merit_design.h"

#include "core/pedigree/inbreeding.h"
#include "core/pedigree/inverse_relationship.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace pipwright {

namespace {

/// As if so many residuals of the typical taster were among a taster's own.
constexpr double kTasterNoiseWeight = 10;

std::size_t place(std::int32_t number) {
    return static_cast<std::size_t>(number);
}

std::size_t place(MeritTerm term) {
    return static_cast<std::size_t>(term);
}

/// Codes 0, 1, 2 and so on for keys as they come.
template <typename KeyOf>
LevelCodes codesFor(const std::vector<TraitRecord>& records, const KeyOf& keyOf) {
    using Key = decltype(keyOf(records.front()));
    LevelCodes codes;
    codes.ofRecord.reserve(records.size());
    std::map<Key, std::int32_t> known;
    for (const TraitRecord& record : records) {
        const auto [at, fresh] = known.try_emplace(keyOf(record), codes.count);
        codes.count += fresh ? 1 : 0;
        codes.ofRecord.push_back(at->second);
    }
    return codes;
}

/// Codes given with the records, of which some may never occur.
template <typename CodeOf>
LevelCodes codesGiven(const std::vector<TraitRecord>& records, std::int32_t count,
                      const CodeOf& codeOf) {
    LevelCodes codes;
    codes.count = count;
    codes.ofRecord.reserve(records.size());
    for (const TraitRecord& record : records) {
        codes.ofRecord.push_back(codeOf(record));
    }
    return codes;
}

std::int32_t levelsSeen(const LevelCodes& codes) {
    std::vector<bool> seen(place(codes.count), false);
    for (const std::int32_t code : codes.ofRecord) {
        if (code >= 0) {
            seen[place(code)] = true;
        }
    }
    return static_cast<std::int32_t>(std::count(seen.begin(), seen.end(), true));
}

/// Whether two groupings of the records are the same, or the first sets every record apart.
bool cannotTellApart(const LevelCodes& one, const LevelCodes& other) {
    std::vector<std::int32_t> partner(place(one.count), -1);
    std::vector<std::int32_t> back(place(other.count), -1);
    for (std::size_t i = 0; i < one.ofRecord.size(); ++i) {
        const std::int32_t a = one.ofRecord[i];
        const std::int32_t b = other.ofRecord[i];
        if ((a < 0) != (b < 0)) {
            return false;
        }
        if (a < 0) {
            continue;
        }
        if ((partner[place(a)] >= 0 && partner[place(a)] != b) ||
            (back[place(b)] >= 0 && back[place(b)] != a)) {
            return false;
        }
        partner[place(a)] = b;
        back[place(b)] = a;
    }
    return true;
}

bool setsEveryRecordApart(const LevelCodes& codes) {
    std::vector<bool> seen(place(codes.count), false);
    for (const std::int32_t code : codes.ofRecord) {
        if (code >= 0) {
            if (seen[place(code)]) {
                return false;
            }
            seen[place(code)] = true;
        }
    }
    return true;
}

VarianceChoice choiceOf(const VariancePrior& prior, bool assumed) {
    if (assumed || std::isinf(prior.weight)) {
        return VarianceChoice::held(prior.variance);
    }
    return prior.weight > 0 ? VarianceChoice::inverseChiSquare(prior.variance, prior.weight)
                            : VarianceChoice{};
}

/// Builds a MeritDesign part by part.
class MeritDesigner {
  public:
    MeritDesigner(const MeritFamilies& families, const TraitRecords& records,
                  const MeritOptions& options, const KnownBefore& known)
        : m_families(families), m_records(records.records), m_all(records), m_options(options),
          m_known(known) {}

    Result<MeritDesign> design() {
        choosePriors();
        if (Outcome done = addGenotypes(); !done) {
            return done.problem();
        }
        groupRecords();
        for (const MeritTerm term : kMeritTerms) {
            if (term != MeritTerm::genotype) {
                addTerm(term);
            }
        }
        addConditions();
        addResponse();
        addResidual();
        for (const LevelCodes& codes : m_codes) {
            m_design.codes.push_back(codes.ofRecord);
        }
        return std::move(m_design);
    }

  private:
    void choosePriors() {
        std::vector<double> values;
        for (const TraitRecord& record : m_records) {
            values.push_back(record.value);
        }
        if (m_options.priors) {
            m_design.priors = *m_options.priors;
        } else if (m_all.isLiking()) {
            m_design.priors = likingPriors();
        } else {
            double mean = 0;
            for (const double value : values) {
                mean += value / static_cast<double>(values.size());
            }
            double squares = 0;
            for (const double value : values) {
                squares += (value - mean) * (value - mean);
            }
            const double variance = squares / std::max(1.0, static_cast<double>(values.size()) - 1);
            m_design.priors = traitPriors(variance > 0 ? variance : 1);
        }
        m_design.termAt.assign(kMeritTerms.size(), -1);
        m_codes.resize(kMeritTerms.size());
        for (const MeritTerm term : kMeritTerms) {
            m_design.reports.push_back({term, TermFooting::absent, 0, 0});
        }
    }

    /// The genotypes seen, and with the pedigree all their ancestors.
    Outcome addGenotypes() {
        const Pedigree& whole = *m_families.pedigree;
        std::vector<bool> wanted(place(whole.size()), false);
        for (const TraitRecord& record : m_records) {
            wanted[record.genotype] = true;
        }
        RandomTerm term;
        term.name = "genotype";
        if (m_options.pedigree) {
            for (int rank = whole.size() - 1; rank >= 0; --rank) {
                const int genotype = whole.atRank(rank);
                if (wanted[place(genotype)]) {
                    want(whole.parentsOf(genotype), wanted);
                }
            }
        }
        for (Index i = 0; i < wanted.size(); ++i) {
            if (wanted[i]) {
                m_design.levelOf.emplace(i, static_cast<std::int32_t>(m_design.genotypes.size()));
                m_design.genotypes.push_back(i);
            }
        }
        if (m_options.pedigree) {
            Result<LevelPrecision> precision = relationship(whole);
            if (!precision) {
                return precision.problem();
            }
            term.precision = std::move(*precision);
        }
        LevelCodes& codes = m_codes[place(MeritTerm::genotype)];
        codes = codesGiven(
            m_records, static_cast<std::int32_t>(m_design.genotypes.size()),
            [&](const TraitRecord& record) { return m_design.levelOf.at(record.genotype); });
        term.levels = codes;
        const bool assumed = levelsSeen(codes) < 2 || setsEveryRecordApart(codes);
        finish(MeritTerm::genotype, std::move(term), assumed);
        return {};
    }

    static void want(const Parents& parents, std::vector<bool>& wanted) {
        for (const auto& parent : {parents.seed, parents.pollen}) {
            if (parent) {
                wanted[place(*parent)] = true;
            }
        }
    }

    Result<LevelPrecision> relationship(const Pedigree& whole) {
        std::vector<Parents> parents;
        const auto level = [&](std::optional<int> genotype) -> std::optional<int> {
            if (!genotype) {
                return std::nullopt;
            }
            return m_design.levelOf.at(static_cast<Index>(*genotype));
        };
        for (const Index genotype : m_design.genotypes) {
            const Parents both = whole.parentsOf(static_cast<int>(genotype));
            parents.push_back({level(both.seed), level(both.pollen)});
        }
        const GenotypeName nameOf = [&](int one) {
            return (*m_families.names)[m_design.genotypes[place(one)]];
        };
        const Result<Pedigree> part = Pedigree::of(parents, nameOf);
        if (!part) {
            return part.problem();
        }
        return inverseRelationship(*part, inbreeding(*part), nameOf);
    }

    void groupRecords() {
        m_codes[place(MeritTerm::genotypeYear)] =
            codesFor(m_records, [](const TraitRecord& record) {
                return std::pair{record.genotype, record.cropYear};
            });
        m_codes[place(MeritTerm::plant)] = codesFor(m_records, [](const TraitRecord& record) {
            // Fruit of unknown trees is as good as of a tree of its own.
            return record.plant >= 0 ? std::pair{0, record.plant}
                                     : std::pair{1, static_cast<std::int32_t>(record.genotype)};
        });
        m_codes[place(MeritTerm::cropYear)] =
            codesFor(m_records, [](const TraitRecord& record) { return record.cropYear; });
        m_codes[place(MeritTerm::lot)] =
            codesGiven(m_records, static_cast<std::int32_t>(m_all.lots.size()),
                       [](const TraitRecord& record) { return record.lot; });
        m_codes[place(MeritTerm::taster)] =
            codesGiven(m_records, static_cast<std::int32_t>(m_all.persons.size()),
                       [](const TraitRecord& record) { return record.person; });
        m_codes[place(MeritTerm::sitting)] = codesGiven(
            m_records, m_all.sittings, [](const TraitRecord& record) { return record.sitting; });
    }

    [[nodiscard]] bool isSwitchedOff(MeritTerm term) const {
        return (term == MeritTerm::taster && !m_options.tasterLevels) ||
               (term == MeritTerm::sitting && !m_options.sittings) ||
               (term == MeritTerm::cropYear && !m_options.cropYears);
    }

    void addTerm(MeritTerm term) {
        static constexpr std::array kNames = {
            "genotype", "genotype x crop year", "plant", "lot", "taster", "sitting", "crop year"};
        const LevelCodes& codes = m_codes[place(term)];
        const std::int32_t seen = levelsSeen(codes);
        if (seen == 0 || isSwitchedOff(term) || m_design.priors.of(term).variance <= 0) {
            return;
        }
        // A single taster, sitting or year cannot be told from the general level, but it may be an
        // unusual one: that belongs to the doubt about every merit.
        bool assumed = seen < 2 || setsEveryRecordApart(codes);
        for (const MeritTerm other : kMeritTerms) {
            assumed =
                assumed || (place(other) < place(term) && m_design.termAt[place(other)] >= 0 &&
                            cannotTellApart(codes, m_codes[place(other)]));
        }
        RandomTerm random;
        random.name = kNames[place(term)];
        random.levels = codes;
        finish(term, std::move(random), assumed);
    }

    void finish(MeritTerm term, RandomTerm random, bool assumed) {
        random.variance = m_known.variances
                              ? VarianceChoice::held(m_known.variances->terms[place(term)])
                              : choiceOf(m_design.priors.of(term), assumed);
        m_design.termAt[place(term)] = static_cast<std::int32_t>(m_design.model.random.size());
        TermReport& report = m_design.reports[place(term)];
        report.footing = assumed ? TermFooting::assumed : TermFooting::estimated;
        report.levels = levelsSeen(random.levels);
        m_design.model.random.push_back(std::move(random));
    }

    [[nodiscard]] bool counts(std::size_t condition) const {
        return !m_options.off.contains(m_design.priors.conditions[condition].correction);
    }

    /// One random term a correction, its levels the classes, each counted in its own standard
    /// deviations; classes that may meet in one lot (days on different paths) have a term each.
    void addConditions() {
        const auto& classes = m_design.priors.conditions;
        m_design.conditions.resize(classes.size());
        std::map<Correction, std::int32_t> termOf;
        std::vector<bool> seen(classes.size(), false);
        for (const TraitRecord& record : m_records) {
            for (const ConditionAmount& one : record.conditions) {
                seen[one.condition] = true;
            }
        }
        for (std::size_t i = 0; i < classes.size(); ++i) {
            if (!seen[i] || !counts(i) || classes[i].sd <= 0) {
                continue;
            }
            ConditionTerm& mine = m_design.conditions[i];
            mine.sd = classes[i].sd;
            const bool alone = classes[i].correction == Correction::storage;
            const auto known = termOf.find(classes[i].correction);
            if (!alone && known != termOf.end()) {
                mine.term = known->second;
            } else {
                mine.term = static_cast<std::int32_t>(m_design.model.random.size());
                termOf[classes[i].correction] = mine.term;
                RandomTerm random;
                random.name = std::string(classes[i].key);
                random.intercept = false;
                random.levels.ofRecord.assign(m_records.size(), -1);
                random.covariates.assign(1, std::vector<double>(m_records.size(), 0.0));
                random.variance = VarianceChoice::held(1);
                m_design.model.random.push_back(std::move(random));
            }
            mine.level = m_design.model.random[place(mine.term)].levels.count++;
        }
        for (std::size_t i = 0; i < m_records.size(); ++i) {
            for (const ConditionAmount& one : m_records[i].conditions) {
                const ConditionTerm& mine = m_design.conditions[one.condition];
                if (mine.term >= 0) {
                    RandomTerm& random = m_design.model.random[place(mine.term)];
                    random.levels.ofRecord[i] = mine.level;
                    random.covariates[0][i] = mine.sd * static_cast<double>(one.amount);
                }
            }
        }
    }

    void addResponse() {
        MixedModel& model = m_design.model;
        const auto& level = m_design.priors.level;
        model.intercept = !level.has_value();
        if (level && level->sd > 0) {
            m_design.levelTerm = static_cast<std::int32_t>(model.random.size());
            RandomTerm general;
            general.name = "level";
            general.levels.count = 1;
            general.levels.ofRecord.assign(m_records.size(), 0);
            general.variance = VarianceChoice::held(level->sd * level->sd);
            model.random.push_back(std::move(general));
        }
        for (const TraitRecord& record : m_records) {
            double offset = level ? level->mean : 0;
            double noise = 1;
            for (const ConditionAmount& one : record.conditions) {
                if (counts(one.condition)) {
                    const ConditionClass& belief = m_design.priors.conditions[one.condition];
                    offset += belief.mean * static_cast<double>(one.amount);
                    noise += belief.noise * static_cast<double>(one.amount);
                }
            }
            m_design.offsets.push_back(offset);
            model.response.push_back(record.value - offset);
            model.weights.push_back(1 / noise);
        }
    }

    void addResidual() {
        m_design.residualGroupOf.assign(m_all.persons.size(), 0);
        ResidualSpec& residual = m_design.model.residual;
        if (m_known.noise != nullptr) {
            addTasterGroups(*m_known.noise);
            return;
        }
        if (m_known.variances == nullptr) {
            residual.variance = {choiceOf(m_design.priors.residual, false)};
            return;
        }
        // Each taster at the noise found for him.
        residual.groups.count = static_cast<std::int32_t>(m_all.persons.size()) + 1;
        residual.variance = {VarianceChoice::held(m_known.variances->residual)};
        for (std::size_t person = 0; person < m_all.persons.size(); ++person) {
            m_design.residualGroupOf[person] = static_cast<std::int32_t>(person) + 1;
            residual.variance.push_back(
                VarianceChoice::held(m_known.variances->tasterResiduals[person]));
        }
        for (const TraitRecord& record : m_records) {
            residual.groups.ofRecord.push_back(record.person + 1);
        }
    }

    /// A residual for each taster who has enough scores, drawn to the typical one.
    void addTasterGroups(const TasterNoise& noise) {
        ResidualSpec& residual = m_design.model.residual;
        residual.groups.count = 1;
        residual.variance = {choiceOf(m_design.priors.residual, false)};
        for (std::size_t person = 0; person < m_all.persons.size(); ++person) {
            if (noise.own[person]) {
                m_design.residualGroupOf[person] = residual.groups.count++;
                residual.variance.push_back(
                    VarianceChoice::inverseChiSquare(noise.typical, kTasterNoiseWeight));
            }
        }
        for (const TraitRecord& record : m_records) {
            residual.groups.ofRecord.push_back(
                record.person < 0 ? 0 : m_design.residualGroupOf[place(record.person)]);
        }
    }

    const MeritFamilies& m_families;
    const std::vector<TraitRecord>& m_records;
    const TraitRecords& m_all;
    const MeritOptions& m_options;
    const KnownBefore m_known;
    MeritDesign m_design;
    std::vector<LevelCodes> m_codes; ///< by MeritTerm
};

} // namespace

Result<MeritDesign> meritDesign(const MeritFamilies& families, const TraitRecords& records,
                                const MeritOptions& options, const KnownBefore& known) {
    if (records.records.empty()) {
        return Problem{ProblemCode::badInput, "Nothing has been scored yet.",
                       "Taste some fruit, or bring scores in, and come back.", ""};
    }
    return MeritDesigner(families, records, options, known).design();
}

Contrast levelContrast(const MeritDesign& design) {
    if (design.model.intercept) {
        return {{EffectRef::theIntercept(), 1}};
    }
    if (design.levelTerm) {
        return {{EffectRef::ofRandom(*design.levelTerm, 0), 1}};
    }
    return {};
}

} // namespace pipwright
