#pragma once

#include "core/history/journal.h"

#include <QWidget>

#include <optional>
#include <utility>
#include <vector>

class QComboBox;

namespace pipwright::ui {

class OpenBook;
class RecordList;
struct TreeFacts;

/// The history of a tree: what was done, by whom and when, and what stood there before. A field can
/// be chosen to see only its own history. Read from the book when it is first looked at.
class TreeJournal : public QWidget {
    Q_OBJECT

  public:
    explicit TreeJournal(const OpenBook& book, QWidget* parent = nullptr);

    /// Reads the history of everything the facts speak of that belongs to this tree.
    void show(const TreeFacts& facts);
    using QWidget::show;
    [[nodiscard]] RecordList* list() const { return m_list; }
    [[nodiscard]] QComboBox* fields() const { return m_fields; }

  Q_SIGNALS:
    void problemMet(const pipwright::Problem& problem);

  private:
    void fillFields();
    void fillList();

    const OpenBook& m_book;
    std::vector<JournalEntry> m_entries; ///< newest first, only changes of this tree
    QComboBox* m_fields;
    RecordList* m_list;
};

} // namespace pipwright::ui
