#include "ui/shell/shell_settings.h"

#include <QCryptographicHash>
#include <QFileInfo>
#include <QSettings>

namespace pipwright::ui {

namespace {

constexpr qsizetype kMostRecent = 8;

QString kept(const char* key) {
    return QSettings().value(QLatin1String(key)).toString();
}
void keep(const char* key, const QVariant& value) {
    QSettings().setValue(QLatin1String(key), value);
}

/// A book's group in the settings; its path has characters a key may not have.
QString groupOf(const QString& book) {
    const QByteArray path = QFileInfo(book).absoluteFilePath().toUtf8();
    const QByteArray hash = QCryptographicHash::hash(path, QCryptographicHash::Sha1).toHex();
    return QStringLiteral("left/") + QString::fromLatin1(hash.left(16));
}

} // namespace

ThemeChoice ShellSettings::theme() const {
    return themeChoiceFromKey(kept("theme"));
}
void ShellSettings::setTheme(ThemeChoice choice) {
    keep("theme", keyOf(choice));
}
Language ShellSettings::language() const {
    return languageFromKey(kept("language"));
}
void ShellSettings::setLanguage(Language language) {
    keep("language", keyOf(language));
}
UnitChoice ShellSettings::units() const {
    return unitChoiceFromKey(kept("units"));
}
void ShellSettings::setUnits(UnitChoice units) {
    keep("units", keyOf(units));
}
bool ShellSettings::motion() const {
    return QSettings().value(QStringLiteral("motion"), true).toBool();
}
void ShellSettings::setMotion(bool moves) {
    keep("motion", moves);
}

QStringList ShellSettings::recentBooks() const {
    QStringList books = QSettings().value(QStringLiteral("recent")).toStringList();
    books.removeIf([](const QString& path) { return !QFileInfo::exists(path); });
    return books;
}

void ShellSettings::noteRecent(const QString& path) {
    QStringList books = QSettings().value(QStringLiteral("recent")).toStringList();
    const QString whole = QFileInfo(path).absoluteFilePath();
    books.removeAll(whole);
    books.prepend(whole);
    while (books.size() > kMostRecent) {
        QSettings().remove(groupOf(books.last()));
        books.removeLast();
    }
    keep("recent", books);
}

ShellSettings::Whereabouts ShellSettings::whereabouts(const QString& book) const {
    const QString group = groupOf(book);
    return {QSettings().value(group + QStringLiteral("/place")).toString(),
            QSettings().value(group + QStringLiteral("/tree")).toString()};
}
void ShellSettings::keepWhereabouts(const QString& book, const Whereabouts& left) {
    const QString group = groupOf(book);
    QSettings().setValue(group + QStringLiteral("/place"), left.place);
    QSettings().setValue(group + QStringLiteral("/tree"), left.tree);
}

QByteArray ShellSettings::geometry() const {
    return QSettings().value(QStringLiteral("window/geometry")).toByteArray();
}
QByteArray ShellSettings::splitter() const {
    return QSettings().value(QStringLiteral("window/splitter")).toByteArray();
}
void ShellSettings::keepWindow(const QByteArray& geometry, const QByteArray& splitter) {
    keep("window/geometry", geometry);
    keep("window/splitter", splitter);
}

} // namespace pipwright::ui
