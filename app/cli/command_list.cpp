#include "app/cli/command_list.h"

#include <QCoreApplication>

#include <algorithm>
#include <string_view>

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

/// What is asked of a centre.
std::vector<Command> answers() {
    return {
        {"check", "[--format text|json]", QT_TRANSLATE_NOOP("cli", "checks the integrity of the centre"), {"format"}, check},
        {"events",
         "[--from YYYY-MM-DD] [--days N] [--format text|json|csv]",
         QT_TRANSLATE_NOOP("cli", "every event with its lanes and what it asks of them"),
         {"format", "from", "days"},
         events},
        {"film",
         "PATTERN [--machine NAME] [--lane N] [--csv FILE] [--png FILE] [--format text|json|csv]",
         QT_TRANSLATE_NOOP("cli", "volumes and film of a pattern; --lane N shows the Nth lane of a clean brush"),
         {"format", "machine", "lane", "csv", "png"},
         film},
        {"plan",
         "[--from YYYY-MM-DD] [--days N] [--strict] [--kind jobs|costs|staff-hours] [--pdf FILE] [--format text|json|csv]",
         QT_TRANSLATE_NOOP("cli", "the jobs, their reasons, and what cannot be met; or what events cost, or staff hours (--pdf)"),
         {"format", "from", "days", "strict", "kind", "pdf"},
         plan},
        {"forecast",
         "[--until YYYY-MM-DD] [--due] [--format text|json|csv]",
         QT_TRANSLATE_NOOP(
             "cli",
             "stock, when it runs out and what to order by when; --due says only what is due, exit status 1 when an order is. "
             "Keeps the forecast of today to score it later, once a day and not with --now"),
         {"format", "until", "due"},
         forecast},
        {"order",
         "[--supplier NAME] [--until YYYY-MM-DD] [--pdf FILE] [--format text|json]",
         QT_TRANSLATE_NOOP("cli", "the orders that are proposed next, and why"),
         {"format", "supplier", "until", "pdf"},
         order},
        {"service",
         "[--until YYYY-MM-DD] [--pdf FILE] [--history] [--format text|json|csv]",
         QT_TRANSLATE_NOOP("cli", "what falls due and when it fits; --pdf writes one page for the wall; --history what was done"),
         {"format", "until", "pdf", "history"},
         service},
        {"sheet",
         "[--date YYYY-MM-DD] [--pdf FILE] [--confirm] [--format text|json|csv]",
         QT_TRANSLATE_NOOP("cli", "the day's job sheet; --confirm stores its jobs with a plan version"),
         {"format", "date", "pdf", "confirm"},
         sheet},
    };
}

/// What makes, fills, copies or changes one.
std::vector<Command> deeds() {
    return {
        {"backup", "DIR", QT_TRANSLATE_NOOP("cli", "writes a verified copy of the centre into the folder"), {}, backup},
        {"demo", "", QT_TRANSLATE_NOOP("cli", "creates the demo centre in the new file named by --centre"), {}, demo},
        {"export",
         "FILE.json | FILE.ics | FILE.csv --kind KIND [--supplier NAME] | --jobs FILE.ics [--from YYYY-MM-DD] [--days N]",
         QT_TRANSLATE_NOOP("cli",
                           "the whole centre, one kind of its rows (series, strokes, readings, inspections, stock, prices of one "
                           "supplier), or its jobs as a calendar"),
         {"kind", "supplier", "jobs", "from", "days"},
         exportFile},
        {"import",
         "FILE.json | FILE.ics | FILE.csv --kind KIND [--mapping FILE.json] [--dry-run] [--sure]",
         QT_TRANSLATE_NOOP("cli",
                           "reads a whole centre, or rows of one kind into it (series, strokes, readings, inspections, stock, "
                           "prices); all or nothing; --sure takes amounts and prices that are far from what is known"),
         {"kind", "mapping", "dry-run", "sure"},
         importFile},
        {"record",
         "FILE.json [--dry-run] [--sure]",
         QT_TRANSLATE_NOOP("cli", "appends what was done; --sure keeps counts that are far from what the ledger has"),
         {"dry-run", "sure"},
         record},
        {"restore",
         "FILE",
         QT_TRANSLATE_NOOP("cli", "puts a backup in place of the centre; the replaced file is kept"),
         {},
         restore},
    };
}

}  // namespace

std::span<const Command> commands() {
    static const std::vector<Command> all = [] {
        std::vector<Command> both = answers();
        for (Command& deed : deeds())
            both.push_back(std::move(deed));
        std::sort(both.begin(), both.end(), [](const Command& a, const Command& b) { return std::string_view(a.name) < b.name; });
        return both;
    }();
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
