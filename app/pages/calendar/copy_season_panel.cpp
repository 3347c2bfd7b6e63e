#include "app/pages/calendar/copy_season_panel.h"

#include "app/pages/calendar/consequences.h"
#include "app/widgets/time_formats.h"

#include <QDateEdit>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

CopySeasonPanel::CopySeasonPanel(Session& session, QWidget* parent) : QFrame(parent), m_session(session) { build(); }

QLabel* CopySeasonPanel::line(const QString& words, bool strong) {
    auto* label = new QLabel(words, this);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    QFont font = label->font();
    font.setBold(strong);
    label->setFont(font);
    return label;
}

void CopySeasonPanel::build() {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("Copy last season"));
    setMinimumWidth(300);
    auto* column = new QVBoxLayout(this);
    column->addWidget(line(tr("Copy last season"), true));
    column->addWidget(line(tr("Each series keeps its weekday and runs for as many weeks as before."), false));
    m_series = new QListWidget(this);
    m_series->setAccessibleName(tr("Series to copy"));
    column->addWidget(m_series, 1);
    QLabel* first = line(tr("First date of the new season"), false);
    column->addWidget(first);
    m_first = new QDateEdit(this);
    m_first->setCalendarPopup(true);
    first->setBuddy(m_first);
    column->addWidget(m_first);
    buildHolidays(column);
    m_preview = line({}, false);
    m_preview->setAccessibleName(tr("What would be added"));
    column->addWidget(m_preview);
    buildFoot(column);
    connect(m_series, &QListWidget::itemChanged, this, &CopySeasonPanel::look);
    connect(m_first, &QDateEdit::dateChanged, this, &CopySeasonPanel::look);
}

void CopySeasonPanel::buildHolidays(QVBoxLayout* column) {
    QLabel* name = line(tr("Holidays to leave out"), false);
    column->addWidget(name);
    m_holidays = new QListWidget(this);
    m_holidays->setAccessibleName(tr("Holidays to leave out"));
    m_holidays->setMaximumHeight(84);
    column->addWidget(m_holidays);
    m_holiday = new QDateEdit(this);
    m_holiday->setCalendarPopup(true);
    m_holiday->setAccessibleName(tr("Holiday"));
    name->setBuddy(m_holiday);
    auto* add = new QPushButton(tr("Leave out"), this);
    m_remove = new QPushButton(tr("Put back"), this);
    auto* row = new QHBoxLayout;
    row->addWidget(m_holiday, 1);
    for (QPushButton* button : {add, m_remove}) {
        button->setMinimumHeight(26);
        row->addWidget(button);
    }
    column->addLayout(row);
    connect(add, &QPushButton::clicked, this, &CopySeasonPanel::addHoliday);
    connect(m_remove, &QPushButton::clicked, this, &CopySeasonPanel::removeHoliday);
}

void CopySeasonPanel::buildFoot(QVBoxLayout* column) {
    m_copy = new QPushButton(this);
    auto* close = new QPushButton(tr("Close (Esc)"), this);
    auto* row = new QHBoxLayout;
    for (QPushButton* button : {m_copy, close}) {
        button->setMinimumHeight(28);
        row->addWidget(button);
    }
    column->addLayout(row);
    connect(m_copy, &QPushButton::clicked, this, &CopySeasonPanel::copy);
    connect(close, &QPushButton::clicked, this, &CopySeasonPanel::closeAsked);
}

void CopySeasonPanel::open(const SeriesId& chosen) {
    const Speech speech = m_session.speech();
    for (QDateEdit* edit : {m_first, m_holiday}) {
        edit->setLocale(speech.locale);
        edit->setDisplayFormat(dayFieldFormat(speech.locale));
    }
    const QSignalBlocker quiet(m_series);
    m_series->clear();
    m_holidays->clear();
    m_first->setDate(m_session.today().addDays(7));
    m_holiday->setDate(m_first->date());
    std::vector<const Series*> all;
    for (const Series& series : m_session.season().series) {
        if (!series.rule.isEmpty() && !series.cancelled) all.push_back(&series);
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Series* a, const Series* b) { return a->title.localeAwareCompare(b->title) < 0; });
    for (const Series* series : all) {
        const bool ended = !nextStart(*series, m_session.today());
        const QString from = speech.locale.toString(series->start.date, QLocale::ShortFormat);
        auto* item = new QListWidgetItem(
            (ended ? tr("%1 (ended; began %2)") : tr("%1 (since %2)")).arg(shown(series->title), from), m_series);
        item->setData(Qt::UserRole, series->id.value);
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        const bool wanted = chosen.isEmpty() ? ended && series->kind == EventKind::League : series->id == chosen;
        item->setCheckState(wanted ? Qt::Checked : Qt::Unchecked);
        item->setSizeHint(QSize(0, 26));
    }
    look();
    m_series->setFocus();
}

std::vector<QDate> CopySeasonPanel::holidays() const {
    std::vector<QDate> dates;
    for (int i = 0; i < m_holidays->count(); ++i)
        dates.push_back(m_holidays->item(i)->data(Qt::UserRole).toDate());
    return dates;
}

void CopySeasonPanel::addHoliday() {
    const QDate date = m_holiday->date();
    const std::vector<QDate> known = holidays();
    if (std::find(known.begin(), known.end(), date) != known.end()) return;
    auto* item = new QListWidgetItem(m_session.speech().locale.toString(date, QLocale::LongFormat), m_holidays);
    item->setData(Qt::UserRole, date);
    look();
}

void CopySeasonPanel::removeHoliday() {
    delete m_holidays->currentItem();
    look();
}

std::vector<Series> CopySeasonPanel::copies() const {
    std::vector<Series> result;
    const std::vector<QDate> left = holidays();
    for (int i = 0; i < m_series->count(); ++i) {
        if (m_series->item(i)->checkState() != Qt::Checked) continue;
        const QString id = m_series->item(i)->data(Qt::UserRole).toString();
        for (const Series& series : m_session.season().series) {
            if (series.id.value != id) continue;
            Series copy = copiedToSeason(series, m_first->date(), left, SeriesId{m_session.newOperation().value});
            copy.version = 0;
            copy.uid = copy.id.value;
            result.push_back(std::move(copy));
        }
    }
    return result;
}

void CopySeasonPanel::look() {
    const std::vector<Series> all = copies();
    const Speech speech = m_session.speech();
    QStringList lines;
    for (const Series& copy : all) {
        if (lines.size() == 4) break;
        lines << QStringLiteral("%1: %2").arg(shown(copy.title), speech.locale.toString(copy.start.date, QLocale::LongFormat));
    }
    if (all.size() > 4) lines << tr("and %n more", nullptr, int(all.size()) - 4);
    m_preview->setText(all.empty() ? tr("Choose the series that come again.")
                                   : tr("First evenings:") + u'\n' + lines.join(u'\n'));
    m_copy->setText(tr("Copy %n series", nullptr, int(all.size())));
    m_copy->setEnabled(!all.empty() && !m_session.isReadOnly());
    m_remove->setEnabled(m_holidays->count() > 0);
}

bool CopySeasonPanel::copy() {
    std::vector<Change> changes;
    QDate first;
    for (const Series& series : copies()) {
        changes.emplace_back(RowChange<Series>{std::nullopt, series});
        if (!first.isValid() || series.start.date < first) first = series.start.date;
    }
    if (changes.empty()) return false;
    const QString name = tr("Copy %n series to a new season", nullptr, int(changes.size()));
    if (!m_session.apply(name, std::move(changes))) return false;
    Q_EMIT copied(first);
    return true;
}

void CopySeasonPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closeAsked();
    else
        QFrame::keyPressEvent(event);
}

}  // namespace laneward
