#include "app/cli/command_list.h"
#include "app/paper/service_painter.h"
#include "core/documents/service_words.h"

#include <algorithm>

namespace laneward::cli {

namespace {

constexpr int usualDays = 28;
constexpr int mostDays = 366;

Status dueList(const Call& call, const Loaded& loaded, const QString& format) {
    const SeasonState& season = loaded.season;
    const QDate today = dateOf(season.centre, loaded.now);
    const Result<QDate> until = dateOption(call, "until", today.addDays(usualDays - 1));
    if (!until) return until.error();
    const qint64 days = today.daysTo(*until) + 1;
    if (days < 1 || days > mostDays) return wrongUsage("cli.bad-until", until->toString(Qt::ISODate), {std::int64_t{mostDays}});
    const Plan ahead = laneward::plan(planningState(season, loaded.now), loaded.now, {today, *until});
    ServiceRule rule;
    rule.visitDays = std::min(rule.visitDays, int(days));
    const ServiceOutlook outlook = serviceOutlook({season, ahead, loaded.now}, rule);
    const PackOutlook packs = packOutlook(season, ahead, loaded.now);
    const ServiceList list{outlook, season, *until, packs, wasteOutlook(season, ahead, loaded.now)};
    if (call.options.isSet("pdf")) {
        const bool letter = season.centre.facts.settings.letterPaper;
        const Outcome written =
            writeServicePdf(call.options.value("pdf"), list, loaded.speech, letter ? PaperSize::Letter : PaperSize::A4);
        if (!written) return written.error();
        if (!call.options.isSet("format")) return 0;
    }
    if (format == "json")
        print(call, serviceJson(list, loaded.speech));
    else if (format == "csv")
        print(call, serviceCsv(list));
    else
        print(call, serviceText(list, loaded.speech));
    return 0;
}

/// All records that stand, up to the end of --until.
Status history(const Call& call, const Loaded& loaded, const QString& format) {
    if (call.options.isSet("pdf")) return wrongUsage("cli.option-not-here", "--pdf", {QString("service --history")});
    const SeasonState& season = loaded.season;
    const Result<QDate> until = dateOption(call, "until", dateOf(season.centre, loaded.now));
    if (!until) return until.error();
    Result<std::vector<ServiceRecord>> all = loaded.store->services(allRecords);
    if (!all) return all.error();
    std::vector<ServiceRecord> records = standing(*std::move(all));
    const Instant end = dayOf(season.centre, *until).end;
    std::erase_if(records, [end](const ServiceRecord& record) { return record.at >= end; });
    if (format == "json")
        print(call, historyJson(records, season, loaded.speech));
    else if (format == "csv")
        print(call, historyCsv(records, season, loaded.speech));
    else
        print(call, historyText(records, season, loaded.speech));
    return 0;
}

}  // namespace

Status service(const Call& call) {
    const Outcome arguments = noArguments(call);
    if (!arguments) return arguments.error();
    const Result<QString> format = formatOf(call, {"text", "json", "csv"});
    if (!format) return format.error();
    const Result<Loaded> loaded = load(call, Access::ReadOnly);
    if (!loaded) return loaded.error();
    return call.options.isSet("history") ? history(call, *loaded, *format) : dueList(call, *loaded, *format);
}

}  // namespace laneward::cli
