#include "core/documents/csv_text.h"
#include "core/documents/writers.h"

#include <algorithm>
#include <cstring>
#include <string_view>

namespace laneward {

bool needsApostrophe(const QString& text) {
    // OWASP, CSV injection: a spreadsheet takes text that begins with one of these for a formula.
    constexpr std::u16string_view starts(u"=+-@\t\r\0", 7);
    qsizetype first = 0;
    while (first < text.size() && text[first] == '\'')
        ++first;
    // Text that already looks as if it had been given one gets another, so that the reader may always take one away.
    return first < text.size() ? starts.find(text[first].unicode()) != starts.npos : first > 0;
}

namespace {

/// Doubles the quotes in [from, end), for which there is room; returns the new end.
char* doubled(char* from, char* end) {
    const auto quotes = std::count(from, end, '"');
    char* to = end + quotes;
    for (char* at = end; at != from && at != to;) {  // from behind, until nothing is left to move
        *--to = *--at;
        if (*at == '"') *--to = '"';
    }
    return end + quotes;
}

bool isSpecial(char c) { return c == ',' || c == ';' || c == '"' || c == '\r' || c == '\n'; }

}  // namespace

char* CsvWriter::roomFor(qsizetype more) {
    if (m_size + more > m_out.size()) m_out.resize(2 * m_out.size() + more);
    return m_out.data() + m_size;
}

/// All that is special is ASCII, and in UTF-8 no other letter's bytes contain it.
void CsvWriter::field(const QString& text, bool isNumber) {
    if (text.isEmpty()) return;
    char* const begin = roomFor(2 * m_encoder.requiredSpace(text.size()) + 3);
    char* const first = begin + 1;  // behind a quote, if one is needed
    const bool apostrophe = !isNumber && needsApostrophe(text);
    char* const written = first + (apostrophe ? 1 : 0);
    if (apostrophe) *first = '\'';
    char* end = m_encoder.appendToBuffer(written, text);
    if (m_encoder.hasError()) m_encoder.resetState();  // half a letter does not spoil the next field
    if (std::any_of(written, end, isSpecial)) {
        *begin = '"';
        end = doubled(written, end);
        *end++ = '"';
    } else {
        std::memmove(begin, first, size_t(end - first));
        --end;
    }
    m_size = end - m_out.constData();
}

void CsvWriter::plain(QByteArrayView bytes) {
    std::memcpy(roomFor(bytes.size()), bytes.data(), size_t(bytes.size()));
    m_size += bytes.size();
}

QByteArray CsvWriter::taken() {
    m_out.truncate(m_size);
    return std::move(m_out);
}

QByteArray csvRecord(const std::vector<CsvField>& fields) {
    if (fields.size() == 1 && fields.front().text.isEmpty()) return "\"\"\r\n";  // an empty line would be no record at all
    CsvWriter line;
    bool isFirst = true;
    for (const CsvField& field : fields) {
        if (!isFirst) line.plain(',');
        isFirst = false;
        line.field(field.text, field.isNumber);
    }
    line.plain("\r\n");
    return line.taken();
}

}  // namespace laneward
