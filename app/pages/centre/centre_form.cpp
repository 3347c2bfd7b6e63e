#include "app/pages/centre/centre_form.h"

#include "app/widgets/time_formats.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QSpinBox>
#include <QTimeEdit>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

constexpr double mostMinutes = 24 * 60;
constexpr int minuteDecimals = 2;  // a second is 1.7 hundredths of a minute
constexpr double secondsPerMinute = 60;

/// "5", "4.17": no zeros at the end.
class MinutesBox : public QDoubleSpinBox {
public:
    using QDoubleSpinBox::QDoubleSpinBox;
    QString textFromValue(double value) const override {
        return locale().toString(std::round(value * 100) / 100, 'f', QLocale::FloatingPointShortest);
    }
};

}  // namespace

QLineEdit* CentreForm::lineField(const char* name, int most) {
    auto* field = new QLineEdit(this);
    field->setObjectName(QString::fromLatin1(name));
    field->setMaxLength(most);
    connect(field, &QLineEdit::textChanged, this, &CentreForm::touched);
    return field;
}

QSpinBox* CentreForm::numberField(const char* name, int most, const QString& suffix) {
    auto* field = new QSpinBox(this);
    field->setObjectName(QString::fromLatin1(name));
    field->setRange(0, most);
    field->setSuffix(suffix);
    field->setAlignment(Qt::AlignTrailing);
    connect(field, &QSpinBox::valueChanged, this, &CentreForm::touched);
    return field;
}

QDoubleSpinBox* CentreForm::minutesField(const char* name) {
    auto* field = new MinutesBox(this);
    field->setObjectName(QString::fromLatin1(name));
    field->setDecimals(minuteDecimals);
    field->setRange(0, mostMinutes);
    field->setSuffix(tr(" min", "suffix"));
    field->setAlignment(Qt::AlignTrailing);
    connect(field, &QDoubleSpinBox::valueChanged, this, &CentreForm::touched);
    return field;
}

QCheckBox* CentreForm::checkField(const char* name, const QString& text) {
    auto* field = new QCheckBox(text, this);
    field->setObjectName(QString::fromLatin1(name));
    connect(field, &QCheckBox::toggled, this, &CentreForm::touched);
    return field;
}

QCheckBox* CentreForm::addCheck(const char* name, const QString& text, const QStringList& rules) {
    QCheckBox* field = checkField(name, text);
    auto* row = new QHBoxLayout;
    row->addWidget(field);
    addRow({}, row, field, rules);
    return field;
}

QComboBox* CentreForm::choiceField(const char* name) {
    auto* field = new QComboBox(this);
    field->setObjectName(QString::fromLatin1(name));
    connect(field, &QComboBox::currentIndexChanged, this, &CentreForm::touched);
    return field;
}

QTimeEdit* CentreForm::timeField(const char* name) {
    auto* field = new QTimeEdit(this);
    field->setObjectName(QString::fromLatin1(name));
    field->setDisplayFormat(clockFormat(session().speech().locale));
    connect(field, &QTimeEdit::timeChanged, this, &CentreForm::touched);
    return field;
}

std::vector<Finding> CentreForm::newFaults(const Centre& changed) const {
    std::vector<Finding> found = faultsOf(changed);
    const std::vector<Finding> before = faultsOf(session().season().centre);
    std::erase_if(found, [&](const Finding& fault) { return std::find(before.begin(), before.end(), fault) != before.end(); });
    return found;
}

Seconds secondsOf(const QDoubleSpinBox& minutes) { return Seconds{std::llround(minutes.value() * secondsPerMinute)}; }

void showMinutes(QDoubleSpinBox& field, Seconds value) { field.setValue(double(value.value) / secondsPerMinute); }

}  // namespace laneward
