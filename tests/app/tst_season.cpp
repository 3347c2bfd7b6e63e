// The season on the Lanes page: every day with its figures, where it is tight, and what it would be if something were otherwise.
#include "app/pages/lanes/lanes_page.h"
#include "app/pages/lanes/season_form.h"
#include "app/pages/lanes/season_panel.h"
#include "app/pages/lanes/season_view.h"
#include "app/widgets/date_bar.h"
#include "tests/support/demo_session.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>
#include <QToolButton>
#include <QTranslator>

using namespace laneward;

namespace {

constexpr int patience = 120'000;  // milliseconds: a year is planned beside everything else that a machine under test does

const QDate today{2026, 11, 12};

template <class T>
T* named(const QWidget& parent, const QString& name) {
    for (T* child : parent.findChildren<T*>()) {
        if (child->accessibleName() == name) return child;
    }
    return nullptr;
}

QCheckBox* tick(const QWidget& parent, const QString& text) {
    for (QCheckBox* box : parent.findChildren<QCheckBox*>()) {
        if (box->text().remove('&').startsWith(text)) return box;
    }
    return nullptr;
}

void choose(const QWidget& page, const QString& level) {
    for (QToolButton* button : page.findChild<DateBar*>()->findChildren<QToolButton*>()) {
        if (button->accessibleName() == level) return QTest::mouseClick(button, Qt::LeftButton);
    }
    qFatal("no level %s", qPrintable(level));
}

}  // namespace

class SeasonTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void theHeadlineSaysWhereItIsTight();
    void everyDayHasItsFigures();
    void daysAreWalkedByKey();
    void aDayOpens();
    void tournamentsMore();
    void aMachineOut();
    void whatCannotBeReadIsSaid();
    void aNewerQuestionWins();
    void edgesOfTheSeasonAreAskedAgain();
    void hardDaysAreMarked();
    void pictures_data();
    void pictures();

private:
    SeasonView& view() const { return *m_page->findChild<SeasonView*>(); }
    SeasonPanel& panel() const { return *m_page->findChild<SeasonPanel*>(); }
    QString figure(const QString& row, const QString& column) const;

    QTranslator m_english;
    std::unique_ptr<support::Evening> m_evening;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<LanesPage> m_page;
};

void SeasonTest::initTestCase() {
    QVERIFY(m_english.load("laneward_en", qEnvironmentVariable("LANEWARD_BINARY", ".")));
    QApplication::installTranslator(&m_english);  // for its plural forms
}

void SeasonTest::init() {
    QLocale::setDefault(QLocale("en_GB"));
    m_evening = std::make_unique<support::Evening>();
    m_session = support::sessionOn(*m_evening);
    m_page = std::make_unique<LanesPage>(*m_session);
    m_page->resize(1150, 660);
    m_page->show();
    choose(*m_page, "Year");
    QVERIFY(view().isVisible());
    QTRY_VERIFY_WITH_TIMEOUT(!panel().isBusy(), patience);
    QCOMPARE(view().blockCount(), 365);
}

void SeasonTest::cleanup() {
    m_page.reset();
    m_session.reset();
}

/// A figure of the comparison, "" when it is not shown.
QString SeasonTest::figure(const QString& row, const QString& column) const {
    for (QLabel* label : panel().findChildren<QLabel*>()) {
        const QString name = QString("%1, %2: ").arg(row, column);
        if (label->isVisible() && label->accessibleName().startsWith(name)) return label->text();
    }
    return {};
}

void SeasonTest::theHeadlineSaysWhereItIsTight() {
    // One league a week behind open play that ends two hours before: never tight, and the narrowest day is a Thursday.
    QVERIFY2(m_page->headline().startsWith("No day of the season is tight; the narrowest is Thursday"),
             qPrintable(m_page->headline()));
}

void SeasonTest::everyDayHasItsFigures() {
    const Plan plan = laneward::plan(m_session->planningState(), m_session->now(), {today, today.addDays(364)});
    const SeasonFigures expected = seasonFigures(m_session->planningState(), plan);
    QVERIFY(expected.total.treatments >= 52 * 8);
    for (int i = 0; i < view().blockCount(); ++i) {
        QCOMPARE(view().dayOf(i), today.addDays(i));
        QVERIFY(view().season().days[size_t(i)].work == expected.days[size_t(i)].work);
    }
    const SeasonDay& day = expected.days.front();
    const QString said = view().block(0).spoken;
    for (const QString& words : {QString("Thursday"), QString("12 November"), spareText(day.work, m_session->speech()),
                                 amountText(day.work.conditioner, m_session->speech()), QString("8 lane")})
        QVERIFY2(said.contains(words), qPrintable(words + " not in " + said));
}

void SeasonTest::daysAreWalkedByKey() {
    view().setFocus();
    QCOMPARE(view().dayOf(view().current()), today);
    QTest::keyClick(&view(), Qt::Key_Down);
    QCOMPARE(view().dayOf(view().current()), today.addDays(7));
    QTest::keyClick(&view(), Qt::Key_Right);
    QCOMPARE(view().dayOf(view().current()), today.addDays(8));
    QTest::keyClick(&view(), Qt::Key_End);
    QCOMPARE(view().dayOf(view().current()), today.addDays(364));
    QVERIFY(view().viewport()->rect().contains(view().blockRect(view().current())));
    QTest::keyClick(&view(), Qt::Key_Home);
    QVERIFY(view().viewport()->rect().contains(view().blockRect(view().current())));
    bool shown = false;
    for (QLabel* label : panel().findChildren<QLabel*>())
        shown |= label->text().startsWith("Thursday, 12 November 2026: ") && label->text().contains("machine time");
    QVERIFY(shown);
}

void SeasonTest::aDayOpens() {
    QSignalSpy wanted(&panel(), &SeasonPanel::dayWanted);
    view().setCurrentDay(today.addDays(14));
    view().setFocus();
    QTest::keyClick(&view(), Qt::Key_Return);
    QCOMPARE(wanted.count(), 1);
    QVERIFY(!view().isVisible());
    QVERIFY(m_page->findChild<HouseView*>()->isVisible());
    QVERIFY2(m_page->headline().contains("26 November"), qPrintable(m_page->headline()));
    QCOMPARE(m_page->findChild<DateBar*>()->level(), 0);
    choose(*m_page, "Year");
    QVERIFY(view().isVisible());
    QCOMPARE(view().dayOf(view().current()), today.addDays(14));
}

void SeasonTest::tournamentsMore() {
    const int before = int(m_session->season().series.size());
    tick(panel(), "Tournaments")->setChecked(true);
    named<QSpinBox>(panel(), "Number of tournaments")->setValue(3);
    named<QLineEdit>(panel(), "Lanes of the tournaments")->setText("1-6");
    QTRY_VERIFY_WITH_TIMEOUT(!panel().isBusy() && !figure("Lanes treated", "Then").isEmpty(), patience);
    QCOMPARE(figure("Lanes treated", "More"), QString("+18"));
    const int now = figure("Lanes treated", "Now").toInt();
    QCOMPARE(figure("Lanes treated", "Then").toInt(), now + 18);
    QVERIFY(figure("Conditioner", "More").startsWith('+'));
    QVERIFY(figure("Machine time", "More").startsWith('+'));
    QCOMPARE(figure("Unmet", "More"), QString("±0"));
    QCOMPARE(int(m_session->season().series.size()), before);
    QCOMPARE(m_session->undoStack().count(), 0);
    QVERIFY(support::picture(*m_page, "season_question"));
    tick(panel(), "Tournaments")->setChecked(false);
    QTRY_VERIFY_WITH_TIMEOUT(figure("Lanes treated", "Then").isEmpty(), patience);
}

void SeasonTest::aMachineOut() {
    tick(panel(), "A machine")->setChecked(true);
    named<QSpinBox>(panel(), "Days out of service")->setValue(7);
    QTRY_VERIFY_WITH_TIMEOUT(!panel().isBusy() && !figure("Unmet", "Then").isEmpty(), patience);
    QCOMPARE(figure("Unmet", "More"), QString("+8"));  // one Thursday of eight lanes
    QCOMPARE(figure("Tight days", "More"), QString("+1"));
    QVERIFY(m_session->season().centre.outages.empty());
}

void SeasonTest::whatCannotBeReadIsSaid() {
    tick(panel(), "Tournaments")->setChecked(true);
    named<QLineEdit>(panel(), "Lanes of the tournaments")->setText("1-99");
    bool said = false;
    QTRY_VERIFY_WITH_TIMEOUT(!panel().isBusy() && !figure("Lanes treated", "More").isEmpty(), patience);
    for (QLabel* label : panel().findChildren<QLabel*>())
        said |= label->isVisible() && label->text().startsWith("Lanes are written as in");
    QVERIFY(said);
    QCOMPARE(figure("Lanes treated", "More"), QString("±0"));
}

void SeasonTest::aNewerQuestionWins() {
    SeasonAsker asker;
    QSignalSpy answers(&asker, &SeasonAsker::answered);
    const DateRange days{today, today.addDays(27)};
    SeasonFigures last;
    connect(&asker, &SeasonAsker::answered, this, [&](const SeasonFigures& season) { last = season; });
    asker.ask(m_session->planningState(), m_session->now(), {today, today.addDays(200)});
    asker.ask(m_session->planningState(), m_session->now(), days);
    QTRY_COMPARE_WITH_TIMEOUT(answers.count(), 1, patience);
    QCOMPARE(last.days.size(), size_t(28));
    asker.ask(m_session->planningState(), m_session->now(), days);
    asker.leave();
    QVERIFY(!asker.isBusy());
    asker.ask(m_session->planningState(), m_session->now(), {today, today.addDays(6)});
    QTRY_COMPARE_WITH_TIMEOUT(answers.count(), 2, patience);  // what was left alone never answers
    QCOMPARE(last.days.size(), size_t(7));
}

void SeasonTest::edgesOfTheSeasonAreAskedAgain() {
    const int before = int(view().season().total.treatments);
    const auto& all = m_session->season().series;
    const Series league = *std::find_if(all.begin(), all.end(), [](const Series& s) { return s.id.value == "league"; });
    Series gone = league;
    gone.cancelled = true;
    QVERIFY(m_session->apply("Cancel", {RowChange<Series>{league, gone}}));
    m_page->refresh();
    QVERIFY(panel().isBusy());
    QVERIFY2(m_page->headline().contains("being planned"), qPrintable(m_page->headline()));
    QTRY_VERIFY_WITH_TIMEOUT(!panel().isBusy(), patience);
    QVERIFY(before > 0);
    QCOMPARE(int(view().season().total.treatments), 0);
    QVERIFY2(m_page->headline().startsWith("No lane needs a treatment"), qPrintable(m_page->headline()));
}

void SeasonTest::hardDaysAreMarked() {
    SeasonFigures season;
    for (int i = 0; i < 28; ++i) {
        SeasonDay day{today.addDays(i), {}};
        day.work.days = day.work.proven = 1;
        if (i % 7 != 3) {
            day.work.treatments = 8 + i;
            day.work.spare = minutes(5 * i);
        }
        if (i == 5) day.work.spare = -minutes(7);
        if (i == 8) day.work.unmet = 4;
        if (i == 11) day.work.late = 1;
        season.days.push_back(day);
    }
    SeasonView made;
    made.resize(820, 320);
    made.setSeason(season, m_session->speech());
    made.show();
    QVERIFY(made.block(8).spoken.contains("4 demand") && made.block(11).spoken.contains("late"));
    QVERIFY(made.block(5).spoken.contains("tight by 7 min"));
    QVERIFY(made.block(3).spoken.contains("nothing to do"));
    // Longer bars stand for more time: count the ink of two days.
    QVERIFY(support::picture(made, "season_marks"));
    const QImage image = made.viewport()->grab().toImage();
    const auto ink = [&](int day) {
        const QRect cell = made.blockRect(day);
        int dots = 0;
        for (int x = cell.left() + 3; x < cell.right() - 3; ++x)
            dots += image.pixel(x, cell.bottom() - 5) == shadesOf(made.palette()).job.rgb() ? 1 : 0;
        return dots;
    };
    QVERIFY2(ink(12) > ink(6) + 10 && ink(26) >= ink(25), qPrintable(QString("%1 %2").arg(ink(12)).arg(ink(6))));
}

void SeasonTest::pictures_data() {
    QTest::addColumn<QString>("look");
    for (const char* look : {"light", "dark", "contrast", "german", "mirrored"})
        QTest::newRow(look) << look;
}

void SeasonTest::pictures() {
    QFETCH(QString, look);
    const QPalette usual = QApplication::palette();
    QTranslator german;
    if (look == "dark") QApplication::setPalette(support::darkPalette());
    if (look == "contrast") QApplication::setPalette(support::contrastPalette());
    if (look == "german") {
        QVERIFY(german.load("laneward_de", qEnvironmentVariable("LANEWARD_BINARY", ".")));
        QApplication::installTranslator(&german);
        QLocale::setDefault(QLocale("de_DE"));
    }
    static support::DemoSession demo;
    LanesPage page(demo.session());
    if (look == "mirrored") page.setLayoutDirection(Qt::RightToLeft);
    page.resize(1150, 640);
    page.show();
    choose(page, look == "german" ? "Jahr" : "Year");
    auto* season = page.findChild<SeasonPanel*>();
    QTRY_VERIFY_WITH_TIMEOUT(!season->isBusy(), patience);
    page.findChild<SeasonView*>()->setCurrentDay(today.addDays(2));
    page.findChildren<QCheckBox*>().front()->setChecked(true);
    QTRY_VERIFY_WITH_TIMEOUT(!season->isBusy(), patience);
    QVERIFY(support::picture(page, "season_demo_" + look));
    for (QWidget* field : season->findChildren<QWidget*>()) {
        if (!field->isVisible() || !(field->focusPolicy() & Qt::TabFocus) || qobject_cast<QScrollArea*>(field)) continue;
        if (qobject_cast<QLineEdit*>(field) && !field->accessibleName().size()) continue;  // inside a spin box
        QVERIFY2(field->height() >= 24, qPrintable(field->accessibleName()));
        const bool named = !field->accessibleName().isEmpty() || qobject_cast<QAbstractButton*>(field);
        QVERIFY2(named, field->metaObject()->className());
    }
    QApplication::removeTranslator(&german);
    QApplication::setPalette(usual);
}

QTEST_MAIN(SeasonTest)
#include "tst_season.moc"
