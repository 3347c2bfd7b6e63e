#include "app/window/setup_form.h"

#include <QCoreApplication>

namespace laneward {

namespace {

/// A plain pattern to begin with, until the house's own is entered: 26.15 mL a lane over 40 ft.
Pattern plainPattern(const QString& id) {
    const auto say = [](const char* source) { return QCoreApplication::translate("laneward::SetupForm", source); };
    Pattern pattern;
    pattern.id = {id};
    pattern.name = say(QT_TRANSLATE_NOOP("laneward::SetupForm", "House"));
    pattern.note =
        say(QT_TRANSLATE_NOOP("laneward::SetupForm", "A plain pattern to begin with; put the house's own in its place."));
    pattern.end = feet(40);
    pattern.strokes = {
        {Direction::Out, 2, 38, 2, Microlitres{50}, feet(0), feet(8), 0},
        {Direction::Out, 8, 32, 3, Microlitres{50}, feet(8), feet(22), 0},
        {Direction::Out, 11, 29, 2, Microlitres{50}, feet(22), feet(32), 0},
        {Direction::Back, 9, 31, 5, Microlitres{50}, feet(12), feet(32), 0},
        {Direction::Back, 6, 34, 4, Microlitres{50}, feet(2), feet(12), 0},
        {Direction::Back, 10, 30, 5, Microlitres{50}, feet(0), feet(2), 0},
    };
    return pattern;
}

}  // namespace

SeasonState newCentre(const SetUp& setUp, const std::function<QString()>& newId) {
    SeasonState season;
    season.centre.facts.id = {newId()};
    season.centre.facts.name = setUp.name;
    season.centre.facts.zone = setUp.zone;
    season.centre.facts.lanes = setUp.lanes;
    season.centre.facts.settings.units = setUp.units;
    season.centre.facts.settings.letterPaper = setUp.units == UnitSystem::UsCustomary;
    for (const QString& name : setUp.machines) {
        Machine machine;
        machine.id = {newId()};
        machine.name = name;
        season.centre.machines.push_back(machine);
    }
    season.centre.people.push_back({{newId()}, setUp.person, Role::Manager, true, 0});
    Shift shift;
    shift.id = {newId()};
    shift.name = QCoreApplication::translate("laneward::SetupForm", "Lane staff");
    shift.begin = setUp.workBegins;
    shift.end = setUp.workEnds;
    season.centre.shifts.push_back(shift);
    season.patterns.push_back(plainPattern(newId()));
    return season;
}

}  // namespace laneward
