#include "tests/bench/against_r/cases.h"

#include "core/evaluation/merit/merit_model.h"
#include "core/pedigree/inbreeding.h"
#include "core/pedigree/inverse_relationship.h"
#include "core/pedigree/pedigree.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fstream>
#include <stdexcept>
#include <utility>

namespace pipwright::bench {

namespace {

template <typename T>
std::vector<T> readRaw(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary | std::ios::ate);
    if (!stream) {
        throw std::runtime_error("Cannot read " + file.string());
    }
    std::vector<T> values(static_cast<std::size_t>(stream.tellg()) / sizeof(T));
    stream.seekg(0);
    stream.read(reinterpret_cast<char*>(values.data()),
                static_cast<std::streamsize>(values.size() * sizeof(T)));
    return values;
}

RandomTerm random(const Columns& columns, const char* column) {
    RandomTerm term;
    term.name = column;
    term.levels = columns.codes(column);
    return term;
}

FixedTerm factor(const Columns& columns, const char* column) {
    return FixedTerm::factor(column, columns.codes(column));
}

using Call = std::function<Result<MixedFit>()>;

/// A case that is one model and its fit.
Case modelCase(std::string name, Limits limits, std::function<MixedModel(const Columns&)> build) {
    return {std::move(name), limits, [build = std::move(build)](const Columns& columns) -> Call {
                return [model = build(columns)] { return fitMixedModel(model); };
            }};
}

/// A response, fixed factors, random factors.
std::function<MixedModel(const Columns&)> plain(const char* response,
                                                const std::vector<const char*>& fixed,
                                                const std::vector<const char*>& terms) {
    return [=](const Columns& columns) {
        MixedModel model;
        model.response = columns.numbers(response);
        for (const char* column : fixed) {
            model.fixed.push_back(factor(columns, column));
        }
        for (const char* column : terms) {
            model.random.push_back(random(columns, column));
        }
        return model;
    };
}

MixedModel sleepstudy(const Columns& columns) {
    MixedModel model = plain("Reaction", {}, {"Subject"})(columns);
    const std::vector<double> days = columns.numbers("Days");
    model.fixed = {FixedTerm::number("Days", days)};
    model.random[0].covariates = {days};
    return model;
}

/// R codes the ordered temperatures by orthonormal polynomials.
MixedModel cake(const Columns& columns) {
    constexpr std::array<std::array<double, 6>, 5> kPolynomials{{{-5, -3, -1, 1, 3, 5},
                                                                 {5, -1, -4, -4, -1, 5},
                                                                 {-5, 7, 4, -4, -7, 5},
                                                                 {1, -3, 2, 2, -3, 1},
                                                                 {-1, 5, -10, 10, -5, 1}}};
    MixedModel model = plain("angle", {"recipe"}, {"block"})(columns);
    const LevelCodes temperature = columns.codes("temperature");
    std::vector<FixedTerm> slopes;
    for (const auto& polynomial : kPolynomials) {
        double square = 0;
        for (const double value : polynomial) {
            square += value * value;
        }
        std::vector<double> column;
        for (const std::int32_t code : temperature.ofRecord) {
            column.push_back(polynomial[static_cast<std::size_t>(code)] / std::sqrt(square));
        }
        model.fixed.push_back(FixedTerm::number("temperature", column));
        slopes.push_back(model.fixed[0]);
        slopes.back().covariate = std::move(column);
    }
    model.fixed.insert(model.fixed.end(), slopes.begin(), slopes.end());
    return model;
}

/// From the two columns of parents to all reliabilities.
Result<MixedFit> fitAnimals(const ParentColumn& seed, const ParentColumn& pollen,
                            const MixedModel& records) {
    const GenotypeName nameOf = [](int member) { return std::to_string(member + 1); };
    const auto pedigree = Pedigree::ofColumns(seed, pollen, nameOf);
    if (!pedigree) {
        return pedigree.problem();
    }
    auto precision = inverseRelationship(*pedigree, inbreeding(*pedigree), nameOf);
    if (!precision) {
        return precision.problem();
    }
    MixedModel model = records;
    model.random[0].levels.count = pedigree->size();
    model.random[0].precision = std::move(*precision);
    return fitMixedModel(std::move(model));
}

Case animalCase() {
    return {"animal",
            {.ratio = 100, .seconds = 1.5, .megabytes = 300, .criterion = 1e-4, .onlyBetter = true},
            [](const Columns& columns) -> Call {
                return [records = plain("liking", {"year"}, {"member", "plant", "taster"})(columns),
                        seed = columns.codes("seed").ofRecord,
                        pollen = columns.codes("pollen").ofRecord] {
                    return fitAnimals(seed, pollen, records);
                };
            }};
}

/// Ten million records: more than any orchard will have, and still an answer.
Case tenMillionCase() {
    return {"ten_million", {}, [](const Columns&) -> Call {
                MixedModel model;
                RandomTerm tree;
                tree.name = "tree";
                tree.levels.count = 200'000;
                std::uint64_t state = 20260613;
                const auto next = [&state] {
                    state = state * 6364136223846793005U + 1442695040888963407U;
                    return static_cast<std::uint32_t>(state >> 33);
                };
                for (int record = 0; record < 10'000'000; ++record) {
                    const auto code = static_cast<std::int32_t>(next() % 200'000U);
                    tree.levels.ofRecord.push_back(code);
                    model.response.push_back(code % 7 + static_cast<double>(next() % 1000U) / 250);
                }
                model.random = {std::move(tree)};
                return [model = std::move(model)] { return fitMixedModel(model); };
            }};
}

/// The merit model as lme4 can fit it: no pedigree, nothing believed of level or variances, terms
/// that R is not given left out.
Result<MixedFit> fitMerits(const TraitRecords& records, const MeritFamilies& families) {
    MeritOptions options;
    options.pedigree = false;
    options.tasterNoise = false;
    options.priors = likingPriors();
    options.priors->level.reset();
    for (VariancePrior& prior : options.priors->terms) {
        prior.weight = 0;
    }
    options.priors->residual.weight = 0;
    options.priors->of(MeritTerm::plant).variance = 0;
    options.priors->of(MeritTerm::cropYear).variance = 0;
    const auto model = MeritModel::fit(families, records, options);
    if (!model) {
        return model.problem();
    }
    return model->mixedFit();
}

Case meritCase() {
    return {"merit", {.ratio = 5, .criterion = 1e-5}, [](const Columns& columns) -> Call {
                const auto liking = columns.numbers("liking");
                const LevelCodes genotype = columns.codes("genotype");
                const auto year = columns.codes("year").ofRecord;
                const LevelCodes lot = columns.codes("lot");
                const LevelCodes taster = columns.codes("taster");
                const LevelCodes sitting = columns.codes("sitting");
                TraitRecords records;
                for (std::size_t i = 0; i < liking.size(); ++i) {
                    TraitRecord record;
                    record.value = liking[i];
                    record.genotype = static_cast<Index>(genotype.ofRecord[i]);
                    record.cropYear = year[i];
                    record.lot = lot.ofRecord[i];
                    record.person = taster.ofRecord[i];
                    record.sitting = sitting.ofRecord[i];
                    records.records.push_back(std::move(record));
                }
                records.lots.resize(static_cast<std::size_t>(lot.count));
                records.persons.resize(static_cast<std::size_t>(taster.count));
                records.sittings = sitting.count;
                const auto nameOf = [](int one) { return std::to_string(one); };
                auto pedigree = Pedigree::of(
                    std::vector<Parents>(static_cast<std::size_t>(genotype.count)), nameOf);
                const MeritFamilies families{std::make_shared<const Pedigree>(std::move(*pedigree)),
                                             std::make_shared<const std::vector<std::string>>(
                                                 static_cast<std::size_t>(genotype.count))};
                return [records, families] { return fitMerits(records, families); };
            }};
}

Case keepingCase(std::string name) {
    return {std::move(name), {.criterion = 1e-4}, [](const Columns& columns) -> Call {
                const std::vector<double> low = columns.numbers("low");
                const std::vector<double> high = columns.numbers("high");
                std::vector<ResponseInterval> responses;
                for (std::size_t record = 0; record < low.size(); ++record) {
                    responses.push_back({low[record], high[record]});
                }
                MixedModel model;
                model.response = low;
                if (columns.codes("group").count > 1) {
                    model.fixed = {factor(columns, "group")};
                }
                return [model, responses] {
                    return fitCensoredMixedModel(model, responses,
                                                 {.likelihood = LikelihoodKind::full});
                };
            }};
}

} // namespace

std::vector<double> Columns::numbers(const std::string& column) const {
    const auto file = m_folder / (m_case + "." + column);
    return readRaw<double>(file);
}

LevelCodes Columns::codes(const std::string& column) const {
    LevelCodes codes{readRaw<std::int32_t>(m_folder / (m_case + "." + column)), 0};
    for (const std::int32_t code : codes.ofRecord) {
        codes.count = std::max(codes.count, code + 1);
    }
    return codes;
}

std::vector<Case> allCases() {
    const Limits tiny{.ratio = 50, .criterion = 1e-6};
    const Limits small{.ratio = 20, .criterion = 1e-6};
    const Limits large{.ratio = 15, .megabytes = 64, .criterion = 1e-6};
    const Limits untimed{.criterion = 1e-6};
    const auto million = [](double ratio) {
        return Limits{.ratio = ratio, .megabytes = 250, .criterion = 1e-4, .onlyBetter = true};
    };
    return {
        modelCase("dyestuff", tiny, plain("Yield", {}, {"Batch"})),
        modelCase("penicillin", tiny, plain("diameter", {}, {"plate", "sample"})),
        modelCase("pastes", tiny, plain("strength", {}, {"sample", "batch"})),
        modelCase("sleepstudy", small, sleepstudy),
        modelCase("cake", small, cake),
        modelCase("carrots", untimed, plain("Preference", {}, {"Consumer", "Product"})),
        modelCase("carrots_product", untimed, plain("Preference", {"Product"}, {"Consumer"})),
        modelCase("ham", untimed, plain("Informed.liking", {}, {"Consumer", "Product"})),
        modelCase("ham_pairs", untimed,
                  plain("Informed.liking", {"Product", "Information"}, {"pair", "Consumer"})),
        modelCase("insteval", large, plain("y", {"service"}, {"s", "d"})),
        modelCase("insteval_three", large, plain("y", {"service"}, {"s", "d", "dept"})),
        modelCase("million", million(60), plain("liking", {}, {"tree", "taster"})),
        modelCase("million_small", million(150), plain("liking", {}, {"tree", "taster"})),
        meritCase(),
        animalCase(),
        keepingCase("keeping"),
        keepingCase("keeping_groups"),
        keepingCase("keeping_many"),
        tenMillionCase(),
    };
}

} // namespace pipwright::bench
