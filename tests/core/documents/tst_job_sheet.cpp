#include "core/documents/cautions.h"
#include "core/documents/job_sheet.h"
#include "core/documents/sheet_words.h"
#include "core/documents/writers.h"
#include "tests/support/hand_made.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QTest>

using namespace laneward;
using namespace support;

namespace {

Speech plain() { return {QLocale::c(), *Zone::load("Europe/London"), UnitSystem::Metric}; }

JobSheet handSheet() { return jobSheet(handSeason(), handPlan(), QDate(2026, 11, 12), handAt(15, 0)); }

State handState() {
    State state;
    state.centre = handSeason().centre;
    state.patterns = handSeason().patterns;
    return state;
}

/// Compares with a kept file; with LANEWARD_KEEP set, keeps what was made instead and fails.
void compareWithKept(const QByteArray& made, const QString& name) {
    const QString path = qEnvironmentVariable("LANEWARD_SOURCE") + "/tests/core/documents/kept/" + name;
    QFile file(path);
    if (qEnvironmentVariableIsSet("LANEWARD_KEEP")) {
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(made);
        QFAIL("kept anew: look at it");
    }
    QVERIFY2(file.open(QIODevice::ReadOnly), qPrintable(path));
    const QByteArrayList expected = file.readAll().split('\n');
    const QByteArrayList lines = made.split('\n');
    for (qsizetype n = 0; n < qMin(lines.size(), expected.size()); ++n)
        QCOMPARE(lines[n], expected[n]);
    QCOMPARE(lines.size(), expected.size());
}

}  // namespace

class JobSheetTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void stepsInOrderOfWork();
    void cautionsInFullOnlyTheFirstTime();
    void everyCautionNamesItsSource();
    void planVersionAndNames();
    void notesOfTheShiftBeforeOnly();
    void doneJobsAreTicked();
    void anotherDayStartsFull();
    void textAsKept();
    void jsonAsKept();
    void jsonHasThePromisedKeys();
    void textFitsEightyColumns();
    void nothingToRun();
    void csvHasOneRecordAJob();
    void planAsTextJsonAndCsv();
    void eventsAsTextJsonAndCsv();
    void jobsAsCalendar();
    void firstPairTwiceIsSaid();
    void theMachinesWeightIsSaidWhereItIsLifted();
    void limitsOfThePackStandBesideTheBlank();
    void overflowStandsWithItsCaution();
};

void JobSheetTest::stepsInOrderOfWork() {
    QList<int> kinds;
    const JobSheet sheet = handSheet();
    for (const SheetStep& step : sheet.steps)
        kinds += int(step.kind);
    using Kind = SheetStep::Kind;
    QList<int> expected;
    for (Kind kind : {Kind::Prepare, Kind::Prepare, Kind::Prepare, Kind::Prepare, Kind::Job, Kind::EmptyWaste, Kind::Job,
                      Kind::Return, Kind::CloseDown, Kind::CloseDown, Kind::CloseDown, Kind::CloseDown}) {
        expected += int(kind);
    }
    QCOMPARE(kinds, expected);
    QCOMPARE(*sheet.steps[4].startBy, handAt(17, 22, 20));
    QCOMPARE(*sheet.steps[4].readyAt, handAt(17, 38, 20));
    QCOMPARE(*sheet.steps[4].job, size_t(0));
}

void JobSheetTest::cautionsInFullOnlyTheFirstTime() {
    QMap<QByteArray, int> full;
    const JobSheet sheet = handSheet();
    for (const SheetStep& step : sheet.steps) {
        for (const Finding& caution : step.cautions)
            full[caution.rule]++;
    }
    for (const char* rule : {"caution.battery", "caution.chemicals", "caution.slippery", "caution.lifting",
                             "caution.moving-parts", "caution.waste"}) {
        QCOMPARE(full.value(rule), 1);
    }
    QVERIFY(full.value("caution.moving-parts-again") >= 2);
    // Emptying carries the waste caution itself, before the closing down repeats it.
    QCOMPARE(sheet.steps[5].cautions[0].rule, QByteArray("caution.waste"));
}

void JobSheetTest::everyCautionNamesItsSource() {
    QCOMPARE(cautions().size(), size_t(6));
    for (const Caution& caution : cautions()) {
        QVERIFY(isWorded(caution.rule));
        QVERIFY(isWorded(QByteArray(caution.rule) + "-again"));
        QVERIFY(QByteArray(caution.source) == "common practice, no source" || !QByteArray(caution.read).isEmpty());
        QCOMPARE(cautionOf(QByteArray(caution.rule) + "-again").source, caution.source);
    }
    QCOMPARE(QByteArray(cautionOf("caution.unheard").source), QByteArray());
    const QString sheet = sheetText(handSheet(), plain()).simplified();
    QVERIFY(sheet.contains("40 CFR 403.5(b)(6), US"));
    QVERIFY(sheet.contains("Local codes"));
}

void JobSheetTest::planVersionAndNames() {
    QCOMPARE(handSheet().planVersion, 0);
    Plan plan = handPlan();
    plan.jobs[1].planVersion = 3;
    plan.jobs[0].pattern = PatternId{"gone"};
    plan.jobs[0].machine = {"lost"};
    const JobSheet sheet = jobSheet(handSeason(), plan, QDate(2026, 11, 12), handAt(15, 0));
    QCOMPARE(sheet.planVersion, 3);
    QCOMPARE(sheet.patternNames[0], QString("gone"));
    QCOMPARE(sheet.machineNames[0], QString("lost"));
    QCOMPARE(sheet.patternNames[1], QString());
    QVERIFY(sheetText(sheet, plain()).contains("Plan version 3"));
}

void JobSheetTest::notesOfTheShiftBeforeOnly() {
    SeasonState season = handSeason();
    season.handOvers.push_back({{"n2"}, QDate(2026, 11, 10), handAt(-26, 0), {"ada"}, "Old.", {}});
    season.handOvers.push_back({{"n3"}, QDate(2026, 11, 12), handAt(16, 0), {"ada"}, "Later.", {}});
    season.handOvers.push_back({{"n4"}, QDate(2026, 11, 12), handAt(9, 0), {"ada"}, "This morning.", {}});
    const JobSheet sheet = jobSheet(season, handPlan(), QDate(2026, 11, 12), handAt(15, 0));
    QCOMPARE(sheet.handOvers.size(), size_t(2));
    QCOMPARE(sheet.handOvers[1].text, QString("This morning."));
}

void JobSheetTest::doneJobsAreTicked() {
    Plan plan = handPlan();
    plan.jobs[0].state = JobState::Done;
    plan.jobs[1].state = JobState::CutShort;
    const QString sheet = sheetText(jobSheet(handSeason(), plan, QDate(2026, 11, 12), handAt(18, 0)), plain());
    QVERIFY(sheet.contains("[x] start by 17:22"));
    QVERIFY(sheet.contains("[/] start by 17:44"));
    QVERIFY(sheet.contains("DONE"));
    plan.jobs[0].state = JobState::Dropped;
    QCOMPARE(jobSheet(handSeason(), plan, QDate(2026, 11, 12), handAt(18, 0)).jobs.size(), size_t(1));
}

void JobSheetTest::anotherDayStartsFull() {
    SeasonState season = handSeason();
    season.readings = {{{"r"}, {"ada"}, {{"m1"}, handAt(9, 0), {millilitres(1), Microlitres{0}}, {}, {}, 1, {}}, {}}};
    QCOMPARE(jobSheet(season, handPlan(), QDate(2026, 11, 12), handAt(15, 0)).readiness[0].readiness.now.conditioner[0].value,
             1'000);
    QCOMPARE(jobSheet(season, handPlan(), QDate(2026, 11, 13), handAt(15, 0)).readiness[0].readiness.now.conditioner[0].value,
             2'000'000);
}

void JobSheetTest::textAsKept() { compareWithKept(sheetText(handSheet(), plain()).toUtf8(), "sheet.txt"); }

void JobSheetTest::jsonAsKept() {
    compareWithKept(QJsonDocument(sheetJson(handSheet(), plain())).toJson(QJsonDocument::Indented), "sheet.json");
}

void JobSheetTest::jsonHasThePromisedKeys() {
    const QJsonObject sheet = sheetJson(handSheet(), plain());
    for (const char* key : {"date", "plan_version", "readiness", "jobs", "steps", "duties", "cautions"})
        QVERIFY2(sheet.contains(key), key);
    const QJsonObject job = sheet["jobs"].toArray()[0].toObject();
    for (const char* key : {"id", "state", "date", "machine", "outing", "start", "end", "lanes", "pattern", "treatment", "steps",
                            "reasons", "needed_by", "slack_min", "late_min", "conditioner_ul", "cleaner_ul", "waste_ul"}) {
        QVERIFY2(job.contains(key), key);
    }
    QCOMPARE(job["start"].toString(), QString("2026-11-12T17:17:20+00:00"));
    QCOMPARE(job["slack_min"].toInt(), 26);
    QCOMPARE(job["conditioner_ul"].toInt(), 160'000);
    QCOMPARE(job["treatment"].toString(), QString("clean-and-condition"));
    const QJsonObject second = sheet["jobs"].toArray()[1].toObject();
    QCOMPARE(second["slack_min"].toInt(), -7);
    QVERIFY(second["pattern"].isNull());
}

void JobSheetTest::textFitsEightyColumns() {
    SeasonState season = handSeason();
    season.centre.machines[0].name = "The elder machine of the two that we have";
    const QString text = sheetText(jobSheet(season, handPlan(), QDate(2026, 11, 12), handAt(15, 0)), plain());
    for (const QString& line : text.split('\n'))
        QVERIFY2(line.size() <= 80, qPrintable(line));
}

void JobSheetTest::nothingToRun() {
    Plan plan = handPlan();
    plan.jobs.clear();
    plan.unmet.clear();
    const JobSheet sheet = jobSheet(handSeason(), plan, QDate(2026, 11, 12), handAt(15, 0));
    QVERIFY(sheet.steps.empty());
    QVERIFY(sheet.cautions.empty());
    QVERIFY(sheetText(sheet, plain()).contains("Nothing to run on this day."));
}

void JobSheetTest::csvHasOneRecordAJob() {
    const QByteArrayList lines = sheetCsv(handSheet(), plain()).split('\n');
    QCOMPARE(lines.size(), 4);
    QVERIFY(lines[0].startsWith("id,state,date,machine,outing,start,end,lanes,pattern,treatment"));
    QCOMPARE(lines[1],
             QByteArray("2026-11-12-m1-1717,proposed,2026-11-12,Otter,1,2026-11-12T17:17:20+00:00,2026-11-12T17:38:20+00:00,"
                        "1-8,Reed 38,clean-and-condition,Thursday Fours,26,0,160000,880000,800000\r"));
    QVERIFY(lines[2].contains(",-7,0,"));
}

void JobSheetTest::planAsTextJsonAndCsv() {
    const Plan plan = handPlan();
    const QString words = planText(plan, handState(), plain());
    QVERIFY(words.contains("17:17-17:39  Otter  lanes 1-8   Reed 38  clean and condition  proposed"));
    QVERIFY(words.contains("UNMET: Late Fours, 20:00, lanes 5-8 (fresh), 12 min missing"));
    QVERIFY(words.contains("would help: let Late Fours begin 12 min later, at 20:12"));
    QVERIFY(words.contains("not proven"));
    const QJsonObject json = planJson(plan, handState(), plain());
    QCOMPARE(json["jobs"].toArray().size(), 2);
    QCOMPARE(json["unmet"].toArray()[0].toObject()["missing_s"].toInt(), 720);
    const QJsonObject day = json["days"].toArray()[0].toObject();
    QCOMPARE(day["objective"].toObject()["treatments"].toInt(), 12);
    QCOMPARE(day["proof"].toString(), QString("gap"));
    QCOMPARE(day["gap"].toObject()["component"].toString(), QString("unmet"));
    Plan proven = plan;
    proven.days[0].proven = true;
    QVERIFY(planJson(proven, handState(), plain())["days"].toArray()[0].toObject()["gap"].isNull());
    QVERIFY(planText(proven, handState(), plain()).contains("nothing better exists"));
    QCOMPARE(planCsv(plan, plain()).count('\n'), 3);
}

void JobSheetTest::eventsAsTextJsonAndCsv() {
    Plan plan = handPlan();
    Occurrence party = plan.occupancy.occurrences[0];
    party.series = {"party"};
    party.title = "=Party";
    party.demands.clear();
    plan.occupancy.occurrences.push_back(party);
    plan.occupancy.conflicts = {{0, 1, LaneSet{1}, {handAt(18, 30), handAt(21, 10)}}};
    plan.occupancy.findings = {{Severity::Note, "calendar.suppressed", "Open play", {}}};
    const QString words = eventsText(plan.occupancy, handState(), plain());
    QVERIFY(words.contains("18:30-21:00  1-8  Thursday Fours  1-8: fresh Reed 38"));
    QVERIFY(words.contains("Open play does not take place"));
    const QJsonObject json = eventsJson(plan.occupancy, plain());
    const QJsonObject demand = json["occurrences"].toArray()[0].toObject()["demands"].toArray()[0].toObject();
    QCOMPARE(demand["demand"].toString(), QString("fresh"));
    QCOMPARE(demand["lanes"].toArray().size(), 8);
    QCOMPARE(json["conflicts"].toArray().size(), 1);
    const QByteArray csv = eventsCsv(plan.occupancy, plain());
    QCOMPARE(csv.count('\n'), 3);
    QVERIFY(csv.contains(",'=Party,"));
}

void JobSheetTest::jobsAsCalendar() {
    const QByteArray ics = jobsIcs(handPlan(), handState(), plain(), handAt(15, 0));
    QCOMPARE(ics.count("BEGIN:VEVENT"), 2);
    QVERIFY(ics.contains("DTSTART:20261112T171720Z"));
    QVERIFY(ics.contains("UID:2026-11-12-m1-1717@hand"));
}

void JobSheetTest::firstPairTwiceIsSaid() {
    Plan plan = handPlan();
    plan.jobs[0].steps.insert(plan.jobs[0].steps.begin() + 1,
                              {StepKind::FirstPairTwice, {handAt(17, 22, 20), handAt(17, 26)}, {1, 2}});
    const JobSheet sheet = jobSheet(handSeason(), plan, QDate(2026, 11, 12), handAt(15, 0));
    QVERIFY(sheetText(sheet, plain()).contains("work lanes 1-2 twice"));
    QCOMPARE(sheet.steps.size(), handSheet().steps.size());
}

void JobSheetTest::theMachinesWeightIsSaidWhereItIsLifted() {
    const auto lifted = [](std::optional<Grams> weight) {
        SeasonState season = handSeason();
        season.centre.machines[0].weight = weight;
        const JobSheet sheet = jobSheet(season, handPlan(), QDate(2026, 11, 12), handAt(15, 0));
        QStringList said;
        for (const SheetStep& step : sheet.steps) {
            for (const Finding& caution : step.cautions) {
                if (caution.rule.startsWith("lifting.")) said += step.rule + ": " + text(caution, plain());
            }
        }
        const QString paper = sheetText(sheet, plain()).simplified();
        for (const QString& one : said)
            if (!paper.contains(one.section(": ", 1))) said += "not on paper";
        return said;
    };
    QCOMPARE(lifted(std::nullopt), QStringList());
    QCOMPARE(lifted(Grams{10'000}), QStringList());
    // NIOSH 94-110, equation of section 1 for the lift of lifting.h: 23 x 25/40 x (1 - 0.003 x 30) x (0.82 + 4.5/30) x 0.95 =
    // 12.05 kg; 20 kg are for two people, 60 kg for none without a lift.
    QCOMPARE(
        lifted(Grams{20'000}),
        QStringList("sheet.leave-bay: Otter weighs 20 kg (45 lb); one person should not lift more than 12 kg (26 lb) in this "
                    "way: two people or a lift"));
    QVERIFY2(lifted(Grams{60'000}).size() == 1 && lifted(Grams{60'000}).front().endsWith("use a lift"),
             qPrintable(lifted(Grams{60'000}).join('|')));
    QCOMPARE(QByteArray(cautionOf("lifting.two").source), QByteArray("NIOSH 94-110, US"));
}

void JobSheetTest::limitsOfThePackStandBesideTheBlank() {
    SeasonState season = handSeason();
    ServiceItem pack{{"p1"}, {"m1"}, ItemKind::Pack, "Pack"};
    // As one centre practises it; common practice, no source.
    pack.pack = PackLimits{{Chemistry::FloodedLeadAcid, Millivolts{24'000}},
                           {Millivolts{26'800}, VoltageState::JustCharged},
                           {Millivolts{25'400}, VoltageState::JustCharged},
                           {Millivolts{20'000}, VoltageState::UnderLoad}};
    season.items = {pack};
    const JobSheet sheet = jobSheet(season, handPlan(), QDate(2026, 11, 12), handAt(15, 0));
    QCOMPARE(voltsRule(sheet.readiness.front(), plain()),
             QString("full at 26.8 V just charged, fit to run at 25.4 V just charged, spare pack on below 20.0 V under load"));
    const QJsonObject json = sheetJson(sheet, plain())["readiness"].toArray().first().toObject();
    QCOMPARE(json["limits_of"].toString(), QString("p1"));
    QCOMPARE(json["full_at_mv"].toInt(), 26'800);
    QCOMPARE(json["full_state"].toString(), QString("just-charged"));
    QCOMPARE(json["fit_at_mv"].toInt(), 25'400);
    QCOMPARE(json["attach_spare_at_mv"].toInt(), 20'000);
    QCOMPARE(json["attach_spare_state"].toString(), QString("under-load"));
}

void JobSheetTest::overflowStandsWithItsCaution() {
    SeasonState season = handSeason();
    LevelReading reading;
    reading.id = {"l1"};
    reading.levels.machine = {"m1"};
    reading.levels.at = handAt(14, 0);
    reading.levels.waste = millilitres(9'001);
    season.readings = {reading};
    const JobSheet sheet = jobSheet(season, handPlan(), QDate(2026, 11, 12), handAt(15, 0));
    const QString said = sheetText(sheet, plain()).simplified();
    QVERIFY2(said.contains("Otter: empty the waste tank before the job at 17:17 (lanes 1-8): it would overflow with a chance of"),
             qPrintable(said));
    QVERIFY(said.contains("chance of 100 %. Waste: not down a drain; ask the local wastewater authority."));
    QCOMPARE(sheetJson(sheet, plain())["jobs"].toArray().first().toObject()["overflow_permille"].toInt(), 1'000);
    // The second job is after an emptying.
    QVERIFY(*overflowOf(sheet, sheet.jobs[1]) < 0.001);
}

QTEST_GUILESS_MAIN(JobSheetTest)
#include "tst_job_sheet.moc"
