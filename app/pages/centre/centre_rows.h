// What the centre is, in the rows of its lists, and the sentence above each.
#pragma once

#include "app/models/plain_rows.h"
#include "core/centre/centre.h"
#include "core/documents/wording.h"

#include <QCoreApplication>

namespace laneward {

/// One list of the centre.
struct CentreList {
    QStringList titles;
    QList<int> numbers;  ///< columns of them
    std::vector<PlainRow> rows;
    QString sentence;
};

class CentreRows {
    Q_DECLARE_TR_FUNCTIONS(laneward::CentreRows)

public:
    static CentreList house(const Centre& centre, const Speech& speech);
    static CentreList machines(const Centre& centre, Instant now, const Speech& speech);
    static CentreList people(const Centre& centre);
    static CentreList shifts(const Centre& centre, QDate today, const Speech& speech);
    /// The latest first; what is over is told as such.
    static CentreList outages(const Centre& centre, Instant now, const Speech& speech);

    /// "lanes 3-4" or the machine.
    static QString outageName(const Outage& outage, const Centre& centre);
    static bool isOut(const Outage& outage, Instant now);

private:
    static QString timeText(QTime time, const Speech& speech);
    static QString weekdaysText(std::uint8_t weekdays, const Speech& speech);
    static QString hoursText(const Shift& shift, const Speech& speech);
    static QString outNames(const Centre& centre, Instant now);
    static QString machineState(const Machine& machine, const Centre& centre, Instant now, const Speech& speech);
    static QString tanksText(const Machine& machine, const Speech& speech);
};

}  // namespace laneward
