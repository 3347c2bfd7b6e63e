#include "app/pages/service/packs_panel.h"

#include "app/edits/plain_label.h"
#include "app/models/panel_list.h"
#include "app/models/plain_rows.h"
#include "app/pages/service/pack_form.h"
#include "app/pages/service/pack_limits_form.h"
#include "app/pages/service/pack_plot.h"

#include <QHeaderView>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int rowHeight = 28;
constexpr int listHeight = 250;  // of a machine or two with their spare packs

}  // namespace

PacksPanel::PacksPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    m_sheet = new QWidget(this);
    auto* inner = new QVBoxLayout(m_sheet);
    inner->setContentsMargins(0, 0, 0, 0);
    buildList(inner);
    buildBelow(inner);
    column->addWidget(m_sheet, 1);
    m_form = new PackForm(session, this);
    m_limitsForm = new PackLimitsForm(session, this);
    for (EditForm* form : std::initializer_list<EditForm*>{m_form, m_limitsForm}) {
        column->addWidget(form, 1);
        connect(form, &EditForm::left, this, [this] {
            m_sheet->show();
            m_list->setFocus();
        });
    }
}

void PacksPanel::buildList(QVBoxLayout* column) {
    m_sentence = proseLabel({}, m_sheet);
    m_sentence->setObjectName("packSentence");
    QFont font = m_sentence->font();
    font.setBold(true);
    m_sentence->setFont(font);
    column->addWidget(m_sentence);
    m_rows = new PlainRows({tr("Pack"), tr("Where"), tr("Tonight"), tr("Volts"), tr("Learned")}, {}, this);
    m_list = listOf(m_rows, QStringLiteral("service/packs"), tr("packs.csv"), m_session, m_sheet);
    m_list->setObjectName("packList");
    m_list->setAccessibleName(tr("Packs"));
    m_list->verticalHeader()->setDefaultSectionSize(qMax(rowHeight, fontMetrics().lineSpacing() + 10));
    m_list->setWordWrap(true);  // all but the name are sentences: they share the room and break into lines
    for (int words = 1; words < m_rows->columnCount(); ++words)
        m_list->horizontalHeader()->setSectionResizeMode(words, QHeaderView::Stretch);
    m_list->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_list->verticalHeader()->setMinimumSectionSize(std::max(rowHeight, 2 * fontMetrics().lineSpacing() + 10));
    m_list->setMaximumHeight(listHeight);
    column->addWidget(m_list, 1);
    connect(m_list, &QTableView::activated, this, [this] { open(false); });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (!m_filling) showChosen();
    });
    auto* row = new QHBoxLayout;
    m_note = new QPushButton(tr("&Write down…"), m_sheet);
    m_note->setObjectName("notePack");
    m_limits = new QPushButton(tr("&Volts that count…"), m_sheet);
    m_limits->setObjectName("packLimits");
    connect(m_note, &QPushButton::clicked, this, [this] { open(false); });
    connect(m_limits, &QPushButton::clicked, this, [this] { open(true); });
    for (QPushButton* button : {m_note, m_limits}) {
        button->setMinimumHeight(rowHeight);
        row->addWidget(button);
    }
    row->addStretch(1);
    column->addLayout(row);
}

void PacksPanel::buildBelow(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    auto* left = new QVBoxLayout;
    left->addWidget(headingLabel(tr("On charge, one at a time"), m_sheet));
    left->addWidget(m_turns = proseLabel({}, m_sheet));
    m_turns->setObjectName("packTurns");
    left->addWidget(
        proseLabel(tr("Charge where air moves, with nothing burning near; unplug the charger before touching its clamps. "
                      "The pack's and the charger's own instructions decide."),
                   m_sheet));
    left->addStretch(1);
    auto* right = new QVBoxLayout;
    right->addWidget(m_trend = proseLabel({}, m_sheet));
    m_trend->setObjectName("packTrend");
    right->addWidget(m_plot = new PlotView(m_sheet), 1);
    m_plot->setObjectName("packPlot");
    right->addWidget(m_spoken = proseLabel({}, m_sheet));
    m_spoken->setObjectName("packSpoken");
    connect(m_plot, &PlotView::chosen, m_spoken, &QLabel::setText);
    row->addLayout(left, 2);
    row->addLayout(right, 3);
    column->addLayout(row, 1);
}

void PacksPanel::show(const std::shared_ptr<const SupplyAnswer>& answer) {
    m_answer = answer;
    fill();
}

void PacksPanel::refresh() {
    m_form->refresh();
    m_limitsForm->refresh();
}

std::optional<ItemId> PacksPanel::chosen() const {
    const int row = chosenRow(*m_list);
    return row < 0 ? std::nullopt : std::optional(ItemId{m_rows->idAt(row)});
}

void PacksPanel::fill() {
    const Speech speech = m_session.speech();
    const SeasonState& season = m_session.season();
    const std::optional<ItemId> before = chosen();
    std::vector<PlainRow> rows;
    QStringList turns;
    if (m_answer) {
        for (const PackLine& line : m_answer->packs.packs)
            rows.push_back({line.state.pack.value,
                            {packName(line.state.pack, season), packPlaceText(line.state, speech), packTonightText(line, speech),
                             packVoltsText(line, speech), packLearnedText(line, speech)},
                            {}});
        for (const ChargeTurn& turn : m_answer->packs.turns)
            turns << turnText(turn, season, speech);
    }
    m_sentence->setText(m_answer ? packHeadline(m_answer->packs, season, m_session.now(), speech)
                                 : tr("Working out what packs last…"));
    m_turns->setText(turns.isEmpty() ? tr("None has to be charged.") : turns.join(u'\n'));
    m_filling = true;
    m_rows->show(std::move(rows));
    fitColumns(*m_list);
    const int row = before ? m_rows->rowOf(before->value) : -1;
    if (m_rows->rowCount() > 0) chooseRow(*m_list, std::max(row, 0));
    m_filling = false;
    showChosen();
}

void PacksPanel::showChosen() {
    const std::optional<ItemId> pack = chosen();
    m_note->setEnabled(pack && !m_session.isReadOnly());
    m_limits->setEnabled(pack && !m_session.isReadOnly());
    m_spoken->clear();
    std::vector<PackCharge> charges;
    MachineId machine;
    for (const PackState& state : m_answer ? m_answer->packYear : std::vector<PackState>{}) {
        if (!pack || state.pack != *pack) continue;
        charges = state.charges;
        machine = state.machine;
    }
    const int needed = busiestNight(m_session.season(), machine);
    const Result<PackTrend> trend = trendOf(charges, needed);
    const QString name = pack ? packName(*pack, m_session.season()) : QString();
    m_trend->setText(pack ? packTrendText(trend, needed, name, m_session.speech()) : QString());
    m_plot->show(packPlot({charges, trend ? std::optional(*trend) : std::nullopt, needed, name}, m_session.speech()));
}

void PacksPanel::open(bool limits) {
    const std::optional<ItemId> pack = chosen();
    if (!pack || m_session.isReadOnly()) return;
    m_sheet->hide();
    if (limits)
        m_limitsForm->edit(*pack);
    else
        m_form->create(*pack);
}

}  // namespace laneward
