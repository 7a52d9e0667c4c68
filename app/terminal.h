#pragma once

#include "core/units/result.h"

#include <QCommandLineParser>
#include <QString>
#include <QStringList>

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>

namespace pipwright::app {

/// The words of the command line; English, like its options.
QString tr(const char* text);

void say(const QString& line);      ///< a line on standard output
void complain(const QString& line); ///< a line on standard error
int fail(const Problem& problem);   ///< complains in full, gives kFailed
std::filesystem::path pathOf(const QString& argument);

/// Parses the arguments of a command and answers --help. Nothing when the command should go on,
/// else the exit code. `positional` is how many plain arguments it takes, at least and at most.
std::optional<int> parsed(QCommandLineParser& parser, const QString& command,
                          const QStringList& arguments, int least, int most);

/// Shows "reading: 37 %" on a terminal's standard error, nothing on a pipe. Never stops the work.
std::function<bool(std::int64_t, std::int64_t)> progressOn(const QString& word);

} // namespace pipwright::app
