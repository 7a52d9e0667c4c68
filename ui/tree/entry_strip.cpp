#include "ui/tree/entry_strip.h"

#include "core/evaluation/sitting.h"
#include "ui/book/open_book.h"
#include "ui/tree/bite_form.h"
#include "ui/tree/condition_form.h"
#include "ui/tree/identity_forms.h"
#include "ui/tree/observation_form.h"
#include "ui/tree/short_forms.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/inexact_date_edit.h"
#include "ui/widgets/notice_bar.h"
#include "ui/widgets/theme.h"

#include <QAbstractButton>
#include <QApplication>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace pipwright::ui {

/// As high as the form in it, and when there is no room for that, it scrolls: nothing is cut off.
class FormScroll : public QScrollArea {
  public:
    explicit FormScroll(QWidget* parent) : QScrollArea(parent) {
        setFrameShape(QFrame::NoFrame);
        setWidgetResizable(true);
        setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        setFocusPolicy(Qt::NoFocus);
        viewport()->setAutoFillBackground(false);
        QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
        policy.setHeightForWidth(true);
        setSizePolicy(policy);
    }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override {
        return widget() == nullptr             ? 0
               : widget()->hasHeightForWidth() ? widget()->heightForWidth(width)
                                               : widget()->sizeHint().height();
    }
    [[nodiscard]] QSize sizeHint() const override {
        return widget() == nullptr ? QSize() : widget()->sizeHint();
    }
    [[nodiscard]] QSize minimumSizeHint() const override { return {0, 0}; }

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (watched == widget() && event->type() == QEvent::LayoutRequest) {
            updateGeometry();
        }
        return QScrollArea::eventFilter(watched, event);
    }
};

EntryStrip::EntryStrip(OpenBook& book, QWidget* parent)
    : QWidget(parent), m_book(book), m_title(new FlowText({}, FlowText::Weight::strong, this)),
      m_place(new QVBoxLayout), m_scroll(new FormScroll(this)),
      m_day(new InexactDateEdit(book.today(), this)), m_dayRow(new QWidget(this)),
      m_notice(new NoticeBar(this)), m_save(new QPushButton(tr("Save (Enter)"), this)),
      m_leave(new QPushButton(tr("Back (Esc)"), this)) {
    m_choosePhoto = [this] {
        return QFileDialog::getOpenFileName(window(), tr("Photo of the tree"), {},
                                            tr("Pictures (*.jpg *.jpeg *.png *.svg)"));
    };
    layOut();
    setAccessibleName(tr("New entry"));
    // Chips and cautions wrap: the height follows from the width.
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(m_save, &QPushButton::clicked, this, &EntryStrip::save);
    connect(m_leave, &QPushButton::clicked, this, &EntryStrip::leave);
    // What was wrong is no longer said once it is being put right.
    connect(m_day->line(), &QLineEdit::textChanged, m_notice, &NoticeBar::close);
    connect(m_day, &InexactDateEdit::dateChanged, this, &EntryStrip::passDay);
    // Whoever goes along with the keys sees where he is.
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
        if (now != nullptr && m_scroll->isAncestorOf(now)) {
            m_scroll->ensureWidgetVisible(now, 0, 8);
        }
    });
    hide();
}

void EntryStrip::layOut() {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 8, 12, 10);
    layout->setSpacing(6);
    layout->addWidget(m_title);
    layout->addWidget(m_notice);
    auto* forms = new QWidget;
    forms->setLayout(m_place);
    m_place->setContentsMargins(0, 0, 0, 0);
    m_scroll->setWidget(forms);
    forms->setAutoFillBackground(false); // the strip's own ground shows through
    layout->addWidget(m_scroll);
    auto* dayLayout = new QHBoxLayout(m_dayRow);
    dayLayout->setContentsMargins(0, 0, 0, 0);
    auto* dayLabel = new FlowText(tr("Day"), FlowText::Weight::second, m_dayRow);
    dayLayout->addWidget(dayLabel, 0, Qt::AlignTop);
    dayLayout->addWidget(m_day, 1);
    layout->addWidget(m_dayRow);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_save);
    buttons->addWidget(m_leave);
    buttons->addStretch(1);
    layout->addLayout(buttons);
}

QString EntryStrip::titleText() const {
    return m_title->text();
}

EntryForm* EntryStrip::make(EntryKind kind) {
    switch (kind) {
    case EntryKind::note:
        return new NoteForm(m_book, this);
    case EntryKind::bite:
        return new BiteForm(m_book, this);
    case EntryKind::walkMark:
        return new WalkForm(m_book, this);
    case EntryKind::observation:
        return new ObservationForm(m_book, this);
    case EntryKind::decision:
        return new DecisionForm(m_book, this);
    case EntryKind::graftWish:
        return new WishForm(m_book, this);
    case EntryKind::photo:
        return new PhotoForm(m_book, this);
    case EntryKind::state:
        return new StateForm(m_book, this);
    case EntryKind::another:
        return new AnotherForm(m_book, this);
    case EntryKind::swapTags:
        return new SwapForm(m_book, this);
    case EntryKind::plantBeside:
        return new BesideForm(m_book, this);
    case EntryKind::moveRecords:
        return new MoveForm(m_book, this);
    case EntryKind::condition:
        return new ConditionForm(m_book, this);
    case EntryKind::voiding:
        break;
    }
    return new VoidForm(m_book, this);
}

EntryForm* EntryStrip::form(EntryKind kind) {
    EntryForm*& one = m_forms[kind];
    if (one == nullptr) {
        one = make(kind);
        one->hide();
        m_place->addWidget(one);
    }
    return one;
}

EntryTarget EntryStrip::target(bool forOne) const {
    EntryTarget target;
    if (!forOne && m_book.selection().size() > 1) {
        target.plants = m_book.selection();
        for (const Index plant : target.plants) {
            target.trees.push_back(m_book.treeAt(plant));
        }
        target.called = tr("%n tree(s)", nullptr, static_cast<int>(target.trees.size()));
        return target;
    }
    if (const auto plant = m_book.currentPlant()) {
        target.plants = {*plant};
        target.trees = {m_book.treeAt(*plant)};
    } else if (const auto genotype = m_book.currentGenotype()) {
        target.trees = {m_book.genotypeAt(*genotype)};
    } else {
        return target;
    }
    target.called = QString::fromStdString(target.trees.front().code);
    return target;
}

bool EntryStrip::focusNextPrevChild(bool next) {
    QWidget* from = QApplication::focusWidget();
    if (m_form == nullptr || from == nullptr || !isAncestorOf(from)) {
        return QWidget::focusNextPrevChild(next);
    }
    QWidget* to = from;
    do {
        to = next ? to->nextInFocusChain() : to->previousInFocusChain();
        const bool takes = isAncestorOf(to) && to->isVisible() && to->isEnabled() &&
                           (to->focusPolicy() & Qt::TabFocus) != 0 && to->focusProxy() == nullptr;
        if (takes) {
            to->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
            return true;
        }
    } while (to != from);
    return true;
}

void EntryStrip::begin(EntryKind kind) {
    EntryForm* wanted = form(kind);
    if (target(wanted->isForOne()).trees.empty()) {
        m_notice->say(NoticeBar::Kind::attention, tr("No tree is selected."),
                      tr("Choose one in the rows, or find it with Ctrl+K."));
        m_title->clear();
        m_dayRow->hide();
        show();
        return;
    }
    if (kind == EntryKind::photo) {
        const QString path = m_choosePhoto();
        if (path.isEmpty()) {
            return;
        }
        if (const Outcome outcome = static_cast<PhotoForm*>(wanted)->choose(path); !outcome) {
            open(wanted);
            m_notice->tell(outcome.problem());
            return;
        }
    }
    open(wanted);
}

void EntryStrip::beginVoiding(const Voiding& voiding) {
    auto* wanted = static_cast<VoidForm*>(form(EntryKind::voiding));
    wanted->setVoiding(voiding);
    open(wanted);
}

void EntryStrip::beginCondition(const KeptLot& kept) {
    auto* wanted = static_cast<ConditionForm*>(form(EntryKind::condition));
    wanted->setLot(kept);
    open(wanted);
    // It is the lot's, whichever tree is selected; bought fruit has none.
    m_target = {};
    m_target.trees = {treeOfLot(kept.lot)};
    m_target.called = QString::fromStdString(m_target.trees.front().code);
    m_title->setText(wanted->title(m_target.called));
}

EditedTree EntryStrip::treeOfLot(const Lot& lot) const {
    const auto view = m_book.view();
    if (const auto plant = lot.plant ? view->plant(*lot.plant) : std::nullopt) {
        return m_book.treeAt(*plant);
    }
    const auto genotype = lot.claimedGenotype ? view->genotype(*lot.claimedGenotype) : std::nullopt;
    EditedTree tree = genotype ? m_book.genotypeAt(*genotype) : EditedTree{};
    if (tree.code.empty()) {
        tree.code = fruitName(*view, lot);
    }
    return tree;
}

void EntryStrip::open(EntryForm* form) {
    if (QWidget* focus = QApplication::focusWidget(); focus != nullptr && !isAncestorOf(focus)) {
        m_before = focus;
    }
    for (const auto& [kind, one] : m_forms) {
        one->setVisible(one == form);
    }
    m_form = form;
    m_target = target(form->isForOne());
    m_title->setText(
        m_target.trees.size() > 1
            ? form->title(tr("%n tree(s)", nullptr, static_cast<int>(m_target.trees.size())))
            : form->title(m_target.called));
    m_notice->close();
    m_day->setToday(m_book.today());
    m_day->setDate({{}, m_book.today(), m_book.today()});
    m_dayRow->setVisible(form->hasDay());
    form->begin(m_target);
    passDay();
    show();
    watch(this);
    form->firstField()->setFocus(Qt::ShortcutFocusReason);
}

void EntryStrip::passDay() {
    if (m_form != nullptr && m_form->hasDay()) {
        const auto day = m_day->date();
        m_form->heedDay(day ? std::optional(day->from) : std::nullopt);
    }
}

void EntryStrip::watch(QWidget* part) {
    for (QWidget* child : part->findChildren<QWidget*>()) {
        child->removeEventFilter(this);
        child->installEventFilter(this);
    }
}

bool EntryStrip::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        // A letter typed here is meant for the strip, not for the window's one-letter keys.
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool plain =
            (key->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
        const bool typed = !key->text().isEmpty() && key->text().at(0).isPrint();
        if (plain && (typed || key->key() == Qt::Key_Escape || key->key() == Qt::Key_Return ||
                      key->key() == Qt::Key_Enter || key->key() == Qt::Key_Delete)) {
            event->accept();
            return true;
        }
    }
    if (event->type() != QEvent::KeyPress) {
        return QWidget::eventFilter(watched, event);
    }
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (!static_cast<QKeyEvent*>(event)->text().isEmpty() && key != Qt::Key_Tab &&
        key != Qt::Key_Backtab) {
        m_notice->close(); // what was wrong is being put right
    }
    if (key == Qt::Key_Escape) {
        leave();
        return true;
    }
    if (key == Qt::Key_Return || key == Qt::Key_Enter) {
        if (auto* button = qobject_cast<QPushButton*>(watched)) {
            button->click();
            return true;
        }
        const auto* field = qobject_cast<QWidget*>(watched);
        if (m_form != nullptr && m_form->goOn(field)) {
            watch(this); // fields may have been made anew
            return true;
        }
        save();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

Result<EditContext> EntryStrip::contextOf(const EntryTarget& target) {
    EditContext context =
        m_book.context(target.plants.empty() ? std::nullopt : std::optional(target.plants.front()));
    if (!m_form->hasDay()) {
        return context;
    }
    const auto day = m_day->date();
    if (!day) {
        return missing(tr("There is no day."),
                       tr("Type it as 22 Aug, or press Up in the field for today."));
    }
    if (day->from > m_book.today()) {
        return missing(tr("The day lies ahead of today."),
                       tr("Put the day back, or set what is taken as today."));
    }
    context.day = day->from;
    if (!day->isOneDay()) {
        if (m_form->needsOneDay()) {
            return missing(tr("This needs one day."), tr("Type the day itself, as 22 Aug."));
        }
        context.lastDay = day->to;
        context.dayTyped = day->typed;
    }
    return context;
}

void EntryStrip::save() {
    if (m_form == nullptr || m_target.trees.empty()) {
        return;
    }
    if (m_form->hasDay() && !m_day->isEmpty() && !m_day->date()) {
        // The field says itself what is wrong; once is enough.
        m_day->line()->setFocus(Qt::OtherFocusReason);
        m_day->line()->selectAll();
        return;
    }
    const auto context = contextOf(m_target);
    if (!context) {
        m_notice->tell(context.problem());
        m_day->setFocus(Qt::OtherFocusReason);
        return;
    }
    const auto edits = m_form->edits(m_target, *context);
    if (!edits) {
        m_notice->tell(edits.problem());
        return;
    }
    if (!m_book.apply(*edits)) {
        return; // the window says why; what was typed stays
    }
    const QString words = m_form->confirmation();
    m_form->saved();
    leave();
    Q_EMIT saved(words);
}

void EntryStrip::leave() {
    m_notice->close();
    hide();
    if (m_before) {
        m_before->setFocus(Qt::OtherFocusReason);
    }
    Q_EMIT left();
}

void EntryStrip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Theme& theme = themeOf(this);
    painter.fillRect(rect(), theme.raised);
    painter.fillRect(0, 0, 3, height(), theme.leaf);
    painter.fillRect(0, height() - 1, width(), 1, theme.line);
}

} // namespace pipwright::ui
