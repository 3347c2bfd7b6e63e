// What to suppose about the season: some tournaments more, a machine out of service, open play that asks less often.
#pragma once

#include "core/documents/wording.h"
#include "core/season/season_questions.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QDateEdit;
class QFormLayout;
class QLineEdit;
class QSpinBox;
class QTimeEdit;

namespace laneward {

class SeasonForm : public QWidget {
    Q_OBJECT

public:
    explicit SeasonForm(QWidget* parent = nullptr);

    /// What may be chosen; what was chosen stays where it still exists.
    void setChoices(const State& state, const DateRange& days, const Speech& speech);
    bool supposesAnything() const;
    /// The state with all that is supposed in it. `notes` say in words what found no room or could not be read.
    State suppose(const State& state, const DateRange& days, QStringList& notes) const;

Q_SIGNALS:
    void changed();

private:
    QFormLayout* part(QCheckBox*& box, const QString& name);
    void buildTournaments();
    void buildMachine();
    void buildOpenPlay();
    QSpinBox* number(int least, int most, int value, const QString& name);
    State supposeTournaments(const State& state, const DateRange& days, QStringList& notes) const;

    QCheckBox* m_tournaments = nullptr;
    QSpinBox* m_count = nullptr;
    QComboBox* m_weekday = nullptr;
    QTimeEdit* m_begins = nullptr;
    QSpinBox* m_hours = nullptr;
    QLineEdit* m_lanes = nullptr;
    QComboBox* m_pattern = nullptr;
    QCheckBox* m_machineOut = nullptr;
    QComboBox* m_machine = nullptr;
    QDateEdit* m_from = nullptr;
    QSpinBox* m_outDays = nullptr;
    QCheckBox* m_openPlay = nullptr;
    QSpinBox* m_every = nullptr;
};

}  // namespace laneward
