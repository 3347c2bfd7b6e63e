// Content lines of an iCalendar file, one unfolded line at a time, each with the number of its first physical line.
//
// Accepts CRLF, LF and CR line ends and a byte order mark. Refuses NUL, invalid UTF-8 and lines beyond limits::importLineBytes.
#pragma once

#include "core/base/result.h"

#include <QByteArray>
#include <QString>

#include <optional>
#include <vector>

namespace laneward {

struct IcsLine {
    int number = 0;
    QByteArray name;  ///< upper case
    std::vector<std::pair<QByteArray, QByteArray>> parameters;
    QByteArray value;

    /// The value of a parameter without quotes, empty when absent. `wanted` in upper case.
    QByteArray parameter(const char* wanted) const;
};

/// "file:12": what every complaint about a file is about.
QString placeIn(const QString& file, int line);

class IcsLines {
public:
    IcsLines(const QByteArray& bytes, QString file);

    /// The next line, or nothing at the end. Errors: "ics.control-character", "ics.not-utf8", "ics.line-too-long",
    /// "ics.bad-line".
    Result<std::optional<IcsLine>> next();

private:
    QByteArray physicalLine();
    bool continues() const;

    const QByteArray& m_bytes;
    QString m_file;
    qsizetype m_at = 0;
    int m_number = 0;
};

/// Splits at `separator` where no backslash precedes it.
std::vector<QByteArray> splitEscaped(const QByteArray& value, char separator);

}  // namespace laneward
