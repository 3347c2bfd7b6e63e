#include "app/cli/command_list.h"

#include <QCoreApplication>
#include <QJsonArray>

namespace laneward::cli {

namespace {

QJsonObject faultsJson(const std::vector<Finding>& faults, const Speech& speech) {
    QJsonArray list;
    for (const Finding& one : faults) {
        list.append(QJsonObject{{"rule", QString::fromUtf8(one.rule)}, {"subject", one.subject}, {"text", text(one, speech)}});
    }
    return {{"faults", list}};
}

}  // namespace

Status check(const Call& call) {
    const Outcome arguments = noArguments(call);
    if (!arguments) return arguments.error();
    const Result<QString> format = formatOf(call, {"text", "json"});
    if (!format) return format.error();
    Result<std::unique_ptr<Store>> store = openStore(call, Access::ReadOnly);
    if (!store) return store.error();
    const Result<std::vector<Finding>> faults = (*store)->check();
    if (!faults) return faults.error();
    const Speech speech{QLocale(), Zone(), UnitSystem::Metric};
    if (*format == "json") {
        print(call, faultsJson(*faults, speech));
    } else if (faults->empty()) {
        print(call, QCoreApplication::translate("cli", "%1: sound\n").arg((*store)->location().shown()));
    } else {
        for (const Finding& one : *faults)
            print(call, text(one, speech) + "\n");
    }
    return faults->empty() ? 0 : 1;
}

}  // namespace laneward::cli
