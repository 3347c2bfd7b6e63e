// The guided evening as a model: where we are, what stays done when the plan changes, and what the blanks record.
#include "core/documents/guide_blanks.h"
#include "core/documents/guide_words.h"
#include "tests/support/hand_made.h"

#include <QTest>

using namespace laneward;
using namespace support;

namespace {

const QDate day(2026, 11, 12);

Speech plain() { return {QLocale::c(), *Zone::load("Europe/London"), UnitSystem::Metric}; }

JobSheet sheetOf(const Plan& plan) { return jobSheet(handSeason(), plan, day, handAt(15, 0)); }
JobSheet handSheet() { return sheetOf(handPlan()); }

QStringList titles(const std::vector<GuideStep>& steps, const JobSheet& sheet) {
    QStringList all;
    for (const GuideStep& step : steps)
        all += titleOf(step, sheet, plain());
    return all;
}

GuideTick tickOf(const GuideStep& step) { return {step.key, step.step.kind, step.step.machine, "said so", false, {}, {}}; }

/// All that comes before the step with this title.
std::vector<GuideTick> ticksBefore(const QString& title, const JobSheet& sheet) {
    std::vector<GuideTick> ticks;
    for (const GuideStep& step : guideSteps(sheet)) {
        if (titleOf(step, sheet, plain()).startsWith(title)) break;
        ticks.push_back(tickOf(step));
    }
    return ticks;
}

QString nowIn(const JobSheet& sheet, const std::vector<GuideTick>& ticks) {
    const Guide guide = guideOf(sheet, handSeason(), ticks);
    return guide.ahead.empty() ? QString("the end") : titleOf(guide.ahead.front(), sheet, plain());
}

GuideStep stepOf(const JobSheet& sheet, GuideDeed deed) {
    for (const GuideStep& step : guideSteps(sheet)) {
        if (step.deed == deed) return step;
    }
    return {};
}

GuideBlank blankOf(const GuideStep& step, GuideBlank::Of of) {
    for (const GuideBlank& blank : blanksOf(step, handSeason(), handAt(17, 0))) {
        if (blank.of == of) return blank;
    }
    return {};
}

MachineLevels levelsNow() {
    MachineLevels levels;
    levels.machine = {"m1"};
    levels.at = handAt(17, 0);
    levels.conditioner[0] = millilitres(700);
    levels.cleaner = millilitres(3'000);
    levels.waste = millilitres(4'000);
    levels.lanesLeft = 12;
    levels.volts = Millivolts{25'000};
    return levels;
}

Plan planWithDuty() {
    Plan plan = handPlan();
    plan.jobs[0].steps.insert(plan.jobs[0].steps.begin(), {StepKind::Duty, {handAt(17, 7, 20), handAt(17, 17, 20)}, {}});
    plan.jobs[0].time.begin = handAt(17, 7, 20);
    return plan;
}

SeasonState seasonWithDuty() {
    SeasonState season = handSeason();
    Duty duty;
    duty.id = {"turn"};
    duty.kind = DutyKind::Turn;
    duty.name = "Turn the blades";
    duty.triggers = {{MeterKind::Lanes, 4}};
    duty.steps = {"Take them out", "Turn them", "Put them back"};
    duty.minutes = 12;
    duty.parts = {{{"cloth"}, Amount{1}}};
    duty.cautions = {"caution.moving-parts"};
    season.items = {{{"blades"}, {"m1"}, ItemKind::Squeegee, "Squeegee", {duty}, {}, false, 0}};
    return season;
}

}  // namespace

class GuideTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void walksTheSheetInItsOrder();
    void keysAreUnique();
    void cautionsAreInFull();
    void everyStepSaysSomething();
    void tickGoesOn();
    void doneStaysDoneWhenThePlanIsAnother();
    void sameWorkTwiceIsTwoJobs();
    void runRecordedElsewhereIsDone();
    void takenBackIsAheadAgain();
    void leftOutIsNotAskedAgain();
    void theMachineIsBroughtBackAfterItsLastJob();
    void whoIsOutDoesNotLeaveAgain();
    void startedMachinesNeedNoChecks();
    void theOtherMachineIsMadeReadyMeanwhile();
    void changesAreCounted();
    void aDutyGoesLineByLine();
    void recordsTakenBackUntick();
    void emptyDayHasNoSteps();
    void blanksOfEachStep();
    void impossibleValuesAreSaid_data();
    void impossibleValuesAreSaid();
    void whatIsTypedIsRecorded();
    void voltsHaveTheirState();
    void emptiedWasteIsRecorded();
    void doubtsAreSaidAtOnce();
    void packsAreToldOfSwapAndCharge();
    void aRiskyJobIsSaid();
    void nothingTypedIsNothingRead();
    void fillingAndEmptyingAreRecorded();
    void noteIsRecordedWhenThereIsOne();
};

void GuideTest::walksTheSheetInItsOrder() {
    const JobSheet sheet = handSheet();
    const QStringList expected{"Look at tonight: who plays where, and what is to be run",
                               "Otter: charger off and unplugged; read the pack's volts",
                               "Otter: read all levels",
                               "Otter: look over cloth, brushes and blades; nothing drips",
                               "Floor sign out; approaches clear and dry",
                               "Ready Otter, bring it to the lanes",
                               "Lanes 1-8: clean and condition, Reed 38",
                               "Empty the waste tank of Otter into the marked container",
                               "Lanes 9-12: clean only",
                               "Bring Otter back to its bay",
                               "Otter: waste into the marked container; fill up the tanks",
                               "Machines off; wipe them down; look at brushes, blades, cloth",
                               "Otter: pack on charge, one at a time where packs share an outlet",
                               "Record tonight's runs and write the hand-over"};
    QCOMPARE(titles(guideOf(sheet, handSeason(), {}).ahead, sheet), expected);
}

void GuideTest::keysAreUnique() {
    QSet<QByteArray> keys;
    const std::vector<GuideStep> steps = guideSteps(handSheet());
    for (const GuideStep& step : steps)
        keys.insert(step.key);
    QCOMPARE(size_t(keys.size()), steps.size());
}

void GuideTest::cautionsAreInFull() {
    int cautions = 0;
    for (const GuideStep& step : guideSteps(handSheet())) {
        for (const Finding& caution : step.step.cautions) {
            QVERIFY(!caution.rule.endsWith("-again"));
            ++cautions;
        }
        const QStringList lines = cautionsOf(step, plain());
        QCOMPARE(size_t(lines.size()), step.step.cautions.empty() ? 0 : step.step.cautions.size() + 1);
        if (!lines.isEmpty()) QVERIFY(lines.last().contains("Local codes"));
    }
    QVERIFY(cautions > 12);
    QCOMPARE(cautionsOf(stepOf(handSheet(), GuideDeed::EmptyWaste), plain()).size(), 3);
}

void GuideTest::everyStepSaysSomething() {
    const JobSheet sheet = handSheet();
    const GuideStep job = stepOf(sheet, GuideDeed::Run);
    const QString told = detailsOf(job, sheet, plain()).join("\n");
    for (const char* part :
         {"start by 17:22, ready at 17:39", "Otter", "for Thursday Fours 18:30", "conditioner 160 mL", "26 min to spare"})
        QVERIFY2(told.contains(part), qPrintable(told));
    QVERIFY(detailsOf(stepOf(sheet, GuideDeed::Volts), sheet, plain()).join("\n").contains("full at 25.6 V"));
    QVERIFY(
        detailsOf(stepOf(sheet, GuideDeed::Levels), sheet, plain()).join("\n").contains("Fenlight: about 2 L, tonight 160 mL"));
    const QString ahead = detailsOf(guideSteps(sheet).front(), sheet, plain()).join("\n");
    QVERIFY2(ahead.contains("UNMET: Late Fours") && ahead.contains("Note: Cloth nearly at its end."), qPrintable(ahead));
}

void GuideTest::tickGoesOn() {
    const JobSheet sheet = handSheet();
    const std::vector<GuideTick> ticks = ticksBefore("Floor sign", sheet);
    const Guide guide = guideOf(sheet, handSeason(), ticks);
    QCOMPARE(guide.done, ticks);
    QCOMPARE(titleOf(guide.ahead.front(), sheet, plain()), QString("Floor sign out; approaches clear and dry"));
    QCOMPARE(guide.behind.size(), ticks.size());
    QCOMPARE(guide.behind.size() + guide.ahead.size(), guideSteps(sheet).size());
}

void GuideTest::doneStaysDoneWhenThePlanIsAnother() {
    const std::vector<GuideTick> ticks = ticksBefore("Lanes 1-8", handSheet());
    Plan later = handPlan();
    for (Job& job : later.jobs) {
        job.id.value += "-moved";
        job.time = {job.time.begin + minutes(20), job.time.end + minutes(20)};
        for (Step& step : job.steps)
            step.time = {step.time.begin + minutes(20), step.time.end + minutes(20)};
    }
    QCOMPARE(nowIn(sheetOf(later), ticks), QString("Lanes 1-8: clean and condition, Reed 38"));
    QCOMPARE(guideOf(sheetOf(later), handSeason(), ticks).done, ticks);
    // The emptying that was done is not asked for again where the new plan has none.
    Plan without = handPlan();
    without.jobs[1].steps.erase(without.jobs[1].steps.begin());
    const std::vector<GuideTick> emptied = ticksBefore("Lanes 9-12", handSheet());
    const Guide guide = guideOf(sheetOf(without), handSeason(), emptied);
    QVERIFY(std::any_of(guide.done.begin(), guide.done.end(),
                        [](const GuideTick& tick) { return tick.kind == SheetStep::Kind::EmptyWaste; }));
}

void GuideTest::sameWorkTwiceIsTwoJobs() {
    Plan plan = handPlan();
    Job again = handJob();
    again.id = {"again"};
    again.outing = 2;
    const auto later = [](Span& span) { span = {span.begin + hours(3), span.end + hours(3)}; };
    later(again.time);
    for (Step& step : again.steps)
        later(step.time);
    plan.jobs.push_back(again);
    plan.jobs[0].state = JobState::Done;
    const JobSheet sheet = sheetOf(plan);
    const Guide guide = guideOf(sheet, handSeason(), {});
    QCOMPARE(titles(guide.ahead, sheet).count("Lanes 1-8: clean and condition, Reed 38"), 1);
    QCOMPARE(guide.done.size(), size_t(1));
}

void GuideTest::runRecordedElsewhereIsDone() {
    Plan plan = handPlan();
    plan.jobs[0].state = JobState::CutShort;
    const JobSheet sheet = sheetOf(plan);
    const Guide guide = guideOf(sheet, handSeason(), {});
    QCOMPARE(guide.done.size(), size_t(1));
    QCOMPARE(guide.done.front().job, plan.jobs[0].id);
    QCOMPARE(lineOf(guide.done.front(), sheet, plain()), QString("Lanes 1-8: clean and condition, Reed 38"));
    QCOMPARE(guideOf(sheet, handSeason(), guide.done).done, guide.done);
}

void GuideTest::takenBackIsAheadAgain() {
    Plan plan = handPlan();
    plan.jobs[0].state = JobState::Done;
    std::vector<GuideTick> ticks = ticksBefore("Lanes 1-8", handSheet());
    ticks = guideOf(sheetOf(plan), handSeason(), ticks).done;
    QCOMPARE(nowIn(sheetOf(plan), ticks), QString("Empty the waste tank of Otter into the marked container"));
    QCOMPARE(nowIn(handSheet(), ticks), QString("Lanes 1-8: clean and condition, Reed 38"));
}

void GuideTest::leftOutIsNotAskedAgain() {
    std::vector<GuideTick> ticks = ticksBefore("Lanes 1-8", handSheet());
    ticks.push_back(tickOf(stepOf(handSheet(), GuideDeed::Run)));
    ticks.back().isLeftOut = true;
    QCOMPARE(nowIn(handSheet(), ticks), QString("Empty the waste tank of Otter into the marked container"));
    // Recorded after all, it is done and no more left out.
    Plan plan = handPlan();
    plan.jobs[0].state = JobState::Done;
    const Guide guide = guideOf(sheetOf(plan), handSeason(), ticks);
    QVERIFY(!guide.done.back().isLeftOut);
    QCOMPARE(guide.done.size(), ticks.size());
}

void GuideTest::theMachineIsBroughtBackAfterItsLastJob() {
    Plan plan = handPlan();
    plan.jobs[0].state = JobState::Done;
    plan.jobs[1].state = JobState::Done;
    const JobSheet sheet = sheetOf(plan);
    const Guide guide = guideOf(sheet, handSeason(), {});
    QCOMPARE(titleOf(guide.ahead.front(), sheet, plain()), QString("Bring Otter back to its bay"));
    std::vector<GuideTick> ticks = guide.done;
    ticks.push_back(tickOf(guide.ahead.front()));
    QVERIFY(nowIn(sheet, ticks).startsWith("Otter: waste into"));
}

void GuideTest::whoIsOutDoesNotLeaveAgain() {
    std::vector<GuideTick> ticks = ticksBefore("Lanes 1-8", handSheet());
    // Other lanes now: the machine stands at the lanes already.
    Plan other = handPlan();
    other.jobs[0].lanes = handLanes(3, 8, handAt(17, 22, 20));
    other.jobs[0].steps[1].lanes = LaneSet::range(3, 8);
    QCOMPARE(nowIn(sheetOf(other), ticks), QString("Lanes 3-8: clean and condition, Reed 38"));
    // After work and back in its bay it does.
    ticks.push_back(tickOf(stepOf(handSheet(), GuideDeed::Run)));
    ticks.back().isLeftOut = true;
    GuideTick back = ticks.front();
    back.key = "back";
    back.kind = SheetStep::Kind::Return;
    back.machine = {"m1"};
    ticks.push_back(back);
    QCOMPARE(nowIn(sheetOf(other), ticks), QString("Ready Otter, bring it to the lanes"));
}

void GuideTest::startedMachinesNeedNoChecks() {
    Plan plan = handPlan();
    plan.jobs[0].state = JobState::UnderWay;
    const JobSheet sheet = sheetOf(plan);
    QCOMPARE(titles(guideOf(sheet, handSeason(), {}).ahead, sheet).front(), QString("Lanes 1-8: clean and condition, Reed 38"));
}

void GuideTest::theOtherMachineIsMadeReadyMeanwhile() {
    Plan plan = handPlan();
    plan.jobs[0].state = JobState::UnderWay;
    Job other = handSecondJob();
    other.id = {"other"};
    other.machine = {"m2"};
    const Seconds earlier = minutes(10);
    for (Step& step : other.steps)
        step.time = {step.time.begin - earlier, step.time.end - earlier};
    other.time = {other.time.begin - earlier, other.time.end - earlier};
    other.lanes = handLanes(11, 12, handAt(17, 34));
    plan.jobs.push_back(other);
    const JobSheet sheet = sheetOf(plan);
    std::vector<GuideTick> ticks = ticksBefore("Empty the waste tank of m2", sheet);
    std::erase_if(ticks, [](const GuideTick& tick) { return tick.kind == SheetStep::Kind::Job; });
    // Otter is at work until 17:38; m2 empties at 17:28 and runs at 17:34.
    const QStringList ahead = titles(guideOf(sheet, handSeason(), ticks).ahead, sheet);
    QCOMPARE(ahead.mid(0, 3), QStringList({"Empty the waste tank of m2 into the marked container", "Lanes 11-12: clean only",
                                           "Lanes 1-8: clean and condition, Reed 38"}));
}

void GuideTest::changesAreCounted() {
    const std::vector<GuideStep> before = guideOf(handSheet(), handSeason(), {}).ahead;
    QVERIFY(changeOf(before, guideOf(handSheet(), handSeason(), {})).isNothing());
    QVERIFY(changeOf(before, guideOf(handSheet(), handSeason(), ticksBefore("Lanes 9", handSheet()))).isNothing());
    Plan plan = handPlan();
    plan.jobs[1].steps.insert(plan.jobs[1].steps.begin(), {StepKind::Refill, {handAt(17, 38, 20), handAt(17, 43, 20)}, {}});
    plan.jobs[1].steps[2].time = {handAt(17, 50), handAt(17, 58)};
    plan.jobs.erase(plan.jobs.begin());
    const GuideChange change = changeOf(before, guideOf(sheetOf(plan), handSeason(), {}));
    QCOMPARE(change.added, 1);  // the refill
    QCOMPARE(change.gone, 2);   // leaving the bay, lanes 1-8
    QCOMPARE(change.moved, 1);
    QVERIFY(changeText(change).startsWith("The plan has changed: "));
    QCOMPARE(changeText({}), QString());
}

void GuideTest::aDutyGoesLineByLine() {
    const SeasonState season = seasonWithDuty();
    const JobSheet sheet = jobSheet(season, planWithDuty(), day, handAt(15, 0));
    const std::vector<GuideStep> steps = guideOf(sheet, season, {}).ahead;
    const QStringList all = titles(steps, sheet);
    const qsizetype first = all.indexOf("Take them out");
    QVERIFY2(first > 0, qPrintable(all.join("\n")));
    QCOMPARE(all.mid(first, 3), QStringList({"Take them out", "Turn them", "Put them back"}));
    QCOMPARE(steps[size_t(first)].deed, GuideDeed::None);
    QVERIFY(!serviceOf(steps[size_t(first)], sheet, season, handAt(17, 10)));
    const GuideStep& last = steps[size_t(first + 2)];
    QCOMPARE(last.deed, GuideDeed::Service);
    QVERIFY(detailsOf(last, sheet, plain()).contains("step 3 of 3"));
    QVERIFY(cautionsOf(last, plain()).front().startsWith("Moving parts"));
    const std::optional<ServiceRecord> record = serviceOf(last, sheet, season, handAt(17, 10));
    QVERIFY(record);
    QCOMPARE(record->item.value, QString("blades"));
    QCOMPARE(record->duty.value, QString("turn"));
    QCOMPARE(record->minutes, 12);
    QCOMPARE(record->parts.size(), size_t(1));
    QCOMPARE(record->result, ServiceResult::Done);
    QVERIFY(faultsOf(*record, &season.items.front(), handAt(17, 10)).empty());
}

void GuideTest::recordsTakenBackUntick() {
    SeasonState season = handSeason();
    const JobSheet sheet = handSheet();
    std::vector<GuideTick> ticks = ticksBefore("Otter: look over", sheet);
    ticks.back().record = {"reading"};
    QCOMPARE(titleOf(guideOf(sheet, season, ticks).ahead.front(), sheet, plain()), QString("Otter: read all levels"));
    season.readings = {{{"reading"}, {"ada"}, levelsNow(), {}, {}}};
    QCOMPARE(guideOf(sheet, season, ticks).done.size(), ticks.size());
    season.readings.push_back({{"counter"}, {"ada"}, levelsNow(), {}, OperationId{"reading"}});
    QCOMPARE(guideOf(sheet, season, ticks).done.size(), ticks.size() - 1);
}

void GuideTest::emptyDayHasNoSteps() {
    Plan plan;
    plan.range = {day, day};
    QVERIFY(guideSteps(sheetOf(plan)).empty());
}

void GuideTest::blanksOfEachStep() {
    const SeasonState season = handSeason();
    const JobSheet sheet = handSheet();
    QCOMPARE(blanksOf(stepOf(sheet, GuideDeed::Volts), season, handAt(17, 0)).size(), size_t(1));
    QStringList names;
    for (const GuideBlank& blank : blanksOf(stepOf(sheet, GuideDeed::Levels), season, handAt(17, 0)))
        names += nameOf(blank);
    QCOMPARE(names, QStringList({"Fenlight", "Sluice", "Waste in its tank", "Lanes left on the pack"}));
    names.clear();
    for (const GuideBlank& blank : blanksOf(stepOf(sheet, GuideDeed::CloseTanks), season, handAt(17, 0)))
        names += nameOf(blank);
    QCOMPARE(names, QStringList({"Waste emptied, measured", "Fenlight poured in", "Sluice poured in"}));
    QVERIFY(blanksOf(stepOf(sheet, GuideDeed::Run), season, handAt(17, 0)).empty());
    QVERIFY(blanksOf(stepOf(sheet, GuideDeed::HandOver), season, handAt(17, 0)).front().isText());
    const GuideBlank waste = blankOf(stepOf(sheet, GuideDeed::Levels), GuideBlank::Of::Waste);
    QCOMPARE(expectedText(waste, levelsNow(), plain()), QString("about 4000"));
    QCOMPARE(unitOf(waste, UnitSystem::UsCustomary), QString("fl oz"));
}

void GuideTest::impossibleValuesAreSaid_data() {
    QTest::addColumn<int>("of");
    QTest::addColumn<double>("number");
    QTest::addColumn<QByteArray>("rule");
    const auto add = [](const char* name, GuideBlank::Of of, double number, const char* rule) {
        QTest::newRow(name) << int(of) << number << QByteArray(rule);
    };
    add("no volts", GuideBlank::Of::Volts, 0, "");
    add("most volts", GuideBlank::Of::Volts, 60, "");
    add("too many volts", GuideBlank::Of::Volts, 60.1, "guide.volts-beyond");
    add("negative volts", GuideBlank::Of::Volts, -0.1, "guide.volts-beyond");
    add("full tank", GuideBlank::Of::Conditioner, 2'000, "");
    add("more than the tank", GuideBlank::Of::Conditioner, 2'001, "guide.amount-beyond");
    add("less than nothing", GuideBlank::Of::Waste, -1, "guide.amount-beyond");
    add("less than nothing emptied", GuideBlank::Of::Emptied, -1, "guide.emptied-beyond");
    add("more emptied than it holds", GuideBlank::Of::Emptied, 20'000, "");  // kept, and flagged
    add("too many lanes", GuideBlank::Of::LanesLeft, 41, "guide.lanes-beyond");
}

void GuideTest::impossibleValuesAreSaid() {
    QFETCH(int, of);
    QFETCH(double, number);
    QFETCH(QByteArray, rule);
    const auto kind = GuideBlank::Of(of);
    const GuideDeed deed = kind == GuideBlank::Of::Volts     ? GuideDeed::Volts
                           : kind == GuideBlank::Of::Emptied ? GuideDeed::EmptyWaste
                                                             : GuideDeed::Levels;
    const GuideStep step = stepOf(handSheet(), deed);
    const std::optional<Finding> fault = faultOf(blankOf(step, kind), number, plain());
    QCOMPARE(fault ? fault->rule : QByteArray(), rule);
    if (fault) QVERIFY(text(*fault, plain()).contains("nothing was recorded"));
}

void GuideTest::whatIsTypedIsRecorded() {
    const Machine machine = handSeason().centre.machines.front();
    const GuideStep step = stepOf(handSheet(), GuideDeed::Levels);
    const std::vector<GuideAnswer> answers{{blankOf(step, GuideBlank::Of::Cleaner), 2'500, {}},
                                           {blankOf(step, GuideBlank::Of::LanesLeft), 9, {}}};
    const std::optional<LevelReading> reading = readingOf(step, machine, levelsNow(), answers, UnitSystem::Metric);
    QVERIFY(reading);
    QCOMPARE(reading->levels.cleaner.value, millilitres(2'500).value);
    QCOMPARE(reading->levels.lanesLeft, 9);
    QCOMPARE(reading->levels.conditioner[0].value, millilitres(700).value);  // not read: as the records say
    QVERIFY(!reading->poured);
    const GuideStep volts = stepOf(handSheet(), GuideDeed::Volts);
    const auto read =
        readingOf(volts, machine, levelsNow(), {{blankOf(volts, GuideBlank::Of::Volts), 25.64, {}}}, UnitSystem::Metric);
    QCOMPARE(read->levels.volts->value, std::int64_t{25'640});
    // 10 US fl oz are 295.735295625 mL (NIST Handbook 44, appendix C; from memory).
    const auto ounces =
        readingOf(step, machine, levelsNow(), {{blankOf(step, GuideBlank::Of::Cleaner), 10, {}}}, UnitSystem::UsCustomary);
    QCOMPARE(ounces->levels.cleaner.value, std::int64_t{295'735});
}

void GuideTest::voltsHaveTheirState() {
    const GuideStep step = stepOf(handSheet(), GuideDeed::Volts);
    SeasonState season = handSeason();
    const auto blank = [&] { return blanksOf(step, season, handAt(17, 0)).front(); };
    QVERIFY(!blank().state);  // no pack is kept: volts are those of a rested one
    QCOMPARE(nameOf(blank()), QString("Rested volts"));
    ServiceItem pack{{"p1"}, {"m1"}, ItemKind::Pack, "Pack"};
    season.items = {pack};
    QVERIFY(blank().state == VoltageState::Rested);
    QCOMPARE(nameOf(blank()), QString("Volts"));
    pack.pack.emplace().full = {Millivolts{26'800}, VoltageState::JustCharged};
    season.items = {pack};
    QVERIFY(blank().state == VoltageState::JustCharged);  // as its limit is measured
    const PackNews news = packNewsOf(step, {{blank(), 26.85, {}, VoltageState::UnderLoad}});
    QVERIFY((news == PackNews{PackChange::None, {}, Millivolts{26'850}, VoltageState::UnderLoad}));
    QVERIFY(packNewsOf(step, {}) == PackNews{});
}

void GuideTest::emptiedWasteIsRecorded() {
    const Machine machine = handSeason().centre.machines.front();
    for (GuideDeed deed : {GuideDeed::EmptyWaste, GuideDeed::CloseTanks}) {
        const GuideStep step = stepOf(handSheet(), deed);
        const GuideBlank blank = blankOf(step, GuideBlank::Of::Emptied);
        QCOMPARE(expectedText(blank, levelsNow(), plain()), QString("about 4000"));
        const auto reading = readingOf(step, machine, levelsNow(), {{blank, 3'850, {}, {}}}, UnitSystem::Metric);
        QCOMPARE(reading->emptied->value, millilitres(3'850).value);
        QCOMPARE(reading->levels.waste.value, std::int64_t{0});
        QVERIFY(!readingOf(step, machine, levelsNow(), {}, UnitSystem::Metric)->emptied);
        // 100 US fl oz are 2957.35295625 mL (NIST Handbook 44, appendix C; from memory).
        const auto ounces = readingOf(step, machine, levelsNow(), {{blank, 100, {}, {}}}, UnitSystem::UsCustomary);
        QCOMPARE(ounces->emptied->value, std::int64_t{2'957'353});
    }
}

void GuideTest::doubtsAreSaidAtOnce() {
    const Machine machine = handSeason().centre.machines.front();
    const VoltRule rule = voltRule(machine, nullptr);
    const GuideBlank volts = blankOf(stepOf(handSheet(), GuideDeed::Volts), GuideBlank::Of::Volts);
    const auto said = [&](const GuideBlank& blank, double number) {
        QStringList lines;
        for (const Finding& doubt : doubtsOf({blank, number, {}, {}}, machine, rule, UnitSystem::Metric))
            lines += text(doubt, plain());
        return lines.join('|');
    };
    QCOMPARE(said(volts, 25.6), QString());
    QCOMPARE(said(volts, 24.5), QString());  // not full, but it runs: readiness says so
    QCOMPARE(said(volts, 24.1), QString("Otter: 24.1 V is below 24.2 V; put the spare pack on before the run"));
    const GuideBlank emptied = blankOf(stepOf(handSheet(), GuideDeed::EmptyWaste), GuideBlank::Of::Emptied);
    QCOMPARE(said(emptied, 8'000), QString());
    QVERIFY2(said(emptied, 12'000).startsWith("Otter: 12 L were emptied, but the waste tank holds 9 L"),
             qPrintable(said(emptied, 12'000)));
}

void GuideTest::packsAreToldOfSwapAndCharge() {
    GuideStep step;
    step.deed = GuideDeed::FullPack;
    step.step.machine = {"m1"};
    step.step.kind = SheetStep::Kind::SwapPack;
    QVERIFY(packNewsOf(step, {}).change == PackChange::Swapped);
    step.step.kind = SheetStep::Kind::Charge;
    QVERIFY(packNewsOf(step, {}).change == PackChange::Charged);
    for (GuideDeed deed : {GuideDeed::Volts, GuideDeed::Levels, GuideDeed::CloseTanks}) {
        step.deed = deed;
        QVERIFY(packNewsOf(step, {}).change == PackChange::None);
    }
}

void GuideTest::aRiskyJobIsSaid() {
    SeasonState season = handSeason();
    const auto said = [&] {
        const JobSheet sheet = jobSheet(season, handPlan(), day, handAt(15, 0));
        return detailsOf(stepOf(sheet, GuideDeed::Run), sheet, plain()).join('|');
    };
    QVERIFY(!said().contains("overflows"));
    LevelReading reading;
    reading.id = {"l1"};
    reading.levels = levelsNow();
    reading.levels.at = handAt(14, 0);
    reading.levels.waste = millilitres(9'001);
    season.readings = {reading};
    QVERIFY2(said().contains("! the waste tank overflows with a chance of 100 %, unless it is emptied before. Waste: not down a "
                             "drain; ask the local wastewater authority."),
             qPrintable(said()));
}

void GuideTest::nothingTypedIsNothingRead() {
    const Machine machine = handSeason().centre.machines.front();
    for (GuideDeed deed : {GuideDeed::Volts, GuideDeed::Levels, GuideDeed::Run, GuideDeed::HandOver})
        QVERIFY(!readingOf(stepOf(handSheet(), deed), machine, levelsNow(), {}, UnitSystem::Metric));
}

void GuideTest::fillingAndEmptyingAreRecorded() {
    const Machine machine = handSeason().centre.machines.front();
    const JobSheet sheet = handSheet();
    const auto emptied = readingOf(stepOf(sheet, GuideDeed::EmptyWaste), machine, levelsNow(), {}, UnitSystem::Metric);
    QCOMPARE(emptied->levels.waste.value, 0);
    QCOMPARE(emptied->levels.cleaner.value, millilitres(3'000).value);
    const GuideStep close = stepOf(sheet, GuideDeed::CloseTanks);
    const std::vector<GuideAnswer> poured{{blankOf(close, GuideBlank::Of::PouredCleaner), 4'400, {}}};
    const auto closed = readingOf(close, machine, levelsNow(), poured, UnitSystem::Metric);
    QCOMPARE(closed->levels.cleaner.value, machine.capacity.cleaner.value);
    QCOMPARE(closed->levels.waste.value, 0);
    QCOMPARE(closed->poured->cleaner.value, millilitres(4'400).value);
    GuideStep swap;
    swap.deed = GuideDeed::FullPack;
    swap.step.kind = SheetStep::Kind::SwapPack;
    swap.step.machine = {"m1"};
    const auto swapped = readingOf(swap, machine, levelsNow(), {}, UnitSystem::Metric);
    QCOMPARE(swapped->levels.lanesLeft, machine.capacity.lanesPerCharge);
    QVERIFY(!swapped->levels.volts);  // those were of the other pack
    QCOMPARE(blanksOf(swap, handSeason(), handAt(17, 0)).size(), size_t(1));
}

void GuideTest::noteIsRecordedWhenThereIsOne() {
    const GuideBlank blank = blanksOf(stepOf(handSheet(), GuideDeed::HandOver), handSeason(), handAt(17, 0)).front();
    QVERIFY(!noteOf({}, day, handAt(22, 0)));
    QVERIFY(!noteOf({{blank, 0, "  "}}, day, handAt(22, 0)));
    const std::optional<HandOver> note = noteOf({{blank, 0, " Pin 7 sticks "}}, day, handAt(22, 0));
    QCOMPARE(note->text, QString("Pin 7 sticks"));
    QCOMPARE(note->date, day);
}

QTEST_GUILESS_MAIN(GuideTest)
#include "tst_guide.moc"
