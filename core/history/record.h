#pragma once

#include "core/orchard/orchard.h"
#include "core/units/result.h"

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace pipwright {

/// A field's value as the journal, the archive and the stores see it. Texts, words and dates are
/// strings (dates ISO 8601), references are the Uuid of what is referred to; monostate is "none".
using Value = std::variant<std::monostate, std::int64_t, double, std::string, Uuid>;

enum class FieldType { text, integer, number, flag, date, word, reference };

/// One field of a kind of record, as listed by its `fields`.
struct FieldInfo {
    std::string_view name;
    FieldType type = FieldType::text;
    bool required = false; ///< a value must stand here (texts and words may be empty or unknown)
    Kind refersTo = Kind::bookFacts;         ///< for references
    std::span<const std::string_view> words; ///< for words: the keys allowed
    std::string_view meaning;
};

/// A record of any kind: its name and its fields' values in the order of fieldsOf(kind).
struct Record {
    Kind kind = Kind::bookFacts;
    Uuid id;
    std::vector<Value> values;

    bool operator==(const Record&) const = default;
};

/// The fields of a kind, in order. Lives as long as the program.
const std::vector<FieldInfo>& fieldsOf(Kind kind);
/// The place of a field in that order; nothing when the kind has no such field.
std::optional<std::size_t> fieldIndex(Kind kind, std::string_view name);
/// The kind of that table name; nothing when there is none.
std::optional<Kind> kindNamed(std::string_view name);

/// Checks every value against its field: type, required, known word, existing day, finite number.
/// The Problem's `where` names the field.
Outcome checkRecord(const Record& record);
Outcome checkValue(const FieldInfo& field, const Value& value);
/// Checks what the values of a record must be together: an observation has exactly one subject.
/// Part of checkRecord.
Outcome checkTogether(const Record& record);

/// The value as text for a CSV cell or a screen: "" for none, 1/0 for flags, shortest exact
/// decimal for numbers, the Uuid's text for references.
std::string textOf(const Value& value);
/// Reads what textOf wrote, by the field's type. "" is none (or the empty text).
Result<Value> valueFromText(const FieldInfo& field, std::string_view text);

namespace detail {

template <typename Member>
struct Codec; // how a member type stands in a Value

template <>
struct Codec<std::string> {
    static constexpr FieldType type = FieldType::text;
    static constexpr bool required = true;
    static Value encode(const std::string& member) { return member; }
    static void decode(const Value& value, std::string& member) {
        const auto* text = std::get_if<std::string>(&value);
        member = text != nullptr ? *text : std::string{};
    }
};

template <>
struct Codec<bool> {
    static constexpr FieldType type = FieldType::flag;
    static constexpr bool required = true;
    static Value encode(bool member) { return std::int64_t{member ? 1 : 0}; }
    static void decode(const Value& value, bool& member) {
        const auto* number = std::get_if<std::int64_t>(&value);
        member = number != nullptr && *number != 0;
    }
};

template <>
struct Codec<std::int64_t> {
    static constexpr FieldType type = FieldType::integer;
    static constexpr bool required = true;
    static Value encode(std::int64_t member) { return member; }
    static void decode(const Value& value, std::int64_t& member) {
        const auto* number = std::get_if<std::int64_t>(&value);
        member = number != nullptr ? *number : 0;
    }
};

template <>
struct Codec<double> {
    static constexpr FieldType type = FieldType::number;
    static constexpr bool required = true;
    // Adding nothing turns a negative zero, which a book's file cannot tell from zero, into zero.
    static Value encode(double member) { return member + 0.0; }
    static void decode(const Value& value, double& member) {
        if (const auto* number = std::get_if<double>(&value)) {
            member = *number;
        } else if (const auto* whole = std::get_if<std::int64_t>(&value)) {
            member = static_cast<double>(*whole);
        }
    }
};

template <>
struct Codec<CropYear> {
    static constexpr FieldType type = FieldType::integer;
    static constexpr bool required = true;
    static Value encode(CropYear member) { return std::int64_t{member.year}; }
    static void decode(const Value& value, CropYear& member) {
        const auto* number = std::get_if<std::int64_t>(&value);
        member.year = number != nullptr ? static_cast<int>(*number) : 0;
    }
};

template <>
struct Codec<Date> {
    static constexpr FieldType type = FieldType::date;
    static constexpr bool required = true;
    static Value encode(Date member) { return member.iso(); }
    static void decode(const Value& value, Date& member) {
        if (const auto* text = std::get_if<std::string>(&value)) {
            member = Date::fromIso(*text).value_or(Date{});
        }
    }
};

template <typename Thing>
struct Codec<Id<Thing>> {
    static constexpr FieldType type = FieldType::reference;
    static constexpr bool required = true;
    static Value encode(const Id<Thing>& member) { return member.uuid; }
    static void decode(const Value& value, Id<Thing>& member) {
        const auto* uuid = std::get_if<Uuid>(&value);
        member = uuid != nullptr ? Id<Thing>(*uuid) : Id<Thing>();
    }
};

template <typename Inner>
struct Codec<std::optional<Inner>> {
    static constexpr FieldType type = Codec<Inner>::type;
    static constexpr bool required = false;
    static Value encode(const std::optional<Inner>& member) {
        return member ? Codec<Inner>::encode(*member) : Value{};
    }
    static void decode(const Value& value, std::optional<Inner>& member) {
        if (std::holds_alternative<std::monostate>(value)) {
            member.reset();
        } else {
            Codec<Inner>::decode(value, member.emplace());
        }
    }
};

template <typename Enum>
requires std::is_enum_v<Enum>
struct Codec<Enum> {
    static constexpr FieldType type = FieldType::word;
    static constexpr bool required = true;
    static Value encode(Enum member) { return std::string(keyOf(member)); }
    static void decode(const Value& value, Enum& member) {
        const auto* key = std::get_if<std::string>(&value);
        member = key != nullptr ? fromKey<Enum>(*key).value_or(Enum{}) : Enum{};
    }
};

template <typename Thing>
struct Codec<std::optional<Id<Thing>>> {
    static constexpr FieldType type = FieldType::reference;
    static constexpr bool required = false;
    static Value encode(const std::optional<Id<Thing>>& member) {
        return member ? Value{member->uuid} : Value{};
    }
    static void decode(const Value& value, std::optional<Id<Thing>>& member) {
        const auto* uuid = std::get_if<Uuid>(&value);
        member = uuid != nullptr ? std::optional<Id<Thing>>(Id<Thing>(*uuid)) : std::nullopt;
    }
};

} // namespace detail

/// The record of a value: Genotype, Plant, Score ...
template <typename Thing>
Record toRecord(const Thing& thing) {
    Record record{KindOf<Thing>::value, thing.id.uuid, {}};
    auto write = [&record](std::string_view, const auto& member, std::string_view) {
        using Member = std::remove_cvref_t<decltype(member)>;
        record.values.push_back(detail::Codec<Member>::encode(member));
    };
    Thing::fields(thing, write);
    return record;
}

/// The value of a record of its own kind. Fields not among `record.values` keep their defaults.
template <typename Thing>
Thing fromRecord(const Record& record) {
    Thing thing;
    thing.id = Id<Thing>(record.id);
    std::size_t at = 0;
    auto read = [&record, &at](std::string_view, auto& member, std::string_view) {
        using Member = std::remove_cvref_t<decltype(member)>;
        if (at < record.values.size()) {
            detail::Codec<Member>::decode(record.values[at], member);
        }
        ++at;
    };
    Thing::fields(thing, read);
    return thing;
}

} // namespace pipwright
