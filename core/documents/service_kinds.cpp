#include "core/documents/service_words.h"

#include <QCoreApplication>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

}  // namespace

QString text(ItemKind kind) {
    switch (kind) {
        case ItemKind::CushionBrush:
            return say(QT_TRANSLATE_NOOP("wording", "cushion brush"));
        case ItemKind::BufferBrush:
            return say(QT_TRANSLATE_NOOP("wording", "buffer brush"));
        case ItemKind::Squeegee:
            return say(QT_TRANSLATE_NOOP("wording", "squeegee"));
        case ItemKind::Cloth:
            return say(QT_TRANSLATE_NOOP("wording", "cloth"));
        case ItemKind::WasteTank:
            return say(QT_TRANSLATE_NOOP("wording", "waste tank"));
        case ItemKind::Filter:
            return say(QT_TRANSLATE_NOOP("wording", "filter"));
        case ItemKind::Nozzles:
            return say(QT_TRANSLATE_NOOP("wording", "nozzles and lines"));
        case ItemKind::Wheels:
            return say(QT_TRANSLATE_NOOP("wording", "wheels and belts"));
        case ItemKind::Pack:
            return say(QT_TRANSLATE_NOOP("wording", "pack"));
        case ItemKind::Charger:
            return say(QT_TRANSLATE_NOOP("wording", "charger"));
        case ItemKind::Approach:
            return say(QT_TRANSLATE_NOOP("wording", "approach"));
        case ItemKind::Gutter:
            return say(QT_TRANSLATE_NOOP("wording", "gutter"));
        case ItemKind::Other:
            return say(QT_TRANSLATE_NOOP("wording", "other item"));
    }
    return {};
}

QString text(DutyKind kind) {
    switch (kind) {
        case DutyKind::Inspect:
            return say(QT_TRANSLATE_NOOP("wording", "inspect"));
        case DutyKind::Clean:
            return say(QT_TRANSLATE_NOOP("wording", "clean"));
        case DutyKind::Turn:
            return say(QT_TRANSLATE_NOOP("wording", "turn"));
        case DutyKind::Replace:
            return say(QT_TRANSLATE_NOOP("wording", "replace"));
        case DutyKind::Empty:
            return say(QT_TRANSLATE_NOOP("wording", "empty"));
        case DutyKind::Calibrate:
            return say(QT_TRANSLATE_NOOP("wording", "calibrate"));
    }
    return {};
}

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
