// Fits carry lengths beside the window: the newest question wins, and the window never waits.
#pragma once

#include "core/patterns/carry_fit.h"

#include <QObject>

#include <memory>

namespace laneward {

/// What one machine's readings say.
struct CarryAnswer {
    MachineId machine;
    int readings = 0;
    std::optional<CarryFit> fit;
    Finding why;  ///< when there is none
};

/// The readings of one machine.
struct CarryQuestion {
    MachineId machine;
    std::vector<MeasuredFilm> measured;
};

class CarryAsker : public QObject {
    Q_OBJECT

public:
    explicit CarryAsker(QObject* parent = nullptr);
    ~CarryAsker() override;

    /// The answers come on this thread, later.
    void ask(std::vector<CarryQuestion> questions);
    void leave();
    bool isBusy() const { return m_work != nullptr; }

Q_SIGNALS:
    void answered(const std::vector<laneward::CarryAnswer>& answers);

private:
    struct Work;

    std::shared_ptr<Work> m_work;  ///< under way
};

}  // namespace laneward
