// The commands, one function each. Internal to this room.
#pragma once

#include "app/cli/call.h"

#include <span>

namespace laneward::cli {

struct Command {
    const char* name;
    const char* usage;    ///< arguments and options, not translated
    const char* purpose;  ///< translated in the context "cli"
    QStringList options;  ///< allowed besides --centre, --now and --help
    Status (*run)(const Call&);
};

std::span<const Command> commands();
/// What --help prints; for one command or all.
QString helpText(const Command* command);

Status backup(const Call& call);
Status check(const Call& call);
Status demo(const Call& call);
Status events(const Call& call);
Status exportFile(const Call& call);
Status film(const Call& call);
Status forecast(const Call& call);
Status importFile(const Call& call);
Status order(const Call& call);
Status plan(const Call& call);
Status record(const Call& call);
Status restore(const Call& call);
Status service(const Call& call);
Status sheet(const Call& call);

}  // namespace laneward::cli
