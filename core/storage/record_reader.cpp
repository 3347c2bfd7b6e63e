#include "core/base/limits.h"
#include "core/storage/centre_file.h"
#include "core/storage/json_values.h"
#include "core/storage/stock_record_reader.h"

#include <QJsonDocument>

namespace laneward {
namespace {

/// Keys that a script may leave out; the value's own default then holds.
constexpr std::array optionalInRun{"job", "plan_version", "corrects", "note", "result", "recorded_at", "pattern_version"};
constexpr std::array optionalInLevels{"corrects", "volts_mv", "poured", "emptied_ul"};
constexpr std::array optionalInTape{"corrects", "note", "machine", "pattern_version", "lane_of_run"};
constexpr std::array optionalInInspection{"corrects", "note"};
constexpr std::array optionalInIncident{"corrects", "answers", "lane", "machine"};
constexpr std::array optionalInHandOver{"corrects"};
constexpr std::array optionalInPack{"volts_mv", "state", "spent", "withdrawn", "note", "corrects"};
constexpr std::array optionalInMeter{"replaced", "withdrawn", "note", "corrects"};

struct Reading {
    QString name;
    const std::vector<Supply>& supplies;
    JsonFault fault;
    std::vector<Value> values;

    Error error() const {
        return laneward::fault(ErrorKind::Invalid, fault.rule, name + QStringLiteral(": ") + fault.path, values);
    }

    template <class T>
    std::optional<Record> as(const QJsonObject& object, const JsonPath& at, std::span<const char* const> optional) {
        T record;
        JsonReader reader(object, at, fault, optional);
        describe(reader, record);
        if (!reader.finish()) return std::nullopt;
        return complete(std::move(record), object);
    }

    static Record complete(RunLog run, const QJsonObject& object) {
        if (!object.contains(QLatin1StringView("result")))
            run.result = run.job.isEmpty() ? RunResult::Unplanned : RunResult::AsPlanned;
        if (!object.contains(QLatin1StringView("recorded_at"))) run.recordedAt = run.time.end;
        return run;
    }
    template <class T>
    static Record complete(T record, const QJsonObject&) {
        return record;
    }

    std::optional<Record> record(const QJsonValue& json, const JsonPath& at) {
        QJsonObject object = json.toObject();
        const JsonPath kindAt{&at, QLatin1StringView("kind")};
        if (!json.isObject()) return refused("json.bad-value", at);
        if (!object.contains(kindAt.key)) return refused("json.missing-key", kindAt);
        const QString kind = object.take(kindAt.key).toString();
        if (kind == QLatin1StringView("run")) return as<RunLog>(object, at, optionalInRun);
        if (kind == QLatin1StringView("fill") || kind == QLatin1StringView("levels"))
            return as<LevelReading>(object, at, optionalInLevels);
        if (kind == QLatin1StringView("incident")) return as<Incident>(object, at, optionalInIncident);
        if (kind == QLatin1StringView("hand_over")) return as<HandOver>(object, at, optionalInHandOver);
        if (kind == QLatin1StringView("reading")) return as<TapeReading>(object, at, optionalInTape);
        if (kind == QLatin1StringView("inspection")) return as<Inspection>(object, at, optionalInInspection);
        if (kind == QLatin1StringView("count")) return StockRecordReader(supplies, fault, values).count(object, at);
        if (kind == QLatin1StringView("receipt")) return StockRecordReader(supplies, fault, values).receipt(object, at);
        if (kind == QLatin1StringView("service")) return StockRecordReader(supplies, fault, values).service(object, at);
        if (kind == QLatin1StringView("meter")) return as<MeterReading>(object, at, optionalInMeter);
        if (kind == QLatin1StringView("pack")) return as<PackReading>(object, at, optionalInPack);
        return refused("json.bad-value", kindAt);
    }

    std::optional<Record> refused(const char* rule, const JsonPath& at) {
        fault.set(rule, at);
        return std::nullopt;
    }
};

}  // namespace

Result<std::vector<Record>> readRecords(const QByteArray& json, const QString& name, const std::vector<Supply>& supplies) {
    if (json.size() > limits::importBytes)
        return fault(ErrorKind::Invalid, "json.too-large", name, {std::int64_t{limits::importBytes}});
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(json, &error);
    if (!document.isArray()) return fault(ErrorKind::Invalid, "json.unreadable", name, {std::int64_t{error.offset}});
    Reading reading{name, supplies, {}, {}};
    std::vector<Record> records;
    const QJsonArray array = document.array();
    for (qsizetype i = 0; i < array.size(); ++i) {
        const std::optional<Record> record = reading.record(array.at(i), {nullptr, {}, i});
        if (!record) return reading.error();
        records.push_back(*record);
    }
    return records;
}

}  // namespace laneward
