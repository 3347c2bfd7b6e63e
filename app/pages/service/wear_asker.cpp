#include "app/pages/service/wear_asker.h"

namespace laneward {

namespace {

Result<WearAsker::Records> read(const Beside::Question& asked, const Location& location) {
    const Result<Store*> store = asked.store(location);
    if (!store) return store.error();
    Result<std::vector<ServiceRecord>> records = (*store)->services(allRecords);
    if (!records) {
        asked.closeStore();
        return records.error();
    }
    return WearAsker::Records(std::make_shared<const std::vector<ServiceRecord>>(*std::move(records)));
}

}  // namespace

WearAsker::WearAsker(QObject* parent) : QObject(parent) {}

void WearAsker::ask(const Location& location) {
    m_beside.ask([this, location](const Beside::Question& asked) {
        const Result<Records> records = read(asked, location);
        asked.answer([this, records] {
            if (records)
                Q_EMIT answered(*records);
            else
                Q_EMIT failed(records.error());
        });
    });
}

}  // namespace laneward
