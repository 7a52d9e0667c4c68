#pragma once

#include <QString>
#include <QWidget>

#include <optional>
#include <vector>

class QButtonGroup;
class QToolButton;

namespace pipwright::ui {

/// One of the few words to choose from.
struct Chip {
    QString key;         ///< handed back: the word's key in the book
    QString word;        ///< what is read
    QString letter;      ///< the key for the thumb; one character, may be empty
    QString explanation; ///< tooltip; may be empty
};

/// Choose one of few words: click it, press its letter, or go along with the arrows. Lines break
/// when there is no room. Whether "unknown" is among them is the caller's affair; it should be.
class ChipRow : public QWidget {
    Q_OBJECT

  public:
    /// `name` says what is chosen, for a screen reader.
    explicit ChipRow(const QString& name, QWidget* parent = nullptr);

    void setChips(const std::vector<Chip>& chips);
    /// Without a signal. Nothing, or an unknown key: no chip is chosen.
    void setChosen(const std::optional<QString>& key);
    [[nodiscard]] std::optional<QString> chosen() const;
    /// The chip's button, or null.
    [[nodiscard]] QToolButton* chip(const QString& key) const;
    /// Chooses the chip of the letter, as if it were typed here. False when there is none.
    bool takeLetter(const QString& letter);

  Q_SIGNALS:
    void choiceMade(const QString& key);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void choose(int index);

    std::vector<Chip> m_chips;
    QButtonGroup* m_group;
};

} // namespace pipwright::ui
