// What is typed at a machine becomes entries in the packs' log, and the log then says which volts were read.
#include "core/season/pack_deeds.h"
#include "core/season/pack_outlook.h"
#include "tests/support/planning_builders.h"
#include "tests/support/practised_pack.h"

#include <QTest>

using namespace laneward;
using namespace support;

namespace {

const MachineId m1{"m1"};

ServiceItem packItem(const char* id, const char* machine = "m1") { return support::practisedPack(id, id, machine); }

SeasonState season() {
    SeasonState state;
    state.centre = house().centre;
    state.items = {packItem("p1"), packItem("p2"), packItem("p3")};
    return state;
}

/// As the store keeps them.
void keep(SeasonState& state, std::vector<PackReading> entries) {
    for (PackReading& entry : entries) {
        entry.id = {QString("e%1").arg(state.packReadings.size())};
        state.packReadings.push_back(entry);
    }
}

void note(SeasonState& state, const char* pack, PackDeed deed, Instant when) {
    PackReading reading;
    reading.pack = {pack};
    reading.deed = deed;
    reading.at = when;
    keep(state, {reading});
}

MachineLevels levelsAt(Instant now) {
    MachineLevels levels;
    levels.machine = m1;
    levels.at = now;
    return levels;
}

}  // namespace

class PackDeedsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void voltsGoToThePackOnTheMachine() {
        SeasonState state = season();
        const auto entries =
            packEntries(state, m1, {PackChange::None, {}, Millivolts{26'800}, VoltageState::JustCharged}, at(0, 15));
        QCOMPARE(entries.size(), size_t(1));
        QCOMPARE(entries.front().pack.value, QString("p1"));
        QVERIFY(entries.front().deed == PackDeed::Read && entries.front().state == VoltageState::JustCharged);
        QCOMPARE(entries.front().volts->value, std::int64_t{26'800});
        QVERIFY(packEntries(state, m1, {}, at(0, 15)).empty());
        QVERIFY(packEntries(state, {"m2"}, {PackChange::Charged, {}, {}, {}}, at(0, 15)).empty());  // keeps no pack
    }

    void aSwapMovesBothPacks() {
        SeasonState state = season();
        note(state, "p1", PackDeed::Charged, at(0, 6));
        const PackNews news{PackChange::Swapped, {"p3"}, Millivolts{26'000}, VoltageState::Rested};
        keep(state, packEntries(state, m1, news, at(0, 15)));
        const std::vector<PackState> packs = packsOf(state, at(0, 16));
        QVERIFY(packs[0].onCharge && !packs[0].onMachine);
        QVERIFY(packs[2].onMachine && !packs[2].onCharge);
        QVERIFY(packs[2].volts && packs[2].volts->value == 26'000 && !packs[0].volts);
        QVERIFY(!packs[1].onMachine && !packs[1].onCharge);
        QCOMPARE(packOn(state, m1, at(0, 16))->id.value, QString("p3"));
    }

    void aChargeBeginsAnew() {
        SeasonState state = season();
        keep(state, packEntries(state, m1, {PackChange::Charged, {}, {}, {}}, at(0, 15)));
        const PackState pack = packsOf(state, at(0, 16)).front();
        QVERIFY(pack.since && *pack.since == at(0, 15) && !pack.onCharge && pack.onMachine);
    }

    /// It stays with its machine, and the next run ends the charging.
    void aPackGoesOnCharge() {
        SeasonState state = season();
        keep(state, packEntries(state, m1, {PackChange::OnCharge, {}, {}, {}}, at(0, 22)));
        const PackState pack = packsOf(state, at(0, 23)).front();
        QVERIFY(pack.onCharge && pack.onMachine && pack.since && *pack.since == at(0, 22));
        QVERIFY(packEntries(state, {"m2"}, {PackChange::OnCharge, {}, {}, {}}, at(0, 22)).empty());  // keeps no pack
    }

    void theReadiestSpareGoesOn() {
        SeasonState state = season();
        note(state, "p3", PackDeed::Charged, at(0, 6));
        note(state, "p2", PackDeed::OnCharge, at(0, 5));
        QCOMPARE(sparesOf(state, m1, at(0, 15)), (std::vector<ItemId>{{"p3"}, {"p2"}}));
        keep(state, packEntries(state, m1, {PackChange::Swapped, {}, {}, {}}, at(0, 15)));
        QCOMPARE(packOn(state, m1, at(0, 16))->id.value, QString("p3"));
        QCOMPARE(sparesOf(state, m1, at(0, 16)), (std::vector<ItemId>{{"p2"}, {"p1"}}));
    }

    void aSpareThatNobodyKeepsEndsTheCharge() {
        SeasonState state = season();
        state.items = {packItem("p1")};
        const auto entries = packEntries(state, m1, {PackChange::Swapped, {}, Millivolts{26'000}, {}}, at(0, 15));
        QCOMPARE(entries.size(), size_t(1));
        QVERIFY(entries.front().deed == PackDeed::OnCharge && !entries.front().volts);
    }

    void limitsFollowThePack() {
        SeasonState state = season();
        state.items[1].pack->full.at = Millivolts{26'000};
        const Machine& machine = state.centre.machines.front();
        QCOMPARE(voltRuleOf(state, machine, at(0, 15)).full.at.value, std::int64_t{26'800});
        keep(state, packEntries(state, m1, {PackChange::Swapped, {"p2"}, {}, {}}, at(0, 15)));
        QCOMPARE(voltRuleOf(state, machine, at(0, 16)).full.at.value, std::int64_t{26'000});
        // A spare that is kept is one, whatever the settings say.
        state.centre.machines.front().capacity.sparePacks = 0;
        QVERIFY(voltRuleOf(state, machine, at(0, 16)).hasSpare);
        state.items.clear();
        QVERIFY(!voltRuleOf(state, machine, at(0, 16)).hasSpare);
        QCOMPARE(voltRuleOf(state, machine, at(0, 16)).full.at.value, machine.fullAt.value);
    }

    void theLogKnowsTheState() {
        SeasonState state = season();
        const Instant dawn = at(0, 5);
        QVERIFY(!voltsToday(state, levelsAt(at(0, 16)), dawn));
        keep(state, packEntries(state, m1, {PackChange::None, {}, Millivolts{26'900}, VoltageState::JustCharged}, at(0, 15)));
        // The levels carry the same volts on; only the log knows their state.
        MachineLevels levels = levelsAt(at(0, 16));
        levels.volts = Millivolts{26'900};
        QVERIFY(*voltsToday(state, levels, dawn) == (MeasuredVolts{Millivolts{26'900}, VoltageState::JustCharged, at(0, 15)}));
        // Volts of yesterday, or of before a charge, count no more.
        QVERIFY(!voltsToday(state, levelsAt(at(0, 16)), at(0, 15, 30)));
        keep(state, packEntries(state, m1, {PackChange::Charged, {}, {}, {}}, at(0, 15, 40)));
        QVERIFY(!voltsToday(state, levelsAt(at(0, 16)), dawn));
    }

    void withoutALogVoltsAreRested() {
        SeasonState state = season();
        state.items.clear();
        MachineLevels levels = levelsAt(at(0, 16));
        levels.volts = Millivolts{25'000};
        LevelReading reading;
        reading.id = {"l1"};
        reading.levels = levels;
        reading.levels.at = at(0, 15);
        state.readings = {reading};
        QVERIFY(*voltsToday(state, levels, at(0, 5)) == (MeasuredVolts{Millivolts{25'000}, VoltageState::Rested, at(0, 15)}));
    }
};

QTEST_GUILESS_MAIN(PackDeedsTest)
#include "tst_pack_deeds.moc"
