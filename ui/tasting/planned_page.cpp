#include "ui/tasting/planned_page.h"

#include "core/history/planned_sitting_edits.h"
#include "ui/book/open_book.h"
#include "ui/tasting/entry_model.h"
#include "ui/tasting/entry_table.h"
#include "ui/tasting/sitting_list_model.h"
#include "ui/tasting/sitting_papers.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/theme.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr int kLikingCells = 140;
constexpr std::size_t kMostBestOnes = 3;

QString keyOfTaster(PersonId taster) {
    return QString::fromStdString(taster.uuid.text());
}

} // namespace

PlannedPage::PlannedPage(OpenBook& book, QWidget* parent) : QWidget(parent), m_book(book) {
    build();
    setMinimumWidth(320); // fits a screen of 1024; its tables scroll
    connectParts();
}

void PlannedPage::build() {
    const Theme& theme = lightTheme();
    m_heading = new FlowText({}, FlowText::Weight::heading);
    m_state = new FlowText({}, FlowText::Weight::second);
    m_papers = new SittingPapers(m_book);
    m_entry = buildEntry();
    m_stack = new QStackedWidget;
    m_stack->addWidget(m_entry);
    m_stack->addWidget(m_papers);
    m_notice = new NoticeBar;
    m_notice->hide();
    m_toPapers = new QPushButton;
    m_open = new QPushButton(tr("Open the key …"));
    m_open->setToolTip(tr("Shows what stood behind the codes."));
    m_reasonBar = new QWidget;
    auto* reasonRow = new QHBoxLayout(m_reasonBar);
    reasonRow->setContentsMargins(0, 0, 0, 0);
    m_reasonFor = new FlowText;
    m_reason = new QLineEdit;
    m_reason->setAccessibleName(tr("Why the key is opened early"));
    m_reason->setPlaceholderText(tr("why all the same, then Enter"));
    reasonRow->addWidget(m_reasonFor, 1);
    reasonRow->addWidget(m_reason, 1);
    m_reasonBar->hide();
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_toPapers);
    buttons->addStretch(1);
    buttons->addWidget(m_open);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(theme.space, theme.space, theme.space, theme.space);
    column->setSpacing(theme.gap);
    column->addWidget(m_heading);
    column->addWidget(m_state);
    column->addWidget(m_stack, 1);
    column->addWidget(m_notice);
    column->addWidget(m_reasonBar);
    column->addLayout(buttons);
    setFocusProxy(m_table);
}

QWidget* PlannedPage::buildEntry() {
    const Theme& theme = lightTheme();
    m_tasters = new ChipRow(tr("Whose sheet is typed"));
    m_model = new EntryModel(this);
    m_table = new EntryTable(tr("The sheet as it is typed"));
    m_table->setModel(m_model);
    m_table->setColumnWidth(EntryModel::liking, kLikingCells);
    m_table->horizontalHeader()->setStretchLastSection(true);
    m_hint = new FlowText(tr("7, 7.5 or 7h, then Enter goes down; Tab goes to the words. A line "
                             "that was not tasted: write so in its words."),
                          FlowText::Weight::small);
    m_best = new QLineEdit;
    m_best->setAccessibleName(tr("The best ones by code, best first"));
    m_best->setPlaceholderText(tr("up to three codes, best first, then Enter: 417 532 286"));
    auto* bestRow = new QHBoxLayout;
    auto* label = new QLabel(tr("&Best ones"));
    label->setBuddy(m_best);
    bestRow->addWidget(label);
    bestRow->addWidget(m_best, 1);
    auto* entry = new QWidget;
    auto* column = new QVBoxLayout(entry);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.gap);
    column->addWidget(m_tasters);
    column->addWidget(m_table, 1);
    column->addWidget(m_hint);
    column->addLayout(bestRow);
    return entry;
}

void PlannedPage::connectParts() {
    connect(m_tasters, &ChipRow::choiceMade, this, [this](const QString& key) {
        showTaster(key);
        m_table->setFocus(Qt::OtherFocusReason);
    });
    connect(m_model, &EntryModel::refused, m_notice, &NoticeBar::tell);
    connect(m_model, &EntryModel::written, this, &PlannedPage::write);
    connect(m_table, &EntryTable::bottomReached, this, [this] {
        m_best->setFocus(Qt::OtherFocusReason);
        m_best->selectAll();
    });
    connect(m_table, &SheetTable::leftAlone, this, &PlannedPage::leftAlone);
    connect(m_table, &SheetTable::removalWanted, this,
            [this](const QModelIndex& cell) { m_model->setData(cell, QString(), Qt::EditRole); });
    connect(m_best, &QLineEdit::returnPressed, this, &PlannedPage::writeBest);
    connect(m_toPapers, &QPushButton::clicked, this, [this] {
        if (m_stack->currentWidget() == m_entry) {
            showPapers();
        } else {
            beginEntry();
        }
    });
    connect(m_open, &QPushButton::clicked, this, &PlannedPage::askToOpen);
    connect(m_reason, &QLineEdit::returnPressed, this, [this] {
        const QString reason = m_reason->text().trimmed();
        if (reason.isEmpty()) {
            m_notice->say(NoticeBar::Kind::attention, tr("The key is opened early with a reason."),
                          tr("Type why, then Enter; it is kept with the sitting."));
            return;
        }
        open(reason.toStdString());
    });
}

bool PlannedPage::showSitting(TastingId tasting) {
    const auto planned = readPlannedTable(m_book.store(), tasting);
    if (!planned || !planned->has_value() || !(*planned)->isSealed()) {
        return false;
    }
    const bool other = m_tasting != tasting;
    m_tasting = tasting;
    m_planned = **planned;
    if (other) {
        m_notice->hide();
        m_reasonBar->hide();
        m_stack->setCurrentWidget(m_entry);
    }
    std::vector<Chip> chips;
    for (const TasterSheet& sheet : m_planned->sheets) {
        const int total = static_cast<int>(sheet.lines.size());
        chips.push_back(
            {keyOfTaster(sheet.taster),
             tr("%1 %2/%3").arg(nameOf(sheet.taster)).arg(total - sheet.open()).arg(total),
             QString(), tr("the sheet of %1").arg(nameOf(sheet.taster))});
    }
    const auto chosen = m_tasters->chosen();
    m_tasters->setChips(chips);
    m_tasters->setChosen(chosen);
    if (other || !chosenSheet()) {
        const auto& sheets = m_planned->sheets;
        const auto waiting = std::find_if(sheets.begin(), sheets.end(),
                                          [](const TasterSheet& one) { return one.open() > 0; });
        if (!sheets.empty()) {
            m_tasters->setChosen(
                keyOfTaster((waiting == sheets.end() ? sheets.begin() : waiting)->taster));
        }
    }
    if (const TasterSheet* sheet = chosenSheet()) {
        showTaster(keyOfTaster(sheet->taster));
    }
    say();
    if (other || m_stack->currentWidget() == m_papers) {
        m_papers->showPlan(*m_planned);
    }
    return true;
}

void PlannedPage::refresh() {
    if (m_tasting) {
        showSitting(*m_tasting);
    }
}

void PlannedPage::say() {
    const Tasting& tasting = m_planned->tasting;
    const QString title =
        tasting.title.empty() ? tr("Planned sitting") : QString::fromStdString(tasting.title);
    m_heading->setText(tr("%1, %2").arg(title, dateWithWeekText(tasting.date)));
    m_state->setText(stateWords());
    m_toPapers->setText(m_stack->currentWidget() == m_entry ? tr("Sheets and key to print …")
                                                            : tr("Type the sheets"));
}

QString PlannedPage::stateWords() const {
    QStringList waiting;
    for (const TasterSheet& sheet : m_planned->sheets) {
        if (sheet.open() > 0) {
            waiting << tr("%1 %n", "so many lines of this person are empty", sheet.open())
                           .arg(nameOf(sheet.taster));
        }
    }
    const QString lots = tr("%n lot(s) under codes, %1", nullptr, m_planned->served())
                             .arg(sightWord(m_planned->tasting.sight));
    return waiting.isEmpty() ? tr("%1. Every sheet is in: the key may be opened.").arg(lots)
                             : tr("%1. The key is sealed. Lines still empty: %2.")
                                   .arg(lots, waiting.join(QStringLiteral(", ")));
}

void PlannedPage::showPapers() {
    m_papers->showPlan(*m_planned);
    m_stack->setCurrentWidget(m_papers);
    say();
}

void PlannedPage::beginEntry() {
    m_stack->setCurrentWidget(m_entry);
    say();
    m_table->setCurrentIndex(m_model->index(m_model->firstOpen(), EntryModel::liking));
    m_table->setFocus(Qt::OtherFocusReason);
}

const TasterSheet* PlannedPage::chosenSheet() const {
    const auto chosen = m_tasters->chosen();
    for (const TasterSheet& sheet : m_planned->sheets) {
        if (chosen == keyOfTaster(sheet.taster)) {
            return &sheet;
        }
    }
    return nullptr;
}

QString PlannedPage::nameOf(PersonId taster) const {
    const Person* person = m_book.view()->person(taster);
    return person == nullptr ? tr("somebody") : QString::fromStdString(person->name);
}

void PlannedPage::showTaster(const QString& key) {
    for (const TasterSheet& sheet : m_planned->sheets) {
        if (key != keyOfTaster(sheet.taster)) {
            continue;
        }
        const bool other = m_model->sheet().taster != sheet.taster;
        m_model->setSheet(sheet);
        if (other) {
            m_table->setCurrentIndex(m_model->index(m_model->firstOpen(), EntryModel::liking));
        }
        std::vector<std::pair<std::int64_t, QString>> best;
        for (const SheetLine& line : sheet.lines) {
            if (line.score.rank) {
                best.emplace_back(*line.score.rank, QString::fromStdString(line.code));
            }
        }
        std::sort(best.begin(), best.end());
        QStringList codes;
        for (const auto& [rank, code] : best) {
            codes << code;
        }
        if (other || !m_best->hasFocus()) {
            m_best->setText(codes.join(QLatin1Char(' ')));
        }
    }
}

void PlannedPage::write(int row, const TypedScore& typed) {
    m_notice->hide();
    const SheetLine& line = m_model->line(row);
    const std::string what =
        "Score of " + nameOf(line.score.taster).toStdString() + " for " + line.code;
    m_book.apply(sheetLineWritten(line.score, typed, what, m_book.context()));
}

void PlannedPage::writeBest() {
    const TasterSheet* sheet = chosenSheet();
    if (sheet == nullptr) {
        return;
    }
    static const QRegularExpression kBetween(QStringLiteral("[\\s,;]+"));
    std::vector<ScoreId> best;
    std::vector<Score> scores;
    for (const SheetLine& line : sheet->lines) {
        scores.push_back(line.score);
    }
    for (const QString& code : m_best->text().split(kBetween, Qt::SkipEmptyParts)) {
        const auto line =
            std::find_if(sheet->lines.begin(), sheet->lines.end(), [&code](const SheetLine& one) {
                return QString::fromStdString(one.code) == code;
            });
        if (line == sheet->lines.end() ||
            std::find(best.begin(), best.end(), line->score.id) != best.end() ||
            best.size() == kMostBestOnes) {
            m_notice->say(NoticeBar::Kind::attention,
                          tr("%1 is none of the codes here, or it is too many.").arg(code),
                          tr("Type up to three different codes of this sheet, best first."));
            return;
        }
        best.push_back(line->score.id);
    }
    m_notice->hide();
    const std::string name = nameOf(sheet->taster).toStdString();
    if (m_book.apply(bestOnesWritten(scores, best, name, m_book.context()))) {
        goOn();
    }
}

/// To the next sheet that waits, or to the key.
void PlannedPage::goOn() {
    for (const TasterSheet& sheet : m_planned->sheets) {
        if (sheet.open() > 0) {
            m_tasters->setChosen(keyOfTaster(sheet.taster));
            showTaster(keyOfTaster(sheet.taster));
            beginEntry();
            return;
        }
    }
    m_open->setFocus(Qt::OtherFocusReason);
}

void PlannedPage::askToOpen() {
    m_table->keepOpenCell();
    if (!m_planned) {
        return;
    }
    if (m_planned->allSheetsIn()) {
        open({});
        return;
    }
    const auto lines = static_cast<int>(m_planned->unwritten().size());
    m_reasonFor->setText(tr("%n line(s) are still empty and would be left out.", nullptr, lines));
    m_reason->clear();
    m_reasonBar->show();
    m_reason->setFocus(Qt::OtherFocusReason);
}

void PlannedPage::open(const std::string& reason) {
    const PlannedTable planned = *m_planned;
    m_reasonBar->hide();
    if (m_book.apply(keyOpened(planned.key, planned.tasting.date, planned.unwritten(), reason,
                               m_book.context()))) {
        Q_EMIT opened();
    }
}

void PlannedPage::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        if (m_reasonBar->isVisible()) {
            m_reasonBar->hide();
            m_table->setFocus(Qt::OtherFocusReason);
        } else {
            Q_EMIT leftAlone();
        }
        return;
    }
    QWidget::keyPressEvent(event);
}

} // namespace pipwright::ui
