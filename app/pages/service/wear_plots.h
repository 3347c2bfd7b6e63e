// What is drawn of wear: the failures on a Weibull plot with the fit and its band, and what replacing costs at each age.
#pragma once

#include "app/pages/service/plot_view.h"
#include "core/documents/wording.h"
#include "core/service/service_item.h"
#include "core/service/wear.h"

namespace laneward {

struct WearShown {
    const WearAnswer& answer;
    MeterKind meter = MeterKind::Lanes;
    std::optional<double> now;  ///< the interval that is set
    QByteArray currency;
};

/// Failures that fell on the line would be of one law; the scale of shares is that of the law.
PlotContent weibullPlot(const WearShown& shown, const Speech& speech);
/// Cost for each unit of the meter, by the age at which a part is replaced, with the best and the present one marked.
PlotContent costPlot(const WearShown& shown, const Speech& speech);

}  // namespace laneward
