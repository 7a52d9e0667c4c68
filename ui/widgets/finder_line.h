#pragma once

#include "ui/widgets/icons.h"

#include <QString>
#include <QWidget>

#include <functional>
#include <optional>
#include <vector>

class QLineEdit;
class QListView;

namespace pipwright::ui {

/// One line of what the finder found.
struct FoundThing {
    QString id;     ///< handed back when it is chosen
    QString title;  ///< "AT17-014"
    QString detail; ///< "row 3, 14: Ash Tarn x Russet Moor"
    QString kind;   ///< "tree", "command": read at the right end
    std::optional<IconName> icon;
};

class FoundThingsModel;

/// One line that finds. Type, Down, Enter; the results hang below the line and never take the
/// focus away from it. Escape closes the results first, then leaves.
class FinderLine : public QWidget {
    Q_OBJECT

  public:
    /// Called at every change of the text, on the GUI thread: answer within a few milliseconds.
    using Provider = std::function<std::vector<FoundThing>(const QString& text)>;

    explicit FinderLine(QWidget* parent = nullptr);
    ~FinderLine() override;

    void setProvider(Provider provider);
    void setPlaceholder(const QString& text);
    /// Takes the focus; with a text it looks for that at once, else the old text is selected.
    void begin(const QString& text = {});
    [[nodiscard]] QString text() const;
    [[nodiscard]] bool isShowingResults() const;
    [[nodiscard]] int resultCount() const;
    /// The line itself and the list below it.
    [[nodiscard]] QLineEdit* line() const { return m_line; }
    [[nodiscard]] QListView* results() const { return m_list; }

  Q_SIGNALS:
    void chosen(const QString& id);
    /// Escape on a line without results: the focus belongs back where it was.
    void dismissed();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void look();
    void placeResults();
    void hideResults();
    bool takeKey(int key);
    void chooseRow(int row);
    void moveTo(int row);

    QLineEdit* m_line;
    QListView* m_list;
    FoundThingsModel* m_model;
    Provider m_provider;
};

} // namespace pipwright::ui
