#include "app/terminal.h"

#include "app/command.h"

#include <QCoreApplication>

#include <cstdio>
#include <memory>
#include <unistd.h>

namespace pipwright::app {

namespace {

void print(std::FILE* stream, const QString& line) {
    const QByteArray bytes = line.toUtf8() + '\n';
    std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), stream);
    std::fflush(stream);
}

} // namespace

QString tr(const char* text) {
    return QCoreApplication::translate("pipwright::app", text);
}

void say(const QString& line) {
    print(stdout, line);
}

void complain(const QString& line) {
    print(stderr, line);
}

int fail(const Problem& problem) {
    complain(QString::fromStdString(problem.sentence()));
    return kFailed;
}

std::filesystem::path pathOf(const QString& argument) {
    const QByteArray bytes = argument.toUtf8();
    return {std::string(bytes.constData(), static_cast<std::size_t>(bytes.size()))};
}

std::optional<int> parsed(QCommandLineParser& parser, const QString& command,
                          const QStringList& arguments, int least, int most) {
    const QCommandLineOption helpOption({QStringLiteral("h"), QStringLiteral("help")},
                                        QStringLiteral("Shows this help."));
    parser.addOption(helpOption);
    const bool understood =
        parser.parse(QStringList{QStringLiteral("pipwright ") + command} + arguments);
    if (understood && parser.isSet(helpOption)) {
        QString help = parser.helpText().trimmed(); // it names the program by its whole path
        help.replace(QCoreApplication::arguments().constFirst(),
                     QStringLiteral("pipwright ") + command);
        say(help);
        return kDone;
    }
    if (!understood) {
        complain(QStringLiteral("pipwright %1: %2 See 'pipwright %1 --help'.")
                     .arg(command, parser.errorText()));
        return kUsage;
    }
    const auto count = parser.positionalArguments().size();
    if (count < least || count > most) {
        complain(QStringLiteral("pipwright %1: %2 See 'pipwright %1 --help'.")
                     .arg(command, count < least ? QStringLiteral("something is missing.")
                                                 : QStringLiteral("there is one word too many.")));
        return kUsage;
    }
    return std::nullopt;
}

std::function<bool(std::int64_t, std::int64_t)> progressOn(const QString& word) {
    if (isatty(STDERR_FILENO) == 0) {
        return {};
    }
    auto shown = std::make_shared<int>(-1);
    return [word, shown](std::int64_t done, std::int64_t total) {
        const int percent = total > 0 ? static_cast<int>(100 * done / total) : 100;
        if (percent != *shown) {
            *shown = percent;
            std::fprintf(stderr, "\r%s: %d %%%s", word.toUtf8().constData(), percent,
                         percent >= 100 ? "\n" : "");
            std::fflush(stderr);
        }
        return true;
    };
}

} // namespace pipwright::app
