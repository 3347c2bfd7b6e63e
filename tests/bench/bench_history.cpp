// Ten years of a large centre: 200,000 records are searched as one types, added up, written as CSV, made ready for paper, copied
// and sorted. Limits: 50 ms for a search, 200 ms for anything else.
#include "core/documents/history_list.h"
#include "core/documents/history_totals.h"
#include "tests/bench/ratio.h"

#include <array>

using namespace laneward;

namespace {

constexpr double searchMs = 50;
constexpr double reportMs = 200;
constexpr int runs = 110'000;
constexpr int levels = 40'000;
constexpr int services = 40'000;
constexpr int others = 2'500;  // incidents, notes, counters and movements each
constexpr Instant now{1'795'694'400};
constexpr int years = 10;

Speech speech() { return {QLocale(QLocale::German, QLocale::Germany), *Zone::load("Europe/London"), UnitSystem::Metric}; }

SeasonState centre() {
    SeasonState season;
    season.centre.facts.lanes = 48;
    season.centre.facts.settings.currency = "EUR";
    for (const char* name : {"Heron", "Egret", "Kingfisher", "Würger"}) {
        Machine machine;
        machine.id = {QString::fromUtf8(name).toLower()};
        machine.name = QString::fromUtf8(name);
        machine.conditioners = {"Quillmarsh Amber", ""};
        machine.cleaner = "Reed Clean";
        season.centre.machines.push_back(machine);
        for (const char* part : {"Cushion brush", "Buffer brush", "Squeegee", "Filter", "Düsen"}) {
            ServiceItem item{{machine.name + part}, machine.id, ItemKind::Other, QString::fromUtf8(part)};
            Duty duty{{item.id.value + "/clean"}, DutyKind::Clean, "Clean it and look for wear"};
            item.duties = {duty};
            season.items.push_back(item);
        }
    }
    for (const char* name : {"Ada Fenwick", "Ben Ólafsson", "Cleo Marsh", "Dora Jäger", "Emil Thorpe", "Finn Reed"})
        season.centre.people.push_back({{QString::fromUtf8(name).left(3)}, QString::fromUtf8(name)});
    for (int n = 0; n < 12; ++n) {
        Pattern pattern;
        pattern.id = {QString("p%1").arg(n)};
        pattern.name = QString("House %1").arg(n);
        season.patterns.push_back(pattern);
    }
    season.supplies = {Supply{{"blade"}, "Squeegee blade set", SupplyKind::Part}};
    season.offers = {Offer{{"o"}, {"s"}, {"blade"}, {}, Amount{1}, {{1, {48'00, "EUR"}}}}};
    return season;
}

Instant timeOf(int n, int of) { return now - Seconds{std::int64_t{years} * 365 * 86'400 / of * (of - n)}; }
OperationId id(const char* kind, int n) { return {QString("7b1f6c2e-%1-4d5e-%2").arg(kind).arg(n, 12, 10, QChar('0'))}; }

RunLog runAt(int n, const SeasonState& season) {
    RunLog run;
    run.id = id("0001", n);
    run.machine = season.centre.machines[size_t(n) % 4].id;
    run.person = season.centre.people[size_t(n) % 6].id;
    run.time = {timeOf(n, runs) - minutes(40), timeOf(n, runs)};
    run.pattern = season.patterns[size_t(n) % 12].id;
    for (int lane = 1; lane <= 12; ++lane)
        run.lanes.push_back({lane + n % 36, run.time});
    run.use.conditioner[0] = millilitres(280 + n % 40);
    run.use.cleaner = millilitres(1'900 + n % 300);
    run.use.laneRuns = 13;
    if (n % 50 == 0) run.note = "Stopped once, the cloth had run out on lane 14; started again after five minutes";
    if (n % 400 == 1) run.corrects = id("0001", n - 1);
    return run;
}

HistorySlice tenYears(const SeasonState& season) {
    HistorySlice slice;
    for (int n = 0; n < runs; ++n)
        slice.runs.push_back(runAt(n, season));
    for (int n = 0; n < levels; ++n) {
        LevelReading reading{id("0002", n), season.centre.people[size_t(n) % 6].id, {}, {}, {}};
        reading.levels.machine = season.centre.machines[size_t(n) % 4].id;
        reading.levels.at = timeOf(n, levels);
        reading.levels.conditioner[0] = millilitres(1'900);
        if (n % 2 == 0) reading.poured = Poured{};
        slice.readings.push_back(reading);
    }
    for (int n = 0; n < services; ++n) {
        const ServiceItem& item = season.items[size_t(n) % season.items.size()];
        ServiceRecord record{id("0003", n), timeOf(n, services), season.centre.people[size_t(n) % 6].id, item.id,
                             item.duties[0].id};
        record.meters.lanes = n;
        record.minutes = 15;
        if (n % 9 == 0) record.result = ServiceResult::Failed;
        if (n % 5 == 0) record.parts = {{{"blade"}, Amount{1}, "L7"}};
        record.finding = n % 3 == 0 ? "Bristles worn on the left, für die nächste Woche bestellt" : "";
        slice.services.push_back(record);
    }
    for (int n = 0; n < others; ++n) {
        const Instant at = timeOf(n, others);
        slice.incidents.push_back(
            {id("0004", n), IncidentKind(n % 5), at, 1 + n % 48, {}, {"Ada"}, "Ball stop by the pit, guest was told", {}});
        slice.handOvers.push_back(
            {id("0005", n), {}, at, {"Ben"}, "Lane 9 squeaks; call the fitter\nKeys are in the drawer", {}});
        slice.counters.push_back(
            {id("0006", n), at, {"Cle"}, season.centre.machines[size_t(n) % 4].id, MeterKind::Lanes, n * 40});
        Movement movement{id("0007", n), MovementKind::Received, at, {"Dor"}, "delivery", MovementSource::Order};
        movement.entries = {{{{"blade"}, {Place::Kind::Shelf}}, Amount{4}}};
        slice.movements.push_back(movement);
    }
    return slice;
}

const SeasonState& season() {
    static const SeasonState made = centre();
    return made;
}

const HistoryIndex& index() {
    static const HistoryIndex made(historyEntries(tenYears(season()), season(), speech()));
    return made;
}

HistoryQuery asked(const char* text) {
    HistoryQuery query;
    query.text = QString::fromUtf8(text);
    return query;
}

const std::vector<HistoryRow>& everything() {
    static const std::vector<HistoryRow> rows = [] {
        HistoryQuery all;
        all.withCorrected = true;
        return index().find(all);
    }();
    return rows;
}

/// What happens after a letter was typed: found, and added up.
void typed(benchmark::State& state, const char* text) {
    index();
    for (auto step : state) {
        const std::vector<HistoryRow> rows = index().find(asked(text));
        benchmark::DoNotOptimize(totalsOf(index(), rows));
    }
}

void searchOneLetter(benchmark::State& state) { typed(state, "e"); }
void searchTwoLetters(benchmark::State& state) { typed(state, "he"); }
void searchWord(benchmark::State& state) { typed(state, "brush"); }
void searchTwoWords(benchmark::State& state) { typed(state, "reed ada"); }
void searchThreeWords(benchmark::State& state) { typed(state, "würger nachste worn"); }
void searchNothing(benchmark::State& state) { typed(state, "qqzx"); }
void searchAll(benchmark::State& state) { typed(state, ""); }

void filtered(benchmark::State& state) {
    HistoryQuery query = asked("clean");
    query.machine = {"heron"};
    query.person = {"Ada"};
    query.product = "Reed Clean";
    query.lane = 20;
    for (auto step : state)
        benchmark::DoNotOptimize(index().find(query).size());
}

void figures(benchmark::State& state) {
    HistoryQuery query;
    query.item = season().items.front().id;
    for (auto step : state)
        benchmark::DoNotOptimize(*itemFigures(index(), query, season())->lanes);
}

void totals(benchmark::State& state) {
    for (auto step : state)
        benchmark::DoNotOptimize(totalsOf(index(), everything()));
}

void csv(benchmark::State& state) {
    for (auto step : state)
        benchmark::DoNotOptimize(historyListCsv({index(), everything()}, speech()).size());
}

void printModel(benchmark::State& state) {
    std::vector<HistoryColumn> columns;
    for (int column = 0; column < historyColumns; ++column)
        columns.push_back(HistoryColumn(column));
    for (auto step : state)
        benchmark::DoNotOptimize(historySheet({index(), everything()}, columns, HistoryCells("EUR", speech())).rowCount());
}

void copyText(benchmark::State& state) {
    for (auto step : state)
        benchmark::DoNotOptimize(historyListText({index(), everything()}, HistoryCells("EUR", speech())).size());
}

/// The first sort by a text puts all of them in order; every later one is quicker.
void sortByWords(benchmark::State& state) {
    for (auto step : state) {
        const HistoryIndex fresh = index();
        std::vector<HistoryRow> rows = everything();
        fresh.sort(rows, HistoryColumn::Words, true);
        benchmark::DoNotOptimize(rows.front());
    }
}

void sortByPerson(benchmark::State& state) {
    for (auto step : state) {
        std::vector<HistoryRow> rows = everything();
        index().sort(rows, HistoryColumn::Person, true);
        benchmark::DoNotOptimize(rows.front());
    }
}

void chain(benchmark::State& state) {
    const std::vector<HistoryRow> rows = index().find(asked("replaces"));
    for (auto step : state)
        benchmark::DoNotOptimize(index().chainOf(rows.at(rows.size() / 2)).size());
}

#define MEASURED(name) BENCHMARK(name)->Unit(benchmark::kMillisecond)->Repetitions(3)->ReportAggregatesOnly()
MEASURED(searchOneLetter);
MEASURED(searchTwoLetters);
MEASURED(searchWord);
MEASURED(searchTwoWords);
MEASURED(searchThreeWords);
MEASURED(searchNothing);
MEASURED(searchAll);
MEASURED(filtered);
MEASURED(figures);
MEASURED(totals);
MEASURED(csv);
MEASURED(printModel);
MEASURED(copyText);
MEASURED(sortByWords);
MEASURED(sortByPerson);
MEASURED(chain);

}  // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    bench::Times times;
    benchmark::RunSpecifiedBenchmarks(&times);
    std::printf("bench history: %zu entries, %zu found by 'brush', %zu by 'e'\n", index().size(),
                index().find(asked("brush")).size(), index().find(asked("e")).size());
    bool good = index().size() == 200'000;
    for (const char* name : {"searchOneLetter", "searchTwoLetters", "searchWord", "searchTwoWords", "searchThreeWords",
                             "searchNothing", "searchAll", "filtered"})
        good = bench::withinLimit(times, name, searchMs) && good;
    for (const char* name : {"figures", "totals", "csv", "printModel", "copyText", "sortByWords", "sortByPerson", "chain"})
        good = bench::withinLimit(times, name, reportMs) && good;
    return good ? 0 : 1;
}
