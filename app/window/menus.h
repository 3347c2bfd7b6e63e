// The menu bar and what its entries do. Entries that need an open centre, or one that can be written, are grey without.
#pragma once

#include <QKeySequence>
#include <QObject>
#include <QPointer>

class QAction;
class QMenu;

namespace laneward {

class MainWindow;
class Workspace;

class Menus : public QObject {
    Q_OBJECT

public:
    explicit Menus(MainWindow& window);

    /// Another centre is open, or none.
    void refresh();
    void open();

private:
    void buildFile();
    void buildEdit();
    void buildRecord();
    void buildView();
    void buildHelp();
    QAction* add(QMenu* menu, const QString& name, void (Menus::*slot)(), const QKeySequence& keys = {});
    void fillPages();

    void openOnServer();
    void startNew();
    void tryDemo();
    void importFile();
    void importCentre(const QString& path);
    void importTable(const QString& path);
    void exportEvents();
    void exportJobs();
    void exportCentre();
    void exportAs(const QString& name, const QString& filter, bool jobs);
    void backUp();
    void restoreBackup();
    void printSheet();
    void find();
    void showCentre();
    void toggleShop();
    void about();
    void keys();

    MainWindow& m_window;
    QMenu* m_edit = nullptr;
    QMenu* m_record = nullptr;
    QMenu* m_view = nullptr;
    QAction* m_shop = nullptr;
    QList<QAction*> m_needCentre;
    QList<QAction*> m_needWriting;
    QList<QPointer<QAction>> m_ofCentre;  ///< made for the open centre
};

}  // namespace laneward
