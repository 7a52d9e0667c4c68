#include "ui/crosses/outlook_panel.h"

#include "ui/book/open_book.h"
#include "ui/crosses/cross_table_model.h"
#include "ui/crosses/outlook_words.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/theme.h"

#include <QCompleter>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QStringListModel>

namespace pipwright::ui {

namespace {

QString nameOf(const OrchardView& view, const std::optional<GenotypeId>& id) {
    const auto genotype = id ? view.genotype(*id) : std::nullopt;
    return genotype ? QString::fromStdString(view.genotypes()[*genotype].called()) : QString();
}

/// What one may think of as a parent: all but the many seedlings that nobody has chosen yet.
bool isOffered(const GenotypeEntry& entry) {
    return !entry.erased &&
           (entry.kind != GenotypeKind::seedling || entry.stage == Stage::watched ||
            entry.stage == Stage::selection || entry.stage == Stage::advanced ||
            entry.stage == Stage::named || entry.stage == Stage::released);
}

} // namespace

OutlookPanel::OutlookPanel(OpenBook& book, QWidget* parent)
    : QWidget(parent), m_book(book), m_seed(new QLineEdit), m_pollen(new QLineEdit),
      m_pollenWords(new FlowText), m_inbreedingWords(new FlowText), m_founderWords(new FlowText),
      m_warningWords(new FlowText(QString(), FlowText::Weight::strong)) {
    build();
    for (QLineEdit* edit : {m_seed, m_pollen}) {
        auto* completer = new QCompleter(new QStringListModel(edit), edit);
        completer->setCaseSensitivity(Qt::CaseInsensitive);
        completer->setFilterMode(Qt::MatchContains);
        edit->setCompleter(completer);
        connect(edit, &QLineEdit::textEdited, this, &OutlookPanel::parentsTyped);
        connect(completer, qOverload<const QString&>(&QCompleter::activated), this,
                &OutlookPanel::parentsTyped, Qt::QueuedConnection);
    }
}

void OutlookPanel::build() {
    const Theme& theme = currentTheme();
    m_seed->setAccessibleName(tr("Seed parent"));
    m_pollen->setAccessibleName(tr("Pollen parent"));
    m_pollen->setPlaceholderText(tr("open pollination"));
    m_pollenWords->setAccessibleName(tr("Pollen on the style"));
    m_inbreedingWords->setAccessibleName(tr("Inbreeding of the seedlings"));
    m_founderWords->setAccessibleName(tr("Founders of the seedlings"));
    m_warningWords->setAccessibleName(tr("What to mind"));
    m_warningWords->hide();
    auto* both = new QHBoxLayout;
    both->setSpacing(theme.space);
    both->addWidget(m_seed, 1);
    both->addWidget(new QLabel(QStringLiteral("×")));
    both->addWidget(m_pollen, 1);
    auto* form = new QFormLayout(this);
    form->setContentsMargins(theme.space, theme.space, theme.space, theme.space);
    form->setHorizontalSpacing(theme.space);
    form->setVerticalSpacing(theme.gap);
    form->setLabelAlignment(Qt::AlignLeft | Qt::AlignTop);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    auto* parents = new QLabel(tr("&Parents"));
    parents->setBuddy(m_seed);
    form->addRow(parents, both);
    form->addRow(tr("Pollen"), m_pollenWords);
    form->addRow(tr("Inbreeding"), m_inbreedingWords);
    form->addRow(tr("Founders"), m_founderWords);
    form->addRow(m_warningWords);
}

void OutlookPanel::showCross(const CrossLine* line) {
    if (line == nullptr) {
        return;
    }
    const auto view = m_book.view();
    m_typed = false;
    m_made = line->cross.id;
    m_seed->setText(nameOf(*view, line->cross.seedParent));
    m_pollen->setText(nameOf(*view, line->cross.pollenParent));
    refresh();
}

void OutlookPanel::parentsTyped() {
    m_typed = true;
    m_made.reset();
    refresh();
}

void OutlookPanel::refresh() {
    const auto view = m_book.view();
    offerNames();
    CrossOfTwo cross;
    const Cross* made = m_made ? view->cross(*m_made) : nullptr;
    if (made != nullptr) {
        const auto known = [&view](const std::optional<GenotypeId>& id) {
            return id ? view->genotype(*id) : std::nullopt;
        };
        cross = {known(made->seedParent), known(made->pollenParent), made->pollination,
                 made->cropYear, m_made};
        return say(cross);
    }
    cross.year = CropYear{m_book.today().year()};
    cross.pollination =
        m_pollen->text().trimmed().isEmpty() ? Pollination::open : Pollination::controlled;
    for (auto [edit, parent] :
         {std::pair{m_seed, &cross.seedParent}, std::pair{m_pollen, &cross.pollenParent}}) {
        const QString text = edit->text().trimmed();
        *parent = text.isEmpty() ? std::nullopt : view->genotypeCalled(text.toStdString());
        if (!text.isEmpty() && !*parent) {
            return sayNothing(tr("\"%1\" is not in the book.").arg(text));
        }
    }
    say(cross);
}

void OutlookPanel::say(const CrossOfTwo& cross) {
    const auto view = m_book.view();
    const auto parent = cross.seedParent ? cross.seedParent : cross.pollenParent;
    if (!parent) {
        return sayNothing(tr("Choose a cross, or type two parents."));
    }
    setSpecies(view->genotypes()[*parent].species);
    const auto outlook = outlookOf(*view, m_book.store(), cross);
    if (!outlook) {
        return sayNothing(QString::fromStdString(outlook.problem().sentence()));
    }
    m_pollenWords->setText(pollenText(*outlook));
    m_inbreedingWords->setText(inbreedingText(*outlook, *view));
    m_founderWords->setText(foundersText(*outlook, *view));
    m_warningWords->setText(warningTexts(*outlook, *view).join(QLatin1Char('\n')));
    m_warningWords->setVisible(!m_warningWords->text().isEmpty());
}

void OutlookPanel::sayNothing(const QString& why) {
    m_pollenWords->setText(why);
    m_inbreedingWords->clear();
    m_founderWords->clear();
    m_warningWords->clear();
    m_warningWords->hide();
}

void OutlookPanel::setSpecies(std::optional<SpeciesId> species) {
    m_species = species;
    Q_EMIT speciesChanged();
}

void OutlookPanel::offerNames() {
    QStringList names;
    const auto view = m_book.view();
    for (const GenotypeEntry& entry : view->genotypes()) {
        if (isOffered(entry)) {
            names << QString::fromStdString(entry.called());
        }
    }
    names.sort(Qt::CaseInsensitive);
    for (const QLineEdit* edit : {m_seed, m_pollen}) {
        auto* model = qobject_cast<QStringListModel*>(edit->completer()->model());
        if (model->stringList() != names) {
            model->setStringList(names);
        }
    }
}

} // namespace pipwright::ui
