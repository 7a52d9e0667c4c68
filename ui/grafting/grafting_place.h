#pragma once

#include "core/evaluation/living_copies.h"
#include "core/history/graft_edits.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QListWidget;
class QSortFilterProxyModel;
class QTabWidget;

namespace pipwright::ui {

class FlowText;
class FrameTreeView;
class GraftOrderModel;
class GraftWishModel;
class NoticeBar;
class OpenBook;
class OrderLine;
class PlainTable;

/// The place "Grafting": what is wished for, what was grafted and lives, and, on a page of their
/// own, the frame trees limb by limb. The wish chosen is always one of the selected tree.
class GraftingPlace : public QWidget {
    Q_OBJECT

  public:
    explicit GraftingPlace(OpenBook& book, QWidget* parent = nullptr);

    [[nodiscard]] QTabWidget* tabs() const { return m_tabs; }
    [[nodiscard]] PlainTable* wishTable() const { return m_wishTable; }
    [[nodiscard]] PlainTable* orderTable() const { return m_orderTable; }
    [[nodiscard]] OrderLine* orderLine() const { return m_orderLine; }
    [[nodiscard]] QComboBox* frameChooser() const { return m_frames; }
    [[nodiscard]] FrameTreeView* frameView() const { return m_frameView; }
    [[nodiscard]] QListWidget* limbList() const { return m_limbList; }
    [[nodiscard]] NoticeBar* notice() const { return m_notice; }

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void build();
    [[nodiscard]] QWidget* buildFrames();
    void connectParts();
    void refresh();
    void readWishes();
    void readOrders();
    void readFrames();
    void showFrame();
    void chooseLimb(int limb);
    void takeWish();
    /// Chooses a wish of the selected tree, or none when it has none.
    void followTree();
    void selectTreeOf(const GraftWish& wish);
    [[nodiscard]] bool isOfSelectedTree(const GraftWish& wish) const;
    void keepCheck(int row, GraftCheckpoint checkpoint, const GraftCount& count);

    OpenBook& m_book;
    bool m_following = false; ///< the wish is being chosen by the place itself
    QTabWidget* m_tabs;
    GraftWishModel* m_wishes;
    QSortFilterProxyModel* m_sorted;
    PlainTable* m_wishTable;
    FlowText* m_wishWords;
    OrderLine* m_orderLine;
    GraftOrderModel* m_orders;
    PlainTable* m_orderTable;
    QComboBox* m_frames;
    FrameTreeView* m_frameView;
    QListWidget* m_limbList;
    NoticeBar* m_notice;
    std::vector<FrameTree> m_frameTrees;
    std::vector<FrameLimb> m_limbs;
    bool m_stale = true;
};

} // namespace pipwright::ui
