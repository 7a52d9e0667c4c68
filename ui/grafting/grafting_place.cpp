#include "ui/grafting/grafting_place.h"

#include "ui/book/open_book.h"
#include "ui/grafting/frame_tree_view.h"
#include "ui/grafting/graft_order_model.h"
#include "ui/grafting/graft_wish_model.h"
#include "ui/grafting/graft_words.h"
#include "ui/grafting/order_line.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/plain_table.h"
#include "ui/widgets/theme.h"

#include <QComboBox>
#include <QHeaderView>
#include <QListWidget>
#include <QSortFilterProxyModel>
#include <QSplitter>
#include <QTabWidget>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr int kLinesPerRow = 2;
constexpr int kLeastColumn = 96;

/// Short columns as wide as their words, the wordy ones share what is left.
void shareWidth(PlainTable* table, int columns, std::initializer_list<int> wordy) {
    QHeaderView* header = table->horizontalHeader();
    header->setStretchLastSection(false);
    for (int column = 0; column < columns; ++column) {
        const bool shares = std::find(wordy.begin(), wordy.end(), column) != wordy.end();
        header->setSectionResizeMode(column,
                                     shares ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
    }
    table->setLinesPerRow(kLinesPerRow);
    header->setMinimumSectionSize(kLeastColumn); // a narrow window scrolls sideways instead
    // A reason is read whole: rows are as high as their words, whatever width those have.
    auto* soon = new QTimer(table);
    soon->setSingleShot(true);
    soon->setInterval(0);
    QObject::connect(soon, &QTimer::timeout, table, &QTableView::resizeRowsToContents);
    const auto again = [soon] { soon->start(); };
    QObject::connect(header, &QHeaderView::sectionResized, soon, again);
    QObject::connect(table->model(), &QAbstractItemModel::modelReset, soon, again);
    QObject::connect(table->model(), &QAbstractItemModel::layoutChanged, soon, again);
    QObject::connect(table->model(), &QAbstractItemModel::dataChanged, soon, again);
}

/// The state of a wish is chosen from its words.
class StateCells : public PaddedCells {
  public:
    using PaddedCells::PaddedCells;

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem&,
                          const QModelIndex&) const override {
        auto* box = new QComboBox(parent);
        box->setAccessibleName(GraftingPlace::tr("State of the wish"));
        for (const WishState state : wishStates()) {
            box->addItem(wishStateWord(state), static_cast<int>(state));
        }
        return box;
    }
    void setEditorData(QWidget* editor, const QModelIndex& index) const override {
        auto* box = static_cast<QComboBox*>(editor);
        box->setCurrentIndex(box->findData(index.data(Qt::EditRole)));
    }
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override {
        model->setData(index, static_cast<QComboBox*>(editor)->currentData(), Qt::EditRole);
    }
};

QWidget* titled(const QString& title, std::initializer_list<QWidget*> parts) {
    const Theme& theme = lightTheme();
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(theme.space, theme.gap, theme.space, theme.gap);
    column->setSpacing(theme.gap);
    column->addWidget(new FlowText(title, FlowText::Weight::strong));
    for (QWidget* part : parts) {
        column->addWidget(part, qobject_cast<QAbstractItemView*>(part) != nullptr ? 1 : 0);
    }
    return box;
}

} // namespace

GraftingPlace::GraftingPlace(OpenBook& book, QWidget* parent) : QWidget(parent), m_book(book) {
    build();
    connectParts();
}

void GraftingPlace::build() {
    m_wishes = new GraftWishModel(this);
    m_sorted = new QSortFilterProxyModel(this);
    m_sorted->setSourceModel(m_wishes);
    m_sorted->setSortRole(GraftWishModel::kSortRole);
    m_wishTable = new PlainTable(tr("Graft wishes"));
    m_wishTable->setModel(m_sorted);
    m_wishTable->setSortingEnabled(true);
    m_wishTable->sortByColumn(GraftWishModel::state, Qt::AscendingOrder);
    m_wishTable->setEditTriggers(QAbstractItemView::DoubleClicked |
                                 QAbstractItemView::EditKeyPressed);
    m_wishTable->setItemDelegateForColumn(GraftWishModel::state, new StateCells(this));
    shareWidth(m_wishTable, GraftWishModel::columnTotal,
               {GraftWishModel::reason, GraftWishModel::copies});
    m_wishWords = new FlowText({}, FlowText::Weight::small);
    m_orderLine = new OrderLine(m_book);
    m_orders = new GraftOrderModel(this);
    m_orderTable = new PlainTable(tr("Graft orders and what lives of them"));
    m_orderTable->setModel(m_orders);
    m_orderTable->setEditTriggers(QAbstractItemView::DoubleClicked |
                                  QAbstractItemView::EditKeyPressed);
    shareWidth(m_orderTable, GraftOrderModel::columnTotal,
               {GraftOrderModel::onto, GraftOrderModel::weeks, GraftOrderModel::midsummer,
                GraftOrderModel::leafFall});
    m_notice = new NoticeBar;
    m_notice->hide();
    auto* caution = new FlowText(
        tr("Cut away from yourself and keep the other thumb guarded. Wipe knife and saw with 70 % "
           "alcohol between trees, so that fire blight and canker do not travel along. Set a "
           "ladder on firm ground and do not climb it when nobody is near. Wood carries viruses "
           "that do not show: one "
           "infected graft infects the whole frame. Ask your plant-health authority before wood "
           "crosses a border or a protected zone, and the owner before you graft a protected "
           "variety."),
        FlowText::Weight::small);
    auto* orders =
        titled(tr("Grafts ordered, and how many were alive"), {m_orderLine, m_orderTable});
    auto* splitter = new QSplitter(Qt::Vertical);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(titled(tr("Graft wishes"), {m_wishTable, m_wishWords}));
    splitter->addWidget(orders);
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 4);
    m_tabs = new QTabWidget;
    m_tabs->setDocumentMode(true);
    m_tabs->addTab(splitter, tr("Wishes and orders"));
    m_tabs->addTab(buildFrames(), tr("Frame trees"));
    auto* bottom = new QVBoxLayout;
    bottom->setContentsMargins(lightTheme().space, 0, lightTheme().space, lightTheme().gap);
    bottom->addWidget(caution);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    whole->addWidget(m_notice);
    whole->addWidget(m_tabs, 1);
    whole->addLayout(bottom);
    setFocusProxy(m_wishTable);
}

QWidget* GraftingPlace::buildFrames() {
    const Theme& theme = lightTheme();
    m_frames = new QComboBox;
    m_frames->setAccessibleName(tr("Frame tree"));
    m_frameView = new FrameTreeView;
    m_limbList = new QListWidget;
    m_limbList->setAccessibleName(tr("Limbs of the frame tree, lowest first"));
    m_limbList->setFrameShape(QFrame::NoFrame);
    m_limbList->setWordWrap(true);
    m_limbList->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.gap);
    column->addWidget(new FlowText(tr("Limbs, lowest first"), FlowText::Weight::small));
    column->addWidget(m_limbList, 1);
    auto* across = new QSplitter(Qt::Horizontal);
    across->setChildrenCollapsible(false);
    across->addWidget(m_frameView);
    across->addWidget(side);
    across->setStretchFactor(0, 3);
    across->setStretchFactor(1, 2);
    auto* box = new QWidget;
    auto* whole = new QVBoxLayout(box);
    whole->setContentsMargins(theme.space, theme.gap, theme.space, theme.gap);
    whole->setSpacing(theme.gap);
    whole->addWidget(
        new FlowText(tr("Frame trees, from above and from the south"), FlowText::Weight::strong));
    m_frames->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    whole->addWidget(m_frames, 0, Qt::AlignLeft);
    whole->addWidget(across, 1);
    return box;
}

void GraftingPlace::connectParts() {
    connect(m_wishes, &GraftWishModel::refused, m_notice, &NoticeBar::tell);
    connect(m_orders, &GraftOrderModel::refused, m_notice, &NoticeBar::tell);
    connect(
        m_wishes, &GraftWishModel::changed, this,
        [this](const GraftWish& before, const GraftWish& after) {
            m_notice->hide();
            const auto genotype = m_book.view()->genotype(before.genotype);
            const std::string code =
                genotype ? m_book.view()->genotypes()[*genotype].called() : std::string("unknown");
            m_book.apply(graftWishChanged(before, after, code, m_book.context()));
        },
        Qt::QueuedConnection);
    connect(m_orders, &GraftOrderModel::checked, this, &GraftingPlace::keepCheck,
            Qt::QueuedConnection);
    connect(m_wishTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        takeWish();
        const QModelIndex current = m_sorted->mapToSource(m_wishTable->currentIndex());
        if (!m_following && current.isValid() && !isOfSelectedTree(m_wishes->wish(current.row()))) {
            selectTreeOf(m_wishes->wish(current.row()));
        }
    });
    connect(m_wishTable, &PlainTable::wanted, this, [this](const QModelIndex& index) {
        selectTreeOf(m_wishes->wish(m_sorted->mapToSource(index).row()));
    });
    connect(&m_book, &OpenBook::currentTreeChanged, this, [this] {
        if (isVisible()) {
            followTree();
        } else {
            m_stale = true;
        }
    });
    connect(m_frames, &QComboBox::currentIndexChanged, this, &GraftingPlace::showFrame);
    connect(m_frameView, &FrameTreeView::limbChosen, this,
            [this](int limb) { m_limbList->setCurrentRow(limb); });
    connect(m_limbList, &QListWidget::currentRowChanged, this, &GraftingPlace::chooseLimb);
    connect(&m_book, &OpenBook::viewChanged, this, [this] {
        m_stale = true;
        if (isVisible()) {
            refresh();
        }
    });
}

void GraftingPlace::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) {
        refresh();
    }
}

void GraftingPlace::refresh() {
    m_stale = false;
    readWishes();
    readOrders();
    readFrames();
}

void GraftingPlace::readWishes() {
    const QModelIndex current = m_sorted->mapToSource(m_wishTable->currentIndex());
    std::optional<GraftWishId> before;
    if (current.isValid()) {
        before = m_wishes->wish(current.row()).id;
    }
    const int column = std::max(0, current.column());
    m_following = true; // what is chosen while the list is read anew is nobody's choice
    auto wishes = m_book.store().all<GraftWish>();
    if (!wishes) {
        m_following = false;
        m_notice->tell(wishes.problem());
        return;
    }
    m_wishes->setWishes(m_book.view(), std::move(*wishes));
    const int total = m_wishes->rowCount();
    m_wishWords->setText(
        total == 0 ? tr("No wish yet. G on a tree wishes grafts of it, with their number and why.")
                   : tr("Double click or F2 changes number, reason or state; Ctrl+C copies the "
                        "table."));
    int row = total > 0 ? 0 : -1;
    for (int at = 0; at < total; ++at) {
        if (before && m_wishes->wish(at).id == *before) {
            row = m_sorted->mapFromSource(m_wishes->index(at, 0)).row();
        }
    }
    if (row >= 0) {
        m_wishTable->setCurrentIndex(m_sorted->index(row, column));
    }
    m_following = false;
    followTree();
}

bool GraftingPlace::isOfSelectedTree(const GraftWish& wish) const {
    const auto genotype = m_book.currentGenotype();
    return genotype && m_book.view()->genotypes()[*genotype].id == wish.genotype;
}

void GraftingPlace::selectTreeOf(const GraftWish& wish) {
    const auto view = m_book.view();
    const auto plant = wish.motherPlant ? view->plant(*wish.motherPlant) : std::nullopt;
    if (plant) {
        m_book.selectPlant(*plant);
    } else if (const auto genotype = view->genotype(wish.genotype)) {
        m_book.selectGenotype(*genotype);
    }
}

void GraftingPlace::followTree() {
    const QModelIndex current = m_sorted->mapToSource(m_wishTable->currentIndex());
    const bool anyTree = m_book.currentPlant() || m_book.currentGenotype();
    const bool fits = current.isValid() && isOfSelectedTree(m_wishes->wish(current.row()));
    if (anyTree && !fits) {
        int best = -1;
        int bestWorth = -1;
        const auto plant = m_book.currentPlant();
        for (int row = 0; row < m_wishes->rowCount(); ++row) {
            const GraftWish& wish = m_wishes->wish(row);
            if (!isOfSelectedTree(wish)) {
                continue;
            }
            // Still to be done before done; then the wood of this very plant.
            const bool ofPlant = plant && wish.motherPlant == m_book.view()->plants()[*plant].id;
            const int todo = wish.state == WishState::open      ? 4
                             : wish.state == WishState::ordered ? 2
                                                                : 0;
            const int worth = todo + (ofPlant ? 1 : 0);
            if (worth > bestWorth) {
                best = row;
                bestWorth = worth;
            }
        }
        m_following = true;
        m_wishTable->setCurrentIndex(
            best < 0 ? QModelIndex()
                     : m_sorted->mapFromSource(m_wishes->index(best, GraftWishModel::clone)));
        if (best < 0) {
            m_wishTable->clearSelection();
        }
        m_following = false;
    }
    takeWish();
}

void GraftingPlace::readOrders() {
    auto orders = m_book.store().all<GraftOrder>();
    auto checks = m_book.store().all<GraftCheck>();
    if (!orders || !checks) {
        m_notice->tell(orders ? checks.problem() : orders.problem());
        return;
    }
    std::stable_sort(orders->begin(), orders->end(),
                     [](const GraftOrder& a, const GraftOrder& b) { return a.date > b.date; });
    std::vector<GraftedOrder> grafted;
    for (GraftOrder& order : *orders) {
        GraftedOrder one;
        for (const GraftCheck& check : *checks) {
            if (check.order == order.id) {
                one.checks.push_back(check);
            }
        }
        one.order = std::move(order);
        grafted.push_back(std::move(one));
    }
    const QModelIndex current = m_orderTable->currentIndex();
    m_orders->setOrders(m_book.view(), std::move(grafted));
    if (m_orders->rowCount() > 0) {
        m_orderTable->setCurrentIndex(m_orders->index(
            std::clamp(current.row(), 0, m_orders->rowCount() - 1), std::max(0, current.column())));
    }
}

void GraftingPlace::readFrames() {
    std::optional<Index> before;
    if (const int at = m_frames->currentIndex();
        at >= 0 && at < static_cast<int>(m_frameTrees.size())) {
        before = m_frameTrees[static_cast<std::size_t>(at)].plant;
    }
    m_frameTrees = frameTrees(*m_book.view());
    const QSignalBlocker quiet(m_frames);
    m_frames->clear();
    for (std::size_t at = 0; at < m_frameTrees.size(); ++at) {
        const FrameTree& tree = m_frameTrees[at];
        m_frames->addItem(tr("%1: %n limb(s) growing", nullptr, tree.limbs)
                              .arg(QString::fromStdString(tree.name)));
        if (before == tree.plant) {
            m_frames->setCurrentIndex(static_cast<int>(at));
        }
    }
    showFrame();
}

void GraftingPlace::showFrame() {
    const int at = m_frames->currentIndex();
    m_limbs.clear();
    QString name = tr("no frame tree");
    if (at >= 0 && at < static_cast<int>(m_frameTrees.size())) {
        const FrameTree& tree = m_frameTrees[static_cast<std::size_t>(at)];
        name = QString::fromStdString(tree.name);
        auto limbs = limbsOf(*m_book.view(), m_book.store(), tree.plant);
        if (!limbs) {
            m_notice->tell(limbs.problem());
        } else {
            m_limbs = std::move(*limbs);
        }
    }
    m_frameView->setLimbs(name, m_limbs);
    const QSignalBlocker quiet(m_limbList);
    m_limbList->clear();
    for (std::size_t limb = 0; limb < m_limbs.size(); ++limb) {
        m_limbList->addItem(
            tr("%1  %2: %3")
                .arg(limb + 1)
                .arg(QString::fromStdString(m_limbs[limb].code), limbWords(m_limbs[limb])));
    }
}

void GraftingPlace::chooseLimb(int limb) {
    if (limb < 0 || limb >= static_cast<int>(m_limbs.size())) {
        return;
    }
    m_frameView->setChosen(limb);
    m_book.selectPlant(m_limbs[static_cast<std::size_t>(limb)].plant);
}

void GraftingPlace::takeWish() {
    const QModelIndex current = m_sorted->mapToSource(m_wishTable->currentIndex());
    if (!current.isValid()) {
        const auto plant = m_book.currentPlant();
        const auto genotype = m_book.currentGenotype();
        const auto view = m_book.view();
        m_orderLine->setWish(
            std::nullopt, QString::fromStdString(plant      ? view->plantCode(*plant)
                                                 : genotype ? view->genotypes()[*genotype].called()
                                                            : std::string{}));
        return;
    }
    m_orderLine->setWish(m_wishes->wish(current.row()),
                         QString::fromStdString(m_wishes->codeOf(current.row())));
}

void GraftingPlace::keepCheck(int row, GraftCheckpoint checkpoint, const GraftCount& count) {
    if (row >= m_orders->rowCount()) {
        return;
    }
    m_notice->hide();
    const GraftedOrder& grafted = m_orders->order(row);
    const GraftCheck* before = checkAt(grafted, checkpoint);
    m_book.apply(graftsChecked(grafted.order,
                               before == nullptr ? std::nullopt : std::optional(*before),
                               checkpoint, count, m_orders->codeOf(row), m_book.context()));
}

} // namespace pipwright::ui
