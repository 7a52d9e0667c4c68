#pragma once

#include "core/orchard/people.h"

#include <QWidget>

#include <functional>
#include <vector>

class QLineEdit;
class QToolButton;

namespace pipwright::ui {

class FlowLayout;

/// Who sat at the table: everybody who tastes, to be ticked, and a line for somebody new.
class TasterRow : public QWidget {
    Q_OBJECT

  public:
    explicit TasterRow(QWidget* parent = nullptr);

    /// Those the book knows; those added here and those ticked stay.
    void setKnown(const std::vector<Person>& persons);
    void setChosen(const std::vector<PersonId>& persons);
    /// Ticked, in the order shown.
    [[nodiscard]] std::vector<Person> chosen() const;
    /// Ticked people the book does not know yet.
    [[nodiscard]] std::vector<Person> newcomers() const;
    void forgetNewcomers();

    [[nodiscard]] QToolButton* button(const QString& name) const;
    [[nodiscard]] QLineEdit* newcomerLine() const { return m_newcomer; }
    /// Gives a newcomer's record its id.
    void setIdMaker(std::function<PersonId()> makeId) { m_makeId = std::move(makeId); }

  Q_SIGNALS:
    void chosenChanged();

  private:
    struct Taster {
        Person person;
        bool isNew = false;
        QToolButton* button = nullptr;
    };
    void add(const Person& person, bool isNew, bool ticked);
    void takeNewcomer();

    std::vector<Taster> m_tasters;
    FlowLayout* m_layout;
    QLineEdit* m_newcomer;
    std::function<PersonId()> m_makeId;
};

} // namespace pipwright::ui
