#include "app/pages/patterns/reading_details.h"

#include "app/edits/plain_label.h"
#include "app/pages/patterns/reading_chart.h"
#include "app/pages/patterns/reading_model.h"
#include "app/widgets/decimal_text.h"
#include "core/documents/film_words.h"

#include <QGridLayout>

#include <cmath>

namespace laneward {

namespace {

QString wanted(const CheckResult& result, const QLocale& locale) {
    const auto number = [&](double x) { return decimalText(x, 3, locale); };
    if (result.least && result.most) return ReadingDetails::tr("%1 to %2 asked").arg(number(*result.least), number(*result.most));
    if (result.least) return ReadingDetails::tr("at least %1 asked").arg(number(*result.least));
    if (result.most) return ReadingDetails::tr("at most %1 asked").arg(number(*result.most));
    return {};
}

QString figureText(const std::optional<double>& value, int decimals, const QLocale& locale) {
    return value ? locale.toString(*value, 'f', decimals) : ReadingDetails::tr("none");
}

}  // namespace

CheckLines linesOf(const CheckResult& result, const QLocale& locale) {
    CheckLines lines;
    lines.source = ReadingDetails::tr("Status: %1. Source: %2").arg(statusOf(result.check), sourceOf(result.check));
    const QString name = nameOf(result.check.id);
    if (!result.value) {
        lines.verdict = ReadingDetails::tr("– %1: the boards it needs were not read").arg(name);
        return lines;
    }
    const QString value = decimalText(*result.value, 2, locale);
    if (result.check.status == CheckStatus::Suspended) {
        lines.verdict =
            result.holds
                ? ReadingDetails::tr("History, for comparison only: %1. This reading has %2.").arg(name, value)
                : ReadingDetails::tr("History, for comparison only: %1. This reading has %2, and nothing follows from it.")
                      .arg(name, value);
        return lines;
    }
    lines.verdict = result.holds ? ReadingDetails::tr("✓ kept: %1: %2 (%3)").arg(name, value, wanted(result, locale))
                                 : ReadingDetails::tr("! not kept: %1: %2 (%3)").arg(name, value, wanted(result, locale));
    return lines;
}

ReadingDetails::ReadingDetails(QWidget* parent)
    : QWidget(parent),
      m_title(headingLabel({}, this)),
      m_chart(new ReadingChart(this)),
      m_board(proseLabel({}, this)),
      m_error(proseLabel({}, this)),
      m_rows(new QVBoxLayout(this)) {
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_title->setWordWrap(true);
    m_rows->addWidget(m_title);
    m_rows->addWidget(m_chart, 1);
    m_rows->addWidget(m_board);
    m_rows->addWidget(m_error);
    connect(m_chart, &ReadingChart::boardChosen, this, [this](int board) { m_board->setText(m_chart->boardText(board)); });
}

void ReadingDetails::dropRows() {
    delete m_figures;
    m_figures = nullptr;
}

void ReadingDetails::clear(const QString& why) {
    dropRows();
    m_title->setText(why);
    m_chart->hide();
    m_board->clear();
    m_error->clear();
}

void ReadingDetails::show(const ReadingRow& row, const std::optional<ReadingComparison>& compared, const ReadingLimits& own,
                          const Speech& speech) {
    dropRows();
    const TapeReading& reading = row.reading;
    m_title->setText(tr("Lane %1 at %2, %3, %4")
                         .arg(speech.locale.toString(reading.lane), lengthText(reading.distance, speech),
                              row.machine.isEmpty() ? tr("machine not known") : row.machine, dateTimeText(reading.at, speech)));
    m_chart->show(reading.milliUnits, compared ? std::optional(compared->computed) : std::nullopt, speech.locale);
    m_chart->setVisible(true);
    m_board->setText(m_chart->boardText(m_chart->board()));
    if (!compared) {
        m_error->setText(tr("Which version of the pattern was run is not known, so no film can be computed beside it."));
        return;
    }
    const auto units = [&](double x) { return speech.locale.toString(std::abs(x), 'f', 1); };
    const QString mean = compared->meanError < 0 ? tr("%1 units less than computed on average").arg(units(compared->meanError))
                                                 : tr("%1 units more than computed on average").arg(units(compared->meanError));
    m_error->setText(
        tr("%1; a board is off by %2, at most by %3 (board %4).")
            .arg(mean, units(compared->meanAbsolute), units(compared->largest), speech.locale.toString(compared->largestBoard)));
    m_figures = new QWidget(this);
    auto* column = new QVBoxLayout(m_figures);
    column->setContentsMargins(0, 0, 0, 0);
    showFigures(*compared, speech.locale);
    showChecks(*compared, own, speech.locale);
    m_rows->addWidget(m_figures);
    m_figures->show();
}

void ReadingDetails::showFigures(const ReadingComparison& compared, const QLocale& locale) {
    struct Figure {
        QString name;
        std::optional<double> read, computed;
        int decimals;
    };
    const TapeFigures& read = compared.read;
    const TapeFigures& film = compared.expected;
    const Figure figures[] = {{tr("Right side (boards 1 to 19), units"), read.right, film.right, 1},
                              {tr("Left side (boards 21 to 39), units"), read.left, film.left, 1},
                              {tr("Left-right unlikeness, units"), read.unlikeness, film.unlikeness, 1},
                              {tr("Track ratio, middle over outer boards"), read.trackRatio, film.trackRatio, 2},
                              {tr("Lowest on an oiled board, units"), read.lowest, film.lowest, 1}};
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(16);
    grid->setColumnStretch(0, 1);
    const auto head = [&](const QString& text, int column) {
        grid->addWidget(headingLabel(text, m_figures), 0, column, Qt::AlignTrailing);
    };
    head(tr("read"), 1);
    head(tr("computed"), 2);
    int row = 1;
    for (const Figure& figure : figures) {
        grid->addWidget(proseLabel(figure.name, m_figures), row, 0);
        int column = 1;
        for (const auto& value : {figure.read, figure.computed}) {
            auto* label = plainLabel(figureText(value, figure.decimals, locale), m_figures);
            label->setAccessibleName(tr("%1, %2: %3").arg(figure.name, column == 1 ? tr("read") : tr("computed"), label->text()));
            grid->addWidget(label, row, column++, Qt::AlignTrailing);
        }
        ++row;
    }
    static_cast<QVBoxLayout*>(m_figures->layout())->addLayout(grid);
}

void ReadingDetails::showChecks(const ReadingComparison& compared, const ReadingLimits& own, const QLocale& locale) {
    auto* column = static_cast<QVBoxLayout*>(m_figures->layout());
    column->addWidget(headingLabel(tr("Checks"), m_figures));
    for (const CheckResult& result : checkReading(compared, own)) {
        const CheckLines lines = linesOf(result, locale);
        QLabel* verdict = proseLabel(lines.verdict, m_figures);
        QFont font = verdict->font();
        font.setBold(result.isBroken() && result.check.status != CheckStatus::Suspended);
        verdict->setFont(font);
        column->addWidget(verdict);
        column->addWidget(proseLabel(lines.source, m_figures));
    }
}

QString ReadingDetails::allText() const {
    QStringList lines;
    for (const QLabel* label : findChildren<QLabel*>()) {
        if (label->isVisibleTo(this)) lines << label->text();
    }
    return lines.join(u'\n');
}

}  // namespace laneward
