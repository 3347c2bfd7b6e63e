#include "app/pages/centre/house_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QSpinBox>
#include <QTimeEdit>
#include <QTimeZone>

#include <cmath>

namespace laneward {

namespace {

constexpr double secondsPerHour = 3'600;
constexpr double longestAgeTyped = 31 * 24;
constexpr int mostLanesTyped = 9'999;  // more than can be: what cannot is said, not cut off
constexpr int currencyTyped = 8;

}  // namespace

HouseForm::HouseForm(Session& session, QWidget* parent) : CentreForm(session, parent) {
    buildFacts();
    buildTimes();
    buildHabits();
    finish();
}

void HouseForm::buildFacts() {
    m_name = lineField("centreTitle", limits::nameLength + 1);
    m_lanes = numberField("centreLanes", mostLanesTyped);
    m_zone = choiceField("centreZone");
    for (const QByteArray& id : QTimeZone::availableTimeZoneIds())
        m_zone->addItem(QString::fromUtf8(id));
    addRow(tr("&Name of the centre:"), m_name, {"centre.no-name"});
    addRow(tr("Number of &lanes:"), m_lanes, {"centre.lane-count", "outage.lane-unknown"});
    addRow(tr("&Time zone:"), m_zone, {"zone.unknown"});
}

void HouseForm::buildTimes() {
    m_dayBegins = timeField("centreDayBegins");
    m_dayBegins->setToolTip(tr("Play and work after midnight belong to the evening before until then"));
    m_reserve = minutesField("centreReserve");
    m_settle = minutesField("centreSettle");
    m_clearing = minutesField("centreClearing");
    m_longestAge = minutesField("centreLongestAge");
    m_longestAge->setRange(0, longestAgeTyped);
    m_longestAge->setSuffix(tr(" h", "suffix"));
    addRow(tr("The day &begins at:"), m_dayBegins, {"centre.day-begins"});
    m_partner = addCheck("centrePartner", tr("no work while the neighbour on the same &approach is played on"), {});
    addRow(tr("&Reserve before lanes must be ready:"), m_reserve, {"centre.setting-time"});
    addRow(tr("New events: conditioner &settles for:"), m_settle, {});
    addRow(tr("New events: players &clear the lanes in:"), m_clearing, {});
    addRow(tr("New events: &fresh means not older than:"), m_longestAge, {});
}

void HouseForm::buildHabits() {
    m_units = choiceField("centreUnits");
    m_units->addItem(tr("millilitres, metres"), int(UnitSystem::Metric));
    m_units->addItem(tr("US fluid ounces, feet"), int(UnitSystem::UsCustomary));
    m_paper = choiceField("centrePaper");
    m_paper->addItem(tr("A4", "paper"), false);
    m_paper->addItem(tr("Letter", "paper"), true);
    m_currency = lineField("centreCurrency", currencyTyped);
    m_currency->setToolTip(tr("Three letters, as EUR. Prices that are known stay the same numbers."));
    addRow(tr("&Units:"), m_units, {});
    addRow(tr("&Paper:"), m_paper, {});
    addRow(tr("Curr&ency (prices are not converted):"), m_currency, {"centre.currency"});
}

void HouseForm::edit() { open(shown(session().season().centre.facts.name)); }

void HouseForm::reload() {
    m_loaded = session().season().centre.facts;
    const Settings& settings = m_loaded.settings;
    m_name->setText(m_loaded.name);
    m_lanes->setValue(m_loaded.lanes);
    const QString zone = QString::fromUtf8(m_loaded.zone);
    if (m_zone->findText(zone) < 0) m_zone->insertItem(0, zone);
    m_zone->setCurrentIndex(m_zone->findText(zone));
    m_dayBegins->setTime(settings.dayBegins);
    m_partner->setChecked(settings.pairPartnerRule);
    showMinutes(*m_reserve, settings.reserve);
    showMinutes(*m_settle, settings.settle);
    showMinutes(*m_clearing, settings.clearing);
    m_longestAge->setValue(double(settings.longestAge.value) / secondsPerHour);
    m_units->setCurrentIndex(m_units->findData(int(settings.units)));
    m_paper->setCurrentIndex(m_paper->findData(settings.letterPaper));
    m_currency->setText(QString::fromUtf8(settings.currency));
}

bool HouseForm::isOther() const { return session().season().centre.facts.version != m_loaded.version; }

CentreFacts HouseForm::draft() const {
    CentreFacts facts = m_loaded;
    facts.name = m_name->text().trimmed();
    facts.lanes = m_lanes->value();
    facts.zone = m_zone->currentText().toUtf8();
    Settings& settings = facts.settings;
    settings.dayBegins = m_dayBegins->time();
    settings.pairPartnerRule = m_partner->isChecked();
    settings.reserve = secondsOf(*m_reserve);
    settings.settle = secondsOf(*m_settle);
    settings.clearing = secondsOf(*m_clearing);
    const Seconds age{std::llround(m_longestAge->value() * secondsPerHour)};
    // Shown in hundredths of an hour: what nobody typed over stays as it is.
    if (std::abs(m_longestAge->value() - double(settings.longestAge.value) / secondsPerHour) > 0.005) settings.longestAge = age;
    settings.units = UnitSystem(m_units->currentData().toInt());
    settings.letterPaper = m_paper->currentData().toBool();
    settings.currency = m_currency->text().trimmed().toUpper().toUtf8();
    return facts;
}

std::vector<Finding> HouseForm::faults() const {
    Centre centre = session().season().centre;
    centre.facts = draft();
    return newFaults(centre);
}

bool HouseForm::store() { return session().apply(tr("Change the centre"), {RowChange<CentreFacts>{m_loaded, draft()}}); }

}  // namespace laneward
