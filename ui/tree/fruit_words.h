#pragma once

#include "core/evaluation/fruit_day.h"

#include <QString>
#include <QStringList>

#include <span>
#include <string_view>

namespace pipwright::ui {

/// What to write of the instrument beside a reading of a shipped trait; empty for traits that are
/// not read off one.
QString instrumentHint(std::string_view traitKey);

/// The caution to heed where a trait is measured; empty where there is none.
QString measuringCaution(std::string_view traitKey);

/// What follows from an observation together with those of the same day, one thing a line, each
/// with what it was reckoned from: soluble solids at 20 °C, the ratio, the Streif index.
QStringList fruitLines(const Observation& one, std::span<const FruitDay> days);

} // namespace pipwright::ui
