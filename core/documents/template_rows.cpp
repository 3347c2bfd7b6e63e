#include "core/documents/template_rows.h"

#include <QtGlobal>

namespace laneward {

namespace {

using Kind = DutyKind;

Trigger lanes(std::int64_t n) { return {MeterKind::Lanes, n}; }
Trigger days(std::int64_t n) { return {MeterKind::Days, n}; }
Trigger runs(std::int64_t n) { return {MeterKind::Runs, n}; }
Trigger hoursOfWork(std::int64_t n) { return {MeterKind::Minutes, 60 * n}; }
Trigger litres(std::int64_t n) { return {MeterKind::Volume, 1'000'000 * n}; }

// Steps that many duties begin and end with.
constexpr const char* off = QT_TRANSLATE_NOOP("service", "Switch the machine off and isolate it");
constexpr const char* tryOut = QT_TRANSLATE_NOOP("service", "Close all covers and try it out on one lane");

ItemRow cushionBrush() {
    return {"cushion-brush",
            ItemKind::CushionBrush,
            QT_TRANSLATE_NOOP("service", "Cushion brush"),
            {{"inspect",
              Kind::Inspect,
              QT_TRANSLATE_NOOP("service", "Inspect the cushion brush"),
              {days(14)},
              5,
              true,
              {off, QT_TRANSLATE_NOOP("service", "Look for bent, short or missing bristles and for hair on the shaft"),
               QT_TRANSLATE_NOOP("service", "See that it touches the lane alike over its whole width")},
              {"moving-parts"}},
             {"clean",
              Kind::Clean,
              QT_TRANSLATE_NOOP("service", "Clean the cushion brush"),
              {days(28)},
              15,
              true,
              {off, QT_TRANSLATE_NOOP("service", "Comb out fluff and wipe the bristles with a cloth and lane cleaner"),
               QT_TRANSLATE_NOOP("service", "Let it dry before the next run")},
              {"moving-parts", "chemicals"}},
             {"turn",
              Kind::Turn,
              QT_TRANSLATE_NOOP("service", "Turn the cushion brush end for end"),
              {lanes(1'600)},
              20,
              true,
              {off, QT_TRANSLATE_NOOP("service", "Take the brush out, turn it end for end and put it back"), tryOut},
              {"moving-parts"}},
             {"replace",
              Kind::Replace,
              QT_TRANSLATE_NOOP("service", "Replace the cushion brush"),
              {lanes(5'000), days(540)},
              40,
              true,
              {off, QT_TRANSLATE_NOOP("service", "Take the worn brush out and clean its seat"),
               QT_TRANSLATE_NOOP("service", "Put the new one in and set its height by the machine's instructions"), tryOut,
               QT_TRANSLATE_NOOP("service", "Take a tape reading before play")},
              {"moving-parts", "lifting"},
              Skill::Lead}}};
}

ItemRow bufferBrush() {
    return {"buffer-brush",
            ItemKind::BufferBrush,
            QT_TRANSLATE_NOOP("service", "Buffer brush"),
            {{"clean",
              Kind::Clean,
              QT_TRANSLATE_NOOP("service", "Clean the buffer brush"),
              {days(14)},
              10,
              true,
              {off, QT_TRANSLATE_NOOP("service", "Wipe conditioner and fluff off the bristles with a dry cloth")},
              {"moving-parts"}},
             {"replace",
              Kind::Replace,
              QT_TRANSLATE_NOOP("service", "Replace the buffer brush"),
              {lanes(6'000), days(720)},
              40,
              true,
              {off, QT_TRANSLATE_NOOP("service", "Take the worn brush out and put the new one in"), tryOut,
               QT_TRANSLATE_NOOP("service", "Take a tape reading before play")},
              {"moving-parts", "lifting"},
              Skill::Lead}}};
}

ItemRow squeegee() {
    return {"squeegee",
            ItemKind::Squeegee,
            QT_TRANSLATE_NOOP("service", "Squeegee blades"),
            {{"clean",
              Kind::Clean,
              QT_TRANSLATE_NOOP("service", "Clean the squeegee blades"),
              {days(7)},
              8,
              false,
              {off, QT_TRANSLATE_NOOP("service", "Wipe both blades and the channel behind them; look for nicks"),
               QT_TRANSLATE_NOOP("service", "After a run no wet streak may be left on the lane")},
              {"moving-parts", "chemicals"}},
             {"turn",
              Kind::Turn,
              QT_TRANSLATE_NOOP("service", "Turn the squeegee blades"),
              {lanes(600)},
              15,
              true,
              {off, QT_TRANSLATE_NOOP("service", "Turn both blades to an unused edge"), tryOut},
              {"moving-parts"}},
             {"replace",
              Kind::Replace,
              QT_TRANSLATE_NOOP("service", "Replace the squeegee blades"),
              {lanes(1'200), days(180)},
              20,
              true,
              {off, QT_TRANSLATE_NOOP("service", "Take both blades out and clean their holders"),
               QT_TRANSLATE_NOOP("service", "Put the new ones in without a wave and tighten from the middle outwards"), tryOut},
              {"moving-parts"}}}};
}

ItemRow cloth() {
    return {"cloth",
            ItemKind::Cloth,
            QT_TRANSLATE_NOOP("service", "Cloth roll"),
            {{"inspect",
              Kind::Inspect,
              QT_TRANSLATE_NOOP("service", "Inspect the way of the cloth"),
              {days(14)},
              5,
              false,
              {off, QT_TRANSLATE_NOOP("service", "See that the cloth runs straight and that its roller turns freely")},
              {"moving-parts"}},
             {"replace",
              Kind::Replace,
              QT_TRANSLATE_NOOP("service", "Put a new cloth roll in"),
              {lanes(280)},
              8,
              false,
              {off, QT_TRANSLATE_NOOP("service", "Take the used cloth out and put it into the bin for oily waste"),
               QT_TRANSLATE_NOOP("service", "Thread the new roll and see that the cloth touches the lane alike")},
              {"moving-parts", "waste"}}}};
}

ItemRow wasteTank() {
    return {
        "waste-tank",
        ItemKind::WasteTank,
        QT_TRANSLATE_NOOP("service", "Waste tank"),
        {{"empty",
          Kind::Empty,
          QT_TRANSLATE_NOOP("service", "Empty and rinse the waste tank"),
          {days(7)},
          10,
          false,
          {QT_TRANSLATE_NOOP("service", "Empty it into the marked container, whatever its level"),
           QT_TRANSLATE_NOOP("service", "Rinse it with little water; the rinse goes into the container too")},
          {"waste", "chemicals", "lifting"}},
         {"clean",
          Kind::Clean,
          QT_TRANSLATE_NOOP("service", "Clean the waste tank and its float"),
          {days(56)},
          25,
          true,
          {off, QT_TRANSLATE_NOOP("service", "Wash out sludge; see that the float moves freely and its switch stops the machine"),
           QT_TRANSLATE_NOOP("service", "Check lid and hoses for leaks")},
          {"waste", "chemicals", "lifting"}}}};
}

ItemRow filters() {
    return {"filter",
            ItemKind::Filter,
            QT_TRANSLATE_NOOP("service", "Filters"),
            {{"clean",
              Kind::Clean,
              QT_TRANSLATE_NOOP("service", "Clean the filters"),
              {days(14)},
              10,
              false,
              {off, QT_TRANSLATE_NOOP("service", "Take out each filter, rinse or blow it clean and put it back dry")},
              {"chemicals", "waste"}},
             {"replace",
              Kind::Replace,
              QT_TRANSLATE_NOOP("service", "Replace the waste filter"),
              {days(60), litres(350)},
              10,
              false,
              {off, QT_TRANSLATE_NOOP("service", "Put a new filter in; look at the seal"), tryOut},
              {"chemicals", "waste"}}}};
}

ItemRow nozzles() {
    return {"nozzles",
            ItemKind::Nozzles,
            QT_TRANSLATE_NOOP("service", "Nozzles and lines"),
            {{"clean",
              Kind::Clean,
              QT_TRANSLATE_NOOP("service", "Clean the nozzles"),
              {days(7)},
              10,
              false,
              {off, QT_TRANSLATE_NOOP("service", "Wipe each nozzle with a soft cloth; no wire, no pin"),
               QT_TRANSLATE_NOOP("service", "Spray onto paper: all alike, none drips")},
              {"chemicals"}},
             {"flush",
              Kind::Clean,
              QT_TRANSLATE_NOOP("service", "Flush the lines"),
              {litres(400), days(120)},
              30,
              true,
              {off, QT_TRANSLATE_NOOP("service", "Drain the tanks into clean cans"),
               QT_TRANSLATE_NOOP("service", "Flush the lines by the machine's instructions, then fill and bleed them")},
              {"chemicals", "waste"},
              Skill::Lead},
             {"calibrate",
              Kind::Calibrate,
              QT_TRANSLATE_NOOP("service", "Measure the output"),
              {days(91)},
              30,
              false,
              {QT_TRANSLATE_NOOP("service", "Catch the output of a measured time in a graduated cylinder"),
               QT_TRANSLATE_NOOP("service", "Compare it with the recipe; correct by the machine's instructions and note both")},
              {"chemicals"},
              Skill::Lead}}};
}

ItemRow wheels() {
    return {"wheels",
            ItemKind::Wheels,
            QT_TRANSLATE_NOOP("service", "Wheels and belts"),
            {{"clean",
              Kind::Clean,
              QT_TRANSLATE_NOOP("service", "Clean the wheels"),
              {days(14)},
              10,
              false,
              {off, QT_TRANSLATE_NOOP("service", "Wipe conditioner off all wheels; take out hair and threads")},
              {"moving-parts", "lifting"}},
             {"inspect",
              Kind::Inspect,
              QT_TRANSLATE_NOOP("service", "Inspect belts and chains"),
              {days(42), runs(250)},
              15,
              true,
              {off, QT_TRANSLATE_NOOP("service", "Look for cracks, fraying and slack; set the tension by the instructions")},
              {"moving-parts"},
              Skill::Lead},
             {"replace",
              Kind::Replace,
              QT_TRANSLATE_NOOP("service", "Replace the drive belt"),
              {hoursOfWork(300), days(730)},
              45,
              true,
              {off, QT_TRANSLATE_NOOP("service", "Put the new belt on, set its tension and mark the date on the cover"), tryOut},
              {"moving-parts", "lifting"},
              Skill::Lead}}};
}

ItemRow pack() {
    return {"pack",
            ItemKind::Pack,
            QT_TRANSLATE_NOOP("service", "Pack"),
            {{"inspect",
              Kind::Inspect,
              QT_TRANSLATE_NOOP("service", "Inspect the pack"),
              {days(14)},
              10,
              false,
              {QT_TRANSLATE_NOOP("service", "Charger off and unplugged; read the rested volts and write them down"),
               QT_TRANSLATE_NOOP("service", "Look for swelling, leaks and loose or green terminals")},
              {"battery"}},
             {"replace",
              Kind::Replace,
              QT_TRANSLATE_NOOP("service", "Replace the pack"),
              {runs(2'000), days(1'460)},
              30,
              true,
              {QT_TRANSLATE_NOOP("service", "Charger off and unplugged; two people or a lift take the pack out"),
               QT_TRANSLATE_NOOP("service", "Put the new one in, poles as marked; give the old one back for recycling")},
              {"battery", "lifting"},
              Skill::Lead}}};
}

ItemRow charger() {
    return {"charger",
            ItemKind::Charger,
            QT_TRANSLATE_NOOP("service", "Charger"),
            {{"inspect",
              Kind::Inspect,
              QT_TRANSLATE_NOOP("service", "Inspect the charger"),
              {days(91)},
              10,
              false,
              {QT_TRANSLATE_NOOP("service", "Unplug it; look at cable, plug and fan; air can reach it from all sides"),
               QT_TRANSLATE_NOOP("service", "What is damaged goes out of use until a licensed person has seen it")},
              {"battery"}}}};
}

}  // namespace

std::vector<ItemRow> brushRows() { return {cushionBrush(), bufferBrush(), squeegee(), cloth()}; }
std::vector<ItemRow> tankRows() { return {wasteTank(), filters(), nozzles()}; }
std::vector<ItemRow> driveRows() { return {wheels(), pack(), charger()}; }

std::vector<ItemRow> centreRows() {
    return {{"approaches",
             ItemKind::Approach,
             QT_TRANSLATE_NOOP("service", "Approaches"),
             {{"clean",
               Kind::Clean,
               QT_TRANSLATE_NOOP("service", "Clean the approaches"),
               {days(7)},
               40,
               false,
               {QT_TRANSLATE_NOOP("service", "Dust first, away from the lanes"),
                QT_TRANSLATE_NOOP("service",
                                  "Wipe with approach cleaner only, on a cloth: no water, no household soap, no lane cleaner"),
                QT_TRANSLATE_NOOP("service", "Let it dry; try the slide before play")},
               {"slippery", "chemicals"}},
              {"inspect",
               Kind::Inspect,
               QT_TRANSLATE_NOOP("service", "Inspect the approaches"),
               {days(28)},
               20,
               false,
               {QT_TRANSLATE_NOOP("service", "Look for sticky or slippery places, splinters and raised dots"),
                QT_TRANSLATE_NOOP("service", "Close a pair whose approach is not safe")},
               {"slippery"}}}},
            {"gutters",
             ItemKind::Gutter,
             QT_TRANSLATE_NOOP("service", "Gutters"),
             {{"clean",
               Kind::Clean,
               QT_TRANSLATE_NOOP("service", "Clean the gutters"),
               {days(28)},
               60,
               false,
               {QT_TRANSLATE_NOOP("service", "Pinsetters of the pair off and locked out"),
                QT_TRANSLATE_NOOP("service", "Wipe conditioner and dust out of each gutter; keep off the lane")},
               {"slippery", "moving-parts"}},
              {"inspect",
               Kind::Inspect,
               QT_TRANSLATE_NOOP("service", "Inspect gutters and caps"),
               {days(91)},
               30,
               false,
               {QT_TRANSLATE_NOOP("service", "Look for loose joints, cracks and caps that stand up")},
               {"slippery"}}}}};
}

}  // namespace laneward
