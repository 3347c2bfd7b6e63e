#include "core/documents/text_page.h"

#include <algorithm>

namespace laneward {

QString padded(const QString& text, int width) { return text.leftJustified(std::max(width, int(text.size()) + 1)); }

QString heading(const QString& text) { return text + "\n" + QString(textColumns, '-') + "\n"; }

QString spread(const QString& left, const QString& right) {
    const int space = std::max(1, textColumns - int(left.size()) - int(right.size()));
    return left + QString(space, ' ') + right + "\n";
}

QString wrapped(const QString& text, int indent, const QString& lead) {
    QString out;
    QString line = lead.isEmpty() ? QString(indent, ' ') : padded(lead, indent);
    bool empty = true;
    for (const QString& word : text.split(' ', Qt::SkipEmptyParts)) {
        if (!empty && line.size() + 1 + word.size() > textColumns) {
            out += line + "\n";
            line = QString(indent, ' ');
            empty = true;
        }
        line += empty ? word : " " + word;
        empty = false;
    }
    return out + line + "\n";
}

QString table(const std::vector<QStringList>& rows, int indent) {
    std::vector<qsizetype> widths;
    for (const QStringList& row : rows) {
        widths.resize(std::max(widths.size(), size_t(row.size())));
        for (qsizetype n = 0; n < row.size(); ++n)
            widths[size_t(n)] = std::max(widths[size_t(n)], row[n].size());
    }
    QString out;
    for (const QStringList& row : rows) {
        QString line(indent, ' ');
        for (qsizetype n = 0; n < row.size(); ++n) {
            line += n + 1 < row.size() ? row[n].leftJustified(widths[size_t(n)] + 2) : row[n];
        }
        while (line.endsWith(' '))
            line.chop(1);
        out += line + "\n";
    }
    return out;
}

}  // namespace laneward
