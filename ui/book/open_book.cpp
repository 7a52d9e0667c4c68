#include "ui/book/open_book.h"

#include <QCoreApplication>
#include <QDate>
#include <QMetaObject>
#include <QThreadPool>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr std::size_t kMostBeside = 8;

Date systemDay() {
    const QDate now = QDate::currentDate();
    return Date::of(now.year(), static_cast<unsigned>(now.month()),
                    static_cast<unsigned>(now.day()))
        .value_or(Date{});
}

} // namespace

OpenBook::OpenBook(std::unique_ptr<Store> store, QString path, OpenReader openReader)
    : m_store(std::move(store)), m_path(std::move(path)), m_openReader(std::move(openReader)) {}

OpenBook::~OpenBook() {
    *m_alive = false;
}

Result<std::unique_ptr<OpenBook>> OpenBook::open(std::unique_ptr<Store> store, QString path,
                                                 OpenReader openReader) {
    std::unique_ptr<OpenBook> book(
        new OpenBook(std::move(store), std::move(path), std::move(openReader)));
    auto view = OrchardView::load(*book->m_store);
    if (!view) {
        return view.problem();
    }
    book->m_view = std::move(*view);
    for (const Person& person : book->m_view->persons()) {
        if (!person.name.empty() && person.name == book->m_view->facts().owner) {
            book->m_person = person.id; // until somebody else says so
        }
    }
    book->gatherEvidence();
    return book;
}

void OpenBook::gatherEvidence() {
    if (!m_openReader) {
        if (auto view = m_view->withEvidence(*m_store)) {
            m_view = std::move(*view);
        }
        return;
    }
    const OrchardView::Pointer base = m_view;
    QThreadPool::globalInstance()->start(
        [base, openReader = m_openReader, alive = std::weak_ptr<bool>(m_alive), this] {
            const auto reader = openReader();
            auto view = reader ? base->withEvidence(**reader)
                               : Result<OrchardView::Pointer>(reader.problem());
            // The book lives on the window's thread: only there may it be looked at. The
            // application object carries the answer over, since this one may be gone.
            QMetaObject::invokeMethod(
                QCoreApplication::instance(),
                [alive, this, base, found = std::move(view)] {
                    if (const auto still = alive.lock(); still && *still) {
                        takeEvidence(base, found);
                    }
                },
                Qt::QueuedConnection);
        });
}

void OpenBook::takeEvidence(const OrchardView::Pointer& base,
                            const Result<OrchardView::Pointer>& withEvidence) {
    // Edited meanwhile, or the reading made way for an edit: gather again for what stands now.
    const bool madeWay = !withEvidence && withEvidence.problem().code == ProblemCode::busy;
    if (m_view != base || madeWay) {
        gatherEvidence();
        return;
    }
    if (!withEvidence) {
        Q_EMIT problemMet(withEvidence.problem());
        return;
    }
    m_view = *withEvidence;
    Q_EMIT viewChanged({});
    Q_EMIT evidenceReady();
}

Date OpenBook::today() const {
    return m_fixedToday.value_or(systemDay());
}

void OpenBook::setToday(std::optional<Date> day) {
    m_fixedToday = day;
    Q_EMIT todayChanged();
}

void OpenBook::setPerson(std::optional<PersonId> person) {
    m_person = person;
    Q_EMIT personChanged();
}

EditContext OpenBook::context(std::optional<Index> plant) {
    EditContext context;
    context.day = today();
    context.person = m_person;
    context.ids = &m_ids;
    if (plant) {
        context.hemisphere = m_view->hemisphereOf(*plant);
    } else if (!m_view->sites().empty()) {
        context.hemisphere = m_view->sites().front().hemisphere;
    }
    return context;
}

EditedTree OpenBook::treeAt(Index plant) const {
    EditedTree tree;
    const PlantEntry& entry = m_view->plants()[plant];
    tree.plant = entry.id;
    if (entry.genotype) {
        tree.genotype = m_view->genotypes()[*entry.genotype].id;
    }
    tree.code = m_view->plantCode(plant);
    return tree;
}

EditedTree OpenBook::genotypeAt(Index genotype) const {
    EditedTree tree;
    tree.genotype = m_view->genotypes()[genotype].id;
    tree.code = m_view->genotypes()[genotype].called();
    return tree;
}

Stamp OpenBook::stamp() const {
    return {m_person, 0};
}

void OpenBook::carry(const Result<JournalEntry>& entry) {
    if (!entry) {
        Q_EMIT problemMet(entry.problem());
        return;
    }
    auto view = m_view->after(entry->changes, *m_store);
    if (!view) {
        Q_EMIT problemMet(view.problem());
        return;
    }
    m_view = std::move(*view);
    if (m_currentPlant && m_view->plants()[*m_currentPlant].erased) {
        selectPlant(std::nullopt);
    }
    Q_EMIT viewChanged(entry->changes);
    Q_EMIT undoChanged();
}

bool OpenBook::apply(const ChangeSet& set) {
    if (set.empty()) {
        return true;
    }
    const auto entry = m_store->apply(set, stamp());
    carry(entry);
    return entry.ok();
}

void OpenBook::undo() {
    if (m_store->undoSentence()) {
        carry(m_store->undo(stamp()));
    }
}

void OpenBook::redo() {
    if (m_store->redoSentence()) {
        carry(m_store->redo(stamp()));
    }
}

std::optional<QString> OpenBook::undoSentence() const {
    const auto sentence = m_store->undoSentence();
    return sentence ? std::optional(QString::fromStdString(*sentence)) : std::nullopt;
}

std::optional<QString> OpenBook::redoSentence() const {
    const auto sentence = m_store->redoSentence();
    return sentence ? std::optional(QString::fromStdString(*sentence)) : std::nullopt;
}

std::optional<Index> OpenBook::currentGenotype() const {
    return m_currentPlant ? m_view->plants()[*m_currentPlant].genotype : m_currentGenotype;
}

void OpenBook::selectPlant(std::optional<Index> plant) {
    if (plant == m_currentPlant && !m_currentGenotype) {
        return;
    }
    m_currentPlant = plant;
    m_currentGenotype.reset();
    Q_EMIT currentTreeChanged();
}

void OpenBook::selectGenotype(Index genotype) {
    if (const auto plant = m_view->plantFor(genotype)) {
        selectPlant(plant);
        return;
    }
    m_currentPlant.reset();
    m_currentGenotype = genotype;
    Q_EMIT currentTreeChanged();
}

void OpenBook::setSelection(std::vector<Index> plants) {
    if (plants == m_selection) {
        return;
    }
    m_selection = std::move(plants);
    Q_EMIT selectionChanged();
}

void OpenBook::layBeside(Index genotype) {
    std::erase(m_laidBeside, genotype);
    m_laidBeside.push_back(genotype);
    if (m_laidBeside.size() > kMostBeside) {
        m_laidBeside.erase(m_laidBeside.begin());
    }
    Q_EMIT laidBesideChanged();
}

void OpenBook::setLaidBeside(std::vector<Index> genotypes) {
    if (genotypes.size() > kMostBeside) {
        genotypes.resize(kMostBeside);
    }
    m_laidBeside = std::move(genotypes);
    Q_EMIT laidBesideChanged();
}

} // namespace pipwright::ui
