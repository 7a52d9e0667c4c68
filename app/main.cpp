#include "app/command.h"
#include "app/file_doors.h"
#include "app/terminal.h"
#include "ui/shell/main_window.h"
#include "ui/shell/shell_settings.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QFileInfo>
#include <QStandardPaths>

#include <algorithm>
#include <cstdlib>
#include <memory>

namespace pipwright::app {

namespace {

QString overview() {
    QString text = QStringLiteral("pipwright: the workbench of a tree-fruit breeder\n\n"
                                  "  pipwright [--today DATE] [BOOK]   opens the window\n");
    for (const Command& command : commands()) {
        text += QStringLiteral("  pipwright %1 %2\n").arg(command.name, -12).arg(command.summary);
    }
    text += QStringLiteral("\nEach command has --help. Exit code 0: done, 1: not possible (the "
                           "reason stands on\nstandard error), 2: not understood.");
    return text;
}

/// What Qt says of the machine it runs on is no concern of who reads the terminal.
bool isTalk(const QString& message) {
    for (const char* talk : {"QStandardPaths: ", "This plugin does not support "}) {
        if (message.startsWith(QLatin1String(talk))) {
            return true;
        }
    }
    return false;
}

void report(QtMsgType type, const QMessageLogContext& /*context*/, const QString& message) {
    if (!isTalk(message)) {
        complain(message);
    }
    if (type == QtFatalMsg) {
        std::abort();
    }
}

/// Whether there is a screen to open a window on, or a platform was asked for by name.
bool hasScreen() {
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

void dress(QApplication& application) {
    const ui::ShellSettings settings;
    ui::applyLanguage(application, settings.language());
    ui::applyTheme(application, settings.theme());
    ui::setMotion(application, settings.motion());
}

int openWindow(QApplication& application) {
    QCommandLineParser parser;
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the book to open"));
    const QCommandLineOption todayOption(
        QStringLiteral("today"), QStringLiteral("The day taken as today."), QStringLiteral("DATE"));
    parser.addOption(todayOption);
    const QStringList arguments = QApplication::arguments().mid(1);
    if (const auto code = parsed(parser, QString(), arguments, 0, 1)) {
        return *code;
    }
    const QStringList books = parser.positionalArguments();
    if (!books.isEmpty() && !QFileInfo::exists(books.first())) {
        complain(QStringLiteral("%1: there is no such command and no such book. See 'pipwright "
                                "--help'.")
                     .arg(books.first()));
        return kUsage;
    }
    std::optional<Date> today;
    if (parser.isSet(todayOption)) {
        today = Date::fromIso(parser.value(todayOption).toStdString());
        if (!today) {
            complain(QStringLiteral("--today: \"%1\" is not a day. Write it as 2026-08-22.")
                         .arg(parser.value(todayOption)));
            return kUsage;
        }
    }
    dress(application);
    FileDoors doors(sampleArchiveFolder(),
                    QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
                        QStringLiteral("/pipwright"));
    ui::MainWindow window(doors, today);
    window.show();
    if (!parser.positionalArguments().isEmpty()) {
        const QString path = parser.positionalArguments().first();
        // After the first paint, so that the window is there at once.
        QMetaObject::invokeMethod(
            &window, [&window, path] { window.openBook(path); }, Qt::QueuedConnection);
    }
    return QApplication::exec();
}

} // namespace

const std::vector<Command>& commands() {
    static const std::vector<Command> all = {
        {QStringLiteral("new"), QStringLiteral("makes an empty book"), newCommand},
        {QStringLiteral("import"),
         QStringLiteral("rebuilds a book from an archive, or brings in a table"), importCommand},
        {QStringLiteral("archive"), QStringLiteral("writes a book as a folder of plain tables"),
         archiveCommand},
        {QStringLiteral("check"), QStringLiteral("checks a book from end to end"), checkCommand},
        {QStringLiteral("labels"), QStringLiteral("lays out field labels as a PDF"), labelsCommand,
         true},
        {QStringLiteral("sitting"),
         QStringLiteral("plans a tasting: codes, orders, sheets and sealed key"), sittingCommand,
         true},
        {QStringLiteral("merit"), QStringLiteral("ranks what was tasted, with how sure that is"),
         meritCommand},
        {QStringLiteral("verdict"),
         QStringLiteral("holds seedlings against the benchmarks of their slot"), verdictCommand},
        {QStringLiteral("tasters"), QStringLiteral("says who scores high, repeats and agrees"),
         tastersCommand},
        {QStringLiteral("keeping"), QStringLiteral("says how long the fruit stays good"),
         keepingCommand},
        {QStringLiteral("tour"), QStringLiteral("draws every screen and paper of a book"),
         tourCommand, true},
    };
    return all;
}

int run(int argc, char** argv) {
    const QString name = argc > 1 ? QString::fromLocal8Bit(argv[1]) : QString();
    const auto command = std::find_if(commands().begin(), commands().end(),
                                      [&name](const Command& one) { return one.name == name; });
    const bool help = name == QLatin1String("--help") || name == QLatin1String("-h") ||
                      name == QLatin1String("help");
    const bool isCommand = command != commands().end();
    const bool windowed = !help && (!isCommand || command->needsWindow);
    qInstallMessageHandler(report);
    if (windowed && isCommand && !qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen"); // papers and pictures need no screen
    } else if (windowed && !isCommand && !hasScreen()) {
        complain(
            QStringLiteral("pipwright: there is no screen to open the window on. Start it on a "
                           "desktop, or see 'pipwright --help' for what works without one."));
        return kFailed;
    }
    std::unique_ptr<QCoreApplication> application; // before everything that uses Qt
    if (windowed) {
        auto window = std::make_unique<QApplication>(argc, argv);
        application = std::move(window);
    } else {
        application = std::make_unique<QCoreApplication>(argc, argv);
    }
    QCoreApplication::setApplicationName(QStringLiteral("pipwright"));
    QCoreApplication::setOrganizationName(QStringLiteral("pipwright"));
    QCoreApplication::setApplicationVersion(QStringLiteral(PIPWRIGHT_VERSION));
    if (help) {
        say(overview());
        return kDone;
    }
    if (isCommand) {
        return command->run(QCoreApplication::arguments().mid(2));
    }
    return openWindow(static_cast<QApplication&>(*application));
}

} // namespace pipwright::app

int main(int argc, char** argv) {
    return pipwright::app::run(argc, argv);
}
