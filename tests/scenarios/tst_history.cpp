// The history of the demo centre: what is added up is what the raw records add up to.
#include "app/demo/demo_centre.h"
#include "core/documents/history_totals.h"
#include "core/season/event_costs.h"
#include "core/season/service_state.h"

#include <QTest>

using namespace laneward;

namespace {

constexpr Instant now{1'794'501'780};

Speech plain() { return {QLocale::c(), *Zone::load("Europe/London"), UnitSystem::Metric}; }

const CentreFile& demo() {
    static const CentreFile made = demoCentre(now);
    return made;
}

const HistoryIndex& index() {
    static const HistoryIndex made(historyEntries(demo().history, demo().season, plain()));
    return made;
}

/// By the records alone, one after another.
HistoryTotals plainTotals(const Span& time, const MachineId& machine) {
    const auto wanted = [&](const MachineId& of) { return machine.isEmpty() || of == machine; };
    HistoryTotals totals;
    for (const RunLog& run : standing(demo().history.runs)) {
        if (!time.contains(run.time.end) || !wanted(run.machine)) continue;
        ++totals.entries;
        ++totals.runs;
        totals.lanes += metersOf(run).lanes;
        for (const Microlitres used : run.use.conditioner)
            totals.conditioner += used;
        totals.cleaner += run.use.cleaner;
        totals.runMinutes += (run.time.end - run.time.begin).value / 60;
    }
    for (const ServiceRecord& record : standing(demo().history.services)) {
        const ServiceItem* item = findItem(demo().season.items, record.item);
        if (!time.contains(record.at) || !wanted(item ? item->machine : MachineId{})) continue;
        ++totals.entries;
        ++totals.services;
        totals.failures += record.result == ServiceResult::Failed;
        totals.serviceMinutes += record.minutes;
        totals.costMinor += record.cost.minor;
        for (const PartUsed& part : record.parts) {
            const auto price = unitPriceOf(demo().season.offers, part.supply);
            if (!price) continue;
            totals.partsMinor += costOf(part.amount, *price).minor;
            totals.costMinor += costOf(part.amount, *price).minor;
        }
    }
    for (const Incident& incident : standing(demo().history.incidents)) {
        const bool counts = time.contains(incident.at) && wanted(incident.machine);
        totals.incidents += counts && !incident.answers;  // a follow-up is none of its own
        totals.entries += counts;
    }
    return totals;
}

}  // namespace

class HistoryScenario : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void totalsAreThoseOfTheRecords_data();
    void totalsAreThoseOfTheRecords();
    void figuresAreThoseOfTheRecords();
    void everyRecordOfPeopleIsListed();
};

void HistoryScenario::totalsAreThoseOfTheRecords_data() {
    QTest::addColumn<qint64>("daysBack");
    QTest::addColumn<QString>("machine");
    QTest::newRow("a year") << qint64{400} << QString();
    QTest::newRow("a month") << qint64{30} << QString();
    for (const Machine& machine : demo().season.centre.machines)
        QTest::newRow(qPrintable(machine.name)) << qint64{200} << machine.id.value;
}

void HistoryScenario::totalsAreThoseOfTheRecords() {
    QFETCH(qint64, daysBack);
    QFETCH(QString, machine);
    HistoryQuery query;
    query.time = {now - hours(24 * daysBack), now};
    query.machine = {machine};
    HistoryTotals totals;
    for (const HistoryKind kind : {HistoryKind::Run, HistoryKind::Service, HistoryKind::Incident}) {
        query.kind = kind;
        const HistoryTotals some = totalsOf(index(), index().find(query));
        totals.entries += some.entries;
        totals.incidents += some.incidents;
        totals.runs += some.runs;
        totals.lanes += some.lanes;
        totals.conditioner += some.conditioner;
        totals.cleaner += some.cleaner;
        totals.runMinutes += some.runMinutes;
        totals.services += some.services;
        totals.failures += some.failures;
        totals.serviceMinutes += some.serviceMinutes;
        totals.costMinor += some.costMinor;
        totals.partsMinor += some.partsMinor;
    }
    const HistoryTotals expected = plainTotals(query.time, query.machine);
    QVERIFY(totals == expected);
    QVERIFY(expected.runs > 5 && expected.conditioner.value > 0);
}

void HistoryScenario::figuresAreThoseOfTheRecords() {
    for (const ServiceItem& item : demo().season.items) {
        HistoryQuery query;
        query.item = item.id;
        query.time = {now - hours(24 * 300), now};
        const auto figures = itemFigures(index(), query, demo().season);
        QVERIFY(figures);
        QCOMPARE(figures->lanes.has_value(), !item.machine.isEmpty());
        std::int64_t failures = 0;
        for (const ServiceRecord& record : standing(demo().history.services))
            failures += record.item == item.id && record.result == ServiceResult::Failed && query.time.contains(record.at);
        QCOMPARE(figures->failures, failures);
        if (figures->lanes) QCOMPARE(*figures->lanes, plainTotals(query.time, item.machine).lanes);
    }
}

void HistoryScenario::everyRecordOfPeopleIsListed() {
    size_t expected = standing(demo().history.runs).size() + standing(demo().history.readings).size() +
                      standing(demo().history.services).size() + standing(demo().history.packReadings).size() +
                      standing(demo().history.counters).size() + standing(demo().history.incidents).size() +
                      standing(demo().history.handOvers).size() + standing(demo().history.tapes).size() +
                      standing(demo().history.inspections).size() + standing(demo().history.counts).size();
    HistoryQuery query;
    size_t listed = index().find(query).size();
    query.kind = HistoryKind::Stock;
    listed -= index().find(query).size();
    QCOMPARE(listed, expected);
    QVERIFY(listed > 800);
}

QTEST_GUILESS_MAIN(HistoryScenario)
#include "tst_history.moc"
