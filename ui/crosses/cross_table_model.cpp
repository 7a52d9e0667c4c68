#include "ui/crosses/cross_table_model.h"

#include "core/units/text.h"
#include "ui/book/book_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <functional>
#include <unordered_map>

namespace pipwright::ui {

namespace {

struct TableTexts {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::CrossTable)
};

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

QVariant orUnknown(const std::optional<std::int64_t>& count) {
    return count ? QVariant(static_cast<qlonglong>(*count)) : QVariant{};
}

bool isKept(Stage stage) {
    switch (stage) {
    case Stage::watched:
    case Stage::selection:
    case Stage::advanced:
    case Stage::named:
    case Stage::released:
        return true;
    default:
        return false;
    }
}

QString purityWord(Purity purity) {
    switch (purity) {
    case Purity::emasculatedBagged:
        return TableTexts::tr("emasculated and bagged");
    case Purity::bagged:
        return TableTexts::tr("bagged");
    case Purity::taggedOnly:
        return TableTexts::tr("tagged only");
    case Purity::open:
        return TableTexts::tr("open");
    case Purity::unknown:
        break;
    }
    return TableTexts::tr("unknown");
}

struct Column {
    QString title;
    std::function<QVariant(const CrossLine&)> value;
};

const std::vector<Column>& columns() {
    static std::vector<Column> all;
    static QString language;
    const QString now = TableTexts::tr("cross");
    if (language == now && !all.empty()) {
        return all;
    }
    language = now;
    all = {
        {now, [](const CrossLine& line) { return QVariant(text(line.cross.code)); }},
        {TableTexts::tr("seed x pollen parent"),
         [](const CrossLine& line) { return QVariant(text(line.parents)); }},
        {TableTexts::tr("species"),
         [](const CrossLine& line) { return QVariant(text(line.species)); }},
        {TableTexts::tr("crop year"),
         [](const CrossLine& line) {
             return line.cross.cropYear ? QVariant(line.cross.cropYear->year) : QVariant{};
         }},
        {TableTexts::tr("purity"),
         [](const CrossLine& line) { return QVariant(purityWord(line.cross.purity)); }},
        {TableTexts::tr("flowers"),
         [](const CrossLine& line) { return orUnknown(line.cross.flowers); }},
        {TableTexts::tr("fruits set"),
         [](const CrossLine& line) { return orUnknown(line.cross.fruitsSet); }},
        {TableTexts::tr("seeds"),
         [](const CrossLine& line) { return orUnknown(line.cross.seedsGot); }},
        {TableTexts::tr("germinated"),
         [](const CrossLine& line) { return orUnknown(line.cross.germinated); }},
        {TableTexts::tr("seedlings"),
         [](const CrossLine& line) { return QVariant(line.seedlings); }},
        {TableTexts::tr("growing"), [](const CrossLine& line) { return QVariant(line.growing); }},
        {TableTexts::tr("fruited"), [](const CrossLine& line) { return QVariant(line.fruited); }},
        {TableTexts::tr("fairly tasted"),
         [](const CrossLine& line) { return QVariant(line.tasted); }},
        {TableTexts::tr("watched or further"),
         [](const CrossLine& line) { return QVariant(line.kept); }},
        {TableTexts::tr("culled"), [](const CrossLine& line) { return QVariant(line.culled); }},
    };
    return all;
}

} // namespace

std::vector<CrossLine> crossLines(const OrchardView& view) {
    std::vector<CrossLine> lines;
    std::unordered_map<Uuid, std::size_t> at;
    for (const Cross& cross : view.crosses()) {
        at[cross.id.uuid] = lines.size();
        CrossLine line;
        line.cross = cross;
        const Species* species = cross.species ? view.species(*cross.species) : nullptr;
        line.species = species != nullptr ? speciesName(*species).toStdString() : std::string{};
        lines.push_back(std::move(line));
    }
    for (Index i = 0; i < view.genotypes().size(); ++i) {
        const GenotypeEntry& genotype = view.genotypes()[i];
        const auto found =
            genotype.cross && !genotype.erased ? at.find(genotype.cross->uuid) : at.end();
        if (found == at.end()) {
            continue;
        }
        CrossLine& line = lines[found->second];
        if (line.parents.empty()) {
            line.parents = crossWords(view, i).toStdString();
        }
        const auto& plants = view.plantsOf(i);
        const bool growing = std::any_of(plants.begin(), plants.end(), [&view](Index plant) {
            return view.plants()[plant].state == PlantState::growing;
        });
        const GenotypeFacts& facts = view.genotypeFacts(i);
        line.seedlings += 1;
        line.growing += growing ? 1 : 0;
        line.fruited += facts.firstFruitYear ? 1 : 0;
        line.tasted += facts.fairLots > 0 ? 1 : 0;
        line.kept += isKept(genotype.stage) ? 1 : 0;
        line.culled += genotype.stage == Stage::culled ? 1 : 0;
    }
    for (CrossLine& line : lines) {
        if (line.parents.empty()) { // no seedling yet
            const auto name = [&view](const std::optional<GenotypeId>& id) {
                const auto parent = id ? view.genotype(*id) : std::nullopt;
                return parent ? view.genotypes()[*parent].called() : std::string("?");
            };
            line.parents = name(line.cross.seedParent) + " x " + name(line.cross.pollenParent);
        }
    }
    return lines;
}

void CrossTableModel::setLines(std::vector<CrossLine> lines) {
    beginResetModel();
    m_lines = std::move(lines);
    endResetModel();
}

int CrossTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int CrossTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(columns().size());
}

QVariant CrossTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const QVariant value =
        columns()[static_cast<std::size_t>(index.column())].value(line(index.row()));
    constexpr int kFirstCount = 5; // flowers, and all columns after it, are counts
    const bool isNumber = index.column() >= kFirstCount || value.typeId() == QMetaType::Int;
    if (role == Qt::DisplayRole) {
        return value.isValid() ? value : QVariant(QStringLiteral("–"));
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant(Qt::AlignVCenter | (isNumber ? Qt::AlignRight : Qt::AlignLeft));
    }
    if (role == Qt::AccessibleTextRole) {
        return value.isValid() ? value.toString() : TableTexts::tr("unknown");
    }
    return {};
}

QVariant CrossTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) {
        return {};
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant(Qt::AlignVCenter | Qt::AlignLeft);
    }
    if (role != Qt::DisplayRole) {
        return {};
    }
    return columns()[static_cast<std::size_t>(section)].title;
}

void CrossTableModel::sort(int column, Qt::SortOrder order) {
    if (column < 0) {
        return;
    }
    const auto& value = columns()[static_cast<std::size_t>(column)].value;
    Q_EMIT layoutAboutToBeChanged();
    const QModelIndexList kept = persistentIndexList();
    std::vector<CrossId> crosses; // of the rows that somebody keeps an eye on
    for (const QModelIndex& index : kept) {
        crosses.push_back(line(index.row()).cross.id);
    }
    std::stable_sort(m_lines.begin(), m_lines.end(), [&](const CrossLine& a, const CrossLine& b) {
        const QVariant one = value(a);
        const QVariant other = value(b);
        if (one.isValid() != other.isValid()) {
            return one.isValid(); // unknown stands last, whichever way
        }
        const auto less = [](const QVariant& x, const QVariant& y) {
            if (x.typeId() == QMetaType::QString) {
                return naturalOrder(x.toString().toStdString(), y.toString().toStdString()) < 0;
            }
            return x.toLongLong() < y.toLongLong();
        };
        return order == Qt::AscendingOrder ? less(one, other) : less(other, one);
    });
    for (qsizetype i = 0; i < kept.size(); ++i) {
        const auto found = std::find_if(m_lines.begin(), m_lines.end(), [&](const CrossLine& one) {
            return one.cross.id == crosses[static_cast<std::size_t>(i)];
        });
        changePersistentIndex(kept[i],
                              index(static_cast<int>(found - m_lines.begin()), kept[i].column()));
    }
    Q_EMIT layoutChanged();
}

} // namespace pipwright::ui
