#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/history/change.h"

#include <QString>
#include <QStringList>

namespace pipwright::ui {

/// "state since" for the field `state_since`.
QString fieldWords(Kind kind, std::size_t field);
/// A value as a reader wants it: names for references, dates as dates; "nothing" for none.
QString valueWords(const OrchardView& view, const FieldInfo& field, const Value& value);
/// "plant, state: growing, then lost" one line a field; of a new record one line in all.
QStringList changeWords(const OrchardView& view, const Change& change);

} // namespace pipwright::ui
