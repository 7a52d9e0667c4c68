#include "core/orchard/storage_path.h"

#include "core/units/digits.h"
#include "core/units/text.h"

#include <algorithm>

namespace pipwright {

namespace {

constexpr std::int64_t kMostDays = 999; ///< three years; more is a slip of the finger

Problem unreadablePath(std::string_view typed) {
    return {ProblemCode::badInput,
            "\"" + std::string(typed) + "\" is no storage path.",
            "Type c, f or l for counter, fridge or cellar and the days there, such as f5 or f14c3; "
            "0 for straight off the tree, ? for unknown.",
            {}};
}

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// One place of the chain and what it is counted in.
struct Stay {
    StoragePath place = StoragePath::unknown;
    std::optional<std::int64_t>* days = nullptr;
};

Stay stayAt(char letter, StoredPath& path) {
    switch (lower(letter)) {
    case 'c':
        return {StoragePath::counter, &path.daysOnCounter};
    case 'f':
        return {StoragePath::fridge, &path.daysInFridge};
    case 'l':
        return {StoragePath::cellar, &path.daysInCellar};
    default:
        return {};
    }
}

} // namespace

Result<StoredPath> readStoragePath(std::string_view typed) {
    StoredPath path;
    path.typed = std::string(trimmed(typed));
    const std::string& text = path.typed;
    if (text.empty() || text == "?") {
        return path;
    }
    if (text == "0") {
        path.path = StoragePath::none;
        return path;
    }
    for (std::size_t at = 0; at < text.size();) {
        if (text[at] == ' ' || text[at] == ',') {
            ++at;
            continue;
        }
        const Stay stay = stayAt(text[at], path);
        if (stay.days == nullptr) {
            return unreadablePath(text);
        }
        ++at;
        std::optional<std::int64_t> days;
        while (at < text.size() && isDigit(text[at])) {
            days = days.value_or(0) * 10 + (text[at] - '0');
            ++at;
            if (*days > kMostDays) {
                return Problem{ProblemCode::badInput,
                               "\"" + text + "\" keeps fruit for more than 999 days.",
                               "Type the days in the place behind its letter, such as f5.",
                               {}};
            }
        }
        if (days) {
            *stay.days = stay.days->value_or(0) + *days;
        }
        path.path = path.path == StoragePath::unknown || path.path == stay.place
                        ? stay.place
                        : StoragePath::chained;
    }
    return path.path == StoragePath::unknown ? Result<StoredPath>(unreadablePath(text)) : path;
}

std::string storagePathText(const StoredPath& path) {
    if (!path.typed.empty()) {
        return path.typed;
    }
    if (path.path == StoragePath::none) {
        return "0";
    }
    const auto part = [&path](char letter, StoragePath place,
                              const std::optional<std::int64_t>& days) {
        if (days) {
            return letter + std::to_string(*days);
        }
        return path.path == place ? std::string(1, letter) : std::string{};
    };
    return part('l', StoragePath::cellar, path.daysInCellar) +
           part('f', StoragePath::fridge, path.daysInFridge) +
           part('c', StoragePath::counter, path.daysOnCounter);
}

} // namespace pipwright
