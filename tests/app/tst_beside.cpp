// Work beside the window: the newest question wins, what is left gives no answer, going away waits and is told nothing, and the
// thread keeps its own store.
#include "app/edits/beside.h"
#include "tests/support/evening.h"

#include <QElapsedTimer>
#include <QSemaphore>
#include <QTest>

using namespace laneward;

namespace {

constexpr int patience = 10'000;

}  // namespace

class BesideTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void answersOnTheThreadThatAsked();
    void theNewestWins();
    void whatIsLeftGivesNoAnswer();
    void anAnswerThatIsUnderWayIsNotHeard();
    void tellsInOrder();
    void whoHearsMayAskAgainOrGo();
    void goingAwayWaits();
    void goingAwayUnasked();
    void keepsItsStore();
};

void BesideTest::answersOnTheThreadThatAsked() {
    Beside beside;
    QVERIFY(!beside.isBusy());
    QThread* worked = nullptr;
    QThread* heard = nullptr;
    beside.ask([&](const Beside::Question& question) {
        worked = QThread::currentThread();
        question.answer([&] { heard = QThread::currentThread(); });
    });
    QVERIFY(beside.isBusy());
    QTRY_VERIFY_WITH_TIMEOUT(heard != nullptr, patience);
    QVERIFY(!beside.isBusy());
    QCOMPARE(heard, QThread::currentThread());
    QVERIFY(worked && worked != heard);
}

void BesideTest::theNewestWins() {
    Beside beside;
    QSemaphore started, noticed;
    std::atomic<int> worked = 0;
    std::vector<int> heard;
    beside.ask([&](const Beside::Question& question) {
        started.release();
        while (!question.isLate())
            QThread::yieldCurrentThread();
        ++worked;
        noticed.release();
        question.answer([&] { heard.push_back(0); });
    });
    started.acquire();
    for (int n = 1; n <= 3; ++n)
        beside.ask([&worked, &heard, n](const Beside::Question& question) {
            ++worked;
            question.answer([&heard, n] { heard.push_back(n); });
        });
    QVERIFY(noticed.tryAcquire(1, patience));  // the one under way is told that it is late
    QTRY_VERIFY_WITH_TIMEOUT(!beside.isBusy(), patience);
    QCOMPARE(heard, std::vector<int>{3});
    QCOMPARE(worked, 2);  // those in between were never begun
}

void BesideTest::whatIsLeftGivesNoAnswer() {
    Beside beside;
    QSemaphore started, late;
    bool heard = false;
    beside.ask([&](const Beside::Question& question) {
        started.release();
        while (!question.isLate())
            QThread::yieldCurrentThread();
        question.tell([&] { heard = true; });
        question.answer([&] { heard = true; });
        late.release();
    });
    started.acquire();
    beside.leave();
    QVERIFY(!beside.isBusy());
    QVERIFY(late.tryAcquire(1, patience));
    QCoreApplication::processEvents();
    QVERIFY(!heard);
}

/// It was posted in time, but is heard too late.
void BesideTest::anAnswerThatIsUnderWayIsNotHeard() {
    Beside beside;
    QSemaphore posted;
    bool heard = false;
    beside.ask([&](const Beside::Question& question) {
        question.answer([&] { heard = true; });
        posted.release();
    });
    QVERIFY(posted.tryAcquire(1, patience));
    beside.leave();
    QCoreApplication::processEvents();
    QVERIFY(!heard);
}

void BesideTest::tellsInOrder() {
    Beside beside;
    QStringList heard;
    beside.ask([&](const Beside::Question& question) {
        for (const char* word : {"one", "two"})
            question.tell([&heard, &beside, word] { heard << QString(word) + (beside.isBusy() ? " busy" : ""); });
        question.answer([&] { heard << (beside.isBusy() ? "answer busy" : "answer"); });
        question.tell([&] { heard << "after"; });
    });
    QTRY_COMPARE_WITH_TIMEOUT(heard.size(), 4, patience);
    QCOMPARE(heard, QStringList({"one busy", "two busy", "answer", "after"}));
}

void BesideTest::whoHearsMayAskAgainOrGo() {
    auto beside = std::make_unique<Beside>();
    int answers = 0;
    beside->ask([&](const Beside::Question& first) {
        first.answer([&] {
            ++answers;
            beside->ask([&](const Beside::Question& second) {
                second.answer([&] {
                    ++answers;
                    beside.reset();
                });
            });
        });
    });
    QTRY_COMPARE_WITH_TIMEOUT(answers, 2, patience);
    QVERIFY(!beside);
}

void BesideTest::goingAwayWaits() {
    std::atomic<bool> isUsed = false;
    bool heard = false;
    for (int round = 0; round < 20; ++round) {
        QSemaphore started;
        {
            Beside beside;
            beside.ask([&](const Beside::Question& question) {
                isUsed = true;
                started.release();
                while (!question.isLate())
                    QThread::yieldCurrentThread();
                QThread::msleep(2);  // a step that does not ask
                question.answer([&] { heard = true; });
                isUsed = false;
            });
            if (round % 2 == 0) started.acquire();
        }
        QVERIFY(!isUsed);
    }
    QCoreApplication::processEvents();
    QVERIFY(!heard);
}

void BesideTest::goingAwayUnasked() {
    QElapsedTimer timer;
    timer.start();
    { Beside beside; }
    QVERIFY(timer.elapsed() < patience);
}

void BesideTest::keepsItsStore() {
    const support::Evening evening;
    const Location location = evening.store()->location();
    Beside beside;
    std::vector<Store*> stores;
    bool failed = false;
    const auto look = [&](bool close) {
        bool isDone = false;
        beside.ask([&, close](const Beside::Question& question) {
            const Result<Store*> store = question.store(location);
            const bool reads = store && (*store)->services(allRecords);
            if (close) question.closeStore();
            question.answer([&, store, reads] {
                failed |= !reads;
                if (store) stores.push_back(*store);
                isDone = true;
            });
        });
        return QTest::qWaitFor([&] { return isDone; }, patience);
    };
    QVERIFY(look(false) && look(true) && look(false));
    QVERIFY(!failed);
    QCOMPARE(stores.size(), size_t(3));
    QCOMPARE(stores[0], stores[1]);
    // One that is not there says why.
    Beside elsewhere;
    QString why;
    elsewhere.ask([&](const Beside::Question& question) {
        const Result<Store*> store = question.store({Location::Kind::Sqlite, "/nowhere/none.laneward", {}});
        question.answer([&, store] { why = store ? QString("found") : QString::fromLatin1(store.error().finding.rule); });
    });
    QTRY_VERIFY_WITH_TIMEOUT(!why.isEmpty(), patience);
    QVERIFY(why != "found");
}

QTEST_GUILESS_MAIN(BesideTest)
#include "tst_beside.moc"
