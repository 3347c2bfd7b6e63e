// The bar above a page that works something out: seen only when it takes longer than one notices, cancelled by its button or by
// the page, and what it says afterwards.
#include "app/edits/busy_bar.h"
#include "tests/support/looks.h"

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

using namespace laneward;

namespace {

constexpr int notNoticed = 60;  // ms; the bar waits for 200

struct Shown {
    Shown() : bar("Reading the book", "Read &on", &window) {
        window.resize(600, 60);
        bar.resize(600, 40);
        window.show();
    }
    template <class T>
    T* part(const char* name) {
        return bar.findChild<T*>(name);
    }

    QWidget window;
    BusyBar bar;
};

}  // namespace

class BusyBarTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void whatIsQuickIsNotSeen();
    void showsWhatTakesLong();
    void askingAgainAndAgainShowsItAll();
    void theButtonCancels();
    void saysWhyAndBeginsAgain();
};

void BusyBarTest::whatIsQuickIsNotSeen() {
    Shown shown;
    QVERIFY(!shown.bar.isVisible());
    shown.bar.begin();
    QVERIFY(shown.bar.isWorking());
    QTest::qWait(notNoticed);
    QVERIFY(!shown.bar.isVisible());
    shown.bar.end();
    QVERIFY(!QTest::qWaitFor([&] { return shown.bar.isVisible(); }, 300));
    QVERIFY(!shown.bar.isWorking());
    QVERIFY(!shown.bar.cancel());
}

void BusyBarTest::showsWhatTakesLong() {
    Shown shown;
    shown.bar.begin();
    QTRY_VERIFY(shown.bar.isVisible());
    auto* progress = shown.bar.findChild<QProgressBar*>();
    QVERIFY(progress->isVisible() && progress->maximum() == 0);  // it moves, and claims nothing
    QCOMPARE(progress->accessibleName(), QString("Reading the book"));
    shown.bar.setDone(0.4);
    QCOMPARE(progress->value() * 100 / progress->maximum(), 40);
    shown.bar.end();
    QVERIFY(!shown.bar.isVisible());
}

/// Questions that follow each other faster than one notices are one long wait to whoever waits.
void BusyBarTest::askingAgainAndAgainShowsItAll() {
    Shown shown;
    for (int n = 0; n < 8 && !shown.bar.isVisible(); ++n) {
        shown.bar.begin();
        QTest::qWait(notNoticed);
    }
    QVERIFY(shown.bar.isVisible());
    shown.bar.begin();
    QVERIFY(shown.bar.isVisible());  // and it does not blink
}

void BusyBarTest::theButtonCancels() {
    Shown shown;
    QSignalSpy cancelled(&shown.bar, &BusyBar::cancelled);
    shown.bar.begin();
    QVERIFY(shown.bar.cancel());  // Esc, before it is seen
    QCOMPARE(cancelled.size(), 1);
    QTRY_VERIFY(shown.bar.isVisible());
    auto* button = shown.part<QPushButton>("cancelWork");
    QVERIFY(button->isVisible() && button->minimumHeight() >= 28 && button->accessibleName().contains("Reading the book"));
    QTest::mouseClick(button, Qt::LeftButton);
    QCOMPARE(cancelled.size(), 2);
}

void BusyBarTest::saysWhyAndBeginsAgain() {
    Shown shown;
    QSignalSpy again(&shown.bar, &BusyBar::againWanted);
    shown.bar.begin();
    shown.bar.stop("Stopped: <b>half</b> of it is known.");
    QVERIFY(shown.bar.isVisible() && !shown.bar.isWorking());
    QVERIFY(!shown.bar.findChild<QProgressBar*>()->isVisible());
    QCOMPARE(shown.bar.why(), QString("Stopped: <b>half</b> of it is known."));
    QCOMPARE(shown.part<QLabel>("whyStopped")->textFormat(), Qt::PlainText);
    auto* button = shown.part<QPushButton>("workAgain");
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Space);
    QCOMPARE(again.size(), 1);
    shown.bar.begin();
    QVERIFY(!shown.bar.isVisible() && shown.bar.why().isEmpty());
    shown.bar.end();
    QVERIFY(!shown.bar.isVisible());
}

QTEST_MAIN(BusyBarTest)
#include "tst_busy_bar.moc"
