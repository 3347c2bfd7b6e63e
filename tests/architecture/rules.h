// The rules of the house as functions on text, so that each can be shown a planted fault.
#pragma once

#include <QHash>
#include <QRegularExpression>
#include <QSet>
#include <QString>
#include <QStringList>

namespace rules {

/// Folder of a source file as a room: "core/planning", "app/pages/today", "app" for app/main.cpp.
inline QString roomOf(const QString& path) { return path.left(path.lastIndexOf('/')); }

/// What each room of the core may include besides itself.
inline const QHash<QString, QStringList>& coreMayUse() {
    static const QStringList toCentre{"core/base", "core/statistics", "core/centre"};
    static const QStringList toPlanning = toCentre + QStringList{"core/calendar", "core/patterns", "core/planning"};
    static const QHash<QString, QStringList> rooms{
        {"core/base", {}},
        {"core/statistics", {"core/base"}},
        {"core/centre", {"core/base", "core/statistics"}},
        {"core/calendar", toCentre},
        {"core/patterns", toCentre},
        {"core/planning", toPlanning},
        {"core/supplies", toCentre},
        {"core/service", toPlanning},
        {"core/season", toPlanning + QStringList{"core/supplies", "core/service"}},
        {"core/documents", toPlanning + QStringList{"core/supplies", "core/service", "core/season"}},
        {"core/storage", toPlanning + QStringList{"core/supplies", "core/service", "core/season", "core/documents"}},
    };
    return rooms;
}

inline QStringList includesOf(const QString& text) {
    static const QRegularExpression include("^\\s*#include\\s+[\"<]([^\">]+)[\">]", QRegularExpression::MultilineOption);
    QStringList names;
    for (auto it = include.globalMatch(text); it.hasNext();)
        names << it.next().captured(1);
    return names;
}

/// Includes that point the wrong way.
inline QStringList wrongIncludes(const QString& path, const QString& text) {
    QStringList wrong;
    const QString room = roomOf(path);
    for (const QString& name : includesOf(text)) {
        if (!name.startsWith("core/") && !name.startsWith("app/")) continue;
        const QString other = roomOf(name);
        const bool upwards =
            room.startsWith("core/") && (name.startsWith("app/") || (other != room && !coreMayUse()[room].contains(other)));
        const bool sideways = room.startsWith("app/pages/") && other.startsWith("app/pages/") && other != room;
        if (upwards || sideways) wrong << path + " includes " + name;
    }
    return wrong;
}

/// Types of the screen, which the core must not know, and Qt Sql outside the room that may use it.
inline QStringList wrongQtIncludes(const QString& path, const QString& text) {
    static const QSet<QString> screen{"QColor",   "QFont",   "QIcon",        "QImage",       "QPainter",        "QPixmap",
                                      "QPalette", "QWidget", "QWindow",      "QApplication", "QGuiApplication", "QAction",
                                      "QPen",     "QBrush",  "QKeySequence", "QPdfWriter"};
    static const QSet<QString> umbrellas{"QtCore", "QtGui", "QtWidgets", "QtSql", "QtTest", "QtCharts"};
    QStringList wrong;
    for (const QString& name : includesOf(text)) {
        const bool gui =
            path.startsWith("core/") && (screen.contains(name) || name.startsWith("QtWidgets/") || name.startsWith("QtGui/"));
        const bool sql = name.startsWith("QSql") && !path.startsWith("core/storage/") && !path.startsWith("tests/");
        if (gui || sql || umbrellas.contains(name.section('/', -1))) wrong << path + " includes <" + name + ">";
    }
    return wrong;
}

/// Lines that a rule of faults.md or look.md forbids.
inline QStringList forbiddenLines(const QString& path, const QString& text) {
    struct Ban {
        QRegularExpression pattern;
        QString where;   ///< path prefix
        QString except;  ///< file that may
        QString why;
    };
    static const QList<Ban> bans{
        {QRegularExpression("\\.transaction\\(\\)"), "", "core/storage/database.cpp",
         "the raw BEGIN of QSqlDatabase; use Transaction"},
        {QRegularExpression("(exec|prepare)\\([^;]*(\\.arg\\(|\"\\s*\\+|\\+\\s*\")"), "", "",
         "SQL put together from text; bind values"},
        {QRegularExpression("QMessageBox::question"), "app/", "", "a question where undo serves"},
        {QRegularExpression("QColor\\(\\s*(\\d|\"#|Qt::)|Qt::(red|green|blue|yellow|black|white|gray|darkRed)\\b"), "app/pages/",
         "", "a fixed colour"},
        {QRegularExpression("QColor\\(\\s*(\\d|\"#)"), "app/widgets/", "", "a fixed colour"},
        {QRegularExpression("\\b(TODO|FIXME|XXX|HACK)\\b"), "", "", "unfinished work"},
        {QRegularExpression("\\binstance\\(\\)"), "core/", "", "a singleton"},
        {QRegularExpression("currentDateTime|currentDate\\(|currentSecsSinceEpoch|currentMSecs"), "core/", "core/base/clock.h",
         "the clock is passed in"},
        {QRegularExpression("QTest::(qSleep|qWait\\(\\s*\\d{3,})"), "", "", "a sleep"},
    };
    QStringList found;
    int number = 0;
    for (const QString& line : text.split('\n')) {
        ++number;
        for (const Ban& ban : bans) {
            if (path.startsWith(ban.where) && path != ban.except && ban.pattern.match(line).hasMatch()) {
                found << QString("%1:%2: %3").arg(path).arg(number).arg(ban.why);
            }
        }
    }
    return found;
}

/// Too many lines for one reader: 400 in a .cpp, 200 in a header.
inline QStringList tooLong(const QString& path, const QString& text) {
    const int limit = path.endsWith(".h") ? 200 : 400;
    const int lines = int(text.count('\n'));
    return lines > limit ? QStringList{QString("%1 has %2 lines").arg(path).arg(lines)} : QStringList{};
}

/// Functions longer than 60 lines, by the way clang-format lays out braces.
inline QStringList longFunctions(const QString& path, const QString& text) {
    static const QRegularExpression opens("^[A-Za-z~].*\\)( const)?( override)?( noexcept)?(\\s*:.*)? \\{$|^    : .* \\{$");
    QStringList found;
    int start = 0;
    int number = 0;
    for (const QString& line : text.split('\n')) {
        ++number;
        if (opens.match(line).hasMatch()) start = number;
        if (line == "}" && start > 0) {
            if (number - start > 60) found << QString("%1:%2 is %3 lines long").arg(path).arg(start).arg(number - start);
            start = 0;
        }
    }
    return found;
}

}  // namespace rules
