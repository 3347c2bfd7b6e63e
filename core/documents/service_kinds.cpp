#include "core/documents/service_words.h"

#include <QCoreApplication>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

}  // namespace

QString text(Skill skill) {
    switch (skill) {
        case Skill::Anyone:
            return say(QT_TRANSLATE_NOOP("wording", "anyone"));
        case Skill::Lead:
            return say(QT_TRANSLATE_NOOP("wording", "lead only"));
        case Skill::Licensed:
            return say(QT_TRANSLATE_NOOP("wording", "licensed person only"));
    }
    return {};
}

QString text(ServiceResult result) {
    switch (result) {
        case ServiceResult::Done:
            return say(QT_TRANSLATE_NOOP("wording", "done in time"));
        case ServiceResult::Failed:
            return say(QT_TRANSLATE_NOOP("wording", "had failed"));
        case ServiceResult::Found:
            return say(QT_TRANSLATE_NOOP("wording", "looked at"));
        case ServiceResult::Withdrawn:
            return say(QT_TRANSLATE_NOOP("wording", "withdrawn"));
    }
    return {};
}

}  // namespace laneward
