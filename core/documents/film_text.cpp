#include "core/documents/film_words.h"
#include "core/documents/text_page.h"

#include <QCoreApplication>

#include <cmath>

namespace laneward {

namespace {

constexpr int boardsShown[] = {37, 32, 27, 22, 20, 18, 13, 8, 3};  // from the left, as seen from the approach
constexpr int feetBetween = 5;

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

QString volumesText(const Pattern& pattern, const Speech& speech) {
    const Volumes v = volumes(pattern);
    QString out = wrapped(say(QT_TRANSLATE_NOOP("wording", "out %1, back %2, whole lane %3"))
                              .arg(amountText(v.out, speech), amountText(v.back, speech), amountText(v.lane, speech)),
                          2);
    for (size_t slot = 0; slot < v.bySlot.size(); ++slot) {
        if (v.bySlot[slot] <= Microlitres{0}) continue;
        out += wrapped(say(QT_TRANSLATE_NOOP("wording", "conditioner %1: %2"))
                           .arg(speech.locale.toString(int(slot) + 1), amountText(v.bySlot[slot], speech)),
                       2);
    }
    return out;
}

QString brushText(const FilmPage& page, const Speech& speech) {
    if (page.brush.carry <= Micrometres{0}) return say(QT_TRANSLATE_NOOP("wording", "without carry of the brush"));
    const QString carried =
        say(QT_TRANSLATE_NOOP("wording", "carry length %1 (%2)")).arg(lengthText(page.brush.carry, speech), shown(page.machine));
    const QString lane = page.brush.lane == 0
                             ? say(QT_TRANSLATE_NOOP("wording", "as in a long run"))
                             : say(QT_TRANSLATE_NOOP("wording", "lane %1 of a clean brush")).arg(page.brush.lane);
    return carried + ", " + lane;
}

QString balanceText(const FilmBalance& balance, const Speech& speech) {
    const auto amount = [&speech](double microlitres) { return amountText({std::llround(microlitres)}, speech); };
    return say(QT_TRANSLATE_NOOP("wording", "laid on the lane %1; on the brush %2 before and %3 after"))
        .arg(amount(balance.laid), amount(balance.brushBefore), amount(balance.brushAfter));
}

/// Cross-sections at the cells that begin every few feet.
QString mapText(const FilmPage& page, const Speech& speech) {
    constexpr int width = 5;
    std::vector<QStringList> rows{{say(QT_TRANSLATE_NOOP("wording", "from, on board"))}};
    for (int board : boardsShown)
        rows.front() += QString::number(board).rightJustified(width);
    for (Micrometres at; at < page.pattern.end; at += feet(feetBetween)) {
        const int cell = page.film.cellAt(at);
        rows.push_back({lengthText(page.film.begin(cell), speech)});
        for (int board : boardsShown)
            rows.back() += unitsText(page.film.units(board, cell), speech).rightJustified(width);
    }
    return table(rows, 2);
}

}  // namespace

QString unitsText(double units, const Speech& speech) {
    const QString digits = speech.locale.toString(std::abs(units), 'f', 1);
    return units <= -0.05 ? speech.locale.negativeSign() + digits : digits;
}

QString filmText(const FilmPage& page, const Speech& speech) {
    QString out = heading(shown(page.pattern.name));
    out += volumesText(page.pattern, speech) + u'\n';
    out += wrapped(brushText(page, speech), 2) + wrapped(balanceText(page.film.balance, speech), 2) + u'\n';
    out += "  " +
           say(QT_TRANSLATE_NOOP("wording", "Film in units of 0.0167 mL a square foot, means of cells of %1"))
               .arg(lengthText(page.film.cell, speech)) +
           u'\n';
    return out + mapText(page, speech);
}

}  // namespace laneward
