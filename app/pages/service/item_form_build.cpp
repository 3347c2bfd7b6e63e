#include "app/edits/plain_label.h"
#include "app/pages/service/item_form.h"
#include "app/pages/service/part_rows.h"
#include "app/widgets/money_box.h"
#include "core/base/limits.h"
#include "core/documents/cautions.h"
#include "core/documents/item_words.h"
#include "core/documents/service_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>

namespace laneward {

namespace {

constexpr int wideField = 580;
constexpr int everyWidth = 190;
constexpr int stepsHeight = 84;
constexpr int lastItemKind = int(ItemKind::Other);
constexpr int lastDutyKind = int(DutyKind::Calibrate);
constexpr double mostEvery = 1e9;
constexpr int mostMinutes = 100'000;  // more than a day is refused in words, so it can be typed

QString shortCaution(const QByteArray& rule) {
    if (rule == "caution.battery") return ItemForm::tr("battery");
    if (rule == "caution.lifting") return ItemForm::tr("lifting");
    if (rule == "caution.slippery") return ItemForm::tr("slippery floor");
    if (rule == "caution.moving-parts") return ItemForm::tr("moving parts");
    if (rule == "caution.chemicals") return ItemForm::tr("chemicals");
    if (rule == "caution.waste") return ItemForm::tr("waste");
    return QString::fromLatin1(rule);
}

QLineEdit* lineField(const char* name, int most, QWidget* parent) {
    auto* field = new QLineEdit(parent);
    field->setObjectName(name);
    field->setMaxLength(most);
    return field;
}

}  // namespace

ItemForm::ItemForm(Session& session, QWidget* parent) : EditForm(session, parent) {
    buildItem();
    buildDuties();
    buildWhen();
    buildWork();
    buildCosts();
    finish();
    connectFields();
}

void ItemForm::buildItem() {
    m_template = new QComboBox(this);
    m_template->setObjectName("itemTemplate");
    m_name = lineField("itemName", limits::nameLength + 1, this);  // what is too long is said
    m_kind = new QComboBox(this);
    m_kind->setObjectName("itemKind");
    for (int kind = 0; kind <= lastItemKind; ++kind)
        m_kind->addItem(text(ItemKind(kind)), kind);
    m_note = lineField("itemNote", limits::noteLength, this);
    addRow(tr("&Begin with:"), m_template, {});
    addRow(tr("&Name:"), m_name, {"service.no-name", "service.name-too-long"});
    addRow(tr("&Kind:"), m_kind, {});
    auto* note = new QHBoxLayout;
    m_note->setFixedWidth(wideField);
    note->addWidget(m_note);
    addRow(tr("N&ote:"), note, m_note, {});
}

void ItemForm::buildDuties() {
    m_choice = new QComboBox(this);
    m_choice->setObjectName("itemDuty");
    m_choice->setFixedWidth(wideField - 280);
    m_add = new QPushButton(tr("&Add a duty"), this);
    m_add->setObjectName("addDuty");
    m_out = new QPushButton(tr("Take it out"), this);
    m_out->setObjectName("takeDutyOut");
    auto* row = new QHBoxLayout;
    row->addWidget(m_choice);
    row->addWidget(m_add);
    row->addWidget(m_out);
    addRow(tr("&Duty:"), row, m_choice, {"service.duty-has-history", "service.duty-twice"});
    m_dutyName = lineField("dutyName", limits::nameLength, this);
    m_dutyKind = new QComboBox(this);
    m_dutyKind->setObjectName("dutyKind");
    for (int kind = 0; kind <= lastDutyKind; ++kind)
        m_dutyKind->addItem(text(DutyKind(kind)), kind);
    auto* named = new QHBoxLayout;
    m_dutyName->setFixedWidth(wideField - 220);
    m_dutyKind->setAccessibleName(tr("Kind of work"));
    named->addWidget(m_dutyName);
    named->addWidget(m_dutyKind, 1);
    addRow(tr("It is &called:"), named, m_dutyName, {"service.duty-without-name"});
}

/// Whichever comes first; nothing typed, nothing counted.
void ItemForm::buildWhen() {
    const bool metric = session().season().centre.facts.settings.units == UnitSystem::Metric;
    const std::array suffixes{tr(" lanes", "suffix"), tr(" runs", "suffix"), tr(" h", "suffix"),
                              metric ? tr(" L", "suffix") : tr(" gal", "suffix"), tr(" days", "suffix")};
    auto* grid = new QGridLayout;
    for (int n = 0; n < int(m_every.size()); ++n) {
        auto* box = new QDoubleSpinBox(this);
        box->setObjectName("every" + QString::number(n));
        box->setAccessibleName(tr("Due after: %1", "lanes, hours of work").arg(text(MeterKind(n))));
        box->setRange(0, mostEvery);
        box->setDecimals(n == int(MeterKind::Minutes) || n == int(MeterKind::Volume) ? 1 : 0);
        box->setSpecialValueText(tr("not by %1", "lanes, hours of work").arg(text(MeterKind(n))));
        box->setSuffix(suffixes[size_t(n)]);
        box->setGroupSeparatorShown(true);
        box->setFixedWidth(everyWidth);
        m_every[size_t(n)] = box;
        grid->addWidget(box, n / 3, n % 3);
    }
    addRow(tr("Due a&fter:"), grid, m_every[0],
           {"service.never-due", "service.interval", "service.no-meter", "service.meter-twice"});
    m_dates = lineField("dutyDates", limits::noteLength, this);
    auto* dates = new QHBoxLayout;
    m_dates->setFixedWidth(wideField);
    dates->addWidget(m_dates);
    addRow(tr("And on these da&ys:"), dates, m_dates, {"service.dates-unreadable"});
}

void ItemForm::buildWork() {
    m_steps = new QPlainTextEdit(this);
    m_steps->setObjectName("dutySteps");
    m_steps->setTabChangesFocus(true);
    m_steps->setFixedHeight(stepsHeight);
    m_steps->setFixedWidth(wideField);
    auto* steps = new QHBoxLayout;
    steps->addWidget(m_steps);
    addRow(tr("S&teps, one a line:"), steps, m_steps, {});
    m_minutes = new QSpinBox(this);
    m_minutes->setObjectName("dutyMinutes");
    m_minutes->setRange(-1, mostMinutes);
    m_minutes->setSuffix(tr(" min"));
    m_opensUp = new QCheckBox(tr("the machine is opened for it"), this);
    m_opensUp->setObjectName("dutyOpensUp");
    auto* work = new QHBoxLayout;
    work->addWidget(m_minutes);
    work->addWidget(m_opensUp, 1);
    addRow(tr("&Work:"), work, m_minutes, {"service.minutes"});
    m_skill = new QComboBox(this);
    m_skill->setObjectName("dutySkill");
    for (const Skill skill : {Skill::Anyone, Skill::Lead, Skill::Licensed})
        m_skill->addItem(text(skill), int(skill));
    addRow(tr("Done b&y:"), m_skill, {});
    auto* grid = new QGridLayout;
    for (const Caution& caution : cautions()) {
        auto* box = new QCheckBox(shortCaution(caution.rule), this);
        box->setObjectName(QString::fromLatin1(caution.rule));
        box->setProperty("rule", QByteArray(caution.rule));
        box->setToolTip(text(Finding{Severity::Note, caution.rule, {}, {}}, session().speech()));
        grid->addWidget(box, int(m_cautions.size()) / 3, int(m_cautions.size()) % 3);
        m_cautions.push_back(box);
    }
    addRow(tr("Cautions:"), grid, m_cautions.front(), {});
}

void ItemForm::buildCosts() {
    m_parts = new PartRows(session(), this);
    m_parts->setObjectName("dutyParts");
    auto* parts = new QHBoxLayout;
    parts->addWidget(m_parts);
    addRow(tr("&Parts it takes:"), parts, m_parts, {"service.part"});
    m_planned = new MoneyBox(this);
    m_planned->setObjectName("dutyPlanned");
    m_failed = new MoneyBox(this);
    m_failed->setObjectName("dutyFailed");
    m_failed->setToolTip(tr("Part, work, and all that the stopped run costs"));
    addRow(tr("Costs when done &in time:"), m_planned, {"price.amount", "price.currency"});
    addRow(tr("Costs when it has fai&led first:"), m_failed, {});
}

void ItemForm::connectFields() {
    for (QLineEdit* field : {m_name, m_note, m_dutyName, m_dates})
        connect(field, &QLineEdit::textChanged, this, &ItemForm::edited);
    for (QComboBox* field : {m_kind, m_dutyKind, m_skill})
        connect(field, &QComboBox::currentIndexChanged, this, &ItemForm::edited);
    for (QDoubleSpinBox* field : m_every)
        connect(field, &QDoubleSpinBox::valueChanged, this, &ItemForm::edited);
    for (QDoubleSpinBox* field : std::initializer_list<QDoubleSpinBox*>{m_planned, m_failed})
        connect(field, &QDoubleSpinBox::valueChanged, this, &ItemForm::edited);
    connect(m_minutes, &QSpinBox::valueChanged, this, &ItemForm::edited);
    connect(m_opensUp, &QCheckBox::toggled, this, &ItemForm::edited);
    for (QCheckBox* box : m_cautions)
        connect(box, &QCheckBox::toggled, this, &ItemForm::edited);
    connect(m_steps, &QPlainTextEdit::textChanged, this, &ItemForm::edited);
    connect(m_parts, &PartRows::edited, this, &ItemForm::edited);
    connect(m_template, &QComboBox::currentIndexChanged, this, &ItemForm::templateChosen);
    connect(m_choice, &QComboBox::currentIndexChanged, this, [this](int index) {
        if (!m_showing) showDuty(index);
    });
    connect(m_add, &QPushButton::clicked, this, &ItemForm::addDuty);
    connect(m_out, &QPushButton::clicked, this, &ItemForm::takeDutyOut);
}

}  // namespace laneward
