#include "app/pages/service/part_rows.h"

#include "app/widgets/quantity_box.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

namespace {

constexpr int supplyWidth = 230;

}  // namespace

PartRows::PartRows(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    m_column = new QVBoxLayout(this);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_add = new QPushButton(tr("Add a part"), this);
    m_add->setObjectName("addPart");
    m_column->addWidget(m_add, 0, Qt::AlignLeading);
    setFocusProxy(m_add);
    connect(m_add, &QPushButton::clicked, this, [this] {
        add({{}, Amount{1}});
        m_rows.back().supply->setFocus();
        Q_EMIT edited();
    });
}

void PartRows::show(const std::vector<PartNeed>& parts) {
    for (const Row& row : m_rows)
        row.box->deleteLater();
    for (const Row& row : m_rows)
        row.box->hide();
    m_rows.clear();
    for (const PartNeed& part : parts)
        add(part);
}

void PartRows::add(const PartNeed& part) {
    const SeasonState& season = m_session.season();
    auto* box = new QWidget(this);
    auto* line = new QHBoxLayout(box);
    line->setContentsMargins(0, 0, 0, 0);
    Row row{box, new QComboBox(box), new QuantityBox(SupplyKind::Part, season.centre.facts.settings.units, box)};
    row.supply->setObjectName("partSupply");
    row.supply->setAccessibleName(tr("Part"));
    row.supply->setFixedWidth(supplyWidth);
    row.supply->addItem(tr("choose a part"), QString());
    for (const Supply& supply : season.supplies) {
        if (!supply.retired || supply.id == part.supply) row.supply->addItem(laneward::shown(supply.name), supply.id.value);
    }
    row.supply->setCurrentIndex(std::max(0, row.supply->findData(part.supply.value)));
    row.amount->setObjectName("partAmount");
    row.amount->setAccessibleName(tr("Amount taken"));
    supplyChosen(row);
    row.amount->setAmount(part.amount);
    auto* out = new QPushButton(tr("Take out"), box);
    out->setObjectName("takePartOut");
    line->addWidget(row.supply);
    line->addWidget(row.amount);
    line->addWidget(out);
    line->addStretch();
    m_column->insertWidget(int(m_rows.size()), box);
    m_rows.push_back(row);
    connect(row.supply, &QComboBox::currentIndexChanged, this, [this, row] {
        supplyChosen(row);
        Q_EMIT edited();
    });
    connect(row.amount, &QDoubleSpinBox::valueChanged, this, &PartRows::edited);
    connect(out, &QPushButton::clicked, this, [this, box] { takeOut(box); });
}

void PartRows::supplyChosen(const Row& row) {
    const Supply* supply = findSupply(m_session.season().supplies, {row.supply->currentData().toString()});
    if (supply) row.amount->setKind(supply->kind, m_session.season().centre.facts.settings.units);
}

void PartRows::takeOut(QWidget* box) {
    std::erase_if(m_rows, [box](const Row& row) { return row.box == box; });
    box->hide();
    box->deleteLater();
    m_add->setFocus();
    Q_EMIT edited();
}

std::vector<PartNeed> PartRows::parts() const {
    std::vector<PartNeed> parts;
    for (const Row& row : m_rows)
        parts.push_back({{row.supply->currentData().toString()}, row.amount->amount()});
    return parts;
}

}  // namespace laneward
