#include "ui/merit/ladder_panel.h"

#include "core/evaluation/season_chart.h"
#include "core/evaluation/usual_ripening.h"
#include "core/season/crop_season.h"
#include "ui/book/book_words.h"
#include "ui/book/merit_words.h"
#include "ui/book/open_book.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/theme.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

QString codeOf(const OrchardView& view, Index genotype) {
    return QString::fromStdString(view.genotypes()[genotype].called());
}

} // namespace

LadderPanel::LadderPanel(OpenBook& book, QWidget* parent)
    : QWidget(parent), m_book(book), m_slots(new QComboBox), m_about(new FlowText),
      m_cut(new QPushButton), m_notice(new NoticeBar) {
    const Theme& theme = lightTheme();
    m_slots->setAccessibleName(tr("Slot of the season"));
    m_slots->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_notice->hide();
    auto* head = new QHBoxLayout;
    auto* word = new QLabel(tr("S&lot"));
    word->setBuddy(m_slots);
    head->addWidget(word);
    head->addWidget(m_slots);
    head->addWidget(m_cut);
    head->addStretch(1);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(theme.space);
    grid->setColumnStretch(3, 1);
    constexpr std::array kRungs = {Rung::floor, Rung::best, Rung::famous};
    for (std::size_t at = 0; at < kRungs.size(); ++at) {
        Line& mine = m_rungs[at];
        mine = {kRungs[at], new QComboBox, new QPushButton(tr("Elect")), new FlowText};
        mine.choice->setAccessibleName(tr("Benchmark for the rung: %1").arg(rungWord(mine.rung)));
        mine.choice->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        mine.elect->setAccessibleName(tr("Elect to the rung: %1").arg(rungWord(mine.rung)));
        const int row = static_cast<int>(at);
        grid->addWidget(new QLabel(rungWord(mine.rung)), row, 0);
        grid->addWidget(mine.choice, row, 1);
        grid->addWidget(mine.elect, row, 2);
        grid->addWidget(mine.words, row, 3);
        connect(mine.elect, &QPushButton::clicked, this, [this, at] { elect(m_rungs[at]); });
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(theme.space, theme.gap, theme.space, theme.gap);
    column->setSpacing(theme.space);
    column->addWidget(m_notice);
    column->addLayout(head);
    column->addWidget(m_about);
    column->addLayout(grid);
    column->addStretch(1);
    connect(m_slots, &QComboBox::currentIndexChanged, this, &LadderPanel::present);
    connect(m_cut, &QPushButton::clicked, this, &LadderPanel::cut);
    present();
}

const LadderPanel::Line& LadderPanel::line(Rung rung) const {
    return rung == Rung::floor ? m_rungs[0] : (rung == Rung::best ? m_rungs[1] : m_rungs[2]);
}

const SeasonLadders* LadderPanel::ladders() const {
    const auto at = static_cast<std::size_t>(m_slots->currentData().toPoint().x());
    const bool known = m_report && m_report->evaluation && m_slots->currentIndex() >= 0 &&
                       at < m_report->evaluation->ladders.size();
    return known ? &m_report->evaluation->ladders[at] : nullptr;
}

const SlotLadder* LadderPanel::slot() const {
    const SeasonLadders* season = ladders();
    const auto at = static_cast<std::size_t>(m_slots->currentData().toPoint().y());
    return season != nullptr && at < season->slots.size() ? &season->slots[at] : nullptr;
}

void LadderPanel::setReport(const MeritReportPointer& report) {
    const QVariant before = m_slots->currentData();
    {
        const QSignalBlocker quiet(m_slots);
        m_report = report;
        m_slots->clear();
        const auto& all = report && report->evaluation ? report->evaluation->ladders
                                                       : std::vector<SeasonLadders>{};
        for (std::size_t at = 0; at < all.size(); ++at) {
            const Species* species =
                all[at].species ? report->view->species(*all[at].species) : nullptr;
            for (std::size_t place = 0; place < all[at].slots.size(); ++place) {
                const QString days = slotWords(all[at].slots[place], all[at].cropYear.year);
                m_slots->addItem(species == nullptr || all.size() == 1
                                     ? days
                                     : tr("%1: %2").arg(speciesName(*species), days),
                                 QPoint(static_cast<int>(at), static_cast<int>(place)));
            }
        }
        const int again = m_slots->findData(before);
        m_slots->setCurrentIndex(again >= 0 ? again : (m_slots->count() > 0 ? 0 : -1));
    }
    present();
}

void LadderPanel::follow(Index genotype) {
    const SeedlingVerdict* verdict = m_report ? m_report->verdictOn(genotype) : nullptr;
    if (verdict != nullptr && verdict->ladders && verdict->slot) {
        const int at = m_slots->findData(
            QPoint(static_cast<int>(*verdict->ladders), static_cast<int>(*verdict->slot)));
        if (at >= 0) {
            m_slots->setCurrentIndex(at);
        }
    }
}

void LadderPanel::present() {
    const SeasonLadders* season = ladders();
    const SlotLadder* shown = slot();
    for (const Line& mine : m_rungs) {
        presentRung(mine);
    }
    if (shown == nullptr) {
        m_about->setText(tr("No slots yet: mark benchmarks ripe on your walks, and the season is "
                            "cut by their days."));
        m_cut->hide();
        return;
    }
    const bool met = season->metFor == season->cropYear;
    const bool isPast = m_report->question.asOf.has_value();
    const QString year =
        QString::fromStdString(label(season->cropYear, seasonSideOf(*m_report->view)));
    m_cut->setText(tr("Cut the season of %1 into these %n slot(s)", nullptr,
                      static_cast<int>(season->slots.size()))
                       .arg(year));
    m_cut->setVisible(!met && !isPast);
    QString words;
    if (shown->benchmarks.empty()) {
        words = tr("No benchmark ripens in this slot or near it.");
    } else if (shown->benchmarksBorrowed) {
        words = tr("No benchmark ripens in this slot: those of the slots beside it stand in.");
    } else {
        QStringList names;
        for (const Index one : shown->benchmarks) {
            names << codeOf(*m_report->view, one);
        }
        words = tr("Ripe in it: %1.").arg(names.join(QStringLiteral(", ")));
    }
    if (!met) {
        words += QLatin1Char(' ') + tr("For %1 nobody has been elected yet; cut the season first, "
                                       "everybody who stands here keeps the rung.")
                                        .arg(year);
    }
    m_about->setText(words);
}

void LadderPanel::presentRung(const Line& mine) {
    mine.choice->clear();
    const SlotLadder* shown = slot();
    const SeasonLadders* season = ladders();
    const bool canElect = shown != nullptr && shown->slot && !m_report->question.asOf &&
                          season->metFor == season->cropYear && !shown->benchmarks.empty();
    mine.choice->setEnabled(canElect);
    mine.elect->setEnabled(canElect);
    mine.words->clear();
    if (shown == nullptr) {
        return;
    }
    const MeritModel& model = m_report->evaluation->model;
    for (const Index one : shown->benchmarks) {
        const GenotypeMerit* merit = model.meritOf(one);
        const QString name = codeOf(*m_report->view, one);
        mine.choice->addItem(merit == nullptr || !merit->seen()
                                 ? tr("%1, never tasted").arg(name)
                                 : tr("%1, %2").arg(name, doubtText(merit->merit.value,
                                                                    merit->merit.standardError, 1)),
                             one);
    }
    const auto& rung = shown->of(mine.rung);
    if (!rung) {
        mine.words->setText(tr("nobody yet"));
        return;
    }
    mine.choice->setCurrentIndex(mine.choice->findData(rung->genotype));
    QString words =
        tr("%1: %2").arg(codeOf(*m_report->view, rung->genotype), groundWords(rung->ground));
    if (!rung->reason.empty()) {
        words += tr(" (%1)").arg(QString::fromStdString(rung->reason));
    }
    if (rung->overtaken) {
        words += QStringLiteral(". ") + tr("Another of the slot has the higher merit now.");
    }
    mine.words->setText(words);
}

void LadderPanel::elect(const Line& mine) {
    const SlotLadder* shown = slot();
    if (shown == nullptr || !shown->slot || mine.choice->currentIndex() < 0) {
        return;
    }
    const auto record = m_book.store().get(*shown->slot);
    if (!record || !record->has_value()) {
        m_notice->tell(
            record ? Problem{ProblemCode::notFound, "the slot is gone.", "Cut the season anew.", {}}
                   : record.problem());
        return;
    }
    const auto genotype = static_cast<Index>(mine.choice->currentData().toUInt());
    const GenotypeEntry& entry = m_book.view()->genotypes()[genotype];
    m_notice->close();
    m_book.apply(electRung(**record, {mine.rung, entry.id, {}}, entry.called(), m_book.context()));
}

Result<SeasonAsCut> LadderPanel::asCut(const SeasonLadders& season) const {
    auto slots = m_book.store().all<Slot>();
    auto elections = m_book.store().all<Election>();
    if (!slots || !elections) {
        return slots ? elections.problem() : slots.problem();
    }
    SeasonAsCut before;
    for (const Slot& one : *slots) {
        if (one.cropYear == season.cropYear && one.species == season.species) {
            before.slots.push_back(one);
        }
    }
    for (const Election& one : *elections) {
        if (std::any_of(before.slots.begin(), before.slots.end(),
                        [&one](const Slot& mine) { return mine.id == one.slot; })) {
            before.elections.push_back(one);
        }
    }
    return before;
}

void LadderPanel::cut() {
    const SeasonLadders* season = ladders();
    if (season == nullptr) {
        return;
    }
    const auto before = asCut(*season);
    if (!before) {
        m_notice->tell(before.problem());
        return;
    }
    const OrchardView& view = *m_report->view;
    std::vector<CutSlot> cuts;
    for (const SlotLadder& one : season->slots) {
        CutSlot made;
        made.first = dateInCalendar(one.days.first, season->cropYear.year);
        made.last = dateInCalendar(one.days.last, season->cropYear.year);
        made.name = one.name;
        for (const Line& mine : m_rungs) {
            if (const auto& rung = one.of(mine.rung); rung && !rung->borrowed) {
                made.rungs.push_back(
                    {mine.rung, view.genotypes()[rung->genotype].id, rung->reason});
            }
        }
        cuts.push_back(std::move(made));
    }
    m_notice->close();
    m_book.apply(cutSlots(season->cropYear, label(season->cropYear, seasonSideOf(view)),
                          season->species, cuts, *before, m_book.context()));
}

} // namespace pipwright::ui
