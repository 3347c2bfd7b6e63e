// A set of lanes, and how people write one: "1-12, 15".
//
// Lanes are numbered 1..N from the left as seen from the approach; a pair is lanes (1,2), (3,4), …
#pragma once

#include "core/base/limits.h"
#include "core/base/result.h"

#include <bitset>
#include <initializer_list>
#include <vector>

namespace laneward {

/// The other lane of the pair that shares the approach with `lane`.
constexpr int pairPartner(int lane) { return lane % 2 == 1 ? lane + 1 : lane - 1; }

class LaneSet {
public:
    LaneSet() = default;
    LaneSet(std::initializer_list<int> lanes);
    static LaneSet range(int first, int last);
    /// Reads "1-12, 15" (also with ';' or spaces). Errors: Invalid "lanes.unreadable" or "lanes.out-of-range" (1..200).
    static Result<LaneSet> parse(const QString& text);

    bool contains(int lane) const { return lane >= 1 && lane <= limits::lanes && m_bits[size_t(lane)]; }
    void insert(int lane);
    void remove(int lane);
    bool isEmpty() const { return m_bits.none(); }
    int count() const { return int(m_bits.count()); }
    int first() const;  ///< lowest lane, 0 when empty
    int last() const;   ///< highest lane, 0 when empty
    bool intersects(const LaneSet& o) const { return (m_bits & o.m_bits).any(); }
    bool isSubsetOf(const LaneSet& o) const { return (m_bits & ~o.m_bits).none(); }
    std::vector<int> lanes() const;  ///< ascending
    QString text() const;            ///< "1-12, 15": the form that parse() reads

    friend LaneSet operator|(const LaneSet& a, const LaneSet& b);
    friend LaneSet operator&(const LaneSet& a, const LaneSet& b);
    friend LaneSet operator-(const LaneSet& a, const LaneSet& b);
    friend bool operator==(const LaneSet& a, const LaneSet& b) { return a.m_bits == b.m_bits; }

private:
    std::bitset<limits::lanes + 1> m_bits;
};

}  // namespace laneward
