#include "app/demo/demo_centre.h"
#include "app/edits/plain_label.h"
#include "app/window/centre_making.h"
#include "app/window/exchange.h"
#include "app/window/first_page.h"
#include "app/window/import_panel.h"
#include "app/window/main_window.h"
#include "app/window/menus.h"
#include "app/window/style.h"

#include <QAction>
#include <QApplication>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QInputDialog>
#include <QMessageBox>
#include <QPushButton>

namespace laneward {

namespace {

Location file(const QString& path) { return {Location::Kind::Sqlite, path, {}}; }

QString ending(const QString& path, const QString& suffix) { return QFileInfo(path).suffix().isEmpty() ? path + suffix : path; }

}  // namespace

void Menus::open() {
    const QString path = QFileDialog::getOpenFileName(&m_window, tr("Open a centre"), QFileInfo(ownCentrePath()).path(),
                                                      tr("Centres (*.laneward);;All files (*)"));
    if (!path.isEmpty()) m_window.openCentre(file(path));
}

void Menus::openOnServer() {
    bool chosen = false;
    const QString typed =
        QInputDialog::getText(&m_window, tr("Open a centre on a server"),
                              tr("Where it is, as postgresql://user@host/database; the password comes from where "
                                 "PostgreSQL keeps it:"),
                              QLineEdit::Normal, QStringLiteral("postgresql://"), &chosen);
    if (chosen && !typed.isEmpty()) m_window.openTyped(typed);
}

void Menus::startNew() {
    m_window.showFirstPage();
    m_window.firstPage()->showSetup();
}

void Menus::tryDemo() { m_window.tryDemo(); }

void Menus::importFile() {
    const QString path =
        QFileDialog::getOpenFileName(&m_window, tr("Import"), {}, tr("Calendars, tables and centres (*.ics *.csv *.json)"));
    if (path.isEmpty()) return;
    if (QFileInfo(path).suffix().toLower() == u"json") return importCentre(path);
    Workspace& workspace = *m_window.workspace();
    if (QFileInfo(path).suffix().toLower() == u"csv") return importTable(path);
    auto* panel = new ImportPanel(workspace.session(), path, &workspace);
    connect(panel, &ImportPanel::closed, &workspace, &Workspace::closePanel);
    workspace.showPanel(panel);
}

void Menus::importTable(const QString& path) {
    Session& session = m_window.workspace()->session();
    const Result<std::vector<Change>> changes = csvChanges(session, path);
    if (!changes) return m_window.problem(m_window.words(changes.error()));
    const QString name = tr("Import %1").arg(shown(QFileInfo(path).fileName()));
    if (changes->empty())
        Q_EMIT session.said(tr("Everything in %1 is already here.").arg(path));
    else
        session.apply(name, *changes);
}

/// A whole centre comes in beside the open one, as a new file: nothing is replaced.
void Menus::importCentre(const QString& path) {
    QFile in(path);
    if (!in.open(QIODevice::ReadOnly))
        return m_window.problem(m_window.words(fault(ErrorKind::Io, "file.unreadable", path, {in.errorString()})));
    const Result<CentreFile> content = readCentreFile(in, QFileInfo(path).fileName());
    if (!content) return m_window.problem(m_window.words(content.error()));
    const QString name = QFileInfo(path).completeBaseName() + QStringLiteral(".laneward");
    const QString to = QFileDialog::getSaveFileName(&m_window, tr("Keep the imported centre as"),
                                                    QFileInfo(ownCentrePath()).path() + u'/' + name, tr("Centres (*.laneward)"));
    if (to.isEmpty()) return;
    const Outcome made = makeCentre(file(ending(to, ".laneward")), *content, m_window.clock().now());
    if (!made) return m_window.problem(m_window.words(made.error()));
    m_window.openCentre(file(ending(to, ".laneward")));
}

void Menus::exportEvents() { exportAs(tr("events.ics"), tr("Calendar (*.ics)"), false); }

void Menus::exportJobs() { exportAs(tr("jobs.ics"), tr("Calendar (*.ics);;CSV (*.csv)"), true); }

void Menus::exportCentre() { exportAs(tr("centre.json"), tr("Centre file (*.json)"), false); }

void Menus::exportAs(const QString& name, const QString& filter, bool jobs) {
    const QString path = QFileDialog::getSaveFileName(&m_window, tr("Export"), name, filter);
    if (path.isEmpty()) return;
    Session& session = m_window.workspace()->session();
    if (const Outcome written = exportTo(session, path, jobs); !written) return m_window.problem(m_window.words(written.error()));
    Q_EMIT session.said(tr("Exported to %1").arg(path));
}

void Menus::backUp() {
    const QString folder = QFileDialog::getExistingDirectory(&m_window, tr("Back up into"));
    if (folder.isEmpty()) return;
    Session& session = m_window.workspace()->session();
    const Result<QString> made = session.store().backup(folder, session.now());
    if (!made) return m_window.problem(m_window.words(made.error()));
    Q_EMIT session.said(tr("Verified backup: %1").arg(*made));
}

void Menus::restoreBackup() {
    Location location = file(ownCentrePath());
    if (m_window.workspace()) location = m_window.workspace()->session().store().location();
    const QString backup =
        QFileDialog::getOpenFileName(&m_window, tr("Restore a backup"), backupFolderOf(location).value_or(QString()),
                                     tr("Centres (*.laneward);;All files (*)"));
    if (backup.isEmpty()) return;
    const QString question = tr("%1 takes the place of %2. What was entered since that backup is no longer shown; the replaced "
                                "file is kept beside it.")
                                 .arg(backup, location.shown());
    QMessageBox box(QMessageBox::Warning, tr("Restore a backup"), question, QMessageBox::Cancel, &m_window);
    box.setTextFormat(Qt::PlainText);
    const QAbstractButton* yes = box.addButton(tr("Restore"), QMessageBox::AcceptRole);
    box.exec();
    if (box.clickedButton() != yes) return;
    m_window.showFirstPage();
    if (const Outcome restored = restore(backup, location, m_window.clock().now()); !restored) {
        const QString why = m_window.words(restored.error());
        m_window.openCentre(location);
        return m_window.problem(why);
    }
    m_window.openCentre(location);
}

void Menus::printSheet() {
    Workspace& workspace = *m_window.workspace();
    workspace.showSheet(workspace.session().today());
}

void Menus::find() { m_window.workspace()->focusSearch(); }

void Menus::showCentre() { m_window.workspace()->showCentre(); }

void Menus::toggleShop() {
    const TargetSize size = m_shop->isChecked() ? TargetSize::Shop : TargetSize::Usual;
    keepTargetSize(size);
    applyStyle(size);
}

void Menus::about() {
    QMessageBox box(QMessageBox::NoIcon, tr("About Laneward"),
                    tr("Laneward %1\nLane care for bowling centres: plan, print and record the oil on the lanes.\n\n"
                       "Free software under the GNU General Public License, version 3 or later. It comes without any warranty.")
                        .arg(QCoreApplication::applicationVersion()),
                    QMessageBox::Close, &m_window);
    box.setTextFormat(Qt::PlainText);
    box.exec();
}

void Menus::keys() {
    const QStringList lines{tr("Ctrl+1 to 7: Today, Calendar, Lanes, Supplies, Service, Patterns, History"),
                            tr("Ctrl+F: find an event or a lane"),
                            tr("Ctrl+Enter: record the selected job as planned"),
                            tr("Ctrl+Shift+Enter: record it with changes"),
                            tr("Ctrl+U: record an unplanned run: type the lanes, press Enter"),
                            tr("Ctrl+I: record an incident"),
                            tr("Ctrl+P: tonight's sheet"),
                            tr("Ctrl+G: the evening step by step; Space: done, Backspace: one step back"),
                            tr("Ctrl+,: the centre: machines, people, shifts, what is out of service"),
                            tr("Ctrl+Z, Ctrl+Shift+Z: undo, redo"),
                            tr("Escape: leave a form or the sheet")};
    QMessageBox box(QMessageBox::NoIcon, tr("Keys"), lines.join(u'\n'), QMessageBox::Close, &m_window);
    box.setTextFormat(Qt::PlainText);
    box.exec();
}

}  // namespace laneward
