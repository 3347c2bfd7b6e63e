#include "core/documents/guide_blanks.h"

#include "core/base/limits.h"
#include "core/season/service_state.h"
#include "core/season/waste_past.h"

#include <QCoreApplication>

#include <cmath>

namespace laneward {

namespace {

using Of = GuideBlank::Of;

constexpr double mostTypedVolts = double(mostVolts.value) / 1'000;
constexpr double mostTypedAmount = 1'000'000;
constexpr double fluidOunce = 29'573.5295625;  // microlitres; NIST Handbook 44, appendix C (from memory)
constexpr double millilitre = 1'000;

QString say(const char* source) { return QCoreApplication::translate("wording", source); }

double unitSize(UnitSystem units) { return units == UnitSystem::Metric ? millilitre : fluidOunce; }

void addTanks(std::vector<GuideBlank>& blanks, const Machine& machine, bool poured) {
    // A tank that was overfilled, or drained first, takes more than it holds.
    const int times = poured ? 2 : 1;
    for (size_t slot = 0; slot < machine.capacity.conditioner.size(); ++slot) {
        const Microlitres holds = machine.capacity.conditioner[slot];
        if (holds <= Microlitres{0}) continue;
        blanks.push_back(
            {poured ? Of::PouredConditioner : Of::Conditioner, slot, machine.conditioners[slot], holds * times, 0, {}});
    }
    blanks.push_back({poured ? Of::PouredCleaner : Of::Cleaner, 0, machine.cleaner, machine.capacity.cleaner * times, 0, {}});
}

/// What is read is put in its place; the rest stays as the records say.
class Levels {
public:
    Levels(const MachineLevels& now, UnitSystem units) : m_levels(now), m_unit(unitSize(units)) {}

    void take(const GuideAnswer& answer) {
        const Microlitres amount{std::llround(answer.number * m_unit)};
        switch (answer.blank.of) {
            case Of::Volts:
                m_levels.volts = Millivolts{std::llround(answer.number * 1'000)};
                break;
            case Of::Conditioner:
                m_levels.conditioner[answer.blank.slot] = amount;
                break;
            case Of::Cleaner:
                m_levels.cleaner = amount;
                break;
            case Of::Waste:
                m_levels.waste = amount;
                break;
            case Of::LanesLeft:
                m_levels.lanesLeft = int(std::lround(answer.number));
                break;
            case Of::PouredConditioner:
                poured().conditioner[answer.blank.slot] = amount;
                break;
            case Of::PouredCleaner:
                poured().cleaner = amount;
                break;
            case Of::Emptied:
                m_emptied = amount;
                break;
            case Of::Note:
                break;
        }
    }

    void fill(const Machine& machine) {
        m_levels.conditioner = machine.capacity.conditioner;
        m_levels.cleaner = machine.capacity.cleaner;
    }
    void emptyWaste() { m_levels.waste = {}; }
    /// The volts that were read were those of the pack before.
    void charge(const Machine& machine) {
        m_levels.lanesLeft = machine.capacity.lanesPerCharge;
        m_levels.volts.reset();
    }

    LevelReading reading() const { return {{}, {}, m_levels, m_poured, {}, m_emptied}; }

private:
    Poured& poured() {
        if (!m_poured) m_poured.emplace();
        return *m_poured;
    }

    MachineLevels m_levels;
    std::optional<Poured> m_poured;
    std::optional<Microlitres> m_emptied;
    double m_unit;
};

}  // namespace

std::vector<GuideBlank> blanksOf(const GuideStep& step, const SeasonState& season, Instant now) {
    std::vector<GuideBlank> blanks;
    if (step.deed == GuideDeed::HandOver) return {{Of::Note, 0, {}, {}, 0, {}}};
    const Machine* machine = findMachine(season.centre, step.step.machine);
    if (!machine) return blanks;
    if (step.deed == GuideDeed::Volts || step.deed == GuideDeed::FullPack) {
        blanks.push_back({Of::Volts, 0, {}, {}, 0, {}});
        if (packOn(season, machine->id, now)) blanks.back().state = voltRuleOf(season, *machine, now).full.state;
    }
    if (step.deed == GuideDeed::EmptyWaste || step.deed == GuideDeed::CloseTanks)
        blanks.push_back({Of::Emptied, 0, {}, machine->capacity.waste, 0, {}});
    if (step.deed == GuideDeed::Levels) {
        addTanks(blanks, *machine, false);
        blanks.push_back({Of::Waste, 0, {}, machine->capacity.waste, 0, {}});
        blanks.push_back({Of::LanesLeft, 0, {}, {}, machine->capacity.lanesPerCharge, {}});
    }
    if (step.deed == GuideDeed::Refill || step.deed == GuideDeed::CloseTanks) addTanks(blanks, *machine, true);
    return blanks;
}

QString nameOf(const GuideBlank& blank) {
    const QString product = shown(blank.name);
    switch (blank.of) {
        case Of::Volts:
            return blank.state ? say(QT_TRANSLATE_NOOP("wording", "Volts")) : say(QT_TRANSLATE_NOOP("wording", "Rested volts"));
        case Of::Conditioner:
            return product.isEmpty() ? say(QT_TRANSLATE_NOOP("wording", "Conditioner")) : product;
        case Of::Cleaner:
            return product.isEmpty() ? say(QT_TRANSLATE_NOOP("wording", "Cleaner")) : product;
        case Of::Waste:
            return say(QT_TRANSLATE_NOOP("wording", "Waste in its tank"));
        case Of::LanesLeft:
            return say(QT_TRANSLATE_NOOP("wording", "Lanes left on the pack"));
        case Of::PouredConditioner:
        case Of::PouredCleaner:
            if (!product.isEmpty()) return say(QT_TRANSLATE_NOOP("wording", "%1 poured in")).arg(product);
            return blank.of == Of::PouredCleaner ? say(QT_TRANSLATE_NOOP("wording", "Cleaner poured in"))
                                                 : say(QT_TRANSLATE_NOOP("wording", "Conditioner poured in"));
        case Of::Emptied:
            return say(QT_TRANSLATE_NOOP("wording", "Waste emptied, measured"));
        case Of::Note:
            break;
    }
    return say(QT_TRANSLATE_NOOP("wording", "Note for the next shift"));
}

QString unitOf(const GuideBlank& blank, UnitSystem units) {
    if (blank.of == Of::Volts) return say(QT_TRANSLATE_NOOP("wording", "V"));
    if (blank.of == Of::LanesLeft) return say(QT_TRANSLATE_NOOP("wording", "lanes"));
    if (blank.of == Of::Note) return {};
    return units == UnitSystem::Metric ? say(QT_TRANSLATE_NOOP("wording", "mL")) : say(QT_TRANSLATE_NOOP("wording", "fl oz"));
}

QString expectedText(const GuideBlank& blank, const MachineLevels& now, const Speech& speech) {
    // In the unit that is typed, whatever is usual for so much: 7.5 L would be typed as 7.5.
    const auto about = [&speech](Microlitres amount) {
        const auto number = qlonglong(std::llround(double(amount.value) / unitSize(speech.units)));
        return say(QT_TRANSLATE_NOOP("wording", "about %1")).arg(speech.locale.toString(number));
    };
    switch (blank.of) {
        case Of::Conditioner:
            return about(now.conditioner[blank.slot]);
        case Of::Cleaner:
            return about(now.cleaner);
        case Of::Waste:
            return about(now.waste);
        case Of::LanesLeft:
            return say(QT_TRANSLATE_NOOP("wording", "about %1")).arg(speech.locale.toString(now.lanesLeft));
        case Of::Volts:
        case Of::PouredConditioner:
        case Of::PouredCleaner:
        case Of::Note:
            break;
        case Of::Emptied:
            return about(now.waste);
    }
    return {};
}

std::optional<Finding> faultOf(const GuideBlank& blank, double number, const Speech& speech) {
    const double most = blank.of == Of::Volts       ? mostTypedVolts
                        : blank.of == Of::LanesLeft ? blank.mostLanes
                        : blank.of == Of::Emptied   ? mostTypedAmount  // what hardly can be is kept and flagged
                                                    : std::ceil(double(blank.most.value) / unitSize(speech.units));
    if (number >= 0 && number <= most) return std::nullopt;
    if (blank.of == Of::Volts) return Finding{Severity::Fault, "guide.volts-beyond", {}, {std::int64_t{60}}};
    if (blank.of == Of::LanesLeft) return Finding{Severity::Fault, "guide.lanes-beyond", {}, {std::int64_t{blank.mostLanes}}};
    if (blank.of == Of::Emptied)
        return Finding{Severity::Fault, "guide.emptied-beyond", {}, {Microlitres{std::llround(number * unitSize(speech.units))}}};
    return Finding{Severity::Fault, "guide.amount-beyond", nameOf(blank), {blank.most}};
}

Microlitres amountOf(const GuideAnswer& answer, UnitSystem units) { return {std::llround(answer.number * unitSize(units))}; }

std::vector<Finding> doubtsOf(const GuideAnswer& answer, const Machine& machine, const VoltRule& rule, UnitSystem units) {
    if (answer.blank.of == Of::Emptied) return emptiedFindings(amountOf(answer, units), machine);
    if (answer.blank.of != Of::Volts) return {};
    const Millivolts volts{std::llround(answer.number * 1'000)};
    std::vector<Finding> findings = voltFindings({volts, answer.state, {}}, rule, machine.name);
    std::erase_if(findings, [](const Finding& finding) { return finding.severity == Severity::Note; });
    return findings;
}

PackNews packNewsOf(const GuideStep& step, const std::vector<GuideAnswer>& answers) {
    PackNews news;
    if (step.deed == GuideDeed::FullPack)
        news.change = step.step.kind == SheetStep::Kind::SwapPack ? PackChange::Swapped : PackChange::Charged;
    if (step.deed == GuideDeed::ClosePack) news.change = PackChange::OnCharge;
    for (const GuideAnswer& answer : answers) {
        if (answer.blank.of != Of::Volts) continue;
        news.volts = Millivolts{std::llround(answer.number * 1'000)};
        news.state = answer.state;
    }
    return news;
}

std::optional<LevelReading> readingOf(const GuideStep& step, const Machine& machine, const MachineLevels& now,
                                      const std::vector<GuideAnswer>& answers, UnitSystem units) {
    Levels levels(now, units);
    switch (step.deed) {
        case GuideDeed::Volts:
        case GuideDeed::Levels:
            if (answers.empty()) return std::nullopt;
            break;
        case GuideDeed::Refill:
            levels.fill(machine);
            break;
        case GuideDeed::EmptyWaste:
            levels.emptyWaste();
            break;
        case GuideDeed::FullPack:
            levels.charge(machine);
            break;
        case GuideDeed::CloseTanks:
            levels.fill(machine);
            levels.emptyWaste();
            break;
        case GuideDeed::None:
        case GuideDeed::ClosePack:
        case GuideDeed::Run:
        case GuideDeed::Service:
        case GuideDeed::HandOver:
            return std::nullopt;
    }
    for (const GuideAnswer& answer : answers)
        levels.take(answer);
    return levels.reading();
}

std::optional<ServiceRecord> serviceOf(const GuideStep& step, const JobSheet& sheet, const SeasonState& season, Instant now) {
    if (!step.duty || step.deed != GuideDeed::Service) return std::nullopt;
    const DutyId& id = sheet.duties[*step.duty].duty.id;
    for (const ServiceItem& item : season.items) {
        const Duty* duty = item.retired ? nullptr : findDuty(item, id);
        if (!duty) continue;
        ServiceRecord record;
        record.at = now;
        record.item = item.id;
        record.duty = id;
        if (!item.machine.isEmpty()) record.meters = metersNow(season, item.machine, now);
        record.minutes = duty->minutes;
        for (const PartNeed& part : duty->parts)
            record.parts.push_back({part.supply, part.amount, {}});
        return record;
    }
    return std::nullopt;
}

std::optional<HandOver> noteOf(const std::vector<GuideAnswer>& answers, QDate day, Instant now) {
    for (const GuideAnswer& answer : answers) {
        if (answer.blank.of != Of::Note || answer.text.trimmed().isEmpty()) continue;
        HandOver note;
        note.date = day;
        note.at = now;
        note.text = answer.text.trimmed().left(limits::noteLength);
        return note;
    }
    return std::nullopt;
}

}  // namespace laneward
