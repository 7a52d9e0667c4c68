#include "ui/rows/map_legend.h"

#include "ui/rows/cell_stamps.h"

#include <QAbstractButton>
#include <QLabel>
#include <QLocale>
#include <QPainter>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace pipwright::ui {

namespace {

/// Logical pixels.
constexpr int kSwatchWidth = 24;
constexpr int kSwatchHeight = 18;
constexpr int kGap = 8;

/// A swatch drawn as the cells are drawn, the label, and the count at the right.
class LegendLine : public QAbstractButton {
  public:
    LegendLine(const CellColouring& colouring, std::size_t entry, QWidget* parent)
        : QAbstractButton(parent), m_entry(colouring.legend[entry]), m_scale(colouring.scale),
          m_number(entry) {
        const QString count = QLocale().toString(static_cast<qulonglong>(m_entry.count));
        setText(m_entry.label);
        setAccessibleName(
            m_entry.letter.isEmpty()
                ? MapLegend::tr("%1: %2 trees").arg(m_entry.label, count)
                : MapLegend::tr("%1, %2: %3 trees").arg(m_entry.letter, m_entry.label, count));
        setToolTip(MapLegend::tr("Select these trees"));
        setFocusPolicy(Qt::TabFocus);
        setCursor(Qt::PointingHandCursor);
        setAttribute(Qt::WA_Hover);
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    }

    QSize sizeHint() const override {
        const QFontMetrics metrics(font());
        return {kSwatchWidth + 3 * kGap + metrics.horizontalAdvance(m_entry.label) +
                    metrics.horizontalAdvance(QStringLiteral("000 000")),
                std::max(kSwatchHeight, metrics.height()) + 6};
    }
    [[nodiscard]] bool isMeant() const {
        return m_entry.count > 0 || m_scale != ColourScale::categories;
    }
    QSize minimumSizeHint() const override { return {kSwatchWidth + 90, sizeHint().height()}; }

  protected:
    void paintEvent(QPaintEvent* /*event*/) override {
        const Theme& theme = themeOf(this);
        QPainter painter(this);
        if (underMouse() || isDown()) {
            painter.fillRect(rect(), theme.wash);
        }
        const int top = (height() - kSwatchHeight) / 2;
        painter.drawImage(QPoint(2, top), swatch(theme));
        const QFontMetrics metrics(font());
        const QString count = QLocale().toString(static_cast<qulonglong>(m_entry.count));
        const int numbers = metrics.horizontalAdvance(count);
        const QRect words(2 + kSwatchWidth + kGap, 0,
                          width() - kSwatchWidth - 3 * kGap - numbers - 2, height());
        painter.setPen(theme.ink);
        painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft,
                         metrics.elidedText(m_entry.label, Qt::ElideMiddle, words.width()));
        painter.setPen(theme.secondInk);
        painter.drawText(rect().adjusted(0, 0, -4, 0), Qt::AlignVCenter | Qt::AlignRight, count);
        if (hasFocus()) {
            painter.setPen(QPen(theme.sky, 2));
            painter.drawRect(rect().adjusted(1, 1, -1, -1));
        }
    }

  private:
    [[nodiscard]] QImage swatch(const Theme& theme) const {
        const double ratio = devicePixelRatioF();
        std::vector<QString> letters(m_number + 1);
        letters[m_number] = m_entry.letter;
        CellStamps stamps;
        stamps.prepare(theme, ratio, std::move(letters));
        CellLook look;
        look.width = static_cast<int>(kSwatchWidth * ratio);
        look.height = static_cast<int>(kSwatchHeight * ratio);
        look.byStage = m_scale == ColourScale::stages;
        look.stage = look.byStage ? m_entry.stage : Stage::bearing;
        look.letter = look.byStage ? CellLook::kNoLetter : static_cast<std::uint16_t>(m_number);
        if (const auto fill = entryFill(m_entry, m_number, m_scale, theme)) {
            look.fill = fill->rgb();
        }
        QImage image = stamps.stamp(look);
        image.setDevicePixelRatio(ratio);
        return image;
    }

    LegendEntry m_entry;
    ColourScale m_scale;
    std::size_t m_number;
};

} // namespace

MapLegend::MapLegend(QWidget* parent)
    : QWidget(parent), m_title(new QLabel(this)), m_column(nullptr) {
    setAccessibleName(tr("Legend of the map"));
    auto* lines = new QWidget;
    m_column = new QVBoxLayout(lines);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(0);
    auto* area = new QScrollArea(this);
    area->setWidget(lines);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(m_title);
    column->addWidget(area, 1);
    m_title->setWordWrap(true);
    setMinimumWidth(150);
}

void MapLegend::setColouring(const CellColouring& colouring) {
    while (QLayoutItem* item = m_column->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_lines.clear();
    m_title->setFont(themeOf(this).strongFont());
    m_title->setText(colouring.title);
    for (std::size_t entry = 0; entry < colouring.legend.size(); ++entry) {
        auto* line = new LegendLine(colouring, entry, this);
        connect(line, &QAbstractButton::clicked, this,
                [this, entry] { Q_EMIT entryChosen(entry); });
        // A family without a tree here has nothing to say; on a ramp it keeps the steps even.
        line->setVisible(line->isMeant());
        m_column->addWidget(line);
        m_lines.push_back(line);
    }
    if (colouring.legend.empty()) {
        auto* nothing = new QLabel(tr("No tree has a value yet."), this);
        nothing->setWordWrap(true);
        m_column->addWidget(nothing);
    }
    m_column->addStretch(1);
}

} // namespace pipwright::ui
