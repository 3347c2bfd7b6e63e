// The job sheet as blocks of a page. Internal to this room.
#pragma once

#include "app/paper/paper_block.h"
#include "core/documents/job_sheet.h"
#include "core/documents/wording.h"

namespace laneward {

PaperBlock sectionBlock(const Paper& paper, const QString& title);
std::vector<PaperBlock> readinessBlocks(const Paper& paper, const JobSheet& sheet, const Speech& speech);
std::vector<PaperBlock> eventBlocks(const Paper& paper, const JobSheet& sheet, const Speech& speech);
std::vector<PaperBlock> noteBlocks(const Paper& paper, const JobSheet& sheet, const Speech& speech);
std::vector<PaperBlock> shortfallBlocks(const Paper& paper, const JobSheet& sheet, const Speech& speech);
std::vector<PaperBlock> stepBlocks(const Paper& paper, const JobSheet& sheet, const Speech& speech);
std::vector<PaperBlock> footBlocks(const Paper& paper, const JobSheet& sheet, const Speech& speech);

}  // namespace laneward
