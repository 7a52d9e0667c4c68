#include "ui/grafting/graft_wish_model.h"

#include "core/units/text.h"
#include "ui/book/orchard_words.h"
#include "ui/grafting/graft_words.h"
#include "ui/widgets/number_text.h"

namespace pipwright::ui {

namespace {

bool isEdited(int column) {
    return column == GraftWishModel::number || column == GraftWishModel::reason ||
           column == GraftWishModel::state;
}

} // namespace

void GraftWishModel::setWishes(OrchardView::Pointer view, std::vector<GraftWish> wishes) {
    beginResetModel();
    m_view = std::move(view);
    m_lines.clear();
    for (GraftWish& wish : wishes) {
        Line line{std::move(wish), {}};
        if (const auto genotype = m_view->genotype(line.wish.genotype)) {
            line.copies = livingCopies(*m_view, *genotype);
        }
        m_lines.push_back(std::move(line));
    }
    endResetModel();
}

std::string GraftWishModel::codeOf(int row) const {
    const auto genotype = m_view->genotype(wish(row).genotype);
    return genotype ? m_view->genotypes()[*genotype].called() : std::string("unknown");
}

int GraftWishModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int GraftWishModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columnTotal;
}

Qt::ItemFlags GraftWishModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags plain = QAbstractTableModel::flags(index);
    return isEdited(index.column()) ? plain | Qt::ItemIsEditable : plain;
}

QString GraftWishModel::words(const Line& line, int column) const {
    const GraftWish& wish = line.wish;
    switch (column) {
    case clone: {
        const auto genotype = m_view->genotype(wish.genotype);
        return genotype ? QString::fromStdString(m_view->genotypes()[*genotype].called())
                        : tr("unknown");
    }
    case from: {
        const auto plant = wish.motherPlant ? m_view->plant(*wish.motherPlant) : std::nullopt;
        if (!plant) {
            return tr("any of its trees");
        }
        const QString place = QString::fromStdString(m_view->placeText(*plant, false));
        const PlantState now = m_view->plants()[*plant].state;
        const QString standing = place.isEmpty() ? tr("place not known") : place;
        return now == PlantState::growing ? standing : tr("%1 (%2)").arg(standing, stateWord(now));
    }
    case number:
        return QString::number(wish.number);
    case reason:
        return QString::fromStdString(wish.reason);
    case wished:
        return wish.wished ? dateText(*wish.wished) : tr("not known");
    case person:
        return personWords(*m_view, wish.person);
    case state:
        return wishStateWord(wish.state);
    default:
        return copiesWords(line.copies);
    }
}

QVariant GraftWishModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const Line& line = m_lines[static_cast<std::size_t>(index.row())];
    if (role == kSortRole) {
        switch (index.column()) {
        case number:
            return static_cast<qlonglong>(line.wish.number);
        case wished:
            return line.wish.wished ? line.wish.wished->days() : -1;
        case state:
            return static_cast<int>(line.wish.state);
        case copies:
            return line.copies.stems * 1000 + line.copies.plants;
        default:
            return QByteArray::fromStdString(
                naturalSortKey(words(line, index.column()).toStdString()));
        }
    }
    if (role == Qt::EditRole && index.column() == state) {
        return static_cast<int>(line.wish.state);
    }
    if (role == Qt::TextAlignmentRole) {
        return QVariant(Qt::AlignVCenter |
                        (index.column() == number ? Qt::AlignRight : Qt::AlignLeft));
    }
    if (role == Qt::DisplayRole || role == Qt::EditRole || role == Qt::ToolTipRole) {
        return words(line, index.column());
    }
    return {};
}

bool GraftWishModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !isEdited(index.column())) {
        return false;
    }
    const GraftWish& before = wish(index.row());
    GraftWish after = before;
    if (index.column() == number) {
        bool ok = false;
        const int typed = value.toString().trimmed().toInt(&ok);
        if (!ok || typed < 1 || typed > kMostGrafts) {
            Q_EMIT refused(
                {ProblemCode::badInput,
                 tr("\"%1\" is no number of grafts.").arg(value.toString()).toStdString(),
                 tr("Type a whole number from 1 to %1.").arg(kMostGrafts).toStdString(),
                 {}});
            return false;
        }
        after.number = typed;
    } else if (index.column() == reason) {
        after.reason = value.toString().trimmed().toStdString();
    } else {
        after.state = static_cast<WishState>(value.toInt());
    }
    Q_EMIT changed(before, after);
    return true;
}

QVariant GraftWishModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
    case clone:
        return tr("clone");
    case from:
        return tr("wood from");
    case number:
        return tr("grafts");
    case reason:
        return tr("why");
    case wished:
        return tr("wished on");
    case person:
        return tr("by");
    case state:
        return tr("state");
    default:
        return tr("alive now");
    }
}

} // namespace pipwright::ui
