#pragma once

#include "ui/rows/map_hover_card.h"
#include "ui/rows/map_painter.h"

#include <QAbstractScrollArea>
#include <QPolygonF>
#include <QTimer>

#include <functional>
#include <optional>

class QPinchGesture;

namespace pipwright::ui {

/// The orchard as rows of trees. One painted surface with a cursor and a selection of its own;
/// it shows values that are handed in and says what the person wants, nothing else.
///
/// Keys: arrows move and select; with Shift they extend along the rows, with Alt+Shift as a
/// rectangle, with Alt they add every tree passed; Ctrl+arrow jumps to the next tree and leaves
/// the selection alone; Ctrl+Space adds or removes; Shift+Space selects the row; Ctrl+A all shown;
/// Home, End, Page Up, Page Down; + - 0 zoom; Enter activates; 1 to 9 and / ask to find. Letters
/// are left to the window.
///
/// Pointer: click, Shift-click, Ctrl-click; drag for a rectangle, Alt-drag for a lasso; a click on
/// a row's name selects the row; Ctrl+wheel and pinch zoom at the pointer; the middle button moves.
class RowMap : public QAbstractScrollArea {
    Q_OBJECT

  public:
    using HoverText = std::function<HoverWords(const Uuid&)>;

    explicit RowMap(QWidget* parent = nullptr);
    ~RowMap() override;

    /// Shows another state of the orchard. Cursor and selection stay with their trees, the part
    /// that is seen stays where it is. The first scene is shown whole.
    void setScene(ScenePointer scene);
    [[nodiscard]] const MapScene& scene() const { return m_painter.layout().scene(); }
    [[nodiscard]] const MapLayout& layoutOfMap() const { return m_painter.layout(); }
    void setSpacing(PlaceSpacing spacing);

    /// For the scene that is shown; a colouring of another scene is ignored.
    void setColouring(CellColouring colouring);
    [[nodiscard]] const CellColouring& colouring() const { return m_painter.colouring(); }
    /// What a filter lets through; the rest is dimmed. Empty shows all.
    void setShown(CellSet shown);
    /// Extra words for the hover card; without it the card says what the scene knows.
    void setHoverText(HoverText hoverText) { m_hoverText = std::move(hoverText); }

    [[nodiscard]] std::optional<CellIndex> currentCell() const { return m_cursor; }
    [[nodiscard]] std::optional<Uuid> currentTree() const;
    [[nodiscard]] const MapSelection& selection() const { return m_painter.selection(); }
    [[nodiscard]] std::vector<Uuid> selectedTrees() const;
    void setSelection(const MapSelection& selection);
    void selectAllShown();
    void selectRow(std::uint32_t row);
    /// Makes the tree the current and only selected one and brings it into view; nothing moves
    /// when it is in view already. False when it does not stand here.
    bool goTo(const Uuid& tree);

    /// Logical pixels of one place.
    [[nodiscard]] double cellWidth() const { return frame().scale.cellWidth; }
    /// The point of the viewport stays on the same tree.
    void setCellWidth(double width, QPointF about);
    void zoomBy(double factor);
    void zoomBy(double factor, QPointF about);
    void zoomToFit();

    [[nodiscard]] MapFrame frame() const;
    [[nodiscard]] std::optional<CellIndex> cellAt(QPoint viewportPoint) const;
    /// In coordinates of the viewport; may lie outside it.
    [[nodiscard]] QRect rectOf(CellIndex cell) const;
    [[nodiscard]] const MapHoverCard& hoverCard() const { return *m_card; }

    QSize sizeHint() const override { return {900, 520}; }

  Q_SIGNALS:
    void currentTreeChanged(const pipwright::Uuid& tree);
    void selectionChanged();
    void treeActivated(const pipwright::Uuid& tree);
    void findRequested(const QString& text);
    /// A letter was typed that is no command.
    void strayLetter(const QString& letter);
    void contextMenuRequested(const QPoint& globalPosition);
    void zoomChanged(double cellWidth);

  protected:
    bool viewportEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void changeEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

  private:
    enum class Drag { none, pressed, rectangle, lasso, pan };
    /// How a step of the cursor changes the selection.
    enum class Step { select, extend, rectangle, brush, leave };

    void adoptTheme();
    void updateScrollBars();
    [[nodiscard]] double pitchFor(double cellWidth) const;
    [[nodiscard]] double snapped(double logical) const;
    void scrollTo(QPointF content);
    void ensureVisible(CellIndex cell);
    void paintCursor(QPainter& painter) const;
    void paintDrag(QPainter& painter) const;

    void moveCursor(CellIndex cell, Step step);
    void setCursorCell(CellIndex cell);
    void changeSelection(MapSelection selection);
    [[nodiscard]] MapSelection rectangleBetween(CellIndex one, CellIndex other) const;
    [[nodiscard]] std::optional<CellIndex> neighbour(CellIndex cell, int key) const;
    [[nodiscard]] std::optional<CellIndex> inRow(CellIndex cell, int rows) const;
    bool moveByKey(const QKeyEvent& event);
    bool actByKey(const QKeyEvent& event);

    void pressCell(CellIndex cell, Qt::KeyboardModifiers modifiers);
    void dragTo(QPoint point);
    void endDrag();
    void pinch(const QPinchGesture& gesture);
    void hover(std::optional<CellIndex> cell, int delay);
    void showCard();
    void hideCard();

    MapPainter m_painter;
    double m_zoom = 14;    ///< wished width of a place
    double m_aspect = 1.4; ///< wished pitch of the rows in widths of a place
    bool m_fitted = true;
    std::optional<CellIndex> m_cursor;
    std::optional<CellIndex> m_anchor;
    std::optional<double> m_wishedPlace; ///< where the cursor wants to be in shorter rows

    Drag m_drag = Drag::none;
    QPoint m_dragFrom;     ///< viewport
    QPointF m_dragContent; ///< content, so that scrolling does not move it
    QPoint m_dragAt;
    QPointF m_panScroll;
    QPolygonF m_lasso; ///< content
    MapSelection m_dragBase;
    QTimer m_dragScroll;

    std::optional<CellIndex> m_hovered;
    HoverText m_hoverText;
    MapHoverCard* m_card;
    QTimer m_cardTimer;
};

} // namespace pipwright::ui
