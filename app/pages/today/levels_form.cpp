#include "app/pages/today/levels_form.h"

#include "app/pages/today/amount_box.h"
#include "app/widgets/decimal_text.h"
#include "core/documents/guide_blanks.h"
#include "core/documents/pack_words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

#include <cmath>

namespace laneward {

namespace {

// What is chosen beside 'Pack', kept with each choice.
constexpr int changeRole = Qt::UserRole;
constexpr int packRole = Qt::UserRole + 1;

bool isFault(const std::vector<Finding>& findings) { return !findings.empty() && findings.front().severity == Severity::Fault; }

void showWords(QFormLayout* form, QLabel* label, const std::vector<Finding>& findings, const Speech& speech) {
    QStringList lines;
    for (const Finding& finding : findings)
        lines += QStringLiteral("! ") + text(finding, speech);
    label->setText(lines.join(u'\n'));
    form->setRowVisible(label, !lines.isEmpty());
}

}  // namespace

void LevelsForm::showPoured(bool filled) {
    for (AmountBox* box : m_pouredConditioner) {
        if (box) m_form->setRowVisible(box, filled);
    }
    m_form->setRowVisible(m_pouredCleaner, filled);
}

void LevelsForm::showEmptied(bool emptied) {
    m_wasEmptied = emptied;
    m_form->setRowVisible(m_emptiedRow, emptied);
    if (!emptied) m_emptied->clear();
}

void LevelsForm::fill() {
    for (size_t slot = 0; slot < m_conditioner.size(); ++slot) {
        if (m_conditioner[slot]) m_conditioner[slot]->setAmount(m_machine.capacity.conditioner[slot]);
    }
    m_cleaner->setAmount(m_machine.capacity.cleaner);
    showPoured(true);
    if (m_pouredConditioner[0]) m_pouredConditioner[0]->setFocus();
}

void LevelsForm::emptyWaste() {
    m_waste->setAmount({0});
    showEmptied(true);
    m_emptied->setFocus();
}

/// Where no pack is kept, only what is left on it changes.
void LevelsForm::choosePack(PackChange change) {
    m_lanesLeft->setValue(fullPack());
    const int row = m_pack->findData(int(change), changeRole);
    if (row >= 0) m_pack->setCurrentIndex(row);
}

void LevelsForm::fillPackChoices() {
    const SeasonState& season = m_session.season();
    const ServiceItem* pack = packOn(season, m_machine.id, m_session.now());
    m_pack->clear();
    const auto add = [this](const QString& name, PackChange change, const ItemId& on) {
        m_pack->addItem(name);
        m_pack->setItemData(m_pack->count() - 1, int(change), changeRole);
        m_pack->setItemData(m_pack->count() - 1, on.value, packRole);
    };
    add(tr("as before"), PackChange::None, {});
    if (pack) {
        add(tr("charged: %1", "pack").arg(shown(pack->name)), PackChange::Charged, pack->id);
        for (const ItemId& spare : sparesOf(season, m_machine.id, m_session.now())) {
            const ServiceItem* item = findItem(season.items, spare);
            const QString name = shown(item ? item->name : spare.value);
            add(tr("swapped for %1", "pack").arg(name), PackChange::Swapped, spare);
        }
        if (m_pack->findData(int(PackChange::Swapped), changeRole) < 0)
            add(tr("swapped for another one"), PackChange::Swapped, {});
    }
    m_form->setRowVisible(m_pack, pack != nullptr);
    m_form->setRowVisible(m_state, pack != nullptr);
    m_voltsName->setText(pack ? tr("&Volts:") : tr("Rested &volts:"));
}

PackNews LevelsForm::packNews() const {
    PackNews news;
    news.change = PackChange(m_pack->currentData(changeRole).toInt());
    if (news.change == PackChange::Swapped) news.on = {m_pack->currentData(packRole).toString()};
    if (m_volts->value() > 0) news.volts = Millivolts{std::llround(m_volts->value() * 1000)};
    // Hidden where no pack is kept: then volts are those of a rested one.
    news.state = m_state->isHidden() ? VoltageState::Rested : VoltageState(m_state->currentData().toInt());
    return news;
}

/// Lanes of a full pack as planning counts on, learned or set.
int LevelsForm::fullPack() const {
    for (const MachineLimits& limits : m_session.planningState().limits) {
        if (limits.machine == m_machine.id) return limits.lanesPerCharge;
    }
    return m_machine.capacity.lanesPerCharge;
}

std::optional<Poured> LevelsForm::poured() const {
    Poured poured;
    bool any = m_pouredCleaner->amount() > Microlitres{0};
    poured.cleaner = m_pouredCleaner->amount();
    for (size_t slot = 0; slot < m_pouredConditioner.size(); ++slot) {
        if (!m_pouredConditioner[slot]) continue;
        poured.conditioner[slot] = m_pouredConditioner[slot]->amount();
        any = any || poured.conditioner[slot] > Microlitres{0};
    }
    return any ? std::optional(poured) : std::nullopt;
}

std::vector<Finding> LevelsForm::voltsFound() const {
    const PackNews news = packNews();
    if (!news.volts) return {};
    if (std::vector<Finding> faults = voltsFindings(*news.volts, m_machine.name); !faults.empty()) return faults;
    const SeasonState& season = m_session.season();
    const ServiceItem* other = news.on.isEmpty() ? nullptr : findItem(season.items, news.on);
    VoltRule rule = other ? voltRule(m_machine, other) : voltRuleOf(season, m_machine, m_session.now());
    if (news.change == PackChange::Swapped) rule.hasSpare = false;  // that one is on already
    return doubtsOf({{}, double(news.volts->value) / 1'000, {}, news.state}, m_machine, rule, m_session.speech().units);
}

std::optional<double> LevelsForm::typedEmptied() const {
    return m_wasEmptied ? decimalOf(m_emptied->text().trimmed(), m_session.speech().locale) : std::nullopt;
}

std::vector<Finding> LevelsForm::emptiedFound() const {
    const QString typed = m_emptied->text().trimmed();
    if (!m_wasEmptied || typed.isEmpty()) return {};
    const std::optional<double> number = typedEmptied();
    if (!number) return {{Severity::Fault, "guide.no-number", typed, {}}};
    GuideBlank blank;
    blank.of = GuideBlank::Of::Emptied;
    if (std::optional<Finding> fault = faultOf(blank, *number, m_session.speech())) return {*fault};
    return doubtsOf({blank, *number, {}, {}}, m_machine, {}, m_session.speech().units);
}

void LevelsForm::judge() {
    showWords(m_form, m_voltsWords, voltsFound(), m_session.speech());
    showWords(m_form, m_emptiedWords, emptiedFound(), m_session.speech());
}

void LevelsForm::begin(const MachineLevels& levels) {
    m_lanesLeft->setRange(0, std::max({m_machine.capacity.lanesPerCharge, fullPack(), levels.lanesLeft}));
    fillPackChoices();
    m_volts->setValue(0);
    const VoltRule rule = voltRuleOf(m_session.season(), m_machine, m_session.now());
    m_state->setCurrentIndex(m_state->findData(int(rule.full.state)));
    for (size_t slot = 0; slot < m_conditioner.size(); ++slot) {
        if (m_conditioner[slot]) m_conditioner[slot]->setAmount(levels.conditioner[slot]);
    }
    m_cleaner->setAmount(levels.cleaner);
    m_waste->setAmount(levels.waste);
    m_lanesLeft->setValue(levels.lanesLeft);
    for (AmountBox* box : m_pouredConditioner) {
        if (box) box->setAmount({});
    }
    m_pouredCleaner->setAmount({});
    showPoured(false);
    showEmptied(false);
    judge();
    m_volts->setFocus();
    m_volts->selectAll();
}

/// Fields let Enter pass on to the form; on a button it presses that button.
void LevelsForm::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT cancelled();
    } else if (auto* button = qobject_cast<QPushButton*>(focusWidget()); enter && button && button->hasFocus()) {
        button->click();
    } else if (enter) {
        submit();
    } else {
        QWidget::keyPressEvent(event);
    }
}

void LevelsForm::submit() {
    if (isFault(voltsFound())) return m_volts->setFocus();
    if (isFault(emptiedFound())) return m_emptied->setFocus();
    LevelsTyped typed;
    MachineLevels& levels = typed.levels;
    levels.machine = m_machine.id;
    levels.at = m_session.now();
    for (size_t slot = 0; slot < m_conditioner.size(); ++slot) {
        if (m_conditioner[slot]) levels.conditioner[slot] = m_conditioner[slot]->amount();
    }
    levels.cleaner = m_cleaner->amount();
    levels.waste = m_waste->amount();
    levels.lanesLeft = m_lanesLeft->value();
    typed.pack = packNews();
    levels.volts = typed.pack.volts;
    typed.poured = poured();
    if (const std::optional<double> number = typedEmptied()) {
        GuideBlank blank;
        blank.of = GuideBlank::Of::Emptied;
        typed.emptied = amountOf({blank, *number, {}, {}}, m_session.speech().units);
    }
    Q_EMIT finished(typed);
}

}  // namespace laneward
