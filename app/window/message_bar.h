// One line for what went wrong or needs to be known, in the page instead of a dialog.
#pragma once

#include <QFrame>

class QLabel;

namespace laneward {

class MessageBar : public QFrame {
    Q_OBJECT

public:
    explicit MessageBar(QWidget* parent = nullptr);

    void show(const QString& line);
    QString text() const;

private:
    QLabel* m_text = nullptr;
};

}  // namespace laneward
