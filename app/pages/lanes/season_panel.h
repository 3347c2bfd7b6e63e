// The season: where it is tight, what a day takes, and what it would be if …
//
// Planning a season takes its time: it is done beside the window, and the page says so until the answer is there. Nothing that
// is supposed here is stored.
#pragma once

#include "app/edits/stock_runner.h"
#include "app/pages/lanes/season_asker.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QScrollArea;
class QTimer;

namespace laneward {

class SeasonForm;
class SeasonView;

class SeasonPanel : public QWidget {
    Q_OBJECT

public:
    explicit SeasonPanel(Session& session, QWidget* parent = nullptr);

    /// Plans again when the session has changed since.
    void refresh();
    void showDay(QDate day);
    QString headline() const { return m_headline; }
    bool isBusy() const;                                              ///< planning, or about to
    bool isLookingAtStock() const { return m_stockRunner.isBusy(); }  ///< behind an answer

    static constexpr int seasonDays = 365;

Q_SIGNALS:
    void headlineChanged();
    void dayWanted(QDate day);

private:
    QWidget* buildSide();
    QWidget* buildAnswer();
    void takeSeason(const SeasonFigures& season);
    void takeAnswer(const SeasonFigures& then);
    void askSoon();
    void ask();
    void stop();
    void showChosen(int index);
    void showBusy();
    void showAnswer(const SeasonFigures& then);
    void askStock();
    void showStock(const StockAnswer& answer);
    void say();
    void fitSide();

    Session& m_session;
    SeasonAsker m_base;
    SeasonAsker m_question;
    StockRunner m_stockRunner;
    std::shared_ptr<const StockBase> m_stockBase;  ///< of m_base
    std::shared_ptr<const State> m_supposed;       ///< what was asked about last
    SeasonFigures m_now;
    DateRange m_days;
    Instant m_asOf;
    bool m_stale = true;
    QDate m_wanted;  ///< to be shown when the season is there
    SeasonView* m_view = nullptr;
    QScrollArea* m_scroll = nullptr;
    QLabel* m_day = nullptr;
    SeasonForm* m_form = nullptr;
    QWidget* m_busy = nullptr;
    QLabel* m_notes = nullptr;
    QWidget* m_answer = nullptr;
    QGridLayout* m_figures = nullptr;
    QLabel* m_stock = nullptr;
    QTimer* m_soon = nullptr;
    QString m_headline;
};

}  // namespace laneward
