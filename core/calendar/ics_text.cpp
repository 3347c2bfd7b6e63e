#include "core/calendar/icalendar.h"

namespace laneward {

namespace {

constexpr qsizetype octetsPerLine = 75;  // RFC 5545, section 3.1, without the line break

bool continuesCharacter(char c) { return (static_cast<unsigned char>(c) & 0xc0) == 0x80; }

}  // namespace

QByteArray foldedLine(const QByteArray& line) {
    QByteArray folded;
    qsizetype from = 0;
    while (from < line.size()) {
        if (from > 0) folded += "\r\n ";
        const qsizetype room = from == 0 ? octetsPerLine : octetsPerLine - 1;
        qsizetype to = std::min(from + room, line.size());
        // A UTF-8 sequence is at most four octets; looking no further back keeps a broken one from stopping the loop.
        for (int back = 0; back < 3 && to < line.size() && continuesCharacter(line[to]); ++back)
            --to;
        folded += line.mid(from, to - from);
        from = to;
    }
    return folded + "\r\n";
}

QByteArray unfolded(const QByteArray& text) {
    QByteArray result;
    result.reserve(text.size());
    for (qsizetype i = 0; i < text.size(); ++i) {
        qsizetype next = i;
        if (text[next] == '\r') ++next;
        if (next < text.size() && text[next] == '\n') ++next;
        if (next > i && next < text.size() && (text[next] == ' ' || text[next] == '\t')) {
            i = next;
            continue;
        }
        result += text[i];
    }
    return result;
}

QByteArray escapedText(const QString& text) {
    QByteArray escaped;
    for (const char c : text.toUtf8()) {
        if (c == '\\' || c == ';' || c == ',') escaped += '\\';
        if (c == '\n') {
            escaped += "\\n";
        } else if (static_cast<unsigned char>(c) >= 0x20 || c == '\t') {
            escaped += c;  // TEXT has no other control characters (RFC 5545, section 3.3.11)
        }
    }
    return escaped;
}

QString unescapedText(const QByteArray& text) {
    QByteArray plain;
    plain.reserve(text.size());
    for (qsizetype i = 0; i < text.size(); ++i) {
        if (text[i] != '\\' || i + 1 == text.size()) {
            plain += text[i];
            continue;
        }
        ++i;
        plain += text[i] == 'n' || text[i] == 'N' ? '\n' : text[i];
    }
    return QString::fromUtf8(plain);
}

}  // namespace laneward
