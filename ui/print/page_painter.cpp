#include "ui/print/page_painter.h"

#include "ui/print/paper_font.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>

namespace pipwright::ui {

namespace {

class PagePainting {
  public:
    PagePainting(QPainter& painter, const PageScale& scale)
        : m_painter(painter), m_scale(scale), m_regular(paperFont(false)), m_bold(paperFont(true)),
          m_capHeight(QFontMetricsF(m_regular).capHeight()) {}

    void operator()(const TextMark& mark) const {
        const QRectF box = rectOf(mark.box);
        const QString text = QString::fromStdString(mark.text);
        const double scale =
            mark.points * 25.4 / 72.0 * m_scale.pixelsPerMillimetre / kPaperFontPixels;
        const QFont& font = mark.bold ? m_bold : m_regular;
        double x = box.left();
        if (mark.align != Align::left) {
            const double spare = box.width() - QFontMetricsF(font).horizontalAdvance(text) * scale;
            x += mark.align == Align::right ? spare : spare / 2.0;
        }
        const double baseline = box.center().y() + m_capHeight * scale / 2.0;
        m_painter.save();
        m_painter.translate(x, baseline);
        m_painter.scale(scale, scale);
        m_painter.setFont(font);
        m_painter.setPen(Qt::black);
        m_painter.drawText(QPointF(0.0, 0.0), text);
        m_painter.restore();
    }

    void operator()(const LineMark& mark) const {
        m_painter.setPen(QPen(Qt::black, pixels(mark.thickness), Qt::SolidLine, Qt::FlatCap));
        m_painter.drawLine(pointOf(mark.from), pointOf(mark.to));
    }

    void operator()(const FillMark& mark) const {
        const int light = 255 - mark.inkPercent * 255 / 100;
        m_painter.fillRect(rectOf(mark.box), QColor(light, light, light));
    }

    void operator()(const FrameMark& mark) const {
        const double line = pixels(mark.thickness);
        const double half = line / 2.0;
        m_painter.setPen(QPen(Qt::black, line, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        m_painter.setBrush(Qt::NoBrush);
        m_painter.drawRect(rectOf(mark.box).adjusted(half, half, -half, -half));
    }

    void operator()(const CircleMark& mark) const {
        m_painter.setPen(QPen(Qt::black, pixels(mark.thickness)));
        m_painter.setBrush(Qt::NoBrush);
        const double radius = pixels(mark.diameter) / 2.0;
        m_painter.drawEllipse(pointOf(mark.centre), radius, radius);
    }

    void operator()(const PolygonMark& mark) const {
        QPolygonF corners;
        for (const PaperPoint& corner : mark.corners) {
            corners << pointOf(corner);
        }
        const bool filled = mark.thickness.count == 0;
        m_painter.setPen(filled ? QPen(Qt::NoPen)
                                : QPen(Qt::black, pixels(mark.thickness), Qt::SolidLine,
                                       Qt::SquareCap, Qt::MiterJoin));
        m_painter.setBrush(filled ? QBrush(Qt::black) : QBrush(Qt::NoBrush));
        m_painter.drawPolygon(corners);
    }

    /// All dark modules are one path: filled one by one they would show seams between them.
    void operator()(const CodeMark& mark) const {
        QPainterPath dark;
        dark.setFillRule(Qt::WindingFill);
        const QPointF corner = pointOf(mark.corner);
        const double side = pixels(mark.module);
        for (int row = 0; row < mark.code.modules; ++row) {
            for (int column = 0; column < mark.code.modules; ++column) {
                if (mark.code.dark(row, column)) {
                    dark.addRect(corner.x() + (kQuietModules + column) * side,
                                 corner.y() + (kQuietModules + row) * side, side, side);
                }
            }
        }
        m_painter.fillPath(dark, Qt::black);
    }

  private:
    [[nodiscard]] double pixels(Micrometres length) const {
        return inMillimetres(length) * m_scale.pixelsPerMillimetre;
    }
    [[nodiscard]] QPointF pointOf(PaperPoint point) const {
        return m_scale.origin + QPointF(pixels(point.x), pixels(point.y));
    }
    [[nodiscard]] QRectF rectOf(const PaperBox& box) const {
        return {pointOf({box.x, box.y}), QSizeF(pixels(box.width), pixels(box.height))};
    }

    QPainter& m_painter;
    PageScale m_scale;
    QFont m_regular;
    QFont m_bold;
    double m_capHeight;
};

} // namespace

void paintPage(QPainter& painter, const Page& page, const PageScale& scale) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::TextAntialiasing);
    const PagePainting painting(painter, scale);
    for (const Mark& mark : page.marks) {
        std::visit(painting, mark);
    }
    painter.restore();
}

} // namespace pipwright::ui
