#pragma once

#include "core/exchange/print/page.h"

#include <QListWidget>

#include <vector>

namespace pipwright::ui {

/// What could not be printed as it is, one sentence each; hidden while everything fits.
class MisfitList : public QListWidget {
    Q_OBJECT

  public:
    explicit MisfitList(QWidget* parent = nullptr);

    void setMisfits(const std::vector<Misfit>& misfits);
};

} // namespace pipwright::ui
