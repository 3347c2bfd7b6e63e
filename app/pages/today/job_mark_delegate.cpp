#include "app/pages/today/job_mark_delegate.h"

#include "app/widgets/house_painter.h"

#include <QPainter>

namespace laneward {

namespace {

void paintTick(QPainter& painter, const QRectF& room, const QColor& colour) {
    painter.setPen(QPen(colour, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const double s = room.height();
    const QPointF c = room.center();
    painter.drawPolyline(
        QPolygonF{{c.x() - s * 0.35, c.y()}, {c.x() - s * 0.1, c.y() + s * 0.25}, {c.x() + s * 0.4, c.y() - s * 0.3}});
}

HouseItem markOf(const Job& job) {
    HouseItem item;
    item.kind = HouseItem::Kind::Job;
    item.time = job.time;
    item.treatment = job.treatment;
    item.state = job.state;
    return item;
}

}  // namespace

JobMarkDelegate::JobMarkDelegate(std::function<const JobRow*(const QModelIndex&)> jobOf, QObject* parent)
    : QStyledItemDelegate(parent), m_jobOf(std::move(jobOf)) {}

void JobMarkDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyledItemDelegate::paint(painter, option, index);
    const JobRow* row = m_jobOf(index);
    if (!row) return;
    const double height = qMin(16.0, option.rect.height() - 8.0);
    QRectF mark(0, 0, option.rect.width() - 16.0, height);
    mark.moveCenter(QRectF(option.rect).center());
    // Inside a selected row the mark needs its own ground: its colours are made for the page's.
    HouseInk ink{shadesOf(option.palette), option.font, option.font, option.direction == Qt::RightToLeft, m_now};
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (option.state & QStyle::State_Selected) painter->fillRect(mark.adjusted(-4, -4, 4, 4), ink.shades.base);
    HousePainter(*painter, ink).item(markOf(row->job), {mark, {mark}}, {}, Look::Plain);
    if (row->job.state == JobState::Done) {
        paintTick(*painter, mark, row->job.treatment == Treatment::CleanAndCondition ? ink.shades.onJob : ink.shades.text);
    }
    painter->restore();
}

QSize JobMarkDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    return QStyledItemDelegate::sizeHint(option, index).expandedTo({52, 28});
}

}  // namespace laneward
