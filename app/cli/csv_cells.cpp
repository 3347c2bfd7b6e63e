#include "app/cli/csv_cells.h"

#include "core/patterns/tape_reading.h"

#include <QLocale>
#include <QUuid>

#include <cmath>

namespace laneward::cli {

namespace {

constexpr double micrometresPerFoot = 304'800.0;  // 16 CFR 500.19: 1 ft = 0.3048 m exactly
constexpr double laneFeet = 60;

}  // namespace

void CsvCells::refuse(const char* rule, const QString& key, std::vector<Value> expected) {
    std::vector<Value> values{columnOf(key), value(key)};
    values.insert(values.end(), expected.begin(), expected.end());
    m_faults.push_back({Severity::Fault, rule, m_row.where(), std::move(values)});
}

void CsvCells::need(const QStringList& keys) {
    for (const QString& key : keys)
        if (!has(key)) refuse("csv.cell-empty", key);
}

// A comma may mean a decimal or a thousand: it is never guessed.
std::optional<double> CsvCells::decimal(const QString& key, const char* rule, double most) {
    QString text = value(key);
    const QChar foreign = m_mapping.decimalComma ? u'.' : u',';
    if (text.contains(foreign)) {
        refuse(m_mapping.decimalComma ? "csv.decimal-point" : "csv.decimal-comma", key);
        return std::nullopt;
    }
    if (m_mapping.decimalComma) text.replace(u',', u'.');
    bool good = false;
    const double number = QLocale::c().toDouble(text, &good);
    if (good && std::isfinite(number) && number >= 0 && number <= most) return number;
    refuse(rule, key, {std::int64_t(most)});
    return std::nullopt;
}

std::optional<std::int64_t> CsvCells::film(const QString& key) {
    if (!has(key)) return std::nullopt;
    const std::optional<double> units = decimal(key, "csv.film", double(mostMilliUnits) / 1'000);
    return units ? std::optional<std::int64_t>(std::llround(*units * 1'000)) : std::nullopt;
}

std::int64_t CsvCells::whole(const QString& key, std::int64_t least, std::int64_t most) {
    bool good = false;
    const qlonglong number = value(key).toLongLong(&good);
    if (good && number >= least && number <= most) return number;
    refuse("csv.whole", key, {least, most});
    return least;
}

Micrometres CsvCells::feet(const QString& key) {
    const std::optional<double> length = decimal(key, "csv.distance", laneFeet);
    return {std::llround(length.value_or(0) * micrometresPerFoot)};
}

Micrometres CsvCells::micrometres(const QString& key, Micrometres most) { return {whole(key, -most.value, most.value)}; }

Instant CsvCells::instant(const Zone& zone) {
    if (has("at")) {
        const QDateTime time = QDateTime::fromString(value("at"), Qt::ISODate);
        if (time.isValid() && time.timeSpec() != Qt::LocalTime) return {time.toSecsSinceEpoch()};
        refuse("csv.instant", "at");
        return {};
    }
    LocalTime local;
    if (const Result<QDate> date = m_row.date("date"))
        local.date = *date;
    else
        refuse("csv.date", "date", {m_mapping.date});
    if (const Result<QTime> time = m_row.time("time"))
        local.time = *time;
    else
        refuse("csv.time", "time", {m_mapping.time});
    return local.isValid() ? zone.toInstant(local) : Instant{};
}

size_t CsvCells::word(const QString& key, const QStringList& words) {
    if (const Result<size_t> index = m_row.word(key, words)) return *index;
    refuse("csv.word", key, {words.join(", ")});
    return 0;
}

QString idFrom(const QStringList& facts) {
    static const QUuid space(QStringLiteral("{b7a0f0de-4c43-5d7d-9c0a-3e1d5b8f6a10}"));
    return QUuid::createUuidV5(space, facts.join('\n')).toString(QUuid::WithoutBraces);
}

}  // namespace laneward::cli
