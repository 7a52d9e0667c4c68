#include "ui/tree/condition_fields.h"

#include "core/history/sitting_edits.h"
#include "ui/book/orchard_words.h"
#include "ui/tree/entry_form.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/flow_text.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace pipwright::ui {

namespace {

constexpr int kMostDays = 400;

template <typename Enum>
QString keyText(Enum value) {
    const std::string_view key = keyOf(value);
    return QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size()));
}

template <typename Enum>
Enum chosenOf(const ChipRow* row) {
    const auto key = row->chosen();
    return key ? fromKey<Enum>(key->toStdString()).value_or(Enum::unknown) : Enum::unknown;
}

template <typename Enum>
Chip chipOf(Enum value, const QString& word, const char* letter) {
    return {keyText(value), word, QString::fromLatin1(letter), {}};
}

QString stayWords(QChar place, int days) {
    if (place == QLatin1Char('c')) {
        return days < 0 ? ConditionFields::tr("on the counter")
                        : ConditionFields::tr("%n day(s) on the counter", nullptr, days);
    }
    if (place == QLatin1Char('f')) {
        return days < 0 ? ConditionFields::tr("in the fridge")
                        : ConditionFields::tr("%n day(s) in the fridge", nullptr, days);
    }
    return days < 0 ? ConditionFields::tr("in the cellar")
                    : ConditionFields::tr("%n day(s) in the cellar", nullptr, days);
}

} // namespace

QString pathWords(const StoredPath& path) {
    const QString typed = QString::fromStdString(storagePathText(path)).toLower();
    QStringList stays;
    for (qsizetype at = 0; at < typed.size();) {
        const QChar place = typed[at++];
        if (!place.isLetter()) {
            continue;
        }
        qsizetype end = at;
        while (end < typed.size() && typed[end].isDigit()) {
            ++end;
        }
        stays << stayWords(place, end > at ? typed.mid(at, end - at).toInt() : -1);
        at = end;
    }
    return stays.join(ConditionFields::tr(", then ", "between two places fruit was kept"));
}

ConditionFields::ConditionFields(Asked asked, QWidget* parent)
    : QWidget(parent), m_origin(new ChipRow(tr("How it left the tree"), this)),
      m_soundness(new ChipRow(tr("Sound or hurt"), this)),
      m_ripeness(new ChipRow(tr("Ripeness as eaten"), this)),
      m_storage(new ChipRow(tr("Where it was kept"), this)),
      m_bag(new ChipRow(tr("Bag it grew in"), this)), m_days(new QSpinBox(this)),
      m_path(new QLineEdit(this)), m_pathMeaning(new FlowText({}, FlowText::Weight::small, this)),
      m_caution(new FlowText({}, FlowText::Weight::strong, this)) {
    m_rows = {m_origin, m_soundness, m_ripeness, m_storage};
    if (asked == Asked::alsoBag) {
        m_rows.push_back(m_bag);
    }
    m_bag->setVisible(asked == Asked::alsoBag);
    m_days->setAccessibleName(tr("Days off the tree"));
    m_days->setRange(0, kMostDays);
    m_days->setSuffix(tr(" days"));
    m_path->setAccessibleName(tr("Places one after another, with the days in each"));
    m_path->setPlaceholderText(tr("f5 c2: fridge 5 days, then counter 2"));
    fillChips();
    layOut();
    for (ChipRow* row : m_rows) {
        connect(row, &ChipRow::choiceMade, this, &ConditionFields::refresh);
    }
    connect(m_days, &QSpinBox::valueChanged, this, &ConditionFields::refresh);
    connect(m_path, &QLineEdit::textChanged, this, &ConditionFields::refresh);
    refresh();
}

void ConditionFields::layOut() {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    const auto addRow = [this, layout](const QString& label, QWidget* row) {
        layout->addWidget(new FlowText(label, FlowText::Weight::small, this));
        layout->addWidget(row);
    };
    addRow(tr("Left the tree"), m_origin);
    addRow(tr("Sound or hurt"), m_soundness);
    layout->addWidget(m_caution);
    addRow(tr("As eaten"), m_ripeness);
    addRow(tr("Kept"), m_storage);
    auto* kept = new QHBoxLayout;
    kept->addWidget(m_days);
    kept->addWidget(m_path, 1);
    layout->addLayout(kept);
    layout->addWidget(m_pathMeaning);
    if (m_rows.back() == m_bag) {
        addRow(tr("Bag it grew in"), m_bag);
    }
}

void ConditionFields::fillChips() {
    // One letter, one meaning in the whole panel; "?" is "not known" of the row one is in.
    m_origin->setChips({chipOf(Origin::pickedRipe, originWord(Origin::pickedRipe), "t"),
                        chipOf(Origin::pickedEarly, tr("early", "picked"), "e"),
                        chipOf(Origin::shaken, tr("shaken"), "h"),
                        chipOf(Origin::droppedToday, tr("dropped today"), "d"),
                        chipOf(Origin::onGroundLonger, tr("on the ground"), "g"),
                        chipOf(Origin::unknown, originWord(Origin::unknown), "?")});
    m_soundness->setChips({chipOf(Soundness::sound, soundnessWord(Soundness::sound), "s"),
                           chipOf(Soundness::insect, tr("insect"), "i"),
                           chipOf(Soundness::bird, soundnessWord(Soundness::bird), "b"),
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
    m_storage->setChips({chipOf(StoragePath::none, storageWord(StoragePath::none), "0"),
                         chipOf(StoragePath::counter, storageWord(StoragePath::counter), "c"),
                         chipOf(StoragePath::fridge, storageWord(StoragePath::fridge), "f"),
                         chipOf(StoragePath::cellar, storageWord(StoragePath::cellar), "l"),
                         chipOf(StoragePath::chained, tr("one after another"), "m"),
                         chipOf(StoragePath::unknown, storageWord(StoragePath::unknown), "?")});
    m_bag->setChips({chipOf(Bag::none, bagWord(Bag::none), "n"),
                     chipOf(Bag::paper, tr("paper", "bag"), "p"),
                     chipOf(Bag::organza, tr("organza", "bag"), "o"),
                     chipOf(Bag::clear, tr("clear", "bag"), "z"),
                     chipOf(Bag::unknown, bagWord(Bag::unknown), "?")});
}

void ConditionFields::keyPressEvent(QKeyEvent* event) {
    // Comes here when the row that has the focus does not know the letter.
    const bool plain = (event->modifiers() & ~Qt::ShiftModifier) == Qt::NoModifier;
    const QString letter = event->text();
    if (plain && letter != QStringLiteral("?")) {
        for (ChipRow* row : m_rows) {
            if (row->takeLetter(letter)) {
                return;
            }
        }
    }
    QWidget::keyPressEvent(event);
}

QString ConditionFields::cautionWords() const {
    const auto origin = chosenOf<Origin>(m_origin);
    const auto soundness = chosenOf<Soundness>(m_soundness);
    if (soundness == Soundness::rot) {
        return tr("Rotten fruit can hold a poison that cutting out does not remove: do not eat "
                  "it.");
    }
    if (origin == Origin::droppedToday || origin == Origin::onGroundLonger) {
        return tr("Fruit from the ground can carry germs of animal droppings: wash it, cut it, and "
                  "leave it be if you are pregnant, ill, very young or old. Never juice it raw.");
    }
    if (soundness != Soundness::sound && soundness != Soundness::unknown) {
        return tr("Hurt fruit: cut well around the damage, and spit it out if it tastes musty.");
    }
    return {};
}

Result<StoredPath> ConditionFields::typedPath() const {
    auto path = readStoragePath(m_path->text().toStdString());
    if (path && path->path == StoragePath::unknown) {
        return missing(tr("The places are missing."),
                       tr("Type them one after another, as f5 c2 for five days in the fridge, then "
                          "two on the counter."));
    }
    return path;
}

void ConditionFields::refresh() {
    const QString words = cautionWords();
    m_caution->setText(words);
    m_caution->setVisible(!words.isEmpty());
    const auto storage = chosenOf<StoragePath>(m_storage);
    const bool chained = storage == StoragePath::chained;
    m_days->setVisible(storage == StoragePath::counter || storage == StoragePath::fridge ||
                       storage == StoragePath::cellar);
    m_path->setVisible(chained);
    m_pathMeaning->setVisible(chained);
    if (chained) {
        const auto path = typedPath();
        const bool fault = !path && !m_path->text().trimmed().isEmpty();
        m_pathMeaning->setWeight(fault ? FlowText::Weight::fault : FlowText::Weight::small);
        m_pathMeaning->setText(path    ? pathWords(*path)
                               : fault ? QString::fromStdString(path.problem().sentence())
                                       : tr("c counter, f fridge, l cellar, each with its days."));
        m_path->setAccessibleDescription(m_pathMeaning->text());
    }
    Q_EMIT changed();
}

Result<LotCondition> ConditionFields::condition(Date eaten) const {
    LotCondition condition = m_kept;
    condition.origin = chosenOf<Origin>(m_origin);
    condition.soundness = chosenOf<Soundness>(m_soundness);
    condition.ripeness = chosenOf<Ripeness>(m_ripeness);
    if (m_rows.back() == m_bag) {
        condition.bag = chosenOf<Bag>(m_bag);
    }
    StoredPath path;
    path.path = chosenOf<StoragePath>(m_storage);
    const std::optional<std::int64_t> days = m_days->value();
    switch (path.path) {
    case StoragePath::counter:
        path.daysOnCounter = days;
        break;
    case StoragePath::fridge:
        path.daysInFridge = days;
        break;
    case StoragePath::cellar:
        path.daysInCellar = days;
        break;
    case StoragePath::chained: {
        auto typed = typedPath();
        if (!typed) {
            return typed.problem();
        }
        path = *typed;
        break;
    }
    case StoragePath::none:
    case StoragePath::unknown:
        break;
    }
    const auto agree = [](const std::optional<std::int64_t>& one,
                          const std::optional<std::int64_t>& other) {
        return one.value_or(0) == other.value_or(0);
    };
    if (path.path == m_kept.storage && agree(path.daysOnCounter, m_kept.daysOnCounter) &&
        agree(path.daysInFridge, m_kept.daysInFridge) &&
        agree(path.daysInCellar, m_kept.daysInCellar) &&
        (path.typed.empty() || path.typed == m_kept.storageTyped)) {
        return condition; // its day, and days nobody knew, stay too
    }
    putPath(path, condition);
    condition.taken.reset();
    if (path.path == StoragePath::none) {
        condition.taken = eaten;
    } else if (path.path != StoragePath::unknown) {
        const std::int64_t all = path.daysOnCounter.value_or(0) + path.daysInFridge.value_or(0) +
                                 path.daysInCellar.value_or(0);
        condition.taken = eaten.plusDays(-static_cast<int>(all));
    }
    return condition;
}

void ConditionFields::setCondition(const LotCondition& condition) {
    m_kept = condition;
    m_origin->setChosen(keyText(condition.origin));
    m_soundness->setChosen(keyText(condition.soundness));
    m_ripeness->setChosen(keyText(condition.ripeness));
    m_storage->setChosen(keyText(condition.storage));
    m_bag->setChosen(keyText(condition.bag));
    const QSignalBlocker quietDays(m_days);
    const QSignalBlocker quietPath(m_path);
    m_days->setValue(static_cast<int>(std::clamp<std::int64_t>(
        condition.daysOnCounter.value_or(0) + condition.daysInFridge.value_or(0) +
            condition.daysInCellar.value_or(0),
        0, kMostDays)));
    const StoredPath path{condition.storage, condition.daysOnCounter, condition.daysInFridge,
                          condition.daysInCellar, condition.storageTyped};
    m_path->setText(condition.storage == StoragePath::chained
                        ? QString::fromStdString(storagePathText(path))
                        : QString());
    refresh();
}

bool ConditionFields::anyChosen() const {
    return std::any_of(m_rows.begin(), m_rows.end(),
                       [](const ChipRow* row) { return row->chosen().has_value(); });
}

void ConditionFields::clear() {
    m_kept = {};
    for (ChipRow* row : m_rows) {
        row->setChosen(std::nullopt);
    }
    m_path->clear();
    m_days->setValue(0);
    refresh();
}

} // namespace pipwright::ui
