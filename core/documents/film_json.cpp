#include "core/documents/film_words.h"
#include "core/documents/writers.h"

#include <QJsonArray>

#include <cmath>

namespace laneward {

namespace {

QJsonValue whole(double x) { return QJsonValue(qint64(std::llround(x))); }

QJsonObject volumesJson(const Volumes& v) {
    QJsonArray conditioners;
    for (const Microlitres& amount : v.bySlot)
        conditioners.append(qint64(amount.value));
    return {{"out_ul", qint64(v.out.value)},
            {"back_ul", qint64(v.back.value)},
            {"lane_ul", qint64(v.lane.value)},
            {"by_conditioner_ul", conditioners}};
}

QJsonObject mapJson(const Film& film) {
    QJsonArray rows;
    for (int cell = 0; cell < film.cells; ++cell) {
        QJsonArray row;
        for (int board = 1; board <= boards; ++board)
            row.append(whole(film.units(board, cell) * 1'000));
        rows.append(row);
    }
    return {{"cell_um", qint64(film.cell.value)},
            {"boards", boards},
            {"film_milliunits", rows},
            {"laid_ul", whole(film.balance.laid)},
            {"brush_before_ul", whole(film.balance.brushBefore)},
            {"brush_after_ul", whole(film.balance.brushAfter)}};
}

}  // namespace

QJsonObject filmJson(const FilmPage& page) {
    return {{"pattern", page.pattern.name},
            {"edition", qint64(page.pattern.edition)},
            {"machine", page.machine.isEmpty() ? QJsonValue() : QJsonValue(page.machine)},
            {"carry_um", qint64(page.brush.carry.value)},
            {"lane", page.brush.lane == 0 ? QJsonValue() : QJsonValue(page.brush.lane)},
            {"volumes", volumesJson(volumes(page.pattern))},
            {"map", mapJson(page.film)}};
}

QByteArray filmCsv(const Film& film) {
    const auto decimal = [](double x, int digits) { return CsvField{QString::number(x, 'f', digits), true}; };
    std::vector<CsvField> header{{"from_ft"}, {"to_ft"}};
    for (int board = 1; board <= boards; ++board)
        header.push_back({QString("b%1").arg(board)});
    QByteArray csv = csvRecord(header);
    for (int cell = 0; cell < film.cells; ++cell) {
        std::vector<CsvField> row{decimal(toFeet(film.begin(cell)), 6), decimal(toFeet(film.end(cell)), 6)};
        for (int board = 1; board <= boards; ++board)
            row.push_back(decimal(film.units(board, cell), 3));
        csv += csvRecord(row);
    }
    return csv;
}

}  // namespace laneward
