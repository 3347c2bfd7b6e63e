#include "app/window/main_window.h"

#include "app/demo/demo_centre.h"
#include "app/edits/plain_label.h"
#include "app/window/centre_making.h"
#include "app/window/first_page.h"
#include "app/window/glyphs.h"
#include "app/window/menus.h"
#include "app/window/person_chooser.h"

#include <QFileInfo>
#include <QScreen>
#include <QStatusBar>
#include <QThread>
#include <QTimer>
#include <QUuid>

namespace laneward {

namespace {

constexpr int noticed = 200;  // ms

}  // namespace

MainWindow::MainWindow(const Clock& clock, QWidget* parent) : QMainWindow(parent), m_clock(clock) {
    setWindowTitle(tr("Laneward"));
    setWindowIcon(glyph("laneward"));
    const QSize frame(16, 48);  // what a window manager may add around it
    resize(QSize(1280, 760).boundedTo(screen()->availableSize() - frame));
    buildStatus();
    m_menus = std::make_unique<Menus>(*this);
    m_menus->refresh();
}

MainWindow::~MainWindow() {
    if (m_making) m_making->wait();
}

void MainWindow::buildStatus() {
    m_centre = plainLabel({}, this);
    m_centre->setObjectName("centreName");
    m_readOnly = plainLabel(tr("read only: nothing can be changed here"), this);
    m_readOnly->setObjectName("readOnly");
    statusBar()->addPermanentWidget(m_readOnly);
    statusBar()->addPermanentWidget(m_centre);
    m_readOnly->hide();
    m_searching = plainLabel(tr("looking for a better plan…"), this);
    m_searching->setObjectName("searching");
    m_searching->hide();
    statusBar()->addPermanentWidget(m_searching);
    m_slow = new QTimer(this);
    m_slow->setSingleShot(true);
    m_slow->setInterval(noticed);
    connect(m_slow, &QTimer::timeout, m_searching, &QWidget::show);
}

void MainWindow::showSearching(bool isSearching) {
    if (!isSearching) {
        m_slow->stop();
        m_searching->hide();
    } else if (!m_searching->isVisible()) {
        m_slow->start();
    }
}

QString MainWindow::words(const Error& error) const {
    return text(error, m_workspace ? m_workspace->session().speech() : Speech{QLocale(), Zone(), UnitSystem::Metric});
}

/// The first page is made only where no centre was opened: most starts never see it.
void MainWindow::setVisible(bool visible) {
    if (visible && !m_workspace && !m_first) showFirstPage();
    QMainWindow::setVisible(visible);
}

void MainWindow::problem(const QString& line) {
    if (m_workspace)
        m_workspace->showMessage(line);
    else if (m_first)
        m_first->showProblem(line);
    else
        showFirstPage(line);
}

bool MainWindow::openCentre(const Location& location) {
    Result<std::unique_ptr<Store>> store = Store::open(location, Access::ReadWrite, Examination::Meanwhile);
    if (!store) {
        problem(words(store.error()));
        return false;
    }
    auto session = std::make_unique<Session>(*std::move(store), m_clock);
    if (!session->hasRead()) {
        const Outcome again = session->reload();
        if (!again) {
            problem(words(again.error()));
            return false;
        }
    }
    setWorkspace(new Workspace(std::move(session), this));
    Q_EMIT centreOpened(location);
    return true;
}

bool MainWindow::openTyped(const QString& fileOrUrl) {
    const Result<Location> location = Location::parse(fileOrUrl.trimmed());
    if (location) return openCentre(*location);
    problem(words(location.error()));
    return false;
}

void MainWindow::setWorkspace(Workspace* workspace) {
    delete m_person;
    m_person = nullptr;
    // A centre is closed at once, so that its file can be replaced; a first page may be in the middle of its own click.
    Workspace* before = m_workspace;
    m_workspace = workspace;
    m_first = nullptr;
    if (before) delete takeCentralWidget();
    setCentralWidget(workspace);
    if (workspace) {
        Session& session = workspace->session();
        m_person = new PersonChooser(session, this);
        statusBar()->addPermanentWidget(m_person);
        m_person->show();
        connect(workspace, &Workspace::said, this, [this](const QString& line) { statusBar()->showMessage(line, 8'000); });
        connect(&session, &Session::changed, this, &MainWindow::showStatus);
        connect(&session, &Session::searching, this, &MainWindow::showSearching);
    }
    showSearching(workspace && workspace->session().isSearching());
    showStatus();
    m_menus->refresh();
}

void MainWindow::showFirstPage(const QString& line) {
    setWorkspace(nullptr);
    m_first = new FirstPage(this);
    setCentralWidget(m_first);
    connect(m_first, &FirstPage::demoWanted, this, &MainWindow::tryDemo);
    connect(m_first, &FirstPage::openWanted, this, [this] { m_menus->open(); });
    connect(m_first, &FirstPage::setupFinished, this, &MainWindow::setUpCentre);
    if (!line.isEmpty()) m_first->showProblem(line);
}

void MainWindow::showStatus() {
    if (!m_workspace) {
        m_centre->clear();
        m_readOnly->hide();
        setWindowTitle(tr("Laneward"));
        return;
    }
    Session& session = m_workspace->session();
    const QString name = shown(session.season().centre.facts.name);
    const std::optional<Instant> saved = session.savedAt();
    m_centre->setText(saved ? tr("%1, saved %2", "centre, time").arg(name, clockTime(*saved, session.speech())) : name);
    m_readOnly->setVisible(session.isReadOnly());
    setWindowTitle(tr("%1 – Laneward", "centre").arg(name));
}

/// A year of records takes a moment to make; the window stays alive meanwhile.
void MainWindow::makeInBackground(const Location& location, const std::function<CentreFile()>& content) {
    if (m_making) return;
    if (m_first) m_first->setBusy(true, tr("The centre is being made…"));
    auto outcome = std::make_shared<Outcome>(Nothing{});
    m_making = QThread::create([=, now = m_clock.now()] { *outcome = makeCentre(location, content(), now); });
    m_making->setParent(this);
    connect(m_making, &QThread::finished, this, [this, location, outcome] {
        m_making->deleteLater();
        m_making = nullptr;
        if (m_first) m_first->setBusy(false);
        if (*outcome)
            openCentre(location);
        else
            problem(words(outcome->error()));
    });
    m_making->start();
}

void MainWindow::tryDemo() {
    const Location location{Location::Kind::Sqlite, demoCentrePath(), {}};
    if (QFileInfo::exists(location.path)) {
        openCentre(location);
        return;
    }
    makeInBackground(location, [now = m_clock.now()] { return demoCentre(now); });
}

void MainWindow::setUpCentre(const SetUp& setUp) {
    QString path = ownCentrePath();
    // Somebody who sets up a second centre keeps the first.
    for (int n = 2; QFileInfo::exists(path); ++n)
        path = QFileInfo(ownCentrePath()).path() + QStringLiteral("/centre-%1.laneward").arg(n);
    const CentreFile content{newCentre(setUp, [] { return QUuid::createUuid().toString(QUuid::WithoutBraces); }), {}};
    const Location location{Location::Kind::Sqlite, path, {}};
    if (const Outcome made = makeCentre(location, content, m_clock.now()); !made) return problem(words(made.error()));
    if (openCentre(location))
        m_workspace->showMessage(
            tr("The centre is made. Next: what its machines hold and how long they take (Ctrl+,), then the events (Ctrl+2)."));
}

}  // namespace laneward
