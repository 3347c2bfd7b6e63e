// A private PostgreSQL cluster in a temporary directory, reached by a socket there: one for each test program that asks.
//
//     support::PostgresServer server;                    // a missing server ends the run: nothing is skipped
//     Location place = server.newDatabase();
#pragma once

#include "core/storage/store.h"

#include <QStringList>
#include <QTemporaryDir>

namespace support {

class PostgresServer {
public:
    PostgresServer();
    ~PostgresServer();

    /// An empty database of its own.
    laneward::Location newDatabase();
    void stop(const char* mode = "fast");  ///< "immediate": as if it had been killed
    void start();

private:
    void run(const QString& program, const QStringList& arguments) const;

    QTemporaryDir m_directory;
    QString m_binaries;
    int m_databases = 0;
    bool m_running = false;
};

}  // namespace support
