#pragma once

#include <QWidget>

class QToolButton;

namespace pipwright::ui {

/// Under the columns of Compare: each mark as it is drawn there, with what it means, and below
/// them what ▲, ▼ and ± say. Folded away until it is asked for.
class CompareLegend : public QWidget {
    Q_OBJECT

  public:
    explicit CompareLegend(QWidget* parent = nullptr);

    [[nodiscard]] QToolButton* foldButton() const { return m_fold; }
    [[nodiscard]] bool isUnfolded() const;

  private:
    void unfold(bool open);

    QWidget* m_body;
    QToolButton* m_fold;
};

} // namespace pipwright::ui
