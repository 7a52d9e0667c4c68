#include "ui/merit/merit_filter_bar.h"

#include "ui/book/book_words.h"
#include "ui/book/merit_words.h"
#include "ui/book/orchard_words.h"
#include "ui/merit/merit_table_model.h"
#include "ui/widgets/flow_layout.h"

#include <QComboBox>
#include <QPushButton>
#include <QSignalBlocker>

#include <algorithm>
#include <utility>
#include <vector>

namespace pipwright::ui {

namespace {

using Offer = std::pair<QString, QVariant>;

/// The first line lets all through.
void fillChoice(QComboBox* box, const QString& all, const std::vector<Offer>& offers) {
    const QSignalBlocker quiet(box);
    const QVariant before = box->currentData();
    box->clear();
    box->addItem(all, QVariant());
    for (const Offer& one : offers) {
        box->addItem(one.first, one.second);
    }
    box->setCurrentIndex(before.isValid() ? std::max(0, box->findData(before)) : 0);
    box->setVisible(offers.size() > 1 || box->currentIndex() > 0);
}

void addOffer(std::vector<Offer>& offers, const QString& words, const QVariant& value) {
    const bool known = std::any_of(offers.begin(), offers.end(),
                                   [&value](const Offer& one) { return one.second == value; });
    if (!known) {
        offers.emplace_back(words, value);
    }
}

QString keyOfId(const Uuid& uuid) {
    return QString::fromStdString(uuid.text());
}

} // namespace

MeritFilterBar::MeritFilterBar(QWidget* parent)
    : QWidget(parent), m_trait(new QComboBox), m_slot(new QComboBox), m_species(new QComboBox),
      m_stage(new QComboBox), m_suggestion(new QComboBox), m_family(new QComboBox),
      m_neverFair(new QPushButton), m_clear(new QPushButton(tr("Show all"))) {
    auto* line = new FlowLayout(this, 6);
    line->setContentsMargins(0, 0, 0, 0);
    const std::array boxes = {
        std::pair{m_trait, tr("Ranked by")},       std::pair{m_slot, tr("Slot")},
        std::pair{m_species, tr("Species")},       std::pair{m_stage, tr("Stage")},
        std::pair{m_suggestion, tr("Suggestion")}, std::pair{m_family, tr("Family")}};
    for (const auto& [box, name] : boxes) {
        box->setAccessibleName(name);
        box->setToolTip(name);
        box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        line->addWidget(box);
        if (box != m_trait) {
            connect(box, &QComboBox::currentIndexChanged, this, &MeritFilterBar::tell);
        }
    }
    m_neverFair->setCheckable(true);
    line->addWidget(m_neverFair);
    line->addWidget(m_clear);
    m_clear->hide();
    m_trait->addItem(tr("liking"), QVariant());
    connect(m_trait, &QComboBox::currentIndexChanged, this, &MeritFilterBar::traitChanged);
    connect(m_neverFair, &QPushButton::toggled, this, &MeritFilterBar::tell);
    connect(m_clear, &QPushButton::clicked, this, &MeritFilterBar::clear);
}

void MeritFilterBar::tell() {
    m_clear->setVisible(filter() != MeritFilter{});
    Q_EMIT filterChanged();
}

void MeritFilterBar::clear() {
    for (QComboBox* box : {m_slot, m_species, m_stage, m_suggestion, m_family}) {
        const QSignalBlocker quiet(box);
        box->setCurrentIndex(0);
    }
    const QSignalBlocker quiet(m_neverFair);
    m_neverFair->setChecked(false);
    tell();
}

void MeritFilterBar::offerTraits(const MeritTableModel& ranking) {
    const QSignalBlocker quiet(m_trait);
    const QVariant before = m_trait->currentData();
    m_trait->clear();
    m_trait->addItem(tr("liking"), QVariant());
    for (const Trait& trait : ranking.report()->view->traits()) {
        if (trait.scale == ScaleKind::numeric || trait.scale == ScaleKind::ordinal) {
            m_trait->addItem(traitName(trait), keyOfId(trait.id.uuid));
        }
    }
    m_trait->setCurrentIndex(before.isValid() ? std::max(0, m_trait->findData(before)) : 0);
}

void MeritFilterBar::offer(const MeritTableModel& ranking) {
    const MeritFilter before = filter();
    std::vector<Offer> bySlot;
    std::vector<Offer> species;
    std::vector<Offer> stages;
    std::vector<Offer> suggestions;
    std::vector<Offer> families;
    std::vector<std::pair<int, QString>> slotsByDay;
    const OrchardView& view = *ranking.report()->view;
    for (int at = 0; at < ranking.rowCount(); ++at) {
        const MeritRow& row = ranking.row(at);
        const GenotypeEntry& entry = view.genotypes()[row.genotype];
        const double day =
            ranking.index(at, MeritTableModel::slot).data(MeritTableModel::kSortRole).toDouble();
        slotsByDay.emplace_back(static_cast<int>(day), ranking.slotText(*row.verdict));
        if (entry.species) {
            const Species* kind = view.species(*entry.species);
            addOffer(species, kind == nullptr ? tr("unknown") : speciesName(*kind),
                     keyOfId(entry.species->uuid));
        }
        addOffer(stages, stageWord(row.verdict->stage), static_cast<int>(row.verdict->stage));
        addOffer(suggestions, suggestionWord(row.verdict->suggestion),
                 static_cast<int>(row.verdict->suggestion));
        const QString family = ranking.familyText(row.genotype);
        addOffer(families, family, family);
    }
    std::sort(slotsByDay.begin(), slotsByDay.end());
    for (const auto& [day, words] : slotsByDay) {
        addOffer(bySlot, words, words);
    }
    const auto byValue = [](const Offer& a, const Offer& b) {
        return a.second.toInt() < b.second.toInt();
    };
    std::sort(stages.begin(), stages.end(), byValue);
    std::sort(suggestions.begin(), suggestions.end(), byValue);
    std::sort(families.begin(), families.end(), [](const Offer& a, const Offer& b) {
        return a.first.localeAwareCompare(b.first) < 0;
    });
    fillChoice(m_slot, tr("all slots"), bySlot);
    fillChoice(m_species, tr("all species"), species);
    fillChoice(m_stage, tr("all stages"), stages);
    fillChoice(m_suggestion, tr("all suggestions"), suggestions);
    fillChoice(m_family, tr("all families"), families);
    m_neverFair->setText(tr("Never had a fair test: %n", nullptr, ranking.neverFairCount()));
    m_neverFair->setEnabled(ranking.neverFairCount() > 0 || m_neverFair->isChecked());
    offerTraits(ranking);
    if (filter() != before) {
        tell();
    }
}

MeritFilter MeritFilterBar::filter() const {
    MeritFilter filter;
    filter.slot = m_slot->currentData().toString();
    filter.family = m_family->currentData().toString();
    if (const auto id = Uuid::fromText(m_species->currentData().toString().toStdString())) {
        filter.species = SpeciesId(*id);
    }
    if (m_stage->currentData().isValid()) {
        filter.stage = static_cast<Stage>(m_stage->currentData().toInt());
    }
    if (m_suggestion->currentData().isValid()) {
        filter.suggestion = static_cast<Suggestion>(m_suggestion->currentData().toInt());
    }
    filter.neverFairOnly = m_neverFair->isChecked();
    return filter;
}

std::optional<TraitId> MeritFilterBar::trait() const {
    const auto id = Uuid::fromText(m_trait->currentData().toString().toStdString());
    return id ? std::optional(TraitId(*id)) : std::nullopt;
}

QString MeritFilterBar::words() const {
    QStringList words;
    for (const QComboBox* box : {m_slot, m_species, m_stage, m_suggestion, m_family}) {
        if (box->currentIndex() > 0) {
            words << box->currentText();
        }
    }
    if (m_neverFair->isChecked()) {
        words << tr("never had a fair test");
    }
    return words.join(QStringLiteral("; "));
}

} // namespace pipwright::ui
