#include "ui/tasting/taster_row.h"

#include "ui/widgets/flow_layout.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QToolButton>

#include <algorithm>

namespace pipwright::ui {

namespace {

constexpr int kNewcomerWidth = 190;

QString nameOf(const Person& person) {
    return QString::fromStdString(person.name.empty() ? person.initials : person.name);
}

/// Ticked reads without its colour too.
void dress(QToolButton* button, const QString& name) {
    button->setText(button->isChecked() ? QStringLiteral("✓ ") + name : name);
}

} // namespace

TasterRow::TasterRow(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Tasters"));
    m_layout = new FlowLayout(this);
    m_newcomer = new QLineEdit;
    m_newcomer->setPlaceholderText(tr("somebody new, then Enter"));
    m_newcomer->setAccessibleName(tr("Name of a new taster"));
    m_newcomer->setFixedWidth(kNewcomerWidth);
    m_layout->addWidget(m_newcomer);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(m_newcomer, &QLineEdit::returnPressed, this, &TasterRow::takeNewcomer);
}

void TasterRow::add(const Person& person, bool isNew, bool ticked) {
    auto* button = new QToolButton(this);
    const QString name = nameOf(person);
    button->setCheckable(true);
    button->setChecked(ticked);
    button->setFocusPolicy(Qt::StrongFocus);
    button->setAccessibleName(name);
    button->setToolTip(QString::fromStdString(person.healthNotes));
    dress(button, name);
    // The line for somebody new stays last.
    m_layout->removeWidget(m_newcomer);
    m_layout->addWidget(button);
    m_layout->addWidget(m_newcomer);
    button->show();
    m_tasters.push_back({person, isNew, button});
    setTabOrder(button, m_newcomer);
    connect(button, &QToolButton::toggled, this, [this, button, name] {
        dress(button, name);
        Q_EMIT chosenChanged();
    });
}

void TasterRow::setKnown(const std::vector<Person>& persons) {
    std::vector<Taster> before = std::move(m_tasters);
    m_tasters.clear();
    const auto wasTicked = [&before](PersonId id) {
        return std::any_of(before.begin(), before.end(), [id](const Taster& taster) {
            return taster.person.id == id && taster.button->isChecked();
        });
    };
    for (const Person& person : persons) {
        if (person.tastes || wasTicked(person.id)) {
            add(person, false, wasTicked(person.id));
        }
    }
    for (const Taster& taster : before) {
        const bool nowKnown =
            std::any_of(persons.begin(), persons.end(),
                        [&taster](const Person& one) { return one.id == taster.person.id; });
        if (taster.isNew && !nowKnown) {
            add(taster.person, true, taster.button->isChecked());
        }
        delete taster.button;
    }
}

void TasterRow::setChosen(const std::vector<PersonId>& persons) {
    for (const Taster& taster : m_tasters) {
        taster.button->setChecked(std::find(persons.begin(), persons.end(), taster.person.id) !=
                                  persons.end());
    }
}

std::vector<Person> TasterRow::chosen() const {
    std::vector<Person> all;
    for (const Taster& taster : m_tasters) {
        if (taster.button->isChecked()) {
            all.push_back(taster.person);
        }
    }
    return all;
}

std::vector<Person> TasterRow::newcomers() const {
    std::vector<Person> all;
    for (const Taster& taster : m_tasters) {
        if (taster.isNew && taster.button->isChecked()) {
            all.push_back(taster.person);
        }
    }
    return all;
}

void TasterRow::forgetNewcomers() {
    std::erase_if(m_tasters, [](const Taster& taster) {
        if (taster.isNew) {
            delete taster.button;
        }
        return taster.isNew;
    });
}

QToolButton* TasterRow::button(const QString& name) const {
    for (const Taster& taster : m_tasters) {
        if (nameOf(taster.person) == name) {
            return taster.button;
        }
    }
    return nullptr;
}

void TasterRow::takeNewcomer() {
    const QString name = m_newcomer->text().trimmed();
    if (name.isEmpty()) {
        return;
    }
    m_newcomer->clear();
    if (QToolButton* known = button(name)) {
        known->setChecked(true);
        return;
    }
    Person person;
    person.id = m_makeId();
    person.name = name.toStdString();
    person.tastes = true;
    for (const QString& part : name.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        person.initials += part.left(1).toUpper().toStdString();
    }
    add(person, true, true);
    Q_EMIT chosenChanged();
}

} // namespace pipwright::ui
