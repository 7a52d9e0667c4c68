#pragma once

#include "core/evaluation/merit/merit_model.h"
#include "ui/merit/merit_detail.h"

#include <QString>
#include <QWidget>

#include <memory>
#include <vector>

class QCheckBox;
class QGridLayout;
class QLabel;

namespace pipwright::ui {

class FlowText;

/// From the mean as eaten to the merit: a bar for each correction, with its points and how many
/// scores it touches, and a switch for each. The switches are for this picture only.
class WaterfallView : public QWidget {
    Q_OBJECT

  public:
    explicit WaterfallView(QWidget* parent = nullptr);

    void show(const std::shared_ptr<const MeritDetail>& detail);
    using QWidget::show;
    /// Says why there is nothing to draw.
    void showNothing(const QString& why);
    /// What is switched off at present.
    [[nodiscard]] const MeritOptions& options() const { return m_options; }
    void switchAllOn();
    /// The switch of a step by its word; null when there is none.
    [[nodiscard]] QCheckBox* switchOf(const QString& word) const;
    /// "Had it been ...: 7.4 ± 0.6", the whole of what is drawn, in words.
    [[nodiscard]] QString summary() const;
    /// The lines from top to bottom: word, points, scores.
    [[nodiscard]] QStringList lines() const;

  Q_SIGNALS:
    /// A switch was moved; options() says how all stand now.
    void switched();

  private:
    struct Line {
        QString word;
        QWidget* name = nullptr;
        QLabel* points = nullptr;
        QLabel* records = nullptr;
    };

    void clear();
    void addStep(const MeritStep& step, double from, double low, double high);
    void addEnd(const QString& word, double value, double error, const QString& words, double low,
                double high);
    void toggle(const MeritStep& step, bool on);

    MeritOptions m_options;
    QGridLayout* m_grid;
    FlowText* m_summary;
    FlowText* m_note;
    std::vector<Line> m_lines;
};

} // namespace pipwright::ui
