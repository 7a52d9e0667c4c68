#include "ui/tasting/sitting_sheet.h"

#include "core/history/sitting_edits.h"
#include "ui/book/open_book.h"
#include "ui/tasting/sheet_model.h"
#include "ui/tasting/sheet_table.h"
#include "ui/tasting/sitting_list_model.h"
#include "ui/tasting/taster_row.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/inexact_date_edit.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/theme.h"

#include <QFormLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

constexpr int kFruitWidth = 180;
constexpr int kWordWidth = 100;
constexpr int kScoreWidth = 170;
constexpr int kDateWidth = 260;

InexactDate oneDay(Date day) {
    return {day.iso(), day, day};
}

} // namespace

SittingSheet::SittingSheet(OpenBook& book, QWidget* parent) : QWidget(parent), m_book(book) {
    build();
    connectParts();
    m_date->setDate(oneDay(m_book.today()));
    refresh();
}

void SittingSheet::build() {
    const Theme& theme = lightTheme();
    m_date = new InexactDateEdit(m_book.today());
    m_date->setMaximumWidth(kDateWidth);
    m_title = new QLineEdit;
    m_title->setAccessibleName(tr("What the sitting is called"));
    m_title->setPlaceholderText(tr("may stay empty"));
    m_sight = new ChipRow(tr("Whether the tasters knew what they ate"));
    m_sight->setChips(
        {{QStringLiteral("blind"), sightWord(Sight::blind), QStringLiteral("b"),
          tr("nobody knew which tree a piece came from")},
         {QStringLiteral("sighted"), sightWord(Sight::sighted), QStringLiteral("s"),
          tr("the trees were known")},
         {QStringLiteral("unknown"), sightWord(Sight::unknown), QStringLiteral("?"), QString()}});
    m_sight->setChosen(QStringLiteral("unknown"));
    m_tasters = new TasterRow;
    m_tasters->setIdMaker([this] { return PersonId(m_book.ids().make()); });
    m_health = new FlowText({}, FlowText::Weight::strong);
    m_model = new SheetModel([this] { return m_book.view(); }, this);
    m_table = new SheetTable(tr("Sheet of the sitting"));
    m_table->setModel(m_model);
    m_hint = new FlowText({}, FlowText::Weight::small);
    m_fault = new FlowText({}, FlowText::Weight::fault);
    m_notice = new NoticeBar;
    m_notice->hide();
    m_keep = new QPushButton(tr("Keep (Ctrl+Enter)"));
    m_later = new QPushButton(tr("Later (Esc)"));
    m_again = new QPushButton(tr("Empty the sheet"));

    auto* form = new QFormLayout;
    form->setSpacing(theme.gap);
    form->setHorizontalSpacing(theme.space);
    form->addRow(tr("Day"), m_date);
    form->addRow(tr("Called"), m_title);
    form->addRow(tr("Tasted"), m_sight);
    form->addRow(tr("Tasters"), m_tasters);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_keep);
    buttons->addWidget(m_later);
    buttons->addStretch(1);
    buttons->addWidget(m_again);
    auto* caution = new FlowText(
        tr("Leave out mouldy or rotten fruit, and keep fallen or wormy fruit away from children, "
           "old people, anyone pregnant or ill; wash what you serve. Taste nothing before the "
           "waiting time of a spray is over. Ask beforehand who reacts to birch pollen: raw apple, "
           "pear or plum can make mouth and throat itch or swell; whoever has trouble breathing "
           "needs an ambulance. Do not chew pips or stones."),
        FlowText::Weight::small);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(theme.space, theme.space, theme.space, theme.space);
    column->setSpacing(theme.gap);
    column->addWidget(new FlowText(tr("New sitting"), FlowText::Weight::heading));
    column->addLayout(form);
    column->addWidget(m_health);
    column->addWidget(m_table, 1);
    column->addWidget(m_hint);
    column->addWidget(m_fault);
    column->addWidget(m_notice);
    column->addLayout(buttons);
    column->addWidget(caution);
    m_health->hide();
    m_fault->hide();
    setFocusProxy(m_table);
}

void SittingSheet::connectParts() {
    connect(m_tasters, &TasterRow::chosenChanged, this, &SittingSheet::takeTasters);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &SittingSheet::sayCell);
    connect(m_model, &SheetModel::dataChanged, this, [this] {
        sayFault();
        Q_EMIT begunChanged();
    });
    connect(m_table, &SheetTable::leftAlone, this, &SittingSheet::leftAlone);
    connect(m_table, &SheetTable::removalWanted, this,
            [this](const QModelIndex& cell) { m_model->setData(cell, QString(), Qt::EditRole); });
    connect(m_keep, &QPushButton::clicked, this, &SittingSheet::keep);
    connect(m_later, &QPushButton::clicked, this, &SittingSheet::leftAlone);
    connect(m_again, &QPushButton::clicked, this, &SittingSheet::startAgain);
    connect(m_notice, &NoticeBar::offerTaken, this, [this] {
        m_model->setRows(m_cleared);
        m_notice->hide();
        Q_EMIT begunChanged();
    });
    for (const auto key : {Qt::Key_Return, Qt::Key_Enter}) {
        auto* shortcut = new QShortcut(QKeySequence(Qt::CTRL | key), this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, &SittingSheet::keep);
    }
}

void SittingSheet::begin() {
    const auto rows = m_model->rowCount();
    m_table->setCurrentIndex(m_model->index(rows - 1, 0));
    if (m_tasters->chosen().empty()) {
        m_date->line()->setFocus(Qt::OtherFocusReason);
        m_date->line()->selectAll();
    } else {
        m_table->setFocus(Qt::OtherFocusReason);
    }
}

bool SittingSheet::isBegun() const {
    return !m_model->isBlank();
}

void SittingSheet::refresh() {
    m_date->setToday(m_book.today());
    if (!isBegun() && m_date->isEmpty()) {
        m_date->setDate(oneDay(m_book.today()));
    }
    m_tasters->setKnown(m_book.view()->persons());
    takeTasters();
    m_model->readAnew();
}

void SittingSheet::takeTasters() {
    const std::vector<Person> chosen = m_tasters->chosen();
    const auto same = [](const Person& one, const Person& other) { return one.id == other.id; };
    const auto& now = m_model->tasters();
    if (!std::equal(chosen.begin(), chosen.end(), now.begin(), now.end(), same)) {
        m_table->keepOpenCell();
        m_model->setTasters(chosen);
        for (int column = 0; column < m_model->columnCount(); ++column) {
            m_table->setColumnWidth(column, column == SheetModel::fruit        ? kFruitWidth
                                            : column < SheetModel::firstTaster ? kWordWidth
                                                                               : kScoreWidth);
        }
    }
    QStringList notes;
    for (const Person& person : chosen) {
        if (!person.healthNotes.empty()) {
            notes << tr("⚠ %1: %2")
                         .arg(QString::fromStdString(person.name),
                              QString::fromStdString(person.healthNotes));
        }
    }
    m_health->setText(notes.join(QLatin1Char('\n')));
    m_health->setVisible(!notes.isEmpty());
    sayFault();
}

void SittingSheet::sayCell() {
    const QModelIndex cell = m_table->currentIndex();
    m_hint->setText(
        cell.isValid() ? tr("%1. A \" repeats what stands above.").arg(m_model->help(cell.column()))
                       : QString());
}

void SittingSheet::sayFault() {
    const auto fault = m_model->firstFault();
    m_fault->setVisible(fault.has_value());
    if (fault) {
        m_fault->setText(
            tr("Line %1, %2: %3")
                .arg(fault->first.row() + 1)
                .arg(m_model->headerData(fault->first.column(), Qt::Horizontal, Qt::DisplayRole)
                         .toString(),
                     QString::fromStdString(fault->second.sentence())));
    }
}

bool SittingSheet::keep() {
    m_table->keepOpenCell();
    const auto date = m_date->date();
    if (!date) {
        m_notice->say(NoticeBar::Kind::attention, tr("The sitting has no day yet."),
                      tr("Type it as you know it: 22 Aug, week 34, late August."));
        m_date->line()->setFocus(Qt::OtherFocusReason);
        return false;
    }
    if (const auto fault = m_model->firstFault()) {
        m_notice->tell(fault->second);
        m_table->setCurrentIndex(fault->first);
        m_table->setFocus(Qt::OtherFocusReason);
        return false;
    }
    HeldSitting sitting;
    sitting.lots = m_model->lots();
    if (sitting.lots.empty()) {
        m_notice->say(NoticeBar::Kind::attention, tr("There is no fruit on the sheet yet."),
                      tr("Type a code, a name or row/place in the first cell."));
        return false;
    }
    sitting.date = date->from;
    if (!date->isOneDay()) { // the book keeps one day; the words say how exact it is
        sitting.notes =
            tr("Day as written: %1 (%2 to %3)")
                .arg(QString::fromStdString(date->typed), QString::fromStdString(date->from.iso()),
                     QString::fromStdString(date->to.iso()))
                .toStdString();
    }
    sitting.title = m_title->text().trimmed().toStdString();
    sitting.sight = fromKey<Sight>(m_sight->chosen().value_or(QString()).toStdString())
                        .value_or(Sight::unknown);
    sitting.newPersons = m_tasters->newcomers();
    if (!m_book.apply(sittingHeld(sitting, m_book.context()))) {
        return false; // the window says why; the sheet stays
    }
    clearSheet();
    Q_EMIT begunChanged();
    Q_EMIT kept();
    return true;
}

void SittingSheet::clearSheet() {
    m_tasters->forgetNewcomers();
    m_model->setRows({});
    m_title->clear();
    m_notice->hide();
    m_date->setDate(oneDay(m_book.today()));
    refresh();
}

void SittingSheet::startAgain() {
    m_table->keepOpenCell();
    m_cleared = m_model->rows();
    const bool something = isBegun();
    m_model->setRows({});
    if (something) {
        m_notice->say(NoticeBar::Kind::word, tr("The sheet is empty."));
        m_notice->offer(tr("Bring it back"));
    }
    sayFault();
    Q_EMIT begunChanged();
}

void SittingSheet::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT leftAlone();
        return;
    }
    QWidget::keyPressEvent(event);
}

} // namespace pipwright::ui
