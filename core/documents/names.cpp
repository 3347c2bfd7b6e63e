#include "core/documents/wording.h"

#include <QCoreApplication>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

}  // namespace

QString text(Treatment treatment) {
    switch (treatment) {
        case Treatment::CleanAndCondition:
            return say(QT_TRANSLATE_NOOP("wording", "clean and condition"));
        case Treatment::ConditionOnly:
            return say(QT_TRANSLATE_NOOP("wording", "condition only"));
        case Treatment::CleanOnly:
            return say(QT_TRANSLATE_NOOP("wording", "clean only"));
    }
    return {};
}

QString text(DemandKind demand) {
    switch (demand) {
        case DemandKind::Fresh:
            return say(QT_TRANSLATE_NOOP("wording", "fresh"));
        case DemandKind::Recent:
            return say(QT_TRANSLATE_NOOP("wording", "recent"));
        case DemandKind::Pattern:
            return say(QT_TRANSLATE_NOOP("wording", "pattern"));
        case DemandKind::Stripped:
            return say(QT_TRANSLATE_NOOP("wording", "stripped"));
        case DemandKind::AsItIs:
            return say(QT_TRANSLATE_NOOP("wording", "as it is"));
    }
    return {};
}

QString text(EventKind kind) {
    switch (kind) {
        case EventKind::League:
            return say(QT_TRANSLATE_NOOP("wording", "league"));
        case EventKind::Practice:
            return say(QT_TRANSLATE_NOOP("wording", "practice"));
        case EventKind::School:
            return say(QT_TRANSLATE_NOOP("wording", "school"));
        case EventKind::Tournament:
            return say(QT_TRANSLATE_NOOP("wording", "tournament"));
        case EventKind::OpenPlay:
            return say(QT_TRANSLATE_NOOP("wording", "open play"));
        case EventKind::Party:
            return say(QT_TRANSLATE_NOOP("wording", "party"));
        case EventKind::Closure:
            return say(QT_TRANSLATE_NOOP("wording", "closure"));
        case EventKind::Other:
            return say(QT_TRANSLATE_NOOP("wording", "other"));
    }
    return {};
}

QString text(JobState state) {
    switch (state) {
        case JobState::Proposed:
            return say(QT_TRANSLATE_NOOP("wording", "proposed"));
        case JobState::Confirmed:
            return say(QT_TRANSLATE_NOOP("wording", "confirmed"));
        case JobState::UnderWay:
            return say(QT_TRANSLATE_NOOP("wording", "under way"));
        case JobState::Done:
            return say(QT_TRANSLATE_NOOP("wording", "done"));
        case JobState::CutShort:
            return say(QT_TRANSLATE_NOOP("wording", "cut short"));
        case JobState::Dropped:
            return say(QT_TRANSLATE_NOOP("wording", "dropped"));
    }
    return {};
}

QString text(StepKind step) {
    switch (step) {
        case StepKind::LeaveBay:
            return say(QT_TRANSLATE_NOOP("wording", "leave the bay"));
        case StepKind::Refill:
            return say(QT_TRANSLATE_NOOP("wording", "refill"));
        case StepKind::EmptyWaste:
            return say(QT_TRANSLATE_NOOP("wording", "empty the waste tank"));
        case StepKind::SwapPack:
            return say(QT_TRANSLATE_NOOP("wording", "swap the pack"));
        case StepKind::Charge:
            return say(QT_TRANSLATE_NOOP("wording", "charge"));
        case StepKind::Duty:
            return say(QT_TRANSLATE_NOOP("wording", "service duty"));
        case StepKind::FirstPairTwice:
            return say(QT_TRANSLATE_NOOP("wording", "first pair, a first time"));
        case StepKind::Treat:
            return say(QT_TRANSLATE_NOOP("wording", "work the lanes"));
        case StepKind::ReturnToBay:
            return say(QT_TRANSLATE_NOOP("wording", "return to the bay"));
    }
    return {};
}

QString text(Role role) {
    switch (role) {
        case Role::Operator:
            return say(QT_TRANSLATE_NOOP("wording", "operator"));
        case Role::Lead:
            return say(QT_TRANSLATE_NOOP("wording", "lead"));
        case Role::Manager:
            return say(QT_TRANSLATE_NOOP("wording", "manager"));
    }
    return {};
}

QString text(IncidentKind kind) {
    switch (kind) {
        case IncidentKind::Spill:
            return say(QT_TRANSLATE_NOOP("wording", "spill"));
        case IncidentKind::Jam:
            return say(QT_TRANSLATE_NOOP("wording", "jam"));
        case IncidentKind::Fault:
            return say(QT_TRANSLATE_NOOP("wording", "fault"));
        case IncidentKind::Injury:
            return say(QT_TRANSLATE_NOOP("wording", "injury"));
        case IncidentKind::NearMiss:
            return say(QT_TRANSLATE_NOOP("wording", "near miss"));
    }
    return {};
}

QString text(RunResult result) {
    switch (result) {
        case RunResult::AsPlanned:
            return say(QT_TRANSLATE_NOOP("wording", "as planned"));
        case RunResult::Changed:
            return say(QT_TRANSLATE_NOOP("wording", "changed"));
        case RunResult::CutShort:
            return say(QT_TRANSLATE_NOOP("wording", "cut short"));
        case RunResult::Unplanned:
            return say(QT_TRANSLATE_NOOP("wording", "unplanned"));
        case RunResult::Void:
            return say(QT_TRANSLATE_NOOP("wording", "void"));
    }
    return {};
}

}  // namespace laneward
