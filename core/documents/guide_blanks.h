// What is written down at a step, and the record that comes of it: the same as the forms of the page Today make.
//
// A blank that stays empty was not read. Volts are typed in volts, with the state in which they were measured where the centre
// keeps packs, amounts in millilitres or US fluid ounces.
#pragma once

#include "core/documents/guide.h"
#include "core/documents/wording.h"
#include "core/season/pack_deeds.h"

namespace laneward {

struct GuideBlank {
    enum class Of { Volts, Conditioner, Cleaner, Waste, LanesLeft, PouredConditioner, PouredCleaner, Emptied, Note };
    Of of = Of::Volts;
    size_t slot = 0;  ///< of a conditioner
    QString name;     ///< of the product; empty = none is named
    Microlitres most;
    int mostLanes = 0;
    std::optional<VoltageState> state;  ///< of the volts, as a first guess; none = rested, nobody is asked

    bool isText() const { return of == Of::Note; }
};

struct GuideAnswer {
    GuideBlank blank;
    double number = 0;  ///< in the unit that is typed
    QString text;
    VoltageState state = VoltageState::Rested;  ///< of volts
};

/// None for a step that asks for nothing.
std::vector<GuideBlank> blanksOf(const GuideStep& step, const SeasonState& season, Instant now);
QString nameOf(const GuideBlank& blank);                    ///< "Waste in its tank"
QString unitOf(const GuideBlank& blank, UnitSystem units);  ///< "V", "mL"; empty for text
/// What the records say is there, in the unit that is typed; empty where they cannot know.
QString expectedText(const GuideBlank& blank, const MachineLevels& now, const Speech& speech);
/// What cannot be: volts outside 0 to 60, more than a tank holds, a pack of more lanes than one gives ("guide.…-beyond").
std::optional<Finding> faultOf(const GuideBlank& blank, double number, const Speech& speech);
/// Of an amount that was typed.
Microlitres amountOf(const GuideAnswer& answer, UnitSystem units);
/// What is recorded and has to be said at once: volts that are too low to run, more emptied than the tank holds.
std::vector<Finding> doubtsOf(const GuideAnswer& answer, const Machine& machine, const VoltRule& rule, UnitSystem units);

/// None where nothing was read. Id and person are left empty.
std::optional<LevelReading> readingOf(const GuideStep& step, const Machine& machine, const MachineLevels& now,
                                      const std::vector<GuideAnswer>& answers, UnitSystem units);
/// What the step does to the machine's packs, and their volts.
PackNews packNewsOf(const GuideStep& step, const std::vector<GuideAnswer>& answers);
/// As a duty goes that went as usual: its minutes and its parts. None when the duty is there no more.
std::optional<ServiceRecord> serviceOf(const GuideStep& step, const JobSheet& sheet, const SeasonState& season, Instant now);
/// None without a word.
std::optional<HandOver> noteOf(const std::vector<GuideAnswer>& answers, QDate day, Instant now);

}  // namespace laneward
