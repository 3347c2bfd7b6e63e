#include "app/pages/lanes/lanes_page.h"
#include "app/pages/lanes/season_panel.h"
#include "app/widgets/date_bar.h"

#include <QVBoxLayout>

namespace laneward {

bool LanesPage::isYear() const { return m_year && m_year->isVisibleTo(this); }

/// The house gives its place to the year, or takes it back with the state of now.
void LanesPage::showYear(bool year) {
    if (year == isYear()) return;
    if (!m_year) {
        m_year = new SeasonPanel(session(), this);
        m_year->hide();
        qobject_cast<QVBoxLayout*>(layout())->addWidget(m_year, 1);
        connect(m_year, &SeasonPanel::headlineChanged, this, [this] {
            if (!isYear()) return;
            m_headline = m_year->headline();
            Q_EMIT headlineChanged();
        });
        connect(m_year, &SeasonPanel::dayWanted, this, [this](QDate day) {
            m_view->setZoom(HouseZoom::Evening);
            showDay(day);
        });
    }
    m_house->setVisible(!year);
    m_year->setVisible(year);
    m_bar->setLevel(year ? int(HouseZoom::Season) + 1 : int(m_view->zoom()));
    if (!year) return refresh();
    leaveMove();
    m_year->refresh();
    m_year->showDay(m_day);
    m_year->setFocus();
    m_headline = m_year->headline();
    Q_EMIT headlineChanged();
}

void LanesPage::goTo(QDate day) {
    if (!isYear()) return showDay(day);
    if (!day.isValid()) return;
    m_day = day;
    m_bar->setDay(day);
    m_year->showDay(day);
}

}  // namespace laneward
