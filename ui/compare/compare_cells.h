#pragma once

#include "ui/compare/compare_model.h"
#include "ui/widgets/theme.h"

#include <QStyledItemDelegate>

#include <vector>

namespace pipwright::ui {

/// Draws the cells of Compare: the words, and below them the picture they belong to, on a scale
/// that is the same in the whole row.
class CompareCells : public QStyledItemDelegate {
    Q_OBJECT

  public:
    explicit CompareCells(const CompareModel& model, QObject* parent = nullptr);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;
    /// Measures a row at that width: how high it must be. The pictures of a row stand at one
    /// height, whatever the words above them need.
    int measureRow(int row, int width);
    /// Where a click takes the column out, in the cell of a head.
    [[nodiscard]] static QRect closeArea(const QRect& cell);
    /// The side of a photo, in logical pixels.
    static constexpr int kPhotoSide = 84;

  private:
    struct Parts {
        QRectF words;
        QRectF drawing;
        QRectF difference;
    };
    [[nodiscard]] double wordsHeight(const QModelIndex& index, double width) const;
    [[nodiscard]] double drawingHeight(const QModelIndex& index) const;
    [[nodiscard]] Parts partsOf(const QModelIndex& index, const QRectF& cell) const;
    static void drawHead(QPainter& painter, const QRect& cell, const QRectF& area,
                         const QString& words);
    void drawPhotos(QPainter& painter, const QRectF& area, int column) const;
    void drawWindow(QPainter& painter, const QRectF& area, int column, const Theme& theme) const;
    void drawWeeks(QPainter& painter, const QRectF& area, const Theme& theme) const;
    void drawLiking(QPainter& painter, const QRectF& area, int column, const Theme& theme) const;
    void drawKeeping(QPainter& painter, const QRectF& area, int column, const Theme& theme) const;
    void drawTrait(QPainter& painter, const QRectF& area, const QModelIndex& index,
                   const Theme& theme) const;

    const CompareModel& m_model;
    std::vector<double> m_wordsHeight; ///< of each row, as measured last
};

} // namespace pipwright::ui
