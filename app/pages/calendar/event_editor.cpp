#include "app/pages/calendar/event_editor.h"

#include "app/pages/calendar/consequences.h"
#include "app/pages/calendar/demand_rows.h"
#include "app/pages/calendar/recurrence_edit.h"
#include "app/widgets/time_formats.h"
#include "core/documents/cost_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTimeEdit>
#include <QTimer>
#include <QToolButton>

#include <algorithm>

namespace laneward {

namespace {

constexpr size_t datesShown = 5;

}  // namespace

EventEditor::EventEditor(Session& session, QWidget* parent) : QFrame(parent), m_session(session) {
    build();
    connectFields();
}

void EventEditor::edit(const Series& series) {
    m_draft = series;
    m_before = series;
    m_open = true;
    load();
    m_title->setFocus();
}

void EventEditor::create(const Series& draft) {
    m_draft = draft;
    m_before.reset();
    m_open = true;
    load();
    m_title->setFocus();
    m_title->selectAll();
}

void EventEditor::load() {
    m_loading = true;
    m_speech = m_session.speech();
    const Result<Zone> zone = Zone::load(m_draft.zone);
    m_zone = zone ? *zone : m_session.zone();
    m_heading->setText(m_before ? tr("Edit %1").arg(shown(m_draft.title)) : tr("New event"));
    m_title->setText(m_draft.title);
    m_kind->setCurrentIndex(m_kind->findData(int(m_draft.kind)));
    m_lanes->setText(m_draft.lanes.text());
    loadTimes();
    m_demands->load(m_draft.demands, m_draft.lanes, m_session.season().patterns);
    m_recurrence->load(m_draft, m_speech, m_zone);
    loadMore();
    m_save->setText(m_before ? tr("&Save") : tr("&Save new event"));
    m_save->setEnabled(!m_session.isReadOnly());
    m_dirty = false;
    m_loading = false;
    look();
    m_pause->start();
}

void EventEditor::loadTimes() {
    for (QDateEdit* edit : {m_day, m_lastDay}) {
        edit->setLocale(m_speech.locale);
        edit->setDisplayFormat(dayFieldFormat(m_speech.locale));
    }
    for (QTimeEdit* edit : {m_from, m_to}) {
        edit->setLocale(m_speech.locale);
        edit->setDisplayFormat(clockFormat(m_speech.locale));
    }
    const LocalTime end = m_zone.toLocal(m_zone.toInstant(m_draft.start) + m_draft.duration);
    m_day->setDate(m_draft.start.date);
    m_from->setTime(m_draft.start.time);
    m_lastDay->setDate(end.date);
    m_to->setTime(end.time);
    m_length = m_draft.start.date.daysTo(end.date) * 86'400 + m_draft.start.time.secsTo(end.time);
    const bool foreign = m_draft.zone != m_session.zone().id();
    m_zoneNote->setVisible(foreign);
    m_zoneNote->setText(tr("Times are those of %1.").arg(QString::fromLatin1(m_draft.zone)));
}

void EventEditor::loadMore() {
    m_settle->setValue(int(m_draft.settle.value / 60));
    m_clearing->setValue(int(m_draft.clearing.value / 60));
    m_players->setValue(m_draft.players);
    m_twice->setChecked(m_draft.firstPairTwice);
    m_yields->setChecked(m_draft.yieldsToClosure);
    m_noStaff->setChecked(m_draft.noStaff);
    m_cancelled->setChecked(m_draft.cancelled);
    m_note->setPlainText(m_draft.note);
}

void EventEditor::startMoved() {
    if (m_loading) return;
    m_loading = true;
    const LocalTime start{m_day->date(), m_from->time()};
    const LocalTime end = shifted(start, Seconds{m_length});
    m_lastDay->setDate(end.date);
    m_to->setTime(end.time);
    m_recurrence->setStart(start);
    m_loading = false;
    touched();
}

void EventEditor::storeTimes(Series& series) const {
    series.start = {m_day->date(), m_from->time()};
    const LocalTime end{m_lastDay->date(), m_to->time()};
    const LocalTime loadedEnd = m_zone.toLocal(m_zone.toInstant(m_draft.start) + m_draft.duration);
    // Untouched fields give back what was loaded to the second, whatever they can show.
    if (series.start == m_draft.start && end == loadedEnd) return;
    series.duration = m_zone.toInstant(end) - m_zone.toInstant(series.start);
}

void EventEditor::storeMore(Series& series) const {
    const auto kept = [](const QSpinBox* box, Seconds loaded) {
        return box->value() == loaded.value / 60 ? loaded : minutes(box->value());
    };
    series.settle = kept(m_settle, m_draft.settle);
    series.clearing = kept(m_clearing, m_draft.clearing);
    series.players = m_players->value();
    series.firstPairTwice = m_twice->isChecked();
    series.yieldsToClosure = m_yields->isChecked();
    series.noStaff = series.kind == EventKind::Closure && m_noStaff->isChecked();
    series.cancelled = m_cancelled->isChecked();
    series.note = m_note->toPlainText().left(limits::noteLength);
}

std::optional<Series> EventEditor::draft() {
    Series series = m_draft;
    series.title = m_title->text().trimmed();
    series.kind = EventKind(m_kind->currentData().toInt());
    const Result<LaneSet> lanes = LaneSet::parse(m_lanes->text());
    if (!lanes) {
        m_problems->setText(text(lanes.error(), m_speech));
        return std::nullopt;
    }
    series.lanes = *lanes;
    storeTimes(series);
    m_recurrence->store(series);
    storeMore(series);
    const std::optional<std::vector<SurfaceDemand>> demands = m_demands->store(series.lanes, m_speech);
    if (!demands) {
        m_problems->setText(tr("The lanes of one demand cannot be read."));
        return std::nullopt;
    }
    series.demands = series.kind == EventKind::Closure ? std::vector<SurfaceDemand>() : *demands;
    return series;
}

void EventEditor::touched() {
    if (m_loading) return;
    m_dirty = true;
    const LocalTime start{m_day->date(), m_from->time()};
    m_length = start.date.daysTo(m_lastDay->date()) * 86'400 + start.time.secsTo(m_to->time());
    look();
    m_pause->start();
}

bool EventEditor::showFaults(const Series& series) {
    QStringList lines;
    for (const Finding& finding : faultsOf(series, m_session.season().centre.facts.lanes))
        lines << text(finding, m_speech);
    lines.removeDuplicates();
    m_problems->setText(lines.join(u'\n'));
    m_problems->setVisible(!lines.isEmpty());
    return lines.isEmpty();
}

void EventEditor::look() {
    const bool closure = EventKind(m_kind->currentData().toInt()) == EventKind::Closure;
    m_demands->setEnabled(!closure);
    m_noStaff->setVisible(closure);
    m_revert->setEnabled(m_dirty);
    fitWidth();
    const std::optional<Series> series = draft();
    m_problems->setVisible(!series);
    if (!series || !showFaults(*series)) return;
    QStringList dates;
    for (const LocalTime& start : nextStarts(*series, m_session.today(), datesShown))
        dates << m_speech.locale.toString(start.date, QStringLiteral("ddd ")) +
                     m_speech.locale.toString(start.date, QLocale::ShortFormat);
    const QString next = dates.isEmpty() ? tr("No date from today on.") : tr("Next: %1").arg(dates.join(tr(", ")));
    m_recurrence->setPreview(seriesText(*series, m_speech) + u'\n' + next);
}

void EventEditor::lookAhead() {
    if (!m_open) return;
    const std::optional<Series> series = draft();
    const bool sound = series && faultsOf(*series, m_session.season().centre.facts.lanes).empty();
    QStringList lines;
    EventPreview preview;
    if (sound) preview = previewOf(m_session.season(), m_before, *series, m_session.now(), m_speech);
    for (const Consequence& one : preview.consequences)
        lines << (one.bad ? QStringLiteral("! ") : QString()) + one.words;
    m_consequences->setText(lines.join(u'\n'));
    m_consequences->setVisible(!lines.isEmpty());
    showCost(preview);
}

void EventEditor::showCost(const EventPreview& preview) {
    m_costHeading->setVisible(preview.day.has_value());
    m_cost->setVisible(preview.day.has_value());
    if (!preview.day) return;
    m_costHeading->setText(tr("What it costs on %1").arg(dayText(*preview.day, m_speech)));
    m_cost->setText(preview.cost ? costSentences(*preview.cost, m_session.season(), m_speech).join(u'\n')
                                 : tr("No job of that day is needed by it, so that it takes neither product nor work."));
}

}  // namespace laneward
