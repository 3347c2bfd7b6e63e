// What is written down at a step, and the record that comes of it: the same as the forms of the page Today make.
//
// A blank that stays empty was not read. Volts are typed in volts, amounts in millilitres or US fluid ounces.
#pragma once

#include "core/documents/guide.h"
#include "core/documents/wording.h"

namespace laneward {

struct GuideBlank {
    enum class Of { Volts, Conditioner, Cleaner, Waste, LanesLeft, PouredConditioner, PouredCleaner, Note };
    Of of = Of::Volts;
    size_t slot = 0;  ///< of a conditioner
    QString name;     ///< of the product; empty = none is named
    Microlitres most;
    int mostLanes = 0;

    bool isText() const { return of == Of::Note; }
};

struct GuideAnswer {
    GuideBlank blank;
    double number = 0;  ///< in the unit that is typed
    QString text;
};

/// None for a step that asks for nothing.
std::vector<GuideBlank> blanksOf(const GuideStep& step, const Centre& centre);
QString nameOf(const GuideBlank& blank);                    ///< "Waste in its tank"
QString unitOf(const GuideBlank& blank, UnitSystem units);  ///< "V", "mL"; empty for text
/// What the records say is there, in the unit that is typed; empty where they cannot know.
QString expectedText(const GuideBlank& blank, const MachineLevels& now, const Speech& speech);
/// What cannot be: volts outside 0 to 60, more than a tank holds, a pack of more lanes than one gives ("guide.…-beyond").
std::optional<Finding> faultOf(const GuideBlank& blank, double number, const Speech& speech);

/// None where nothing was read. Id and person are left empty.
std::optional<LevelReading> readingOf(const GuideStep& step, const Machine& machine, const MachineLevels& now,
                                      const std::vector<GuideAnswer>& answers, UnitSystem units);
/// As a duty goes that went as usual: its minutes and its parts. None when the duty is there no more.
std::optional<ServiceRecord> serviceOf(const GuideStep& step, const JobSheet& sheet, const SeasonState& season, Instant now);
/// None without a word.
std::optional<HandOver> noteOf(const std::vector<GuideAnswer>& answers, QDate day, Instant now);

}  // namespace laneward
