// Which volts count, and what measured volts say about them.
#include "core/service/volt_limits.h"
#include "tests/support/practised_pack.h"

#include <QTest>

using namespace laneward;

namespace {

ServiceItem practised() { return support::practisedPack("p1", "Pack"); }

Machine machine() {
    Machine made;
    made.id = {"m1"};
    made.name = "Otter";
    return made;
}

QByteArray ruleOf(const std::vector<Finding>& findings) { return findings.empty() ? QByteArray() : findings.front().rule; }

}  // namespace

class VoltLimitsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aPacksOwnLimitsComeFirst() {
        const ServiceItem pack = practised();
        const VoltRule own = voltRule(machine(), &pack);
        QCOMPARE(own.pack.value, QString("p1"));
        QCOMPARE(own.full.at.value, std::int64_t{26'800});
        QVERIFY(own.full.state == VoltageState::JustCharged && own.fit && own.fit->at == Millivolts{25'400});
        QCOMPARE(own.spareBelow.at.value, std::int64_t{20'000});
        ServiceItem bare = pack;
        bare.pack.reset();
        for (const ServiceItem* none : {static_cast<const ServiceItem*>(nullptr), static_cast<const ServiceItem*>(&bare)}) {
            const VoltRule set = voltRule(machine(), none);
            QVERIFY(set.pack.isEmpty() && !set.fit);
            QVERIFY((set.full == VoltLimit{machine().fullAt, VoltageState::Rested}));
            QVERIFY((set.spareBelow == VoltLimit{machine().attachSpareAt, VoltageState::Rested}));
        }
    }

    void noDefaultIsOneMachinesPractice() {
        QVERIFY(PackLimits{}.full.at == Millivolts{0} && PackLimits{}.fit.at == Millivolts{0});
        QVERIFY(machine().fullAt != Millivolts{26'800} && machine().attachSpareAt != Millivolts{20'000});
    }

    void statesThatCompare_data() {
        QTest::addColumn<int>("measured");
        QTest::addColumn<int>("asked");
        QTest::addColumn<int>("below");    // what 24.9 V say of a limit of 25 V
        QTest::addColumn<int>("atLeast");  // and 25 V
        const auto row = [](const char* name, VoltageState measured, VoltageState asked, Against below, Against atLeast) {
            QTest::newRow(name) << int(measured) << int(asked) << int(below) << int(atLeast);
        };
        using S = VoltageState;
        row("the same", S::Rested, S::Rested, Against::Below, Against::AtLeast);
        row("rested for just charged", S::Rested, S::JustCharged, Against::Unknown, Against::AtLeast);
        row("under load for rested", S::UnderLoad, S::Rested, Against::Unknown, Against::AtLeast);
        row("just charged for rested", S::JustCharged, S::Rested, Against::Below, Against::Unknown);
        row("rested for under load", S::Rested, S::UnderLoad, Against::Below, Against::Unknown);
        row("just charged for under load", S::JustCharged, S::UnderLoad, Against::Below, Against::Unknown);
    }

    void statesThatCompare() {
        QFETCH(int, measured);
        QFETCH(int, asked);
        QFETCH(int, below);
        QFETCH(int, atLeast);
        const VoltLimit limit{Millivolts{25'000}, VoltageState(asked)};
        QCOMPARE(int(against(Millivolts{24'999}, VoltageState(measured), limit)), below);
        QCOMPARE(int(against(Millivolts{25'000}, VoltageState(measured), limit)), atLeast);
    }

    void onePracticeGivesTheRightAnswers_data() {
        QTest::addColumn<int>("millivolts");
        QTest::addColumn<int>("state");
        QTest::addColumn<QByteArray>("rule");
        const auto row = [](const char* name, int millivolts, VoltageState state, const char* rule) {
            QTest::newRow(name) << millivolts << int(state) << QByteArray(rule);
        };
        row("full", 26'800, VoltageState::JustCharged, "");
        row("hardly full", 26'799, VoltageState::JustCharged, "readiness.not-full");
        row("fit", 25'400, VoltageState::JustCharged, "readiness.not-full");
        row("not fit", 25'399, VoltageState::JustCharged, "readiness.not-fit");
        row("lasts under load", 20'000, VoltageState::UnderLoad, "readiness.other-state");
        row("spare on", 19'999, VoltageState::UnderLoad, "readiness.attach-spare");
        row("spare on, rested", 19'999, VoltageState::Rested, "readiness.attach-spare");
        row("spare on, just charged", 19'999, VoltageState::JustCharged, "readiness.attach-spare");
        row("fit though rested", 25'400, VoltageState::Rested, "");
        row("rested says little", 25'000, VoltageState::Rested, "readiness.other-state");
    }

    void onePracticeGivesTheRightAnswers() {
        QFETCH(int, millivolts);
        QFETCH(int, state);
        QFETCH(QByteArray, rule);
        const ServiceItem pack = practised();
        const MeasuredVolts measured{{millivolts}, VoltageState(state), {}};
        const std::vector<Finding> findings = voltFindings(measured, voltRule(machine(), &pack), "Otter");
        QCOMPARE(ruleOf(findings), rule);
        if (!findings.empty()) QCOMPARE(findings.front().subject, QString("Otter"));
    }

    void withoutASpareItIsCharged() {
        Machine one = machine();
        one.capacity.sparePacks = 0;
        const MeasuredVolts low{Millivolts{24'000}, VoltageState::Rested, {}};
        QCOMPARE(ruleOf(voltFindings(low, voltRule(one, nullptr), "Otter")), QByteArray("readiness.charge-first"));
        QCOMPARE(ruleOf(voltFindings(low, voltRule(machine(), nullptr), "Otter")), QByteArray("readiness.attach-spare"));
    }
};

QTEST_GUILESS_MAIN(VoltLimitsTest)
#include "tst_volt_limits.moc"
