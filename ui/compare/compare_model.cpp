#include "ui/compare/compare_model.h"

#include "core/orchard/dictionary.h"
#include "ui/compare/compare_words.h"
#include "ui/compare/scales.h"

#include <algorithm>
#include <limits>
#include <map>

namespace pipwright::ui {

namespace {

constexpr double kLikingStep = 0.5;

} // namespace

void CompareModel::setComparison(OrchardView::Pointer view, Comparison comparison,
                                 int calendarYear) {
    beginResetModel();
    m_view = std::move(view);
    m_comparison = std::move(comparison);
    m_calendarYear = calendarYear;
    m_rows.clear();
    m_cells.clear();
    m_photos.assign(m_comparison.columns.size(), {});
    measureDays();
    if (!m_comparison.columns.empty()) {
        const OrchardView& shown = *m_view;
        addWords(CompareKind::head, tr("tree"),
                 [&shown](const auto& column) { return headWords(shown, column); });
        const bool photos =
            std::any_of(m_comparison.columns.begin(), m_comparison.columns.end(),
                        [](const auto& column) { return !column.life.photos.empty(); });
        if (photos) {
            addWords(CompareKind::photos, tr("photos"), [](const auto& column) {
                return tr("%n photo(s)", nullptr, static_cast<int>(column.life.photos.size()));
            });
        }
        addWords(CompareKind::words, tr("pedigree"),
                 [&shown](const auto& column) { return pedigreeWords(shown, column); });
        addWords(CompareKind::window, tr("harvest window,\nISO weeks of %1").arg(calendarYear),
                 [calendarYear](const auto& column) { return windowWords(column, calendarYear); });
        addLiking();
        addKeeping();
        addWords(CompareKind::words, tr("rests on"), evidenceWords);
        addWords(CompareKind::words, tr("said of it"), saidWords);
        addTraits();
    }
    endResetModel();
}

void CompareModel::setPhotos(int column, std::vector<QImage> photos) {
    m_photos[static_cast<std::size_t>(column)] = std::move(photos);
    Q_EMIT dataChanged(index(0, column), index(rowCount() - 1, column), {Qt::DecorationRole});
}

std::vector<Index> CompareModel::genotypes() const {
    std::vector<Index> all;
    for (const ComparedGenotype& column : m_comparison.columns) {
        all.push_back(column.genotype);
    }
    return all;
}

void CompareModel::add(CompareRow row, std::vector<CompareCell> cells) {
    m_rows.push_back(std::move(row));
    m_cells.push_back(std::move(cells));
}

template <typename Words>
void CompareModel::addWords(CompareKind kind, const QString& title, Words words) {
    std::vector<CompareCell> cells;
    for (const ComparedGenotype& column : m_comparison.columns) {
        cells.push_back({words(column), {}});
    }
    add({kind, title}, std::move(cells));
}

void CompareModel::addSection(const QString& title) {
    add({CompareKind::section, title}, std::vector<CompareCell>(m_comparison.columns.size()));
}

void CompareModel::addLiking() {
    const auto& first = m_comparison.columns.front();
    const QString reference = QString::fromStdString(m_view->genotypes()[first.genotype].called());
    std::vector<CompareCell> cells;
    for (const ComparedGenotype& column : m_comparison.columns) {
        CompareCell cell{likingWords(column), {}};
        if (&column != &first && column.fairLiking && first.fairLiking) {
            cell.difference = differenceWords(
                differenceOf(*column.fairLiking, *first.fairLiking, kLikingStep), {}, reference);
        }
        cells.push_back(std::move(cell));
    }
    add({CompareKind::liking, tr("liking as eaten, 1 to 9")}, std::move(cells));
}

void CompareModel::addKeeping() {
    const TraitId daysGood = shippedTraitId(trait_key::kDaysGood);
    const auto& first = m_comparison.columns.front();
    const ComparedTrait* firstOf = traitOf(first, daysGood);
    const QString reference = QString::fromStdString(m_view->genotypes()[first.genotype].called());
    std::vector<CompareCell> cells;
    for (const ComparedGenotype& column : m_comparison.columns) {
        CompareCell cell{keepingWords(column), {}};
        const ComparedTrait* one = traitOf(column, daysGood);
        if (one != nullptr && firstOf != nullptr && one != firstOf) {
            cell.difference =
                differenceWords(differenceOf(*one, *firstOf, 0), QStringLiteral("d"), reference);
        }
        cells.push_back(std::move(cell));
    }
    add({CompareKind::keeping, tr("keeping: liking by\ndays off the tree")}, std::move(cells));
}

void CompareModel::addTraits() {
    // Topics in the order in which the dictionary first names them.
    std::vector<std::string> topics;
    std::erase(m_comparison.traits, shippedTraitId(trait_key::kDaysGood)); // told as keeping
    for (const TraitId id : m_comparison.traits) {
        const Trait* trait = m_view->trait(id);
        if (trait != nullptr &&
            std::find(topics.begin(), topics.end(), trait->topic) == topics.end()) {
            topics.push_back(trait->topic);
        }
    }
    for (const std::string& topic : topics) {
        addSection(topicTitle(topic));
        for (const TraitId id : m_comparison.traits) {
            const Trait* trait = m_view->trait(id);
            if (trait != nullptr && trait->topic == topic) {
                addTrait(*trait);
            }
        }
    }
}

void CompareModel::addTrait(const Trait& trait) {
    CompareRow row{CompareKind::trait, traitTitle(trait), trait.id};
    row.low = std::numeric_limits<double>::max();
    row.high = std::numeric_limits<double>::lowest();
    const auto& first = m_comparison.columns.front();
    const ComparedTrait* firstOf = traitOf(first, trait.id);
    const QString reference = QString::fromStdString(m_view->genotypes()[first.genotype].called());
    const auto step = stepOf(trait);
    std::vector<CompareCell> cells;
    for (const ComparedGenotype& column : m_comparison.columns) {
        const ComparedTrait* one = traitOf(column, trait.id);
        CompareCell cell{QStringLiteral("–"), {}};
        if (one != nullptr) {
            cell.words = traitWords(*m_view, *one);
            row.low = std::min(row.low, one->lowest);
            row.high = std::max(row.high, one->highest);
            if (step && firstOf != nullptr && one != firstOf) {
                cell.difference = differenceWords(differenceOf(*one, *firstOf, *step),
                                                  QString::fromStdString(trait.unit), reference);
            }
        }
        cells.push_back(std::move(cell));
    }
    const auto states = m_view->statesOf(trait.id);
    if (!states.empty()) { // the whole scale: the same in every comparison
        row.low = static_cast<double>(states.front()->rank);
        row.high = static_cast<double>(states.back()->rank);
    } else if (row.low == row.high) {
        row.low -= 1;
        row.high += 1;
    }
    row.drawn = step.has_value();
    add(std::move(row), std::move(cells));
}

void CompareModel::measureDays() {
    m_firstDay = std::numeric_limits<int>::max();
    m_lastDay = std::numeric_limits<int>::min();
    m_mostYears = 0;
    m_longestDays = 0;
    for (const ComparedGenotype& column : m_comparison.columns) {
        if (column.keeping.longestDays.value_or(0) > kFairDays) {
            m_longestDays = std::max(m_longestDays, *column.keeping.longestDays);
        }
        m_mostYears = std::max(m_mostYears, static_cast<int>(column.season.windows.size()));
        for (const ComparedWindow& window : column.season.windows) {
            if (!window.firstRipe) {
                continue;
            }
            m_firstDay = std::min(m_firstDay, *window.firstRipe);
            m_lastDay = std::max(m_lastDay,
                                 window.over.value_or(window.lastRipe.value_or(*window.firstRipe)));
        }
    }
    if (m_firstDay > m_lastDay) {
        m_firstDay = m_lastDay = 0;
        return;
    }
    m_firstDay -= kDaysOfAWeek;
    m_lastDay += kDaysOfAWeek;
}

int CompareModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int CompareModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_comparison.columns.size());
}

QVariant CompareModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const CompareRow& shown = row(index.row());
    if (shown.kind == CompareKind::section) {
        return role == Qt::DisplayRole || role == Qt::AccessibleTextRole ? QVariant(shown.title)
                                                                         : QVariant();
    }
    const CompareCell& one = cell(index.row(), index.column());
    if (role == Qt::ToolTipRole && shown.kind == CompareKind::window) {
        return windowYearWords(compared(index.column()));
    }
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole || role == Qt::AccessibleTextRole) {
        return one.difference.isEmpty() ? one.words
                                        : one.words + QLatin1Char('\n') + one.difference;
    }
    return {};
}

QVariant CompareModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) {
        return {};
    }
    if (orientation == Qt::Vertical) {
        const CompareRow& shown = row(section);
        return shown.kind == CompareKind::section ? QString() : shown.title;
    }
    return QString::fromStdString(m_view->genotypes()[compared(section).genotype].called());
}

Qt::ItemFlags CompareModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) {
        return Qt::NoItemFlags;
    }
    const bool section = row(index.row()).kind == CompareKind::section;
    return section ? Qt::ItemIsEnabled : Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

} // namespace pipwright::ui
