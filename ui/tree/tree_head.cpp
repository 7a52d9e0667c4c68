#include "ui/tree/tree_head.h"

#include "ui/book/orchard_words.h"
#include "ui/tree/tree_facts.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/theme.h"

#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace pipwright::ui {

namespace {

constexpr std::array kCompass = {"N", "NE", "E", "SE", "S", "SW", "W", "NW"};

/// A word that leads to another tree, reached with Tab like any button.
QPushButton* makeLink(const QString& text, const QString& spoken, QWidget* parent) {
    auto* link = new QPushButton(text, parent);
    link->setFlat(true);
    link->setCursor(Qt::PointingHandCursor);
    link->setAccessibleName(spoken);
    link->setToolTip(spoken);
    link->setStyleSheet(QStringLiteral(
        "QPushButton { border: 2px solid transparent; border-radius: 4px; padding: 0 2px;"
        " text-align: left; color: palette(link); }"
        "QPushButton:hover { text-decoration: underline; }"
        "QPushButton:focus { border-color: palette(highlight); }"));
    return link;
}

QString placeLine(const TreeFacts& facts, UnitChoice units) {
    const OrchardView& view = *facts.view;
    const auto place = view.placeOf(*facts.plant);
    if (!place) {
        const std::string onFrame = view.placeText(*facts.plant);
        return onFrame.empty() ? TreeHead::tr("stands nowhere known")
                               : QString::fromStdString(onFrame);
    }
    const Position& position = view.positions()[place->position];
    QString line = TreeHead::tr("%1, row %2, place %3")
                       .arg(QString::fromStdString(view.sites()[place->site].name),
                            QString::fromStdString(view.rowName(place->row)))
                       .arg(position.ordinal);
    if (position.distance) {
        line += TreeHead::tr(", %1 from the zero stake")
                    .arg(lengthText(Metres{*position.distance}, units));
    }
    return line;
}

QString limbWords(const Plant& plant, UnitChoice units) {
    QStringList words;
    if (plant.limbBearing) {
        const auto sector =
            static_cast<std::size_t>((*plant.limbBearing + 22.5) / 45.0) % kCompass.size();
        words << TreeHead::tr("bearing %1° (%2)")
                     .arg(numberText(*plant.limbBearing, 0), QLatin1String(kCompass[sector]));
    }
    if (plant.limbHeight) {
        words << TreeHead::tr("%1 up").arg(lengthText(Metres{*plant.limbHeight / 100}, units));
    }
    if (plant.limbOrder) {
        words << TreeHead::tr("number %1 from the trunk").arg(*plant.limbOrder);
    }
    if (!plant.limbMark.empty()) {
        words << TreeHead::tr("mark %1").arg(QString::fromStdString(plant.limbMark));
    }
    return words.join(QStringLiteral(", "));
}

QString rootsLine(const TreeFacts& facts, UnitChoice units) {
    const Plant& plant = *facts.life.plant;
    const OrchardView& view = *facts.view;
    QString line = plantKindWord(plant.kind);
    const auto stock = plant.stock ? view.genotype(*plant.stock) : std::nullopt;
    const QString onto = stock ? QString::fromStdString(view.genotypes()[*stock].called())
                               : QString::fromStdString(plant.stockWords);
    if (plant.kind == PlantKind::grafted && !onto.isEmpty()) {
        line = TreeHead::tr("grafted on %1").arg(onto);
    }
    if (plant.kind == PlantKind::limb) {
        const auto frame = plant.frame ? view.plant(*plant.frame) : std::nullopt;
        if (frame) {
            line = TreeHead::tr("limb of %1").arg(QString::fromStdString(view.plantCode(*frame)));
        }
        if (const QString limb = limbWords(plant, units); !limb.isEmpty()) {
            line += QStringLiteral(", ") + limb;
        }
    }
    if (plant.planted) {
        const QString day = plant.plantedTyped.empty() ? dateText(*plant.planted)
                                                       : QString::fromStdString(plant.plantedTyped);
        line += plant.kind == PlantKind::ownRoots ? TreeHead::tr(", planted %1").arg(day)
                                                  : TreeHead::tr(", worked %1").arg(day);
    }
    return line;
}

QString identityLine(const TreeFacts& facts) {
    const Identity* identity = facts.identity();
    if (identity == nullptr) {
        return TreeHead::tr("identity not known");
    }
    QString line =
        identityWord(identity->confidence) + QStringLiteral(", ") + basisWord(identity->basis);
    if (identity->confirmed) {
        line += TreeHead::tr(", last confirmed %1").arg(dateText(*identity->confirmed));
    } else if (identity->asserted) {
        line += TreeHead::tr(", since %1, never confirmed at the tree")
                    .arg(dateText(*identity->asserted));
    }
    return line;
}

QString stageLine(const TreeFacts& facts) {
    QString line;
    if (facts.genotype) {
        const GenotypeEntry& entry = facts.view->genotypes()[*facts.genotype];
        line = stageWord(entry.stage);
        if (entry.stageSince) {
            line += TreeHead::tr(" since %1").arg(dateText(*entry.stageSince));
        }
        if (entry.benchmark) {
            line += TreeHead::tr(" · benchmark");
        }
    }
    if (facts.life.plant) {
        const Plant& plant = *facts.life.plant;
        line += (line.isEmpty() ? QString() : QStringLiteral(" · ")) + stateWord(plant.state);
        if (plant.state != PlantState::growing && plant.stateSince) {
            line += TreeHead::tr(" since %1").arg(dateText(*plant.stateSince));
        }
        if (!plant.stateReason.empty()) {
            line += TreeHead::tr(" (%1)").arg(QString::fromStdString(plant.stateReason));
        }
    }
    return line;
}

} // namespace

TreeHead::TreeHead(QWidget* parent)
    : QWidget(parent), m_code(new ElidedText(this)),
      m_name(new FlowText({}, FlowText::Weight::second, this)),
      m_identityButton(new QToolButton(this)), m_lines(new QVBoxLayout) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 10, 10, 8);
    layout->setSpacing(2);
    auto* top = new QHBoxLayout;
    top->addWidget(m_code, 1);
    top->addWidget(m_identityButton, 0, Qt::AlignTop);
    m_code->setFont(themeOf(this).headingFont());
    layout->addLayout(top);
    layout->addWidget(m_name);
    layout->addLayout(m_lines);
    m_lines->setSpacing(2);
    m_identityButton->setText(tr("Who is it?") + QStringLiteral("   "));
    m_identityButton->setAccessibleName(tr("Who this tree is: confirm or put right"));
    m_identityButton->setToolTip(tr("Confirm who this tree is, or put it right"));
    m_identityButton->setPopupMode(QToolButton::InstantPopup);
    m_identityButton->setFocusPolicy(Qt::StrongFocus);
    auto* menu = new QMenu(m_identityButton);
    fillMenu(menu);
    m_identityButton->setMenu(menu);
}

void TreeHead::fillMenu(QMenu* menu) {
    const auto add = [this, menu](const QString& text, IdentityAction action) {
        menu->addAction(text, this, [this, action] { Q_EMIT identityActionWanted(action); });
    };
    add(tr("Confirmed at the tree today"), IdentityAction::confirm);
    add(tr("It is another genotype (wrong tag) …"), IdentityAction::another);
    menu->addSeparator();
    add(tr("Tag unreadable: this by the map only"), IdentityAction::byMap);
    add(tr("Tag unreadable: this by its fruit only"), IdentityAction::byFruit);
    add(tr("Nobody knows what it is"), IdentityAction::unknown);
    menu->addSeparator();
    add(tr("Its tag hangs on another tree: swap …"), IdentityAction::swapTags);
    add(tr("Another plant stands at this place too …"), IdentityAction::plantBeside);
    add(tr("Records were put down for the wrong tree …"), IdentityAction::moveRecords);
}

QStringList TreeHead::lines() const {
    QStringList all{m_code->text()};
    if (!m_name->text().isEmpty()) {
        all << m_name->text();
    }
    for (int i = 0; i < m_lines->count(); ++i) {
        QWidget* widget = m_lines->itemAt(i)->widget();
        if (const auto* text = qobject_cast<FlowText*>(widget)) {
            all << text->text();
        } else if (widget != nullptr) {
            QStringList words;
            for (const auto* link : widget->findChildren<QPushButton*>()) {
                words << link->text();
            }
            all << words.join(QStringLiteral(" x "));
        }
    }
    return all;
}

void TreeHead::clearLines() {
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
}

void TreeHead::addLine(const QString& text, bool small) {
    if (!text.isEmpty()) {
        m_lines->addWidget(
            new FlowText(text, small ? FlowText::Weight::small : FlowText::Weight::body, this));
    }
}

void TreeHead::addParents(const TreeFacts& facts) {
    if (!facts.genotype) {
        return;
    }
    const ParentsOf parents = facts.view->parentsOf(*facts.genotype);
    if (!parents.seed && !parents.pollen && parents.pollination != Pollination::open) {
        return;
    }
    auto* line = new QWidget(this);
    auto* flow = new FlowLayout(line, 4);
    const auto put = [&](const std::optional<Index>& parent, const QString& role,
                         const QString& unknown) {
        if (!parent) {
            auto* text = new FlowText(unknown, FlowText::Weight::second, line);
            text->setWordWrap(false);
            flow->addWidget(text);
            return;
        }
        const QString name = QString::fromStdString(facts.view->genotypes()[*parent].called());
        auto* link = makeLink(name, role.arg(name), line);
        connect(link, &QPushButton::clicked, this,
                [this, genotype = *parent] { Q_EMIT genotypeWanted(genotype); });
        flow->addWidget(link);
    };
    put(parents.seed, tr("Seed parent %1"), tr("not known"));
    auto* times = new FlowText(QStringLiteral("x"), FlowText::Weight::second, line);
    times->setWordWrap(false);
    flow->addWidget(times);
    put(parents.pollen, tr("Pollen parent %1"),
        parents.pollination == Pollination::open ? tr("open pollinated") : tr("not known"));
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    line->setSizePolicy(policy);
    m_lines->addWidget(line);
}

void TreeHead::addNeighbours(const TreeFacts& facts) {
    const auto place = facts.plant ? facts.view->placeOf(*facts.plant) : std::nullopt;
    if (!place) {
        return;
    }
    std::vector<Index> others;
    for (const Index other : facts.view->plantsAt(place->position)) {
        if (other != *facts.plant && facts.view->plants()[other].state == PlantState::growing) {
            others.push_back(other);
        }
    }
    if (others.empty()) {
        return;
    }
    auto* line = new QWidget(this);
    auto* flow = new FlowLayout(line, 4);
    auto* also = new FlowText(tr("At the same place also grows:"), FlowText::Weight::small, line);
    also->setWordWrap(false);
    flow->addWidget(also);
    for (const Index plant : others) {
        const PlantEntry& entry = facts.view->plants()[plant];
        const QString code = entry.genotype || !entry.tag.empty()
                                 ? QString::fromStdString(facts.view->plantCode(plant))
                                 : tr("a plant nobody has identified");
        auto* link = makeLink(code, tr("Go to %1, which grows at the same place").arg(code), line);
        connect(link, &QPushButton::clicked, this, [this, plant] { Q_EMIT plantWanted(plant); });
        flow->addWidget(link);
    }
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    line->setSizePolicy(policy);
    m_lines->addWidget(line);
}

void TreeHead::addPlants(const TreeFacts& facts) {
    if (!facts.genotype) {
        return;
    }
    std::vector<Index> others;
    for (const Index plant : facts.view->plantsOf(*facts.genotype)) {
        if (!facts.plant || plant != *facts.plant) {
            others.push_back(plant);
        }
    }
    if (others.empty()) {
        return;
    }
    addLine(tr("%n other plant(s) of it:", nullptr, static_cast<int>(others.size())), true);
    auto* line = new QWidget(this);
    auto* flow = new FlowLayout(line, 4);
    for (const Index plant : others) {
        const PlantEntry& entry = facts.view->plants()[plant];
        QString where = QString::fromStdString(facts.view->placeText(plant, false));
        const auto whole =
            std::find_if(facts.life.plantsOfGenotype.begin(), facts.life.plantsOfGenotype.end(),
                         [&entry](const Plant& one) { return one.id == entry.id; });
        if (whole != facts.life.plantsOfGenotype.end() && whole->kind == PlantKind::limb) {
            where += whole->limbBearing ? tr(" limb at %1°").arg(numberText(*whole->limbBearing, 0))
                                        : tr(" limb");
        }
        if (where.isEmpty()) {
            where = plantKindWord(entry.kind);
        }
        if (entry.state != PlantState::growing) {
            where += QStringLiteral(", ") + stateWord(entry.state);
        }
        auto* link = makeLink(where, tr("Go to the plant at %1").arg(where), line);
        connect(link, &QPushButton::clicked, this, [this, plant] { Q_EMIT plantWanted(plant); });
        flow->addWidget(link);
    }
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    line->setSizePolicy(policy);
    m_lines->addWidget(line);
}

void TreeHead::show(const TreeFacts& facts, UnitChoice units) {
    clearLines();
    m_code->setText(facts.code());
    QString name;
    if (facts.genotype) {
        name = QString::fromStdString(facts.view->genotypes()[*facts.genotype].name);
    }
    m_name->setText(name == facts.code() ? QString() : name);
    m_name->setVisible(!m_name->text().isEmpty());
    m_identityButton->setVisible(facts.plant.has_value());
    addParents(facts);
    addLine(stageLine(facts));
    if (facts.plant) {
        addLine(placeLine(facts, units));
        addNeighbours(facts);
    }
    if (facts.life.plant) {
        addLine(rootsLine(facts, units));
        addLine(identityLine(facts));
    }
    addPlants(facts);
    QStringList aliases;
    for (const Alias& alias : facts.life.aliases) {
        aliases << QString::fromStdString(alias.text);
    }
    if (!aliases.isEmpty()) {
        addLine(tr("also called %1").arg(aliases.join(QStringLiteral(", "))));
    }
    if (facts.life.genotype) {
        addLine(QString::fromStdString(facts.life.genotype->notes));
    }
    if (facts.life.plant) {
        addLine(QString::fromStdString(facts.life.plant->notes));
        addLine(
            tr("label code %1").arg(QString::fromStdString(facts.life.plant->id.uuid.labelCode())),
            true);
    }
}

} // namespace pipwright::ui
