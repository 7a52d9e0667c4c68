#pragma once

#include "ui/widgets/plain_table.h"

#include <QMetaType>
#include <QWidget>

#include <optional>

namespace pipwright::ui {

/// A merit with its intervals beside the ladder it is held against, all on one scale.
struct MeritPlot {
    double low = 0; ///< ends of the scale, the same for all rows
    double high = 1;
    std::optional<double> value;
    double eightyLow = 0; ///< 80 % interval
    double eightyHigh = 0;
    double widestLow = 0; ///< 95 % interval
    double widestHigh = 0;
    std::optional<double> floor;
    std::optional<double> best;
    std::optional<double> famous;
    bool pale = false; ///< not sure yet: drawn open and paler

    bool operator==(const MeritPlot&) const = default;
};

/// Draws a MeritPlot: dot, thick bar 80 %, thin bar 95 %, and lines for floor, best and famous
/// name.
void paintMeritPlot(QPainter& painter, const QRectF& area, const MeritPlot& plot,
                    const QWidget* widget);

/// The cells of the column with the plot; the model gives a MeritPlot under `kPlotRole`.
class MeritPlotCells : public PaddedCells {
    Q_OBJECT

  public:
    static constexpr int kPlotRole = Qt::UserRole + 7;

    using PaddedCells::PaddedCells;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;
};

/// What the marks mean, in one line.
class MeritLegend : public QWidget {
    Q_OBJECT

  public:
    explicit MeritLegend(QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace pipwright::ui

Q_DECLARE_METATYPE(pipwright::ui::MeritPlot)
