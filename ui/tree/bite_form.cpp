#include "ui/tree/bite_form.h"

#include "ui/book/open_book.h"
#include "ui/book/orchard_words.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/number_text.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QRegularExpression>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <cmath>

namespace pipwright::ui {

namespace {

template <typename Enum>
Enum chosenOf(const ChipRow* row) {
    const auto key = row->chosen();
    return key ? fromKey<Enum>(key->toStdString()).value_or(Enum::unknown) : Enum::unknown;
}

template <typename Enum>
Chip chipOf(Enum value, const QString& word, const char* letter) {
    const std::string_view key = keyOf(value);
    return {QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size())),
            word,
            QString::fromLatin1(letter),
            {}};
}

} // namespace

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
      m_understood(new FlowText({}, FlowText::Weight::small, this)), m_taster(new QComboBox(this)),
      m_origin(new ChipRow(tr("How it left the tree"), this)),
      m_soundness(new ChipRow(tr("Sound or hurt"), this)),
      m_ripeness(new ChipRow(tr("Ripeness as eaten"), this)),
      m_storage(new ChipRow(tr("Where it was kept"), this)), m_days(new QSpinBox(this)),
      m_caution(new FlowText({}, FlowText::Weight::strong, this)) {
    m_line->setAccessibleName(tr("Liking, then words"));
    m_line->setPlaceholderText(tr("7.5 crisp, sharp, aniseed"));
    m_taster->setAccessibleName(tr("Taster"));
    m_days->setAccessibleName(tr("Days off the tree"));
    m_days->setRange(0, 400);
    m_days->setSuffix(tr(" days"));
    fillChips();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(m_line);
    layout->addWidget(m_understood);
    const auto addRow = [this, layout](const QString& label, QWidget* row) {
        layout->addWidget(new FlowText(label, FlowText::Weight::small, this));
        layout->addWidget(row);
    };
    addRow(tr("Left the tree"), m_origin);
    addRow(tr("Sound or hurt"), m_soundness);
    layout->addWidget(m_caution);
    addRow(tr("As eaten"), m_ripeness);
    addRow(tr("Kept"), m_storage);
    auto* last = new QHBoxLayout;
    last->addWidget(m_days);
    last->addWidget(m_taster, 1);
    layout->addLayout(last);
    layout->addWidget(new FlowText(
        tr("Sprayed fruit: not before its waiting time is over. Who gets an itching mouth or "
           "throat "
           "from raw fruit should not taste; with trouble breathing, call for help at once."),
        FlowText::Weight::small, this));
    connect(m_line, &QLineEdit::textChanged, this, &BiteForm::understand);
    connect(m_origin, &ChipRow::choiceMade, this, &BiteForm::refreshCaution);
    connect(m_soundness, &ChipRow::choiceMade, this, &BiteForm::refreshCaution);
    connect(m_storage, &ChipRow::choiceMade, this, [this](const QString& key) {
        m_days->setEnabled(key != QStringLiteral("none") && key != QStringLiteral("unknown"));
    });
    m_days->setEnabled(false);
    understand();
    refreshCaution();
}

void BiteForm::fillChips() {
    m_origin->setChips({chipOf(Origin::pickedRipe, originWord(Origin::pickedRipe), "p"),
                        chipOf(Origin::pickedEarly, tr("early", "picked"), "e"),
                        chipOf(Origin::shaken, tr("shaken"), "s"),
                        chipOf(Origin::droppedToday, tr("dropped today"), "d"),
                        chipOf(Origin::onGroundLonger, tr("on the ground"), "g"),
                        chipOf(Origin::unknown, originWord(Origin::unknown), "?")});
    m_soundness->setChips({chipOf(Soundness::sound, soundnessWord(Soundness::sound), "s"),
                           chipOf(Soundness::insect, tr("insect"), "i"),
                           chipOf(Soundness::bird, soundnessWord(Soundness::bird), "p"),
                           chipOf(Soundness::split, soundnessWord(Soundness::split), "x"),
                           chipOf(Soundness::rot, tr("rot"), "r"),
                           chipOf(Soundness::unknown, soundnessWord(Soundness::unknown), "?")});
    std::vector<Chip> ripeness;
    static constexpr std::array kLetters = {"?", "1", "2", "3", "4", "5", "6", "7"};
    for (const auto& word : Words<Ripeness>::words) {
        const char* letter = kLetters[static_cast<std::size_t>(word.value)];
        ripeness.push_back(chipOf(word.value, ripenessWord(word.value), letter));
    }
    std::rotate(ripeness.begin(), ripeness.begin() + 1, ripeness.end()); // not known goes last
    m_ripeness->setChips(ripeness);
    m_storage->setChips({chipOf(StoragePath::none, storageWord(StoragePath::none), "t"),
                         chipOf(StoragePath::counter, storageWord(StoragePath::counter), "c"),
                         chipOf(StoragePath::fridge, storageWord(StoragePath::fridge), "f"),
                         chipOf(StoragePath::cellar, storageWord(StoragePath::cellar), "k"),
                         chipOf(StoragePath::unknown, storageWord(StoragePath::unknown), "?")});
}

QString BiteForm::title(const QString& called) const {
    return tr("Bite of %1").arg(called);
}

void BiteForm::begin(const EntryTarget&) {
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
}

QWidget* BiteForm::firstField() const {
    return m_line;
}

void BiteForm::understand() {
    const auto bite = readBite(m_line->text());
    if (!bite) {
        m_understood->setText(QString::fromStdString(bite.problem().sentence()));
    } else if (bite->liking) {
        m_understood->setText(tr("liking %1 of 9 as eaten").arg(numberText(*bite->liking, 1)));
    } else {
        m_understood->setText(tr("Liking 1 to 9 first (7, 7.5 or 7h), then words. Enter saves."));
    }
    m_line->setAccessibleDescription(m_understood->text());
}

void BiteForm::refreshCaution() {
    const auto origin = chosenOf<Origin>(m_origin);
    const auto soundness = chosenOf<Soundness>(m_soundness);
    const bool fallen = origin == Origin::droppedToday || origin == Origin::onGroundLonger;
    const bool hurt = soundness != Soundness::sound && soundness != Soundness::unknown;
    QString words;
    if (soundness == Soundness::rot) {
        words =
            tr("Rotten fruit can hold a poison that cutting out does not remove: do not eat it.");
    } else if (fallen) {
        words =
            tr("Fruit from the ground can carry germs of animal droppings: wash it, cut it, and "
               "leave it be if you are pregnant, ill, very young or old. Never juice it raw.");
    } else if (hurt) {
        words = tr("Hurt fruit: cut well around the damage, and spit it out if it tastes musty.");
    }
    m_caution->setText(words);
    m_caution->setVisible(!words.isEmpty());
}

LotCondition BiteForm::condition(Date day) const {
    LotCondition condition;
    condition.origin = chosenOf<Origin>(m_origin);
    condition.soundness = chosenOf<Soundness>(m_soundness);
    condition.ripeness = chosenOf<Ripeness>(m_ripeness);
    condition.storage = chosenOf<StoragePath>(m_storage);
    const std::optional<std::int64_t> days = m_days->value();
    switch (condition.storage) {
    case StoragePath::counter:
        condition.daysOnCounter = days;
        break;
    case StoragePath::fridge:
        condition.daysInFridge = days;
        break;
    case StoragePath::cellar:
        condition.daysInCellar = days;
        break;
    case StoragePath::none:
        condition.taken = day;
        return condition;
    case StoragePath::chained:
    case StoragePath::unknown:
        return condition;
    }
    condition.taken = day.plusDays(-m_days->value());
    return condition;
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
    const BiteScore score{PersonId(*taster), bite->liking, Verdict::unknown,
                          bite->words.toStdString()};
    return biteOf(target.trees.front(), condition(context.day), score, context);
}

void BiteForm::saved() {
    m_line->clear();
}

} // namespace pipwright::ui
