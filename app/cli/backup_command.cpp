#include "app/cli/command_list.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace laneward::cli {

Status backup(const Call& call) {
    const Result<QString> folder = onlyArgument(call, "DIR");
    if (!folder) return folder.error();
    if (!QFileInfo(*folder).isDir()) return fault(ErrorKind::Io, "file.no-directory", *folder);
    Result<std::unique_ptr<Store>> store = openStore(call, Access::ReadOnly);
    if (!store) return store.error();
    const Result<QString> copy = (*store)->backup(*folder, nowOf(call, Zone()));
    if (!copy) return copy.error();
    print(call, *copy + "\n");
    return 0;
}

Status restore(const Call& call) {
    const Result<QString> file = onlyArgument(call, "FILE");
    if (!file) return file.error();
    const Result<Location> location = Location::parse(call.start.centre);
    if (!location) return location.error();
    const Outcome restored = laneward::restore(*file, *location, nowOf(call, Zone()));
    if (!restored) return restored.error();
    print(call, QCoreApplication::translate("cli", "%1: restored from %2\n").arg(location->shown(), *file));
    return 0;
}

}  // namespace laneward::cli
