#pragma once

#include <QString>
#include <QWidget>

#include <optional>

class QProgressBar;
class QTimer;
class QToolButton;

namespace pipwright::ui {

class ElidedText;

/// The bottom line: what is selected, what is filtered, what work goes on behind, what would be
/// undone, and the day taken as today.
class StatusLine : public QWidget {
    Q_OBJECT

  public:
    explicit StatusLine(QWidget* parent = nullptr);

    void setSelection(const QString& text);
    /// Says something in its place for some seconds, or until the selection changes.
    void hint(const QString& text);
    /// An empty text: nothing is filtered.
    void setFilter(const QString& text);
    /// The sentence of the step that would be undone; empty when there is none.
    void setUndo(const QString& sentence);
    /// `chosen`: the user set the day, it is not the calendar's; then it is marked in words.
    void setToday(const QString& day, bool chosen);
    /// Shows work going on; `share` from 0 to 1, or nothing while its length is not known.
    void setWork(const QString& text, std::optional<double> share, bool canCancel);
    void endWork();
    [[nodiscard]] bool isWorking() const;

    [[nodiscard]] QToolButton* filterButton() const { return m_clearFilter; }
    [[nodiscard]] QToolButton* undoButton() const { return m_undo; }
    [[nodiscard]] QToolButton* todayButton() const { return m_today; }
    [[nodiscard]] QToolButton* cancelButton() const { return m_cancel; }

  Q_SIGNALS:
    void filterCleared();
    void undoWanted();
    void todayWanted();
    void workCancelled();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void fitUndo();

    QString m_undoWords;
    QString m_selectionWords;
    QTimer* m_hint;
    ElidedText* m_selection;
    ElidedText* m_filter;
    QToolButton* m_clearFilter;
    ElidedText* m_work;
    QProgressBar* m_progress;
    QToolButton* m_cancel;
    QToolButton* m_undo;
    QToolButton* m_today;
};

} // namespace pipwright::ui
