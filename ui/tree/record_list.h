#pragma once

#include "core/history/change.h"
#include "ui/tree/condition_form.h"
#include "ui/widgets/score_mark.h"

#include <QString>
#include <QStringList>
#include <QWidget>

#include <functional>
#include <optional>
#include <string>
#include <vector>

class QVBoxLayout;
class QPushButton;

namespace pipwright::ui {

/// A record that can be made to count no more.
struct Voiding {
    QString what; ///< "the note of 22 Aug 2026"
    std::function<ChangeSet(const std::string& reason)> make;
};

/// What a record says, ready to be read.
struct RecordWords {
    QString heading;
    QStringList quiet{}; ///< in weaker ink: how it came about
    QStringList lines{};
    std::optional<IntervalDot> dot{};
    std::vector<Voiding> voidings{};
    std::optional<KeptLot> lot{}; ///< of a tasting: its condition can be put right
};

/// Records one below the other, newest first, the first few at once and the rest when asked for.
/// Each can be reached with Tab; its button, its context menu or Delete voids it;
/// F2 puts the condition of a tasted lot right.
class RecordList : public QWidget {
    Q_OBJECT

  public:
    explicit RecordList(const QString& nothingYet, QWidget* parent = nullptr);

    void setRecords(std::vector<RecordWords> records);
    [[nodiscard]] std::size_t count() const { return m_records.size(); }
    [[nodiscard]] const std::vector<RecordWords>& records() const { return m_records; }
    [[nodiscard]] QWidget* row(std::size_t index) const;

  Q_SIGNALS:
    void voidWanted(const pipwright::ui::Voiding& voiding);
    void conditionWanted(const pipwright::ui::KeptLot& kept);

  private:
    void fill(std::size_t most);

    QString m_nothingYet;
    std::vector<RecordWords> m_records;
    std::vector<QWidget*> m_rows;
    QVBoxLayout* m_layout;
};

} // namespace pipwright::ui
