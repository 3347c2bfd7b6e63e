#include "app/window/search.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QCoreApplication>
#include <QStandardItemModel>

#include <algorithm>

namespace laneward {

namespace {

constexpr size_t mostFound = 12;
constexpr int daysAhead = 28;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Search)

public:
    static QString lane(int lane) { return tr("Lane %1").arg(lane); }
    static QString event(const Occurrence& o, const Speech& speech) {
        return tr("%1: %2, lanes %3", "event: when, lanes")
            .arg(shown(o.title), dateTimeText(o.booked.begin, speech), o.lanes.text());
    }
    static QString series(const Series& s) {
        return tr("%1, lanes %2: not in the next four weeks", "event").arg(shown(s.title), s.lanes.text());
    }
};

}  // namespace

std::vector<Found> findIn(const QString& sought, const SeasonState& season, const Occupancy& near, const Speech& speech) {
    std::vector<Found> found;
    const QString wanted = sought.trimmed();
    if (wanted.isEmpty()) return found;
    bool isNumber = false;
    const int lane = speech.locale.toInt(wanted, &isNumber);
    if (isNumber && lane >= 1 && lane <= season.centre.facts.lanes) found.push_back({Words::lane(lane), lane, {}, {}, {}});
    for (const Series& series : season.series) {
        if (!series.title.contains(wanted, Qt::CaseInsensitive)) continue;
        const auto next = std::find_if(near.occurrences.begin(), near.occurrences.end(),
                                       [&series](const Occurrence& o) { return o.series == series.id; });
        if (next != near.occurrences.end()) {
            found.push_back(
                {Words::event(*next, speech), {}, series.id, next->original, speech.zone.toLocal(next->booked.begin).date});
        } else {
            found.push_back({Words::series(series), {}, series.id, series.start, series.start.date});
        }
    }
    const QDate first = near.occurrences.empty() ? QDate() : speech.zone.toLocal(near.occurrences.front().booked.begin).date;
    std::stable_sort(found.begin(), found.end(), [first](const Found& a, const Found& b) {
        const auto rank = [first](const Found& f) {
            return f.lane ? std::pair(0, f.day) : std::pair(f.day >= first ? 1 : 2, f.day);
        };
        return rank(a) < rank(b);
    });
    if (found.size() > mostFound) found.resize(mostFound);
    return found;
}

Search::Search(Session& session, QWidget* parent) : QLineEdit(parent), m_session(session), m_model(new QStandardItemModel(this)) {
    setPlaceholderText(tr("Find an event or a lane"));
    setAccessibleName(tr("Find an event or a lane"));
    setClearButtonEnabled(true);
    auto* completer = new QCompleter(m_model, this);
    completer->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    setCompleter(completer);
    connect(this, &QLineEdit::textEdited, this, &Search::offer);
    connect(completer, qOverload<const QModelIndex&>(&QCompleter::activated), this,
            [this](const QModelIndex& index) { choose(index.row()); });
    connect(this, &QLineEdit::returnPressed, this, [this] { choose(0); });
}

void Search::offer(const QString& sought) {
    const QDate today = m_session.today();
    m_found = findIn(sought, m_session.season(), m_session.occupancyOf({today, today.addDays(daysAhead)}), m_session.speech());
    m_model->clear();
    for (const Found& found : m_found)
        m_model->appendRow(new QStandardItem(found.words));
}

void Search::choose(int row) {
    if (row < 0 || size_t(row) >= m_found.size()) return;
    const Found found = m_found[size_t(row)];
    m_found.clear();
    clear();
    Q_EMIT chosen(found);
}

}  // namespace laneward
