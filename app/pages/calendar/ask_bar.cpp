#include "app/pages/calendar/ask_bar.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

namespace laneward {

AskBar::AskBar(QWidget* parent) : QFrame(parent), m_row(new QHBoxLayout(this)), m_question(new QLabel(this)) {
    setFrameShape(QFrame::StyledPanel);
    m_question->setTextFormat(Qt::PlainText);
    m_question->setWordWrap(true);
    m_row->addWidget(m_question, 1);
    hide();
}

void AskBar::ask(const QString& question, std::vector<Answer> answers) {
    for (QPushButton* old : m_buttons) {
        old->hide();
        old->deleteLater();
    }
    m_buttons.clear();
    m_question->setText(question);
    setAccessibleName(question);
    answers.push_back({tr("Leave it (Esc)"), nullptr});
    for (Answer& answer : answers) {
        auto* button = new QPushButton(answer.text, this);
        button->setMinimumHeight(28);
        connect(button, &QPushButton::clicked, this, [this, chosen = std::move(answer.chosen)] {
            hide();
            if (chosen)
                chosen();
            else
                Q_EMIT left();
        });
        m_row->addWidget(button);
        m_buttons.push_back(button);
    }
    show();
    m_buttons.front()->setFocus();
}

void AskBar::leave() {
    if (isHidden()) return;
    hide();
    Q_EMIT left();
}

QString AskBar::question() const { return isHidden() ? QString() : m_question->text(); }

void AskBar::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    auto* focused = enter ? qobject_cast<QPushButton*>(focusWidget()) : nullptr;
    if (event->key() == Qt::Key_Escape)
        leave();
    else if (focused)
        focused->click();
    else
        QFrame::keyPressEvent(event);
}

}  // namespace laneward
