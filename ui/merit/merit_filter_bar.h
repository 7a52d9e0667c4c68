#pragma once

#include "ui/merit/merit_filter.h"

#include <QWidget>

#include <optional>

class QComboBox;
class QPushButton;

namespace pipwright::ui {

class MeritTableModel;

/// What the ranking is by, and which seedlings of it are shown.
class MeritFilterBar : public QWidget {
    Q_OBJECT

  public:
    explicit MeritFilterBar(QWidget* parent = nullptr);

    /// Offers what there is in the report, keeping what was chosen while it is there.
    void offer(const MeritTableModel& ranking);
    [[nodiscard]] MeritFilter filter() const;
    /// The trait chosen; nothing: liking.
    [[nodiscard]] std::optional<TraitId> trait() const;
    /// "bearing; cull": what is filtered, in words; empty when nothing is.
    [[nodiscard]] QString words() const;
    void clear();

    [[nodiscard]] QComboBox* traitChoice() const { return m_trait; }
    [[nodiscard]] QComboBox* slotChoice() const { return m_slot; }
    [[nodiscard]] QComboBox* stageChoice() const { return m_stage; }
    [[nodiscard]] QComboBox* suggestionChoice() const { return m_suggestion; }
    [[nodiscard]] QComboBox* familyChoice() const { return m_family; }
    [[nodiscard]] QPushButton* neverFairButton() const { return m_neverFair; }
    [[nodiscard]] QPushButton* clearButton() const { return m_clear; }

  Q_SIGNALS:
    void filterChanged();
    void traitChanged();

  private:
    void offerTraits(const MeritTableModel& ranking);
    void tell();

    QComboBox* m_trait;
    QComboBox* m_slot;
    QComboBox* m_species;
    QComboBox* m_stage;
    QComboBox* m_suggestion;
    QComboBox* m_family;
    QPushButton* m_neverFair;
    QPushButton* m_clear;
};

} // namespace pipwright::ui
