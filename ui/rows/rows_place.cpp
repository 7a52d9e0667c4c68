#include "ui/rows/rows_place.h"

#include "ui/book/book_words.h"
#include "ui/book/open_book.h"
#include "ui/rows/colour_chooser.h"
#include "ui/rows/map_filter_bar.h"
#include "ui/rows/map_legend.h"
#include "ui/rows/map_words.h"
#include "ui/rows/orchard_scene.h"
#include "ui/rows/row_map.h"
#include "ui/rows/tree_list_view.h"
#include "ui/widgets/empty_place.h"
#include "ui/widgets/icons.h"
#include "ui/widgets/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace pipwright::ui {

namespace {

const QString kTraitPrefix = QStringLiteral("trait:");

} // namespace

RowsPlace::RowsPlace(OpenBook& book, QWidget* parent) : QWidget(parent), m_book(book) {
    build();
    connectParts();
    refreshScene();
    followBook();
}

void RowsPlace::build() {
    m_map = new RowMap;
    m_map->setAccessibleName(tr("Map of the rows"));
    m_list = new TreeListView;
    m_list->setAccessibleName(tr("List of the trees"));
    m_legend = new MapLegend;
    m_filterBar = new MapFilterBar;
    m_chooser = new ColourChooser;
    m_chooser->setAccessibleName(tr("Colour by"));
    m_chooser->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_chooser->setMinimumContentsLength(12);

    m_listButton = new QToolButton;
    m_listButton->setCheckable(true);
    m_listButton->setIcon(icon(IconName::list));
    m_listButton->setToolTip(tr("Show the trees as a list (F3)"));
    m_listButton->setAccessibleName(tr("Show as list"));
    m_tapeButton = new QToolButton;
    m_tapeButton->setCheckable(true);
    m_tapeButton->setText(tr("by tape"));
    m_tapeButton->setToolTip(tr("Space the trees by their tape distance instead of evenly"));

    auto* colourLabel = new QLabel(tr("Colour:"));
    colourLabel->setBuddy(m_chooser);
    colourLabel->setMinimumHeight(m_chooser->sizeHint().height());
    auto* bar = new QHBoxLayout;
    bar->setContentsMargins(lightTheme().space, lightTheme().gap, lightTheme().space,
                            lightTheme().gap);
    bar->addWidget(colourLabel, 0, Qt::AlignTop);
    bar->addWidget(m_chooser, 0, Qt::AlignTop);
    bar->addSpacing(lightTheme().space);
    bar->addWidget(m_filterBar, 1);
    bar->addSpacing(lightTheme().space);
    bar->addWidget(m_tapeButton, 0, Qt::AlignTop);
    bar->addWidget(m_listButton, 0, Qt::AlignTop);

    auto* legendArea = new QScrollArea;
    legendArea->setWidget(m_legend);
    legendArea->setWidgetResizable(true);
    legendArea->setFrameShape(QFrame::NoFrame);
    legendArea->setFixedWidth(180);
    legendArea->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    legendArea->setFocusPolicy(Qt::NoFocus);

    m_pages = new QStackedWidget;
    m_pages->addWidget(m_map);
    m_pages->addWidget(m_list);
    auto* middle = new QHBoxLayout;
    middle->setSpacing(0);
    middle->addWidget(m_pages, 1);
    middle->addWidget(legendArea);

    auto* filled = new QWidget;
    auto* column = new QVBoxLayout(filled);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(bar);
    column->addLayout(middle, 1);

    m_empty = new EmptyPlace(IconName::rows, tr("No rows yet"),
                             tr("Your rows and trees will stand here. Bring in a table of your "
                                "trees, pasted or from a file, with row and place in columns."));
    m_empty->setFirstStep(tr("Bring in a table of trees"));
    m_fill = new QStackedWidget;
    m_fill->addWidget(filled);
    m_fill->addWidget(m_empty);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_fill);
}

void RowsPlace::connectParts() {
    connect(m_empty, &EmptyPlace::firstStepWanted, this, &RowsPlace::importWanted);
    connect(m_listButton, &QToolButton::toggled, this, &RowsPlace::showAsList);
    connect(m_tapeButton, &QToolButton::toggled, this, [this](bool tape) {
        m_map->setSpacing(tape ? PlaceSpacing::byTape : PlaceSpacing::byOrder);
    });
    connect(m_chooser, &ColourChooser::colourChosen, this, [this] { recolour(); });
    connect(m_filterBar, &MapFilterBar::filterChanged, this, [this] { refilter(); });
    connect(m_filterBar, &MapFilterBar::left, this,
            [this] { m_pages->currentWidget()->setFocus(Qt::OtherFocusReason); });
    connect(m_legend, &MapLegend::entryChosen, this, [this](std::size_t entry) {
        const auto selection =
            treesOnly(MapSelection::of(m_map->colouring().cellsOf(entry)), *m_scene);
        m_map->setSelection(selection);
        if (isList()) {
            m_list->setSelection(selection);
        }
    });
    connect(m_map, &RowMap::findRequested, this, &RowsPlace::findRequested);
    connect(m_list, &TreeListView::findRequested, this, &RowsPlace::findRequested);
    connect(m_map, &RowMap::strayLetter, this, [this](const QString& letter) {
        Q_EMIT hintWanted(tr("%1 is no command here. To find a code that begins with a letter, "
                             "press / or Ctrl+K first.")
                              .arg(letter));
    });
    connect(m_map, &RowMap::treeActivated, this, [this] {
        chooseAtCursor();
        Q_EMIT treeActivated();
    });
    connect(m_list, &TreeListView::treeActivated, this, &RowsPlace::treeActivated);
    connect(m_map, &RowMap::contextMenuRequested, this, &RowsPlace::contextMenuWanted);
    connect(m_map, &RowMap::currentTreeChanged, this,
            [this](const Uuid&) { tellSelection(m_map->selectedTrees(), m_map->currentTree()); });
    connect(m_map, &RowMap::selectionChanged, this,
            [this] { tellSelection(m_map->selectedTrees(), m_map->currentTree()); });
    const auto fromList = [this] {
        tellSelection(plantsOf(m_list->selectedCells(), *m_scene), m_list->currentTree());
    };
    connect(m_list, &TreeListView::currentTreeChanged, this, fromList);
    connect(m_list, &TreeListView::treeSelectionChanged, this, fromList);

    connect(&m_book, &OpenBook::viewChanged, this, &RowsPlace::takeUp);
    connect(&m_book, &OpenBook::todayChanged, this, &RowsPlace::refreshScene); // weeks, days ago
    connect(&m_book, &OpenBook::currentTreeChanged, this, &RowsPlace::followBook);
    m_map->setHoverText([this](const Uuid& tree) {
        const auto view = m_book.view();
        const auto plant = view->plant(PlantId(tree));
        return plant ? hoverWordsOf(*view, *plant) : HoverWords{};
    });
}

void RowsPlace::takeUp(const std::vector<Change>& changes) {
    if (needNewScene(changes)) {
        refreshScene();
        return;
    }
    const auto looks = looksOtherwise(*m_scene, *m_book.view(), m_plants);
    m_factsStale = true;
    m_listStale = true;
    if (!looks.empty()) {
        m_scene = m_scene->with(looks);
        m_map->setScene(m_scene);
    }
    // A trait's colours are read from the store: only when it may have new values.
    const bool byTrait = m_chooser->chosen().startsWith(kTraitPrefix);
    const bool observed = std::any_of(changes.begin(), changes.end(), [](const Change& change) {
        return change.kind == Kind::observation;
    });
    if (observed) {
        m_traitValues.clear();
    }
    if (!byTrait || observed || !looks.empty()) {
        recolour();
    }
    if (!m_filterBar->spec().isEmpty()) {
        refilter();
    }
    if (isList()) {
        fillList();
    }
}

void RowsPlace::refreshScene() {
    const auto view = m_book.view();
    m_scene = sceneOf(*view);
    m_plants = plantsOfCells(*m_scene, *view);
    std::vector<ColourChoice> traits;
    for (const Trait& trait : view->traits()) {
        if (trait.scale == ScaleKind::numeric || trait.scale == ScaleKind::ordinal) {
            QString title = traitName(trait);
            if (!trait.unit.empty()) {
                title += QStringLiteral(" (%1)").arg(QString::fromStdString(trait.unit));
            }
            traits.push_back({kTraitPrefix + QString::fromStdString(trait.id.uuid.text()), title});
        }
    }
    m_listStale = true;
    m_map->setScene(m_scene);
    m_traits = traits;
    m_traitValues.clear();
    gatherFacts();
    m_filterBar->setFacts(m_facts);
    {
        const QSignalBlocker quiet(m_chooser);
        m_chooser->setTraits(traits);
    }
    recolour();
    refilter();
    if (isList()) {
        fillList();
    }
    m_fill->setCurrentIndex(m_scene->rows().empty() ? 1 : 0);
}

void RowsPlace::gatherFacts() {
    m_facts = filterFactsOf(*m_book.view(), m_plants, m_book.today());
    for (const ColourChoice& trait : m_traits) {
        m_facts.traits.push_back({trait.key, trait.title, 1, m_traitValues[trait.key]});
    }
    m_factsStale = false;
}

/// The values of a trait of the dictionary, read when the filter first asks for them.
void RowsPlace::readTrait(const QString& key) {
    const auto known = std::find_if(m_facts.traits.begin(), m_facts.traits.end(),
                                    [&key](const FilterTrait& one) { return one.key == key; });
    if (known == m_facts.traits.end() || !known->values.empty() || !key.startsWith(kTraitPrefix)) {
        return;
    }
    const auto id = Uuid::fromText(key.mid(kTraitPrefix.size()).toStdString());
    if (!id) {
        return;
    }
    const auto column = traitColumn(*m_book.view(), m_book.store(), TraitId(*id));
    if (!column) {
        Q_EMIT m_book.problemMet(column.problem());
        return;
    }
    known->values = valuesOfCells(m_plants, *column);
    m_traitValues[key] = known->values;
}

void RowsPlace::fillList() {
    // A fresh list begins on its first tree; the selected tree is the book's, not the list's.
    const bool followed = std::exchange(m_following, true);
    m_listStale = false;
    m_list->setTrees(m_scene, columnsOf(m_scene, m_book.view(), m_plants, m_book.today()));
    m_list->setShown(m_shown);
    m_following = followed;
}

void RowsPlace::recolour() {
    const auto view = m_book.view();
    const QString key = m_chooser->chosen();
    CellColouring colouring;
    if (key.startsWith(kTraitPrefix)) {
        const auto id = Uuid::fromText(key.mid(kTraitPrefix.size()).toStdString());
        const Trait* trait = id ? view->trait(TraitId(*id)) : nullptr;
        if (trait == nullptr) {
            return;
        }
        const auto column = traitColumn(*view, m_book.store(), trait->id);
        if (!column) {
            Q_EMIT m_book.problemMet(column.problem());
            return;
        }
        colouring = colouringByTrait(*trait, *m_scene, *view, m_plants, *column);
    } else {
        colouring = colouringOf(key, *m_scene, *view, m_plants, m_book.today());
    }
    if (m_legend->lineCount() > 0 && colouring == m_map->colouring()) {
        return;
    }
    m_legend->setColouring(colouring);
    m_map->setColouring(std::move(colouring));
}

void RowsPlace::refilter() {
    if (m_factsStale) {
        gatherFacts();
    }
    for (const TraitBound& bound : m_filterBar->spec().bounds) {
        readTrait(bound.trait);
    }
    m_shown = shownBy(m_filterBar->spec(), *m_scene, m_facts);
    m_map->setShown(m_shown);
    if (isList()) {
        m_list->setShown(m_shown);
    }
    m_filterBar->setCount(shownCount(m_shown, *m_scene), m_scene->treeCount());
    Q_EMIT filterWordsChanged();
}

void RowsPlace::showAsList(bool list) {
    const QSignalBlocker quiet(m_listButton);
    m_listButton->setChecked(list);
    m_pages->setCurrentWidget(list ? static_cast<QWidget*>(m_list) : m_map);
    if (list) {
        fillList();
    }
    followBook(); // before the focus comes: a list without a current row would begin on its first
    m_pages->currentWidget()->setFocus(Qt::OtherFocusReason);
}

bool RowsPlace::isList() const {
    return m_pages->currentWidget() == m_list;
}

void RowsPlace::colourBy(const QString& key) {
    m_chooser->choose(key);
    recolour();
}

bool RowsPlace::goToTyped(const QString& typed) {
    const auto cell = findTyped(*m_scene, typed);
    if (!cell || m_scene->cells()[*cell].isGap()) {
        return false;
    }
    const Uuid tree = m_scene->cells()[*cell].plant;
    return isList() ? m_list->goTo(tree) : m_map->goTo(tree);
}

QString RowsPlace::filterWords() const {
    if (m_filterBar->spec().isEmpty()) {
        return {};
    }
    return tr("%1 of %2 trees shown").arg(shownCount(m_shown, *m_scene)).arg(m_scene->treeCount());
}

void RowsPlace::clearFilter() {
    m_filterBar->clear();
}

std::vector<Index> RowsPlace::shownPlants() const {
    std::vector<Index> plants;
    for (std::size_t i = 0; i < m_plants.size(); ++i) {
        if (m_plants[i] && (m_shown.empty() || m_shown[i])) {
            plants.push_back(*m_plants[i]);
        }
    }
    return plants;
}

void RowsPlace::tellSelection(const std::vector<Uuid>& trees, const std::optional<Uuid>& current) {
    if (m_following) {
        return;
    }
    m_following = true;
    const auto view = m_book.view();
    std::vector<Index> plants;
    for (const Uuid& tree : trees) {
        if (const auto plant = view->plant(PlantId(tree))) {
            plants.push_back(*plant);
        }
    }
    if (current && !current->isNil()) {
        m_book.selectPlant(view->plant(PlantId(*current)));
    }
    m_book.setSelection(std::move(plants));
    m_following = false;
}

void RowsPlace::chooseAtCursor() {
    const auto tree = m_map->currentTree();
    if (!isList() && tree && !m_book.currentPlant() && !m_book.currentGenotype()) {
        m_book.selectPlant(m_book.view()->plant(PlantId(*tree)));
    }
}

void RowsPlace::followBook() {
    if (m_following) {
        return;
    }
    const auto plant = m_book.currentPlant();
    if (!plant) {
        return;
    }
    m_following = true;
    const Uuid tree = m_book.view()->plants()[*plant].id.uuid;
    m_map->goTo(tree);
    if (isList()) {
        m_list->goTo(tree);
    }
    m_following = false;
}

} // namespace pipwright::ui
