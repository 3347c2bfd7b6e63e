// Every finding that planning can make: its stable id, its subject (%1) and its values (%2, %3, ...). Words: documents/wording.h.
//
// Types: n = whole number, s = Seconds, t = Instant, d = QDate, q = QString. "lanes" is text such as "1-12, 15".
//
// rule                           subject            values
// ---- Plan::findings (any finding of Occupancy::findings may stand there too)
// calendar.conflict              first's title      q second's title, q lanes, t overlap begins, t overlap ends
// plan.pattern-unknown           event's title      q id of the pattern that is asked for, q lanes
// plan.no-machine                centre's name      -
// plan.no-shift                  centre's name      d date on which nobody works though lanes need work
// plan.lane-out-of-service       event's title      q lanes booked while out of service, t start of play
// plan.confirmed-breaks          machine's name     q lanes, t begin of a confirmed job that something now stands against
// plan.cancelled                 centre's name      -            (stopped early; the plan is valid but may be improved)
// ---- Job::reasons: why the job is there
// job.needed                     event's title      t start of play, q lanes
// job.needed-later               event's title      t start of play on another day, q lanes
// job.first-pair-twice           event's title      q lanes worked twice
// ---- Job::reasons: what fixes its place (its end cannot move later, or its start cannot move earlier, because of this)
// job.fixed-by-settle            event's title      t latest end, s settle time, s reserve
// job.fixed-by-play-before       title of that play t lanes are clear
// job.fixed-by-partner           title of that play t pair partner is clear (or begins)
// job.fixed-by-shift             shift's name       t its begin or end
// job.fixed-by-machine           machine's name     t it is free (or needed for its next job)
// job.fixed-by-person            shift's name       t somebody is free (or needed elsewhere)
// job.fixed-by-outage            "lanes" text       t begin of the outage
// job.fixed-by-closing           event's title      t end of the centre's day (lane is to be left stripped)
// job.fixed-by-now               machine's name     t now
// job.overtime                   shift's name       s overtime of the job's outing
// job.tight                      event's title      s how far it ends inside the reserve
// job.late                       event's title      s how far it ends inside the settle time
// ---- Job::reasons: steps in front of it
// job.refill-before              machine's name     s minutes it takes
// job.empty-before               machine's name     s
// job.swap-before                machine's name     s
// job.charge-before              machine's name     s
// job.duty-before                machine's name     s
// ---- JobMove::what, see moves.h (no subject)
// job.earlier                    -                  s how much, t begin of the outing then
// job.later                      -                  s how much, t begin of the outing then
// job.not-earlier                -                  s how much
// job.not-later                  -                  s how much
// ---- JobMove::why: what it costs, then what it wins; subject = lanes
// job.move-free                  -                  -              (costs nothing)
// job.move-unmet                 lanes              n lanes        (a demand would be met no longer)
// job.move-late                  lanes              n lanes, s latest of them inside the settle time
// job.move-overtime              -                  s more
// job.move-tight                 lanes              n lanes, s furthest inside the reserve
// job.move-older                 lanes              n lanes, s how much older at most when play begins
// job.move-less-overtime         -                  s less
// job.move-eased                 lanes              n lanes        (late or inside the reserve no longer)
// job.move-fresher               lanes              n lanes, s how much fresher at most
// ---- JobMove::why: what stands in the way ("before" when it is to be earlier, "after" when later; any violation may stand
// there) job.blocked-by-play-before     title of that play q lanes, t they are clear job.blocked-by-play-after      title of that
// play q lanes, t play begins job.blocked-by-partner-before  title of that play q lanes whose pair partner is in play, t it is
// clear job.blocked-by-partner-after   title of that play q lanes, t play begins job.blocked-by-machine-before  machine's name t
// it is back from other work job.blocked-by-machine-after   machine's name     t it leaves for other work
// job.blocked-by-other-machine   that one's name    q lanes it is on
// job.blocked-by-shift-before    shift's name       t its begin, overtime included
// job.blocked-by-shift-after     shift's name       t its end, overtime included
// job.blocked-by-person          shift's name       t, t between which all of it are at work
// job.blocked-by-closure-before  title              t its end
// job.blocked-by-closure-after   title              t its begin
// job.blocked-by-now             machine's name     t now
// ---- Shortfall::reasons
// short.no-time                  event's title      s missing, t lanes are clear
// short.no-staff                 event's title      t nearest begin or end of working time
// short.barred                   pattern's name, or q lanes   (no machine may do it)
//                                treatment word is left to the reader: empty subject = clean only
// short.out-of-service           event's title      q lanes   (lanes or every machine out of service)
// short.no-machine               event's title      -
// short.pattern-unknown          event's title      q id of the pattern
// short.machine-busy             machine's name     s missing
// short.condition-only           event's title      q lanes   (condition only asked, but the lane carries another pattern)
// short.too-big                  machine's name     q lanes   (more than full tanks, an empty waste tank or a full pack can do)
// ---- Remedy::what
// remedy.overtime                shift's name       s more overtime than the allowance, t begin (or end) of working time then
// remedy.second-machine          centre's name      n machines then
// remedy.second-person           shift's name       n people then
// remedy.shorter-treatment       event's title      n 0 = clean and condition, 1 = condition only, 2 = clean only
// remedy.fewer-lanes             event's title      n lanes that could be made ready, q which
// remedy.move-event              event's title      s later, t new start of play
// ---- violationsOf(); t = begin of the job
// violation.lane-in-play         machine's name     n lane, t
// violation.partner-in-play      machine's name     n lane, t
// violation.lane-twice           machine's name     n lane, t      (two machines on one lane at one time)
// violation.machine-twice        machine's name     t begin of the first, t begin of the second
// violation.too-short            machine's name     n lane, t      (less time than the machine needs)
// violation.before-now           machine's name     t
// violation.no-staff             machine's name     t begin of the outing   (outside shifts and allowance, or nobody free)
// violation.closed               machine's name     t              (a closure without staff)
// violation.barred-lane          machine's name     n lane, t
// violation.barred-pattern       machine's name     q pattern, t
// violation.barred-treatment     machine's name     t
// violation.lane-out-of-service  machine's name     n lane, t
// violation.machine-out-of-service machine's name   t
// violation.conditioner          machine's name     t              (would run dry)
// violation.cleaner              machine's name     t
// violation.waste                machine's name     t              (would overflow)
// violation.pack                 machine's name     t              (would stop)
// violation.duty                 machine's name     t              (would pass a service duty)
// violation.other-pattern        machine's name     n lane, t      (condition only over another pattern)
// violation.unknown              machine's id       t              (machine or pattern that does not exist)
#pragma once

#include <array>
#include <string_view>

namespace laneward {

/// All ids above, in order: whoever words them can test that none is missing.
inline constexpr auto planningRules = std::to_array<std::string_view>({"calendar.conflict",
                                                                       "plan.pattern-unknown",
                                                                       "plan.no-machine",
                                                                       "plan.no-shift",
                                                                       "plan.lane-out-of-service",
                                                                       "plan.confirmed-breaks",
                                                                       "plan.cancelled",
                                                                       "job.needed",
                                                                       "job.needed-later",
                                                                       "job.first-pair-twice",
                                                                       "job.fixed-by-settle",
                                                                       "job.fixed-by-play-before",
                                                                       "job.fixed-by-partner",
                                                                       "job.fixed-by-shift",
                                                                       "job.fixed-by-machine",
                                                                       "job.fixed-by-person",
                                                                       "job.fixed-by-outage",
                                                                       "job.fixed-by-closing",
                                                                       "job.fixed-by-now",
                                                                       "job.overtime",
                                                                       "job.tight",
                                                                       "job.late",
                                                                       "job.refill-before",
                                                                       "job.empty-before",
                                                                       "job.swap-before",
                                                                       "job.charge-before",
                                                                       "job.duty-before",
                                                                       "job.earlier",
                                                                       "job.later",
                                                                       "job.not-earlier",
                                                                       "job.not-later",
                                                                       "job.move-free",
                                                                       "job.move-unmet",
                                                                       "job.move-late",
                                                                       "job.move-overtime",
                                                                       "job.move-tight",
                                                                       "job.move-older",
                                                                       "job.move-less-overtime",
                                                                       "job.move-eased",
                                                                       "job.move-fresher",
                                                                       "job.blocked-by-play-before",
                                                                       "job.blocked-by-play-after",
                                                                       "job.blocked-by-partner-before",
                                                                       "job.blocked-by-partner-after",
                                                                       "job.blocked-by-machine-before",
                                                                       "job.blocked-by-machine-after",
                                                                       "job.blocked-by-other-machine",
                                                                       "job.blocked-by-shift-before",
                                                                       "job.blocked-by-shift-after",
                                                                       "job.blocked-by-person",
                                                                       "job.blocked-by-closure-before",
                                                                       "job.blocked-by-closure-after",
                                                                       "job.blocked-by-now",
                                                                       "short.no-time",
                                                                       "short.no-staff",
                                                                       "short.barred",
                                                                       "short.out-of-service",
                                                                       "short.no-machine",
                                                                       "short.pattern-unknown",
                                                                       "short.machine-busy",
                                                                       "short.condition-only",
                                                                       "short.too-big",
                                                                       "remedy.overtime",
                                                                       "remedy.second-machine",
                                                                       "remedy.second-person",
                                                                       "remedy.shorter-treatment",
                                                                       "remedy.fewer-lanes",
                                                                       "remedy.move-event",
                                                                       "violation.lane-in-play",
                                                                       "violation.partner-in-play",
                                                                       "violation.lane-twice",
                                                                       "violation.machine-twice",
                                                                       "violation.too-short",
                                                                       "violation.before-now",
                                                                       "violation.no-staff",
                                                                       "violation.closed",
                                                                       "violation.barred-lane",
                                                                       "violation.barred-pattern",
                                                                       "violation.barred-treatment",
                                                                       "violation.lane-out-of-service",
                                                                       "violation.machine-out-of-service",
                                                                       "violation.conditioner",
                                                                       "violation.cleaner",
                                                                       "violation.waste",
                                                                       "violation.pack",
                                                                       "violation.duty",
                                                                       "violation.other-pattern",
                                                                       "violation.unknown"});

}  // namespace laneward
