// The least number of treatments of one lane against brute force: every way to treat or not to treat in every gap is tried, with
// own code for the demand table. Source of the rules: the product's own demand table; nothing is shared but value types.
#include "core/planning/fewest.h"

#include <QTest>

#include <random>

using namespace laneward;

namespace {

constexpr std::int64_t origin = 1'794'000'000;  // any moment; times below are minutes from it
constexpr int laneMinutes = 2;

int between(std::mt19937& g, int low, int high) { return low + int(g() % unsigned(high - low + 1)); }

/// One lane with a few plays, in minutes, told twice: as the program sees it and as the brute force does.
struct Case {
    struct Play {
        int begin = 0;
        int end = 0;
        SurfaceDemand asks;
    };
    std::vector<Play> plays;
    State state;
    Occupancy occupancy;
    DateRange range{{2026, 11, 5}, {2026, 11, 8}};
    bool known = false;
    int historyEnd = 0;
    int historyPattern = -1;
};

Instant at(int minute) { return Instant{origin} + minutes(minute); }

PatternId pattern(int p) { return {QString("p%1").arg(p)}; }

SurfaceDemand randomDemand(std::mt19937& g) {
    SurfaceDemand d;
    d.lanes = {1};
    const DemandKind kinds[] = {DemandKind::Fresh, DemandKind::Recent, DemandKind::Pattern, DemandKind::AsItIs};
    d.kind = kinds[between(g, 0, 3)];
    if (between(g, 1, 4) > 1) d.pattern = pattern(between(g, 0, 2));
    if (between(g, 1, 4) == 1) d.least = Treatment::ConditionOnly;
    if (between(g, 1, 8) == 1) {
        d.least = Treatment::CleanOnly;
        d.pattern.reset();
    }
    d.longestAge = minutes(between(g, 30, 900));
    d.longestPlay = minutes(between(g, 0, 300));
    return d;
}

Case randomCase(unsigned seed) {
    std::mt19937 g(seed);
    Case c;
    c.state.centre.facts.lanes = 1;
    c.state.centre.facts.settings.reserve = minutes(0);
    for (int p = 0; p < 3; ++p) {
        Pattern x;
        x.id = pattern(p);
        x.name = x.id.value;
        c.state.patterns.push_back(x);
    }
    Machine m;
    m.id = {"m"};
    m.times.lane = {minutes(laneMinutes), minutes(laneMinutes), minutes(laneMinutes)};
    c.state.centre.machines.push_back(m);
    int t = between(g, 0, 200);
    for (int k = between(g, 1, 6); k > 0; --k) {
        Case::Play play{t, t + between(g, 20, 200), randomDemand(g)};
        // Many gaps have no room at all: there the choice lies elsewhere.
        t = play.end + (between(g, 1, 3) == 1 ? between(g, 0, 1) : between(g, 2, 400));
        c.plays.push_back(play);
        Occurrence o;
        o.series = {QString("s%1").arg(k)};
        o.title = o.series.value;
        o.booked = {at(play.begin), at(play.end)};
        o.cleared = at(play.end);
        o.lanes = {1};
        o.demands = {play.asks};
        c.occupancy.occurrences.push_back(o);
    }
    c.known = between(g, 1, 3) > 1;
    if (c.known) {
        c.historyEnd = -between(g, 1, 600);
        c.historyPattern = between(g, -1, 2);
        LaneTreatment last{1, c.historyPattern < 0 ? Treatment::CleanOnly : Treatment::CleanAndCondition, {}, at(c.historyEnd)};
        if (c.historyPattern >= 0) last.pattern = pattern(c.historyPattern);
        c.state.history.push_back(last);
    }
    return c;
}

/// What is on the lane, in plain numbers.
struct Surface {
    bool known = false;
    int kind = 0;      // 0 clean and condition, 1 condition only, 2 clean only
    int pattern = -1;  // -1 = bare
    int end = 0;
    int played = 0;
};

bool good(const Surface& s, const SurfaceDemand& d, int start) {
    if (d.kind == DemandKind::AsItIs) return true;
    if (!s.known) return false;
    int wanted = -1;
    if (d.pattern) wanted = d.pattern->value.mid(1).toInt();
    if (wanted >= 0 && s.pattern != wanted) return false;
    if (wanted < 0 && s.pattern < 0 && d.least != Treatment::CleanOnly) return false;
    if (d.kind == DemandKind::Pattern) return true;
    const bool enough =
        s.kind == 0 || (s.kind == 1 && d.least == Treatment::ConditionOnly) || (s.kind == 2 && d.least == Treatment::CleanOnly);
    if (!enough || start - s.end > d.longestAge.value / 60) return false;
    return d.kind == DemandKind::Fresh ? s.played == 0 : s.played <= d.longestPlay.value / 60;
}

struct Best {
    int unmet = 1000;
    int treatments = 1000;
};

/// Every choice in the gap before play `k`: nothing, or any kind with any pattern, as late as the gap lasts.
void tryAll(const Case& c, size_t k, int free, Surface s, int unmet, int treatments, Best& best) {
    if (k == c.plays.size()) {
        if (std::pair(unmet, treatments) < std::pair(best.unmet, best.treatments)) best = {unmet, treatments};
        return;
    }
    const Case::Play& play = c.plays[k];
    const auto go = [&](Surface now, int more) {
        const int miss = good(now, play.asks, play.begin) ? 0 : 1;
        now.played += play.end - play.begin;
        tryAll(c, k + 1, play.end, now, unmet + miss, treatments + more, best);
    };
    go(s, 0);
    if (play.begin - free < laneMinutes) return;
    go({true, 2, -1, play.begin, 0}, 1);
    for (int p = 0; p < 3; ++p) {
        go({true, 0, p, play.begin, 0}, 1);
        if (s.known && s.pattern == p) go({true, 1, p, play.begin, 0}, 1);
    }
}

}  // namespace

class FewestBruteForce : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void sameAsTryingEverything() {
        int treatments = 0;
        int unmet = 0;
        int free = 0;  // demands that need no treatment of their own
        for (unsigned seed = 1; seed <= 2'000; ++seed) {
            const Case c = randomCase(seed);
            const DemandSet demands = demandsOf(c.state, c.occupancy, at(0), c.range);
            const Fewest fewest = fewestTreatments(c.state, demands, c.occupancy, at(0));
            Best best;
            tryAll(c, 0, 0, {c.known, c.historyPattern < 0 ? 2 : 0, c.historyPattern, c.historyEnd, 0}, 0, 0, best);
            QVERIFY2(fewest.unmet == best.unmet && fewest.treatments == best.treatments,
                     qPrintable(QString("seed %1: recursion %2 unmet %3 treatments, brute force %4 and %5")
                                    .arg(seed)
                                    .arg(fewest.unmet)
                                    .arg(fewest.treatments)
                                    .arg(best.unmet)
                                    .arg(best.treatments)));
            QCOMPARE(int(fewest.chosen.size()), fewest.treatments);
            QCOMPARE(int(fewest.unmetDemands.size()), fewest.unmet);
            treatments += best.treatments;
            unmet += best.unmet;
            free += int(c.plays.size()) - best.treatments - best.unmet;
        }
        qInfo("2,000 lanes: %d treatments, %d demands unmet, %d met without a treatment of their own", treatments, unmet, free);
        QVERIFY(treatments > 1'000 && unmet > 100 && free > 1'000);
    }
};

QTEST_GUILESS_MAIN(FewestBruteForce)
#include "tst_fewest_brute_force.moc"
