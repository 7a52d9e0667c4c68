#include "ui/grafting/graft_order_model.h"

#include "ui/book/orchard_words.h"
#include "ui/grafting/graft_words.h"
#include "ui/widgets/number_text.h"

namespace pipwright::ui {

namespace {

std::optional<GraftCheckpoint> checkpointOf(int column) {
    switch (column) {
    case GraftOrderModel::weeks:
        return GraftCheckpoint::fourToSixWeeks;
    case GraftOrderModel::midsummer:
        return GraftCheckpoint::midsummer;
    case GraftOrderModel::leafFall:
        return GraftCheckpoint::leafFall;
    default:
        return std::nullopt;
    }
}

} // namespace

const GraftCheck* checkAt(const GraftedOrder& order, GraftCheckpoint checkpoint) {
    const GraftCheck* found = nullptr;
    for (const GraftCheck& check : order.checks) {
        if (check.checkpoint == checkpoint && (found == nullptr || found->date <= check.date)) {
            found = &check;
        }
    }
    return found;
}

void GraftOrderModel::setOrders(OrchardView::Pointer view, std::vector<GraftedOrder> orders) {
    beginResetModel();
    m_view = std::move(view);
    m_orders = std::move(orders);
    endResetModel();
}

std::string GraftOrderModel::codeOf(int row) const {
    const auto genotype = m_view->genotype(order(row).order.genotype);
    return genotype ? m_view->genotypes()[*genotype].called() : std::string("unknown");
}

int GraftOrderModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_orders.size());
}

int GraftOrderModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columnTotal;
}

Qt::ItemFlags GraftOrderModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags plain = QAbstractTableModel::flags(index);
    return checkpointOf(index.column()) ? plain | Qt::ItemIsEditable : plain;
}

QString GraftOrderModel::words(const GraftedOrder& grafted, int column) const {
    const GraftOrder& order = grafted.order;
    switch (column) {
    case date:
        if (!order.date) {
            return order.season.empty() ? tr("not known") : QString::fromStdString(order.season);
        }
        return dateText(*order.date);
    case clone: {
        const auto genotype = m_view->genotype(order.genotype);
        return genotype ? QString::fromStdString(m_view->genotypes()[*genotype].called())
                        : tr("unknown");
    }
    case method:
        return graftMethodWord(order.method);
    case number:
        return QString::number(order.number);
    case onto: {
        const auto plant = order.ontoPlant ? m_view->plant(*order.ontoPlant) : std::nullopt;
        if (!plant) {
            return order.ontoWords.empty() ? tr("not known")
                                           : QString::fromStdString(order.ontoWords);
        }
        const QString place = QString::fromStdString(m_view->placeText(*plant, false));
        const QString code = QString::fromStdString(m_view->plantCode(*plant));
        return place.isEmpty() ? code : tr("%1, %2").arg(code, place);
    }
    default:
        break;
    }
    const GraftCheck* check = checkAt(grafted, *checkpointOf(column));
    if (check == nullptr) {
        return tr("not looked");
    }
    QString text = tr("%1 of %2 alive").arg(check->alive).arg(order.number);
    if (check->date) {
        text += QStringLiteral(", ") + dateText(*check->date);
    }
    if (!check->cause.empty()) {
        text += QStringLiteral(": ") + QString::fromStdString(check->cause);
    }
    return text;
}

QVariant GraftOrderModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const GraftedOrder& one = order(index.row());
    if (role == Qt::EditRole) {
        const auto checkpoint = checkpointOf(index.column());
        const GraftCheck* check = checkpoint ? checkAt(one, *checkpoint) : nullptr;
        return check == nullptr ? QString()
                                : (QString::number(check->alive) + QLatin1Char(' ') +
                                   QString::fromStdString(check->cause))
                                      .trimmed();
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant(Qt::AlignVCenter |
                        (index.column() == number ? Qt::AlignRight : Qt::AlignLeft));
    }
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole) {
        return words(one, index.column());
    }
    return {};
}

bool GraftOrderModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const auto checkpoint = checkpointOf(index.column());
    const QString typed = value.toString().trimmed();
    if (role != Qt::EditRole || !checkpoint || typed == data(index, Qt::EditRole).toString()) {
        return false;
    }
    const auto count = readGraftCount(typed.toStdString(), order(index.row()).order.number);
    if (!count) {
        Q_EMIT refused(count.problem());
        return false;
    }
    Q_EMIT checked(index.row(), *checkpoint, *count);
    return true;
}

QVariant GraftOrderModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
    case date:
        return tr("grafted on");
    case clone:
        return tr("clone");
    case method:
        return tr("method");
    case number:
        return tr("grafts");
    case onto:
        return tr("onto");
    default:
        return checkpointWord(*checkpointOf(section));
    }
}

} // namespace pipwright::ui
