#pragma once

#include "core/history/journal.h"

#include <QDialog>

#include <vector>

class QPushButton;
class QTreeWidget;

namespace pipwright::ui {

class OpenBook;

/// The whole journal, newest first: what was done, when, by whom, and with each entry every field
/// before and after. Older entries are read as one goes down.
class BookHistory : public QDialog {
    Q_OBJECT

  public:
    BookHistory(OpenBook& book, QWidget* parent);

    [[nodiscard]] QTreeWidget* list() const { return m_list; }
    [[nodiscard]] QPushButton* olderButton() const { return m_older; }

  private:
    void addOlder();
    void refresh();
    void expand(int row);

    OpenBook& m_book;
    QTreeWidget* m_list;
    QPushButton* m_older;
    std::int64_t m_oldest = 0; ///< position of the oldest entry listed
};

/// "Ash Tarn: stage juvenile -> watched": one field of a change in words.
QString fieldWords(const Change& change, const FieldChange& field);

} // namespace pipwright::ui
