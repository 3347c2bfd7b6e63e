// Output drift on its page: charts, signals with their runs, the baseline that is chosen, and the fault that is written down.
#include "app/pages/patterns/drift_panel.h"
#include "tests/support/demo_session.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"

#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSettings>
#include <QStandardPaths>
#include <QTest>
#include <QTranslator>

#include <ctime>
#include <set>

using namespace laneward;

namespace {

QString allText(const QWidget& widget) {
    QStringList lines;
    for (const QLabel* label : widget.findChildren<QLabel*>())
        lines << label->text();
    return lines.join('\n');
}

}  // namespace

class DriftPanelTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void whatSignalsIsShownFirst();
    void signalsComeWithTheirRuns();
    void pointsAreWalkedByKeyAndMouse();
    void everyChartHasItsLimits_data();
    void everyChartHasItsLimits();
    void theBaselineIsChosenAndKept();
    void aFaultIsWrittenDownOnce();
    void withoutFillsItSaysWhatToDo();
    void thousandsStaySwift();
    void pictures();

private:
    Session& session() { return m_demo->session(); }
    QComboBox& box(const char* name) const { return *m_panel->findChild<QComboBox*>(name); }
    QListWidget& list(const QString& name) const;
    PointChart& chart() const { return *m_panel->findChild<PointChart*>(); }
    void choose(const char* name, const QString& text) { box(name).setCurrentIndex(box(name).findText(text)); }

    QTranslator m_english;
    std::unique_ptr<support::DemoSession> m_demo;
    std::unique_ptr<DriftPanel> m_panel;
};

QListWidget& DriftPanelTest::list(const QString& name) const {
    for (QListWidget* child : m_panel->findChildren<QListWidget*>()) {
        if (child->accessibleName() == name) return *child;
    }
    qFatal("no list %s", qPrintable(name));
}

void DriftPanelTest::initTestCase() {
    QStandardPaths::setTestModeEnabled(true);
    QVERIFY(m_english.load("laneward_en", qEnvironmentVariable("LANEWARD_BINARY", ".")));
    QApplication::installTranslator(&m_english);  // for its plural forms
    QLocale::setDefault(QLocale("en_GB"));
    m_demo = std::make_unique<support::DemoSession>();
}

void DriftPanelTest::init() {
    QSettings().remove("drift");
    m_panel = std::make_unique<DriftPanel>(session());
    connect(&session(), &Session::changed, m_panel.get(), &DriftPanel::refresh);
    m_panel->resize(1130, 600);
    m_panel->show();
}

void DriftPanelTest::cleanup() {
    QApplication::setPalette(support::lightPalette());
    m_panel.reset();
    while (session().undoStack().canUndo())
        session().undoStack().undo();
    session().undoStack().clear();
}

void DriftPanelTest::whatSignalsIsShownFirst() {
    QCOMPARE(box("driftMachine").currentText(), QString("Heron"));
    QCOMPARE(box("driftProduct").currentText(), QString("Tideglass Amber"));
    const QString line = m_panel->headline();
    QVERIFY2(line.startsWith("Heron puts out ") && line.contains("% more Tideglass Amber than in its baseline since"),
             qPrintable(line));
    choose("driftMachine", "Grebe");
    QCOMPARE(box("driftProduct").currentText(), QString("Tideglass Amber"));
    m_panel->refresh();
    QCOMPARE(box("driftMachine").currentText(), QString("Grebe"));
}

void DriftPanelTest::signalsComeWithTheirRuns() {
    QListWidget& found = list("Signals of the charts");
    QVERIFY(found.currentRow() >= 0);
    const QString sentence = found.currentItem()->text();
    QVERIFY2(sentence.contains("Heron, Tideglass Amber") && sentence.startsWith(QString::fromUtf8("◆ now")),
             qPrintable(sentence));
    QVERIFY(list("Runs behind it").count() > 0);
    QVERIFY2(list("Runs behind it").item(0)->text().contains("lanes "), qPrintable(list("Runs behind it").item(0)->text()));
    for (int row = 0; row < found.count(); ++row) {
        found.setCurrentRow(row);
        QVERIFY2(chart().accessibleDescription().contains("signals:"), qPrintable(chart().accessibleDescription()));
    }
    QVERIFY2(allText(*m_panel).contains(text(Finding{Severity::Warning, "caution.moving-parts", {}, {}}, session().speech())),
             qPrintable(allText(*m_panel)));
    bool told = false;
    for (const QLabel* label : m_panel->findChildren<QLabel*>())
        told |= label->text().contains("that led to the signal");
    QVERIFY(told);
    // Another chart shows the same fill, and stays when the centre changes.
    const QString fill = chart().accessibleDescription();
    choose("driftChart", "poured over nominal");
    QCOMPARE(chart().accessibleDescription(), fill);
    m_panel->refresh();
    QCOMPARE(box("driftChart").currentText(), QString("poured over nominal"));
    QCOMPARE(chart().accessibleDescription(), fill);
}

void DriftPanelTest::pointsAreWalkedByKeyAndMouse() {
    choose("driftChart", "poured over nominal");
    chart().setFocus();
    QTest::keyClick(&chart(), Qt::Key_Home);
    QCOMPARE(chart().current(), 0);
    QVERIFY2(allText(*m_panel).contains("part of the baseline"), qPrintable(allText(*m_panel)));
    QTest::keyClick(&chart(), Qt::Key_Right);
    QCOMPARE(chart().current(), 1);
    QCoreApplication::processEvents();
    QTest::mouseMove(chart().viewport(), chart().positionOf(10));
    QTRY_COMPARE(chart().current(), 10);
    QVERIFY2(allText(*m_panel).contains("poured where the patterns say"), qPrintable(allText(*m_panel)));
    QVERIFY(list("Runs behind it").count() > 0);
    QVERIFY(chart().positionOf(11).x() > chart().positionOf(10).x());
}

void DriftPanelTest::everyChartHasItsLimits_data() {
    QTest::addColumn<int>("kind");
    for (int kind = 0; kind < 4; ++kind)
        QTest::newRow(qPrintable(QString::number(kind))) << kind;
}

void DriftPanelTest::everyChartHasItsLimits() {
    QFETCH(int, kind);
    const HistorySlice all = *session().store().history(allRecords);
    const Machine* heron = findMachine(session().season().centre, {"heron"});
    const OutputDrift drift =
        outputDrift({all.runs, all.readings, all.patternVersions, session().season().patterns}, *heron, 0, {});
    QVERIFY(drift.isJudged());
    const ChartContent plot = plotOf(drift, DriftChart(kind), session().speech());
    QVERIFY(plot.points.size() + 1 >= drift.points.size() - drift.baselineBegin);
    const auto count = [&](LineLook look) {
        return std::count_if(plot.lines.begin(), plot.lines.end(), [look](const ChartLine& l) { return l.look == look; });
    };
    QCOMPARE(count(LineLook::Limit), 2);
    QCOMPARE(count(LineLook::Centre), 1);
    // Marked are exactly the points of the signals.
    std::set<double> marked;
    std::set<double> wanted;
    for (const ChartPoint& point : plot.points) {
        if (point.mark == PointMark::Signal) marked.insert(point.x);
    }
    for (const DriftSignal& signal : drift.signals) {
        for (size_t i = signal.first; signal.chart == DriftChart(kind) && i <= signal.last; ++i)
            wanted.insert(wallTime(drift.points[i].at, session().zone()));
    }
    QVERIFY(marked == wanted);
}

void DriftPanelTest::theBaselineIsChosenAndKept() {
    auto* from = m_panel->findChild<QDateEdit*>("baselineFrom");
    auto* to = m_panel->findChild<QDateEdit*>("baselineTo");
    QVERIFY(!from->isVisible());
    const QString before = m_panel->headline();
    box("baseline").setCurrentIndex(1);
    QVERIFY(from->isVisible() && to->isVisible());
    QCOMPARE(m_panel->headline(), before);  // the span begins as the fills that were the baseline
    to->setDate(from->date());
    QVERIFY2(allText(*m_panel).contains("once there are 8 to compare"), qPrintable(allText(*m_panel)));
    to->setDate(from->date().addDays(150));
    m_panel->refresh();
    QCOMPARE(to->date(), from->date().addDays(150));
    DriftPanel again(session());
    again.show();
    QCOMPARE(again.findChild<QDateEdit*>("baselineTo")->date(), to->date());
    box("baseline").setCurrentIndex(0);
    QVERIFY(!from->isVisible());
    QCOMPARE(m_panel->headline(), before);
}

void DriftPanelTest::aFaultIsWrittenDownOnce() {
    auto* write = m_panel->findChild<QPushButton*>("writeFault");
    const size_t before = session().season().incidents.size();
    QVERIFY(write->isEnabled());
    QTest::mouseClick(write, Qt::LeftButton);
    QCOMPARE(session().season().incidents.size(), before + 1);
    const Incident& incident = session().season().incidents.back();
    QCOMPARE(int(incident.kind), int(IncidentKind::Fault));
    QCOMPARE(incident.machine.value, QString("heron"));
    QVERIFY2(incident.text.contains("Tideglass Amber"), qPrintable(incident.text));
    QVERIFY(!write->isEnabled());
    session().undoStack().undo();
    QCOMPARE(session().season().incidents.size(), before);
    QVERIFY(write->isEnabled());
}

void DriftPanelTest::withoutFillsItSaysWhatToDo() {
    const support::Evening evening;
    const auto small = support::sessionOn(evening);
    DriftPanel panel(*small);
    panel.resize(1130, 600);
    panel.show();
    QVERIFY2(allText(panel).contains("write down how much was poured"), qPrintable(allText(panel)));
    QVERIFY2(panel.headline().contains("No fill"), qPrintable(panel.headline()));
    QVERIFY(!panel.findChild<QPushButton*>("writeFault")->isEnabled());
    QVERIFY(support::picture(panel, "drift_empty"));
}

void DriftPanelTest::thousandsStaySwift() {
    ChartContent content;
    ChartLine line;
    for (int i = 0; i < 10'000; ++i) {
        content.points.push_back({1e12 + i * 3.6e6, 1 + 0.01 * (i % 17), PointMark::Plain, QString()});
        line.points.append({content.points.back().x, content.points.back().y});
    }
    content.lines.push_back(line);
    PointChart many;
    many.resize(700, 300);
    many.show(content, QLocale("en_GB"));
    static_cast<QWidget&>(many).show();
    const std::clock_t begin = std::clock();
    many.show(content, QLocale("en_GB"));
    many.grab();
    const std::clock_t charted = std::clock();
    m_panel->refresh();
    const auto ms = [](std::clock_t t) { return long(t * 1'000 / CLOCKS_PER_SEC); };
    qInfo("10,000 values charted in %ld ms, a year of fills read and judged in %ld ms of the processor", ms(charted - begin),
          ms(std::clock() - charted));
}

void DriftPanelTest::pictures() {
    QVERIFY(support::picture(*m_panel, "drift"));
    for (const char* name : {"poured over nominal", "change from the fill before", "smoothed average", "cumulative sums"}) {
        choose("driftChart", name);
        QVERIFY(support::picture(*m_panel, QString("drift_%1").arg(QString(name).section(' ', 0, 0))));
    }
    QApplication::setPalette(support::darkPalette());
    QVERIFY(support::picture(*m_panel, "drift_dark"));
    QApplication::setPalette(support::contrastPalette());
    QVERIFY(support::picture(*m_panel, "drift_contrast"));
    QApplication::setPalette(support::lightPalette());
    m_panel->setLayoutDirection(Qt::RightToLeft);
    QVERIFY(support::picture(*m_panel, "drift_rtl"));
    QTranslator words;
    QVERIFY(words.load("laneward_de", qEnvironmentVariable("LANEWARD_BINARY", ".")));
    QApplication::installTranslator(&words);
    QLocale::setDefault(QLocale("de_DE"));
    DriftPanel german(session());
    german.resize(1130, 600);
    german.show();
    QVERIFY(support::picture(german, "drift_german"));
    QApplication::removeTranslator(&words);
    QLocale::setDefault(QLocale("en_GB"));
}

QTEST_MAIN(DriftPanelTest)
#include "tst_drift_panel.moc"
