#include "app/cli/commands.h"

#include "app/cli/command_list.h"

#include <QCoreApplication>
#include <QFile>
#include <QStandardPaths>

#include <algorithm>
#include <cstdio>

namespace laneward {

namespace {

using namespace cli;

struct Option {
    const char* name;
    const char* value;  ///< null = a switch
};

constexpr Option known[] = {{"centre", "FILE-OR-URL"},
                            {"now", "YYYY-MM-DDTHH:MM"},
                            {"format", "text|json|csv"},
                            {"from", "YYYY-MM-DD"},
                            {"days", "N"},
                            {"strict", nullptr},
                            {"date", "YYYY-MM-DD"},
                            {"pdf", "FILE"},
                            {"confirm", nullptr},
                            {"jobs", "FILE.ics"},
                            {"dry-run", nullptr},
                            {"kind", "KIND"},
                            {"mapping", "FILE.json"},
                            {"csv", "FILE"},
                            {"png", "FILE"},
                            {"machine", "NAME"},
                            {"lane", "N"},
                            {"until", "YYYY-MM-DD"},
                            {"due", nullptr},
                            {"supplier", "NAME"},
                            {"history", nullptr},
                            {"sure", nullptr},
                            {"help", nullptr},
                            {"version", nullptr}};

void addOptions(QCommandLineParser& parser) {
    for (const Option& option : known) {
        const QString name = QString::fromLatin1(option.name);
        const QStringList names = name == "help" ? QStringList{"h", name} : QStringList{name};
        parser.addOption(option.value ? QCommandLineOption(names, {}, QString::fromLatin1(option.value))
                                      : QCommandLineOption(names));
    }
}

QString defaultCentre() { return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + "/centre.laneward"; }

Outcome fillStart(Start& start, const QCommandLineParser& parser) {
    start.centreGiven = parser.isSet("centre");
    start.centre = start.centreGiven ? parser.value("centre") : defaultCentre();
    if (start.centre.isEmpty()) return wrongUsage("cli.missing-argument", "--centre", {QString("FILE-OR-URL")});
    if (!parser.isSet("now")) return Nothing{};
    const QDateTime now = QDateTime::fromString(parser.value("now"), "yyyy-MM-ddTHH:mm");
    if (!now.isValid()) return wrongUsage("cli.bad-time", parser.value("now"));
    start.now = LocalTime{now.date(), now.time()};
    return Nothing{};
}

Outcome checkOptions(const QCommandLineParser& parser, const Command& command) {
    for (const Option& option : known) {
        const QString name = QString::fromLatin1(option.name);
        if (!parser.isSet(name) || name == "centre" || name == "now" || command.options.contains(name)) continue;
        return wrongUsage("cli.option-not-here", "--" + name, {QString::fromLatin1(command.name)});
    }
    return Nothing{};
}

int statusOf(ErrorKind kind) {
    switch (kind) {
        case ErrorKind::Usage:
            return 2;
        case ErrorKind::Io:
        case ErrorKind::Invalid:
            return 3;
        case ErrorKind::Refused:
            return 4;
    }
    return 3;
}

int report(const Error& error, Streams& streams) {
    const Speech speech{QLocale(), Zone(), UnitSystem::Metric};
    streams.err.write(("laneward: " + text(error, speech) + "\n").toUtf8());
    return statusOf(error.kind);
}

const Command* find(const QString& name) {
    const std::span<const Command> all = commands();
    const auto found =
        std::find_if(all.begin(), all.end(), [&name](const Command& one) { return name == QLatin1String(one.name); });
    return found == all.end() ? nullptr : &*found;
}

int write(QIODevice& device, const QString& text) {
    device.write(text.toUtf8());
    return 0;
}

Status run(const Command& command, const QCommandLineParser& parser, const Start& start, Streams streams) {
    const Outcome options = checkOptions(parser, command);
    if (!options) return options.error();
    return command.run({QString::fromLatin1(command.name), parser.positionalArguments().mid(1), parser, start, streams});
}

}  // namespace

std::optional<int> runCommand(const QStringList& arguments, Start& start, Streams streams) {
    QCommandLineParser parser;
    addOptions(parser);
    if (!parser.parse(arguments)) return report(wrongUsage("cli.unknown-option", parser.errorText()), streams);
    const QStringList words = parser.positionalArguments();
    const Command* command = words.isEmpty() ? nullptr : find(words.first());
    if (parser.isSet("version")) return write(streams.out, "laneward " + QCoreApplication::applicationVersion() + "\n");
    if (parser.isSet("help") && (words.isEmpty() || command)) return write(streams.out, helpText(command));
    if (!words.isEmpty() && !command) return report(wrongUsage("cli.unknown-command", words.first()), streams);
    const Outcome filled = fillStart(start, parser);
    if (!filled) return report(filled.error(), streams);
    if (!command) {
        const Outcome options = checkOptions(parser, {"laneward", "", "", {}, nullptr});
        return options ? std::nullopt : std::optional<int>(report(options.error(), streams));
    }
    const Status status = run(*command, parser, start, streams);
    return status ? *status : report(status.error(), streams);
}

std::optional<int> runCommand(const QStringList& arguments, Start& start) {
    QFile out;
    QFile err;
    if (!out.open(stdout, QIODevice::WriteOnly) || !err.open(stderr, QIODevice::WriteOnly | QIODevice::Unbuffered)) return 3;
    const std::optional<int> status = runCommand(arguments, start, {out, err});
    return out.flush() ? status : 3;
}

bool needsNoWindow(const QStringList& arguments) {
    QCommandLineParser parser;
    addOptions(parser);
    return !parser.parse(arguments) || parser.isSet("help") || parser.isSet("version") || !parser.positionalArguments().isEmpty();
}

}  // namespace laneward
