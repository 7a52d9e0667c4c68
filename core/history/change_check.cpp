#include "core/history/change_check.h"

namespace pipwright {

namespace {

std::string placeOf(const Change& change) {
    return std::string(nameOf(change.kind)) + " " + change.record.text();
}

Problem conflict(const Change& change, std::string what) {
    return {ProblemCode::conflict, std::move(what), "Look at it again and repeat the edit.",
            placeOf(change)};
}

class Checker {
  public:
    Checker(const RecordReader& read, RecordsAfter& after) : m_read(read), m_after(after) {}

    Outcome take(const Change& change) {
        auto current = now(change.kind, change.record);
        if (!current) {
            return current.problem();
        }
        if (change.what == ChangeWhat::created) {
            return create(change, *current);
        }
        if (!current->has_value()) {
            return conflict(change, "this record is no longer in the book.");
        }
        return change.what == ChangeWhat::edited ? edit(change, **current)
                                                 : erase(change, **current);
    }

    Outcome checkReferences(const Change& change) {
        if (change.what == ChangeWhat::erased) {
            return {};
        }
        const auto& fields = fieldsOf(change.kind);
        for (const FieldChange& field : change.fields) {
            const auto* target = std::get_if<Uuid>(&field.after);
            if (target == nullptr) {
                continue;
            }
            const FieldInfo& info = fields[field.field];
            auto found = now(info.refersTo, *target);
            if (!found) {
                return found.problem();
            }
            if (!found->has_value()) {
                return Problem{ProblemCode::conflict,
                               "it refers to a " + std::string(nameOf(info.refersTo)) +
                                   " that is not in the book.",
                               "Add that record first, or leave the field empty.",
                               placeOf(change) + ", field " + std::string(info.name)};
            }
        }
        return {};
    }

  private:
    Result<std::optional<Record>> now(Kind kind, const Uuid& id) {
        const auto touched = m_after.find(id);
        if (touched != m_after.end() && (!touched->second || touched->second->kind == kind)) {
            return touched->second;
        }
        return m_read(kind, id);
    }

    Outcome create(const Change& change, const std::optional<Record>& current) {
        if (current) {
            return conflict(change, "a record of this id is already in the book.");
        }
        Record record = recordOf(change);
        if (auto outcome = checkRecord(record); !outcome) {
            return outcome;
        }
        m_after[change.record] = std::move(record);
        return {};
    }

    Outcome edit(const Change& change, const Record& current) {
        Record record = current;
        const auto& fields = fieldsOf(change.kind);
        for (const FieldChange& field : change.fields) {
            if (field.field >= record.values.size() || record.values[field.field] != field.before) {
                return conflict(change, "it has been changed meanwhile.");
            }
            if (auto outcome = checkValue(fields[field.field], field.after); !outcome) {
                Problem problem = outcome.problem();
                problem.where = placeOf(change) + ", field " + problem.where;
                return problem;
            }
            record.values[field.field] = field.after;
        }
        if (auto outcome = checkTogether(record); !outcome) {
            return outcome;
        }
        m_after[change.record] = std::move(record);
        return {};
    }

    Outcome erase(const Change& change, const Record& current) {
        if (recordOf(change) != current) {
            return conflict(change, "it has been changed meanwhile.");
        }
        m_after[change.record] = std::nullopt;
        return {};
    }

    const RecordReader& m_read;
    RecordsAfter& m_after;
};

} // namespace

Result<RecordsAfter> checkChanges(const std::vector<Change>& changes, const RecordReader& read) {
    RecordsAfter after;
    Checker checker(read, after);
    for (const Change& change : changes) {
        if (auto outcome = checker.take(change); !outcome) {
            return outcome.problem();
        }
    }
    for (const Change& change : changes) {
        if (auto outcome = checker.checkReferences(change); !outcome) {
            return outcome.problem();
        }
    }
    return after;
}

} // namespace pipwright
