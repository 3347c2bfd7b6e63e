// A question asked in the page instead of in front of it: a line of words and a button per answer; Esc answers nothing.
#pragma once

#include <QFrame>

#include <functional>
#include <vector>

class QHBoxLayout;
class QLabel;
class QPushButton;

namespace laneward {

class AskBar : public QFrame {
    Q_OBJECT

public:
    struct Answer {
        QString text;
        std::function<void()> chosen;
        std::function<void()> considered = {};  ///< the focus or the pointer is on it
    };

    explicit AskBar(QWidget* parent = nullptr);

    /// Shows the question and puts the focus on the first answer.
    void ask(const QString& question, std::vector<Answer> answers);
    void leave();  ///< hides without an answer
    QString question() const;

Q_SIGNALS:
    void left();  ///< Esc, or the last button

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QHBoxLayout* m_row;
    QLabel* m_question;
    std::vector<QPushButton*> m_buttons;
    std::vector<std::function<void()>> m_considered;  ///< by button
};

}  // namespace laneward
