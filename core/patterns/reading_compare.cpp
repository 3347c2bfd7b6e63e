#include "core/patterns/reading_compare.h"

#include <cmath>

namespace laneward {

namespace {

using Values = std::array<std::optional<double>, size_t(boards)>;
using Oiled = std::array<bool, size_t(boards)>;

class Mean {
public:
    void add(double value) {
        m_sum += value;
        ++m_count;
    }
    std::optional<double> value() const { return m_count ? std::optional(m_sum / m_count) : std::nullopt; }

private:
    double m_sum = 0;
    int m_count = 0;
};

Values readValues(const TapeReading& reading) {
    Values values;
    for (size_t b = 0; b < values.size(); ++b) {
        if (reading.milliUnits[b]) values[b] = double(*reading.milliUnits[b]) / 1'000;
    }
    return values;
}

Mean& addBoards(Mean& mean, const Values& values, int first, int last) {
    for (int board = first; board <= last; ++board) {
        if (values[size_t(board - 1)]) mean.add(*values[size_t(board - 1)]);
    }
    return mean;
}

std::optional<double> meanOf(const Values& values, int first, int last) {
    Mean mean;
    return addBoards(mean, values, first, last).value();
}

std::optional<double> unlikenessOf(const Values& values) {
    Mean mean;
    for (size_t b = 0; b < size_t(boards) / 2; ++b) {
        const std::optional<double> other = values[size_t(boards) - 1 - b];
        if (values[b] && other) mean.add(std::abs(*values[b] - *other));
    }
    return mean.value();
}

std::optional<double> trackRatioOf(const Values& values) {
    Mean outer;
    addBoards(outer, values, firstOuterBoard, lastOuterBoard);
    addBoards(outer, values, boards + 1 - lastOuterBoard, boards + 1 - firstOuterBoard);
    const std::optional<double> middle = meanOf(values, firstMiddleBoard, lastMiddleBoard);
    if (!middle || !outer.value() || *outer.value() <= 0) return std::nullopt;
    return *middle / *outer.value();
}

TapeFigures figures(const Values& values, const Oiled& oiled) {
    TapeFigures made;
    made.mean = meanOf(values, 1, boards);
    made.right = meanOf(values, 1, boards / 2);
    made.left = meanOf(values, boards / 2 + 2, boards);
    made.unlikeness = unlikenessOf(values);
    made.trackRatio = trackRatioOf(values);
    for (size_t b = 0; b < values.size(); ++b) {
        if (!values[b] || !oiled[b] || (made.lowest && *values[b] >= *made.lowest)) continue;
        made.lowest = values[b];
        made.lowestBoard = int(b) + 1;
    }
    return made;
}

}  // namespace

ReadingComparison compare(const TapeReading& reading, const Pattern& pattern, Micrometres carry) {
    ReadingComparison made;
    made.computed = tapeFilm(pattern, {carry, reading.laneOfRun}, reading.distance);
    const Values read = readValues(reading);
    Values expected;
    Mean error;
    Mean absolute;
    for (size_t b = 0; b < read.size(); ++b) {
        if (!read[b]) continue;
        expected[b] = made.computed[b];
        const double off = *read[b] - made.computed[b];
        made.error[b] = off;
        error.add(off);
        absolute.add(std::abs(off));
        ++made.count;
        if (made.largestBoard && std::abs(off) <= std::abs(made.largest)) continue;
        made.largest = off;
        made.largestBoard = int(b) + 1;
    }
    made.meanError = error.value().value_or(0);
    made.meanAbsolute = absolute.value().value_or(0);
    const Oiled oiled = oiledBoards(pattern, reading.distance);
    made.read = figures(read, oiled);
    made.expected = figures(expected, oiled);
    return made;
}

TapeFigures figuresOf(const TapeReading& reading, const Pattern* pattern) {
    return figures(readValues(reading), pattern ? oiledBoards(*pattern, reading.distance) : Oiled{});
}

}  // namespace laneward
