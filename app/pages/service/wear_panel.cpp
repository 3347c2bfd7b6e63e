#include "app/pages/service/wear_panel.h"

#include "app/edits/busy_bar.h"
#include "app/models/panel_list.h"
#include "app/models/plain_rows.h"
#include "app/pages/service/plot_view.h"
#include "app/pages/service/wear_plots.h"
#include "app/widgets/money_box.h"
#include "core/documents/item_words.h"
#include "core/documents/service_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHideEvent>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>

#include <algorithm>
#include <array>

namespace laneward {

namespace {

constexpr int wordsAir = 12;

/// What the duty itself counts first.
MeterKind usualMeter(const Duty& duty) { return duty.triggers.empty() ? MeterKind::Days : duty.triggers.front().meter; }

std::optional<double> intervalOf(const Duty& duty, MeterKind meter) {
    for (const Trigger& trigger : duty.triggers)
        if (trigger.meter == meter) return double(trigger.every);
    return std::nullopt;
}

QString partText(const ServiceItem& item, const Duty& duty, const SeasonState& season) {
    const auto replacing =
        std::count_if(item.duties.begin(), item.duties.end(), [](const Duty& other) { return other.kind == DutyKind::Replace; });
    const QString name = itemText(item, season);
    return replacing > 1 ? WearPanel::tr("%1 – %2", "of what, duty").arg(name, shown(duty.name)) : name;
}

}  // namespace

void WearPanel::refresh() {
    m_stale = true;
    if (isVisible()) read();
}

void WearPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale) read();
}

/// A hidden panel reads nothing; it asks again when it is shown.
void WearPanel::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    if (event->spontaneous() || !m_asker.isBusy()) return;
    m_asker.leave();
    m_busy->end();
    m_stale = true;
}

bool WearPanel::cancel() { return isVisible() && m_busy->cancel(); }

void WearPanel::read() {
    m_stale = false;
    m_split->show();  // also before anything is known: so that the keyboard has its place
    m_state->setText(m_records ? QString() : tr("Reading what was replaced…"));
    m_state->setVisible(!m_records);
    m_asker.ask(m_session.store().location());
    m_busy->begin();
}

/// What was read before stays.
void WearPanel::stop() {
    m_asker.leave();
    m_state->hide();
    m_split->setVisible(m_records != nullptr);
    m_busy->stop(m_records ? tr("Stopped. The last replacements may be missing.")
                           : tr("Stopped. What was replaced is not known."));
}

void WearPanel::take(const WearAsker::Records& records) {
    m_records = records;
    m_busy->end();
    fill();
}

void WearPanel::takeFailure(const Error& why) {
    m_state->hide();
    m_split->setVisible(m_records != nullptr);
    m_busy->stop(tr("What was replaced could not be read: %1").arg(text(why, m_session.speech())));
}

std::optional<WearPanel::Subject> WearPanel::subjectOf(const DutyId& duty) const {
    for (const ServiceItem& item : m_session.season().items)
        if (const Duty* found = findDuty(item, duty)) return Subject{&item, found, usualMeter(*found), false};
    return std::nullopt;
}

std::optional<WearPanel::Subject> WearPanel::chosen() const {
    std::optional<Subject> subject = subjectOf(m_shown);
    if (!subject) return subject;
    if (m_meter->count() > 0) subject->meter = MeterKind(m_meter->currentData().toInt());
    subject->pooled = m_pool->isChecked();
    return subject;
}

ReplacementCosts WearPanel::costsOf(const Duty& duty) const { return {double(duty.planned.minor), double(duty.failed.minor)}; }

ReplacementCosts WearPanel::costsTyped() const { return {double(m_planned->money().minor), double(m_failed->money().minor)}; }

WearPanel::Told WearPanel::tell(const Subject& subject, const ReplacementCosts& costs) const {
    Told told;
    const SeasonState& season = m_session.season();
    std::vector<ItemDuty> duties{{subject.item->id, subject.duty->id}};
    if (subject.pooled) duties = alikeDuties(season.items, *subject.item, *subject.duty);
    told.lives = partLives({season, *m_records, m_session.now(), subject.meter}, duties);
    told.now = intervalOf(*subject.duty, subject.meter);
    told.hasCosts = costs.planned > 0 && costs.failed > 0;
    told.answer = wearOf({partText(*subject.item, *subject.duty, season), told.lives.ages(), costs, told.now});
    return told;
}

void WearPanel::fill() {
    const SeasonState& season = m_session.season();
    const Speech speech = m_session.speech();
    std::vector<PlainRow> rows;
    for (const ServiceItem& item : season.items) {
        for (const Duty& duty : item.duties) {
            if (item.retired || duty.kind != DutyKind::Replace) continue;
            const MeterKind meter = usualMeter(duty);
            const Told told = tell({&item, &duty, meter, false}, costsOf(duty));
            const bool best = told.answer.best && !told.answer.best->never;
            PlainRow row{duty.id.value, {partText(item, duty, season), {}, {}, {}}, {}};
            row.texts[1] = tr("%1 of %2", "failures, parts").arg(told.answer.failures).arg(told.answer.parts);
            row.texts[2] = told.now ? meterText(*told.now, meter, speech) : QStringLiteral("-");
            row.texts[3] = best ? meterText(double(roundedInterval(told.answer.best->age, meter)), meter, speech)
                           : told.answer.moreNeeded > 0 ? tr("%n more failure(s)", nullptr, told.answer.moreNeeded)
                                                        : QStringLiteral("-");
            row.sort = {{}, told.answer.failures, told.now.value_or(0), best ? told.answer.best->age : 1e18};
            rows.push_back(std::move(row));
        }
    }
    const bool any = !rows.empty();
    const QString before = m_shown.value;
    m_filling = true;
    m_rows->show(std::move(rows));
    fitColumns(*m_list, wordsAir);
    if (m_rows->rowOf(before) >= 0)
        chooseRow(*m_list, m_rows->rowOf(before));
    else if (any)
        m_list->setCurrentIndex(m_list->model()->index(0, 0));
    m_filling = false;
    m_state->setText(any ? QString()
                         : tr("Nothing here is replaced yet. Items and their duties are entered on the tab Machines."));
    m_state->setVisible(!any);
    m_split->setVisible(any);
    showChosen();
}

/// Fields follow the duty, unless it is the one that they already show.
void WearPanel::showChosen() {
    const int row = chosenRow(*m_list);
    const DutyId duty{row < 0 ? QString() : m_rows->idAt(row)};
    const std::optional<Subject> subject = subjectOf(duty);
    if (!subject || !m_records) return;
    const bool same = duty == m_shown;
    const QByteArray currency = m_session.season().centre.facts.settings.currency;
    m_filling = true;
    m_shown = duty;
    if (!same) {
        m_meter->clear();
        const bool ofMachine = !subject->item->machine.isEmpty();
        for (const MeterKind meter : {MeterKind::Lanes, MeterKind::Runs, MeterKind::Minutes, MeterKind::Volume, MeterKind::Days})
            if (ofMachine || meter == MeterKind::Days) m_meter->addItem(text(meter), int(meter));
        m_meter->setCurrentIndex(m_meter->findData(int(subject->meter)));
        m_spoken->clear();
    }
    if (!same || !m_planned->hasFocus()) m_planned->setMoney(subject->duty->planned, currency);
    if (!same || !m_failed->hasFocus()) m_failed->setMoney(subject->duty->failed, currency);
    m_filling = false;
    showAnswer();
}

void WearPanel::showAnswer() {
    const std::optional<Subject> subject = chosen();
    if (!subject || !m_records) return;
    const SeasonState& season = m_session.season();
    const Speech speech = m_session.speech();
    const Told told = tell(*subject, costsTyped());
    const WearAnswer& answer = told.answer;
    const QString name = partText(*subject->item, *subject->duty, season);
    QStringList lines{wearSentence({name, answer, subject->meter, told.now, told.hasCosts}, speech)};
    for (const Finding& finding : answer.findings) {
        const QString line = text(finding, speech);
        const bool isSaid =
            lines.front().startsWith(line) || finding.rule == "replacement.costs" || finding.rule == "wear.too-few";
        if (!isSaid) lines << line;
    }
    m_sentence->setText(lines.join(u'\n'));
    QString counted =
        tr("%n part(s)", nullptr, answer.parts) + QStringLiteral(", ") + tr("%n failure(s)", nullptr, answer.failures);
    if (told.lives.leftOut > 0)
        counted += QStringLiteral(", ") + tr("%n left out: two replacements at one reading", nullptr, told.lives.leftOut);
    m_counted->setText(counted);
    const WearShown drawn{answer, subject->meter, told.now, season.centre.facts.settings.currency};
    m_failures->show(weibullPlot(drawn, speech));
    m_cost->show(costPlot(drawn, speech));
    const bool writable = !m_session.isReadOnly();
    m_planned->setEnabled(writable);
    m_failed->setEnabled(writable);
    const bool best = answer.best && !answer.best->never;
    m_best = best ? roundedInterval(answer.best->age, subject->meter) : 0;
    const bool isSet = told.now && std::int64_t(*told.now) == m_best;
    m_adopt->setText(best ? tr("&Adopt %1", "2,400 lanes").arg(meterText(double(m_best), subject->meter, speech)) : tr("&Adopt"));
    m_adopt->setEnabled(writable && best && !isSet);
}

void WearPanel::storeCosts() {
    const std::optional<Subject> subject = chosen();
    if (m_filling || !subject || m_session.isReadOnly()) return;
    ServiceItem after = *subject->item;
    for (Duty& duty : after.duties) {
        if (duty.id != subject->duty->id) continue;
        duty.planned = m_planned->money();
        duty.failed = m_failed->money();
    }
    if (after == *subject->item) return;
    const std::vector<Finding> faults = faultsOf(after, m_session.season().centre.facts.settings.currency);
    if (!faults.empty()) {
        m_sentence->setText(text(faults.front(), m_session.speech()));
        return;
    }
    m_session.apply(tr("Costs of replacing: %1", "of what").arg(shown(subject->item->name)),
                    {RowChange<ServiceItem>{*subject->item, after}});
}

void WearPanel::adopt() {
    const std::optional<Subject> subject = chosen();
    if (!subject || m_best <= 0) return;
    const ServiceItem after = withInterval(*subject->item, subject->duty->id, {subject->meter, m_best});
    const QString name =
        tr("Replace %1 after %2", "of what, 2,400 lanes")
            .arg(itemText(*subject->item, m_session.season()), meterText(double(m_best), subject->meter, m_session.speech()));
    m_session.apply(name, {RowChange<ServiceItem>{*subject->item, after}});
}

}  // namespace laneward
