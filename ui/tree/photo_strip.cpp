#include "ui/tree/photo_strip.h"

#include "ui/book/open_book.h"
#include "ui/book/orchard_words.h"
#include "ui/tree/photo_decoding.h"
#include "ui/tree/tree_facts.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/flow_text.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/theme.h"

#include <QAbstractButton>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QPainter>
#include <QPointer>
#include <QThreadPool>
#include <QVBoxLayout>

namespace pipwright::ui {

namespace {

constexpr int kThumbnail = 88;
constexpr int kLargeSide = 480;

/// A picture fitted into its widget, with the words that stand there until it is read.
void paintPicture(QPainter& painter, const QRectF& room, const QImage& image, bool read,
                  const Theme& theme) {
    if (image.isNull()) {
        painter.setPen(theme.secondInk);
        painter.setFont(theme.smallFont());
        painter.drawText(room, Qt::AlignCenter | Qt::TextWordWrap,
                         read ? PhotoStrip::tr("cannot be shown") : PhotoStrip::tr("reading …"));
        return;
    }
    QSizeF size = image.size();
    size.scale(room.size(), Qt::KeepAspectRatio);
    QRectF target(QPointF(), size);
    target.moveCenter(room.center());
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(target, image);
}

class Thumbnail : public QAbstractButton {
  public:
    Thumbnail(const QString& name, QWidget* parent) : QAbstractButton(parent) {
        setFixedSize(kThumbnail, kThumbnail);
        setCheckable(true);
        setAccessibleName(name);
        setToolTip(name);
        setFocusPolicy(Qt::StrongFocus);
    }
    void setImage(const QImage& image) {
        m_image = image;
        m_read = true;
        update();
    }
    [[nodiscard]] bool isRead() const { return m_read; }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const Theme& theme = themeOf(this);
        painter.setPen(QPen(isChecked() ? theme.leaf : theme.line, isChecked() ? 2 : 1));
        painter.setBrush(theme.surface);
        painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), theme.radius, theme.radius);
        paintPicture(painter, QRectF(rect()).adjusted(4, 4, -4, -4), m_image, m_read, theme);
        if (hasFocus()) {
            painter.setPen(QPen(theme.sky, 2));
            painter.setBrush(Qt::NoBrush);
            painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), theme.radius,
                                    theme.radius);
        }
    }
    void keyPressEvent(QKeyEvent* event) override {
        if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
            click();
            return;
        }
        QAbstractButton::keyPressEvent(event);
    }

  private:
    QImage m_image;
    bool m_read = false;
};

class LargePicture : public QWidget {
  public:
    explicit LargePicture(QWidget* parent) : QWidget(parent) {
        QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
        policy.setHeightForWidth(true);
        setSizePolicy(policy);
    }
    void setImage(const QImage& image) {
        m_image = image;
        updateGeometry();
        update();
    }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override {
        return m_image.isNull() ? kThumbnail
                                : std::min(kLargeSide, width * m_image.height() / m_image.width());
    }
    [[nodiscard]] QSize sizeHint() const override { return {320, heightForWidth(320)}; }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        paintPicture(painter, QRectF(rect()), m_image, true, themeOf(this));
    }

  private:
    QImage m_image;
};

} // namespace

PhotoStrip::PhotoStrip(const OpenBook& book, QWidget* parent)
    : QWidget(parent), m_book(book), m_row(new QWidget(this)), m_picture(new LargePicture(this)),
      m_caption(new FlowText({}, FlowText::Weight::second, this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(24, 0, 12, 4);
    layout->setSpacing(4);
    m_row->setLayout(new FlowLayout(nullptr, 6));
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    m_row->setSizePolicy(policy);
    layout->addWidget(m_row);
    layout->addWidget(m_picture);
    layout->addWidget(m_caption);
    m_picture->installEventFilter(this);
    m_picture->hide();
}

bool PhotoStrip::hasPicture(std::size_t photo) const {
    return photo < m_images.size() && !m_images[photo].isNull();
}

void PhotoStrip::show(const TreeFacts& facts) {
    ++m_generation;
    for (QAbstractButton* button : m_buttons) {
        button->hide();
        m_row->layout()->removeWidget(button);
        button->deleteLater();
    }
    m_buttons.clear();
    m_photos = facts.life.photos;
    m_images.assign(m_photos.size(), {});
    m_large.reset();
    m_picture->hide();
    for (std::size_t i = 0; i < m_photos.size(); ++i) {
        const Photo& photo = m_photos[i];
        QString name = photo.caption.empty() ? tr("Photo") : QString::fromStdString(photo.caption);
        if (photo.taken) {
            name += QStringLiteral(", ") + dateText(*photo.taken);
        }
        auto* button = new Thumbnail(name, m_row);
        m_row->layout()->addWidget(button);
        button->show();
        m_buttons.push_back(button);
        connect(button, &QAbstractButton::clicked, this,
                [this, i] { showLarge(m_large == i ? std::nullopt : std::optional(i)); });
    }
    m_row->setVisible(!m_photos.empty());
    m_caption->setText(m_photos.empty() ? tr("No photo yet. P adds one from a file.") : QString());
    m_caption->setVisible(m_photos.empty());
    if (!m_photos.empty()) {
        load();
    }
}

void PhotoStrip::load() {
    struct Wanted {
        std::string sha256;
        QString mediaType;
        QByteArray bytes; // filled here when the book has no reader for other threads
    };
    std::vector<Wanted> wanted;
    for (const Photo& photo : m_photos) {
        Wanted one{photo.sha256, QString::fromStdString(photo.mediaType), {}};
        if (!m_book.openReader()) {
            if (const auto bytes = m_book.store().photoBytes(photo.sha256)) {
                one.bytes = QByteArray::fromStdString(*bytes);
            }
        }
        wanted.push_back(std::move(one));
    }
    const int side = qRound(kLargeSide * devicePixelRatioF());
    QThreadPool::globalInstance()->start(
        [wanted = std::move(wanted), side, openReader = m_book.openReader(),
         generation = m_generation, strip = QPointer<PhotoStrip>(this)]() mutable {
            std::unique_ptr<Store> reader;
            if (openReader) {
                if (auto opened = openReader()) {
                    reader = std::move(*opened);
                }
            }
            for (std::size_t i = 0; i < wanted.size(); ++i) {
                Wanted& one = wanted[i];
                if (reader) {
                    if (const auto bytes = reader->photoBytes(one.sha256)) {
                        one.bytes = QByteArray::fromStdString(*bytes);
                    }
                }
                const QImage image = decodedPhoto(one.bytes, one.mediaType, {side, side});
                QMetaObject::invokeMethod(
                    QCoreApplication::instance(),
                    [strip, generation, i, image] {
                        if (strip) {
                            strip->take(generation, i, image);
                        }
                    },
                    Qt::QueuedConnection);
            }
        });
}

void PhotoStrip::take(int generation, std::size_t photo, const QImage& image) {
    if (generation != m_generation) {
        return;
    }
    m_images[photo] = image;
    static_cast<Thumbnail*>(m_buttons[photo])->setImage(image);
    if (m_large == photo) {
        showLarge(photo);
    }
}

void PhotoStrip::showLarge(std::optional<std::size_t> photo) {
    m_large = photo;
    for (std::size_t i = 0; i < m_buttons.size(); ++i) {
        m_buttons[i]->setChecked(photo == i);
    }
    m_picture->setVisible(photo.has_value());
    m_caption->setVisible(photo.has_value());
    if (!photo) {
        return;
    }
    const Photo& shown = m_photos[*photo];
    static_cast<LargePicture*>(m_picture)->setImage(m_images[*photo]);
    m_picture->setAccessibleName(m_buttons[*photo]->accessibleName());
    QString words = QString::fromStdString(shown.caption);
    if (shown.taken) {
        words += (words.isEmpty() ? QString() : QStringLiteral(" · ")) + dateText(*shown.taken);
    }
    if (shown.person) {
        words += QStringLiteral(" · ") + personWords(*m_book.view(), shown.person);
    }
    m_caption->setText(words);
    m_caption->setVisible(!words.isEmpty());
}

void PhotoStrip::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && m_large) {
        showLarge(std::nullopt);
        return;
    }
    QWidget::keyPressEvent(event);
}

bool PhotoStrip::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_picture && event->type() == QEvent::MouseButtonRelease) {
        showLarge(std::nullopt);
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace pipwright::ui
