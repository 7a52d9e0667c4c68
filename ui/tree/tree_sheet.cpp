#include "ui/tree/tree_sheet.h"

#include "ui/book/open_book.h"
#include "ui/tree/condition_form.h"
#include "ui/tree/entry_strip.h"
#include "ui/tree/kin_view.h"
#include "ui/tree/life_line.h"
#include "ui/tree/photo_strip.h"
#include "ui/tree/record_list.h"
#include "ui/tree/sheet_section.h"
#include "ui/tree/tree_journal.h"
#include "ui/tree/tree_words.h"
#include "ui/tree/verdict_card.h"
#include "ui/widgets/empty_place.h"
#include "ui/widgets/notice_bar.h"

#include <QKeyEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <array>

namespace pipwright::ui {

namespace {

constexpr int kNarrowest = 360;
constexpr int kWidest = 480;
constexpr int kLeastOfSheet = 48;

/// Takes whatever width the sheet has, so that a name of two hundred letters widens nothing.
class SheetColumn : public QWidget {
  public:
    using QWidget::QWidget;
    [[nodiscard]] QSize minimumSizeHint() const override {
        return {0, QWidget::minimumSizeHint().height()};
    }
};

} // namespace

TreeSheet::TreeSheet(OpenBook& book, QWidget* parent)
    : QWidget(parent), m_book(book), m_reader(book), m_strip(new EntryStrip(book, this)),
      m_said(new NoticeBar(this)), m_pages(new QStackedWidget(this)),
      m_empty(new EmptyPlace(IconName::tree, tr("No tree is selected"),
                             tr("Choose one in the rows, or find it with Ctrl+K: its life will "
                                "stand here."))),
      m_scroll(new QScrollArea), m_head(new TreeHead), m_verdict(new VerdictCard),
      m_kin(new KinView), m_life(new LifeLine),
      m_tastings(new RecordList(tr("Not tasted yet. B puts down a bite."))),
      m_seen(new RecordList(tr("Nothing seen yet. N notes, W marks on a walk, O observes."))),
      m_photos(new PhotoStrip(book)), m_journal(new TreeJournal(book)) {
    setMinimumWidth(kNarrowest);
    setMaximumWidth(kWidest);
    setAccessibleName(tr("Tree sheet"));
    setFocusPolicy(Qt::StrongFocus);
    build();
    connect(m_head, &TreeHead::genotypeWanted, &m_book, &OpenBook::selectGenotype);
    connect(m_head, &TreeHead::plantWanted, this,
            [this](Index plant) { m_book.selectPlant(plant); });
    connect(m_head, &TreeHead::identityActionWanted, this, &TreeSheet::act);
    connect(m_verdict, &VerdictCard::meritWanted, this, &TreeSheet::meritWanted);
    connect(m_kin, &KinView::genotypeWanted, &m_book, &OpenBook::selectGenotype);
    for (RecordList* list : {m_tastings, m_seen}) {
        connect(list, &RecordList::voidWanted, m_strip, &EntryStrip::beginVoiding);
    }
    connect(m_tastings, &RecordList::conditionWanted, m_strip, &EntryStrip::beginCondition);
    connect(m_strip, &EntryStrip::saved, this, [this](const QString& words) {
        if (!words.isEmpty()) {
            m_said->say(NoticeBar::Kind::word, words, {});
        }
    });
    connect(m_journal, &TreeJournal::problemMet, &m_book, &OpenBook::problemMet);
    connect(&m_book, &OpenBook::currentTreeChanged, this, [this] {
        m_said->close();
        read();
        m_scroll->verticalScrollBar()->setValue(0);
    });
    connect(&m_book, &OpenBook::viewChanged, this, &TreeSheet::heed);
    read();
}

void TreeSheet::build() {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_strip);
    layout->addWidget(m_said);
    layout->addWidget(m_pages, 1);
    // However high the strip becomes, something of the tree stays in sight.
    m_pages->setMinimumHeight(kLeastOfSheet);
    auto* content = new SheetColumn;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(0, 0, 0, 12);
    column->setSpacing(6);
    column->setSizeConstraint(QLayout::SetNoConstraint);
    column->addWidget(m_head);
    column->addWidget(m_verdict);
    column->addWidget(new SheetSection(tr("Ancestry"), m_kin));
    column->addWidget(new SheetSection(tr("Life by crop year"), m_life));
    m_tastingSection = new SheetSection(tr("Tastings"), m_tastings);
    m_seenSection = new SheetSection(tr("Seen and decided"), m_seen);
    m_photoSection = new SheetSection(tr("Photos"), m_photos);
    m_journalSection = new SheetSection(tr("Journal"), m_journal);
    for (SheetSection* section :
         {m_tastingSection, m_seenSection, m_photoSection, m_journalSection}) {
        column->addWidget(section);
    }
    column->addStretch(1);
    // The journal is read when somebody wants it.
    m_journalSection->setFolded(true);
    connect(m_journalSection, &SheetSection::foldedChanged, this, [this](bool folded) {
        if (!folded && m_journalStale && m_facts) {
            m_journalStale = false;
            m_journal->show(*m_facts);
        }
    });
    m_scroll->setWidget(content);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_pages->addWidget(m_empty);
    m_pages->addWidget(m_scroll);
}

QStringList TreeSheet::keysHelp() {
    return {tr("N: note"),
            tr("B: bite: liking 1 to 9 (7, 7.5, 7h), then words"),
            tr("W: walk mark, then its letter"),
            tr("O: observation: trait, Enter, value"),
            tr("D: decision: letter of the stage, Enter, reason"),
            tr("G: graft wish"),
            tr("P: photo from a file"),
            tr("X: lost, dead or removed"),
            tr("Enter: save; Esc: back, and keep what was typed"),
            tr("Up and Down in the day: one day later or earlier"),
            tr("Arrows in the time line: from mark to mark"),
            tr("Delete on a record: void it, with a reason"),
            tr("F2 on a tasting: put its condition right")};
}

void TreeSheet::setUnits(UnitChoice units) {
    m_units = units;
    present();
}

void TreeSheet::setMeritDesk(const MeritDesk* desk) {
    m_verdict->setDesk(desk);
}

void TreeSheet::begin(EntryKind kind) {
    m_said->close();
    m_strip->begin(kind);
}

void TreeSheet::beginCondition(const KeptLot& kept) {
    m_said->close();
    m_strip->beginCondition(kept);
}

void TreeSheet::keyPressEvent(QKeyEvent* event) {
    struct Key {
        int key;
        EntryKind kind;
    };
    static constexpr std::array keys = {
        Key{Qt::Key_N, EntryKind::note},     Key{Qt::Key_B, EntryKind::bite},
        Key{Qt::Key_W, EntryKind::walkMark}, Key{Qt::Key_O, EntryKind::observation},
        Key{Qt::Key_D, EntryKind::decision}, Key{Qt::Key_G, EntryKind::graftWish},
        Key{Qt::Key_P, EntryKind::photo},    Key{Qt::Key_X, EntryKind::state},
    };
    for (const Key& one : keys) {
        if (event->modifiers() == Qt::NoModifier && event->key() == one.key) {
            begin(one.kind);
            return;
        }
    }
    QWidget::keyPressEvent(event);
}

void TreeSheet::read() {
    auto facts = m_reader.read();
    ++m_readings;
    if (!facts) {
        Q_EMIT m_book.problemMet(facts.problem());
        m_facts.reset();
    } else {
        m_facts = std::move(*facts);
    }
    present();
}

void TreeSheet::present() {
    m_pages->setCurrentWidget(m_facts ? static_cast<QWidget*>(m_scroll) : m_empty);
    if (!m_facts) {
        return;
    }
    m_head->show(*m_facts, m_units);
    m_verdict->show(m_facts->genotype);
    m_kin->show(*m_facts);
    m_life->show(*m_facts);
    m_tastings->setRecords(tastingWords(*m_facts));
    m_seen->setRecords(seenWords(*m_facts));
    m_photos->show(*m_facts);
    const auto count = [](std::size_t number) {
        return number == 0 ? tr("none yet") : QString::number(number);
    };
    m_tastingSection->setCount(count(m_tastings->count()));
    m_seenSection->setCount(count(m_seen->count()));
    m_photoSection->setCount(count(m_facts->life.photos.size()));
    m_journalStale = m_journalSection->isFolded();
    if (!m_journalStale) {
        m_journal->show(*m_facts);
    }
}

void TreeSheet::heed(const std::vector<Change>& changes) {
    m_reader.heed(changes);
    if (!changes.empty()) {
        m_said->close(); // said of what was done before; undone, it would not even be true
    }
    if (!m_facts || TreeReader::touch(changes, *m_facts)) {
        if (m_facts || m_book.currentPlant() || m_book.currentGenotype()) {
            read();
        }
    }
}

void TreeSheet::act(IdentityAction action) {
    switch (action) {
    case IdentityAction::confirm:
        if (const Identity* identity = m_facts ? m_facts->identity() : nullptr) {
            m_book.apply(identityConfirmed(*identity, m_facts->code().toStdString(),
                                           m_book.context(m_facts->plant)));
        }
        break;
    case IdentityAction::another:
        begin(EntryKind::another);
        break;
    case IdentityAction::byMap:
        assertIdentity(IdentityBasis::mapOnly, Confidence::byMap, true);
        break;
    case IdentityAction::byFruit:
        assertIdentity(IdentityBasis::fruit, Confidence::byFruit, true);
        break;
    case IdentityAction::unknown:
        assertIdentity(IdentityBasis::unknown, Confidence::unknown, false);
        break;
    case IdentityAction::swapTags:
        begin(EntryKind::swapTags);
        break;
    case IdentityAction::plantBeside:
        begin(EntryKind::plantBeside);
        break;
    case IdentityAction::moveRecords:
        begin(EntryKind::moveRecords);
        break;
    }
}

void TreeSheet::assertIdentity(IdentityBasis basis, Confidence confidence, bool known) {
    if (!m_facts || !m_facts->plant) {
        return;
    }
    const EditedTree tree = m_book.treeAt(*m_facts->plant);
    const auto confirmed =
        known ? m_book.view()->plants()[*m_facts->plant].confirmed : std::optional<Date>{};
    m_book.apply(identityOf(tree, known ? tree.genotype : std::nullopt, tree.code, basis,
                            confidence, "", m_book.context(m_facts->plant), confirmed));
}

} // namespace pipwright::ui
