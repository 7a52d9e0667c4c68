#pragma once

#include "core/exchange/plain_table.h"
#include "core/exchange/table_import.h"

#include <QDialog>

#include <optional>
#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QTableWidget;

namespace pipwright::ui {

class NoticeBar;
class OpenBook;

/// Brings somebody's own table into the book: paste it or open a file, say what each column is,
/// look at the trial run, bring it in. The assignment can be kept as a named recipe. Nothing is
/// written before "Bring in", and that is one step of the journal.
class ImportWindow : public QDialog {
    Q_OBJECT

  public:
    ImportWindow(OpenBook& book, QWidget* parent);

    /// Takes a text as if it had been pasted.
    void takeText(const QString& text);
    Outcome takeFile(const QString& path);

    [[nodiscard]] QPlainTextEdit* pasteField() const { return m_paste; }
    [[nodiscard]] QComboBox* targetChoice() const { return m_target; }
    [[nodiscard]] QComboBox* columnChoice(int column) const;
    [[nodiscard]] QTableWidget* preview() const { return m_preview; }
    [[nodiscard]] QPushButton* bringInButton() const { return m_bringIn; }
    [[nodiscard]] QCheckBox* skipFaulty() const { return m_skipFaulty; }
    [[nodiscard]] QLineEdit* recipeName() const { return m_recipeName; }
    [[nodiscard]] QPushButton* keepRecipeButton() const { return m_keepRecipe; }
    [[nodiscard]] QComboBox* recipeChoice() const { return m_recipes; }
    [[nodiscard]] QString verdict() const;
    [[nodiscard]] const std::optional<ImportPlan>& plan() const { return m_plan; }

  private:
    void build();
    QWidget* buildSource();
    QWidget* buildChoices();
    void connectParts();
    void takeTable(PlainTable table);
    void fillRecipes();
    void chooseTarget();
    void chooseRecipe();
    void setRecipe(const TableRecipe& recipe);
    [[nodiscard]] TableRecipe recipe() const;
    [[nodiscard]] RecipeTarget target() const;
    void fillPreview();
    void tryOut();
    void showPlan();
    void bringIn();
    void keepRecipe();

    OpenBook& m_book;
    std::optional<PlainTable> m_table;
    std::optional<ImportPlan> m_plan;
    std::vector<ColumnUse> m_spellings; ///< of the chosen recipe: spellings by column
    bool m_filling = false;

    QPlainTextEdit* m_paste = nullptr;
    QPushButton* m_open = nullptr;
    QLabel* m_sourceWords = nullptr;
    QComboBox* m_target = nullptr;
    QComboBox* m_recipes = nullptr;
    QComboBox* m_dateOrder = nullptr;
    QComboBox* m_decimal = nullptr;
    QLineEdit* m_site = nullptr;
    QLineEdit* m_taster = nullptr;
    QTableWidget* m_preview = nullptr;
    QTableWidget* m_lines = nullptr;
    QLabel* m_verdict = nullptr;
    NoticeBar* m_notice = nullptr;
    QCheckBox* m_skipFaulty = nullptr;
    QLineEdit* m_recipeName = nullptr;
    QPushButton* m_keepRecipe = nullptr;
    QPushButton* m_bringIn = nullptr;
};

} // namespace pipwright::ui
