#include "core/documents/history_list.h"

#include "core/documents/csv_text.h"
#include "core/documents/stock_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <charconv>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

/// Texts lie anywhere in memory: those of a later row are asked for while this one is written.
void fetchAhead(const HistoryList& list, size_t n) {
    constexpr size_t ahead = 12;
    if (n + ahead >= list.rows.size()) return;
    const HistoryEntry& later = list.index.at(list.rows[n + ahead]);
    __builtin_prefetch(later.words.constData());
    __builtin_prefetch(later.id.value.constData());
    __builtin_prefetch(later.when.constData());
}

void putDigits(char* to, int value, int digits) {
    for (int n = digits; n > 0; --n, value /= 10)
        to[n - 1] = char('0' + value % 10);
}

/// As isoTime() writes it, for hundreds of thousands of rows.
void putTime(CsvWriter& csv, Instant t, const Zone& zone) {
    const LocalTime local = zone.toLocal(t);
    int year = 0;
    int month = 0;
    int day = 0;
    local.date.getDate(&year, &month, &day);
    const int offset = int(zone.offsetAt(t).value / 60);
    const int size = offset < 0 ? -offset : offset;
    char text[] = "2026-11-12T17:17:00+00:00";
    putDigits(text, year, 4);
    putDigits(text + 5, month, 2);
    putDigits(text + 8, day, 2);
    putDigits(text + 11, local.time.hour(), 2);
    putDigits(text + 14, local.time.minute(), 2);
    putDigits(text + 17, local.time.second(), 2);
    text[19] = offset < 0 ? '-' : '+';
    putDigits(text + 20, size / 60, 2);
    putDigits(text + 23, size % 60, 2);
    csv.plain(QByteArrayView(text, qsizetype(sizeof text - 1)));
}

template <class T>
void putNumber(CsvWriter& csv, const std::optional<T>& value) {
    if (!value) return;
    char text[24];
    const auto end = std::to_chars(text, text + sizeof text, std::int64_t{*value}).ptr;
    csv.plain(QByteArrayView(text, end - text));
}

}  // namespace

QString title(HistoryColumn column) {
    switch (column) {
        case HistoryColumn::When:
            return say(QT_TRANSLATE_NOOP("wording", "When"));
        case HistoryColumn::What:
            return say(QT_TRANSLATE_NOOP("wording", "What"));
        case HistoryColumn::Machine:
            return say(QT_TRANSLATE_NOOP("wording", "Machine"));
        case HistoryColumn::Lanes:
            return say(QT_TRANSLATE_NOOP("wording", "Lanes"));
        case HistoryColumn::Person:
            return say(QT_TRANSLATE_NOOP("wording", "Who"));
        case HistoryColumn::Of:
            return say(QT_TRANSLATE_NOOP("wording", "Item or product"));
        case HistoryColumn::Words:
            return say(QT_TRANSLATE_NOOP("wording", "In words"));
        case HistoryColumn::Meter:
            return say(QT_TRANSLATE_NOOP("wording", "Meter"));
        case HistoryColumn::Minutes:
            return say(QT_TRANSLATE_NOOP("wording", "Minutes"));
        case HistoryColumn::Cost:
            return say(QT_TRANSLATE_NOOP("wording", "Cost"));
    }
    return {};
}

HistoryCells::HistoryCells(const QByteArray& currency, const Speech& speech) : m_currency(currency), m_speech(speech) {
    const QString fallen = say(QT_TRANSLATE_NOOP("wording", "%1 (does not stand)"));
    for (int kind = 0; kind < historyKinds; ++kind) {
        m_kinds << laneward::text(HistoryKind(kind));
        m_fallen << fallen.arg(m_kinds.back());
    }
}

const QString& HistoryCells::numberText(std::int64_t number) const {
    QString& text = m_numbers[number];
    if (text.isEmpty()) text = m_speech.locale.toString(qlonglong(number));
    return text;
}

const QString& HistoryCells::moneyText(std::int64_t minor) const {
    QString& text = m_money[minor];
    if (text.isEmpty()) text = laneward::moneyText({minor, m_currency}, m_speech);
    return text;
}

const QString& HistoryCells::text(const HistoryEntry& entry, HistoryColumn column) const {
    static const QString nothing;
    switch (column) {
        case HistoryColumn::When:
            return entry.when;
        case HistoryColumn::What:
            return (entry.stands ? m_kinds : m_fallen)[qsizetype(entry.kind)];
        case HistoryColumn::Machine:
            return entry.machineName;
        case HistoryColumn::Lanes:
            return entry.laneText;
        case HistoryColumn::Person:
            return entry.personName;
        case HistoryColumn::Of:
            return entry.of;
        case HistoryColumn::Words:
            return entry.words;
        case HistoryColumn::Meter:
            return entry.meter ? numberText(*entry.meter) : nothing;
        case HistoryColumn::Minutes:
            return entry.minutes ? numberText(*entry.minutes) : nothing;
        case HistoryColumn::Cost:
            return entry.costMinor ? moneyText(*entry.costMinor) : nothing;
    }
    return nothing;
}

HistorySheet historySheet(const HistoryList& list, const std::vector<HistoryColumn>& columns, const HistoryCells& cells) {
    HistorySheet sheet;
    sheet.columns = columns;
    for (const HistoryColumn column : columns)
        sheet.headings << title(column);
    sheet.cells.reserve(list.rows.size() * columns.size());
    for (size_t n = 0; n < list.rows.size(); ++n) {
        fetchAhead(list, n);
        for (const HistoryColumn column : columns)
            sheet.cells.push_back(cells.text(list.index.at(list.rows[n]), column));
    }
    return sheet;
}

QByteArray historyListCsv(const HistoryList& list, const Speech& speech) {
    constexpr qsizetype usualLength = 420;  // bytes that are never written take no memory
    CsvWriter csv(qsizetype(list.rows.size() + 1) * usualLength);
    csv.plain("happened_at,kind,machine,lanes,person,item_or_product,what,meter,minutes,cost_minor,stands,id,corrects\r\n");
    QByteArrayList kinds;
    for (int kind = 0; kind < historyKinds; ++kind)
        kinds << ',' + key(HistoryKind(kind)).toLatin1();
    for (size_t n = 0; n < list.rows.size(); ++n) {
        fetchAhead(list, n);
        const HistoryEntry& entry = list.index.at(list.rows[n]);
        putTime(csv, entry.at, speech.zone);
        csv.plain(kinds[qsizetype(entry.kind)]);
        for (const QString* text : {&entry.machineName, &entry.laneText, &entry.personName, &entry.of, &entry.words}) {
            csv.plain(',');
            csv.field(*text);
        }
        csv.plain(',');
        putNumber(csv, entry.meter);
        csv.plain(',');
        putNumber(csv, entry.minutes);
        csv.plain(',');
        putNumber(csv, entry.costMinor);
        csv.plain(entry.stands ? ",1," : ",0,");
        csv.field(entry.id.value);
        csv.plain(',');
        if (entry.corrects) csv.field(entry.corrects->value);
        csv.plain("\r\n");
    }
    return csv.taken();
}

QString historyListText(const HistoryList& list, const HistoryCells& cells) {
    constexpr std::array columns{HistoryColumn::When,  HistoryColumn::What,    HistoryColumn::Machine,
                                 HistoryColumn::Lanes, HistoryColumn::Person,  HistoryColumn::Of,
                                 HistoryColumn::Meter, HistoryColumn::Minutes, HistoryColumn::Cost};
    std::array<qsizetype, columns.size()> widths{};
    for (size_t n = 0; n < columns.size(); ++n)
        widths[n] = title(columns[n]).size();
    qsizetype letters = 0;
    for (const HistoryRow row : list.rows) {
        const HistoryEntry& entry = list.index.at(row);
        letters += entry.words.size() + 1;
        for (size_t n = 0; n < columns.size(); ++n)
            widths[n] = std::max(widths[n], cells.text(entry, columns[n]).size());
    }
    for (const qsizetype width : widths)
        letters += (width + 2) * qsizetype(list.rows.size() + 1);
    letters += title(HistoryColumn::Words).size() + 1;
    QString out(letters, u' ');
    QChar* to = out.data();
    const auto put = [&](const QString& text, qsizetype width) {
        std::copy(text.begin(), text.end(), to);
        to += width;
    };
    const auto end = [&](const QString& words) {
        put(words, words.size());
        *to++ = u'\n';
    };
    for (size_t n = 0; n < columns.size(); ++n)
        put(title(columns[n]), widths[n] + 2);
    end(title(HistoryColumn::Words));
    for (size_t row = 0; row < list.rows.size(); ++row) {
        fetchAhead(list, row);
        const HistoryEntry& entry = list.index.at(list.rows[row]);
        for (size_t n = 0; n < columns.size(); ++n)
            put(cells.text(entry, columns[n]), widths[n] + 2);
        end(entry.words);
    }
    return out;
}

}  // namespace laneward
