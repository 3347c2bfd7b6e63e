#include "tests/support/postgres_server.h"

#include <QDir>
#include <QFile>
#include <QProcess>

#include <unistd.h>

using namespace laneward;

namespace support {
namespace {

QString newestBinaries() {
    const QString root = "/usr/lib/postgresql";
    const QStringList versions = QDir(root).entryList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name);
    if (versions.isEmpty()) qFatal("PostgreSQL is not installed: apt-get install postgresql");
    return root + '/' + versions.last() + "/bin/";
}

}  // namespace

PostgresServer::PostgresServer() : m_binaries(newestBinaries()) {
    const QString data = m_directory.filePath("data");
    QDir(m_directory.path()).mkdir("s");
    if (::geteuid() == 0) {  // the server refuses to run as root
        if (QProcess::execute("chown", {"-R", "postgres", m_directory.path()}) != 0) qFatal("no user postgres");
        QFile::setPermissions(m_directory.path(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner | QFile::ReadGroup |
                                                      QFile::ExeGroup | QFile::ReadOther | QFile::ExeOther);
    }
    run("initdb", {"-D", data, "-U", "app", "-A", "trust", "-E", "UTF8", "--locale=C.UTF-8", "--no-sync"});
    start();
}

PostgresServer::~PostgresServer() {
    if (m_running) stop();
}

void PostgresServer::run(const QString& program, const QStringList& arguments) const {
    QProcess process;
    process.setWorkingDirectory(m_directory.path());
    process.setStandardOutputFile(QProcess::nullDevice());
    QStringList command{m_binaries + program};
    if (::geteuid() == 0) command = QStringList{"runuser", "-u", "postgres", "--"} + command;
    command += arguments;
    process.start(command.first(), command.mid(1));
    const bool done = process.waitForFinished(60'000) && process.exitCode() == 0;
    if (!done) qFatal("%s: %s", qPrintable(program), process.readAllStandardError().constData());
}

void PostgresServer::start() {
    const QString options = QString("-k %1 -c listen_addresses='' -c fsync=off").arg(m_directory.filePath("s"));
    run("pg_ctl", {"-D", m_directory.filePath("data"), "-w", "-l", m_directory.filePath("log"), "-o", options, "start"});
    m_running = true;
}

void PostgresServer::stop(const char* mode) {
    run("pg_ctl", {"-D", m_directory.filePath("data"), "-w", "-m", mode, "stop"});
    m_running = false;
}

Location PostgresServer::newDatabase() {
    const QString name = QString("centre%1").arg(++m_databases);
    run("createdb", {"-h", m_directory.filePath("s"), "-U", "app", name});
    const Result<Location> location =
        Location::parse(QString("postgresql://app@localhost/%1?host=%2").arg(name, m_directory.filePath("s")));
    if (!location) qFatal("%s", location.error().finding.rule.constData());
    return *location;
}

}  // namespace support
