#include "core/documents/waste_words.h"

#include "core/documents/sheet_words.h"

#include <QCoreApplication>
#include <QJsonObject>

#include <algorithm>
#include <cmath>

namespace laneward {

namespace {

QString say(const char* source, int n = -1) { return QCoreApplication::translate("wording", source, nullptr, n); }

}  // namespace

QString wasteLevelText(const WasteLine& line, const Speech& speech) {
    QString said = say(QT_TRANSLATE_NOOP("wording", "about %1 of %2"))
                       .arg(amountText(line.level, speech), amountText(line.capacity, speech));
    if (line.emptyings == 0)
        return said + say(QT_TRANSLATE_NOOP("wording", "; nothing emptied was measured yet, so what comes back is assumed"));
    const QString share = speech.locale.toString(int(std::lround(line.share * 100)));
    return said +
           say(QT_TRANSLATE_N_NOOP("wording", "; %1 % of the cleaner comes back (%n emptying(s) measured)"), line.emptyings)
               .arg(share);
}

QString wasteTonightText(const WasteLine& line, const Speech& speech) {
    const auto worst = std::max_element(line.overflow.begin(), line.overflow.end(),
                                        [](const OverflowChance& a, const OverflowChance& b) { return a.chance < b.chance; });
    if (worst == line.overflow.end()) return {};
    return say(QT_TRANSLATE_NOOP("wording", "tonight: %1")).arg(overflowText(worst->chance, speech));
}

bool hasWaste(const WasteLine& line) { return line.level > Microlitres{0} || !line.overflow.empty(); }

QJsonArray wasteJson(const std::vector<WasteLine>& lines) {
    QJsonArray list;
    for (const WasteLine& line : lines) {
        QJsonArray overflow;
        for (const OverflowChance& one : line.overflow)
            overflow.append(QJsonObject{{"job", one.job.value}, {"permille", qint64(std::llround(one.chance * 1'000))}});
        list.append(QJsonObject{{"machine", line.machine.value},
                                {"level_ul", qint64(line.level.value)},
                                {"capacity_ul", qint64(line.capacity.value)},
                                {"share_permille", qint64(std::llround(line.share * 1'000))},
                                {"emptyings", line.emptyings},
                                {"overflow", overflow}});
    }
    return list;
}

}  // namespace laneward
