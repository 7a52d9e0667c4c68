#pragma once

#include "core/plan/cross_outlook.h"

#include <QWidget>

#include <optional>

class QLineEdit;

namespace pipwright::ui {

class FlowText;
class OpenBook;
struct CrossLine;

/// What a cross promises before its seedlings bear: two parents, from the chosen cross or typed in,
/// and whether the pollen grows, how inbred the seedlings are and from whom they come.
class OutlookPanel : public QWidget {
    Q_OBJECT

  public:
    explicit OutlookPanel(OpenBook& book, QWidget* parent = nullptr);

    /// The parents of a cross of the book; nothing leaves what was typed.
    void showCross(const CrossLine* line);
    /// Whether somebody typed parents since the last cross was shown.
    [[nodiscard]] bool isTyped() const { return m_typed; }
    /// Reads the book anew for the parents shown.
    void refresh();

    [[nodiscard]] QLineEdit* seedEdit() const { return m_seed; }
    [[nodiscard]] QLineEdit* pollenEdit() const { return m_pollen; }
    [[nodiscard]] FlowText* pollenWords() const { return m_pollenWords; }
    [[nodiscard]] FlowText* inbreedingWords() const { return m_inbreedingWords; }
    [[nodiscard]] FlowText* founderWords() const { return m_founderWords; }
    [[nodiscard]] FlowText* warningWords() const { return m_warningWords; }
    /// Of the seed parent, else of the pollen parent.
    [[nodiscard]] std::optional<SpeciesId> species() const { return m_species; }

  Q_SIGNALS:
    void speciesChanged();

  private:
    void build();
    void parentsTyped();
    void say(const CrossOfTwo& cross);
    void sayNothing(const QString& why);
    void setSpecies(std::optional<SpeciesId> species);
    void offerNames();

    OpenBook& m_book;
    QLineEdit* m_seed;
    QLineEdit* m_pollen;
    FlowText* m_pollenWords;
    FlowText* m_inbreedingWords;
    FlowText* m_founderWords;
    FlowText* m_warningWords;
    std::optional<CrossId> m_made; ///< the cross shown, until a parent is typed
    bool m_typed = false;
    std::optional<SpeciesId> m_species;
};

} // namespace pipwright::ui
