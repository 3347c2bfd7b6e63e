#include "app/pages/history/history_filters.h"

#include "app/edits/plain_label.h"
#include "app/widgets/time_formats.h"
#include "core/base/limits.h"
#include "core/documents/service_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

namespace {

constexpr int least = 28;  // height of what is clicked

/// Refills a choice and keeps what is chosen; `all` stands for no choice.
void fill(QComboBox* box, const QString& all, const std::vector<std::pair<QString, QString>>& choices) {
    const QString before = box->currentData().toString();
    box->clear();
    box->addItem(all, QString());
    for (const auto& [id, name] : choices)
        box->addItem(name, id);
    box->setCurrentIndex(std::max(0, box->findData(before)));
}

std::vector<std::pair<QString, QString>> productsOf(const SeasonState& season) {
    QStringList names;
    for (const Supply& supply : season.supplies)
        names << shown(supply.name);
    for (const Machine& machine : season.centre.machines) {
        for (const QString& name : machine.conditioners)
            names << shown(name);
        names << shown(machine.cleaner);
    }
    names.removeAll(QString());
    names.removeDuplicates();
    std::vector<std::pair<QString, QString>> products;
    for (const QString& name : names)
        products.emplace_back(name, name);
    return products;
}

}  // namespace

HistoryFilters::HistoryFilters(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    m_first = new QHBoxLayout;
    auto* second = new QHBoxLayout;
    column->addLayout(m_first);
    column->addLayout(second);
    buildSearch(m_first);
    buildChoices(second);
    buildDays(second);
}

void HistoryFilters::buildSearch(QHBoxLayout* row) {
    m_text = new QLineEdit(this);
    m_text->setObjectName("historySearch");
    m_text->setMinimumHeight(least);
    m_text->setMaxLength(limits::nameLength);
    m_text->setClearButtonEnabled(true);
    m_text->setPlaceholderText(tr("Search: every word must occur"));
    m_text->setAccessibleName(tr("Search in what was done"));
    m_text->installEventFilter(this);
    setFocusProxy(m_text);
    row->addWidget(m_text, 1);
    m_corrected = new QCheckBox(tr("Show c&orrected"), this);
    m_corrected->setObjectName("showCorrected");
    m_corrected->setMinimumHeight(least);
    m_corrected->setToolTip(tr("Also what was corrected later, and what only takes it back, struck through"));
    row->addWidget(m_corrected);
    connect(m_text, &QLineEdit::textChanged, this, &HistoryFilters::follow);
    connect(m_corrected, &QCheckBox::toggled, this, &HistoryFilters::follow);
}

QComboBox* HistoryFilters::choice(QHBoxLayout* row, const char* id, const QString& spoken, int letters) {
    auto* box = new QComboBox(this);
    box->setObjectName(QLatin1StringView(id));
    box->setAccessibleName(spoken);
    box->setToolTip(spoken);
    box->setMinimumHeight(least);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(letters);
    row->addWidget(box, letters);
    connect(box, &QComboBox::currentIndexChanged, this, &HistoryFilters::follow);
    return box;
}

void HistoryFilters::buildChoices(QHBoxLayout* row) {
    m_kind = choice(row, "historyKind", tr("Kind of entry"), 7);
    m_machine = choice(row, "historyMachine", tr("Machine"), 7);
    m_item = choice(row, "historyItem", tr("Service item"), 8);
    m_lane = new QSpinBox(this);
    m_lane->setObjectName("historyLane");
    m_lane->setAccessibleName(tr("Lane"));
    m_lane->setToolTip(tr("Lane"));
    m_lane->setMinimumHeight(least);
    m_lane->setSpecialValueText(tr("All lanes"));
    m_lane->setPrefix(tr("Lane ", "before a number"));
    row->addWidget(m_lane);
    m_person = choice(row, "historyPerson", tr("Person"), 7);
    m_product = choice(row, "historyProduct", tr("Product"), 7);
    connect(m_lane, &QSpinBox::valueChanged, this, &HistoryFilters::follow);
}

void HistoryFilters::buildDays(QHBoxLayout* row) {
    const auto field = [&](const QString& name, const QString& spoken, const char* id) {
        auto* made = new QDateEdit(this);
        made->setObjectName(QLatin1StringView(id));
        made->setDisplayFormat(dayFieldFormat(QLocale()));
        made->setCalendarPopup(true);
        made->setMinimumHeight(least);
        made->setAccessibleName(spoken);
        auto* label = plainLabel(name, this);
        label->setBuddy(made);
        row->addWidget(label);
        row->addWidget(made);
        connect(made, &QDateEdit::dateChanged, this, &HistoryFilters::follow);
        return made;
    };
    m_from = field(tr("&from"), tr("History from"), "historyFrom");
    m_to = field(tr("&to"), tr("History to"), "historyTo");
    connect(m_to, &QDateEdit::dateChanged, this, [this] {
        if (!m_filling) m_followsToday = m_to->date() == m_session.today();
    });
}

bool HistoryFilters::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_text && event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Down) {
        Q_EMIT leftForList();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void HistoryFilters::refresh() {
    m_filling = true;
    const SeasonState& season = m_session.season();
    std::vector<std::pair<QString, QString>> kinds;
    for (int kind = 0; kind < historyKinds; ++kind)
        kinds.emplace_back(QString::number(kind), text(HistoryKind(kind)));
    std::vector<std::pair<QString, QString>> machines;
    for (const Machine& machine : season.centre.machines)
        machines.emplace_back(machine.id.value, shown(machine.name));
    std::vector<std::pair<QString, QString>> items;
    for (const ServiceItem& item : season.items)
        items.emplace_back(item.id.value, itemText(item, season));
    std::vector<std::pair<QString, QString>> people;
    for (const Person& person : season.centre.people)
        people.emplace_back(person.id.value, shown(person.name));
    fill(m_kind, tr("All kinds"), kinds);
    fill(m_machine, tr("All machines"), machines);
    fill(m_item, tr("All items"), items);
    fill(m_person, tr("All people"), people);
    fill(m_product, tr("All products"), productsOf(season));
    m_lane->setMaximum(season.centre.facts.lanes);
    const QDate today = m_session.today();
    if (m_followsToday && m_lastToday != today) {
        m_to->setDate(today);
        if (!m_lastToday.isValid()) m_from->setDate(today.addYears(-1));
        m_lastToday = today;
    }
    m_filling = false;
}

void HistoryFilters::follow() {
    if (!m_filling) Q_EMIT changed();
}

QDate HistoryFilters::from() const { return std::min(m_from->date(), m_to->date()); }

HistoryQuery HistoryFilters::query() const {
    const Centre& centre = m_session.season().centre;
    HistoryQuery query;
    query.text = m_text->text();
    if (const QString kind = m_kind->currentData().toString(); !kind.isEmpty()) query.kind = HistoryKind(kind.toInt());
    query.machine = {m_machine->currentData().toString()};
    query.item = {m_item->currentData().toString()};
    query.lane = m_lane->value();
    query.person = {m_person->currentData().toString()};
    query.product = m_product->currentData().toString();
    query.time = {dayOf(centre, from()).begin, dayOf(centre, m_to->date()).end};
    query.withCorrected = m_corrected->isChecked();
    return query;
}

bool HistoryFilters::isNarrowed() const {
    const HistoryQuery asked = query();
    return !asked.text.trimmed().isEmpty() || asked.kind || !asked.machine.isEmpty() || !asked.item.isEmpty() || asked.lane > 0 ||
           !asked.person.isEmpty() || !asked.product.isEmpty();
}

DateRange HistoryFilters::days() const { return {from(), m_to->date()}; }

void HistoryFilters::listEverything() {
    m_filling = true;
    m_corrected->setChecked(true);
    m_filling = false;
    clear();
}

void HistoryFilters::reach(QDate day) {
    if (day < from()) (m_from->date() < m_to->date() ? m_from : m_to)->setDate(day);
    if (day > days().last) (m_from->date() < m_to->date() ? m_to : m_from)->setDate(day);
}

void HistoryFilters::clear() {
    m_filling = true;
    m_text->clear();
    for (QComboBox* box : {m_kind, m_machine, m_item, m_person, m_product})
        box->setCurrentIndex(0);
    m_lane->setValue(0);
    m_filling = false;
    Q_EMIT changed();
}

}  // namespace laneward
