#include "core/calendar/ics_lines.h"

#include "core/base/limits.h"

#include <QStringDecoder>

#include <cstring>

namespace laneward {

namespace {

Error broken(const char* rule, const QString& file, int line) { return fault(ErrorKind::Invalid, rule, placeIn(file, line)); }

bool isUtf8(const QByteArray& bytes) {
    QStringDecoder decoder(QStringDecoder::Utf8, QStringDecoder::Flag::Stateless);
    const QString text = decoder.decode(bytes);
    return !decoder.hasError() && !text.isNull();
}

/// Where the part that begins at `from` ends: at the first of `stops` outside quotes.
qsizetype endOfPart(const QByteArray& line, qsizetype from, const char* stops) {
    bool quoted = false;
    for (qsizetype i = from; i < line.size(); ++i) {
        if (line[i] == '"') quoted = !quoted;
        if (!quoted && std::strchr(stops, line[i])) return i;
    }
    return -1;
}

/// RFC 5545, section 3.1: name *(";" param) ":" value.
bool parse(const QByteArray& text, IcsLine& line) {
    qsizetype at = endOfPart(text, 0, ";:");
    if (at < 1) return false;
    line.name = text.left(at).toUpper();
    for (char c : line.name) {
        if (!((c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_')) return false;
    }
    while (text[at] == ';') {
        const qsizetype end = endOfPart(text, at + 1, ";:");
        if (end < 0) return false;
        const QByteArray part = text.mid(at + 1, end - at - 1);
        const qsizetype equals = part.indexOf('=');
        if (equals < 1) return false;
        QByteArray plain = part.mid(equals + 1);
        if (plain.size() >= 2 && plain.startsWith('"') && plain.endsWith('"')) plain = plain.mid(1, plain.size() - 2);
        line.parameters.emplace_back(part.left(equals).toUpper(), plain);
        at = end;
    }
    line.value = text.mid(at + 1);
    return true;
}

}  // namespace

QByteArray IcsLine::parameter(const char* wanted) const {
    for (const auto& each : parameters) {
        if (each.first == wanted) return each.second;
    }
    return {};
}

QString placeIn(const QString& file, int line) { return QStringLiteral("%1:%2").arg(file).arg(line); }

IcsLines::IcsLines(const QByteArray& bytes, QString file) : m_bytes(bytes), m_file(std::move(file)) {
    if (bytes.startsWith("\xef\xbb\xbf")) m_at = 3;
}

QByteArray IcsLines::physicalLine() {
    const qsizetype from = m_at;
    while (m_at < m_bytes.size() && m_bytes[m_at] != '\r' && m_bytes[m_at] != '\n')
        ++m_at;
    const QByteArray line = m_bytes.mid(from, m_at - from);
    if (m_at < m_bytes.size() && m_bytes[m_at] == '\r') ++m_at;
    if (m_at < m_bytes.size() && m_bytes[m_at] == '\n') ++m_at;
    ++m_number;
    return line;
}

bool IcsLines::continues() const { return m_at < m_bytes.size() && (m_bytes[m_at] == ' ' || m_bytes[m_at] == '\t'); }

Result<std::optional<IcsLine>> IcsLines::next() {
    QByteArray text;
    IcsLine line;
    do {
        if (m_at >= m_bytes.size()) return std::optional<IcsLine>{};
        text = physicalLine();
        line.number = m_number;
        while (continues()) {
            ++m_at;  // the one white space that marks the fold
            text += physicalLine();
            if (text.size() > limits::importLineBytes) break;
        }
        if (text.size() > limits::importLineBytes) return broken("ics.line-too-long", m_file, line.number);
    } while (text.trimmed().isEmpty());
    for (char c : text) {
        const auto code = static_cast<unsigned char>(c);
        if ((code < 0x20 && c != '\t') || code == 0x7f) return broken("ics.control-character", m_file, line.number);
    }
    // Folds may lie inside a character, so only the unfolded line can be judged.
    if (!isUtf8(text)) return broken("ics.not-utf8", m_file, line.number);
    if (!parse(text, line)) return broken("ics.bad-line", m_file, line.number);
    return std::optional<IcsLine>(std::move(line));
}

std::vector<QByteArray> splitEscaped(const QByteArray& value, char separator) {
    std::vector<QByteArray> parts(1);
    for (qsizetype i = 0; i < value.size(); ++i) {
        if (value[i] == separator) {
            parts.emplace_back();
            continue;
        }
        parts.back() += value[i];
        if (value[i] == '\\' && i + 1 < value.size()) parts.back() += value[++i];
    }
    return parts;
}

}  // namespace laneward
