#include "ui/print/paper_place.h"

#include "core/exchange/print/tree_papers.h"
#include "core/exchange/print/walking_sheet.h"
#include "ui/book/open_book.h"
#include "ui/print/label_panel.h"
#include "ui/print/paper_font.h"
#include "ui/print/paper_panel.h"
#include "ui/print/print_words.h"
#include "ui/widgets/theme.h"

#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

QWidget* page(QLabel* words, QPushButton* take, QWidget* panel) {
    auto* widget = new QWidget;
    auto* column = new QVBoxLayout(widget);
    auto* top = new QHBoxLayout;
    top->addWidget(words, 1);
    top->addWidget(take);
    column->addLayout(top);
    column->addWidget(panel, 1);
    return widget;
}

} // namespace

PaperPlace::PaperPlace(OpenBook& book, QWidget* parent) : QWidget(parent), m_book(book) {
    m_labels = new LabelPanel;
    m_walk = new PaperPanel;
    m_labelWords = new QLabel;
    m_walkWords = new QLabel;
    m_labelWords->setWordWrap(true);
    m_walkWords->setWordWrap(true);
    auto* takeLabels = new QPushButton(tr("Labels of the selected trees"));
    auto* takeWalk = new QPushButton(tr("Walk the selected trees"));
    connect(takeLabels, &QPushButton::clicked, this, &PaperPlace::fromSelection);
    connect(takeWalk, &QPushButton::clicked, this, [this] { showWalk(m_book.selection()); });
    m_tabs = new QTabWidget;
    m_tabs->setDocumentMode(true);
    m_tabs->addTab(page(m_labelWords, takeLabels, m_labels), tr("Labels"));
    m_tabs->addTab(page(m_walkWords, takeWalk, m_walk), tr("Walking sheet"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_tabs);
    setFocusProxy(m_tabs);
    connect(&m_book, &OpenBook::viewChanged, this, [this] {
        refreshLabels();
        refreshWalk();
    });
    connect(&m_book, &OpenBook::todayChanged, this, &PaperPlace::refreshWalk);
    refreshLabels();
    refreshWalk();
}

void PaperPlace::fromSelection() {
    std::vector<Index> plants = m_book.selection();
    if (plants.empty() && m_book.currentPlant()) {
        plants.push_back(*m_book.currentPlant());
    }
    showLabels(plants);
}

void PaperPlace::showLabels(const std::vector<Index>& plants) {
    m_labelled = plants;
    m_tabs->setCurrentIndex(0);
    refreshLabels();
}

void PaperPlace::showWalk(const std::vector<Index>& plants) {
    m_walked = plants;
    m_tabs->setCurrentIndex(1);
    refreshWalk();
}

void PaperPlace::refreshLabels() {
    const auto view = m_book.view();
    std::vector<LabelText> labels;
    for (const Index plant : m_labelled) {
        if (!view->plants()[plant].erased) {
            labels.push_back(labelOf(*view, plant));
        }
    }
    m_labelWords->setText(labels.empty()
                              ? tr("Select trees on the map and press L: their labels appear here.")
                              : tr("%n label(s), in the order of the selection.", nullptr,
                                   static_cast<int>(labels.size())));
    m_labels->setLabels(std::move(labels));
}

void PaperPlace::refreshWalk() {
    const auto view = m_book.view();
    const auto walk = treesToWalk(*view, m_book.store(), m_walked);
    if (!walk) {
        Q_EMIT m_book.problemMet(walk.problem());
        return;
    }
    QString words = walk->trees.empty()
                        ? tr("Select the trees to visit on the map: their sheet appears here, in "
                             "walking order.")
                        : tr("%n tree(s) in walking order, each with its newest note.", nullptr,
                             static_cast<int>(walk->trees.size()));
    if (!walk->nowhere.empty()) {
        words += QLatin1Char(' ') + tr("%n tree(s) stand nowhere known and are left out.", nullptr,
                                       static_cast<int>(walk->nowhere.size()));
    }
    m_walkWords->setText(words);
    WalkingSheet sheet;
    sheet.trees = walk->trees;
    sheet.date = m_book.today();
    sheet.words = translatedPaperWords();
    const FontMeasure measure;
    PrintedMatter matter;
    if (!sheet.trees.empty()) {
        matter = layOutWalkingSheets(sheet, measure);
    }
    m_walk->setMatter(std::move(matter),
                      tr("walk-%1").arg(QString::fromStdString(m_book.today().iso())));
}

} // namespace pipwright::ui
