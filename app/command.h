#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace pipwright::app {

/// What the program tells the shell that called it.
enum ExitCode {
    kDone = 0,   ///< it was done
    kFailed = 1, ///< the book, the file or the disk did not allow it; the reason stands on stderr
    kUsage = 2,  ///< the words of the command were not understood
};

/// One command of the command line.
struct Command {
    QString name;
    QString summary;                          ///< one line for the list of commands
    int (*run)(const QStringList& arguments); ///< arguments without program and command name
    bool needsWindow = false;                 ///< wants a QApplication (fonts, pictures)
};

/// All of them, in the order of the help.
const std::vector<Command>& commands();

int newCommand(const QStringList& arguments);
int importCommand(const QStringList& arguments);
int archiveCommand(const QStringList& arguments);
int checkCommand(const QStringList& arguments);
int labelsCommand(const QStringList& arguments);
int sittingCommand(const QStringList& arguments);
int meritCommand(const QStringList& arguments);
int verdictCommand(const QStringList& arguments);
int tastersCommand(const QStringList& arguments);
int keepingCommand(const QStringList& arguments);
/// Rebuilds a book from an archive folder; a part of importCommand.
struct ArchiveJob {
    bool dryRun = false;
    bool skipFaulty = false;
    bool takeChanged = false; ///< tables edited after the archive was written
};
int importArchive(const QString& bookName, const QString& folder, const ArchiveJob& job);
int tourCommand(const QStringList& arguments);

} // namespace pipwright::app
