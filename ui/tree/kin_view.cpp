#include "ui/tree/kin_view.h"

#include "core/units/text.h"
#include "ui/book/orchard_words.h"
#include "ui/tree/ancestry_view.h"
#include "ui/tree/tree_facts.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/number_text.h"

#include <QListWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr int kLinesShown = 6;

QString wordsOfInbreeding(const TreeFacts& facts) {
    if (!facts.genotype) {
        return {};
    }
    if (const auto sets = facts.ploidy.value_or(2); sets != 2) {
        return sets == 3 ? KinView::tr("Inbreeding F is not defined for triploids.")
                         : KinView::tr("Inbreeding F is defined for diploids only; this has %1 "
                                       "sets of chromosomes.")
                               .arg(sets);
    }
    if (!facts.inbreeding) {
        return KinView::tr("Inbreeding F cannot be told: a parent is not known.");
    }
    return KinView::tr("Inbreeding F = %1, by the pedigree as the book knows it; unknown ancestors "
                       "count as unrelated.")
        .arg(numberText(*facts.inbreeding, 3));
}

} // namespace

KinView::KinView(QWidget* parent)
    : QWidget(parent), m_ancestry(new AncestryView(this)),
      m_purdy(new FlowText({}, FlowText::Weight::body, this)),
      m_inbreeding(new FlowText({}, FlowText::Weight::small, this)), m_lists(new QVBoxLayout) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(24, 0, 12, 4);
    layout->setSpacing(4);
    layout->addWidget(m_ancestry);
    layout->addWidget(m_purdy);
    layout->addWidget(m_inbreeding);
    layout->addLayout(m_lists);
    m_lists->setSpacing(0);
    connect(m_ancestry, &AncestryView::genotypeWanted, this, &KinView::genotypeWanted);
}

QString KinView::inbreedingWords() const {
    return m_inbreeding->text();
}

void KinView::show(const TreeFacts& facts) {
    m_ancestry->show(facts);
    m_ancestry->setVisible(facts.genotype.has_value());
    m_purdy->setText(facts.genotype ? facts.purdy
                                    : tr("Nobody knows yet what this plant is, so it has no "
                                         "ancestors here."));
    m_purdy->setToolTip(tr("Purdy notation: seed parent first, the latest cross has the most "
                           "slashes"));
    m_inbreeding->setText(wordsOfInbreeding(facts));
    m_inbreeding->setVisible(!m_inbreeding->text().isEmpty());
    while (QLayoutItem* item = m_lists->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
    addList(tr("%n full sib(s)", nullptr, static_cast<int>(facts.relatives.fullSibs.size())),
            facts.relatives.fullSibs, facts);
    addList(tr("%n half sib(s)", nullptr, static_cast<int>(facts.relatives.halfSibs.size())),
            facts.relatives.halfSibs, facts);
    addList(tr("%n offspring", nullptr, static_cast<int>(facts.relatives.offspring.size())),
            facts.relatives.offspring, facts);
}

void KinView::addList(const QString& title, const std::vector<int>& kin, const TreeFacts& facts) {
    if (kin.empty()) {
        return;
    }
    auto* button = new QToolButton(this);
    button->setText(title);
    button->setCheckable(true);
    button->setAutoRaise(true);
    button->setArrowType(Qt::RightArrow);
    button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    button->setAccessibleName(title);
    button->setFocusPolicy(Qt::StrongFocus);
    auto* list = new QListWidget(this);
    list->setAccessibleName(title);
    list->hide();
    m_lists->addWidget(button, 0, Qt::AlignLeft);
    m_lists->addWidget(list);
    // Filled when first unfolded: a benchmark may have thousands of offspring.
    connect(button, &QToolButton::toggled, list, [button, list, kin, view = facts.view](bool open) {
        button->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
        if (open && list->count() == 0) {
            std::vector<Index> sorted(kin.begin(), kin.end());
            std::sort(sorted.begin(), sorted.end(), [&view](Index a, Index b) {
                return NaturalLess()(view->genotypes()[a].code, view->genotypes()[b].code);
            });
            for (const Index one : sorted) {
                const GenotypeEntry& entry = view->genotypes()[one];
                auto* item = new QListWidgetItem(QString::fromStdString(entry.called()) +
                                                     QStringLiteral(", ") + stageWord(entry.stage),
                                                 list);
                item->setData(Qt::UserRole, one);
            }
            list->setCurrentRow(0);
            const int lines = std::min(list->count(), kLinesShown);
            list->setFixedHeight(lines * list->sizeHintForRow(0) + 4);
        }
        list->setVisible(open);
    });
    const auto go = [this](const QListWidgetItem* item) {
        Q_EMIT genotypeWanted(item->data(Qt::UserRole).toUInt());
    };
    connect(list, &QListWidget::itemActivated, this, go);
    connect(list, &QListWidget::itemClicked, this, go);
}

} // namespace pipwright::ui
