#include "ui/compare/compare_reader.h"

#include "ui/book/open_book.h"

#include <QCoreApplication>
#include <QThreadPool>

namespace pipwright::ui {

CompareReader::CompareReader(OpenBook& book, QObject* parent) : QObject(parent), m_book(book) {}

CompareReader::~CompareReader() {
    *m_alive = false;
}

Result<CompareReader::Columns> CompareReader::read(const OrchardView& view, const Store& store,
                                                   const std::vector<Index>& genotypes) {
    Columns columns;
    for (const Index genotype : genotypes) {
        auto column = compared(view, store, genotype);
        if (!column) {
            return column.problem();
        }
        columns.push_back(std::move(*column));
    }
    return columns;
}

void CompareReader::ask(const std::vector<Index>& genotypes) {
    const int question = ++m_question;
    if (m_view != m_book.view()) {
        m_view = m_book.view();
        m_kept.clear();
    }
    m_asked = genotypes;
    std::vector<Index> missing;
    for (const Index one : genotypes) {
        if (m_kept.find(one) == m_kept.end()) {
            missing.push_back(one);
        }
    }
    m_reading = !missing.empty();
    if (missing.empty()) {
        answer();
        return;
    }
    if (!m_book.openReader()) {
        take(m_view, question, read(*m_view, m_book.store(), missing));
        return;
    }
    QThreadPool::globalInstance()->start([this, view = m_view, question, missing,
                                          openReader = m_book.openReader(),
                                          alive = std::weak_ptr<bool>(m_alive)] {
        const auto reader = openReader();
        auto columns = reader ? read(*view, **reader, missing) : Result<Columns>(reader.problem());
        // Carried over by the application object, since this one may be gone.
        QMetaObject::invokeMethod(
            QCoreApplication::instance(),
            [this, alive, view, question, columns = std::move(columns)] {
                if (const auto still = alive.lock(); still && *still) {
                    take(view, question, columns);
                }
            },
            Qt::QueuedConnection);
    });
}

void CompareReader::take(const OrchardView::Pointer& view, int question,
                         const Result<Columns>& columns) {
    if (view == m_view && columns) { // worth keeping, even when another question came meanwhile
        for (const ComparedGenotype& column : *columns) {
            m_kept.insert_or_assign(column.genotype, column);
        }
    }
    if (question != m_question) {
        return;
    }
    m_reading = false;
    if (!columns && columns.problem().code == ProblemCode::busy) { // it made way for an edit
        ask(std::vector<Index>(m_asked));
        return;
    }
    if (!columns) {
        Q_EMIT failed(columns.problem());
        return;
    }
    answer();
}

void CompareReader::answer() {
    Columns columns;
    for (const Index one : m_asked) {
        columns.push_back(m_kept.at(one));
    }
    Q_EMIT ready(sideBySide(*m_view, std::move(columns)));
}

} // namespace pipwright::ui
