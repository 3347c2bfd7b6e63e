// The window: menus, status line, and either the first page or an open centre.
//
//     MainWindow window(clock);
//     window.openCentre(location);
//     window.show();
#pragma once

#include "app/window/workspace.h"
#include "core/base/clock.h"

#include <QMainWindow>

class QLabel;
class QThread;
class QTimer;

namespace laneward {

class FirstPage;
class Menus;
class PersonChooser;
struct SetUp;
struct CentreFile;

class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    /// `clock` outlives the window.
    explicit MainWindow(const Clock& clock, QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Opens it, or says on the page that is shown why not.
    bool openCentre(const Location& location);
    void showFirstPage(const QString& problem = {});
    /// Makes the demo centre when it is missing, and opens it.
    void tryDemo();
    void setUpCentre(const SetUp& setUp);

    void setVisible(bool visible) override;

    Workspace* workspace() const { return m_workspace; }
    FirstPage* firstPage() const { return m_first; }  ///< none while a centre is open
    const Clock& clock() const { return m_clock; }
    /// A file, or a server as postgresql://user@host/database.
    bool openTyped(const QString& fileOrUrl);
    /// Says it on the page that is shown.
    void problem(const QString& line);
    QString words(const Error& error) const;

Q_SIGNALS:
    void centreOpened(const laneward::Location& location);

private:
    void buildStatus();
    void setWorkspace(Workspace* workspace);
    void showStatus();
    void showSearching(bool isSearching);
    void makeInBackground(const Location& location, const std::function<CentreFile()>& content);

    const Clock& m_clock;
    Workspace* m_workspace = nullptr;
    FirstPage* m_first = nullptr;
    PersonChooser* m_person = nullptr;
    QLabel* m_centre = nullptr;
    QLabel* m_readOnly = nullptr;
    QLabel* m_searching = nullptr;
    QTimer* m_slow = nullptr;  ///< a search takes longer than one notices
    QThread* m_making = nullptr;
    std::unique_ptr<Menus> m_menus;
};

}  // namespace laneward
