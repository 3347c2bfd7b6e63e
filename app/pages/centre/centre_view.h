// What the centre is: its settings, machines, people, shifts, and what is out of service. Everything here can be undone.
#pragma once

#include "app/edits/session.h"
#include "app/pages/centre/centre_rows.h"

#include <QWidget>

class QTabWidget;

namespace laneward {

class CentreTab;
class OutageForm;
class PersonForm;
class ShiftForm;

class CentreView : public QWidget {
    Q_OBJECT

public:
    explicit CentreView(Session& session, QWidget* parent = nullptr);

    enum Tab { House, Machines, People, Shifts, Outages, TabCount };
    void showTab(Tab tab);

Q_SIGNALS:
    void closed();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    CentreList listOf(Tab tab) const;
    CentreTab* add(Tab tab, const QString& title, const QString& name);
    void buildHouse();
    void buildMachines();
    void buildPeople();
    void buildShifts();
    void buildOutages();
    void refresh();
    template <class Row>
    void takeOut(const std::vector<Row>& rows, const QString& id, const QString& name);
    void endOutage(const QString& id);

    Session& m_session;
    QTabWidget* m_tabs = nullptr;
    std::array<CentreTab*, TabCount> m_lists{};
};

}  // namespace laneward
