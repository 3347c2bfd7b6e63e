// Quillmarsh Bowl: an invented centre with a busy evening on the day it is made, whichever day that is.
//
// Everything follows from the date of `now` in Europe/London and one fixed seed: the same date gives the same centre, on every
// machine. People, products, patterns and events are invented. A year of records comes from the program's own plan of that year,
// with a few mishaps.
//
//     CentreFile demo = demoCentre(clock.now());
#pragma once

#include "core/storage/centre_file.h"

namespace laneward {

CentreFile demoCentre(Instant now);

}  // namespace laneward
