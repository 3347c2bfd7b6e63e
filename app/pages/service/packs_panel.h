// Packs: where each is, whether it lasts tonight, how it fades, and which is to be on the charger.
#pragma once

#include "app/edits/session.h"
#include "app/edits/supply_asker.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QTableView;
class QVBoxLayout;

namespace laneward {

class EditForm;
class PackForm;
class PackLimitsForm;
class PlainRows;
class PlotView;

class PacksPanel : public QWidget {
    Q_OBJECT

public:
    explicit PacksPanel(Session& session, QWidget* parent = nullptr);

    /// Of an outlook; null = not known yet.
    void show(const std::shared_ptr<const SupplyAnswer>& answer);
    void refresh();

private:
    void buildList(QVBoxLayout* column);
    void buildBelow(QVBoxLayout* column);
    void fill();
    void showChosen();
    void open(bool limits);
    std::optional<ItemId> chosen() const;

    Session& m_session;
    std::shared_ptr<const SupplyAnswer> m_answer;
    QWidget* m_sheet = nullptr;
    QLabel* m_sentence = nullptr;
    PlainRows* m_rows = nullptr;
    QTableView* m_list = nullptr;
    QPushButton* m_note = nullptr;
    QPushButton* m_limits = nullptr;
    QLabel* m_turns = nullptr;
    QLabel* m_trend = nullptr;
    PlotView* m_plot = nullptr;
    QLabel* m_spoken = nullptr;
    PackForm* m_form = nullptr;
    PackLimitsForm* m_limitsForm = nullptr;
    bool m_filling = false;
};

}  // namespace laneward
