#include "app/pages/lanes/season_view.h"

#include <QEvent>
#include <QFontMetricsF>
#include <QLocale>
#include <QScrollBar>

#include <cmath>

namespace laneward {

namespace {

constexpr int daysAWeek = 7;
constexpr double leastColumn = 74;

}  // namespace

SeasonView::SeasonView(QWidget* parent) : BlockView(parent) {
    setAccessibleName(tr("Days of the season"));
    verticalScrollBar()->setSingleStep(26);
    setMinimumSize(minimumSizeHint());
}

double SeasonView::headHeight() const { return std::ceil(QFontMetricsF(font()).height() * 2 + 14); }

QRectF SeasonView::toViewport(const QRectF& content) const {
    return content.translated(-horizontalScrollBar()->value(), headHeight() - verticalScrollBar()->value());
}

void SeasonView::setSeason(SeasonFigures season, const Speech& speech) {
    m_season = std::move(season);
    m_speech = speech;
    prepare();
}

QDate SeasonView::dayOf(int index) const {
    return index >= 0 && index < int(m_season.days.size()) ? m_season.days[size_t(index)].date : QDate();
}

bool SeasonView::setCurrentDay(QDate day) { return setCurrentKey(day.toString(Qt::ISODate)); }

int SeasonView::columnOf(QDate day) const {
    return (day.dayOfWeek() - int(m_speech.locale.firstDayOfWeek()) + daysAWeek) % daysAWeek;
}

int SeasonView::rowOf(QDate day) const { return int(m_firstRow.daysTo(day)) / daysAWeek; }

QRectF SeasonView::cell(int row, int column) const {
    const bool mirrored = layoutDirection() == Qt::RightToLeft;
    const int place = mirrored ? daysAWeek - 1 - column : column;
    return {(mirrored ? 0 : m_gutter) + place * m_columnWidth, row * m_rowHeight, m_columnWidth, m_rowHeight};
}

void SeasonView::prepare() {
    m_shades = shadesOf(palette());
    const QFontMetricsF metrics(font());
    m_rowHeight = std::ceil(std::max(26.0, metrics.height() + 11));
    m_gutter = metrics.horizontalAdvance(m_speech.locale.toString(QDate(2026, 9, 30), QStringLiteral("d MMM"))) + 16;
    const double room = viewport()->width() - m_gutter - 2;
    m_columnWidth = std::max(leastColumn, std::floor(room / daysAWeek));
    std::vector<Block> blocks;
    int rows = 0;
    if (!m_season.days.empty()) {
        const QDate first = m_season.days.front().date;
        m_firstRow = first.addDays(-columnOf(first));
        for (const SeasonDay& day : m_season.days) {
            rows = rowOf(day.date) + 1;
            const QStringList figures = figuresOf(day, m_speech);
            blocks.push_back({day.date.toString(Qt::ISODate), cell(rowOf(day.date), columnOf(day.date)),
                              figures.join(QStringLiteral("; ")), figures.join(u'\n')});
        }
    }
    const double seen = viewport()->height() - headHeight();
    verticalScrollBar()->setRange(0, int(std::max(0.0, rows * m_rowHeight + 4 - seen)));
    verticalScrollBar()->setPageStep(int(std::max(1.0, seen)));
    horizontalScrollBar()->setRange(0, int(std::max(0.0, m_gutter + daysAWeek * m_columnWidth - viewport()->width())));
    horizontalScrollBar()->setPageStep(viewport()->width());
    setBlocks(std::move(blocks));
}

/// The head covers what would lie behind it.
void SeasonView::reveal(int index) {
    const QRectF rect = toViewport(block(index).rect);
    QScrollBar* bar = verticalScrollBar();
    if (rect.top() < headHeight()) bar->setValue(bar->value() - int(std::ceil(headHeight() - rect.top())) - 4);
    if (rect.bottom() > viewport()->height())
        bar->setValue(bar->value() + int(std::ceil(rect.bottom())) - viewport()->height() + 4);
}

void SeasonView::resizeEvent(QResizeEvent* event) {
    BlockView::resizeEvent(event);
    prepare();
}

void SeasonView::changeEvent(QEvent* event) {
    BlockView::changeEvent(event);
    const bool look = event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange ||
                      event->type() == QEvent::LayoutDirectionChange || event->type() == QEvent::StyleChange;
    if (look) prepare();
}

QStringList SeasonView::figuresOf(const SeasonDay& day, const Speech& speech) {
    const WorkFigures& work = day.work;
    const QString name = dayText(day.date, speech);
    QStringList lines{tr("%1: %2", "day: what it has to spare").arg(name, spareText(work, speech))};
    if (work.unmet > 0 && work.late > 0) lines += tr("%n event(s) late", nullptr, int(work.late));
    if (work.treatments == 0) return lines;
    lines += tr("%n lane(s) to treat", nullptr, int(work.treatments));
    lines += tr("%n outing(s)", nullptr, work.outings);
    lines += tr("machine time %1").arg(durationText(work.machineTime, speech));
    lines += tr("conditioner %1").arg(amountText(work.conditioner, speech));
    lines += tr("cleaner %1").arg(amountText(work.cleaner, speech));
    if (work.overtime > Seconds{0}) lines += tr("overtime %1").arg(durationText(work.overtime, speech));
    lines += work.proven > 0 ? tr("nothing better exists") : tr("not proven to be the best");
    return lines;
}

}  // namespace laneward
