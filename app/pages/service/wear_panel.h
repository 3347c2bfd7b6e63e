// How parts wear: each duty that replaces something, with what its past replacements say, the best interval beside the one that
// is set, and why. Adopting an interval is one undoable edit.
#pragma once

#include "app/edits/session.h"
#include "app/pages/service/wear_asker.h"
#include "core/season/part_lives.h"
#include "core/service/wear.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QHBoxLayout;
class QLabel;
class QPushButton;
class QSplitter;
class QTableView;
class QVBoxLayout;

namespace laneward {

class BusyBar;
class MoneyBox;
class PlainRows;
class PlotView;

class WearPanel : public QWidget {
    Q_OBJECT

public:
    explicit WearPanel(Session& session, QWidget* parent = nullptr);

    /// Items and records as they are stored now; what is read again is read beside the window, when the panel is seen.
    void refresh();
    bool isBusy() const { return m_asker.isBusy(); }
    /// Stops reading, where that is under way.
    bool cancel();

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    /// A duty as it is asked about.
    struct Subject {
        const ServiceItem* item = nullptr;
        const Duty* duty = nullptr;
        MeterKind meter = MeterKind::Days;
        bool pooled = false;
    };
    struct Told {
        PartLives lives;
        WearAnswer answer;
        std::optional<double> now;
        bool hasCosts = false;
    };

    void buildList(QSplitter* split);
    void buildDetail(QSplitter* split);
    void buildChoices(QVBoxLayout* column);
    void buildCosts(QVBoxLayout* column);
    void read();
    void stop();
    void take(const WearAsker::Records& records);
    void takeFailure(const Error& why);
    std::optional<Subject> chosen() const;
    std::optional<Subject> subjectOf(const DutyId& duty) const;
    Told tell(const Subject& subject, const ReplacementCosts& costs) const;
    ReplacementCosts costsOf(const Duty& duty) const;
    ReplacementCosts costsTyped() const;
    void fill();
    void showChosen();
    void showAnswer();
    void storeCosts();
    void adopt();

    Session& m_session;
    WearAsker m_asker;
    WearAsker::Records m_records;
    bool m_stale = true;
    bool m_filling = false;
    BusyBar* m_busy = nullptr;
    QLabel* m_state = nullptr;
    QSplitter* m_split = nullptr;
    PlainRows* m_rows = nullptr;
    QTableView* m_list = nullptr;
    DutyId m_shown;
    QLabel* m_sentence = nullptr;
    QComboBox* m_meter = nullptr;
    QCheckBox* m_pool = nullptr;
    QLabel* m_counted = nullptr;
    PlotView* m_failures = nullptr;
    PlotView* m_cost = nullptr;
    QLabel* m_spoken = nullptr;
    MoneyBox* m_planned = nullptr;
    MoneyBox* m_failed = nullptr;
    QPushButton* m_adopt = nullptr;
    std::int64_t m_best = 0;  ///< what adopting would set; 0 = nothing
};

}  // namespace laneward
