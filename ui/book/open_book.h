#pragma once

#include "core/evaluation/orchard_view.h"
#include "core/history/edits.h"
#include "core/history/store.h"

#include <QObject>
#include <QString>

#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace pipwright::ui {

/// The book that is open in the window: its store, the view of it that all screens share, the day
/// taken as today, who is at the keyboard, and which trees are selected. Screens read view() and
/// send change sets; they hear of every change through viewChanged, whoever made it.
class OpenBook : public QObject {
    Q_OBJECT

  public:
    /// Opens a reader of the same book with a connection of its own, for use on another thread.
    /// May be empty (a book in memory); then long reading happens on this thread.
    using OpenReader = std::function<Result<std::unique_ptr<Store>>()>;

    /// Loads the view at once, the evidence in the background (evidenceReady tells).
    static Result<std::unique_ptr<OpenBook>> open(std::unique_ptr<Store> store, QString path,
                                                  OpenReader openReader);
    ~OpenBook() override;

    [[nodiscard]] const Store& store() const { return *m_store; }
    [[nodiscard]] Store& writableStore() { return *m_store; }
    [[nodiscard]] OrchardView::Pointer view() const { return m_view; }
    [[nodiscard]] const QString& path() const { return m_path; }
    [[nodiscard]] const OpenReader& openReader() const { return m_openReader; }
    [[nodiscard]] UuidMaker& ids() { return m_ids; }

    // --- the day taken as today ----------------------------------------------------------------
    [[nodiscard]] Date today() const;
    [[nodiscard]] bool todayIsFixed() const { return m_fixedToday.has_value(); }
    /// Nothing: the computer's day.
    void setToday(std::optional<Date> day);

    // --- who is at the keyboard ----------------------------------------------------------------
    [[nodiscard]] std::optional<PersonId> person() const { return m_person; }
    void setPerson(std::optional<PersonId> person);

    // --- edits -----------------------------------------------------------------------------------
    /// Day, person, hemisphere of the tree and a source of names, for the functions of edits.h.
    [[nodiscard]] EditContext context(std::optional<Index> plant = std::nullopt);
    [[nodiscard]] EditedTree treeAt(Index plant) const;
    [[nodiscard]] EditedTree genotypeAt(Index genotype) const;
    /// Applies it and tells everybody. False, and problemMet, when the book refuses; an empty set
    /// does nothing and is true.
    bool apply(const ChangeSet& set);
    void undo();
    void redo();
    [[nodiscard]] std::optional<QString> undoSentence() const;
    [[nodiscard]] std::optional<QString> redoSentence() const;

    // --- selection
    // ---------------------------------------------------------------------------------
    /// The selected tree: a plant, or a genotype that stands nowhere.
    [[nodiscard]] std::optional<Index> currentPlant() const { return m_currentPlant; }
    [[nodiscard]] std::optional<Index> currentGenotype() const;
    void selectPlant(std::optional<Index> plant);
    /// Selects the genotype's plant if it has one.
    void selectGenotype(Index genotype);
    /// All selected plants (the current one among them); edits for many act on these.
    [[nodiscard]] const std::vector<Index>& selection() const { return m_selection; }
    void setSelection(std::vector<Index> plants);

    /// Genotypes laid beside each other in Compare, two to eight.
    [[nodiscard]] const std::vector<Index>& laidBeside() const { return m_laidBeside; }
    void layBeside(Index genotype);
    void setLaidBeside(std::vector<Index> genotypes);

  Q_SIGNALS:
    /// The view is another one now. The changes that led to it; empty after evidence arrived or
    /// the book was read anew.
    void viewChanged(const std::vector<pipwright::Change>& changes);
    void evidenceReady();
    void currentTreeChanged();
    void selectionChanged();
    void laidBesideChanged();
    void todayChanged();
    void personChanged();
    void undoChanged();
    /// Something was refused; nothing has changed.
    void problemMet(const pipwright::Problem& problem);

  private:
    OpenBook(std::unique_ptr<Store> store, QString path, OpenReader openReader);

    void carry(const Result<JournalEntry>& entry);
    void gatherEvidence();
    void takeEvidence(const OrchardView::Pointer& base,
                      const Result<OrchardView::Pointer>& withEvidence);
    [[nodiscard]] Stamp stamp() const;

    std::unique_ptr<Store> m_store;
    QString m_path;
    OpenReader m_openReader;
    OrchardView::Pointer m_view;
    UuidMaker m_ids;
    std::optional<Date> m_fixedToday;
    std::optional<PersonId> m_person;
    std::optional<Index> m_currentPlant;
    std::optional<Index> m_currentGenotype;
    std::vector<Index> m_selection;
    std::vector<Index> m_laidBeside;
    std::shared_ptr<bool> m_alive = std::make_shared<bool>(true);
};

} // namespace pipwright::ui
