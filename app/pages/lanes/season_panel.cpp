#include "app/pages/lanes/season_panel.h"

#include "app/edits/plain_label.h"
#include "app/pages/lanes/season_form.h"
#include "app/pages/lanes/season_view.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int sideWidth = 340;         // at least; words of some languages are longer
constexpr int waitBeforeAsking = 300;  // milliseconds: while fields are being filled in

}  // namespace

SeasonPanel::SeasonPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    m_view = new SeasonView(this);
    setFocusProxy(m_view);
    row->addWidget(m_view, 1);
    row->addWidget(buildSide());
    m_soon = new QTimer(this);
    m_soon->setSingleShot(true);
    m_soon->setInterval(waitBeforeAsking);
    connect(m_soon, &QTimer::timeout, this, &SeasonPanel::ask);
    connect(m_view, &BlockView::currentChanged, this, &SeasonPanel::showChosen);
    connect(m_view, &BlockView::activated, this, [this](int index) { Q_EMIT dayWanted(m_view->dayOf(index)); });
    connect(m_form, &SeasonForm::changed, this, &SeasonPanel::askSoon);
    connect(&m_base, &SeasonAsker::answered, this, &SeasonPanel::takeSeason);
    connect(&m_question, &SeasonAsker::answered, this, &SeasonPanel::takeAnswer);
    connect(&session, &Session::changed, this, [this] { m_stale = true; });
    showBusy();
}

QWidget* SeasonPanel::buildSide() {
    m_scroll = new QScrollArea(this);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* side = new QWidget(m_scroll);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(12, 0, 8, 0);
    column->addWidget(headingLabel(tr("The day"), side));
    m_day = proseLabel(tr("Choose a day to see its figures; open it by Enter or a double click."), side);
    column->addWidget(m_day);
    column->addSpacing(8);
    column->addWidget(headingLabel(tr("What if …"), side));
    column->addWidget(proseLabel(tr("Tick what to suppose. Nothing of it is stored."), side));
    m_form = new SeasonForm(side);
    column->addWidget(m_form);
    column->addWidget(buildAnswer());
    column->addStretch(1);
    m_scroll->setWidget(side);
    fitSide();
    return m_scroll;
}

/// As wide as what it holds, with room for its scroll bar.
void SeasonPanel::fitSide() {
    const int wanted = m_scroll->widget()->minimumSizeHint().width() + m_scroll->verticalScrollBar()->sizeHint().width();
    m_scroll->setFixedWidth(std::max(sideWidth, wanted));
}

QWidget* SeasonPanel::buildAnswer() {
    auto* part = new QWidget(this);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    m_busy = new QWidget(part);
    auto* busy = new QHBoxLayout(m_busy);
    busy->setContentsMargins(0, 0, 0, 0);
    auto* progress = new QProgressBar(m_busy);
    progress->setRange(0, 0);
    progress->setTextVisible(false);
    progress->setAccessibleName(tr("The season is being planned"));
    busy->addWidget(progress, 1);
    auto* cancel = new QPushButton(tr("Cancel"), m_busy);
    cancel->setMinimumHeight(28);
    connect(cancel, &QPushButton::clicked, this, &SeasonPanel::stop);
    busy->addWidget(cancel);
    column->addWidget(m_busy);
    m_notes = proseLabel(QString(), part);
    column->addWidget(m_notes);
    m_answer = new QWidget(part);
    m_figures = new QGridLayout(m_answer);
    m_figures->setContentsMargins(0, 0, 0, 0);
    m_figures->setHorizontalSpacing(10);
    m_figures->setVerticalSpacing(3);
    m_figures->setColumnStretch(0, 1);
    column->addWidget(m_answer);
    column->addWidget(m_stock = proseLabel(QString(), part));
    m_stock->setAccessibleName(tr("What it does to stock"));
    m_stock->hide();
    m_answer->hide();
    m_notes->hide();
    return part;
}

void SeasonPanel::refresh() {
    const QDate today = m_session.today();
    const DateRange days{today, today.addDays(seasonDays - 1)};
    if (!m_stale && days == m_days) return;
    m_stale = false;
    m_days = days;
    m_asOf = m_session.now();
    m_form->setChoices(m_session.planningState(), m_days, m_session.speech());
    m_question.leave();
    m_stockRunner.leave();
    m_stockBase.reset();
    m_base.ask(m_session.planningState(), m_asOf, m_days);
    showBusy();
    say();
}

void SeasonPanel::showDay(QDate day) {
    m_wanted = day;
    m_view->setCurrentDay(day);
}

void SeasonPanel::takeSeason(const SeasonFigures& season) {
    m_now = season;
    m_view->setSeason(season, m_session.speech());
    if (m_wanted.isValid()) m_view->setCurrentDay(m_wanted);
    showChosen(m_view->current());
    showBusy();
    say();
    if (m_form->supposesAnything()) ask();
}

void SeasonPanel::showChosen(int index) {
    if (index < 0 || size_t(index) >= m_now.days.size()) return;
    m_wanted = m_now.days[size_t(index)].date;
    m_day->setText(SeasonView::figuresOf(m_now.days[size_t(index)], m_session.speech()).join(QStringLiteral(" · ")));
}

void SeasonPanel::askSoon() {
    m_question.leave();
    m_stockRunner.leave();
    m_soon->start();
    showBusy();
}

void SeasonPanel::ask() {
    m_notes->hide();
    m_answer->hide();
    m_stock->hide();
    m_stockRunner.leave();
    if (!m_form->supposesAnything() || m_now.days.empty()) return showBusy();
    QStringList notes;
    m_supposed = std::make_shared<const State>(m_form->suppose(m_session.planningState(), m_days, notes));
    m_notes->setText(notes.join(u'\n'));
    m_notes->setVisible(!notes.isEmpty());
    fitSide();
    // The same moment as the season that it is compared with.
    m_question.ask(*m_supposed, m_asOf, m_days);
    showBusy();
}

void SeasonPanel::stop() {
    m_soon->stop();
    m_question.leave();
    m_stockRunner.leave();
    if (m_base.isBusy()) {
        m_base.leave();
        m_stale = true;
    }
    m_notes->setText(tr("Stopped. Change what is supposed, or come back to this page, to plan again."));
    m_notes->show();
    showBusy();
    say();
}

bool SeasonPanel::isBusy() const { return m_base.isBusy() || m_question.isBusy() || m_soon->isActive(); }

void SeasonPanel::showBusy() { m_busy->setVisible(isBusy()); }

void SeasonPanel::takeAnswer(const SeasonFigures& then) {
    showBusy();
    showAnswer(then);
    askStock();
    fitSide();
}

void SeasonPanel::say() {
    const Speech speech = m_session.speech();
    if (m_base.isBusy() || m_now.days.empty()) {
        m_headline = m_base.isBusy() ? tr("The season is being planned…") : tr("The season is not planned");
    } else if (const std::vector<size_t> hardest = narrowestDays(m_now, 1); hardest.empty()) {
        m_headline = tr("No lane needs a treatment in the %n day(s) ahead", nullptr, int(m_now.days.size()));
    } else {
        const SeasonDay& day = m_now.days[hardest.front()];
        const QString where =
            tr("%1, %2", "day, what it has to spare").arg(dayText(day.date, speech), spareText(day.work, speech));
        const int tight = int(m_now.tight.size());
        m_headline = tight > 0 ? tr("%n tight day(s) in the season; the hardest is %1", nullptr, tight).arg(where)
                               : tr("No day of the season is tight; the narrowest is %1").arg(where);
    }
    Q_EMIT headlineChanged();
}

}  // namespace laneward
