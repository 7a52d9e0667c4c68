#include "core/history/record.h"

#include "core/units/text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <map>

namespace pipwright {

namespace {

template <typename Enum>
std::span<const std::string_view> keysOf() {
    static const auto keys = [] {
        std::array<std::string_view, Words<Enum>::words.size()> result{};
        for (std::size_t i = 0; i < result.size(); ++i) {
            result[i] = Words<Enum>::words[i].key;
        }
        return result;
    }();
    return keys;
}

template <typename Thing>
struct Referred;
template <typename Thing>
struct Referred<Id<Thing>> {
    static constexpr Kind kind = KindOf<Thing>::value;
};
template <typename Thing>
struct Referred<std::optional<Id<Thing>>> : Referred<Id<Thing>> {};

template <typename Member>
FieldInfo describe(std::string_view name, std::string_view meaning) {
    FieldInfo info;
    info.name = name;
    info.meaning = meaning;
    info.type = detail::Codec<Member>::type;
    info.required = detail::Codec<Member>::required;
    if constexpr (detail::Codec<Member>::type == FieldType::reference) {
        info.refersTo = Referred<Member>::kind;
    }
    if constexpr (std::is_enum_v<Member>) {
        info.words = keysOf<Member>();
    }
    return info;
}

template <typename Thing>
std::vector<FieldInfo> describeAll() {
    std::vector<FieldInfo> fields;
    const Thing thing;
    auto collect = [&fields](std::string_view name, const auto& member, std::string_view meaning) {
        using Member = std::remove_cvref_t<decltype(member)>;
        fields.push_back(describe<Member>(name, meaning));
    };
    Thing::fields(thing, collect);
    return fields;
}

Problem fieldProblem(const FieldInfo& field, std::string what, std::string remedy) {
    return {ProblemCode::badInput, std::move(what), std::move(remedy), std::string(field.name)};
}

std::string listOf(std::span<const std::string_view> words) {
    std::string text;
    for (const auto word : words) {
        text += text.empty() ? "" : ", ";
        text += word;
    }
    return text;
}

Outcome checkText(const FieldInfo& field, const std::string& text) {
    if (field.type == FieldType::date && !Date::fromIso(text)) {
        return fieldProblem(field, "\"" + text + "\" is not a day of the calendar.",
                            "Write year-month-day, as 2026-08-22.");
    }
    if (const auto bad = firstBadUtf8(text)) {
        return fieldProblem(field,
                            "the text is not valid UTF-8 (byte " + std::to_string(*bad + 1) + ").",
                            "Save the file as UTF-8, or type the text again.");
    }
    if (field.type == FieldType::word) {
        for (const auto word : field.words) {
            if (word == text) {
                return {};
            }
        }
        return fieldProblem(field, "\"" + text + "\" is not one of the words known here.",
                            "Use one of: " + listOf(field.words) + ".");
    }
    return {};
}

template <typename Number>
Result<Value> parsed(const FieldInfo& field, std::string_view text, const char* what) {
    Number number{};
    const auto end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, number);
    if (error != std::errc{} || stop != end) {
        return fieldProblem(field, "\"" + std::string(text) + "\" is not " + what + ".",
                            "Write digits, with a point before decimals.");
    }
    if constexpr (std::is_floating_point_v<Number>) {
        number += 0.0; // no negative zero
    }
    return Value{number};
}

} // namespace

const std::vector<FieldInfo>& fieldsOf(Kind kind) {
    static const std::vector<std::vector<FieldInfo>> all = {
#define PIPWRIGHT_FIELDS(Type, name, table, meaning) describeAll<Type>(),
        PIPWRIGHT_KINDS(PIPWRIGHT_FIELDS)
#undef PIPWRIGHT_FIELDS
    };
    return all[static_cast<std::size_t>(kind)];
}

std::optional<std::size_t> fieldIndex(Kind kind, std::string_view name) {
    const auto& fields = fieldsOf(kind);
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (fields[i].name == name) {
            return i;
        }
    }
    return std::nullopt;
}

std::optional<Kind> kindNamed(std::string_view name) {
    for (const Kind kind : kAllKinds) {
        if (nameOf(kind) == name) {
            return kind;
        }
    }
    return std::nullopt;
}

Outcome checkValue(const FieldInfo& field, const Value& value) {
    if (std::holds_alternative<std::monostate>(value)) {
        if (field.required) {
            return fieldProblem(field, "nothing stands here, but something must.",
                                "Give " + std::string(field.meaning) + ".");
        }
        return {};
    }
    bool fits = false;
    switch (field.type) {
    case FieldType::text:
    case FieldType::date:
    case FieldType::word:
        if (const auto* text = std::get_if<std::string>(&value)) {
            return checkText(field, *text);
        }
        break;
    case FieldType::integer:
        fits = std::holds_alternative<std::int64_t>(value);
        break;
    case FieldType::flag:
        if (const auto* flag = std::get_if<std::int64_t>(&value)) {
            fits = *flag == 0 || *flag == 1;
        }
        break;
    case FieldType::number:
        if (const auto* number = std::get_if<double>(&value)) {
            fits = std::isfinite(*number);
        }
        break;
    case FieldType::reference:
        if (const auto* uuid = std::get_if<Uuid>(&value)) {
            fits = !uuid->isNil();
        }
        break;
    }
    if (!fits) {
        return fieldProblem(field, "\"" + textOf(value) + "\" is of the wrong sort.",
                            "Give " + std::string(field.meaning) + ".");
    }
    return {};
}

Outcome checkRecord(const Record& record) {
    const auto& fields = fieldsOf(record.kind);
    if (record.id.isNil() || record.values.size() != fields.size()) {
        return Problem{ProblemCode::internal,
                       "a record came without its id or with fields missing.",
                       "Please report this.", std::string(nameOf(record.kind))};
    }
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (auto outcome = checkValue(fields[i], record.values[i]); !outcome) {
            Problem problem = outcome.problem();
            problem.where = std::string(nameOf(record.kind)) + ", field " + problem.where;
            return problem;
        }
    }
    return checkTogether(record);
}

Outcome checkTogether(const Record& record) {
    if (record.kind != Kind::observation) {
        return {};
    }
    constexpr std::array kSubjects = {"plant", "genotype", "lot", "cross", "position", "site"};
    static const auto places = [&] {
        std::array<std::size_t, kSubjects.size()> found{};
        for (std::size_t i = 0; i < kSubjects.size(); ++i) {
            found[i] = fieldIndex(Kind::observation, kSubjects[i]).value_or(0);
        }
        return found;
    }();
    const auto subjects = std::count_if(places.begin(), places.end(), [&record](std::size_t at) {
        return std::holds_alternative<Uuid>(record.values[at]);
    });
    if (subjects != 1) {
        return Problem{ProblemCode::badInput,
                       subjects == 0 ? "the observation is of nothing."
                                     : "the observation is of more than one thing.",
                       "Give exactly one of plant, genotype, lot, cross, position and site.",
                       std::string(nameOf(record.kind)) + " " + record.id.text()};
    }
    return {};
}

std::string textOf(const Value& value) {
    struct Writer {
        std::string operator()(std::monostate) const { return {}; }
        std::string operator()(std::int64_t number) const { return std::to_string(number); }
        std::string operator()(double number) const {
            std::array<char, 32> buffer{};
            const auto end =
                std::to_chars(buffer.data(), buffer.data() + buffer.size(), number).ptr;
            return {buffer.data(), end};
        }
        std::string operator()(const std::string& text) const { return text; }
        std::string operator()(const Uuid& uuid) const { return uuid.text(); }
    };
    return std::visit(Writer{}, value);
}

Result<Value> valueFromText(const FieldInfo& field, std::string_view text) {
    const bool textual = field.type == FieldType::text || field.type == FieldType::word;
    if (text.empty() && !textual) {
        return Value{};
    }
    Result<Value> value = Value{};
    switch (field.type) {
    case FieldType::text:
    case FieldType::word:
    case FieldType::date:
        value = Value{std::string(text)};
        break;
    case FieldType::integer:
    case FieldType::flag:
        value = parsed<std::int64_t>(field, text, "a whole number");
        break;
    case FieldType::number:
        value = parsed<double>(field, text, "a number");
        break;
    case FieldType::reference:
        if (const auto uuid = Uuid::fromText(text)) {
            value = Value{*uuid};
        } else {
            value = fieldProblem(field, "\"" + std::string(text) + "\" is not the id of a record.",
                                 "Write an id as it stands in the file of the " +
                                     std::string(nameOf(field.refersTo)) + " records.");
        }
        break;
    }
    if (!value) {
        return value;
    }
    if (auto outcome = checkValue(field, *value); !outcome) {
        return outcome.problem();
    }
    return value;
}

} // namespace pipwright
