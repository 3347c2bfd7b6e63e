// Runs a script of tests/outside/tools with R: lines go in, fields of lines come out.
#pragma once

#include <QProcess>
#include <QStandardPaths>

#include <optional>

namespace support {

inline QString pathOfR() { return QStandardPaths::findExecutable(QStringLiteral("Rscript")); }
inline const char* noR = "R was not found, so nothing is compared with its package survival: apt-get install r-cran-survival";

/// None, with what it said in `complaint`, when it fails.
inline std::optional<QList<QList<QByteArray>>> linesOfR(const QStringList& call, const QByteArray& input, QByteArray& complaint) {
    QProcess r;
    QStringList arguments = call;
    arguments.front().prepend(qEnvironmentVariable("LANEWARD_SOURCE") + QStringLiteral("/tests/outside/tools/"));
    r.start(pathOfR(), arguments);
    r.write(input);
    r.closeWriteChannel();
    const bool ended = r.waitForFinished(300'000);
    complaint = r.readAllStandardError();
    if (!ended || r.exitStatus() != QProcess::NormalExit || r.exitCode() != 0) return {};
    QList<QList<QByteArray>> lines;
    for (const QByteArray& line : r.readAllStandardOutput().split('\n'))
        if (!line.isEmpty()) lines << line.split(',');
    return lines;
}

}  // namespace support
