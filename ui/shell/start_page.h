#pragma once

#include <QStringList>
#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace pipwright::ui {

/// The first thing a new user sees: the sample orchard, a new book, a book from a file, and the
/// books of last time.
class StartPage : public QWidget {
    Q_OBJECT

  public:
    explicit StartPage(QWidget* parent = nullptr);

    void setRecent(const QStringList& paths);
    [[nodiscard]] QPushButton* sampleButton() const { return m_sample; }
    [[nodiscard]] QPushButton* newButton() const { return m_new; }
    [[nodiscard]] QPushButton* openButton() const { return m_open; }

  Q_SIGNALS:
    void sampleWanted();
    void newWanted();
    void openWanted();
    void recentWanted(const QString& path);

  private:
    QPushButton* choice(const QString& word, const QString& explanation, QVBoxLayout* column);

    QPushButton* m_sample;
    QPushButton* m_new;
    QPushButton* m_open;
    QLabel* m_recentHeading;
    QVBoxLayout* m_recent;
};

} // namespace pipwright::ui
