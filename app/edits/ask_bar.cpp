#include "app/edits/ask_bar.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

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
    m_considered.clear();
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
        button->installEventFilter(this);
        m_considered.push_back(std::move(answer.considered));
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

bool AskBar::eventFilter(QObject* watched, QEvent* event) {
    const bool nears = event->type() == QEvent::FocusIn || event->type() == QEvent::Enter;
    const auto button = std::find(m_buttons.begin(), m_buttons.end(), watched);
    if (nears && button != m_buttons.end()) {
        const auto considered = m_considered[size_t(button - m_buttons.begin())];
        if (considered) considered();
    }
    return QFrame::eventFilter(watched, event);
}

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
