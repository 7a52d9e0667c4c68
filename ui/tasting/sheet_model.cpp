#include "ui/tasting/sheet_model.h"

#include "core/evaluation/typed_tree.h"
#include "ui/book/orchard_words.h"
#include "ui/tasting/thumb_letters.h"
#include "ui/widgets/theme.h"

#include <QGuiApplication>

#include <algorithm>

namespace pipwright::ui {

namespace {

Problem notALetter(const QString& typed, const QString& letters) {
    return {ProblemCode::badInput,
            SheetModel::tr("\"%1\" is none of the letters here.").arg(typed).toStdString(),
            SheetModel::tr("Type one of: %1.").arg(letters).toStdString(),
            {}};
}

template <typename Enum>
CellReading readLetter(const QString& typed, const std::optional<Enum>& value,
                       QString (*word)(Enum), const QString& letters) {
    if (!value) {
        return {typed, notALetter(typed.trimmed(), letters)};
    }
    const bool unknown = *value == Enum::unknown;
    return {unknown ? (typed.trimmed().isEmpty() ? QString() : QStringLiteral("?")) : word(*value),
            {}};
}

QString problemText(const Problem& problem) {
    return QString::fromStdString(problem.sentence());
}

} // namespace

bool SheetRow::empty() const {
    const auto blank = [](const QString& text) { return text.trimmed().isEmpty(); };
    return blank(fruit) && blank(origin) && blank(ripeness) && blank(soundness) && blank(path) &&
           std::all_of(scores.begin(), scores.end(),
                       [&blank](const auto& score) { return blank(score.second); });
}

SheetModel::SheetModel(ViewSource view, QObject* parent)
    : QAbstractTableModel(parent), m_view(std::move(view)), m_rows(1) {}

void SheetModel::setTasters(std::vector<Person> tasters) {
    beginResetModel();
    m_tasters = std::move(tasters);
    endResetModel();
}

void SheetModel::setRows(std::vector<SheetRow> rows) {
    beginResetModel();
    m_rows = std::move(rows);
    if (m_rows.empty() || !m_rows.back().empty()) {
        m_rows.emplace_back();
    }
    endResetModel();
}

bool SheetModel::isBlank() const {
    return std::all_of(m_rows.begin(), m_rows.end(), [](const auto& row) { return row.empty(); });
}

void SheetModel::readAnew() {
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

QString SheetModel::help(int column) const {
    switch (column) {
    case fruit:
        return tr("code, name or row/place; bought fruit with its source: Ash Tarn @ farm shop");
    case origin:
        return originLetters();
    case ripeness:
        return ripenessLetters();
    case soundness:
        return soundnessLetters();
    case path:
        return pathLetters();
    default:
        return tr("liking 1 to 9 (7, 7.5 or 7h), verdict (x cull, - no reason to keep, ? again, + "
                  "watch, ++ back up, P parent, N name), then words");
    }
}

CellReading SheetModel::readFruit(const QString& text) const {
    if (text.trimmed().isEmpty()) {
        return {};
    }
    const auto view = m_view();
    const auto fruitRead = fruitNamed(*view, text.toStdString());
    if (!fruitRead) {
        return {text, fruitRead.problem()};
    }
    const auto code = [&view](Index genotype) {
        return QString::fromStdString(view->genotypes()[genotype].called());
    };
    if (fruitRead->bought) {
        const QString source = QString::fromStdString(fruitRead->source);
        return {source.isEmpty() ? tr("%1 (bought)").arg(code(*fruitRead->tree.genotype))
                                 : tr("%1 (from %2)").arg(code(*fruitRead->tree.genotype), source),
                {}};
    }
    if (!fruitRead->tree.plant) {
        return {tr("%1 (no tree in the book)").arg(code(*fruitRead->tree.genotype)), {}};
    }
    const Index plant = *fruitRead->tree.plant;
    const QString place = QString::fromStdString(view->placeText(plant, false));
    const QString name = QString::fromStdString(view->plantCode(plant));
    return {place.isEmpty() ? name : tr("%1, %2").arg(name, place), {}};
}

CellReading SheetModel::readScore(const QString& text) const {
    const auto score = readTypedScore(text.toStdString());
    if (!score) {
        return {text, score.problem()};
    }
    QStringList parts;
    if (score->liking) {
        TypedScore number;
        number.liking = score->liking;
        parts << QString::fromStdString(typedText(number));
    }
    if (score->verdict != Verdict::unknown) {
        parts << verdictWord(score->verdict);
    }
    if (!score->words.empty()) {
        parts << QString::fromStdString(score->words);
    }
    return {parts.join(QStringLiteral(" · ")), {}};
}

CellReading SheetModel::reading(int row, int column) const {
    const QString text = typed(row, column);
    switch (column) {
    case fruit: {
        const SheetRow& whole = m_rows[static_cast<std::size_t>(row)];
        if (text.trimmed().isEmpty() && !whole.empty()) {
            return {{},
                    Problem{ProblemCode::badInput,
                            tr("This row does not say which fruit it was.").toStdString(),
                            tr("Type a code, a name or row/place in its first cell.").toStdString(),
                            {}}};
        }
        return readFruit(text);
    }
    case origin:
        return readLetter(text, originTyped(text), originWord, originLetters());
    case ripeness:
        return readLetter(text, ripenessTyped(text), ripenessWord, ripenessLetters());
    case soundness:
        return readLetter(text, soundnessTyped(text), soundnessWord, soundnessLetters());
    case path: {
        const auto stored = readStoragePath(text.toStdString());
        return {text.trimmed(), stored ? std::nullopt : std::optional(stored.problem())};
    }
    default:
        return readScore(text);
    }
}

std::optional<std::pair<QModelIndex, Problem>> SheetModel::firstFault() const {
    for (int row = 0; row < rowCount(); ++row) {
        for (int column = 0; column < columnCount(); ++column) {
            if (const auto problem = reading(row, column).problem) {
                return std::pair(index(row, column), *problem);
            }
        }
    }
    return std::nullopt;
}

std::vector<ServedLot> SheetModel::lots() const {
    std::vector<ServedLot> all;
    for (int row = 0; row < static_cast<int>(m_rows.size()); ++row) {
        if (auto lot = lotAt(row)) {
            all.push_back(std::move(*lot));
        }
    }
    return all;
}

std::optional<ServedLot> SheetModel::lotAt(int at) const {
    const SheetRow& row = m_rows[static_cast<std::size_t>(at)];
    const auto view = m_view();
    const auto fruitRead = fruitNamed(*view, row.fruit.toStdString());
    if (!fruitRead) {
        return std::nullopt;
    }
    ServedLot lot;
    if (fruitRead->tree.plant) {
        lot.plant = view->plants()[*fruitRead->tree.plant].id;
        lot.hemisphere = view->hemisphereOf(*fruitRead->tree.plant);
    } else if (fruitRead->tree.genotype) {
        lot.claimedGenotype = view->genotypes()[*fruitRead->tree.genotype].id;
    }
    lot.source = fruitRead->source;
    lot.condition.origin = originTyped(row.origin).value_or(Origin::unknown);
    lot.condition.ripeness = ripenessTyped(row.ripeness).value_or(Ripeness::unknown);
    lot.condition.soundness = soundnessTyped(row.soundness).value_or(Soundness::unknown);
    if (const auto stored = readStoragePath(row.path.toStdString())) {
        putPath(*stored, lot.condition);
    }
    for (const Person& taster : m_tasters) {
        const auto found = row.scores.find(taster.id.uuid);
        if (found == row.scores.end()) {
            continue;
        }
        if (const auto score = readTypedScore(found->second.toStdString())) {
            lot.scores.push_back({taster.id, score->liking, score->verdict, score->words});
        }
    }
    return lot;
}

int SheetModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int SheetModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : firstTaster + static_cast<int>(m_tasters.size());
}

Qt::ItemFlags SheetModel::flags(const QModelIndex& index) const {
    return QAbstractTableModel::flags(index) | Qt::ItemIsEditable;
}

QString SheetModel::typed(int row, int column) const {
    const SheetRow& one = m_rows[static_cast<std::size_t>(row)];
    switch (column) {
    case fruit:
        return one.fruit;
    case origin:
        return one.origin;
    case ripeness:
        return one.ripeness;
    case soundness:
        return one.soundness;
    case path:
        return one.path;
    default:
        break;
    }
    const auto& taster = m_tasters[static_cast<std::size_t>(column - firstTaster)];
    const auto found = one.scores.find(taster.id.uuid);
    return found == one.scores.end() ? QString() : found->second;
}

void SheetModel::put(int row, int column, const QString& text) {
    SheetRow& one = m_rows[static_cast<std::size_t>(row)];
    switch (column) {
    case fruit:
        one.fruit = text;
        break;
    case origin:
        one.origin = text;
        break;
    case ripeness:
        one.ripeness = text;
        break;
    case soundness:
        one.soundness = text;
        break;
    case path:
        one.path = text;
        break;
    default:
        one.scores[m_tasters[static_cast<std::size_t>(column - firstTaster)].id.uuid] = text;
    }
}

QVariant SheetModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    if (role == Qt::EditRole) {
        return typed(index.row(), index.column());
    }
    const CellReading cell = reading(index.row(), index.column());
    switch (role) {
    case Qt::DisplayRole: // a mark besides the colour
        return cell.problem ? QStringLiteral("⚠ ") + typed(index.row(), index.column())
                            : cell.shown;
    case Qt::ForegroundRole:
        return cell.problem ? QVariant(currentTheme().blood) : QVariant();
    case Qt::ToolTipRole:
        return cell.problem ? problemText(*cell.problem) : help(index.column());
    case Qt::AccessibleTextRole:
        return cell.problem           ? problemText(*cell.problem)
               : cell.shown.isEmpty() ? tr("empty")
                                      : cell.shown;
    default:
        return {};
    }
}

bool SheetModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !index.isValid()) {
        return false;
    }
    QString text = value.toString();
    if (text == QStringLiteral("\"") && index.row() > 0) { // the ditto mark: as above
        text = typed(index.row() - 1, index.column());
    }
    put(index.row(), index.column(), text);
    Q_EMIT dataChanged(this->index(index.row(), 0), index);
    keepEmptyRow();
    return true;
}

void SheetModel::keepEmptyRow() {
    if (!m_rows.back().empty()) {
        const int end = rowCount();
        beginInsertRows({}, end, end);
        m_rows.emplace_back();
        endInsertRows();
    }
}

bool SheetModel::removeRows(int row, int count, const QModelIndex& parent) {
    if (parent.isValid() || row < 0 || count < 1 || row + count > rowCount()) {
        return false;
    }
    beginRemoveRows({}, row, row + count - 1);
    m_rows.erase(m_rows.begin() + row, m_rows.begin() + row + count);
    endRemoveRows();
    if (m_rows.empty()) {
        beginInsertRows({}, 0, 0);
        m_rows.emplace_back();
        endInsertRows();
    }
    keepEmptyRow();
    return true;
}

QVariant SheetModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical) {
        return role == Qt::DisplayRole ? QVariant(section + 1) : QVariant();
    }
    if (role == Qt::ToolTipRole) {
        return help(section);
    }
    if (role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
    case fruit:
        return tr("fruit");
    case origin:
        return tr("origin");
    case ripeness:
        return tr("ripeness");
    case soundness:
        return tr("soundness");
    case path:
        return tr("days kept");
    default:
        return QString::fromStdString(
            m_tasters[static_cast<std::size_t>(section - firstTaster)].name);
    }
}

} // namespace pipwright::ui
