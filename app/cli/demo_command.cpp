#include "app/cli/command_list.h"
#include "app/demo/demo_centre.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace laneward::cli {

namespace {

void removeFile(const Location& location) {
    if (location.kind != Location::Kind::Sqlite) return;
    for (const char* suffix : {"", "-wal", "-shm"})
        QFile::remove(location.path + suffix);
}

}  // namespace

Status demo(const Call& call) {
    const Outcome arguments = noArguments(call);
    if (!arguments) return arguments.error();
    const Result<Zone> zone = Zone::load("Europe/London");
    if (!zone) return zone.error();
    const Instant now = nowOf(call, *zone);
    const Result<Location> location = Location::parse(call.start.centre);
    if (!location) return location.error();
    // Only the default place is ours to prepare; a folder that somebody names must be there.
    if (!call.start.centreGiven) QDir().mkpath(QFileInfo(location->path).absolutePath());
    Result<std::unique_ptr<Store>> store = Store::open(*location, Access::Create);
    if (!store) return store.error();
    const CentreFile centre = demoCentre(now);
    const Outcome filled = (*store)->replaceAll(centre.season, centre.history, {"rowan"}, now);
    if (!filled) {
        store->reset();
        removeFile(*location);
        return filled.error();
    }
    print(call, QCoreApplication::translate("cli", "%1: %2, %3 lanes, %4 series, %5 runs recorded\n")
                    .arg(location->shown(), centre.season.centre.facts.name)
                    .arg(centre.season.centre.facts.lanes)
                    .arg(centre.season.series.size())
                    .arg(centre.history.runs.size()));
    return 0;
}

}  // namespace laneward::cli
