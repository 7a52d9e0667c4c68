#include "ui/print/label_panel.h"

#include "core/exchange/print/ruler_page.h"
#include "ui/print/misfit_list.h"
#include "ui/print/page_preview.h"
#include "ui/print/paper_font.h"
#include "ui/print/preview_pane.h"
#include "ui/print/print_buttons.h"
#include "ui/print/print_words.h"
#include "ui/widgets/theme.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QSplitter>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

constexpr int kControls = 280; ///< logical pixels; the page has the rest

} // namespace

LabelPanel::LabelPanel(QWidget* parent)
    : QWidget(parent), m_stock(new QComboBox(this)), m_start(new QSpinBox(this)),
      m_startOf(new QLabel(this)), m_cutMarks(new QCheckBox(tr("C&ut marks"), this)),
      m_cutMarksWhy(new QLabel(this)),
      m_leaveOutField(new QCheckBox(tr("Print &without what does not fit"), this)),
      m_ruler(new QCheckBox(tr("&Ruler page first"), this)), m_count(new QLabel(this)),
      m_misfitTitle(new QLabel(tr("Does not &fit"), this)), m_misfits(new MisfitList(this)),
      m_preview(new PreviewPane(this)), m_buttons(new PrintButtons(this)) {
    for (const LabelStock& stock : labelStocks()) {
        m_stock->addItem(stockName(stock), QString::fromStdString(stock.key));
    }
    m_cutMarks->setChecked(true);
    auto* line = new QHBoxLayout(this);
    const int margin = currentTheme().margin;
    line->setContentsMargins(margin, margin, margin, margin);
    auto* splitter = new QSplitter(Qt::Horizontal, this);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(makeControls());
    splitter->addWidget(m_preview);
    splitter->setStretchFactor(0, 0);
    splitter->setStretchFactor(1, 1);
    line->addWidget(splitter);

    connect(m_stock, &QComboBox::currentIndexChanged, this, &LabelPanel::chooseStock);
    connect(m_start, &QSpinBox::valueChanged, this, &LabelPanel::lay);
    for (QCheckBox* choice : {m_cutMarks, m_leaveOutField, m_ruler}) {
        connect(choice, &QCheckBox::toggled, this, &LabelPanel::lay);
    }
    connect(m_preview->preview(), &PagePreview::clickedAt, this, &LabelPanel::startWhereClicked);
    // Labels are small things on a large page: they are shown as large as the place is wide.
    m_preview->preview()->showPageWidth();
    chooseStock();
}

QWidget* LabelPanel::makeControls() {
    auto* controls = new QWidget(this);
    auto* column = new QVBoxLayout(controls);
    const Theme& theme = currentTheme();
    column->setContentsMargins(0, 0, theme.space, 0);
    column->setSpacing(theme.space);
    layOutChoices(column);
    m_misfitTitle->setFont(theme.strongFont());
    m_misfitTitle->setBuddy(m_misfits);
    column->addWidget(m_count);
    column->addWidget(m_misfitTitle);
    column->addWidget(m_misfits, 1);
    column->addStretch(0);
    column->addWidget(m_buttons);
    controls->setMinimumWidth(kControls);
    controls->setMaximumWidth(kControls);
    return controls;
}

void LabelPanel::layOutChoices(QVBoxLayout* column) {
    m_stock->setAccessibleName(tr("Label stock"));
    m_stock->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_stock->setMinimumContentsLength(24);
    m_start->setAccessibleName(tr("First free label on the sheet"));
    m_start->setToolTip(tr("For a half-used sheet: the first free label, counted row by row. A "
                           "click on a label in the preview sets it too."));
    auto* stockTitle = new QLabel(tr("&Stock"), this);
    stockTitle->setBuddy(m_stock);
    auto* startTitle = new QLabel(tr("S&tart at label"), this);
    startTitle->setBuddy(m_start);
    auto* start = new QHBoxLayout;
    start->addWidget(m_start);
    start->addWidget(m_startOf);
    start->addStretch(1);
    auto* form = new QFormLayout;
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->addRow(startTitle, start);
    column->addWidget(stockTitle);
    column->addWidget(m_stock);
    column->addLayout(form);
    column->addWidget(m_cutMarks);
    m_cutMarksWhy->setFont(currentTheme().smallFont());
    m_cutMarksWhy->setForegroundRole(QPalette::PlaceholderText);
    m_cutMarksWhy->setWordWrap(true);
    column->addWidget(m_cutMarksWhy);
    column->addWidget(m_leaveOutField);
    column->addWidget(m_ruler);
}

void LabelPanel::setLabels(std::vector<LabelText> labels) {
    m_labels = std::move(labels);
    lay();
}

void LabelPanel::setStock(std::string_view key) {
    const int index =
        m_stock->findData(QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size())));
    if (index >= 0) {
        m_stock->setCurrentIndex(index);
    }
}

std::string LabelPanel::stockKey() const {
    return stock().key;
}

const LabelStock& LabelPanel::stock() const {
    return labelStocks()[static_cast<std::size_t>(std::max(m_stock->currentIndex(), 0))];
}

void LabelPanel::chooseStock() {
    {
        const QSignalBlocker quiet(m_start);
        m_start->setRange(1, stock().cells());
        m_start->setValue(1);
    }
    m_start->setEnabled(stock().cells() > 1);
    m_startOf->setText(tr("of %1").arg(stock().cells()));
    m_cutMarks->setEnabled(stock().toCut);
    const QString why = tr("These labels are cut already. Cut marks are for plain sheets that are "
                           "cut up by hand.");
    m_cutMarksWhy->setText(why);
    m_cutMarksWhy->setHidden(stock().toCut);
    m_cutMarks->setToolTip(stock().toCut ? tr("Thin marks at the corners, to cut along.") : why);
    m_cutMarks->setAccessibleDescription(m_cutMarks->toolTip());
    lay();
    Q_EMIT stockChosen(QString::fromStdString(stock().key));
}

void LabelPanel::lay() {
    const FontMeasure measure;
    LabelRun run;
    run.startCell = m_start->value() - 1;
    run.cutMarks = m_cutMarks->isChecked();
    run.overflow = m_leaveOutField->isChecked() ? Overflow::leaveOutField : Overflow::leaveOutLabel;
    auto placed = placeLabels(m_labels, stock(), run, measure);
    if (!placed) {
        m_count->setText(QString::fromStdString(placed.problem().sentence()));
        return;
    }
    std::vector<Page>& pages = placed->pages;
    std::size_t printed = 0;
    for (const Page& page : pages) {
        for (const Mark& mark : page.marks) {
            printed += std::holds_alternative<CodeMark>(mark) ? 1 : 0;
        }
    }
    m_count->setText(tr("Labels: %1 of %2 · sheets: %3")
                         .arg(static_cast<qulonglong>(printed))
                         .arg(static_cast<qulonglong>(m_labels.size()))
                         .arg(static_cast<qulonglong>(pages.size())));
    m_misfits->setMisfits(placed->misfits);
    m_misfitTitle->setVisible(!placed->misfits.empty());
    if (m_ruler->isChecked() && !m_labels.empty()) {
        pages.insert(pages.begin(), rulerPage(stock().page, translatedPaperWords(), measure));
    }
    m_buttons->setPages(pages, tr("Labels"));
    m_preview->setPages(std::move(pages));
}

void LabelPanel::startWhereClicked(int page, PaperPoint place) {
    const int firstSheet = m_ruler->isChecked() ? 1 : 0;
    if (page != firstSheet || stock().cells() == 1) {
        return;
    }
    const LabelStock& sheet = stock();
    for (int cell = 0; cell < sheet.cells(); ++cell) {
        const PaperPoint corner = sheet.cornerOf(cell);
        const bool isInside = place.x >= corner.x && place.x < corner.x + sheet.design.width &&
                              place.y >= corner.y && place.y < corner.y + sheet.design.height;
        if (isInside) {
            m_start->setValue(cell + 1);
            return;
        }
    }
}

} // namespace pipwright::ui
