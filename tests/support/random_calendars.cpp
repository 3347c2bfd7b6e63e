#include "tests/support/random_calendars.h"

#include "tests/support/calendar_builders.h"

namespace laneward::build {

QString RandomCalendars::name(int length) {
    // Everything that has a meaning somewhere in the format, and letters of one to four octets.
    static const QStringList letters{"a",
                                     "Z",
                                     " ",
                                     ",",
                                     ";",
                                     ":",
                                     "\\",
                                     "\"",
                                     "\n",
                                     "\t",
                                     "=",
                                     "^",
                                     "n",
                                     "\\n",
                                     QString::fromUtf8("\u00e4"),
                                     QString::fromUtf8("\u4e2d"),
                                     QString::fromUtf8("\U0001F3B3"),
                                     "/"};
    QString text = QStringLiteral("x");
    while (text.size() < length)
        text += letters[m_rules.number(0, int(letters.size()) - 1)];
    return text + QStringLiteral("y");
}

LaneSet RandomCalendars::lanes(const LaneSet& within) {
    LaneSet chosen;
    while (chosen.isEmpty()) {
        for (int lane : within.lanes()) {
            if (m_rules.chance(40)) chosen.insert(lane);
        }
    }
    return chosen;
}

SurfaceDemand RandomCalendars::demand(const LaneSet& within) {
    SurfaceDemand d;
    d.lanes = lanes(within);
    d.kind = DemandKind(m_rules.number(0, 4));
    if (m_rules.chance(60)) d.pattern = PatternId{name(m_rules.number(1, 20))};
    d.least = allTreatments[size_t(m_rules.number(0, 2))];
    d.longestAge = Seconds{m_rules.number(1, 200'000)};
    d.longestPlay = Seconds{m_rules.number(0, 20'000)};
    return d;
}

std::vector<LocalTime> RandomCalendars::dates(const LocalTime& near) {
    std::vector<LocalTime> list;
    for (int n = m_rules.number(0, 4); n > 0; --n)
        list.push_back(shifted(near, Seconds{m_rules.number(0, 40'000'000)}));
    return list;
}

Override RandomCalendars::change(const LocalTime& original) {
    Override o;
    o.original = original;
    o.cancelled = m_rules.chance(30);
    if (m_rules.chance(50)) o.start = m_rules.chance(20) ? original : shifted(original, Seconds{m_rules.number(0, 900'000)});
    if (m_rules.chance(50)) o.duration = Seconds{m_rules.number(1, 90'000)};
    if (m_rules.chance(50)) o.title = name(m_rules.number(1, 30));
    if (m_rules.chance(50)) o.lanes = lanes(LaneSet::range(1, 24));
    return o;
}

Series RandomCalendars::next() {
    const RuleCase rule = m_rules.next();
    Series s;
    s.uid = QStringLiteral("%1@%2").arg(m_serial++).arg(name(5));
    s.id = SeriesId{s.uid};
    s.title = name(m_rules.number(1, 150));
    s.note = m_rules.chance(50) ? name(m_rules.number(1, 400)) : QString();
    s.kind = EventKind(m_rules.number(0, 7));
    s.zone = rule.zone;
    s.start = rule.start;
    s.duration = Seconds{m_rules.number(1, 300'000)};
    if (m_rules.chance(70)) {
        s.rule = QStringLiteral("FREQ=WEEKLY");
        if (rule.count > 0) s.rule += QStringLiteral(";COUNT=%1").arg(rule.count);
        if (rule.until) s.rule += QStringLiteral(";UNTIL=") + text(*rule.until) + QLatin1Char('Z');
    }
    s.extraDates = dates(s.start);
    s.excludedDates = dates(s.start);
    for (int n = m_rules.number(0, 3); n > 0; --n)
        s.overrides.push_back(change(shifted(s.start, Seconds{n * 604'800 + m_rules.number(0, 1'000)})));
    s.lanes = lanes(LaneSet::range(1, 24));
    for (int n = m_rules.number(0, 3); n > 0; --n)
        s.demands.push_back(demand(s.lanes));
    s.settle = Seconds{m_rules.number(0, 10'000)};
    s.clearing = Seconds{m_rules.number(0, 10'000)};
    s.firstPairTwice = m_rules.chance(50);
    s.yieldsToClosure = m_rules.chance(50);
    s.noStaff = m_rules.chance(50);
    s.cancelled = m_rules.chance(20);
    s.players = m_rules.number(0, 200);
    return s;
}

}  // namespace laneward::build
