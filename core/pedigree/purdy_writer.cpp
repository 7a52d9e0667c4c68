#include "core/pedigree/purdy.h"
#include "core/pedigree/purdy_words.h"
#include "core/units/text.h"

#include <algorithm>

namespace pipwright {

namespace {

/// A written descent and the number of its latest cross; 0 when it is no cross.
struct Written {
    std::string text;
    int latestCross = 0;
};

bool mustBeQuoted(const std::string& name) {
    const bool digitsOnly =
        std::all_of(name.begin(), name.end(), [](char c) { return c >= '0' && c <= '9'; });
    return digitsOnly || name.find_first_of("/*\"") != std::string::npos || trimmed(name) != name ||
           meansUnknown(name) || meansOpenPollination(name) || meansSelfing(name);
}

std::string writtenName(const std::string& name) {
    if (!mustBeQuoted(name)) {
        return name;
    }
    std::string quoted = "\"";
    for (const char c : name) {
        quoted += c;
        if (c == '"') {
            quoted += c;
        }
    }
    return quoted + "\"";
}

std::string crossSign(int number) {
    return number == 1 ? "/" : number == 2 ? "//" : "/" + std::to_string(number) + "/";
}

Written joined(const Written& seed, const Written& pollen) {
    const int number = std::max(seed.latestCross, pollen.latestCross) + 1;
    return {seed.text + crossSign(number) + pollen.text, number};
}

Written write(const Descent& descent);

/// How often the parent on one side comes again and again: 3 for A x (A x (A x B)), whose rest
/// is B. Only names recur; anything else has one dose.
struct Doses {
    int count = 1;
    const Descent* rest = nullptr;
};

Doses dosesOf(const Descent& descent, std::size_t side) {
    const Descent& recurrent = descent.parents[side];
    Doses doses{1, &descent.parents[1 - side]};
    while (recurrent.form == Descent::Form::named && doses.count < kMostDoses &&
           doses.rest->form == Descent::Form::crossed && doses.rest->parents[side] == recurrent) {
        ++doses.count;
        doses.rest = &doses.rest->parents[1 - side];
    }
    return doses;
}

/// "A*3" for a seed parent, "3*A" for a pollen parent.
std::string withDoses(const std::string& name, int doses, std::size_t side) {
    std::string text = side == 0 ? writtenName(name) : std::to_string(doses);
    text += '*';
    text += side == 0 ? std::to_string(doses) : writtenName(name);
    return text;
}

Written writeCross(const Descent& descent) {
    for (const std::size_t side : {0U, 1U}) {
        const Doses doses = dosesOf(descent, side);
        if (doses.count > 1) {
            const Written name{withDoses(descent.parents[side].name, doses.count, side)};
            const Written rest = write(*doses.rest);
            return side == 0 ? joined(name, rest) : joined(rest, name);
        }
    }
    return joined(write(descent.parents[0]), write(descent.parents[1]));
}

Written write(const Descent& descent) {
    switch (descent.form) {
    case Descent::Form::named:
        return {writtenName(descent.name)};
    case Descent::Form::crossed:
        return writeCross(descent);
    case Descent::Form::selfed:
        return joined(write(descent.parents[0]), {"self"});
    case Descent::Form::openPollinated:
        return joined(write(descent.parents[0]), {"OP"});
    case Descent::Form::unknown:
        break;
    }
    return {"?"};
}

} // namespace

std::string writePurdy(const Descent& descent) {
    return write(descent).text;
}

} // namespace pipwright
