// The sheet of a machine: its meters and counters, and each item's duties with what is known of them. Items are made from the
// templates or empty, changed, retired and brought back; what was done before the program came is typed once.
#pragma once

#include "app/edits/supply_asker.h"
#include "app/pages/service/machine_rows.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QHBoxLayout;
class QLabel;
class QPushButton;
class QTableView;
class QVBoxLayout;

namespace laneward {

class CounterForm;
class ItemForm;
class LastDoneForm;
class MachineForm;

class MachinesPanel : public QWidget {
    Q_OBJECT

public:
    explicit MachinesPanel(Session& session, QWidget* parent = nullptr);

    /// `answer` may be null: not known yet.
    void show(const std::shared_ptr<const SupplyAnswer>& answer);
    /// Items, records and counters as they are stored now.
    void refresh();

Q_SIGNALS:
    void recordWanted(const laneward::DutyId& duty);

private:
    void buildTop(QVBoxLayout* column);
    void buildList(QVBoxLayout* column);
    void buildDeeds(QVBoxLayout* column);
    void buildForms(QVBoxLayout* column);
    QPushButton* addButton(QHBoxLayout* row, const QString& text, const char* name, void (MachinesPanel::*deed)());
    MachineSheet sheet() const;
    MachineId machine() const;
    const ServiceItem* chosen() const;
    QString chosenRowId() const;
    void fillMachines();
    void fill();
    void showParts();
    void newItem();
    void changeItem();
    void retireItem();
    void addUsual();
    void readCounter();
    void typeLastDone();
    void changeMachine();
    void recordService();

    Session& m_session;
    std::shared_ptr<const SupplyAnswer> m_answer;
    QWidget* m_sheet = nullptr;
    QComboBox* m_machine = nullptr;
    QCheckBox* m_retired = nullptr;
    QLabel* m_meters = nullptr;
    QLabel* m_empty = nullptr;
    PlainRows* m_rows = nullptr;
    QTableView* m_list = nullptr;
    QPushButton* m_counter = nullptr;
    QPushButton* m_weight = nullptr;
    QPushButton* m_lastDone = nullptr;
    QPushButton* m_new = nullptr;
    QPushButton* m_usual = nullptr;
    QPushButton* m_change = nullptr;
    QPushButton* m_retire = nullptr;
    QPushButton* m_record = nullptr;
    ItemForm* m_itemForm = nullptr;
    CounterForm* m_counterForm = nullptr;
    LastDoneForm* m_lastDoneForm = nullptr;
    MachineForm* m_machineForm = nullptr;
    bool m_filling = false;
};

}  // namespace laneward
