// The log of packs against logs told by hand.
#include "core/service/pack_log.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace laneward;

namespace {

const MachineId m1{"m1"};
constexpr Instant at(int day, int hour) { return Instant{1'700'000'000} + hours(24 * day + hour); }

ServiceItem pack(const char* id, const MachineId& machine = m1) { return {{id}, machine, ItemKind::Pack, id, {}, {}, false, 1}; }

MachineWork run(Instant end, int lanes, const MachineId& machine = m1) { return {machine, end, {lanes, 1, minutes(30), {}}}; }

PackReading deed(int n, Instant when, const char* packId, PackDeed what, bool spent = false) {
    PackReading reading{{QString("r%1").arg(n)}, when, {"ada"}, {packId}, what};
    reading.spent = spent;
    return reading;
}

const std::vector<ServiceItem> two{pack("a"), pack("b")};

}  // namespace

class PackLogTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void withoutALogTheFirstPackIsOn();
    void aChargeIsWhatRanInBetween();
    void swappedInTheMiddleOfTheNight();
    void chargedInPlace();
    void aRunEndsForgottenCharging();
    void voltsKeepTheirLanes();
    void onlyStandingReadingsCount();
    void orderDoesNotMatter();
    void whatCannotBeIsRefused();
};

void PackLogTest::withoutALogTheFirstPackIsOn() {
    ServiceItem old = pack("0");
    old.retired = true;
    const auto packs = packStates({pack("b"), pack("a"), pack("x", {}), old}, {}, {run(at(0, 18), 8)}, at(1, 0));
    QCOMPARE(packs.size(), size_t(2));
    QVERIFY(packs[0].pack.value == "a" && packs[0].onMachine && !packs[1].onMachine);
    QCOMPARE(packs[0].lanes, 8.0);
    QVERIFY(!packs[0].since && packs[0].charges.empty());
}

void PackLogTest::aChargeIsWhatRanInBetween() {
    const auto packs = packStates({pack("a")},
                                  {deed(1, at(0, 8), "a", PackDeed::Charged), deed(2, at(1, 23), "a", PackDeed::OnCharge, true),
                                   deed(3, at(2, 6), "a", PackDeed::Charged), deed(4, at(3, 1), "a", PackDeed::OnCharge)},
                                  {run(at(-1, 18), 99), run(at(0, 18), 8), run(at(1, 18), 12), run(at(2, 18), 5)}, at(3, 2));
    QCOMPARE(packs[0].charges.size(), size_t(2));
    QCOMPARE(packs[0].charges[0].lanes, 20.0);
    QVERIFY(!packs[0].charges[0].cutShort);
    QCOMPARE(packs[0].charges[1].lanes, 5.0);
    QVERIFY(packs[0].charges[1].cutShort);
    QVERIFY(std::abs(packs[0].charges[1].day - packs[0].charges[0].day - 26 / 24.0) < 1e-6);
    QVERIFY(packs[0].onCharge && packs[0].since == at(3, 1));
}

void PackLogTest::swappedInTheMiddleOfTheNight() {
    const auto packs =
        packStates(two,
                   {deed(1, at(0, 8), "a", PackDeed::Charged), deed(2, at(0, 9), "b", PackDeed::Charged),
                    deed(3, at(0, 20), "b", PackDeed::OnMachine), deed(4, at(0, 21), "a", PackDeed::OnCharge, true)},
                   {run(at(0, 18), 10), run(at(0, 19), 6), run(at(0, 22), 4)}, at(0, 23));
    QCOMPARE(packs[0].charges, (std::vector<PackCharge>{{packs[0].charges[0].day, 16, false}}));
    QVERIFY(packs[0].onCharge && !packs[0].onMachine);
    QVERIFY(packs[1].onMachine && packs[1].charges.empty());
    QCOMPARE(packs[1].lanes, 4.0);
}

void PackLogTest::chargedInPlace() {
    const auto packs = packStates(two, {deed(1, at(0, 1), "a", PackDeed::OnCharge), deed(2, at(0, 9), "a", PackDeed::OnMachine)},
                                  {run(at(0, 18), 7)}, at(0, 20));
    QVERIFY(packs[0].onMachine && !packs[0].onCharge && packs[0].since == at(0, 9));  // taken off the charger
    QCOMPARE(packs[0].lanes, 7.0);
}

void PackLogTest::aRunEndsForgottenCharging() {
    const auto packs =
        packStates({pack("a")}, {deed(1, at(0, 1), "a", PackDeed::OnCharge)}, {run(at(0, 18), 7), run(at(0, 19), 3)}, at(0, 20));
    QVERIFY(!packs[0].onCharge && packs[0].since == at(0, 18));
    QCOMPARE(packs[0].lanes, 10.0);
}

void PackLogTest::voltsKeepTheirLanes() {
    PackReading volts = deed(2, at(0, 19), "a", PackDeed::Read);
    volts.volts = Millivolts{24'900};
    volts.state = VoltageState::UnderLoad;
    const auto packs = packStates({pack("a")}, {deed(1, at(0, 8), "a", PackDeed::Charged), volts},
                                  {run(at(0, 18), 8), run(at(0, 20), 2)}, at(0, 21));
    QCOMPARE(packs[0].lanesAtVolts, 8.0);
    QCOMPARE(packs[0].lanes, 10.0);
    QVERIFY(packs[0].volts == Millivolts{24'900} && packs[0].state == VoltageState::UnderLoad && packs[0].voltsAt == at(0, 19));
}

void PackLogTest::onlyStandingReadingsCount() {
    PackReading wrong = deed(1, at(0, 8), "a", PackDeed::OnCharge);
    PackReading gone = deed(2, at(0, 8), "a", PackDeed::OnCharge);
    gone.withdrawn = true;
    gone.corrects = wrong.id;
    QVERIFY(standing({wrong, gone}).empty());
    QVERIFY(!packStates({pack("a")}, standing({wrong, gone}), {}, at(1, 0))[0].onCharge);
    // What is still to come is not there yet.
    QVERIFY(!packStates({pack("a")}, {wrong}, {}, at(0, 7))[0].onCharge);
}

void PackLogTest::orderDoesNotMatter() {
    std::vector<PackReading> readings{deed(1, at(0, 8), "a", PackDeed::Charged), deed(2, at(0, 20), "b", PackDeed::OnMachine),
                                      deed(3, at(0, 21), "a", PackDeed::OnCharge, true)};
    std::vector<MachineWork> work{run(at(0, 18), 8), run(at(0, 22), 3), run(at(0, 19), 1)};
    const auto forwards = packStates(two, readings, work, at(1, 0));
    std::reverse(readings.begin(), readings.end());
    std::reverse(work.begin(), work.end());
    const auto backwards = packStates({pack("b"), pack("a")}, readings, work, at(1, 0));
    for (size_t i = 0; i < 2; ++i) {
        QVERIFY(forwards[i].pack == backwards[i].pack && forwards[i].charges == backwards[i].charges);
        QCOMPARE(forwards[i].lanes, backwards[i].lanes);
    }
}

void PackLogTest::whatCannotBeIsRefused() {
    const ServiceItem item = pack("a");
    ServiceItem brush = item;
    brush.kind = ItemKind::CushionBrush;
    const auto ruleOf = [](const std::vector<Finding>& faults) { return faults.empty() ? QByteArray() : faults.front().rule; };
    PackReading reading = deed(1, at(0, 8), "a", PackDeed::Read);
    QCOMPARE(ruleOf(faultsOf(reading, &item, at(1, 0))), QByteArray("pack.says-nothing"));
    reading.volts = Millivolts{60'001};
    QCOMPARE(ruleOf(faultsOf(reading, &item, at(1, 0))), QByteArray("pack.volts"));
    reading.volts = Millivolts{-1};
    QCOMPARE(ruleOf(faultsOf(reading, &item, at(1, 0))), QByteArray("pack.volts"));
    reading.volts = Millivolts{26'800};
    QVERIFY(faultsOf(reading, &item, at(1, 0)).empty());
    QCOMPARE(ruleOf(faultsOf(reading, &item, at(0, 7))), QByteArray("pack.in-future"));
    QCOMPARE(ruleOf(faultsOf(reading, nullptr, at(1, 0))), QByteArray("pack.unknown"));
    QCOMPARE(ruleOf(faultsOf(reading, &brush, at(1, 0))), QByteArray("pack.unknown"));
    // A fault of its limits is one of the item; what only seems unwise is not.
    ServiceItem odd = item;
    odd.pack = PackLimits{{Chemistry::FloodedLeadAcid, Millivolts{24'000}}, {Millivolts{61'000}}, {}, {}};
    QCOMPARE(ruleOf(faultsOf(odd, "EUR")), QByteArray("pack.volts"));
    brush.pack = PackLimits{{Chemistry::Other, Millivolts{24'000}}, {}, {}, {}};
    QCOMPARE(ruleOf(faultsOf(brush, "EUR")), QByteArray("service.no-pack"));
    // The settings of one machine's operators (common practice, no source) may be set; they are nobody's default.
    odd.pack = PackLimits{{Chemistry::FloodedLeadAcid, Millivolts{24'000}},
                          {Millivolts{26'800}, VoltageState::JustCharged},
                          {Millivolts{25'400}, VoltageState::JustCharged},
                          {Millivolts{20'000}, VoltageState::UnderLoad}};
    QVERIFY(faultsOf(odd, "EUR").empty());
    QVERIFY(!findingsOf(*odd.pack, "a").empty());  // under 20 V such a pack is empty
}

QTEST_GUILESS_MAIN(PackLogTest)
#include "tst_pack_log.moc"
