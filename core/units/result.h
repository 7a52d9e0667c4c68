#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>

namespace pipwright {

/// What kind of thing went wrong; the sentence beside it is for the reader.
enum class ProblemCode {
    badInput,   ///< a value the user or a file gave cannot be used
    notFound,   ///< nothing stands under that name or id
    conflict,   ///< the book has changed meanwhile, or a rule of the book forbids it
    busy,       ///< somebody else is writing
    unreadable, ///< a file cannot be read, or is not what it claims to be
    unwritable, ///< a file or folder cannot be written, or the disk is full
    newer,      ///< the file was written by a newer Pipwright
    damaged,    ///< the file breaks its own rules
    cancelled,  ///< the user stopped it
    internal,   ///< a fault of ours
};

/// A failure as a value: what happened, where, and what to do about it. Never thrown.
struct Problem {
    ProblemCode code = ProblemCode::internal;
    std::string what;   ///< one sentence, without the place
    std::string remedy; ///< one sentence: what to do. Never empty when shown to a user
    std::string
        where; ///< file, line and field, as "plant.csv, line 12, column position"; may be empty

    /// The whole as one paragraph: "where: what remedy".
    [[nodiscard]] std::string sentence() const {
        std::string text = where.empty() ? what : where + ": " + what;
        if (!remedy.empty()) {
            text += " " + remedy;
        }
        return text;
    }
};

/// A value, or the Problem that kept us from having it.
template <typename T>
class [[nodiscard]] Result {
  public:
    Result(T value)
        : m_content(std::in_place_index<0>, std::move(value)) {
    } // NOLINT(google-explicit-constructor)
    Result(Problem problem)
        : m_content(std::in_place_index<1>, std::move(problem)) {
    } // NOLINT(google-explicit-constructor)

    [[nodiscard]] bool ok() const { return m_content.index() == 0; }
    explicit operator bool() const { return ok(); }

    /// The value; only when ok().
    [[nodiscard]] const T& value() const& { return std::get<0>(m_content); }
    [[nodiscard]] T& value() & { return std::get<0>(m_content); }
    [[nodiscard]] T&& value() && { return std::get<0>(std::move(m_content)); }
    const T& operator*() const& { return value(); }
    T& operator*() & { return value(); }
    const T* operator->() const { return &value(); }
    T* operator->() { return &value(); }

    /// The problem; only when not ok().
    [[nodiscard]] const Problem& problem() const { return std::get<1>(m_content); }

  private:
    std::variant<T, Problem> m_content;
};

/// Success without a value, or a Problem.
template <>
class [[nodiscard]] Result<void> {
  public:
    Result() = default;
    Result(Problem problem)
        : m_problem(std::move(problem)) {} // NOLINT(google-explicit-constructor)

    [[nodiscard]] bool ok() const { return !m_problem.has_value(); }
    explicit operator bool() const { return ok(); }
    [[nodiscard]] const Problem& problem() const { return *m_problem; }

  private:
    std::optional<Problem> m_problem;
};

using Outcome = Result<void>;

} // namespace pipwright
