// How often an event takes place, in the words of RecurrenceChoice, with the dates that are left out and the next ones in words.
#pragma once

#include "app/edits/recurrence_choice.h"
#include "core/documents/wording.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QDateEdit;
class QFormLayout;
class QLabel;
class QListWidget;
class QPushButton;
class QSpinBox;

namespace laneward {

class RecurrenceEdit : public QWidget {
    Q_OBJECT

public:
    explicit RecurrenceEdit(QWidget* parent = nullptr);

    void load(const Series& series, const Speech& speech, const Zone& zone);
    /// The start decides what 'the second Thursday' is: the words follow it.
    void setStart(const LocalTime& start);
    /// Rule, excluded dates and cancelled instances, written into `series`.
    void store(Series& series) const;
    void setPreview(const QString& words);
    QString preview() const;
    RecurrenceChoice choice() const;

Q_SIGNALS:
    void edited();

private:
    void buildForm();
    void buildWeekdays();
    void buildEnd();
    void buildExclusions();
    void fillForms();
    void fillExclusions();
    void showParts();
    void excludeDay();
    void restoreChosen();
    void touched();

    QFormLayout* m_form;
    QComboBox* m_forms = nullptr;
    QWidget* m_everyRow = nullptr;
    QSpinBox* m_every = nullptr;
    QLabel* m_everyUnit = nullptr;
    QWidget* m_weekdayRow = nullptr;
    std::vector<QCheckBox*> m_weekdays;
    QWidget* m_endRow = nullptr;
    QComboBox* m_end = nullptr;
    QDateEdit* m_until = nullptr;
    QSpinBox* m_times = nullptr;
    QWidget* m_excludeRow = nullptr;
    QListWidget* m_excluded = nullptr;
    QDateEdit* m_excludeDay = nullptr;
    QPushButton* m_restore = nullptr;
    QLabel* m_preview = nullptr;
    LocalTime m_start;
    Speech m_speech;
    Zone m_zone;
    QString m_custom;
    std::vector<LocalTime> m_excludedDates;
    std::vector<Override> m_overrides;
    bool m_loading = false;
};

}  // namespace laneward
