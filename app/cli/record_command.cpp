#include "app/cli/command_list.h"
#include "core/storage/centre_file.h"

#include <QCoreApplication>

namespace laneward::cli {

Status record(const Call& call) {
    const Result<QString> path = onlyArgument(call, "FILE.json");
    if (!path) return path.error();
    const Result<QByteArray> content = fileContent(*path);
    if (!content) return content.error();
    const Result<std::vector<Record>> records = readRecords(*content, *path);
    if (!records) return records.error();
    Result<std::unique_ptr<Store>> store = openStore(call, Access::ReadWrite);
    if (!store) return store.error();
    const bool only = call.options.isSet("dry-run");
    const Outcome appended = only ? Outcome(Nothing{}) : (*store)->append(*records);
    if (!appended) return appended.error();
    const QString form = only ? QCoreApplication::translate("cli", "%1: %2 records could be recorded\n")
                              : QCoreApplication::translate("cli", "%1: %2 records recorded\n");
    print(call, form.arg(*path).arg(records->size()));
    return 0;
}

}  // namespace laneward::cli
