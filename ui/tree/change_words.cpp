#include "ui/tree/change_words.h"

#include "core/orchard/words.h"
#include "ui/book/book_words.h"
#include "ui/book/orchard_words.h"
#include "ui/widgets/number_text.h"

#include <QCoreApplication>
#include <QLocale>

namespace pipwright::ui {

namespace {

struct ChangeWords {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::ChangeWords)
};

template <typename Thing>
QString nameOr(const Thing* thing) {
    return thing == nullptr ? ChangeWords::tr("one that is gone")
                            : QString::fromStdString(thing->name);
}

QString referenceWords(const OrchardView& view, Kind kind, const Uuid& id) {
    switch (kind) {
    case Kind::genotype:
        if (const auto genotype = view.genotype(GenotypeId(id))) {
            return QString::fromStdString(view.genotypes()[*genotype].called());
        }
        break;
    case Kind::plant:
        if (const auto plant = view.plant(PlantId(id))) {
            const QString place = QString::fromStdString(view.placeText(*plant, false));
            const QString code = QString::fromStdString(view.plantCode(*plant));
            return place.isEmpty() ? code : ChangeWords::tr("%1 at %2").arg(code, place);
        }
        break;
    case Kind::person:
        return nameOr(view.person(PersonId(id)));
    case Kind::trait:
        if (const Trait* trait = view.trait(TraitId(id))) {
            return traitName(*trait);
        }
        break;
    case Kind::traitState:
        if (const TraitState* state = view.traitState(TraitStateId(id))) {
            return traitStateName(*state);
        }
        break;
    case Kind::species:
        if (const Species* species = view.species(SpeciesId(id))) {
            return speciesName(*species);
        }
        break;
    case Kind::cross:
        if (const Cross* cross = view.cross(CrossId(id))) {
            return QString::fromStdString(cross->code);
        }
        break;
    default:
        return journalWord(nameOf(kind));
    }
    return ChangeWords::tr("one that is gone");
}

bool saysNothing(const FieldInfo& field, const Value& value) {
    if (std::holds_alternative<std::monostate>(value)) {
        return true;
    }
    const auto* text = std::get_if<std::string>(&value);
    return text != nullptr &&
           (text->empty() || (field.type == FieldType::word && *text == "unknown"));
}

} // namespace

QString fieldWords(Kind kind, std::size_t field) {
    return journalWord(fieldsOf(kind)[field].name);
}

QString valueWords(const OrchardView& view, const FieldInfo& field, const Value& value) {
    if (saysNothing(field, value)) {
        return ChangeWords::tr("nothing");
    }
    if (const auto* uuid = std::get_if<Uuid>(&value)) {
        return referenceWords(view, field.refersTo, *uuid);
    }
    if (const auto* text = std::get_if<std::string>(&value)) {
        if (field.type == FieldType::date) {
            const auto day = Date::fromIso(*text);
            return day ? dateText(*day) : QString::fromStdString(*text);
        }
        if (field.type == FieldType::word && field.name == "stage") {
            return stageWord(fromKey<Stage>(*text).value_or(Stage::unknown));
        }
        if (field.type == FieldType::word && field.name == "state") {
            if (const auto state = fromKey<PlantState>(*text)) {
                return stateWord(*state);
            }
        }
        return field.type == FieldType::word ? journalWord(*text) : QString::fromStdString(*text);
    }
    if (const auto* whole = std::get_if<std::int64_t>(&value)) {
        if (field.type == FieldType::flag) {
            return *whole != 0 ? ChangeWords::tr("yes") : ChangeWords::tr("no");
        }
        return QString::number(*whole);
    }
    return QLocale().toString(std::get<double>(value), 'g', 6);
}

QStringList changeWords(const OrchardView& view, const Change& change) {
    const auto& fields = fieldsOf(change.kind);
    const QString kind = journalWord(nameOf(change.kind));
    QStringList lines;
    if (change.what == ChangeWhat::edited) {
        for (const FieldChange& one : change.fields) {
            const FieldInfo& field = fields[one.field];
            lines << ChangeWords::tr("%1, %2: %3, then %4")
                         .arg(kind, journalWord(field.name), valueWords(view, field, one.before),
                              valueWords(view, field, one.after));
        }
        return lines;
    }
    const bool created = change.what == ChangeWhat::created;
    QStringList parts;
    for (const FieldChange& one : change.fields) {
        const FieldInfo& field = fields[one.field];
        const Value& value = created ? one.after : one.before;
        if (!saysNothing(field, value)) {
            parts << journalWord(field.name) + QLatin1Char(' ') + valueWords(view, field, value);
        }
    }
    const QString all = parts.join(QStringLiteral(", "));
    lines << (created ? ChangeWords::tr("new %1: %2").arg(kind, all)
                      : ChangeWords::tr("taken away: %1: %2").arg(kind, all));
    return lines;
}

} // namespace pipwright::ui
