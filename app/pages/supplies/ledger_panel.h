// What came in and went out of one supply, and what was on hand after each. Nothing here is ever changed: a mistake is taken back
// by a movement the other way, with its reason.
#pragma once

#include "app/pages/supplies/ledger_rows.h"

#include <QWidget>

class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;
class QVBoxLayout;

namespace laneward {

class LedgerModel;

class LedgerPanel : public QWidget {
    Q_OBJECT

public:
    explicit LedgerPanel(Session& session, QWidget* parent = nullptr);

    void refresh();  ///< at once when it is visible, else when it is shown
    void select(const SupplyId& supply);
    SupplyId current() const;

protected:
    void showEvent(QShowEvent* event) override;

private:
    void buildChoices(QVBoxLayout* column);
    void buildList(QVBoxLayout* column);
    void buildCorrection(QVBoxLayout* column);
    void fillSupplies();
    DateRange days() const;
    void read();
    void readAfresh();
    void showEarlier();
    const LedgerRow* chosen() const;
    void showChosen();
    void takeBack();

    Session& m_session;
    LedgerModel* m_model = nullptr;
    QComboBox* m_supply = nullptr;
    QDateEdit* m_from = nullptr;
    QDateEdit* m_to = nullptr;
    QTableView* m_list = nullptr;
    QLabel* m_notes = nullptr;
    QPushButton* m_earlier = nullptr;
    QWidget* m_correction = nullptr;
    QLineEdit* m_reason = nullptr;
    QPushButton* m_back = nullptr;
    SupplyId m_wanted;
    size_t m_most = 0;
    bool m_whole = true;
    bool m_stale = true;
    bool m_filling = false;
    bool m_followsToday = true;  ///< the last day was not chosen
    QDate m_lastToday;
};

}  // namespace laneward
