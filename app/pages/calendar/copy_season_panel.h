// 'Copy last season…': chooses series, the first date of the new season and the holidays to leave out; the copies are one
// undoable edit.
#pragma once

#include "app/edits/session.h"

#include <QFrame>

class QDateEdit;
class QLabel;
class QListWidget;
class QPushButton;
class QVBoxLayout;

namespace laneward {

class CopySeasonPanel : public QFrame {
    Q_OBJECT

public:
    explicit CopySeasonPanel(Session& session, QWidget* parent = nullptr);

    /// Fills the list; `chosen` is checked, or the series that have ended when there is none.
    void open(const SeriesId& chosen);
    /// The copies that the button would keep.
    std::vector<Series> copies() const;

public Q_SLOTS:
    bool copy();

Q_SIGNALS:
    void copied(QDate first);
    void closeAsked();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void buildHolidays(QVBoxLayout* column);
    void buildFoot(QVBoxLayout* column);
    void addHoliday();
    void removeHoliday();
    void look();
    std::vector<QDate> holidays() const;
    QLabel* line(const QString& words, bool strong);

    Session& m_session;
    QListWidget* m_series = nullptr;
    QDateEdit* m_first = nullptr;
    QDateEdit* m_holiday = nullptr;
    QListWidget* m_holidays = nullptr;
    QPushButton* m_remove = nullptr;
    QLabel* m_preview = nullptr;
    QPushButton* m_copy = nullptr;
};

}  // namespace laneward
