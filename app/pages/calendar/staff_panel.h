// 'Staff hours': how long people are bound to lane care in the days that the calendar shows, to print, save and copy.
#pragma once

#include "app/edits/session.h"
#include "core/season/staff_hours.h"

#include <QFrame>

class QLabel;
class QPrinter;
class QStandardItemModel;
class QTableView;
class QVBoxLayout;

namespace laneward {

class StaffPanel : public QFrame {
    Q_OBJECT

public:
    explicit StaffPanel(Session& session, QWidget* parent = nullptr);

    void setDays(const DateRange& days);
    const DateRange& days() const { return m_days; }
    /// Each says in the window what came of it.
    bool savePdf(const QString& path);
    bool saveCsv(const QString& path);
    bool print(QPrinter& printer);

Q_SIGNALS:
    void closeAsked();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void buildFoot(QVBoxLayout* column);
    void fill();
    void askPrinter();
    QString askWhere(const QString& filter, const QString& ending);
    void sayWhere(const QString& path);

    Session& m_session;
    DateRange m_days;
    std::vector<StaffWeek> m_weeks;
    QLabel* m_title = nullptr;
    QStandardItemModel* m_model = nullptr;
    QTableView* m_list = nullptr;
    QLabel* m_total = nullptr;
};

}  // namespace laneward
