#include "ui/merit/merit_detail.h"

#include "core/evaluation/merit/ladder_odds.h"

#include <QCoreApplication>
#include <QThreadPool>

namespace pipwright::ui {

namespace {

constexpr int kTastersOfAYear = 3;

void holdAgainstRung(MeritDetail& detail) {
    detail.reference = detail.question->reference;
    const auto ahead = detail.model->difference(detail.genotype, *detail.reference);
    if (ahead) {
        detail.ahead = *ahead;
        detail.above = chanceAboveZero(ahead->value, ahead->standardError * ahead->standardError);
    }
}

void askWhatSettles(MeritDetail& detail) {
    const BookEvaluation& evaluation = *detail.report->evaluation;
    const auto plans = usualPlans();
    auto powers = settlingPowers(evaluation.model, *detail.question, plans);
    if (!powers) {
        return;
    }
    detail.next = bestNextSitting(*powers);
    detail.powers = std::move(*powers);
    const auto& thresholds = detail.report->question.choices.thresholds;
    auto years = yearsToSettle(evaluation.model, *detail.question, thresholds.nameAboveBest,
                               kTastersOfAYear);
    if (years) {
        detail.years = std::move(*years);
    }
}

MeritDetail detailOf(const MeritReportPointer& report, Index genotype,
                     const MeritOptions& options) {
    MeritDetail detail;
    detail.report = report;
    detail.genotype = genotype;
    detail.options = options;
    const BookEvaluation& evaluation = *report->evaluation;
    const MeritModel& whole = report->traitModel ? *report->traitModel : evaluation.model;
    auto model = whole.switched(options);
    if (!model) {
        detail.lack = model.problem();
        return detail;
    }
    detail.model = std::move(*model);
    auto waterfall = detail.model->waterfall(genotype);
    if (waterfall) {
        detail.waterfall = std::move(*waterfall);
        detail.records = correctedRecords(*detail.model, genotype);
    } else {
        detail.lack = waterfall.problem();
    }
    const SeedlingVerdict* verdict = report->verdictOn(genotype);
    if (verdict != nullptr && !report->traitModel) {
        detail.question =
            openQuestion(*verdict, report->question.choices.thresholds, evaluation.cropYear);
    }
    if (detail.question) {
        holdAgainstRung(detail);
        askWhatSettles(detail);
    }
    return detail;
}

} // namespace

MeritDetailReader::MeritDetailReader(QObject* parent) : QObject(parent) {}

MeritDetailReader::~MeritDetailReader() {
    *m_alive = false;
}

void MeritDetailReader::ask(const MeritReportPointer& report, Index genotype,
                            const MeritOptions& options) {
    const int number = ++m_number;
    m_working = true;
    QThreadPool::globalInstance()->start(
        [this, number, report, genotype, options, alive = std::weak_ptr<bool>(m_alive)] {
            auto detail = std::make_shared<const MeritDetail>(detailOf(report, genotype, options));
            // Carried over by the application object, since this one may be gone.
            QMetaObject::invokeMethod(
                QCoreApplication::instance(),
                [alive, this, number, detail] {
                    const auto still = alive.lock();
                    if (still && *still && number == m_number) {
                        m_working = false;
                        Q_EMIT ready(detail);
                    }
                },
                Qt::QueuedConnection);
        });
}

} // namespace pipwright::ui
