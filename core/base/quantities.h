// Amounts as types: one integer base unit per kind of quantity, so that counts of things stay exact.
//
// Units: microlitres, micrometres (0.01 ft is 3,048 um exactly), seconds, grams. Limits: the 64-bit range; importers bound what
// they accept (see limits.h), so sums of accepted values cannot overflow.
//
//     Seconds work = minutes(3) * 12;          // 36 min
//     Instant ready = start + work;
#pragma once

#include <compare>
#include <cstdint>
#include <functional>

namespace laneward {

/// An integer amount of one base unit. Adding amounts of different kinds does not compile.
template <class Tag>
struct Quantity {
    std::int64_t value = 0;

    friend constexpr auto operator<=>(const Quantity&, const Quantity&) = default;
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return {a.value + b.value}; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return {a.value - b.value}; }
    friend constexpr Quantity operator-(Quantity a) { return {-a.value}; }
    friend constexpr Quantity operator*(Quantity a, std::int64_t n) { return {a.value * n}; }
    friend constexpr Quantity operator*(std::int64_t n, Quantity a) { return {a.value * n}; }
    constexpr Quantity& operator+=(Quantity b) {
        value += b.value;
        return *this;
    }
    constexpr Quantity& operator-=(Quantity b) {
        value -= b.value;
        return *this;
    }
};

using Microlitres = Quantity<struct MicrolitresTag>;
using Micrometres = Quantity<struct MicrometresTag>;
using Seconds = Quantity<struct SecondsTag>;
using Millivolts = Quantity<struct MillivoltsTag>;
using Grams = Quantity<struct GramsTag>;
using Amount = Quantity<struct AmountTag>;  ///< of something stocked, in the base unit of its supply: see supplies/supply.h

constexpr Seconds minutes(std::int64_t n) { return {n * 60}; }
constexpr Seconds hours(std::int64_t n) { return {n * 3600}; }
constexpr Micrometres feet(std::int64_t n) { return {n * 304'800}; }  // 1 ft = 0.3048 m exactly, 16 CFR 500.19
constexpr Microlitres millilitres(std::int64_t n) { return {n * 1'000}; }

/// A point in time: whole seconds since 1970-01-01T00:00:00Z, leap seconds not counted.
struct Instant {
    std::int64_t seconds = 0;

    friend constexpr auto operator<=>(const Instant&, const Instant&) = default;
    friend constexpr Instant operator+(Instant t, Seconds d) { return {t.seconds + d.value}; }
    friend constexpr Instant operator-(Instant t, Seconds d) { return {t.seconds - d.value}; }
    friend constexpr Seconds operator-(Instant a, Instant b) { return {a.seconds - b.seconds}; }
};

/// Time from `begin` up to but not including `end`.
struct Span {
    Instant begin;
    Instant end;

    friend constexpr auto operator<=>(const Span&, const Span&) = default;
    constexpr bool isEmpty() const { return end <= begin; }
    constexpr Seconds length() const { return end - begin; }
    constexpr bool contains(Instant t) const { return begin <= t && t < end; }
    constexpr bool overlaps(const Span& o) const { return begin < o.end && o.begin < end; }
};

}  // namespace laneward

template <class Tag>
struct std::hash<laneward::Quantity<Tag>> {
    std::size_t operator()(laneward::Quantity<Tag> q) const noexcept { return std::hash<std::int64_t>{}(q.value); }
};
