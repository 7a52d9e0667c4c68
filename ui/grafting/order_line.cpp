#include "ui/grafting/order_line.h"

#include "core/evaluation/typed_tree.h"
#include "ui/book/open_book.h"
#include "ui/book/orchard_words.h"
#include "ui/grafting/graft_words.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/inexact_date_edit.h"
#include "ui/widgets/theme.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>
#include <initializer_list>

namespace pipwright::ui {

namespace {

constexpr int kMostGrafts = 9999;

} // namespace

OrderLine::OrderLine(OpenBook& book, QWidget* parent) : QWidget(parent), m_book(book) {
    const Theme& theme = lightTheme();
    m_what = new FlowText({}, FlowText::Weight::strong);
    m_method = new QComboBox;
    m_method->setAccessibleName(tr("Method of grafting"));
    for (const GraftMethod method : graftMethods()) {
        m_method->addItem(graftMethodWord(method), static_cast<int>(method));
    }
    m_number = new QSpinBox;
    m_number->setRange(1, kMostGrafts);
    m_number->setAccessibleName(tr("Number of grafts"));
    m_onto = new QLineEdit;
    m_onto->setAccessibleName(tr("Onto which tree or stock"));
    m_onto->setPlaceholderText(tr("onto: code, row/place, or words"));
    m_ontoMeaning = new FlowText({}, FlowText::Weight::small);
    m_date = new InexactDateEdit(m_book.today());
    m_order = new QPushButton(tr("Order"));
    auto* onto = new QVBoxLayout;
    onto->setSpacing(2);
    onto->addWidget(m_onto);
    onto->addWidget(m_ontoMeaning);
    auto* how = new QHBoxLayout;
    how->setSpacing(theme.space);
    how->addWidget(m_method);
    how->addWidget(m_number);
    how->addStretch(1);
    how->addWidget(m_order);
    auto* where = new QHBoxLayout;
    where->setSpacing(theme.space);
    where->addLayout(onto, 1);
    where->addWidget(m_date, 1, Qt::AlignTop);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(theme.gap);
    whole->addWidget(m_what);
    whole->addLayout(how);
    whole->addLayout(where);
    connect(m_onto, &QLineEdit::editingFinished, this, &OrderLine::readOnto);
    connect(m_onto, &QLineEdit::returnPressed, this, &OrderLine::order);
    connect(m_date, &InexactDateEdit::accepted, this, &OrderLine::order);
    connect(m_order, &QPushButton::clicked, this, &OrderLine::order);
    setWish(std::nullopt, {});
}

void OrderLine::setWish(std::optional<GraftWish> wish, const QString& code) {
    const bool another = !wish || !m_wish || wish->id != m_wish->id;
    m_wish = std::move(wish);
    m_code = code;
    for (QWidget* part :
         std::initializer_list<QWidget*>{m_method, m_number, m_onto, m_date, m_order}) {
        part->setEnabled(m_wish.has_value());
    }
    m_what->setText(
        m_wish ? tr("Order grafts of %1").arg(code)
        : code.isEmpty()
            ? tr("Choose a wish above to order its grafts.")
            : tr("%1 has no graft wish: G makes one, or choose another wish above.").arg(code));
    if (m_wish && another) { // what was typed for the same wish stays
        m_number->setValue(
            static_cast<int>(std::clamp<std::int64_t>(m_wish->number, 1, kMostGrafts)));
        m_onto->clear();
        readOnto();
        const Date today = m_book.today();
        m_date->setToday(today);
        m_date->setDate({today.iso(), today, today});
    }
}

QString OrderLine::what() const {
    return m_what->text();
}

void OrderLine::readOnto() {
    m_ontoPlant.reset();
    const QString typed = m_onto->text().trimmed();
    if (typed.isEmpty()) {
        m_ontoMeaning->setText(tr("not known yet"));
        return;
    }
    const auto view = m_book.view();
    const auto tree = treeNamed(*view, typed.toStdString());
    if (tree && tree->plant) {
        m_ontoPlant = view->plants()[*tree->plant].id;
        m_ontoMeaning->setText(tr("onto the tree %1, %2")
                                   .arg(QString::fromStdString(view->plantCode(*tree->plant)),
                                        QString::fromStdString(view->placeText(*tree->plant))));
    } else if (!tree && tree.problem().code == ProblemCode::conflict) {
        m_ontoMeaning->setText(QString::fromStdString(tree.problem().sentence()));
    } else {
        m_ontoMeaning->setText(tr("no tree of the book: kept in your words"));
    }
}

void OrderLine::order() {
    if (!m_wish) {
        return;
    }
    if (!m_date->isEmpty() && !m_date->date()) {
        m_date->line()->setFocus(Qt::OtherFocusReason); // it says itself what is wrong
        return;
    }
    readOnto();
    GraftPlan plan;
    plan.method = static_cast<GraftMethod>(m_method->currentData().toInt());
    plan.number = m_number->value();
    plan.ontoPlant = m_ontoPlant;
    if (!m_ontoPlant) {
        plan.ontoWords = m_onto->text().trimmed().toStdString();
    }
    if (const auto date = m_date->date()) {
        if (date->isOneDay()) {
            plan.date = date->from;
        } else {
            plan.season = date->typed;
        }
    }
    if (m_book.apply(graftsOrdered(*m_wish, plan, m_code.toStdString(), m_book.context()))) {
        m_onto->clear();
        readOnto();
        Q_EMIT ordered();
    }
}

} // namespace pipwright::ui
