#include "ui/widgets/icons.h"

#include <QFile>
#include <QIconEngine>
#include <QPainter>
#include <QPixmapCache>
#include <QSvgRenderer>

#include <cmath>
#include <optional>

namespace pipwright::ui {

namespace {

constexpr std::array<const char*, kIconCount> kFiles{
    "rows",     "tastings", "compare",  "season",      "crosses",  "grafting",   "paper",
    "note",     "bite",     "walk",     "observation", "decision", "graft-wish", "label",
    "photo",    "undo",     "redo",     "find",        "open",     "new",        "sample",
    "filter",   "zoom-in",  "zoom-out", "zoom-fit",    "list",     "map",        "legend",
    "print",    "export",   "table",    "history",     "settings", "help",       "warning",
    "check",    "close",    "fold",     "unfold",      "tree",     "benchmark",  "leaf",
    "calendar", "merit",
};

/// Draws from the SVG at the size asked for, so that no scale finds a blurred picture.
class DrawnIcon : public QIconEngine {
  public:
    DrawnIcon(IconName name, std::optional<bool> dark) : m_name(name), m_dark(dark) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
        QSvgRenderer renderer(iconDrawing(m_name, theme()));
        painter->save();
        painter->setOpacity(mode == QIcon::Disabled ? 0.45 : 1.0);
        const int side = std::min(rect.width(), rect.height());
        const QRectF square(rect.x() + (rect.width() - side) / 2.0,
                            rect.y() + (rect.height() - side) / 2.0, side, side);
        renderer.render(painter, square);
        painter->restore();
    }

    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        return scaledPixmap(size, mode, state, 1.0);
    }

    /// `size` is in device pixels already.
    QPixmap scaledPixmap(const QSize& size, QIcon::Mode mode, QIcon::State state,
                         qreal scale) override {
        const QString key = QStringLiteral("pipwright-icon-%1-%2-%3x%4-%5-%6")
                                .arg(static_cast<int>(m_name))
                                .arg(theme().dark)
                                .arg(size.width())
                                .arg(size.height())
                                .arg(scale)
                                .arg(mode == QIcon::Disabled);
        QPixmap picture;
        if (QPixmapCache::find(key, &picture)) {
            return picture;
        }
        picture = QPixmap(size);
        picture.fill(Qt::transparent);
        QPainter painter(&picture);
        painter.setRenderHint(QPainter::Antialiasing);
        paint(&painter, QRect(QPoint(0, 0), size), mode, state);
        painter.end();
        QPixmapCache::insert(key, picture);
        return picture;
    }

    QIconEngine* clone() const override { return new DrawnIcon(m_name, m_dark); }

  private:
    [[nodiscard]] const Theme& theme() const {
        if (!m_dark) {
            return currentTheme();
        }
        return *m_dark ? darkTheme() : lightTheme();
    }

    IconName m_name;
    std::optional<bool> m_dark; ///< nothing: as the application
};

} // namespace

QIcon icon(IconName name) {
    return QIcon(new DrawnIcon(name, std::nullopt));
}

QIcon icon(IconName name, const Theme& theme) {
    return QIcon(new DrawnIcon(name, theme.dark));
}

QByteArray iconDrawing(IconName name, const Theme& theme) {
    QFile file(QStringLiteral(":/pipwright/icons/%1.svg")
                   .arg(QLatin1String(kFiles[static_cast<std::size_t>(name)])));
    if (!file.open(QIODevice::ReadOnly)) {
        return {};
    }
    // The files are drawn in the light theme's ink and leaf.
    QByteArray drawing = file.readAll();
    drawing.replace(lightTheme().ink.name().toUpper().toLatin1(), theme.ink.name().toLatin1());
    drawing.replace(lightTheme().leaf.name().toUpper().toLatin1(), theme.leaf.name().toLatin1());
    return drawing;
}

} // namespace pipwright::ui
