#include "app/cli/csv_rows.h"

#include <QJsonDocument>
#include <QLocale>

#include <cmath>

namespace laneward::cli {

namespace {

Error unreadable(const QString& name, const QString& what) {
    return fault(ErrorKind::Invalid, "mapping.unreadable", name, {what});
}

bool take(const QJsonValue& value, QHash<QString, QString>& into) {
    const QJsonObject object = value.toObject();
    for (auto it = object.begin(); it != object.end(); ++it) {
        if (!it->isString()) return false;
        into[it.key()] = it->toString();
    }
    return value.isObject();
}

}  // namespace

Result<CsvMapping> csvMapping(const QByteArray& json, const QString& name) {
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(json, &error);
    if (!document.isObject()) return unreadable(name, error.errorString());
    CsvMapping mapping;
    const QJsonObject object = document.object();
    for (auto it = object.begin(); it != object.end(); ++it) {
        bool good = it->isString();
        if (it.key() == "columns")
            good = take(*it, mapping.columns);
        else if (it.key() == "defaults")
            good = take(*it, mapping.defaults);
        else if (it.key() == "date")
            mapping.date = it->toString();
        else if (it.key() == "time")
            mapping.time = it->toString();
        else if (it.key() == "decimal" && (*it == "point" || *it == "comma"))
            mapping.decimalComma = *it == "comma";
        else
            good = false;
        if (!good) return unreadable(name, it.key());
    }
    return mapping;
}

QString CsvRow::value(const QString& key) const {
    const auto column = m_columns.find(key);
    const QString text = column == m_columns.end() ? QString() : m_record.fields[*column].trimmed();
    return text.isEmpty() ? m_mapping.defaults.value(key) : text;
}

Result<std::int64_t> CsvRow::whole(const QString& key, std::int64_t least, std::int64_t most) const {
    bool good = false;
    const qlonglong n = value(key).toLongLong(&good);
    if (!good || n < least || n > most) return bad(key);
    return std::int64_t(n);
}

Result<double> CsvRow::number(const QString& key, double least, double most) const {
    bool good = false;
    const double x = QLocale::c().toDouble(value(key), &good);
    if (!good || !std::isfinite(x) || x < least || x > most) return bad(key);
    return x;
}

Result<QDate> CsvRow::date(const QString& key) const {
    const QDate date = QDate::fromString(value(key), m_mapping.date);
    if (!date.isValid() || date.year() < 1970 || date.year() > 2099) return bad(key);
    return date;
}

Result<QTime> CsvRow::time(const QString& key) const {
    const QTime time = QTime::fromString(value(key), m_mapping.time);
    if (!time.isValid()) return bad(key);
    return time;
}

Result<LaneSet> CsvRow::lanes(const QString& key) const {
    if (!has(key)) return LaneSet();
    const Result<LaneSet> lanes = LaneSet::parse(value(key));
    if (!lanes) return bad(key);
    return *lanes;
}

Result<size_t> CsvRow::word(const QString& key, const QStringList& words) const {
    const qsizetype index = words.indexOf(value(key).toLower());
    if (index < 0) return bad(key);
    return size_t(index);
}

Result<CsvRows> csvRows(const QByteArray& bytes, const QString& name, const CsvMapping& mapping, const QStringList& needed) {
    Result<CsvTable> table = readCsv(bytes, name);
    if (!table) return table.error();
    if (table->records.empty()) return fault(ErrorKind::Invalid, "csv.empty", name);
    CsvRows rows{std::move(*table), {}, mapping, name};
    const QStringList& titles = rows.table.records.front().fields;
    for (qsizetype n = 0; n < titles.size(); ++n) {
        const QString title = titles[n].trimmed();
        const QString ours = mapping.columns.key(title, title);
        if (!rows.columns.contains(ours)) rows.columns[ours] = n;
    }
    for (const QString& key : needed) {
        if (rows.columns.contains(key) || mapping.defaults.contains(key)) continue;
        return fault(ErrorKind::Invalid, "csv.column-missing", name + ":1", {mapping.columns.value(key, key)});
    }
    return rows;
}

}  // namespace laneward::cli
