// A large JSON document read piece by piece: one object whose members are values or lists of values, each at most a few
// megabytes. Memory stays bounded by one piece, whatever the size of the file.
//
//     JsonElements document(device);
//     while (std::optional<QString> key = document.nextKey()) {
//         if (document.entersList()) while (std::optional<QJsonValue> v = document.nextElement()) …
//         else value = document.value();
//     }
//     if (document.failed()) …                   // not JSON, or more than fits
#pragma once

#include <QByteArray>
#include <QIODevice>
#include <QJsonValue>
#include <QString>

#include <optional>

namespace laneward {

inline constexpr qsizetype largestElement = 4'000'000;  ///< bytes of one list element or member value

class JsonElements {
public:
    explicit JsonElements(QIODevice& device) : m_device(device) {}

    /// The next member's key; nothing at the end of the document, which must be the end of the file, or after a failure.
    std::optional<QString> nextKey();
    /// Whether the member is a list; its elements follow.
    bool entersList();
    std::optional<QJsonValue> nextElement();
    std::optional<QJsonValue> value();
    bool failed() const { return m_failed; }
    /// Bytes read so far, for messages.
    qint64 position() const { return m_before + m_at; }

private:
    int peek();  ///< next byte, -1 at the end
    int peekText();
    bool take(char expected);
    bool stop();
    bool takeString(QByteArray& bytes);
    bool takeValue(QByteArray& bytes);

    QIODevice& m_device;
    QByteArray m_buffer;
    qsizetype m_at = 0;
    qint64 m_before = 0;
    bool m_begun = false;
    bool m_failed = false;
    bool m_firstElement = false;
};

}  // namespace laneward
