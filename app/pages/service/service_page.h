// What falls due and when it fits; what each machine has and what its parts take; how parts wear. A tab is a panel with show()
// for the outlook and refresh() for another state.
#pragma once

#include "app/edits/page.h"
#include "app/edits/supply_asker.h"

class QTabWidget;

namespace laneward {

class BusyBar;
class DuePanel;
class MachinesPanel;
class PacksPanel;
class WearPanel;

class ServicePage : public Page {
    Q_OBJECT

public:
    explicit ServicePage(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("Service"); }
    QString iconName() const override { return QStringLiteral("service"); }
    QString question() const override { return tr("What falls due, and what is wearing?"); }
    QString headline() const override { return m_headline; }
    void refresh() override;
    bool isBusy() const;  ///< working the outlook out, or reading what wears

protected:
    void hideEvent(QHideEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build() override;
    void ask();
    void stop();
    void take(const std::shared_ptr<const SupplyAnswer>& answer);
    void takeFailure(const Error& why);
    void showAll();
    void say();

    SupplyAsker m_asker;
    std::shared_ptr<const SupplyAnswer> m_answer;
    QString m_headline;
    BusyBar* m_busy = nullptr;
    QTabWidget* m_tabs = nullptr;
    DuePanel* m_due = nullptr;
    MachinesPanel* m_machines = nullptr;
    WearPanel* m_wear = nullptr;
    PacksPanel* m_packs = nullptr;
};

}  // namespace laneward
