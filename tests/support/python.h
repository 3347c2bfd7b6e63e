// Runs a script of tests/outside/tools with Debian's Python: a JSON list goes in, one of answers comes out.
#pragma once

#include <QJsonArray>
#include <QJsonDocument>
#include <QProcess>

namespace support {

/// Empty, with what it said in `complaint`, when it fails.
inline QJsonArray answersOf(const QString& script, const QJsonArray& cases, QByteArray& complaint) {
    QProcess python;
    const QString path = qEnvironmentVariable("LANEWARD_SOURCE") + QStringLiteral("/tests/outside/tools/") + script;
    python.start(QStringLiteral("/usr/bin/python3"), {path});
    python.write(QJsonDocument(cases).toJson(QJsonDocument::Compact));
    python.closeWriteChannel();
    python.waitForFinished(120'000);
    complaint = "python3-scipy is needed: apt-get install python3-scipy\n" + python.readAllStandardError();
    return QJsonDocument::fromJson(python.readAllStandardOutput()).array();
}

}  // namespace support
