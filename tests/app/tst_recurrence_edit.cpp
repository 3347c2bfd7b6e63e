// Recurrence in words: to and from rules without changing a single date, moving whole series, and the widget that asks for it.
#include "app/edits/series_edits.h"
#include "app/pages/calendar/recurrence_edit.h"
#include "core/calendar/recurrence.h"
#include "tests/support/looks.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>

#include <random>

using namespace laneward;

using Form = RecurrenceChoice::Form;
using End = RecurrenceChoice::End;

namespace {

const DateRange threeYears{QDate(2026, 1, 1), QDate(2028, 12, 31)};

Zone london() { return *Zone::load("Europe/London"); }

std::vector<LocalTime> datesOfRule(const QString& rule, const LocalTime& start) {
    const Result<Rule> parsed = parseRule(rule, london());
    if (!parsed) qFatal("%s", qPrintable(rule));
    return datesOf(*parsed, start, threeYears).starts;
}

LocalTime evening(int year, int month, int day) { return {QDate(year, month, day), QTime(18, 30)}; }

Series weekly(const QString& rule, const LocalTime& start) {
    Series series;
    series.id = {"fours"};
    series.title = "Thursday Fours";
    series.zone = "Europe/London";
    series.start = start;
    series.duration = hours(3);
    series.rule = rule;
    series.lanes = LaneSet::range(1, 12);
    return series;
}

std::vector<LocalTime> datesOfSeries(const Series& series) { return startsOf(series, threeYears)->starts; }

Speech speech() {
    Speech s;
    s.locale = QLocale(QLocale::English, QLocale::UnitedKingdom);
    s.zone = london();
    return s;
}

template <class T>
T* named(QWidget& parent, const QString& name) {
    for (T* child : parent.findChildren<T*>()) {
        if (child->accessibleName() == name || child->property("text").toString().remove('&') == name) return child;
    }
    qFatal("no %s", qPrintable(name));
}

}  // namespace

class RecurrenceEditTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void rulesBecomeWords_data();
    void rulesBecomeWords();
    void whatWordsCannotSayIsKept_data();
    void whatWordsCannotSayIsKept();
    void randomRulesKeepTheirDates();
    void oneDateMoves();
    void aMoveBackLeavesNoTrace();
    void wholeSeriesMove_data();
    void wholeSeriesMove();
    void whatCannotFollowSaysSo();
    void exceptionsGoWithTheSeries();
    void datesAreCancelledAndRestored();
    void theWidgetGivesBackWhatItGot_data();
    void theWidgetGivesBackWhatItGot();
    void theWidgetMakesRules();
    void datesAreLeftOutAndPutBack();
};

void RecurrenceEditTest::rulesBecomeWords_data() {
    QTest::addColumn<QString>("rule");
    QTest::addColumn<LocalTime>("start");
    QTest::addColumn<int>("form");
    QTest::addColumn<int>("every");
    QTest::addColumn<int>("end");
    const LocalTime thursday = evening(2026, 11, 12);
    QTest::newRow("once") << "" << thursday << int(Form::Once) << 1 << int(End::Never);
    QTest::newRow("daily") << "FREQ=DAILY" << thursday << int(Form::Daily) << 1 << int(End::Never);
    QTest::newRow("every third day") << "freq=daily;interval=3;count=7" << thursday << int(Form::Daily) << 3
                                     << int(End::AfterTimes);
    QTest::newRow("weekly") << "FREQ=WEEKLY" << thursday << int(Form::Weekly) << 1 << int(End::Never);
    QTest::newRow("thursdays") << "FREQ=WEEKLY;BYDAY=TH;COUNT=30" << thursday << int(Form::Weekly) << 1 << int(End::AfterTimes);
    QTest::newRow("two days") << "FREQ=WEEKLY;INTERVAL=2;BYDAY=TH,TU;UNTIL=20270325" << thursday << int(Form::Weekly) << 2
                              << int(End::OnDate);
    QTest::newRow("week start, one day") << "FREQ=WEEKLY;INTERVAL=2;BYDAY=TH;WKST=SU" << thursday << int(Form::Weekly) << 2
                                         << int(End::Never);
    QTest::newRow("working days") << "FREQ=DAILY;BYDAY=MO,TU,WE,TH,FR;COUNT=12" << thursday << int(Form::Weekly) << 1
                                  << int(End::AfterTimes);
    QTest::newRow("on the 12th") << "FREQ=MONTHLY;BYMONTHDAY=12" << thursday << int(Form::MonthlyOnDate) << 1 << int(End::Never);
    QTest::newRow("monthly") << "FREQ=MONTHLY;INTERVAL=3" << thursday << int(Form::MonthlyOnDate) << 3 << int(End::Never);
    QTest::newRow("second Thursday") << "FREQ=MONTHLY;BYDAY=2TH" << thursday << int(Form::MonthlyOnWeekday) << 1
                                     << int(End::Never);
    QTest::newRow("second Thursday by position")
        << "FREQ=MONTHLY;BYDAY=TH;BYSETPOS=2" << thursday << int(Form::MonthlyOnWeekday) << 1 << int(End::Never);
    QTest::newRow("last Thursday") << "FREQ=MONTHLY;BYDAY=-1TH" << evening(2026, 11, 26) << int(Form::MonthlyOnLastWeekday) << 1
                                   << int(End::Never);
    QTest::newRow("last day") << "FREQ=MONTHLY;BYMONTHDAY=-1;COUNT=9" << evening(2026, 11, 30) << int(Form::MonthlyOnLastDay) << 1
                              << int(End::AfterTimes);
    QTest::newRow("31st") << "FREQ=MONTHLY;BYMONTHDAY=31" << evening(2026, 10, 31) << int(Form::MonthlyOnDate) << 1
                          << int(End::Never);
    QTest::newRow("yearly") << "FREQ=YEARLY" << thursday << int(Form::Yearly) << 1 << int(End::Never);
    QTest::newRow("yearly by name") << "FREQ=YEARLY;BYMONTH=11;BYMONTHDAY=12;UNTIL=20281112T183000" << thursday
                                    << int(Form::Yearly) << 1 << int(End::OnDate);
    QTest::newRow("leap day") << "FREQ=YEARLY" << evening(2028, 2, 29) << int(Form::Yearly) << 1 << int(End::Never);
    QTest::newRow("until in UTC, summer") << "FREQ=DAILY;UNTIL=20270710T173000Z" << thursday << int(Form::Daily) << 1
                                          << int(End::OnDate);
    QTest::newRow("until before the time of day")
        << "FREQ=DAILY;UNTIL=20261220T120000" << thursday << int(Form::Daily) << 1 << int(End::OnDate);
}

void RecurrenceEditTest::rulesBecomeWords() {
    QFETCH(QString, rule);
    QFETCH(LocalTime, start);
    const RecurrenceChoice choice = choiceOf(rule, start, london());
    QTEST(int(choice.form), "form");
    QTEST(choice.every, "every");
    QTEST(int(choice.end), "end");
    const QString again = ruleOf(choice, start, london());
    QCOMPARE(choiceOf(again, start, london()), choice);
    if (!rule.isEmpty()) QCOMPARE(datesOfRule(again, start), datesOfRule(rule, start));
}

void RecurrenceEditTest::whatWordsCannotSayIsKept_data() {
    QTest::addColumn<QString>("rule");
    for (const char* rule :
         {"FREQ=MONTHLY;BYDAY=1FR", "FREQ=MONTHLY;BYMONTHDAY=1,15", "FREQ=WEEKLY;INTERVAL=2;BYDAY=TU,TH;WKST=SU",
          "FREQ=YEARLY;BYDAY=20MO", "FREQ=MONTHLY;BYDAY=TH;BYSETPOS=-2", "FREQ=YEARLY;BYMONTH=1,7", "FREQ=DAILY;BYMONTH=1",
          "FREQ=DAILY;BYHOUR=9,18", "FREQ=YEARLY;BYWEEKNO=20", "FREQ=WEEKLY;COUNT=3;UNTIL=20270101",
          "FREQ=DAILY;INTERVAL=2;BYDAY=MO", "FREQ=SECONDLY", "nonsense", "FREQ=DAILY;FREQ=WEEKLY", "FREQ=DAILY;COUNT=0",
          "FREQ=DAILY;UNTIL=99999999"})
        QTest::newRow(rule) << QString(rule);
}

void RecurrenceEditTest::whatWordsCannotSayIsKept() {
    QFETCH(QString, rule);
    const RecurrenceChoice choice = choiceOf(rule, evening(2026, 11, 12), london());
    QCOMPARE(int(choice.form), int(Form::Custom));
    QCOMPARE(ruleOf(choice, evening(2026, 11, 12), london()), rule);
}

void RecurrenceEditTest::randomRulesKeepTheirDates() {
    constexpr unsigned seed = 20261112;
    std::mt19937 dice(seed);
    const auto below = [&](int n) { return int(dice() % unsigned(n)); };
    const QStringList days{"MO", "TU", "WE", "TH", "FR", "SA", "SU"};
    for (int i = 0; i < 600; ++i) {
        const LocalTime start{QDate(2026, 1, 1).addDays(below(500)), QTime(below(24), below(4) * 15)};
        QString rule = QStringList{"FREQ=DAILY", "FREQ=WEEKLY", "FREQ=MONTHLY", "FREQ=YEARLY"}[below(4)];
        if (below(2)) rule += QString(";INTERVAL=%1").arg(1 + below(3));
        if (rule.startsWith("FREQ=WEEKLY") && below(2))
            rule += ";BYDAY=" + days[below(7)] + (below(2) ? "," + days[below(7)] : "");
        if (rule.startsWith("FREQ=MONTHLY") && below(2))
            rule += QString(";BYDAY=%1%2").arg(below(2) ? -1 : 1 + below(4)).arg(days[start.date.dayOfWeek() - 1]);
        const int end = below(3);
        if (end == 1) rule += QString(";COUNT=%1").arg(1 + below(60));
        if (end == 2) rule += ";UNTIL=" + start.date.addDays(below(800)).toString("yyyyMMdd") + (below(2) ? "T120000Z" : "");
        const RecurrenceChoice choice = choiceOf(rule, start, london());
        const QString again = ruleOf(choice, start, london());
        QVERIFY2(
            datesOfRule(again, start) == datesOfRule(rule, start),
            qPrintable(QString("seed %1: %2 from %3 became %4").arg(seed).arg(rule, start.date.toString(Qt::ISODate), again)));
    }
}

void RecurrenceEditTest::oneDateMoves() {
    const Series before = weekly("FREQ=WEEKLY;BYDAY=TH;COUNT=10", evening(2026, 11, 12));
    const LocalTime original = evening(2026, 11, 19);
    const Series after = movedOnce(before, {original, evening(2026, 11, 20), hours(2)});
    QCOMPARE(after.overrides.size(), size_t(1));
    QCOMPARE(startOf(after, original), evening(2026, 11, 20));
    QCOMPARE(durationOf(after, original), hours(2));
    QCOMPARE(after.rule, before.rule);
    const Series once = movedOnce(weekly("", evening(2026, 11, 12)), {evening(2026, 11, 12), evening(2026, 11, 13), hours(1)});
    QVERIFY(once.overrides.empty());
    QCOMPARE(once.start, evening(2026, 11, 13));
}

void RecurrenceEditTest::aMoveBackLeavesNoTrace() {
    const Series before = weekly("FREQ=WEEKLY;BYDAY=TH", evening(2026, 11, 12));
    const LocalTime original = evening(2026, 11, 19);
    const Series there = movedOnce(before, {original, evening(2026, 11, 20), hours(2)});
    QCOMPARE(movedOnce(there, {original, original, hours(3)}), before);
}

void RecurrenceEditTest::wholeSeriesMove_data() {
    QTest::addColumn<QString>("rule");
    QTest::addColumn<LocalTime>("start");
    QTest::addColumn<int>("days");
    QTest::addColumn<int>("minutes");
    const LocalTime thursday = evening(2026, 11, 12);
    QTest::newRow("later that day") << "FREQ=WEEKLY;BYDAY=TH;COUNT=8" << thursday << 0 << 45;
    QTest::newRow("to Friday") << "FREQ=WEEKLY;BYDAY=TH;COUNT=8" << thursday << 1 << 0;
    QTest::newRow("to Monday") << "FREQ=WEEKLY;BYDAY=TH;COUNT=8" << thursday << -3 << 30;
    QTest::newRow("until a date") << "FREQ=WEEKLY;BYDAY=TH;UNTIL=20261224T235959" << thursday << 1 << 0;
    QTest::newRow("every second week") << "FREQ=WEEKLY;INTERVAL=2;BYDAY=TH;COUNT=6" << thursday << 1 << 0;
    QTest::newRow("the 12th to the 14th") << "FREQ=MONTHLY;BYMONTHDAY=12;COUNT=5" << thursday << 2 << 0;
    QTest::newRow("daily, another time") << "FREQ=DAILY;COUNT=20" << thursday << 0 << -90;
    QTest::newRow("yearly") << "FREQ=YEARLY;COUNT=3" << thursday << 3 << 0;
}

void RecurrenceEditTest::wholeSeriesMove() {
    QFETCH(QString, rule);
    QFETCH(LocalTime, start);
    QFETCH(int, days);
    QFETCH(int, minutes);
    const Series before = weekly(rule, start);
    const std::vector<LocalTime> dates = datesOfSeries(before);
    const LocalTime second = dates[1];
    const auto moved = [&](const LocalTime& t) { return shifted({t.date.addDays(days), t.time}, laneward::minutes(minutes)); };
    const std::optional<Series> after = movedWhole(before, {second, moved(second), hours(2)});
    QVERIFY(after);
    QCOMPARE(after->duration, hours(2));
    std::vector<LocalTime> expected;
    for (const LocalTime& t : dates)
        expected.push_back(moved(t));
    QCOMPARE(datesOfSeries(*after), expected);
}

void RecurrenceEditTest::whatCannotFollowSaysSo() {
    const LocalTime start = evening(2026, 11, 12);
    const Move toFriday{start, evening(2026, 11, 13), hours(3)};
    QVERIFY(!movedWhole(weekly("FREQ=DAILY", start), toFriday));
    QVERIFY(!movedWhole(weekly("FREQ=MONTHLY;BYMONTHDAY=12,26", start), toFriday));
    QVERIFY(!movedWhole(weekly("FREQ=WEEKLY;BYDAY=TH,FR", start), toFriday));
    const std::optional<Series> one = movedWhole(weekly("FREQ=WEEKLY;BYDAY=TU,TH", evening(2026, 11, 10)), toFriday);
    QVERIFY(one);
    QCOMPARE(int(choiceOf(one->rule, one->start, london()).weekdays), 0b10010);  // Tuesday stayed, Thursday became Friday
}

void RecurrenceEditTest::exceptionsGoWithTheSeries() {
    Series before = weekly("FREQ=WEEKLY;BYDAY=TH;COUNT=8", evening(2026, 11, 12));
    before.excludedDates = {evening(2026, 12, 24)};
    before = movedOnce(before, {evening(2026, 11, 26), evening(2026, 11, 27), hours(3)});
    before = cancelledOnce(before, evening(2026, 12, 3));
    const std::optional<Series> after =
        movedWhole(before, {evening(2026, 11, 12), {QDate(2026, 11, 11), QTime(19, 0)}, hours(3)});
    QVERIFY(after);
    QCOMPARE(after->excludedDates.front(), (LocalTime{QDate(2026, 12, 23), QTime(19, 0)}));
    QCOMPARE(after->overrides[0].original, (LocalTime{QDate(2026, 11, 25), QTime(19, 0)}));
    QCOMPARE(*after->overrides[0].start, (LocalTime{QDate(2026, 11, 26), QTime(19, 0)}));
    QVERIFY(after->overrides[1].cancelled);
    QCOMPARE(datesOfSeries(*after).size(), datesOfSeries(before).size());
}

void RecurrenceEditTest::datesAreCancelledAndRestored() {
    const Series before = weekly("FREQ=WEEKLY;BYDAY=TH", evening(2026, 11, 12));
    const Series after = cancelledOnce(before, evening(2026, 11, 19));
    QVERIFY(after.overrides.front().cancelled);
    QCOMPARE(restoredOnce(after, evening(2026, 11, 19)), before);
}

void RecurrenceEditTest::theWidgetGivesBackWhatItGot_data() { rulesBecomeWords_data(); }

void RecurrenceEditTest::theWidgetGivesBackWhatItGot() {
    QFETCH(QString, rule);
    QFETCH(LocalTime, start);
    Series series = weekly(rule, start);
    series.excludedDates = {start};
    RecurrenceEdit edit;
    edit.load(series, speech(), london());
    Series stored = series;
    edit.store(stored);
    QCOMPARE(stored, series);
    QTEST(int(edit.choice().form), "form");
}

void RecurrenceEditTest::theWidgetMakesRules() {
    Series series = weekly("", evening(2026, 11, 12));
    RecurrenceEdit edit;
    edit.show();
    edit.load(series, speech(), london());
    QSignalSpy edited(&edit, &RecurrenceEdit::edited);
    auto* forms = named<QComboBox>(edit, "Takes place");
    auto* every = named<QSpinBox>(edit, "Every how many");
    QVERIFY(!every->isVisible());
    forms->setFocus();
    QTest::keyClick(forms, Qt::Key_Down);
    QTest::keyClick(forms, Qt::Key_Down);
    QVERIFY(every->isVisible());
    QTest::mouseClick(named<QCheckBox>(edit, "Tuesday"), Qt::LeftButton, {}, {8, 12});
    every->setValue(2);
    auto* end = named<QComboBox>(edit, "Ends");
    end->setCurrentIndex(2);
    named<QSpinBox>(edit, "Number of times")->setValue(14);
    edit.store(series);
    QCOMPARE(series.rule, QString("FREQ=WEEKLY;BYDAY=TU,TH;INTERVAL=2;COUNT=14"));
    QVERIFY(edited.count() >= 4);
    edit.setStart(evening(2026, 11, 26));
    QVERIFY(forms->findText("every month on the last Thursday") > 0);
    forms->setCurrentIndex(forms->findText("every month on the last Thursday"));
    end->setCurrentIndex(1);
    named<QDateEdit>(edit, "Last date")->setDate(QDate(2027, 7, 1));
    every->setValue(1);
    series.start = evening(2026, 11, 26);
    edit.store(series);
    QCOMPARE(series.rule, QString("FREQ=MONTHLY;BYDAY=-1TH;UNTIL=20270701T225959Z"));
}

void RecurrenceEditTest::datesAreLeftOutAndPutBack() {
    Series series = weekly("FREQ=WEEKLY;BYDAY=TH", evening(2026, 11, 12));
    series = cancelledOnce(series, evening(2026, 12, 31));
    const Series before = series;
    RecurrenceEdit edit;
    edit.show();
    edit.load(series, speech(), london());
    auto* list = named<QListWidget>(edit, "Dates left out");
    QCOMPARE(list->count(), 1);
    named<QDateEdit>(edit, "Date to leave out")->setDate(QDate(2026, 12, 24));
    auto* leave = named<QPushButton>(edit, "Leave out");
    QTest::mouseClick(leave, Qt::LeftButton);
    QTest::mouseClick(leave, Qt::LeftButton);  // twice is once
    edit.store(series);
    QCOMPARE(series.excludedDates, std::vector<LocalTime>{evening(2026, 12, 24)});
    list->setCurrentRow(0);
    QTest::mouseClick(named<QPushButton>(edit, "Put back"), Qt::LeftButton);
    edit.store(series);
    QCOMPARE(series, before);
    list->setCurrentRow(0);
    QTest::mouseClick(named<QPushButton>(edit, "Put back"), Qt::LeftButton);
    edit.store(series);
    QVERIFY(series.overrides.empty());
    QVERIFY(support::picture(edit, "recurrence"));
}

QTEST_MAIN(RecurrenceEditTest)
#include "tst_recurrence_edit.moc"
