// Works out beside the window how long everything lasts, what to order and what service falls due: the newest question wins, and
// the window never waits.
//
// The past that use is learned from is read there (beside.h). The plan of half a year ahead is made there too, by few nodes: what
// treatments take hardly depends on their order. Behind an answer the day's forecast is kept, if that day has none yet, by a
// store that is opened for it; without a word when it cannot.
//
//     connect(&asker, &SupplyAsker::answered, this, &SuppliesPage::take);
//     asker.ask(session);
#pragma once

#include "app/edits/beside.h"
#include "app/edits/session.h"
#include "core/season/pack_outlook.h"
#include "core/season/past_forecasts.h"
#include "core/season/service_outlook.h"

namespace laneward {

/// The fills that a machine's use of one product was learned from.
struct FillsBehind {
    MachineId machine;
    int product = 0;
    std::vector<FillPoint> points;
};

struct SupplyAnswer {
    SupplyOutlook outlook;
    ServiceOutlook service;           ///< when that is wanted, …
    PackOutlook packs;                ///< … as this, …
    std::vector<PackState> packYear;  ///< … and with the charges of a year
    SupplyLearning learned;
    std::vector<FillsBehind> fills;
    std::map<SupplyId, ForecastScore> scores;  ///< of forecasts that were kept; none = not known yet
};

class SupplyAsker : public QObject {
    Q_OBJECT

public:
    explicit SupplyAsker(QObject* parent = nullptr);
    ~SupplyAsker() override;

    /// Cancels what is under way. The answer comes on this thread, later; Service leaves all but `service` empty, and reads no
    /// past.
    enum class Wanted { All, Service };
    void ask(Session& session, Wanted wanted = Wanted::All);
    /// No answer is wanted any more.
    void leave() { m_beside.leave(); }
    bool isBusy() const { return m_beside.isBusy(); }

Q_SIGNALS:
    void answered(const std::shared_ptr<const laneward::SupplyAnswer>& answer);
    void failed(const laneward::Error& why);  ///< the past could not be read
    void progressed(double done);             ///< 0 to 1, a few times a second
    void kept(QDate day);                     ///< that day's forecast, by us; after answered()
    void settled();                           ///< after answered(), and after whatever became of keeping

private:
    class Answering;
    struct Question;

    QDate m_keptOn;  ///< the thread's own
    Beside m_beside;
};

}  // namespace laneward
