#pragma once

#include "core/history/change.h"
#include "ui/tree/entry_form.h"
#include "ui/tree/tree_facts.h"
#include "ui/tree/tree_head.h"
#include "ui/widgets/number_text.h"

#include <QStringList>
#include <QWidget>

#include <optional>
#include <vector>

class QScrollArea;
class QStackedWidget;

namespace pipwright::ui {

class EmptyPlace;
class EntryStrip;
class KinView;
class LifeLine;
class MeritDesk;
class NoticeBar;
class OpenBook;
class PhotoStrip;
class RecordList;
class SheetSection;
class TreeJournal;
class VerdictCard;
struct KeptLot;

/// The selected tree, whatever place is shown beside it: who it is, where it comes from, its life,
/// tastings, photos and journal, and the strip in which entries are typed.
class TreeSheet : public QWidget {
    Q_OBJECT

  public:
    explicit TreeSheet(OpenBook& book, QWidget* parent = nullptr);

    /// What the keys of the sheet do, one line each.
    [[nodiscard]] static QStringList keysHelp();

    void setUnits(UnitChoice units);
    /// Where verdicts come from; it must outlive the sheet.
    void setMeritDesk(const MeritDesk* desk);
    [[nodiscard]] const std::optional<TreeFacts>& facts() const { return m_facts; }
    [[nodiscard]] EntryStrip* strip() const { return m_strip; }
    /// What was kept last; hidden while there is nothing to say.
    [[nodiscard]] NoticeBar* said() const { return m_said; }
    [[nodiscard]] TreeHead* head() const { return m_head; }
    [[nodiscard]] VerdictCard* verdict() const { return m_verdict; }
    [[nodiscard]] KinView* kin() const { return m_kin; }
    [[nodiscard]] LifeLine* life() const { return m_life; }
    [[nodiscard]] RecordList* tastings() const { return m_tastings; }
    [[nodiscard]] RecordList* seen() const { return m_seen; }
    [[nodiscard]] PhotoStrip* photos() const { return m_photos; }
    [[nodiscard]] TreeJournal* journal() const { return m_journal; }
    [[nodiscard]] SheetSection* journalSection() const { return m_journalSection; }
    /// How often the facts were read: once a tree, and once for each edit that touches it.
    [[nodiscard]] int readings() const { return m_readings; }
    [[nodiscard]] QSize sizeHint() const override { return {420, 700}; }

  public Q_SLOTS:
    /// Opens the strip for the selected tree, or for all selected trees where that makes sense.
    void begin(pipwright::ui::EntryKind kind);
    /// Opens the strip to put the condition of a lot right.
    void beginCondition(const pipwright::ui::KeptLot& kept);

  Q_SIGNALS:
    /// Where the verdict comes from is wanted.
    void meritWanted();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void build();
    void read();
    void present();
    void heed(const std::vector<Change>& changes);
    void act(IdentityAction action);
    void assertIdentity(IdentityBasis basis, Confidence confidence, bool known);

    OpenBook& m_book;
    TreeReader m_reader;
    std::optional<TreeFacts> m_facts;
    UnitChoice m_units = UnitChoice::metric;
    int m_readings = 0;
    EntryStrip* m_strip;
    NoticeBar* m_said; ///< what was kept, after the strip has closed
    QStackedWidget* m_pages;
    EmptyPlace* m_empty;
    QScrollArea* m_scroll;
    TreeHead* m_head;
    VerdictCard* m_verdict;
    KinView* m_kin;
    LifeLine* m_life;
    RecordList* m_tastings;
    RecordList* m_seen;
    PhotoStrip* m_photos;
    TreeJournal* m_journal;
    SheetSection* m_tastingSection;
    SheetSection* m_seenSection;
    SheetSection* m_photoSection;
    SheetSection* m_journalSection;
    bool m_journalStale = true;
};

} // namespace pipwright::ui
