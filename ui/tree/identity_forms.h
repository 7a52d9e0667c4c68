#pragma once

#include "ui/tree/entry_form.h"

class QListWidget;
class QLineEdit;

namespace pipwright::ui {

class ChipRow;

/// The plant is another genotype than was thought.
class AnotherForm : public EntryForm {
    Q_OBJECT

  public:
    explicit AnotherForm(OpenBook& book, QWidget* parent = nullptr);
    QString title(const QString& called) const override;
    QWidget* firstField() const override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    void saved() override;
    bool isForOne() const override { return true; }

  private:
    QLineEdit* m_code;
    ChipRow* m_basis;
};

/// Two plants carry each other's tags.
class SwapForm : public EntryForm {
    Q_OBJECT

  public:
    explicit SwapForm(OpenBook& book, QWidget* parent = nullptr);
    QString title(const QString& called) const override;
    QWidget* firstField() const override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    void saved() override;
    bool isForOne() const override { return true; }

  private:
    QLineEdit* m_code;
};

/// A second plant stands at the place.
class BesideForm : public EntryForm {
    Q_OBJECT

  public:
    explicit BesideForm(OpenBook& book, QWidget* parent = nullptr);
    QString title(const QString& called) const override;
    QWidget* firstField() const override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    void saved() override;
    bool isForOne() const override { return true; }

  private:
    QLineEdit* m_code;
};

/// Records put down for this tree go to the tree they are of; those of the newest day are marked.
class MoveForm : public EntryForm {
    Q_OBJECT

  public:
    explicit MoveForm(OpenBook& book, QWidget* parent = nullptr);
    QString title(const QString& called) const override;
    void begin(const EntryTarget& target) override;
    QWidget* firstField() const override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    void saved() override;
    bool isForOne() const override { return true; }
    bool hasDay() const override { return false; }
    [[nodiscard]] QListWidget* list() const { return m_list; }

  private:
    struct Movable {
        Date day;
        QString words;
        RecordsOfTree record; ///< exactly one
    };

    QLineEdit* m_code;
    QListWidget* m_list;
    std::vector<Movable> m_movable; ///< newest first
};

} // namespace pipwright::ui
