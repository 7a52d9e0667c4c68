#include "ui/import/import_words.h"

#include <QCoreApplication>

#include <array>

namespace pipwright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::ImportWords)
};

struct FieldWord {
    TableField field;
    const char* word;
};

constexpr std::array kFieldWords = {
    FieldWord{TableField::code, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "code")},
    FieldWord{TableField::name, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "name")},
    FieldWord{TableField::tag, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "tag")},
    FieldWord{TableField::site, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "site")},
    FieldWord{TableField::row, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "row")},
    FieldWord{TableField::place, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "position")},
    FieldWord{TableField::rowAndPlace,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "row/position")},
    FieldWord{TableField::distance,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "tape distance (m)")},
    FieldWord{TableField::cross, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "cross")},
    FieldWord{TableField::seedParent,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "seed parent")},
    FieldWord{TableField::pollenParent,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "pollen parent")},
    FieldWord{TableField::year,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "year of the cross")},
    FieldWord{TableField::planted, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "planted")},
    FieldWord{TableField::stage, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "stage")},
    FieldWord{TableField::species, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "species")},
    FieldWord{TableField::notes, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "notes")},
    FieldWord{TableField::date, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "date")},
    FieldWord{TableField::taster, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "taster")},
    FieldWord{TableField::liking,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "liking (1 to 9)")},
    FieldWord{TableField::words, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "words")},
    FieldWord{TableField::verdict, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "verdict")},
    FieldWord{TableField::setting,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "at a table or in the row")},
    FieldWord{TableField::taken, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "picked on")},
    FieldWord{TableField::origin,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "picked or fallen")},
    FieldWord{TableField::bag, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "bag")},
    FieldWord{TableField::soundness,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "sound or hurt")},
    FieldWord{TableField::storage, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "storage path")},
    FieldWord{TableField::daysOnCounter,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "days on the counter")},
    FieldWord{TableField::daysInFridge,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "days in the fridge")},
    FieldWord{TableField::daysInCellar,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "days in the cellar")},
    FieldWord{TableField::ripeness,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "ripeness as eaten")},
    FieldWord{TableField::fruits,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "fruits in the lot")},
    FieldWord{TableField::canopyPlace,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "place on the tree")},
    FieldWord{TableField::cropLoad, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "crop load")},
    FieldWord{TableField::cropNumber,
              QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "number of the crop")},
    FieldWord{TableField::mark, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "walk mark")},
    FieldWord{TableField::drops, QT_TRANSLATE_NOOP("pipwright::ui::ImportWords", "drops")},
};

} // namespace

QString targetWord(RecipeTarget target) {
    switch (target) {
    case RecipeTarget::trees:
        return Words::tr("a tree");
    case RecipeTarget::parents:
        return Words::tr("a child with its parents");
    case RecipeTarget::scores:
        return Words::tr("a score");
    case RecipeTarget::walkMarks:
        return Words::tr("a walk mark");
    case RecipeTarget::unknown:
        break;
    }
    return Words::tr("unknown");
}

QString fieldWord(TableField field) {
    for (const FieldWord& one : kFieldWords) {
        if (one.field == field) {
            return Words::tr(one.word);
        }
    }
    const auto key = keyOf(field);
    return QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size()));
}

QString fateWord(LineFate fate) {
    switch (fate) {
    case LineFate::created:
        return Words::tr("new");
    case LineFate::matched:
        return Words::tr("in the book already");
    case LineFate::faulty:
        break;
    }
    return Words::tr("faulty");
}

} // namespace pipwright::ui
