#include "core/exchange/table_import.h"

#include "core/exchange/import_draft.h"
#include "core/exchange/pedigree_rings.h"

#include <set>

namespace pipwright {

namespace {

using LinePlanner = bool (*)(LineCells&, ImportDraft&, std::string&);

LinePlanner plannerFor(RecipeTarget target) {
    switch (target) {
    case RecipeTarget::trees:
        return planTree;
    case RecipeTarget::parents:
        return planParents;
    case RecipeTarget::scores:
        return planScore;
    case RecipeTarget::walkMarks:
        return planWalkMark;
    case RecipeTarget::unknown:
        break;
    }
    return nullptr;
}

std::string nounFor(RecipeTarget target, std::int64_t number) {
    const bool one = number == 1;
    switch (target) {
    case RecipeTarget::trees:
        return one ? "tree" : "trees";
    case RecipeTarget::parents:
        return one ? "line of parents" : "lines of parents";
    case RecipeTarget::scores:
        return one ? "score" : "scores";
    case RecipeTarget::walkMarks:
        return one ? "walk mark" : "walk marks";
    case RecipeTarget::unknown:
        break;
    }
    return "lines";
}

class Planning {
  public:
    Planning(const PlainTable& table, const TableRecipe& recipe, const ColumnPlan& columns)
        : m_table(table), m_recipe(recipe), m_columns(columns) {}

    /// Plans all lines but those found at fault by an earlier round.
    void run(ImportDraft& draft) {
        m_plan = {};
        m_plan.faults = m_table.faults;
        m_plan.faulty = static_cast<std::int64_t>(m_table.faults.size());
        m_lineOfCode.clear();
        for (const auto& line : m_table.lines) {
            PlannedLine planned{line.number, LineFate::faulty, ""};
            if (!m_without.contains(line.number)) {
                LineCells cells(m_table, line, m_recipe, m_columns, m_plan.faults);
                const bool changed = plannerFor(m_recipe.target)(cells, draft, planned.what);
                planned.fate = !cells.good() ? LineFate::faulty
                               : changed     ? LineFate::created
                                             : LineFate::matched;
                m_lineOfCode[cells.text(TableField::code)] = line.number;
            }
            count(planned.fate);
            m_plan.lines.push_back(std::move(planned));
        }
        m_plan.faults.insert(m_plan.faults.end(), m_ringFaults.begin(), m_ringFaults.end());
    }

    /// Finds who would be their own ancestor. False when a line was left out because of it, so that
    /// another round is needed.
    bool checkRings(const ImportDraft& draft) {
        if (m_recipe.target != RecipeTarget::trees && m_recipe.target != RecipeTarget::parents) {
            return true;
        }
        PedigreeRings rings;
        const auto note = [&rings](const auto& one) { rings.note(toRecord(one), 0); };
        draft.crosses.forEach(note);
        draft.genotypes.forEach(note);
        draft.parentages.forEach(note);
        bool clean = true;
        for (const auto& ring : rings.find()) {
            std::int64_t last = 0;
            for (const auto& code : ring.codes) {
                const auto line = m_lineOfCode.find(code);
                last = line == m_lineOfCode.end() ? last : std::max(last, line->second);
            }
            if (last > 0 && m_without.insert(last).second) {
                clean = false;
                m_ringFaults.push_back(
                    {ProblemCode::badInput,
                     "the pedigree would go in a ring: " + ring.text() +
                         " (each a parent of the next).",
                     "Correct the parents on this line.",
                     placeInTable(m_table.name, last, m_columns.heading(TableField::code))});
            }
        }
        return clean;
    }

    ImportPlan finish(const ImportDraft& draft, const PlanOptions& options) {
        if ((m_plan.faults.empty() || options.skipFaulty) && m_plan.created > 0) {
            m_plan.changes.person = options.person;
            m_plan.changes.sentence = "Import " + std::to_string(m_plan.created) + " " +
                                      nounFor(m_recipe.target, m_plan.created) + " from " +
                                      m_table.name;
            draft.addTo(m_plan.changes);
        }
        return std::move(m_plan);
    }

  private:
    void count(LineFate fate) {
        m_plan.created += fate == LineFate::created ? 1 : 0;
        m_plan.matched += fate == LineFate::matched ? 1 : 0;
        m_plan.faulty += fate == LineFate::faulty ? 1 : 0;
    }

    const PlainTable& m_table;
    const TableRecipe& m_recipe;
    const ColumnPlan& m_columns;
    ImportPlan m_plan;
    std::set<std::int64_t> m_without;
    std::vector<Problem> m_ringFaults;
    std::map<std::string, std::int64_t> m_lineOfCode;
};

} // namespace

Result<ImportPlan> planImport(const PlainTable& table, const TableRecipe& recipe,
                              const Store& store, Date today, UuidMaker& ids,
                              const PlanOptions& options) {
    if (plannerFor(recipe.target) == nullptr) {
        return Problem{ProblemCode::badInput, "the recipe does not say what each line becomes.",
                       "Choose trees, parents, scores or walk marks.", recipe.name};
    }
    const auto columns = ColumnPlan::of(table, recipe);
    if (!columns) {
        return columns.problem();
    }
    Planning planning(table, recipe, *columns);
    for (;;) {
        auto draft = ImportDraft::over(store, ids, today);
        if (!draft) {
            return draft.problem();
        }
        planning.run(**draft);
        if (planning.checkRings(**draft)) {
            return planning.finish(**draft, options);
        }
    }
}

} // namespace pipwright
