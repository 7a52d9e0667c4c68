#pragma once

#include "core/exchange/print/table_page.h"
#include "core/season/date.h"

#include <QString>

class QAbstractItemModel;

namespace pipwright::ui {

/// The ranking as it is shown, for paper. `shown` says what was filtered and whether the book was
/// set back.
PrintedTable rankingOnPaper(const QAbstractItemModel& ranking, Date today, const QString& bookName,
                            const QString& shown);

} // namespace pipwright::ui
