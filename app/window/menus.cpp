#include "app/window/menus.h"

#include "app/window/main_window.h"
#include "app/window/style.h"

#include <QAction>
#include <QMenu>
#include <QMenuBar>

namespace laneward {

Menus::Menus(MainWindow& window) : QObject(&window), m_window(window) {
    buildFile();
    buildEdit();
    buildRecord();
    buildView();
    buildHelp();
}

QAction* Menus::add(QMenu* menu, const QString& name, void (Menus::*slot)(), const QKeySequence& keys) {
    QAction* action = menu->addAction(name);
    action->setShortcut(keys);
    connect(action, &QAction::triggered, this, slot);
    return action;
}

void Menus::buildFile() {
    QMenu* file = m_window.menuBar()->addMenu(tr("&File"));
    add(file, tr("&Open a centre…"), &Menus::open, QKeySequence::Open);
    add(file, tr("Open a centre on a &server…"), &Menus::openOnServer);
    add(file, tr("&New centre…"), &Menus::startNew, QKeySequence::New);
    add(file, tr("&Demo centre"), &Menus::tryDemo);
    file->addSeparator();
    m_needWriting.append(add(file, tr("&Import…"), &Menus::importFile));
    QMenu* out = file->addMenu(tr("&Export"));
    m_needCentre.append(add(out, tr("&Events as calendar (.ics)…"), &Menus::exportEvents));
    m_needCentre.append(add(out, tr("&Jobs as calendar or list (.ics, .csv)…"), &Menus::exportJobs));
    m_needCentre.append(add(out, tr("&Whole centre (.json)…"), &Menus::exportCentre));
    file->addSeparator();
    m_needCentre.append(add(file, tr("&Back up…"), &Menus::backUp));
    add(file, tr("&Restore a backup…"), &Menus::restoreBackup);
    file->addSeparator();
    m_needCentre.append(add(file, tr("&Print tonight's sheet…"), &Menus::printSheet, QKeySequence::Print));
    file->addSeparator();
    QAction* quit = file->addAction(tr("&Quit"));
    quit->setShortcut(QKeySequence::Quit);
    connect(quit, &QAction::triggered, &m_window, &QWidget::close);
}

void Menus::buildEdit() {
    m_edit = m_window.menuBar()->addMenu(tr("&Edit"));
    m_needCentre.append(add(m_edit, tr("&Find"), &Menus::find, QKeySequence::Find));
    m_needCentre.append(
        add(m_edit, tr("The &centre: machines, people, shifts…"), &Menus::showCentre, QKeySequence(Qt::CTRL | Qt::Key_Comma)));
}

void Menus::buildRecord() { m_record = m_window.menuBar()->addMenu(tr("&Record")); }

void Menus::buildView() {
    m_view = m_window.menuBar()->addMenu(tr("&View"));
    m_shop = m_view->addAction(tr("&Shop setting: large targets"));
    m_shop->setCheckable(true);
    m_shop->setChecked(keptTargetSize() == TargetSize::Shop);
    connect(m_shop, &QAction::toggled, this, &Menus::toggleShop);
    m_view->addSeparator();
}

void Menus::buildHelp() {
    QMenu* help = m_window.menuBar()->addMenu(tr("&Help"));
    add(help, tr("&Keys"), &Menus::keys, QKeySequence::HelpContents);
    add(help, tr("&About Laneward"), &Menus::about);
}

void Menus::refresh() {
    for (const QPointer<QAction>& action : std::as_const(m_ofCentre))
        delete action;
    m_ofCentre.clear();
    const Workspace* workspace = m_window.workspace();
    for (QAction* action : std::as_const(m_needCentre))
        action->setEnabled(workspace);
    for (QAction* action : std::as_const(m_needWriting))
        action->setEnabled(workspace && !m_window.workspace()->session().isReadOnly());
    m_record->menuAction()->setVisible(workspace);
    m_edit->menuAction()->setVisible(workspace);
    if (workspace) fillPages();
}

void Menus::fillPages() {
    Workspace& workspace = *m_window.workspace();
    QUndoStack& stack = workspace.session().undoStack();
    QAction* undo = stack.createUndoAction(m_edit, tr("&Undo"));
    QAction* redo = stack.createRedoAction(m_edit, tr("&Redo"));
    undo->setShortcut(QKeySequence::Undo);
    redo->setShortcuts(QKeySequence::Redo);
    m_edit->insertActions(m_edit->actions().value(0), {undo, redo});
    m_ofCentre.append({undo, redo});
    for (size_t i = 0; i < workspace.pages().size(); ++i) {
        Page* page = workspace.pages()[i];
        QAction* show = m_view->addAction(page->title());
        connect(show, &QAction::triggered, &workspace, [&workspace, i] { workspace.showPage(int(i)); });
        m_ofCentre.append(show);
        if (page->iconName() != u"today") continue;
        // The page's own actions, so that each has one shortcut wherever the keyboard is.
        for (QAction* action : page->actions())
            m_record->addAction(action);
    }
}

}  // namespace laneward
