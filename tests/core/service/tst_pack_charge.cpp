// Charge from volts, settings that make no sense, and what a pack's log says. Tables and calibration:
// tests/outside/tst_batteries.cpp.
#include "core/service/pack_charge.h"
#include "core/service/pack_lanes.h"

#include <QTest>

#include <cmath>

using namespace laneward;

namespace {

constexpr PackKind flooded{Chemistry::FloodedLeadAcid, {24'000}};
constexpr PackKind lithium{Chemistry::LithiumIronPhosphate, {24'000}};

QByteArrayList rulesOf(const PackLimits& limits) {
    QByteArrayList rules;
    for (const Finding& finding : findingsOf(limits, "Pack 1"))
        rules << finding.rule;
    return rules;
}

Charge charge(const PackKind& kind, std::int64_t mv, VoltageState state) { return **chargeOf(kind, {mv}, state); }

bool near(double a, double b, double tolerance = 1e-9) {
    if (std::abs(a - b) <= tolerance) return true;
    qWarning("%.12g instead of %.12g", a, b);
    return false;
}

}  // namespace

class PackChargeTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void restedVolts();
    void chargedAndLoadedAreBounds();
    void voltsOutsideAreRefused();
    void otherHasNoTable();
    void settingsAsOperatorsHaveThem();
    void warnings_data();
    void warnings();
    void impossibleSettings();
    void usualNumberBeforeTheFirstCharge();
    void learnsFromCharges();
    void cutShortIsAtLeast();
    void badCharges();
    void chanceToFinish();
    void trend();
    void trendRefusals();
};

void PackChargeTest::restedVolts() {
    const Charge c = charge(flooded, 24'900, VoltageState::Rested);
    QVERIFY(near(c.share, 0.75));
    QVERIFY(near(c.likely.low, 0.75 - 0.25 * 0.1 / 0.21) && near(c.likely.high, 0.75 + 0.25 * 0.1 / 0.2));
    QVERIFY(near(charge(flooded, 30'000, VoltageState::Rested).share, 1));
    QVERIFY(near(charge(flooded, 1'000, VoltageState::Rested).likely.high, 0));
    QCOMPARE(laneward::restedVolts(flooded, 0.5)->value, 24'480);
    QCOMPARE(laneward::restedVolts(flooded, 7)->value, 25'300);
    QCOMPARE(laneward::restedVolts({Chemistry::Agm, {12'000}}, 1)->value, 12'850);
    // So flat is a lithium pack in between that the range says what volts do not.
    QVERIFY(charge(lithium, 26'300, VoltageState::Rested).likely.high - charge(lithium, 26'300, VoltageState::Rested).likely.low >
            0.35);
}

void PackChargeTest::chargedAndLoadedAreBounds() {
    const Charge just = charge(flooded, 26'800, VoltageState::JustCharged);
    QVERIFY(near(just.share, 1) && near(just.likely.low, 0) && near(just.likely.high, 1));
    const Charge low = charge(flooded, 24'000, VoltageState::JustCharged);
    QVERIFY(near(low.likely.low, 0) && low.likely.high < 0.4);
    const Charge loaded = charge(flooded, 24'480, VoltageState::UnderLoad);
    QVERIFY(near(loaded.share, 0.5) && near(loaded.likely.high, 1) && loaded.likely.low < 0.5);
}

void PackChargeTest::voltsOutsideAreRefused() {
    for (std::int64_t mv : {std::int64_t{-1}, std::int64_t{60'001}, std::numeric_limits<std::int64_t>::max()}) {
        const auto refused = chargeOf(flooded, {mv}, VoltageState::Rested);
        QVERIFY(!refused);
        QCOMPARE(refused.error().finding.rule, QByteArray("pack.volts"));
        QCOMPARE(voltsFindings({mv}, "Pack 1").size(), size_t(1));
        QCOMPARE(voltsFindings({mv}, "Pack 1")[0].subject, QString("Pack 1"));
    }
    QVERIFY(voltsFindings({0}, "Pack 1").empty() && voltsFindings({60'000}, "Pack 1").empty());
    QCOMPARE(chargeOf({Chemistry::Agm, {0}}, {12'000}, VoltageState::Rested).error().finding.rule, QByteArray("pack.nominal"));
}

void PackChargeTest::otherHasNoTable() {
    const PackKind other{Chemistry::Other, {24'000}};
    const auto nothing = chargeOf(other, {25'000}, VoltageState::Rested);
    QVERIFY(nothing && !*nothing);
    QVERIFY(!laneward::restedVolts(other, 0.5));
    const VoltLimit full{{26'800}, VoltageState::JustCharged};
    QCOMPARE(rulesOf({other, full, {{25'400}}, {{20'000}}}), QByteArrayList{"pack.no-table"});
}

// Common practice, no source: full at 26.8 V straight off the charger, 25.4 V fit to run, spare on below 20 V. They can be
// entered; for a flooded pack the last is beyond empty however it is measured.
void PackChargeTest::settingsAsOperatorsHaveThem() {
    const VoltLimit full{{26'800}, VoltageState::JustCharged};
    const VoltLimit fit{{25'400}, VoltageState::Rested};
    QCOMPARE(rulesOf({flooded, full, fit, {{20'000}, VoltageState::Rested}}), QByteArrayList{"pack.spare-empty"});
    QCOMPARE(rulesOf({flooded, full, fit, {{20'000}, VoltageState::UnderLoad}}), QByteArrayList{"pack.spare-empty"});
    QCOMPARE(rulesOf({lithium, full, fit, {{20'000}, VoltageState::UnderLoad}}), QByteArrayList{});
    // As rested values of a flooded pack the first cannot be.
    const auto rested = findingsOf({flooded, {{26'800}, VoltageState::Rested}, fit, {{24'000}}}, "Pack 1");
    QCOMPARE(rested.size(), size_t(1));
    QCOMPARE(rested[0].rule, QByteArray("pack.full-unreachable"));
    QCOMPARE(rested[0].severity, Severity::Warning);
    QCOMPARE(rested[0].values, (std::vector<Value>{Millivolts{26'800}, Millivolts{25'500}}));
}

void PackChargeTest::warnings_data() {
    QTest::addColumn<int>("chemistry");
    QTest::addColumn<QList<int>>("settings");  // full, its state, fit, its state, spare, its state
    QTest::addColumn<QByteArrayList>("rules");
    const auto row = [](const char* name, Chemistry chemistry, const QList<int>& settings, const QByteArrayList& rules) {
        QTest::newRow(name) << int(chemistry) << settings << rules;
    };
    const Chemistry lead = Chemistry::FloodedLeadAcid;
    row("sound", lead, {25'200, 1, 24'800, 1, 24'200, 1}, {});
    row("full below fit", lead, {24'800, 1, 25'000, 1, 24'200, 1}, {"pack.order-full"});
    row("charged full above rested fit", lead, {26'000, 0, 25'000, 1, 24'200, 1}, {});
    row("rested full below charged fit", lead, {25'200, 1, 26'000, 0, 24'200, 1}, {});
    row("spare above fit", lead, {25'200, 1, 24'200, 1, 24'800, 1}, {"pack.order-spare"});
    row("rested spare above loaded fit", lead, {25'200, 1, 23'000, 2, 24'200, 1}, {});
    row("beyond the charger", lead, {30'000, 0, 24'800, 1, 24'200, 1}, {"pack.full-unreachable"});
    row("fit beyond full", lead, {26'800, 0, 25'800, 1, 24'200, 1}, {"pack.fit-unreachable"});
    row("full at half", lead, {24'500, 1, 24'400, 1, 24'200, 1}, {"pack.full-low"});
    row("fit below empty", lead, {25'200, 1, 23'500, 1, 23'500, 1}, {"pack.fit-empty", "pack.spare-empty"});
    row("drawn down too far", lead, {25'200, 1, 24'800, 1, 20'500, 2}, {"pack.spare-empty"});
    row("loaded but not too far", lead, {25'200, 1, 24'800, 1, 21'500, 2}, {});
    row("assumed table", Chemistry::Agm, {25'600, 1, 25'200, 1, 24'600, 1}, {"pack.assumed-table"});
    row("gel likewise", Chemistry::Gel, {26'800, 1, 25'200, 1, 24'600, 1}, {"pack.full-unreachable", "pack.assumed-table"});
}

void PackChargeTest::warnings() {
    QFETCH(int, chemistry);
    QFETCH(QList<int>, settings);
    QFETCH(QByteArrayList, rules);
    const auto limit = [&](int i) { return VoltLimit{{settings[i]}, VoltageState(settings[i + 1])}; };
    QCOMPARE(rulesOf({{Chemistry(chemistry), {24'000}}, limit(0), limit(2), limit(4)}), rules);
    // The same pack at half the volts.
    for (int i : {0, 2, 4})
        settings[i] /= 2;
    QCOMPARE(rulesOf({{Chemistry(chemistry), {12'000}}, limit(0), limit(2), limit(4)}), rules);
}

void PackChargeTest::impossibleSettings() {
    const auto found = findingsOf({flooded, {{61'000}}, {{-5}}, {{24'000}}}, "Pack 1");
    QCOMPARE(found.size(), size_t(2));
    for (const Finding& one : found)
        QVERIFY(one.rule == "pack.volts" && one.severity == Severity::Fault);
    QCOMPARE(rulesOf({{Chemistry::Agm, {-24'000}}, {{25'600}}, {{25'200}}, {{24'600}}}), QByteArrayList{"pack.nominal"});
}

void PackChargeTest::usualNumberBeforeTheFirstCharge() {
    const PackLanes lanes(40);
    QVERIFY(near(lanes.quantile(0.5), 40, 1e-3));
    QVERIFY(lanes.quantile(0.1) > 20 && lanes.quantile(0.1) < 30);
    QVERIFY(near(lanes.chanceOfMore(lanes.quantile(0.1)), 0.9, 1e-6));
    QCOMPARE(lanes.chanceOfMore(0), 1.0);
    QVERIFY(lanes.chanceOfMore(1e9) < 1e-9);
    QCOMPARE(lanes.charges(), 0);
}

void PackChargeTest::learnsFromCharges() {
    PackLanes lanes(40);
    for (int i = 0; i < 30; ++i)
        QVERIFY(lanes.learn({double(i), 52.0 + 2 * (i % 3), false}));
    QVERIFY(near(lanes.quantile(0.5), 54, 0.6));
    QVERIFY(lanes.quantile(0.05) > 49 && lanes.quantile(0.95) < 59);
    QCOMPARE(lanes.charges(), 30);
    // It fades: the number that holds now is believed before long.
    for (int i = 0; i < 40; ++i)
        lanes.learn({double(30 + i), 34.0 + i % 3, false});
    QVERIFY(lanes.quantile(0.5) > 33 && lanes.quantile(0.5) < 43);
}

void PackChargeTest::cutShortIsAtLeast() {
    PackLanes lanes(40);
    for (int i = 0; i < 30; ++i)
        lanes.learn({double(i), 20, true});
    QVERIFY(lanes.quantile(0.5) > 38);  // 20 lanes and more to come say nothing against 40
    PackLanes longer(40);
    for (int i = 0; i < 30; ++i)
        longer.learn({double(i), 60, true});
    QVERIFY(longer.quantile(0.5) > 60);
    QCOMPARE(longer.cutShort(), 30);
}

void PackChargeTest::badCharges() {
    PackLanes lanes(40);
    for (double bad : {0.0, -3.0, std::nan(""), HUGE_VAL, 5'000.0})
        QVERIFY(!lanes.learn({1, bad, false}));
    QCOMPARE(lanes.charges(), 0);
    for (double extreme : {0.001, 3'999.0, 0.001})
        QVERIFY(lanes.learn({1, extreme, extreme > 1}));
    QVERIFY(std::isfinite(lanes.quantile(0.5)) && lanes.chanceOfMore(10) >= 0);
}

void PackChargeTest::chanceToFinish() {
    PackLanes lanes(40);
    for (int i = 0; i < 30; ++i)
        lanes.learn({double(i), 40.0 + i % 3 - 1, false});
    const Charge full{1, {1, 1}};
    QVERIFY(near(lanes.chanceToFinish(full, 36), lanes.chanceOfMore(36)));
    const Charge half{0.5, {0.4, 0.6}};
    QVERIFY(lanes.chanceToFinish(half, 14) > 0.99 && lanes.chanceToFinish(half, 26) < 0.01);
    QVERIFY(near(lanes.chanceToFinish(half, 20), 0.5, 0.03));
    QCOMPARE(lanes.chanceToFinish({0, {0, 0}}, 1), 0.0);
    QCOMPARE(lanes.chanceToFinish({0, {0, 0}}, 0), 1.0);
}

void PackChargeTest::trend() {
    std::vector<PackCharge> log;
    for (int i = 0; i < 12; ++i)
        log.push_back({30.0 * i, 45 - 0.5 * i + (i % 2 ? 0.2 : -0.2), false});
    log.push_back({100, 5, true});  // cut short: says nothing here
    const auto found = trendOf(log, 32);
    QVERIFY(bool(found));
    QCOMPARE(found->charges, 12);
    QVERIFY(near(found->day, 30 * 26, 15));
    QVERIFY(near(found->lanesPerDay, -0.5 / 30, 1e-3));
    QVERIFY(found->dayInterval.contains(found->day) && found->dayInterval.low > 650 && found->dayInterval.high < 1'000);
    // Already too few: the day has passed.
    const auto passed = trendOf(log, 42);
    QVERIFY(passed && passed->day < 330);
}

void PackChargeTest::trendRefusals() {
    std::vector<PackCharge> few(leastTrendCharges - 1, {0, 40, false});
    for (size_t i = 0; i < few.size(); ++i)
        few[i].day = double(i);
    QCOMPARE(trendOf(few, 30).error().finding.rule, QByteArray("pack.trend-few"));
    QCOMPARE(trendOf(std::vector<PackCharge>(9, {3, 40, false}), 30).error().finding.rule, QByteArray("pack.trend-few"));
    std::vector<PackCharge> better;
    for (int i = 0; i < 9; ++i)
        better.push_back({double(i), 40.0 + i, false});
    QCOMPARE(trendOf(better, 30).error().finding.rule, QByteArray("pack.trend-steady"));
    better[3].lanes = std::nan("");
    QCOMPARE(trendOf(better, 30).error().finding.rule, QByteArray("pack.trend-log"));
    QCOMPARE(trendOf({}, 30).error().finding.rule, QByteArray("pack.trend-few"));
}

QTEST_GUILESS_MAIN(PackChargeTest)
#include "tst_pack_charge.moc"
