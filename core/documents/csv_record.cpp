#include "core/documents/csv_text.h"
#include "core/documents/writers.h"

namespace laneward {

bool needsApostrophe(const QString& text) {
    // OWASP, CSV injection: a spreadsheet takes text that begins with one of these for a formula.
    static const QString starts = QString("=+-@\t\r").append(QChar(0));
    qsizetype first = 0;
    while (first < text.size() && text[first] == '\'')
        ++first;
    // Text that already looks as if it had been given one gets another, so that the reader may always take one away.
    return first < text.size() ? starts.contains(text[first]) : first > 0;
}

QByteArray csvRecord(const std::vector<CsvField>& fields) {
    QByteArray line;
    bool first = true;
    for (const CsvField& field : fields) {
        if (!first) line += ',';
        first = false;
        QString text = !field.isNumber && needsApostrophe(field.text) ? '\'' + field.text : field.text;
        const bool special =
            text.contains(',') || text.contains(';') || text.contains('"') || text.contains('\r') || text.contains('\n');
        const bool alone = text.isEmpty() && fields.size() == 1;  // an empty line would be no record at all
        if (special || alone) text = '"' + text.replace("\"", "\"\"") + '"';
        line += text.toUtf8();
    }
    return line + "\r\n";
}

}  // namespace laneward
