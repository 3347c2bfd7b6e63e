#include "app/cli/command_list.h"
#include "app/paper/staff_painter.h"
#include "core/documents/cost_words.h"
#include "core/documents/season_words.h"
#include "core/documents/staff_words.h"
#include "core/documents/writers.h"

namespace laneward::cli {

namespace {

constexpr int longestListed = 31;  // days; beyond that text sums up the season, and JSON and CSV have every job

/// What is wrong stays in sight, however long the range.
QString seasonPage(const Plan& made, const State& state, const Speech& speech) {
    Plan wrong = made;
    wrong.days.clear();
    for (const DayPlan& day : made.days) {
        if (day.objective.unmet > 0 || day.objective.late_s > 0) wrong.days.push_back(day);
    }
    return seasonText(seasonFigures(state, made), speech) + u'\n' + planText(wrong, state, speech);
}

/// What the rows of text and CSV are; JSON has all.
enum class Rows { Jobs, Costs, StaffHours };

Result<Rows> rowsOf(const Call& call) {
    const QString kind = call.options.isSet("kind") ? call.options.value("kind") : QString("jobs");
    const qsizetype known = QStringList{"jobs", "costs", "staff-hours"}.indexOf(kind);
    if (known < 0) return wrongUsage("cli.unknown-rows", kind);
    if (call.options.isSet("pdf") && Rows(known) != Rows::StaffHours) return wrongUsage("cli.pdf-of-staff-hours", {});
    return Rows(known);
}

void printJson(const Call& call, const Plan& made, const State& state, const Loaded& loaded) {
    QJsonObject json = planJson(made, state, loaded.speech);
    json["season"] = seasonJson(seasonFigures(state, made));
    json["costs"] = costsJson(eventCosts(loaded.season, made), loaded.season, loaded.speech);
    json["staff_hours"] = staffJson(staffHours(loaded.season, made), loaded.speech);
    print(call, json);
}

void printCosts(const Call& call, const Plan& made, const Loaded& loaded, bool csv) {
    const EventCosts costs = eventCosts(loaded.season, made);
    if (csv)
        print(call, costsCsv(costs, loaded.season, loaded.speech));
    else
        print(call, costsText(costs, loaded.season, loaded.speech));
}

Outcome printStaffHours(const Call& call, const Plan& made, const Loaded& loaded, bool csv) {
    const std::vector<StaffWeek> weeks = staffHours(loaded.season, made);
    if (csv)
        print(call, staffCsv(weeks, loaded.speech));
    else if (call.options.isSet("format") || !call.options.isSet("pdf"))
        print(call, staffText(weeks, loaded.speech));
    if (!call.options.isSet("pdf")) return Nothing{};
    const CentreFacts& facts = loaded.season.centre.facts;
    return writeStaffHoursPdf(call.options.value("pdf"), {facts.name, loaded.now, weeks}, loaded.speech,
                              facts.settings.letterPaper ? PaperSize::Letter : PaperSize::A4);
}

}  // namespace

Status plan(const Call& call) {
    const Outcome arguments = noArguments(call);
    if (!arguments) return arguments.error();
    const Result<QString> format = formatOf(call, {"text", "json", "csv"});
    if (!format) return format.error();
    const Result<Rows> rows = rowsOf(call);
    if (!rows) return rows.error();
    const Result<Loaded> loaded = load(call, Access::ReadOnly);
    if (!loaded) return loaded.error();
    const Result<DateRange> range = rangeOf(call, dateOf(loaded->season.centre, loaded->now), 1);
    if (!range) return range.error();
    const State state = planningState(loaded->season, loaded->now);
    const Plan made = laneward::plan(state, loaded->now, *range);
    const bool csv = *format == "csv";
    if (*format == "json") {
        printJson(call, made, state, *loaded);
    } else if (*rows == Rows::Costs) {
        printCosts(call, made, *loaded, csv);
    } else if (*rows == Rows::StaffHours) {
        if (const Outcome printed = printStaffHours(call, made, *loaded, csv); !printed) return printed.error();
    } else if (csv) {
        print(call, planCsv(made, loaded->speech));
    } else if (range->days() > longestListed) {
        print(call, seasonPage(made, state, loaded->speech));
    } else {
        print(call, planText(made, state, loaded->speech));
    }
    return call.options.isSet("strict") && !made.unmet.empty() ? 1 : 0;
}

}  // namespace laneward::cli
