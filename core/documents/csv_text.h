// What the writer and the reader of CSV agree on. Internal to this room.
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringEncoder>

namespace laneward {

/// Whether `text` gets an apostrophe in front when it is written; the reader takes it away from what this is true of without it.
bool needsApostrophe(const QString& text);

/// Writes fields behind each other for hundreds of thousands of rows: letters go straight to where they stay. What stands
/// between fields is the caller's.
class CsvWriter {
public:
    explicit CsvWriter(qsizetype expected = 256) { m_out.resize(expected); }

    /// As csvRecord() writes it; a number gets no apostrophe.
    void field(const QString& text, bool isNumber = false);
    /// As it is: digits, separators, ends of lines.
    void plain(QByteArrayView bytes);
    void plain(char c) { plain(QByteArrayView(&c, 1)); }
    QByteArray taken();

private:
    char* roomFor(qsizetype more);

    QByteArray m_out;  ///< longer than what is written
    qsizetype m_size = 0;
    QStringEncoder m_encoder{QStringEncoder::Utf8};
};

}  // namespace laneward
