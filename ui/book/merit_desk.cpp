#include "ui/book/merit_desk.h"

#include "ui/book/open_book.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QTimer>

#include <mutex>
#include <utility>

namespace pipwright::ui {

struct MeritDesk::Bench {
    std::optional<TastingLedger> ledger;
    std::mutex guard;            ///< of what follows
    std::vector<Change> waiting; ///< not yet in the ledger

    void add(const std::vector<Change>& changes) {
        const std::scoped_lock lock(guard);
        waiting.insert(waiting.end(), changes.begin(), changes.end());
    }
    Outcome bringUpToDate(const Store& store, const std::stop_token& stop) {
        std::vector<Change> changes;
        {
            const std::scoped_lock lock(guard);
            changes = std::exchange(waiting, {});
        }
        if (ledger) {
            if (auto done = ledger->refresh(changes, store); !done) {
                ledger.reset(); // half taken over: read anew next time
                return done;
            }
            return {};
        }
        auto read = TastingLedger::read(store, stop);
        if (!read) {
            return read.problem();
        }
        ledger = std::move(*read);
        return {};
    }
};

struct MeritDesk::Task {
    MeritQuestion question;
    OrchardView::Pointer view;
    std::int64_t position = 0;
    Date today;
};

namespace {

void askTrait(MeritReport& report, const Store& store, const std::stop_token& stop) {
    auto records =
        observedRecords(*report.view, store, *report.question.trait, report.question.asOf);
    auto model = records ? MeritModel::fit(*report.view, std::move(*records), {}, stop)
                         : Result<MeritModel>(records.problem());
    if (model) {
        report.traitModel = std::move(*model);
    } else {
        report.traitLack = model.problem();
    }
}

void askRegrets(MeritReport& report, const Store& store, const TastingLedger& ledger,
                const std::stop_token& stop) {
    EvaluationRequest now;
    now.day = report.today;
    now.choices = report.question.choices;
    const auto today = evaluateBook(*report.view, store, ledger, now, stop);
    if (!today) {
        return;
    }
    auto regrets = regretTable(*report.evaluation, *today, report.question.choices.thresholds);
    if (regrets) {
        report.regrets = std::move(*regrets);
    }
}

} // namespace

MeritDesk::MeritDesk(OpenBook& book, MeritQuestion question, QObject* parent)
    : QObject(parent), m_book(book), m_question(std::move(question)),
      m_bench(std::make_shared<Bench>()) {
    m_worker.setMaxThreadCount(1);
    connect(&book, &OpenBook::viewChanged, this, &MeritDesk::heed);
    connect(&book, &OpenBook::todayChanged, this, [this] { ask(m_question); });
    // After the window has been painted, and not before the evidence is there.
    QTimer::singleShot(0, this, [this] {
        if (m_book.view()->hasEvidence() && m_number == 0) {
            start();
        }
    });
}

MeritDesk::~MeritDesk() {
    *m_alive = false;
    m_stopper.request_stop();
}

void MeritDesk::ask(MeritQuestion question) {
    m_question = std::move(question);
    start();
}

void MeritDesk::stop() {
    m_stopper.request_stop();
    ++m_number;
    if (std::exchange(m_working, false)) {
        Q_EMIT stateChanged();
    }
}

void MeritDesk::heed(const std::vector<Change>& changes) {
    m_bench->add(changes);
    start();
}

MeritReport MeritDesk::answerTo(const Task& task, const Store& store, Bench& bench,
                                const std::stop_token& stop) {
    QElapsedTimer clock;
    clock.start();
    MeritReport report;
    report.question = task.question;
    report.view = task.view;
    report.position = task.position;
    report.today = task.today;
    if (auto done = bench.bringUpToDate(store, stop); !done) {
        report.lack = done.problem();
        return report;
    }
    EvaluationRequest request;
    request.day = task.question.asOf.value_or(task.today);
    request.asItStood = task.question.asOf.has_value();
    request.choices = task.question.choices;
    auto evaluation = evaluateBook(*task.view, store, *bench.ledger, request, stop);
    if (evaluation) {
        report.evaluation = std::move(*evaluation);
    } else {
        report.lack = evaluation.problem();
    }
    if (task.question.trait && !stop.stop_requested()) {
        askTrait(report, store, stop);
    }
    if (request.asItStood && report.evaluation && !stop.stop_requested()) {
        askRegrets(report, store, *bench.ledger, stop);
    }
    report.milliseconds = static_cast<int>(clock.elapsed());
    return report;
}

void MeritDesk::start() {
    if (!m_book.view()->hasEvidence()) {
        return; // usual ripening days come with it; it tells
    }
    m_stopper.request_stop();
    m_stopper = {};
    const int number = ++m_number;
    Task task{m_question, m_book.view(), m_book.store().position(), m_book.today()};
    m_stale = true;
    m_working = true;
    Q_EMIT stateChanged();
    if (!m_book.openReader()) {
        // Not at once: an edit must not wait for it, and several edits are answered together.
        QTimer::singleShot(0, this, [this, number, task = std::move(task)] {
            if (number == m_number) {
                take(number, std::make_shared<const MeritReport>(
                                 answerTo(task, m_book.store(), *m_bench, {})));
            }
        });
        return;
    }
    m_worker.start([this, number, task = std::move(task), bench = m_bench,
                    openReader = m_book.openReader(), stop = m_stopper.get_token(),
                    alive = std::weak_ptr<bool>(m_alive)] {
        if (stop.stop_requested()) {
            return;
        }
        MeritReport report;
        const auto reader = openReader();
        if (reader) {
            report = answerTo(task, **reader, *bench, stop);
        } else {
            report.question = task.question;
            report.view = task.view;
            report.lack = reader.problem();
        }
        if (stop.stop_requested()) {
            return;
        }
        // Carried over by the application object, since this one may be gone.
        QMetaObject::invokeMethod(
            QCoreApplication::instance(),
            [alive, this, number, report = std::make_shared<const MeritReport>(std::move(report))] {
                if (const auto still = alive.lock(); still && *still) {
                    take(number, report);
                }
            },
            Qt::QueuedConnection);
    });
}

void MeritDesk::take(int number, const MeritReportPointer& report) {
    if (number != m_number) {
        return; // another question was asked meanwhile
    }
    if (report->lack && report->lack->code == ProblemCode::busy) { // it made way for an edit
        start();
        return;
    }
    m_report = report;
    m_stale = false;
    m_working = false;
    Q_EMIT reportChanged();
    Q_EMIT stateChanged();
}

} // namespace pipwright::ui
