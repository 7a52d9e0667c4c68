#pragma once

#include "ui/tree/entry_form.h"
#include "ui/tree/record_list.h"

#include <QByteArray>

class QLineEdit;
class QSpinBox;

namespace pipwright::ui {

class ChipRow;
class FlowText;

/// Words, and that is all.
class NoteForm : public EntryForm {
    Q_OBJECT

  public:
    explicit NoteForm(OpenBook& book, QWidget* parent = nullptr);
    QString title(const QString& called) const override;
    QWidget* firstField() const override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    void saved() override;
    bool needsOneDay() const override { return false; }

  private:
    QLineEdit* m_words;
};

/// How far the fruit is, and what lies on the ground.
class WalkForm : public EntryForm {
    Q_OBJECT

  public:
    explicit WalkForm(OpenBook& book, QWidget* parent = nullptr);
    QString title(const QString& called) const override;
    QWidget* firstField() const override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    void saved() override;
    bool needsOneDay() const override { return false; }

  private:
    ChipRow* m_marks;
    ChipRow* m_drops;
};

/// Where it goes from here, and why.
class DecisionForm : public EntryForm {
    Q_OBJECT

  public:
    explicit DecisionForm(OpenBook& book, QWidget* parent = nullptr);
    QString title(const QString& called) const override;
    QWidget* firstField() const override;
    bool goOn(const QWidget* field) override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    void saved() override;

  private:
    ChipRow* m_stages;
    QLineEdit* m_reason;
};

/// So many grafts of it, and why.
class WishForm : public EntryForm {
    Q_OBJECT

  public:
    explicit WishForm(OpenBook& book, QWidget* parent = nullptr);
    QString title(const QString& called) const override;
    QWidget* firstField() const override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    void saved() override;

  private:
    QSpinBox* m_number;
    QLineEdit* m_reason;
};

/// Whether the plant still grows.
class StateForm : public EntryForm {
    Q_OBJECT

  public:
    explicit StateForm(OpenBook& book, QWidget* parent = nullptr);
    QString title(const QString& called) const override;
    QWidget* firstField() const override;
    bool goOn(const QWidget* field) override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    void saved() override;

  private:
    ChipRow* m_states;
    QLineEdit* m_reason;
};

/// A picture that was chosen, and what it shows.
class PhotoForm : public EntryForm {
    Q_OBJECT

  public:
    explicit PhotoForm(OpenBook& book, QWidget* parent = nullptr);
    /// Reads the file; a Problem when it cannot be read or is no photo the book can keep.
    Outcome choose(const QString& path);
    QString title(const QString& called) const override;
    QWidget* firstField() const override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    void saved() override;
    bool isForOne() const override { return true; }

  private:
    QByteArray m_bytes;
    FlowText* m_file;
    QLineEdit* m_caption;
};

/// Why a record counts no more.
class VoidForm : public EntryForm {
    Q_OBJECT

  public:
    explicit VoidForm(OpenBook& book, QWidget* parent = nullptr);
    void setVoiding(const Voiding& voiding) { m_voiding = voiding; }
    QString title(const QString& called) const override;
    QWidget* firstField() const override;
    Result<ChangeSet> edits(const EntryTarget& target, const EditContext& context) override;
    void saved() override;
    bool isForOne() const override { return true; }
    bool hasDay() const override { return false; }

  private:
    Voiding m_voiding;
    QLineEdit* m_reason;
};

} // namespace pipwright::ui
