#include "ui/tree/identity_forms.h"

#include "core/evaluation/tree_life.h"
#include "ui/book/book_words.h"
#include "ui/book/open_book.h"
#include "ui/book/orchard_words.h"
#include "ui/tree/form_parts.h"
#include "ui/widgets/chip_row.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/number_text.h"

#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace pipwright::ui {

namespace {

constexpr int kListHeight = 150;

struct Basis {
    IdentityBasis basis;
    Confidence confidence;
    const char* letter;
};
constexpr std::array kBases = {
    Basis{IdentityBasis::tagAndMap, Confidence::sure, "t"},
    Basis{IdentityBasis::mapOnly, Confidence::byMap, "m"},
    Basis{IdentityBasis::fruit, Confidence::byFruit, "f"},
    Basis{IdentityBasis::graftRecord, Confidence::sure, "r"},
    Basis{IdentityBasis::guess, Confidence::unknown, "?"},
};

QLineEdit* makeCode(const QString& name, const QString& hint, QWidget* parent) {
    auto* line = new QLineEdit(parent);
    line->setAccessibleName(name);
    line->setPlaceholderText(hint);
    return line;
}

} // namespace

AnotherForm::AnotherForm(OpenBook& book, QWidget* parent)
    : EntryForm(book, parent),
      m_code(makeCode(tr("What it is"), tr("code or name of what it is"), this)),
      m_basis(new ChipRow(tr("What that rests on"), this)) {
    std::vector<Chip> chips;
    chips.reserve(kBases.size());
    for (const Basis& one : kBases) {
        chips.push_back(
            {keyText(keyOf(one.basis)), basisWord(one.basis), QString::fromLatin1(one.letter), {}});
    }
    m_basis->setChips(chips);
    m_basis->setChosen(keyText(keyOf(IdentityBasis::tagAndMap)));
    stack(this, m_code, m_basis);
}
QString AnotherForm::title(const QString& called) const {
    return tr("%1 is another genotype").arg(called);
}
QWidget* AnotherForm::firstField() const {
    return m_code;
}
Result<ChangeSet> AnotherForm::edits(const EntryTarget& target, const EditContext& context) {
    const OrchardView::Pointer view = m_book.view();
    const auto genotype = view->genotypeCalled(m_code->text().toStdString());
    if (!genotype) {
        return missing(tr("The book has no genotype \"%1\".").arg(m_code->text().trimmed()),
                       tr("Type a code or name that is in the book."));
    }
    const auto chosen = m_basis->chosen();
    const auto* basis = std::find_if(kBases.begin(), kBases.end(), [&chosen](const Basis& one) {
        return chosen == keyText(keyOf(one.basis));
    });
    const Basis stands = basis == kBases.end() ? kBases.back() : *basis;
    const GenotypeEntry& entry = view->genotypes()[*genotype];
    return identityOf(target.trees.front(), entry.id, entry.called(), stands.basis,
                      stands.confidence, "", context);
}
void AnotherForm::saved() {
    m_code->clear();
}

SwapForm::SwapForm(OpenBook& book, QWidget* parent)
    : EntryForm(book, parent),
      m_code(makeCode(tr("The other tree"), tr("code or row/place of the other tree"), this)) {
    stack(this, m_code,
          new FlowText(tr("Each plant becomes what the other was held to be. Records stay with the "
                          "plant they were taken at."),
                       FlowText::Weight::small, this));
}
QString SwapForm::title(const QString& called) const {
    return tr("%1 carries the tag of another tree").arg(called);
}
QWidget* SwapForm::firstField() const {
    return m_code;
}
Result<ChangeSet> SwapForm::edits(const EntryTarget& target, const EditContext& context) {
    const auto other = plantTyped(*m_book.view(), m_code->text());
    if (!other) {
        return other.problem();
    }
    const EditedTree tree = m_book.treeAt(*other);
    if (tree.plant == target.trees.front().plant) {
        return missing(tr("That is this tree itself."), tr("Type the code of the other tree."));
    }
    return swapOfTags(target.trees.front(), tree, "", context);
}
void SwapForm::saved() {
    m_code->clear();
}

BesideForm::BesideForm(OpenBook& book, QWidget* parent)
    : EntryForm(book, parent),
      m_code(makeCode(tr("What stands there too"),
                      tr("code, or what its tag says; empty if nobody knows"), this)) {
    stack(this, m_code);
}
QString BesideForm::title(const QString& called) const {
    return tr("Another plant stands beside %1").arg(called);
}
QWidget* BesideForm::firstField() const {
    return m_code;
}
Result<ChangeSet> BesideForm::edits(const EntryTarget& target, const EditContext& context) {
    const OrchardView::Pointer view = m_book.view();
    const auto place = target.plants.empty() ? std::nullopt : view->placeOf(target.plants.front());
    if (!place) {
        return missing(tr("This plant stands at no known place."), tr("Choose one in a row."));
    }
    const QString typed = m_code->text().trimmed();
    PlantBeside beside;
    beside.position = view->positions()[place->position].id;
    const auto genotype = view->genotypeCalled(typed.toStdString());
    if (genotype) {
        beside.genotype = view->genotypes()[*genotype].id;
        beside.called = view->genotypes()[*genotype].called();
    } else {
        beside.tag = typed.toStdString();
        beside.called = typed.isEmpty() ? "A plant nobody knows" : typed.toStdString();
    }
    return plantBeside(beside, target.trees.front(), context);
}
void BesideForm::saved() {
    m_code->clear();
}

MoveForm::MoveForm(OpenBook& book, QWidget* parent)
    : EntryForm(book, parent),
      m_code(makeCode(tr("The right tree"), tr("code or row/place of the right tree"), this)),
      m_list(new QListWidget(this)) {
    m_list->setAccessibleName(tr("Records to move; Space marks one"));
    m_list->setFixedHeight(kListHeight);
    m_list->setWordWrap(true);
    stack(this, m_list, m_code);
}
QString MoveForm::title(const QString& called) const {
    return tr("Move records of %1 to the right tree").arg(called);
}

void MoveForm::begin(const EntryTarget& target) {
    m_movable.clear();
    m_list->clear();
    const OrchardView::Pointer view = m_book.view();
    if (target.plants.empty()) {
        return;
    }
    const auto life = lifeOfPlant(*view, m_book.store(), target.plants.front());
    if (!life) {
        return;
    }
    const auto plant = target.trees.front().plant;
    for (const Observation& one : life->observations) {
        if (one.plant == plant) {
            const Trait* trait = view->trait(one.trait);
            const QString name = trait != nullptr ? traitName(*trait) : QString();
            Movable movable{
                one.date.value_or(Date()), name + QLatin1Char(' ') + valueWords(*view, one), {}};
            movable.record.observations.push_back(one);
            m_movable.push_back(std::move(movable));
        }
    }
    for (const TastedLot& tasted : life->tastings) {
        if (tasted.lot.plant == plant) {
            const auto liking = tasted.meanLiking();
            Movable movable{tasted.tasting.date,
                            liking ? tr("tasting, liked %1").arg(numberText(*liking, 1))
                                   : tr("tasting"),
                            {}};
            movable.record.lots.push_back(tasted.lot);
            m_movable.push_back(std::move(movable));
        }
    }
    for (const Photo& photo : life->photos) {
        if (photo.plant == plant) {
            Movable movable{photo.taken.value_or(Date()),
                            tr("photo %1").arg(QString::fromStdString(photo.caption)),
                            {}};
            movable.record.photos.push_back(photo);
            m_movable.push_back(std::move(movable));
        }
    }
    std::stable_sort(m_movable.begin(), m_movable.end(),
                     [](const Movable& a, const Movable& b) { return a.day > b.day; });
    for (const Movable& one : m_movable) {
        auto* item =
            new QListWidgetItem(dateText(one.day) + QStringLiteral(": ") + one.words, m_list);
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(one.day == m_movable.front().day ? Qt::Checked : Qt::Unchecked);
    }
    m_list->setCurrentRow(0);
}

QWidget* MoveForm::firstField() const {
    return m_code;
}

Result<ChangeSet> MoveForm::edits(const EntryTarget& target, const EditContext&) {
    RecordsOfTree records;
    const auto append = [](auto& to, const auto& from) {
        to.insert(to.end(), from.begin(), from.end());
    };
    for (int i = 0; i < m_list->count(); ++i) {
        if (m_list->item(i)->checkState() == Qt::Checked) {
            const RecordsOfTree& one = m_movable[static_cast<std::size_t>(i)].record;
            append(records.observations, one.observations);
            append(records.lots, one.lots);
            append(records.photos, one.photos);
        }
    }
    if (records.observations.empty() && records.lots.empty() && records.photos.empty()) {
        return missing(tr("No record is marked."), tr("Mark with Space what is to be moved."));
    }
    const auto right = plantTyped(*m_book.view(), m_code->text());
    if (!right) {
        return right.problem();
    }
    const EditedTree tree = m_book.treeAt(*right);
    if (tree.plant == target.trees.front().plant) {
        return missing(tr("That is this tree itself."), tr("Type the code of the right tree."));
    }
    return movedToTree(records, target.trees.front(), tree);
}

void MoveForm::saved() {
    m_code->clear();
}

} // namespace pipwright::ui
