// The rail at the leading edge: one button a page, icon and word, Ctrl+1 and onwards.
#pragma once

#include <QFrame>

class QButtonGroup;
class QVBoxLayout;

namespace laneward {

class Rail : public QFrame {
    Q_OBJECT

public:
    explicit Rail(QWidget* parent = nullptr);

    void addPage(const QString& title, const QString& iconName);
    void setCurrent(int page);

Q_SIGNALS:
    void pageWanted(int page);

private:
    QVBoxLayout* m_column = nullptr;
    QButtonGroup* m_buttons = nullptr;
};

}  // namespace laneward
