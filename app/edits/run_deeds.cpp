#include "app/edits/run_deeds.h"

#include <QCoreApplication>

namespace laneward {

namespace {

struct Names {
    Q_DECLARE_TR_FUNCTIONS(TodayPage)

public:
    static QString asPlanned(const Job& job) { return tr("Lanes %1 done as planned").arg(job.laneSet().text()); }
    static QString begin(const Job& job) { return tr("Begin lanes %1").arg(job.laneSet().text()); }
    static QString otherwise(const RunAccount& account, bool corrects) {
        const QString lanes = account.lanes.text();
        return corrects      ? tr("Correct the run on lanes %1").arg(lanes)
               : account.job ? tr("Lanes %1 done with changes").arg(lanes)
                             : tr("Unplanned run on lanes %1").arg(lanes);
    }
};

}  // namespace

Job committed(const Session& session, Job job, std::vector<Change>& changes) {
    if (job.state != JobState::Proposed) return job;
    const std::optional<Person> person = session.person();
    job = confirmedAs(job, {session.newOperation().value}, planVersionOf(session.season(), job.date),
                      person ? person->id : PersonId{});
    changes.push_back(RowChange<Job>{std::nullopt, job});
    return job;
}

Deed doneAsPlanned(const Session& session, const Job& job) {
    Deed deed;
    deed.name = Names::asPlanned(job);
    deed.records.push_back(asPlanned(committed(session, job, deed.changes), session.now()));
    return deed;
}

Deed begun(const Session& session, const Job& job) {
    Deed deed;
    deed.name = Names::begin(job);
    const Job before = committed(session, job, deed.changes);
    const Job after = begunAt(before, session.now());
    if (deed.changes.empty())
        deed.changes.push_back(RowChange<Job>{before, after});
    else
        deed.changes = {RowChange<Job>{std::nullopt, after}};
    return deed;
}

Deed doneOtherwise(Session& session, const RunAccount& account, const std::optional<Incident>& incident,
                   const std::optional<OperationId>& corrects) {
    Deed deed;
    deed.name = Names::otherwise(account, corrects.has_value());
    RunAccount told = account;
    if (told.job) told.job = committed(session, *told.job, deed.changes);
    RunLog log = runLog(session.planningState(), told);
    log.corrects = corrects;
    deed.records.push_back(log);
    if (incident) deed.records.push_back(*incident);
    return deed;
}

std::optional<OperationId> runOf(const SeasonState& season, const Job& job) {
    if (isAhead(job)) return std::nullopt;
    std::optional<OperationId> found;
    for (const RunLog& run : standing(season.runs)) {
        const bool ofJob = !run.job.isEmpty() && run.job == job.id;
        if (ofJob || run.id.value == job.id.value) found = run.id;
    }
    return found;
}

}  // namespace laneward
