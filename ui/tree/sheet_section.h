#pragma once

#include <QWidget>

class QToolButton;
class QVBoxLayout;

namespace pipwright::ui {

/// A part of the sheet under a heading that folds it away.
class SheetSection : public QWidget {
    Q_OBJECT

  public:
    SheetSection(const QString& title, QWidget* content, QWidget* parent = nullptr);

    /// Stands behind the title in weaker ink: how much there is.
    void setCount(const QString& words);
    void setFolded(bool folded);
    [[nodiscard]] bool isFolded() const;
    [[nodiscard]] QToolButton* header() const { return m_header; }
    [[nodiscard]] QWidget* content() const { return m_content; }

  Q_SIGNALS:
    void foldedChanged(bool folded);

  private:
    void dress();

    QString m_title;
    QString m_count;
    QToolButton* m_header;
    QWidget* m_content;
};

} // namespace pipwright::ui
