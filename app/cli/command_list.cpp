#include "app/cli/command_list.h"

#include <QCoreApplication>

namespace laneward::cli {

namespace {

QString say(const char* source) { return QCoreApplication::translate("cli", source); }

QString lineOf(const Command& command) {
    const QString left = QString("  %1 %2").arg(command.name, command.usage);
    return left + "\n" + QString(6, ' ') + say(command.purpose) + "\n";
}

QString common() {
    return "\n" + say(QT_TRANSLATE_NOOP("cli", "Common options:")) + "\n" + QString("  --centre FILE-OR-URL\n      ") +
           say(QT_TRANSLATE_NOOP("cli",
                                 "a centre's file, or postgresql://user@host/database; passwords come from libpq's places")) +
           "\n  --now YYYY-MM-DDTHH:MM\n      " + say(QT_TRANSLATE_NOOP("cli", "fixes the clock, in the centre's wall time")) +
           "\n  --help, --version\n\n" +
           say(QT_TRANSLATE_NOOP("cli",
                                 "Exit status: 0 done; 1 bad news to act on (unmet or late demands with plan --strict, faults in "
                                 "check); 2 wrong usage; 3 cannot read or write; 4 refused.")) +
           "\n";
}

}  // namespace

std::span<const Command> commands() {
    static const std::vector<Command> all{
        {"backup", "DIR", QT_TRANSLATE_NOOP("cli", "writes a verified copy of the centre into the folder"), {}, backup},
        {"check", "[--format text|json]", QT_TRANSLATE_NOOP("cli", "checks the integrity of the centre"), {"format"}, check},
        {"demo", "", QT_TRANSLATE_NOOP("cli", "creates the demo centre in the new file named by --centre"), {}, demo},
        {"events",
         "[--from YYYY-MM-DD] [--days N] [--format text|json|csv]",
         QT_TRANSLATE_NOOP("cli", "every event with its lanes and what it asks of them"),
         {"format", "from", "days"},
         events},
        {"export",
         "FILE.json | FILE.ics | FILE.csv --kind KIND | --jobs FILE.ics [--from YYYY-MM-DD] [--days N]",
         QT_TRANSLATE_NOOP(
             "cli", "the whole centre, one kind of its rows (series, strokes, readings, inspections), or its jobs as a calendar"),
         {"kind", "jobs", "from", "days"},
         exportFile},
        {"film",
         "PATTERN [--machine NAME] [--lane N] [--csv FILE] [--png FILE] [--format text|json|csv]",
         QT_TRANSLATE_NOOP("cli", "volumes and film of a pattern; --lane N shows the Nth lane of a clean brush"),
         {"format", "machine", "lane", "csv", "png"},
         film},
        {"import",
         "FILE.json | FILE.ics | FILE.csv --kind KIND [--mapping FILE.json] [--dry-run]",
         QT_TRANSLATE_NOOP(
             "cli", "reads a whole centre, or rows of one kind into it (series, strokes, readings, inspections); all or nothing"),
         {"kind", "mapping", "dry-run"},
         importFile},
        {"plan",
         "[--from YYYY-MM-DD] [--days N] [--strict] [--format text|json|csv]",
         QT_TRANSLATE_NOOP("cli", "the jobs, their reasons, and what cannot be met"),
         {"format", "from", "days", "strict"},
         plan},
        {"record", "FILE.json [--dry-run]", QT_TRANSLATE_NOOP("cli", "appends what was done"), {"dry-run"}, record},
        {"restore",
         "FILE",
         QT_TRANSLATE_NOOP("cli", "puts a backup in place of the centre; the replaced file is kept"),
         {},
         restore},
        {"sheet",
         "[--date YYYY-MM-DD] [--pdf FILE] [--confirm] [--format text|json|csv]",
         QT_TRANSLATE_NOOP("cli", "the day's job sheet; --confirm stores its jobs with a plan version"),
         {"format", "date", "pdf", "confirm"},
         sheet},
    };
    return all;
}

QString helpText(const Command* command) {
    QString text = QString("laneward [--centre FILE-OR-URL] [") + say(QT_TRANSLATE_NOOP("cli", "COMMAND")) + "] [" +
                   say(QT_TRANSLATE_NOOP("cli", "options")) + "]\n\n";
    if (command) return text + lineOf(*command) + common();
    text += say(QT_TRANSLATE_NOOP("cli", "Lane care for bowling centres. Without a command the window opens.")) + "\n\n" +
            say(QT_TRANSLATE_NOOP("cli", "Commands:")) + "\n";
    for (const Command& one : commands())
        text += lineOf(one);
    return text + common();
}

}  // namespace laneward::cli
