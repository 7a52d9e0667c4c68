#pragma once

#include "core/statistics/censored_mixed_model.h"
#include "core/statistics/mixed_model_fit.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace pipwright::bench {

/// The columns that the R side wrote for a case: raw numbers, one file each.
class Columns {
  public:
    Columns(std::filesystem::path folder, std::string name)
        : m_folder(std::move(folder)), m_case(std::move(name)) {}
    [[nodiscard]] std::vector<double> numbers(const std::string& column) const;
    /// Codes from 0; as many levels as the largest code asks for.
    [[nodiscard]] LevelCodes codes(const std::string& column) const;

  private:
    std::filesystem::path m_folder;
    std::string m_case;
};

/// What a fit may cost and how far it may be from the other side's.
struct Limits {
    std::optional<double> ratio{};     ///< times faster than R, at least
    std::optional<double> seconds{};   ///< of ours, at most
    std::optional<double> megabytes{}; ///< peak of our process, at most
    std::optional<double> criterion{}; ///< difference of the criteria
    bool onlyBetter = false;           ///< R stopped early: ours must merely not be higher
};

/// One fit to be measured. `prepare` reads the columns; the call it returns is what is timed.
struct Case {
    std::string name{};
    Limits limits{};
    std::function<std::function<Result<MixedFit>()>(const Columns&)> prepare{};
};

std::vector<Case> allCases();

} // namespace pipwright::bench
