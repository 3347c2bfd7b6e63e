// The panel beside the house view: why the selected thing stands where it stands, and what can be done about it.
#pragma once

#include "app/pages/lanes/why_text.h"

#include <QFrame>

class QGridLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace laneward {

class WhyPanel : public QFrame {
    Q_OBJECT

public:
    explicit WhyPanel(QWidget* parent = nullptr);

    void show(const WhyText& why);
    void showNothing();
    /// Which of the actions make sense for what is shown.
    void setActions(bool edit, bool record);
    QString allText() const;  ///< every word shown, for copying

Q_SIGNALS:
    void printAsked();
    void recordAsked();
    void editAsked();

private:
    void buildBody();
    void buildActions();
    void clear();
    void addSection(const WhySection& section);
    QLabel* label(const QString& words, bool strong);
    QGridLayout* addTable();

    QVBoxLayout* m_column;
    QWidget* m_body = nullptr;
    QVBoxLayout* m_rows = nullptr;
    QPushButton* m_print = nullptr;
    QPushButton* m_record = nullptr;
    QPushButton* m_edit = nullptr;
    QString m_words;
};

}  // namespace laneward
