#include "core/storage/database.h"

#include <QSqlDatabase>
#include <QSqlRecord>
#include <QUuid>

namespace laneward {
namespace {

constexpr size_t preparedAtMost = 200;

std::vector<Row> drained(QSqlQuery& query) {
    std::vector<Row> rows;
    const int columns = query.record().count();
    while (query.next()) {
        Row row;
        row.columns.reserve(size_t(columns));
        for (int i = 0; i < columns; ++i)
            row.columns.push_back(query.value(i));
        rows.push_back(std::move(row));
    }
    return rows;
}

}  // namespace

Result<std::unique_ptr<Database>> Database::connect(Target target) {
    std::unique_ptr<Database> database(new Database(std::move(target)));
    if (const Outcome opened = database->open(); !opened) return opened.error();
    return database;
}

Database::~Database() { close(); }

Outcome Database::open() {
    const bool sqlite = dialect() == Dialect::Sqlite;
    const QString driver = sqlite ? QStringLiteral("QSQLITE") : QStringLiteral("QPSQL");
    if (!QSqlDatabase::isDriverAvailable(driver)) return fault(ErrorKind::Io, "store.no-driver", m_target.shown, {driver});
    m_connection = QStringLiteral("laneward-") + QUuid::createUuid().toString(QUuid::WithoutBraces);
    QSqlError failure;
    {
        QSqlDatabase db = QSqlDatabase::addDatabase(driver, m_connection);
        db.setDatabaseName(m_target.name);
        db.setHostName(m_target.host);
        db.setPort(m_target.port);
        db.setUserName(m_target.user);
        db.setConnectOptions(m_target.options);
        if (!db.open()) failure = db.lastError();
    }
    if (failure.isValid()) {
        close();
        return errorOf(dialect(), failure, m_target.shown);
    }
    for (const QString& statement : sessionStatements(dialect(), m_target.writable))
        if (const auto done = change(statement); !done) return done.error();
    return Nothing{};
}

void Database::close() {
    m_prepared.clear();
    m_direct.reset();
    if (!m_connection.isEmpty()) QSqlDatabase::removeDatabase(std::exchange(m_connection, {}));
}

Outcome Database::reconnect() {
    close();
    return open();
}

Result<QSqlQuery*> Database::executed(const QString& sql, const std::vector<QVariant>& values) {
    const QSqlDatabase db = QSqlDatabase::database(m_connection, false);
    if (!db.isOpen()) return fault(ErrorKind::Io, "store.unreachable", m_target.shown);
    if (values.empty()) {  // statements that cannot be prepared on a server: schema, transactions, settings
        m_direct = std::make_unique<QSqlQuery>(db);
        m_direct->setForwardOnly(true);
        if (!m_direct->exec(sql)) return errorOf(dialect(), m_direct->lastError(), m_target.shown);
        return m_direct.get();
    }
    if (m_prepared.size() >= preparedAtMost) m_prepared.clear();
    auto found = m_prepared.find(sql);
    if (found == m_prepared.end()) {
        QSqlQuery query(db);
        query.setForwardOnly(true);
        if (!query.prepare(sql)) return errorOf(dialect(), query.lastError(), m_target.shown);
        found = m_prepared.emplace(sql, std::move(query)).first;
    }
    QSqlQuery& query = found->second;
    for (size_t i = 0; i < values.size(); ++i)
        query.bindValue(int(i), values[i]);
    if (query.exec()) return &query;
    return errorOf(dialect(), query.lastError(), m_target.shown);
}

Result<std::vector<Row>> Database::rows(const QString& sql, const std::vector<QVariant>& values) {
    const Result<QSqlQuery*> query = executed(sql, values);
    if (!query) return query.error();
    std::vector<Row> all = drained(**query);
    const QSqlError error = (*query)->lastError();
    (*query)->finish();
    if (error.isValid()) return errorOf(dialect(), error, m_target.shown);
    return all;
}

Result<int> Database::change(const QString& sql, const std::vector<QVariant>& values) {
    const Result<QSqlQuery*> query = executed(sql, values);
    if (!query) return query.error();
    const int touched = (*query)->numRowsAffected();
    (*query)->finish();
    return touched;
}

Result<QVariant> Database::value(const QString& sql, const std::vector<QVariant>& values) {
    const Result<std::vector<Row>> all = rows(sql, values);
    if (!all) return all.error();
    return all->empty() ? QVariant() : all->front().value(0);
}

}  // namespace laneward
