#include "core/documents/csv_reader.h"

#include "core/base/limits.h"
#include "core/documents/csv_text.h"

#include <QStringDecoder>

#include <algorithm>
#include <array>

namespace laneward {

namespace {

/// One pass over the text, one character at a time.
class Parser {
public:
    Parser(const QString& text, const QString& name, QChar separator) : m_text(text), m_name(name), m_separator(separator) {}

    /// The next record; no fields at the end of the text.
    Result<CsvRecord> next();

private:
    Error at(const char* rule, int line, std::vector<Value> values = {}) const {
        return fault(ErrorKind::Invalid, rule, m_name + ":" + QString::number(line), std::move(values));
    }
    bool isAtEnd() const { return m_position >= m_text.size(); }
    bool isLineEnd() const { return !isAtEnd() && (m_text[m_position] == '\r' || m_text[m_position] == '\n'); }
    void skipLineEnd();
    QString plainField();
    Result<QString> quotedField();

    const QString& m_text;
    const QString& m_name;
    QChar m_separator;
    qsizetype m_position = 0;
    int m_line = 1;
};

void Parser::skipLineEnd() {
    const bool pair = m_text[m_position] == '\r' && m_position + 1 < m_text.size() && m_text[m_position + 1] == '\n';
    m_position += pair ? 2 : 1;
    ++m_line;
}

QString Parser::plainField() {
    const qsizetype begin = m_position;
    while (!isAtEnd() && !isLineEnd() && m_text[m_position] != m_separator)
        ++m_position;
    return m_text.mid(begin, m_position - begin);
}

Result<QString> Parser::quotedField() {
    const int begin = m_line;
    QString field;
    ++m_position;
    while (true) {
        if (isAtEnd()) return at("csv.unclosed-quote", begin);
        if (m_text[m_position] == '"') {
            const bool doubled = m_position + 1 < m_text.size() && m_text[m_position + 1] == '"';
            m_position += doubled ? 2 : 1;
            if (!doubled) break;
            field += '"';
            continue;
        }
        if (isLineEnd()) {
            const qsizetype from = m_position;
            skipLineEnd();
            field += QStringView(m_text).mid(from, m_position - from);
            continue;
        }
        field += m_text[m_position++];
    }
    if (!isAtEnd() && !isLineEnd() && m_text[m_position] != m_separator) return at("csv.text-after-quote", m_line);
    return field;
}

Result<CsvRecord> Parser::next() {
    while (isLineEnd())
        skipLineEnd();
    CsvRecord record{m_line, {}};
    while (!isAtEnd()) {
        Result<QString> field = m_text[m_position] == '"' ? quotedField() : Result<QString>(plainField());
        if (!field) return field.error();
        if (field->size() > limits::importLineBytes) return at("csv.too-large", record.line);
        const bool given = field->startsWith('\'') && needsApostrophe(field->mid(1));
        record.fields.push_back(given ? field->mid(1) : *field);
        if (isAtEnd()) break;
        if (isLineEnd()) {
            skipLineEnd();
            break;
        }
        ++m_position;
        if (isAtEnd()) record.fields.push_back({});
    }
    return record;
}

QStringConverter::Encoding encodingOf(const QByteArray& bytes) {
    if (bytes.startsWith("\xff\xfe")) return QStringConverter::Utf16LE;
    if (bytes.startsWith("\xfe\xff")) return QStringConverter::Utf16BE;
    return QStringConverter::Utf8;
}

Result<QString> decoded(const QByteArray& bytes, const QString& name) {
    const QStringConverter::Encoding encoding = encodingOf(bytes);
    QStringDecoder decoder(encoding);
    const QString text = decoder.decode(bytes);
    const bool broken = decoder.hasError() || (encoding != QStringConverter::Utf8 && bytes.size() % 2 != 0);
    if (!broken && !text.contains(QChar(0))) return text;
    const qsizetype bad = broken ? text.indexOf(QChar::ReplacementCharacter) : text.indexOf(QChar(0));
    const qsizetype line = 1 + text.left(std::max<qsizetype>(bad, 0)).count('\n');
    return fault(ErrorKind::Invalid, broken ? "csv.not-utf8" : "csv.nul", name + ":" + QString::number(line));
}

/// The one that the first record uses most; a comma when there is none.
QChar separatorOf(const QString& text) {
    static constexpr std::array<char16_t, 3> known{u',', u';', u'\t'};
    std::array<int, 3> counts{};
    bool quoted = false;
    bool begun = false;
    for (const QChar c : text) {
        if (c == '"') quoted = !quoted;
        if (quoted) continue;
        const bool lineEnd = c == '\n' || c == '\r';
        if (lineEnd && begun) break;
        begun = !lineEnd;
        for (size_t n = 0; n < known.size(); ++n)
            counts[n] += c == known[n];
    }
    return known[size_t(std::max_element(counts.begin(), counts.end()) - counts.begin())];
}

}  // namespace

Result<CsvTable> readCsv(const QByteArray& bytes, const QString& name) {
    if (bytes.size() > limits::importBytes) return fault(ErrorKind::Invalid, "csv.too-large", name + ":1");
    const Result<QString> text = decoded(bytes, name);
    if (!text) return text.error();
    const QChar separator = separatorOf(*text);
    Parser parser(*text, name, separator);
    CsvTable table;
    table.separator = separator.toLatin1();
    while (true) {
        Result<CsvRecord> record = parser.next();
        if (!record) return record.error();
        if (record->fields.isEmpty()) return table;
        const QString where = name + ":" + QString::number(record->line);
        if (std::int64_t(table.records.size()) >= limits::importRows) return fault(ErrorKind::Invalid, "csv.too-large", where);
        const qsizetype width = table.records.empty() ? record->fields.size() : table.records.front().fields.size();
        if (record->fields.size() != width) {
            return fault(ErrorKind::Invalid, "csv.ragged", where, {std::int64_t(record->fields.size()), std::int64_t(width)});
        }
        table.records.push_back(std::move(*record));
    }
}

}  // namespace laneward
