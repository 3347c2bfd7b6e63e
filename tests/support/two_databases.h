// Fresh stores on either database, for suites whose rows are SQLite and PostgreSQL.
#pragma once

#include "tests/support/postgres_server.h"
#include "tests/support/temporary_centre.h"

#include <QTest>

namespace support {

class TwoDatabases {
public:
    /// The rows of a test's _data function.
    static void rows() {
        QTest::addColumn<bool>("postgres");
        QTest::newRow("sqlite") << false;
        QTest::newRow("postgresql") << true;
    }

    /// A new empty store on the database of the current row.
    std::unique_ptr<laneward::Store> fresh() {
        QFETCH(bool, postgres);
        if (postgres) return opened(m_server.newDatabase(), laneward::Access::Create);
        laneward::Location location;
        location.path = m_directory.filePath(QString("%1.laneward").arg(++m_files));
        return opened(location, laneward::Access::Create);
    }

    PostgresServer& server() { return m_server; }

private:
    PostgresServer m_server;
    QTemporaryDir m_directory;
    int m_files = 0;
};

}  // namespace support
