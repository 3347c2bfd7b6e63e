// 'Set up my centre': the few things that the program must know before it can plan, with sensible answers already filled in.
#pragma once

#include "core/season/season.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QSpinBox;
class QTimeEdit;

namespace laneward {

/// What a person says about a new centre.
struct SetUp {
    QString name;
    int lanes = 24;
    QByteArray zone;
    UnitSystem units = UnitSystem::Metric;
    QStringList machines;
    QString person;
    QTime workBegins{9, 0};
    QTime workEnds{23, 0};
};

/// A centre with these facts, one daily shift, and one plain pattern to begin with. `newId` makes ids.
SeasonState newCentre(const SetUp& setUp, const std::function<QString()>& newId);

class SetupForm : public QWidget {
    Q_OBJECT

public:
    explicit SetupForm(QWidget* parent = nullptr);

    void begin();

Q_SIGNALS:
    void finished(const SetUp& setUp);
    void cancelled();

private:
    void buildFields(QFormLayout* form);
    void buildButtons(QFormLayout* form);
    void submit();

    QLineEdit* m_name = nullptr;
    QSpinBox* m_lanes = nullptr;
    QComboBox* m_zone = nullptr;
    QComboBox* m_units = nullptr;
    QLineEdit* m_machines = nullptr;
    QLineEdit* m_person = nullptr;
    QTimeEdit* m_begins = nullptr;
    QTimeEdit* m_ends = nullptr;
    QLabel* m_problem = nullptr;
};

}  // namespace laneward
