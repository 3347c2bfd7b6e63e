// Runs commands of the program within the test, on a centre in a folder that goes away.
#pragma once

#include "app/cli/commands.h"

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>

namespace support {

/// What a command answered.
struct Answer {
    int status = -1;  ///< -1 = the window would open
    QString out;
    QString err;
    QJsonObject json() const { return QJsonDocument::fromJson(out.toUtf8()).object(); }
};

inline Answer command(const QStringList& arguments) {
    QBuffer out;
    QBuffer err;
    out.open(QIODevice::WriteOnly);
    err.open(QIODevice::WriteOnly);
    laneward::Start start;
    const std::optional<int> status = laneward::runCommand(QStringList("laneward") + arguments, start, {out, err});
    return {status.value_or(-1), QString::fromUtf8(out.data()), QString::fromUtf8(err.data())};
}

/// The demo centre as of 2026-11-12, 15:00, made once and copied for each test.
class DemoFolder {
public:
    explicit DemoFolder(const QByteArray& centre) { write("demo.laneward", centre); }
    DemoFolder() = default;

    QString path(const QString& name) const { return m_folder.filePath(name); }
    void write(const QString& name, const QByteArray& content) const {
        QFile file(path(name));
        if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size()) qFatal("cannot write %s", qPrintable(name));
    }
    QByteArray read(const QString& name) const {
        QFile file(path(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    QStringList files() const { return QDir(m_folder.path()).entryList(QDir::Files, QDir::Name); }
    Answer run(const QStringList& arguments, const QString& centre = "demo.laneward") const {
        return command(QStringList{"--centre", path(centre), "--now", "2026-11-12T15:00"} + arguments);
    }

private:
    QTemporaryDir m_folder;
};

}  // namespace support
