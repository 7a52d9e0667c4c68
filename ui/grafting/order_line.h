#pragma once

#include "core/history/graft_edits.h"

#include <QWidget>

#include <optional>

class QComboBox;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace pipwright::ui {

class FlowText;
class InexactDateEdit;
class OpenBook;

/// One line that makes an order of a wish: method, number, onto what, when.
class OrderLine : public QWidget {
    Q_OBJECT

  public:
    explicit OrderLine(OpenBook& book, QWidget* parent = nullptr);

    /// The wish to carry out, and what its clone is called. Nothing: the line waits, and says so of
    /// the tree called `code`, if any.
    void setWish(std::optional<GraftWish> wish, const QString& code);

    /// The sentence over the line: whose grafts are ordered, or why none can be.
    [[nodiscard]] QString what() const;
    [[nodiscard]] QComboBox* method() const { return m_method; }
    [[nodiscard]] QSpinBox* number() const { return m_number; }
    [[nodiscard]] QLineEdit* onto() const { return m_onto; }
    [[nodiscard]] InexactDateEdit* date() const { return m_date; }
    [[nodiscard]] QPushButton* orderButton() const { return m_order; }

  Q_SIGNALS:
    void ordered();

  private:
    void readOnto();
    void order();

    OpenBook& m_book;
    std::optional<GraftWish> m_wish;
    QString m_code;
    std::optional<PlantId> m_ontoPlant;
    FlowText* m_what;
    QComboBox* m_method;
    QSpinBox* m_number;
    QLineEdit* m_onto;
    FlowText* m_ontoMeaning;
    InexactDateEdit* m_date;
    QPushButton* m_order;
};

} // namespace pipwright::ui
