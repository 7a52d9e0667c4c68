#include "ui/compare/compare_model.h"

#include "ui/book/orchard_words.h"
#include "ui/widgets/number_text.h"

#include <QStringList>

#include <algorithm>
#include <set>

namespace pipwright::ui {

namespace {

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

constexpr qsizetype kMostWords = 4;

} // namespace

void CompareModel::setComparison(OrchardView::Pointer view, Comparison comparison) {
    beginResetModel();
    m_view = std::move(view);
    m_comparison = std::move(comparison);
    m_lines.clear();
    const auto add = [this](CompareAspect aspect, const QString& title) {
        m_lines.push_back({aspect, {}, title});
    };
    add(CompareAspect::stage, tr("stage"));
    add(CompareAspect::parents, tr("parents"));
    const auto hasPhotos = [](const auto& column) { return !column.life.photos.empty(); };
    if (std::any_of(m_comparison.columns.begin(), m_comparison.columns.end(), hasPhotos)) {
        add(CompareAspect::photos, tr("photo"));
    }
    add(CompareAspect::window, tr("harvest window"));
    add(CompareAspect::allLiking, tr("liking, every score as eaten"));
    add(CompareAspect::fairLiking, tr("liking, fair lots"));
    add(CompareAspect::evidence, tr("evidence"));
    for (const TraitId trait : m_comparison.traits) {
        const Trait* one = m_view->trait(trait);
        QString title = one == nullptr ? QString() : text(one->name);
        if (one != nullptr && !one->unit.empty()) {
            title += QStringLiteral(" (%1)").arg(text(one->unit));
        }
        if (one != nullptr && one->direction == Direction::lowerIsBetter) {
            title += QLatin1Char('\n') + tr("low is good");
        } else if (one != nullptr && one->direction == Direction::higherIsBetter) {
            title += QLatin1Char('\n') + tr("high is good");
        }
        m_lines.push_back({CompareAspect::trait, trait, title});
    }
    add(CompareAspect::words, tr("words of tasters"));
    endResetModel();
}

const ComparedTrait* CompareModel::traitIn(int at, TraitId trait) const {
    const auto& traits = column(at).traits;
    const auto found = std::find_if(traits.begin(), traits.end(),
                                    [&trait](const auto& one) { return one.trait == trait; });
    return found == traits.end() ? nullptr : &*found;
}

std::pair<double, double> CompareModel::scaleOf(TraitId trait) const {
    const auto states = m_view->statesOf(trait);
    if (!states.empty()) {
        return {static_cast<double>(states.front()->rank),
                static_cast<double>(states.back()->rank)};
    }
    std::optional<std::pair<double, double>> scale;
    for (int at = 0; at < columnCount(); ++at) {
        if (const ComparedTrait* one = traitIn(at, trait)) {
            scale = scale ? std::pair(std::min(scale->first, one->lowest),
                                      std::max(scale->second, one->highest))
                          : std::pair(one->lowest, one->highest);
        }
    }
    if (!scale || scale->first == scale->second) {
        const double middle = scale ? scale->first : 0;
        return {middle - 1, middle + 1};
    }
    return *scale;
}

int CompareModel::beyondDoubt(int row, int at) const {
    if (at == 0) {
        return 0;
    }
    const CompareLine& line = lineAt(row);
    if (line.aspect == CompareAspect::fairLiking) {
        return column(0).fairLiking && column(at).fairLiking
                   ? differenceBeyondDoubt(*column(at).fairLiking, *column(0).fairLiking)
                   : 0;
    }
    if (line.aspect != CompareAspect::trait) {
        return 0;
    }
    const ComparedTrait* one = traitIn(at, line.trait);
    const ComparedTrait* first = traitIn(0, line.trait);
    return one != nullptr && first != nullptr ? differenceBeyondDoubt(*one, *first) : 0;
}

int CompareModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int CompareModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_comparison.columns.size());
}

QString CompareModel::windowText(const ComparedGenotype& column) const {
    if (column.season.years.empty()) {
        return tr("never walked");
    }
    QStringList years;
    for (const LifeYear& year : column.season.years) {
        const ObservedWindow& window = year.window;
        const QString from = window.firstRipe ? dateText(*window.firstRipe) : tr("not seen ripe");
        const QString to = window.over ? dateText(*window.over) : tr("open");
        years << QStringLiteral("%1: %2 – %3").arg(year.cropYear).arg(from, to);
    }
    if (column.season.usualWeek) {
        years.prepend(tr("usually week %1").arg(*column.season.usualWeek));
    }
    return years.join(QLatin1Char('\n'));
}

QString CompareModel::likingText(const ComparedGenotype& column) const {
    if (!column.fairLiking) {
        return tr("no fair lot yet");
    }
    std::set<Uuid> tasters;
    std::set<int> years;
    for (const ComparedScore& score : column.scores) {
        if (score.fair) {
            tasters.insert(score.taster.uuid);
            years.insert(score.cropYear);
        }
    }
    return doubtText(column.fairLiking->mean, column.fairLiking->standardError, 1) +
           QLatin1Char('\n') + tr("%n score(s)", nullptr, column.fairLiking->count) + tr(", ") +
           tr("%n taster(s)", nullptr, static_cast<int>(tasters.size())) + tr(", ") +
           tr("%n crop year(s)", nullptr, static_cast<int>(years.size()));
}

QString CompareModel::evidenceText(const ComparedGenotype& column) const {
    std::set<Uuid> sittings;
    for (const TastedLot& lot : column.life.tastings) {
        sittings.insert(lot.tasting.id.uuid);
    }
    return tr("%n lot(s)", nullptr, column.facts.lots) + tr(", ") +
           tr("%n fair", nullptr, column.facts.fairLots) + tr(", ") +
           tr("%n sitting(s)", nullptr, static_cast<int>(sittings.size())) + tr(", ") +
           tr("%n crop year(s)", nullptr, column.facts.cropYears);
}

QString CompareModel::traitText(const CompareLine& line, const ComparedGenotype& column) const {
    const auto found = std::find_if(column.traits.begin(), column.traits.end(),
                                    [&line](const auto& one) { return one.trait == line.trait; });
    if (found == column.traits.end()) {
        return QStringLiteral("–");
    }
    const Trait* trait = m_view->trait(line.trait);
    const QString unit = trait == nullptr ? QString() : text(trait->unit);
    QString words = doubtText(found->mean, found->standardError, 1, unit);
    if (found->count > 1) {
        words += QStringLiteral("\n%1 – %2, ")
                     .arg(numberText(found->lowest, 1), numberText(found->highest, 1)) +
                 tr("n %1").arg(found->count);
    } else {
        words += QLatin1Char('\n') + tr("n 1");
    }
    return words;
}

QString CompareModel::lastWords(const ComparedGenotype& column) {
    QStringList words;
    for (auto score = column.scores.rbegin(); score != column.scores.rend(); ++score) {
        if (!score->words.empty() && words.size() < kMostWords) {
            words << QStringLiteral("%1: %2").arg(score->date.year()).arg(text(score->words));
        }
    }
    return words.isEmpty() ? QStringLiteral("–") : words.join(QLatin1Char('\n'));
}

QString CompareModel::textOf(const CompareLine& line, const ComparedGenotype& column) const {
    const GenotypeEntry& entry = m_view->genotypes()[column.genotype];
    switch (line.aspect) {
    case CompareAspect::stage:
        return stageWord(entry.stage) + (entry.benchmark ? tr(", benchmark") : QString());
    case CompareAspect::parents: {
        const QString cross = text(m_view->crossText(column.genotype));
        const QString purdy = text(column.purdy);
        return cross.isEmpty() ? tr("not known")
               : purdy.isEmpty() || purdy.count(QLatin1Char('/')) < 2
                   ? cross
                   : cross + QLatin1Char('\n') + purdy;
    }
    case CompareAspect::photos:
        return column.life.photos.empty() ? QStringLiteral("–")
                                          : text(column.life.photos.back().caption);
    case CompareAspect::window:
        return windowText(column);
    case CompareAspect::allLiking: {
        QStringList scores;
        for (const ComparedScore& score : column.scores) {
            scores << numberText(score.liking, 1) + (score.fair ? QString() : tr(" (not fair)"));
        }
        return scores.isEmpty() ? tr("not tasted") : scores.join(QStringLiteral("; "));
    }
    case CompareAspect::fairLiking:
        return likingText(column);
    case CompareAspect::evidence:
        return evidenceText(column);
    case CompareAspect::trait:
        return traitText(line, column);
    case CompareAspect::words:
        return lastWords(column);
    }
    return {};
}

QVariant CompareModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const CompareLine& line = lineAt(index.row());
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole) {
        QString words = textOf(line, column(index.column()));
        const int beyond = beyondDoubt(index.row(), index.column());
        if (beyond != 0) {
            words += QLatin1Char('\n') + (beyond > 0 ? tr("above the first beyond doubt")
                                                     : tr("below the first beyond doubt"));
        }
        return words;
    }
    if (role == Qt::AccessibleTextRole) {
        return QStringLiteral("%1, %2: %3")
            .arg(headerData(index.column(), Qt::Horizontal).toString(), line.title,
                 data(index).toString());
    }
    return {};
}

QVariant CompareModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole) {
        return {};
    }
    if (orientation == Qt::Vertical) {
        return lineAt(section).title;
    }
    const GenotypeEntry& entry = m_view->genotypes()[column(section).genotype];
    return entry.name.empty() || entry.name == entry.code
               ? text(entry.code)
               : text(entry.name) + QStringLiteral(" · ") + text(entry.code);
}

} // namespace pipwright::ui
