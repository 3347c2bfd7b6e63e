#include "app/pages/patterns/carry_panel.h"

#include "app/edits/plain_label.h"
#include "app/pages/patterns/reading_model.h"
#include "app/widgets/decimal_text.h"

#include <QHash>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

namespace {

bool isSame(const std::vector<CarryQuestion>& a, const std::vector<CarryQuestion>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const CarryQuestion& x, const CarryQuestion& y) {
        const auto same = [](const MeasuredFilm& m, const MeasuredFilm& n) {
            return m.reading == n.reading && m.pattern == n.pattern;
        };
        return x.machine == y.machine &&
               std::equal(x.measured.begin(), x.measured.end(), y.measured.begin(), y.measured.end(), same);
    });
}

}  // namespace

CarryPanel::CarryPanel(Session& session, QWidget* parent) : QWidget(parent), m_session(session), m_rows(new QVBoxLayout(this)) {
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->addWidget(headingLabel(tr("How far the brush carries conditioner on"), this));
    connect(&m_asker, &CarryAsker::answered, this, &CarryPanel::showAnswers);
}

void CarryPanel::show(const std::vector<TapeReading>& readings, const std::vector<PatternVersion>& versions) {
    QHash<PatternId, std::vector<PatternVersion>> byPattern;
    for (const PatternVersion& version : versions)
        byPattern[version.pattern.id].push_back(version);
    std::vector<CarryQuestion> questions;
    for (const Machine& machine : m_session.season().centre.machines) {
        CarryQuestion question{machine.id, {}};
        for (auto reading = readings.rbegin(); reading != readings.rend() && question.measured.size() < readingsOfFit;
             ++reading) {
            if (reading->machine != machine.id) continue;
            if (const Pattern* recipe = recipeOf(*reading, byPattern[reading->pattern]))
                question.measured.push_back({*reading, *recipe});
        }
        questions.push_back(std::move(question));
    }
    if (isSame(questions, m_asked)) return showAnswers(m_answers);
    m_asked = questions;
    m_asker.ask(std::move(questions));
}

QString CarryPanel::carryText(Micrometres carry, const Speech& speech) {
    const double um = double(carry.value);
    return speech.units == UnitSystem::Metric ? tr("%1 m").arg(decimalText(um / 1e6, 2, speech.locale))
                                              : tr("%1 ft").arg(decimalText(um / double(feet(1).value), 2, speech.locale));
}

QString CarryPanel::sentence(const CarryAnswer& answer, const Machine& machine, const Speech& speech) {
    const QString name = shown(machine.name);
    if (!answer.fit) {
        return answer.readings == 0 ? tr("%1: no tape readings yet; type one and name the machine.").arg(name)
                                    : tr("%1: %2.").arg(name, text(answer.why, speech));
    }
    const CarryFit& fit = *answer.fit;
    const QString inUse =
        machine.carryLength > Micrometres{0} ? tr("in use: %1").arg(carryText(machine.carryLength, speech)) : tr("in use: none");
    const QString from = tr("from its newest %n reading(s)", nullptr, answer.readings);
    if (!fit.isBounded)
        return tr("%1: the readings do not bound the carry length (%2 or more, %3); %4.")
            .arg(name, carryText(fit.carryLow, speech), from, inUse);
    const auto factor = [&](double k) { return speech.locale.toString(k, 'f', 2); };
    return tr("%1 carries %2 on (95 % interval %3 to %4, %5), and lays %6 of what the patterns say (%7 to %8); %9.")
        .arg(name, carryText(fit.carry, speech), carryText(fit.carryLow, speech), carryText(fit.carryHigh, speech), from,
             factor(fit.factor), factor(fit.factorInterval.low), factor(fit.factorInterval.high), inUse);
}

void CarryPanel::showAnswers(const std::vector<CarryAnswer>& answers) {
    m_answers = answers;
    delete m_lines;
    m_lines = new QWidget(this);
    (new QVBoxLayout(m_lines))->setContentsMargins(0, 0, 0, 0);
    for (const CarryAnswer& answer : m_answers) {
        const Machine* machine = findMachine(m_session.season().centre, answer.machine);
        if (machine) addLine(answer, *machine);
    }
    m_rows->addWidget(m_lines);
    m_lines->show();
}

void CarryPanel::addLine(const CarryAnswer& answer, const Machine& machine) {
    auto* row = new QHBoxLayout;
    row->addWidget(proseLabel(sentence(answer, machine, m_session.speech()), m_lines), 1);
    if (answer.fit && answer.fit->isBounded && answer.fit->carry != machine.carryLength && !m_session.isReadOnly()) {
        auto* adopt = new QPushButton(tr("Adopt for %1").arg(shown(machine.name).replace(u'&', QStringLiteral("&&"))), m_lines);
        adopt->setToolTip(tr("Films are then computed with %1").arg(carryText(answer.fit->carry, m_session.speech())));
        connect(adopt, &QPushButton::clicked, this,
                [this, id = machine.id, carry = answer.fit->carry] { this->adopt(id, carry); });
        row->addWidget(adopt, 0, Qt::AlignTop);
    }
    static_cast<QVBoxLayout*>(m_lines->layout())->addLayout(row);
}

void CarryPanel::adopt(const MachineId& id, Micrometres carry) {
    const Machine* before = findMachine(m_session.season().centre, id);
    if (!before) return;
    Machine after = *before;
    after.carryLength = carry;
    m_session.apply(tr("Carry length of %1: %2").arg(shown(after.name), carryText(carry, m_session.speech())),
                    {RowChange<Machine>{*before, after}});
}

}  // namespace laneward
