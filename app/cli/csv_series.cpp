#include "app/cli/csv_rows.h"
#include "core/base/limits.h"
#include "core/documents/writers.h"

#include <QUuid>

#include <algorithm>

namespace laneward::cli {

namespace {

const QStringList kinds{"league", "practice", "school", "tournament", "open-play", "party", "closure", "other"};
const QStringList demandKinds{"fresh", "recent", "pattern", "stripped", "as-it-is"};
const QStringList treatments{"clean-and-condition", "condition-only", "clean-only"};
const QStringList columnNames{"id",
                              "title",
                              "kind",
                              "zone",
                              "date",
                              "start",
                              "minutes",
                              "rule",
                              "lanes",
                              "demand",
                              "pattern",
                              "treatment",
                              "longest_age_min",
                              "longest_play_min",
                              "demand_lanes",
                              "extra_dates",
                              "excluded_dates",
                              "settle_min",
                              "clearing_min",
                              "first_pair_twice",
                              "yields_to_closure",
                              "no_staff",
                              "cancelled",
                              "players",
                              "note"};
constexpr std::int64_t mostMinutes = 366 * 24 * 60;
const QString localFormat = "yyyy-MM-ddTHH:mm";

/// Fills one field of a value when its column has something; stops the chain at the first fault.
class Filler {
public:
    explicit Filler(const CsvRow& row) : m_row(row) {}

    template <class T>
    void take(const Result<T>& result, T& into) {
        if (result)
            into = *result;
        else if (!m_error)
            m_error = result.error();
    }
    void minutesOf(const QString& key, Seconds& into) {
        std::int64_t n = into.value / 60;
        if (m_row.has(key)) take(m_row.whole(key, 0, mostMinutes), n), into = minutes(n);
    }
    void flag(const QString& key, bool& into) {
        size_t n = into ? 1 : 0;
        if (m_row.has(key)) take(m_row.word(key, {"no", "yes"}), n), into = n == 1;
    }
    template <class Enum>
    void word(const QString& key, const QStringList& words, Enum& into) {
        size_t n = size_t(into);
        if (m_row.has(key)) take(m_row.word(key, words), n), into = Enum(n);
    }
    void localTimes(const QString& key, std::vector<LocalTime>& into) {
        for (const QString& text : m_row.value(key).split(' ', Qt::SkipEmptyParts)) {
            const QDateTime time = QDateTime::fromString(text, localFormat);
            if (!time.isValid() && !m_error) m_error = m_row.bad(key);
            into.push_back({time.date(), time.time()});
        }
    }
    void refuse(const Error& error) {
        if (!m_error) m_error = error;
    }
    const std::optional<Error>& error() const { return m_error; }

private:
    const CsvRow& m_row;
    std::optional<Error> m_error;
};

/// Rows without an id get one from what they say, so that the same file does not come in twice.
QString idOf(const CsvRow& row) {
    if (row.has("id")) return row.value("id");
    static const QUuid space(QStringLiteral("{0b9f6c1e-55f2-5d0b-8f0e-7a3f6b1c9d21}"));
    const QStringList facts{row.value("title"), row.value("date"), row.value("start"), row.value("lanes"), row.value("rule")};
    return QUuid::createUuidV5(space, facts.join('\n')).toString(QUuid::WithoutBraces);
}

void fillDuration(Filler& fill, const CsvRow& row, Series& series) {
    if (row.has("minutes")) {
        fill.minutesOf("minutes", series.duration);
    } else if (row.has("end")) {
        QTime end;
        fill.take(row.time("end"), end);
        // An end that is not later than the start is on the next day.
        const int seconds = series.start.time.secsTo(end);
        series.duration = Seconds{seconds > 0 ? seconds : seconds + 86'400};
    }
    if (series.duration <= Seconds{0}) fill.refuse(row.bad("minutes"));
}

void fillSeries(Filler& fill, const CsvRow& row, Series& series) {
    series.id = {idOf(row)};
    series.uid = series.id.value;
    series.title = row.value("title");
    if (series.title.isEmpty() || series.title.size() > limits::nameLength) fill.refuse(row.bad("title"));
    fill.word("kind", kinds, series.kind);
    if (row.has("zone")) series.zone = row.value("zone").toUtf8();
    fill.take(row.date("date"), series.start.date);
    fill.take(row.time("start"), series.start.time);
    fillDuration(fill, row, series);
    series.rule = row.value("rule");
    fill.take(row.lanes("lanes"), series.lanes);
    fill.localTimes("extra_dates", series.extraDates);
    fill.localTimes("excluded_dates", series.excludedDates);
    fill.minutesOf("settle_min", series.settle);
    fill.minutesOf("clearing_min", series.clearing);
    fill.flag("first_pair_twice", series.firstPairTwice);
    fill.flag("yields_to_closure", series.yieldsToClosure);
    fill.flag("no_staff", series.noStaff);
    fill.flag("cancelled", series.cancelled);
    std::int64_t players = 0;
    if (row.has("players")) fill.take(row.whole("players", 0, 100'000), players);
    series.players = int(players);
    series.note = row.value("note");
}

void addDemand(Filler& fill, const CsvRow& row, Series& series) {
    if (!row.has("demand")) return;
    SurfaceDemand demand;
    fill.word("demand", demandKinds, demand.kind);
    fill.word("treatment", treatments, demand.least);
    if (row.has("pattern")) demand.pattern = PatternId{row.value("pattern")};
    demand.lanes = series.lanes;
    if (row.has("demand_lanes")) fill.take(row.lanes("demand_lanes"), demand.lanes);
    fill.minutesOf("longest_age_min", demand.longestAge);
    fill.minutesOf("longest_play_min", demand.longestPlay);
    series.demands.push_back(demand);
}

QString text(const std::vector<LocalTime>& times) {
    QStringList list;
    for (const LocalTime& time : times)
        list += QDateTime(time.date, time.time, Qt::UTC).toString(localFormat);
    return list.join(' ');
}

CsvField words(const QString& value) { return {value, false}; }
CsvField number(std::int64_t n) { return {QString::number(n), true}; }
CsvField flag(bool on) { return {on ? "yes" : "no", false}; }

QByteArray record(const Series& series, const SurfaceDemand* demand) {
    std::vector<CsvField> fields{words(series.id.value),
                                 words(series.title),
                                 words(kinds[qsizetype(series.kind)]),
                                 words(QString::fromUtf8(series.zone)),
                                 words(series.start.date.toString(Qt::ISODate)),
                                 words(series.start.time.toString("HH:mm")),
                                 number(series.duration.value / 60),
                                 words(series.rule),
                                 words(series.lanes.text())};
    fields.push_back(words(demand ? demandKinds[qsizetype(demand->kind)] : QString()));
    fields.push_back(words(demand && demand->pattern ? demand->pattern->value : QString()));
    fields.push_back(words(demand ? treatments[qsizetype(demand->least)] : QString()));
    fields.push_back(demand ? number(demand->longestAge.value / 60) : words({}));
    fields.push_back(demand ? number(demand->longestPlay.value / 60) : words({}));
    fields.push_back(words(demand ? demand->lanes.text() : QString()));
    fields.push_back(words(text(series.extraDates)));
    fields.push_back(words(text(series.excludedDates)));
    fields.push_back(number(series.settle.value / 60));
    fields.push_back(number(series.clearing.value / 60));
    for (bool on : {series.firstPairTwice, series.yieldsToClosure, series.noStaff, series.cancelled})
        fields.push_back(flag(on));
    fields.push_back(number(series.players));
    fields.push_back(words(series.note));
    return csvRecord(fields);
}

}  // namespace

Result<std::vector<Series>> seriesFromCsv(const CsvRows& rows, const QByteArray& centreZone) {
    std::vector<Series> all;
    for (size_t n = 0; n < rows.count(); ++n) {
        const CsvRow row = rows.row(n);
        Filler fill(row);
        // Rows of one id that follow each other are one series with several demands.
        const bool more = !all.empty() && row.has("id") && all.back().id.value == row.value("id");
        if (!more) {
            Series series;
            series.zone = centreZone;
            fillSeries(fill, row, series);
            all.push_back(std::move(series));
        }
        addDemand(fill, row, all.back());
        if (fill.error()) return *fill.error();
    }
    return all;
}

QByteArray seriesToCsv(const std::vector<Series>& series) {
    std::vector<CsvField> header;
    for (const QString& name : columnNames)
        header.push_back(words(name));
    QByteArray out = csvRecord(header);
    for (const Series& one : series) {
        if (one.demands.empty()) out += record(one, nullptr);
        for (const SurfaceDemand& demand : one.demands)
            out += record(one, &demand);
    }
    return out;
}

}  // namespace laneward::cli
