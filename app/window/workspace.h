// An open centre on the screen: rail, headline, clock, search, the message line, and the pages.
#pragma once

#include "app/edits/page.h"

class QLabel;
class QStackedWidget;

namespace laneward {

class BackupKeeper;
class ForecastKeeper;
class MessageBar;
class Rail;
class Search;
class SheetView;
struct Found;

class Workspace : public QWidget {
    Q_OBJECT

public:
    explicit Workspace(std::unique_ptr<Session> session, QWidget* parent = nullptr);
    ~Workspace() override;

    Session& session() { return *m_session; }
    const std::vector<Page*>& pages() const { return m_pages; }
    Page* currentPage() const;
    void showPage(int page);
    void showSheet(QDate day);
    void showGuide();
    void showCentre();
    void showMessage(const QString& line);
    void focusSearch();
    /// Shows a panel in place of the page until it closes; the workspace owns it.
    void showPanel(QWidget* panel);
    void closePanel();

Q_SIGNALS:
    void pageChanged(int page);
    void said(const QString& line);

private:
    void buildFrame();
    QWidget* buildHead();
    void buildPages();
    void addPage(Page* page);
    void connectSession();
    void startTimers();
    void showHeadline();
    void showClock();
    void go(const Found& found);
    template <class Show>
    void goTo(const char* page, Show show);

    std::unique_ptr<Session> m_session;
    std::vector<Page*> m_pages;
    Rail* m_rail = nullptr;
    QLabel* m_headline = nullptr;
    QLabel* m_clock = nullptr;
    Search* m_search = nullptr;
    MessageBar* m_message = nullptr;
    QStackedWidget* m_stack = nullptr;
    SheetView* m_sheet = nullptr;
    QWidget* m_panel = nullptr;
    ForecastKeeper* m_keeper = nullptr;
    BackupKeeper* m_backups = nullptr;
    int m_current = 0;
};

}  // namespace laneward
