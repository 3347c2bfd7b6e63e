#include "app/widgets/house_view.h"

#include "app/widgets/time_formats.h"

#include <QFontMetricsF>
#include <QKeyEvent>
#include <QScrollBar>
#include <QWheelEvent>

#include <cmath>

namespace laneward {

namespace {

constexpr double lowestDay = 12;
constexpr double highestDay = 9'600;  // 400 pixels an hour

}  // namespace

HouseView::HouseView(QWidget* parent) : BlockView(parent) {
    setAccessibleName(tr("Lanes and times"));
    // Lanes never turn round, so the bar that moves along them does not either.
    horizontalScrollBar()->setLayoutDirection(Qt::LeftToRight);
    verticalScrollBar()->setSingleStep(24);
    setMinimumSize(minimumSizeHint());
}

double HouseView::headHeight() const { return std::ceil(QFontMetricsF(font()).height() * 3 + 14); }

double HouseView::viewHeight() const { return qMax(60.0, viewport()->height() - headHeight() - 6); }

QRectF HouseView::toViewport(const QRectF& content) const {
    const bool head = content.top() < -0.5 * headHeight();  // heads stand still above the scrolling part
    return content.translated(-horizontalScrollBar()->value(),
                              head ? 2 * headHeight() : headHeight() - verticalScrollBar()->value());
}

void HouseView::setData(HouseData data, const Speech& speech) {
    m_hand.clear();  // in silence: whoever brings new data shows what belongs to it
    m_marks.clear();
    const bool otherRange = data.range != m_data.range;
    m_data = std::move(data);
    m_speech = speech;
    if (otherRange) m_chosen.reset();
    if (m_dayHeight <= 0) m_dayHeight = dayHeightFor(m_zoom, viewHeight());
    prepare();
}

void HouseView::setBands(std::vector<LaneBand> bands, const QString& title, std::optional<Instant> at) {
    m_data.bands = std::move(bands);
    m_data.headsTitle = title;
    m_chosen = at;
    prepareHeads();
    prepareBlocks();
}

void HouseView::setNow(Instant now) {
    m_data.now = now;
    m_ink.now = now;
    viewport()->update();
}

void HouseView::setZoom(HouseZoom zoom) {
    m_zoom = zoom;
    m_dayHeight = dayHeightFor(zoom, viewHeight());
    prepare();
    Q_EMIT zoomChanged(zoom);
}

void HouseView::setDayHeight(double height, double anchor) {
    const Instant held = m_layout.timeAt(anchor + verticalScrollBar()->value());
    m_dayHeight = qBound(lowestDay, height, highestDay);
    prepare();
    verticalScrollBar()->setValue(int(m_layout.y(held) - anchor));
    const HouseZoom nearest = zoomOf(m_dayHeight, viewHeight());
    if (nearest == m_zoom) return;
    m_zoom = nearest;
    Q_EMIT zoomChanged(nearest);
}

void HouseView::scrollTo(Instant t) { verticalScrollBar()->setValue(int(m_layout.y(t))); }

void HouseView::prepare() {
    m_ink.shades = shadesOf(palette());
    m_ink.font = font();
    m_ink.bold = font();
    m_ink.bold.setBold(true);
    m_ink.mirrored = mirrored();
    m_ink.now = m_data.now;
    const QFontMetricsF metrics(m_ink.bold);
    HouseMetrics room;
    room.width = viewport()->width();
    room.height = viewHeight();
    room.lineHeight = metrics.height();
    room.mirrored = m_ink.mirrored;
    const bool rows = m_dayHeight < HouseLayout::rowHeight * 2;
    room.gutter = metrics.horizontalAdvance(rows ? shortDay(QDate(2026, 9, 30), m_speech.locale)
                                                 : clockTime(m_data.range.begin, m_speech)) +
                  18;
    m_layout = HouseLayout(m_data, room, m_dayHeight);
    m_texts.clear();
    for (size_t i = 0; i < m_data.items.size(); ++i)
        m_texts.push_back(itemText(m_data.items[i], m_layout.items()[i].rect, m_ink));
    m_tickTexts.clear();
    for (const HouseLayout::Tick& tick : m_layout.ticks()) {
        const QDate date = m_data.zone.toLocal(tick.at).date;
        m_tickTexts.push_back(tick.day && m_data.days.size() > 1 ? shortDay(date, m_speech.locale)
                                                                 : clockTime(tick.at, m_speech));
    }
    horizontalScrollBar()->setRange(0, qMax(0, int(m_layout.size().width()) - viewport()->width()));
    horizontalScrollBar()->setPageStep(viewport()->width());
    verticalScrollBar()->setRange(0, qMax(0, int(m_layout.size().height() - viewHeight())));
    verticalScrollBar()->setPageStep(int(viewHeight()));
    prepareHeads();
    prepareBlocks();
}

void HouseView::prepareHeads() {
    m_bandTexts.clear();
    if (m_layout.items().size() != m_data.items.size()) return;
    for (const LaneBand& band : m_data.bands) {
        const double width = m_layout.across(band.first, band.last).width() - 4;
        const auto cut = [&](const QString& words, const QFont& font) {
            QStaticText text(QFontMetricsF(font).elidedText(words, Qt::ElideRight, width));
            text.setTextFormat(Qt::PlainText);
            return text;
        };
        m_bandTexts.push_back(
            {cut(band.pattern, m_ink.font), cut(band.outOfService ? tr("out of service") : band.age, m_ink.font)});
    }
}

void HouseView::prepareBlocks() {
    std::vector<Block> blocks;
    for (size_t i = 0; i < m_data.items.size(); ++i)
        blocks.push_back({m_data.items[i].key, m_layout.items()[i].rect, m_data.items[i].spoken, m_data.items[i].spoken});
    for (const LaneBand& band : m_data.bands) {
        QRectF rect = m_layout.across(band.first, band.last);
        rect.setTop(-2 * headHeight());
        rect.setHeight(headHeight() - 2);
        blocks.push_back({QStringLiteral("lanes:%1").arg(band.first), rect, band.spoken, {}});
    }
    setBlocks(std::move(blocks));
}

const HouseItem* HouseView::itemOf(int index) const {
    return index >= 0 && size_t(index) < m_data.items.size() ? &m_data.items[size_t(index)] : nullptr;
}

const LaneBand* HouseView::bandOf(int index) const {
    const size_t band = size_t(index) - m_data.items.size();
    return index >= 0 && !itemOf(index) && band < m_data.bands.size() ? &m_data.bands[band] : nullptr;
}

void HouseView::reveal(int index) {
    if (bandOf(index)) return;
    const QRectF rect = block(index).rect;
    QScrollBar* bar = verticalScrollBar();
    if (rect.top() < bar->value() || rect.height() > viewHeight())
        bar->setValue(int(rect.top()) - 12);
    else if (rect.bottom() > bar->value() + viewHeight())
        bar->setValue(int(rect.bottom() - viewHeight()) + 12);
    QScrollBar* along = horizontalScrollBar();
    if (rect.left() < along->value())
        along->setValue(int(rect.left()) - 12);
    else if (rect.right() > along->value() + viewport()->width())
        along->setValue(int(rect.right()) - viewport()->width() + 12);
}

void HouseView::resizeEvent(QResizeEvent*) {
    const Instant held = m_layout.timeAt(verticalScrollBar()->value());
    m_dayHeight = dayHeightFor(m_zoom, viewHeight());
    prepare();
    verticalScrollBar()->setValue(int(m_layout.y(held)));
}

void HouseView::changeEvent(QEvent* event) {
    BlockView::changeEvent(event);
    const bool looks = event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange ||
                       event->type() == QEvent::LayoutDirectionChange || event->type() == QEvent::StyleChange;
    if (looks) prepare();
}

void HouseView::wheelEvent(QWheelEvent* event) {
    if (!(event->modifiers() & Qt::ControlModifier)) {
        BlockView::wheelEvent(event);
        return;
    }
    setDayHeight(m_dayHeight * std::pow(1.2, event->angleDelta().y() / 120.0), event->position().y() - headHeight());
    event->accept();
}

void HouseView::keyPressEvent(QKeyEvent* event) {
    if (pushGhost(event)) return;
    if (event->key() == Qt::Key_Plus || event->key() == Qt::Key_Equal)
        setDayHeight(m_dayHeight * 1.25, viewHeight() / 2);
    else if (event->key() == Qt::Key_Minus)
        setDayHeight(m_dayHeight / 1.25, viewHeight() / 2);
    else
        BlockView::keyPressEvent(event);
}

}  // namespace laneward
