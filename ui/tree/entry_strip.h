#pragma once

#include "ui/tree/entry_form.h"

#include <QPointer>

#include <functional>
#include <map>

class QPushButton;
class QVBoxLayout;

namespace pipwright::ui {

class FlowText;
class FormScroll;
class InexactDateEdit;
class NoticeBar;
struct KeptLot;
struct Voiding;

/// Where an entry is typed: a strip on top of the sheet, no dialog. Enter saves, Esc puts it away
/// and keeps what was typed for the next time.
class EntryStrip : public QWidget {
    Q_OBJECT

  public:
    /// Asks for a picture's file; "" when the user thought better of it.
    using PhotoChooser = std::function<QString()>;

    explicit EntryStrip(OpenBook& book, QWidget* parent = nullptr);

    void setPhotoChooser(PhotoChooser chooser) { m_choosePhoto = std::move(chooser); }
    /// Opens with this kind for the selected trees, or says why it cannot.
    void begin(EntryKind kind);
    void beginVoiding(const Voiding& voiding);
    void beginCondition(const KeptLot& kept);
    /// The trees of an entry begun now.
    [[nodiscard]] EntryTarget target(bool forOne) const;
    void save();
    void leave();

    [[nodiscard]] EntryForm* form(EntryKind kind);
    [[nodiscard]] EntryForm* current() const { return m_form; }
    [[nodiscard]] InexactDateEdit* day() const { return m_day; }
    [[nodiscard]] NoticeBar* notice() const { return m_notice; }
    [[nodiscard]] QString titleText() const;

  Q_SIGNALS:
    /// `words` say what was kept, when there is something to say beyond that it was.
    void saved(const QString& words);
    void left();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    /// Tab stays in the open strip: outside it a letter is a command, not a word.
    bool focusNextPrevChild(bool next) override;

  private:
    EntryForm* make(EntryKind kind);
    void open(EntryForm* form);
    void passDay();
    [[nodiscard]] EditedTree treeOfLot(const Lot& lot) const;
    void watch(QWidget* part);
    void layOut();
    [[nodiscard]] Result<EditContext> contextOf(const EntryTarget& target);

    OpenBook& m_book;
    PhotoChooser m_choosePhoto;
    std::map<EntryKind, EntryForm*> m_forms;
    EntryForm* m_form = nullptr;
    EntryTarget m_target;
    QPointer<QWidget> m_before; ///< had the focus before the strip opened
    FlowText* m_title;
    QVBoxLayout* m_place;
    FormScroll* m_scroll;
    InexactDateEdit* m_day;
    QWidget* m_dayRow;
    NoticeBar* m_notice;
    QPushButton* m_save;
    QPushButton* m_leave;
};

} // namespace pipwright::ui
