#pragma once

#include "core/statistics/chart_spec.h"
#include "core/units/result.h"

#include <QString>
#include <QWidget>

class QStackedWidget;
class QTableView;
class QToolButton;

namespace pipwright::ui {

class ChartCanvas;
class ChartLegend;
class ChartTableModel;
class ElidedText;
class FlowText;
class NoticeBar;

/// A chart with its title, legend, the words of the mark one is at, a switch to read it as a table,
/// and export.
class ChartPanel : public QWidget {
    Q_OBJECT

  public:
    explicit ChartPanel(QWidget* parent = nullptr);

    void setSpec(const ChartSpec& spec);
    [[nodiscard]] const ChartSpec& spec() const { return m_spec; }
    void showAsTable(bool table);
    [[nodiscard]] bool isTable() const;
    /// PNG, SVG or CSV by the ending of the name, without asking. Charts leave out hidden series;
    /// CSV has all.
    Outcome writeTo(const QString& path) const;

    [[nodiscard]] ChartCanvas* canvas() const { return m_canvas; }
    [[nodiscard]] ChartLegend* legend() const { return m_legend; }
    [[nodiscard]] QTableView* table() const { return m_table; }
    [[nodiscard]] QToolButton* tableButton() const { return m_tableButton; }
    [[nodiscard]] QToolButton* exportButton() const { return m_exportButton; }
    /// The words of the mark one is at.
    [[nodiscard]] QString words() const;

  Q_SIGNALS:
    /// The mark's id: clicked, Enter on it, or Enter on its row of the table.
    void pointActivated(const QString& id);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void buildHead();
    void buildPages();
    void refresh();
    void askAndWrite(const QString& ending);
    void copyRows() const;

    ChartSpec m_spec;
    FlowText* m_title;
    NoticeBar* m_notice;
    QStackedWidget* m_pages;
    ChartCanvas* m_canvas;
    FlowText* m_empty;
    QTableView* m_table;
    ChartTableModel* m_model;
    ChartLegend* m_legend;
    ElidedText* m_words;
    QToolButton* m_tableButton;
    QToolButton* m_exportButton;
};

} // namespace pipwright::ui
