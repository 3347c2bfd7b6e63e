#include "app/pages/supplies/stock_detail.h"

#include "app/edits/plain_label.h"
#include "app/pages/supplies/fan_chart.h"
#include "app/pages/supplies/supply_texts.h"
#include "app/widgets/time_formats.h"
#include "core/documents/score_words.h"
#include "core/documents/stock_words.h"

#include <QListWidget>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>

namespace laneward {

namespace {

constexpr double mostLikely = 0.9;  // share of the interval that is told
constexpr int fillsShown = 100;
constexpr double microlitresPerFluidOunce = 29'573.5295625;  // NIST Handbook 44, appendix C; from memory

/// A tenth of a millilitre tells machines apart.
QString doseText(double microlitres, const Speech& speech) {
    const bool metric = speech.units == UnitSystem::Metric;
    const QString number = metric ? speech.locale.toString(microlitres / 1'000, 'f', 1)
                                  : speech.locale.toString(microlitres / microlitresPerFluidOunce, 'f', 3);
    return metric ? StockDetail::tr("%1 mL").arg(number) : StockDetail::tr("%1 fl oz").arg(number);
}

}  // namespace

StockDetail::StockDetail(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* split = new QSplitter(Qt::Horizontal, this);
    split->setChildrenCollapsible(false);
    split->addWidget(buildAhead());
    split->addWidget(buildUse());
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 1);
    split->setSizes({760, 340});
    column->addWidget(split);
}

QWidget* StockDetail::buildAhead() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(3);
    m_title = headingLabel({}, side);
    m_title->setWordWrap(true);
    column->addWidget(m_title);
    column->addWidget(m_where = proseLabel({}, side));
    column->addWidget(m_fan = new FanChart(side), 1);
    column->addWidget(m_day = proseLabel({}, side));
    connect(m_fan, &FanChart::dayChosen, this, &StockDetail::showDay);
    return side;
}

QWidget* StockDetail::buildUse() {
    auto* side = new QWidget(this);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(8, 0, 0, 0);
    column->setSpacing(3);
    column->addWidget(headingLabel(tr("Use, measured"), side));
    column->addWidget(m_use = proseLabel({}, side));
    column->addWidget(m_heldTitle = headingLabel(tr("Past forecasts"), side));
    column->addWidget(m_held = proseLabel({}, side));
    column->addWidget(m_fillsTitle = headingLabel({}, side));
    m_fills = new QListWidget(side);
    m_fills->setAccessibleName(tr("Fills behind it"));
    m_fills->setWordWrap(true);
    m_fills->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_fills->setMinimumHeight(4 * m_fills->fontMetrics().lineSpacing());
    column->addWidget(m_fills, 1);
    column->addStretch(0);
    auto* scroll = new QScrollArea(this);  // a low window has no room for all of it
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setAccessibleName(tr("Use, measured"));
    scroll->setWidget(side);
    return scroll;
}

void StockDetail::show(const SupplyId& id, const SupplyAnswer* answer) {
    const SeasonState& season = m_session.season();
    const Supply* supply = findSupply(season.supplies, id);
    setVisible(supply);
    if (!supply) return;
    if (id != m_supply) m_fan->setDay(-1);
    m_supply = id;
    m_title->setText(tr("%1: stock ahead", "supply").arg(shown(supply->name)));
    m_where->setText(whereText(id, season, m_session.speech()));
    showFan(*supply, answer);
    showUse(*supply, answer);
    listFills(*supply, answer);
    showDay(m_fan->day());
}

std::vector<FanDelivery> StockDetail::deliveriesOf(const Supply& supply, const SupplyOutlook& outlook) const {
    std::vector<FanDelivery> deliveries;
    const Speech speech = m_session.speech();
    for (const OpenOrder& order : outlook.open) {
        Amount missing;
        for (const auto& [id, amount] : order.missing) {
            if (id == supply.id) missing += amount;
        }
        if (missing == Amount{}) continue;
        deliveries.push_back(
            {order.likely, tr("Delivery about %1: %2", "date, amount")
                               .arg(shortDay(order.likely, speech.locale), amountText(missing, supply.kind, speech))});
    }
    std::stable_sort(deliveries.begin(), deliveries.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    return deliveries;
}

void StockDetail::showFan(const Supply& supply, const SupplyAnswer* answer) {
    if (!answer) return m_fan->showNothing();
    const std::vector<SupplyLine>& lines = answer->outlook.lines;
    const auto line = std::find_if(lines.begin(), lines.end(), [&](const SupplyLine& l) { return l.supply == supply.id; });
    if (line == lines.end()) return m_fan->showNothing();
    m_fan->show({answer->outlook.today, supply.kind, line->onHand(), line->forecast, deliveriesOf(supply, answer->outlook)},
                m_session.speech());
}

void StockDetail::showDay(int day) {
    if (day >= 0)
        m_day->setText(m_fan->dayText(day));
    else
        m_day->setText(m_fan->days() > 0 ? tr("Dark: 50 %, light: 90 %. Point at a day, or walk by the arrow keys.") : QString());
}

QString StockDetail::machineUse(const ProductUsage& one) const {
    const Speech speech = m_session.speech();
    const Machine* machine = findMachine(m_session.season().centre, one.machine);
    const QString name = shown(machine ? machine->name : one.machine.value);
    const double nominal = one.usage.nominalPerLane();
    if (one.usage.fills().empty() || nominal <= 0) {
        return tr("%1: no fill up to the line is on record yet; what the recipes say counts until then.", "machine").arg(name);
    }
    const Student real = one.usage.perLane(nominal);
    const Interval likely = real.interval(mostLikely);
    const auto much = [&](double value) { return doseText(value, speech); };
    const QString fills = tr("%n fill(s)", nullptr, int(one.usage.fills().size()));
    return tr("%1: %2 per lane (90 %: %3 to %4) where the recipes say %5; from %6.", "machine, amounts, fills")
        .arg(name, much(real.centre), much(likely.low), much(likely.high), much(nominal), fills);
}

QString StockDetail::countedUse(const Usage& usage) const {
    const QLocale locale = m_session.speech().locale;
    if (usage.fills().empty()) return tr("It was not counted twice yet; the usual use counts until then.");
    const Interval likely = usage.factor().interval(mostLikely);
    const auto times = [&](double value) { return locale.toString(value, 'f', 2); };
    return tr("%1 of the usual use (90 %: %2 to %3), from %n count(s).", nullptr, int(usage.fills().size()))
        .arg(times(usage.factor().centre), times(likely.low), times(likely.high));
}

QStringList StockDetail::usesOf(const Supply& supply, const SupplyAnswer& answer) const {
    QStringList lines;
    const Speech speech = m_session.speech();
    for (const ProductUsage& one : answer.learned.machines) {
        if (one.name == supply.name) lines << machineUse(one);
    }
    if (supply.waterParts > 0 && !lines.isEmpty())
        lines << tr("Told of the mixed liquid, water to concentrate %1 : 1.").arg(speech.locale.toString(supply.waterParts));
    for (const SupplyLearned& one : answer.learned.supplies) {
        if (one.supply != supply.id) continue;
        if (one.counted) lines << countedUse(*one.counted);
        double perDay = 0;
        for (const LearnedRate& rate : one.chance)
            perDay += rate.comesIn ? -rate.meanPerDay() : rate.meanPerDay();
        const auto inFourWeeks = Amount{std::llround(28 * std::max(0.0, perDay))};
        const bool rare = inFourWeeks == Amount{} && unitOf(supply.kind) == BaseUnit::Piece;
        lines << (rare ? tr("Unplanned work, service and loss: less than one in four weeks.")
                       : tr("Unplanned work, service and loss: about %1 in four weeks.")
                             .arg(amountText(inFourWeeks, supply.kind, speech)));
    }
    return lines;
}

void StockDetail::showUse(const Supply& supply, const SupplyAnswer* answer) {
    m_use->setText(answer ? usesOf(supply, *answer).join(u'\n') : QString());
    showHeld(supply, answer);
}

void StockDetail::showHeld(const Supply& supply, const SupplyAnswer* answer) {
    const auto score = answer ? answer->scores.find(supply.id) : std::map<SupplyId, ForecastScore>::const_iterator{};
    const bool known = answer && score != answer->scores.end();
    m_held->setText(known ? scoreWords(score->second, supply.kind, m_session.speech()).all().join(u'\n') : QString());
    m_held->setVisible(known);
    m_heldTitle->setVisible(known);
}

void StockDetail::listFills(const Supply& supply, const SupplyAnswer* answer) {
    m_fills->clear();
    const Speech speech = m_session.speech();
    std::vector<std::pair<const FillPoint*, QString>> fills;
    const std::vector<FillsBehind> none;
    for (const FillsBehind& behind : answer ? answer->fills : none) {
        const Machine* machine = findMachine(m_session.season().centre, behind.machine);
        if (!machine || productName(*machine, behind.product) != supply.name) continue;
        for (const FillPoint& point : behind.points)
            fills.emplace_back(&point, shown(machine->name));
    }
    std::stable_sort(fills.begin(), fills.end(), [](const auto& a, const auto& b) { return a.first->at > b.first->at; });
    for (const auto& [fill, machine] : fills) {
        if (m_fills->count() >= fillsShown) break;
        m_fills->addItem(tr("%1, %2: %3 poured for %4", "time, machine, amounts")
                             .arg(dateTimeText(fill->at, speech), machine, amountText(fill->poured, speech),
                                  amountText(fill->nominal, speech)));
    }
    m_fillsTitle->setText(tr("Fills behind it"));
    m_fillsTitle->setVisible(!fills.empty());
    m_fills->setVisible(!fills.empty());
}

}  // namespace laneward
