#pragma once

#include "core/evaluation/orchard_view.h"
#include "ui/rows/colour_chooser.h"
#include "ui/rows/filter_spec.h"
#include "ui/rows/map_scene.h"

#include <QWidget>

#include <map>
#include <optional>
#include <vector>

class QStackedWidget;
class QToolButton;

namespace pipwright::ui {

class EmptyPlace;
class MapFilterBar;
class MapLegend;
class OpenBook;
class RowMap;
class TreeListView;

/// The place "Rows": all rows as a map, or as a list, of one open book.
class RowsPlace : public QWidget {
    Q_OBJECT

  public:
    explicit RowsPlace(OpenBook& book, QWidget* parent = nullptr);

    [[nodiscard]] RowMap* map() const { return m_map; }
    [[nodiscard]] TreeListView* list() const { return m_list; }
    [[nodiscard]] MapFilterBar* filterBar() const { return m_filterBar; }
    [[nodiscard]] ColourChooser* colourChooser() const { return m_chooser; }
    [[nodiscard]] MapLegend* legend() const { return m_legend; }

    void showAsList(bool list);
    [[nodiscard]] bool isList() const;
    void colourBy(const QString& key);
    /// Finds a code, a short code or row/place and goes there; false when there is none.
    bool goToTyped(const QString& typed);
    /// What the filter lets through, in words for the bottom line; empty without a filter.
    [[nodiscard]] QString filterWords() const;
    void clearFilter();
    /// Plants the map shows now, in walking order: for lists and papers.
    [[nodiscard]] std::vector<Index> shownPlants() const;
    /// Selects the tree under the map's cursor while none is selected: the first key meant for a
    /// tree is for that one.
    void chooseAtCursor();

  Q_SIGNALS:
    /// A digit or "/" was typed, or Enter pressed, on the map.
    void findRequested(const QString& text);
    /// Something to say on the bottom line for a moment.
    void hintWanted(const QString& words);
    void treeActivated();
    void filterWordsChanged();
    void contextMenuWanted(const QPoint& globalPosition);
    /// The empty book's first step.
    void importWanted();

  private:
    void build();
    void connectParts();
    /// Takes up what the changes did; no changes: everything is read anew.
    void takeUp(const std::vector<Change>& changes);
    void refreshScene();
    void gatherFacts();
    void readTrait(const QString& key);
    void fillList();
    void recolour();
    void refilter();
    void followBook();
    void tellSelection(const std::vector<Uuid>& trees, const std::optional<Uuid>& current);

    OpenBook& m_book;
    RowMap* m_map;
    TreeListView* m_list;
    MapLegend* m_legend;
    MapFilterBar* m_filterBar;
    ColourChooser* m_chooser;
    QToolButton* m_listButton;
    QToolButton* m_tapeButton;
    QStackedWidget* m_pages;
    QStackedWidget* m_fill;
    EmptyPlace* m_empty;
    ScenePointer m_scene;
    std::vector<std::optional<Index>> m_plants; ///< of each cell
    FilterFacts m_facts;
    std::vector<ColourChoice> m_traits;                                  ///< of the dictionary
    std::map<QString, std::vector<std::optional<double>>> m_traitValues; ///< read so far
    bool m_factsStale = true; ///< the filter's facts are older than the book
    bool m_listStale = true;  ///< the list, which is hidden, is older than the map
    CellSet m_shown;
    bool m_following = false;
};

} // namespace pipwright::ui
