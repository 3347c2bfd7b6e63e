// What falls due, and when it fits; recording a service.
#pragma once

#include "app/edits/page.h"
#include "app/edits/supply_asker.h"

class QCheckBox;
class QLabel;
class QPushButton;
class QTableView;
class QTimer;
class QVBoxLayout;

namespace laneward {

class DueModel;
class ServiceForm;
struct DutyDue;

class ServicePage : public Page {
    Q_OBJECT

public:
    explicit ServicePage(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("Service"); }
    QString iconName() const override { return QStringLiteral("service"); }
    QString question() const override { return tr("What falls due, and what is wearing?"); }
    QString headline() const override { return m_headline; }
    void refresh() override;
    bool isBusy() const { return m_asker.isBusy(); }

protected:
    void hideEvent(QHideEvent* event) override;

private:
    void build() override;
    void buildTools(QVBoxLayout* column);
    void buildList(QVBoxLayout* column);
    void take(const std::shared_ptr<const SupplyAnswer>& answer);
    void takeFailure(const Error& why);
    void showAll();
    void showParts();
    void recordChosen();
    const DutyDue* chosen() const;

    SupplyAsker m_asker;
    std::shared_ptr<const SupplyAnswer> m_answer;
    QString m_headline;
    DueModel* m_model = nullptr;
    QTableView* m_list = nullptr;
    QCheckBox* m_onlySoon = nullptr;
    QPushButton* m_record = nullptr;
    QLabel* m_empty = nullptr;
    QLabel* m_findings = nullptr;
    QWidget* m_tools = nullptr;
    ServiceForm* m_form = nullptr;
};

}  // namespace laneward
