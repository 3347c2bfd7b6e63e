// Lanes that each charge of a pack has run, by its day, with the line by which they fade and what a busy night takes.
#pragma once

#include "app/pages/service/plot_view.h"
#include "core/documents/pack_words.h"

namespace laneward {

struct PackShown {
    const std::vector<PackCharge>& charges;
    std::optional<PackTrend> trend;
    int needed = 0;
    QString name;
};

PlotContent packPlot(const PackShown& shown, const Speech& speech);

}  // namespace laneward
