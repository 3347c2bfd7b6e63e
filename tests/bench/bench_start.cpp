// From the start of a process to its first painted page: Laneward on the demo centre beside a bare window with a table, a chart
// and menus but no data or database, and beside an empty main window. Each is a process of its own, started the same way, in
// turn; on a quiet morning, and half an hour before an evening that takes a long search to plan. Limit: at most twice the bare
// window, at the median of the pairs.
#include "app/demo/demo_centre.h"
#include "app/window/main_window.h"
#include "app/window/style.h"
#include "core/storage/centre_file.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QMenuBar>
#include <QProcess>
#include <QStandardItemModel>
#include <QTableView>
#include <QTemporaryDir>
#include <QVBoxLayout>
#include <QtCharts/QChartView>
#include <QtCharts/QLineSeries>

#include <algorithm>
#include <cstdio>
#include <cstdlib>

using namespace laneward;

namespace {

/// Ends the process when its widget has been painted.
class FirstPaint : public QObject {
public:
    explicit FirstPaint(QWidget* widget) : m_widget(widget) { widget->installEventFilter(this); }

    bool eventFilter(QObject* watched, QEvent* event) override {
        if (watched == m_widget && event->type() == QEvent::Paint) {
            m_widget->removeEventFilter(this);
            QCoreApplication::sendEvent(m_widget, event);
            std::_Exit(0);
        }
        return false;
    }

private:
    QWidget* m_widget;
};

int runEmpty(QApplication& app) {
    QMainWindow window;
    const FirstPaint paint(&window);
    window.show();
    return app.exec();
}

int runBare(QApplication& app) {
    QMainWindow window;
    for (const char* name : {"File", "Edit", "View", "Help"}) {
        QMenu* menu = window.menuBar()->addMenu(QLatin1String(name));
        for (int i = 0; i < 12; ++i)
            menu->addAction(QString("Action %1").arg(i));
    }
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    auto* table = new QTableView;
    auto* model = new QStandardItemModel(20, 8, table);
    for (int row = 0; row < 20; ++row) {
        for (int column = 0; column < 8; ++column)
            model->setItem(row, column, new QStandardItem(QString::number(row * column)));
    }
    table->setModel(model);
    auto* chart = new QChart;
    auto* series = new QLineSeries;
    for (int i = 0; i < 100; ++i)
        series->append(i, i % 10);
    chart->addSeries(series);
    chart->createDefaultAxes();
    layout->addWidget(table);
    layout->addWidget(new QChartView(chart));
    window.setCentralWidget(page);
    window.resize(1280, 720);
    const FirstPaint paint(table->viewport());
    window.show();
    return app.exec();
}

struct Moment {
    const char* name;
    Instant at;
};
const Moment moments[]{{"quiet", Instant{1'795'514'400}},
                       {"busy", Instant{1'795'712'400}}};  // 24 November 2026, 10:00; 26th, 17:00

int runLaneward(QApplication& app, const QString& centre, const QString& moment) {
    const FixedClock clock(moment == moments[0].name ? moments[0].at : moments[1].at);
    applyStyle(TargetSize::Usual);
    MainWindow window(clock);
    if (!window.openCentre(*Location::parse(centre))) return 1;
    window.resize(1280, 720);
    const FirstPaint paint(window.workspace()->currentPage());
    window.show();
    return app.exec();
}

double millisecondsOf(const QStringList& arguments) {
    QElapsedTimer timer;
    timer.start();
    QProcess process;
    process.start(QCoreApplication::applicationFilePath(), arguments);
    if (!process.waitForFinished(60'000) || process.exitCode() != 0) return -1;
    return double(timer.nsecsElapsed()) / 1e6;
}

double median(std::vector<double> times) {
    std::sort(times.begin(), times.end());
    return times[times.size() / 2];
}

bool makeDemo(const QString& path, Instant now) {
    const Result<std::unique_ptr<Store>> store = Store::open(*Location::parse(path), Access::Create);
    if (!store) return false;
    const CentreFile demo = demoCentre(now);
    return bool((*store)->replaceAll(demo.season, demo.history, {}, now));
}

constexpr int runs = 25;

/// Each start of ours is judged beside the bare one right after it, whatever else the machine does meanwhile.
bool isSwiftAt(const Moment& moment, const QString& centre) {
    if (!makeDemo(centre, moment.at)) return false;
    std::vector<double> laneward;
    std::vector<double> bare;
    std::vector<double> empty;
    std::vector<double> ratios;
    for (int run = 0; run <= runs; ++run) {
        const double a = millisecondsOf({"--laneward", centre, moment.name});
        const double b = millisecondsOf({"--bare"});
        const double c = millisecondsOf({"--empty"});
        if (a < 0 || b < 0 || c < 0) return false;
        if (run == 0) continue;  // warm-up
        laneward.push_back(a);
        bare.push_back(b);
        empty.push_back(c);
        ratios.push_back(a / b);
    }
    const double ratio = median(ratios);
    std::printf("bench first paint, %s: Laneward %.0f ms, bare window %.0f ms, empty window %.0f ms (medians of %d)\n",
                moment.name, median(laneward), median(bare), median(empty), runs);
    std::printf("ratio first paint, %s / bare window = %.2f (at most 2.00)%s\n", moment.name, ratio,
                ratio <= 2 ? "" : "  TOO SLOW");
    std::printf("ratio first paint, %s / empty window = %.2f\n", moment.name, median(laneward) / median(empty));
    return ratio <= 2;
}

int compare() {
    const QTemporaryDir dir;
    bool swift = true;
    for (const Moment& moment : moments)
        swift = isSwiftAt(moment, dir.filePath(QString("%1.laneward").arg(moment.name))) && swift;
    return swift ? 0 : 1;
}

}  // namespace

int main(int argc, char** argv) {
    QApplication app(argc, argv);
    const QStringList arguments = app.arguments();
    if (arguments.value(1) == "--empty") return runEmpty(app);
    if (arguments.value(1) == "--bare") return runBare(app);
    if (arguments.value(1) == "--laneward") return runLaneward(app, arguments.value(2), arguments.value(3));
    return compare();
}
