#include "ui/season/season_place.h"

#include "core/season/crop_season.h"
#include "ui/book/open_book.h"
#include "ui/charts/chart_panel.h"
#include "ui/widgets/theme.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QLabel>
#include <QMetaObject>
#include <QSignalBlocker>
#include <QThreadPool>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

std::string said(const QString& words) {
    return words.toStdString();
}

} // namespace

SeasonPlace::SeasonPlace(OpenBook& book, QWidget* parent) : QWidget(parent), m_book(book) {
    m_year = new QComboBox;
    m_year->setAccessibleName(tr("Crop year"));
    m_species = new QComboBox;
    m_species->setAccessibleName(tr("Species of the benchmarks"));
    m_words = new QLabel;
    m_words->setWordWrap(true);
    m_chart = new ChartPanel;
    auto* yearLabel = new QLabel(tr("Crop year:"));
    yearLabel->setBuddy(m_year);
    auto* speciesLabel = new QLabel(tr("Species:"));
    speciesLabel->setBuddy(m_species);
    auto* bar = new QHBoxLayout;
    bar->addWidget(yearLabel);
    bar->addWidget(m_year);
    bar->addSpacing(lightTheme().space);
    bar->addWidget(speciesLabel);
    bar->addWidget(m_species);
    bar->addSpacing(lightTheme().space);
    bar->addWidget(m_words, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(lightTheme().space, lightTheme().gap, lightTheme().space,
                               lightTheme().gap);
    column->addLayout(bar);
    column->addWidget(m_chart, 1);
    setFocusProxy(m_year);
    connect(m_year, &QComboBox::currentIndexChanged, this, [this] { refresh(); });
    connect(m_species, &QComboBox::currentIndexChanged, this, [this] { refresh(); });
    connect(m_chart, &ChartPanel::pointActivated, this, [this](const QString& id) {
        const auto uuid = Uuid::fromText(id.toStdString());
        const auto genotype =
            uuid ? m_book.view()->genotype(GenotypeId(*uuid)) : std::optional<Index>{};
        if (genotype) {
            m_book.selectGenotype(*genotype);
        }
    });
    for (const auto signal : {&OpenBook::currentTreeChanged, &OpenBook::selectionChanged,
                              &OpenBook::laidBesideChanged, &OpenBook::todayChanged}) {
        connect(&m_book, signal, this, &SeasonPlace::refreshIfSeen);
    }
    connect(&m_book, &OpenBook::viewChanged, this, [this] { refreshIfSeen(); });
}

SeasonPlace::~SeasonPlace() {
    *m_alive = false;
}

void SeasonPlace::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) {
        refresh();
    }
}

void SeasonPlace::refreshIfSeen() {
    m_stale = true;
    if (isVisible()) {
        refresh();
    }
}

QString SeasonPlace::yearText(int year) const {
    const auto& sites = m_book.view()->sites();
    const bool south = !sites.empty() && sites.front().hemisphere == Hemisphere::south;
    return QString::fromStdString(
        label(CropYear{year}, south ? SeasonSide::southern : SeasonSide::northern));
}

void SeasonPlace::fillYears(const std::vector<int>& seasons) {
    const QSignalBlocker quiet(m_year);
    const auto chosen = m_year->currentData();
    m_year->clear();
    for (const int year : seasons) {
        m_year->addItem(yearText(year), year);
    }
    if (m_year->count() == 0) {
        const int year = m_book.today().year();
        m_year->addItem(yearText(year), year);
    }
    const int at = m_year->findData(chosen);
    m_year->setCurrentIndex(std::max(0, at));
}

void SeasonPlace::fillSpecies() {
    const QSignalBlocker quiet(m_species);
    const auto chosen = m_species->currentData();
    m_species->clear();
    m_species->addItem(tr("all"));
    const auto view = m_book.view();
    for (const Species& one : view->species()) {
        const auto& genotypes = view->genotypes();
        const bool grown = std::any_of(genotypes.begin(), genotypes.end(), [&one](const auto& g) {
            return g.benchmark && !g.erased && g.species == one.id;
        });
        if (grown) {
            m_species->addItem(QString::fromStdString(one.name),
                               QString::fromStdString(one.id.uuid.text()));
        }
    }
    m_species->setCurrentIndex(std::max(0, chosen.isValid() ? m_species->findData(chosen) : 0));
}

std::optional<SpeciesId> SeasonPlace::chosenSpecies() const {
    const auto uuid = Uuid::fromText(m_species->currentData().toString().toStdString());
    return uuid ? std::optional(SpeciesId(*uuid)) : std::nullopt;
}

std::vector<Index> SeasonPlace::chosenGenotypes() const {
    constexpr std::size_t kMost = 12;
    const auto view = m_book.view();
    std::vector<Index> genotypes = m_book.laidBeside();
    const auto add = [&genotypes](std::optional<Index> genotype) {
        if (genotype && genotypes.size() < kMost &&
            std::find(genotypes.begin(), genotypes.end(), *genotype) == genotypes.end()) {
            genotypes.push_back(*genotype);
        }
    };
    add(m_book.currentGenotype());
    for (const Index plant : m_book.selection()) {
        add(view->plants()[plant].genotype);
    }
    return genotypes;
}

SeasonChartRequest SeasonPlace::request() const {
    SeasonChartRequest request;
    request.cropYear = CropYear{m_year->currentData().isValid() ? m_year->currentData().toInt()
                                                                : m_book.today().year()};
    request.genotypes = chosenGenotypes();
    request.species = chosenSpecies();
    request.today = m_book.today();
    SeasonChartWords& words = request.words;
    words.title = said(tr("Harvest windows and liking,"));
    words.empty = said(tr("Walk marks and tastings of this crop year will fill this chart."));
    words.day = said(tr("day"));
    words.liking = said(tr("liking as eaten (1 to 9)"));
    words.benchmarks = said(tr("benchmarks"));
    words.selections = said(tr("selected"));
    words.barToBeat = said(tr("bar to beat: the week's best benchmark"));
    words.fairLot = said(tr("fair lot"));
    words.unfairLot = said(tr("unfair or unclear lot"));
    words.today = said(tr("today"));
    words.stillGreen = said(tr("still green"));
    words.seenRipe = said(tr("seen ripe"));
    words.over = said(tr("over"));
    words.scores = said(tr("scores"));
    return request;
}

void SeasonPlace::refresh() {
    m_stale = false;
    if (!m_filling) {
        m_filling = true;
        fillSpecies();
        m_filling = false;
    }
    read();
}

void SeasonPlace::read() {
    const std::uint64_t question = ++m_question;
    const bool yearChosen = m_year->count() > 0;
    const auto work = [view = m_book.view(), asked = request(), yearChosen](const Store& store) {
        Answer answer{seasonsOf(*view, store), ChartSpec{}};
        SeasonChartRequest request = asked;
        if (!yearChosen && !answer.seasons.empty()) {
            request.cropYear = CropYear{answer.seasons.front()};
        }
        answer.chart = seasonChart(*view, store, request);
        return answer;
    };
    if (!m_book.openReader()) {
        take(question, work(m_book.store()));
        return;
    }
    QThreadPool::globalInstance()->start(
        [this, work, question, open = m_book.openReader(), alive = std::weak_ptr<bool>(m_alive)] {
            const auto reader = open();
            auto answer = std::make_shared<Answer>(
                reader ? work(**reader) : Answer{{}, Result<ChartSpec>(reader.problem())});
            QMetaObject::invokeMethod(
                QCoreApplication::instance(),
                [this, question, answer, alive] {
                    if (const auto still = alive.lock(); still && *still) {
                        take(question, *answer);
                    }
                },
                Qt::QueuedConnection);
        });
}

void SeasonPlace::take(std::uint64_t question, const Answer& answer) {
    if (question != m_question) {
        return;
    }
    fillYears(answer.seasons);
    if (!answer.chart) {
        Q_EMIT m_book.problemMet(answer.chart.problem());
        return;
    }
    const auto chosen = chosenGenotypes().size();
    m_words->setText(chosen == 0
                         ? tr("Select a tree to see it against the benchmarks of its weeks.")
                         : tr("%n selected beside the benchmarks; as eaten, not yet adjusted.",
                              nullptr, static_cast<int>(chosen)));
    m_chart->setSpec(*answer.chart);
}

} // namespace pipwright::ui
