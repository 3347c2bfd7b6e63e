<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US">
<context>
    <name>Consequences</name>
    <message numerus="yes">
        <source>%n demand(s) that were missed would be met.</source>
        <translation>
            <numerusform>%n demand that was missed would be met.</numerusform>
            <numerusform>%n demands that were missed would be met.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more lane(s) to treat.</source>
        <translation>
            <numerusform>%n more lane to treat.</numerusform>
            <numerusform>%n more lanes to treat.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) fewer to treat.</source>
        <translation>
            <numerusform>%n lane fewer to treat.</numerusform>
            <numerusform>%n lanes fewer to treat.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) move to another time.</source>
        <translation>
            <numerusform>%n job moves to another time.</numerusform>
            <numerusform>%n jobs move to another time.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DifferencePanel</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more of the stock</source>
        <translation>
            <numerusform>and 1 more of the stock</numerusform>
            <numerusform>and %n more of the stock</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Headline</name>
    <message numerus="yes">
        <source>all %n job(s) are done</source>
        <translation>
            <numerusform>the %n job is done</numerusform>
            <numerusform>all %n jobs are done</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) left</source>
        <translation>
            <numerusform>%n job left</numerusform>
            <numerusform>%n jobs left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) will not get what they ask</source>
        <translation>
            <numerusform>%n event will not get what it asks</numerusform>
            <numerusform>%n events will not get what they ask</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) will be late</source>
        <translation>
            <numerusform>%n event will be late</numerusform>
            <numerusform>%n events will be late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n incident(s) or reading(s) to be followed up</source>
        <translation>
            <numerusform>%n incident or reading to be followed up</numerusform>
            <numerusform>%n incidents or readings to be followed up</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>HouseData</name>
    <message numerus="yes">
        <source>%n d</source>
        <comment>age in days, short</comment>
        <translation>
            <numerusform>%n d</numerusform>
            <numerusform>%n d</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n h</source>
        <comment>age in hours, short</comment>
        <translation>
            <numerusform>%n h</numerusform>
            <numerusform>%n h</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Readiness</name>
    <message numerus="yes">
        <source>%1; %n refill(s) planned</source>
        <translation>
            <numerusform>%1; %n refill planned</numerusform>
            <numerusform>%1; %n refills planned</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; emptied %n time(s)</source>
        <translation>
            <numerusform>%1; emptied %n time</numerusform>
            <numerusform>%1; emptied %n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) left</source>
        <translation>
            <numerusform>%n lane left</numerusform>
            <numerusform>%n lanes left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; %n swap(s) planned</source>
        <translation>
            <numerusform>%1; %n swap planned</numerusform>
            <numerusform>%1; %n swaps planned</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WhyText</name>
    <message numerus="yes">
        <source>%n lane(s)</source>
        <translation>
            <numerusform>%n lane</numerusform>
            <numerusform>%n lanes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) left</source>
        <translation>
            <numerusform>%n lane left</numerusform>
            <numerusform>%n lanes left</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::BoardModel</name>
    <message numerus="yes">
        <source>%n more value(s) were pasted than there are boards</source>
        <translation>
            <numerusform>%n more value was pasted than there are boards</numerusform>
            <numerusform>%n more values were pasted than there are boards</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::CalendarPage</name>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n event</numerusform>
            <numerusform>%n events</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>they ask for %n job(s)</source>
        <translation>
            <numerusform>they ask for %n job</numerusform>
            <numerusform>they ask for %n jobs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) in conflict</source>
        <translation>
            <numerusform>%n event in conflict</numerusform>
            <numerusform>%n events in conflict</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n demand(s) that no job can meet</source>
        <translation>
            <numerusform>%n demand that no job can meet</numerusform>
            <numerusform>%n demands that no job can meet</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::CarryPanel</name>
    <message numerus="yes">
        <source>from its newest %n reading(s)</source>
        <translation>
            <numerusform>from its newest %n reading</numerusform>
            <numerusform>from its newest %n readings</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::CentreRows</name>
    <message numerus="yes">
        <source>%1 has %n lane(s), by the wall time of %2.</source>
        <translation>
            <numerusform>%1 has %n lane, by the wall time of %2.</numerusform>
            <numerusform>%1 has %n lanes, by the wall time of %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s)</source>
        <translation>
            <numerusform>%n lane</numerusform>
            <numerusform>%n lanes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane machine(s), all in service.</source>
        <translation>
            <numerusform>%n lane machine, in service.</numerusform>
            <numerusform>%n lane machines, all in service.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane machine(s) in service, of %1.</source>
        <translation>
            <numerusform>%n lane machine in service, of %1.</numerusform>
            <numerusform>%n lane machines in service, of %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n person(s) can sign records.</source>
        <translation>
            <numerusform>%n person can sign records.</numerusform>
            <numerusform>%n people can sign records.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) off</source>
        <translation>
            <numerusform>%n day off</numerusform>
            <numerusform>%n days off</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) besides</source>
        <translation>
            <numerusform>%n day besides</numerusform>
            <numerusform>%n days besides</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 with %n person(s)</source>
        <translation>
            <numerusform>%1 with %n person</numerusform>
            <numerusform>%1 with %n people</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::CopySeasonPanel</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Copy %n series</source>
        <translation>
            <numerusform>Copy %n series</numerusform>
            <numerusform>Copy %n series</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Copy %n series to a new season</source>
        <translation>
            <numerusform>Copy %n series to a new season</numerusform>
            <numerusform>Copy %n series to a new season</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::CountPanel</name>
    <message numerus="yes">
        <source>%n place(s) counted.</source>
        <translation>
            <numerusform>%n place counted.</numerusform>
            <numerusform>%n places counted.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) cannot be read.</source>
        <translation>
            <numerusform>%n row cannot be read.</numerusform>
            <numerusform>%n rows cannot be read.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) far from the books: mend or tick.</source>
        <translation>
            <numerusform>%n row far from the books: mend or tick.</numerusform>
            <numerusform>%n rows far from the books: mend or tick.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Count %n place(s)</source>
        <translation>
            <numerusform>Count %n place</numerusform>
            <numerusform>Count %n places</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::DriftPanel</name>
    <message numerus="yes">
        <source>No fill up to the line is on record yet. Whenever the tank is filled, write down how much was poured; drift is judged from %n fill(s) on.</source>
        <translation>
            <numerusform>No fill up to the line is on record yet. Whenever the tank is filled, write down how much was poured; drift is judged from %n fill on.</numerusform>
            <numerusform>No fill up to the line is on record yet. Whenever the tank is filled, write down how much was poured; drift is judged from %n fills on.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) that led to the signal</source>
        <translation>
            <numerusform>%n run that led to the signal</numerusform>
            <numerusform>%n runs that led to the signal</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) since the fill before</source>
        <translation>
            <numerusform>%n run since the fill before</numerusform>
            <numerusform>%n runs since the fill before</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>the first %n fill(s)</source>
        <translation>
            <numerusform>the first %n fill</numerusform>
            <numerusform>the first %n fills</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::DriftPlots</name>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n run</numerusform>
            <numerusform>%n runs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::GeometryPanel</name>
    <message numerus="yes">
        <source>All %n inspected lane(s) are within the tolerance</source>
        <translation>
            <numerusform>All %n inspected lane is within the tolerance</numerusform>
            <numerusform>All %n inspected lanes are within the tolerance</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) beyond the tolerance, worst: %1</source>
        <translation>
            <numerusform>%n lane beyond the tolerance, worst: %1</numerusform>
            <numerusform>%n lanes beyond the tolerance, worst: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::GuideView</name>
    <message numerus="yes">
        <source>%n step(s) left out: see the list.</source>
        <translation>
            <numerusform>%n step left out: see the list.</numerusform>
            <numerusform>%n steps left out: see the list.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::ImportPanel</name>
    <message numerus="yes">
        <source>%n series of events can come in.</source>
        <translation>
            <numerusform>%n series of events can come in.</numerusform>
            <numerusform>%n series of events can come in.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more note(s)</source>
        <translation>
            <numerusform>and %n more note</numerusform>
            <numerusform>and %n more notes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Import %n series of events</source>
        <translation>
            <numerusform>Import %n series of events</numerusform>
            <numerusform>Import %n series of events</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::JobDetails</name>
    <message numerus="yes">
        <source>%n lane(s) of the pack&apos;s charge</source>
        <translation>
            <numerusform>%n lane of the pack&apos;s charge</numerusform>
            <numerusform>%n lanes of the pack&apos;s charge</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::LanesPage</name>
    <message numerus="yes">
        <source>%n job(s) to run</source>
        <translation>
            <numerusform>%n job to run</numerusform>
            <numerusform>%n jobs to run</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n demand(s) that no job can meet</source>
        <translation>
            <numerusform>%n demand that no job can meet</numerusform>
            <numerusform>%n demands that no job can meet</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::LedgerPanel</name>
    <message numerus="yes">
        <source>%n movement(s) since %1.</source>
        <translation>
            <numerusform>%n movement since %1.</numerusform>
            <numerusform>%n movements since %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::MonthView</name>
    <message numerus="yes">
        <source>+%n more</source>
        <translation>
            <numerusform>+%n more</numerusform>
            <numerusform>+%n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n more event(s)</source>
        <translation>
            <numerusform>%1: %n more event</numerusform>
            <numerusform>%1: %n more events</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n event</numerusform>
            <numerusform>%n events</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n job(s)</source>
        <translation>
            <numerusform>%n job</numerusform>
            <numerusform>%n jobs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::PatternEditor</name>
    <message numerus="yes">
        <source> And %n more.</source>
        <translation>
            <numerusform> And %n more.</numerusform>
            <numerusform> And %n more.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::PricePanel</name>
    <message numerus="yes">
        <source>from %n packs %1</source>
        <translation>
            <numerusform>from %n pack %1</numerusform>
            <numerusform>from %n packs %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::ReadingsImport</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Nothing can come in yet; %n cell(s) do not fit:</source>
        <translation>
            <numerusform>Nothing can come in yet; %n cell does not fit:</numerusform>
            <numerusform>Nothing can come in yet; %n cells do not fit:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) can come in</source>
        <translation>
            <numerusform>%n reading can come in</numerusform>
            <numerusform>%n readings can come in</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; %n are here already and stay as they are.</source>
        <translation>
            <numerusform>%1; %n is here already and stays as it is.</numerusform>
            <numerusform>%1; %n are here already and stay as they are.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Import %n tape reading(s)</source>
        <translation>
            <numerusform>Import %n tape reading</numerusform>
            <numerusform>Import %n tape readings</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::ReadingsPanel</name>
    <message numerus="yes">
        <source>%n tape reading(s)</source>
        <translation>
            <numerusform>%n tape reading</numerusform>
            <numerusform>%n tape readings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; %n check(s) not kept</source>
        <translation>
            <numerusform>%1; %n check not kept</numerusform>
            <numerusform>%1; %n checks not kept</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::RecurrenceEdit</name>
    <message numerus="yes">
        <source>month(s)</source>
        <translation>
            <numerusform>month</numerusform>
            <numerusform>months</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>day(s)</source>
        <translation>
            <numerusform>day</numerusform>
            <numerusform>days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>week(s)</source>
        <translation>
            <numerusform>week</numerusform>
            <numerusform>weeks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>year(s)</source>
        <translation>
            <numerusform>year</numerusform>
            <numerusform>years</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::SeasonPanel</name>
    <message numerus="yes">
        <source>No lane needs a treatment in the %n day(s) ahead</source>
        <translation>
            <numerusform>No lane needs a treatment in the day ahead</numerusform>
            <numerusform>No lane needs a treatment in the %n days ahead</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tight day(s) in the season; the hardest is %1</source>
        <translation>
            <numerusform>%n tight day in the season: %1</numerusform>
            <numerusform>%n tight days in the season; the hardest is %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, over the %n day(s) ahead</source>
        <translation>
            <numerusform>%1, over the day ahead</numerusform>
            <numerusform>%1, over the %n days ahead</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::SeasonView</name>
    <message numerus="yes">
        <source>%n event(s) late</source>
        <translation>
            <numerusform>%n event late</numerusform>
            <numerusform>%n events late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) to treat</source>
        <translation>
            <numerusform>%n lane to treat</numerusform>
            <numerusform>%n lanes to treat</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n outing(s)</source>
        <translation>
            <numerusform>%n outing</numerusform>
            <numerusform>%n outings</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>! %n unmet</source>
        <translation>
            <numerusform>! %n unmet</numerusform>
            <numerusform>! %n unmet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>! %n late</source>
        <translation>
            <numerusform>! %n late</numerusform>
            <numerusform>! %n late</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::StockDetail</name>
    <message numerus="yes">
        <source>%n fill(s)</source>
        <translation>
            <numerusform>%n fill</numerusform>
            <numerusform>%n fills</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of the usual use (90 %: %2 to %3), from %n count(s).</source>
        <translation>
            <numerusform>%1 of the usual use (90 %: %2 to %3), from %n count.</numerusform>
            <numerusform>%1 of the usual use (90 %: %2 to %3), from %n counts.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::SuppliesImport</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Count %n place(s) from %1</source>
        <translation>
            <numerusform>Count %n place from %1</numerusform>
            <numerusform>Count %n places from %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n place(s) are counted.</source>
        <translation>
            <numerusform>%n place is counted.</numerusform>
            <numerusform>%n places are counted.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n price(s) are new or another.</source>
        <translation>
            <numerusform>%n price is new or another.</numerusform>
            <numerusform>%n prices are new or another.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are no longer in the list and are retired.</source>
        <translation>
            <numerusform>%n is no longer in the list and is retired.</numerusform>
            <numerusform>%n are no longer in the list and are retired.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Nothing can come in yet; %n cell(s) do not fit:</source>
        <translation>
            <numerusform>Nothing can come in yet; %n cell does not fit:</numerusform>
            <numerusform>Nothing can come in yet; %n cells do not fit:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) are far from what is known; say if it is so:</source>
        <translation>
            <numerusform>%n row is far from what is known; say if it is so:</numerusform>
            <numerusform>%n rows are far from what is known; say if it is so:</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::WearPanel</name>
    <message numerus="yes">
        <source>%n more failure(s)</source>
        <translation>
            <numerusform>%n more failure</numerusform>
            <numerusform>%n more failures</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n part(s)</source>
        <translation>
            <numerusform>%n part</numerusform>
            <numerusform>%n parts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n failure(s)</source>
        <translation>
            <numerusform>%n failure</numerusform>
            <numerusform>%n failures</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n left out: two replacements at one reading</source>
        <translation>
            <numerusform>%n left out: two replacements at one reading</numerusform>
            <numerusform>%n left out: two replacements at one reading</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>wording</name>
    <message numerus="yes">
        <source>a further machine (%n in all)</source>
        <translation>
            <numerusform>a further machine (%n in all)</numerusform>
            <numerusform>a further machine (%n in all)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>a further person in the shift &apos;%1&apos; (%n in all)</source>
        <translation>
            <numerusform>a further person in the shift &apos;%1&apos; (%n in all)</numerusform>
            <numerusform>a further person in the shift &apos;%1&apos; (%n in all)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>give %1 fewer lanes: %n could be made ready</source>
        <translation>
            <numerusform>give %1 fewer lanes: %n could be made ready</numerusform>
            <numerusform>give %1 fewer lanes: %n could be made ready</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n times in all</source>
        <translation>
            <numerusform>, %n time in all</numerusform>
            <numerusform>, %n times in all</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more demand(s) unmet</source>
        <translation>
            <numerusform>%n more demand unmet</numerusform>
            <numerusform>%n more demands unmet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fewer demand(s) unmet</source>
        <translation>
            <numerusform>%n fewer demand unmet</numerusform>
            <numerusform>%n fewer demands unmet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) added</source>
        <translation>
            <numerusform>%n job added</numerusform>
            <numerusform>%n jobs added</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) removed</source>
        <translation>
            <numerusform>%n job removed</numerusform>
            <numerusform>%n jobs removed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) moved</source>
        <translation>
            <numerusform>%n job moved</numerusform>
            <numerusform>%n jobs moved</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) would not be ready as asked</source>
        <translation>
            <numerusform>%n lane would not be ready as asked</numerusform>
            <numerusform>%n lanes would not be ready as asked</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) would be late, by up to %3</source>
        <translation>
            <numerusform>%n lane would be late, by %3</numerusform>
            <numerusform>%n lanes would be late, by up to %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) would be ready inside the reserve, by up to %3</source>
        <translation>
            <numerusform>%n lane would be ready inside the reserve, by %3</numerusform>
            <numerusform>%n lanes would be ready inside the reserve, by up to %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) would be up to %3 older when play begins</source>
        <translation>
            <numerusform>%n lane would be %3 older when play begins</numerusform>
            <numerusform>%n lanes would be up to %3 older when play begins</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) would be ready with the reserve kept</source>
        <translation>
            <numerusform>%n lane would be ready with the reserve kept</numerusform>
            <numerusform>%n lanes would be ready with the reserve kept</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) would be up to %3 fresher when play begins</source>
        <translation>
            <numerusform>%n lane would be %3 fresher when play begins</numerusform>
            <numerusform>%n lanes would be up to %3 fresher when play begins</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n demand(s) unmet</source>
        <translation>
            <numerusform>%n demand unmet</numerusform>
            <numerusform>%n demands unmet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) late</source>
        <translation>
            <numerusform>%n event late</numerusform>
            <numerusform>%n events late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tight day(s)</source>
        <translation>
            <numerusform>%n tight day</numerusform>
            <numerusform>%n tight days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 runs out %n day(s) earlier (%2).</source>
        <translation>
            <numerusform>%1 runs out a day earlier (%2).</numerusform>
            <numerusform>%1 runs out %n days earlier (%2).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 runs out %n day(s) later (%2).</source>
        <translation>
            <numerusform>%1 runs out a day later (%2).</numerusform>
            <numerusform>%1 runs out %n days later (%2).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more until %1</source>
        <translation>
            <numerusform>1 more until %1</numerusform>
            <numerusform>%n more until %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) over</source>
        <translation>
            <numerusform>1 lane over</numerusform>
            <numerusform>%n lanes over</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) left</source>
        <translation>
            <numerusform>1 lane left</numerusform>
            <numerusform>%n lanes left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) over</source>
        <translation>
            <numerusform>1 run over</numerusform>
            <numerusform>%n runs over</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) left</source>
        <translation>
            <numerusform>1 run left</numerusform>
            <numerusform>%n runs left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) over</source>
        <translation>
            <numerusform>1 day over</numerusform>
            <numerusform>%n days over</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) left</source>
        <translation>
            <numerusform>1 day left</numerusform>
            <numerusform>%n days left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) new</source>
        <translation>
            <numerusform>%n step new</numerusform>
            <numerusform>%n steps new</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) gone</source>
        <translation>
            <numerusform>%n step gone</numerusform>
            <numerusform>%n steps gone</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) at another time</source>
        <translation>
            <numerusform>%n step at another time</numerusform>
            <numerusform>%n steps at another time</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 entry(s)</source>
        <translation>
            <numerusform>%1 entry</numerusform>
            <numerusform>%1 entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 incident(s)</source>
        <translation>
            <numerusform>%1 incident</numerusform>
            <numerusform>%1 incidents</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 part(s) had failed</source>
        <translation>
            <numerusform>%1 part had failed</numerusform>
            <numerusform>%1 parts had failed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 run(s)</source>
        <translation>
            <numerusform>%1 run</numerusform>
            <numerusform>%1 runs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 lane(s) treated</source>
        <translation>
            <numerusform>%1 lane treated</numerusform>
            <numerusform>%1 lanes treated</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 service(s)</source>
        <translation>
            <numerusform>%1 service</numerusform>
            <numerusform>%1 services</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 lane(s) treated by the machine</source>
        <translation>
            <numerusform>%1 lane treated by the machine</numerusform>
            <numerusform>%1 lanes treated by the machine</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 lane(s)</source>
        <translation>
            <numerusform>%1 lane</numerusform>
            <numerusform>%1 lanes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 day(s)</source>
        <translation>
            <numerusform>%1 day</numerusform>
            <numerusform>%1 days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 of %3 known parts failed; when it is best replaced is told after %n more failure(s).</source>
        <translation>
            <numerusform>%1: %2 of %3 known parts failed; when it is best replaced is told after %n more failure.</numerusform>
            <numerusform>%1: %2 of %3 known parts failed; when it is best replaced is told after %n more failures.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) since it was charged</source>
        <translation>
            <numerusform>%n lane since it was charged</numerusform>
            <numerusform>%n lanes since it was charged</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n lane(s) left</source>
        <translation>
            <numerusform>about %n lane left</numerusform>
            <numerusform>about %n lanes left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>tonight %n lane(s)</source>
        <translation>
            <numerusform>tonight %n lane</numerusform>
            <numerusform>tonight %n lanes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source> (%n charge(s)</source>
        <translation>
            <numerusform> (%n charge</numerusform>
            <numerusform> (%n charges</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 falls due %n day(s) earlier (%2).</source>
        <translation>
            <numerusform>%1 falls due %n day earlier (%2).</numerusform>
            <numerusform>%1 falls due %n days earlier (%2).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 falls due %n day(s) later (%2).</source>
        <translation>
            <numerusform>%1 falls due %n day later (%2).</numerusform>
            <numerusform>%1 falls due %n days later (%2).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more duty(s) fall due on other days.</source>
        <translation>
            <numerusform>%n more duty falls due on another day.</numerusform>
            <numerusform>%n more duties fall due on other days.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>; %1 % of the cleaner comes back (%n emptying(s) measured)</source>
        <translation>
            <numerusform>; %1 % of the cleaner comes back (%n emptying measured)</numerusform>
            <numerusform>; %1 % of the cleaner comes back (%n emptyings measured)</numerusform>
        </translation>
    </message>
</context>
</TS>
