// Ctrl+F: events by their title, lanes by their number. The list below the field names what is found; Enter goes there.
#pragma once

#include "app/edits/session.h"

#include <QLineEdit>

class QStandardItemModel;

namespace laneward {

struct Found {
    QString words;
    std::optional<int> lane;
    SeriesId series;     ///< when it is an event
    LocalTime original;  ///< its next occurrence, or its last
    QDate day;
};

/// At most 12: lanes first when a number is sought, then events, those that come next first.
std::vector<Found> findIn(const QString& sought, const SeasonState& season, const Occupancy& near, const Speech& speech);

class Search : public QLineEdit {
    Q_OBJECT

public:
    explicit Search(Session& session, QWidget* parent = nullptr);

Q_SIGNALS:
    void chosen(const Found& found);

private:
    void offer(const QString& sought);
    void choose(int row);

    Session& m_session;
    QStandardItemModel* m_model = nullptr;
    std::vector<Found> m_found;
};

}  // namespace laneward
