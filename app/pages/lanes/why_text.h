// Why something stands where it stands, as headed rows of words: what the panel beside the house view shows.
#pragma once

#include "app/widgets/difference_marks.h"
#include "core/planning/moves.h"

namespace laneward {

struct WhyRow {
    QString label;  ///< empty = the value is a sentence of its own
    QString value;
    bool strong = false;
};

struct WhySection {
    QString heading;
    std::vector<WhyRow> rows;
};

struct WhyText {
    QString title;
    std::vector<WhySection> sections;
};

/// A job: needed by, window, what fixes it, slack, what moving it would cost, what it takes and what the tanks hold after it, its
/// steps.
WhyText whyJob(const HouseSource& source, const Job& job, const std::vector<Readiness>& readiness,
               const std::vector<JobMove>& moves = {});
/// An event: what it asks, when it comes again, what serves it.
WhyText whyEvent(const HouseSource& source, const Occurrence& occurrence);
/// A demand that nothing meets: what is missing, what would meet it.
WhyText whyShortfall(const HouseSource& source, const Shortfall& lack);
/// A recorded run without a job.
WhyText whyRun(const HouseSource& source, const RunLog& run);
WhyText whyOutage(const HouseSource& source, const Outage& outage);
/// Lanes: what is on them and what comes next.
WhyText whyLanes(const HouseSource& source, const LaneBand& band, Instant at);
/// While something is dragged: what it would do. `waiting`: the words belong to the question before.
WhyText whyDifference(const DifferenceText& text, bool waiting);

}  // namespace laneward
