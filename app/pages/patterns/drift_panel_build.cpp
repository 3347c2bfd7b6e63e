#include "app/edits/plain_label.h"
#include "app/pages/patterns/drift_panel.h"
#include "app/widgets/time_formats.h"

#include <QComboBox>
#include <QDateEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>

namespace laneward {

DriftPanel::DriftPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    buildChoices(column);
    buildBaseline(column);
    column->addWidget(m_notes = proseLabel({}, this));
    auto* splitter = new QSplitter(Qt::Horizontal, this);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(buildCharts());
    splitter->addWidget(buildSignals());
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 2);
    splitter->setSizes({660, 440});
    column->addWidget(m_body = splitter, 1);
    column->addStretch(0);
}

void DriftPanel::buildChoices(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    const auto add = [this, row](const QString& name) {
        auto* box = new QComboBox(this);
        box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        auto* label = plainLabel(name, this);
        label->setBuddy(box);
        row->addWidget(label);
        row->addWidget(box);
        return box;
    };
    m_machine = add(tr("&Machine:"));
    m_product = add(tr("&Product:"));
    m_kind = add(tr("C&hart:"));
    m_machine->setObjectName("driftMachine");
    m_product->setObjectName("driftProduct");
    m_kind->setObjectName("driftChart");
    row->addStretch();
    column->addLayout(row);
    for (const DriftChart chart : {DriftChart::Single, DriftChart::Range, DriftChart::Average, DriftChart::Sum})
        m_kind->addItem(nameOf(chart), int(chart));
    connect(m_machine, &QComboBox::currentIndexChanged, this, [this] {
        if (m_filling) return;
        fillProducts(0);
        showChosen(true);
    });
    connect(m_product, &QComboBox::currentIndexChanged, this, [this] {
        if (!m_filling) showChosen(true);
    });
    connect(m_kind, &QComboBox::currentIndexChanged, this, [this] {
        if (!m_filling) showChart();
    });
}

void DriftPanel::buildBaseline(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    m_span = new QComboBox(this);
    m_span->setObjectName("baseline");
    m_span->addItem(tr("the first %n fill(s)", nullptr, int(fillsOfBaseline)));
    m_span->addItem(tr("the fills from … to …"));
    auto* label = plainLabel(tr("&Baseline:"), this);
    label->setBuddy(m_span);
    row->addWidget(label);
    row->addWidget(m_span);
    const auto dateField = [this, row](const QString& name, const char* id) {
        auto* field = new QDateEdit(this);
        field->setObjectName(id);
        field->setDisplayFormat(dayFieldFormat(QLocale()));
        field->setCalendarPopup(true);
        field->setAccessibleName(name);
        row->addWidget(field);
        return field;
    };
    m_from = dateField(tr("Baseline from"), "baselineFrom");
    m_to = dateField(tr("Baseline to"), "baselineTo");
    row->addStretch();
    column->addLayout(row);
    connect(m_span, &QComboBox::currentIndexChanged, this, &DriftPanel::keepBaseline);
    for (QDateEdit* field : {m_from, m_to})
        connect(field, &QDateEdit::dateChanged, this, &DriftPanel::keepBaseline);
}

QWidget* DriftPanel::buildCharts() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_legend = proseLabel({}, side));
    column->addWidget(m_chart = new PointChart(side), 1);
    column->addWidget(m_fill = proseLabel({}, side));
    m_chart->setAccessibleName(tr("Control chart of the fills; arrow keys walk from fill to fill"));
    connect(m_chart, &PointChart::pointChosen, this, &DriftPanel::showFill);
    return side;
}

QWidget* DriftPanel::buildSignals() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(8, 0, 0, 0);
    column->addWidget(headingLabel(tr("Signals"), side));
    m_signals = new QListWidget(side);
    m_signals->setAccessibleName(tr("Signals of the charts"));
    m_signals->setWordWrap(true);
    m_signals->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_signals->setTextElideMode(Qt::ElideNone);
    m_signals->setResizeMode(QListView::Adjust);
    m_signals->setSpacing(3);
    column->addWidget(m_signals, 3);
    m_write = new QPushButton(tr("&Write down a fault"), side);
    m_write->setObjectName("writeFault");
    m_write->setToolTip(tr("Keeps the finding as an incident of the machine, for whoever services it"));
    column->addWidget(m_write, 0, Qt::AlignLeading);
    column->addWidget(m_caution = proseLabel({}, side));
    column->addWidget(m_runsTitle = headingLabel({}, side));
    m_runList = new QListWidget(side);
    m_runList->setAccessibleName(tr("Runs behind it"));
    column->addWidget(m_runList, 2);
    connect(m_signals, &QListWidget::currentRowChanged, this, &DriftPanel::goToSignal);
    connect(m_write, &QPushButton::clicked, this, &DriftPanel::writeFault);
    return side;
}

}  // namespace laneward
