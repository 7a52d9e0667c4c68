#pragma once

#include <QPixmap>
#include <QStyledItemDelegate>

#include <functional>
#include <map>
#include <string>

namespace pipwright::ui {

class CompareModel;

/// Draws the lines of Compare that are better seen than read: windows on one week axis, every
/// score on one scale, traits on the scale they share. All else is text.
class CompareDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    /// Gives the bytes of a photo by its hash; empty when it is not beside the book.
    using PhotoBytes = std::function<std::string(const std::string& sha256)>;

    CompareDelegate(const CompareModel& model, PhotoBytes photoBytes, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;
    void forgetPhotos() { m_photos.clear(); }

  private:
    void drawWindow(QPainter& painter, const QRect& area, int column, const QWidget* widget) const;
    void drawScores(QPainter& painter, const QRect& area, int column, const QWidget* widget) const;
    void drawScale(QPainter& painter, const QRect& area, const QModelIndex& index,
                   const QWidget* widget) const;
    void drawPhoto(QPainter& painter, const QRect& area, int column) const;

    const CompareModel& m_model;
    PhotoBytes m_photoBytes;
    mutable std::map<std::string, QPixmap> m_photos;
};

} // namespace pipwright::ui
