#include "tests/support/full_season.h"

using namespace laneward;

namespace support {
namespace {

constexpr Instant at(std::int64_t minutesBeforeNow) { return fullSeasonNow - minutes(minutesBeforeNow); }

Machine firstMachine() {
    Machine m{MachineId{"m1"}, "Long haul"};
    m.attended = false;
    m.bars = {{8}, {PatternId{"short"}}, {Treatment::CleanOnly, Treatment::ConditionOnly}};
    m.times = {{Seconds{91}, Seconds{81}, Seconds{61}},
               Seconds{7},
               Seconds{21},
               Seconds{5},
               Seconds{301},
               Seconds{241},
               Seconds{361},
               Seconds{302},
               Seconds{303},
               Seconds{4000},
               Seconds{601}};
    m.capacity = {{millilitres(1'900), millilitres(1'800)},
                  millilitres(7'000),
                  millilitres(8'000),
                  millilitres(111),
                  millilitres(101),
                  1'090,
                  38,
                  2,
                  120};
    m.fullAt = {25'500};
    m.attachSpareAt = {24'100};
    m.conditioners = {"Amber", "Clear"};
    m.cleaner = "Blue 1:4";
    m.carryLength = Micrometres{914'400};
    m.weight = Grams{93'500};
    return m;
}

Centre centre() {
    Centre c;
    c.facts = {CentreId{"full"}, "Quillmarsh Bowl", "Europe/Berlin", 8, {}, 0};
    c.facts.settings = {false, minutes(9), minutes(14), minutes(11), hours(10), QTime(4, 30), UnitSystem::UsCustomary,
                        true,  "GBP"};
    c.facts.readingLimits = {3'000, 4'500, 1'800, 9'000};
    c.machines = {firstMachine(), Machine{MachineId{"m2"}, "Short haul"}};
    c.people = {{PersonId{"ada"}, "Ada", Role::Manager, true, 0}, {PersonId{"ben"}, "Ben", Role::Lead, false, 0}};
    c.shifts = {{ShiftId{"late"},
                 "Late",
                 0x1f,
                 QTime(15, 15),
                 QTime(0, 45),
                 2,
                 minutes(30),
                 minutes(45),
                 {QDate(2026, 12, 24)},
                 {QDate(2026, 11, 15)},
                 0}};
    c.outages = {{OutageId{"o1"}, {3, 4}, std::nullopt, at(600), at(-600), "Pinsetter", 0},
                 {OutageId{"o2"}, {}, MachineId{"m2"}, at(300), std::nullopt, "Pump", 0}};
    return c;
}

std::vector<Pattern> patterns() {
    Pattern house{PatternId{"house"}, "House", {}, feet(38), false, "For open play", false, 0};
    house.strokes = {{Direction::Out, 2, 38, 3, Microlitres{50}, feet(0), feet(20), 0},
                     {Direction::Back, 10, 30, 2, Microlitres{45}, feet(4), feet(34), 1}};
    house.edition = 2;
    Pattern shortOne{PatternId{"short"}, "Short", {house.strokes.front()}, feet(32), true, "", true, 1};
    return {house, shortOne};
}

std::vector<PatternVersion> patternVersions() {
    const std::vector<Pattern> now = patterns();
    Pattern first = now[0];
    first.edition = 1;
    first.strokes.pop_back();
    Pattern shortOne = now[1];
    shortOne.retired = false;
    return {{first, at(90 * 24 * 60), PersonId{"ada"}},
            {now[0], at(70 * 24 * 60), PersonId{"ben"}},
            {shortOne, at(80 * 24 * 60), {}}};
}

TapeReading tape() {
    TapeReading r{operation(40), at(650), PersonId{"ada"}, MachineId{"m1"}, PatternId{"house"}, 2, 7, 3, feet(22), {},
                  "Second tape", {}};
    for (size_t board = 0; board < r.milliUnits.size(); ++board)
        if (board != 4) r.milliUnits[board] = std::int64_t(1'000 * board);
    return r;
}

std::vector<Inspection> inspections() {
    Inspection first{operation(45), at(640), PersonId{"ben"}, 7, {}, "After the relevelling", {}};
    first.values = {{GeometryFeature::Tilt, feet(20), Micrometres{-420}},
                    {GeometryFeature::Level, feet(30), Micrometres{80}},
                    {GeometryFeature::Crown, feet(40), Micrometres{120}},
                    {GeometryFeature::Depression, feet(50), Micrometres{210}}};
    Inspection withdrawn = first;
    withdrawn.id = operation(46);
    withdrawn.at = at(630);
    withdrawn.values.clear();
    withdrawn.corrects = first.id;
    return {first, withdrawn};
}

std::vector<Supply> supplies() {
    Supply amber{{"amber"}, "Amber", SupplyKind::Conditioner, 0, UseBasis::Machine, Amount{0}, Amount{5'000'000}, {}, false,
                 "",        0};
    Supply blue{{"blue"}, "Blue 1:4", SupplyKind::Cleaner, 4, UseBasis::Machine, Amount{0}, Amount{10'000'000}, {}, false, "", 0};
    blue.rules = {Amount{80'000'000}, 540, 950, 150};
    blue.note = "Keep it above 5 degrees";
    Supply cloth{{"cloth"}, "Cloth", SupplyKind::Cloth, 0, UseBasis::PerLaneCleaned, Amount{150}, Amount{200'000}, {}, true,
                 "",        0};
    return {amber, blue, cloth};
}

std::vector<Supplier> suppliers() {
    const Supplier stores{{"stores"},
                          "Lane Stores",
                          "1 Marsh Road\nQuillmarsh",
                          {1'250, "GBP"},
                          Money{40'000, "GBP"},
                          {10'000, "GBP"},
                          0x15,
                          5,
                          true,
                          "Ask for Nell",
                          0};
    return {{{"mill"}, "The Mill"}, stores};
}

std::vector<Offer> offers() {
    return {{{"o1"}, {"stores"}, {"amber"}, "A-5", Amount{5'000'000}, {{1, {9'900, "GBP"}}, {4, {9'400, "GBP"}}}, false, 0},
            {{"o2"}, {"mill"}, {"cloth"}, "C-200", Amount{200'000}, {{1, {2'500, "GBP"}}}, true, 0}};
}

std::vector<Order> orders() {
    Order placed{{"ord1"},           {"stores"}, "2026-001",     OrderState::Placed, {"ada"},
                 QDate(2026, 11, 2), {},         {1'250, "GBP"}, "By noon",          0};
    placed.lines = {{{"amber"}, {"o1"}, "A-5", Amount{5'000'000}, 4, {9'400, "GBP"}}};
    return {placed, {{"ord2"}, {"mill"}, "2026-002"}};
}

Movement movement(int n, MovementKind kind, Instant t, std::vector<Entry> entries) {
    Movement m;
    m.id = operation(n);
    m.kind = kind;
    m.at = t;
    m.person = PersonId{"ada"};
    m.entries = std::move(entries);
    m.recordedAt = t + Seconds{90};
    return m;
}

Entry entry(const char* supply, Place::Kind place, std::int64_t amount) {
    return {{{supply}, {place, {}, 0}, {}, {}}, Amount{amount}};
}

std::vector<Movement> movements() {
    using P = Place::Kind;
    Movement receipt = movement(80, MovementKind::Received, at(3'000),
                                {entry("amber", P::Shelf, 10'000'000), entry("amber", P::Supplier, -10'000'000)});
    receipt.entries[0].key.container = "A1";
    receipt.entries[0].key.lot = "L7";
    receipt.source = MovementSource::Order;
    receipt.sourceId = "ord1";
    receipt.reason = "One carton dented";
    Movement water =
        movement(81, MovementKind::Counted, at(2'900), {entry("water", P::Opening, -800), entry("water", P::Tank, 800)});
    water.entries[1].key.place = {P::Tank, MachineId{"m1"}, 2};
    Movement opening =
        movement(82, MovementKind::Opened, at(2'800), {entry("amber", P::Shelf, -5'000'000), entry("amber", P::Open, 5'000'000)});
    for (Entry& e : opening.entries) {
        e.key.container = "A1";
        e.key.lot = "L7";
    }
    Movement back = opening;
    back.id = operation(83);
    back.recordedAt = at(2'500);
    back.corrects = opening.id;
    for (Entry& e : back.entries)
        e.amount = -e.amount;
    Movement used = movement(84, MovementKind::Used, at(490), {entry("amber", P::Tank, -8'000), entry("amber", P::Lane, 8'000)});
    used.entries[0].key.place.machine = MachineId{"m1"};
    used.source = MovementSource::Run;
    used.sourceId = operation(3).value;
    used.flagged = true;
    return {receipt, water, opening, back, used};
}

std::vector<StockCount> counts() {
    StockCount count{operation(88), at(480), PersonId{"ben"}, {{{{"amber"}, {}, "A1", "L7"}, Amount{9'500'000}}},
                     "By weight",   {}};
    count.lines.push_back({{{"cloth"}, {Place::Kind::Open, {}, 0}, {}, {}}, Amount{12'000}});
    StockCount withdrawn = count;
    withdrawn.id = operation(89);
    withdrawn.at = at(470);
    withdrawn.lines.clear();
    withdrawn.corrects = count.id;
    return {count, withdrawn};
}

std::vector<ServiceItem> serviceItems() {
    Duty turn{{"brush-turn"}, DutyKind::Turn, "Turn the brush"};
    turn.triggers = {{MeterKind::Lanes, 1'500}, {MeterKind::Days, 90}};
    turn.dates = {QDate(2027, 8, 1)};
    turn.steps = {"Unplug the machine", "Turn the brush end for end"};
    turn.minutes = 25;
    turn.opensUp = true;
    turn.parts = {{{"cloth"}, Amount{2'000}}};
    turn.skill = Skill::Lead;
    turn.cautions = {"caution.moving-parts"};
    turn.planned = {12'00, "GBP"};
    turn.failed = {55'50, "GBP"};
    ServiceItem brush{{"brush"}, {"m1"}, ItemKind::CushionBrush, "Cushion brush", {turn}, "Soft", false, 0};
    Duty wipe{{"approach-wipe"}, DutyKind::Clean, "Wipe the approaches"};
    wipe.triggers = {{MeterKind::Days, 1}};
    ServiceItem pack{{"pack"}, {"m1"}, ItemKind::Pack, "Pack 1", {}, {}, false, 0};
    pack.pack = PackLimits{{Chemistry::Gel, Millivolts{24'000}},
                           {Millivolts{26'800}, VoltageState::JustCharged},
                           {Millivolts{25'400}, VoltageState::Rested},
                           {Millivolts{20'000}, VoltageState::UnderLoad}};
    return {{{"approach"}, {}, ItemKind::Approach, "Approaches", {wipe}, {}, true, 0}, brush, pack};
}

std::vector<PackReading> packReadings() {
    PackReading put{operation(96), at(440), PersonId{"ben"}, {"pack"}, PackDeed::OnCharge, Millivolts{23'900}};
    put.state = VoltageState::UnderLoad;
    put.spent = true;
    put.note = "Slow on the last pair";
    PackReading gone = put;
    gone.id = operation(97);
    gone.at = at(439);
    gone.volts = {};
    gone.withdrawn = true;
    gone.corrects = put.id;
    return {put, gone};
}

std::vector<ServiceRecord> serviceRecords() {
    ServiceRecord turned{operation(90), at(460),        PersonId{"ben"},
                         {"brush"},     {"brush-turn"}, {1'203, 88, Seconds{7'300}, millilitres(41)}};
    turned.result = ServiceResult::Failed;
    turned.parts = {{{"cloth"}, Amount{1'500}, "L9"}};
    turned.cost = {7'25, "GBP"};
    turned.minutes = 31;
    turned.finding = "Worn on the left";
    turned.note = "Half of it was still good";
    ServiceRecord withdrawn = turned;
    withdrawn.id = operation(91);
    withdrawn.at = at(455);
    withdrawn.result = ServiceResult::Withdrawn;
    withdrawn.corrects = turned.id;
    return {turned, withdrawn};
}

std::vector<MeterReading> counters() {
    MeterReading shown{operation(92), at(450), PersonId{"ben"}, {"m1"}, MeterKind::Runs, 410, true, false, "New counter", {}};
    MeterReading right = shown;
    right.id = operation(93);
    right.at = at(449);
    right.shown = 401;
    right.withdrawn = true;
    right.corrects = shown.id;
    return {shown, right};
}

std::vector<Attachment> attachments() {
    Attachment photo = attachmentOf("brush left.jpg", QByteArray("\xff\xd8\xff\xe0 not much of a photograph"));
    photo.id = operation(94);
    photo.at = at(448);
    photo.person = PersonId{"ben"};
    photo.record = operation(90);
    Attachment gone = photo;
    gone.id = operation(95);
    gone.at = at(447);
    gone.withdrawn = true;
    gone.corrects = photo.id;
    gone.content.clear();
    return {photo, gone};
}

Series league() {
    Series s;
    s.id = SeriesId{"league"};
    s.uid = "league@quillmarsh.example";
    s.title = "Thursday Fours";
    s.kind = EventKind::League;
    s.zone = "Europe/Berlin";
    s.start = {QDate(2026, 9, 3), QTime(18, 30)};
    s.duration = minutes(170);
    s.rule = "FREQ=WEEKLY;BYDAY=TH;COUNT=30";
    s.extraDates = {{QDate(2026, 11, 13), QTime(18, 30)}};
    s.excludedDates = {{QDate(2026, 12, 24), QTime(18, 30)}};
    Override moved{s.start, false, LocalTime{QDate(2026, 9, 4), QTime(19, 0)}, minutes(150), "Fours, moved", LaneSet{1, 2}};
    Override off{{QDate(2026, 9, 10), QTime(18, 30)}, true, {}, {}, {}, {}};
    s.overrides = {moved, off};
    s.lanes = LaneSet::range(1, 6);
    s.demands = {{LaneSet{1, 2, 3}, DemandKind::Fresh, PatternId{"house"}, Treatment::CleanAndCondition, hours(5), hours(2)},
                 {LaneSet{4}, DemandKind::Recent, std::nullopt, Treatment::ConditionOnly, hours(6), hours(1)}};
    s.settle = minutes(16);
    s.clearing = minutes(12);
    s.firstPairTwice = true;
    s.yieldsToClosure = false;
    s.players = 24;
    s.note = "Bring the trophy";
    return s;
}

std::vector<Series> allSeries() {
    Series closure;
    closure.id = SeriesId{"closure"};
    closure.uid = "closure";
    closure.title = "Floor work";
    closure.kind = EventKind::Closure;
    closure.start = {QDate(2026, 11, 20), QTime(6, 0)};
    closure.noStaff = true;
    Series party = closure;
    party.id = SeriesId{"party"};
    party.uid = "party";
    party.title = "Party";
    party.kind = EventKind::Party;
    party.noStaff = false;
    party.cancelled = true;
    party.lanes = {7, 8};
    return {closure, league(), party};
}

Job job() {
    Job j;
    j.id = JobId{"j1"};
    j.state = JobState::Confirmed;
    j.date = QDate(2026, 11, 12);
    j.machine = MachineId{"m1"};
    j.outing = 1;
    j.time = {at(-10), at(-40)};
    j.treatment = Treatment::CleanAndCondition;
    j.pattern = PatternId{"house"};
    j.lanes = {{1, {at(-15), at(-17)}}, {2, {at(-17), at(-19)}}};
    j.steps = {{StepKind::LeaveBay, {at(-10), at(-15)}, {}}, {StepKind::Treat, {at(-15), at(-40)}, {1, 2}}};
    j.neededBy = {{SeriesId{"league"}, {QDate(2026, 11, 12), QTime(18, 30)}, "Thursday Fours", at(-90), {1, 2}}};
    j.reasons = {
        {Severity::Note,
         "job.after-play",
         "Thursday Fours",
         {std::int64_t{3}, minutes(12), Microlitres{5}, Micrometres{6}, Millivolts{7}, at(0), QDate(2026, 1, 2), QString("x")}}};
    j.window = {at(-5), at(-60)};
    j.slack = minutes(-3);
    j.late = minutes(2);
    j.use = {{millilitres(10), millilitres(3)}, millilitres(220), millilitres(200), 2};
    j.planVersion = 4;
    j.person = PersonId{"ada"};
    return j;
}

RunLog run(int n, Instant begin, std::vector<int> lanes, Treatment treatment, std::optional<PatternId> pattern) {
    RunLog r;
    r.id = operation(n);
    r.machine = MachineId{"m1"};
    r.person = PersonId{"ben"};
    r.treatment = treatment;
    r.pattern = std::move(pattern);
    Instant t = begin;
    for (const int lane : lanes) {
        r.lanes.push_back({lane, {t, t + Seconds{90}}});
        t = t + Seconds{110};
    }
    r.time = {begin, t};
    r.result = RunResult::Unplanned;
    r.use = {{millilitres(8), millilitres(1)}, millilitres(110), millilitres(100), int(lanes.size())};
    r.recordedAt = t + Seconds{30};
    return r;
}

std::vector<RunLog> runs() {
    const PatternId house{"house"};
    RunLog old = run(1, at(60 * 24 * 60), {1, 2, 3}, Treatment::CleanAndCondition, house);
    RunLog oiled = run(2, at(50 * 24 * 60), {2}, Treatment::ConditionOnly, PatternId{"short"});
    RunLog recent = run(3, at(500), {1, 2}, Treatment::CleanAndCondition, house);
    recent.job = JobId{"j0"};
    recent.planVersion = 2;
    recent.patternVersion = 1;
    recent.result = RunResult::CutShort;
    recent.note = "Stopped: ball return";
    RunLog mistaken = run(4, at(400), {5}, Treatment::CleanOnly, std::nullopt);
    RunLog correction = mistaken;
    correction.id = operation(5);
    correction.corrects = mistaken.id;
    correction.result = RunResult::Void;
    correction.recordedAt = at(350);
    return {old, oiled, recent, mistaken, correction};
}

}  // namespace

OperationId operation(int n) { return {QString("00000000-0000-4000-8000-%1").arg(n, 12, 10, QChar('0'))}; }

SeasonState fullSeason() {
    SeasonState season;
    season.centre = centre();
    season.series = allSeries();
    season.patterns = patterns();
    season.supplies = supplies();
    season.suppliers = suppliers();
    season.offers = offers();
    season.orders = orders();
    season.items = serviceItems();
    return season;
}

HistorySlice fullHistory() {
    const PersonId ada{"ada"};
    HistorySlice h;
    h.runs = runs();
    h.incidents = {{operation(10), IncidentKind::NearMiss, at(200), 3, MachineId{"m1"}, ada, "Cable across the approach", {}},
                   {operation(11), IncidentKind::Spill, at(100), 0, {}, ada, "Cleaner by the bay", operation(10)},
                   {operation(12), IncidentKind::Spill, at(90), 0, {}, ada, "Wiped up; cap renewed", {}, operation(11)}};
    h.handOvers = {{operation(20), QDate(2026, 11, 11), at(900), ada, "Lane 4 squeaks\nCall the fitter", {}},
                   {operation(21), QDate(2026, 11, 11), at(890), ada, "", operation(20)}};
    const MachineLevels levels{MachineId{"m1"},    at(700),          {millilitres(1'000), millilitres(900)},
                               millilitres(5'000), millilitres(400), 12,
                               Millivolts{24'900}};
    MachineLevels corrected = levels;
    corrected.volts.reset();
    const Poured poured{{millilitres(1'000), millilitres(300)}, millilitres(2'500), false};
    h.readings = {{operation(30), ada, levels, {}, {}},
                  {operation(31), ada, corrected, poured, operation(30), millilitres(3'200)}};
    TapeReading again = tape();
    again.id = operation(41);
    again.at = at(645);
    again.milliUnits[4] = 2'500;
    again.corrects = operation(40);
    h.tapes = {tape(), again};
    h.inspections = inspections();
    h.patternVersions = patternVersions();
    h.jobs = {job()};
    h.movements = movements();
    h.counts = counts();
    h.services = serviceRecords();
    h.counters = counters();
    h.packReadings = packReadings();
    h.attachments = attachments();
    const auto litres = [](std::int64_t n) { return Amount{n * 1'000'000}; };
    const KeptUse week{7, {litres(-1), litres(1), litres(2), litres(3), litres(5)}};
    const KeptUse fortnight{14, {litres(0), litres(3), litres(4), litres(5), litres(9)}};
    h.forecasts = {{QDate(2026, 11, 2), {{SupplyId{"amber"}, {week, fortnight}}, {SupplyId{"cloth"}, {week}}}},
                   {QDate(2026, 11, 12), {{SupplyId{"amber"}, {fortnight}}}}};
    return h;
}

SeasonState withoutVersions(SeasonState season) {
    const auto clear = [](auto& rows) {
        for (auto& row : rows)
            row.version = 0;
    };
    season.centre.facts.version = 0;
    clear(season.centre.machines);
    clear(season.centre.people);
    clear(season.centre.shifts);
    clear(season.centre.outages);
    clear(season.series);
    clear(season.patterns);
    clear(season.supplies);
    clear(season.suppliers);
    clear(season.offers);
    clear(season.orders);
    clear(season.items);
    clear(season.confirmed);
    return season;
}

HistorySlice withoutVersions(HistorySlice history) {
    for (Job& job : history.jobs)
        job.version = 0;
    return history;
}

}  // namespace support
