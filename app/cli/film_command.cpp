#include "app/cli/command_list.h"
#include "app/widgets/film_painter.h"
#include "core/documents/film_words.h"

#include <algorithm>

namespace laneward::cli {

namespace {

constexpr int mostLanes = 10'000;  // of a run: as far in as any reading may be

template <class Row>
const Row* namedRow(const std::vector<Row>& rows, const QString& name) {
    const auto found =
        std::find_if(rows.begin(), rows.end(), [&](const Row& row) { return row.name == name || row.id.value == name; });
    return found == rows.end() ? nullptr : &*found;
}

/// The machine of --machine; without, the first that may run the pattern. None when the centre has no such machine.
Result<const Machine*> machineFor(const Call& call, const Centre& centre, const Pattern& pattern) {
    if (call.options.isSet("machine")) {
        const QString name = call.options.value("machine");
        const Machine* machine = namedRow(centre.machines, name);
        if (!machine) return wrongUsage("cli.machine-unknown", name);
        return machine;
    }
    const auto may = [&pattern](const Machine& machine) {
        const std::vector<PatternId>& barred = machine.bars.patterns;
        return std::find(barred.begin(), barred.end(), pattern.id) == barred.end();
    };
    const auto found = std::find_if(centre.machines.begin(), centre.machines.end(), may);
    return found == centre.machines.end() ? nullptr : &*found;
}

Result<int> laneOf(const Call& call) {
    if (!call.options.isSet("lane")) return 0;
    bool good = false;
    const int lane = call.options.value("lane").toInt(&good);
    if (!good || lane < 1 || lane > mostLanes) {
        return wrongUsage("cli.bad-lane", call.options.value("lane"), {std::int64_t{mostLanes}});
    }
    return lane;
}

Result<FilmPage> filmPage(const Call& call, const SeasonState& season) {
    const Result<QString> name = onlyArgument(call, "PATTERN");
    if (!name) return name.error();
    const Pattern* pattern = namedRow(season.patterns, *name);
    if (!pattern) return wrongUsage("cli.pattern-unknown", *name);
    const Result<const Machine*> machine = machineFor(call, season.centre, *pattern);
    if (!machine) return machine.error();
    const Result<int> lane = laneOf(call);
    if (!lane) return lane.error();
    FilmPage page;
    page.pattern = *pattern;
    page.machine = *machine ? (*machine)->name : QString();
    page.brush = {*machine ? (*machine)->carryLength : Micrometres{0}, *lane};
    page.film = laneward::film(page.pattern, page.brush);
    return page;
}

Outcome writeFiles(const Call& call, const FilmPage& page, const Speech& speech) {
    for (const char* option : {"csv", "png"}) {
        if (!call.options.isSet(option)) continue;
        const bool png = option == QLatin1String("png");
        const QByteArray bytes = png ? filmPng(page.film, shown(page.pattern.name), speech) : filmCsv(page.film);
        const Outcome written = writeFile(call.options.value(option), bytes);
        if (!written) return written;
    }
    return Nothing{};
}

}  // namespace

Status film(const Call& call) {
    const Result<QString> format = formatOf(call, {"text", "json", "csv"});
    if (!format) return format.error();
    const Result<Loaded> loaded = load(call, Access::ReadOnly);
    if (!loaded) return loaded.error();
    const Result<FilmPage> page = filmPage(call, loaded->season);
    if (!page) return page.error();
    const Outcome written = writeFiles(call, *page, loaded->speech);
    if (!written) return written.error();
    if (*format == "json") {
        print(call, filmJson(*page));
    } else if (*format == "csv") {
        print(call, filmCsv(page->film));
    } else if (call.options.isSet("format") || !(call.options.isSet("csv") || call.options.isSet("png"))) {
        print(call, filmText(*page, loaded->speech));
    }
    return 0;
}

}  // namespace laneward::cli
