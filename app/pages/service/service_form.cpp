#include "app/pages/service/service_form.h"

#include "app/edits/plain_label.h"
#include "app/widgets/quantity_box.h"
#include "core/base/limits.h"
#include "core/documents/service_words.h"
#include "core/documents/stock_words.h"

#include <QComboBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int mostMinutes = 24 * 60;
constexpr int least = 28;  // height of what is clicked or typed in
constexpr int amountWidth = 120;
constexpr int partsRow = 2;  // below what was done, and what was found

}  // namespace

ServiceForm::ServiceForm(Session& session, QWidget* parent) : QFrame(parent), m_session(session) {
    setFrameShape(QFrame::StyledPanel);
    m_column = new QVBoxLayout(this);
    m_column->addWidget(m_title = headingLabel({}, this));
    m_column->addWidget(m_steps = proseLabel({}, this));
    m_steps->setObjectName("serviceSteps");
    buildFields();
    m_column->addWidget(m_problem = proseLabel({}, this));
    m_problem->setObjectName("serviceProblem");
    buildButtons();
    hide();
}

void ServiceForm::buildFields() {
    m_fields = new QWidget(this);
    m_grid = new QGridLayout(m_fields);
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(10);
    m_grid->setColumnStretch(1, 1);
    m_grid->setColumnStretch(3, 1);
    int number = 0;
    const auto add = [this, &number](const QString& name, QWidget* field, const char* objectName) {
        auto* label = plainLabel(name, m_fields);
        label->setBuddy(field);
        field->setObjectName(objectName);
        field->setMinimumHeight(least);
        m_grid->addWidget(label, number / 2, number % 2 * 2);
        m_grid->addWidget(field, number / 2, number % 2 * 2 + 1);
        ++number;
    };
    m_result = new QComboBox(m_fields);
    for (const ServiceResult result : {ServiceResult::Done, ServiceResult::Failed, ServiceResult::Found})
        m_result->addItem(text(result), int(result));
    add(tr("&What was done:"), m_result, "serviceResult");
    m_minutes = new QSpinBox(m_fields);
    m_minutes->setRange(0, mostMinutes);
    m_minutes->setSuffix(tr(" min"));
    add(tr("Wor&k:"), m_minutes, "serviceMinutes");
    m_finding = new QLineEdit(m_fields);
    m_finding->setMaxLength(limits::nameLength);
    add(tr("Fo&und:"), m_finding, "serviceFinding");
    m_note = new QLineEdit(m_fields);
    m_note->setMaxLength(limits::noteLength);
    add(tr("Not&e:"), m_note, "serviceNote");
    m_column->addWidget(m_fields);
}

void ServiceForm::buildButtons() {
    auto* row = new QHBoxLayout;
    m_keep = new QPushButton(tr("&Record it"), this);
    m_keep->setObjectName("keepService");
    auto* cancel = new QPushButton(tr("Leave it (Esc)"), this);
    cancel->setObjectName("leaveService");
    row->addWidget(m_keep);
    row->addWidget(cancel);
    row->addStretch();
    m_column->addLayout(row);
    for (QPushButton* button : {m_keep, cancel})
        button->setMinimumHeight(least);
    connect(m_keep, &QPushButton::clicked, this, &ServiceForm::keep);
    connect(cancel, &QPushButton::clicked, this, &ServiceForm::leave);
}

const Duty* ServiceForm::duty() const {
    const ServiceItem* item = findItem(m_session.season().items, m_due.item);
    return item && !item->retired ? findDuty(*item, m_due.duty) : nullptr;
}

void ServiceForm::open(const DutyDue& due) {
    m_due = due;
    const Duty* found = duty();
    if (!found) return;
    const ServiceItem* item = findItem(m_session.season().items, due.item);
    m_title->setText(tr("%1 – %2", "duty, of what").arg(shown(found->name), itemText(*item, m_session.season())));
    tellSteps();
    m_result->setCurrentIndex(0);
    m_minutes->setValue(found->minutes);
    m_finding->clear();
    m_note->clear();
    addParts();
    m_problem->hide();
    m_keep->setEnabled(!m_session.isReadOnly());
    show();
    m_keep->setFocus();
}

/// In the order in which they are done, each caution before them in full.
void ServiceForm::tellSteps() {
    QStringList lines;
    for (const QByteArray& caution : duty()->cautions)
        lines << QStringLiteral("! ") + text(Finding{Severity::Note, caution, {}, {}}, m_session.speech());
    if (!duty()->cautions.empty()) lines << text(Finding{Severity::Note, "caution.defer", {}, {}}, m_session.speech());
    int number = 0;
    for (const QString& step : duty()->steps)
        lines << QStringLiteral("%1. %2").arg(++number).arg(shown(step));
    m_steps->setText(lines.join(u'\n'));
    m_steps->setVisible(!lines.isEmpty());
}

void ServiceForm::addParts() {
    delete m_partFields;
    m_parts.clear();
    m_partFields = new QWidget(m_fields);
    auto* grid = new QGridLayout(m_partFields);
    grid->setContentsMargins(0, 0, 0, 0);
    QWidget* before = m_result;
    for (const PartNeed& need : duty()->parts) {
        const Supply* supply = findSupply(m_session.season().supplies, need.supply);
        if (!supply) continue;
        auto* amount = new QuantityBox(supply->kind, m_session.speech().units, m_partFields);
        amount->setObjectName("servicePart");
        amount->setAccessibleName(tr("%1: amount taken", "supply").arg(shown(supply->name)));
        amount->setAmount(need.amount);
        amount->setMinimumSize(amountWidth, least);
        const Amount there = m_session.season().stock.onHand(supply->id);
        const QString name = tr("Takes %1 (%2 there):", "supply, amount")
                                 .arg(shown(supply->name), amountText(there, supply->kind, m_session.speech()));
        auto* label = plainLabel(name, m_partFields);
        label->setBuddy(amount);
        const int row = int(m_parts.size());
        grid->addWidget(label, row, 0);
        grid->addWidget(amount, row, 1);
        grid->setColumnStretch(2, 1);
        m_parts.push_back({supply->id, amount});
        setTabOrder(before, amount);
        before = amount;
    }
    m_partFields->setVisible(!m_parts.empty());
    m_grid->addWidget(m_partFields, partsRow, 0, 1, 4);
}

ServiceRecord ServiceForm::record() const {
    ServiceRecord record;
    record.at = m_session.now();
    record.item = m_due.item;
    record.duty = m_due.duty;
    const ServiceItem* item = findItem(m_session.season().items, m_due.item);
    if (item && !item->machine.isEmpty()) record.meters = metersNow(m_session.season(), item->machine, m_session.now());
    record.result = ServiceResult(m_result->currentData().toInt());
    record.minutes = m_minutes->value();
    record.finding = m_finding->text().trimmed();
    record.note = m_note->text().trimmed();
    for (const Part& part : m_parts)
        if (part.amount->amount() > Amount{0}) record.parts.push_back({part.supply, part.amount->amount(), {}});
    return record;
}

void ServiceForm::keep() {
    const ServiceRecord made = record();
    const std::vector<Finding> faults = faultsOf(made, findItem(m_session.season().items, made.item), m_session.now());
    if (!faults.empty()) {
        m_problem->setText(text(faults.front(), m_session.speech()));
        m_problem->show();
        return;
    }
    if (m_session.record(tr("Service: %1", "duty").arg(shown(duty()->name)), {made})) leave();
}

void ServiceForm::leave() {
    if (isHidden()) return;
    hide();
    Q_EMIT left();
}

void ServiceForm::refresh() {
    if (isOpen() && !duty()) leave();
}

void ServiceForm::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    auto* focused = enter ? qobject_cast<QPushButton*>(focusWidget()) : nullptr;
    if (event->key() == Qt::Key_Escape)
        leave();
    else if (focused)
        focused->click();
    else if (enter)
        keep();
    else
        QFrame::keyPressEvent(event);
}

}  // namespace laneward
