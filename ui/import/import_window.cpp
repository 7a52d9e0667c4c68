#include "ui/import/import_window.h"

#include "ui/book/open_book.h"
#include "ui/import/import_words.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/theme.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr int kPreviewLines = 12;
constexpr int kMostLinesListed = 500;

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

QLabel* heading(const QString& words) {
    auto* label = new QLabel(words);
    label->setFont(lightTheme().strongFont());
    return label;
}

} // namespace

ImportWindow::ImportWindow(OpenBook& book, QWidget* parent) : QDialog(parent), m_book(book) {
    setWindowTitle(tr("Bring in a table"));
    resize(1040, 720);
    build();
    connectParts();
    fillRecipes();
    showPlan();
}

QWidget* ImportWindow::buildSource() {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    m_paste = new QPlainTextEdit;
    m_paste->setPlaceholderText(
        tr("Paste a table here: one line of headings, then one line a tree (or score, or walk "
           "mark). Columns may be cut by tabs, commas or semicolons."));
    m_paste->setAccessibleName(tr("Table to bring in"));
    m_paste->setTabChangesFocus(true);
    m_paste->setLineWrapMode(QPlainTextEdit::NoWrap);
    m_paste->setMaximumHeight(110);
    m_open = new QPushButton(tr("Open a file..."));
    m_open->setAutoDefault(false);
    m_sourceWords = new QLabel;
    auto* line = new QHBoxLayout;
    line->addWidget(m_open);
    line->addWidget(m_sourceWords, 1);
    column->addWidget(heading(tr("1. The table")));
    column->addWidget(m_paste);
    column->addLayout(line);
    return box;
}

QWidget* ImportWindow::buildChoices() {
    auto* box = new QWidget;
    auto* form = new QFormLayout(box);
    form->setContentsMargins(0, 0, 0, 0);
    m_target = new QComboBox;
    for (const RecipeTarget one : {RecipeTarget::trees, RecipeTarget::parents, RecipeTarget::scores,
                                   RecipeTarget::walkMarks}) {
        m_target->addItem(targetWord(one), static_cast<int>(one));
    }
    m_recipes = new QComboBox;
    m_dateOrder = new QComboBox;
    m_dateOrder->addItem(tr("year-month-day"), static_cast<int>(DateOrder::yearMonthDay));
    m_dateOrder->addItem(tr("day first: 3/8 is 3 August"),
                         static_cast<int>(DateOrder::dayMonthYear));
    m_dateOrder->addItem(tr("month first: 3/8 is 8 March"),
                         static_cast<int>(DateOrder::monthDayYear));
    m_dateOrder->setCurrentIndex(1);
    m_decimal = new QComboBox;
    m_decimal->addItem(tr("point: 7.5"));
    m_decimal->addItem(tr("comma: 7,5"));
    m_site = new QLineEdit;
    m_site->setPlaceholderText(tr("the site, if no column says it"));
    m_taster = new QLineEdit;
    m_taster->setPlaceholderText(tr("the taster, if no column says it"));
    form->addRow(tr("Each line is"), m_target);
    form->addRow(tr("Recipe"), m_recipes);
    form->addRow(tr("Dates"), m_dateOrder);
    form->addRow(tr("Decimals"), m_decimal);
    form->addRow(tr("Site"), m_site);
    form->addRow(tr("Taster"), m_taster);
    return box;
}

void ImportWindow::build() {
    m_preview = new QTableWidget;
    m_preview->setAccessibleName(tr("First lines, with what each column is"));
    m_preview->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_preview->verticalHeader()->hide();
    m_lines = new QTableWidget(0, 3);
    m_lines->setAccessibleName(tr("Trial run, line by line"));
    m_lines->setHorizontalHeaderLabels({tr("line"), tr("fate"), tr("what becomes of it")});
    m_lines->horizontalHeader()->setStretchLastSection(true);
    m_lines->verticalHeader()->hide();
    m_lines->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_lines->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_lines->setWordWrap(false);
    m_verdict = new QLabel;
    m_verdict->setWordWrap(true);
    m_notice = new NoticeBar;
    m_notice->hide();
    m_skipFaulty = new QCheckBox(tr("Leave faulty lines out"));
    m_recipeName = new QLineEdit;
    m_recipeName->setPlaceholderText(tr("name of the recipe"));
    m_recipeName->setAccessibleName(tr("Name of the recipe"));
    m_keepRecipe = new QPushButton(tr("Keep as recipe"));
    m_bringIn = new QPushButton(tr("Bring in"));
    auto* leave = new QPushButton(tr("Close"));
    leave->setAutoDefault(false);
    connect(leave, &QPushButton::clicked, this, &QDialog::close);
    m_keepRecipe->setAutoDefault(false);

    auto* left = new QVBoxLayout;
    left->addWidget(buildSource());
    auto* top = new QHBoxLayout;
    top->addLayout(left, 3);
    top->addSpacing(lightTheme().margin);
    top->addWidget(buildChoices(), 2);
    auto* bottom = new QHBoxLayout;
    bottom->addWidget(m_recipeName);
    bottom->addWidget(m_keepRecipe);
    bottom->addStretch(1);
    bottom->addWidget(m_skipFaulty);
    bottom->addWidget(m_bringIn);
    bottom->addWidget(leave);
    auto* whole = new QVBoxLayout(this);
    whole->addWidget(m_notice);
    whole->addLayout(top);
    whole->addWidget(heading(tr("2. What is each column?")));
    whole->addWidget(m_preview, 2);
    whole->addWidget(heading(tr("3. Trial run: nothing is written yet")));
    whole->addWidget(m_verdict);
    whole->addWidget(m_lines, 3);
    whole->addLayout(bottom);
}

void ImportWindow::connectParts() {
    connect(m_paste, &QPlainTextEdit::textChanged, this,
            [this] { takeText(m_paste->toPlainText()); });
    connect(m_open, &QPushButton::clicked, this, [this] {
        const QString path = QFileDialog::getOpenFileName(
            this, tr("Open a table"), {}, tr("Tables (*.csv *.tsv *.txt);;All files (*)"));
        if (!path.isEmpty()) {
            if (const Outcome outcome = takeFile(path); !outcome) {
                m_notice->tell(outcome.problem());
            }
        }
    });
    connect(m_target, &QComboBox::currentIndexChanged, this, &ImportWindow::chooseTarget);
    connect(m_recipes, &QComboBox::currentIndexChanged, this, &ImportWindow::chooseRecipe);
    for (QComboBox* choice : {m_dateOrder, m_decimal}) {
        connect(choice, &QComboBox::currentIndexChanged, this, &ImportWindow::tryOut);
    }
    for (QLineEdit* line : {m_site, m_taster}) {
        connect(line, &QLineEdit::editingFinished, this, &ImportWindow::tryOut);
    }
    connect(m_skipFaulty, &QCheckBox::toggled, this, &ImportWindow::tryOut);
    connect(m_bringIn, &QPushButton::clicked, this, &ImportWindow::bringIn);
    connect(m_keepRecipe, &QPushButton::clicked, this, &ImportWindow::keepRecipe);
}

QString ImportWindow::verdict() const {
    return m_verdict->text();
}

RecipeTarget ImportWindow::target() const {
    return static_cast<RecipeTarget>(m_target->currentData().toInt());
}

QComboBox* ImportWindow::columnChoice(int column) const {
    return qobject_cast<QComboBox*>(m_preview->cellWidget(0, column));
}

void ImportWindow::takeText(const QString& typed) {
    if (typed.trimmed().isEmpty()) {
        m_table.reset();
        m_plan.reset();
        fillPreview();
        showPlan();
        return;
    }
    auto table = readTable(typed.toStdString(), tr("pasted text").toStdString());
    if (!table) {
        m_notice->tell(table.problem());
        return;
    }
    takeTable(std::move(*table));
}

Outcome ImportWindow::takeFile(const QString& path) {
    auto table = readTableFile(path.toStdString());
    if (!table) {
        return table.problem();
    }
    takeTable(std::move(*table));
    return {};
}

void ImportWindow::takeTable(PlainTable table) {
    m_notice->close();
    m_table = std::move(table);
    const QString cut = m_table->delimiter == '\t'  ? tr("tabs")
                        : m_table->delimiter == ';' ? tr("semicolons")
                                                    : tr("commas");
    m_sourceWords->setText(tr("%n line(s)", nullptr, static_cast<int>(m_table->lines.size())) +
                           tr(", columns cut by %1").arg(cut));
    setRecipe(recipeFromHeadings(target(), m_table->headings));
}

void ImportWindow::fillRecipes() {
    const QSignalBlocker quiet(m_recipes);
    m_recipes->clear();
    m_recipes->addItem(tr("assign the columns by hand"));
    if (const auto recipes = m_book.store().all<Recipe>()) {
        for (const Recipe& one : *recipes) {
            m_recipes->addItem(text(one.name), text(one.id.uuid.text()));
        }
    }
}

void ImportWindow::chooseTarget() {
    if (m_table && !m_filling) {
        setRecipe(recipeFromHeadings(target(), m_table->headings));
    }
}

void ImportWindow::chooseRecipe() {
    const auto id = Uuid::fromText(m_recipes->currentData().toString().toStdString());
    const auto stored = id ? m_book.store().get(RecipeId(*id)) : std::optional<Recipe>{};
    if (!id || !stored || !*stored) {
        return;
    }
    const auto chosen = tableRecipe(**stored);
    if (!chosen) {
        m_notice->tell(chosen.problem());
        return;
    }
    m_recipeName->setText(text(chosen->name));
    setRecipe(*chosen);
}

void ImportWindow::setRecipe(const TableRecipe& recipe) {
    m_filling = true;
    m_spellings = recipe.columns;
    m_target->setCurrentIndex(m_target->findData(static_cast<int>(recipe.target)));
    m_dateOrder->setCurrentIndex(m_dateOrder->findData(static_cast<int>(recipe.dateOrder)));
    m_decimal->setCurrentIndex(recipe.decimalMark == ',' ? 1 : 0);
    m_site->setText(text(recipe.site));
    m_taster->setText(text(recipe.taster));
    fillPreview();
    for (int column = 0; m_table && column < m_preview->columnCount(); ++column) {
        const std::string& name = m_table->headings[static_cast<std::size_t>(column)];
        const auto use = std::find_if(recipe.columns.begin(), recipe.columns.end(),
                                      [&name](const ColumnUse& one) { return one.column == name; });
        if (use != recipe.columns.end()) {
            QComboBox* choice = columnChoice(column);
            choice->setCurrentIndex(choice->findData(static_cast<int>(use->field)));
        }
    }
    m_filling = false;
    tryOut();
}

TableRecipe ImportWindow::recipe() const {
    TableRecipe recipe;
    recipe.name = m_recipeName->text().trimmed().toStdString();
    recipe.target = target();
    recipe.dateOrder = static_cast<DateOrder>(m_dateOrder->currentData().toInt());
    recipe.decimalMark = m_decimal->currentIndex() == 1 ? ',' : '.';
    recipe.site = m_site->text().trimmed().toStdString();
    recipe.taster = m_taster->text().trimmed().toStdString();
    for (int column = 0; m_table && column < m_preview->columnCount(); ++column) {
        const QComboBox* choice = columnChoice(column);
        if (choice == nullptr || choice->currentData().toInt() < 0) {
            continue;
        }
        ColumnUse use;
        use.column = m_table->headings[static_cast<std::size_t>(column)];
        use.field = static_cast<TableField>(choice->currentData().toInt());
        for (const ColumnUse& known : m_spellings) {
            if (known.column == use.column && known.field == use.field) {
                use.spellings = known.spellings;
            }
        }
        recipe.columns.push_back(std::move(use));
    }
    return recipe;
}

void ImportWindow::fillPreview() {
    m_preview->clear();
    m_preview->setRowCount(0);
    m_preview->setColumnCount(0);
    if (!m_table) {
        return;
    }
    const int columns = static_cast<int>(m_table->headings.size());
    const int lines = std::min(kPreviewLines, static_cast<int>(m_table->lines.size()));
    m_preview->setColumnCount(columns);
    m_preview->setRowCount(lines + 1);
    QStringList headings;
    for (int column = 0; column < columns; ++column) {
        headings << text(m_table->headings[static_cast<std::size_t>(column)]);
        auto* choice = new QComboBox;
        choice->setAccessibleName(tr("Column %1 is").arg(headings.back()));
        choice->addItem(tr("(left out)"), -1);
        for (const TableFieldInfo& field : tableFieldsOf(target())) {
            choice->addItem(fieldWord(field.field), static_cast<int>(field.field));
            choice->setItemData(choice->count() - 1,
                                QString::fromUtf8(field.meaning.data(),
                                                  static_cast<qsizetype>(field.meaning.size())),
                                Qt::ToolTipRole);
        }
        connect(choice, &QComboBox::currentIndexChanged, this, &ImportWindow::tryOut);
        m_preview->setCellWidget(0, column, choice);
        for (int line = 0; line < lines; ++line) {
            const auto& cells = m_table->lines[static_cast<std::size_t>(line)].cells;
            m_preview->setItem(line + 1, column,
                               new QTableWidgetItem(text(cells[static_cast<std::size_t>(column)])));
        }
    }
    m_preview->setHorizontalHeaderLabels(headings);
    m_preview->resizeColumnsToContents();
    m_preview->resizeRowToContents(0);
}

void ImportWindow::tryOut() {
    if (m_filling || !m_table) {
        return;
    }
    m_plan.reset();
    const TableRecipe chosen = recipe();
    PlanOptions options;
    options.skipFaulty = m_skipFaulty->isChecked();
    options.person = m_book.person();
    auto plan = chosen.columns.empty() ? Result<ImportPlan>(ImportPlan{})
                                       : planImport(*m_table, chosen, m_book.store(),
                                                    m_book.today(), m_book.ids(), options);
    if (!plan) {
        m_notice->tell(plan.problem());
    } else {
        m_notice->close();
        if (!chosen.columns.empty()) {
            m_plan = std::move(*plan);
        }
    }
    showPlan();
}

void ImportWindow::showPlan() {
    m_lines->setRowCount(0);
    m_bringIn->setEnabled(m_plan && !m_plan->changes.empty());
    m_keepRecipe->setEnabled(m_table.has_value());
    if (!m_plan) {
        m_verdict->setText(m_table ? tr("Say of at least one column what it is.")
                                   : tr("Paste a table or open a file."));
        return;
    }
    m_verdict->setText(
        tr("%n line(s) new", nullptr, static_cast<int>(m_plan->created)) +
        tr(", %n in the book already", nullptr, static_cast<int>(m_plan->matched)) +
        tr(", %n faulty.", nullptr, static_cast<int>(m_plan->faulty)) +
        (m_plan->faults.empty() || m_skipFaulty->isChecked()
             ? QString()
             : QLatin1Char(' ') + tr("Nothing can be brought in until the faulty lines are "
                                     "repaired or left out.")));
    const auto add = [this](const QString& line, const QString& fate, const QString& what) {
        const int row = m_lines->rowCount();
        m_lines->insertRow(row);
        m_lines->setItem(row, 0, new QTableWidgetItem(line));
        m_lines->setItem(row, 1, new QTableWidgetItem(fate));
        auto* item = new QTableWidgetItem(what);
        item->setToolTip(what);
        m_lines->setItem(row, 2, item);
    };
    for (const Problem& fault : m_plan->faults) { // faults first: they want something done
        if (m_lines->rowCount() < kMostLinesListed) {
            add(QStringLiteral("!"), fateWord(LineFate::faulty), text(fault.sentence()));
        }
    }
    for (const PlannedLine& line : m_plan->lines) {
        if (line.fate != LineFate::faulty && m_lines->rowCount() < kMostLinesListed) {
            add(QString::number(line.number), fateWord(line.fate), text(line.what));
        }
    }
    m_lines->resizeColumnToContents(0);
    m_lines->resizeColumnToContents(1);
}

void ImportWindow::bringIn() {
    tryOut(); // the book may have moved since the trial run
    if (!m_plan || m_plan->changes.empty()) {
        return;
    }
    const QString sentence = text(m_plan->changes.sentence);
    if (m_book.apply(m_plan->changes)) {
        m_paste->clear();
        m_table.reset();
        m_plan.reset();
        fillPreview();
        showPlan();
        m_sourceWords->clear();
        m_notice->say(NoticeBar::Kind::word, tr("Brought in: %1.").arg(sentence),
                      tr("One Undo takes it out again."));
    } else {
        m_notice->say(NoticeBar::Kind::fault, tr("The book refused it; nothing has changed."),
                      tr("The reason stands above the rows in the main window."));
    }
}

void ImportWindow::keepRecipe() {
    const TableRecipe chosen = recipe();
    if (chosen.name.empty()) {
        m_notice->say(NoticeBar::Kind::attention, tr("The recipe has no name yet."),
                      tr("Type a name beside the button."));
        m_recipeName->setFocus();
        return;
    }
    ChangeSet set;
    set.sentence = "Recipe \"" + chosen.name + "\"";
    set.person = m_book.person();
    const auto recipes = m_book.store().all<Recipe>();
    const Recipe* same = nullptr;
    if (recipes) {
        for (const Recipe& one : *recipes) {
            if (one.name == chosen.name) {
                same = &one;
            }
        }
    }
    if (same != nullptr) {
        set.edit(*same, storedRecipe(chosen, same->id));
    } else {
        set.create(storedRecipe(chosen, RecipeId(m_book.ids().make())));
    }
    if (m_book.apply(set)) {
        fillRecipes();
        m_notice->say(NoticeBar::Kind::word, tr("The recipe is kept in the book."),
                      tr("pipwright import BOOK FILE --recipe does the same without the window."));
    }
}

} // namespace pipwright::ui
