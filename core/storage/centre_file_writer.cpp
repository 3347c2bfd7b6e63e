#include "core/storage/centre_file_parts.h"
#include "core/storage/json_values.h"

#include <QJsonDocument>

namespace laneward {
namespace {

QByteArray compact(const QJsonObject& object) { return QJsonDocument(object).toJson(QJsonDocument::Compact); }

/// Writes one list after another, one record a line, and remembers whether the device took all of it.
struct ListWriter {
    QIODevice& out;
    bool good = true;

    void text(const QByteArray& bytes) { good = good && out.write(bytes) == bytes.size(); }

    template <class T>
    void operator()(const char* key, const std::vector<T>& list) {
        text(QByteArray(",\n\"") + key + "\": [");
        QByteArray separator = "\n";
        for (const T& item : list) {
            text(separator + compact(objectOf(item)));
            separator = ",\n";
        }
        text("]");
    }
};

}  // namespace

// A device that takes less than it was given has failed, whatever it says later: a full disk shows itself this way.
Outcome writeCentreFile(QIODevice& out, const CentreFile& file) {
    QJsonObject centre = objectOf(file.season.centre.facts);
    const QJsonValue lanes = centre.take(QLatin1StringView("lanes"));
    ListWriter writer{out};
    writer.text(QByteArray("{\"format\": \"") + centreFileFormat + "\",\n\"version\": " + QByteArray::number(centreFileVersion));
    writer.text(",\n\"centre\": " + compact(centre));
    writer.text(",\n\"lanes\": " + QByteArray::number(lanes.toInteger()));
    eachList(writer, file);
    writer.text("\n}\n");
    return writer.good ? Outcome(Nothing{}) : Outcome(fault(ErrorKind::Io, "file.cannot-write", {}, {out.errorString()}));
}

}  // namespace laneward
