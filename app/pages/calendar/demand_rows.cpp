#include "app/pages/calendar/demand_rows.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

namespace {

constexpr std::array demandKinds{DemandKind::AsItIs, DemandKind::Fresh, DemandKind::Recent, DemandKind::Pattern,
                                 DemandKind::Stripped};

QDoubleSpinBox* hoursBox(const QString& name, QWidget* parent) {
    auto* box = new QDoubleSpinBox(parent);
    box->setRange(0.25, 24 * 60);
    box->setSingleStep(0.5);
    box->setDecimals(2);
    box->setSuffix(DemandRow::tr(" h"));
    box->setAccessibleName(name);
    return box;
}

double asHours(Seconds s) { return double(s.value) / 3'600; }

/// Exactly what was loaded when the field still shows it.
Seconds fromHours(const QDoubleSpinBox* box, Seconds loaded) {
    const bool untouched = qAbs(box->value() - asHours(loaded)) < 0.006;
    return untouched ? loaded : Seconds{qRound64(box->value() * 3'600)};
}

/// Gone at once, deleted when its own signal is over.
void drop(DemandRow* row) {
    row->setParent(nullptr);
    row->deleteLater();
}

}  // namespace

DemandRow::DemandRow(const std::vector<Pattern>& patterns, QWidget* parent) : QFrame(parent), m_form(new QFormLayout(this)) {
    setFrameShape(QFrame::StyledPanel);
    m_form->setContentsMargins(8, 6, 8, 6);
    buildFields(patterns);
    buildLimits();
    buildRemove();
    connectFields();
}

void DemandRow::buildFields(const std::vector<Pattern>& patterns) {
    m_lanes = new QLineEdit(this);
    m_lanes->setPlaceholderText(tr("all lanes of the event"));
    m_lanes->setAccessibleName(tr("Lanes of this demand"));
    m_form->addRow(tr("On lanes"), m_lanes);
    m_kind = new QComboBox(this);
    m_kind->setAccessibleName(tr("Demand"));
    for (DemandKind kind : demandKinds)
        m_kind->addItem(text(kind), int(kind));
    m_form->addRow(tr("Asks for"), m_kind);
    m_pattern = new QComboBox(this);
    m_pattern->setAccessibleName(tr("Pattern"));
    m_pattern->addItem(tr("any pattern"), QString());
    for (const Pattern& pattern : patterns) {
        if (!pattern.retired) m_pattern->addItem(shown(pattern.name), pattern.id.value);
    }
    m_form->addRow(tr("Pattern"), m_pattern);
    m_least = new QComboBox(this);
    m_least->setAccessibleName(tr("Least treatment"));
    for (Treatment treatment : allTreatments)
        m_least->addItem(text(treatment), int(treatment));
    m_form->addRow(tr("At least"), m_least);
    for (QComboBox* box : {m_kind, m_pattern, m_least})
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
}

void DemandRow::buildLimits() {
    m_age = hoursBox(tr("Longest age in hours"), this);
    m_form->addRow(tr("Not older than"), m_age);
    m_play = hoursBox(tr("Longest play since then in hours"), this);
    m_form->addRow(tr("Play since, at most"), m_play);
}

void DemandRow::buildRemove() {
    m_problem = new QLabel(this);
    m_problem->setTextFormat(Qt::PlainText);
    m_problem->setWordWrap(true);
    m_problem->hide();
    m_form->addRow(m_problem);
    auto* remove = new QPushButton(tr("Remove this demand"), this);
    remove->setMinimumHeight(26);
    m_form->addRow(remove);
    connect(remove, &QPushButton::clicked, this, &DemandRow::removeAsked);
}

void DemandRow::connectFields() {
    connect(m_lanes, &QLineEdit::textEdited, this, &DemandRow::edited);
    connect(m_kind, &QComboBox::currentIndexChanged, this, [this] {
        showParts();
        Q_EMIT edited();
    });
    for (QComboBox* box : {m_pattern, m_least})
        connect(box, &QComboBox::currentIndexChanged, this, &DemandRow::edited);
    for (QDoubleSpinBox* box : {m_age, m_play})
        connect(box, &QDoubleSpinBox::valueChanged, this, &DemandRow::edited);
}

void DemandRow::showParts() {
    const DemandKind kind = DemandKind(m_kind->currentData().toInt());
    const auto showField = [this](QWidget* field, bool visible) {
        field->setVisible(visible);
        m_form->labelForField(field)->setVisible(visible);
    };
    const bool aged = kind == DemandKind::Fresh || kind == DemandKind::Recent;
    showField(m_pattern, aged || kind == DemandKind::Pattern);
    showField(m_least, aged);
    showField(m_age, aged);
    showField(m_play, kind == DemandKind::Recent);
}

void DemandRow::load(const SurfaceDemand& demand, const LaneSet& event) {
    m_loaded = demand;
    m_lanes->setText(demand.lanes == event ? QString() : demand.lanes.text());
    m_kind->setCurrentIndex(m_kind->findData(int(demand.kind)));
    const QString id = demand.pattern ? demand.pattern->value : QString();
    if (m_pattern->findData(id) < 0) m_pattern->addItem(shown(id), id);  // a retired pattern that this event still asks for
    m_pattern->setCurrentIndex(m_pattern->findData(id));
    m_least->setCurrentIndex(m_least->findData(int(demand.least)));
    m_age->setValue(asHours(demand.longestAge));
    m_play->setValue(asHours(demand.longestPlay));
    showParts();
}

Result<LaneSet> DemandRow::namedLanes() const { return LaneSet::parse(m_lanes->text()); }

Result<SurfaceDemand> DemandRow::store(const LaneSet& event, const LaneSet& named) const {
    const Result<LaneSet> own = namedLanes();
    if (!own) return own.error();
    SurfaceDemand demand;
    demand.lanes = own->isEmpty() ? event - named : *own;
    demand.kind = DemandKind(m_kind->currentData().toInt());
    const QString id = m_pattern->currentData().toString();
    if (!id.isEmpty()) demand.pattern = PatternId{id};
    demand.least = Treatment(m_least->currentData().toInt());
    demand.longestAge = fromHours(m_age, m_loaded.longestAge);
    demand.longestPlay = fromHours(m_play, m_loaded.longestPlay);
    if (demand.kind == DemandKind::Stripped && m_loaded.kind != DemandKind::Stripped) demand.least = Treatment::CleanOnly;
    const bool noPattern = demand.kind == DemandKind::AsItIs || demand.kind == DemandKind::Stripped;
    if (noPattern && m_loaded.kind != demand.kind) demand.pattern.reset();
    return demand;
}

void DemandRow::setProblem(const QString& words) {
    m_problem->setText(words);
    m_problem->setVisible(!words.isEmpty());
}

DemandRows::DemandRows(QWidget* parent) : QWidget(parent), m_column(new QVBoxLayout(this)) {
    m_column->setContentsMargins(0, 0, 0, 0);
    m_add = new QPushButton(tr("&Add lanes with another demand"), this);
    m_add->setMinimumHeight(26);
    m_column->addWidget(m_add);
    connect(m_add, &QPushButton::clicked, this, [this] {
        addRow({}, LaneSet{});
        Q_EMIT edited();
    });
}

void DemandRows::load(const std::vector<SurfaceDemand>& demands, const LaneSet& event, const std::vector<Pattern>& patterns) {
    for (DemandRow* old : m_rows)
        drop(old);
    m_rows.clear();
    m_patterns = patterns;
    for (const SurfaceDemand& demand : demands)
        addRow(demand, event);
}

DemandRow* DemandRows::addRow(const SurfaceDemand& demand, const LaneSet& event) {
    auto* row = new DemandRow(m_patterns, this);
    row->load(demand, event);
    m_column->insertWidget(int(m_rows.size()), row);
    m_rows.push_back(row);
    connect(row, &DemandRow::edited, this, &DemandRows::edited);
    connect(row, &DemandRow::removeAsked, this, [this, row] { removeRow(row); });
    return row;
}

void DemandRows::removeRow(DemandRow* row) {
    std::erase(m_rows, row);
    drop(row);
    Q_EMIT edited();
}

std::optional<std::vector<SurfaceDemand>> DemandRows::store(const LaneSet& event, const Speech& speech) {
    LaneSet named;
    for (DemandRow* row : m_rows) {
        if (const Result<LaneSet> lanes = row->namedLanes()) named = named | *lanes;
    }
    std::vector<SurfaceDemand> demands;
    bool readable = true;
    for (DemandRow* row : m_rows) {
        const Result<SurfaceDemand> demand = row->store(event, named);
        row->setProblem(demand ? QString() : text(demand.error(), speech));
        if (demand)
            demands.push_back(*demand);
        else
            readable = false;
    }
    return readable ? std::optional(demands) : std::nullopt;
}

}  // namespace laneward
