// The first start: the demo centre, a centre of one's own, and what stands in the way.
#include "app/window/centre_making.h"
#include "app/window/first_page.h"
#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/setup_form.h"
#include "core/base/clock.h"
#include "tests/support/evening.h"

#include <QFile>
#include <QFileInfo>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QStandardPaths>
#include <QTest>

using namespace laneward;

namespace {

constexpr Instant now{1'794'501'780};  // 2026-11-12T16:43:00Z

}  // namespace

class FirstStartTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void triesTheDemo();
    void setsUpACentre();
    void asksForWhatIsMissing();
    void keepsTheFirstCentreWhenASecondIsSetUp();
    void aNewCentreIsSound();
    void aCentreThatCannotBeMadeIsSaid();
    void theCentreThatWasOpenedLastIsKept();
    void whatIsTypedIsOpenedOrSaid();

private:
    void type(MainWindow& window, const QString& centre, const QString& person);

    FixedClock m_clock{now};
};

void FirstStartTest::initTestCase() {
    QStandardPaths::setTestModeEnabled(true);
    QCoreApplication::setApplicationName("laneward-first-start");
}

void FirstStartTest::init() {
    QFile::remove(demoCentrePath());
    for (const char* name : {"", "-2", "-3"})
        QFile::remove(QFileInfo(ownCentrePath()).path() + "/centre" + name + ".laneward");
}

void FirstStartTest::triesTheDemo() {
    for (int start = 0; start < 2; ++start) {  // the second time it is there already
        MainWindow window(m_clock);
        window.show();
        QTest::mouseClick(window.findChild<QPushButton*>("demo"), Qt::LeftButton);
        QTRY_VERIFY_WITH_TIMEOUT(window.workspace(), 60'000);
        QCOMPARE(window.workspace()->session().season().centre.facts.name, QString("Quillmarsh Bowl"));
        QCOMPARE(window.workspace()->session().season().centre.facts.lanes, 24);
        QVERIFY(!window.workspace()->session().planOf(window.workspace()->session().today()).jobs.empty());
    }
}

void FirstStartTest::type(MainWindow& window, const QString& centre, const QString& person) {
    window.show();
    window.firstPage()->showSetup();
    QList<QLineEdit*> fields;
    for (QLineEdit* edit : window.findChild<SetupForm*>()->findChildren<QLineEdit*>()) {
        if (!edit->parentWidget()->inherits("QAbstractSpinBox")) fields.append(edit);
    }
    fields[0]->setText(centre);
    fields.last()->setText(person);
    QTest::mouseClick(window.findChild<QPushButton*>("createCentre"), Qt::LeftButton);
}

void FirstStartTest::setsUpACentre() {
    MainWindow window(m_clock);
    type(window, "Teal Street <b>", "Ida");
    QVERIFY(window.workspace());
    Session& session = window.workspace()->session();
    QCOMPARE(session.season().centre.facts.name, QString("Teal Street <b>"));
    QVERIFY(session.planOf(session.today()).jobs.empty());
    QVERIFY(window.workspace()->pages().front()->headline().contains("no lane needs a treatment"));
    QTRY_VERIFY(window.workspace()->findChild<MessageBar*>()->text().contains("Ctrl+,"));
    QVERIFY(session.record("Note", {HandOver{{}, session.today(), session.now(), {}, "first", {}}}));
    QCOMPARE(session.person()->name, QString("Ida"));
}

void FirstStartTest::asksForWhatIsMissing() {
    MainWindow window(m_clock);
    type(window, "", "Ida");
    QVERIFY(!window.workspace());
    type(window, "Teal Street", "");
    QVERIFY(!window.workspace());
    type(window, "Teal Street", "Ida");
    QVERIFY(window.workspace());
}

void FirstStartTest::keepsTheFirstCentreWhenASecondIsSetUp() {
    for (const char* name : {"One", "Two", "Three"}) {
        MainWindow window(m_clock);
        type(window, name, "Ida");
        QCOMPARE(window.workspace()->session().season().centre.facts.name, QString(name));
    }
    MainWindow window(m_clock);
    QVERIFY(window.openCentre({Location::Kind::Sqlite, ownCentrePath(), {}}));
    QCOMPARE(window.workspace()->session().season().centre.facts.name, QString("One"));
}

void FirstStartTest::aNewCentreIsSound() {
    SetUp setUp;
    setUp.name = "Teal Street";
    setUp.zone = "Europe/Berlin";
    setUp.machines = {"A", "B"};
    setUp.person = "Ida";
    int n = 0;
    const SeasonState season = newCentre(setUp, [&n] { return QString::number(++n); });
    QVERIFY(faultsOf(season.centre).empty());
    for (const Pattern& pattern : season.patterns) {
        QVERIFY(faultsOf(pattern).empty());
        // (37x2 + 25x3 + 19x2 + 23x5 + 29x4 + 21x5) x 50 uL, by hand
        QCOMPARE(volumes(pattern).lane.value, std::int64_t{26'150});
    }
}

void FirstStartTest::aCentreThatCannotBeMadeIsSaid() {
    const Location location{Location::Kind::Sqlite, "/proc/nowhere/x.laneward", {}};
    QVERIFY(!makeCentre(location, {}, now));
    QVERIFY(!QFileInfo::exists(location.path));
}

void FirstStartTest::theCentreThatWasOpenedLastIsKept() {
    QSettings().remove("window/centre");
    QVERIFY(!keptCentre());
    support::Evening evening;
    {
        MainWindow window(m_clock);
        connect(&window, &MainWindow::centreOpened, &keepCentre);
        QVERIFY(window.openCentre(evening.location()));
        QVERIFY(keptCentre() && keptCentre()->path == evening.path());
        QVERIFY(!window.openCentre({Location::Kind::Sqlite, evening.path() + ".missing", {}}));
        QVERIFY(keptCentre() && keptCentre()->path == evening.path());
    }
    keepCentre({Location::Kind::Sqlite, demoCentrePath(), {}});
    QCOMPARE(keptCentre()->path, evening.path());
    const Location server = *Location::parse("postgresql://lanes@db.example:5433/club%20one");
    keepCentre(server);
    QVERIFY(keptCentre() && keptCentre()->server == server.server);
    for (const char* damaged : {"", "mysql://x/y", "postgresql://u:secret@h/db", "/nowhere/at/all.laneward"}) {
        QSettings().setValue("window/centre", damaged);
        QVERIFY2(!keptCentre(), damaged);
    }
    QSettings().remove("window/centre");
}

void FirstStartTest::whatIsTypedIsOpenedOrSaid() {
    support::Evening evening;
    MainWindow window(m_clock);
    window.show();
    for (const char* wrong :
         {"", "mysql://h/db", "postgresql://", "postgresql://u:secret@h/db", "postgresql://u@127.0.0.1:1/none"}) {
        QVERIFY2(!window.openTyped(wrong), wrong);
        QVERIFY(window.firstPage() && window.firstPage()->isVisible());
        QVERIFY(!window.workspace());
    }
    QVERIFY(window.openTyped(' ' + evening.path() + ' '));
    QVERIFY(window.workspace());
}

QTEST_MAIN(FirstStartTest)
#include "tst_first_start.moc"
