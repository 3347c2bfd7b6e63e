#include "core/centre/lane_set.h"

#include <QRegularExpression>
#include <QStringList>

namespace laneward {

namespace {

bool isLane(int lane) { return lane >= 1 && lane <= limits::lanes; }

}  // namespace

LaneSet::LaneSet(std::initializer_list<int> lanes) {
    for (int lane : lanes)
        insert(lane);
}

LaneSet LaneSet::range(int first, int last) {
    LaneSet set;
    for (int lane = qMax(1, first); lane <= qMin(last, limits::lanes); ++lane)
        set.insert(lane);
    return set;
}

Result<LaneSet> LaneSet::parse(const QString& text) {
    static const QRegularExpression separators(QStringLiteral("[,;\\s]+"));
    static const QRegularExpression part(QStringLiteral("^(\\d{1,4})(?:[-\u2013](\\d{1,4}))?$"));
    static const QRegularExpression dash(QStringLiteral("\\s*[-\u2013]\\s*"));
    QString tight = text;
    tight.replace(dash, QStringLiteral("-"));
    LaneSet set;
    for (const QString& piece : tight.split(separators, Qt::SkipEmptyParts)) {
        const QRegularExpressionMatch match = part.match(piece);
        if (!match.hasMatch()) return fault(ErrorKind::Invalid, "lanes.unreadable", text, {piece});
        const int first = match.captured(1).toInt();
        const int last = match.hasCaptured(2) ? match.captured(2).toInt() : first;
        if (!isLane(first) || !isLane(last) || last < first) {
            return fault(ErrorKind::Invalid, "lanes.out-of-range", text, {piece, std::int64_t{limits::lanes}});
        }
        set = set | range(first, last);
    }
    return set;
}

void LaneSet::insert(int lane) {
    if (isLane(lane)) m_bits.set(size_t(lane));
}

void LaneSet::remove(int lane) {
    if (isLane(lane)) m_bits.reset(size_t(lane));
}

int LaneSet::first() const { return int(m_bits._Find_first()) % (limits::lanes + 1); }

int LaneSet::last() const {
    for (int lane = limits::lanes; lane >= 1; --lane) {
        if (m_bits[size_t(lane)]) return lane;
    }
    return 0;
}

std::vector<int> LaneSet::lanes() const {
    std::vector<int> all;
    all.reserve(m_bits.count());
    for (size_t lane = m_bits._Find_first(); lane < m_bits.size(); lane = m_bits._Find_next(lane))
        all.push_back(int(lane));
    return all;
}

QString LaneSet::text() const {
    QStringList parts;
    const std::vector<int> all = lanes();
    for (size_t i = 0; i < all.size();) {
        size_t j = i;
        while (j + 1 < all.size() && all[j + 1] == all[j] + 1)
            ++j;
        parts << (i == j ? QString::number(all[i]) : QStringLiteral("%1-%2").arg(all[i]).arg(all[j]));
        i = j + 1;
    }
    return parts.join(QStringLiteral(", "));
}

LaneSet operator|(const LaneSet& a, const LaneSet& b) {
    LaneSet c;
    c.m_bits = a.m_bits | b.m_bits;
    return c;
}

LaneSet operator&(const LaneSet& a, const LaneSet& b) {
    LaneSet c;
    c.m_bits = a.m_bits & b.m_bits;
    return c;
}

LaneSet operator-(const LaneSet& a, const LaneSet& b) {
    LaneSet c;
    c.m_bits = a.m_bits & ~b.m_bits;
    return c;
}

}  // namespace laneward
