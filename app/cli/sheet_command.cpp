#include "app/cli/command_list.h"
#include "app/paper/sheet_painter.h"
#include "core/documents/writers.h"
#include "core/season/recording.h"

#include <QUuid>

namespace laneward::cli {

namespace {

/// The plan from today on, so that what is done before `date` counts; a past day is looked at as it began.
Plan planFor(const Loaded& loaded, QDate date) {
    const QDate today = dateOf(loaded.season.centre, loaded.now);
    const Instant at = date < today ? dayOf(loaded.season.centre, date).begin : loaded.now;
    return laneward::plan(planningState(loaded.season, at), at, {std::min(today, date), date});
}

/// Confirms the proposed jobs of a day under the next plan version.
Outcome confirm(Loaded& loaded, const Plan& plan, QDate date) {
    const int version = planVersionOf(loaded.season, date) + 1;
    Edit edit;
    edit.id = {QUuid::createUuid().toString(QUuid::WithoutBraces)};
    edit.at = loaded.now;
    edit.name = "Confirm " + date.toString(Qt::ISODate);
    for (const Job& job : plan.jobs) {
        if (job.date != date || job.state != JobState::Proposed) continue;
        const JobId id{QUuid::createUuid().toString(QUuid::WithoutBraces)};
        edit.changes.push_back(RowChange<Job>{std::nullopt, confirmedAs(job, id, version, {})});
    }
    if (edit.changes.empty()) return Nothing{};
    const Result<Edit> applied = loaded.store->apply(edit);
    if (!applied) return applied.error();
    Result<SeasonState> season = loaded.store->load(loaded.now);
    if (!season) return season.error();
    loaded.season = std::move(*season);
    return Nothing{};
}

void printSheet(const Call& call, const JobSheet& sheet, const Speech& speech, const QString& format) {
    if (format == "json") {
        print(call, sheetJson(sheet, speech));
    } else if (format == "csv") {
        print(call, sheetCsv(sheet, speech));
    } else {
        print(call, sheetText(sheet, speech));
    }
}

}  // namespace

Status sheet(const Call& call) {
    const Outcome arguments = noArguments(call);
    if (!arguments) return arguments.error();
    const Result<QString> format = formatOf(call, {"text", "json", "csv"});
    if (!format) return format.error();
    const bool confirms = call.options.isSet("confirm");
    Result<Loaded> loaded = load(call, confirms ? Access::ReadWrite : Access::ReadOnly);
    if (!loaded) return loaded.error();
    const Result<QDate> date = dateOption(call, "date", dateOf(loaded->season.centre, loaded->now));
    if (!date) return date.error();
    Plan plan = planFor(*loaded, *date);
    if (confirms) {
        const Outcome confirmed = confirm(*loaded, plan, *date);
        if (!confirmed) return confirmed.error();
        plan = planFor(*loaded, *date);
    }
    const JobSheet made = jobSheet(loaded->season, plan, *date, loaded->now);
    if (!call.options.isSet("pdf")) {
        printSheet(call, made, loaded->speech, *format);
        return 0;
    }
    const PaperSize size = loaded->season.centre.facts.settings.letterPaper ? PaperSize::Letter : PaperSize::A4;
    const Outcome written = writeSheetPdf(call.options.value("pdf"), made, loaded->speech, size);
    if (!written) return written.error();
    return 0;
}

}  // namespace laneward::cli
