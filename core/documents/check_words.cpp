#include "core/documents/film_words.h"

#include <QCoreApplication>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

}  // namespace

QString text(GeometryFeature feature) {
    switch (feature) {
        case GeometryFeature::Level:
            return say(QT_TRANSLATE_NOOP("wording", "lengthwise level"));
        case GeometryFeature::Tilt:
            return say(QT_TRANSLATE_NOOP("wording", "crosswise tilt"));
        case GeometryFeature::Crown:
            return say(QT_TRANSLATE_NOOP("wording", "crown"));
        case GeometryFeature::Depression:
            return say(QT_TRANSLATE_NOOP("wording", "depression"));
    }
    return {};
}

QString nameOf(CheckId check) {
    switch (check) {
        case CheckId::ThreeUnits:
            return say(QT_TRANSLATE_NOOP("wording", "at least three units on every oiled board"));
        case CheckId::OwnLowest:
            return say(QT_TRANSLATE_NOOP("wording", "lowest film on an oiled board"));
        case CheckId::OwnMeanError:
            return say(QT_TRANSLATE_NOOP("wording", "mean error against the computed film"));
        case CheckId::OwnTrackRatio:
            return say(QT_TRANSLATE_NOOP("wording", "track ratio: boards 18 to 22 over boards 3 to 7 of both sides"));
        case CheckId::Geometry:
            return say(QT_TRANSLATE_NOOP("wording", "departure from the true plane: at most 0.040 in (1.016 mm)"));
    }
    return {};
}

QString sourceOf(const NamedCheck& check) {
    switch (check.source) {
        case CheckSource::BodyPage2007:
            return say(QT_TRANSLATE_NOOP("wording",
                                         "a page of the sport's governing body of about 2007; its suspension in a notice of 2019 "
                                         "that others repeat. The current rule book decides."));
        case CheckSource::SportsReference:
            return say(QT_TRANSLATE_NOOP(
                "wording", "a general sports reference that repeats the rule, year not known. The current rule book decides."));
        case CheckSource::ReferenceAndMemory:
            return say(QT_TRANSLATE_NOOP("wording",
                                         "a general sports reference for the figure, year not known; that it holds for this "
                                         "measurement is from memory. The current rule book decides."));
        case CheckSource::Centre:
            return say(QT_TRANSLATE_NOOP("wording", "a limit that this centre has set"));
    }
    return {};
}

QString statusOf(const NamedCheck& check) {
    switch (check.status) {
        case CheckStatus::InForce:
            return say(QT_TRANSLATE_NOOP("wording", "in force, as far as the source says"));
        case CheckStatus::Suspended:
            return say(QT_TRANSLATE_NOOP("wording", "not in force: suspended in %1 (in force from %2)"))
                .arg(check.suspendedIn)
                .arg(check.since);
        case CheckStatus::CentresOwn:
            return say(QT_TRANSLATE_NOOP("wording", "the centre's own"));
    }
    return {};
}

}  // namespace laneward
