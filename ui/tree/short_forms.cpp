#include "ui/tree/short_forms.h"

#include "core/orchard/dictionary.h"
#include "ui/book/open_book.h"
#include "ui/book/orchard_words.h"
#include "ui/tree/form_parts.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/flow_text.h"

#include <QFile>
#include <QFileInfo>
#include <QFormLayout>
#include <QLineEdit>
#include <QSpinBox>
#include <QVBoxLayout>

#include <array>

namespace pipwright::ui {

namespace {

constexpr qint64 kLargestPhoto = 64 * 1024 * 1024;

QLineEdit* makeLine(const QString& name, const QString& hint, QWidget* parent) {
    auto* line = new QLineEdit(parent);
    line->setAccessibleName(name);
    line->setPlaceholderText(hint);
    return line;
}

template <typename Enum>
std::optional<Enum> chosenIfAny(const ChipRow* row) {
    const auto key = row->chosen();
    return key ? fromKey<Enum>(key->toStdString()) : std::nullopt;
}

} // namespace

NoteForm::NoteForm(OpenBook& book, QWidget* parent)
    : EntryForm(book, parent), m_words(makeLine(tr("Note"), tr("what you saw"), this)) {
    stack(this, m_words);
}
QString NoteForm::title(const QString& called) const {
    return tr("Note on %1").arg(called);
}
QWidget* NoteForm::firstField() const {
    return m_words;
}
Result<ChangeSet> NoteForm::edits(const EntryTarget& target, const EditContext& context) {
    const QString words = m_words->text().trimmed();
    if (words.isEmpty()) {
        return missing(tr("The note has no words."), tr("Type what you saw, then Enter."));
    }
    return noteOn(target.trees, words.toStdString(), context);
}
void NoteForm::saved() {
    m_words->clear();
}

WalkForm::WalkForm(OpenBook& book, QWidget* parent)
    : EntryForm(book, parent), m_marks(new ChipRow(tr("Walk mark"), this)),
      m_drops(new ChipRow(tr("Fruit on the ground"), this)) {
    const auto mark = [](WalkMark one, const QString& letter) {
        return Chip{keyText(keyOf(one)), walkMarkWord(one), letter, {}};
    };
    m_marks->setChips({mark(WalkMark::notYet, tr("n", "letter of the mark")),
                       mark(WalkMark::ripening, tr("p", "letter of the mark")),
                       mark(WalkMark::ripe, tr("r", "letter of the mark")),
                       mark(WalkMark::over, tr("o", "letter of the mark")),
                       mark(WalkMark::gone, tr("g", "letter of the mark"))});
    m_drops->setChips(
        {{QStringLiteral("none"), tr("none"), QStringLiteral("0"), {}},
         {QStringLiteral("few"), tr("few"), QStringLiteral("1"), tr("one or two")},
         {QStringLiteral("some"), tr("some"), QStringLiteral("2"), tr("a handful")},
         {QStringLiteral("many"), tr("many"), QStringLiteral("3"), tr("more than hang")}});
    stack(this, m_marks,
          new FlowText(tr("On the ground (may stay open):"), FlowText::Weight::small, this),
          m_drops);
}
QString WalkForm::title(const QString& called) const {
    return tr("Walk mark on %1").arg(called);
}
QWidget* WalkForm::firstField() const {
    return m_marks;
}
Result<ChangeSet> WalkForm::edits(const EntryTarget& target, const EditContext& context) {
    const auto mark = chosenIfAny<WalkMark>(m_marks);
    if (!mark) {
        return missing(tr("No mark is chosen."),
                       tr("Press the letter of a mark: n, p, r, o or g, then Enter."));
    }
    std::optional<TraitStateId> drop;
    if (const auto chosen = m_drops->chosen()) {
        drop = shippedStateId(trait_key::kDrop, chosen->toStdString());
    }
    return walkMarkOn(target.trees, *mark, drop, context);
}
void WalkForm::saved() {
    m_marks->setChosen(std::nullopt);
    m_drops->setChosen(std::nullopt);
}

DecisionForm::DecisionForm(OpenBook& book, QWidget* parent)
    : EntryForm(book, parent), m_stages(new ChipRow(tr("Stage"), this)),
      m_reason(makeLine(tr("Reason"), tr("why"), this)) {
    const auto stage = [](Stage one, const QString& letter) {
        return Chip{keyText(keyOf(one)), stageWord(one), letter, {}};
    };
    m_stages->setChips(
        {stage(Stage::juvenile, QStringLiteral("j")), stage(Stage::bearing, QStringLiteral("b")),
         stage(Stage::watched, QStringLiteral("w")), stage(Stage::selection, QStringLiteral("s")),
         stage(Stage::advanced, QStringLiteral("a")), stage(Stage::named, QStringLiteral("n")),
         stage(Stage::released, QStringLiteral("r")), stage(Stage::parent, QStringLiteral("p")),
         stage(Stage::culled, QStringLiteral("c"))});
    stack(this, m_stages, m_reason);
}
QString DecisionForm::title(const QString& called) const {
    return tr("Decision on %1").arg(called);
}
QWidget* DecisionForm::firstField() const {
    return m_stages;
}
bool DecisionForm::goOn(const QWidget* field) {
    if (field != m_reason && m_stages->chosen() && m_reason->text().trimmed().isEmpty()) {
        m_reason->setFocus(Qt::TabFocusReason);
        return true;
    }
    return false;
}
Result<ChangeSet> DecisionForm::edits(const EntryTarget& target, const EditContext& context) {
    const auto stage = chosenIfAny<Stage>(m_stages);
    if (!stage) {
        return missing(tr("No stage is chosen."), tr("Press the letter of a stage."));
    }
    if (m_reason->text().trimmed().isEmpty()) {
        return missing(tr("The decision has no reason."),
                       tr("Say why in a few words; in three years you will want to know."));
    }
    ChangeSet set =
        decisionOn(target.trees, *stage, m_reason->text().trimmed().toStdString(), context);
    if (set.empty()) {
        return missing(tr("Nobody knows what this plant is, so nothing can be decided of it."),
                       tr("Say first who it is."));
    }
    return set;
}
void DecisionForm::saved() {
    m_stages->setChosen(std::nullopt);
    m_reason->clear();
}

WishForm::WishForm(OpenBook& book, QWidget* parent)
    : EntryForm(book, parent), m_number(new QSpinBox(this)),
      m_reason(makeLine(tr("Reason"), tr("why, Enter"), this)) {
    m_number->setRange(1, 999);
    m_number->setValue(2);
    m_number->setAccessibleName(tr("How many grafts"));
    m_number->setSuffix(tr(" grafts"));
    stack(this, m_number, m_reason);
}
QString WishForm::title(const QString& called) const {
    return tr("Wish grafts of %1").arg(called);
}
QWidget* WishForm::firstField() const {
    return m_number;
}
Result<ChangeSet> WishForm::edits(const EntryTarget& target, const EditContext& context) {
    ChangeSet all;
    for (const EditedTree& tree : target.trees) {
        ChangeSet one = graftWishFor(tree, m_number->value(),
                                     m_reason->text().trimmed().toStdString(), context);
        if (all.empty()) {
            all = std::move(one);
        } else {
            all.changes.insert(all.changes.end(), one.changes.begin(), one.changes.end());
        }
    }
    if (all.empty()) {
        return missing(tr("Nobody knows what this plant is, so no graft of it can be wished."),
                       tr("Say first who it is."));
    }
    if (target.trees.size() > 1) {
        all.sentence = "Wish grafts of " + std::to_string(target.trees.size()) + " trees";
    }
    return all;
}
void WishForm::saved() {
    m_reason->clear();
}

StateForm::StateForm(OpenBook& book, QWidget* parent)
    : EntryForm(book, parent), m_states(new ChipRow(tr("State of the plant"), this)),
      m_reason(makeLine(tr("Reason"), tr("why, as voles, mower, fire blight"), this)) {
    const auto state = [](PlantState one, const QString& letter) {
        return Chip{keyText(keyOf(one)), stateWord(one), letter, {}};
    };
    m_states->setChips({state(PlantState::lost, QStringLiteral("l")),
                        state(PlantState::dead, QStringLiteral("d")),
                        state(PlantState::removed, QStringLiteral("r")),
                        state(PlantState::growing, QStringLiteral("g")),
                        state(PlantState::unknown, QStringLiteral("u"))});
    stack(this, m_states, m_reason);
}
QString StateForm::title(const QString& called) const {
    return tr("Whether %1 grows").arg(called);
}
QWidget* StateForm::firstField() const {
    return m_states;
}
bool StateForm::goOn(const QWidget* field) {
    if (field != m_reason && m_states->chosen() && m_reason->text().trimmed().isEmpty()) {
        m_reason->setFocus(Qt::TabFocusReason);
        return true;
    }
    return false;
}
Result<ChangeSet> StateForm::edits(const EntryTarget& target, const EditContext& context) {
    const auto state = chosenIfAny<PlantState>(m_states);
    if (!state) {
        return missing(tr("No state is chosen."), tr("Press the letter of a state."));
    }
    std::vector<Plant> plants;
    for (const EditedTree& tree : target.trees) {
        if (!tree.plant) {
            continue;
        }
        auto plant = m_book.store().get(*tree.plant);
        if (!plant) {
            return plant.problem();
        }
        if (plant->has_value()) {
            plants.push_back(**plant);
        }
    }
    if (plants.empty()) {
        return missing(tr("It has no plant in the orchard."), tr("Choose a tree that stands."));
    }
    return plantsBecome(plants, *state, m_reason->text().trimmed().toStdString(), context);
}
void StateForm::saved() {
    m_states->setChosen(std::nullopt);
    m_reason->clear();
}

PhotoForm::PhotoForm(OpenBook& book, QWidget* parent)
    : EntryForm(book, parent), m_file(new FlowText({}, FlowText::Weight::second, this)),
      m_caption(makeLine(tr("What it shows"), tr("what it shows (may stay empty)"), this)) {
    stack(this, m_file, m_caption);
}
Outcome PhotoForm::choose(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return Problem{ProblemCode::unreadable, file.errorString().toStdString(),
                       tr("Choose another file.").toStdString(), path.toStdString()};
    }
    if (file.size() > kLargestPhoto) {
        return Problem{ProblemCode::badInput, tr("The picture is larger than 64 MB.").toStdString(),
                       tr("Save it smaller and choose it again.").toStdString(),
                       path.toStdString()};
    }
    m_bytes = file.readAll();
    m_file->setText(QFileInfo(path).fileName());
    return {};
}
QString PhotoForm::title(const QString& called) const {
    return tr("Photo of %1").arg(called);
}
QWidget* PhotoForm::firstField() const {
    return m_caption;
}
Result<ChangeSet> PhotoForm::edits(const EntryTarget& target, const EditContext& context) {
    const auto file = m_book.writableStore().addPhoto(
        {m_bytes.constData(), static_cast<std::size_t>(m_bytes.size())});
    if (!file) {
        return file.problem();
    }
    return photoOf(target.trees.front(), file->sha256, file->mediaType,
                   m_caption->text().trimmed().toStdString(), context);
}
void PhotoForm::saved() {
    m_bytes.clear();
    m_caption->clear();
}

VoidForm::VoidForm(OpenBook& book, QWidget* parent)
    : EntryForm(book, parent), m_reason(makeLine(tr("Reason"), tr("why it is wrong"), this)) {
    stack(this,
          new FlowText(tr("It stays in the history, but counts no more."), FlowText::Weight::second,
                       this),
          m_reason);
}
QString VoidForm::title(const QString&) const {
    return tr("Void %1").arg(m_voiding.what);
}
QWidget* VoidForm::firstField() const {
    return m_reason;
}
Result<ChangeSet> VoidForm::edits(const EntryTarget&, const EditContext&) {
    const QString reason = m_reason->text().trimmed();
    if (reason.isEmpty()) {
        return missing(tr("No reason is given."), tr("Say in a few words what is wrong with it."));
    }
    return m_voiding.make(reason.toStdString());
}
void VoidForm::saved() {
    m_reason->clear();
}

} // namespace pipwright::ui
