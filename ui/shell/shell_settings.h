#pragma once

#include "ui/widgets/languages.h"
#include "ui/widgets/number_text.h"
#include "ui/widgets/theme.h"

#include <QByteArray>
#include <QString>
#include <QStringList>

namespace pipwright::ui {

/// What the window remembers between two starts, in the desktop's usual place for settings.
class ShellSettings {
  public:
    [[nodiscard]] ThemeChoice theme() const;
    void setTheme(ThemeChoice choice);
    [[nodiscard]] Language language() const;
    void setLanguage(Language language);
    [[nodiscard]] UnitChoice units() const;
    void setUnits(UnitChoice units);
    [[nodiscard]] bool motion() const;
    void setMotion(bool moves);

    /// Newest first; files that are gone are left out.
    [[nodiscard]] QStringList recentBooks() const;
    void noteRecent(const QString& path);

    /// Where a book was left: the place, and the tree by its id.
    struct Whereabouts {
        QString place;
        QString tree;
    };
    /// Both empty for a book that was never open, or not for a long time.
    [[nodiscard]] Whereabouts whereabouts(const QString& book) const;
    void keepWhereabouts(const QString& book, const Whereabouts& left);

    [[nodiscard]] QByteArray geometry() const;
    [[nodiscard]] QByteArray splitter() const;
    void keepWindow(const QByteArray& geometry, const QByteArray& splitter);
};

} // namespace pipwright::ui
