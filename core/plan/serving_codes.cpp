#include "core/plan/serving_codes.h"

#include "core/plan/plan_chance.h"
#include "core/plan/serving_order.h"

#include <algorithm>
#include <set>

namespace pipwright {

namespace {

int sameDigits(const std::string& one, const std::string& other) {
    int same = 0;
    for (std::size_t i = 0; i < one.size(); ++i) {
        same += one[i] == other[i] ? 1 : 0;
    }
    return same;
}

/// All codes that may be drawn at all.
std::vector<std::string> soundCodes() {
    std::vector<std::string> codes;
    for (int number = 100; number <= 999; ++number) {
        std::string code = std::to_string(number);
        const bool differ = code[0] != code[1] && code[1] != code[2] && code[0] != code[2];
        if (differ && upsideDown(code).empty()) {
            codes.push_back(std::move(code));
        }
    }
    return codes;
}

} // namespace

std::string upsideDown(const std::string& code) {
    std::string turned;
    for (auto digit = code.rbegin(); digit != code.rend(); ++digit) {
        switch (*digit) {
        case '0':
        case '1':
        case '8':
            turned += *digit;
            break;
        case '6':
            turned += '9';
            break;
        case '9':
            turned += '6';
            break;
        default:
            return {};
        }
    }
    return turned;
}

Result<std::vector<std::string>> servingCodes(int lots, std::span<const std::string> used,
                                              std::uint64_t draw) {
    if (lots < 1 || lots > kMostLotsServed) {
        return Problem{ProblemCode::badInput, "codes are drawn for 1 to 12 lots.",
                       "Serve at most 12 lots at a sitting.", "lots"};
    }
    const auto recent = used.first(std::min(used.size(), kMostCodesRemembered));
    const std::set<std::string> taken(recent.begin(), recent.end());
    std::vector<std::string> drawn = soundCodes();
    PlanChance(draw).shuffle(drawn);
    std::vector<std::string> codes;
    for (const std::string& code : drawn) {
        const bool near = std::any_of(codes.begin(), codes.end(), [&code](const auto& other) {
            return sameDigits(code, other) >= 2;
        });
        if (!near && !taken.contains(code)) {
            codes.push_back(code);
        }
        if (static_cast<int>(codes.size()) == lots) {
            break;
        }
    }
    std::sort(codes.begin(), codes.end());
    return codes; // 600 sound codes, 200 remembered, at most 21 near each drawn: 12 always remain
}

} // namespace pipwright
