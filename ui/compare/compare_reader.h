#pragma once

#include "core/evaluation/comparison.h"

#include <QObject>

#include <map>
#include <memory>
#include <vector>

namespace pipwright::ui {

class OpenBook;

/// Reads the columns of Compare beside the window where the book can be read twice, and keeps them
/// until the book changes, so that a column that was there once is there again at once.
class CompareReader : public QObject {
    Q_OBJECT

  public:
    explicit CompareReader(OpenBook& book, QObject* parent = nullptr);
    ~CompareReader() override;

    /// Asks for these columns; `ready` or `failed` answers, at once when all are known or the book
    /// can only be read here. A question takes the place of the one before it.
    void ask(const std::vector<Index>& genotypes);
    [[nodiscard]] bool isReading() const { return m_reading; }

  Q_SIGNALS:
    void ready(const pipwright::Comparison& comparison);
    void failed(const pipwright::Problem& problem);

  private:
    using Columns = std::vector<ComparedGenotype>;

    static Result<Columns> read(const OrchardView& view, const Store& store,
                                const std::vector<Index>& genotypes);
    void take(const OrchardView::Pointer& view, int question, const Result<Columns>& columns);
    void answer();

    OpenBook& m_book;
    OrchardView::Pointer m_view; ///< the state of the book the kept columns are from
    std::map<Index, ComparedGenotype> m_kept;
    std::vector<Index> m_asked;
    int m_question = 0;
    bool m_reading = false;
    std::shared_ptr<bool> m_alive = std::make_shared<bool>(true);
};

} // namespace pipwright::ui
