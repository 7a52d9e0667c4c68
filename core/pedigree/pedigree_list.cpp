#include "core/pedigree/pedigree_list.h"

#include "core/units/text.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace pipwright {

namespace {

std::string lineNumber(std::size_t line) {
    return "line " + std::to_string(line + 1);
}

/// Gives every name a number.
class Register {
  public:
    /// Nothing when the name has a number already.
    std::optional<int> add(std::string_view name) {
        const auto number = static_cast<int>(m_names.size());
        if (!m_numbers.emplace(name, number).second) {
            return std::nullopt;
        }
        m_names.emplace_back(name);
        return number;
    }

    [[nodiscard]] std::optional<int> find(std::string_view name) const {
        const auto found = m_numbers.find(std::string(name));
        return found == m_numbers.end() ? std::nullopt : std::optional{found->second};
    }

    std::vector<std::string>& names() { return m_names; }

  private:
    std::vector<std::string> m_names;
    std::unordered_map<std::string, int> m_numbers;
};

std::optional<Problem> enter(std::span<const PedigreeLine> lines, Register& members) {
    for (std::size_t line = 0; line < lines.size(); ++line) {
        const std::string_view name = trimmed(lines[line].name);
        if (name.empty()) {
            return Problem{ProblemCode::badInput, "This line has no name.",
                           "Name the genotype, or leave the line out.", lineNumber(line)};
        }
        if (!members.add(name)) {
            return Problem{ProblemCode::badInput,
                           std::string(name) + " stands here again; it is already on line " +
                               std::to_string(*members.find(name) + 1) + ".",
                           "Keep one of the two lines, or rename one.", lineNumber(line)};
        }
    }
    return std::nullopt;
}

} // namespace

std::optional<int> NamedPedigree::find(std::string_view name) const {
    const auto found = std::find(names.begin(), names.end(), name);
    return found == names.end() ? std::nullopt
                                : std::optional{static_cast<int>(found - names.begin())};
}

Result<NamedPedigree> pedigreeOf(std::span<const PedigreeLine> lines) {
    Register members;
    if (const auto fault = enter(lines, members)) {
        return *fault;
    }
    NamedPedigree result;
    std::vector<Parents> parents(lines.size());
    const auto numberOf = [&](std::string_view name) -> std::optional<int> {
        if (name.empty()) {
            return std::nullopt;
        }
        const auto added = members.add(name);
        if (added) {
            result.addedFounders.push_back(*added);
        }
        return added ? added : members.find(name);
    };
    for (std::size_t line = 0; line < lines.size(); ++line) {
        const auto seed = numberOf(trimmed(lines[line].seedParent));
        parents[line] = {seed, numberOf(trimmed(lines[line].pollenParent))};
    }
    result.names = std::move(members.names());
    parents.resize(result.names.size());
    const auto nameOf = [&result](int number) {
        return result.names[static_cast<std::size_t>(number)];
    };
    auto pedigree = Pedigree::of(parents, nameOf);
    if (!pedigree) {
        return pedigree.problem();
    }
    result.pedigree = std::move(*pedigree);
    std::vector<std::optional<int>> years(result.names.size());
    std::transform(lines.begin(), lines.end(), years.begin(),
                   [](const PedigreeLine& line) { return line.year; });
    const auto tooYoung = tooYoungParents(result.pedigree, years);
    if (!tooYoung.empty()) {
        const auto [child, parent] = tooYoung.front();
        return Problem{
            ProblemCode::badInput,
            nameOf(parent) + " of " + std::to_string(*years[static_cast<std::size_t>(parent)]) +
                " cannot be a parent of " + nameOf(child) + " of " +
                std::to_string(*years[static_cast<std::size_t>(child)]) + ".",
            "Correct a year or the parent.", lineNumber(static_cast<std::size_t>(child))};
    }
    return result;
}

std::vector<TooYoungParent> tooYoungParents(const Pedigree& pedigree,
                                            std::span<const std::optional<int>> years) {
    std::vector<TooYoungParent> found;
    for (int child = 0; child < pedigree.size(); ++child) {
        const auto& bloom = years[static_cast<std::size_t>(child)];
        const Parents both = pedigree.parentsOf(child);
        const auto isTooYoung = [&](std::optional<int> parent) {
            const auto year = parent ? years[static_cast<std::size_t>(*parent)] : std::nullopt;
            return bloom && year && *year >= *bloom;
        };
        if (isTooYoung(both.seed)) {
            found.push_back({child, *both.seed});
        }
        if (both.pollen != both.seed && isTooYoung(both.pollen)) {
            found.push_back({child, *both.pollen});
        }
    }
    return found;
}

} // namespace pipwright
