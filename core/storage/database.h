// One connection to a database, and the only way to hold a transaction on it.
//
//     Result<Transaction> writing = Transaction::begin(database, Isolation::Writing);
//     Result<int> changed = database.change("UPDATE people SET name = ? WHERE …", {name, …});
//     Outcome done = writing->commit();          // without it: rolled back
//
// Results are read to their end at once, so that no statement keeps a lock. Values are always bound. One thread only.
#pragma once

#include "core/storage/dialect.h"
#include "core/storage/store.h"

#include <QSqlQuery>
#include <QTemporaryDir>
#include <QVariant>

#include <functional>
#include <future>
#include <map>
#include <memory>
#include <vector>

namespace laneward {

struct Row {
    std::vector<QVariant> columns;
    const QVariant& value(int i) const { return columns.at(size_t(i)); }
};

class Database {
public:
    /// How to connect: the Qt driver's own terms.
    struct Target {
        Dialect dialect = Dialect::Sqlite;
        QString name;  ///< database, or SQLite URI
        QString host;
        int port = -1;
        QString user;
        QString options;
        bool writable = true;
        QString shown;  ///< for messages
    };
    static Result<std::unique_ptr<Database>> connect(Target target);
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    Dialect dialect() const { return m_target.dialect; }
    bool isWritable() const { return m_target.writable; }
    QString shown() const { return m_target.shown; }
    void setShown(const QString& shown) { m_target.shown = shown; }
    /// Nothing is written before this examination of the file, on a thread of its own, has ended well.
    void examineLater(std::function<Outcome()> examination) { m_toExamine = std::move(examination); }
    /// What it has found so far. Begins it.
    std::optional<Error> damage();
    /// Keeps a directory, from which the database is read, until the connection ends.
    void keep(std::unique_ptr<QTemporaryDir> directory) { m_directory = std::move(directory); }

    Result<std::vector<Row>> rows(const QString& sql, const std::vector<QVariant>& values = {});
    /// How many rows it touched.
    Result<int> change(const QString& sql, const std::vector<QVariant>& values = {});
    /// The first column of the first row; an invalid QVariant when there is no row.
    Result<QVariant> value(const QString& sql, const std::vector<QVariant>& values = {});

    /// A new connection with the same session setup: forgets whatever the old one believed.
    Outcome reconnect();

    /// Tests only: asked right before and right after a COMMIT; true = report it as failed there.
    std::function<bool(bool after)> commitFails;

private:
    friend class Transaction;
    explicit Database(Target target) : m_target(std::move(target)) {}
    Outcome open();
    void close();
    void beginExamination();
    Outcome start(Isolation isolation);
    Outcome commit();
    void rollback();
    Result<QSqlQuery*> executed(const QString& sql, const std::vector<QVariant>& values);

    Target m_target;
    QString m_connection;
    std::map<QString, QSqlQuery> m_prepared;
    std::unique_ptr<QSqlQuery> m_direct;
    std::unique_ptr<QTemporaryDir> m_directory;
    std::function<Outcome()> m_toExamine;  ///< none = nothing, or begun
    std::shared_future<Outcome> m_examination;
};

class Transaction {
public:
    static Result<Transaction> begin(Database& database, Isolation isolation);
    Transaction(Transaction&& other) noexcept : m_database(std::exchange(other.m_database, nullptr)) {}
    Transaction& operator=(Transaction&&) = delete;
    ~Transaction();

    /// After a failure nothing is known until the operation's id has been looked up on a new connection (see committed.h).
    Outcome commit();

private:
    explicit Transaction(Database& database) : m_database(&database) {}
    Database* m_database;
};

}  // namespace laneward
