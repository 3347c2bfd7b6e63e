// Can this machine finish tonight? Its tanks, waste room and pack as bars with what tonight takes drawn into them.
#pragma once

#include "app/edits/session.h"

#include <QFrame>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace laneward {

class LevelBar;
class LevelsForm;
struct LevelsTyped;
struct Level;

/// The bars of a machine, in order: conditioners, cleaner, waste, pack.
std::vector<Level> levelsOf(const Machine& machine, const Readiness& readiness, const Speech& speech);

class ReadinessCard : public QFrame {
    Q_OBJECT

public:
    ReadinessCard(Session& session, const Machine& machine, QWidget* parent = nullptr);

    void refresh(const SheetReadiness& entry);  ///< keeps a reading that is being typed
    MachineId machine() const { return m_machine.id; }
    const Machine& values() const { return m_machine; }
    bool worksTonight() const { return m_readiness.tonight.laneRuns > 0; }

private:
    void build();
    void openForm(bool open);
    void keep(const LevelsTyped& typed);
    QString voltsLine(const Readiness& readiness) const;

    Session& m_session;
    Machine m_machine;
    Readiness m_readiness;
    QVBoxLayout* m_column = nullptr;
    QLabel* m_volts = nullptr;
    QLabel* m_findings = nullptr;
    std::vector<LevelBar*> m_bars;
    QPushButton* m_measure = nullptr;
    LevelsForm* m_form = nullptr;
};

}  // namespace laneward
