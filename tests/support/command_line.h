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

/// A folder with a centre; commands run as of 2026-11-12, 15:00.
class DemoFolder {
public:
    explicit DemoFolder(const QByteArray& centre) { write("demo.laneward", centre); }
    DemoFolder() = default;

    QString path(const QString& name) const { return m_folder.filePath(name); }
    void write(const QString& name, const QByteArray& content) const {
        QFile file(path(name));
        if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size())
            qFatal("cannot write %s", qPrintable(name));
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

/// The demo centre as of 2026-11-12, 15:00, as the bytes of its file; empty when it could not be made.
inline QByteArray demoCentreFile() {
    const DemoFolder folder;
    if (folder.run({"demo"}).status != 0 || !QDir().mkpath(folder.path("b"))) return {};
    // A copy by backup, so that nothing is left in a journal beside the file.
    QFile copy(folder.run({"backup", folder.path("b")}).out.trimmed());
    if (!copy.open(QIODevice::ReadOnly)) return {};
    folder.write("copy.laneward", copy.readAll());
    // Opened to be written once, the file has the form that it keeps.
    folder.write("nothing.json", "[]");
    return folder.run({"record", folder.path("nothing.json")}, "copy.laneward").status == 0 ? folder.read("copy.laneward")
                                                                                            : QByteArray();
}

}  // namespace support
