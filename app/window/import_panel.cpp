#include "app/window/import_panel.h"

#include "app/edits/plain_label.h"
#include "app/window/exchange.h"

#include <QComboBox>
#include <QFileInfo>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>

namespace laneward {

namespace {

constexpr size_t mostNotes = 8;

}  // namespace

ImportPanel::ImportPanel(Session& session, QString path, QWidget* parent)
    : QWidget(parent), m_session(session), m_path(std::move(path)) {
    build();
    look();
}

void ImportPanel::build() {
    auto* form = new QFormLayout(this);
    form->addRow(headingLabel(tr("Events from %1").arg(shown(QFileInfo(m_path).fileName())), this));
    form->addRow(proseLabel(tr("What the file does not say about an event is taken from here."), this));
    m_lanes = new QLineEdit(allLanes(m_session.season().centre).text(), this);
    addField(form, tr("&Lanes:"), m_lanes);
    m_kind = new QComboBox(this);
    for (auto kind : {EventKind::League, EventKind::Practice, EventKind::School, EventKind::Tournament, EventKind::OpenPlay,
                      EventKind::Party, EventKind::Closure, EventKind::Other}) {
        m_kind->addItem(text(kind), int(kind));
    }
    addField(form, tr("&Kind of event:"), m_kind);
    m_demand = new QComboBox(this);
    for (auto demand : {DemandKind::AsItIs, DemandKind::Fresh, DemandKind::Recent})
        m_demand->addItem(text(demand), int(demand));
    addField(form, tr("&Surface:"), m_demand);
    m_result = proseLabel({}, this);
    form->addRow(m_result);
    buildButtons(form);
    connect(m_lanes, &QLineEdit::textChanged, this, &ImportPanel::look);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &ImportPanel::look);
    connect(m_demand, &QComboBox::currentIndexChanged, this, &ImportPanel::look);
}

void ImportPanel::buildButtons(QFormLayout* form) {
    m_take = new QPushButton(tr("&Bring them in"), this);
    m_take->setObjectName("takeEvents");
    auto* leave = new QPushButton(tr("Cancel"), this);
    auto* row = new QHBoxLayout;
    row->addStretch();
    row->addWidget(m_take);
    row->addWidget(leave);
    form->addRow(row);
    connect(m_take, &QPushButton::clicked, this, &ImportPanel::take);
    connect(leave, &QPushButton::clicked, this, &ImportPanel::closed);
}

IcsMapping ImportPanel::mapping() const {
    IcsMapping mapping;
    if (const Result<LaneSet> lanes = LaneSet::parse(m_lanes->text())) mapping.lanes = *lanes;
    mapping.kind = EventKind(m_kind->currentData().toInt());
    SurfaceDemand demand;
    demand.kind = DemandKind(m_demand->currentData().toInt());
    demand.longestAge = m_session.season().centre.facts.settings.longestAge;
    if (demand.kind != DemandKind::AsItIs) mapping.demands = {demand};
    return mapping;
}

void ImportPanel::look() {
    const Result<IcsContents> read = readEvents(m_session, m_path, mapping());
    m_take->setEnabled(bool(read));
    if (!read) {
        m_result->setText(tr("%1 Nothing was changed.").arg(text(read.error(), m_session.speech())));
        return;
    }
    m_series = read->series;
    QStringList lines{tr("%n series of events can come in.", nullptr, int(m_series.size()))};
    for (size_t i = 0; i < read->notes.size() && i < mostNotes; ++i)
        lines.append(text(read->notes[i], m_session.speech()));
    if (read->notes.size() > mostNotes) lines.append(tr("and %n more note(s)", nullptr, int(read->notes.size() - mostNotes)));
    m_result->setText(lines.join(u'\n'));
}

void ImportPanel::take() {
    const QString name = tr("Import %n series of events", nullptr, int(m_series.size()));
    if (m_session.apply(name, importChanges(m_session.season(), m_series))) Q_EMIT closed();
}

}  // namespace laneward
