// The day's forecast is kept once, beside the window, whatever page is open; and scores reach the Stock tab.
#include "app/edits/forecast_keeper.h"
#include "app/pages/supplies/stock_detail.h"
#include "core/documents/score_words.h"
#include "tests/support/demo_session.h"
#include "tests/support/looks.h"
#include "tests/support/stocked_house.h"

#include <QLabel>
#include <QSignalSpy>
#include <QTest>
#include <QThread>

using namespace laneward;

namespace {

constexpr int patience = 60'000;  // milliseconds: beside everything else that a machine under test does
constexpr std::chrono::milliseconds atOnce{1};
const DateRange always{QDate(2000, 1, 1), QDate(2100, 1, 1)};

class SetClock : public Clock {
public:
    explicit SetClock(Instant begin) : at(begin) {}
    Instant now() const override { return at; }
    Instant at;
};

/// Before anything of today is recorded.
const Instant morning = support::eveningNow - hours(8);

}  // namespace

class ForecastKeeperTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void theDayIsKeptOnce();
    void theNextDayIsKeptToo();
    void whatIsKeptAlreadyStays();
    void aReaderKeepsNone();
    void otherWindowsNeedNotRead();
    void withoutSuppliesThereIsNothing();
    void closingWhileBusyIsClean();
    void theDemoIsScored();

private:
    static bool hasLooked(const ForecastKeeper& keeper) {
        QSignalSpy spy(&keeper, &ForecastKeeper::looked);
        return spy.wait(patience);
    }
    std::vector<KeptForecast> kept() const { return *m_session->store().keptForecasts(always); }

    std::unique_ptr<support::StockedHouse> m_house;
    SetClock m_clock{morning};
    std::unique_ptr<Session> m_session;
};

void ForecastKeeperTest::init() {
    QLocale::setDefault(QLocale("en_GB"));
    m_clock.at = morning;
    m_house = std::make_unique<support::StockedHouse>();
    m_session = std::make_unique<Session>(*Store::open(m_house->location(), Access::ReadWrite), m_clock);
    m_session->setPerson({"ada"});
}

void ForecastKeeperTest::cleanup() {
    m_session.reset();
    m_house.reset();
}

void ForecastKeeperTest::theDayIsKeptOnce() {
    ForecastKeeper keeper(*m_session, atOnce);
    QSignalSpy spy(&keeper, &ForecastKeeper::kept);
    QTRY_COMPARE_WITH_TIMEOUT(spy.count(), 1, patience);
    QCOMPARE(spy[0][0].toDate(), m_session->today());
    QCOMPARE(kept().size(), size_t{1});
    QCOMPARE(kept()[0].day, m_session->today());
    QCOMPARE(kept()[0].supplies.size(), m_session->season().supplies.size());
    QVERIFY(faultsOf(kept()[0]).empty());
    // An edit, a second asker and another window add nothing.
    const Series before = m_session->season().series.front();
    Series after = before;
    after.title = "Other";
    QVERIFY(m_session->apply("Rename", {RowChange<Series>{before, after}}));
    SupplyAsker asker;
    QSignalSpy again(&asker, &SupplyAsker::kept);
    QSignalSpy answers(&asker, &SupplyAsker::settled);
    asker.ask(*m_session);
    QTRY_COMPARE_WITH_TIMEOUT(answers.count(), 1, patience);
    ForecastKeeper second(*m_session, atOnce);
    QVERIFY(hasLooked(second));
    QCOMPARE(again.count(), 0);
    QCOMPARE(kept().size(), size_t{1});
}

void ForecastKeeperTest::theNextDayIsKeptToo() {
    ForecastKeeper keeper(*m_session, atOnce);
    QSignalSpy spy(&keeper, &ForecastKeeper::kept);
    QTRY_COMPARE_WITH_TIMEOUT(spy.count(), 1, patience);
    m_clock.at = morning + hours(24);
    m_session->tick();
    QTRY_COMPARE_WITH_TIMEOUT(spy.count(), 2, patience);
    QCOMPARE(kept().size(), size_t{2});
    QCOMPARE(kept()[1].day, kept()[0].day.addDays(1));
}

void ForecastKeeperTest::whatIsKeptAlreadyStays() {
    const KeptForecast mine{m_session->today(), {{{"fen"}, {{7, {Amount{1}, Amount{2}, Amount{3}, Amount{4}, Amount{5}}}}}}};
    QVERIFY(m_session->store().keepForecast(mine));
    ForecastKeeper keeper(*m_session, atOnce);
    SupplyAsker asker;
    QSignalSpy answers(&asker, &SupplyAsker::settled);
    asker.ask(*m_session);
    QVERIFY(hasLooked(keeper));
    QTRY_COMPARE_WITH_TIMEOUT(answers.count(), 1, patience);
    QVERIFY((kept() == std::vector{mine}));
}

void ForecastKeeperTest::aReaderKeepsNone() {
    m_session = std::make_unique<Session>(*Store::open(m_house->location(), Access::ReadOnly), m_clock);
    QVERIFY(m_session->isReadOnly());
    ForecastKeeper keeper(*m_session, atOnce);
    SupplyAsker asker;
    QSignalSpy answers(&asker, &SupplyAsker::settled);
    asker.ask(*m_session);
    QVERIFY(hasLooked(keeper));
    QTRY_COMPARE_WITH_TIMEOUT(answers.count(), 1, patience);
    QVERIFY(kept().empty());
}

void ForecastKeeperTest::otherWindowsNeedNotRead() {
    QSignalSpy changes(m_session.get(), &Session::changed);
    ForecastKeeper keeper(*m_session, atOnce);
    QSignalSpy spy(&keeper, &ForecastKeeper::kept);
    QTRY_COMPARE_WITH_TIMEOUT(spy.count(), 1, patience);
    m_session->lookForOthers();
    QCOMPARE(changes.count(), 0);
}

void ForecastKeeperTest::withoutSuppliesThereIsNothing() {
    support::StockedHouse bare({}, support::eveningSeason());
    Session session(*Store::open(bare.location(), Access::ReadWrite), m_clock);
    ForecastKeeper keeper(session, atOnce);
    QVERIFY(hasLooked(keeper));
    QVERIFY(session.store().keptForecasts(always)->empty());
}

void ForecastKeeperTest::closingWhileBusyIsClean() {
    for (const int wait : {0, 5, 40, 150}) {
        ForecastKeeper keeper(*m_session, atOnce);
        QTRY_VERIFY_WITH_TIMEOUT(keeper.isBusy() || !kept().empty(), patience);
        QThread::msleep(unsigned(wait));
    }
    QVERIFY(kept().size() <= 1);
}

/// The demo's own forecasts are there for every day, and scored.
void ForecastKeeperTest::theDemoIsScored() {
    support::DemoSession demo;
    QCOMPARE(m_clock.at, morning);
    SupplyAsker asker;
    std::shared_ptr<const SupplyAnswer> answer;
    connect(&asker, &SupplyAsker::answered, this, [&](const auto& a) { answer = a; });
    asker.ask(demo.session());
    QTRY_VERIFY_WITH_TIMEOUT(answer, patience);
    const ForecastScore& amber = answer->scores.at({"amber"});
    QVERIFY2(amber.most.spans >= fewSpans, qPrintable(QString::number(amber.most.spans)));
    for (const auto& [supply, score] : answer->scores)
        qInfo("%s: %d spans, %d missing, half %d, most %d, off %d", qPrintable(supply.value), score.most.spans, score.missing,
              score.half.inside, score.most.inside, int(score.most.isOff() || score.half.isOff()));
    for (const char* look : {"light", "dark"}) {
        QApplication::setPalette(QString(look) == "dark" ? support::darkPalette() : support::lightPalette());
        StockDetail detail(demo.session());
        detail.resize(1130, 380);
        detail.show({"amber"}, answer.get());
        detail.QWidget::show();
        QVERIFY(support::picture(detail, QString("past-forecasts-") + look));
        QString words;
        for (const QLabel* label : detail.findChildren<QLabel*>())
            words += label->text() + '\n';
        QVERIFY2(words.contains(QString("Of %1 past spans").arg(amber.most.spans)), qPrintable(words));
    }
}

QTEST_MAIN(ForecastKeeperTest)
#include "tst_forecast_keeper.moc"
