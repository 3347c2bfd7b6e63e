#include "app/pages/guide/guide_view.h"

#include "app/edits/plain_label.h"
#include "app/edits/run_form.h"
#include "app/pages/guide/guide_list.h"
#include "app/pages/guide/guide_memory.h"
#include "app/pages/guide/guide_step_panel.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int buttonHeight = 56;  // for greasy hands and a quick look
constexpr int closeHeight = 32;
constexpr int listWidth = 360;

}  // namespace

GuideView::GuideView(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    build();
    connect(&session, &Session::changed, this, [this] {
        if (!m_acting) follow();
    });
    read();
    m_expected = m_guide.ahead;
    showStep();
    if (session.isReadOnly()) say(tr("This centre can only be read here: steps can be ticked, but nothing is recorded."));
}

void GuideView::build() {
    setAccessibleName(tr("The evening step by step"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(buildHead());
    column->addWidget(m_notice = proseLabel({}, this));
    m_notice->setObjectName("guideNotice");
    QFont bold = m_notice->font();
    bold.setBold(true);
    m_notice->setFont(bold);
    m_notice->hide();
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    row->addWidget(buildStep(), 1);
    m_list = new GuideList(this);
    m_list->setFixedWidth(listWidth);
    row->addWidget(m_list);
    column->addLayout(row, 1);
}

QWidget* GuideView::buildHead() {
    auto* head = new QWidget(this);
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_heading = headingLabel({}, head), 1);
    m_close = new QPushButton(tr("Back to the pa&ge (Esc)"), head);
    m_close->setObjectName("closeGuide");
    m_close->setMinimumHeight(closeHeight);
    row->addWidget(m_close);
    connect(m_close, &QPushButton::clicked, this, &GuideView::closed);
    return head;
}

QWidget* GuideView::buildStep() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    m_stack = new QStackedWidget(side);
    m_step = new GuideStepPanel(this);
    auto* form = new QWidget(this);
    auto* top = new QVBoxLayout(form);
    top->addWidget(m_run = new RunForm(m_session, form));
    top->addStretch();
    for (QWidget* part : {static_cast<QWidget*>(m_step), form}) {
        auto* scroll = new QScrollArea(m_stack);
        scroll->setWidgetResizable(true);
        scroll->setFrameShape(QFrame::NoFrame);
        scroll->setFocusPolicy(Qt::NoFocus);
        scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        scroll->setWidget(part);
        m_stack->addWidget(scroll);
    }
    column->addWidget(m_stack, 1);
    column->addWidget(buildButtons());
    connect(m_step, &GuideStepPanel::entered, this, &GuideView::goOn);
    connect(m_step, &GuideStepPanel::backWanted, this, &GuideView::goBack);
    connect(m_run, &RunForm::finished, this, &GuideView::finishRun);
    connect(m_run, &RunForm::cancelled, this, &GuideView::closeForm);
    return side;
}

QWidget* GuideView::buildButtons() {
    m_buttons = new QWidget(this);
    auto* row = new QHBoxLayout(m_buttons);
    row->setContentsMargins(0, 0, 0, 0);
    const auto add = [this, row](const QString& name, const char* objectName, void (GuideView::*slot)(), int stretch) {
        auto* button = new QPushButton(name, m_buttons);
        button->setObjectName(objectName);
        button->setMinimumHeight(buttonHeight);
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, slot);
        row->addWidget(button, stretch);
        return button;
    };
    m_goBack = add(tr("Bac&k one step"), "guideBack", &GuideView::goBack, 0);
    m_leaveOut = add(tr("&Leave it out"), "guideLeaveOut", &GuideView::leaveOut, 0);
    m_otherwise = add(tr("&Otherwise…"), "guideOtherwise", &GuideView::recordOtherwise, 0);
    m_goOn = add({}, "guideGoOn", &GuideView::goOn, 1);
    QFont large = m_goOn->font();
    large.setPointSizeF(large.pointSizeF() * 1.5);
    large.setBold(true);
    m_goOn->setFont(large);
    m_goBack->setToolTip(tr("Backspace"));
    m_otherwise->setToolTip(tr("Cut short, other lanes, another pattern, or something happened"));
    return m_buttons;
}

void GuideView::keyPressEvent(QKeyEvent* event) {
    if (event->isAutoRepeat()) return;  // a key that is held down ticks nothing
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT closed();
        return;
    }
    if (m_stack->currentIndex() != 0) return QWidget::keyPressEvent(event);  // the form has its own keys
    if (event->key() == Qt::Key_Space || event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        auto* button = qobject_cast<QPushButton*>(focusWidget());
        if (button && button->hasFocus() && event->key() != Qt::Key_Space)
            button->click();
        else
            goOn();
    } else if (event->key() == Qt::Key_Backspace) {
        goBack();
    } else {
        QWidget::keyPressEvent(event);
    }
}

void GuideView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    focusStep();
}

void GuideView::say(const QString& line) {
    m_notice->setText(line);
    m_notice->setVisible(!line.isEmpty());
}

void GuideView::read() {
    if (m_day != m_session.today()) {
        m_day = m_session.today();
        m_guide.done = keptTicks(m_session.season().centre.facts.id, m_day);
        m_back = 0;
    }
    m_sheet = jobSheet(m_session.season(), m_session.planOf(m_day), m_day, m_session.now());
    m_guide = guideOf(m_sheet, m_session.season(), m_guide.done);
    m_back = std::min(m_back, int(m_guide.done.size()));
    m_run->refresh();
}

}  // namespace laneward
