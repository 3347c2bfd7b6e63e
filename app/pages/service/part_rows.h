// The parts that a duty takes, being chosen: a row for each with its amount. A row without a part is told by the faults of the
// item, and stays until it is mended or taken out.
#pragma once

#include "app/edits/session.h"

#include <QWidget>

class QComboBox;
class QPushButton;
class QVBoxLayout;

namespace laneward {

class QuantityBox;

class PartRows : public QWidget {
    Q_OBJECT

public:
    explicit PartRows(Session& session, QWidget* parent = nullptr);

    void show(const std::vector<PartNeed>& parts);
    std::vector<PartNeed> parts() const;

Q_SIGNALS:
    void edited();

private:
    struct Row {
        QWidget* box;
        QComboBox* supply;
        QuantityBox* amount;
    };

    void add(const PartNeed& part);
    void takeOut(QWidget* box);
    void supplyChosen(const Row& row);

    Session& m_session;
    std::vector<Row> m_rows;
    QVBoxLayout* m_column = nullptr;
    QPushButton* m_add = nullptr;
};

}  // namespace laneward
