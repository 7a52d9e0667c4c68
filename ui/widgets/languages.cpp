#include "ui/widgets/languages.h"

#include <QApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

namespace pipwright::ui {

namespace {

constexpr const char* kOurWords = "pipwright.words";
constexpr const char* kQtWords = "pipwright.qtWords";

void forgetWords(QApplication& application) {
    for (const char* name : {kOurWords, kQtWords}) {
        if (auto* old = application.findChild<QTranslator*>(QLatin1String(name))) {
            QCoreApplication::removeTranslator(old);
            delete old;
        }
    }
}

void loadWords(QApplication& application, const char* name, const QString& file,
               const QString& folder) {
    auto* words = new QTranslator(&application);
    words->setObjectName(QLatin1String(name));
    if (words->load(file, folder)) {
        QCoreApplication::installTranslator(words);
    } else {
        delete words;
    }
}

} // namespace

QString keyOf(Language language) {
    switch (language) {
    case Language::english:
        return QStringLiteral("en");
    case Language::german:
        return QStringLiteral("de");
    case Language::system:
        break;
    }
    return QStringLiteral("system");
}

Language languageFromKey(const QString& key) {
    for (const auto language : {Language::english, Language::german}) {
        if (keyOf(language) == key) {
            return language;
        }
    }
    return Language::system;
}

Language spokenLanguage(Language choice) {
    if (choice != Language::system) {
        return choice;
    }
    return QLocale::system().language() == QLocale::German ? Language::german : Language::english;
}

void applyLanguage(QApplication& application, Language choice) {
    forgetWords(application);
    const QLocale desktop = QLocale::system();
    const Language spoken = spokenLanguage(choice);
    const auto language = spoken == Language::german ? QLocale::German : QLocale::English;
    const bool asDesktop = choice == Language::system || desktop.language() == language;
    // The C locale has no names of months worth reading.
    const bool usable = asDesktop && desktop.language() != QLocale::C;
    QLocale::setDefault(usable ? desktop : QLocale(language, desktop.territory()));
    if (spoken != Language::german) {
        // English needs its words too: plurals are in the sources' "%n" only.
        loadWords(application, kOurWords, QStringLiteral("pipwright_en"),
                  QStringLiteral(":/pipwright/translations"));
        return;
    }
    loadWords(application, kQtWords, QStringLiteral("qtbase_de"),
              QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    loadWords(application, kOurWords, QStringLiteral("pipwright_de"),
              QStringLiteral(":/pipwright/translations"));
}

} // namespace pipwright::ui
