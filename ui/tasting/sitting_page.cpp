#include "ui/tasting/sitting_page.h"

#include "core/history/sitting_edits.h"
#include "ui/book/open_book.h"
#include "ui/book/orchard_words.h"
#include "ui/tasting/sitting_list_model.h"
#include "ui/tasting/sitting_table_model.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/plain_table.h"
#include "ui/widgets/theme.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

constexpr int kWidestColumn = 230;

} // namespace

SittingPage::SittingPage(OpenBook& book, QWidget* parent) : QWidget(parent), m_book(book) {
    const Theme& theme = lightTheme();
    m_heading = new FlowText({}, FlowText::Weight::heading);
    m_second = new FlowText({}, FlowText::Weight::second);
    m_model = new SittingTableModel(this);
    m_table = new PlainTable(tr("Lots and tasters of the sitting"));
    m_table->setModel(m_model);
    m_table->setLinesPerRow(3);
    m_table->setSelectionBehavior(QAbstractItemView::SelectItems);
    m_table->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed);
    m_findings = new FlowText({}, FlowText::Weight::body);
    m_notice = new NoticeBar;
    m_notice->hide();
    m_void = new QPushButton(tr("Score no longer counts …"));
    m_void->setToolTip(tr("Del on a score. It stays in the history, with your reason."));
    m_void->setEnabled(false);

    m_reasonBar = new QWidget;
    auto* reasonRow = new QHBoxLayout(m_reasonBar);
    reasonRow->setContentsMargins(0, 0, 0, 0);
    m_reasonFor = new FlowText;
    m_reason = new QLineEdit;
    m_reason->setAccessibleName(tr("Why the score no longer counts"));
    m_reason->setPlaceholderText(tr("why it no longer counts, then Enter"));
    reasonRow->addWidget(m_reasonFor);
    reasonRow->addWidget(m_reason, 1);
    m_reasonBar->hide();

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(theme.space, theme.space, theme.space, theme.space);
    column->setSpacing(theme.gap);
    column->addWidget(m_heading);
    column->addWidget(m_second);
    column->addWidget(m_table, 1);
    column->addWidget(m_void, 0, Qt::AlignRight);
    column->addWidget(m_notice);
    column->addWidget(m_reasonBar);
    column->addWidget(m_findings);
    setFocusProxy(m_table);

    connect(m_model, &SittingTableModel::refused, m_notice, &NoticeBar::tell);
    connect(m_model, &SittingTableModel::corrected, this, &SittingPage::correct,
            Qt::QueuedConnection);
    connect(m_model, &SittingTableModel::emptied, this, &SittingPage::askReason,
            Qt::QueuedConnection);
    connect(m_table, &PlainTable::removalWanted, this, &SittingPage::askReason);
    connect(m_table, &PlainTable::wanted, this, &SittingPage::take);
    connect(m_table, &PlainTable::changeWanted, this, &SittingPage::askCondition);
    connect(m_void, &QPushButton::clicked, this, [this] { askReason(m_table->currentIndex()); });
    connect(m_reason, &QLineEdit::returnPressed, this, &SittingPage::voidScore);
    connect(
        m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
        [this](const QModelIndex& now) { m_void->setEnabled(m_model->scoreAt(now) != nullptr); });
}

void SittingPage::showSitting(const SittingLine& line) {
    m_line = line;
    m_notice->hide();
    m_reasonBar->hide();
    refresh();
    m_table->fitColumns(kWidestColumn);
    if (m_model->rowCount() > 0) {
        m_table->setCurrentIndex(m_model->index(0, 0));
    }
}

void SittingPage::refresh() {
    const QModelIndex before = m_table->currentIndex();
    const int row = before.row();
    const int column = before.column();
    auto sitting = readSitting(*m_book.view(), m_book.store(), m_line.tastings);
    if (!sitting) {
        m_notice->tell(sitting.problem());
        return;
    }
    m_model->setSitting(m_book.view(), std::move(*sitting));
    if (row >= 0 && row < m_model->rowCount() && column < m_model->columnCount()) {
        m_table->setCurrentIndex(m_model->index(row, column));
    }
    say();
}

void SittingPage::say() {
    const Sitting& sitting = m_model->sitting();
    const QString day = dateWithWeekText(m_line.date);
    m_heading->setText(
        m_line.title.empty() ? day : tr("%1: %2").arg(day, QString::fromStdString(m_line.title)));
    const QString lots = tr("%n lot(s)", nullptr, static_cast<int>(sitting.lots.size()));
    const QString tasters = tr("%n taster(s)", nullptr, static_cast<int>(sitting.tasters.size()));
    const QString place = m_line.bites ? tr("bites in the row") : tr("at a table");
    QString second = tr("%1, %2, %3, %4").arg(place, sightWord(m_line.sight), lots, tasters);
    for (const Tasting& tasting : sitting.tastings) {
        if (!tasting.notes.empty()) {
            second += QStringLiteral(". ") + QString::fromStdString(tasting.notes);
        }
    }
    m_second->setText(second);
    m_findings->setText(findings());
}

QString SittingPage::findings() const {
    QStringList all = spreadSentences() + repeatSentences() + voidedSentences();
    all << tr("Likings as eaten, 1 to 9, not corrected for condition. F2 or double click puts a "
              "score right (7.5 + crisp), and a condition.");
    return all.join(QLatin1Char('\n'));
}

QStringList SittingPage::spreadSentences() const {
    const auto spread = tasterSpread(m_model->sitting());
    if (!spread) {
        return {tr("No lot was tasted by two people, so nothing is known of how far tasters are "
                   "apart.")};
    }
    QStringList levels;
    for (const TasterLevel& level : spread->levels) {
        levels << tr("%1 %2").arg(personWords(*m_book.view(), level.taster),
                                  signedText(level.offset, 1));
    }
    return {tr("Tasters were %1 points apart (standard deviation within a lot, %n lot(s)). Against "
               "the mean of the same lots: %2.",
               nullptr, spread->lots)
                .arg(numberText(spread->standardDeviation, 1), levels.join(QStringLiteral(", ")))};
}

QStringList SittingPage::repeatSentences() const {
    QStringList sentences;
    for (const RepeatServing& repeat : repeatServings(*m_book.view(), m_model->sitting())) {
        const QString name = QString::fromStdString(repeat.name);
        if (repeat.pairs == 0) {
            sentences << tr("%1 was served %n time(s), but nobody gave it two likings.", nullptr,
                            repeat.servings)
                             .arg(name);
            continue;
        }
        sentences << tr("%1 was served %n time(s): the same taster differed by %2 points on "
                        "average, %3 at most.",
                        nullptr, repeat.servings)
                         .arg(name, numberText(repeat.meanGap, 1),
                              numberText(repeat.largestGap, 1));
    }
    return sentences;
}

QStringList SittingPage::voidedSentences() const {
    QStringList sentences;
    for (const Score& score : m_model->sitting().voidedScores) {
        QString fruit;
        for (const TastedLot& lot : m_model->sitting().lots) {
            if (lot.lot.id == score.lot) {
                fruit = QString::fromStdString(fruitName(*m_book.view(), lot.lot));
            }
        }
        sentences << tr("No longer counts: %1 for %2 (%3), because: %4")
                         .arg(score.liking ? numberText(*score.liking, 1) : tr("words"), fruit,
                              personWords(*m_book.view(), score.taster),
                              QString::fromStdString(score.voidReason));
    }
    return sentences;
}

void SittingPage::correct(const QModelIndex& index, const TypedScore& typed) {
    if (!index.isValid()) {
        return;
    }
    const std::string name = m_model->nameOfScore(index).toStdString();
    m_notice->hide();
    if (const Score* score = m_model->scoreAt(index)) {
        m_book.apply(scoreCorrected(*score, typed, name, m_book.context()));
    } else if (const auto taster = m_model->tasterAt(index.column())) {
        m_book.apply(
            scoreAdded(m_model->lot(index.row()).lot.id, *taster, typed, name, m_book.context()));
    }
}

void SittingPage::askReason(const QModelIndex& index) {
    if (m_model->scoreAt(index) == nullptr) {
        return;
    }
    m_toVoid = index;
    m_reasonFor->setText(m_model->data(index).toString().section(QStringLiteral(" · "), 0, 1));
    m_reason->clear();
    m_reasonBar->show();
    m_reason->setFocus(Qt::OtherFocusReason);
}

void SittingPage::voidScore() {
    const QString reason = m_reason->text().trimmed();
    const Score* score = m_model->scoreAt(m_toVoid);
    if (score == nullptr || reason.isEmpty()) {
        m_notice->say(NoticeBar::Kind::attention, tr("A score is voided with a reason."),
                      tr("Type why it no longer counts, then Enter."));
        return;
    }
    m_reasonBar->hide();
    m_notice->hide();
    ChangeSet set =
        voided(*score, reason.toStdString(), m_model->nameOfScore(m_toVoid).toStdString());
    set.person = m_book.person();
    m_book.apply(set);
    m_table->setFocus(Qt::OtherFocusReason);
}

void SittingPage::take(const QModelIndex& index) {
    index.column() == SittingTableModel::condition ? askCondition(index) : selectTree(index);
}

void SittingPage::askCondition(const QModelIndex& index) {
    if (index.column() != SittingTableModel::condition &&
        index.column() != SittingTableModel::fair) {
        return;
    }
    const Lot lot = m_model->lot(index.row()).lot; // the sheet beside may read the table anew
    selectTree(index);
    Q_EMIT conditionWanted(lot, m_line.date);
}

void SittingPage::selectTree(const QModelIndex& index) {
    const Lot& lot = m_model->lot(index.row()).lot;
    const auto view = m_book.view();
    if (const auto plant = lot.plant ? view->plant(*lot.plant) : std::nullopt) {
        m_book.selectPlant(*plant);
    } else if (const auto genotype = genotypeOf(*view, lot)) {
        m_book.selectGenotype(*genotype);
    }
}

} // namespace pipwright::ui
