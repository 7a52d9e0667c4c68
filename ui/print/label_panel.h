#pragma once

#include "core/exchange/print/label_sheet.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QSpinBox;
class QVBoxLayout;

namespace pipwright::ui {

class MisfitList;
class PreviewPane;
class PrintButtons;

/// Labels for some plants: which stock, where to start on a half-used sheet, what they will look
/// like, and which do not fit and why.
class LabelPanel : public QWidget {
    Q_OBJECT

  public:
    explicit LabelPanel(QWidget* parent = nullptr);

    void setLabels(std::vector<LabelText> labels);
    /// By its lasting key; unknown keys are ignored.
    void setStock(std::string_view key);
    [[nodiscard]] std::string stockKey() const;

    [[nodiscard]] QCheckBox* cutMarks() const { return m_cutMarks; }
    /// Why there are no cut marks to choose; hidden while there are.
    [[nodiscard]] QLabel* cutMarksWhy() const { return m_cutMarksWhy; }
    [[nodiscard]] PreviewPane* preview() const { return m_preview; }
    [[nodiscard]] MisfitList* misfits() const { return m_misfits; }
    [[nodiscard]] PrintButtons* buttons() const { return m_buttons; }

  Q_SIGNALS:
    void stockChosen(const QString& key);

  private:
    QWidget* makeControls();
    void layOutChoices(QVBoxLayout* column);
    void chooseStock();
    void lay();
    [[nodiscard]] const LabelStock& stock() const;
    void startWhereClicked(int page, PaperPoint place);

    std::vector<LabelText> m_labels;
    QComboBox* m_stock;
    QSpinBox* m_start;
    QLabel* m_startOf;
    QCheckBox* m_cutMarks;
    QLabel* m_cutMarksWhy;
    QCheckBox* m_leaveOutField;
    QCheckBox* m_ruler;
    QLabel* m_count;
    QLabel* m_misfitTitle;
    MisfitList* m_misfits;
    PreviewPane* m_preview;
    PrintButtons* m_buttons;
};

} // namespace pipwright::ui
