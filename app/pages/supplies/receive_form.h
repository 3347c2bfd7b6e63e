// What arrived of an order: filled in with all that is missing, so that two clicks receive a whole delivery.
#pragma once

#include "app/edits/session.h"
#include "app/pages/supplies/order_model.h"

#include <QFrame>

class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace laneward {

class QuantityBox;

class ReceiveForm : public QFrame {
    Q_OBJECT

public:
    explicit ReceiveForm(Session& session, QWidget* parent = nullptr);

    void open(const TrackedOrder& order);
    void leave();
    /// Keeps what is typed while the order is the same; leaves when it can no longer be received.
    void refresh(const TrackedOrder* order);

Q_SIGNALS:
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Line {
        QuantityBox* amount;
        QLineEdit* lot;
    };

    void fill();
    void addLine(QGridLayout* grid, size_t n);
    void book();
    void refuse(const QString& why, QWidget* where);

    Session& m_session;
    TrackedOrder m_order;
    std::vector<Line> m_lines;
    QVBoxLayout* m_column = nullptr;
    QLabel* m_title = nullptr;
    QWidget* m_fields = nullptr;
    QLabel* m_problem = nullptr;
    QPushButton* m_book = nullptr;
};

}  // namespace laneward
