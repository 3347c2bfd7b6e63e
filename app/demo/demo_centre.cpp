#include "app/demo/demo_centre.h"

#include "app/demo/demo_parts.h"

namespace laneward {

namespace demo {

std::uint64_t Dice::next() {
    m_state += 0x9e3779b97f4a7c15;
    std::uint64_t z = m_state;
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9;
    z = (z ^ (z >> 27)) * 0x94d049bb133111eb;
    return z ^ (z >> 31);
}

}  // namespace demo

CentreFile demoCentre(Instant now) {
    CentreFile file;
    file.season.centre = demo::house({});
    const QDate today = dateOf(file.season.centre, now);
    file.season.centre = demo::house(today);
    file.season.patterns = demo::patterns();
    file.season.series = demo::events(today);
    file.history = demo::yearOfRecords(file.season, today);
    std::vector<ServiceItem> items = demo::serviceItems(file.season.centre);
    demo::addServices(file.history, items, file.season.centre, today);
    demo::addPacks(file.history, file.season.centre, today);
    demo::addSupplies(file.season, file.history, today);
    demo::addForecasts(file.season, file.history, today);
    file.season.items = std::move(items);
    return file;
}

}  // namespace laneward
