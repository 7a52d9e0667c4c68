#pragma once

#include "core/season/date.h"
#include "core/units/quantity.h"

#include <QString>

#include <cstdint>
#include <optional>

/// Numbers, units and dates as the user reads them, by the locale of the window.
namespace pipwright::ui {

enum class UnitChoice { metric, us };

/// The word kept in the settings: "metric", "us".
QString keyOf(UnitChoice choice);
/// `metric` for every other word.
UnitChoice unitChoiceFromKey(const QString& key);

/// "7.4"; a dash for what is not a number. A number that rounds to nothing has no sign.
QString numberText(double value, int decimals);
/// "7.4 g"; the space does not break.
QString numberText(double value, int decimals, const QString& unit);
/// "+0.9" or "−0.2", with a true minus.
QString signedText(double value, int decimals);
/// "7.4 ± 0.6", or "7.4" when the doubt is not known. `unit` goes behind both.
QString doubtText(double value, std::optional<double> plusMinus, int decimals,
                  const QString& unit = {});
/// "57 %", never 0 % or 100 % for what is only nearly so: "< 1 %", "> 99 %".
QString chanceText(double chance);

/// Metres with two decimals, or feet with one.
QString lengthText(Metres length, UnitChoice units);
/// Millimetres, or inches with two decimals.
QString smallLengthText(Millimetres length, UnitChoice units);
/// Grams, or ounces with one decimal.
QString massText(Grams mass, UnitChoice units);
/// °C or °F, with one decimal.
QString temperatureText(Celsius temperature, UnitChoice units);

/// "22 Aug 2026" in the manner of the locale.
QString dateText(Date date);
/// "Sat 22 Aug 2026, week 34".
QString dateWithWeekText(Date date);
/// One day as dateWithWeekText(), else from and to with the number of days.
QString dateSpanText(Date from, Date to);
/// "22 Aug 2026, 14:29": a moment of the journal, in the time of this computer.
QString momentText(std::int64_t millisecondsUtc);
/// The text with every ISO date in it as dateText() writes it: for sentences and values that are
/// kept in the plain form.
QString withLocalDates(const QString& text);
/// Short name of a month, 1 to 12: "Aug".
QString monthText(int month);

} // namespace pipwright::ui
