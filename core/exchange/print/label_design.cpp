#include "core/exchange/print/label_design.h"

#include <utility>

namespace pipwright {

namespace {

constexpr Micrometres kModule = 0.5_mm;

constexpr PaperBox boxAt(double x, double y, double width, double height) {
    return {millimetres(x), millimetres(y), millimetres(width), millimetres(height)};
}

constexpr PaperPoint at(double x, double y) {
    return {millimetres(x), millimetres(y)};
}

LabelFieldBox codeBox(PaperBox box, double points) {
    return {PrintedField::code, box, points, true, 1};
}
LabelFieldBox crossBox(PaperBox box, double points, int lines = 1) {
    return {PrintedField::cross, box, points, false, lines};
}
LabelFieldBox yearAndPlaceBox(PaperBox box, double points, int lines = 1) {
    return {PrintedField::yearAndPlace, box, points, false, lines};
}
LabelFieldBox extraBox(PaperBox box, double points, int lines) {
    return {PrintedField::extra, box, points, false, lines};
}

LabelDesign hangTag() {
    return {"hang_tag",
            90_mm,
            25_mm,
            {codeBox(boxAt(10, 1.5, 61, 8), 18), crossBox(boxAt(10, 9.5, 61, 3.6), 8),
             yearAndPlaceBox(boxAt(10, 13.1, 61, 3.6), 8)},
            at(72, 4.25),
            kModule,
            boxAt(10, 17.8, 61, 5.7),
            at(5, 12.5)};
}

LabelDesign branchTag() {
    return {"branch_tag",
            60_mm,
            20_mm,
            {codeBox(boxAt(7, 1, 35.5, 6.2), 14), crossBox(boxAt(7, 7.3, 35.5, 3.1), 7),
             yearAndPlaceBox(boxAt(7, 10.4, 35.5, 3.1), 7)},
            at(42.75, 1.75),
            kModule,
            boxAt(7, 14, 35.5, 4.8),
            at(3.5, 10)};
}

/// The left part is the strap that goes round the limb and through the slit at the right end.
LabelDesign loopLabel() {
    return {"loop_label",
            220_mm,
            25_mm,
            {codeBox(boxAt(102, 1.4, 88, 8.6), 20), crossBox(boxAt(102, 10.1, 88, 3.9), 9),
             yearAndPlaceBox(boxAt(102, 14, 88, 3.9), 9)},
            at(192, 4.25),
            kModule,
            boxAt(102, 18.4, 88, 5.4),
            std::nullopt};
}

/// The left 30 mm stand in the soil.
LabelDesign potLabel() {
    return {"pot_label",
            125_mm,
            20_mm,
            {codeBox(boxAt(32, 0.9, 73, 6.8), 16), crossBox(boxAt(32, 7.8, 73, 3.4), 8),
             yearAndPlaceBox(boxAt(32, 11.2, 73, 3.4), 8)},
            at(106.5, 1.75),
            kModule,
            boxAt(32, 15, 73, 4.2),
            std::nullopt};
}

LabelDesign rowPost() {
    return {"row_post",
            100_mm,
            150_mm,
            {codeBox(boxAt(5, 9, 90, 16), 36), crossBox(boxAt(5, 26, 90, 14.4), 16, 2),
             yearAndPlaceBox(boxAt(5, 41, 90, 12.4), 14, 2),
             extraBox(boxAt(5, 54, 90, 16.5), 12, 3)},
            at(25.25, 72),
            1.5_mm,
            boxAt(5, 124, 90, 20),
            at(50, 4.5)};
}

LabelDesign label63() {
    return {"label_63x38",
            63.5_mm,
            38.1_mm,
            {codeBox(boxAt(3, 2.2, 57.5, 9), 20), crossBox(boxAt(3, 11.4, 57.5, 8), 9, 2),
             yearAndPlaceBox(boxAt(3, 19.6, 42, 4), 9), extraBox(boxAt(3, 23.6, 42, 6), 7, 2)},
            at(45.25, 20),
            kModule,
            boxAt(3, 30, 42, 5.8),
            std::nullopt};
}

LabelDesign label67() {
    return {"label_67x25",
            66.675_mm,
            25.4_mm,
            {codeBox(boxAt(3, 1.5, 45.5, 7), 16), crossBox(boxAt(3, 8.7, 45.5, 3.5), 8),
             yearAndPlaceBox(boxAt(3, 12.2, 45.5, 3.5), 8)},
            at(49, 4.45),
            kModule,
            boxAt(3, 17, 45.5, 6.4),
            std::nullopt};
}

LabelDesign label51() {
    return {"label_51x25",
            50.8_mm,
            25.4_mm,
            {codeBox(boxAt(2.5, 1.2, 31, 6.2), 14), crossBox(boxAt(2.5, 7.4, 31, 6.2), 7, 2),
             yearAndPlaceBox(boxAt(2.5, 13.6, 31, 6.2), 7, 2)},
            at(33.5, 4.45),
            kModule,
            boxAt(2.5, 20.2, 31, 4.2),
            std::nullopt};
}

/// A grid in the middle of the page, with a gap between the labels.
LabelStock grid(std::string key, std::string name, LabelDesign design, PaperSize page, int columns,
                int rows, PaperPoint gap, bool toCut) {
    const PaperPoint step{design.width + gap.x, design.height + gap.y};
    const Micrometres across = step.x * columns - gap.x;
    const Micrometres down = step.y * rows - gap.y;
    const PaperPoint first{(page.width - across) / 2, (page.height - down) / 2};
    return {std::move(key), std::move(name), std::move(design), page, columns, rows, first, step,
            toCut};
}

LabelStock alone(std::string key, std::string name, LabelDesign design) {
    const PaperSize page = singleLabel(design.width, design.height);
    return grid(std::move(key), std::move(name), std::move(design), page, 1, 1, {}, false);
}

std::vector<LabelStock> everyStock() {
    const PaperPoint noGap{};
    std::vector<LabelStock> stocks;
    stocks.push_back(grid("sheet_63x38_a4", "Labels 63.5 x 38.1 mm, A4, 3 x 7", label63(), kA4, 3,
                          7, {2.5_mm, 0_mm}, false));
    stocks.push_back(grid("sheet_67x25_letter", "Labels 66.7 x 25.4 mm, Letter, 3 x 10", label67(),
                          kLetter, 3, 10, {3.175_mm, 0_mm}, false));
    stocks.push_back(grid("sheet_51x25_letter", "Labels 50.8 x 25.4 mm, Letter, 4 x 10", label51(),
                          kLetter, 4, 10, noGap, false));
    stocks.push_back(grid("hang_tags_a4", "Hang tags 90 x 25 mm, A4 to cut, 2 x 11", hangTag(), kA4,
                          2, 11, noGap, true));
    stocks.push_back(grid("hang_tags_letter", "Hang tags 90 x 25 mm, Letter to cut, 2 x 10",
                          hangTag(), kLetter, 2, 10, noGap, true));
    stocks.push_back(grid("branch_tags_a4", "Branch tags 60 x 20 mm, A4 to cut, 3 x 13",
                          branchTag(), kA4, 3, 13, noGap, true));
    stocks.push_back(grid("branch_tags_letter", "Branch tags 60 x 20 mm, Letter to cut, 3 x 12",
                          branchTag(), kLetter, 3, 12, noGap, true));
    stocks.push_back(grid("pot_labels_a4", "Pot labels 125 x 20 mm, A4 across to cut, 2 x 9",
                          potLabel(), kA4.turned(), 2, 9, noGap, true));
    stocks.push_back(grid("row_posts_a4", "Row posts 100 x 150 mm, A4 to cut, 2", rowPost(), kA4, 2,
                          1, noGap, true));
    stocks.push_back(alone("hang_tag", "Hang tag 90 x 25 mm, single", hangTag()));
    stocks.push_back(alone("branch_tag", "Branch tag 60 x 20 mm, single", branchTag()));
    stocks.push_back(alone("loop_label", "Loop label 220 x 25 mm, single", loopLabel()));
    stocks.push_back(alone("pot_label", "Pot label 125 x 20 mm, single", potLabel()));
    stocks.push_back(alone("row_post", "Row post 100 x 150 mm, single", rowPost()));
    stocks.push_back(alone("label_51x25", "Label 50.8 x 25.4 mm, single", label51()));
    stocks.push_back(alone("label_63x38", "Label 63.5 x 38.1 mm, single", label63()));
    return stocks;
}

} // namespace

const std::vector<LabelStock>& labelStocks() {
    static const std::vector<LabelStock> kStocks = everyStock();
    return kStocks;
}

std::optional<LabelStock> labelStock(std::string_view key) {
    for (const LabelStock& stock : labelStocks()) {
        if (stock.key == key) {
            return stock;
        }
    }
    return std::nullopt;
}

} // namespace pipwright
