// Paints the mark of a job into the first column: the same mark as on the lanes.
#pragma once

#include "app/models/job_model.h"

#include <QStyledItemDelegate>

namespace laneward {

class JobMarkDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    /// `jobOf` finds the job behind an index of the view's own model.
    JobMarkDelegate(std::function<const JobRow*(const QModelIndex&)> jobOf, QObject* parent);

    void setNow(Instant now) { m_now = now; }
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    std::function<const JobRow*(const QModelIndex&)> m_jobOf;
    Instant m_now;
};

}  // namespace laneward
