#include "tests/support/temporary_centre.h"

#include <QFile>

using namespace laneward;

namespace support {

std::unique_ptr<Store> opened(const Location& location, Access access) {
    Result<std::unique_ptr<Store>> store = Store::open(location, access);
    if (!store) qFatal("%s: %s", qPrintable(location.shown()), store.error().finding.rule.constData());
    return *std::move(store);
}

void fill(Store& store) {
    const Outcome filled = store.replaceAll(fullSeason(), fullHistory(), PersonId{"ada"}, fullSeasonNow);
    if (!filled) qFatal("%s: %s", qPrintable(filled.error().finding.subject), filled.error().finding.rule.constData());
}

TemporaryCentre::TemporaryCentre(bool filled) : m_store(opened(location(), Access::Create)) {
    if (filled) fill(*m_store);
}

Location TemporaryCentre::location() const {
    Location location;
    location.path = m_directory.filePath("club.laneward");
    return location;
}

std::unique_ptr<Store> TemporaryCentre::another(Access access) const { return opened(location(), access); }

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) qFatal("cannot read %s", qPrintable(path));
    return file.readAll();
}

void writeBytes(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size()) qFatal("cannot write %s", qPrintable(path));
}

}  // namespace support
