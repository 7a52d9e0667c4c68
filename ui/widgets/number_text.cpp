#include "ui/widgets/number_text.h"

#include "core/season/iso_week.h"

#include <QCoreApplication>
#include <QDate>
#include <QDateTime>
#include <QLocale>
#include <QRegularExpression>

#include <cmath>

namespace pipwright::ui {

namespace {

constexpr QChar kNarrowSpace(0x202F); // keeps number and unit on one line
constexpr QChar kMinus(0x2212);

QDate toQDate(Date date) {
    return {date.year(), static_cast<int>(date.month()), static_cast<int>(date.day())};
}

/// The translator's place for the words of this file.
class NumberText {
    Q_DECLARE_TR_FUNCTIONS(NumberText)
};

/// Without grouping marks: "1,234" is a decimal number to half of the readers.
QLocale plainLocale() {
    QLocale locale;
    locale.setNumberOptions(locale.numberOptions() | QLocale::OmitGroupSeparator);
    return locale;
}

} // namespace

QString keyOf(UnitChoice choice) {
    return choice == UnitChoice::us ? QStringLiteral("us") : QStringLiteral("metric");
}

UnitChoice unitChoiceFromKey(const QString& key) {
    return key == keyOf(UnitChoice::us) ? UnitChoice::us : UnitChoice::metric;
}

QString numberText(double value, int decimals) {
    if (!std::isfinite(value)) {
        return QStringLiteral("–");
    }
    const double step = std::pow(10.0, -decimals);
    if (std::abs(value) < step / 2) {
        value = 0;
    }
    const QString digits = plainLocale().toString(std::abs(value), 'f', decimals);
    return value < 0 ? kMinus + digits : digits;
}

QString numberText(double value, int decimals, const QString& unit) {
    const QString number = numberText(value, decimals);
    return unit.isEmpty() ? number : number + kNarrowSpace + unit;
}

QString signedText(double value, int decimals) {
    const QString number = numberText(value, decimals);
    const bool rounds = std::abs(value) >= std::pow(10.0, -decimals) / 2;
    return value > 0 && rounds ? QLatin1Char('+') + number : number;
}

QString doubtText(double value, std::optional<double> plusMinus, int decimals,
                  const QString& unit) {
    if (!plusMinus || !std::isfinite(*plusMinus)) {
        return numberText(value, decimals, unit);
    }
    return numberText(value, decimals) + QStringLiteral(" ± ") +
           numberText(*plusMinus, decimals, unit);
}

QString chanceText(double chance) {
    const QString sign = kNarrowSpace + QStringLiteral("%");
    if (chance > 0 && chance < 0.01) {
        return QStringLiteral("< ") + numberText(1, 0) + sign;
    }
    if (chance < 1 && chance > 0.99) {
        return QStringLiteral("> ") + numberText(99, 0) + sign;
    }
    return numberText(100 * chance, 0) + sign;
}

QString lengthText(Metres length, UnitChoice units) {
    return units == UnitChoice::us ? numberText(toFeet(length).number(), 1, NumberText::tr("ft"))
                                   : numberText(length.number(), 2, NumberText::tr("m"));
}

QString smallLengthText(Millimetres length, UnitChoice units) {
    return units == UnitChoice::us ? numberText(toInches(length).number(), 2, NumberText::tr("in"))
                                   : numberText(length.number(), 0, NumberText::tr("mm"));
}

QString massText(Grams mass, UnitChoice units) {
    return units == UnitChoice::us ? numberText(toOunces(mass).number(), 1, NumberText::tr("oz"))
                                   : numberText(mass.number(), 0, NumberText::tr("g"));
}

QString temperatureText(Celsius temperature, UnitChoice units) {
    return units == UnitChoice::us
               ? numberText(toFahrenheit(temperature).degrees(), 1, QStringLiteral("°F"))
               : numberText(temperature.degrees(), 1, QStringLiteral("°C"));
}

QString dateText(Date date) {
    //: The order of day (d), short month (MMM) and year (yyyy) in a date
    return QLocale().toString(toQDate(date), NumberText::tr("d MMM yyyy"));
}

QString dateWithWeekText(Date date) {
    const QString weekday = QLocale().dayName(toQDate(date).dayOfWeek(), QLocale::ShortFormat);
    //: Weekday, date, number of the ISO week
    return NumberText::tr("%1 %2, week %3").arg(weekday, dateText(date)).arg(isoWeekOf(date).week);
}

QString dateSpanText(Date from, Date to) {
    if (from == to) {
        return dateWithWeekText(from);
    }
    return NumberText::tr("%1 to %2, %n day(s)", nullptr, daysBetween(from, to) + 1)
        .arg(dateText(from), dateText(to));
}

QString momentText(std::int64_t millisecondsUtc) {
    const QDateTime moment = QDateTime::fromMSecsSinceEpoch(millisecondsUtc);
    const QDate day = moment.date();
    const auto date =
        Date::of(day.year(), static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
    return NumberText::tr("%1, %2", "date, time")
        .arg(date ? dateText(*date) : QString(),
             QLocale().toString(moment.time(), QLocale::ShortFormat));
}

QString withLocalDates(const QString& text) {
    static const QRegularExpression iso(
        QStringLiteral("(?<![\\d-])\\d{4}-\\d\\d-\\d\\d(?![\\d-])"));
    QString local;
    qsizetype done = 0;
    for (auto found = iso.globalMatch(text); found.hasNext();) {
        const QRegularExpressionMatch match = found.next();
        const auto date = Date::fromIso(match.captured().toStdString());
        local += text.mid(done, match.capturedStart() - done);
        local += date ? dateText(*date) : match.captured();
        done = match.capturedEnd();
    }
    return local + text.mid(done);
}

QString monthText(int month) {
    return QLocale().standaloneMonthName(month, QLocale::ShortFormat);
}

} // namespace pipwright::ui
