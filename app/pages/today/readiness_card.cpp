#include "app/pages/today/readiness_card.h"

#include "app/edits/plain_label.h"
#include "app/pages/today/level_bar.h"
#include "app/pages/today/levels_form.h"
#include "core/documents/sheet_words.h"

#include <QCoreApplication>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Readiness)

public:
    const Speech& speech;

    Level tank(const QString& name, Microlitres full, Microlitres now, Microlitres tonight, int refills) const {
        const QString held = amountText(now, speech);
        QString words = tonight > Microlitres{0} ? tr("%1, tonight takes %2").arg(held, amountText(tonight, speech))
                                                 : tr("%1, tonight takes none").arg(held);
        if (tonight > now && refills > 0) words = tr("%1; %n refill(s) planned", nullptr, refills).arg(words);
        return {name, words, double(full.value), double(now.value), double(tonight.value), false, refills > 0};
    }

    Level waste(Microlitres full, Microlitres now, Microlitres tonight, int emptyings) const {
        const QString held = tr("%1 of %2", "amount of capacity").arg(amountText(now, speech), amountText(full, speech));
        QString words = tonight > Microlitres{0} ? tr("%1, tonight adds %2").arg(held, amountText(tonight, speech))
                                                 : tr("%1, tonight adds none").arg(held);
        if (now + tonight > full && emptyings > 0) words = tr("%1; emptied %n time(s)", nullptr, emptyings).arg(words);
        return {tr("Waste"), words, double(full.value), double(now.value), double(tonight.value), true, emptyings > 0};
    }

    Level pack(int full, int now, int tonight, int swaps) const {
        const QString held = tr("%n lane(s) left", nullptr, now);
        QString words = tonight > 0 ? tr("%1, tonight takes %2").arg(held, speech.locale.toString(tonight))
                                    : tr("%1, tonight takes none").arg(held);
        if (tonight > now && swaps > 0) words = tr("%1; %n swap(s) planned", nullptr, swaps).arg(words);
        return {tr("Pack"), words, double(full), double(now), double(tonight), false, swaps > 0};
    }

    QString conditioner(size_t slot, const QString& product) const {
        if (!product.isEmpty()) return shown(product);
        return slot == 0 ? tr("Conditioner") : tr("Second conditioner");
    }

    QString cleaner(const QString& product) const { return product.isEmpty() ? tr("Cleaner") : shown(product); }
};

}  // namespace

std::vector<Level> levelsOf(const Machine& machine, const Readiness& readiness, const Speech& speech) {
    const Words words{speech};
    const MachineCapacity& capacity = machine.capacity;
    std::vector<Level> levels;
    for (size_t slot = 0; slot < capacity.conditioner.size(); ++slot) {
        if (capacity.conditioner[slot] <= Microlitres{0}) continue;
        levels.push_back(words.tank(words.conditioner(slot, machine.conditioners[slot]), capacity.conditioner[slot],
                                    readiness.now.conditioner[slot], readiness.tonight.conditioner[slot], readiness.refills));
    }
    levels.push_back(words.tank(words.cleaner(machine.cleaner), capacity.cleaner, readiness.now.cleaner,
                                readiness.tonight.cleaner, readiness.refills));
    levels.push_back(words.waste(capacity.waste, readiness.now.waste, readiness.tonight.waste, readiness.emptyings));
    levels.push_back(words.pack(capacity.lanesPerCharge, readiness.now.lanesLeft, readiness.tonight.laneRuns, readiness.swaps));
    return levels;
}

ReadinessCard::ReadinessCard(Session& session, const Machine& machine, QWidget* parent)
    : QFrame(parent), m_session(session), m_machine(machine) {
    build();
}

void ReadinessCard::build() {
    setFrameShape(QFrame::StyledPanel);
    setAccessibleName(shown(m_machine.name));
    m_column = new QVBoxLayout(this);
    m_column->setContentsMargins(8, 6, 8, 6);
    m_column->setSpacing(4);
    auto* head = new QHBoxLayout;
    head->addWidget(headingLabel(shown(m_machine.name), this));
    m_volts = plainLabel({}, this);
    head->addWidget(m_volts, 1, Qt::AlignTrailing);
    m_measure = new QPushButton(tr("Measured…"), this);
    m_measure->setObjectName("measure");
    m_measure->setCheckable(true);
    m_measure->setAccessibleName(tr("Enter what was measured in %1").arg(shown(m_machine.name)));
    head->addWidget(m_measure);
    m_column->addLayout(head);
    for (size_t i = 0; i < levelsOf(m_machine, {}, m_session.speech()).size(); ++i) {
        m_bars.push_back(new LevelBar(this));
        m_column->addWidget(m_bars.back());
    }
    m_findings = proseLabel({}, this);
    m_column->addWidget(m_findings);
    connect(m_measure, &QPushButton::toggled, this, &ReadinessCard::openForm);
}

void ReadinessCard::refresh(const SheetReadiness& entry) {
    m_readiness = entry.readiness;
    const Speech speech = m_session.speech();
    const std::vector<Level> levels = levelsOf(m_machine, m_readiness, speech);
    for (size_t i = 0; i < levels.size() && i < m_bars.size(); ++i)
        m_bars[i]->show(levels[i]);
    m_volts->setText(voltsLine(m_readiness));
    QStringList lines;
    for (const Finding& finding : m_readiness.findings) {
        const QString line = readinessText(finding, speech);
        lines.append(finding.severity == Severity::Note ? line : tr("! %1", "a warning").arg(line));
    }
    m_findings->setText(lines.join(u'\n'));
    m_findings->setVisible(!lines.isEmpty());
    m_measure->setEnabled(!m_session.isReadOnly());
}

QString ReadinessCard::voltsLine(const Readiness& readiness) const {
    const Speech speech = m_session.speech();
    if (readiness.volts) {
        return tr("%1 at %2", "volts at a time")
            .arg(measuredVoltsText(*readiness.volts, speech), clockTime(readiness.volts->at, speech));
    }
    return readiness.measuredAt ? tr("measured at %1").arg(clockTime(*readiness.measuredAt, speech)) : QString();
}

void ReadinessCard::openForm(bool open) {
    if (!m_form) {
        m_form = new LevelsForm(m_session, m_machine, this);
        m_column->addWidget(m_form);
        connect(m_form, &LevelsForm::finished, this, &ReadinessCard::keep);
        connect(m_form, &LevelsForm::cancelled, this, [this] { m_measure->setChecked(false); });
    }
    m_form->setVisible(open);
    if (open) m_form->begin(m_readiness.now);
}

void ReadinessCard::keep(const LevelsTyped& typed) {
    LevelReading reading;
    reading.levels = typed.levels;
    reading.poured = typed.poured;
    reading.emptied = typed.emptied;
    std::vector<Record> records{reading};
    for (PackReading& entry : packEntries(m_session.season(), m_machine.id, typed.pack, typed.levels.at))
        records.push_back(std::move(entry));
    if (m_session.record(tr("Reading of %1").arg(shown(m_machine.name)), std::move(records))) m_measure->setChecked(false);
}

}  // namespace laneward
