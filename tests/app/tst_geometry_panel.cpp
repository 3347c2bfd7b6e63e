// Geometry of the lanes on its page: departures against their tolerance, trends, and inspections typed, corrected and withdrawn.
#include "app/pages/patterns/geometry_panel.h"
#include "app/pages/patterns/inspection_form.h"
#include "app/pages/patterns/inspection_model.h"
#include "app/pages/patterns/point_chart.h"
#include "tests/support/demo_session.h"
#include "tests/support/evening_session.h"
#include "tests/support/looks.h"

#include <QLabel>
#include <QPushButton>
#include <QSettings>
#include <QSpinBox>
#include <QStandardPaths>
#include <QTableView>
#include <QTest>
#include <QTranslator>

using namespace laneward;

namespace {

QString allText(const QWidget& widget) {
    QStringList lines;
    for (const QLabel* label : widget.findChildren<QLabel*>())
        lines << label->text();
    return lines.join('\n');
}

QPushButton* button(const QWidget& parent, const QString& text) {
    for (QPushButton* child : parent.findChildren<QPushButton*>()) {
        if (child->text().remove('&').startsWith(text)) return child;
    }
    qFatal("no button %s", qPrintable(text));
}

std::vector<Inspection> stored(Session& session) {
    const Result<std::vector<Inspection>> all = session.store().inspections(allRecords);
    return all ? standing(*all) : std::vector<Inspection>{};
}

}  // namespace

class GeometryPanelTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void everyLaneIsJudged();
    void theTrendOfTheChosenCell();
    void anInspectionIsTypedAndTakenBack();
    void badCellsKeepWhatWasTyped();
    void anInspectionIsCorrectedAndWithdrawn();
    void inchesWhereTheCentreHasThem();
    void withoutInspectionsItSaysWhatToDo();
    void pictures();

private:
    Session& session() { return m_demo->session(); }
    QTableView& list() const { return *m_panel->findChild<QTableView*>("geometry"); }
    InspectionForm& form() const { return *m_panel->findChild<InspectionForm*>(); }
    InspectionModel& cells() const { return *m_panel->findChild<InspectionModel*>(); }
    PointChart& chart() const { return *m_panel->findChild<PointChart*>(); }
    QString cell(int lane, GeometryFeature feature) const {
        return list().model()->index(lane - 1, GeometryModel::FirstFeature + int(feature)).data().toString();
    }
    void type(int row, int column, const QString& text) { cells().setData(cells().index(row, column), text, Qt::EditRole); }

    QTranslator m_english;
    std::unique_ptr<support::DemoSession> m_demo;
    std::unique_ptr<GeometryPanel> m_panel;
};

void GeometryPanelTest::initTestCase() {
    QStandardPaths::setTestModeEnabled(true);
    QSettings().remove("lists");
    QVERIFY(m_english.load("laneward_en", qEnvironmentVariable("LANEWARD_BINARY", ".")));
    QApplication::installTranslator(&m_english);  // for its plural forms
    QLocale::setDefault(QLocale("en_GB"));
    m_demo = std::make_unique<support::DemoSession>();
}

void GeometryPanelTest::init() {
    m_panel = std::make_unique<GeometryPanel>(session());
    connect(&session(), &Session::changed, m_panel.get(), &GeometryPanel::refresh);
    m_panel->resize(1130, 600);
    m_panel->show();
}

void GeometryPanelTest::cleanup() {
    QApplication::setPalette(support::lightPalette());
    m_panel.reset();
    while (session().undoStack().canUndo())
        session().undoStack().undo();
    session().undoStack().clear();
}

void GeometryPanelTest::everyLaneIsJudged() {
    QCOMPARE(list().model()->rowCount(), 24);
    QVERIFY2(cell(7, GeometryFeature::Tilt).contains(QString::fromUtf8("mm ✓ ok")), qPrintable(cell(7, GeometryFeature::Tilt)));
    QVERIFY(cell(1, GeometryFeature::Tilt).isEmpty());
    QVERIFY2(m_panel->headline().contains("lane"), qPrintable(m_panel->headline()));
    const QString words = allText(*m_panel);
    for (const char* part : {"1.016 mm", "Status: ", "Source: ", "rule book decides"})
        QVERIFY2(words.contains(part), qPrintable(QString(part) + " not in " + words));
}

void GeometryPanelTest::theTrendOfTheChosenCell() {
    const QModelIndex tilt = list().model()->index(10, GeometryModel::FirstFeature + int(GeometryFeature::Tilt));
    list().setCurrentIndex(tilt);
    QVERIFY2(allText(*m_panel).contains("Lane 11: crosswise tilt"), qPrintable(allText(*m_panel)));
    int ofLane = 0;
    for (const Inspection& inspection : stored(session()))
        ofLane += inspection.lane == 11;
    QCOMPARE(chart().pointCount(), ofLane);
    QCOMPARE(chart().current(), ofLane - 1);
    chart().setFocus();
    QTest::keyClick(&chart(), Qt::Key_Home);
    QCOMPARE(chart().current(), 0);
    QVERIFY2(allText(*m_panel).contains(": at worst "), qPrintable(allText(*m_panel)));
    m_panel->refresh();
    QCOMPARE(list().currentIndex().row(), 10);
}

void GeometryPanelTest::anInspectionIsTypedAndTakenBack() {
    const size_t before = stored(session()).size();
    QTest::mouseClick(button(*m_panel, "Type an inspection"), Qt::LeftButton);
    form().findChild<QSpinBox*>()->setValue(3);
    type(0, InspectionModel::FirstFeature + int(GeometryFeature::Tilt), "-1.2");
    type(1, InspectionModel::FirstFeature + int(GeometryFeature::Tilt), "0.3");
    type(1, InspectionModel::FirstFeature + int(GeometryFeature::Crown), "0.1");
    m_panel->refresh();
    QCOMPARE(int(cells().values().size()), 3);
    QVERIFY(support::picture(*m_panel, "geometry_form"));
    QTest::mouseClick(form().findChild<QPushButton*>("keepInspection"), Qt::LeftButton);
    QCOMPARE(stored(session()).size(), before + 1);
    QCOMPARE(cell(3, GeometryFeature::Tilt), QString("-1.20 mm ! beyond"));
    QVERIFY(cell(3, GeometryFeature::Crown).contains("ok"));
    QVERIFY(cell(3, GeometryFeature::Level).contains("not measured"));
    QVERIFY2(m_panel->headline().contains("1 lane beyond the tolerance, worst: lane 3, crosswise tilt -1.20 mm"),
             qPrintable(m_panel->headline()));
    session().undoStack().undo();
    QCOMPARE(stored(session()).size(), before);
    QVERIFY(cell(3, GeometryFeature::Tilt).isEmpty());
}

void GeometryPanelTest::badCellsKeepWhatWasTyped() {
    const size_t before = stored(session()).size();
    QTest::mouseClick(button(*m_panel, "Type an inspection"), Qt::LeftButton);
    auto* keep = form().findChild<QPushButton*>("keepInspection");
    QTest::mouseClick(keep, Qt::LeftButton);
    QVERIFY(allText(form()).contains("no departure has been typed"));
    const int tilt = InspectionModel::FirstFeature + int(GeometryFeature::Tilt);
    struct Bad {
        int row;
        int column;
        const char* typed;
        const char* why;
    };
    const Bad bad[] = {{0, tilt, "level", "is not a number"},
                       {0, tilt, "51", "beyond 50.00 mm cannot be"},
                       {0, tilt, "1,2", "is not a number"},
                       {5, tilt, "0.2", "at which distance?"},
                       {1, InspectionModel::Distance, "20", "is not on the lane"},
                       {1, InspectionModel::Distance, "far", "is not a number"}};
    for (const Bad& one : bad) {
        type(one.row, one.column, one.typed);
        QCOMPARE(cells().index(one.row, one.column).data().toString(), QString(one.typed));
        QVERIFY2(cells().remark(one.row).contains(one.why), qPrintable(cells().remark(one.row)));
        QTest::mouseClick(keep, Qt::LeftButton);
        QVERIFY2(allText(form()).contains("Nothing kept yet: row"), qPrintable(allText(form())));
        type(one.row, one.column, one.column == tilt ? "" : "10");
        QVERIFY(cells().remark(one.row).isEmpty());
    }
    QCOMPARE(stored(session()).size(), before);
    QTest::keyClick(form().findChild<QSpinBox*>(), Qt::Key_Escape);
    QVERIFY(!form().isVisible());
}

void GeometryPanelTest::anInspectionIsCorrectedAndWithdrawn() {
    const size_t before = stored(session()).size();
    list().setCurrentIndex(list().model()->index(11, GeometryModel::FirstFeature + int(GeometryFeature::Tilt)));
    const QString was = cell(12, GeometryFeature::Tilt);
    const auto values = [&] {
        Inspection newest;
        for (const Inspection& inspection : stored(session()))
            if (inspection.lane == 12 && inspection.at >= newest.at) newest = inspection;
        return newest.values;
    };
    const auto old = values();
    QTest::mouseClick(button(*m_panel, "Correct this inspection"), Qt::LeftButton);
    QCOMPARE(cells().values().size(), old.size());
    for (const GeometryValue& value : old) {
        const auto now = cells().values();
        QVERIFY(std::find(now.begin(), now.end(), value) != now.end());
    }
    type(0, InspectionModel::FirstFeature + int(GeometryFeature::Tilt), "2");
    QTest::mouseClick(form().findChild<QPushButton*>("keepInspection"), Qt::LeftButton);
    QCOMPARE(stored(session()).size(), before);
    QCOMPARE(cell(12, GeometryFeature::Tilt), QString("2.00 mm ! beyond"));
    session().undoStack().undo();
    QCOMPARE(cell(12, GeometryFeature::Tilt), was);
    QVERIFY(values() == old);
    QTest::mouseClick(button(*m_panel, "Withdraw it"), Qt::LeftButton);
    QCOMPARE(stored(session()).size(), before - 1);
    session().undoStack().undo();
    QCOMPARE(stored(session()).size(), before);
    QVERIFY(values() == old);
}

void GeometryPanelTest::inchesWhereTheCentreHasThem() {
    CentreFacts after = session().season().centre.facts;
    after.settings.units = UnitSystem::UsCustomary;
    QVERIFY(session().apply("Units", {RowChange<CentreFacts>{session().season().centre.facts, after}}));
    QVERIFY2(cell(7, GeometryFeature::Tilt).contains(" in "), qPrintable(cell(7, GeometryFeature::Tilt)));
    QTest::mouseClick(button(*m_panel, "Type an inspection"), Qt::LeftButton);
    type(0, InspectionModel::FirstFeature, "0.040");
    const auto values = cells().values();
    QCOMPARE(int(values.size()), 1);
    QCOMPARE(values[0].departure, Micrometres{1'016});  // 0.040 in x 25.4 mm, 16 CFR 500.19
    QCOMPARE(values[0].distance, feet(20));
}

void GeometryPanelTest::withoutInspectionsItSaysWhatToDo() {
    const support::Evening evening;
    const auto small = support::sessionOn(evening);
    GeometryPanel panel(*small);
    panel.resize(1130, 600);
    panel.show();
    QVERIFY2(allText(panel).contains("Measure a lane at a few distances"), qPrintable(allText(panel)));
    QCOMPARE(panel.headline(), QString("No lane has been inspected yet"));
    QVERIFY(support::picture(panel, "geometry_empty"));
}

void GeometryPanelTest::pictures() {
    list().setCurrentIndex(list().model()->index(10, GeometryModel::FirstFeature + int(GeometryFeature::Tilt)));
    QVERIFY(support::picture(*m_panel, "geometry"));
    QApplication::setPalette(support::darkPalette());
    QVERIFY(support::picture(*m_panel, "geometry_dark"));
    QApplication::setPalette(support::contrastPalette());
    QVERIFY(support::picture(*m_panel, "geometry_contrast"));
    QApplication::setPalette(support::lightPalette());
    m_panel->setLayoutDirection(Qt::RightToLeft);
    QVERIFY(support::picture(*m_panel, "geometry_rtl"));
    QTranslator words;
    QVERIFY(words.load("laneward_de", qEnvironmentVariable("LANEWARD_BINARY", ".")));
    QApplication::installTranslator(&words);
    QLocale::setDefault(QLocale("de_DE"));
    GeometryPanel german(session());
    german.resize(1130, 600);
    german.show();
    QVERIFY(support::picture(german, "geometry_german"));
    QApplication::removeTranslator(&words);
    QLocale::setDefault(QLocale("en_GB"));
}

QTEST_MAIN(GeometryPanelTest)
#include "tst_geometry_panel.moc"
