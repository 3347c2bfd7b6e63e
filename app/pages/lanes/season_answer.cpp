#include "app/edits/plain_label.h"
#include "app/pages/lanes/season_panel.h"
#include "core/documents/season_words.h"
#include "core/documents/stock_words.h"
#include "core/documents/supply_difference_words.h"

#include <QGridLayout>

namespace laneward {

namespace {

/// One line of the comparison: now, then, and the difference with its sign.
struct Line {
    QString name;
    QString now;
    QString then;
    QString more;
};

QString signedText(std::int64_t sign, const QString& size) {
    if (sign == 0) return QStringLiteral("±0");
    return (sign > 0 ? QStringLiteral("+") : QStringLiteral("−")) + size;
}

Line counted(const QString& name, std::int64_t now, std::int64_t then, const Speech& speech) {
    const auto text = [&](std::int64_t n) { return speech.locale.toString(qlonglong(n)); };
    return {name, text(now), text(then), signedText(then - now, text(std::abs(then - now)))};
}

/// Whole hours where there are many.
QString totalText(Seconds s, const Speech& speech) {
    return durationText(s < hours(10) ? s : hours((s.value + 1'800) / 3'600), speech);
}

Line timed(const QString& name, Seconds now, Seconds then, const Speech& speech) {
    const std::int64_t more = then.value - now.value;
    return {name, totalText(now, speech), totalText(then, speech), signedText(more, durationText({std::abs(more)}, speech))};
}

Line poured(const QString& name, Microlitres now, Microlitres then, const Speech& speech) {
    const std::int64_t more = then.value - now.value;
    return {name, amountText(now, speech), amountText(then, speech), signedText(more, amountText({std::abs(more)}, speech))};
}

}  // namespace

void SeasonPanel::showAnswer(const SeasonFigures& then) {
    while (QLayoutItem* item = m_figures->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const Speech speech = m_session.speech();
    const WorkFigures& a = m_now.total;
    const WorkFigures& b = then.total;
    const std::vector<Line> lines{
        {QString(), tr("Now"), tr("Then"), tr("More")},
        counted(tr("Lanes treated"), a.treatments, b.treatments, speech),
        counted(tr("Outings"), a.outings, b.outings, speech),
        timed(tr("Machine time"), a.machineTime, b.machineTime, speech),
        timed(tr("Overtime"), a.overtime, b.overtime, speech),
        poured(tr("Conditioner"), a.conditioner, b.conditioner, speech),
        poured(tr("Cleaner"), a.cleaner, b.cleaner, speech),
        counted(tr("Unmet"), a.unmet, b.unmet, speech),
        counted(tr("Late events"), a.late, b.late, speech),
        counted(tr("Tight days"), std::int64_t(m_now.tight.size()), std::int64_t(then.tight.size()), speech)};
    for (size_t row = 0; row < lines.size(); ++row) {
        const Line& line = lines[row];
        m_figures->addWidget(plainLabel(line.name, m_answer), int(row), 0);
        int column = 1;
        for (const QString& text : {line.now, line.then, line.more}) {
            QLabel* label = plainLabel(text, m_answer);
            label->setAlignment(Qt::AlignTrailing | Qt::AlignVCenter);
            QFont font = label->font();
            font.setBold(row == 0 || column == 3);
            label->setFont(font);
            const QString& head = column == 1 ? lines[0].now : column == 2 ? lines[0].then : lines[0].more;
            if (row > 0) label->setAccessibleName(tr("%1, %2: %3", "row, column: figure").arg(line.name, head, text));
            m_figures->addWidget(label, int(row), column++);
        }
    }
    m_answer->show();
}

/// Behind the figures: they do not wait for it.
void SeasonPanel::askStock() {
    if (m_session.season().supplies.empty() || !m_supposed) return;
    if (!m_stockBase) {
        m_stockBase = std::make_shared<const StockBase>(
            StockBase{m_session.planningState(), m_session.season(), m_session.store().location(), m_asOf});
    }
    m_stock->setText(tr("Looking at what it does to stock…"));
    m_stock->show();
    m_stockRunner.ask(m_stockBase, m_supposed, [this](const StockAnswer& answer) { showStock(answer); });
}

void SeasonPanel::showStock(const StockAnswer& answer) {
    const Speech speech = m_session.speech();
    QStringList lines;
    for (const DifferenceLine& line : stockLines(answer.difference, m_session.season(), speech))
        lines << (line.bad ? QStringLiteral("! ") + line.words : line.words);
    for (const DifferenceLine& line : serviceLines(answer.service, m_session.season(), speech))
        lines << line.words;
    lines << tr("%1, over the %n day(s) ahead", nullptr, stockDays).arg(costLine(answer.cost, speech).words);
    m_stock->setText(lines.join(u'\n'));
    fitSide();
}

}  // namespace laneward
