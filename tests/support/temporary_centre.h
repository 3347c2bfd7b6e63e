// A centre in a temporary place, on either database, for tests that want a real store.
#pragma once

#include "core/storage/store.h"
#include "tests/support/full_season.h"

#include <QTemporaryDir>

#include <memory>

namespace support {

/// A SQLite file in a directory of its own that goes away with this object.
class TemporaryCentre {
public:
    /// Filled with fullSeason() and fullHistory() unless `filled` is false.
    explicit TemporaryCentre(bool filled = true);

    laneward::Location location() const;
    QString path() const { return location().path; }
    QString directory() const { return m_directory.path(); }
    laneward::Store& store() { return *m_store; }
    /// Another connection to the same file.
    std::unique_ptr<laneward::Store> another(laneward::Access access = laneward::Access::ReadWrite) const;
    void close() { m_store.reset(); }

private:
    QTemporaryDir m_directory;
    std::unique_ptr<laneward::Store> m_store;
};

/// Opens or ends the test run with the error's rule.
std::unique_ptr<laneward::Store> opened(const laneward::Location& location, laneward::Access access);
/// fullSeason() and fullHistory() put into a store.
void fill(laneward::Store& store);

QByteArray bytesOf(const QString& path);
void writeBytes(const QString& path, const QByteArray& bytes);

}  // namespace support
