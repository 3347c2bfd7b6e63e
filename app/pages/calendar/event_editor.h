// Edits one event or series beside the calendar, without blocking it. Shows at once what is wrong, when it takes place next and
// what keeping it would change; saves as one undoable edit named by what changed. What cannot be read stays as it was typed.
#pragma once

#include "app/edits/session.h"

#include <QFrame>

class QCheckBox;
class QComboBox;
class QDateEdit;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QSpinBox;
class QTimeEdit;
class QTimer;
class QToolButton;
class QVBoxLayout;

namespace laneward {

class DemandRows;
struct EventPreview;
class RecurrenceEdit;

class EventEditor : public QFrame {
    Q_OBJECT

public:
    explicit EventEditor(Session& session, QWidget* parent = nullptr);

    void edit(const Series& series);
    /// A new event; `draft` carries what is known already (start, or the event it is copied from).
    void create(const Series& draft);
    bool isDirty() const { return m_dirty; }
    bool isOpen() const { return m_open; }
    SeriesId editing() const { return m_draft.id; }
    /// The form as a series, or nothing when something cannot be read (it then says what).
    std::optional<Series> draft();
    /// The session changed: takes what is stored when nothing was typed, else says that it is another.
    void sessionChanged();
    QString problems() const;
    QString consequences() const;

public Q_SLOTS:
    bool save();
    void revert();

Q_SIGNALS:
    void saved(const laneward::SeriesId& id);
    void closeAsked();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void buildHead(QVBoxLayout* column);
    void buildBasics(QFormLayout* form);
    void buildTimes(QFormLayout* form);
    void buildMore(QVBoxLayout* column);
    void buildOrganisation(QFormLayout* form);
    void buildFoot(QVBoxLayout* column);
    void connectFields();
    QSpinBox* minutesBox(const QString& name);

    void load();
    void loadTimes();
    void loadMore();
    void storeTimes(Series& series) const;
    void storeMore(Series& series) const;
    void fitWidth();
    void touched();
    void look();       ///< validation and preview, at once
    void lookAhead();  ///< consequences, a moment after typing
    void showCost(const EventPreview& preview);
    bool showFaults(const Series& series);
    void startMoved();
    const Series* stored() const;
    QString editName(const Series& before, const Series& after) const;

    Session& m_session;
    Series m_draft;                  ///< as loaded
    std::optional<Series> m_before;  ///< nothing for a new event
    Speech m_speech;
    Zone m_zone;
    bool m_dirty = false;
    bool m_open = false;
    bool m_loading = false;
    qint64 m_length = 0;  ///< seconds, kept when the start moves

    QWidget* m_body = nullptr;
    QLabel* m_heading = nullptr;
    QLineEdit* m_title = nullptr;
    QComboBox* m_kind = nullptr;
    QLineEdit* m_lanes = nullptr;
    QDateEdit* m_day = nullptr;
    QTimeEdit* m_from = nullptr;
    QDateEdit* m_lastDay = nullptr;
    QTimeEdit* m_to = nullptr;
    QLabel* m_zoneNote = nullptr;
    DemandRows* m_demands = nullptr;
    RecurrenceEdit* m_recurrence = nullptr;
    QToolButton* m_moreButton = nullptr;
    QWidget* m_more = nullptr;
    QSpinBox* m_settle = nullptr;
    QSpinBox* m_clearing = nullptr;
    QSpinBox* m_players = nullptr;
    QCheckBox* m_twice = nullptr;
    QCheckBox* m_yields = nullptr;
    QCheckBox* m_noStaff = nullptr;
    QCheckBox* m_cancelled = nullptr;
    QPlainTextEdit* m_note = nullptr;
    QLabel* m_costHeading = nullptr;
    QLabel* m_cost = nullptr;
    QLabel* m_problems = nullptr;
    QLabel* m_consequences = nullptr;
    QPushButton* m_save = nullptr;
    QPushButton* m_revert = nullptr;
    QTimer* m_pause = nullptr;
};

}  // namespace laneward
