#include "core/base/limits.h"
#include "core/storage/centre_file_parts.h"
#include "core/storage/centre_file_versions.h"
#include "core/storage/json_elements.h"
#include "core/storage/json_values.h"

#include <QSet>

namespace laneward {
namespace {

class Reading {
public:
    Reading(QIODevice& in, QString name) : m_document(in), m_name(std::move(name)) {}

    Result<CentreFile> all() {
        while (const std::optional<QString> key = m_document.nextKey())
            if (!member(*key)) return m_error.value_or(unreadable());
        if (m_document.failed()) return unreadable();
        if (!complete()) return *m_error;
        return std::move(m_file);
    }

private:
    Error unreadable() const {
        return fault(ErrorKind::Invalid, "json.unreadable", m_name, {std::int64_t{m_document.position()}});
    }

    bool refuse(const QByteArray& rule, const QString& path) {
        if (!m_error) m_error = fault(ErrorKind::Invalid, rule, path.isEmpty() ? m_name : m_name + QStringLiteral(": ") + path);
        return false;
    }

    bool member(const QString& key) {
        if (m_keys.contains(key)) return refuse("json.bad-value", key);
        m_keys.insert(key);
        if (key == QLatin1StringView("format") || key == QLatin1StringView("version") || key == QLatin1StringView("centre") ||
            key == QLatin1StringView("lanes"))
            return scalar(key);
        if (!isOurs()) return false;
        ListReader lists{*this, key};
        eachList(lists, m_file);
        return lists.found ? lists.good : refuse("json.unknown-key", key.left(limits::nameLength));
    }

    bool scalar(const QString& key) {
        const std::optional<QJsonValue> value = m_document.value();
        if (!value) return false;
        if (key == QLatin1StringView("format"))
            return value->toString() == QLatin1StringView(centreFileFormat) || refuse("json.bad-value", key);
        if (key == QLatin1StringView("version")) return version(*value);
        if (key == QLatin1StringView("lanes")) m_lanes = *value;
        if (key == QLatin1StringView("centre")) m_centre = *value;
        return true;
    }

    bool version(const QJsonValue& value) {
        const qint64 number = value.toInteger(0);
        if (number > centreFileVersion) return refuse("centre-file.newer", {});
        m_version = int(number);
        return number >= 1 || refuse("json.bad-value", QStringLiteral("version"));
    }

    /// Lists are read only after the file has said what it is: nobody's 100 MB are read to find that they are not ours.
    bool isOurs() {
        for (const auto* key : {"format", "version"})
            if (!m_keys.contains(QLatin1StringView(key))) return refuse("json.missing-key", QLatin1StringView(key));
        return true;
    }

    struct ListReader {
        Reading& reading;
        const QString& key;
        bool found = false;
        bool good = true;

        template <class T>
        void operator()(const char* name, std::vector<T>& list) {
            if (key != QLatin1StringView(name)) return;
            found = true;
            good = reading.list(QLatin1StringView(name), list);
        }
    };

    struct Requiring {
        Reading& reading;

        template <class T>
        void operator()(const char* key, const T&) {
            if (!mayLackList(QLatin1StringView(key), reading.m_version)) reading.require(key);
        }
    };

    QJsonValue asNow(const QJsonValue& element, QLatin1StringView key) const {
        return m_version == centreFileVersion ? element : raised(element, key, m_version);
    }

    template <class T>
    bool list(QLatin1StringView key, std::vector<T>& list) {
        const JsonPath at{nullptr, key};
        if (!m_document.entersList()) return refuse("json.bad-value", at.text());
        while (const std::optional<QJsonValue> element = m_document.nextElement()) {
            const JsonPath here{&at, {}, qsizetype(list.size())};
            JsonFault fault;
            if (!fromJson(asNow(*element, key), here, list.emplace_back(), fault)) return refuse(fault.rule, fault.path);
        }
        return !m_document.failed();
    }

    /// The centre's own facts, joined when all is read; every member must have been there.
    bool complete() {
        Requiring missing{*this};
        for (const auto* key : {"format", "version", "centre", "lanes"})
            require(key);
        eachList(missing, m_file);
        if (m_error) return false;
        if (!m_centre.isObject()) return refuse("json.bad-value", QStringLiteral("centre"));
        QJsonObject centre = asNow(m_centre, QLatin1StringView("centre")).toObject();
        if (centre.contains(QLatin1StringView("lanes"))) return refuse("json.unknown-key", QStringLiteral("centre.lanes"));
        centre.insert(QLatin1StringView("lanes"), m_lanes);
        JsonFault fault;
        const JsonPath at{nullptr, QLatin1StringView("centre")};
        return fromJson(centre, at, m_file.season.centre.facts, fault) || refuse(fault.rule, fault.path);
    }

    void require(const char* key) {
        if (!m_keys.contains(QLatin1StringView(key))) refuse("json.missing-key", QLatin1StringView(key));
    }

    JsonElements m_document;
    QString m_name;
    CentreFile m_file;
    QJsonValue m_centre;
    QJsonValue m_lanes;
    int m_version = centreFileVersion;
    QSet<QString> m_keys;
    std::optional<Error> m_error;
};

}  // namespace

Result<CentreFile> readCentreFile(QIODevice& in, const QString& name) {
    if (!in.isSequential() && in.size() > limits::centreFileBytes)
        return fault(ErrorKind::Invalid, "json.too-large", name, {std::int64_t{limits::centreFileBytes}});
    return Reading(in, name).all();
}

}  // namespace laneward
