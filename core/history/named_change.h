#pragma once

#include "core/history/edits.h"

#include <string>
#include <utility>

namespace pipwright {

/// A change set of nothing yet, with the sentence the user will read and who did it.
inline ChangeSet named(std::string sentence, const EditContext& context) {
    ChangeSet set;
    set.sentence = std::move(sentence);
    set.person = context.person;
    return set;
}

} // namespace pipwright
