#pragma once

#include "ui/compare/compare_model.h"
#include "ui/widgets/theme.h"

#include <QStyledItemDelegate>

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
    /// How high the cell must be at that width.
    [[nodiscard]] int heightOf(const QModelIndex& index, int width) const;
    /// The side of a photo, in logical pixels.
    static constexpr int kPhotoSide = 84;

  private:
    struct Parts {
        QRectF words;
        QRectF drawing;
        QRectF difference;
        int height = 0;
    };
    [[nodiscard]] Parts partsOf(const QModelIndex& index, const QRectF& cell) const;
    void drawHead(QPainter& painter, const QRectF& area, const QString& words,
                  const Theme& theme) const;
    void drawPhotos(QPainter& painter, const QRectF& area, int column) const;
    void drawWindow(QPainter& painter, const QRectF& area, int column, const Theme& theme) const;
    void drawWeeks(QPainter& painter, const QRectF& area, const Theme& theme) const;
    void drawLiking(QPainter& painter, const QRectF& area, int column, const Theme& theme) const;
    void drawTrait(QPainter& painter, const QRectF& area, const QModelIndex& index,
                   const Theme& theme) const;

    const CompareModel& m_model;
};

} // namespace pipwright::ui
