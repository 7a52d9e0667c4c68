#pragma once

#include "core/exchange/plain_table.h"
#include "core/exchange/table_recipe.h"
#include "core/history/store.h"

#include <cstdint>
#include <string>
#include <vector>

namespace pipwright {

/// What becomes of a line.
enum class LineFate {
    created, ///< something new comes into the book
    matched, ///< all of it is in the book already
    faulty,  ///< it cannot be taken; see the faults
};

struct PlannedLine {
    std::int64_t number = 0; ///< as in PlainTable
    LineFate fate = LineFate::created;
    std::string what; ///< "new tree AP17-001 at 3/14; new cross X1"
};

/// What an import would do, without having done it. Store::apply(changes, ...) does it as one step,
/// and Store::undo takes it back as one.
struct ImportPlan {
    ChangeSet changes; ///< empty while there are faults, unless they may be left out
    std::vector<PlannedLine> lines;
    std::vector<Problem> faults; ///< `where` is "trees.csv, line 12, column Planted"
    std::int64_t created = 0;    ///< lines, by fate
    std::int64_t matched = 0;
    std::int64_t faulty = 0;
};

struct PlanOptions {
    bool skipFaulty = false;        ///< take the good lines although others are faulty
    std::optional<PersonId> person; ///< who imports
};

/// Plans the import of somebody's table. Codes are matched exactly, then without case and blanks,
/// then among aliases; two matches are a fault. What is needed and not there (sites, rows,
/// positions, crosses, genotypes, tasters, the shipped dictionary) is made along. A Problem when
/// the recipe does not fit the table, or the store cannot be read.
Result<ImportPlan> planImport(const PlainTable& table, const TableRecipe& recipe,
                              const Store& store, Date today, UuidMaker& ids,
                              const PlanOptions& options = {});

} // namespace pipwright
