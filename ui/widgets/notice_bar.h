#pragma once

#include "core/units/result.h"

#include <QString>
#include <QWidget>

class QToolButton;
class QPushButton;

namespace pipwright::ui {

class FlowText;

/// Says what went wrong, where, and what to do, in place and without stopping anybody. Stays until
/// it is closed or the next thing is said.
class NoticeBar : public QWidget {
    Q_OBJECT

  public:
    enum class Kind { word, attention, fault };

    explicit NoticeBar(QWidget* parent = nullptr);

    void tell(const Problem& problem);
    /// `remedy` is the second sentence, in weaker ink; may be empty.
    void say(Kind kind, const QString& what, const QString& remedy = {});
    /// A button that does what the remedy says, for this notice only; call after tell() or say().
    void offer(const QString& action);
    void close();

    [[nodiscard]] Kind kind() const { return m_kind; }
    [[nodiscard]] QString text() const;
    [[nodiscard]] QPushButton* offerButton() const { return m_offer; }
    [[nodiscard]] QToolButton* closeButton() const { return m_close; }

  Q_SIGNALS:
    void offerTaken();
    void closed();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    Kind m_kind = Kind::word;
    FlowText* m_what;
    FlowText* m_remedy;
    QPushButton* m_offer;
    QToolButton* m_close;
};

} // namespace pipwright::ui
