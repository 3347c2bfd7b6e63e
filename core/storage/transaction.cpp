#include "core/storage/database.h"

namespace laneward {

void Database::beginExamination() {
    if (m_toExamine) m_examination = std::async(std::launch::async, std::exchange(m_toExamine, {}));
}

std::optional<Error> Database::damage() {
    using namespace std::chrono_literals;
    beginExamination();
    if (!m_examination.valid() || m_examination.wait_for(0s) != std::future_status::ready) return {};
    const Outcome& found = m_examination.get();
    return found ? std::optional<Error>() : found.error();
}

Outcome Database::start(Isolation isolation) {
    if (isolation == Isolation::Writing) {
        beginExamination();
        if (m_examination.valid() && !m_examination.get()) return m_examination.get().error();
    }
    const QString begin = beginStatement(dialect(), isolation);
    const Result<int> begun = change(begin);
    if (begun) return Nothing{};
    // A server that was restarted leaves a dead connection behind; nothing has been said on it yet, so a new one loses nothing.
    if (dialect() == Dialect::Sqlite || begun.error().finding.rule != "store.unreachable") return begun.error();
    if (const Outcome again = reconnect(); !again) return again;
    const Result<int> second = change(begin);
    return second ? Outcome(Nothing{}) : Outcome(second.error());
}

Outcome Database::commit() {
    const auto failed = [this](bool after) { return commitFails && commitFails(after); };
    const Error injected = fault(ErrorKind::Io, "store.unreachable", m_target.shown);
    if (failed(false)) {
        rollback();
        return injected;
    }
    const Result<int> done = change(QStringLiteral("COMMIT"));
    if (!done) {
        if (dialect() == Dialect::Sqlite) rollback();  // a server has ended the transaction by itself
        return done.error();
    }
    return failed(true) ? Outcome(injected) : Outcome(Nothing{});
}

// Nothing is left to do about a rollback that fails: the connection is gone, and with it the transaction.
void Database::rollback() { (void)change(QStringLiteral("ROLLBACK")); }

Result<Transaction> Transaction::begin(Database& database, Isolation isolation) {
    if (const Outcome started = database.start(isolation); !started) return started.error();
    return Transaction(database);
}

Transaction::~Transaction() {
    if (m_database) m_database->rollback();
}

Outcome Transaction::commit() { return std::exchange(m_database, nullptr)->commit(); }

}  // namespace laneward
