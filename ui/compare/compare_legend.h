#pragma once

#include <QWidget>

namespace pipwright::ui {

/// Under the columns of Compare: each mark as it is drawn there, with what it means, and below
/// them what ▲, ▼ and ± say.
class CompareLegend : public QWidget {
    Q_OBJECT

  public:
    explicit CompareLegend(QWidget* parent = nullptr);
};

} // namespace pipwright::ui
