#pragma once

#include <QDialog>
#include <QString>

class QListWidget;
class QTextBrowser;

namespace pipwright::ui {

/// The help that comes with the program, read without a network: pages written in Markdown, the
/// page of keys made from the table of actions. The pages are listed on the left; the first says
/// what to do first.
class HelpWindow : public QDialog {
    Q_OBJECT

  public:
    explicit HelpWindow(QWidget* parent);

    /// "start", "keys", "about", or another page's name.
    void showPage(const QString& name);
    [[nodiscard]] QListWidget* pages() const { return m_pages; }
    [[nodiscard]] QTextBrowser* browser() const { return m_browser; }

  private:
    [[nodiscard]] static QString pageText(const QString& name);
    [[nodiscard]] static QString keysPage();

    QListWidget* m_pages;
    QTextBrowser* m_browser;
};

} // namespace pipwright::ui
