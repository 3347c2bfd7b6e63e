// Films, and the checks of readings and inspections, in words, JSON and CSV.
#pragma once

#include "core/documents/wording.h"
#include "core/patterns/reading_checks.h"

#include <QJsonObject>

namespace laneward {

/// A film with what it was computed from.
struct FilmPage {
    Pattern pattern;
    QString machine;  ///< whose brush it is; empty = without carry
    Brush brush;
    Film film;
};

QString unitsText(double units, const Speech& speech);  ///< "12.3", without the word
QString filmText(const FilmPage& page, const Speech& speech);
/// {pattern, edition, machine, carry_um, lane, volumes, map}; film in thousandths of a unit.
QJsonObject filmJson(const FilmPage& page);
/// A row for every cell: from_ft, to_ft, b1 … b39 in units.
QByteArray filmCsv(const Film& film);

QString text(GeometryFeature feature);
QString nameOf(CheckId check);
QString sourceOf(const NamedCheck& check);  ///< where it was read, and that the rule book decides
QString statusOf(const NamedCheck& check);  ///< "suspended in 2019 (in force from 1992)", "the centre's own"

}  // namespace laneward
