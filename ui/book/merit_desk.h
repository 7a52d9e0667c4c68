#pragma once

#include "core/evaluation/merit/book_evaluation.h"
#include "core/evaluation/merit/replay.h"
#include "core/history/change.h"
#include "core/orchard/traits.h"

#include <QObject>
#include <QThreadPool>

#include <cstdint>
#include <memory>
#include <optional>
#include <stop_token>
#include <vector>

namespace pipwright::ui {

class OpenBook;

/// What is asked of the whole book.
struct MeritQuestion {
    std::optional<Date> asOf;     ///< as the book stood on that day; nothing: as it stands
    std::optional<TraitId> trait; ///< ranked by this trait as well
    VerdictChoices choices;
};

/// What the book said to a question, at one position of its journal. Never changes once made.
struct MeritReport {
    MeritQuestion question;
    OrchardView::Pointer view;
    std::int64_t position = 0; ///< of the journal
    Date today;
    std::optional<BookEvaluation> evaluation;
    std::optional<Problem> lack;          ///< why there is no evaluation
    std::optional<MeritModel> traitModel; ///< of question.trait
    std::optional<Problem> traitLack;
    std::optional<RegretTable> regrets; ///< of a question that sets the book back
    int milliseconds = 0;               ///< it took to find out

    [[nodiscard]] const SeedlingVerdict* verdictOn(Index genotype) const {
        return evaluation ? evaluation->verdictOn(genotype) : nullptr;
    }
};
using MeritReportPointer = std::shared_ptr<const MeritReport>;

/// Keeps the evaluation of the open book up to date beside the window. The tastings are read once,
/// when everything else of the book is there, and then carried along by each edit; every edit asks
/// anew, and only the newest question is answered. What was last answered stays at hand, and is
/// stale until the new answer comes. A book that cannot be read twice is read on this thread.
class MeritDesk : public QObject {
    Q_OBJECT

  public:
    explicit MeritDesk(OpenBook& book, MeritQuestion question = {}, QObject* parent = nullptr);
    ~MeritDesk() override;

    /// Null until the first answer.
    [[nodiscard]] const MeritReportPointer& report() const { return m_report; }
    [[nodiscard]] const MeritQuestion& question() const { return m_question; }
    void ask(MeritQuestion question);
    /// The book or the question has moved on since the report.
    [[nodiscard]] bool isStale() const { return m_stale; }
    [[nodiscard]] bool isWorking() const { return m_working; }
    /// Gives up the question that is being worked on; the report stays, stale.
    void stop();

  Q_SIGNALS:
    void reportChanged();
    /// isStale() or isWorking() has changed.
    void stateChanged();

  private:
    /// What is kept between two questions; used by one worker at a time.
    struct Bench;
    struct Task;

    static MeritReport answerTo(const Task& task, const Store& store, Bench& bench,
                                const std::stop_token& stop);
    void heed(const std::vector<Change>& changes);
    void start();
    void take(int number, const MeritReportPointer& report);

    OpenBook& m_book;
    MeritQuestion m_question;
    MeritReportPointer m_report;
    std::shared_ptr<Bench> m_bench;
    std::stop_source m_stopper;
    int m_number = 0; ///< of the newest question
    bool m_stale = true;
    bool m_working = false;
    std::shared_ptr<bool> m_alive = std::make_shared<bool>(true);
    QThreadPool m_worker; ///< a single thread; last, so that it ends first
};

} // namespace pipwright::ui
