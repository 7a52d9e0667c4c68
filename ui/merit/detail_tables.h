#pragma once

#include "ui/merit/merit_detail.h"

#include <QString>
#include <QWidget>

#include <memory>

class QStandardItemModel;

namespace pipwright::ui {

class FlowText;
class PlainTable;

/// The scores of one seedling, raw beside corrected.
class ScoreTable : public QWidget {
    Q_OBJECT

  public:
    explicit ScoreTable(QWidget* parent = nullptr);
    void show(const MeritDetail& detail);
    using QWidget::show;
    void clear();
    [[nodiscard]] PlainTable* table() const { return m_table; }

  private:
    QStandardItemModel* m_model;
    PlainTable* m_table;
};

/// What would settle the verdict on one seedling: the tastings that could be held, and by how much
/// each can be expected to move the chance.
class SettleView : public QWidget {
    Q_OBJECT

  public:
    explicit SettleView(QWidget* parent = nullptr);
    void show(const MeritDetail& detail);
    using QWidget::show;
    void clear(const QString& why);
    [[nodiscard]] PlainTable* table() const { return m_table; }
    [[nodiscard]] QString advice() const;

  private:
    QStandardItemModel* m_model;
    FlowText* m_advice;
    PlainTable* m_table;
    FlowText* m_years;
};

} // namespace pipwright::ui
