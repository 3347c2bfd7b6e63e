#include "app/pages/service/item_form.h"

#include "app/edits/date_list.h"

#include "app/pages/service/part_rows.h"
#include "app/widgets/money_box.h"
#include "core/documents/item_words.h"
#include "core/documents/service_templates.h"
#include "core/season/service_state.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double minutesPerHour = 60;
constexpr double microlitresPerLitre = 1'000'000;
constexpr double microlitresPerGallon = 3'785'411.784;  // NIST Handbook 44, appendix C; from memory

double unitOf(MeterKind meter, UnitSystem units) {
    if (meter == MeterKind::Minutes) return minutesPerHour;
    if (meter == MeterKind::Volume) return units == UnitSystem::Metric ? microlitresPerLitre : microlitresPerGallon;
    return 1;
}

bool wasRecorded(const SeasonState& season, const DutyId& duty) {
    return std::any_of(season.services.begin(), season.services.end(),
                       [&](const ServiceRecord& record) { return record.duty == duty; });
}

}  // namespace

std::vector<ServiceItem> ItemForm::templates(const Session& session, const MachineId& machine) {
    const NewId newId = [&session](const QString&) { return session.newOperation().value; };
    const Machine* found = findMachine(session.season().centre, machine);
    return found ? templatesFor(*found, newId) : templatesForCentre(newId);
}

void ItemForm::create(const MachineId& machine) {
    m_before.reset();
    m_loaded = {};
    m_loaded.id = {session().newOperation().value};
    m_loaded.machine = machine;
    m_wanted = {};
    m_templates = templates(session(), machine);
    const Machine* found = findMachine(session().season().centre, machine);
    open(found ? tr("New item of %1", "machine").arg(shown(found->name)) : tr("New item of the centre"));
    m_template->setFocus();
}

void ItemForm::edit(const ServiceItem& item, const DutyId& duty) {
    m_before = item;
    m_wanted = duty;
    m_templates.clear();
    open(tr("Change %1", "service item").arg(shown(item.name)));
    m_name->setFocus();
}

void ItemForm::reload() {
    m_template->clear();
    m_template->addItem(tr("an empty item"));
    for (const ServiceItem& item : m_templates)
        m_template->addItem(shown(item.name));
    setRowVisible(m_template, !m_before);
    if (m_before) {
        if (const ServiceItem* now = findItem(session().season().items, m_before->id)) m_before = *now;
        m_loaded = *m_before;
        take(*m_before);
    } else {
        take(m_loaded);
    }
}

void ItemForm::templateChosen() {
    const int chosen = m_template->currentIndex() - 1;
    if (m_before || chosen < -1 || chosen >= int(m_templates.size())) return;
    ServiceItem item = chosen < 0 ? ServiceItem{} : m_templates[size_t(chosen)];
    item.id = m_loaded.id;
    item.machine = m_loaded.machine;
    take(item);
    edited();
}

void ItemForm::take(const ServiceItem& item) {
    m_showing = true;
    m_name->setText(item.name);
    m_kind->setCurrentIndex(m_kind->findData(int(item.kind)));
    m_note->setText(item.note);
    m_duties.clear();
    int first = item.duties.empty() ? -1 : 0;
    for (const Duty& duty : item.duties) {
        if (duty.id == m_wanted) first = int(m_duties.size());
        m_duties.push_back({duty, datesText(duty.dates)});
    }
    m_showing = false;
    m_duty = first;
    fillDutyChoice();
    showDuty(first);
}

void ItemForm::fillDutyChoice() {
    m_showing = true;
    m_choice->clear();
    for (const Typed& typed : m_duties)
        m_choice->addItem(typed.duty.name.isEmpty() ? tr("(no name yet)") : shown(typed.duty.name));
    m_choice->setCurrentIndex(m_duty);
    m_showing = false;
}

void ItemForm::showDuty(int index) {
    m_duty = index;
    showFields();
    if (index < 0) return;
    m_showing = true;
    const auto& [duty, dates] = m_duties[size_t(index)];
    const UnitSystem units = session().season().centre.facts.settings.units;
    const QByteArray currency = session().season().centre.facts.settings.currency;
    m_dutyName->setText(duty.name);
    m_dutyKind->setCurrentIndex(m_dutyKind->findData(int(duty.kind)));
    for (int n = 0; n < int(m_every.size()); ++n) {
        const auto own =
            std::find_if(duty.triggers.begin(), duty.triggers.end(), [n](const Trigger& t) { return t.meter == MeterKind(n); });
        m_every[size_t(n)]->setValue(own == duty.triggers.end() ? 0 : double(own->every) / unitOf(MeterKind(n), units));
    }
    m_dates->setText(dates);
    QStringList steps;
    for (const QString& step : duty.steps)
        steps << step;
    m_steps->setPlainText(steps.join(u'\n'));
    m_minutes->setValue(duty.minutes);
    m_opensUp->setChecked(duty.opensUp);
    m_skill->setCurrentIndex(m_skill->findData(int(duty.skill)));
    for (QCheckBox* box : m_cautions)
        box->setChecked(std::count(duty.cautions.begin(), duty.cautions.end(), box->property("rule").toByteArray()) > 0);
    m_parts->show(duty.parts);
    m_planned->setMoney(duty.planned, currency);
    m_failed->setMoney(duty.failed, currency);
    m_showing = false;
    showFields();
}

/// Takes what is typed into the duty that is shown. An interval that nobody has typed over stays exactly as it was.
void ItemForm::keepDuty() {
    if (m_duty < 0) return;
    Typed& typed = m_duties[size_t(m_duty)];
    Duty& duty = typed.duty;
    const UnitSystem units = session().season().centre.facts.settings.units;
    const std::vector<Trigger> before = duty.triggers;
    duty.name = m_dutyName->text().trimmed();
    duty.kind = DutyKind(m_dutyKind->currentData().toInt());
    duty.triggers.clear();
    for (int n = 0; n < int(m_every.size()); ++n) {
        const MeterKind meter{n};
        const double value = m_every[size_t(n)]->value();
        const auto own = std::find_if(before.begin(), before.end(), [meter](const Trigger& t) { return t.meter == meter; });
        const double stored = own == before.end() ? 0 : double(own->every) / unitOf(meter, units);
        const double tenth = std::pow(10, -m_every[size_t(n)]->decimals()) / 2;
        if (value > 0)
            duty.triggers.push_back(
                {meter, std::abs(stored - value) < tenth ? own->every : std::llround(value * unitOf(meter, units))});
    }
    typed.dates = m_dates->text();
    duty.dates = readDates(typed.dates, session().speech().locale);
    duty.steps.clear();
    for (const QString& step : m_steps->toPlainText().split(u'\n'))
        if (!step.trimmed().isEmpty()) duty.steps.push_back(step.trimmed());
    duty.minutes = m_minutes->value();
    duty.opensUp = m_opensUp->isChecked();
    duty.skill = Skill(m_skill->currentData().toInt());
    duty.cautions.clear();
    for (const QCheckBox* box : m_cautions)
        if (box->isChecked()) duty.cautions.push_back(box->property("rule").toByteArray());
    duty.parts = m_parts->parts();
    duty.planned = m_planned->money();
    duty.failed = m_failed->money();
}

void ItemForm::edited() {
    if (m_showing) return;
    keepDuty();
    if (m_duty >= 0) {
        const QString& name = m_duties[size_t(m_duty)].duty.name;
        m_choice->setItemText(m_duty, name.isEmpty() ? tr("(no name yet)") : shown(name));
    }
    showFields();
    touched();
}

void ItemForm::addDuty() {
    Duty duty;
    duty.id = {session().newOperation().value};
    m_duties.push_back({duty, {}});
    m_duty = int(m_duties.size()) - 1;
    fillDutyChoice();
    showDuty(m_duty);
    touched();
    m_dutyName->setFocus();
}

void ItemForm::takeDutyOut() {
    if (m_duty < 0) return;
    m_duties.erase(m_duties.begin() + m_duty);
    m_duty = std::min(m_duty, int(m_duties.size()) - 1);
    fillDutyChoice();
    showDuty(m_duty);
    touched();
}

void ItemForm::showFields() {
    const bool any = m_duty >= 0;
    for (const QWidget* first : std::initializer_list<const QWidget*>{m_dutyName, m_every[0], m_dates, m_steps, m_minutes,
                                                                      m_skill, m_cautions.front(), m_parts})
        setRowVisible(first, any);
    const bool replaces = any && m_duties[size_t(m_duty)].duty.kind == DutyKind::Replace;
    setRowVisible(m_planned, replaces);
    setRowVisible(m_failed, replaces);
    m_choice->setEnabled(any);
    const bool recorded = any && wasRecorded(session().season(), m_duties[size_t(m_duty)].duty.id);
    m_out->setEnabled(any && !recorded);
    m_out->setToolTip(recorded ? tr("It has been recorded and stays, so that its history keeps its name") : QString());
    for (int n = 0; n < int(MeterKind::Days); ++n)
        m_every[size_t(n)]->setVisible(!m_loaded.machine.isEmpty());
    m_opensUp->setVisible(!m_loaded.machine.isEmpty());
}

ServiceItem ItemForm::draft() const {
    ServiceItem item = m_loaded;
    item.name = m_name->text().trimmed();
    item.kind = ItemKind(m_kind->currentData().toInt());
    if (item.kind != ItemKind::Pack) item.pack.reset();
    item.note = m_note->text();
    item.duties.clear();
    for (const Typed& typed : m_duties)
        item.duties.push_back(typed.duty);
    return item;
}

std::vector<Finding> ItemForm::faults() const {
    ServiceItem item = draft();
    for (size_t n = 0; n < item.duties.size(); ++n) {
        if (item.duties[n].name.isEmpty()) item.duties[n].id = {QString::number(n + 1)};  // it is named by its place
    }
    if (item.name.isEmpty()) item.id = {tr("new", "a service item")};
    std::vector<Finding> found = faultsOf(item, session().season().centre.facts.settings.currency);
    for (const Typed& typed : m_duties) {
        QStringList bad;
        readDates(typed.dates, session().speech().locale, &bad);
        if (bad.isEmpty()) continue;
        std::erase_if(found, [&](const Finding& f) { return f.rule == "service.never-due" && f.subject == typed.duty.name; });
        found.push_back({Severity::Fault,
                         "service.dates-unreadable",
                         typed.duty.name,
                         {bad.front(), QDate(session().today().year(), 12, 24).toString(Qt::ISODate)}});
    }
    for (const Duty& duty : m_before ? m_before->duties : std::vector<Duty>{}) {
        const bool stays = std::any_of(m_duties.begin(), m_duties.end(), [&](const Typed& t) { return t.duty.id == duty.id; });
        if (!stays && wasRecorded(session().season(), duty.id))
            found.push_back({Severity::Fault, "service.duty-has-history", duty.name, {}});
    }
    return found;
}

bool ItemForm::store() {
    const ServiceItem after = draft();
    const QString name = m_before ? tr("Change %1", "service item") : tr("Add %1", "service item");
    return session().apply(name.arg(shown(after.name)), {RowChange<ServiceItem>{m_before, after}});
}

bool ItemForm::isOther() const {
    if (!m_before) return false;
    const ServiceItem* now = findItem(session().season().items, m_before->id);
    return !now || *now != *m_before;
}

bool retire(Session& session, const ServiceItem& item) {
    ServiceItem after = item;
    after.retired = !item.retired;
    const QString name =
        after.retired ? ItemForm::tr("Retire %1", "service item") : ItemForm::tr("Take %1 up again", "service item");
    return session.apply(name.arg(shown(item.name)), {RowChange<ServiceItem>{item, after}});
}

}  // namespace laneward
