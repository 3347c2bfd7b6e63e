#include "app/cli/commands.h"
#include "app/window/centre_making.h"
#include "app/window/main_window.h"
#include "app/window/style.h"

#include <QApplication>
#include <QFileInfo>
#include <QLibraryInfo>
#include <QTranslator>

#include <algorithm>
#include <cstdio>

namespace {

using namespace laneward;

void name(QCoreApplication& app) {
    app.setApplicationName("laneward");
    app.setApplicationVersion(LANEWARD_VERSION);
}

void translate(QCoreApplication& app) {
    for (const auto& [file, folder] : {std::pair(QString("laneward"), QString(":/i18n")),
                                       std::pair(QString("qtbase"), QLibraryInfo::path(QLibraryInfo::TranslationsPath))}) {
        auto* translator = new QTranslator(&app);
        // English texts stand in the source, but their plurals in a catalogue.
        if (translator->load(QLocale(), file, "_", folder) || translator->load(file + "_en", folder)) {
            app.installTranslator(translator);
        }
    }
}

/// --now is wall time of the centre, whose zone is known once it is open.
Instant fixedNow(const LocalTime& now, const Location& location) {
    const Result<std::unique_ptr<Store>> store = Store::open(location, Access::ReadOnly);
    const Result<SeasonState> season = store ? (*store)->load(Instant{0}) : Result<SeasonState>(store.error());
    return season ? zoneOf(season->centre).toInstant(now) : Zone().toInstant(now);
}

int openWindow(const Start& start) {
    applyStyle(keptTargetSize());
    const Result<Location> location = Location::parse(start.centre);
    const SystemClock running;
    const FixedClock fixed(start.now && location ? fixedNow(*start.now, *location) : Instant{});
    const Clock& clock = start.now ? static_cast<const Clock&>(fixed) : running;
    MainWindow window(clock);
    if (!location)
        window.showFirstPage(window.words(location.error()));
    else if (const std::optional<Location> kept = start.centreGiven ? std::nullopt : keptCentre())
        window.openCentre(*kept);
    else if (start.centreGiven || QFileInfo::exists(location->path))
        window.openCentre(*location);
    QObject::connect(&window, &MainWindow::centreOpened, &keepCentre);  // those that are chosen in the window
    window.show();
    return QApplication::exec();
}

int run(QCoreApplication& app) {
    name(app);
    translate(app);
    Start start;
    return runCommand(app.arguments(), start).value_or(2);
}

/// A command needs no display. Only a sheet as PDF and a film as picture need fonts, which come without one, too.
int runWithoutWindow(const QStringList& arguments, int argc, char** argv) {
    const bool fonts = std::any_of(arguments.begin(), arguments.end(),
                                   [](const QString& a) { return a.startsWith("--pdf") || a.startsWith("--png"); });
    if (!fonts) {
        QCoreApplication app(argc, argv);
        return run(app);
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    if (qEnvironmentVariableIsEmpty("XDG_RUNTIME_DIR")) {
        // Scheduled printing runs without a session; standard error is for our own messages.
        qInstallMessageHandler([](QtMsgType type, const QMessageLogContext& context, const QString& line) {
            if (!line.startsWith("QStandardPaths: XDG_RUNTIME_DIR"))
                fputs(qPrintable(qFormatLogMessage(type, context, line) + '\n'), stderr);
        });
    }
    QGuiApplication app(argc, argv);
    return run(app);
}

}  // namespace

int main(int argc, char** argv) {
    QStringList arguments;
    for (int i = 0; i < argc; ++i)
        arguments.append(QString::fromLocal8Bit(argv[i]));
    if (needsNoWindow(arguments)) return runWithoutWindow(arguments, argc, argv);
    QApplication app(argc, argv);
    name(app);
    translate(app);
    Start start;
    if (const std::optional<int> status = runCommand(app.arguments(), start)) return *status;
    return openWindow(start);
}
