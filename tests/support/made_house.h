// A house view's data made by hand: every kind of block, every kind and state of job.
#pragma once

#include "app/widgets/house_data.h"

namespace support {

inline laneward::Speech plainSpeech() {
    laneward::Speech speech;
    speech.locale = QLocale(QLocale::English, QLocale::UnitedKingdom);
    return speech;
}

/// Minutes after 2026-11-12T05:00Z, where the day of the data below begins.
inline laneward::Instant at(int minute) { return laneward::Instant{1'794'459'600} + laneward::minutes(minute); }

inline laneward::HouseItem block(const char* key, int from, int to, const laneward::LaneSet& lanes, const QString& title) {
    laneward::HouseItem item;
    item.key = QLatin1String(key);
    item.time = {at(from), at(to)};
    item.lanes = lanes;
    item.title = title;
    item.detail = "fresh \u00b7 Reed 38";
    item.spoken = QString("Lanes %1, %2").arg(lanes.text(), title);
    return item;
}

inline laneward::HouseItem bar(const char* key, int from, const laneward::LaneSet& lanes, laneward::Treatment treatment,
                               laneward::JobState state) {
    using namespace laneward;
    HouseItem item = block(key, from, from + 35, lanes, QString("17:17 \u00b7 %1").arg(text(treatment)));
    item.kind = HouseItem::Kind::Job;
    item.treatment = treatment;
    item.state = state;
    item.detail = text(state);
    if (state == JobState::CutShort) item.lastLane = lanes.first() + 2;
    if (state == JobState::Confirmed && treatment == Treatment::CleanAndCondition) item.late = "late 12 min";
    return item;
}

/// `days` equal days of 24 lanes: two events, a closure, an outage, a shortfall, and one job of each kind and state.
inline laneward::HouseData madeHouse(int lanes = 24, int days = 1) {
    using namespace laneward;
    HouseData data;
    data.lanes = lanes;
    data.zone = Zone();
    data.now = at(12 * 60);
    for (int day = 0; day < days; ++day)
        data.days.push_back(at(day * 1'440));
    data.range = {at(0), at(days * 1'440)};
    for (int lane = 1; lane <= lanes; lane += 4) {
        data.bands.push_back(
            {lane, std::min(lane + 3, lanes), lane % 8 == 1 ? "Reed 38" : "Mallard 42", "1 d", "Lanes, Reed 38", false, false});
    }
    for (int day = 0; day < days; ++day) {
        const int from = day * 1'440;
        data.items.push_back(block("event:seniors", from + 540, from + 600, LaneSet::range(1, 8), "Seniors"));
        data.items.push_back(block("event:fours", from + 810, from + 990, LaneSet::range(1, 12), "Thursday Fours"));
        data.items.push_back(block("event:open", from + 540, from + 1'080, LaneSet::range(lanes - 3, lanes), "Open play"));
        HouseItem closed = block("event:closed", from + 1'200, from + 1'260, LaneSet::range(1, lanes), "Closed");
        closed.event = EventKind::Closure;
        data.items.push_back(closed);
        HouseItem outage = block("outage:9", from + 540, from + 780, {13}, "Out of service");
        outage.kind = HouseItem::Kind::Outage;
        data.items.push_back(outage);
        HouseItem lack = block("short:x", from + 1'095, from + 1'120, LaneSet::range(1, 8), "Not fresh in time for Late Fours");
        lack.kind = HouseItem::Kind::Shortfall;
        data.items.push_back(lack);
        int top = from + 610;
        for (Treatment treatment : allTreatments) {
            int first = 1;
            for (JobState state : {JobState::Proposed, JobState::Confirmed, JobState::UnderWay, JobState::Done,
                                   JobState::CutShort, JobState::Dropped}) {
                const QByteArray key =
                    "job:" + QByteArray::number(int(treatment)) + QByteArray::number(int(state)) + QByteArray::number(day);
                if (first + 2 <= lanes - 4)
                    data.items.push_back(bar(key.constData(), top, LaneSet::range(first, first + 2), treatment, state));
                first += 3;
            }
            top += 60;
        }
    }
    return data;
}

}  // namespace support
