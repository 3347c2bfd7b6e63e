// The words by which enumerations are stored, in the database and in the centre file. They are part of the file format: a word
// is never renamed; a new value takes a new word at the end of its list.
//
//     wordOf(Treatment::CleanOnly)  ->  "clean-only"
#pragma once

#include "core/season/season.h"
#include "core/service/attachment.h"

#include <QLatin1StringView>

#include <array>
#include <optional>
#include <type_traits>

namespace laneward {

/// Words of E in the order of its values.
template <class E>
struct Words;

template <>
struct Words<Role> {
    static constexpr std::array all{"operator", "lead", "manager"};
};
template <>
struct Words<UnitSystem> {
    static constexpr std::array all{"metric", "us-customary"};
};
template <>
struct Words<Treatment> {
    static constexpr std::array all{"clean-and-condition", "condition-only", "clean-only"};
};
template <>
struct Words<Direction> {
    static constexpr std::array all{"out", "back"};
};
template <>
struct Words<EventKind> {
    static constexpr std::array all{"league", "practice", "school", "tournament", "open-play", "party", "closure", "other"};
};
template <>
struct Words<DemandKind> {
    static constexpr std::array all{"fresh", "recent", "pattern", "stripped", "as-it-is"};
};
template <>
struct Words<JobState> {
    static constexpr std::array all{"proposed", "confirmed", "under-way", "done", "cut-short", "dropped"};
};
template <>
struct Words<StepKind> {
    static constexpr std::array all{"leave-bay", "refill",           "empty-waste", "swap-pack",    "charge",
                                    "duty",      "first-pair-twice", "treat",       "return-to-bay"};
};
template <>
struct Words<RunResult> {
    static constexpr std::array all{"as-planned", "changed", "cut-short", "unplanned", "void"};
};
template <>
struct Words<IncidentKind> {
    static constexpr std::array all{"spill", "jam", "fault", "injury", "near-miss"};
};
template <>
struct Words<Severity> {
    static constexpr std::array all{"note", "warning", "fault"};
};

template <>
struct Words<GeometryFeature> {
    static constexpr std::array all{"level", "tilt", "crown", "depression"};
};

template <>
struct Words<SupplyKind> {
    static constexpr std::array all{"conditioner", "cleaner", "approach-cleaner", "cloth", "part", "pack"};
};
template <>
struct Words<UseBasis> {
    static constexpr std::array all{"machine", "per-lane-cleaned", "per-day", "when-serviced"};
};
template <>
struct Words<OrderState> {
    static constexpr std::array all{"draft", "placed", "closed"};
};
template <>
struct Words<Place::Kind> {
    static constexpr std::array all{"shelf",      "open", "tank",  "waste-tank", "supplier",
                                    "water-main", "lane", "drain", "loss",       "opening"};
};
template <>
struct Words<MovementKind> {
    static constexpr std::array all{"received", "opened", "filled", "used", "spilled", "counted", "returned", "disposed"};
};
template <>
struct Words<MovementSource> {
    static constexpr std::array all{"person", "run", "level", "count", "order", "service"};
};

template <>
struct Words<ItemKind> {
    static constexpr std::array all{"cushion-brush", "buffer-brush", "squeegee", "cloth",    "waste-tank", "filter", "nozzles",
                                    "wheels",        "pack",         "charger",  "approach", "gutter",     "other"};
};
template <>
struct Words<DutyKind> {
    static constexpr std::array all{"inspect", "clean", "turn", "replace", "empty", "calibrate"};
};
template <>
struct Words<MeterKind> {
    static constexpr std::array all{"lanes", "runs", "minutes", "volume", "days"};
};
template <>
struct Words<Skill> {
    static constexpr std::array all{"anyone", "lead", "licensed"};
};
template <>
struct Words<ServiceResult> {
    static constexpr std::array all{"done", "failed", "found", "withdrawn"};
};
template <>
struct Words<AttachmentType> {
    static constexpr std::array all{"png", "jpeg", "webp", "pdf"};
};

template <>
struct Words<Chemistry> {
    static constexpr std::array all{"flooded-lead-acid", "agm", "gel", "lithium-iron-phosphate", "other"};
};
template <>
struct Words<VoltageState> {
    static constexpr std::array all{"just-charged", "rested", "under-load"};
};
template <>
struct Words<PackDeed> {
    static constexpr std::array all{"read", "on-machine", "on-charge", "charged"};
};

template <class E>
QLatin1StringView wordOf(E value) {
    return QLatin1StringView(Words<E>::all.at(size_t(value)));
}

template <class E>
std::optional<E> valueOf(QStringView word) {
    for (size_t i = 0; i < Words<E>::all.size(); ++i)
        if (word == QLatin1StringView(Words<E>::all[i])) return E(i);
    return std::nullopt;
}

}  // namespace laneward
