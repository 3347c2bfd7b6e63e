// Phrases that the printed sheet and the text sheet share, so that both say the same.
#pragma once

#include "core/documents/job_sheet.h"
#include "core/documents/wording.h"

#include <QStringList>

namespace laneward {

/// "Plan version 3" or "Not confirmed: print to confirm".
QString versionText(const JobSheet& sheet, const Speech& speech);
/// "Refill Heron: …", for every step that is not a job.
QString stepText(const JobSheet& sheet, const SheetStep& step, const Speech& speech);
/// What is done at a Duty step, line by line: its steps, parts and who may do it. Empty for other steps.
QStringList dutyLines(const JobSheet& sheet, const SheetStep& step, const Speech& speech);
/// "1-12, 15", kept in this order inside right-to-left text.
QString laneNumbers(const LaneSet& lanes, const Speech& speech);
/// "lanes 1-12", saying so when they are worked from the last one down.
QString lanesText(const Job& job, const Speech& speech);
/// "conditioner 239 mL, cleaner 1.3 L, waste 1.2 L".
QString amountsText(const Job& job, const Speech& speech);
/// "12 min to spare", "TIGHT: …", "LATE by …".
QString slackText(const Job& job, const Speech& speech);
/// "for Reed Cutters 18:00, Late Lanterns 21:30".
QString neededByText(const Job& job, const Speech& speech);
/// Done, cut short, under way: what has become of the job; empty while it lies ahead.
QString progressText(const Job& job);
/// One line of what a machine holds: "Tideglass Amber", "290 mL", "tonight 620 mL".
struct LevelLine {
    QString name;
    QString now;
    QString tonight;
};
std::vector<LevelLine> levelLines(const SheetReadiness& machine, const Speech& speech);
/// "full at 26.8 V just charged, fit to run at 25.4 V rested, spare pack on below 20.0 V under load".
QString voltsRule(const SheetReadiness& machine, const Speech& speech);
/// "25.7 V rested".
QString measuredVoltsText(const MeasuredVolts& measured, const Speech& speech);
/// A finding of readiness, with the caution that belongs beside it.
QString readinessText(const Finding& finding, const Speech& speech);
/// "the waste tank overflows with a chance of 3.2 %, unless it is emptied before".
QString overflowText(double chance, const Speech& speech);
/// "lanes 1-8 of Late Lanterns, 21:30: fresh is unmet, 12 min missing" and its reasons and remedies.
QString shortfallText(const Shortfall& shortfall, const Speech& speech);
QStringList shortfallDetails(const Shortfall& shortfall, const Speech& speech);
/// The general sources of the cautions that the sheet carries.
QString sourcesText(const JobSheet& sheet, const Speech& speech);

}  // namespace laneward
