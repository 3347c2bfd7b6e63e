// Lives of parts out of records made by hand: failures and planned replacements, corrections, what was withdrawn, counters that
// were replaced or read for the first time, the part in use.
#include "core/season/part_lives.h"

#include <QTest>

using namespace laneward;

namespace {

const MachineId heron{"heron"};
const MachineId grebe{"grebe"};
constexpr Instant start{1'700'000'000};
constexpr Instant day(int n) { return start + hours(24) * n; }

Duty duty(const char* id, DutyKind kind) {
    Duty made{{id}, kind, id};
    made.triggers = {{MeterKind::Lanes, 1'200}, {MeterKind::Days, 180}};
    return made;
}

ServiceItem item(const char* id, const MachineId& machine, ItemKind kind = ItemKind::Squeegee) {
    ServiceItem made{{id}, machine, kind, "Blades"};
    made.duties = {duty("turn", DutyKind::Turn), duty("replace", DutyKind::Replace)};
    for (Duty& one : made.duties)
        one.id = {QString::fromLatin1(id) + '-' + one.id.value};
    return made;
}

ServiceRecord record(int n, int onDay, std::int64_t lanes, ServiceResult result, const char* of = "blades") {
    ServiceRecord made;
    made.id = {QString::number(n)};
    made.at = day(onDay);
    made.item = {of};
    made.duty = {QString::fromLatin1(of) + "-replace"};
    made.meters.lanes = lanes;
    made.result = result;
    return made;
}

MeterReading counter(int n, int onDay, std::int64_t shown, bool replaced = false) {
    MeterReading made;
    made.id = {"c" + QString::number(n)};
    made.at = day(onDay);
    made.machine = heron;
    made.shown = shown;
    made.replaced = replaced;
    return made;
}

MachineWork work(int onDay, std::int64_t lanes) { return {heron, day(onDay), {lanes, 1, minutes(30), millilitres(90)}}; }

const std::vector<ItemDuty> own{{{"blades"}, {"blades-replace"}}};
constexpr ServiceResult done = ServiceResult::Done;
constexpr ServiceResult failed = ServiceResult::Failed;

}  // namespace

class PartLivesTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void failuresAndPlanned();
    void whatWasFoundReplacesNothing();
    void correctionsAndWithdrawals();
    void replacedCounter();
    void counterReadForTheFirstTime();
    void firstReadingMakesNothingDue();
    void typedAtSetUp();
    void inDays();
    void twiceAtOneReading();
    void retiredItems();
    void pooled();
    void roundsSensibly_data();
    void roundsSensibly();
    void adoptsOneTrigger();

private:
    std::vector<Life> ages(MeterKind unit = MeterKind::Lanes) const {
        return partLives({m_season, m_records, m_now, unit}, own).ages();
    }

    SeasonState m_season;
    std::vector<ServiceRecord> m_records;
    Instant m_now;
};

void PartLivesTest::init() {
    m_season = {};
    m_season.items = {item("blades", heron), item("others", grebe), item("filter", heron, ItemKind::Filter)};
    m_season.workBefore = {work(400, 5'000)};
    m_records.clear();
    m_now = day(500);
}

void PartLivesTest::failuresAndPlanned() {
    m_records = {record(3, 300, 3'100, failed), record(1, 100, 1'000, done), record(2, 200, 2'200, done)};  // in any order
    QCOMPARE(ages(), (std::vector<Life>{{1'200, false}, {900, true}, {1'900, false}}));
    const PartLives lives = partLives({m_season, m_records, m_now, MeterKind::Lanes}, own);
    QVERIFY(lives.lives[2].inUse && !lives.lives[1].inUse);
    QCOMPARE(lives.lives[1].fitted, day(200));
    QCOMPARE(lives.lives[1].until, day(300));
    QCOMPARE(lives.leftOut, 0);
    // What was done at first says nothing of the part before it, failed or not; without a record there is nothing to say.
    m_records = {record(1, 100, 1'000, failed)};
    QCOMPARE(ages(), (std::vector<Life>{{4'000, false}}));
    m_records.clear();
    QVERIFY(ages().empty());
}

void PartLivesTest::whatWasFoundReplacesNothing() {
    m_records = {record(1, 100, 1'000, done), record(2, 150, 1'500, ServiceResult::Found), record(3, 200, 2'200, failed)};
    ServiceRecord turned = record(4, 160, 1'600, failed);
    turned.duty = {"blades-turn"};
    m_records.push_back(turned);
    QCOMPARE(ages(), (std::vector<Life>{{1'200, true}, {2'800, false}}));
}

void PartLivesTest::correctionsAndWithdrawals() {
    m_records = {record(1, 100, 1'000, done), record(2, 200, 2'200, done), record(3, 300, 3'100, done)};
    ServiceRecord right = record(4, 200, 2'000, failed);  // it had failed, and at another reading
    right.corrects = OperationId{"2"};
    ServiceRecord gone = record(5, 300, 3'100, ServiceResult::Withdrawn);
    gone.corrects = OperationId{"3"};
    m_records.insert(m_records.end(), {right, gone});
    QCOMPARE(ages(), (std::vector<Life>{{1'000, true}, {3'000, false}}));
    ServiceRecord after = record(6, 501, 6'000, done);  // still to come as of now
    m_records.push_back(after);
    QCOMPARE(ages().size(), size_t(2));
}

/// The new counter begins with nothing, and what was counted goes on.
void PartLivesTest::replacedCounter() {
    m_season.workBefore = {work(150, 400), work(250, 300), work(400, 50)};
    m_season.counters = {counter(1, 10, 40'000), counter(2, 200, 40'500), counter(3, 300, 0, true), counter(4, 350, 120)};
    const auto lanesAt = [&](int n) { return metersAt(m_season.counters, workOf(m_season), heron, day(n)).lanes; };
    QCOMPARE(lanesAt(350), 40'920);
    m_records = {record(1, 200, lanesAt(200), done), record(2, 350, lanesAt(350), failed)};
    QCOMPARE(ages(), (std::vector<Life>{{420, true}, {50, false}}));
}

/// A record from before the first reading knows the logs alone, which begin at nothing.
void PartLivesTest::counterReadForTheFirstTime() {
    m_season.workBefore = {work(100, 500), work(190, 200), work(300, 100)};
    m_records = {record(1, 120, 500, done), record(2, 320, 41'100, failed)};
    m_season.counters = {counter(1, 200, 41'000)};
    QCOMPARE(ages().front(), (Life{300, true}));  // 200 logged until the reading, 100 since
}

/// Reading the counter of a machine that has run for years is no service that was missed.
void PartLivesTest::firstReadingMakesNothingDue() {
    m_season.workBefore = {work(100, 500), work(190, 200), work(300, 100)};
    m_season.services = {record(1, 120, 500, done)};
    m_season.services.front().meters.work = minutes(30);
    const auto since = [&] {
        const Meters then = lastDone(m_season).at({"blades-replace"}).meters;
        const Meters now = metersNow(m_season, heron, m_now);
        return std::pair(now.lanes - then.lanes, now.work - then.work);
    };
    const std::pair expected(std::int64_t{300}, minutes(60));
    QCOMPARE(since(), expected);
    m_season.counters = {counter(1, 200, 41'000)};
    MeterReading hoursRead = counter(2, 200, 18'000);
    hoursRead.meter = MeterKind::Minutes;
    m_season.counters.push_back(hoursRead);
    QCOMPARE(metersNow(m_season, heron, m_now).lanes, std::int64_t{41'100});
    QCOMPARE(since(), expected);
    // One that was typed off the counter stays where it is.
    m_season.services.front().meters.lanes = 40'400;
    QCOMPARE(since().first, std::int64_t{700});
}

/// What was typed when the centre was set up names the counter as it stood then, long before anything was logged.
void PartLivesTest::typedAtSetUp() {
    m_season.workBefore = {work(300, 100)};
    m_season.counters = {counter(1, 200, 41'000)};
    m_records = {record(1, 120, 40'400, done), record(2, 320, 41'100, done)};
    QCOMPARE(ages().front(), (Life{700, false}));
}

void PartLivesTest::inDays() {
    m_records = {record(1, 100, 0, done), record(2, 190, 0, failed)};
    QCOMPARE(ages(MeterKind::Days), (std::vector<Life>{{90, true}, {310, false}}));
}

void PartLivesTest::twiceAtOneReading() {
    m_records = {record(1, 100, 1'000, done), record(2, 100, 1'000, failed), record(3, 200, 1'700, done)};
    const PartLives lives = partLives({m_season, m_records, m_now, MeterKind::Lanes}, own);
    QCOMPARE(lives.ages(), (std::vector<Life>{{700, false}, {3'300, false}}));
    QCOMPARE(lives.leftOut, 1);
    QVERIFY(checkAges(lives.ages()));
}

/// Nobody follows the part of a retired item: it was good when the item was last seen.
void PartLivesTest::retiredItems() {
    m_season.items[0].retired = true;
    m_records = {record(1, 100, 1'000, done), record(2, 200, 2'200, failed)};
    ServiceRecord looked = record(3, 260, 2'900, ServiceResult::Done);
    looked.duty = {"blades-turn"};
    QCOMPARE(ages(), (std::vector<Life>{{1'200, true}}));
    m_records.push_back(looked);
    QCOMPARE(ages(), (std::vector<Life>{{1'200, true}, {700, false}}));
}

void PartLivesTest::pooled() {
    const ServiceItem& blades = m_season.items[0];
    const std::vector<ItemDuty> alike = alikeDuties(m_season.items, blades, blades.duties[1]);
    QCOMPARE(alike, (std::vector<ItemDuty>{{{"blades"}, {"blades-replace"}}, {{"others"}, {"others-replace"}}}));
    m_records = {record(1, 100, 1'000, done), record(2, 200, 2'200, failed), record(3, 100, 7'000, done, "others"),
                 record(4, 200, 7'800, failed, "others")};
    m_season.workBefore.push_back({grebe, day(300), {8'000, 1, {}, {}}});
    const PartLives lives = partLives({m_season, m_records, m_now, MeterKind::Lanes}, alike);
    QCOMPARE(lives.ages(), (std::vector<Life>{{1'200, true}, {2'800, false}, {800, true}, {200, false}}));
    // Things of no kind are alike by their name.
    std::vector<ServiceItem> others{item("a", heron, ItemKind::Other), item("b", grebe, ItemKind::Other)};
    others[1].name = "BLADES";
    QCOMPARE(alikeDuties(others, others[0], others[0].duties[1]).size(), size_t(2));
    others[1].name = "Lamp";
    QCOMPARE(alikeDuties(others, others[0], others[0].duties[1]).size(), size_t(1));
}

void PartLivesTest::roundsSensibly_data() {
    QTest::addColumn<double>("age");
    QTest::addColumn<int>("meter");
    QTest::addColumn<qint64>("expected");
    QTest::newRow("lanes") << 2'437.2 << int(MeterKind::Lanes) << qint64{2'400};
    QTest::newRow("up") << 996.0 << int(MeterKind::Lanes) << qint64{1'000};
    QTest::newRow("few") << 7.4 << int(MeterKind::Runs) << qint64{7};
    QTest::newRow("two digits") << 45.5 << int(MeterKind::Days) << qint64{46};
    QTest::newRow("less than one") << 0.2 << int(MeterKind::Days) << qint64{1};
    QTest::newRow("hours") << 7'412.0 << int(MeterKind::Minutes) << qint64{7'200};
    QTest::newRow("litres") << 123'456'789.0 << int(MeterKind::Volume) << qint64{120'000'000};
    QTest::newRow("beyond reason") << 1e300 << int(MeterKind::Lanes) << qint64{1'000'000'000'000};
}

void PartLivesTest::roundsSensibly() {
    QFETCH(double, age);
    QFETCH(int, meter);
    QFETCH(qint64, expected);
    QCOMPARE(qint64{roundedInterval(age, MeterKind(meter))}, expected);
}

void PartLivesTest::adoptsOneTrigger() {
    const ServiceItem& blades = m_season.items[0];
    const ServiceItem after = withInterval(blades, {"blades-replace"}, {MeterKind::Lanes, 900});
    QCOMPARE(after.duties[1].triggers, (std::vector<Trigger>{{MeterKind::Lanes, 900}, {MeterKind::Days, 180}}));
    QCOMPARE(after.duties[0], blades.duties[0]);
    const ServiceItem runs = withInterval(blades, {"blades-replace"}, {MeterKind::Runs, 80});
    QCOMPARE(runs.duties[1].triggers.back(), (Trigger{MeterKind::Runs, 80}));
    QCOMPARE(runs.duties[1].triggers.size(), size_t(3));
}

QTEST_GUILESS_MAIN(PartLivesTest)
#include "tst_part_lives.moc"
