#include "ui/tree/bite_form.h"

#include "core/evaluation/season_chart.h"
#include "core/evaluation/usual_ripening.h"
#include "ui/book/open_book.h"
#include "ui/book/orchard_words.h"
#include "ui/tree/condition_fields.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/number_text.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

Result<BiteWords> readBite(const QString& typed) {
    static const QRegularExpression numberFirst(
        QStringLiteral("^\\s*(\\d+)(?:[.,](\\d+))?(h)?(?=\\s|$|[,;:])[,;:]?\\s*(.*)$"),
        QRegularExpression::CaseInsensitiveOption | QRegularExpression::DotMatchesEverythingOption);
    const auto match = numberFirst.match(typed);
    if (!match.hasMatch()) {
        return BiteWords{std::nullopt, typed.trimmed()};
    }
    const bool half = !match.captured(3).isEmpty();
    double liking = (match.captured(1) + QLatin1Char('.') +
                     (match.captured(2).isEmpty() ? QStringLiteral("0") : match.captured(2)))
                        .toDouble();
    const bool doubled = half && !match.captured(2).isEmpty();
    liking += half ? 0.5 : 0.0;
    if (doubled || liking < 1 || liking > 9 || std::fmod(liking * 2, 1.0) != 0.0) {
        return missing(BiteForm::tr("\"%1\" is not a liking.")
                           .arg(typed.trimmed().section(QLatin1Char(' '), 0, 0)),
                       BiteForm::tr("Type 1 to 9, halves allowed, as 7, 7.5 or 7h; words go behind "
                                    "it."));
    }
    return BiteWords{liking, match.captured(4).trimmed()};
}

BiteForm::BiteForm(OpenBook& book, QWidget* parent)
    : EntryForm(book, parent), m_line(new QLineEdit(this)),
      m_understood(new FlowText({}, FlowText::Weight::small, this)),
      m_early(new FlowText({}, FlowText::Weight::strong, this)),
      m_fields(new ConditionFields(ConditionFields::Asked::bite, this)),
      m_taster(new QComboBox(this)), m_carried(new QWidget(this)),
      m_carriedWords(new FlowText({}, FlowText::Weight::small, m_carried)) {
    m_line->setAccessibleName(tr("Liking, then words"));
    m_line->setPlaceholderText(tr("7.5 crisp, sharp, aniseed"));
    m_taster->setAccessibleName(tr("Taster"));
    auto* another = new QPushButton(tr("Clear"), m_carried);
    another->setAccessibleName(tr("Clear the condition taken over from the last bite"));
    auto* carried = new QHBoxLayout(m_carried);
    carried->setContentsMargins(0, 0, 0, 0);
    carried->addWidget(m_carriedWords, 1);
    carried->addWidget(another);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(m_line);
    layout->addWidget(m_understood);
    layout->addWidget(m_early);
    // Above what may have to be scrolled: it is read before the fruit is bitten.
    layout->addWidget(new FlowText(
        tr("Sprayed fruit: not before its waiting time is over. Who gets an itching mouth or "
           "throat from raw fruit should not taste; with trouble breathing, call for help at "
           "once."),
        FlowText::Weight::small, this));
    layout->addWidget(m_carried);
    layout->addWidget(m_fields);
    layout->addWidget(m_taster);
    m_carried->hide();
    connect(m_line, &QLineEdit::textChanged, this, &BiteForm::understand);
    connect(m_fields, &ConditionFields::changed, this, &BiteForm::understand);
    connect(another, &QPushButton::clicked, this, [this] {
        m_fields->clear();
        m_carried->hide();
        m_line->setFocus(Qt::OtherFocusReason);
    });
    connect(&book, &OpenBook::viewChanged, this, &BiteForm::heed);
    understand();
}

QString BiteForm::title(const QString& called) const {
    return tr("Bite of %1").arg(called);
}

void BiteForm::begin(const EntryTarget& target) {
    const auto& genotype = target.trees.front().genotype;
    m_genotype = genotype ? m_book.view()->genotype(*genotype) : std::nullopt;
    const QVariant last = m_taster->currentData();
    m_taster->clear();
    int chosen = 0;
    for (const Person& person : m_book.view()->persons()) {
        if (!person.tastes && person.id != m_book.person()) {
            continue;
        }
        const QString id = QString::fromStdString(person.id.uuid.text());
        m_taster->addItem(tr("tasted by %1").arg(QString::fromStdString(person.name)), id);
        const bool same = last.isValid() ? last == id : person.id == m_book.person();
        chosen = same ? m_taster->count() - 1 : chosen;
    }
    m_taster->setCurrentIndex(m_taster->count() > 0 ? chosen : -1);
    const bool carries = !m_lastTree.isEmpty() && m_fields->anyChosen();
    m_carriedWords->setText(
        tr("The condition below is the one of your last bite (%1): change what differs.")
            .arg(m_lastTree));
    m_carried->setVisible(carries);
    understand();
}

QWidget* BiteForm::firstField() const {
    return m_line;
}

void BiteForm::heedDay(const std::optional<Date>& day) {
    m_day = day;
    understand();
}

QString BiteForm::earlyWords() const {
    constexpr int kDaysAhead = 14; // two weeks: more than an early year or a warm wall explains
    const auto condition = m_fields->condition(m_day.value_or(m_book.today()));
    if (!m_genotype || !m_day || !condition || condition->ripeness < Ripeness::earlyPrime) {
        return {};
    }
    // What ripened in a store says nothing of the tree.
    const bool offTheTree =
        condition->storage == StoragePath::none || condition->storage == StoragePath::unknown;
    const auto usual = m_book.view()->genotypeFacts(*m_genotype).usualRipeDay;
    if (!offTheTree || !usual) {
        return {};
    }
    const CropYear year = proposedCropYear(*m_day, seasonSideOf(*m_book.view()), CropRecord::fruit);
    const Date ripe = dateInCalendar(*usual, year.year);
    const int ahead = daysBetween(*m_day, ripe);
    if (ahead < kDaysAhead) {
        return {};
    }
    return tr("\"%1\" %n day(s) before it is usually first ripe (%2): look again at tree, day and "
              "fruit. Damage ripens fruit early too.",
              nullptr, ahead)
        .arg(ripenessWord(condition->ripeness), dateText(ripe));
}

Fairness BiteForm::fairness() const {
    Lot lot;
    // Which day it was eaten does not matter for how fair a test it is.
    if (const auto condition = m_fields->condition(m_book.today())) {
        putCondition(*condition, lot);
    }
    return fairnessOf(lot);
}

void BiteForm::understand() {
    const auto bite = readBite(m_line->text());
    if (!bite) {
        m_understood->setText(QString::fromStdString(bite.problem().sentence()));
    } else if (bite->liking) {
        m_understood->setText(tr("liking %1 of 9 as eaten; as a test: %2")
                                  .arg(numberText(*bite->liking, 1), fairnessWords(fairness())));
    } else {
        m_understood->setText(tr("Liking 1 to 9 first (7, 7.5 or 7h), then words. Enter saves."));
    }
    m_early->setText(earlyWords());
    m_early->setVisible(!m_early->text().isEmpty());
    m_line->setAccessibleDescription(
        (m_understood->text() + QLatin1Char(' ') + m_early->text()).trimmed());
}

Result<ChangeSet> BiteForm::edits(const EntryTarget& target, const EditContext& context) {
    const auto bite = readBite(m_line->text());
    if (!bite) {
        return bite.problem();
    }
    if (!bite->liking && bite->words.isEmpty()) {
        return missing(tr("The bite has neither liking nor words."),
                       tr("Type 1 to 9, then words, then Enter."));
    }
    const auto taster = Uuid::fromText(m_taster->currentData().toString().toStdString());
    if (!taster) {
        return missing(tr("The book knows nobody who tastes."),
                       tr("Enter yourself as a taster in the book first."));
    }
    const auto condition = m_fields->condition(context.day);
    if (!condition) {
        return condition.problem();
    }
    const EditedTree& tree = target.trees.front();
    m_saving = QString::fromStdString(tree.code);
    const BiteScore score{PersonId(*taster), bite->liking, Verdict::unknown,
                          bite->words.toStdString()};
    ChangeSet set = biteOf(tree, *condition, score, context);
    for (const Change& change : set.changes) {
        if (change.kind == Kind::lot) {
            m_saveLot = change.record;
        }
    }
    return set;
}

QString BiteForm::confirmation() const {
    const Fairness fair = fairness();
    if (fair.fair()) {
        const QString kept = tr("Bite of %1 kept: a fair test.").arg(m_saving);
        return (kept + QLatin1Char(' ') + earlyWords()).trimmed();
    }
    QStringList reasons;
    for (const Unfairness reason : fair.reasons) {
        reasons << unfairnessWord(reason);
    }
    const QString list = reasons.join(QStringLiteral(", "));
    return fair.unclear ? tr("Bite of %1 kept; whether it is a fair test stays unclear: %2.")
                              .arg(m_saving, list)
                        : tr("Bite of %1 kept, but not as a fair test: %2.").arg(m_saving, list);
}

void BiteForm::saved() {
    m_line->clear();
    m_lastTree = m_saving;
    m_lastLot = m_saveLot;
}

void BiteForm::heed(const std::vector<Change>& changes) {
    const bool takenBack =
        m_lastLot && std::any_of(changes.begin(), changes.end(), [this](const Change& change) {
            return change.what == ChangeWhat::erased && change.record == *m_lastLot;
        });
    if (takenBack) {
        m_lastTree.clear();
        m_lastLot.reset();
        m_fields->clear();
        m_carried->hide();
    }
}

} // namespace pipwright::ui
