// The window: opening and refusing centres, rail, menus, search, messages, the person, other PCs, and a locked file.
#include "app/widgets/shades.h"
#include "app/window/exchange.h"
#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/search.h"
#include "app/window/style.h"
#include "core/storage/database.h"
#include "tests/support/evening.h"
#include "tests/support/temporary_centre.h"

#include <QAction>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QSet>
#include <QTest>
#include <QTimer>
#include <QToolButton>

using namespace laneward;

namespace {

QAction* actionOf(const QMainWindow& window, const QString& text) {
    for (QAction* top : window.menuBar()->actions()) {
        if (!top->menu()) continue;
        for (QAction* action : top->menu()->actions()) {
            if (action->text().remove('&') == text) return action;
        }
    }
    return nullptr;
}

/// Chooses the second person of the list that opens within the next record.
void answerWith(const QMainWindow& window, int row) {
    QTimer::singleShot(0, &window, [&window, row] {
        auto* menu = window.findChild<QMenu*>("people");
        if (menu) QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(menu->actions().value(row)).center());
    });
}

}  // namespace

class WindowTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void opensACentre();
    void refusesWhatIsNotACentre();
    void writesNothingIntoAFileThatTurnsOutDamaged();
    void keepsTheCentreWhenAnotherCannotBeOpened();
    void railAndKeysChangeThePage();
    void mnemonicsAndShortcutsAreUnique();
    void undoIsNamedInTheMenu();
    void thePersonIsAskedAtTheFirstRecord();
    void searchFindsEventsAndLanes();
    void problemsStandInThePage();
    void sheetOpensAndCloses();
    void shopSettingMakesTargetsLarge();
    void selectedTextReads();
    void calendarsGoOutAndComeBack();
    void tablesComeIn();
    void brokenFilesChangeNothing();
    void aLongSearchIsShown();
};

void WindowTest::aLongSearchIsShown() {
    support::Evening evening;
    MainWindow window(evening.clock);
    window.show();
    QVERIFY(window.openCentre(evening.location()));
    const auto* searching = window.findChild<QLabel*>("searching");
    Session& session = window.workspace()->session();
    Q_EMIT session.searching(true);
    QVERIFY(!searching->isVisible());  // not for what is over before one notices
    QTRY_VERIFY(searching->isVisible());
    Q_EMIT session.searching(false);
    QVERIFY(!searching->isVisible());
    Q_EMIT session.searching(true);
    QTRY_VERIFY(searching->isVisible());
    QVERIFY(window.openCentre(evening.location()));  // another centre is not being searched
    QVERIFY(!searching->isVisible());
}

void WindowTest::opensACentre() {
    support::Evening evening;
    MainWindow window(evening.clock);
    window.show();
    QVERIFY(window.firstPage());
    QVERIFY(window.openCentre(evening.location()));
    QVERIFY(!window.firstPage());
    QCOMPARE(window.findChild<QLabel*>("centreName")->text(), QString("Reedling Lanes"));
    QVERIFY(window.windowTitle().contains("Reedling Lanes"));
    QVERIFY(!window.findChild<QLabel*>("readOnly")->isVisible());
    QCOMPARE(window.workspace()->pages().size(), size_t(7));
}

void WindowTest::refusesWhatIsNotACentre() {
    support::Evening evening;
    const QString path = evening.path() + ".txt";
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly) && file.write("hello, this is not a database at all") > 0);
    file.close();
    MainWindow window(evening.clock);
    window.show();
    for (const QString& wrong : {path, evening.path() + ".missing", QString("/")}) {
        QVERIFY(!window.openCentre({Location::Kind::Sqlite, wrong, {}}));
        const auto* said = window.findChild<QLabel*>("problem");
        QVERIFY(said->isVisible() && said->text().contains(wrong));
    }
}

/// The first page does not wait until all of a file was read; what then turns out to be broken is said.
void WindowTest::writesNothingIntoAFileThatTurnsOutDamaged() {
    support::Evening evening;
    QByteArray bytes;
    {
        const auto store = Store::open(evening.location(), Access::ReadWrite);
        const int page = (*store)->database().value("SELECT rootpage FROM sqlite_master WHERE name = 'stock_counts'")->toInt();
        QVERIFY((*store)->database().value("PRAGMA wal_checkpoint(TRUNCATE)"));
        bytes = support::bytesOf(evening.path());
        constexpr qsizetype pageSize = 4'096;
        bytes[(page - 1) * pageSize + 4] = 9;  // so many cells, in an empty page: no start of the window reads it
    }
    support::writeBytes(evening.path(), bytes);
    MainWindow window(evening.clock);
    window.show();
    QVERIFY(window.openCentre(evening.location()));
    Session& session = window.workspace()->session();
    const auto* bar = window.findChild<MessageBar*>();
    // It looks every few seconds, and hears at the next look.
    QTRY_VERIFY_WITH_TIMEOUT(bar->text().contains("damaged") && bar->text().contains("Restore a backup"), 30'000);
    session.setPerson(session.season().centre.people.front().id);
    QVERIFY(!session.record("Note", {HandOver{{}, session.today(), session.now(), {}, "first", {}}}));
    QVERIFY(bar->text().contains("damaged"));
    QVERIFY(support::bytesOf(evening.path()) == bytes);
}

void WindowTest::keepsTheCentreWhenAnotherCannotBeOpened() {
    support::Evening evening;
    MainWindow window(evening.clock);
    QVERIFY(window.openCentre(evening.location()));
    window.show();
    QVERIFY(!window.openCentre({Location::Kind::Sqlite, "/nowhere", {}}));
    QVERIFY(window.workspace());
    QVERIFY(window.findChild<MessageBar*>()->text().contains("/nowhere"));
    QCOMPARE(window.workspace()->session().season().centre.facts.name, QString("Reedling Lanes"));
}

void WindowTest::railAndKeysChangeThePage() {
    support::Evening evening;
    MainWindow window(evening.clock);
    QVERIFY(window.openCentre(evening.location()));
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    Workspace& workspace = *window.workspace();
    for (const auto& [key, name] :
         {std::pair(Qt::Key_2, "calendar"), std::pair(Qt::Key_3, "lanes"), std::pair(Qt::Key_1, "today")}) {
        QTest::keyClick(&window, key, Qt::ControlModifier);
        QCOMPARE(workspace.currentPage()->iconName(), QString(name));
        QVERIFY(workspace.currentPage()->isVisible());
        QCOMPARE(window.findChild<QLabel*>("headline")->text(), workspace.currentPage()->headline());
    }
    QTest::mouseClick(window.findChild<QToolButton*>("pagelanes"), Qt::LeftButton);
    QCOMPARE(workspace.currentPage()->iconName(), QString("lanes"));
}

void WindowTest::mnemonicsAndShortcutsAreUnique() {
    support::Evening evening;
    MainWindow window(evening.clock);
    QVERIFY(window.openCentre(evening.location()));
    const auto mnemonic = [](const QString& text) { return QKeySequence::mnemonic(text).toString(); };
    QSet<QString> tops;
    QSet<QString> shortcuts;
    for (QAction* top : window.menuBar()->actions()) {
        QVERIFY2(!tops.contains(mnemonic(top->text())), qPrintable(top->text()));
        tops.insert(mnemonic(top->text()));
        QSet<QString> within;
        for (QAction* action : top->menu()->actions()) {
            const QString letter = mnemonic(action->text());
            QVERIFY2(letter.isEmpty() || !within.contains(letter), qPrintable(action->text()));
            within.insert(letter);
            for (const QKeySequence& keys : action->shortcuts()) {
                QVERIFY2(!shortcuts.contains(keys.toString()), qPrintable(action->text()));
                shortcuts.insert(keys.toString());
            }
        }
    }
}

void WindowTest::undoIsNamedInTheMenu() {
    support::Evening evening;
    MainWindow window(evening.clock);
    QVERIFY(window.openCentre(evening.location()));
    Session& session = window.workspace()->session();
    session.setPerson({"ada"});
    QVERIFY(session.slip({"open"}, {QDate(2026, 11, 12), QTime(14, 0)}, minutes(10)));
    QAction* undo = actionOf(window, "Undo Open play plays 10 min longer");
    QVERIFY(undo && undo->isEnabled());
    undo->trigger();
    QAction* redo = actionOf(window, "Redo Open play plays 10 min longer");
    QVERIFY(redo && redo->isEnabled());
    QVERIFY(window.findChild<QLabel*>("centreName")->text().contains("saved 16:43"));
}

void WindowTest::thePersonIsAskedAtTheFirstRecord() {
    support::Evening evening;
    MainWindow window(evening.clock);
    QVERIFY(window.openCentre(evening.location()));
    window.show();
    QVERIFY(QTest::qWaitForWindowExposed(&window));
    Session& session = window.workspace()->session();
    answerWith(window, 1);
    QVERIFY(session.record("Note", {HandOver{{}, session.today(), session.now(), {}, "one", {}}}));
    QCOMPARE(session.person()->id.value, QString("ben"));
    QCOMPARE(window.findChild<QPushButton*>("person")->text(), QString("Ben && Co <b>"));
    QVERIFY(session.record("Note", {HandOver{{}, session.today(), session.now(), {}, "two", {}}}));
    for (const HandOver& note : session.season().handOvers)
        QCOMPARE(note.person.value, QString("ben"));
}

void WindowTest::searchFindsEventsAndLanes() {
    const SeasonState season = support::eveningSeason();
    const Speech speech{QLocale::c(), zoneOf(season.centre), UnitSystem::Metric};
    const Occupancy near = occupancyOf(season.series, season.centre, {QDate(2026, 11, 12), QDate(2026, 12, 10)});
    const auto events = findIn("FOURS", season, near, speech);
    QCOMPARE(events.size(), size_t(1));
    QCOMPARE(events.front().series.value, QString("league"));
    QCOMPARE(events.front().day, QDate(2026, 11, 12));
    const auto lanes = findIn("7", season, near, speech);
    QCOMPARE(*lanes.front().lane, 7);
    QVERIFY(findIn("13", season, near, speech).empty());
    QVERIFY(findIn("  ", season, near, speech).empty());

    support::Evening evening;
    MainWindow window(evening.clock);
    QVERIFY(window.openCentre(evening.location()));
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    QTest::keyClick(&window, Qt::Key_F, Qt::ControlModifier);
    auto* search = window.findChild<Search*>();
    QVERIFY(search->hasFocus());
    QTest::keyClicks(search, "fours");
    QTest::keyClick(search, Qt::Key_Return);
    QCOMPARE(window.workspace()->currentPage()->iconName(), QString("calendar"));
    QVERIFY(search->text().isEmpty());
}

void WindowTest::problemsStandInThePage() {
    support::Evening evening;
    MainWindow window(evening.clock);
    QVERIFY(window.openCentre(evening.location()));
    window.show();
    Session& mine = window.workspace()->session();
    mine.setPerson({"ada"});
    Session theirs(evening.store(), evening.clock);
    theirs.setPerson({"ben"});
    const LocalTime original{QDate(2026, 11, 12), QTime(14, 0)};
    QVERIFY(theirs.slip({"open"}, original, minutes(10)));
    QVERIFY(!mine.slip({"open"}, original, minutes(20)));
    QVERIFY(window.findChild<MessageBar*>()->text().contains("Ben"));
    QVERIFY(mine.slip({"open"}, original, minutes(20)));
    QVERIFY(window.findChild<MessageBar*>()->text().isEmpty());
}

void WindowTest::sheetOpensAndCloses() {
    support::Evening evening;
    MainWindow window(evening.clock);
    QVERIFY(window.openCentre(evening.location()));
    window.show();
    window.workspace()->showSheet(window.workspace()->session().today());
    auto* close = window.findChild<QPushButton*>("closeSheet");
    QVERIFY(close->isVisible());
    QTest::mouseClick(close, Qt::LeftButton);
    QVERIFY(window.workspace()->currentPage()->isVisible());
}

void WindowTest::shopSettingMakesTargetsLarge() {
    applyStyle(TargetSize::Shop);
    QPushButton button("Record");
    QLineEdit edit;
    QVERIFY(button.sizeHint().height() >= 44 && edit.sizeHint().height() >= 44);
    applyStyle(TargetSize::Usual);
    QPushButton usual("Record");
    QVERIFY(usual.sizeHint().height() >= 24 && usual.sizeHint().height() < 44);
}

void WindowTest::selectedTextReads() {
    QPalette dim;
    dim.setColor(QPalette::Highlight, QColor(160, 190, 220));
    dim.setColor(QPalette::HighlightedText, QColor(255, 255, 255));
    QVERIFY(contrast(QColor(160, 190, 220), QColor(255, 255, 255)) < textContrast);
    for (const QPalette& palette : {readablePalette(dim), readablePalette(QPalette())}) {
        for (auto group : {QPalette::Active, QPalette::Inactive}) {
            QVERIFY(contrast(palette.color(group, QPalette::Highlight), palette.color(group, QPalette::HighlightedText)) >=
                    textContrast);
            QVERIFY(contrast(palette.color(group, QPalette::Base), palette.color(group, QPalette::PlaceholderText)) >=
                    textContrast);
        }
    }
}

void WindowTest::calendarsGoOutAndComeBack() {
    support::Evening evening;
    Session session(evening.store(), evening.clock);
    session.setPerson({"ada"});
    const QString path = evening.path() + ".ics";
    QVERIFY(exportTo(session, path, false));
    const Result<IcsContents> read = readEvents(session, path, {});
    QVERIFY(read);
    QCOMPARE(read->series.size(), size_t(2));
    QVERIFY(importChanges(session.season(), read->series).empty());
    Series moved = read->series.front();
    moved.title = "Moved";
    const std::vector<Change> changes = importChanges(session.season(), {moved, read->series.back()});
    QCOMPARE(changes.size(), size_t(1));
    QVERIFY(session.apply("Import", changes));
    session.undoStack().undo();
    QVERIFY(importChanges(session.season(), read->series).empty());
    for (const char* name : {".json", ".csv", ".jobs.ics"})
        QVERIFY(exportTo(session, evening.path() + name, true));
    QVERIFY(!exportTo(session, evening.path() + ".xyz", true));
    QVERIFY(!exportTo(session, "/nowhere/x.ics", true));
}

void WindowTest::tablesComeIn() {
    support::Evening evening;
    Session session(evening.store(), evening.clock);
    session.setPerson({"ada"});
    const QString path = evening.path() + ".csv";
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write("title,date,start,lanes\r\nQuiz night,2026-11-20,19:00,1-4\r\n");
    file.close();
    const Result<std::vector<Change>> changes = csvChanges(session, path);
    QVERIFY2(changes, changes ? "" : qPrintable(text(changes.error(), session.speech())));
    QCOMPARE(changes->size(), size_t(1));
    QVERIFY(session.apply("Import", *changes));
    QCOMPARE(session.season().series.size(), size_t(3));
}

void WindowTest::brokenFilesChangeNothing() {
    support::Evening evening;
    Session session(evening.store(), evening.clock);
    const std::int64_t before = *session.store().changeCounter();
    for (const QByteArray& bytes :
         {QByteArray("BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\n"), QByteArray("\0\0\0", 3), QByteArray("title;x\r\n\"open")}) {
        const QString path = evening.path() + ".broken";
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly | QIODevice::Truncate) && file.write(bytes) == bytes.size());
        file.close();
        QVERIFY(!readEvents(session, path, {}));
        QVERIFY(!csvChanges(session, path));
    }
    QVERIFY(!readEvents(session, "/nowhere.ics", {}));
    QVERIFY(!csvChanges(session, "/"));
    QCOMPARE(*session.store().changeCounter(), before);
}

QTEST_MAIN(WindowTest)
#include "tst_window.moc"
