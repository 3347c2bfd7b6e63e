// The command line: the same program without a window.
//
//     Start start;
//     if (const std::optional<int> status = runCommand(app.arguments(), start)) return *status;
//     openWindow(start);   // no command was given
//
// `sheet --pdf` and `film --png` need a QGuiApplication (for fonts); everything else works with a QCoreApplication. Exit status:
// 0 done, 1 bad news to act on, 2 wrong usage, 3 cannot read or write, 4 refused. Errors go to standard error, one line each.
#pragma once

#include "core/base/zone.h"

#include <QIODevice>
#include <QStringList>

#include <optional>

namespace laneward {

/// What the command line says about the window that is to open.
struct Start {
    QString centre;                ///< file or URL: --centre, or the default place
    bool centreGiven = false;      ///< by --centre
    std::optional<LocalTime> now;  ///< --now, in the centre's wall time; none = the system's clock
};

/// Where a command writes.
struct Streams {
    QIODevice& out;
    QIODevice& err;
};

/// `arguments` begin with the program's name. Nothing when no command was given.
std::optional<int> runCommand(const QStringList& arguments, Start& start, Streams streams);
/// On standard output and standard error.
std::optional<int> runCommand(const QStringList& arguments, Start& start);

/// Whether these arguments ask for a command, help or the version: then no display is needed.
bool needsNoWindow(const QStringList& arguments);

}  // namespace laneward
