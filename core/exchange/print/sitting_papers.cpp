#include "core/exchange/print/sitting_papers.h"

#include "core/evaluation/sitting.h"
#include "core/plan/sitting_plan.h"

#include <map>

namespace pipwright {

namespace {

std::vector<SheetTaster> tastersOf(const OrchardView& view, const PlannedTable& table) {
    std::vector<SheetTaster> tasters;
    for (const TasterSheet& sheet : table.sheets) {
        SheetTaster taster;
        if (const Person* person = view.person(sheet.taster)) {
            taster.name = person->name;
        }
        for (const SheetLine& line : sheet.lines) {
            taster.codes.push_back(line.code);
        }
        tasters.push_back(std::move(taster));
    }
    return tasters;
}

std::string whereFrom(const OrchardView& view, const Lot& lot) {
    if (lot.plant) {
        if (const auto plant = view.plant(*lot.plant)) {
            return view.placeText(*plant);
        }
    }
    return lot.source;
}

} // namespace

TastingSheets tastingSheetsOf(const OrchardView& view, const PlannedTable& table) {
    TastingSheets sheets;
    sheets.date = table.tasting.date;
    sheets.title = table.tasting.title;
    sheets.tasters = tastersOf(view, table);
    sheets.pauseAfter = lotsBeforePause(table.served());
    for (const Lot& lot : table.lots) {
        if (lot.servingCode.empty()) {
            sheets.lookOnly.push_back(fruitName(view, lot));
        }
    }
    return sheets;
}

SittingKeyPaper sittingKeyOf(const OrchardView& view, const PlannedTable& table,
                             const ConditionWords& condition, const std::string& twice,
                             const std::string& again) {
    std::map<Index, int> servings;
    for (const Lot& lot : table.lots) {
        const auto genotype = genotypeOf(view, lot);
        if (genotype && !lot.servingCode.empty()) {
            ++servings[*genotype];
        }
    }
    SittingKeyPaper key;
    key.date = table.tasting.date;
    key.title = table.tasting.title;
    for (const Lot& lot : table.lots) {
        KeyLine line;
        line.code = lot.servingCode.empty() ? "\xE2\x80\x93" : lot.servingCode;
        line.fruit = lot.source.empty() ? fruitName(view, lot) : "";
        const auto genotype = genotypeOf(view, lot);
        if (line.fruit.empty()) {
            line.fruit = genotype ? view.genotypes()[*genotype].called() : fruitName(view, lot);
        }
        line.where = whereFrom(view, lot);
        line.condition = condition(lot);
        line.role = genotype && servings[*genotype] > 1 ? twice
                    : lot.notes.empty()                 ? std::string()
                                                        : again;
        key.lines.push_back(std::move(line));
    }
    key.tasters = tastersOf(view, table);
    key.draw = std::to_string(table.key.draw);
    return key;
}

} // namespace pipwright
