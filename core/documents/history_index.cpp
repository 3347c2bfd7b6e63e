#include "core/documents/history_index.h"

#include <algorithm>
#include <cstring>
#include <numeric>
#include <string_view>

namespace laneward {

namespace {

/// Letters that Unicode does not decompose, and how they are typed where a keyboard lacks them.
constexpr std::array<std::pair<char16_t, const char*>, 9> letterPairs{
    {{u'ß', "ss"}, {u'ø', "o"}, {u'ł', "l"}, {u'đ', "d"}, {u'ð', "d"}, {u'æ', "ae"}, {u'œ', "oe"}, {u'þ', "th"}, {u'ı', "i"}}};

bool isPlain(const QString& text) {
    return std::all_of(text.begin(), text.end(), [](QChar c) { return c.unicode() < 0x80; });
}

/// The bytes of `word` in [from, end), or null.
const char* found(const char* from, const char* end, const QByteArray& word) {
    if (from >= end) return nullptr;
    if (word.size() == 1) return static_cast<const char*>(std::memchr(from, word[0], size_t(end - from)));
    return static_cast<const char*>(memmem(from, size_t(end - from), word.constData(), size_t(word.size())));
}

/// The longest first: it is likely the rarest.
QByteArrayList wordsIn(const QString& text) {
    QByteArrayList words;
    for (const QString& word : folded(text).simplified().split(u' ', Qt::SkipEmptyParts)) {
        const QByteArray bytes = word.toUtf8();
        if (!words.contains(bytes)) words << bytes;
    }
    std::stable_sort(words.begin(), words.end(), [](const QByteArray& a, const QByteArray& b) { return a.size() > b.size(); });
    return words;
}

bool suits(const HistoryEntry& entry, const HistoryQuery& query) {
    return (query.withCorrected || entry.stands) && (!query.kind || entry.kind == *query.kind) &&
           (query.machine.isEmpty() || entry.machine == query.machine) && (query.item.isEmpty() || entry.item == query.item) &&
           (query.person.isEmpty() || entry.person == query.person) && (query.lane == 0 || entry.lanes.contains(query.lane)) &&
           (query.product.isEmpty() || entry.products.contains(query.product));
}

const QString& textOf(const HistoryEntry& entry, HistoryColumn column) {
    switch (column) {
        case HistoryColumn::Machine:
            return entry.machineName;
        case HistoryColumn::Person:
            return entry.personName;
        case HistoryColumn::Of:
            return entry.of;
        default:
            return entry.words;
    }
}

/// Nothing stands before every number.
std::int64_t numberOf(const HistoryEntry& entry, HistoryColumn column) {
    switch (column) {
        case HistoryColumn::Lanes:
            return entry.lanes.isEmpty() ? -1 : entry.lanes.first() * 1'000 + entry.lanes.count();
        case HistoryColumn::Meter:
            return entry.meter.value_or(-1);
        case HistoryColumn::Minutes:
            return entry.minutes.value_or(-1);
        default:
            return entry.costMinor.value_or(-1);
    }
}

bool isText(HistoryColumn column) {
    return column == HistoryColumn::Machine || column == HistoryColumn::Person || column == HistoryColumn::Of ||
           column == HistoryColumn::Words;
}

}  // namespace

QString folded(const QString& text) {
    if (isPlain(text)) return text.toLower();
    QString out;
    const QString apart = text.normalized(QString::NormalizationForm_KD);
    out.reserve(apart.size());
    for (const QChar c : apart.toCaseFolded()) {
        const auto letters =
            std::find_if(letterPairs.begin(), letterPairs.end(), [c](const auto& pair) { return pair.first == c; });
        if (letters != letterPairs.end())
            out += QLatin1StringView(letters->second);
        else if (c.category() != QChar::Mark_NonSpacing)
            out += c;
    }
    return out;
}

QString HistoryIndex::wordsOf(const HistoryEntry& entry) {
    QString words;
    for (const QString& part : {text(entry.kind), entry.when, entry.machineName, entry.laneText, entry.personName, entry.of,
                                entry.products.size() > 1 ? entry.products.join(u' ') : QString(), entry.words}) {
        if (!words.isEmpty()) words += u' ';
        words += part;
    }
    return words;
}

HistoryIndex::HistoryIndex(std::vector<HistoryEntry> entries) : m_entries(std::move(entries)) {
    constexpr qsizetype usualLength = 160;
    m_text.reserve(qsizetype(m_entries.size()) * usualLength);
    m_starts.reserve(m_entries.size() + 1);
    for (const HistoryEntry& entry : m_entries) {
        m_starts.push_back(std::uint32_t(m_text.size()));
        m_text += folded(wordsOf(entry)).simplified().toUtf8();
        m_text += '\n';
    }
    m_starts.push_back(std::uint32_t(m_text.size()));
}

HistoryIndex::Range HistoryIndex::within(const Span& time) const {
    const auto rowAt = [this](Instant t) {  // the first that is not after t: entries go backwards in time
        const auto first = std::partition_point(m_entries.begin(), m_entries.end(), [t](const auto& e) { return e.at >= t; });
        return HistoryRow(first - m_entries.begin());
    };
    const HistoryRow begin = rowAt(time.end);
    return {begin, std::max(begin, rowAt(time.begin))};
}

bool HistoryIndex::holds(HistoryRow row, const QByteArray& word) const {
    const char* text = m_text.constData();
    return found(text + m_starts[row], text + m_starts[row + 1], word) != nullptr;
}

/// Goes through the text with the longest word, and asks for the others only where that one stands.
template <class Take>
void HistoryIndex::scan(const Range& range, const QByteArrayList& words, Take take) const {
    const auto [begin, end] = range;
    if (words.isEmpty()) {
        for (HistoryRow row = begin; row < end; ++row)
            take(row);
        return;
    }
    const char* text = m_text.constData();
    const char* last = text + m_starts[end];
    HistoryRow row = begin;
    for (const char* at = found(text + m_starts[begin], last, words.front()); at;
         at = found(text + m_starts[row], last, words.front())) {
        const auto place = std::uint32_t(at - text);
        row = HistoryRow(std::upper_bound(m_starts.begin() + row, m_starts.begin() + end, place) - m_starts.begin()) - 1;
        const bool all = std::all_of(words.begin() + 1, words.end(), [&](const QByteArray& word) { return holds(row, word); });
        if (all) take(row);
        ++row;
    }
}

std::vector<HistoryRow> HistoryIndex::find(const HistoryQuery& query) const {
    std::vector<HistoryRow> rows;
    scan(within(query.time), wordsIn(query.text), [&](HistoryRow row) {
        if (suits(m_entries[row], query)) rows.push_back(row);
    });
    return rows;
}

/// The place of each entry among all by a column of text; equal texts share one.
const std::vector<HistoryRow>& HistoryIndex::ranks(HistoryColumn column) const {
    std::vector<HistoryRow>& ranks = m_ranks[size_t(column)];
    if (!ranks.empty() || m_entries.empty()) return ranks;
    QHash<QString, HistoryRow> places;
    for (const HistoryEntry& entry : m_entries)
        places.insert(textOf(entry, column), 0);
    std::vector<std::pair<QString, QString>> texts;  // folded, as it is
    texts.reserve(size_t(places.size()));
    for (auto it = places.keyBegin(); it != places.keyEnd(); ++it)
        texts.emplace_back(folded(*it), *it);
    std::sort(texts.begin(), texts.end());
    for (size_t n = 0; n < texts.size(); ++n)
        places[texts[n].second] = HistoryRow(n);
    ranks.reserve(m_entries.size());
    for (const HistoryEntry& entry : m_entries)
        ranks.push_back(places.value(textOf(entry, column)));
    return ranks;
}

void HistoryIndex::sort(std::vector<HistoryRow>& rows, HistoryColumn by, bool ascending) const {
    std::vector<std::pair<std::int64_t, HistoryRow>> keyed;
    keyed.reserve(rows.size());
    const std::vector<HistoryRow>* known = isText(by) ? &ranks(by) : nullptr;
    for (const HistoryRow row : rows) {
        const HistoryEntry& entry = m_entries[row];
        std::int64_t sortKey = 0;
        if (known)
            sortKey = (*known)[row];
        else if (by == HistoryColumn::When)
            sortKey = -std::int64_t{row};
        else if (by == HistoryColumn::What)
            sortKey = std::int64_t(entry.kind);
        else
            sortKey = numberOf(entry, by);
        keyed.emplace_back(ascending ? sortKey : -sortKey, row);
    }
    std::sort(keyed.begin(), keyed.end());
    std::transform(keyed.begin(), keyed.end(), rows.begin(), [](const auto& one) { return one.second; });
}

std::optional<HistoryRow> HistoryIndex::rowOf(const OperationId& id) const {
    const auto found =
        std::find_if(m_entries.begin(), m_entries.end(), [&](const HistoryEntry& entry) { return entry.id == id; });
    return found == m_entries.end() ? std::nullopt : std::optional(HistoryRow(found - m_entries.begin()));
}

std::vector<HistoryRow> HistoryIndex::chainOf(HistoryRow row) const {
    std::vector<HistoryRow> chain{row};
    const auto isNew = [&](HistoryRow other) { return std::find(chain.begin(), chain.end(), other) == chain.end(); };
    for (auto older = m_entries[row].corrects; older;) {
        const std::optional<HistoryRow> at = rowOf(*older);
        if (!at || !isNew(*at)) break;  // records that correct each other end here
        chain.insert(chain.begin(), *at);
        older = m_entries[*at].corrects;
    }
    for (bool more = true; more;) {
        const OperationId& last = m_entries[chain.back()].id;
        const auto next = std::find_if(m_entries.begin(), m_entries.end(), [&](const auto& e) { return e.corrects == last; });
        more = next != m_entries.end() && isNew(HistoryRow(next - m_entries.begin()));
        if (more) chain.push_back(HistoryRow(next - m_entries.begin()));
    }
    return chain;
}

std::optional<HistoryRow> HistoryIndex::answeredBy(HistoryRow row) const {
    const std::optional<OperationId>& answered = m_entries[row].answers;
    return answered ? rowOf(*answered) : std::nullopt;
}

std::vector<HistoryRow> HistoryIndex::answersTo(HistoryRow row) const {
    const std::vector<HistoryRow> chain = chainOf(row);
    const auto isOfChain = [&](const OperationId& id) {
        return std::any_of(chain.begin(), chain.end(), [&](HistoryRow one) { return m_entries[one].id == id; });
    };
    std::vector<HistoryRow> answers;
    for (HistoryRow other = HistoryRow(m_entries.size()); other-- > 0;) {
        const HistoryEntry& entry = m_entries[other];
        if (entry.answers && entry.stands && isOfChain(*entry.answers)) answers.push_back(other);
    }
    return answers;
}

}  // namespace laneward
