#include "app/pages/history/history_panel.h"

#include "app/edits/plain_label.h"
#include "app/pages/history/attachments_box.h"
#include "core/documents/history_details.h"

#include <QFormLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace laneward {

namespace {

constexpr int least = 28;  // height of what is clicked
constexpr int narrowest = 280;

QLabel* valueLabel(const QString& text, QWidget* parent) {
    QLabel* label = proseLabel(text, parent);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

QString titleOf(const HistoryEntry& entry) { return entry.answers ? HistoryPanel::tr("Follow-up") : text(entry.kind); }

/// Takes the children of the one before away with it.
QWidget* renewed(QWidget*& part, QWidget* parent, QVBoxLayout* column, int at) {
    delete part;
    part = new QWidget(parent);
    column->insertWidget(at, part);
    return part;
}

}  // namespace

HistoryPanel::HistoryPanel(Session& session, QWidget* parent) : QFrame(parent), m_session(session) {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(tr("Details of the entry"));
    setMinimumWidth(narrowest);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(10, 8, 10, 8);
    buildHead(column);
    auto* scroll = new QScrollArea(this);
    scroll->setObjectName("historyDetails");
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_content = new QWidget(scroll);
    auto* content = new QVBoxLayout(m_content);
    content->setContentsMargins(0, 0, 6, 0);
    content->addWidget(m_facts = new QWidget(m_content));
    content->addWidget(m_chain = new QWidget(m_content));
    content->addWidget(m_followUps = new QWidget(m_content));
    content->addWidget(m_attachments = new AttachmentsBox(m_session, m_content));
    content->addStretch();
    scroll->setWidget(m_content);
    column->addWidget(scroll, 1);
}

void HistoryPanel::buildHead(QVBoxLayout* column) {
    auto* row = new QHBoxLayout;
    row->addWidget(m_title = headingLabel({}, this), 1);
    auto* close = new QPushButton(tr("Close (Esc)"), this);
    close->setObjectName("closeDetails");
    close->setMinimumHeight(least);
    row->addWidget(close);
    column->addLayout(row);
    column->addWidget(m_state = proseLabel({}, this));
    connect(close, &QPushButton::clicked, this, &HistoryPanel::closeAsked);
}

void HistoryPanel::show(const std::shared_ptr<const HistoryReading>& reading, HistoryRow row) {
    const HistoryEntry& entry = reading->index.at(row);
    m_current = entry.id;
    m_title->setText(titleOf(entry));
    m_state->setText(entry.stands ? QString() : tr("This entry does not stand: it was corrected, or only takes another back."));
    m_state->setVisible(!entry.stands);
    showFacts(*reading, row);
    showChain(*reading, row);
    showFollowUps(*reading, row);
    m_attachments->setVisible(takesAttachments(entry.kind));
    if (takesAttachments(entry.kind)) {
        std::vector<OperationId> chain;
        for (const HistoryRow other : reading->index.chainOf(row))
            chain.push_back(reading->index.at(other).id);
        m_attachments->show(entry.id, tr("%1 of %2", "kind of entry, time").arg(titleOf(entry), entry.when), chain);
    }
    QFrame::show();
}

void HistoryPanel::showFacts(const HistoryReading& reading, HistoryRow row) {
    auto* column = static_cast<QVBoxLayout*>(m_content->layout());
    auto* form = new QFormLayout(renewed(m_facts, m_content, column, 0));
    form->setContentsMargins(0, 0, 0, 0);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->setLabelAlignment(Qt::AlignLeading | Qt::AlignTop);
    for (const HistoryFact& fact : historyDetails(reading.index.at(row), reading.slice, m_session.season(), m_session.speech())) {
        QLabel* value = valueLabel(fact.text, m_facts);
        value->setAccessibleName(tr("%1: %2", "fact: value").arg(fact.name, fact.text));
        form->addRow(plainLabel(tr("%1:", "fact").arg(fact.name), m_facts), value);
    }
}

/// Each other record of the chain as a button that leads to it.
void HistoryPanel::showChain(const HistoryReading& reading, HistoryRow row) {
    auto* list = renewedList(m_chain, 1);
    const std::vector<HistoryRow> chain = reading.index.chainOf(row);
    const HistoryEntry& entry = reading.index.at(row);
    const bool isOlderMissing = entry.corrects && chain.front() == row;
    if (chain.size() < 2 && !isOlderMissing) return m_chain->hide();
    list->addWidget(headingLabel(tr("Corrections"), m_chain));
    if (isOlderMissing) list->addWidget(proseLabel(tr("Replaces an entry of before the days that are read."), m_chain));
    for (const HistoryRow other : chain) {
        const HistoryEntry& one = reading.index.at(other);
        addLink(list, "chainEntry", one.stands ? tr("%1 (stands)", "time of an entry").arg(one.when) : one.when, one)
            ->setEnabled(other != row);
    }
}

/// What the entry follows up, and what follows it up.
void HistoryPanel::showFollowUps(const HistoryReading& reading, HistoryRow row) {
    auto* list = renewedList(m_followUps, 2);
    const HistoryEntry& entry = reading.index.at(row);
    const std::vector<HistoryRow> answers = reading.index.answersTo(row);
    if (!entry.answers && answers.empty()) return m_followUps->hide();
    if (entry.answers) list->addWidget(headingLabel(tr("Follows up"), m_followUps));
    if (const std::optional<HistoryRow> subject = reading.index.answeredBy(row)) {
        const HistoryEntry& one = reading.index.at(*subject);
        addLink(list, "followsUp", tr("%1 of %2", "kind of entry, time").arg(titleOf(one), one.when), one);
    } else if (entry.answers) {
        list->addWidget(proseLabel(tr("An entry of before the days that are read."), m_followUps));
    }
    if (!answers.empty()) list->addWidget(headingLabel(tr("Followed up"), m_followUps));
    for (const HistoryRow other : answers)
        addLink(list, "followedUp", reading.index.at(other).when, reading.index.at(other));
}

QVBoxLayout* HistoryPanel::renewedList(QWidget*& part, int at) {
    auto* list = new QVBoxLayout(renewed(part, m_content, static_cast<QVBoxLayout*>(m_content->layout()), at));
    list->setContentsMargins(0, 0, 0, 0);
    return list;
}

/// A button that leads to another entry; who does not see where it stands hears what that one says.
QPushButton* HistoryPanel::addLink(QVBoxLayout* list, const char* name, const QString& words, const HistoryEntry& to) {
    auto* button = new QPushButton(words, list->parentWidget());
    button->setObjectName(QLatin1StringView(name));
    button->setMinimumHeight(least);
    button->setToolTip(to.words.toHtmlEscaped());
    button->setAccessibleDescription(to.words);
    list->addWidget(button);
    connect(
        button, &QPushButton::clicked, this, [this, id = to.id] { Q_EMIT entryWanted(id); }, Qt::QueuedConnection);
    return button;
}

void HistoryPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closeAsked();
    else
        QFrame::keyPressEvent(event);
}

}  // namespace laneward
