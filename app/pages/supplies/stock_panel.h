// What will run out, and when: a row for each supply, and below it what is known of the chosen one. Supplies are entered, changed
// and retired here.
#pragma once

#include "app/edits/supply_asker.h"

#include <QWidget>

class QComboBox;
class QHBoxLayout;
class QLabel;
class QPushButton;
class QSplitter;
class QTableView;
class QVBoxLayout;

namespace laneward {

class StockDetail;
class StockModel;
class SupplyForm;

class StockPanel : public QWidget {
    Q_OBJECT

public:
    explicit StockPanel(Session& session, QWidget* parent = nullptr);

    /// `answer` may be null: not known yet.
    void show(const std::shared_ptr<const SupplyAnswer>& answer);
    void select(const SupplyId& supply);
    SupplyId current() const;

Q_SIGNALS:
    void chosen(const laneward::SupplyId& supply);

private:
    void buildTools();
    void buildDeeds(QHBoxLayout* row);
    void buildForm(QVBoxLayout* column);
    void showParts();
    const Supply* chosenSupply() const;
    void buildList();
    void fit();
    void filter();
    void showChosen();

    Session& m_session;
    std::shared_ptr<const SupplyAnswer> m_answer;
    StockModel* m_model = nullptr;
    QTableView* m_list = nullptr;
    QComboBox* m_group = nullptr;
    QLabel* m_empty = nullptr;
    QWidget* m_tools = nullptr;
    QSplitter* m_split = nullptr;
    StockDetail* m_detail = nullptr;
    QPushButton* m_change = nullptr;
    QPushButton* m_retire = nullptr;
    SupplyForm* m_form = nullptr;
    SupplyId m_shown;
    bool m_filling = false;
};

}  // namespace laneward
