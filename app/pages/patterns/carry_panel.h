// How far each machine's brush carries conditioner on, as its tape readings say, and the button that adopts it.
#pragma once

#include "app/edits/session.h"
#include "app/pages/patterns/carry_asker.h"

#include <QWidget>

class QVBoxLayout;

namespace laneward {

/// The newest readings of a machine that a fit looks at: brushes wear and are changed.
inline constexpr size_t readingsOfFit = 100;

class CarryPanel : public QWidget {
    Q_OBJECT

public:
    explicit CarryPanel(Session& session, QWidget* parent = nullptr);

    /// All readings that stand, by time, and all versions of all patterns.
    void show(const std::vector<TapeReading>& readings, const std::vector<PatternVersion>& versions);
    bool isBusy() const { return m_asker.isBusy(); }
    /// "0.76 m" or "2.5 ft": finer than distances on the lane are told.
    static QString carryText(Micrometres carry, const Speech& speech);
    static QString sentence(const CarryAnswer& answer, const Machine& machine, const Speech& speech);

private:
    void showAnswers(const std::vector<CarryAnswer>& answers);
    void addLine(const CarryAnswer& answer, const Machine& machine);
    void adopt(const MachineId& id, Micrometres carry);

    Session& m_session;
    CarryAsker m_asker;
    std::vector<CarryQuestion> m_asked;
    std::vector<CarryAnswer> m_answers;
    QVBoxLayout* m_rows;
    QWidget* m_lines = nullptr;
};

}  // namespace laneward
