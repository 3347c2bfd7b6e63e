// The first start: 'Try the demo centre' or 'Set up my centre', done in two minutes.
#pragma once

#include "app/window/setup_form.h"

#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;
class QStackedLayout;
class QVBoxLayout;

namespace laneward {

class FirstPage : public QWidget {
    Q_OBJECT

public:
    explicit FirstPage(QWidget* parent = nullptr);

    void showProblem(const QString& line);
    void showSetup();
    void setBusy(bool busy, const QString& what = {});

Q_SIGNALS:
    void demoWanted();
    void openWanted();
    void setupFinished(const SetUp& setUp);

private:
    QWidget* buildChoice();
    QPushButton* addChoice(QVBoxLayout* column, const QString& name, const QString& words);

    QStackedLayout* m_stack = nullptr;
    QWidget* m_choice = nullptr;
    SetupForm* m_setup = nullptr;
    QLabel* m_problem = nullptr;
    QProgressBar* m_progress = nullptr;
    QList<QPushButton*> m_buttons;
};

}  // namespace laneward
