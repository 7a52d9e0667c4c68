#pragma once

#include <QString>

class QApplication;

namespace pipwright::ui {

enum class Language { system, english, german };

/// The word kept in the settings: "system", "en", "de".
QString keyOf(Language language);
/// `system` for every other word.
Language languageFromKey(const QString& key);

/// The language the window will speak: English or German, never `system`.
Language spokenLanguage(Language choice);

/// Loads the words of the language and sets the locale of numbers and dates. Call it before the
/// window is made: texts already on screen stay as they are. With `system` the locale stays the
/// desktop's; a chosen language keeps the desktop's country where it is spoken there.
void applyLanguage(QApplication& application, Language choice);

} // namespace pipwright::ui
