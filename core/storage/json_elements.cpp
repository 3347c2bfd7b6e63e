#include "core/storage/json_elements.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace laneward {
namespace {

constexpr qint64 chunk = 65'536;

bool isSpace(int c) { return c == ' ' || c == '\n' || c == '\r' || c == '\t'; }
bool endsScalar(int c) { return c < 0 || c == ',' || c == ']' || c == '}' || isSpace(c); }

/// One value of any kind, parsed as the only element of a list, which is what the parser of Qt accepts.
std::optional<QJsonValue> parsed(const QByteArray& bytes) {
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson('[' + bytes + ']', &error);
    if (error.error != QJsonParseError::NoError || document.array().size() != 1) return std::nullopt;
    return document.array().first();
}

}  // namespace

int JsonElements::peek() {
    if (m_at >= m_buffer.size()) {
        m_before += m_buffer.size();
        m_at = 0;
        m_buffer = m_device.read(chunk);
    }
    return m_buffer.isEmpty() ? -1 : static_cast<unsigned char>(m_buffer[m_at]);
}

int JsonElements::peekText() {
    for (qsizetype skipped = 0; isSpace(peek()); ++skipped, ++m_at)
        if (skipped >= largestElement) return stop(), -1;
    return peek();
}

bool JsonElements::stop() {
    m_failed = true;
    return false;
}

bool JsonElements::take(char expected) {
    if (m_failed || peekText() != expected) return stop();
    ++m_at;
    return true;
}

std::optional<QString> JsonElements::nextKey() {
    if (m_failed || (!m_begun && !take('{'))) return std::nullopt;
    const bool first = !std::exchange(m_begun, true);
    if (peekText() == '}') {
        ++m_at;
        if (peekText() != -1) stop();  // something follows the document
        return std::nullopt;
    }
    QByteArray key;
    if ((!first && !take(',')) || peekText() != '"' || !takeString(key) || !take(':')) {
        stop();
        return std::nullopt;
    }
    const std::optional<QJsonValue> text = parsed(key);
    if (!text) stop();
    return text ? std::optional(text->toString()) : std::nullopt;
}

bool JsonElements::entersList() {
    if (m_failed || peekText() != '[') return false;
    ++m_at;
    m_firstElement = true;
    return true;
}

std::optional<QJsonValue> JsonElements::nextElement() {
    if (m_failed) return std::nullopt;
    if (peekText() == ']') {
        ++m_at;
        return std::nullopt;
    }
    if (!std::exchange(m_firstElement, false) && !take(',')) return std::nullopt;
    return value();
}

std::optional<QJsonValue> JsonElements::value() {
    QByteArray bytes;
    const std::optional<QJsonValue> found = takeValue(bytes) ? parsed(bytes) : std::nullopt;
    if (!found) stop();
    return found;
}

bool JsonElements::takeString(QByteArray& bytes) {
    bool escaped = false;
    bytes += '"';
    ++m_at;
    while (peek() >= 0 && bytes.size() < largestElement) {
        const char c = m_buffer[m_at++];
        bytes += c;
        if (c == '"' && !escaped) return true;
        escaped = c == '\\' && !escaped;
    }
    return stop();
}

// Only finds where the value ends, by its brackets and quotes; whether it is JSON is for the parser to say.
bool JsonElements::takeValue(QByteArray& bytes) {
    int depth = 0;
    peekText();
    do {
        const int c = peek();
        if (c < 0 || bytes.size() >= largestElement) return stop();
        if (c == '"') {
            if (!takeString(bytes)) return false;
            continue;
        }
        if (depth == 0 && endsScalar(c)) return stop();
        depth += (c == '{' || c == '[') - (c == '}' || c == ']');
        bytes += char(c);
        ++m_at;
    } while (depth > 0 || !(bytes.back() == '}' || bytes.back() == ']' || bytes.back() == '"' || endsScalar(peek())));
    return true;
}

}  // namespace laneward
