#include "ui/season/season_place.h"

#include "core/evaluation/usual_ripening.h"
#include "ui/book/book_words.h"
#include "ui/book/open_book.h"
#include "ui/charts/chart_panel.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/theme.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QStringList>
#include <QThreadPool>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr std::size_t kMostTrees = 24;
constexpr int kSettleMilliseconds = 30; ///< a selection by lasso changes many times

void addOnce(std::vector<Index>& list, const std::optional<Index>& one) {
    if (one && list.size() < kMostTrees &&
        std::find(list.begin(), list.end(), *one) == list.end()) {
        list.push_back(*one);
    }
}

} // namespace

SeasonPlace::SeasonPlace(OpenBook& book, QWidget* parent)
    : QWidget(parent), m_book(book), m_seasons(new QComboBox), m_species(new QComboBox),
      m_trees(new ElidedText), m_without(new FlowText), m_notice(new NoticeBar),
      m_chart(new ChartPanel), m_soon(new QTimer(this)) {
    build();
    m_soon->setSingleShot(true);
    m_soon->setInterval(kSettleMilliseconds);
    connect(m_soon, &QTimer::timeout, this, &SeasonPlace::read);
    connect(m_seasons, &QComboBox::activated, this, [this] {
        m_chosen = m_seasons->currentData().toInt();
        want(false);
    });
    connect(m_species, &QComboBox::activated, this, [this] {
        m_speciesChosen = true;
        want(false);
    });
    connect(m_chart, &ChartPanel::pointActivated, this, &SeasonPlace::activate);
    connect(&book, &OpenBook::viewChanged, this, [this] { want(true); });
    connect(&book, &OpenBook::currentTreeChanged, this, [this] { want(false); });
    connect(&book, &OpenBook::selectionChanged, this, [this] { want(false); });
    connect(&book, &OpenBook::laidBesideChanged, this, [this] { want(false); });
    connect(&book, &OpenBook::todayChanged, this, [this] { want(false); });
}

SeasonPlace::~SeasonPlace() {
    *m_alive = false;
}

void SeasonPlace::build() {
    const Theme& theme = currentTheme();
    m_seasons->setAccessibleName(tr("Crop year"));
    m_species->setAccessibleName(tr("Species of the benchmarks"));
    m_trees->setSecond(true);
    m_without->hide();
    m_notice->hide();
    m_chart->setAccessibleName(tr("Season chart"));
    auto* seasonWord = new QLabel(tr("Crop &year"));
    seasonWord->setBuddy(m_seasons);
    auto* speciesWord = new QLabel(tr("&Species"));
    speciesWord->setBuddy(m_species);
    auto* head = new QHBoxLayout;
    head->setSpacing(theme.space);
    head->addWidget(seasonWord);
    head->addWidget(m_seasons);
    head->addSpacing(theme.space);
    head->addWidget(speciesWord);
    head->addWidget(m_species);
    head->addSpacing(theme.space);
    head->addWidget(m_trees, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(theme.margin, theme.space, theme.margin, theme.space);
    column->setSpacing(theme.space);
    column->addLayout(head);
    column->addWidget(m_without);
    column->addWidget(m_notice);
    column->addWidget(m_chart, 1);
    setFocusProxy(m_seasons);
}

std::optional<int> SeasonPlace::cropYear() const {
    return m_seasons->count() == 0 ? std::nullopt : std::optional(m_seasons->currentData().toInt());
}

std::vector<Index> SeasonPlace::shownGenotypes() const {
    std::vector<Index> shown;
    const OrchardView& view = *m_book.view();
    addOnce(shown, m_book.currentGenotype());
    for (const Index one : m_book.laidBeside()) {
        if (!view.genotypes()[one].benchmark) { // those are there already
            addOnce(shown, one);
        }
    }
    for (const Index plant : m_book.selection()) {
        addOnce(shown, view.plants()[plant].genotype);
    }
    return shown;
}

bool SeasonPlace::isSettled() const {
    return !m_stale && !m_soon->isActive() && m_answered == m_token;
}

void SeasonPlace::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) {
        read();
    }
}

void SeasonPlace::want(bool seasonsToo) {
    m_seasonsStale = m_seasonsStale || seasonsToo;
    m_stale = true;
    if (isVisible()) {
        m_soon->start();
    }
}

SeasonPlace::Question SeasonPlace::question() const {
    Question question;
    question.view = m_book.view();
    question.today = m_book.today();
    question.readSeasons = m_seasonsStale;
    question.chooseSeason = !m_chosen;
    question.seasons = m_known;
    SeasonChartRequest& request = question.request;
    request.cropYear = CropYear{m_chosen.value_or(0)};
    request.genotypes = shownGenotypes();
    request.today = question.today;
    const auto chosen = Uuid::fromText(m_species->currentData().toString().toStdString());
    if (m_species->currentIndex() > 0 && chosen) {
        request.species = SpeciesId(*chosen);
    }
    SeasonChartWords& words = request.words;
    words.title = tr("Harvest windows and liking").toStdString();
    words.empty = tr("Walk marks and tastings of this crop year will fill this chart. Stand at a "
                     "tree and press W for a walk mark, B for a bite.")
                      .toStdString();
    words.day = tr("day").toStdString();
    words.liking = tr("liking as eaten (1 to 9)").toStdString();
    words.benchmarks = tr("benchmarks").toStdString();
    words.selections = tr("selected").toStdString();
    words.barToBeat = tr("bar to beat: the week's best benchmark").toStdString();
    words.fairLot = tr("fair lot").toStdString();
    words.unfairLot = tr("unfair or unclear lot").toStdString();
    words.today = tr("today").toStdString();
    words.stillGreen = tr("still green").toStdString();
    words.seenRipe = tr("seen ripe").toStdString();
    words.over = tr("over").toStdString();
    words.scores = tr("scores").toStdString();
    return question;
}

SeasonPlace::Answer SeasonPlace::answerTo(const Question& question, const Store& store) {
    Answer answer;
    answer.request = question.request;
    std::vector<int> seasons = question.seasons;
    if (question.readSeasons) {
        seasons = seasonsOf(*question.view, store);
        answer.seasons = seasons;
    }
    if (question.chooseSeason) {
        answer.request.cropYear =
            seasonToShow(seasons, question.today, seasonSideOf(*question.view));
    }
    answer.chart = seasonChart(*question.view, store, answer.request);
    return answer;
}

void SeasonPlace::read() {
    m_soon->stop();
    m_stale = false;
    offerSpecies();
    const int token = ++m_token;
    Question asked = question();
    if (!m_book.openReader()) {
        take(token, answerTo(asked, m_book.store()));
        return;
    }
    QThreadPool::globalInstance()->start([asked = std::move(asked), token, this,
                                          openReader = m_book.openReader(),
                                          alive = std::weak_ptr<bool>(m_alive)] {
        const auto reader = openReader();
        Answer answer;
        if (reader) {
            answer = answerTo(asked, **reader);
        } else {
            answer.request = asked.request;
            answer.chart = reader.problem();
        }
        // Carried over by the application object, since this place may be gone.
        QMetaObject::invokeMethod(
            QCoreApplication::instance(),
            [alive, this, token, answer = std::move(answer)] {
                if (const auto still = alive.lock(); still && *still) {
                    take(token, answer);
                }
            },
            Qt::QueuedConnection);
    });
}

void SeasonPlace::take(int token, const Answer& answer) {
    if (token != m_token) {
        return; // another chart was asked for meanwhile
    }
    m_answered = token;
    if (!answer.chart && answer.chart.problem().code == ProblemCode::busy) {
        want(false); // it made way for an edit: asked again
        return;
    }
    if (answer.seasons) {
        m_known = *answer.seasons;
        m_seasonsStale = false;
    }
    if (!answer.chart) {
        m_notice->tell(answer.chart.problem());
        return;
    }
    m_notice->close();
    offerSeasons(answer.request.cropYear.year);
    m_chart->setSpec(*answer.chart);
    QStringList names;
    for (const Index one : answer.request.genotypes) {
        names << QString::fromStdString(m_book.view()->genotypes()[one].called());
    }
    m_trees->setText(names.isEmpty()
                         ? tr("Benchmarks only. Select trees on the map to see them "
                              "beside.")
                         : tr("Beside the benchmarks: %1").arg(names.join(QStringLiteral(", "))));
    m_without->setText(nothingSeenOf(answer));
    m_without->setVisible(!m_without->text().isEmpty());
}

QString SeasonPlace::nothingSeenOf(const Answer& answer) const {
    const OrchardView& view = *m_book.view();
    const int year = answer.request.cropYear.year;
    const QString yearWords = QString::fromStdString(label(CropYear{year}, seasonSideOf(view)));
    QStringList without;
    for (const Index one : answer.request.genotypes) {
        const std::string id = view.genotypes()[one].id.uuid.text();
        const auto isOfIt = [&id](const ChartMark& mark) { return mark.id == id; };
        const bool drawn =
            std::any_of(answer.chart->series.begin(), answer.chart->series.end(),
                        [&isOfIt](const ChartSeries& series) {
                            return std::any_of(series.marks.begin(), series.marks.end(), isOfIt);
                        });
        if (drawn) {
            continue;
        }
        const QString name = QString::fromStdString(view.genotypes()[one].called());
        const auto usual = view.genotypeFacts(one).usualRipeDay;
        without << (usual ? tr("%1 (usually first ripe about %2)")
                                .arg(name, dateText(dateInCalendar(*usual, year)))
                          : tr("%1 (never seen ripe)").arg(name));
    }
    constexpr qsizetype kMostNamed = 4;
    if (without.size() > kMostNamed) {
        const auto more = static_cast<int>(without.size() - kMostNamed);
        without = without.mid(0, kMostNamed);
        without << tr("%n more", nullptr, more);
    }
    return without.isEmpty()
               ? QString()
               : tr("Nothing walked or tasted in %1 of: %2. W at the tree marks what you see, B "
                    "is a bite.")
                     .arg(yearWords, without.join(QStringLiteral(", ")));
}

void SeasonPlace::offerSeasons(int chosen) {
    const QSignalBlocker quiet(m_seasons);
    const SeasonSide side = seasonSideOf(*m_book.view());
    m_seasons->clear();
    std::vector<int> years = m_known;
    if (std::find(years.begin(), years.end(), chosen) == years.end()) {
        years.push_back(chosen);
        std::sort(years.rbegin(), years.rend());
    }
    for (const int year : years) {
        m_seasons->addItem(QString::fromStdString(label(CropYear{year}, side)), year);
    }
    m_seasons->setCurrentIndex(m_seasons->findData(chosen));
}

void SeasonPlace::offerSpecies() {
    const OrchardView& view = *m_book.view();
    const auto keyOfSpecies = [](SpeciesId id) { return QString::fromStdString(id.uuid.text()); };
    QString chosen = m_species->currentData().toString();
    if (!m_speciesChosen) { // follow the tree
        const auto current = m_book.currentGenotype();
        const auto species = current ? view.genotypes()[*current].species : std::nullopt;
        chosen = species ? keyOfSpecies(*species) : chosen;
    }
    std::vector<SpeciesId> withBenchmarks;
    for (const GenotypeEntry& entry : view.genotypes()) {
        const bool counts = entry.benchmark && !entry.erased && entry.species;
        if (counts && std::find(withBenchmarks.begin(), withBenchmarks.end(), *entry.species) ==
                          withBenchmarks.end()) {
            withBenchmarks.push_back(*entry.species);
        }
    }
    const QSignalBlocker quiet(m_species);
    m_species->clear();
    m_species->addItem(tr("all species"), QString());
    for (const Species& species : view.species()) {
        if (std::find(withBenchmarks.begin(), withBenchmarks.end(), species.id) !=
            withBenchmarks.end()) {
            m_species->addItem(speciesName(species), keyOfSpecies(species.id));
        }
    }
    m_species->setCurrentIndex(std::max(0, m_species->findData(chosen)));
}

void SeasonPlace::activate(const QString& id) {
    const auto uuid = Uuid::fromText(id.toStdString());
    const auto genotype = uuid ? m_book.view()->genotype(GenotypeId(*uuid)) : std::nullopt;
    if (genotype) {
        m_book.selectGenotype(*genotype);
    }
}

} // namespace pipwright::ui
