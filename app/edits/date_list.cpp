#include "app/edits/date_list.h"

#include <QRegularExpression>

namespace laneward {

QString datesText(const std::vector<QDate>& dates) {
    QStringList texts;
    for (const QDate date : dates)
        texts << date.toString(Qt::ISODate);
    return texts.join(QStringLiteral(", "));
}

std::vector<QDate> readDates(const QString& typed, const QLocale& locale, QStringList* unreadable) {
    static const QRegularExpression parting(QStringLiteral("[,;]"));
    std::vector<QDate> dates;
    for (const QString& part : typed.split(parting, Qt::SkipEmptyParts)) {
        if (part.trimmed().isEmpty()) continue;
        QDate date = QDate::fromString(part.trimmed(), Qt::ISODate);
        if (!date.isValid()) date = locale.toDate(part.trimmed(), QLocale::ShortFormat);
        if (date.isValid() && date.year() > 1970)
            dates.push_back(date);
        else if (unreadable)
            *unreadable << part.trimmed();
    }
    return dates;
}

}  // namespace laneward
