#include "app/pages/service/record_form.h"

#include "app/widgets/decimal_text.h"
#include "core/base/limits.h"

#include <QCheckBox>
#include <QDateTimeEdit>
#include <QHBoxLayout>
#include <QLineEdit>

namespace laneward {

RecordForm::RecordForm(Session& session, const char* name, QWidget* parent)
    : EditForm(session, parent), m_name(QString::fromLatin1(name)) {}

QCheckBox* RecordForm::addCheck(const QString& words, const char* name) {
    auto* box = new QCheckBox(words, this);
    box->setObjectName(QLatin1StringView(name));
    auto* row = new QHBoxLayout;
    row->addWidget(box);
    addRow({}, row, box, {});
    connect(box, &QCheckBox::toggled, this, &RecordForm::touched);
    return box;
}

void RecordForm::addEnd(const QString& when, const QStringList& rules) {
    m_at = momentField(this);
    m_at->setObjectName(m_name + "At");
    m_note = new QLineEdit(this);
    m_note->setObjectName(m_name + "Note");
    m_note->setMaxLength(limits::noteLength);
    addRow(when, m_at, rules);
    addRow(tr("N&ote:"), m_note, {});
    connect(m_at, &QDateTimeEdit::dateTimeChanged, this, &RecordForm::touched);
    connect(m_note, &QLineEdit::textChanged, this, &RecordForm::touched);
}

Instant RecordForm::at() const { return momentOf(*m_at, session().zone()); }

QString RecordForm::note() const { return m_note->text().trimmed(); }

void RecordForm::reload() {
    setMoment(*m_at, session().now(), session().zone());
    m_note->clear();
}

}  // namespace laneward
