#pragma once

#include "core/exchange/print/page.h"

#include <QWidget>

#include <functional>
#include <vector>

class QLabel;
class QPushButton;

namespace pipwright::ui {

/// "Print..." and "Save PDF..." for some pages, with the advice to print at actual size and a
/// line that says what came of it.
class PrintButtons : public QWidget {
    Q_OBJECT

  public:
    /// Answers with the path to write to, or an empty one to leave it.
    using PathChooser = std::function<QString(QWidget* parent, const QString& suggestion)>;

    explicit PrintButtons(QWidget* parent = nullptr);

    /// The title goes into the file and, with ".pdf", is the name suggested.
    void setPages(std::vector<Page> pages, const QString& title);
    /// Instead of the desktop's dialog.
    void setPathChooser(PathChooser chooser);

    [[nodiscard]] QPushButton* printButton() const { return m_print; }
    [[nodiscard]] QPushButton* saveButton() const { return m_save; }
    /// What came of the last print or save; empty before.
    [[nodiscard]] QString lastWord() const;

  Q_SIGNALS:
    void saved(const QString& path);

  private:
    void savePdf();
    void print();
    void say(const QString& word, bool isFault);

    std::vector<Page> m_pages;
    QString m_title;
    PathChooser m_choosePath;
    QPushButton* m_print;
    QPushButton* m_save;
    QLabel* m_word;
};

} // namespace pipwright::ui
