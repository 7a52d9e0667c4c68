#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/history/edits.h"

#include <QString>
#include <QWidget>

#include <vector>

namespace pipwright::ui {

class OpenBook;

/// What can be put down at a tree, each with its key.
enum class EntryKind {
    note,
    bite,
    walkMark,
    observation,
    decision,
    graftWish,
    photo,
    state,       ///< lost, dead, removed
    another,     ///< it is another genotype
    swapTags,    ///< its tag hangs on another tree
    plantBeside, ///< a second plant stands at the place
    moveRecords, ///< records were put down for the wrong tree
    condition,   ///< the condition of a lot is put right
    voiding,     ///< a record counts no more
};

/// The trees an entry is for.
struct EntryTarget {
    std::vector<EditedTree> trees;
    std::vector<Index> plants; ///< of the trees; empty for a genotype that stands nowhere
    QString called;            ///< "AT17-014" or "12 trees"
};

/// One kind of entry as a few fields in the strip. It keeps what is typed until it was saved.
class EntryForm : public QWidget {
    Q_OBJECT

  public:
    explicit EntryForm(OpenBook& book, QWidget* parent = nullptr) : QWidget(parent), m_book(book) {}

    [[nodiscard]] virtual QString title(const QString& called) const = 0;
    /// Called whenever the strip opens with it.
    virtual void begin(const EntryTarget& target) { static_cast<void>(target); }
    [[nodiscard]] virtual QWidget* firstField() const = 0;
    /// The day the entry is for, whenever it is another; nothing while it cannot be read.
    virtual void heedDay(const std::optional<Date>& day) { static_cast<void>(day); }
    /// Enter was pressed in one of the fields; true when the form only went on to its next field.
    virtual bool goOn(const QWidget* field) {
        static_cast<void>(field);
        return false;
    }
    /// The edits, or what is missing.
    virtual Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) = 0;
    /// What is said when it was saved; empty when there is nothing to say. Asked before saved().
    [[nodiscard]] virtual QString confirmation() const { return {}; }
    /// It was saved: forget what was typed, keep what is likely the same next time.
    virtual void saved() = 0;
    /// Whether it is for one tree at a time.
    [[nodiscard]] virtual bool isForOne() const { return false; }
    /// Whether it needs a day, and one day only.
    [[nodiscard]] virtual bool needsOneDay() const { return true; }
    [[nodiscard]] virtual bool hasDay() const { return true; }

  protected:
    OpenBook& m_book;
};

/// A Problem of what was typed.
Problem missing(const QString& what, const QString& remedy);
/// The plant of a code, name, tag or row/place; the Problem says what to type instead.
Result<Index> plantTyped(const OrchardView& view, const QString& typed);

} // namespace pipwright::ui
