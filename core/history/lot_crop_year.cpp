#include "core/history/lot_crop_year.h"

#include "core/season/crop_season.h"

namespace pipwright {

Date dayLotLeft(const LotCondition& fruit, Date eaten) {
    const std::int64_t kept = fruit.daysOnCounter.value_or(0) + fruit.daysInFridge.value_or(0) +
                              fruit.daysInCellar.value_or(0);
    return fruit.taken.value_or(eaten.plusDays(-static_cast<int>(kept)));
}

CropYear cropYearOfLot(const LotCondition& fruit, Date eaten, Hemisphere half) {
    const Date left = dayLotLeft(fruit, eaten);
    if (half == Hemisphere::unknown) {
        return CropYear{left.year()};
    }
    return proposedCropYear(left,
                            half == Hemisphere::south ? SeasonSide::southern : SeasonSide::northern,
                            CropRecord::fruit);
}

} // namespace pipwright
