#pragma once

#include "core/history/change.h"
#include "core/units/uuid.h"

namespace pipwright {

/// The first change set of every book: its title and the dictionary that ships with the program.
ChangeSet newBook(const std::string& title, const std::string& owner, UuidMaker& ids);

} // namespace pipwright
