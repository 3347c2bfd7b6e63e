#include "app/pages/calendar/month_view.h"

#include "app/widgets/time_formats.h"

#include <QFontMetricsF>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr int weekDays = 7;
constexpr double leastLine = 24;  // a target for a finger

}  // namespace

MonthView::MonthView(QWidget* parent) : DiaryView(parent) { setAccessibleName(tr("Events of the month")); }

DateRange MonthView::weeksOf(QDate day, Qt::DayOfWeek firstDay) {
    const QDate first(day.year(), day.month(), 1);
    const QDate last = first.addMonths(1).addDays(-1);
    const QDate begin = first.addDays(-((first.dayOfWeek() - int(firstDay) + weekDays) % weekDays));
    const int weeks = int(begin.daysTo(last)) / weekDays + 1;
    return {begin, begin.addDays(weeks * weekDays - 1)};
}

double MonthView::headHeight() const { return std::ceil(QFontMetricsF(font()).height() + 8); }

QRectF MonthView::cell(int day) const {
    const int weeks = qMax(1, m_days.days() / weekDays);
    const double width = (viewport()->width() - 1.0) / weekDays;
    const double height = std::max(96.0, (viewport()->height() - headHeight() - 1) / weeks);
    const int column = mirrored() ? weekDays - 1 - day % weekDays : day % weekDays;
    const int row = day / weekDays;
    return {column * width, headHeight() + row * height, width, height};
}

QRectF MonthView::lineRect(const Day& day, int line) const {
    const double top = day.rect.top() + QFontMetricsF(m_ink.bold).height() + 7;
    return {day.rect.left() + 3, top + line * leastLine, day.rect.width() - 6, leastLine - 2};
}

void MonthView::sortItems() {
    m_cells.assign(size_t(qMax(0, m_days.days())), {});
    for (int day = 0; day < m_days.days(); ++day)
        m_cells[size_t(day)].rect = cell(day);
    for (size_t i = 0; i < m_data.items.size(); ++i) {
        const HouseItem& item = m_data.items[i];
        const auto next = std::upper_bound(m_data.days.begin(), m_data.days.end(), item.time.begin);
        const int day = int(std::max<std::ptrdiff_t>(0, next - m_data.days.begin() - 1));
        if (size_t(day) >= m_cells.size()) continue;
        Day& place = m_cells[size_t(day)];
        if (item.kind == HouseItem::Kind::Event) place.events.push_back(i);
        if (item.kind == HouseItem::Kind::Job) place.jobs.push_back(i);
        if (item.kind == HouseItem::Kind::Shortfall) place.lacks = true;
    }
    for (Day& day : m_cells) {
        std::stable_sort(day.events.begin(), day.events.end(),
                         [this](size_t a, size_t b) { return m_data.items[a].time.begin < m_data.items[b].time.begin; });
        const int room = int((day.rect.bottom() - lineRect(day, 0).top()) / leastLine);
        const int events = int(day.events.size());
        day.shown = events <= room ? events : qMax(0, room - 1);
    }
}

void MonthView::prepare() {
    m_ink.shades = shadesOf(palette());
    m_ink.font = font();
    m_ink.bold = font();
    m_ink.bold.setBold(true);
    m_ink.mirrored = mirrored();
    m_ink.now = m_data.now;
    sortItems();
    const double bottom = m_cells.empty() ? 0 : m_cells.back().rect.bottom();
    verticalScrollBar()->setRange(0, qMax(0, int(bottom) - viewport()->height() + 2));
    verticalScrollBar()->setPageStep(viewport()->height());
    horizontalScrollBar()->setRange(0, 0);
    prepareBlocks();
}

void MonthView::prepareBlocks() {
    std::vector<Block> blocks;
    std::vector<int> items;
    m_blockDays.clear();
    const auto add = [&](Block block, int item, QDate day) {
        blocks.push_back(std::move(block));
        items.push_back(item);
        m_blockDays.push_back(day);
    };
    for (int i = 0; i < int(m_cells.size()); ++i) {
        const Day& day = m_cells[size_t(i)];
        const QDate date = m_days.first.addDays(i);
        const QString words = longDay(date, m_speech.locale);
        QRectF head = day.rect;
        head.setHeight(std::max(24.0, lineRect(day, 0).top() - head.top()));
        add({QStringLiteral("day:") + date.toString(Qt::ISODate), head, spokenDay(i), {}}, -1, date);
        for (int line = 0; line < day.shown; ++line) {
            const HouseItem& item = m_data.items[day.events[size_t(line)]];
            add({item.key, lineRect(day, line), tr("%1: %2").arg(words, item.spoken), item.spoken}, int(day.events[size_t(line)]),
                date);
        }
        const int hidden = int(day.events.size()) - day.shown;
        if (hidden > 0) {
            add({QStringLiteral("more:") + date.toString(Qt::ISODate),
                 lineRect(day, day.shown),
                 tr("%1: %n more event(s)", nullptr, hidden).arg(words),
                 {}},
                -1, date);
        }
    }
    setItemBlocks(std::move(blocks), std::move(items));
}

QString MonthView::spokenDay(int index) const {
    const Day& day = m_cells[size_t(index)];
    QStringList parts{longDay(m_days.first.addDays(index), m_speech.locale)};
    parts << tr("%n event(s)", nullptr, int(day.events.size()));
    parts << tr("%n job(s)", nullptr, int(day.jobs.size()));
    if (day.lacks) parts << tr("something cannot be met");
    QStringList lines{parts.join(tr(", "))};
    for (size_t job : day.jobs)
        lines << m_data.items[job].spoken;
    return lines.join(u'\n');
}

QDate MonthView::dayOfBlock(int index) const {
    return index >= 0 && size_t(index) < m_blockDays.size() ? m_blockDays[size_t(index)] : QDate();
}

LocalTime MonthView::proposedStart() const {
    const QDate day = dayOfBlock(current());
    return day.isValid() ? LocalTime{day, QTime(19, 0)} : DiaryView::proposedStart();
}

LocalTime MonthView::timeAt(const QPoint& point) const {
    for (int day = 0; day < int(m_cells.size()); ++day) {
        if (toViewport(m_cells[size_t(day)].rect).contains(point)) return {m_days.first.addDays(day), QTime(19, 0)};
    }
    return {m_days.first, QTime(19, 0)};
}

}  // namespace laneward
