// What falls due as a list on one date axis, and recording a service below it.
#pragma once

#include "app/edits/supply_asker.h"

#include <QWidget>

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;
class QVBoxLayout;

namespace laneward {

class DueModel;
class ServiceForm;

class DuePanel : public QWidget {
    Q_OBJECT

public:
    explicit DuePanel(Session& session, QWidget* parent = nullptr);

    /// `answer` may be null: not known yet.
    void show(const std::shared_ptr<const SupplyAnswer>& answer);
    /// The items and records as they are stored now.
    void refresh();
    /// Opens the form for that duty, if it is in the list.
    void recordDuty(const DutyId& duty);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void buildTools(QVBoxLayout* column);
    void buildList(QVBoxLayout* column);
    void narrow();
    void showParts();
    void recordChosen();
    const DutyDue* chosen() const;

    Session& m_session;
    DueModel* m_model = nullptr;
    QTableView* m_list = nullptr;
    QLineEdit* m_find = nullptr;
    QCheckBox* m_onlySoon = nullptr;
    QPushButton* m_record = nullptr;
    QLabel* m_empty = nullptr;
    QLabel* m_none = nullptr;
    QLabel* m_findings = nullptr;
    QWidget* m_tools = nullptr;
    ServiceForm* m_form = nullptr;
};

}  // namespace laneward
