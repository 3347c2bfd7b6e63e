<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE">
<context>
    <name>Consequences</name>
    <message>
        <source>Conflicts with %1 on lanes %2.</source>
        <translation>Überschneidet sich mit %1 auf Bahn %2.</translation>
    </message>
    <message>
        <source>%1 on lanes %2 can no longer be met.</source>
        <translation>%1 auf Bahn %2 ist nicht mehr zu erfüllen.</translation>
    </message>
    <message>
        <source>%1 on lanes %2 would be ready late.</source>
        <translation>%1 auf Bahn %2 würde zu spät fertig.</translation>
    </message>
    <message>
        <source>%1 are missing.</source>
        <translation>Es fehlen %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n demand(s) that were missed would be met.</source>
        <translation>
            <numerusform>%n bisher verfehlte Anforderung würde erfüllt.</numerusform>
            <numerusform>%n bisher verfehlte Anforderungen würden erfüllt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more lane(s) to treat.</source>
        <translation>
            <numerusform>%n Bahn mehr zu behandeln.</numerusform>
            <numerusform>%n Bahnen mehr zu behandeln.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) fewer to treat.</source>
        <translation>
            <numerusform>%n Bahn weniger zu behandeln.</numerusform>
            <numerusform>%n Bahnen weniger zu behandeln.</numerusform>
        </translation>
    </message>
    <message>
        <source>Takes %1 more conditioner.</source>
        <translation>Braucht %1 mehr Bahnöl.</translation>
    </message>
    <message>
        <source>Takes %1 less conditioner.</source>
        <translation>Braucht %1 weniger Bahnöl.</translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) move to another time.</source>
        <translation>
            <numerusform>%n Auftrag verschiebt sich.</numerusform>
            <numerusform>%n Aufträge verschieben sich.</numerusform>
        </translation>
    </message>
    <message>
        <source>It does not take place within a year from today.</source>
        <translation>Findet ab heute ein Jahr lang nicht statt.</translation>
    </message>
    <message>
        <source>No change to the work of that day.</source>
        <translation>Die Arbeit an diesem Tag bleibt gleich.</translation>
    </message>
    <message>
        <source>On %1: %2</source>
        <translation>Am %1: %2</translation>
    </message>
</context>
<context>
    <name>DifferencePanel</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weitere</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Looking at what would change…</source>
        <translation>Es wird nachgesehen, was sich ändern würde …</translation>
    </message>
    <message>
        <source>Not possible there:</source>
        <translation>Dort nicht möglich:</translation>
    </message>
    <message numerus="yes">
        <source>and %n more of the stock</source>
        <translation>
            <numerusform>und ein weiteres zum Bestand</numerusform>
            <numerusform>und %n weitere zum Bestand</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FollowUps</name>
    <message>
        <source>%1: the tape reading of lane %2 (%3) is outside its check</source>
        <translation>%1: die Filmmessung von Bahn %2 (%3) liegt außerhalb ihrer Prüfung</translation>
    </message>
    <message>
        <source> on lane %1</source>
        <translation> auf Bahn %1</translation>
    </message>
    <message>
        <source>%1, %2%3: %4</source>
        <comment>when, kind, on lane: text</comment>
        <translation>%1, %2%3: %4</translation>
    </message>
</context>
<context>
    <name>Guide</name>
    <message>
        <source>Reading of %1</source>
        <translation>Ablesung von %1</translation>
    </message>
    <message>
        <source>Service: %1</source>
        <comment>duty</comment>
        <translation>Wartung: %1</translation>
    </message>
    <message>
        <source>Leave a note for the next shift</source>
        <translation>Notiz für die nächste Schicht hinterlassen</translation>
    </message>
    <message>
        <source>Pack of %1 on charge</source>
        <translation>Akku von %1 am Ladegerät</translation>
    </message>
</context>
<context>
    <name>Headline</name>
    <message>
        <source>no lane needs a treatment today</source>
        <translation>heute braucht keine Bahn eine Behandlung</translation>
    </message>
    <message numerus="yes">
        <source>all %n job(s) are done</source>
        <translation>
            <numerusform>der %n Auftrag ist erledigt</numerusform>
            <numerusform>alle %n Aufträge sind erledigt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) left</source>
        <translation>
            <numerusform>noch %n Auftrag</numerusform>
            <numerusform>noch %n Aufträge</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, one is under way</source>
        <translation>%1, einer läuft</translation>
    </message>
    <message>
        <source>%1, the next should have begun %2 ago</source>
        <translation>%1, der nächste hätte vor %2 beginnen sollen</translation>
    </message>
    <message>
        <source>%1, start the next by %2</source>
        <translation>%1, den nächsten bis %2 beginnen</translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) will not get what they ask</source>
        <translation>
            <numerusform>%n Veranstaltung bekommt nicht, was sie verlangt</numerusform>
            <numerusform>%n Veranstaltungen bekommen nicht, was sie verlangen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) will be late</source>
        <translation>
            <numerusform>%n Veranstaltung wird zu spät bedient</numerusform>
            <numerusform>%n Veranstaltungen werden zu spät bedient</numerusform>
        </translation>
    </message>
    <message>
        <source>every lane is ready in time, but tight</source>
        <translation>jede Bahn wird rechtzeitig fertig, aber knapp</translation>
    </message>
    <message>
        <source>every lane is ready in time</source>
        <translation>jede Bahn wird rechtzeitig fertig</translation>
    </message>
    <message>
        <source>every lane is ready in time, with %1 to spare</source>
        <translation>jede Bahn wird rechtzeitig fertig, mit %1 Spielraum</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>day: what matters</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between parts of a sentence</comment>
        <translation>; </translation>
    </message>
    <message numerus="yes">
        <source>%n incident(s) or reading(s) to be followed up</source>
        <translation>
            <numerusform>%n Vorfall oder Messung zu klären</numerusform>
            <numerusform>%n Vorfälle oder Messungen zu klären</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>HouseData</name>
    <message>
        <source>Lane %1</source>
        <translation>Bahn %1</translation>
    </message>
    <message>
        <source>Lanes %1</source>
        <translation>Bahnen %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>conflicts with another event</source>
        <translation>überschneidet sich mit einer anderen Veranstaltung</translation>
    </message>
    <message>
        <source>late %1</source>
        <translation>%1 zu spät</translation>
    </message>
    <message>
        <source>Not %1 in time for %2</source>
        <translation>Für %2 nicht rechtzeitig: %1</translation>
    </message>
    <message>
        <source>Out of service</source>
        <translation>Außer Betrieb</translation>
    </message>
    <message>
        <source>any pattern</source>
        <translation>beliebiges Muster</translation>
    </message>
    <message numerus="yes">
        <source>%n d</source>
        <comment>age in days, short</comment>
        <translation>
            <numerusform>%n Tg.</numerusform>
            <numerusform>%n Tg.</numerusform>
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
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>stripped</source>
        <translation>abgezogen</translation>
    </message>
    <message>
        <source>treated %1 ago</source>
        <translation>vor %1 behandelt</translation>
    </message>
    <message>
        <source>in play</source>
        <translation>wird bespielt</translation>
    </message>
    <message>
        <source>out of service</source>
        <translation>außer Betrieb</translation>
    </message>
</context>
<context>
    <name>PatternPaper</name>
    <message>
        <source>%1, version %2. It ends at %3.</source>
        <translation>%1, Version %2. Es endet bei %3.</translation>
    </message>
    <message>
        <source>%1 a lane: %2 out, %3 back.</source>
        <translation>%1 je Bahn: %2 hin, %3 zurück.</translation>
    </message>
    <message>
        <source>The clean covers the whole lane.</source>
        <translation>Gereinigt wird die ganze Bahn.</translation>
    </message>
    <message>
        <source>The clean covers the oiled part only.</source>
        <translation>Gereinigt wird nur der geölte Teil.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Way</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Boards</source>
        <translation>Leisten</translation>
    </message>
    <message>
        <source>Laps</source>
        <translation>Durchgänge</translation>
    </message>
    <message>
        <source>Dose, µL</source>
        <translation>Dosis, µL</translation>
    </message>
    <message>
        <source>From – to</source>
        <translation>Von – bis</translation>
    </message>
    <message>
        <source>Conditioner</source>
        <translation>Bahnöl</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>out</source>
        <translation>hin</translation>
    </message>
    <message>
        <source>back</source>
        <translation>zurück</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Film without carry, in units (1 unit = 0.0167 mL per square foot):</source>
        <translation>Film ohne Verschleppung, in Einheiten (1 Einheit = 0,0167 mL je Quadratfuß):</translation>
    </message>
    <message>
        <source>Film from the brush of %1, in units (1 unit = 0.0167 mL per square foot):</source>
        <translation>Film von der Bürste von %1, in Einheiten (1 Einheit = 0,0167 mL je Quadratfuß):</translation>
    </message>
</context>
<context>
    <name>Readiness</name>
    <message>
        <source>%1, tonight takes %2</source>
        <translation>%1, heute Abend nötig: %2</translation>
    </message>
    <message>
        <source>%1, tonight takes none</source>
        <translation>%1, heute Abend nichts nötig</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Schmutztank</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Akku</translation>
    </message>
    <message>
        <source>Conditioner</source>
        <translation>Bahnöl</translation>
    </message>
    <message>
        <source>Second conditioner</source>
        <translation>Zweites Bahnöl</translation>
    </message>
    <message>
        <source>Cleaner</source>
        <translation>Reiniger</translation>
    </message>
    <message numerus="yes">
        <source>%1; %n refill(s) planned</source>
        <translation>
            <numerusform>%1; einmal Nachfüllen geplant</numerusform>
            <numerusform>%1; %n-mal Nachfüllen geplant</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>amount of capacity</comment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1, tonight adds %2</source>
        <translation>%1, heute kommen %2 dazu</translation>
    </message>
    <message>
        <source>%1, tonight adds none</source>
        <translation>%1, heute kommt nichts dazu</translation>
    </message>
    <message numerus="yes">
        <source>%1; emptied %n time(s)</source>
        <translation>
            <numerusform>%1; einmal geleert</numerusform>
            <numerusform>%1; %n-mal geleert</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) left</source>
        <translation>
            <numerusform>noch %n Bahn</numerusform>
            <numerusform>noch %n Bahnen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; %n swap(s) planned</source>
        <translation>
            <numerusform>%1; ein Akkuwechsel geplant</numerusform>
            <numerusform>%1; %n Akkuwechsel geplant</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Search</name>
    <message>
        <source>Lane %1</source>
        <translation>Bahn %1</translation>
    </message>
    <message>
        <source>%1: %2, lanes %3</source>
        <comment>event: when, lanes</comment>
        <translation>%1: %2, Bahn %3</translation>
    </message>
    <message>
        <source>%1, lanes %2: not in the next four weeks</source>
        <comment>event</comment>
        <translation>%1, Bahn %2: nicht in den nächsten vier Wochen</translation>
    </message>
</context>
<context>
    <name>StrokeRows</name>
    <message>
        <source>a board is a whole number from 1 to 39</source>
        <translation>eine Leiste ist eine ganze Zahl von 1 bis 39</translation>
    </message>
    <message>
        <source>the last board comes before the first</source>
        <translation>die letzte Leiste liegt vor der ersten</translation>
    </message>
    <message>
        <source>a whole number from %1 to %2</source>
        <translation>eine ganze Zahl von %1 bis %2</translation>
    </message>
    <message>
        <source>a distance on the lane, from 0 to %1</source>
        <translation>eine Entfernung auf der Bahn, von 0 bis %1</translation>
    </message>
    <message>
        <source>the far end is not beyond the near end</source>
        <translation>das ferne Ende liegt nicht hinter dem nahen</translation>
    </message>
    <message>
        <source>this is beyond the end of the pattern</source>
        <translation>das liegt hinter dem Ende des Ölmusters</translation>
    </message>
    <message>
        <source>a pattern ends on the lane, at most %1 from the foul line</source>
        <translation>ein Ölmuster endet auf der Bahn, höchstens %1 von der Foullinie</translation>
    </message>
    <message>
        <source>a pattern needs a name</source>
        <translation>ein Ölmuster braucht einen Namen</translation>
    </message>
    <message>
        <source>the name is too long</source>
        <translation>der Name ist zu lang</translation>
    </message>
    <message>
        <source>a pattern needs a stroke</source>
        <translation>ein Ölmuster braucht einen Ölzug</translation>
    </message>
    <message>
        <source>stroke %1: %2</source>
        <translation>Ölzug %1: %2</translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Lanes %1 done as planned</source>
        <translation>Bahnen %1 wie geplant erledigt</translation>
    </message>
    <message>
        <source>Begin lanes %1</source>
        <translation>Bahnen %1 beginnen</translation>
    </message>
    <message>
        <source>Correct the run on lanes %1</source>
        <translation>Lauf auf den Bahnen %1 berichtigen</translation>
    </message>
    <message>
        <source>Lanes %1 done with changes</source>
        <translation>Bahnen %1 mit Änderungen erledigt</translation>
    </message>
    <message>
        <source>Unplanned run on lanes %1</source>
        <translation>Ungeplanter Lauf auf den Bahnen %1</translation>
    </message>
</context>
<context>
    <name>WhyText</name>
    <message>
        <source>no time to spare</source>
        <translation>kein Spielraum</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>lane %1</source>
        <translation>Bahn %1</translation>
    </message>
    <message>
        <source>lanes %1</source>
        <translation>Bahnen %1</translation>
    </message>
    <message>
        <source>Needed by</source>
        <translation>Gebraucht von</translation>
    </message>
    <message>
        <source>No event on record: it was run or confirmed for itself.</source>
        <translation>Keine Veranstaltung vermerkt: für sich gefahren oder bestätigt.</translation>
    </message>
    <message>
        <source>%1 late in all</source>
        <translation>insgesamt %1 zu spät</translation>
    </message>
    <message>
        <source>tight by %1</source>
        <translation>knapp: %1 der Reserve verbraucht</translation>
    </message>
    <message>
        <source>%1 to spare</source>
        <translation>%1 Spielraum</translation>
    </message>
    <message>
        <source>Why here</source>
        <translation>Warum hier</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Ölmaschine</translation>
    </message>
    <message>
        <source>Works</source>
        <translation>Arbeitet</translation>
    </message>
    <message>
        <source>Could work</source>
        <translation>Möglich</translation>
    </message>
    <message>
        <source>Slack</source>
        <translation>Spielraum</translation>
    </message>
    <message>
        <source>Takes</source>
        <translation>Braucht</translation>
    </message>
    <message>
        <source>Conditioner</source>
        <translation>Bahnöl</translation>
    </message>
    <message>
        <source>Cleaner</source>
        <translation>Reiniger</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Schmutztank</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Akku</translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s)</source>
        <translation>
            <numerusform>%n Bahn</numerusform>
            <numerusform>%n Bahnen</numerusform>
        </translation>
    </message>
    <message>
        <source>Conditioner after</source>
        <translation>Bahnöl danach</translation>
    </message>
    <message>
        <source>Cleaner after</source>
        <translation>Reiniger danach</translation>
    </message>
    <message>
        <source>Waste after</source>
        <translation>Schmutztank danach</translation>
    </message>
    <message>
        <source>Pack after</source>
        <translation>Akku danach</translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) left</source>
        <translation>
            <numerusform>noch %n Bahn</numerusform>
            <numerusform>noch %n Bahnen</numerusform>
        </translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>On sheet</source>
        <translation>Auf Blatt</translation>
    </message>
    <message>
        <source>Served by</source>
        <translation>Bedient durch</translation>
    </message>
    <message>
        <source>not met on %1</source>
        <translation>nicht erfüllt auf %1</translation>
    </message>
    <message>
        <source>late on %1</source>
        <translation>zu spät auf %1</translation>
    </message>
    <message>
        <source>Needs no treatment.</source>
        <translation>Braucht keine Behandlung.</translation>
    </message>
    <message>
        <source>Next on these lanes</source>
        <translation>Als Nächstes auf diesen Bahnen</translation>
    </message>
    <message>
        <source>Nothing in the time shown.</source>
        <translation>Nichts im gezeigten Zeitraum.</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Plays</source>
        <translation>Spielt</translation>
    </message>
    <message>
        <source>Lanes</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>Lanes free from</source>
        <translation>Bahnen frei ab</translation>
    </message>
    <message>
        <source>Players</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>Asks of the lanes</source>
        <translation>Verlangt von den Bahnen</translation>
    </message>
    <message>
        <source>Settle time</source>
        <translation>Ruhezeit</translation>
    </message>
    <message>
        <source>Comes again</source>
        <translation>Wiederholt sich</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Was fehlt</translation>
    </message>
    <message>
        <source>Asks</source>
        <translation>Verlangt</translation>
    </message>
    <message>
        <source>Play begins</source>
        <translation>Spielbeginn</translation>
    </message>
    <message>
        <source>Time missing</source>
        <translation>Fehlende Zeit</translation>
    </message>
    <message>
        <source>What would meet it</source>
        <translation>Was es erfüllen würde</translation>
    </message>
    <message>
        <source>planned and found to work</source>
        <translation>durchgeplant, es geht</translation>
    </message>
    <message>
        <source>not tried out</source>
        <translation>nicht durchgeplant</translation>
    </message>
    <message>
        <source>No change to this evening was found that would meet it.</source>
        <translation>Für diesen Abend fand sich keine Änderung, die es erfüllt.</translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation>Erfasst</translation>
    </message>
    <message>
        <source>Ran</source>
        <translation>Gelaufen</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Ölmuster</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Out of service · %1</source>
        <translation>Außer Betrieb · %1</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>further notice</source>
        <translation>auf Weiteres</translation>
    </message>
    <message>
        <source>At %1</source>
        <translation>Stand %1</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>In play</source>
        <translation>Wird bespielt</translation>
    </message>
    <message>
        <source>Out of service</source>
        <translation>Außer Betrieb</translation>
    </message>
    <message>
        <source>Enter or letting go keeps it, Esc leaves it as it was.</source>
        <translation>Eingabetaste oder Loslassen behält es, Esc lässt es, wie es war.</translation>
    </message>
    <message>
        <source>If the outing moved</source>
        <translation>Wenn die Fahrt verschoben würde</translation>
    </message>
</context>
<context>
    <name>cli</name>
    <message>
        <source>%1: restored from %2
</source>
        <translation>%1: wiederhergestellt aus %2
</translation>
    </message>
    <message>
        <source>%1: sound
</source>
        <translation>%1: in Ordnung
</translation>
    </message>
    <message>
        <source>Common options:</source>
        <translation>Allgemeine Optionen:</translation>
    </message>
    <message>
        <source>a centre&apos;s file, or postgresql://user@host/database; passwords come from libpq&apos;s places</source>
        <translation>Datei eines Centers oder postgresql://user@host/database; Passwörter kommen von den Orten, die libpq vorsieht</translation>
    </message>
    <message>
        <source>fixes the clock, in the centre&apos;s wall time</source>
        <translation>stellt die Uhr fest, in der Ortszeit des Centers</translation>
    </message>
    <message>
        <source>Exit status: 0 done; 1 bad news to act on (unmet or late demands with plan --strict, faults in check); 2 wrong usage; 3 cannot read or write; 4 refused.</source>
        <translation>Rückgabewert: 0 erledigt; 1 Handlungsbedarf (nicht erfüllte oder zu spät erfüllte Anforderungen bei plan --strict, Fehler bei check); 2 falscher Aufruf; 3 Lesen oder Schreiben nicht möglich; 4 abgelehnt.</translation>
    </message>
    <message>
        <source>writes a verified copy of the centre into the folder</source>
        <translation>schreibt eine geprüfte Kopie des Centers in den Ordner</translation>
    </message>
    <message>
        <source>checks the integrity of the centre</source>
        <translation>prüft, ob die Daten des Centers stimmig sind</translation>
    </message>
    <message>
        <source>creates the demo centre in the new file named by --centre</source>
        <translation>legt das Demo-Center in der mit --centre genannten neuen Datei an</translation>
    </message>
    <message>
        <source>every event with its lanes and what it asks of them</source>
        <translation>jede Veranstaltung mit ihren Bahnen und dem, was sie von ihnen verlangt</translation>
    </message>
    <message>
        <source>puts a backup in place of the centre; the replaced file is kept</source>
        <translation>setzt eine Sicherung an die Stelle des Centers; die ersetzte Datei bleibt erhalten</translation>
    </message>
    <message>
        <source>the day&apos;s job sheet; --confirm stores its jobs with a plan version</source>
        <translation>das Auftragsblatt des Tages; --confirm speichert seine Aufträge mit einem Planstand</translation>
    </message>
    <message>
        <source>COMMAND</source>
        <translation>BEFEHL</translation>
    </message>
    <message>
        <source>options</source>
        <translation>Optionen</translation>
    </message>
    <message>
        <source>Lane care for bowling centres. Without a command the window opens.</source>
        <translation>Bahnpflege für Bowlingcenter. Ohne Befehl öffnet sich das Fenster.</translation>
    </message>
    <message>
        <source>Commands:</source>
        <translation>Befehle:</translation>
    </message>
    <message>
        <source>%1: %2, %3 lanes, %4 series, %5 runs recorded
</source>
        <translation>%1: %2, Bahnen: %3, Serien: %4, erfasste Läufe: %5
</translation>
    </message>
    <message>
        <source>%1: %2 new or changed; nothing was written
</source>
        <translation>%1: %2 neu oder geändert; nichts wurde geschrieben
</translation>
    </message>
    <message>
        <source>%1: %2 new or changed
</source>
        <translation>%1: %2 neu oder geändert
</translation>
    </message>
    <message>
        <source>%1: holds %2; nothing was written
</source>
        <translation>%1: enthält %2; nichts wurde geschrieben
</translation>
    </message>
    <message>
        <source>%1: imported %2
</source>
        <translation>%1: %2 importiert
</translation>
    </message>
    <message>
        <source>%1: %2 records could be recorded
</source>
        <translation>%1: Einträge, die erfasst werden könnten: %2
</translation>
    </message>
    <message>
        <source>%1: %2 records recorded
</source>
        <translation>%1: erfasste Einträge: %2
</translation>
    </message>
    <message>
        <source>volumes and film of a pattern; --lane N shows the Nth lane of a clean brush</source>
        <translation>Mengen und Film eines Ölmusters; --lane N zeigt die N-te Bahn einer sauberen Bürste</translation>
    </message>
    <message>
        <source>%1: %2 new; nothing was written
</source>
        <translation>%1: %2 neu; nichts wurde geschrieben
</translation>
    </message>
    <message>
        <source>%1: %2 new
</source>
        <translation>%1: %2 neu
</translation>
    </message>
    <message>
        <source>the orders that are proposed next, and why</source>
        <translation>die nächsten vorgeschlagenen Bestellungen und ihre Gründe</translation>
    </message>
    <message>
        <source>appends what was done; --sure keeps counts that are far from what the ledger has</source>
        <translation>hängt an, was getan wurde; --sure nimmt Zählungen, die weit vom Bestandsbuch abweichen</translation>
    </message>
    <message>
        <source>the jobs, their reasons, and what cannot be met; or what events cost, or staff hours (--pdf)</source>
        <translation>die Aufträge, ihre Gründe und was nicht erfüllt werden kann; oder was Veranstaltungen kosten, oder Personalstunden (--pdf)</translation>
    </message>
    <message>
        <source>stock, when it runs out and what to order by when; --due says only what is due, exit status 1 when an order is. Keeps the forecast of today to score it later, once a day and not with --now</source>
        <translation>Bestand, wann er ausgeht und was bis wann zu bestellen ist; --due sagt nur, was fällig ist, Status 1 wenn eine Bestellung fällig ist. Hebt die Vorhersage von heute auf, um sie später zu bewerten, einmal am Tag und nicht mit --now</translation>
    </message>
    <message>
        <source>reads a whole centre, or rows of one kind into it (series, strokes, readings, inspections, stock, prices); all or nothing; --sure takes amounts and prices that are far from what is known</source>
        <translation>liest ein ganzes Center oder Zeilen einer Art hinein (series, strokes, readings, inspections, stock, prices); alles oder nichts; --sure nimmt Mengen und Preise, die weit vom Bekannten abweichen</translation>
    </message>
    <message>
        <source>%1: %2 places could be counted; nothing was written
</source>
        <translation>%1: %2 Plätze könnten gezählt werden; nichts wurde geschrieben
</translation>
    </message>
    <message>
        <source>%1: %2 places counted
</source>
        <translation>%1: %2 Plätze gezählt
</translation>
    </message>
    <message>
        <source>what falls due and when it fits; --pdf writes one page for the wall; --history what was done</source>
        <translation>was fällig wird und wann es passt; --pdf schreibt eine Seite für die Wand; --history was getan wurde</translation>
    </message>
    <message>
        <source>the whole centre, one kind of its rows (series, strokes, readings, inspections, stock, prices of one supplier), or its jobs as a calendar</source>
        <translation>das ganze Center, eine Art seiner Zeilen (series, strokes, readings, inspections, stock, prices eines Lieferanten) oder seine Aufträge als Kalender</translation>
    </message>
</context>
<context>
    <name>film</name>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
</context>
<context>
    <name>laneward::AmountBox</name>
    <message>
        <source> mL</source>
        <comment>suffix</comment>
        <translation> ml</translation>
    </message>
    <message>
        <source> fl oz</source>
        <comment>suffix</comment>
        <translation> fl oz</translation>
    </message>
</context>
<context>
    <name>laneward::AskBar</name>
    <message>
        <source>Leave it (Esc)</source>
        <translation>So lassen (Esc)</translation>
    </message>
</context>
<context>
    <name>laneward::AttachmentsBox</name>
    <message>
        <source>Attached files</source>
        <translation>Angehängte Dateien</translation>
    </message>
    <message>
        <source>None yet. Attach a photograph or a PDF, or drop it here; at most %1 each.</source>
        <translation>Noch keine. Ein Foto oder PDF anhängen oder hierher ziehen; je höchstens %1.</translation>
    </message>
    <message>
        <source>&amp;Attach a file…</source>
        <translation>Datei &amp;anhängen…</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>file, size</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>%1 öffnen</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Speichern…</translation>
    </message>
    <message>
        <source>Save %1</source>
        <translation>%1 speichern</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Abnehmen</translation>
    </message>
    <message>
        <source>Take %1 off</source>
        <translation>%1 abnehmen</translation>
    </message>
    <message>
        <source>Attach a file</source>
        <translation>Datei anhängen</translation>
    </message>
    <message>
        <source>Photographs and papers</source>
        <translation>Fotos und Papiere</translation>
    </message>
    <message>
        <source>Attach %1 to: %2</source>
        <translation>%1 anhängen an: %2</translation>
    </message>
    <message>
        <source>%1 is not in this database any more: centre files do not carry attached files.</source>
        <translation>%1 ist nicht mehr in dieser Datenbank: Zentrumsdateien enthalten keine angehängten Dateien.</translation>
    </message>
    <message>
        <source>%1 could not be written; nothing was changed.</source>
        <translation>%1 konnte nicht geschrieben werden; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>No program opens %1; save it instead.</source>
        <translation>Kein Programm öffnet %1; bitte stattdessen speichern.</translation>
    </message>
    <message>
        <source>Save the attached file</source>
        <translation>Angehängte Datei speichern</translation>
    </message>
    <message>
        <source>The file is in %1</source>
        <translation>Die Datei ist in %1</translation>
    </message>
</context>
<context>
    <name>laneward::AxisHeader</name>
    <message>
        <source>later →</source>
        <comment>beyond the axis</comment>
        <translation>später →</translation>
    </message>
</context>
<context>
    <name>laneward::BackupKeeper</name>
    <message>
        <source>The daily backup was not made: %1</source>
        <translation>Die tägliche Sicherung wurde nicht gemacht: %1</translation>
    </message>
</context>
<context>
    <name>laneward::BoardModel</name>
    <message>
        <source>not a number</source>
        <translation>keine Zahl</translation>
    </message>
    <message>
        <source>film cannot be below nothing</source>
        <translation>weniger als nichts gibt es nicht</translation>
    </message>
    <message>
        <source>more than %1 units cannot be</source>
        <translation>mehr als %1 Einheiten gibt es nicht</translation>
    </message>
    <message numerus="yes">
        <source>%n more value(s) were pasted than there are boards</source>
        <translation>
            <numerusform>%n Wert mehr wurde eingefügt, als es Leisten gibt</numerusform>
            <numerusform>%n Werte mehr wurden eingefügt, als es Leisten gibt</numerusform>
        </translation>
    </message>
    <message>
        <source>Board %1, %2: %3</source>
        <translation>Leiste %1, %2: %3</translation>
    </message>
    <message>
        <source>Read, units</source>
        <translation>Gemessen, Einheiten</translation>
    </message>
    <message>
        <source>Computed</source>
        <translation>Berechnet</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
</context>
<context>
    <name>laneward::BusyBar</name>
    <message>
        <source>Cancel (Esc)</source>
        <translation>Abbrechen (Esc)</translation>
    </message>
    <message>
        <source>Cancel: %1</source>
        <comment>what is worked out</comment>
        <translation>Abbrechen: %1</translation>
    </message>
</context>
<context>
    <name>laneward::CalendarPage</name>
    <message>
        <source>Take %1 away?</source>
        <translation>%1 entfernen?</translation>
    </message>
    <message>
        <source>Cancel only %1</source>
        <translation>Nur %1 absagen</translation>
    </message>
    <message>
        <source>Delete the whole series</source>
        <translation>Die ganze Serie löschen</translation>
    </message>
    <message>
        <source>Cancel %1 on %2</source>
        <translation>%1 am %2 absagen</translation>
    </message>
    <message>
        <source>Delete %1</source>
        <translation>%1 löschen</translation>
    </message>
    <message>
        <source>%1 (copy)</source>
        <translation>%1 (Kopie)</translation>
    </message>
    <message>
        <source>&amp;New event</source>
        <translation>&amp;Neue Veranstaltung</translation>
    </message>
    <message>
        <source>&amp;Edit…</source>
        <translation>&amp;Bearbeiten…</translation>
    </message>
    <message>
        <source>Make a &amp;copy…</source>
        <translation>&amp;Kopie anlegen…</translation>
    </message>
    <message>
        <source>Copy to a new &amp;season…</source>
        <translation>In eine neue &amp;Saison kopieren…</translation>
    </message>
    <message>
        <source>&amp;Take away…</source>
        <translation>&amp;Entfernen…</translation>
    </message>
    <message>
        <source>&amp;Month</source>
        <translation>&amp;Monat</translation>
    </message>
    <message>
        <source>&amp;Week</source>
        <translation>&amp;Woche</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>Ta&amp;g</translation>
    </message>
    <message>
        <source>&amp;New event (N)</source>
        <translation>&amp;Neue Veranstaltung (N)</translation>
    </message>
    <message>
        <source>&amp;Copy last season…</source>
        <translation>Letzte Saison &amp;kopieren…</translation>
    </message>
    <message>
        <source>Week of %1</source>
        <translation>Woche ab %1</translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n Veranstaltung</numerusform>
            <numerusform>%n Veranstaltungen</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing is booked; N adds an event</source>
        <translation>nichts gebucht; N legt eine Veranstaltung an</translation>
    </message>
    <message numerus="yes">
        <source>they ask for %n job(s)</source>
        <translation>
            <numerusform>nötig: %n Auftrag</numerusform>
            <numerusform>nötig: %n Aufträge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) in conflict</source>
        <translation>
            <numerusform>%n Veranstaltung überschneidet sich</numerusform>
            <numerusform>%n Veranstaltungen überschneiden sich</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n demand(s) that no job can meet</source>
        <translation>
            <numerusform>%n Anforderung, die kein Auftrag erfüllen kann</numerusform>
            <numerusform>%n Anforderungen, die kein Auftrag erfüllen kann</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>What is booked, and what does it ask of the lanes?</source>
        <translation>Was ist gebucht, und was verlangt es von den Bahnen?</translation>
    </message>
    <message>
        <source>Enter edits, N creates, Delete takes away; drag or Alt+arrows move, Alt+Shift+arrows stretch, Space picks up.</source>
        <translation>Eingabetaste bearbeitet, N legt an, Entf entfernt; Ziehen oder Alt+Pfeile verschieben, Alt+Umschalt+Pfeile dehnen, die Leertaste hebt auf.</translation>
    </message>
    <message>
        <source>Staff &amp;hours</source>
        <translation>Personal&amp;stunden</translation>
    </message>
</context>
<context>
    <name>laneward::CarryPanel</name>
    <message>
        <source>How far the brush carries conditioner on</source>
        <translation>Wie weit die Bürste Bahnöl mitnimmt</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>%1: no tape readings yet; type one and name the machine.</source>
        <translation>%1: noch keine Filmmessungen; eine eintippen und die Maschine nennen.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>in use: %1</source>
        <translation>in Gebrauch: %1</translation>
    </message>
    <message>
        <source>in use: none</source>
        <translation>in Gebrauch: keine</translation>
    </message>
    <message numerus="yes">
        <source>from its newest %n reading(s)</source>
        <translation>
            <numerusform>aus der neuesten Messung</numerusform>
            <numerusform>aus den neuesten %n Messungen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: the readings do not bound the carry length (%2 or more, %3); %4.</source>
        <translation>%1: Die Messungen begrenzen die Mitnahmelänge nicht (%2 oder mehr, %3); %4.</translation>
    </message>
    <message>
        <source>%1 carries %2 on (95 % interval %3 to %4, %5), and lays %6 of what the patterns say (%7 to %8); %9.</source>
        <translation>%1 nimmt %2 weit mit (95-%-Intervall %3 bis %4, %5) und legt das %6-Fache dessen, was die Ölmuster sagen (%7 bis %8); %9.</translation>
    </message>
    <message>
        <source>Adopt for %1</source>
        <translation>Für %1 übernehmen</translation>
    </message>
    <message>
        <source>Films are then computed with %1</source>
        <translation>Filme werden dann mit %1 berechnet</translation>
    </message>
    <message>
        <source>Carry length of %1: %2</source>
        <translation>Mitnahmelänge von %1: %2</translation>
    </message>
</context>
<context>
    <name>laneward::CentreForm</name>
    <message>
        <source> min</source>
        <comment>suffix</comment>
        <translation> min</translation>
    </message>
</context>
<context>
    <name>laneward::CentreRows</name>
    <message>
        <source>every day</source>
        <translation>jeden Tag</translation>
    </message>
    <message>
        <source>no day of the week</source>
        <translation>an keinem Wochentag</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>times</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>out of service until %1</source>
        <translation>außer Betrieb bis %1</translation>
    </message>
    <message>
        <source>out of service until further notice</source>
        <translation>außer Betrieb bis auf Weiteres</translation>
    </message>
    <message>
        <source>in service</source>
        <translation>in Betrieb</translation>
    </message>
    <message>
        <source>lanes %1</source>
        <translation>Bahn %1</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Is</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Lanes</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>The day begins at</source>
        <translation>Der Tag beginnt um</translation>
    </message>
    <message>
        <source>While the neighbour on the same approach is played on</source>
        <translation>Solange auf der Nachbarbahn am selben Anlauf gespielt wird</translation>
    </message>
    <message>
        <source>no work</source>
        <translation>wird nicht gearbeitet</translation>
    </message>
    <message>
        <source>work goes on</source>
        <translation>wird weitergearbeitet</translation>
    </message>
    <message>
        <source>Reserve before lanes must be ready</source>
        <translation>Reserve, bevor Bahnen fertig sein müssen</translation>
    </message>
    <message>
        <source>New events: conditioner settles for</source>
        <translation>Neue Veranstaltungen: das Bahnöl ruht</translation>
    </message>
    <message>
        <source>New events: players clear the lanes in</source>
        <translation>Neue Veranstaltungen: Spieler räumen die Bahnen in</translation>
    </message>
    <message>
        <source>New events: fresh means not older than</source>
        <translation>Neue Veranstaltungen: frisch heißt nicht älter als</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>millilitres, metres</source>
        <translation>Milliliter, Meter</translation>
    </message>
    <message>
        <source>US fluid ounces, feet</source>
        <translation>US-Flüssigunzen, Fuß</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Letter</source>
        <comment>paper</comment>
        <translation>Letter</translation>
    </message>
    <message>
        <source>A4</source>
        <comment>paper</comment>
        <translation>A4</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message numerus="yes">
        <source>%1 has %n lane(s), by the wall time of %2.</source>
        <translation>
            <numerusform>%1 hat %n Bahn, nach der Ortszeit von %2.</numerusform>
            <numerusform>%1 hat %n Bahnen, nach der Ortszeit von %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Its tanks</source>
        <translation>Ihre Tanks</translation>
    </message>
    <message>
        <source>A lane takes</source>
        <translation>Eine Bahn dauert</translation>
    </message>
    <message>
        <source>A pack runs</source>
        <translation>Ein Akku reicht für</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s)</source>
        <translation>
            <numerusform>%n Bahn</numerusform>
            <numerusform>%n Bahnen</numerusform>
        </translation>
    </message>
    <message>
        <source>There is no lane machine yet, so no work can be planned: enter one.</source>
        <translation>Noch gibt es keine Bahnmaschine, also lässt sich keine Arbeit planen: eine eintragen.</translation>
    </message>
    <message numerus="yes">
        <source>%n lane machine(s), all in service.</source>
        <translation>
            <numerusform>%n Bahnmaschine, in Betrieb.</numerusform>
            <numerusform>%n Bahnmaschinen, alle in Betrieb.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane machine(s) in service, of %1.</source>
        <translation>
            <numerusform>%n Bahnmaschine in Betrieb, von %1.</numerusform>
            <numerusform>%n Bahnmaschinen in Betrieb, von %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Works here</source>
        <translation>Arbeitet hier</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no longer</source>
        <translation>nicht mehr</translation>
    </message>
    <message>
        <source>Nobody can sign records yet: enter who works here.</source>
        <translation>Noch kann niemand Einträge zeichnen: eintragen, wer hier arbeitet.</translation>
    </message>
    <message numerus="yes">
        <source>%n person(s) can sign records.</source>
        <translation>
            <numerusform>%n Person kann Einträge zeichnen.</numerusform>
            <numerusform>%n Personen können Einträge zeichnen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Schicht</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Works</source>
        <translation>Arbeitszeit</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Overtime</source>
        <translation>Überstunden</translation>
    </message>
    <message>
        <source>Otherwise</source>
        <translation>Abweichend</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) off</source>
        <translation>
            <numerusform>%n Tag frei</numerusform>
            <numerusform>%n Tage frei</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) besides</source>
        <translation>
            <numerusform>%n Tag zusätzlich</numerusform>
            <numerusform>%n Tage zusätzlich</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 before, %2 after</source>
        <comment>overtime</comment>
        <translation>%1 davor, %2 danach</translation>
    </message>
    <message numerus="yes">
        <source>%1 with %n person(s)</source>
        <translation>
            <numerusform>%1 mit %n Person</numerusform>
            <numerusform>%1 mit %n Personen</numerusform>
        </translation>
    </message>
    <message>
        <source>Nobody works on the lanes today, so nothing can be planned for it.</source>
        <translation>Heute arbeitet niemand an den Bahnen, also lässt sich für heute nichts planen.</translation>
    </message>
    <message>
        <source>Today: %1.</source>
        <translation>Heute: %1.</translation>
    </message>
    <message>
        <source>Out of service</source>
        <translation>Außer Betrieb</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>out</source>
        <translation>außer Betrieb</translation>
    </message>
    <message>
        <source>still to come</source>
        <translation>kommt noch</translation>
    </message>
    <message>
        <source>over</source>
        <translation>vorbei</translation>
    </message>
    <message>
        <source>further notice</source>
        <translation>auf Weiteres</translation>
    </message>
    <message>
        <source>Everything is in service.</source>
        <translation>Alles ist in Betrieb.</translation>
    </message>
    <message>
        <source>Out of service now: %1.</source>
        <translation>Jetzt außer Betrieb: %1.</translation>
    </message>
</context>
<context>
    <name>laneward::CentreView</name>
    <message>
        <source>The centre</source>
        <translation>Das Haus</translation>
    </message>
    <message>
        <source>&amp;Back to the page (Esc)</source>
        <translation>&amp;Zurück zur Seite (Esc)</translation>
    </message>
    <message>
        <source>House</source>
        <translation>Haus</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>Ä&amp;ndern …</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Maschinen</translation>
    </message>
    <message>
        <source>&amp;New machine…</source>
        <translation>Neue &amp;Maschine …</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>Take out the machine</source>
        <translation>Maschine herausnehmen</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>&amp;New person…</source>
        <translation>Neue &amp;Person …</translation>
    </message>
    <message>
        <source>Shifts</source>
        <translation>Schichten</translation>
    </message>
    <message>
        <source>&amp;New shift…</source>
        <translation>Neue &amp;Schicht …</translation>
    </message>
    <message>
        <source>Take out the shift</source>
        <translation>Schicht herausnehmen</translation>
    </message>
    <message>
        <source>Out of service</source>
        <translation>Außer Betrieb</translation>
    </message>
    <message>
        <source>&amp;Out of service…</source>
        <translation>&amp;Außer Betrieb …</translation>
    </message>
    <message>
        <source>Back in &amp;service now</source>
        <translation>Jetzt wieder in &amp;Betrieb</translation>
    </message>
    <message>
        <source>Take out the entry</source>
        <translation>Eintrag herausnehmen</translation>
    </message>
    <message>
        <source>Back in service: %1</source>
        <translation>Wieder in Betrieb: %1</translation>
    </message>
    <message>
        <source>It is not out of service now.</source>
        <translation>Das ist jetzt nicht außer Betrieb.</translation>
    </message>
</context>
<context>
    <name>laneward::CopySeasonPanel</name>
    <message>
        <source>Copy last season</source>
        <translation>Letzte Saison kopieren</translation>
    </message>
    <message>
        <source>Each series keeps its weekday and runs for as many weeks as before.</source>
        <translation>Jede Serie behält ihren Wochentag und läuft so viele Wochen wie zuvor.</translation>
    </message>
    <message>
        <source>Series to copy</source>
        <translation>Zu kopierende Serien</translation>
    </message>
    <message>
        <source>First date of the new season</source>
        <translation>Erster Tag der neuen Saison</translation>
    </message>
    <message>
        <source>What would be added</source>
        <translation>Was dazukäme</translation>
    </message>
    <message>
        <source>Holidays to leave out</source>
        <translation>Auszulassende Feiertage</translation>
    </message>
    <message>
        <source>Holiday</source>
        <translation>Feiertag</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Wieder aufnehmen</translation>
    </message>
    <message>
        <source>Close (Esc)</source>
        <translation>Schließen (Esc)</translation>
    </message>
    <message>
        <source>%1 (ended; began %2)</source>
        <translation>%1 (beendet; begann am %2)</translation>
    </message>
    <message>
        <source>%1 (since %2)</source>
        <translation>%1 (seit %2)</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weitere</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose the series that come again.</source>
        <translation>Die Serien wählen, die wiederkommen.</translation>
    </message>
    <message>
        <source>First evenings:</source>
        <translation>Erste Abende:</translation>
    </message>
    <message numerus="yes">
        <source>Copy %n series</source>
        <translation>
            <numerusform>Eine Serie kopieren</numerusform>
            <numerusform>%n Serien kopieren</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Copy %n series to a new season</source>
        <translation>
            <numerusform>%n Serie in eine neue Saison kopieren</numerusform>
            <numerusform>%n Serien in eine neue Saison kopieren</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::CountModel</name>
    <message>
        <source>! This lot stands in another row.</source>
        <translation>! Diese Charge steht in einer anderen Zeile.</translation>
    </message>
    <message>
        <source>! Not a whole number.</source>
        <translation>! Keine ganze Zahl.</translation>
    </message>
    <message>
        <source>! Not a number; it is written as %1.</source>
        <comment>example</comment>
        <translation>! Keine Zahl; man schreibt sie wie %1.</translation>
    </message>
    <message>
        <source>? %1, the books have %2. Tick if it is so.</source>
        <translation>? %1, im Buch stehen %2. Ankreuzen, wenn es stimmt.</translation>
    </message>
    <message>
        <source>The books had %1 when this was typed.</source>
        <translation>Das Bestandsbuch hatte %1, als dies eingegeben wurde.</translation>
    </message>
    <message>
        <source>%1 (as mixed)</source>
        <comment>place</comment>
        <translation>%1 (gemischt)</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1, %2 %3: counted</source>
        <comment>supply, place, lot</comment>
        <translation>%1, %2 %3: gezählt</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Vorrat</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Lot, container</source>
        <translation>Charge, Gebinde</translation>
    </message>
    <message>
        <source>Books</source>
        <translation>Buch</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Gezählt</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
</context>
<context>
    <name>laneward::CountPanel</name>
    <message>
        <source>No supplies are kept yet, so there is nothing to count.</source>
        <translation>Noch werden keine Vorräte geführt, also ist nichts zu zählen.</translation>
    </message>
    <message>
        <source>Type what is really there. A row that is left empty is not counted.</source>
        <translation>Eingeben, was wirklich da ist. Eine Zeile, die leer bleibt, ist nicht gezählt.</translation>
    </message>
    <message>
        <source>Print what the boo&amp;ks say</source>
        <translation>Buch&amp;bestände mitdrucken</translation>
    </message>
    <message>
        <source>Without it whoever counts does not know what is expected</source>
        <translation>Ohne sie weiß, wer zählt, nicht, was erwartet wird</translation>
    </message>
    <message>
        <source>&amp;Print count sheet…</source>
        <translation>Zä&amp;hlliste drucken…</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation>Als P&amp;DF speichern…</translation>
    </message>
    <message>
        <source>&amp;Import a count…</source>
        <translation>Zählung &amp;einlesen…</translation>
    </message>
    <message>
        <source>For example: with the delivery still in its wrapping</source>
        <translation>Zum Beispiel: mit der noch verpackten Lieferung</translation>
    </message>
    <message>
        <source>&amp;Note:</source>
        <translation>Be&amp;merkung:</translation>
    </message>
    <message>
        <source>Another &amp;lot here</source>
        <translation>Weitere &amp;Charge hier</translation>
    </message>
    <message>
        <source>A row for a lot that the books do not have at the chosen place</source>
        <translation>Eine Zeile für eine Charge, die das Bestandsbuch am gewählten Ort nicht hat</translation>
    </message>
    <message>
        <source>&amp;Book the count</source>
        <translation>Zählung bu&amp;chen</translation>
    </message>
    <message numerus="yes">
        <source>%n place(s) counted.</source>
        <translation>
            <numerusform>%n Platz gezählt.</numerusform>
            <numerusform>%n Plätze gezählt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) cannot be read.</source>
        <translation>
            <numerusform>%n Zeile ist nicht lesbar.</numerusform>
            <numerusform>%n Zeilen sind nicht lesbar.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) far from the books: mend or tick.</source>
        <translation>
            <numerusform>%n Zeile weit vom Buch entfernt: berichtigen oder ankreuzen.</numerusform>
            <numerusform>%n Zeilen weit vom Buch entfernt: berichtigen oder ankreuzen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was booked.</source>
        <translation>Nichts wurde gebucht.</translation>
    </message>
    <message numerus="yes">
        <source>Count %n place(s)</source>
        <translation>
            <numerusform>%n Platz zählen</numerusform>
            <numerusform>%n Plätze zählen</numerusform>
        </translation>
    </message>
    <message>
        <source>The count sheet is printed</source>
        <translation>Die Zählliste ist gedruckt</translation>
    </message>
    <message>
        <source>Nothing was printed: the printer cannot be painted on.</source>
        <translation>Nichts wurde gedruckt: auf diesem Drucker lässt sich nicht zeichnen.</translation>
    </message>
    <message>
        <source>Save the count sheet</source>
        <translation>Zählliste speichern</translation>
    </message>
    <message>
        <source>count-sheet.pdf</source>
        <translation>zaehlliste.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The count sheet is in %1</source>
        <translation>Die Zählliste liegt in %1</translation>
    </message>
</context>
<context>
    <name>laneward::CountTable</name>
    <message>
        <source>Count sheet</source>
        <translation>Zählliste</translation>
    </message>
</context>
<context>
    <name>laneward::CounterForm</name>
    <message>
        <source>It is a &amp;new counter, which began with this</source>
        <translation>Es ist ein &amp;neuer Zähler, der damit begann</translation>
    </message>
    <message>
        <source>&amp;Counter of:</source>
        <translation>&amp;Zähler für:</translation>
    </message>
    <message>
        <source>It &amp;shows:</source>
        <translation>Er zei&amp;gt:</translation>
    </message>
    <message>
        <source>Read &amp;at:</source>
        <translation>Abgelesen &amp;um:</translation>
    </message>
    <message>
        <source>A counter of %1</source>
        <comment>machine</comment>
        <translation>Ein Zähler von %1</translation>
    </message>
    <message>
        <source> h</source>
        <comment>suffix</comment>
        <translation> h</translation>
    </message>
    <message>
        <source>By its last reading and the runs since, the meter stands at %1.</source>
        <translation>Nach der letzten Ablesung und den Läufen seither steht der Zähler bei %1.</translation>
    </message>
    <message>
        <source>Counter of %1</source>
        <comment>machine</comment>
        <translation>Zähler von %1</translation>
    </message>
</context>
<context>
    <name>laneward::DateBar</name>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>T&amp;oday</source>
        <translation>Heu&amp;te</translation>
    </message>
    <message>
        <source>Go to today</source>
        <translation>Zum heutigen Tag</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
</context>
<context>
    <name>laneward::DemandRow</name>
    <message>
        <source> h</source>
        <translation> h</translation>
    </message>
    <message>
        <source>all lanes of the event</source>
        <translation>alle Bahnen der Veranstaltung</translation>
    </message>
    <message>
        <source>Lanes of this demand</source>
        <translation>Bahnen dieser Anforderung</translation>
    </message>
    <message>
        <source>On lanes</source>
        <translation>Auf Bahn</translation>
    </message>
    <message>
        <source>Demand</source>
        <translation>Anforderung</translation>
    </message>
    <message>
        <source>Asks for</source>
        <translation>Verlangt</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Ölmuster</translation>
    </message>
    <message>
        <source>any pattern</source>
        <translation>beliebiges Muster</translation>
    </message>
    <message>
        <source>Least treatment</source>
        <translation>Mindestbehandlung</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Mindestens</translation>
    </message>
    <message>
        <source>Longest age in hours</source>
        <translation>Höchstes Alter in Stunden</translation>
    </message>
    <message>
        <source>Not older than</source>
        <translation>Nicht älter als</translation>
    </message>
    <message>
        <source>Longest play since then in hours</source>
        <translation>Längstes Spiel seither in Stunden</translation>
    </message>
    <message>
        <source>Play since, at most</source>
        <translation>Seither bespielt, höchstens</translation>
    </message>
    <message>
        <source>Remove this demand</source>
        <translation>Diese Anforderung entfernen</translation>
    </message>
</context>
<context>
    <name>laneward::DemandRows</name>
    <message>
        <source>&amp;Add lanes with another demand</source>
        <translation>Bahnen mit anderer An&amp;forderung</translation>
    </message>
</context>
<context>
    <name>laneward::DiaryView</name>
    <message>
        <source>%1, %2 to %3: Enter keeps it, Esc leaves it as it was</source>
        <translation>%1, %2 bis %3: Eingabetaste übernimmt, Esc lässt alles, wie es war</translation>
    </message>
</context>
<context>
    <name>laneward::DriftPanel</name>
    <message>
        <source>cleaner</source>
        <translation>Reiniger</translation>
    </message>
    <message>
        <source>conditioner %1</source>
        <translation>Bahnöl %1</translation>
    </message>
    <message>
        <source>The records could not be read: %1</source>
        <translation>Die Aufzeichnungen konnten nicht gelesen werden: %1</translation>
    </message>
    <message>
        <source>There is no machine yet: set one up first.</source>
        <translation>Es gibt noch keine Maschine: zuerst eine einrichten.</translation>
    </message>
    <message numerus="yes">
        <source>No fill up to the line is on record yet. Whenever the tank is filled, write down how much was poured; drift is judged from %n fill(s) on.</source>
        <translation>
            <numerusform>Noch ist keine Füllung bis zur Linie aufgezeichnet. Bei jedem Füllen aufschreiben, wie viel eingegossen wurde; beurteilt wird ab %n Füllung.</numerusform>
            <numerusform>Noch ist keine Füllung bis zur Linie aufgezeichnet. Bei jedem Füllen aufschreiben, wie viel eingegossen wurde; beurteilt wird ab %n Füllungen.</numerusform>
        </translation>
    </message>
    <message>
        <source>◆ signal   ● fill   ○ fill of the baseline   – – limits   — centre and values</source>
        <translation>◆ Signal   ● Füllung   ○ Füllung des Vergleichs   – – Grenzen   — Mitte und Werte</translation>
    </message>
    <message>
        <source>● fill</source>
        <translation>● Füllung</translation>
    </message>
    <message>
        <source>◆ now</source>
        <translation>◆ jetzt</translation>
    </message>
    <message>
        <source>◇ passed</source>
        <translation>◇ vergangen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No fill signals: the machine puts out what it did in its baseline.</source>
        <translation>Keine Füllung fällt auf: Die Maschine gibt so viel ab wie im Vergleich.</translation>
    </message>
    <message>
        <source>Nothing is judged yet.</source>
        <translation>Noch wird nichts beurteilt.</translation>
    </message>
    <message>
        <source>Fault is written down</source>
        <translation>Störung ist aufgeschrieben</translation>
    </message>
    <message>
        <source>&amp;Write down a fault</source>
        <translation>Störung auf&amp;schreiben</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) that led to the signal</source>
        <translation>
            <numerusform>%n Lauf, der zum Signal führte</numerusform>
            <numerusform>%n Läufe, die zum Signal führten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) since the fill before</source>
        <translation>
            <numerusform>%n Lauf seit der vorigen Füllung</numerusform>
            <numerusform>%n Läufe seit der vorigen Füllung</numerusform>
        </translation>
    </message>
    <message>
        <source>Write down a fault of %1</source>
        <translation>Störung an %1 aufschreiben</translation>
    </message>
    <message>
        <source>Every machine puts out what it did in its baseline</source>
        <translation>Jede Maschine gibt so viel ab wie im Vergleich</translation>
    </message>
    <message>
        <source>Too few fills yet to judge any machine&apos;s output</source>
        <translation>Noch zu wenige Füllungen, um die Abgabe einer Maschine zu beurteilen</translation>
    </message>
    <message>
        <source>No fill up to the line is on record yet</source>
        <translation>Noch ist keine Füllung bis zur Linie aufgezeichnet</translation>
    </message>
    <message>
        <source>&amp;Machine:</source>
        <translation>&amp;Maschine:</translation>
    </message>
    <message>
        <source>&amp;Product:</source>
        <translation>&amp;Mittel:</translation>
    </message>
    <message>
        <source>C&amp;hart:</source>
        <translation>&amp;Diagramm:</translation>
    </message>
    <message numerus="yes">
        <source>the first %n fill(s)</source>
        <translation>
            <numerusform>die erste Füllung</numerusform>
            <numerusform>die ersten %n Füllungen</numerusform>
        </translation>
    </message>
    <message>
        <source>the fills from … to …</source>
        <translation>die Füllungen von … bis …</translation>
    </message>
    <message>
        <source>&amp;Baseline:</source>
        <translation>&amp;Vergleich:</translation>
    </message>
    <message>
        <source>Baseline from</source>
        <translation>Vergleich von</translation>
    </message>
    <message>
        <source>Baseline to</source>
        <translation>Vergleich bis</translation>
    </message>
    <message>
        <source>Control chart of the fills; arrow keys walk from fill to fill</source>
        <translation>Regelkarte der Füllungen; Pfeiltasten gehen von Füllung zu Füllung</translation>
    </message>
    <message>
        <source>Signals</source>
        <translation>Signale</translation>
    </message>
    <message>
        <source>Signals of the charts</source>
        <translation>Signale der Regelkarten</translation>
    </message>
    <message>
        <source>Keeps the finding as an incident of the machine, for whoever services it</source>
        <translation>Hält den Befund als Vorfall der Maschine fest, für die nächste Wartung</translation>
    </message>
    <message>
        <source>Runs behind it</source>
        <translation>Läufe dahinter</translation>
    </message>
</context>
<context>
    <name>laneward::DriftPlots</name>
    <message>
        <source>poured over nominal</source>
        <translation>eingegossen zu Sollwert</translation>
    </message>
    <message>
        <source>change from the fill before</source>
        <translation>Unterschied zur vorigen Füllung</translation>
    </message>
    <message>
        <source>smoothed average</source>
        <translation>geglättetes Mittel</translation>
    </message>
    <message>
        <source>cumulative sums</source>
        <translation>aufgelaufene Summen</translation>
    </message>
    <message numerus="yes">
        <source>%n run(s)</source>
        <translation>
            <numerusform>%n Lauf</numerusform>
            <numerusform>%n Läufe</numerusform>
        </translation>
    </message>
    <message>
        <source>Fill of %1: %2 poured where the patterns say %3 (ratio %4), %5</source>
        <translation>Füllung vom %1: %2 eingegossen, Sollwert %3 (Verhältnis %4), %5</translation>
    </message>
    <message>
        <source>%1; part of the baseline</source>
        <translation>%1; Teil des Vergleichs</translation>
    </message>
    <message>
        <source>%1; signals: %2</source>
        <translation>%1; Signale: %2</translation>
    </message>
    <message>
        <source>%1: the latest fill of %2 is out of the ordinary</source>
        <translation>%1: Die letzte Füllung von %2 fällt aus dem Rahmen</translation>
    </message>
    <message>
        <source>%1 puts out %2 % more %3 than in its baseline since %4</source>
        <translation>%1 gibt %2 % mehr %3 ab als im Vergleich, seit %4</translation>
    </message>
    <message>
        <source>%1 puts out %2 % less %3 than in its baseline since %4</source>
        <translation>%1 gibt %2 % weniger %3 ab als im Vergleich, seit %4</translation>
    </message>
    <message>
        <source>%1: %2, lanes %3</source>
        <translation>%1: %2, Bahnen %3</translation>
    </message>
</context>
<context>
    <name>laneward::DueModel</name>
    <message>
        <source>%1, %2</source>
        <comment>day, time</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>column: value</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Duty</source>
        <translation>Pflicht</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>Wovon</translation>
    </message>
    <message>
        <source>Falls due</source>
        <translation>Wird fällig</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Rest</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Passt</translation>
    </message>
</context>
<context>
    <name>laneward::DuePanel</name>
    <message>
        <source>No service items are kept yet: brushes, blades, filters, tanks, packs and what else is looked after. The tab Machines begins with the usual ones.</source>
        <translation>Noch wird nichts gewartet: Bürsten, Lippen, Filter, Tanks, Akkus und was sonst gepflegt wird. Der Reiter Maschinen beginnt mit dem Üblichen.</translation>
    </message>
    <message>
        <source>Only what is &amp;due within four weeks</source>
        <translation>Nur was in vier Wochen &amp;fällig wird</translation>
    </message>
    <message>
        <source>▬ from 5 % to 95 %, tick at 50 %   ▼ when it fits</source>
        <translation>▬ von 5 % bis 95 %, Strich bei 50 %   ▼ wann es passt</translation>
    </message>
    <message>
        <source>Record &amp;service…</source>
        <translation>&amp;Wartung eintragen…</translation>
    </message>
    <message>
        <source>service.csv</source>
        <translation>wartung.csv</translation>
    </message>
    <message>
        <source>What falls due</source>
        <translation>Was fällig wird</translation>
    </message>
    <message>
        <source>No duty and no part fits. Take words or the choice away.</source>
        <translation>Keine Pflicht und kein Teil passt. Wörter oder die Auswahl wegnehmen.</translation>
    </message>
    <message>
        <source>Find a duty or part</source>
        <translation>Pflicht oder Teil suchen</translation>
    </message>
</context>
<context>
    <name>laneward::EditForm</name>
    <message>
        <source>&amp;Save</source>
        <translation>S&amp;peichern</translation>
    </message>
    <message>
        <source>Leave it (Esc)</source>
        <translation>So lassen (Esc)</translation>
    </message>
    <message>
        <source>This was changed meanwhile. What you typed stays; leaving it shows what is stored now.</source>
        <translation>Dies wurde inzwischen geändert. Die Eingaben bleiben; nach dem Verlassen erscheint, was jetzt gespeichert ist.</translation>
    </message>
</context>
<context>
    <name>laneward::EventEditor</name>
    <message>
        <source>Edit %1</source>
        <translation>%1 bearbeiten</translation>
    </message>
    <message>
        <source>New event</source>
        <translation>Neue Veranstaltung</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>S&amp;peichern</translation>
    </message>
    <message>
        <source>&amp;Save new event</source>
        <translation>Neue Veranstaltung &amp;speichern</translation>
    </message>
    <message>
        <source>Times are those of %1.</source>
        <translation>Die Zeiten gelten für %1.</translation>
    </message>
    <message>
        <source>The lanes of one demand cannot be read.</source>
        <translation>Die Bahnen einer Anforderung sind nicht lesbar.</translation>
    </message>
    <message>
        <source>No date from today on.</source>
        <translation>Kein Termin ab heute.</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Nächste: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Event editor</source>
        <translation>Veranstaltung bearbeiten</translation>
    </message>
    <message>
        <source>What it asks of the lanes</source>
        <translation>Was sie von den Bahnen verlangt</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>&amp;Title</source>
        <translation>Tite&amp;l</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>A&amp;rt</translation>
    </message>
    <message>
        <source>for example 1-12, 15</source>
        <translation>zum Beispiel 1-12, 15</translation>
    </message>
    <message>
        <source>Lanes</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>&amp;Lanes</source>
        <translation>Ba&amp;hnen</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>Begins at</source>
        <translation>Beginnt um</translation>
    </message>
    <message>
        <source>Ends on</source>
        <translation>Endet am</translation>
    </message>
    <message>
        <source>Ends at</source>
        <translation>Endet um</translation>
    </message>
    <message>
        <source>&amp;Begins</source>
        <translation>Beg&amp;inn</translation>
    </message>
    <message>
        <source>&amp;Until</source>
        <translation>Bi&amp;s</translation>
    </message>
    <message>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <source>Mo&amp;re</source>
        <translation>&amp;Mehr</translation>
    </message>
    <message>
        <source>More settings</source>
        <translation>Weitere Einstellungen</translation>
    </message>
    <message>
        <source>Settle time</source>
        <translation>Ruhezeit</translation>
    </message>
    <message>
        <source>Clearing time</source>
        <translation>Räumzeit</translation>
    </message>
    <message>
        <source>Players</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>Work the first pair twice</source>
        <translation>Erstes Bahnpaar zweimal bearbeiten</translation>
    </message>
    <message>
        <source>Does not take place while the centre is closed</source>
        <translation>Findet bei geschlossenem Center nicht statt</translation>
    </message>
    <message>
        <source>Nobody is there to treat lanes</source>
        <translation>Niemand ist da, um Bahnen zu behandeln</translation>
    </message>
    <message>
        <source>Called off</source>
        <translation>Abgesagt</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Was nicht stimmt</translation>
    </message>
    <message>
        <source>What it changes</source>
        <translation>Was sich ändert</translation>
    </message>
    <message>
        <source>Revert</source>
        <translation>Zurücksetzen</translation>
    </message>
    <message>
        <source>Close (Esc)</source>
        <translation>Schließen (Esc)</translation>
    </message>
    <message>
        <source>Change dates of %1</source>
        <translation>Termine von %1 ändern</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>%1 verschieben</translation>
    </message>
    <message>
        <source>Rename %1</source>
        <translation>%1 umbenennen</translation>
    </message>
    <message>
        <source>Change what %1 asks</source>
        <translation>Anforderungen von %1 ändern</translation>
    </message>
    <message>
        <source>Change lanes of %1</source>
        <translation>Bahnen von %1 ändern</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>%1 hinzufügen</translation>
    </message>
    <message>
        <source>This event was changed meanwhile. Revert shows what is stored now; what you typed stays until then.</source>
        <translation>Diese Veranstaltung wurde inzwischen geändert. Zurücksetzen zeigt, was jetzt gespeichert ist; die Eingaben bleiben bis dahin stehen.</translation>
    </message>
    <message>
        <source>What it costs on %1</source>
        <translation>Was sie am %1 kostet</translation>
    </message>
    <message>
        <source>No job of that day is needed by it, so that it takes neither product nor work.</source>
        <translation>Kein Auftrag dieses Tages wird von ihr gebraucht; sie kostet weder Mittel noch Arbeit.</translation>
    </message>
    <message>
        <source>What it costs</source>
        <translation>Was sie kostet</translation>
    </message>
</context>
<context>
    <name>laneward::EventMover</name>
    <message>
        <source>What if %1 plays %2 to %3?</source>
        <translation>Was wäre, wenn %1 so spielt: %2 bis %3?</translation>
    </message>
    <message>
        <source>What if %1 always plays %2 to %3?</source>
        <translation>Was wäre, wenn %1 immer so spielt: %2 bis %3?</translation>
    </message>
    <message>
        <source>This date only</source>
        <translation>Nur dieser Termin</translation>
    </message>
    <message>
        <source>The whole series</source>
        <translation>Die ganze Serie</translation>
    </message>
    <message>
        <source>Move %1 to %2?</source>
        <translation>%1 verschieben auf %2?</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>%1 verschieben</translation>
    </message>
</context>
<context>
    <name>laneward::FanChart</name>
    <message>
        <source>Stock ahead; arrow keys walk from day to day, the page keys from week to week</source>
        <translation>Vorrat in den nächsten Tagen; die Pfeiltasten gehen von Tag zu Tag, die Bildtasten von Woche zu Woche</translation>
    </message>
    <message>
        <source>%1, end of day: %2 to %3 (90 %), most likely %4; %5 that it has run out by then.</source>
        <translation>%1, Tagesende: %2 bis %3 (90 %), am ehesten %4; mit %5 ist er bis dahin ausgegangen.</translation>
    </message>
</context>
<context>
    <name>laneward::FilmPanel</name>
    <message>
        <source>No film yet: write a stroke, or mend those that are marked.</source>
        <translation>Noch kein Film: einen Ölzug schreiben oder die markierten berichtigen.</translation>
    </message>
    <message>
        <source>in a long run</source>
        <translation>in langem Lauf</translation>
    </message>
    <message>
        <source>lane </source>
        <comment>before a number: the how manieth lane of a run</comment>
        <translation>Bahn </translation>
    </message>
    <message>
        <source>Which lane of the run, from a clean brush: the first lanes get less</source>
        <translation>Die wievielte Bahn des Laufs, von sauberer Bürste an: die ersten Bahnen bekommen weniger</translation>
    </message>
    <message>
        <source>Lane of the run</source>
        <translation>Bahn des Laufs</translation>
    </message>
    <message>
        <source>&amp;Brush of</source>
        <translation>&amp;Bürste von</translation>
    </message>
    <message>
        <source>&amp;Print one page…</source>
        <translation>Eine Seite &amp;drucken…</translation>
    </message>
    <message>
        <source>&amp;Map as a picture (PNG)…</source>
        <translation>Karte als &amp;Bild (PNG)…</translation>
    </message>
    <message>
        <source>&amp;Figures as a table (CSV)…</source>
        <translation>&amp;Zahlen als Tabelle (CSV)…</translation>
    </message>
    <message>
        <source>%1, carries %2</source>
        <comment>machine, length</comment>
        <translation>%1, verschleppt über %2</translation>
    </message>
    <message>
        <source>no machine: without carry</source>
        <translation>keine Ölmaschine: ohne Verschleppung</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>as it is kept</source>
        <translation>wie es gespeichert ist</translation>
    </message>
    <message>
        <source>version %1, from %2</source>
        <translation>Version %1, seit %2</translation>
    </message>
    <message>
        <source>%1 less %2</source>
        <translation>%1 minus %2</translation>
    </message>
    <message>
        <source>Save the map</source>
        <translation>Karte speichern</translation>
    </message>
    <message>
        <source>Picture (*.png)</source>
        <translation>Bild (*.png)</translation>
    </message>
    <message>
        <source>%1 could not be written; nothing was saved.</source>
        <translation>%1 konnte nicht geschrieben werden; nichts wurde gespeichert.</translation>
    </message>
    <message>
        <source>Save the figures</source>
        <translation>Zahlen speichern</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>Show the difference</source>
        <translation>Unterschied zeigen</translation>
    </message>
    <message>
        <source>Besi&amp;de</source>
        <translation>Da&amp;neben</translation>
    </message>
    <message>
        <source>Give out</source>
        <translation>Ausgeben</translation>
    </message>
</context>
<context>
    <name>laneward::FilmProfiles</name>
    <message>
        <source>Film across the boards and along a board</source>
        <translation>Film quer über die Leisten und entlang einer Leiste</translation>
    </message>
    <message>
        <source>Across, at %1</source>
        <translation>Quer, bei %1</translation>
    </message>
    <message>
        <source>Along board %1</source>
        <translation>Entlang Leiste %1</translation>
    </message>
</context>
<context>
    <name>laneward::FilmView</name>
    <message>
        <source>Film map</source>
        <translation>Filmkarte</translation>
    </message>
    <message>
        <source>%1: %2 units, %3 µm</source>
        <comment>pattern, film</comment>
        <translation>%1: %2 Einheiten, %3 µm</translation>
    </message>
    <message>
        <source>Board %1, %2: %3</source>
        <translation>Leiste %1, %2: %3</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
</context>
<context>
    <name>laneward::FirstPage</name>
    <message>
        <source>Which lanes need what tonight?</source>
        <translation>Welche Bahnen brauchen heute Abend was?</translation>
    </message>
    <message>
        <source>Enter the season&apos;s events once. Laneward plans the fewest treatments that make every lane ready in time, prints the sheet for the machine, and keeps what was done.</source>
        <translation>Die Veranstaltungen der Saison einmal eingeben. Laneward plant die wenigsten Behandlungen, mit denen jede Bahn rechtzeitig fertig ist, druckt das Blatt für die Ölmaschine und bewahrt auf, was getan wurde.</translation>
    </message>
    <message>
        <source>Try the &amp;demo centre</source>
        <translation>&amp;Demo-Center ausprobieren</translation>
    </message>
    <message>
        <source>Quillmarsh Bowl, an invented house with 24 lanes and a year of records.</source>
        <translation>Quillmarsh Bowl, ein erfundenes Haus mit 24 Bahnen und Aufzeichnungen eines Jahres.</translation>
    </message>
    <message>
        <source>&amp;Set up my centre</source>
        <translation>Mein Center &amp;einrichten</translation>
    </message>
    <message>
        <source>Name, lanes, machines and units: two minutes.</source>
        <translation>Name, Bahnen, Ölmaschinen und Einheiten: zwei Minuten.</translation>
    </message>
    <message>
        <source>&amp;Open a centre…</source>
        <translation>Center ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>A file that already exists, on this computer.</source>
        <translation>Eine vorhandene Datei auf diesem Computer.</translation>
    </message>
</context>
<context>
    <name>laneward::FollowUpList</name>
    <message>
        <source>! To be followed up</source>
        <translation>! Noch zu klären</translation>
    </message>
    <message>
        <source>Follow up…</source>
        <translation>Klären…</translation>
    </message>
    <message>
        <source>Follow up: %1</source>
        <translation>Klären: %1</translation>
    </message>
</context>
<context>
    <name>laneward::GeometryModel</name>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 in</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>%1 ✓ ok</source>
        <translation>%1 ✓ gut</translation>
    </message>
    <message>
        <source>%1 ! beyond</source>
        <translation>%1 ! zu viel</translation>
    </message>
    <message>
        <source>Lane %1, %2: %3</source>
        <translation>Bahn %1, %2: %3</translation>
    </message>
    <message>
        <source>Lane</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Last inspected</source>
        <translation>Zuletzt geprüft</translation>
    </message>
</context>
<context>
    <name>laneward::GeometryPanel</name>
    <message>
        <source>&amp;Type an inspection</source>
        <translation>Prüfung ein&amp;tippen</translation>
    </message>
    <message>
        <source>geometry.csv</source>
        <translation>geometrie.csv</translation>
    </message>
    <message>
        <source>Worst departure of each lane and feature</source>
        <translation>Größte Abweichung jeder Bahn und jedes Merkmals</translation>
    </message>
    <message>
        <source>◆ beyond the tolerance   ● within   – – tolerance</source>
        <translation>◆ außerhalb der Toleranz   ● innerhalb   – – Toleranz</translation>
    </message>
    <message>
        <source>Worst departure over the years; arrow keys walk from inspection to inspection</source>
        <translation>Größte Abweichung über die Jahre; Pfeiltasten gehen von Prüfung zu Prüfung</translation>
    </message>
    <message>
        <source>&amp;Correct this inspection</source>
        <translation>Diese Prüfung &amp;berichtigen</translation>
    </message>
    <message>
        <source>&amp;Withdraw it</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <source>No lane has been inspected yet. Measure a lane at a few distances, then type the inspection here; each further one adds to its trend.</source>
        <translation>Noch ist keine Bahn geprüft. Eine Bahn in einigen Entfernungen messen und die Prüfung hier eintippen; jede weitere setzt ihren Verlauf fort.</translation>
    </message>
    <message>
        <source>The inspections could not be read: %1</source>
        <translation>Die Prüfungen konnten nicht gelesen werden: %1</translation>
    </message>
    <message>
        <source>%1: %2. Status: %3. Source: %4</source>
        <translation>%1: %2. Stand: %3. Quelle: %4</translation>
    </message>
    <message>
        <source>Lane %1: %2</source>
        <translation>Bahn %1: %2</translation>
    </message>
    <message>
        <source>departure, mm</source>
        <translation>Abweichung, mm</translation>
    </message>
    <message>
        <source>departure, in</source>
        <translation>Abweichung, in</translation>
    </message>
    <message>
        <source>within the tolerance</source>
        <translation>innerhalb der Toleranz</translation>
    </message>
    <message>
        <source>beyond the tolerance</source>
        <translation>außerhalb der Toleranz</translation>
    </message>
    <message>
        <source>%1: at worst %2 at %3, %4</source>
        <translation>%1: höchstens %2 bei %3, %4</translation>
    </message>
    <message>
        <source>This was never measured on this lane.</source>
        <translation>Das wurde auf dieser Bahn nie gemessen.</translation>
    </message>
    <message>
        <source>Withdraw the inspection of lane %1, %2</source>
        <translation>Prüfung der Bahn %1, %2, zurücknehmen</translation>
    </message>
    <message>
        <source>Correct an inspection of lane %1</source>
        <translation>Prüfung der Bahn %1 berichtigen</translation>
    </message>
    <message>
        <source>Inspection of lane %1</source>
        <translation>Prüfung der Bahn %1</translation>
    </message>
    <message>
        <source>lane %1, %2 %3</source>
        <translation>Bahn %1, %2 %3</translation>
    </message>
    <message numerus="yes">
        <source>All %n inspected lane(s) are within the tolerance</source>
        <translation>
            <numerusform>Die eine geprüfte Bahn ist innerhalb der Toleranz</numerusform>
            <numerusform>Alle %n geprüften Bahnen sind innerhalb der Toleranz</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) beyond the tolerance, worst: %1</source>
        <translation>
            <numerusform>%n Bahn außerhalb der Toleranz, am weitesten: %1</numerusform>
            <numerusform>%n Bahnen außerhalb der Toleranz, am weitesten: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>No lane has been inspected yet</source>
        <translation>Noch ist keine Bahn geprüft</translation>
    </message>
</context>
<context>
    <name>laneward::GuideList</name>
    <message>
        <source>All steps of the evening</source>
        <translation>Alle Schritte des Abends</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <comment>mark, done or now, step</comment>
        <translation>%1 %2: %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>done or now, step</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>under way</source>
        <translation>läuft</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>kommt noch</translation>
    </message>
</context>
<context>
    <name>laneward::GuideStepPanel</name>
    <message>
        <source>Cautions for this step</source>
        <translation>Vorsicht bei diesem Schritt</translation>
    </message>
    <message>
        <source>! Caution</source>
        <translation>! Vorsicht</translation>
    </message>
    <message>
        <source>In which state they were read</source>
        <translation>In welchem Zustand sie gemessen wurde</translation>
    </message>
</context>
<context>
    <name>laneward::GuideView</name>
    <message>
        <source>Step by step: %1</source>
        <comment>day</comment>
        <translation>Schritt für Schritt: %1</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>%1, done already</source>
        <comment>step 3 of 17</comment>
        <translation>%1, schon erledigt</translation>
    </message>
    <message>
        <source>No lane needs a treatment today.</source>
        <translation>Heute braucht keine Bahn eine Behandlung.</translation>
    </message>
    <message>
        <source>Events with a demand, entered in the Calendar, bring steps here.</source>
        <translation>Veranstaltungen mit Anspruch, im Kalender eingetragen, bringen Schritte hierher.</translation>
    </message>
    <message>
        <source>A run that nobody planned is recorded on the page Today: Ctrl+U.</source>
        <translation>Eine Fahrt, die niemand geplant hat, wird auf der Seite Heute erfasst: Strg+U.</translation>
    </message>
    <message>
        <source>What falls due besides is on the page Service.</source>
        <translation>Was sonst fällig ist, steht auf der Seite Wartung.</translation>
    </message>
    <message>
        <source>Everything on tonight&apos;s sheet is done.</source>
        <translation>Alles auf dem heutigen Blatt ist erledigt.</translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) left out: see the list.</source>
        <translation>
            <numerusform>%n Schritt ausgelassen: siehe Liste.</numerusform>
            <numerusform>%n Schritte ausgelassen: siehe Liste.</numerusform>
        </translation>
    </message>
    <message>
        <source>Escape leads back to the page.</source>
        <translation>Escape führt zurück zur Seite.</translation>
    </message>
    <message>
        <source>Go on (Space)</source>
        <translation>Weiter (Leertaste)</translation>
    </message>
    <message>
        <source>Done as planned (Space)</source>
        <translation>Wie geplant erledigt (Leertaste)</translation>
    </message>
    <message>
        <source>Begin now (Space)</source>
        <translation>Jetzt beginnen (Leertaste)</translation>
    </message>
    <message>
        <source>Done (Space)</source>
        <translation>Erledigt (Leertaste)</translation>
    </message>
    <message>
        <source>This centre can only be read here: steps can be ticked, but nothing is recorded.</source>
        <translation>Dieses Center kann hier nur gelesen werden: Schritte lassen sich abhaken, aber nichts wird erfasst.</translation>
    </message>
    <message>
        <source>The evening step by step</source>
        <translation>Der Abend Schritt für Schritt</translation>
    </message>
    <message>
        <source>Back to the pa&amp;ge (Esc)</source>
        <translation>&amp;Zurück zur Seite (Esc)</translation>
    </message>
    <message>
        <source>Bac&amp;k one step</source>
        <translation>Ein Schritt z&amp;urück</translation>
    </message>
    <message>
        <source>&amp;Leave it out</source>
        <translation>Aus&amp;lassen</translation>
    </message>
    <message>
        <source>&amp;Otherwise…</source>
        <translation>&amp;Anders…</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Rücktaste</translation>
    </message>
    <message>
        <source>Cut short, other lanes, another pattern, or something happened</source>
        <translation>Abgebrochen, andere Bahnen, anderes Ölmuster oder ein Vorfall</translation>
    </message>
</context>
<context>
    <name>laneward::HistoryFilters</name>
    <message>
        <source>Search: every word must occur</source>
        <translation>Suchen: jedes Wort muss vorkommen</translation>
    </message>
    <message>
        <source>Search in what was done</source>
        <translation>In dem suchen, was getan wurde</translation>
    </message>
    <message>
        <source>Show c&amp;orrected</source>
        <translation>K&amp;orrigierte zeigen</translation>
    </message>
    <message>
        <source>Also what was corrected later, and what only takes it back, struck through</source>
        <translation>Auch was später korrigiert wurde und was es nur zurücknimmt, durchgestrichen</translation>
    </message>
    <message>
        <source>Kind of entry</source>
        <translation>Art des Eintrags</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Service item</source>
        <translation>Wartungsteil</translation>
    </message>
    <message>
        <source>Lane</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>All lanes</source>
        <translation>Alle Bahnen</translation>
    </message>
    <message>
        <source>Lane </source>
        <comment>before a number</comment>
        <translation>Bahn </translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>&amp;from</source>
        <translation>&amp;von</translation>
    </message>
    <message>
        <source>History from</source>
        <translation>Verlauf von</translation>
    </message>
    <message>
        <source>&amp;to</source>
        <translation>&amp;bis</translation>
    </message>
    <message>
        <source>History to</source>
        <translation>Verlauf bis</translation>
    </message>
    <message>
        <source>All kinds</source>
        <translation>Alle Arten</translation>
    </message>
    <message>
        <source>All machines</source>
        <translation>Alle Maschinen</translation>
    </message>
    <message>
        <source>All items</source>
        <translation>Alle Teile</translation>
    </message>
    <message>
        <source>All people</source>
        <translation>Alle Personen</translation>
    </message>
    <message>
        <source>All products</source>
        <translation>Alle Mittel</translation>
    </message>
</context>
<context>
    <name>laneward::HistoryModel</name>
    <message>
        <source>%1: %2</source>
        <comment>column: value</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>laneward::HistoryPage</name>
    <message>
        <source>Reading what was done…</source>
        <translation>Liest, was getan wurde…</translation>
    </message>
    <message>
        <source>Stopped: nothing before %1 is listed.</source>
        <translation>Angehalten: Vor %1 ist nichts aufgeführt.</translation>
    </message>
    <message>
        <source>Stopped: what was done is not known.</source>
        <translation>Angehalten: Was getan wurde, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>What was done could not be read: %1</source>
        <translation>Was getan wurde, konnte nicht gelesen werden: %1</translation>
    </message>
    <message>
        <source>Nothing that was recorded on these days fits. Take words or choices away, or go further back.</source>
        <translation>Nichts, was an diesen Tagen festgehalten wurde, passt. Wörter oder Auswahlen wegnehmen oder weiter zurückgehen.</translation>
    </message>
    <message>
        <source>Nothing is recorded on these days. Runs, fills and incidents are recorded on the page Today, services on the page Service, counts and deliveries on the page Supplies.</source>
        <translation>An diesen Tagen ist nichts festgehalten. Läufe, Füllungen und Vorfälle werden auf der Seite Heute festgehalten, Wartungen auf der Seite Wartung, Zählungen und Lieferungen auf der Seite Vorräte.</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>What was done?</source>
        <translation>Was wurde getan?</translation>
    </message>
    <message>
        <source>Take all choices a&amp;way</source>
        <translation>Alle Ausw&amp;ahlen wegnehmen</translation>
    </message>
    <message>
        <source>What is listed, added up</source>
        <translation>Summen des Aufgeführten</translation>
    </message>
    <message>
        <source>How the item or machine has fared on these days</source>
        <translation>Wie es dem Teil oder der Maschine an diesen Tagen ergangen ist</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Print what is listed</source>
        <translation>Aufgeführtes drucken</translation>
    </message>
    <message>
        <source>P&amp;DF…</source>
        <translation>PD&amp;F…</translation>
    </message>
    <message>
        <source>Save what is listed as PDF</source>
        <translation>Aufgeführtes als PDF speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>CS&amp;V…</source>
        <translation>CS&amp;V…</translation>
    </message>
    <message>
        <source>Save what is listed as CSV</source>
        <translation>Aufgeführtes als CSV speichern</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>Reading what was done</source>
        <translation>Liest, was getan wurde</translation>
    </message>
    <message>
        <source>What was done, the newest first</source>
        <translation>Was getan wurde, das Neueste zuerst</translation>
    </message>
    <message>
        <source>What was done: %1</source>
        <comment>name of the centre</comment>
        <translation>Was getan wurde: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>centre, time</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Nothing is listed, so nothing was printed.</source>
        <translation>Nichts ist aufgeführt, also wurde nichts gedruckt.</translation>
    </message>
    <message>
        <source>%1 entries are too many for paper; narrow the list to %2, or save it as CSV. Nothing was printed.</source>
        <translation>%1 Einträge sind zu viele für Papier; die Liste auf %2 eingrenzen oder als CSV speichern. Nichts wurde gedruckt.</translation>
    </message>
    <message>
        <source>What is listed is printed</source>
        <translation>Das Aufgeführte ist gedruckt</translation>
    </message>
    <message>
        <source>Nothing was printed: the printer cannot be painted on.</source>
        <translation>Nichts wurde gedruckt: Auf dem Drucker lässt sich nicht zeichnen.</translation>
    </message>
    <message>
        <source>Save what is listed</source>
        <translation>Aufgeführtes speichern</translation>
    </message>
    <message>
        <source>history.%1</source>
        <comment>ending of a file</comment>
        <translation>verlauf.%1</translation>
    </message>
    <message>
        <source>The list is in %1</source>
        <translation>Die Liste ist in %1</translation>
    </message>
    <message>
        <source>%1 could not be written; nothing was changed.</source>
        <translation>%1 konnte nicht geschrieben werden; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Stopped: the list may be older than the last record.</source>
        <translation>Angehalten: Die Liste kann älter sein als der letzte Eintrag.</translation>
    </message>
    <message>
        <source>What was done is not known.</source>
        <translation>Was getan wurde, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Read o&amp;n</source>
        <translation>Weite&amp;rlesen</translation>
    </message>
</context>
<context>
    <name>laneward::HistoryPanel</name>
    <message>
        <source>Details of the entry</source>
        <translation>Einzelheiten des Eintrags</translation>
    </message>
    <message>
        <source>Close (Esc)</source>
        <translation>Schließen (Esc)</translation>
    </message>
    <message>
        <source>This entry does not stand: it was corrected, or only takes another back.</source>
        <translation>Dieser Eintrag gilt nicht: Er wurde korrigiert oder nimmt nur einen anderen zurück.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>kind of entry, time</comment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>fact: value</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1:</source>
        <comment>fact</comment>
        <translation>%1:</translation>
    </message>
    <message>
        <source>Corrections</source>
        <translation>Korrekturen</translation>
    </message>
    <message>
        <source>Replaces an entry of before the days that are read.</source>
        <translation>Ersetzt einen Eintrag von vor den gelesenen Tagen.</translation>
    </message>
    <message>
        <source>%1 (stands)</source>
        <comment>time of an entry</comment>
        <translation>%1 (gilt)</translation>
    </message>
    <message>
        <source>Follow-up</source>
        <translation>Klärung</translation>
    </message>
    <message>
        <source>Follows up</source>
        <translation>Klärt</translation>
    </message>
    <message>
        <source>An entry of before the days that are read.</source>
        <translation>Einen Eintrag aus der Zeit vor den gelesenen Tagen.</translation>
    </message>
    <message>
        <source>Followed up</source>
        <translation>Geklärt</translation>
    </message>
</context>
<context>
    <name>laneward::HouseForm</name>
    <message>
        <source>&amp;Name of the centre:</source>
        <translation>&amp;Name des Hauses:</translation>
    </message>
    <message>
        <source>Number of &amp;lanes:</source>
        <translation>Zahl der &amp;Bahnen:</translation>
    </message>
    <message>
        <source>&amp;Time zone:</source>
        <translation>&amp;Zeitzone:</translation>
    </message>
    <message>
        <source>Play and work after midnight belong to the evening before until then</source>
        <translation>Spiel und Arbeit nach Mitternacht gehören bis dahin zum Abend davor</translation>
    </message>
    <message>
        <source> h</source>
        <comment>suffix</comment>
        <translation> h</translation>
    </message>
    <message>
        <source>The day &amp;begins at:</source>
        <translation>Der &amp;Tag beginnt um:</translation>
    </message>
    <message>
        <source>no work while the neighbour on the same &amp;approach is played on</source>
        <translation>keine Arbeit, solange auf der Nachbarbahn am selben &amp;Anlauf gespielt wird</translation>
    </message>
    <message>
        <source>&amp;Reserve before lanes must be ready:</source>
        <translation>&amp;Reserve, bevor Bahnen fertig sein müssen:</translation>
    </message>
    <message>
        <source>New events: conditioner &amp;settles for:</source>
        <translation>Neue Veranstaltungen: das Bahn&amp;öl ruht:</translation>
    </message>
    <message>
        <source>New events: players &amp;clear the lanes in:</source>
        <translation>Neue Veranstaltungen: Räumen da&amp;uert:</translation>
    </message>
    <message>
        <source>New events: &amp;fresh means not older than:</source>
        <translation>Neue Veranstaltungen: &amp;frisch heißt nicht älter als:</translation>
    </message>
    <message>
        <source>millilitres, metres</source>
        <translation>Milliliter, Meter</translation>
    </message>
    <message>
        <source>US fluid ounces, feet</source>
        <translation>US-Flüssigunzen, Fuß</translation>
    </message>
    <message>
        <source>A4</source>
        <comment>paper</comment>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <comment>paper</comment>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Three letters, as EUR. Prices that are known stay the same numbers.</source>
        <translation>Drei Buchstaben wie EUR. Bekannte Preise bleiben dieselben Zahlen.</translation>
    </message>
    <message>
        <source>&amp;Units:</source>
        <translation>&amp;Einheiten:</translation>
    </message>
    <message>
        <source>&amp;Paper:</source>
        <translation>&amp;Papier:</translation>
    </message>
    <message>
        <source>Curr&amp;ency (prices are not converted):</source>
        <translation>&amp;Währung (Preise werden nicht umgerechnet):</translation>
    </message>
    <message>
        <source>Change the centre</source>
        <translation>Haus ändern</translation>
    </message>
</context>
<context>
    <name>laneward::HouseView</name>
    <message>
        <source>Lanes and times</source>
        <translation>Bahnen und Zeiten</translation>
    </message>
    <message>
        <source>out of service</source>
        <translation>außer Betrieb</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>laneward::ImportPanel</name>
    <message>
        <source>Events from %1</source>
        <translation>Veranstaltungen aus %1</translation>
    </message>
    <message>
        <source>What the file does not say about an event is taken from here.</source>
        <translation>Was die Datei über eine Veranstaltung nicht sagt, wird von hier genommen.</translation>
    </message>
    <message>
        <source>&amp;Lanes:</source>
        <translation>&amp;Bahnen:</translation>
    </message>
    <message>
        <source>&amp;Kind of event:</source>
        <translation>&amp;Art der Veranstaltung:</translation>
    </message>
    <message>
        <source>&amp;Surface:</source>
        <translation>Bahn&amp;zustand:</translation>
    </message>
    <message>
        <source>&amp;Bring them in</source>
        <translation>&amp;Übernehmen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>%1 Nothing was changed.</source>
        <translation>%1 Nichts wurde geändert.</translation>
    </message>
    <message numerus="yes">
        <source>%n series of events can come in.</source>
        <translation>
            <numerusform>%n Veranstaltungsserie kann übernommen werden.</numerusform>
            <numerusform>%n Veranstaltungsserien können übernommen werden.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more note(s)</source>
        <translation>
            <numerusform>und %n weiterer Hinweis</numerusform>
            <numerusform>und %n weitere Hinweise</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Import %n series of events</source>
        <translation>
            <numerusform>%n Veranstaltungsserie importieren</numerusform>
            <numerusform>%n Veranstaltungsserien importieren</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::IncidentForm</name>
    <message>
        <source>Record an incident</source>
        <translation>Vorfall erfassen</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschehen ist</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>&amp;Kind:</source>
        <translation>A&amp;rt:</translation>
    </message>
    <message>
        <source>L&amp;ane:</source>
        <translation>&amp;Bahn:</translation>
    </message>
    <message>
        <source>&amp;Machine:</source>
        <translation>&amp;Ölmaschine:</translation>
    </message>
    <message>
        <source>&amp;In words:</source>
        <translation>&amp;In Worten:</translation>
    </message>
    <message>
        <source>&amp;Record the incident</source>
        <translation>Vorfall &amp;erfassen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>People first: follow the house&apos;s first aid and emergency instructions; the record can wait.</source>
        <translation>Menschen zuerst: Erste-Hilfe- und Notfallanweisungen des Hauses befolgen; das Erfassen kann warten.</translation>
    </message>
    <message>
        <source>Nothing recorded yet: say in a word what happened.</source>
        <translation>Noch nichts erfasst: kurz angeben, was geschehen ist.</translation>
    </message>
    <message>
        <source>Closed until</source>
        <translation>Gesperrt bis</translation>
    </message>
    <message>
        <source>What was done about it</source>
        <translation>Was daraufhin getan wurde</translation>
    </message>
    <message>
        <source>&amp;Close lane %1 until</source>
        <translation>Bahn %1 &amp;sperren bis</translation>
    </message>
    <message>
        <source>&amp;Close the lane until</source>
        <translation>Bahn &amp;sperren bis</translation>
    </message>
    <message>
        <source>Lane %1 is in &amp;use again</source>
        <translation>Bahn %1 ist wieder in &amp;Betrieb</translation>
    </message>
    <message>
        <source>Lanes %1 are in &amp;use again</source>
        <translation>Bahnen %1 sind wieder in &amp;Betrieb</translation>
    </message>
    <message>
        <source>Nothing recorded yet: say in a word what was done.</source>
        <translation>Noch nichts erfasst: in einem Wort sagen, was getan wurde.</translation>
    </message>
    <message>
        <source>Nothing recorded yet: a lane can only be closed until a time to come.</source>
        <translation>Noch nichts erfasst: eine Bahn lässt sich nur bis zu einer künftigen Zeit sperren.</translation>
    </message>
</context>
<context>
    <name>laneward::InspectionForm</name>
    <message>
        <source>An inspection of a lane</source>
        <translation>Eine Prüfung einer Bahn</translation>
    </message>
    <message>
        <source>Departures from the true plane; up, or the right edge above the left, is +. Leave a cell empty where nothing was measured.</source>
        <translation>Abweichungen von der wahren Ebene; nach oben, oder rechte Kante über der linken, ist +. Felder leer lassen, wo nichts gemessen wurde.</translation>
    </message>
    <message>
        <source>&amp;Lane:</source>
        <translation>&amp;Bahn:</translation>
    </message>
    <message>
        <source>&amp;Taken:</source>
        <translation>&amp;Gemessen:</translation>
    </message>
    <message>
        <source>&amp;Note:</source>
        <translation>Be&amp;merkung:</translation>
    </message>
    <message>
        <source>Measured departures by distance and feature</source>
        <translation>Gemessene Abweichungen nach Entfernung und Merkmal</translation>
    </message>
    <message>
        <source>&amp;Keep the inspection</source>
        <translation>Prüfung be&amp;halten</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>An inspection</source>
        <translation>Eine Prüfung</translation>
    </message>
    <message>
        <source>Correct an inspection</source>
        <translation>Eine Prüfung berichtigen</translation>
    </message>
    <message>
        <source>Nothing kept yet: row %1: %2.</source>
        <translation>Noch nichts behalten: Zeile %1: %2.</translation>
    </message>
    <message>
        <source>Nothing kept yet: no departure has been typed.</source>
        <translation>Noch nichts behalten: Keine Abweichung ist eingetippt.</translation>
    </message>
    <message>
        <source>Nothing kept yet: the time is still to come.</source>
        <translation>Noch nichts behalten: Die Zeit liegt in der Zukunft.</translation>
    </message>
    <message>
        <source>Nothing kept yet: %1.</source>
        <translation>Noch nichts behalten: %1.</translation>
    </message>
</context>
<context>
    <name>laneward::InspectionModel</name>
    <message>
        <source>the distance is not a number</source>
        <translation>die Entfernung ist keine Zahl</translation>
    </message>
    <message>
        <source>the distance is not on the lane (0 to %1)</source>
        <translation>die Entfernung liegt nicht auf der Bahn (0 bis %1)</translation>
    </message>
    <message>
        <source>at which distance?</source>
        <translation>in welcher Entfernung?</translation>
    </message>
    <message>
        <source>%1 is not a number</source>
        <translation>%1 ist keine Zahl</translation>
    </message>
    <message>
        <source>%1 beyond %2 cannot be</source>
        <translation>%1 über %2 gibt es nicht</translation>
    </message>
    <message>
        <source>%1, row %2: %3</source>
        <translation>%1, Zeile %2: %3</translation>
    </message>
    <message>
        <source>Distance, m</source>
        <translation>Entfernung, m</translation>
    </message>
    <message>
        <source>Distance, ft</source>
        <translation>Entfernung, ft</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>%1, mm</source>
        <translation>%1, mm</translation>
    </message>
    <message>
        <source>%1, in</source>
        <translation>%1, in</translation>
    </message>
</context>
<context>
    <name>laneward::ItemForm</name>
    <message>
        <source>New item of %1</source>
        <comment>machine</comment>
        <translation>Neues Wartungsteil von %1</translation>
    </message>
    <message>
        <source>New item of the centre</source>
        <translation>Neues Wartungsteil der Anlage</translation>
    </message>
    <message>
        <source>Change %1</source>
        <comment>service item</comment>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>an empty item</source>
        <translation>einem leeren Teil</translation>
    </message>
    <message>
        <source>(no name yet)</source>
        <translation>(noch kein Name)</translation>
    </message>
    <message>
        <source>It has been recorded and stays, so that its history keeps its name</source>
        <translation>Sie wurde schon eingetragen und bleibt, damit ihre Geschichte den Namen behält</translation>
    </message>
    <message>
        <source>new</source>
        <comment>a service item</comment>
        <translation>neu</translation>
    </message>
    <message>
        <source>Add %1</source>
        <comment>service item</comment>
        <translation>%1 hinzufügen</translation>
    </message>
    <message>
        <source>Retire %1</source>
        <comment>service item</comment>
        <translation>%1 ausmustern</translation>
    </message>
    <message>
        <source>Take %1 up again</source>
        <comment>service item</comment>
        <translation>%1 wieder aufnehmen</translation>
    </message>
    <message>
        <source>battery</source>
        <translation>Akku</translation>
    </message>
    <message>
        <source>lifting</source>
        <translation>Heben</translation>
    </message>
    <message>
        <source>slippery floor</source>
        <translation>Rutschgefahr</translation>
    </message>
    <message>
        <source>moving parts</source>
        <translation>bewegte Teile</translation>
    </message>
    <message>
        <source>chemicals</source>
        <translation>Chemikalien</translation>
    </message>
    <message>
        <source>waste</source>
        <translation>Abwasser</translation>
    </message>
    <message>
        <source>&amp;Begin with:</source>
        <translation>&amp;Beginnen mit:</translation>
    </message>
    <message>
        <source>&amp;Name:</source>
        <translation>&amp;Name:</translation>
    </message>
    <message>
        <source>&amp;Kind:</source>
        <translation>A&amp;rt:</translation>
    </message>
    <message>
        <source>N&amp;ote:</source>
        <translation>Be&amp;merkung:</translation>
    </message>
    <message>
        <source>&amp;Add a duty</source>
        <translation>Pflicht &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>&amp;Duty:</source>
        <translation>&amp;Pflicht:</translation>
    </message>
    <message>
        <source>Kind of work</source>
        <translation>Art der Arbeit</translation>
    </message>
    <message>
        <source>It is &amp;called:</source>
        <translation>Sie h&amp;eißt:</translation>
    </message>
    <message>
        <source> lanes</source>
        <comment>suffix</comment>
        <translation> Bahnen</translation>
    </message>
    <message>
        <source> runs</source>
        <comment>suffix</comment>
        <translation> Läufe</translation>
    </message>
    <message>
        <source> h</source>
        <comment>suffix</comment>
        <translation> h</translation>
    </message>
    <message>
        <source> L</source>
        <comment>suffix</comment>
        <translation> l</translation>
    </message>
    <message>
        <source> gal</source>
        <comment>suffix</comment>
        <translation> gal</translation>
    </message>
    <message>
        <source> days</source>
        <comment>suffix</comment>
        <translation> Tage</translation>
    </message>
    <message>
        <source>Due after: %1</source>
        <comment>lanes, hours of work</comment>
        <translation>Fällig nach: %1</translation>
    </message>
    <message>
        <source>not by %1</source>
        <comment>lanes, hours of work</comment>
        <translation>ohne %1</translation>
    </message>
    <message>
        <source>Due a&amp;fter:</source>
        <translation>&amp;Fällig nach:</translation>
    </message>
    <message>
        <source>And on these da&amp;ys:</source>
        <translation>Und an diesen Ta&amp;gen:</translation>
    </message>
    <message>
        <source>S&amp;teps, one a line:</source>
        <translation>S&amp;chritte, je Zeile einer:</translation>
    </message>
    <message>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <source>the machine is opened for it</source>
        <translation>die Maschine wird dafür geöffnet</translation>
    </message>
    <message>
        <source>&amp;Work:</source>
        <translation>&amp;Arbeit:</translation>
    </message>
    <message>
        <source>Done b&amp;y:</source>
        <translation>&amp;Von wem:</translation>
    </message>
    <message>
        <source>Cautions:</source>
        <translation>Vorsicht:</translation>
    </message>
    <message>
        <source>&amp;Parts it takes:</source>
        <translation>Nötige &amp;Teile:</translation>
    </message>
    <message>
        <source>Part, work, and all that the stopped run costs</source>
        <translation>Teil, Arbeit und alles, was der abgebrochene Lauf kostet</translation>
    </message>
    <message>
        <source>Costs when done &amp;in time:</source>
        <translation>Kosten rechtze&amp;itig:</translation>
    </message>
    <message>
        <source>Costs when it has fai&amp;led first:</source>
        <translation>Kosten nach einem Ausfa&amp;ll:</translation>
    </message>
</context>
<context>
    <name>laneward::JobDetails</name>
    <message>
        <source>About the selected job</source>
        <translation>Zum gewählten Auftrag</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <comment>time, what</comment>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>No lane needs a treatment today. Events with a demand, entered in the Calendar, bring jobs here.</source>
        <translation>Heute braucht keine Bahn eine Behandlung. Veranstaltungen mit einer Anforderung, im Kalender eingetragen, führen hier zu Aufträgen.</translation>
    </message>
    <message>
        <source>Select a job to see its steps, what it takes, and why it is where it is.</source>
        <translation>Einen Auftrag wählen, um seine Schritte zu sehen, was er braucht und warum er dort liegt.</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Takes</source>
        <translation>Braucht</translation>
    </message>
    <message>
        <source>%1 of conditioner</source>
        <translation>%1 Bahnöl</translation>
    </message>
    <message>
        <source>%1 of cleaner</source>
        <translation>%1 Reiniger</translation>
    </message>
    <message>
        <source>room for %1 of waste</source>
        <translation>Platz für %1 im Schmutztank</translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) of the pack&apos;s charge</source>
        <translation>
            <numerusform>Akkuladung für %n Bahn</numerusform>
            <numerusform>Akkuladung für %n Bahnen</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <comment>between amounts</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>Why here</source>
        <translation>Warum hier</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>lanes: treatment</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>If the outing moved</source>
        <translation>Wenn die Fahrt verschoben würde</translation>
    </message>
    <message>
        <source>! %1</source>
        <comment>a warning</comment>
        <translation>! %1</translation>
    </message>
</context>
<context>
    <name>laneward::JobModel</name>
    <message>
        <source>%1 late</source>
        <translation>%1 zu spät</translation>
    </message>
    <message>
        <source>%1 tight</source>
        <translation>%1 knapp</translation>
    </message>
    <message>
        <source>unplanned</source>
        <translation>ungeplant</translation>
    </message>
    <message>
        <source>%1: %2, lanes %3, start by %4, ready at %5</source>
        <translation>%1: %2, Bahn %3, Beginn bis %4, fertig um %5</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Start by</source>
        <translation>Beginn bis</translation>
    </message>
    <message>
        <source>Ready at</source>
        <translation>Fertig um</translation>
    </message>
    <message>
        <source>Lanes</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Conditioner</source>
        <translation>Bahnöl</translation>
    </message>
    <message>
        <source>Spare</source>
        <translation>Spielraum</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Ölmaschine</translation>
    </message>
    <message>
        <source>none</source>
        <comment>no time to spare</comment>
        <translation>keine</translation>
    </message>
</context>
<context>
    <name>laneward::LanesPage</name>
    <message>
        <source>&amp;Record…</source>
        <translation>E&amp;rfassen…</translation>
    </message>
    <message>
        <source>&amp;Edit event…</source>
        <translation>&amp;Veranstaltung bearbeiten…</translation>
    </message>
    <message>
        <source>&amp;Print sheet…</source>
        <translation>Blatt dru&amp;cken…</translation>
    </message>
    <message>
        <source>Eve&amp;ning</source>
        <translation>Abe&amp;nd</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>Ta&amp;g</translation>
    </message>
    <message>
        <source>&amp;Week</source>
        <translation>&amp;Woche</translation>
    </message>
    <message>
        <source>&amp;Month</source>
        <translation>&amp;Monat</translation>
    </message>
    <message>
        <source>Sea&amp;son</source>
        <translation>Sai&amp;son</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>um %1</translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) to run</source>
        <translation>
            <numerusform>%n Auftrag zu fahren</numerusform>
            <numerusform>%n Aufträge zu fahren</numerusform>
        </translation>
    </message>
    <message>
        <source>no job to run</source>
        <translation>kein Auftrag zu fahren</translation>
    </message>
    <message numerus="yes">
        <source>%n demand(s) that no job can meet</source>
        <translation>
            <numerusform>%n Anforderung, die kein Auftrag erfüllen kann</numerusform>
            <numerusform>%n Anforderungen, die kein Auftrag erfüllen kann</numerusform>
        </translation>
    </message>
    <message>
        <source>every lane is ready in time</source>
        <translation>jede Bahn wird rechtzeitig fertig</translation>
    </message>
    <message>
        <source>some lanes have no record</source>
        <translation>von einigen Bahnen fehlt jeder Eintrag</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Lanes</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>What is on each lane now, and at any time?</source>
        <translation>Was liegt jetzt auf jeder Bahn, und zu jeder anderen Zeit?</translation>
    </message>
    <message>
        <source>What if the job on lanes %1 starts %2?</source>
        <translation>Was wäre, wenn der Auftrag auf den Bahnen %1 beginnt: %2?</translation>
    </message>
    <message>
        <source>The job stays where it was</source>
        <translation>Der Auftrag bleibt, wo er war</translation>
    </message>
    <message>
        <source>That time has passed.</source>
        <translation>Diese Zeit ist vorbei.</translation>
    </message>
    <message>
        <source>Y&amp;ear</source>
        <translation>&amp;Jahr</translation>
    </message>
</context>
<context>
    <name>laneward::LastDoneForm</name>
    <message>
        <source>Counter now: %1</source>
        <comment>lanes, hours of work</comment>
        <translation>Zähler jetzt: %1</translation>
    </message>
    <message>
        <source>no counter of %1</source>
        <comment>lanes, hours of work</comment>
        <translation>kein Zähler: %1</translation>
    </message>
    <message>
        <source>&amp;Counters show now:</source>
        <translation>&amp;Zähler zeigen jetzt:</translation>
    </message>
    <message>
        <source>When each duty was last done</source>
        <translation>Wann jede Pflicht zuletzt getan wurde</translation>
    </message>
    <message>
        <source>&amp;Last done:</source>
        <translation>Zu&amp;letzt getan:</translation>
    </message>
    <message>
        <source>What was last done on %1, typed once</source>
        <comment>machine</comment>
        <translation>Was an %1 zuletzt getan wurde, einmal eingegeben</translation>
    </message>
    <message>
        <source>What was last done in the centre, typed once</source>
        <translation>Was in der Anlage zuletzt getan wurde, einmal eingegeben</translation>
    </message>
    <message>
        <source>Typed in when the centre was set up</source>
        <translation>Beim Einrichten der Anlage eingegeben</translation>
    </message>
    <message>
        <source>What was last done on %1</source>
        <comment>machine</comment>
        <translation>Was an %1 zuletzt getan wurde</translation>
    </message>
    <message>
        <source>What was last done in the centre</source>
        <translation>Was in der Anlage zuletzt getan wurde</translation>
    </message>
</context>
<context>
    <name>laneward::LastDoneModel</name>
    <message>
        <source>%1, %2: %3</source>
        <comment>duty, column, value</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Duty</source>
        <translation>Pflicht</translation>
    </message>
    <message>
        <source>Last done on</source>
        <translation>Zuletzt am</translation>
    </message>
    <message>
        <source>Lanes since</source>
        <translation>Bahnen seither</translation>
    </message>
    <message>
        <source>Runs since</source>
        <translation>Läufe seither</translation>
    </message>
    <message>
        <source>Hours since</source>
        <translation>Stunden seither</translation>
    </message>
    <message>
        <source>%1 since</source>
        <comment>litres</comment>
        <translation>%1 seither</translation>
    </message>
</context>
<context>
    <name>laneward::LedgerModel</name>
    <message>
        <source>run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>level read or tank filled</source>
        <translation>Stand abgelesen oder Tank gefüllt</translation>
    </message>
    <message>
        <source>count of stock</source>
        <translation>Zählung</translation>
    </message>
    <message>
        <source>service</source>
        <translation>Wartung</translation>
    </message>
    <message>
        <source>order %1</source>
        <translation>Bestellung %1</translation>
    </message>
    <message>
        <source>an order</source>
        <translation>eine Bestellung</translation>
    </message>
    <message>
        <source>! more than was there</source>
        <translation>! mehr, als da war</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>takes back</source>
        <translation>nimmt zurück</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>Vorhanden</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Durch</translation>
    </message>
</context>
<context>
    <name>laneward::LedgerPanel</name>
    <message>
        <source>&amp;Supply:</source>
        <translation>&amp;Vorrat:</translation>
    </message>
    <message>
        <source>&amp;from</source>
        <translation>&amp;von</translation>
    </message>
    <message>
        <source>Ledger from</source>
        <translation>Buch von</translation>
    </message>
    <message>
        <source>&amp;to</source>
        <translation>&amp;bis</translation>
    </message>
    <message>
        <source>Ledger to</source>
        <translation>Buch bis</translation>
    </message>
    <message>
        <source>Print &amp;list…</source>
        <translation>&amp;Liste drucken…</translation>
    </message>
    <message>
        <source>Ledger of %1</source>
        <translation>Lagerbuch: %1</translation>
    </message>
    <message>
        <source>ledger.csv</source>
        <translation>lagerbuch.csv</translation>
    </message>
    <message>
        <source>Movements, the newest first</source>
        <translation>Bewegungen, die neueste zuerst</translation>
    </message>
    <message>
        <source>Show &amp;earlier</source>
        <translation>&amp;Früheres zeigen</translation>
    </message>
    <message>
        <source>Why it was wrong, for example: written down twice</source>
        <translation>Warum es falsch war, zum Beispiel: doppelt aufgeschrieben</translation>
    </message>
    <message>
        <source>&amp;Reason:</source>
        <translation>&amp;Grund:</translation>
    </message>
    <message>
        <source>Ta&amp;ke back</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <source>Books the chosen movement the other way; both stay in the ledger</source>
        <translation>Bucht die gewählte Bewegung andersherum; beide bleiben im Buch</translation>
    </message>
    <message>
        <source>%1 (retired)</source>
        <comment>supply</comment>
        <translation>%1 (ausgemustert)</translation>
    </message>
    <message>
        <source>No supplies are kept yet, so nothing has moved.</source>
        <translation>Es werden noch keine Vorräte geführt, also hat sich nichts bewegt.</translation>
    </message>
    <message>
        <source>Nothing moved since %1.</source>
        <translation>Seit %1 hat sich nichts bewegt.</translation>
    </message>
    <message numerus="yes">
        <source>%n movement(s) since %1.</source>
        <translation>
            <numerusform>%n Bewegung seit %1</numerusform>
            <numerusform>%n Bewegungen seit %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Take back: %1 of %2</source>
        <translation>Zurücknehmen: %1, %2</translation>
    </message>
</context>
<context>
    <name>laneward::LengthBox</name>
    <message>
        <source> m</source>
        <comment>suffix</comment>
        <translation> m</translation>
    </message>
    <message>
        <source> ft</source>
        <comment>suffix</comment>
        <translation> ft</translation>
    </message>
</context>
<context>
    <name>laneward::LevelBar</name>
    <message>
        <source>%1: %2</source>
        <comment>tank: how much</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>! </source>
        <comment>before a level that does not do</comment>
        <translation>! </translation>
    </message>
</context>
<context>
    <name>laneward::LevelsForm</name>
    <message>
        <source> V</source>
        <comment>suffix</comment>
        <translation> V</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht abgelesen</translation>
    </message>
    <message>
        <source>Rested &amp;volts:</source>
        <translation>&amp;Ruhespannung:</translation>
    </message>
    <message>
        <source>&amp;Conditioner:</source>
        <translation>Bahn&amp;öl:</translation>
    </message>
    <message>
        <source>&amp;Second conditioner:</source>
        <translation>&amp;Zweites Bahnöl:</translation>
    </message>
    <message>
        <source>Clea&amp;ner:</source>
        <translation>Rein&amp;iger:</translation>
    </message>
    <message>
        <source>&amp;Waste in its tank:</source>
        <translation>Im Schm&amp;utztank:</translation>
    </message>
    <message>
        <source>&amp;Lanes left on the pack:</source>
        <translation>Bahnen mit diesem A&amp;kku:</translation>
    </message>
    <message>
        <source>&amp;Filled</source>
        <translation>&amp;Gefüllt</translation>
    </message>
    <message>
        <source>&amp;Emptied</source>
        <translation>Ge&amp;leert</translation>
    </message>
    <message>
        <source>Pac&amp;k swapped</source>
        <translation>Akku ge&amp;wechselt</translation>
    </message>
    <message>
        <source>&amp;Keep the reading</source>
        <translation>Messung &amp;speichern</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>What it took to reach the line: from this Laneward learns what the machine really puts out</source>
        <translation>Was bis zum Strich nötig war: daraus lernt Laneward, was die Ölmaschine wirklich abgibt</translation>
    </message>
    <message>
        <source>Second conditioner poured &amp;in:</source>
        <translation>Zwe&amp;ites Bahnöl nachgefüllt:</translation>
    </message>
    <message>
        <source>Cleaner poure&amp;d in:</source>
        <translation>Reiniger nachgef&amp;üllt:</translation>
    </message>
    <message>
        <source>as before</source>
        <translation>wie bisher</translation>
    </message>
    <message>
        <source>charged: %1</source>
        <comment>pack</comment>
        <translation>geladen: %1</translation>
    </message>
    <message>
        <source>swapped for %1</source>
        <comment>pack</comment>
        <translation>gewechselt zu %1</translation>
    </message>
    <message>
        <source>swapped for another one</source>
        <translation>gewechselt zu einem anderen</translation>
    </message>
    <message>
        <source>&amp;Volts:</source>
        <translation>&amp;Volt:</translation>
    </message>
    <message>
        <source>In which state the volts were read</source>
        <translation>In welchem Zustand die Spannung gemessen wurde</translation>
    </message>
    <message>
        <source>Read when:</source>
        <translation>Gemessen:</translation>
    </message>
    <message>
        <source>What was in the waste tank: from this Laneward learns how much of the cleaner comes back</source>
        <translation>Was im Schmutztank war: daraus lernt Laneward, wie viel vom Reiniger zurückkommt</translation>
    </message>
    <message>
        <source>mL</source>
        <translation>ml</translation>
    </message>
    <message>
        <source>fl oz</source>
        <translation>fl oz</translation>
    </message>
    <message>
        <source>E&amp;mptied, measured:</source>
        <translation>&amp;Geleert, gemessen:</translation>
    </message>
    <message>
        <source>After a swap the pack that was on the machine is on charge</source>
        <translation>Nach einem Wechsel lädt der Akku, der an der Maschine war</translation>
    </message>
    <message>
        <source>&amp;Pack:</source>
        <translation>A&amp;kku:</translation>
    </message>
    <message>
        <source>Conditioner p&amp;oured in:</source>
        <translation>Bahnöl nachge&amp;füllt:</translation>
    </message>
    <message>
        <source>Pack c&amp;harged</source>
        <translation>Akku gela&amp;den</translation>
    </message>
</context>
<context>
    <name>laneward::LimitsForm</name>
    <message>
        <source>What this centre asks of a tape reading</source>
        <translation>Was dieses Center von einer Filmmessung verlangt</translation>
    </message>
    <message>
        <source>Readings that do not hold are marked. A field that is left empty asks nothing. The rules of the sport&apos;s governing body are shown beside them; its current rule book decides.</source>
        <translation>Messungen, die nicht genügen, werden markiert. Ein leeres Feld verlangt nichts. Die Regeln des Sportverbands stehen daneben; sein aktuelles Regelbuch entscheidet.</translation>
    </message>
    <message>
        <source>At &amp;least on every oiled board, units:</source>
        <translation>Auf jeder geölten &amp;Leiste mindestens, Einheiten:</translation>
    </message>
    <message>
        <source>Mean &amp;error at most, units:</source>
        <translation>Mittlerer F&amp;ehler höchstens, Einheiten:</translation>
    </message>
    <message>
        <source>Track &amp;ratio at least:</source>
        <translation>Spurverhältnis &amp;mindestens:</translation>
    </message>
    <message>
        <source>Track ratio at &amp;most:</source>
        <translation>Spurverhältnis &amp;höchstens:</translation>
    </message>
    <message>
        <source>&amp;Keep the limits</source>
        <translation>Grenzen &amp;speichern</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Limits of tape readings</source>
        <translation>Grenzen der Filmmessungen</translation>
    </message>
</context>
<context>
    <name>laneward::ListPaper</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The list is printed</source>
        <translation>Die Liste ist gedruckt</translation>
    </message>
    <message>
        <source>Nothing was printed: the printer cannot be painted on.</source>
        <translation>Nichts wurde gedruckt: auf diesem Drucker lässt sich nicht zeichnen.</translation>
    </message>
</context>
<context>
    <name>laneward::ListTools</name>
    <message>
        <source>&amp;Copy as text table</source>
        <translation>Als &amp;Texttabelle kopieren</translation>
    </message>
    <message>
        <source>&amp;Save as CSV…</source>
        <translation>Als C&amp;SV speichern…</translation>
    </message>
</context>
<context>
    <name>laneward::MachineForm</name>
    <message>
        <source> kg</source>
        <comment>suffix</comment>
        <translation> kg</translation>
    </message>
    <message>
        <source> lb</source>
        <comment>suffix</comment>
        <translation> lb</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source> V</source>
        <comment>suffix</comment>
        <translation> V</translation>
    </message>
    <message>
        <source>Wei&amp;ght:</source>
        <translation>&amp;Gewicht:</translation>
    </message>
    <message>
        <source>F&amp;ull from, rested:</source>
        <translation>&amp;Voll ab, ausgeruht:</translation>
    </message>
    <message>
        <source>&amp;Spare pack below, rested:</source>
        <translation>&amp;Ersatzakku unter, ausgeruht:</translation>
    </message>
    <message>
        <source>%1: weight, and volts where its packs have none</source>
        <comment>machine</comment>
        <translation>%1: Gewicht, und Spannungen, wo ihre Akkus keine eigenen haben</translation>
    </message>
    <message>
        <source>Weight and volts of %1</source>
        <comment>machine</comment>
        <translation>Gewicht und Spannungen von %1</translation>
    </message>
</context>
<context>
    <name>laneward::MachineSettingsForm</name>
    <message>
        <source>&amp;Name:</source>
        <translation>&amp;Name:</translation>
    </message>
    <message>
        <source>needs a person beside it while it is out</source>
        <translation>braucht draußen eine Person neben sich</translation>
    </message>
    <message>
        <source>The tank holds</source>
        <translation>Der Tank fasst</translation>
    </message>
    <message>
        <source>holds</source>
        <comment>a tank</comment>
        <translation>fasst</translation>
    </message>
    <message>
        <source>&amp;Conditioner:</source>
        <translation>Bahn&amp;öl:</translation>
    </message>
    <message>
        <source>&amp;Second conditioner (0 = no tank):</source>
        <translation>&amp;Zweites Bahnöl (0 = kein Tank):</translation>
    </message>
    <message>
        <source>C&amp;leaner:</source>
        <translation>&amp;Reiniger:</translation>
    </message>
    <message>
        <source>The &amp;waste tank holds:</source>
        <translation>Der S&amp;chmutztank fasst:</translation>
    </message>
    <message>
        <source> %</source>
        <comment>suffix</comment>
        <translation> %</translation>
    </message>
    <message>
        <source>Until fills have taught what is really used</source>
        <translation>Bis die Füllungen gezeigt haben, was wirklich verbraucht wird</translation>
    </message>
    <message>
        <source> lanes</source>
        <comment>suffix</comment>
        <translation> Bahnen</translation>
    </message>
    <message>
        <source>Conditioner used, of what the &amp;pattern says:</source>
        <translation>Bahnölverbrauch, gemessen am &amp;Muster:</translation>
    </message>
    <message>
        <source>Cleaner for a lane:</source>
        <translation>Reiniger für eine Bahn:</translation>
    </message>
    <message>
        <source>Waste from a lane:</source>
        <translation>Schmutzwasser von einer Bahn:</translation>
    </message>
    <message>
        <source>A full pack &amp;runs:</source>
        <translation>Ein voller Ak&amp;ku reicht für:</translation>
    </message>
    <message>
        <source>Spare packs:</source>
        <translation>Ersatzakkus:</translation>
    </message>
    <message>
        <source> s</source>
        <comment>suffix</comment>
        <translation> s</translation>
    </message>
    <message>
        <source>Seconds for a lane: %1</source>
        <translation>Sekunden für eine Bahn: %1</translation>
    </message>
    <message>
        <source>A lane of a 40 &amp;ft pattern takes:</source>
        <translation>Eine Bahn mit 40-&amp;Fuß-Muster dauert:</translation>
    </message>
    <message>
        <source>More for each 10 ft of pattern:</source>
        <translation>Mehr je 10 Fuß Muster:</translation>
    </message>
    <message>
        <source>To the ne&amp;xt lane:</source>
        <translation>Zur näch&amp;sten Bahn:</translation>
    </message>
    <message>
        <source>More for each lane that is crossed:</source>
        <translation>Mehr je überquerter Bahn:</translation>
    </message>
    <message>
        <source>Read&amp;y it and bring it to the lanes:</source>
        <translation>&amp;Vorbereiten und zu den Bahnen bringen:</translation>
    </message>
    <message>
        <source>Bring it &amp;back:</source>
        <translation>&amp;Zurückbringen:</translation>
    </message>
    <message>
        <source>Refill its tanks:</source>
        <translation>Tanks nachfüllen:</translation>
    </message>
    <message>
        <source>&amp;Empty the waste tank:</source>
        <translation>Schmutztank l&amp;eeren:</translation>
    </message>
    <message>
        <source>Swap the pack:</source>
        <translation>Akku wechseln:</translation>
    </message>
    <message>
        <source>Char&amp;ge, where there is no spare pack:</source>
        <translation>&amp;Laden, wenn kein Ersatzakku da ist:</translation>
    </message>
    <message>
        <source>A service &amp;duty between jobs:</source>
        <translation>Eine Wartung zwischen Auft&amp;rägen:</translation>
    </message>
    <message>
        <source>N&amp;ot for these lanes:</source>
        <translation>Nicht &amp;für diese Bahnen:</translation>
    </message>
    <message>
        <source>Not &amp;to:</source>
        <translation>N&amp;icht zum:</translation>
    </message>
    <message>
        <source>Not with these patterns:</source>
        <translation>Nicht mit diesen Mustern:</translation>
    </message>
    <message>
        <source>Its weight and the volts of its packs stand on the page Service, Machines.</source>
        <translation>Ihr Gewicht und die Voltwerte der Akkus stehen auf der Seite Wartung, Maschinen.</translation>
    </message>
    <message>
        <source>A new machine</source>
        <translation>Eine neue Maschine</translation>
    </message>
    <message>
        <source>New machine: %1</source>
        <translation>Neue Maschine: %1</translation>
    </message>
    <message>
        <source>Change the machine %1</source>
        <translation>Maschine %1 ändern</translation>
    </message>
</context>
<context>
    <name>laneward::MachinesPanel</name>
    <message>
        <source>%1 (retired)</source>
        <translation>%1 (ausgemustert)</translation>
    </message>
    <message>
        <source>never recorded</source>
        <translation>nie eingetragen</translation>
    </message>
    <message>
        <source>no duty yet</source>
        <translation>noch keine Pflicht</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Duty</source>
        <translation>Pflicht</translation>
    </message>
    <message>
        <source>Due after</source>
        <translation>Fällig nach</translation>
    </message>
    <message>
        <source>Last done</source>
        <translation>Zuletzt</translation>
    </message>
    <message>
        <source>Since then</source>
        <translation>Seither</translation>
    </message>
    <message>
        <source>Next due</source>
        <translation>Nächstes Mal</translation>
    </message>
    <message>
        <source>Takes from stock</source>
        <translation>Aus dem Vorrat</translation>
    </message>
    <message>
        <source>%1 (counter %2 on %3)</source>
        <translation>%1 (Zähler %2 am %3)</translation>
    </message>
    <message>
        <source>%1 through it</source>
        <translation>%1 hindurch</translation>
    </message>
    <message>
        <source>Nothing is looked after here yet. Begin with the usual items, or enter your own: every interval is yours to change, and the machine&apos;s own instructions decide.</source>
        <translation>Hier wird noch nichts gewartet. Mit dem Üblichen beginnen oder Eigenes eingeben: Jeder Abstand lässt sich ändern, und die Anleitung der Maschine entscheidet.</translation>
    </message>
    <message>
        <source>&amp;Machine:</source>
        <translation>&amp;Maschine:</translation>
    </message>
    <message>
        <source>Show retired ones</source>
        <translation>Ausgemusterte zeigen</translation>
    </message>
    <message>
        <source>&amp;When last done…</source>
        <translation>Wann zuletzt &amp;getan…</translation>
    </message>
    <message>
        <source>&amp;Read a counter…</source>
        <translation>Zähler a&amp;blesen…</translation>
    </message>
    <message>
        <source>machine.csv</source>
        <translation>maschine.csv</translation>
    </message>
    <message>
        <source>What is looked after</source>
        <translation>Was gewartet wird</translation>
    </message>
    <message>
        <source>Begin with the &amp;usual items</source>
        <translation>Mit dem &amp;Üblichen beginnen</translation>
    </message>
    <message>
        <source>&amp;New item…</source>
        <translation>&amp;Neues Teil…</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>Än&amp;dern…</translation>
    </message>
    <message>
        <source>Retire</source>
        <translation>Ausmustern</translation>
    </message>
    <message>
        <source>Record &amp;service…</source>
        <translation>&amp;Wartung eintragen…</translation>
    </message>
    <message>
        <source>The centre: approaches, gutters</source>
        <translation>Die Anlage: Anläufe, Rinnen</translation>
    </message>
    <message>
        <source>Meters: %1</source>
        <translation>Zähler: %1</translation>
    </message>
    <message>
        <source>Take up again</source>
        <translation>Wieder aufnehmen</translation>
    </message>
    <message>
        <source>Type once what was done before this program came</source>
        <translation>Einmal eingeben, was vor diesem Programm getan wurde</translation>
    </message>
    <message>
        <source>Every duty here has been recorded already</source>
        <translation>Jede Pflicht hier ist schon eingetragen</translation>
    </message>
    <message>
        <source>Begin with the usual items</source>
        <translation>Mit dem Üblichen beginnen</translation>
    </message>
    <message>
        <source>Waste tank: %1</source>
        <translation>Schmutztank: %1</translation>
    </message>
    <message>
        <source>Weight, &amp;volts…</source>
        <translation>Gewicht, &amp;Spannung…</translation>
    </message>
</context>
<context>
    <name>laneward::MainWindow</name>
    <message>
        <source>Laneward</source>
        <translation>Laneward</translation>
    </message>
    <message>
        <source>read only: nothing can be changed here</source>
        <translation>nur lesen: hier lässt sich nichts ändern</translation>
    </message>
    <message>
        <source>%1, saved %2</source>
        <comment>centre, time</comment>
        <translation>%1, gespeichert %2</translation>
    </message>
    <message>
        <source>%1 – Laneward</source>
        <comment>centre</comment>
        <translation>%1 – Laneward</translation>
    </message>
    <message>
        <source>The centre is being made…</source>
        <translation>Das Center wird angelegt…</translation>
    </message>
    <message>
        <source>looking for a better plan…</source>
        <translation>ein besserer Plan wird gesucht …</translation>
    </message>
    <message>
        <source>The centre is made. Next: what its machines hold and how long they take (Ctrl+,), then the events (Ctrl+2).</source>
        <translation>Das Haus ist angelegt. Als Nächstes: was seine Maschinen fassen und wie lange sie brauchen (Strg+,), dann die Veranstaltungen (Strg+2).</translation>
    </message>
</context>
<context>
    <name>laneward::Menus</name>
    <message>
        <source>Open a centre</source>
        <translation>Center öffnen</translation>
    </message>
    <message>
        <source>Centres (*.laneward);;All files (*)</source>
        <translation>Center (*.laneward);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importieren</translation>
    </message>
    <message>
        <source>Calendars, tables and centres (*.ics *.csv *.json)</source>
        <translation>Kalender, Tabellen und Center (*.ics *.csv *.json)</translation>
    </message>
    <message>
        <source>Import %1</source>
        <translation>%1 importieren</translation>
    </message>
    <message>
        <source>Everything in %1 is already here.</source>
        <translation>Alles in %1 ist schon hier.</translation>
    </message>
    <message>
        <source>Keep the imported centre as</source>
        <translation>Importiertes Center speichern unter</translation>
    </message>
    <message>
        <source>Centres (*.laneward)</source>
        <translation>Center (*.laneward)</translation>
    </message>
    <message>
        <source>events.ics</source>
        <translation>veranstaltungen.ics</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation>Kalender (*.ics)</translation>
    </message>
    <message>
        <source>jobs.ics</source>
        <translation>auftraege.ics</translation>
    </message>
    <message>
        <source>Calendar (*.ics);;CSV (*.csv)</source>
        <translation>Kalender (*.ics);;CSV (*.csv)</translation>
    </message>
    <message>
        <source>centre.json</source>
        <translation>center.json</translation>
    </message>
    <message>
        <source>Centre file (*.json)</source>
        <translation>Centerdatei (*.json)</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportieren</translation>
    </message>
    <message>
        <source>Exported to %1</source>
        <translation>Exportiert nach %1</translation>
    </message>
    <message>
        <source>Back up into</source>
        <translation>Sichern in</translation>
    </message>
    <message>
        <source>Verified backup: %1</source>
        <translation>Geprüfte Sicherung: %1</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Sicherung wiederherstellen</translation>
    </message>
    <message>
        <source>%1 takes the place of %2. What was entered since that backup is no longer shown; the replaced file is kept beside it.</source>
        <translation>%1 tritt an die Stelle von %2. Was seit dieser Sicherung eingegeben wurde, ist nicht mehr zu sehen; die ersetzte Datei bleibt daneben erhalten.</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>About Laneward</source>
        <translation>Über Laneward</translation>
    </message>
    <message>
        <source>Laneward %1
Lane care for bowling centres: plan, print and record the oil on the lanes.

Free software under the GNU General Public License, version 3 or later. It comes without any warranty.</source>
        <translation>Laneward %1
Bahnpflege für Bowlingcenter: das Öl auf den Bahnen planen, drucken und erfassen.

Freie Software unter der GNU General Public License, Version 3 oder später. Ohne jede Gewährleistung.</translation>
    </message>
    <message>
        <source>Ctrl+F: find an event or a lane</source>
        <translation>Strg+F: Veranstaltung oder Bahn suchen</translation>
    </message>
    <message>
        <source>Ctrl+Enter: record the selected job as planned</source>
        <translation>Strg+Eingabe: gewählten Auftrag wie geplant erfassen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Enter: record it with changes</source>
        <translation>Strg+Umschalt+Eingabe: mit Änderungen erfassen</translation>
    </message>
    <message>
        <source>Ctrl+U: record an unplanned run: type the lanes, press Enter</source>
        <translation>Strg+U: ungeplanten Lauf erfassen: Bahnen eintippen, Eingabetaste drücken</translation>
    </message>
    <message>
        <source>Ctrl+I: record an incident</source>
        <translation>Strg+I: Vorfall erfassen</translation>
    </message>
    <message>
        <source>Ctrl+P: tonight&apos;s sheet</source>
        <translation>Strg+P: Blatt für heute Abend</translation>
    </message>
    <message>
        <source>Ctrl+Z, Ctrl+Shift+Z: undo, redo</source>
        <translation>Strg+Z, Strg+Umschalt+Z: rückgängig, wiederholen</translation>
    </message>
    <message>
        <source>Escape: leave a form or the sheet</source>
        <translation>Esc: Formular oder Blatt verlassen</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Open a centre…</source>
        <translation>Center ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;New centre…</source>
        <translation>&amp;Neues Center…</translation>
    </message>
    <message>
        <source>&amp;Demo centre</source>
        <translation>&amp;Demo-Center</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>&amp;Importieren…</translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation>&amp;Exportieren</translation>
    </message>
    <message>
        <source>&amp;Events as calendar (.ics)…</source>
        <translation>&amp;Veranstaltungen als Kalender (.ics)…</translation>
    </message>
    <message>
        <source>&amp;Jobs as calendar or list (.ics, .csv)…</source>
        <translation>&amp;Aufträge als Kalender oder Liste (.ics, .csv)…</translation>
    </message>
    <message>
        <source>&amp;Whole centre (.json)…</source>
        <translation>&amp;Ganzes Center (.json)…</translation>
    </message>
    <message>
        <source>&amp;Back up…</source>
        <translation>&amp;Sichern…</translation>
    </message>
    <message>
        <source>&amp;Restore a backup…</source>
        <translation>Sicherung &amp;wiederherstellen…</translation>
    </message>
    <message>
        <source>&amp;Print tonight&apos;s sheet…</source>
        <translation>Blatt für heute Abend dru&amp;cken…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Find</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>&amp;Record</source>
        <translation>&amp;Erfassen</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Shop setting: large targets</source>
        <translation>&amp;Werkstatt: große Schaltflächen</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>Hil&amp;fe</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>&amp;About Laneward</source>
        <translation>&amp;Über Laneward</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig:</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen:</translation>
    </message>
    <message>
        <source>Ctrl+1 to 7: Today, Calendar, Lanes, Supplies, Service, Patterns, History</source>
        <translation>Strg+1 bis 7: Heute, Kalender, Bahnen, Vorräte, Wartung, Muster, Verlauf</translation>
    </message>
    <message>
        <source>Ctrl+G: the evening step by step; Space: done, Backspace: one step back</source>
        <translation>Strg+G: der Abend Schritt für Schritt; Leertaste: erledigt, Rücktaste: ein Schritt zurück</translation>
    </message>
    <message>
        <source>Ctrl+,: the centre: machines, people, shifts, what is out of service</source>
        <translation>Strg+,: das Haus: Maschinen, Personen, Schichten, was außer Betrieb ist</translation>
    </message>
    <message>
        <source>The &amp;centre: machines, people, shifts…</source>
        <translation>Das &amp;Haus: Maschinen, Personen, Schichten …</translation>
    </message>
    <message>
        <source>Open a centre on a server</source>
        <translation>Haus auf einem Server öffnen</translation>
    </message>
    <message>
        <source>Where it is, as postgresql://user@host/database; the password comes from where PostgreSQL keeps it:</source>
        <translation>Wo es liegt, als postgresql://user@host/database; das Kennwort kommt daher, wo PostgreSQL es aufbewahrt:</translation>
    </message>
    <message>
        <source>Open a centre on a &amp;server…</source>
        <translation>Haus auf einem &amp;Server öffnen …</translation>
    </message>
</context>
<context>
    <name>laneward::MessageBar</name>
    <message>
        <source>✕</source>
        <comment>button that closes a message</comment>
        <translation>✕</translation>
    </message>
    <message>
        <source>Close the message</source>
        <translation>Meldung schließen</translation>
    </message>
    <message>
        <source>!</source>
        <comment>mark of a problem</comment>
        <translation>!</translation>
    </message>
</context>
<context>
    <name>laneward::MonthView</name>
    <message numerus="yes">
        <source>+%n more</source>
        <translation>
            <numerusform>+%n weitere</numerusform>
            <numerusform>+%n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Events of the month</source>
        <translation>Veranstaltungen des Monats</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n more event(s)</source>
        <translation>
            <numerusform>%1: %n weitere Veranstaltung</numerusform>
            <numerusform>%1: %n weitere Veranstaltungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s)</source>
        <translation>
            <numerusform>%n Veranstaltung</numerusform>
            <numerusform>%n Veranstaltungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n job(s)</source>
        <translation>
            <numerusform>%n Auftrag</numerusform>
            <numerusform>%n Aufträge</numerusform>
        </translation>
    </message>
    <message>
        <source>something cannot be met</source>
        <translation>etwas ist nicht zu erfüllen</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
</context>
<context>
    <name>laneward::NotesPanel</name>
    <message>
        <source>Notes for this shift</source>
        <translation>Notizen für diese Schicht</translation>
    </message>
    <message>
        <source>Note for the next shift</source>
        <translation>Übergabenotiz für die nächste Schicht</translation>
    </message>
    <message>
        <source>Leave the &amp;note</source>
        <translation>Notiz &amp;hinterlassen</translation>
    </message>
    <message>
        <source>somebody</source>
        <translation>jemand</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>when, who: what</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>The shift before left no note.</source>
        <translation>Die vorige Schicht hat keine Notiz hinterlassen.</translation>
    </message>
    <message>
        <source> on lane %1</source>
        <translation> auf Bahn %1</translation>
    </message>
    <message>
        <source>%1: %2%3: %4</source>
        <comment>time: kind, on lane: text</comment>
        <translation>%1: %2%3: %4</translation>
    </message>
    <message>
        <source>Leave a note for the next shift</source>
        <translation>Übergabenotiz hinterlassen</translation>
    </message>
    <message>
        <source>%1: %2%3, followed up: %4</source>
        <comment>time: kind, on lane: what was done</comment>
        <translation>%1: %2%3, geklärt: %4</translation>
    </message>
</context>
<context>
    <name>laneward::OfferForm</name>
    <message>
        <source>Prices</source>
        <translation>Preise</translation>
    </message>
    <message>
        <source>&amp;Supply:</source>
        <translation>&amp;Vorrat:</translation>
    </message>
    <message>
        <source>&amp;Article number:</source>
        <translation>&amp;Artikelnummer:</translation>
    </message>
    <message>
        <source>One &amp;pack holds:</source>
        <translation>Ein &amp;Gebinde enthält:</translation>
    </message>
    <message>
        <source>P&amp;rices:</source>
        <translation>P&amp;reise:</translation>
    </message>
    <message>
        <source>New price of %1</source>
        <comment>supplier</comment>
        <translation>Neuer Preis von %1</translation>
    </message>
    <message>
        <source>Change the price of %1 from %2</source>
        <comment>supply, supplier</comment>
        <translation>Preis von %1 bei %2 ändern</translation>
    </message>
    <message>
        <source>Add a price of %1 from %2</source>
        <comment>supply, supplier</comment>
        <translation>Preis von %1 bei %2 hinzufügen</translation>
    </message>
    <message>
        <source>Retire the price of %1 from %2</source>
        <comment>supply, supplier</comment>
        <translation>Preis von %1 bei %2 ausmustern</translation>
    </message>
    <message>
        <source>Take the price of %1 from %2 up again</source>
        <comment>supply, supplier</comment>
        <translation>Preis von %1 bei %2 wieder aufnehmen</translation>
    </message>
</context>
<context>
    <name>laneward::OrderDeeds</name>
    <message>
        <source>order-%1.%2</source>
        <translation>bestellung-%1.%2</translation>
    </message>
    <message>
        <source>Save the order</source>
        <translation>Bestellung sichern</translation>
    </message>
    <message>
        <source>The order is in %1</source>
        <translation>Die Bestellung steht in %1</translation>
    </message>
    <message>
        <source>Order %1 is printed</source>
        <translation>Bestellung %1 ist gedruckt</translation>
    </message>
    <message>
        <source>Nothing was printed: the printer cannot be painted on.</source>
        <translation>Nichts wurde gedruckt: auf diesem Drucker lässt sich nicht zeichnen.</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>%1 could not be written; nothing was changed.</source>
        <translation>%1 konnte nicht geschrieben werden; nichts wurde geändert.</translation>
    </message>
</context>
<context>
    <name>laneward::OrderModel</name>
    <message>
        <source>draft</source>
        <translation>Entwurf</translation>
    </message>
    <message>
        <source>placed</source>
        <translation>aufgegeben</translation>
    </message>
    <message>
        <source>part received</source>
        <translation>teils eingegangen</translation>
    </message>
    <message>
        <source>received</source>
        <translation>eingegangen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>abgeschlossen</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>amount, supply</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>Placed on</source>
        <translation>Aufgegeben am</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Still to come</source>
        <translation>Noch offen</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Summe</translation>
    </message>
</context>
<context>
    <name>laneward::OrdersPanel</name>
    <message>
        <source>What to order is being worked out…</source>
        <translation>Was zu bestellen ist, wird gerade ausgerechnet …</translation>
    </message>
    <message>
        <source>There is nobody to order from yet: enter suppliers and their price lists first.</source>
        <translation>Es gibt noch niemanden, bei dem sich bestellen lässt: zuerst Lieferanten und ihre Preislisten eingeben.</translation>
    </message>
    <message>
        <source>Nothing has to be ordered in the months ahead.</source>
        <translation>In den nächsten Monaten muss nichts bestellt werden.</translation>
    </message>
    <message>
        <source>Proven: no orders of the months ahead cost less in goods, freight and holding together (%1).</source>
        <translation>Bewiesen: keine Bestellungen der nächsten Monate kosten an Ware, Fracht und Lagerung zusammen weniger (%1).</translation>
    </message>
    <message>
        <source>The orders of the months ahead cost %1 in goods, freight and holding; at most %2 of that could be saved.</source>
        <translation>Die Bestellungen der nächsten Monate kosten an Ware, Fracht und Lagerung %1; höchstens %2 davon ließen sich sparen.</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <comment>supply, packs, money</comment>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Place order %1</source>
        <translation>Bestellung %1 aufgeben</translation>
    </message>
    <message>
        <source>Delete draft %1</source>
        <translation>Entwurf %1 löschen</translation>
    </message>
    <message>
        <source>Close order %1</source>
        <translation>Bestellung %1 abschließen</translation>
    </message>
    <message>
        <source>Proposed orders</source>
        <translation>Vorgeschlagene Bestellungen</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>Bestellungen</translation>
    </message>
    <message>
        <source>Print &amp;list…</source>
        <translation>&amp;Liste drucken…</translation>
    </message>
    <message>
        <source>No order is kept yet: place a proposed one, and it stands here until it has arrived.</source>
        <translation>Noch gibt es keine Bestellung: Wird eine vorgeschlagene aufgegeben, steht sie hier, bis sie da ist.</translation>
    </message>
    <message>
        <source>orders.csv</source>
        <translation>bestellungen.csv</translation>
    </message>
    <message>
        <source>&amp;Receive</source>
        <translation>&amp;Eingang</translation>
    </message>
    <message>
        <source>&amp;Place order</source>
        <translation>&amp;Bestellen</translation>
    </message>
    <message>
        <source>&amp;Close order</source>
        <translation>&amp;Abschließen</translation>
    </message>
    <message>
        <source>&amp;Delete draft</source>
        <translation>Entwurf &amp;löschen</translation>
    </message>
    <message>
        <source>Nothing more is expected of it</source>
        <translation>Von ihr kommt nichts mehr</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Print the chosen order</source>
        <translation>Gewählte Bestellung drucken</translation>
    </message>
    <message>
        <source>PDF…</source>
        <translation>PDF…</translation>
    </message>
    <message>
        <source>Save the chosen order as PDF</source>
        <translation>Gewählte Bestellung als PDF sichern</translation>
    </message>
    <message>
        <source>CSV…</source>
        <translation>CSV…</translation>
    </message>
    <message>
        <source>Save the chosen order as CSV</source>
        <translation>Gewählte Bestellung als CSV sichern</translation>
    </message>
</context>
<context>
    <name>laneward::OutageForm</name>
    <message>
        <source>1-4, 12</source>
        <translation>1-4, 12</translation>
    </message>
    <message>
        <source>&amp;What:</source>
        <translation>&amp;Was:</translation>
    </message>
    <message>
        <source>&amp;Lanes:</source>
        <translation>&amp;Bahnen:</translation>
    </message>
    <message>
        <source>F&amp;rom:</source>
        <translation>&amp;Von:</translation>
    </message>
    <message>
        <source>until &amp;further notice</source>
        <translation>bis au&amp;f Weiteres</translation>
    </message>
    <message>
        <source>&amp;Until:</source>
        <translation>B&amp;is:</translation>
    </message>
    <message>
        <source>N&amp;ote:</source>
        <translation>N&amp;otiz:</translation>
    </message>
    <message>
        <source>Out of service</source>
        <translation>Außer Betrieb</translation>
    </message>
    <message>
        <source>lanes</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>Out of service: %1</source>
        <translation>Außer Betrieb: %1</translation>
    </message>
</context>
<context>
    <name>laneward::PackForm</name>
    <message>
        <source> V</source>
        <comment>suffix</comment>
        <translation> V</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht abgelesen</translation>
    </message>
    <message>
        <source>In which state they were read</source>
        <translation>In welchem Zustand sie abgelesen wurden</translation>
    </message>
    <message>
        <source>It had run until it was &amp;done</source>
        <translation>Er war gelaufen, bis er &amp;leer war</translation>
    </message>
    <message>
        <source>&amp;What happened:</source>
        <translation>&amp;Was geschah:</translation>
    </message>
    <message>
        <source>&amp;Volts:</source>
        <translation>&amp;Volt:</translation>
    </message>
    <message>
        <source>Wh&amp;en:</source>
        <translation>W&amp;ann:</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>pack, what happened</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>laneward::PackLimitsForm</name>
    <message>
        <source> V</source>
        <comment>suffix</comment>
        <translation> V</translation>
    </message>
    <message>
        <source>In which state: %1</source>
        <translation>In welchem Zustand: %1</translation>
    </message>
    <message>
        <source>&amp;Chemistry:</source>
        <translation>&amp;Chemie:</translation>
    </message>
    <message>
        <source>&amp;Nominal:</source>
        <translation>&amp;Nennspannung:</translation>
    </message>
    <message>
        <source>F&amp;ull from:</source>
        <translation>V&amp;oll ab:</translation>
    </message>
    <message>
        <source>F&amp;it to run from:</source>
        <translation>Einsatz&amp;fähig ab:</translation>
    </message>
    <message>
        <source>&amp;Spare pack below:</source>
        <translation>&amp;Ersatzakku unter:</translation>
    </message>
    <message>
        <source>%1: what it is, and the volts that count</source>
        <comment>pack</comment>
        <translation>%1: was er ist, und die Volt, die zählen</translation>
    </message>
    <message>
        <source>Volts of %1</source>
        <comment>pack</comment>
        <translation>Volt von %1</translation>
    </message>
</context>
<context>
    <name>laneward::PacksPanel</name>
    <message>
        <source>Lanes of each charge</source>
        <translation>Bahnen jeder Ladung</translation>
    </message>
    <message>
        <source>No charge of it is known yet. Write down when a pack is put on charge and when it is charged.</source>
        <translation>Noch ist keine Ladung bekannt. Aufschreiben, wann ein Akku ans Ladegerät kommt und wann er geladen ist.</translation>
    </message>
    <message>
        <source>%1: %2 lanes, charged before it was done</source>
        <translation>%1: %2 Bahnen, geladen, bevor er leer war</translation>
    </message>
    <message>
        <source>%1: %2 lanes until it was done</source>
        <translation>%1: %2 Bahnen, bis er leer war</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Akku</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Tonight</source>
        <translation>Heute Abend</translation>
    </message>
    <message>
        <source>Volts</source>
        <translation>Volt</translation>
    </message>
    <message>
        <source>Learned</source>
        <translation>Gelernt</translation>
    </message>
    <message>
        <source>packs.csv</source>
        <translation>akkus.csv</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Akkus</translation>
    </message>
    <message>
        <source>&amp;Write down…</source>
        <translation>&amp;Aufschreiben…</translation>
    </message>
    <message>
        <source>&amp;Volts that count…</source>
        <translation>&amp;Volt, die zählen…</translation>
    </message>
    <message>
        <source>On charge, one at a time</source>
        <translation>Am Ladegerät, einer nach dem anderen</translation>
    </message>
    <message>
        <source>Charge where air moves, with nothing burning near; unplug the charger before touching its clamps. The pack&apos;s and the charger&apos;s own instructions decide.</source>
        <translation>Laden, wo Luft sich bewegt und nichts Brennendes in der Nähe ist; das Ladegerät vom Netz trennen, bevor die Klemmen berührt werden. Es gelten die Anleitungen von Akku und Ladegerät.</translation>
    </message>
    <message>
        <source>Working out what packs last…</source>
        <translation>Es wird berechnet, was die Akkus schaffen…</translation>
    </message>
    <message>
        <source>None has to be charged.</source>
        <translation>Keiner muss geladen werden.</translation>
    </message>
</context>
<context>
    <name>laneward::PanelList</name>
    <message>
        <source>Save the list</source>
        <translation>Liste speichern</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>The list is in %1</source>
        <translation>Die Liste ist in %1</translation>
    </message>
    <message>
        <source>%1 could not be written; nothing was changed.</source>
        <translation>%1 konnte nicht geschrieben werden; nichts wurde geändert.</translation>
    </message>
</context>
<context>
    <name>laneward::PartRows</name>
    <message>
        <source>Add a part</source>
        <translation>Teil hinzufügen</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>choose a part</source>
        <translation>Teil wählen</translation>
    </message>
    <message>
        <source>Amount taken</source>
        <translation>Entnommene Menge</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Herausnehmen</translation>
    </message>
</context>
<context>
    <name>laneward::PatternEditor</name>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>Stroke %1</source>
        <translation>Ölzug %1</translation>
    </message>
    <message>
        <source>A new stroke away from the foul line</source>
        <translation>Ein neuer Ölzug von der Foullinie weg</translation>
    </message>
    <message>
        <source>A new stroke towards the foul line</source>
        <translation>Ein neuer Ölzug zur Foullinie hin</translation>
    </message>
    <message>
        <source>The same stroke once more</source>
        <translation>Derselbe Ölzug noch einmal</translation>
    </message>
    <message>
        <source>Take the stroke out</source>
        <translation>Den Ölzug herausnehmen</translation>
    </message>
    <message>
        <source>Lay it before the one above</source>
        <translation>Vor dem darüber auftragen</translation>
    </message>
    <message>
        <source>Lay it after the one below</source>
        <translation>Nach dem darunter auftragen</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>m from the foul line</source>
        <translation>m von der Foullinie</translation>
    </message>
    <message>
        <source>ft from the foul line</source>
        <translation>ft von der Foullinie</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>conditioner, amount</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 a lane: %2 out (%3 %), %4 back. %5. All %6 lanes take %7.</source>
        <translation>%1 je Bahn: %2 hin (%3 %), %4 zurück. %5. Alle %6 Bahnen brauchen %7.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Nothing is laid yet.</source>
        <translation>Noch wird nichts aufgetragen.</translation>
    </message>
    <message>
        <source>Not kept yet: %1.</source>
        <translation>Noch nicht gespeichert: %1.</translation>
    </message>
    <message numerus="yes">
        <source> And %n more.</source>
        <translation>
            <numerusform> Und %n weiterer Fehler.</numerusform>
            <numerusform> Und %n weitere Fehler.</numerusform>
        </translation>
    </message>
    <message>
        <source> Somebody has changed the stored pattern meanwhile; leaving it as it was shows theirs.</source>
        <translation> Jemand hat das gespeicherte Ölmuster inzwischen geändert; „So lassen, wie es war“ zeigt dessen Fassung.</translation>
    </message>
    <message>
        <source>&amp;Keep as version %1</source>
        <translation>Als Version %1 &amp;speichern</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Ölmuster</translation>
    </message>
    <message>
        <source>Add stroke</source>
        <translation>Ölzug hinzufügen</translation>
    </message>
    <message>
        <source>Copy stroke</source>
        <translation>Ölzug kopieren</translation>
    </message>
    <message>
        <source>Remove stroke</source>
        <translation>Ölzug entfernen</translation>
    </message>
    <message>
        <source>Move stroke</source>
        <translation>Ölzug verschieben</translation>
    </message>
    <message>
        <source>Change %1</source>
        <comment>pattern</comment>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>Leave as it was</source>
        <translation>Lassen, wie es war</translation>
    </message>
    <message>
        <source>The cle&amp;an covers the whole lane</source>
        <translation>Gereinigt wird die ganze B&amp;ahn</translation>
    </message>
    <message>
        <source>End&amp;s at</source>
        <translation>En&amp;det bei</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Stroke out</source>
        <translation>Ölzug hin</translation>
    </message>
    <message>
        <source>Stroke back</source>
        <translation>Ölzug zurück</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Leave it as it was</source>
        <translation>So &amp;lassen, wie es war</translation>
    </message>
</context>
<context>
    <name>laneward::PatternList</name>
    <message>
        <source>Find a pattern</source>
        <translation>Ölmuster suchen</translation>
    </message>
    <message>
        <source>Patterns</source>
        <translation>Ölmuster</translation>
    </message>
    <message>
        <source>Save the list</source>
        <translation>Liste speichern</translation>
    </message>
    <message>
        <source>patterns.csv</source>
        <translation>oelmuster.csv</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>%1 could not be written; nothing was saved.</source>
        <translation>%1 konnte nicht geschrieben werden; nichts wurde gespeichert.</translation>
    </message>
    <message>
        <source>Ne&amp;w</source>
        <translation>Ne&amp;u</translation>
    </message>
    <message>
        <source>Du&amp;plicate</source>
        <translation>Ver&amp;doppeln</translation>
    </message>
    <message>
        <source>Offer it again</source>
        <translation>Wieder anbieten</translation>
    </message>
    <message>
        <source>Keep it for the records, and offer it no longer</source>
        <translation>Für die Aufzeichnungen behalten und nicht mehr anbieten</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>name and number of a copy</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>New pattern</source>
        <translation>Neues Ölmuster</translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <comment>pattern</comment>
        <translation>%1 verdoppeln</translation>
    </message>
    <message>
        <source>Retire %1</source>
        <comment>pattern</comment>
        <translation>%1 ausmustern</translation>
    </message>
    <message>
        <source>Use %1 again</source>
        <comment>pattern</comment>
        <translation>%1 wieder anbieten</translation>
    </message>
    <message>
        <source>Use aga&amp;in</source>
        <translation>Wieder anb&amp;ieten</translation>
    </message>
    <message>
        <source>Ret&amp;ire</source>
        <translation>Ausm&amp;ustern</translation>
    </message>
</context>
<context>
    <name>laneward::PatternListModel</name>
    <message>
        <source>%1 (retired)</source>
        <comment>pattern</comment>
        <translation>%1 (ausgemustert)</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Ölmuster</translation>
    </message>
    <message>
        <source>Ends at</source>
        <translation>Endet bei</translation>
    </message>
    <message>
        <source>A lane</source>
        <translation>Je Bahn</translation>
    </message>
    <message>
        <source>Version</source>
        <translation>Version</translation>
    </message>
</context>
<context>
    <name>laneward::PatternsPage</name>
    <message>
        <source>%1 lays %2 on a lane, to %3.</source>
        <comment>pattern, amount, distance</comment>
        <translation>%1 trägt %2 je Bahn auf, bis %3.</translation>
    </message>
    <message>
        <source>What you changed is not kept yet.</source>
        <translation>Was geändert wurde, ist noch nicht gespeichert.</translation>
    </message>
    <message>
        <source>There is no pattern yet: begin with a new one.</source>
        <translation>Es gibt noch kein Ölmuster: mit einem neuen beginnen.</translation>
    </message>
    <message>
        <source>%1 is printed</source>
        <comment>pattern</comment>
        <translation>%1 ist gedruckt</translation>
    </message>
    <message>
        <source>Nothing was printed: the printer cannot be painted on.</source>
        <translation>Nichts wurde gedruckt: auf diesem Drucker lässt sich nicht zeichnen.</translation>
    </message>
    <message>
        <source>Patterns</source>
        <translation>Ölmuster</translation>
    </message>
    <message>
        <source>What does this recipe lay down?</source>
        <translation>Was trägt dieses Rezept auf?</translation>
    </message>
    <message>
        <source>Recipe and film</source>
        <translation>Rezept und Film</translation>
    </message>
    <message>
        <source>Tape readings</source>
        <translation>Filmmessungen</translation>
    </message>
    <message>
        <source>Machine output</source>
        <translation>Ölabgabe</translation>
    </message>
    <message>
        <source>Lane surface</source>
        <translation>Bahnfläche</translation>
    </message>
</context>
<context>
    <name>laneward::PersonChooser</name>
    <message>
        <source>Who is at the desk?</source>
        <translation>Wer ist am Platz?</translation>
    </message>
    <message>
        <source>At the desk: %1</source>
        <translation>Am Platz: %1</translation>
    </message>
    <message>
        <source>Choose who is at the desk</source>
        <translation>Wählen, wer am Platz ist</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>person, role</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>laneward::PersonForm</name>
    <message>
        <source>&amp;Name:</source>
        <translation>&amp;Name:</translation>
    </message>
    <message>
        <source>R&amp;ole:</source>
        <translation>R&amp;olle:</translation>
    </message>
    <message>
        <source>works here and signs &amp;records</source>
        <translation>arbeitet hier und &amp;zeichnet Einträge</translation>
    </message>
    <message>
        <source>A new person</source>
        <translation>Eine neue Person</translation>
    </message>
    <message>
        <source>New person: %1</source>
        <translation>Neue Person: %1</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>%1 ändern</translation>
    </message>
</context>
<context>
    <name>laneward::PlotView</name>
    <message>
        <source>%1; arrow keys walk along it</source>
        <comment>title</comment>
        <translation>%1; die Pfeiltasten gehen daran entlang</translation>
    </message>
</context>
<context>
    <name>laneward::PriceModel</name>
    <message>
        <source>%1, row %2: %3</source>
        <comment>column, number, value</comment>
        <translation>%1, Zeile %2: %3</translation>
    </message>
    <message>
        <source>From packs</source>
        <translation>Ab Gebinden</translation>
    </message>
    <message>
        <source>Each pack, %1</source>
        <comment>currency</comment>
        <translation>Je Gebinde, %1</translation>
    </message>
</context>
<context>
    <name>laneward::PricePanel</name>
    <message>
        <source>every day</source>
        <translation>täglich</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message numerus="yes">
        <source>from %n packs %1</source>
        <translation>
            <numerusform>ab %n Gebinde %1</numerusform>
            <numerusform>ab %n Gebinden %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Suppliers</source>
        <translation>Lieferanten</translation>
    </message>
    <message>
        <source>Show retired ones</source>
        <translation>Ausgemusterte zeigen</translation>
    </message>
    <message>
        <source>&amp;New supplier…</source>
        <translation>&amp;Neuer Lieferant…</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>Än&amp;dern…</translation>
    </message>
    <message>
        <source>Retire</source>
        <translation>Ausmustern</translation>
    </message>
    <message>
        <source>No supplier is kept yet. Enter whom you order from, then what each sells and at which price: from then on the tab Orders proposes what to order by when.</source>
        <translation>Noch ist kein Lieferant eingetragen. Eintragen, bei wem bestellt wird, dann, was jeder zu welchem Preis verkauft: von da an schlägt der Reiter Bestellungen vor, was bis wann zu bestellen ist.</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>Takes orders on</source>
        <translation>Nimmt Bestellungen an</translation>
    </message>
    <message>
        <source>Delivers in, days</source>
        <translation>Liefert in Tagen</translation>
    </message>
    <message>
        <source>Freight</source>
        <translation>Fracht</translation>
    </message>
    <message>
        <source>No freight from</source>
        <translation>Frachtfrei ab</translation>
    </message>
    <message>
        <source>Order at least</source>
        <translation>Mindestbestellung</translation>
    </message>
    <message>
        <source>suppliers.csv</source>
        <translation>lieferanten.csv</translation>
    </message>
    <message>
        <source>Ne&amp;w price…</source>
        <translation>Ne&amp;uer Preis…</translation>
    </message>
    <message>
        <source>Chan&amp;ge…</source>
        <translation>Änd&amp;ern…</translation>
    </message>
    <message>
        <source>&amp;Import price list…</source>
        <translation>Preisliste e&amp;inlesen…</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Vorrat</translation>
    </message>
    <message>
        <source>Article</source>
        <translation>Artikel</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Gebinde</translation>
    </message>
    <message>
        <source>Prices of a pack</source>
        <translation>Preise eines Gebindes</translation>
    </message>
    <message>
        <source>prices.csv</source>
        <translation>preise.csv</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Preisliste</translation>
    </message>
    <message>
        <source>%1 (retired)</source>
        <comment>supplier</comment>
        <translation>%1 (ausgemustert)</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>%1 (retired)</source>
        <comment>supply</comment>
        <translation>%1 (ausgemustert)</translation>
    </message>
    <message>
        <source>%1 has no prices yet: enter one, or import a price list.</source>
        <translation>%1 hat noch keine Preise: einen eintragen oder eine Preisliste einlesen.</translation>
    </message>
    <message>
        <source>Price list of %1</source>
        <translation>Preisliste von %1</translation>
    </message>
    <message>
        <source>Take up again</source>
        <translation>Wieder aufnehmen</translation>
    </message>
</context>
<context>
    <name>laneward::ProposalCard</name>
    <message>
        <source>Proposed order, %1</source>
        <comment>supplier</comment>
        <translation>Vorgeschlagene Bestellung, %1</translation>
    </message>
    <message>
        <source>Order by: %1</source>
        <comment>date</comment>
        <translation>Bestellen bis: %1</translation>
    </message>
    <message>
        <source>Freight</source>
        <translation>Fracht</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what is done, supplier</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Place order</source>
        <translation>Bestellen</translation>
    </message>
    <message>
        <source>Save draft</source>
        <translation>Als Entwurf sichern</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Print order</source>
        <translation>Bestellung drucken</translation>
    </message>
    <message>
        <source>PDF…</source>
        <translation>PDF…</translation>
    </message>
    <message>
        <source>Save order as PDF</source>
        <translation>Bestellung als PDF sichern</translation>
    </message>
    <message>
        <source>CSV…</source>
        <translation>CSV…</translation>
    </message>
    <message>
        <source>Save order as CSV</source>
        <translation>Bestellung als CSV sichern</translation>
    </message>
    <message>
        <source>Keeps it as placed today, with the next number; it can be undone</source>
        <translation>Hält sie als heute aufgegeben fest, mit der nächsten Nummer; das lässt sich rückgängig machen</translation>
    </message>
    <message>
        <source>Place order %1 with %2</source>
        <translation>Bestellung %1 bei %2 aufgeben</translation>
    </message>
    <message>
        <source>Draft order %1 to %2</source>
        <translation>Bestellung %1 bei %2 entwerfen</translation>
    </message>
</context>
<context>
    <name>laneward::QuantityBox</name>
    <message>
        <source>L</source>
        <comment>litres</comment>
        <translation>L</translation>
    </message>
    <message>
        <source>fl oz</source>
        <comment>fluid ounces</comment>
        <translation>fl oz</translation>
    </message>
    <message>
        <source>m</source>
        <comment>metres</comment>
        <translation>m</translation>
    </message>
    <message>
        <source>ft</source>
        <comment>feet</comment>
        <translation>ft</translation>
    </message>
</context>
<context>
    <name>laneward::Rail</name>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
</context>
<context>
    <name>laneward::ReadinessCard</name>
    <message>
        <source>Measured…</source>
        <translation>Gemessen…</translation>
    </message>
    <message>
        <source>Enter what was measured in %1</source>
        <translation>Messwerte von %1 eingeben</translation>
    </message>
    <message>
        <source>! %1</source>
        <comment>a warning</comment>
        <translation>! %1</translation>
    </message>
    <message>
        <source>measured at %1</source>
        <translation>gemessen um %1</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>volts at a time</comment>
        <translation>%1 um %2</translation>
    </message>
    <message>
        <source>Reading of %1</source>
        <translation>Messung an %1</translation>
    </message>
</context>
<context>
    <name>laneward::ReadingChart</name>
    <message>
        <source>Film read and computed, board 1 at the right; arrow keys walk from board to board</source>
        <translation>Film gemessen und berechnet, Leiste 1 rechts; Pfeiltasten gehen von Leiste zu Leiste</translation>
    </message>
    <message>
        <source>Board %1: read %2 units</source>
        <translation>Leiste %1: gemessen %2 Einheiten</translation>
    </message>
    <message>
        <source>Board %1: not read</source>
        <translation>Leiste %1: nicht gemessen</translation>
    </message>
    <message>
        <source>Board %1: not read, computed %2 units</source>
        <translation>Leiste %1: nicht gemessen, berechnet %2 Einheiten</translation>
    </message>
    <message>
        <source>Board %1: read %2 units, computed %3</source>
        <translation>Leiste %1: gemessen %2 Einheiten, berechnet %3</translation>
    </message>
    <message>
        <source>%1, the same</source>
        <translation>%1, gleich</translation>
    </message>
    <message>
        <source>%1, %2 more than computed</source>
        <translation>%1, %2 mehr als berechnet</translation>
    </message>
    <message>
        <source>%1, %2 less than computed</source>
        <translation>%1, %2 weniger als berechnet</translation>
    </message>
    <message>
        <source>board, from the right as seen from the approach</source>
        <translation>Leiste, von rechts, vom Anlauf aus gesehen</translation>
    </message>
    <message>
        <source>units of film</source>
        <translation>Einheiten Film</translation>
    </message>
    <message>
        <source>read</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>berechnet</translation>
    </message>
</context>
<context>
    <name>laneward::ReadingDetails</name>
    <message>
        <source>%1 to %2 asked</source>
        <translation>verlangt %1 bis %2</translation>
    </message>
    <message>
        <source>at least %1 asked</source>
        <translation>verlangt mindestens %1</translation>
    </message>
    <message>
        <source>at most %1 asked</source>
        <translation>verlangt höchstens %1</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keines</translation>
    </message>
    <message>
        <source>Status: %1. Source: %2</source>
        <translation>Stand: %1. Quelle: %2</translation>
    </message>
    <message>
        <source>– %1: the boards it needs were not read</source>
        <translation>– %1: Die nötigen Leisten wurden nicht gemessen</translation>
    </message>
    <message>
        <source>History, for comparison only: %1. This reading has %2.</source>
        <translation>Geschichte, nur zum Vergleich: %1. Diese Messung hat %2.</translation>
    </message>
    <message>
        <source>History, for comparison only: %1. This reading has %2, and nothing follows from it.</source>
        <translation>Geschichte, nur zum Vergleich: %1. Diese Messung hat %2, und nichts folgt daraus.</translation>
    </message>
    <message>
        <source>✓ kept: %1: %2 (%3)</source>
        <translation>✓ eingehalten: %1: %2 (%3)</translation>
    </message>
    <message>
        <source>! not kept: %1: %2 (%3)</source>
        <translation>! nicht eingehalten: %1: %2 (%3)</translation>
    </message>
    <message>
        <source>Lane %1 at %2, %3, %4</source>
        <translation>Bahn %1 bei %2, %3, %4</translation>
    </message>
    <message>
        <source>machine not known</source>
        <translation>Maschine nicht bekannt</translation>
    </message>
    <message>
        <source>Which version of the pattern was run is not known, so no film can be computed beside it.</source>
        <translation>Welche Fassung des Ölmusters lief, ist nicht bekannt; daneben lässt sich kein Film berechnen.</translation>
    </message>
    <message>
        <source>%1 units less than computed on average</source>
        <translation>Im Mittel %1 Einheiten weniger als berechnet</translation>
    </message>
    <message>
        <source>%1 units more than computed on average</source>
        <translation>Im Mittel %1 Einheiten mehr als berechnet</translation>
    </message>
    <message>
        <source>%1; a board is off by %2, at most by %3 (board %4).</source>
        <translation>%1; eine Leiste weicht um %2 ab, höchstens um %3 (Leiste %4).</translation>
    </message>
    <message>
        <source>Right side (boards 1 to 19), units</source>
        <translation>Rechte Seite (Leisten 1 bis 19), Einheiten</translation>
    </message>
    <message>
        <source>Left side (boards 21 to 39), units</source>
        <translation>Linke Seite (Leisten 21 bis 39), Einheiten</translation>
    </message>
    <message>
        <source>Left-right unlikeness, units</source>
        <translation>Ungleichheit links-rechts, Einheiten</translation>
    </message>
    <message>
        <source>Track ratio, middle over outer boards</source>
        <translation>Spurverhältnis, mittlere zu äußeren Leisten</translation>
    </message>
    <message>
        <source>Lowest on an oiled board, units</source>
        <translation>Kleinster Wert auf einer geölten Leiste, Einheiten</translation>
    </message>
    <message>
        <source>read</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>berechnet</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfpunkte</translation>
    </message>
</context>
<context>
    <name>laneward::ReadingForm</name>
    <message>
        <source>A tape reading</source>
        <translation>Eine Filmmessung</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>The how manieth lane of its run: the first lanes get less while the brush fills</source>
        <translation>Die wievielte Bahn ihres Laufs: Die ersten Bahnen bekommen weniger, während sich die Bürste füllt</translation>
    </message>
    <message>
        <source>&amp;Lane:</source>
        <translation>&amp;Bahn:</translation>
    </message>
    <message>
        <source>&amp;Taken:</source>
        <translation>&amp;Gemessen:</translation>
    </message>
    <message>
        <source>&amp;Note:</source>
        <translation>Be&amp;merkung:</translation>
    </message>
    <message>
        <source>&amp;Distance from the foul line:</source>
        <translation>&amp;Entfernung von der Foullinie:</translation>
    </message>
    <message>
        <source>&amp;Machine:</source>
        <translation>&amp;Maschine:</translation>
    </message>
    <message>
        <source>&amp;Version run:</source>
        <translation>Gelaufene &amp;Fassung:</translation>
    </message>
    <message>
        <source>L&amp;ane of its run:</source>
        <translation>Bahn des &amp;Laufs:</translation>
    </message>
    <message>
        <source>&amp;Keep the reading</source>
        <translation>Messung be&amp;halten</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>version %1, since %2</source>
        <translation>Fassung %1, seit %2</translation>
    </message>
    <message>
        <source>A tape reading of %1</source>
        <translation>Eine Filmmessung von %1</translation>
    </message>
    <message>
        <source>Correct the tape reading of %1</source>
        <translation>Die Filmmessung von %1 berichtigen</translation>
    </message>
    <message>
        <source>Nothing kept yet: board %1: %2.</source>
        <translation>Noch nichts behalten: Leiste %1: %2.</translation>
    </message>
    <message>
        <source>Nothing kept yet: no board has a value.</source>
        <translation>Noch nichts behalten: Keine Leiste hat einen Wert.</translation>
    </message>
    <message>
        <source>Nothing kept yet: the time is still to come.</source>
        <translation>Noch nichts behalten: Die Zeit liegt in der Zukunft.</translation>
    </message>
    <message>
        <source>Nothing kept yet: %1.</source>
        <translation>Noch nichts behalten: %1.</translation>
    </message>
    <message>
        <source>Nothing kept yet: no version of the pattern is known to compare with.</source>
        <translation>Noch nichts behalten: Keine Fassung des Ölmusters ist bekannt, mit der sich vergleichen ließe.</translation>
    </message>
    <message>
        <source>Film on each board; a row from a spreadsheet can be pasted</source>
        <translation>Film auf jeder Leiste; eine Zeile aus einer Tabelle kann eingefügt werden</translation>
    </message>
</context>
<context>
    <name>laneward::ReadingModel</name>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Lane</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Entfernung</translation>
    </message>
    <message>
        <source>Version</source>
        <translation>Fassung</translation>
    </message>
    <message>
        <source>Boards read</source>
        <translation>Leisten gemessen</translation>
    </message>
    <message>
        <source>Mean error, units</source>
        <translation>Mittlere Abweichung, Einheiten</translation>
    </message>
    <message>
        <source>Largest error, units</source>
        <translation>Größte Abweichung, Einheiten</translation>
    </message>
    <message>
        <source>On board</source>
        <translation>Auf Leiste</translation>
    </message>
    <message>
        <source>Left-right unlikeness, units</source>
        <translation>Ungleichheit links-rechts, Einheiten</translation>
    </message>
    <message>
        <source>Track ratio</source>
        <translation>Spurverhältnis</translation>
    </message>
    <message>
        <source>Lowest, units</source>
        <translation>Kleinster Wert, Einheiten</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Bemerkung</translation>
    </message>
</context>
<context>
    <name>laneward::ReadingsImport</name>
    <message>
        <source>Tape readings</source>
        <translation>Filmmessungen</translation>
    </message>
    <message>
        <source>CSV (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>CSV (*.csv *.txt *.tsv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Tape readings from %1</source>
        <translation>Filmmessungen aus %1</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>— not in the file —</source>
        <translation>— nicht in der Datei —</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Lane %1, %2: there is no version %3 of that pattern to compare with</source>
        <translation>Bahn %1, %2: Von diesem Ölmuster gibt es keine Fassung %3 zum Vergleichen</translation>
    </message>
    <message>
        <source>Lane %1, %2: the time is still to come</source>
        <translation>Bahn %1, %2: Die Zeit liegt in der Zukunft</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weitere</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing can come in yet:</source>
        <translation>Noch kann nichts übernommen werden:</translation>
    </message>
    <message numerus="yes">
        <source>Nothing can come in yet; %n cell(s) do not fit:</source>
        <translation>
            <numerusform>Noch kann nichts übernommen werden; %n Feld passt nicht:</numerusform>
            <numerusform>Noch kann nichts übernommen werden; %n Felder passen nicht:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) can come in</source>
        <translation>
            <numerusform>%n Messung kann übernommen werden</numerusform>
            <numerusform>%n Messungen können übernommen werden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; %n are here already and stay as they are.</source>
        <translation>
            <numerusform>%1; %n ist schon da und bleibt, wie sie ist.</numerusform>
            <numerusform>%1; %n sind schon da und bleiben, wie sie sind.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Import %n tape reading(s)</source>
        <translation>
            <numerusform>%n Filmmessung importieren</numerusform>
            <numerusform>%n Filmmessungen importieren</numerusform>
        </translation>
    </message>
    <message>
        <source>Which column of the file is what? This is kept for the next file.</source>
        <translation>Welche Spalte der Datei ist was? Das bleibt für die nächste Datei.</translation>
    </message>
    <message>
        <source>Date and time with offset (ISO 8601):</source>
        <translation>Datum und Zeit mit Zonenabstand (ISO 8601):</translation>
    </message>
    <message>
        <source>or date:</source>
        <translation>oder Datum:</translation>
    </message>
    <message>
        <source>and time:</source>
        <translation>und Uhrzeit:</translation>
    </message>
    <message>
        <source>Lane:</source>
        <translation>Bahn:</translation>
    </message>
    <message>
        <source>Distance in feet:</source>
        <translation>Entfernung in Fuß:</translation>
    </message>
    <message>
        <source>Pattern (else the one shown):</source>
        <translation>Ölmuster (sonst das gezeigte):</translation>
    </message>
    <message>
        <source>Version of the pattern:</source>
        <translation>Fassung des Ölmusters:</translation>
    </message>
    <message>
        <source>Machine:</source>
        <translation>Maschine:</translation>
    </message>
    <message>
        <source>Lane of its run:</source>
        <translation>Bahn des Laufs:</translation>
    </message>
    <message>
        <source>Note:</source>
        <translation>Bemerkung:</translation>
    </message>
    <message>
        <source>First of the 39 boards&apos; columns:</source>
        <translation>Erste der Spalten für 39 Leisten:</translation>
    </message>
    <message>
        <source>The first of them is board 39 (left)</source>
        <translation>Die erste davon ist Leiste 39 (links)</translation>
    </message>
    <message>
        <source>Machine where the file names none:</source>
        <translation>Maschine, wo die Datei keine nennt:</translation>
    </message>
    <message>
        <source>point (31.2)</source>
        <translation>Punkt (31.2)</translation>
    </message>
    <message>
        <source>comma (31,2)</source>
        <translation>Komma (31,2)</translation>
    </message>
    <message>
        <source>Decimal sign:</source>
        <translation>Dezimalzeichen:</translation>
    </message>
    <message>
        <source>Dates are written:</source>
        <translation>Datum steht als:</translation>
    </message>
    <message>
        <source>Times are written:</source>
        <translation>Uhrzeit steht als:</translation>
    </message>
    <message>
        <source>The file begins:</source>
        <translation>So beginnt die Datei:</translation>
    </message>
    <message>
        <source>First rows of the file</source>
        <translation>Erste Zeilen der Datei</translation>
    </message>
    <message>
        <source>What does not fit</source>
        <translation>Was nicht passt</translation>
    </message>
    <message>
        <source>&amp;Bring them in</source>
        <translation>Ü&amp;bernehmen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>laneward::ReadingsPanel</name>
    <message>
        <source>&amp;Type a reading</source>
        <translation>Messung ein&amp;tippen</translation>
    </message>
    <message>
        <source>&amp;Correct</source>
        <translation>&amp;Berichtigen</translation>
    </message>
    <message>
        <source>&amp;Withdraw</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <source>&amp;Import CSV…</source>
        <translation>CSV &amp;importieren …</translation>
    </message>
    <message>
        <source>readings.csv</source>
        <translation>filmmessungen.csv</translation>
    </message>
    <message>
        <source>Tape readings of the pattern</source>
        <translation>Filmmessungen des Ölmusters</translation>
    </message>
    <message>
        <source>The readings could not be read: %1</source>
        <translation>Die Messungen konnten nicht gelesen werden: %1</translation>
    </message>
    <message>
        <source>There is no pattern yet: make one first, then its film can be read and compared.</source>
        <translation>Es gibt noch kein Ölmuster: zuerst eines anlegen, dann lässt sich sein Film messen und vergleichen.</translation>
    </message>
    <message>
        <source>No tape reading of %1 yet. Take a tape after a run, then type what it says, or import a CSV of readings.</source>
        <translation>Noch keine Filmmessung von %1. Nach einem Lauf einen Streifen nehmen und eintippen, was er sagt, oder Messungen als CSV importieren.</translation>
    </message>
    <message>
        <source>Choose a reading to see it beside the computed film.</source>
        <translation>Eine Messung wählen, um sie neben dem berechneten Film zu sehen.</translation>
    </message>
    <message>
        <source>%1: no tape reading yet</source>
        <translation>%1: noch keine Filmmessung</translation>
    </message>
    <message>
        <source>No pattern yet</source>
        <translation>Noch kein Ölmuster</translation>
    </message>
    <message numerus="yes">
        <source>%n tape reading(s)</source>
        <translation>
            <numerusform>%n Filmmessung</numerusform>
            <numerusform>%n Filmmessungen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2, the newest of %3</source>
        <translation>%1: %2, die neueste vom %3</translation>
    </message>
    <message>
        <source>%1, %2 units less than computed</source>
        <translation>%1, %2 Einheiten weniger als berechnet</translation>
    </message>
    <message>
        <source>%1, %2 units more than computed</source>
        <translation>%1, %2 Einheiten mehr als berechnet</translation>
    </message>
    <message numerus="yes">
        <source>%1; %n check(s) not kept</source>
        <translation>
            <numerusform>%1; %n Prüfpunkt nicht eingehalten</numerusform>
            <numerusform>%1; %n Prüfpunkte nicht eingehalten</numerusform>
        </translation>
    </message>
    <message>
        <source>Withdraw the reading of lane %1, %2</source>
        <translation>Messung der Bahn %1, %2, zurücknehmen</translation>
    </message>
    <message>
        <source>Correct a reading of lane %1</source>
        <translation>Messung der Bahn %1 berichtigen</translation>
    </message>
    <message>
        <source>Tape reading of lane %1</source>
        <translation>Filmmessung der Bahn %1</translation>
    </message>
    <message>
        <source>Li&amp;mits…</source>
        <translation>Gren&amp;zen…</translation>
    </message>
    <message>
        <source>What this centre itself asks of a reading</source>
        <translation>Was dieses Center selbst von einer Messung verlangt</translation>
    </message>
</context>
<context>
    <name>laneward::ReceiveForm</name>
    <message>
        <source>&amp;Book receipt</source>
        <translation>Eingang &amp;buchen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Receive order %1</source>
        <comment>number</comment>
        <translation>Eingang der Bestellung %1</translation>
    </message>
    <message>
        <source>%1: %2 ordered, %3 still to come</source>
        <comment>supply, packs, amount</comment>
        <translation>%1: %2 bestellt, %3 noch offen</translation>
    </message>
    <message>
        <source>%1: amount that arrived</source>
        <comment>supply</comment>
        <translation>%1: eingegangene Menge</translation>
    </message>
    <message>
        <source>%1: lot</source>
        <comment>supply</comment>
        <translation>%1: Charge</translation>
    </message>
    <message>
        <source>Lot, if it has one</source>
        <translation>Charge, falls es eine gibt</translation>
    </message>
    <message>
        <source>Nothing was booked: %1 of %2 cannot arrive. To take a receipt back, use undo or the ledger.</source>
        <comment>amount, supply</comment>
        <translation>Nichts wurde gebucht: %1 von %2 können nicht eingehen. Ein Eingang wird durch Rückgängig oder im Buch zurückgenommen.</translation>
    </message>
    <message>
        <source>Nothing was booked: no line has an amount.</source>
        <translation>Nichts wurde gebucht: keine Zeile hat eine Menge.</translation>
    </message>
</context>
<context>
    <name>laneward::RecordForm</name>
    <message>
        <source>N&amp;ote:</source>
        <translation>Be&amp;merkung:</translation>
    </message>
</context>
<context>
    <name>laneward::RecurrenceEdit</name>
    <message>
        <source>Takes place</source>
        <translation>Wiederholung</translation>
    </message>
    <message>
        <source>Takes &amp;place</source>
        <translation>Findet s&amp;tatt</translation>
    </message>
    <message>
        <source>Every how many</source>
        <translation>Alle wie viele</translation>
    </message>
    <message>
        <source>Ever&amp;y</source>
        <translation>Inter&amp;vall</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>no end</source>
        <translation>ohne Ende</translation>
    </message>
    <message>
        <source>last date</source>
        <translation>letzter Tag</translation>
    </message>
    <message>
        <source>number of times</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>Last date</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Number of times</source>
        <translation>Anzahl der Termine</translation>
    </message>
    <message>
        <source>Dates left out</source>
        <translation>Ausgelassene Termine</translation>
    </message>
    <message>
        <source>Date to leave out</source>
        <translation>Auszulassender Termin</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Wieder aufnehmen</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Ausgelassen</translation>
    </message>
    <message>
        <source>Next dates</source>
        <translation>Nächste Termine</translation>
    </message>
    <message>
        <source>once</source>
        <translation>einmalig</translation>
    </message>
    <message>
        <source>every day</source>
        <translation>täglich</translation>
    </message>
    <message>
        <source>every week</source>
        <translation>wöchentlich</translation>
    </message>
    <message>
        <source>every month on day %1</source>
        <translation>jeden Monat am %1.</translation>
    </message>
    <message>
        <source>every month on its last day</source>
        <translation>jeden Monat am letzten Tag</translation>
    </message>
    <message>
        <source>first</source>
        <translation>ersten</translation>
    </message>
    <message>
        <source>second</source>
        <translation>zweiten</translation>
    </message>
    <message>
        <source>third</source>
        <translation>dritten</translation>
    </message>
    <message>
        <source>fourth</source>
        <translation>vierten</translation>
    </message>
    <message>
        <source>fifth</source>
        <translation>fünften</translation>
    </message>
    <message>
        <source>every month on the %1 %2</source>
        <comment>second Thursday</comment>
        <translation>jeden Monat am %1 %2</translation>
    </message>
    <message>
        <source>every month on the last %1</source>
        <comment>Thursday</comment>
        <translation>jeden Monat am letzten %1</translation>
    </message>
    <message>
        <source>every year</source>
        <translation>jährlich</translation>
    </message>
    <message>
        <source>by its own rule, kept as it is</source>
        <translation>nach eigener Regel, bleibt wie sie ist</translation>
    </message>
    <message numerus="yes">
        <source>month(s)</source>
        <translation>
            <numerusform>Monat</numerusform>
            <numerusform>Monate</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>day(s)</source>
        <translation>
            <numerusform>Tag</numerusform>
            <numerusform>Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>week(s)</source>
        <translation>
            <numerusform>Woche</numerusform>
            <numerusform>Wochen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>year(s)</source>
        <translation>
            <numerusform>Jahr</numerusform>
            <numerusform>Jahre</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>laneward::RunForm</name>
    <message>
        <source>Record a run</source>
        <translation>Lauf erfassen</translation>
    </message>
    <message>
        <source>&amp;Lanes done:</source>
        <translation>Erledigte &amp;Bahnen:</translation>
    </message>
    <message>
        <source>Stopped &amp;after:</source>
        <translation>Abgebrochen &amp;nach:</translation>
    </message>
    <message>
        <source>&amp;Pattern:</source>
        <translation>Öl&amp;muster:</translation>
    </message>
    <message>
        <source>&amp;Treatment:</source>
        <translation>Be&amp;handlung:</translation>
    </message>
    <message>
        <source>&amp;Machine:</source>
        <translation>&amp;Ölmaschine:</translation>
    </message>
    <message>
        <source>&amp;Note:</source>
        <translation>N&amp;otiz:</translation>
    </message>
    <message>
        <source>&amp;From:</source>
        <translation>&amp;Von:</translation>
    </message>
    <message>
        <source>&amp;Until:</source>
        <translation>B&amp;is:</translation>
    </message>
    <message>
        <source>for example 1-12, 15</source>
        <translation>zum Beispiel 1-12, 15</translation>
    </message>
    <message>
        <source>Something happened</source>
        <translation>Etwas ist geschehen</translation>
    </message>
    <message>
        <source>nothing happened</source>
        <translation>nichts geschehen</translation>
    </message>
    <message>
        <source>What happened, and where</source>
        <translation>Was geschehen ist, und wo</translation>
    </message>
    <message>
        <source>what happened, and where</source>
        <translation>was geschehen ist, und wo</translation>
    </message>
    <message>
        <source>&amp;Besides:</source>
        <translation>A&amp;ußerdem:</translation>
    </message>
    <message>
        <source>&amp;Record this run</source>
        <translation>&amp;Lauf erfassen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>How the planned run really went</source>
        <translation>Wie der geplante Lauf wirklich verlief</translation>
    </message>
    <message>
        <source>A run that was not planned</source>
        <translation>Ein ungeplanter Lauf</translation>
    </message>
    <message>
        <source>all done</source>
        <translation>alles erledigt</translation>
    </message>
    <message>
        <source>lane %1</source>
        <translation>Bahn %1</translation>
    </message>
    <message>
        <source>Nothing recorded yet: write lanes of this house, such as 1-12.</source>
        <translation>Noch nichts erfasst: Bahnen dieses Hauses angeben, etwa 1-12.</translation>
    </message>
    <message>
        <source>Nothing recorded yet: this centre has no machine.</source>
        <translation>Noch nichts erfasst: Dieses Center hat keine Ölmaschine.</translation>
    </message>
    <message>
        <source>Nothing recorded yet: choose the pattern that was laid down.</source>
        <translation>Noch nichts erfasst: das aufgetragene Ölmuster wählen.</translation>
    </message>
    <message>
        <source>Nothing recorded yet: a run of more than 12 hours cannot be; look at the times.</source>
        <translation>Noch nichts erfasst: Ein Lauf von mehr als 12 Stunden ist nicht möglich; bitte die Zeiten prüfen.</translation>
    </message>
    <message>
        <source>Nothing recorded yet: say in a word what happened, or choose &apos;nothing happened&apos;.</source>
        <translation>Noch nichts erfasst: kurz angeben, was geschehen ist, oder „nichts geschehen“ wählen.</translation>
    </message>
</context>
<context>
    <name>laneward::Search</name>
    <message>
        <source>Find an event or a lane</source>
        <translation>Veranstaltung oder Bahn suchen</translation>
    </message>
</context>
<context>
    <name>laneward::SeasonForm</name>
    <message>
        <source>&amp;Tournaments more</source>
        <translation>Mehr &amp;Turniere</translation>
    </message>
    <message>
        <source>Number of tournaments</source>
        <translation>Anzahl der Turniere</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Weekday of the tournaments</source>
        <translation>Wochentag der Turniere</translation>
    </message>
    <message>
        <source>Play begins</source>
        <translation>Spielbeginn</translation>
    </message>
    <message>
        <source>Begins</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>Hours of play</source>
        <translation>Spieldauer in Stunden</translation>
    </message>
    <message>
        <source>Lanes of the tournaments</source>
        <translation>Bahnen der Turniere</translation>
    </message>
    <message>
        <source>Lanes</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>Pattern of the tournaments</source>
        <translation>Ölmuster der Turniere</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Ölmuster</translation>
    </message>
    <message>
        <source>A machine o&amp;ut of service</source>
        <translation>Eine Ölmaschine a&amp;ußer Betrieb</translation>
    </message>
    <message>
        <source>Machine that is out of service</source>
        <translation>Ölmaschine, die außer Betrieb ist</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Ölmaschine</translation>
    </message>
    <message>
        <source>First day out of service</source>
        <translation>Erster Tag außer Betrieb</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>Days out of service</source>
        <translation>Tage außer Betrieb</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Open &amp;play asks less often</source>
        <translation>&amp;Freies Spiel verlangt seltener</translation>
    </message>
    <message>
        <source>Days between treatments for open play</source>
        <translation>Tage zwischen Behandlungen für freies Spiel</translation>
    </message>
    <message>
        <source>Every … days</source>
        <translation>Alle … Tage</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>Lanes are written as in &quot;1-12, 15&quot;, up to lane %1.</source>
        <translation>Bahnen werden wie „1-12, 15“ geschrieben, höchstens bis Bahn %1.</translation>
    </message>
    <message>
        <source>No open play asks for treatments more often than that.</source>
        <translation>Kein freies Spiel verlangt häufiger eine Behandlung.</translation>
    </message>
    <message>
        <source> h</source>
        <comment>suffix</comment>
        <translation> h</translation>
    </message>
    <message>
        <source>The lanes are free at that time on %1 of these weekdays; %2 were asked for.</source>
        <translation>Die Bahnen sind zu dieser Zeit an %1 dieser Wochentage frei; gewünscht waren %2.</translation>
    </message>
</context>
<context>
    <name>laneward::SeasonPanel</name>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Dann</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Lanes treated</source>
        <translation>Behandelte Bahnen</translation>
    </message>
    <message>
        <source>Outings</source>
        <translation>Fahrten</translation>
    </message>
    <message>
        <source>Machine time</source>
        <translation>Maschinenzeit</translation>
    </message>
    <message>
        <source>Overtime</source>
        <translation>Überstunden</translation>
    </message>
    <message>
        <source>Conditioner</source>
        <translation>Bahnöl</translation>
    </message>
    <message>
        <source>Cleaner</source>
        <translation>Reiniger</translation>
    </message>
    <message>
        <source>Unmet</source>
        <translation>Nicht erfüllt</translation>
    </message>
    <message>
        <source>Late events</source>
        <translation>Zu spät bedient</translation>
    </message>
    <message>
        <source>Tight days</source>
        <translation>Knappe Tage</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>row, column: figure</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Der Tag</translation>
    </message>
    <message>
        <source>Choose a day to see its figures; open it by Enter or a double click.</source>
        <translation>Einen Tag wählen, um seine Zahlen zu sehen; mit Eingabe oder Doppelklick öffnen.</translation>
    </message>
    <message>
        <source>What if …</source>
        <translation>Was wäre, wenn …</translation>
    </message>
    <message>
        <source>Tick what to suppose. Nothing of it is stored.</source>
        <translation>Ankreuzen, was angenommen werden soll. Nichts davon wird gespeichert.</translation>
    </message>
    <message>
        <source>The season is being planned</source>
        <translation>Die Saison wird geplant</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Stopped. Change what is supposed, or come back to this page, to plan again.</source>
        <translation>Abgebrochen. Eine Annahme ändern oder diese Seite neu aufrufen, um wieder zu planen.</translation>
    </message>
    <message>
        <source>The season is being planned…</source>
        <translation>Die Saison wird geplant …</translation>
    </message>
    <message>
        <source>The season is not planned</source>
        <translation>Die Saison ist nicht geplant</translation>
    </message>
    <message numerus="yes">
        <source>No lane needs a treatment in the %n day(s) ahead</source>
        <translation>
            <numerusform>Am kommenden Tag braucht keine Bahn eine Behandlung</numerusform>
            <numerusform>In den kommenden %n Tagen braucht keine Bahn eine Behandlung</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, what it has to spare</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n tight day(s) in the season; the hardest is %1</source>
        <translation>
            <numerusform>%n knapper Tag in der Saison: %1</numerusform>
            <numerusform>%n knappe Tage in der Saison; der schwierigste ist %1</numerusform>
        </translation>
    </message>
    <message>
        <source>No day of the season is tight; the narrowest is %1</source>
        <translation>Kein Tag der Saison ist knapp; der engste ist %1</translation>
    </message>
    <message>
        <source>Looking at what it does to stock…</source>
        <translation>Es wird nachgesehen, was es für den Bestand heißt …</translation>
    </message>
    <message numerus="yes">
        <source>%1, over the %n day(s) ahead</source>
        <translation>
            <numerusform>%1, über den nächsten Tag</numerusform>
            <numerusform>%1, über die nächsten %n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>What it does to stock</source>
        <translation>Was es für den Bestand heißt</translation>
    </message>
</context>
<context>
    <name>laneward::SeasonView</name>
    <message>
        <source>Days of the season</source>
        <translation>Tage der Saison</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>day: what it has to spare</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) late</source>
        <translation>
            <numerusform>%n Veranstaltung zu spät bedient</numerusform>
            <numerusform>%n Veranstaltungen zu spät bedient</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) to treat</source>
        <translation>
            <numerusform>%n Bahn zu behandeln</numerusform>
            <numerusform>%n Bahnen zu behandeln</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n outing(s)</source>
        <translation>
            <numerusform>%n Fahrt</numerusform>
            <numerusform>%n Fahrten</numerusform>
        </translation>
    </message>
    <message>
        <source>machine time %1</source>
        <translation>Maschinenzeit %1</translation>
    </message>
    <message>
        <source>conditioner %1</source>
        <translation>Bahnöl %1</translation>
    </message>
    <message>
        <source>cleaner %1</source>
        <translation>Reiniger %1</translation>
    </message>
    <message>
        <source>overtime %1</source>
        <translation>Überstunden %1</translation>
    </message>
    <message>
        <source>nothing better exists</source>
        <translation>besser geht es nicht</translation>
    </message>
    <message>
        <source>not proven to be the best</source>
        <translation>nicht als bester Plan erwiesen</translation>
    </message>
    <message>
        <source>The season is being planned…</source>
        <translation>Die Saison wird geplant …</translation>
    </message>
    <message numerus="yes">
        <source>! %n unmet</source>
        <translation>
            <numerusform>! %n nicht erfüllt</numerusform>
            <numerusform>! %n nicht erfüllt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>! %n late</source>
        <translation>
            <numerusform>! %n zu spät</numerusform>
            <numerusform>! %n zu spät</numerusform>
        </translation>
    </message>
    <message>
        <source>! −%1</source>
        <translation>! −%1</translation>
    </message>
    <message>
        <source>! %1</source>
        <comment>tight</comment>
        <translation>! %1</translation>
    </message>
    <message>
        <source>0 min</source>
        <translation>0 min</translation>
    </message>
</context>
<context>
    <name>laneward::ServiceForm</name>
    <message>
        <source>&amp;What was done:</source>
        <translation>&amp;Was getan wurde:</translation>
    </message>
    <message>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <source>Wor&amp;k:</source>
        <translation>Arb&amp;eit:</translation>
    </message>
    <message>
        <source>Fo&amp;und:</source>
        <translation>Be&amp;fund:</translation>
    </message>
    <message>
        <source>Not&amp;e:</source>
        <translation>Bemer&amp;kung:</translation>
    </message>
    <message>
        <source>&amp;Record it</source>
        <translation>Ein&amp;tragen</translation>
    </message>
    <message>
        <source>Leave it (Esc)</source>
        <translation>So lassen (Esc)</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <comment>duty, of what</comment>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1: amount taken</source>
        <comment>supply</comment>
        <translation>%1: entnommene Menge</translation>
    </message>
    <message>
        <source>Takes %1 (%2 there):</source>
        <comment>supply, amount</comment>
        <translation>Braucht %1 (%2 da):</translation>
    </message>
    <message>
        <source>Service: %1</source>
        <comment>duty</comment>
        <translation>Wartung: %1</translation>
    </message>
</context>
<context>
    <name>laneward::ServicePage</name>
    <message>
        <source>Working out what falls due…</source>
        <translation>Wird berechnet, was fällig wird …</translation>
    </message>
    <message>
        <source>Nothing is looked after here yet.</source>
        <translation>Hier wird noch nichts gewartet.</translation>
    </message>
    <message>
        <source>What falls due could not be worked out: %1</source>
        <translation>Was fällig wird, war nicht zu berechnen: %1</translation>
    </message>
    <message>
        <source>Service</source>
        <translation>Wartung</translation>
    </message>
    <message>
        <source>What falls due, and what is wearing?</source>
        <translation>Was wird fällig, und was nutzt sich ab?</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Maschinen</translation>
    </message>
    <message>
        <source>Wear</source>
        <translation>Verschleiß</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Akkus</translation>
    </message>
    <message>
        <source>Working out what falls due</source>
        <translation>Berechnen, was fällig wird</translation>
    </message>
    <message>
        <source>Work it &amp;out</source>
        <translation>Aus&amp;rechnen</translation>
    </message>
    <message>
        <source>Stopped. What is shown is older than the last change.</source>
        <translation>Abgebrochen. Was hier steht, ist älter als die letzte Änderung.</translation>
    </message>
    <message>
        <source>Stopped. What falls due is not known.</source>
        <translation>Abgebrochen. Was fällig wird, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>What falls due is not known.</source>
        <translation>Was fällig wird, ist nicht bekannt.</translation>
    </message>
</context>
<context>
    <name>laneward::Session</name>
    <message>
        <source>The centre was changed on another computer; you now see the latest.</source>
        <translation>Das Center wurde an einem anderen Computer geändert; jetzt ist der neueste Stand zu sehen.</translation>
    </message>
    <message>
        <source>Nothing was saved: choose who is at the desk first, below on the right.</source>
        <translation>Nichts wurde gespeichert: bitte zuerst unten rechts wählen, wer am Platz ist.</translation>
    </message>
    <message>
        <source>Confirm the jobs of %1</source>
        <translation>Aufträge bestätigen: %1</translation>
    </message>
    <message>
        <source>%1 plays %2 longer</source>
        <translation>%1 spielt %2 länger</translation>
    </message>
    <message>
        <source>Confirm the job at %1</source>
        <translation>Auftrag bestätigen: %1</translation>
    </message>
</context>
<context>
    <name>laneward::SetupForm</name>
    <message>
        <source>House</source>
        <translation>Hausmuster</translation>
    </message>
    <message>
        <source>A plain pattern to begin with; put the house&apos;s own in its place.</source>
        <translation>Ein einfaches Ölmuster für den Anfang; durch das eigene des Hauses ersetzen.</translation>
    </message>
    <message>
        <source>Lane staff</source>
        <translation>Bahnpersonal</translation>
    </message>
    <message>
        <source>Set up my centre</source>
        <translation>Mein Center einrichten</translation>
    </message>
    <message>
        <source>&amp;Name of the centre:</source>
        <translation>&amp;Name des Centers:</translation>
    </message>
    <message>
        <source>Number of &amp;lanes:</source>
        <translation>Anzahl der &amp;Bahnen:</translation>
    </message>
    <message>
        <source>Machine 1</source>
        <translation>Ölmaschine 1</translation>
    </message>
    <message>
        <source>names, with a comma between them</source>
        <translation>Namen, durch Komma getrennt</translation>
    </message>
    <message>
        <source>Lane &amp;machines:</source>
        <translation>&amp;Ölmaschinen:</translation>
    </message>
    <message>
        <source>&amp;Time zone:</source>
        <translation>&amp;Zeitzone:</translation>
    </message>
    <message>
        <source>millilitres, metres</source>
        <translation>Milliliter, Meter</translation>
    </message>
    <message>
        <source>US fluid ounces, feet</source>
        <translation>US-Flüssigunzen, Fuß</translation>
    </message>
    <message>
        <source>&amp;Units:</source>
        <translation>&amp;Einheiten:</translation>
    </message>
    <message>
        <source>&amp;Your name:</source>
        <translation>&amp;Ihr Name:</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>Lane staff works until</source>
        <translation>Bahnpersonal arbeitet bis</translation>
    </message>
    <message>
        <source>Lane staff &amp;works from:</source>
        <translation>Bahnpersonal &amp;arbeitet von:</translation>
    </message>
    <message>
        <source>&amp;Create the centre</source>
        <translation>Center an&amp;legen</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>Zu&amp;rück</translation>
    </message>
    <message>
        <source>Give the centre a name.</source>
        <translation>Bitte dem Center einen Namen geben.</translation>
    </message>
    <message>
        <source>Name at least one lane machine.</source>
        <translation>Bitte mindestens eine Ölmaschine nennen.</translation>
    </message>
    <message>
        <source>Write your name: every record says who made it.</source>
        <translation>Bitte den eigenen Namen angeben: Jeder Eintrag sagt, von wem er stammt.</translation>
    </message>
</context>
<context>
    <name>laneward::SheetView</name>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation>Als &amp;PDF speichern…</translation>
    </message>
    <message>
        <source>&amp;Back to the page</source>
        <translation>&amp;Zurück zur Seite</translation>
    </message>
    <message>
        <source>The sheet as it will be printed</source>
        <translation>Das Blatt, wie es gedruckt wird</translation>
    </message>
    <message>
        <source>Sheet of %1. Printing it confirms its jobs.</source>
        <translation>Blatt für %1. Drucken bestätigt seine Aufträge.</translation>
    </message>
    <message>
        <source>Sheet of %1, plan version %2.</source>
        <translation>Blatt für %1, Planstand %2.</translation>
    </message>
    <message>
        <source>sheet-%1.pdf</source>
        <comment>file name</comment>
        <translation>auftragsblatt-%1.pdf</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Blatt speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The sheet is in %1</source>
        <translation>Das Blatt ist in %1</translation>
    </message>
</context>
<context>
    <name>laneward::ShiftForm</name>
    <message>
        <source>&amp;Name:</source>
        <translation>&amp;Name:</translation>
    </message>
    <message>
        <source>&amp;On:</source>
        <translation>&amp;Am:</translation>
    </message>
    <message>
        <source>to</source>
        <comment>time</comment>
        <translation>bis</translation>
    </message>
    <message>
        <source>Works until; the same or earlier is on the next day</source>
        <translation>Arbeitet bis; gleich oder früher heißt am nächsten Tag</translation>
    </message>
    <message>
        <source>&amp;Works from:</source>
        <translation>Arbeitet &amp;von:</translation>
    </message>
    <message>
        <source>before,</source>
        <comment>overtime</comment>
        <translation>davor,</translation>
    </message>
    <message>
        <source>after</source>
        <comment>overtime</comment>
        <translation>danach</translation>
    </message>
    <message>
        <source>Overtime before the shift</source>
        <translation>Überstunden vor der Schicht</translation>
    </message>
    <message>
        <source>Overtime after the shift</source>
        <translation>Überstunden nach der Schicht</translation>
    </message>
    <message>
        <source>&amp;People at once:</source>
        <translation>&amp;Personen zugleich:</translation>
    </message>
    <message>
        <source>Over&amp;time allowed:</source>
        <translation>Er&amp;laubte Überstunden:</translation>
    </message>
    <message>
        <source>Not o&amp;n these days:</source>
        <translation>Nich&amp;t an diesen Tagen:</translation>
    </message>
    <message>
        <source>&amp;Also on these days:</source>
        <translation>A&amp;uch an diesen Tagen:</translation>
    </message>
    <message>
        <source>A new shift</source>
        <translation>Eine neue Schicht</translation>
    </message>
    <message>
        <source>New shift: %1</source>
        <translation>Neue Schicht: %1</translation>
    </message>
    <message>
        <source>Change the shift %1</source>
        <translation>Schicht %1 ändern</translation>
    </message>
</context>
<context>
    <name>laneward::ShortfallList</name>
    <message>
        <source>! Not ready as asked</source>
        <translation>! Nicht wie verlangt fertig</translation>
    </message>
    <message>
        <source>Show the event</source>
        <translation>Veranstaltung zeigen</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>%1 zeigen</translation>
    </message>
</context>
<context>
    <name>laneward::SlipPanel</name>
    <message>
        <source>Still pla&amp;ying:</source>
        <translation>S&amp;pielt noch:</translation>
    </message>
    <message>
        <source>Event that is still playing</source>
        <translation>Veranstaltung, die noch spielt</translation>
    </message>
    <message>
        <source>slips by</source>
        <translation>länger um</translation>
    </message>
    <message>
        <source>+%1 min</source>
        <translation>+%1 min</translation>
    </message>
    <message>
        <source>The event plays %1 minutes longer</source>
        <translation>Die Veranstaltung spielt %1 Minuten länger</translation>
    </message>
    <message>
        <source> min</source>
        <comment>suffix</comment>
        <translation> min</translation>
    </message>
    <message>
        <source>Other number of minutes</source>
        <translation>Andere Anzahl Minuten</translation>
    </message>
    <message>
        <source>S&amp;lip</source>
        <translation>Ver&amp;längern</translation>
    </message>
    <message>
        <source>%1, until %2, lanes %3</source>
        <translation>%1, bis %2, Bahn %3</translation>
    </message>
    <message>
        <source>no event is on now</source>
        <translation>zurzeit läuft keine Veranstaltung</translation>
    </message>
</context>
<context>
    <name>laneward::StaffPanel</name>
    <message>
        <source>Staff hours</source>
        <translation>Personalstunden</translation>
    </message>
    <message>
        <source>staff-hours.csv</source>
        <translation>personalstunden.csv</translation>
    </message>
    <message>
        <source>Staff hours by day</source>
        <translation>Personalstunden nach Tagen</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>Insgesamt</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken …</translation>
    </message>
    <message>
        <source>P&amp;DF…</source>
        <translation>PD&amp;F …</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>CS&amp;V…</source>
        <translation>CS&amp;V …</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>Close (Esc)</source>
        <translation>Schließen (Esc)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>dates</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>In all %1, of them %2 overtime</source>
        <translation>Insgesamt %1, davon %2 Überstunden</translation>
    </message>
    <message>
        <source>In all %1, no overtime</source>
        <translation>Insgesamt %1, keine Überstunden</translation>
    </message>
    <message>
        <source>The staff hours are printed</source>
        <translation>Die Personalstunden sind gedruckt</translation>
    </message>
    <message>
        <source>Nothing was printed: the printer cannot be painted on.</source>
        <translation>Nichts wurde gedruckt: Auf den Drucker kann nicht gezeichnet werden.</translation>
    </message>
    <message>
        <source>staff-hours-%1.%2</source>
        <comment>date, ending</comment>
        <translation>personalstunden-%1.%2</translation>
    </message>
    <message>
        <source>Save the staff hours</source>
        <translation>Personalstunden speichern</translation>
    </message>
    <message>
        <source>The staff hours are in %1</source>
        <translation>Die Personalstunden sind in %1</translation>
    </message>
    <message>
        <source>%1 could not be written; nothing was changed.</source>
        <translation>%1 konnte nicht geschrieben werden; nichts wurde geändert.</translation>
    </message>
</context>
<context>
    <name>laneward::StockDetail</name>
    <message>
        <source>Use, measured</source>
        <translation>Gemessener Verbrauch</translation>
    </message>
    <message>
        <source>Fills behind it</source>
        <translation>Füllungen dahinter</translation>
    </message>
    <message>
        <source>%1: stock ahead</source>
        <comment>supply</comment>
        <translation>%1: Vorrat in den nächsten Monaten</translation>
    </message>
    <message>
        <source>Delivery about %1: %2</source>
        <comment>date, amount</comment>
        <translation>Lieferung etwa %1: %2</translation>
    </message>
    <message>
        <source>Dark: 50 %, light: 90 %. Point at a day, or walk by the arrow keys.</source>
        <translation>Dunkel: 50 %, hell: 90 %. Auf einen Tag zeigen oder mit den Pfeiltasten gehen.</translation>
    </message>
    <message>
        <source>%1: no fill up to the line is on record yet; what the recipes say counts until then.</source>
        <comment>machine</comment>
        <translation>%1: noch keine Füllung bis zur Linie aufgezeichnet; bis dahin gilt, was die Rezepte sagen.</translation>
    </message>
    <message numerus="yes">
        <source>%n fill(s)</source>
        <translation>
            <numerusform>%n Füllung</numerusform>
            <numerusform>%n Füllungen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 per lane (90 %: %3 to %4) where the recipes say %5; from %6.</source>
        <comment>machine, amounts, fills</comment>
        <translation>%1: %2 je Bahn (90 %: %3 bis %4), wo die Rezepte %5 sagen; aus %6.</translation>
    </message>
    <message>
        <source>It was not counted twice yet; the usual use counts until then.</source>
        <translation>Noch nicht zweimal gezählt; bis dahin gilt der übliche Verbrauch.</translation>
    </message>
    <message numerus="yes">
        <source>%1 of the usual use (90 %: %2 to %3), from %n count(s).</source>
        <translation>
            <numerusform>%1 des üblichen Verbrauchs (90 %: %2 bis %3), aus %n Zählung.</numerusform>
            <numerusform>%1 des üblichen Verbrauchs (90 %: %2 bis %3), aus %n Zählungen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Unplanned work, service and loss: about %1 in four weeks.</source>
        <translation>Ungeplante Arbeit, Wartung und Verlust: etwa %1 in vier Wochen.</translation>
    </message>
    <message>
        <source>%1, %2: %3 poured for %4</source>
        <comment>time, machine, amounts</comment>
        <translation>%1, %2: %3 eingefüllt für %4</translation>
    </message>
    <message>
        <source>%1 mL</source>
        <translation>%1 ml</translation>
    </message>
    <message>
        <source>%1 fl oz</source>
        <translation>%1 fl oz</translation>
    </message>
    <message>
        <source>Told of the mixed liquid, water to concentrate %1 : 1.</source>
        <translation>Angaben für die gemischte Flüssigkeit, Wasser zu Konzentrat %1 : 1.</translation>
    </message>
    <message>
        <source>Unplanned work, service and loss: less than one in four weeks.</source>
        <translation>Ungeplante Arbeit, Wartung und Verlust: weniger als eins in vier Wochen.</translation>
    </message>
    <message>
        <source>Past forecasts</source>
        <translation>Frühere Vorhersagen</translation>
    </message>
</context>
<context>
    <name>laneward::StockModel</name>
    <message>
        <source>%1 in 30 days, %2 in 60, %3 in 90</source>
        <comment>amounts</comment>
        <translation>%1 in 30 Tagen, %2 in 60, %3 in 90</translation>
    </message>
    <message>
        <source>later</source>
        <comment>than the days that are looked at</comment>
        <translation>später</translation>
    </message>
    <message>
        <source>%1 or later</source>
        <comment>date</comment>
        <translation>%1 oder später</translation>
    </message>
    <message>
        <source>%1 to %2, most likely %3</source>
        <comment>dates</comment>
        <translation>%1 bis %2, am ehesten %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>column: value</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Vorrat</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>Vorhanden</translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation>Verschlossen</translation>
    </message>
    <message>
        <source>Open</source>
        <comment>containers</comment>
        <translation>Offen</translation>
    </message>
    <message>
        <source>In tanks</source>
        <translation>In Tanks</translation>
    </message>
    <message>
        <source>A week</source>
        <translation>Je Woche</translation>
    </message>
    <message>
        <source>Stock, next 90 days</source>
        <translation>Vorrat, 90 Tage</translation>
    </message>
    <message>
        <source>Runs out</source>
        <translation>Geht aus</translation>
    </message>
    <message>
        <source>Order by</source>
        <translation>Bestellen bis</translation>
    </message>
</context>
<context>
    <name>laneward::StockPanel</name>
    <message>
        <source>No supplies are kept yet. Enter the conditioners, the cleaner, cloth and parts first, then count what is there: from then on this page tells how long everything lasts.</source>
        <translation>Es werden noch keine Vorräte geführt. Zuerst Bahnöle, Reiniger, Tücher und Teile eingeben, dann zählen, was da ist: von da an sagt diese Seite, wie lange alles reicht.</translation>
    </message>
    <message>
        <source>all supplies</source>
        <translation>alle Vorräte</translation>
    </message>
    <message>
        <source>liquids</source>
        <translation>Flüssigkeiten</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>Tücher</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Sho&amp;w:</source>
        <translation>&amp;Zeigen:</translation>
    </message>
    <message>
        <source>▬ from 5 % to 95 %, tick at 50 %   ▼ order by</source>
        <translation>▬ von 5 % bis 95 %, Strich bei 50 %   ▼ bestellen bis</translation>
    </message>
    <message>
        <source>Print &amp;list…</source>
        <translation>&amp;Liste drucken…</translation>
    </message>
    <message>
        <source>Supplies</source>
        <translation>Vorräte</translation>
    </message>
    <message>
        <source>supplies.csv</source>
        <translation>vorraete.csv</translation>
    </message>
    <message>
        <source>retired ones</source>
        <translation>ausgemusterte</translation>
    </message>
    <message>
        <source>&amp;New supply…</source>
        <translation>&amp;Neuer Vorrat…</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>Än&amp;dern…</translation>
    </message>
    <message>
        <source>Retire</source>
        <translation>Ausmustern</translation>
    </message>
    <message>
        <source>Take up again</source>
        <translation>Wieder aufnehmen</translation>
    </message>
</context>
<context>
    <name>laneward::StrokesModel</name>
    <message>
        <source>out</source>
        <comment>direction of a stroke</comment>
        <translation>hin</translation>
    </message>
    <message>
        <source>back</source>
        <comment>direction of a stroke</comment>
        <translation>zurück</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>number and name of a conditioner</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>–</source>
        <comment>no amount yet</comment>
        <translation>–</translation>
    </message>
    <message>
        <source>%1, wrong: %2</source>
        <translation>%1, falsch: %2</translation>
    </message>
    <message>
        <source>Way</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Laps</source>
        <translation>Durchg.</translation>
    </message>
    <message>
        <source>From, m</source>
        <translation>Von, m</translation>
    </message>
    <message>
        <source>From, ft</source>
        <translation>Von, ft</translation>
    </message>
    <message>
        <source>To, m</source>
        <translation>Bis, m</translation>
    </message>
    <message>
        <source>To, ft</source>
        <translation>Bis, ft</translation>
    </message>
    <message>
        <source>Conditioner</source>
        <translation>Bahnöl</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Boards</source>
        <translation>Leisten</translation>
    </message>
    <message>
        <source>to</source>
        <comment>last board of a stroke</comment>
        <translation>bis</translation>
    </message>
    <message>
        <source>µL</source>
        <translation>µL</translation>
    </message>
    <message>
        <source>Out from the foul line, or back to it</source>
        <translation>Hin von der Foullinie weg oder zurück zu ihr</translation>
    </message>
    <message>
        <source>First board, counted from the right gutter</source>
        <translation>Erste Leiste, von der rechten Rinne gezählt</translation>
    </message>
    <message>
        <source>Last board, counted from the right gutter</source>
        <translation>Letzte Leiste, von der rechten Rinne gezählt</translation>
    </message>
    <message>
        <source>How often the stroke is laid</source>
        <translation>Wie oft der Ölzug aufgetragen wird</translation>
    </message>
    <message>
        <source>Dose for each board and lap, in microlitres</source>
        <translation>Dosis je Leiste und Durchgang, in Mikrolitern</translation>
    </message>
    <message>
        <source>Nearer end, from the foul line</source>
        <translation>Nahes Ende, von der Foullinie</translation>
    </message>
    <message>
        <source>Farther end, from the foul line</source>
        <translation>Fernes Ende, von der Foullinie</translation>
    </message>
    <message>
        <source>Which of the machine&apos;s conditioners</source>
        <translation>Welches Bahnöl der Ölmaschine</translation>
    </message>
    <message>
        <source>Laps x boards x dose</source>
        <translation>Durchgänge x Leisten x Dosis</translation>
    </message>
</context>
<context>
    <name>laneward::StrokesTable</name>
    <message>
        <source>Strokes in working order</source>
        <translation>Ölzüge in Arbeitsfolge</translation>
    </message>
</context>
<context>
    <name>laneward::SupplierForm</name>
    <message>
        <source>falls away fro&amp;m</source>
        <translation>entfällt a&amp;b</translation>
    </message>
    <message>
        <source>Value of goods from which there is no freight</source>
        <translation>Warenwert, ab dem keine Fracht anfällt</translation>
    </message>
    <message>
        <source>&amp;Name:</source>
        <translation>&amp;Name:</translation>
    </message>
    <message>
        <source>&amp;Address:</source>
        <translation>&amp;Anschrift:</translation>
    </message>
    <message>
        <source>&amp;Freight of an order:</source>
        <translation>&amp;Fracht einer Bestellung:</translation>
    </message>
    <message>
        <source>An order is at &amp;least:</source>
        <translation>Mindestbeste&amp;llung:</translation>
    </message>
    <message>
        <source>Takes orders on %1</source>
        <translation>Nimmt am %1 Bestellungen an</translation>
    </message>
    <message>
        <source> days</source>
        <comment>suffix</comment>
        <translation> Tage</translation>
    </message>
    <message>
        <source>From order to receipt, before there are deliveries to learn from</source>
        <translation>Von der Bestellung bis zum Eingang, solange noch keine Lieferungen bekannt sind</translation>
    </message>
    <message>
        <source>Takes &amp;orders on:</source>
        <translation>Nimmt Bestellungen an a&amp;m:</translation>
    </message>
    <message>
        <source>Usual &amp;delivery time:</source>
        <translation>Übliche Liefer&amp;zeit:</translation>
    </message>
    <message>
        <source>No&amp;te:</source>
        <translation>Be&amp;merkung:</translation>
    </message>
    <message>
        <source>New supplier</source>
        <translation>Neuer Lieferant</translation>
    </message>
    <message>
        <source>Change %1</source>
        <comment>supplier</comment>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>new</source>
        <comment>a supplier</comment>
        <translation>neu</translation>
    </message>
    <message>
        <source>Add %1</source>
        <comment>supplier</comment>
        <translation>%1 hinzufügen</translation>
    </message>
    <message>
        <source>Retire %1</source>
        <translation>%1 ausmustern</translation>
    </message>
    <message>
        <source>Take %1 up again</source>
        <translation>%1 wieder aufnehmen</translation>
    </message>
</context>
<context>
    <name>laneward::SuppliesImport</name>
    <message>
        <source>A count of stock</source>
        <translation>Eine Zählung</translation>
    </message>
    <message>
        <source>A price list</source>
        <translation>Eine Preisliste</translation>
    </message>
    <message>
        <source>CSV (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>CSV (*.csv *.txt *.tsv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Count of stock from %1</source>
        <comment>file</comment>
        <translation>Zählung aus %1</translation>
    </message>
    <message>
        <source>Price list of %1 from %2</source>
        <comment>supplier, file</comment>
        <translation>Preisliste von %1 aus %2</translation>
    </message>
    <message>
        <source>— not in the file —</source>
        <translation>— nicht in der Datei —</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weitere</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing can come in yet:</source>
        <translation>Noch kann nichts übernommen werden:</translation>
    </message>
    <message numerus="yes">
        <source>Count %n place(s) from %1</source>
        <translation>
            <numerusform>%n Platz aus %1 zählen</numerusform>
            <numerusform>%n Plätze aus %1 zählen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n place(s) are counted.</source>
        <translation>
            <numerusform>%n Platz ist gezählt.</numerusform>
            <numerusform>%n Plätze sind gezählt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n price(s) are new or another.</source>
        <translation>
            <numerusform>%n Preis ist neu oder geändert.</numerusform>
            <numerusform>%n Preise sind neu oder geändert.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are no longer in the list and are retired.</source>
        <translation>
            <numerusform>%n steht nicht mehr in der Liste und wird ausgemustert.</numerusform>
            <numerusform>%n stehen nicht mehr in der Liste und werden ausgemustert.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Nothing can come in yet; %n cell(s) do not fit:</source>
        <translation>
            <numerusform>Noch kann nichts übernommen werden; %n Feld passt nicht:</numerusform>
            <numerusform>Noch kann nichts übernommen werden; %n Felder passen nicht:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) are far from what is known; say if it is so:</source>
        <translation>
            <numerusform>%n Zeile liegt weit ab vom Bekannten; bestätigen, wenn es stimmt:</numerusform>
            <numerusform>%n Zeilen liegen weit ab vom Bekannten; bestätigen, wenn es stimmt:</numerusform>
        </translation>
    </message>
    <message>
        <source>Supply, by name or id:</source>
        <translation>Vorrat, Name oder Kennung:</translation>
    </message>
    <message>
        <source>Amount:</source>
        <translation>Menge:</translation>
    </message>
    <message>
        <source>Unit:</source>
        <translation>Einheit:</translation>
    </message>
    <message>
        <source>Place (shelf, open, tank, waste):</source>
        <translation>Ort (shelf, open, tank, waste):</translation>
    </message>
    <message>
        <source>Machine, of tanks:</source>
        <translation>Maschine, bei Tanks:</translation>
    </message>
    <message>
        <source>Container:</source>
        <translation>Gebinde:</translation>
    </message>
    <message>
        <source>Lot:</source>
        <translation>Charge:</translation>
    </message>
    <message>
        <source>Date and time with offset (ISO 8601):</source>
        <translation>Datum und Zeit mit Zonenabstand (ISO 8601):</translation>
    </message>
    <message>
        <source>or date:</source>
        <translation>oder Datum:</translation>
    </message>
    <message>
        <source>and time:</source>
        <translation>und Uhrzeit:</translation>
    </message>
    <message>
        <source>Note:</source>
        <translation>Bemerkung:</translation>
    </message>
    <message>
        <source>Article number:</source>
        <translation>Artikelnummer:</translation>
    </message>
    <message>
        <source>One pack holds:</source>
        <translation>Ein Gebinde enthält:</translation>
    </message>
    <message>
        <source>Unit of it:</source>
        <translation>Einheit davon:</translation>
    </message>
    <message>
        <source>From packs:</source>
        <translation>Ab Gebinden:</translation>
    </message>
    <message>
        <source>To packs:</source>
        <translation>Bis Gebinde:</translation>
    </message>
    <message>
        <source>Price of a pack:</source>
        <translation>Preis eines Gebindes:</translation>
    </message>
    <message>
        <source>Currency:</source>
        <translation>Währung:</translation>
    </message>
    <message>
        <source>Supplier (else the one chosen):</source>
        <translation>Lieferant (sonst der gewählte):</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>Unit where the file names none:</source>
        <translation>Einheit, wo die Datei keine nennt:</translation>
    </message>
    <message>
        <source>point (31.2)</source>
        <translation>Punkt (31.2)</translation>
    </message>
    <message>
        <source>comma (31,2)</source>
        <translation>Komma (31,2)</translation>
    </message>
    <message>
        <source>Decimal sign:</source>
        <translation>Dezimalzeichen:</translation>
    </message>
    <message>
        <source>Dates are written:</source>
        <translation>Datum steht als:</translation>
    </message>
    <message>
        <source>Times are written:</source>
        <translation>Uhrzeit steht als:</translation>
    </message>
    <message>
        <source>Which column of the file is what? This is kept for the next file.</source>
        <translation>Welche Spalte der Datei ist was? Das bleibt für die nächste Datei.</translation>
    </message>
    <message>
        <source>The file begins:</source>
        <translation>So beginnt die Datei:</translation>
    </message>
    <message>
        <source>First rows of the file</source>
        <translation>Erste Zeilen der Datei</translation>
    </message>
    <message>
        <source>What does not fit</source>
        <translation>Was nicht passt</translation>
    </message>
    <message>
        <source>It is &amp;so</source>
        <translation>Es &amp;stimmt</translation>
    </message>
    <message>
        <source>&amp;Bring them in</source>
        <translation>Über&amp;nehmen</translation>
    </message>
    <message>
        <source>Leave it (Esc)</source>
        <translation>So lassen (Esc)</translation>
    </message>
</context>
<context>
    <name>laneward::SuppliesPage</name>
    <message>
        <source>Working out how long stock lasts…</source>
        <translation>Wie lange die Vorräte reichen, wird ausgerechnet …</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>Bestellungen</translation>
    </message>
    <message>
        <source>Ledger</source>
        <translation>Lagerbuch</translation>
    </message>
    <message>
        <source>Working out how long stock lasts</source>
        <translation>Wie lange die Vorräte reichen, wird ausgerechnet</translation>
    </message>
    <message>
        <source>Work it &amp;out</source>
        <translation>Aus&amp;rechnen</translation>
    </message>
    <message>
        <source>Stopped. What is shown is older than the last change.</source>
        <translation>Abgebrochen. Was hier steht, ist älter als die letzte Änderung.</translation>
    </message>
    <message>
        <source>Stopped. How long stock lasts is not known.</source>
        <translation>Abgebrochen. Wie lange die Vorräte reichen, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>How long stock lasts could not be worked out: %1</source>
        <translation>Wie lange die Vorräte reichen, ließ sich nicht ausrechnen: %1</translation>
    </message>
    <message>
        <source>How long stock lasts is not known.</source>
        <translation>Wie lange die Vorräte reichen, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Supplies</source>
        <translation>Vorräte</translation>
    </message>
    <message>
        <source>What will run out, and what must I order by when?</source>
        <translation>Was geht aus, und was muss ich bis wann bestellen?</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Zählung</translation>
    </message>
    <message>
        <source>Price lists</source>
        <translation>Preislisten</translation>
    </message>
</context>
<context>
    <name>laneward::SupplyForm</name>
    <message>
        <source>used as it comes</source>
        <translation>unverdünnt</translation>
    </message>
    <message>
        <source>from machines&apos; tanks, by the recipe</source>
        <translation>aus den Tanks der Maschinen, nach Rezept</translation>
    </message>
    <message>
        <source>for each lane that is cleaned</source>
        <translation>je gereinigte Bahn</translation>
    </message>
    <message>
        <source>each day</source>
        <translation>jeden Tag</translation>
    </message>
    <message>
        <source>when something is serviced</source>
        <translation>bei der Wartung</translation>
    </message>
    <message>
        <source>&amp;Name:</source>
        <translation>&amp;Name:</translation>
    </message>
    <message>
        <source>&amp;Kind:</source>
        <translation>A&amp;rt:</translation>
    </message>
    <message>
        <source>Parts of &amp;water to one:</source>
        <translation>Teile &amp;Wasser auf einen:</translation>
    </message>
    <message>
        <source>&amp;Used:</source>
        <translation>&amp;Verbraucht:</translation>
    </message>
    <message>
        <source>Usual &amp;amount of it:</source>
        <translation>Übliche &amp;Menge dabei:</translation>
    </message>
    <message>
        <source>One &amp;container holds:</source>
        <translation>Ein &amp;Gebinde enthält:</translation>
    </message>
    <message>
        <source> %</source>
        <comment>suffix</comment>
        <translation> %</translation>
    </message>
    <message>
        <source> days</source>
        <comment>suffix</comment>
        <translation> Tage</translation>
    </message>
    <message>
        <source>How likely it must be not to run out before the next delivery</source>
        <translation>Wie wahrscheinlich der Vorrat bis zur nächsten Lieferung reichen muss</translation>
    </message>
    <message>
        <source>What keeping it for a year costs, as part of its value</source>
        <translation>Was das Lagern für ein Jahr kostet, als Teil des Werts</translation>
    </message>
    <message>
        <source>The store holds at &amp;most (0 = no limit):</source>
        <translation>Das &amp;Lager fasst höchstens (0 = unbegrenzt):</translation>
    </message>
    <message>
        <source>Keeps &amp;for (0 = keeps):</source>
        <translation>&amp;Haltbar (0 = unbegrenzt):</translation>
    </message>
    <message>
        <source>Service le&amp;vel:</source>
        <translation>Lieferbe&amp;reitschaft:</translation>
    </message>
    <message>
        <source>&amp;Holding cost a year:</source>
        <translation>Lager&amp;kosten im Jahr:</translation>
    </message>
    <message>
        <source>N&amp;ote:</source>
        <translation>Be&amp;merkung:</translation>
    </message>
    <message>
        <source>New supply</source>
        <translation>Neuer Vorrat</translation>
    </message>
    <message>
        <source>Change %1</source>
        <comment>supply</comment>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>new</source>
        <comment>a supply</comment>
        <translation>neu</translation>
    </message>
    <message>
        <source>Add %1</source>
        <comment>supply</comment>
        <translation>%1 hinzufügen</translation>
    </message>
    <message>
        <source>Retire %1</source>
        <translation>%1 ausmustern</translation>
    </message>
    <message>
        <source>Take %1 up again</source>
        <translation>%1 wieder aufnehmen</translation>
    </message>
</context>
<context>
    <name>laneward::SupplyTexts</name>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>waste</source>
        <translation>Schmutzwasser</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, lot %2</source>
        <translation>%1, Charge %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>none is left</source>
        <translation>nichts ist mehr da</translation>
    </message>
    <message>
        <source>! today</source>
        <translation>! heute</translation>
    </message>
    <message>
        <source>! overdue since %1</source>
        <translation>! überfällig seit %1</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>unter 1 %</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>über 99 %</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
</context>
<context>
    <name>laneward::TodayPage</name>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>What do I do now, and can the machine finish it?</source>
        <translation>Was ist jetzt zu tun, und schafft es die Ölmaschine?</translation>
    </message>
    <message>
        <source>&amp;Record as planned</source>
        <translation>Wie &amp;geplant erfassen</translation>
    </message>
    <message>
        <source>Record with &amp;changes…</source>
        <translation>&amp;Mit Änderungen erfassen…</translation>
    </message>
    <message>
        <source>&amp;Begin the job</source>
        <translation>Auftrag begi&amp;nnen</translation>
    </message>
    <message>
        <source>&amp;Unplanned run…</source>
        <translation>&amp;Ungeplanter Lauf…</translation>
    </message>
    <message>
        <source>&amp;Incident…</source>
        <translation>&amp;Vorfall…</translation>
    </message>
    <message>
        <source>&amp;Print the sheet…</source>
        <translation>Blatt dru&amp;cken…</translation>
    </message>
    <message>
        <source>&amp;Only what is left</source>
        <translation>Nur &amp;Offenes</translation>
    </message>
    <message>
        <source>The day&apos;s jobs in order of work</source>
        <translation>Die Aufträge des Tages in Arbeitsfolge</translation>
    </message>
    <message>
        <source>Save the list</source>
        <translation>Liste speichern</translation>
    </message>
    <message>
        <source>jobs.csv</source>
        <translation>auftraege.csv</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>The list is in %1</source>
        <translation>Die Liste ist in %1</translation>
    </message>
    <message>
        <source>%1 could not be written; nothing was changed.</source>
        <translation>%1 konnte nicht geschrieben werden; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Readiness and notes</source>
        <translation>Bereitschaft und Notizen</translation>
    </message>
    <message>
        <source>&amp;Correct…</source>
        <translation>&amp;Korrigieren…</translation>
    </message>
    <message>
        <source>Incident: %1</source>
        <translation>Vorfall: %1</translation>
    </message>
    <message>
        <source>&amp;Guide me</source>
        <translation>Schritt für Schr&amp;itt</translation>
    </message>
    <message>
        <source>Followed up: %1</source>
        <translation>Geklärt: %1</translation>
    </message>
</context>
<context>
    <name>laneward::WearPanel</name>
    <message>
        <source>%1 – %2</source>
        <comment>of what, duty</comment>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Reading what was replaced…</source>
        <translation>Was getauscht wurde, wird gelesen …</translation>
    </message>
    <message>
        <source>What was replaced could not be read: %1</source>
        <translation>Was getauscht wurde, ließ sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>failures, parts</comment>
        <translation>%1 von %2</translation>
    </message>
    <message numerus="yes">
        <source>%n more failure(s)</source>
        <translation>
            <numerusform>%n Ausfall fehlt</numerusform>
            <numerusform>%n Ausfälle fehlen</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing here is replaced yet. Items and their duties are entered on the tab Machines.</source>
        <translation>Hier wird noch nichts getauscht. Teile und ihre Pflichten werden im Reiter Maschinen eingegeben.</translation>
    </message>
    <message numerus="yes">
        <source>%n part(s)</source>
        <translation>
            <numerusform>%n Teil</numerusform>
            <numerusform>%n Teile</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n failure(s)</source>
        <translation>
            <numerusform>%n Ausfall</numerusform>
            <numerusform>%n Ausfälle</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n left out: two replacements at one reading</source>
        <translation>
            <numerusform>%n ausgelassen: zweimal getauscht bei einem Zählerstand</numerusform>
            <numerusform>%n ausgelassen: zweimal getauscht bei einem Zählerstand</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Adopt %1</source>
        <comment>2,400 lanes</comment>
        <translation>%1 über&amp;nehmen</translation>
    </message>
    <message>
        <source>&amp;Adopt</source>
        <translation>Über&amp;nehmen</translation>
    </message>
    <message>
        <source>Costs of replacing: %1</source>
        <comment>of what</comment>
        <translation>Kosten des Tauschs: %1</translation>
    </message>
    <message>
        <source>Replace %1 after %2</source>
        <comment>of what, 2,400 lanes</comment>
        <translation>%1 nach %2 tauschen</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Failed</source>
        <translation>Ausfälle</translation>
    </message>
    <message>
        <source>Replaced after</source>
        <translation>Getauscht nach</translation>
    </message>
    <message>
        <source>Best after</source>
        <translation>Am besten nach</translation>
    </message>
    <message>
        <source>wear.csv</source>
        <translation>verschleiss.csv</translation>
    </message>
    <message>
        <source>What is replaced</source>
        <translation>Was getauscht wird</translation>
    </message>
    <message>
        <source>Age &amp;in:</source>
        <translation>&amp;Einheit:</translation>
    </message>
    <message>
        <source>&amp;together with others of its kind</source>
        <translation>zusammen mi&amp;t anderen der Art</translation>
    </message>
    <message>
        <source>Costs &amp;planned:</source>
        <translation>Kosten ge&amp;plant:</translation>
    </message>
    <message>
        <source>after a &amp;failure:</source>
        <translation>nach Aus&amp;fall:</translation>
    </message>
    <message>
        <source>Part, work, and all that the stopped run costs</source>
        <translation>Teil, Arbeit und alles, was der abgebrochene Lauf kostet</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>By %1: %2 have failed (%3 to %4)</source>
        <translation>Bis %1: %2 sind ausgefallen (%3 bis %4)</translation>
    </message>
    <message>
        <source>A failure at %1; about %2 have failed by then</source>
        <translation>Ein Ausfall bei %1; bis dahin sind etwa %2 ausgefallen</translation>
    </message>
    <message>
        <source>best: %1</source>
        <translation>am besten: %1</translation>
    </message>
    <message>
        <source>now: %1</source>
        <translation>jetzt: %1</translation>
    </message>
    <message>
        <source>Failed by age in %1: failures, fit, its 95 % band</source>
        <translation>Ausfälle nach Alter (%1), 95-%-Band</translation>
    </message>
    <message>
        <source>Failed by age in %1</source>
        <translation>Ausfälle nach Alter (%1)</translation>
    </message>
    <message>
        <source>No failure is recorded.</source>
        <translation>Kein Ausfall ist eingetragen.</translation>
    </message>
    <message>
        <source>Cost of %1, by age of replacing in %2</source>
        <translation>Kosten von %1 nach Tauschalter (%2)</translation>
    </message>
    <message>
        <source>What replacing costs at each age follows from a fit and from both costs.</source>
        <translation>Was der Tausch in jedem Alter kostet, folgt aus einer Anpassung und beiden Kosten.</translation>
    </message>
    <message>
        <source>Replaced after %1: %2 for %3</source>
        <translation>Getauscht nach %1: %2 für %3</translation>
    </message>
    <message>
        <source>Stopped. The last replacements may be missing.</source>
        <translation>Abgebrochen. Die letzten Wechsel können fehlen.</translation>
    </message>
    <message>
        <source>Stopped. What was replaced is not known.</source>
        <translation>Abgebrochen. Was getauscht wurde, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Reading what was replaced</source>
        <translation>Lesen, was getauscht wurde</translation>
    </message>
    <message>
        <source>Rea&amp;d it</source>
        <translation>&amp;Lesen</translation>
    </message>
</context>
<context>
    <name>laneward::WeekView</name>
    <message>
        <source>Events by day and time</source>
        <translation>Veranstaltungen nach Tag und Uhrzeit</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>lanes %1</source>
        <translation>Bahnen %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>laneward::WhyPanel</name>
    <message>
        <source>Why here</source>
        <translation>Warum hier</translation>
    </message>
    <message>
        <source>Edit event…</source>
        <translation>Veranstaltung bearbeiten…</translation>
    </message>
    <message>
        <source>&amp;Record…</source>
        <translation>E&amp;rfassen…</translation>
    </message>
    <message>
        <source>&amp;Print sheet…</source>
        <translation>Blatt dru&amp;cken…</translation>
    </message>
    <message>
        <source>Choose a job, an event or a lane to see why it is there and what comes next. A click beside them asks what is on the lanes at that moment.</source>
        <translation>Einen Auftrag, eine Veranstaltung oder eine Bahn wählen, um zu sehen, warum es so ist und was folgt. Ein Klick daneben zeigt, was zu diesem Zeitpunkt auf den Bahnen liegt.</translation>
    </message>
</context>
<context>
    <name>laneward::Workspace</name>
    <message>
        <source>Time now</source>
        <translation>Uhrzeit</translation>
    </message>
</context>
<context>
    <name>laneward::exchange</name>
    <message>
        <source>unknown kind of file</source>
        <translation>unbekannte Dateiart</translation>
    </message>
</context>
<context>
    <name>service</name>
    <message>
        <source>Intervals: common practice, no source. The machine&apos;s own instructions decide.</source>
        <translation>Abstände: übliche Praxis, ohne Quelle. Die Anleitung der Maschine entscheidet.</translation>
    </message>
    <message>
        <source>Switch the machine off and isolate it</source>
        <translation>Maschine ausschalten und vom Strom trennen</translation>
    </message>
    <message>
        <source>Close all covers and try it out on one lane</source>
        <translation>Alle Deckel schließen und auf einer Bahn ausprobieren</translation>
    </message>
    <message>
        <source>Cushion brush</source>
        <translation>Auflagebürste</translation>
    </message>
    <message>
        <source>Inspect the cushion brush</source>
        <translation>Auflagebürste prüfen</translation>
    </message>
    <message>
        <source>Look for bent, short or missing bristles and for hair on the shaft</source>
        <translation>Auf verbogene, kurze oder fehlende Borsten und Haare auf der Welle achten</translation>
    </message>
    <message>
        <source>See that it touches the lane alike over its whole width</source>
        <translation>Prüfen, ob sie die Bahn auf ganzer Breite gleich berührt</translation>
    </message>
    <message>
        <source>Clean the cushion brush</source>
        <translation>Auflagebürste reinigen</translation>
    </message>
    <message>
        <source>Comb out fluff and wipe the bristles with a cloth and lane cleaner</source>
        <translation>Flusen auskämmen und die Borsten mit Tuch und Bahnreiniger abwischen</translation>
    </message>
    <message>
        <source>Let it dry before the next run</source>
        <translation>Vor dem nächsten Lauf trocknen lassen</translation>
    </message>
    <message>
        <source>Turn the cushion brush end for end</source>
        <translation>Auflagebürste umdrehen</translation>
    </message>
    <message>
        <source>Take the brush out, turn it end for end and put it back</source>
        <translation>Bürste herausnehmen, die Enden tauschen und wieder einsetzen</translation>
    </message>
    <message>
        <source>Replace the cushion brush</source>
        <translation>Auflagebürste ersetzen</translation>
    </message>
    <message>
        <source>Take the worn brush out and clean its seat</source>
        <translation>Verschlissene Bürste herausnehmen und ihren Sitz reinigen</translation>
    </message>
    <message>
        <source>Put the new one in and set its height by the machine&apos;s instructions</source>
        <translation>Die neue einsetzen und ihre Höhe nach der Anleitung der Maschine einstellen</translation>
    </message>
    <message>
        <source>Take a tape reading before play</source>
        <translation>Vor dem Spiel eine Bandmessung machen</translation>
    </message>
    <message>
        <source>Buffer brush</source>
        <translation>Verteilbürste</translation>
    </message>
    <message>
        <source>Clean the buffer brush</source>
        <translation>Verteilbürste reinigen</translation>
    </message>
    <message>
        <source>Wipe conditioner and fluff off the bristles with a dry cloth</source>
        <translation>Bahnöl und Flusen mit einem trockenen Tuch von den Borsten wischen</translation>
    </message>
    <message>
        <source>Replace the buffer brush</source>
        <translation>Verteilbürste ersetzen</translation>
    </message>
    <message>
        <source>Take the worn brush out and put the new one in</source>
        <translation>Verschlissene Bürste herausnehmen und die neue einsetzen</translation>
    </message>
    <message>
        <source>Squeegee blades</source>
        <translation>Abziehlippen</translation>
    </message>
    <message>
        <source>Clean the squeegee blades</source>
        <translation>Abziehlippen reinigen</translation>
    </message>
    <message>
        <source>Wipe both blades and the channel behind them; look for nicks</source>
        <translation>Beide Lippen und die Rinne dahinter abwischen; auf Kerben achten</translation>
    </message>
    <message>
        <source>After a run no wet streak may be left on the lane</source>
        <translation>Nach einem Lauf darf kein nasser Streifen auf der Bahn bleiben</translation>
    </message>
    <message>
        <source>Turn the squeegee blades</source>
        <translation>Abziehlippen wenden</translation>
    </message>
    <message>
        <source>Turn both blades to an unused edge</source>
        <translation>Beide Lippen auf eine unbenutzte Kante wenden</translation>
    </message>
    <message>
        <source>Replace the squeegee blades</source>
        <translation>Abziehlippen ersetzen</translation>
    </message>
    <message>
        <source>Take both blades out and clean their holders</source>
        <translation>Beide Lippen herausnehmen und ihre Halter reinigen</translation>
    </message>
    <message>
        <source>Put the new ones in without a wave and tighten from the middle outwards</source>
        <translation>Die neuen ohne Welle einsetzen und von der Mitte nach außen festziehen</translation>
    </message>
    <message>
        <source>Cloth roll</source>
        <translation>Tuchrolle</translation>
    </message>
    <message>
        <source>Inspect the way of the cloth</source>
        <translation>Tuchlauf prüfen</translation>
    </message>
    <message>
        <source>See that the cloth runs straight and that its roller turns freely</source>
        <translation>Prüfen, ob das Tuch gerade läuft und seine Walze frei dreht</translation>
    </message>
    <message>
        <source>Put a new cloth roll in</source>
        <translation>Neue Tuchrolle einlegen</translation>
    </message>
    <message>
        <source>Take the used cloth out and put it into the bin for oily waste</source>
        <translation>Benutztes Tuch herausnehmen und in den Behälter für ölige Abfälle geben</translation>
    </message>
    <message>
        <source>Thread the new roll and see that the cloth touches the lane alike</source>
        <translation>Neue Rolle einfädeln und prüfen, ob das Tuch die Bahn gleichmäßig berührt</translation>
    </message>
    <message>
        <source>Waste tank</source>
        <translation>Schmutztank</translation>
    </message>
    <message>
        <source>Empty and rinse the waste tank</source>
        <translation>Schmutztank leeren und spülen</translation>
    </message>
    <message>
        <source>Empty it into the marked container, whatever its level</source>
        <translation>In den bezeichneten Behälter leeren, gleich wie voll er ist</translation>
    </message>
    <message>
        <source>Rinse it with little water; the rinse goes into the container too</source>
        <translation>Mit wenig Wasser spülen; auch das Spülwasser kommt in den Behälter</translation>
    </message>
    <message>
        <source>Clean the waste tank and its float</source>
        <translation>Schmutztank und Schwimmer reinigen</translation>
    </message>
    <message>
        <source>Wash out sludge; see that the float moves freely and its switch stops the machine</source>
        <translation>Schlamm auswaschen; prüfen, ob der Schwimmer frei geht und sein Schalter die Maschine anhält</translation>
    </message>
    <message>
        <source>Check lid and hoses for leaks</source>
        <translation>Deckel und Schläuche auf Dichtheit prüfen</translation>
    </message>
    <message>
        <source>Filters</source>
        <translation>Filter</translation>
    </message>
    <message>
        <source>Clean the filters</source>
        <translation>Filter reinigen</translation>
    </message>
    <message>
        <source>Take out each filter, rinse or blow it clean and put it back dry</source>
        <translation>Jeden Filter herausnehmen, ausspülen oder ausblasen und trocken wieder einsetzen</translation>
    </message>
    <message>
        <source>Replace the waste filter</source>
        <translation>Schmutzfilter ersetzen</translation>
    </message>
    <message>
        <source>Put a new filter in; look at the seal</source>
        <translation>Neuen Filter einsetzen; auf die Dichtung achten</translation>
    </message>
    <message>
        <source>Nozzles and lines</source>
        <translation>Düsen und Leitungen</translation>
    </message>
    <message>
        <source>Clean the nozzles</source>
        <translation>Düsen reinigen</translation>
    </message>
    <message>
        <source>Wipe each nozzle with a soft cloth; no wire, no pin</source>
        <translation>Jede Düse mit einem weichen Tuch abwischen; kein Draht, keine Nadel</translation>
    </message>
    <message>
        <source>Spray onto paper: all alike, none drips</source>
        <translation>Auf Papier sprühen: alle gleich, keine tropft</translation>
    </message>
    <message>
        <source>Flush the lines</source>
        <translation>Leitungen spülen</translation>
    </message>
    <message>
        <source>Drain the tanks into clean cans</source>
        <translation>Tanks in saubere Kannen ablassen</translation>
    </message>
    <message>
        <source>Flush the lines by the machine&apos;s instructions, then fill and bleed them</source>
        <translation>Leitungen nach der Anleitung der Maschine spülen, dann füllen und entlüften</translation>
    </message>
    <message>
        <source>Measure the output</source>
        <translation>Ausstoß messen</translation>
    </message>
    <message>
        <source>Catch the output of a measured time in a graduated cylinder</source>
        <translation>Den Ausstoß einer gemessenen Zeit in einem Messzylinder auffangen</translation>
    </message>
    <message>
        <source>Compare it with the recipe; correct by the machine&apos;s instructions and note both</source>
        <translation>Mit dem Rezept vergleichen; nach der Anleitung der Maschine berichtigen und beides notieren</translation>
    </message>
    <message>
        <source>Wheels and belts</source>
        <translation>Räder und Riemen</translation>
    </message>
    <message>
        <source>Clean the wheels</source>
        <translation>Räder reinigen</translation>
    </message>
    <message>
        <source>Wipe conditioner off all wheels; take out hair and threads</source>
        <translation>Bahnöl von allen Rädern wischen; Haare und Fäden entfernen</translation>
    </message>
    <message>
        <source>Inspect belts and chains</source>
        <translation>Riemen und Ketten prüfen</translation>
    </message>
    <message>
        <source>Look for cracks, fraying and slack; set the tension by the instructions</source>
        <translation>Auf Risse, Ausfransen und Spiel achten; Spannung nach der Anleitung einstellen</translation>
    </message>
    <message>
        <source>Replace the drive belt</source>
        <translation>Antriebsriemen ersetzen</translation>
    </message>
    <message>
        <source>Put the new belt on, set its tension and mark the date on the cover</source>
        <translation>Neuen Riemen auflegen, spannen und das Datum auf dem Deckel vermerken</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Akku</translation>
    </message>
    <message>
        <source>Inspect the pack</source>
        <translation>Akku prüfen</translation>
    </message>
    <message>
        <source>Charger off and unplugged; read the rested volts and write them down</source>
        <translation>Ladegerät aus und ausgesteckt; Ruhespannung ablesen und aufschreiben</translation>
    </message>
    <message>
        <source>Look for swelling, leaks and loose or green terminals</source>
        <translation>Auf Schwellungen, Lecks und lose oder grüne Klemmen achten</translation>
    </message>
    <message>
        <source>Replace the pack</source>
        <translation>Akku ersetzen</translation>
    </message>
    <message>
        <source>Charger off and unplugged; two people or a lift take the pack out</source>
        <translation>Ladegerät aus und ausgesteckt; zwei Personen oder ein Lift nehmen den Akku heraus</translation>
    </message>
    <message>
        <source>Put the new one in, poles as marked; give the old one back for recycling</source>
        <translation>Den neuen einsetzen, Pole wie bezeichnet; den alten zur Verwertung zurückgeben</translation>
    </message>
    <message>
        <source>Charger</source>
        <translation>Ladegerät</translation>
    </message>
    <message>
        <source>Inspect the charger</source>
        <translation>Ladegerät prüfen</translation>
    </message>
    <message>
        <source>Unplug it; look at cable, plug and fan; air can reach it from all sides</source>
        <translation>Ausstecken; Kabel, Stecker und Lüfter ansehen; Luft kommt von allen Seiten heran</translation>
    </message>
    <message>
        <source>What is damaged goes out of use until a licensed person has seen it</source>
        <translation>Was beschädigt ist, wird nicht benutzt, bis eine Fachkraft es gesehen hat</translation>
    </message>
    <message>
        <source>Approaches</source>
        <translation>Anläufe</translation>
    </message>
    <message>
        <source>Clean the approaches</source>
        <translation>Anläufe reinigen</translation>
    </message>
    <message>
        <source>Dust first, away from the lanes</source>
        <translation>Zuerst abstauben, von den Bahnen weg</translation>
    </message>
    <message>
        <source>Wipe with approach cleaner only, on a cloth: no water, no household soap, no lane cleaner</source>
        <translation>Nur mit Anlaufreiniger auf einem Tuch wischen: kein Wasser, keine Haushaltsseife, kein Bahnreiniger</translation>
    </message>
    <message>
        <source>Let it dry; try the slide before play</source>
        <translation>Trocknen lassen; vor dem Spiel das Gleiten probieren</translation>
    </message>
    <message>
        <source>Inspect the approaches</source>
        <translation>Anläufe prüfen</translation>
    </message>
    <message>
        <source>Look for sticky or slippery places, splinters and raised dots</source>
        <translation>Auf klebrige oder rutschige Stellen, Splitter und abstehende Punkte achten</translation>
    </message>
    <message>
        <source>Close a pair whose approach is not safe</source>
        <translation>Ein Bahnenpaar sperren, dessen Anlauf nicht sicher ist</translation>
    </message>
    <message>
        <source>Gutters</source>
        <translation>Rinnen</translation>
    </message>
    <message>
        <source>Clean the gutters</source>
        <translation>Rinnen reinigen</translation>
    </message>
    <message>
        <source>Pinsetters of the pair off and locked out</source>
        <translation>Pinsetter des Bahnenpaars aus und gegen Einschalten gesichert</translation>
    </message>
    <message>
        <source>Wipe conditioner and dust out of each gutter; keep off the lane</source>
        <translation>Bahnöl und Staub aus jeder Rinne wischen; die Bahn nicht betreten</translation>
    </message>
    <message>
        <source>Inspect gutters and caps</source>
        <translation>Rinnen und Abdeckungen prüfen</translation>
    </message>
    <message>
        <source>Look for loose joints, cracks and caps that stand up</source>
        <translation>Auf lose Stöße, Risse und abstehende Abdeckungen achten</translation>
    </message>
</context>
<context>
    <name>wording</name>
    <message>
        <source>Volts</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Readiness</source>
        <translation>Bereitschaft</translation>
    </message>
    <message>
        <source>On the lanes</source>
        <translation>Auf den Bahnen</translation>
    </message>
    <message>
        <source>From the shift before</source>
        <translation>Von der vorigen Schicht</translation>
    </message>
    <message>
        <source>What cannot be met</source>
        <translation>Was nicht zu erfüllen ist</translation>
    </message>
    <message>
        <source>Hand-over:</source>
        <translation>Übergabe:</translation>
    </message>
    <message>
        <source>Job sheet</source>
        <translation>Auftragsblatt</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>work lanes %1 twice</source>
        <translation>Bahn %1 zweimal bearbeiten</translation>
    </message>
    <message>
        <source>Order of work: start by, ready at</source>
        <translation>Arbeitsfolge: Beginn bis, fertig um</translation>
    </message>
    <message>
        <source>Nothing to run on this day.</source>
        <translation>An diesem Tag ist nichts zu fahren.</translation>
    </message>
    <message>
        <source>Closing down</source>
        <translation>Feierabend</translation>
    </message>
    <message>
        <source>clean and condition</source>
        <translation>reinigen und ölen</translation>
    </message>
    <message>
        <source>condition only</source>
        <translation>nur ölen</translation>
    </message>
    <message>
        <source>clean only</source>
        <translation>nur reinigen</translation>
    </message>
    <message>
        <source>fresh</source>
        <translation>frisch</translation>
    </message>
    <message>
        <source>recent</source>
        <translation>nicht zu alt</translation>
    </message>
    <message>
        <source>pattern</source>
        <translation>Ölmuster</translation>
    </message>
    <message>
        <source>stripped</source>
        <translation>abgezogen</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>wie sie ist</translation>
    </message>
    <message>
        <source>league</source>
        <translation>Liga</translation>
    </message>
    <message>
        <source>practice</source>
        <translation>Training</translation>
    </message>
    <message>
        <source>school</source>
        <translation>Schule</translation>
    </message>
    <message>
        <source>tournament</source>
        <translation>Turnier</translation>
    </message>
    <message>
        <source>open play</source>
        <translation>offenes Spiel</translation>
    </message>
    <message>
        <source>party</source>
        <translation>Feier</translation>
    </message>
    <message>
        <source>closure</source>
        <translation>Schließung</translation>
    </message>
    <message>
        <source>other</source>
        <translation>Sonstiges</translation>
    </message>
    <message>
        <source>proposed</source>
        <translation>vorgeschlagen</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>bestätigt</translation>
    </message>
    <message>
        <source>under way</source>
        <translation>läuft</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>cut short</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>dropped</source>
        <translation>entfallen</translation>
    </message>
    <message>
        <source>leave the bay</source>
        <translation>Stellplatz verlassen</translation>
    </message>
    <message>
        <source>refill</source>
        <translation>nachfüllen</translation>
    </message>
    <message>
        <source>empty the waste tank</source>
        <translation>Schmutztank leeren</translation>
    </message>
    <message>
        <source>swap the pack</source>
        <translation>Akku wechseln</translation>
    </message>
    <message>
        <source>charge</source>
        <translation>laden</translation>
    </message>
    <message>
        <source>service duty</source>
        <translation>Wartung</translation>
    </message>
    <message>
        <source>first pair, a first time</source>
        <translation>erstes Bahnpaar, erster Durchgang</translation>
    </message>
    <message>
        <source>work the lanes</source>
        <translation>Bahnen bearbeiten</translation>
    </message>
    <message>
        <source>return to the bay</source>
        <translation>zum Stellplatz zurück</translation>
    </message>
    <message>
        <source>operator</source>
        <translation>Bahnpflege</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>Leitung Bahnpflege</translation>
    </message>
    <message>
        <source>manager</source>
        <translation>Centerleitung</translation>
    </message>
    <message>
        <source>spill</source>
        <translation>ausgelaufene Flüssigkeit</translation>
    </message>
    <message>
        <source>jam</source>
        <translation>Blockade</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>Störung</translation>
    </message>
    <message>
        <source>injury</source>
        <translation>Verletzung</translation>
    </message>
    <message>
        <source>near miss</source>
        <translation>Beinaheunfall</translation>
    </message>
    <message>
        <source>as planned</source>
        <translation>wie geplant</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>unplanned</source>
        <translation>ungeplant</translation>
    </message>
    <message>
        <source>void</source>
        <translation>ungültig</translation>
    </message>
    <message>
        <source>more conflicts than can be shown; the first %2 are listed</source>
        <translation>mehr Überschneidungen, als gezeigt werden können; die ersten %2 sind aufgeführt</translation>
    </message>
    <message>
        <source>%1: only the first %2 dates are used</source>
        <translation>%1: nur die ersten %2 Termine werden verwendet</translation>
    </message>
    <message>
        <source>%1: lanes %2 do not exist here and are left out</source>
        <translation>%1: Bahn %2 gibt es hier nicht; wird ausgelassen</translation>
    </message>
    <message>
        <source>%1: a change for %2 fits none of its dates and is left out</source>
        <translation>%1: eine Änderung für %2 passt zu keinem Termin und wird ausgelassen</translation>
    </message>
    <message>
        <source>%1: too many days at once; looked at until %2</source>
        <translation>%1: zu viele Tage auf einmal; betrachtet bis %2</translation>
    </message>
    <message>
        <source>%1: the time zone &apos;%2&apos; is unknown; read in the centre&apos;s own</source>
        <translation>%1: die Zeitzone „%2“ ist unbekannt; in der des Centers gelesen</translation>
    </message>
    <message>
        <source>%1: a date is out of reach</source>
        <translation>%1: ein Datum liegt außerhalb des Möglichen</translation>
    </message>
    <message>
        <source>%1: the start is not a date and time in reach</source>
        <translation>%1: der Beginn ist kein mögliches Datum mit Uhrzeit</translation>
    </message>
    <message>
        <source>%1: asks something of lanes %2, which it does not have</source>
        <translation>%1: verlangt etwas von Bahn %2, die nicht dazugehört</translation>
    </message>
    <message>
        <source>%1: asks something, but of no lanes</source>
        <translation>%1: verlangt etwas, aber von keiner Bahn</translation>
    </message>
    <message>
        <source>%1: the longest age or play of a demand is out of range</source>
        <translation>%1: höchstes Alter oder längstes Spiel einer Anforderung liegt außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>%1: lane %2 does not exist; there are %3</source>
        <translation>%1: Bahn %2 gibt es nicht; vorhanden sind %3</translation>
    </message>
    <message>
        <source>%1: has no id</source>
        <translation>%1: hat keine Kennung</translation>
    </message>
    <message>
        <source>%1: has no lanes</source>
        <translation>%1: hat keine Bahnen</translation>
    </message>
    <message>
        <source>%1: takes no time</source>
        <translation>%1: dauert null Minuten</translation>
    </message>
    <message>
        <source>an event has no title</source>
        <translation>eine Veranstaltung hat keinen Titel</translation>
    </message>
    <message>
        <source>%1: the note is longer than %2 characters</source>
        <translation>%1: die Notiz ist länger als %2 Zeichen</translation>
    </message>
    <message>
        <source>%1: one date is changed twice</source>
        <translation>%1: ein Termin ist zweimal geändert</translation>
    </message>
    <message>
        <source>%1: the number of players is out of range</source>
        <translation>%1: die Spielerzahl liegt außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>%1: a time is out of range: %2</source>
        <translation>%1: eine Zeit liegt außerhalb der Grenzen: %2</translation>
    </message>
    <message>
        <source>%1: the title is longer than %2 characters</source>
        <translation>%1: der Titel ist länger als %2 Zeichen</translation>
    </message>
    <message>
        <source>%1: takes too long: %2</source>
        <translation>%1: dauert zu lange: %2</translation>
    </message>
    <message>
        <source>%1: unknown time zone &apos;%2&apos;</source>
        <translation>%1: unbekannte Zeitzone „%2“</translation>
    </message>
    <message>
        <source>%1 and %2 both claim lanes %3 from %4 to %5</source>
        <translation>%1 und %2 beanspruchen beide Bahn %3, %4 bis %5</translation>
    </message>
    <message>
        <source>%1 does not take place: a closure</source>
        <translation>%1 findet nicht statt: Schließung</translation>
    </message>
    <message>
        <source>&apos;%1&apos; cannot be read as a rule of recurrence</source>
        <translation>„%1“ ist nicht als Wiederholungsregel lesbar</translation>
    </message>
    <message>
        <source>&apos;%1&apos; recurs more often than daily, which no event of a centre does</source>
        <translation>„%1“ wiederholt sich öfter als täglich; keine Veranstaltung eines Centers tut das</translation>
    </message>
    <message>
        <source>&apos;%1&apos; never produces a date</source>
        <translation>„%1“ ergibt nie einen Termin</translation>
    </message>
    <message>
        <source>Slippery floor.</source>
        <translation>Rutschiger Boden.</translation>
    </message>
    <message>
        <source>Moving parts: keep hands, hair and clothes away; switch off and isolate before you clear a jam; never bypass a guard.</source>
        <translation>Bewegte Teile: Hände, Haare und Kleidung fernhalten; vor dem Lösen einer Blockade ausschalten und von der Stromversorgung trennen; Schutzvorrichtungen nie umgehen.</translation>
    </message>
    <message>
        <source>Moving parts.</source>
        <translation>Bewegte Teile.</translation>
    </message>
    <message>
        <source>Chemicals: protect eyes and hands as the safety data sheet says; keep it and the eye wash within reach.</source>
        <translation>Chemikalien: Augen und Hände nach dem Sicherheitsdatenblatt schützen; das Datenblatt und die Augendusche griffbereit halten.</translation>
    </message>
    <message>
        <source>Waste: not down a drain.</source>
        <translation>Abfall: nicht in den Abfluss.</translation>
    </message>
    <message>
        <source>These are the usual cautions. Local codes, the product&apos;s safety data sheet, the machine&apos;s own instructions and licensed practice decide.</source>
        <translation>Dies sind die üblichen Warnhinweise. Maßgebend sind die örtlichen Vorschriften, das Sicherheitsdatenblatt des Produkts, die Anleitung der Maschine und zugelassene Fachleute.</translation>
    </message>
    <message>
        <source>General sources: %1.</source>
        <translation>Allgemeine Quellen: %1.</translation>
    </message>
    <message>
        <source>unknown time zone &apos;%1&apos;</source>
        <translation>unbekannte Zeitzone „%1“</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not a list of lanes; write them as 1-12, 15</source>
        <translation>„%1“ ist keine Liste von Bahnen; Schreibweise: 1-12, 15</translation>
    </message>
    <message>
        <source>&apos;%1&apos; names lanes outside 1 to 200</source>
        <translation>„%1“ nennt Bahnen außerhalb von 1 bis 200</translation>
    </message>
    <message>
        <source>the centre &apos;%1&apos; has no id</source>
        <translation>das Center „%1“ hat keine Kennung</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has no name</source>
        <translation>„%1“ hat keinen Namen</translation>
    </message>
    <message>
        <source>the name &apos;%1…&apos; is too long</source>
        <translation>der Name „%1…“ ist zu lang</translation>
    </message>
    <message>
        <source>the name &apos;%1&apos; is used twice</source>
        <translation>der Name „%1“ ist doppelt vergeben</translation>
    </message>
    <message>
        <source>the id &apos;%1&apos; is empty or used twice</source>
        <translation>die Kennung „%1“ ist leer oder doppelt vergeben</translation>
    </message>
    <message>
        <source>%1 has %2 lanes; 1 to %3 are possible</source>
        <translation>%1 hat %2 Bahnen; möglich sind 1 bis %3</translation>
    </message>
    <message>
        <source>a time in the settings of %1 is out of range: %2</source>
        <translation>eine Zeit in den Einstellungen von %1 liegt außerhalb der Grenzen: %2</translation>
    </message>
    <message>
        <source>the settings of %1 do not say when its day begins</source>
        <translation>die Einstellungen von %1 sagen nicht, wann der Tag beginnt</translation>
    </message>
    <message>
        <source>a time of the machine %1 is zero or out of range</source>
        <translation>eine Zeit der Ölmaschine %1 ist null oder außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>a capacity of the machine %1 is out of range</source>
        <translation>ein Fassungsvermögen der Ölmaschine %1 liegt außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>%1 would attach the spare pack above the voltage at which the pack counts as full</source>
        <translation>%1: der Ersatzakku würde oberhalb der Spannung angeschlossen, ab der der Akku als voll gilt</translation>
    </message>
    <message>
        <source>the shift %1 has no beginning or end</source>
        <translation>die Schicht %1 hat keinen Beginn oder kein Ende</translation>
    </message>
    <message>
        <source>the shift %1 cannot have %2 people</source>
        <translation>die Schicht %1 kann nicht %2 Personen haben</translation>
    </message>
    <message>
        <source>the overtime of the shift %1 is out of range: %2</source>
        <translation>die Überstunden der Schicht %1 liegen außerhalb der Grenzen: %2</translation>
    </message>
    <message>
        <source>the outage &apos;%1&apos; ends before it begins</source>
        <translation>der Ausfall „%1“ endet, bevor er beginnt</translation>
    </message>
    <message>
        <source>the outage &apos;%1&apos; names lane %2, which does not exist</source>
        <translation>der Ausfall „%1“ nennt Bahn %2, die es nicht gibt</translation>
    </message>
    <message>
        <source>the outage &apos;%1&apos; names a machine that does not exist</source>
        <translation>der Ausfall „%1“ nennt eine Ölmaschine, die es nicht gibt</translation>
    </message>
    <message>
        <source>the pattern &apos;%1&apos; has no id</source>
        <translation>das Ölmuster „%1“ hat keine Kennung</translation>
    </message>
    <message>
        <source>a pattern has no name</source>
        <translation>ein Ölmuster hat keinen Namen</translation>
    </message>
    <message>
        <source>the pattern&apos;s name &apos;%1&apos; is too long</source>
        <translation>der Name „%1“ des Ölmusters ist zu lang</translation>
    </message>
    <message>
        <source>the pattern &apos;%1&apos; cannot end at %2</source>
        <translation>das Ölmuster „%1“ kann nicht bei %2 enden</translation>
    </message>
    <message>
        <source>the pattern &apos;%1&apos; has no strokes</source>
        <translation>das Ölmuster „%1“ hat keine Ölzüge</translation>
    </message>
    <message>
        <source>%1, stroke %2: boards run from 1 to 39, the first not above the last</source>
        <translation>%1, Ölzug %2: Leisten gehen von 1 bis 39, die erste nicht über der letzten</translation>
    </message>
    <message>
        <source>%1, stroke %2: the number of laps is out of range</source>
        <translation>%1, Ölzug %2: die Anzahl der Durchgänge liegt außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>%1, stroke %2: the dose is out of range</source>
        <translation>%1, Ölzug %2: die Dosis liegt außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>%1, stroke %2: the distances are reversed or beyond the lane</source>
        <translation>%1, Ölzug %2: die Entfernungen sind vertauscht oder liegen jenseits der Bahn</translation>
    </message>
    <message>
        <source>%1, stroke %2: reaches beyond the end of the pattern</source>
        <translation>%1, Ölzug %2: reicht über das Ende des Ölmusters hinaus</translation>
    </message>
    <message>
        <source>%1, stroke %2: there is no such conditioner</source>
        <translation>%1, Ölzug %2: dieses Bahnöl gibt es nicht</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not an option of %2; see --help</source>
        <translation>„%1“ ist keine Option von %2; siehe --help</translation>
    </message>
    <message>
        <source>%1: cannot be read: %2</source>
        <translation>%1: nicht lesbar: %2</translation>
    </message>
    <message>
        <source>%1: cannot be written: %2</source>
        <translation>%1: lässt sich nicht schreiben: %2</translation>
    </message>
    <message>
        <source>%1: there is no such folder</source>
        <translation>%1: diesen Ordner gibt es nicht</translation>
    </message>
    <message>
        <source>%1: not a file</source>
        <translation>%1: keine Datei</translation>
    </message>
    <message>
        <source>%1: %2 asks for the pattern &apos;%3&apos;, which does not exist</source>
        <translation>%1: %2 verlangt das Ölmuster „%3“, das es nicht gibt</translation>
    </message>
    <message>
        <source>%1: too large; nothing was imported</source>
        <translation>%1: zu groß; nichts wurde importiert</translation>
    </message>
    <message>
        <source>%1: neither UTF-8 nor UTF-16; save the file as UTF-8</source>
        <translation>%1: weder UTF-8 noch UTF-16; bitte die Datei als UTF-8 speichern</translation>
    </message>
    <message>
        <source>%1: a quotation mark is never closed</source>
        <translation>%1: ein Anführungszeichen wird nie geschlossen</translation>
    </message>
    <message>
        <source>%1: %2 fields, where the first record has %3</source>
        <translation>%1: %2 Felder, der erste Datensatz hat %3</translation>
    </message>
    <message>
        <source>%1: text after a closing quotation mark</source>
        <translation>%1: Text nach einem schließenden Anführungszeichen</translation>
    </message>
    <message>
        <source>%1: a NUL character</source>
        <translation>%1: ein NUL-Zeichen</translation>
    </message>
    <message>
        <source>%1: has no records</source>
        <translation>%1: hat keine Datensätze</translation>
    </message>
    <message>
        <source>%1: there is no column &apos;%2&apos;</source>
        <translation>%1: es gibt keine Spalte „%2“</translation>
    </message>
    <message>
        <source>%1: &apos;%3&apos; cannot be used as %2</source>
        <translation>%1: „%3“ ist als %2 nicht verwendbar</translation>
    </message>
    <message>
        <source>%1: ends before it starts</source>
        <translation>%1: endet, bevor es beginnt</translation>
    </message>
    <message>
        <source>%1: names a lane that the centre does not have: %2</source>
        <translation>%1: nennt eine Bahn, die das Center nicht hat: %2</translation>
    </message>
    <message>
        <source>%1: there is no pattern &apos;%2&apos;</source>
        <translation>%1: es gibt kein Ölmuster „%2“</translation>
    </message>
    <message>
        <source>%1: cannot be read as a mapping: %2</source>
        <translation>%1: nicht als Zuordnung lesbar: %2</translation>
    </message>
    <message>
        <source>%1: nothing to import</source>
        <translation>%1: nichts zu importieren</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>unknown command &apos;%1&apos;; see --help</source>
        <translation>unbekannter Befehl „%1“; siehe --help</translation>
    </message>
    <message>
        <source>%1; see --help</source>
        <translation>%1; siehe --help</translation>
    </message>
    <message>
        <source>%1 needs %2; see --help</source>
        <translation>%1 braucht %2; siehe --help</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is one argument too many; see --help</source>
        <translation>„%1“ ist ein Argument zu viel; siehe --help</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not a date; write YYYY-MM-DD</source>
        <translation>„%1“ ist kein Datum; Schreibweise: YYYY-MM-DD</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not a time; write YYYY-MM-DDTHH:MM</source>
        <translation>„%1“ ist keine Zeit; Schreibweise: YYYY-MM-DDTHH:MM</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not a number of days from 1 to %2</source>
        <translation>„%1“ ist keine Anzahl von Tagen von 1 bis %2</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not a format of this command; it has %2</source>
        <translation>„%1“ ist kein Format dieses Befehls; er kennt %2</translation>
    </message>
    <message>
        <source>%1: the name must end in %2</source>
        <translation>%1: der Name muss auf %2 enden</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not a kind of row; there are %2</source>
        <translation>„%1“ ist keine Art von Zeilen; es gibt %2</translation>
    </message>
    <message>
        <source>%1: larger than %2 bytes; nothing was imported</source>
        <translation>%1: größer als %2 Byte; nichts wurde importiert</translation>
    </message>
    <message>
        <source>%1: more than %2 records; nothing was imported</source>
        <translation>%1: mehr als %2 Datensätze; nichts wurde importiert</translation>
    </message>
    <message>
        <source>%1: nested more than %2 deep</source>
        <translation>%1: tiefer als %2 verschachtelt</translation>
    </message>
    <message>
        <source>%1: BEGIN and END do not match (%2)</source>
        <translation>%1: BEGIN und END passen nicht zusammen (%2)</translation>
    </message>
    <message>
        <source>%1: not a line of a calendar</source>
        <translation>%1: keine Zeile eines Kalenders</translation>
    </message>
    <message>
        <source>%1: the line is too long</source>
        <translation>%1: die Zeile ist zu lang</translation>
    </message>
    <message>
        <source>%1: a control character</source>
        <translation>%1: ein Steuerzeichen</translation>
    </message>
    <message>
        <source>%1: not UTF-8</source>
        <translation>%1: kein UTF-8</translation>
    </message>
    <message>
        <source>%1: not a calendar</source>
        <translation>%1: kein Kalender</translation>
    </message>
    <message>
        <source>%1: %2 is never ended; the file is cut off</source>
        <translation>%1: %2 endet nie; die Datei ist abgeschnitten</translation>
    </message>
    <message>
        <source>%1: %2 cannot be &apos;%3&apos;</source>
        <translation>%1: %2 kann nicht „%3“ sein</translation>
    </message>
    <message>
        <source>%1: has no start</source>
        <translation>%1: hat keinen Beginn</translation>
    </message>
    <message>
        <source>%1: has neither end nor duration</source>
        <translation>%1: hat weder Ende noch Dauer</translation>
    </message>
    <message>
        <source>%1: names no lanes; give them by a mapping</source>
        <translation>%1: nennt keine Bahnen; bitte über eine Zuordnung angeben</translation>
    </message>
    <message>
        <source>%1: has no title</source>
        <translation>%1: hat keinen Titel</translation>
    </message>
    <message>
        <source>%1: has no UID</source>
        <translation>%1: hat keine UID</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; names lanes that do not exist; there are %3</source>
        <translation>%1: „%2“ nennt Bahnen, die es nicht gibt; vorhanden sind %3</translation>
    </message>
    <message>
        <source>%1: %2 stands twice</source>
        <translation>%1: %2 steht doppelt</translation>
    </message>
    <message>
        <source>%1: the UID &apos;%2&apos; stands twice</source>
        <translation>%1: die UID „%2“ steht doppelt</translation>
    </message>
    <message>
        <source>%1: a change of this and all later dates cannot be read</source>
        <translation>%1: eine Änderung dieses und aller späteren Termine ist nicht lesbar</translation>
    </message>
    <message>
        <source>%1: %2 cannot be read</source>
        <translation>%1: %2 ist nicht lesbar</translation>
    </message>
    <message>
        <source>%1: time zone read as %2</source>
        <translation>%1: Zeitzone als %2 gelesen</translation>
    </message>
    <message>
        <source>%1: a time without a zone; read in %2</source>
        <translation>%1: eine Zeit ohne Zone; in %2 gelesen</translation>
    </message>
    <message>
        <source>%1: a whole day; read in %2</source>
        <translation>%1: ein ganzer Tag; in %2 gelesen</translation>
    </message>
    <message>
        <source>%1: a single date of &apos;%2&apos; without its series; read as an event of its own</source>
        <translation>%1: ein einzelner Termin von „%2“ ohne seine Serie; als eigene Veranstaltung gelesen</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; is not a lane and is left out</source>
        <translation>%1: „%2“ ist keine Bahn und wird ausgelassen</translation>
    </message>
    <message>
        <source>%1: %2 is too long and was cut</source>
        <translation>%1: %2 ist zu lang und wurde gekürzt</translation>
    </message>
    <message>
        <source>%1: %2 is not used here</source>
        <translation>%1: %2 wird hier nicht verwendet</translation>
    </message>
    <message>
        <source>%1 asks for the pattern &apos;%2&apos; on lanes %3, which does not exist</source>
        <translation>%1 verlangt auf Bahn %3 das Ölmuster „%2“, das es nicht gibt</translation>
    </message>
    <message>
        <source>%1 has no machine: nothing can be planned</source>
        <translation>%1 hat keine Ölmaschine: nichts lässt sich planen</translation>
    </message>
    <message>
        <source>Nobody works on %2, though lanes need work</source>
        <translation>Niemand ist im Dienst (%2), obwohl Bahnen zu behandeln sind</translation>
    </message>
    <message>
        <source>%1, %3, is booked on lanes %2, which are out of service</source>
        <translation>%1, %3, ist auf Bahn %2 gebucht, die außer Betrieb ist</translation>
    </message>
    <message>
        <source>The confirmed job of %1 on lanes %2 at %3 no longer fits; print the sheet again</source>
        <translation>Der bestätigte Auftrag von %1 auf Bahn %2 (%3) passt nicht mehr; Blatt neu drucken</translation>
    </message>
    <message>
        <source>Planning was stopped early; the plan can be carried out but may be improved</source>
        <translation>Die Planung wurde vorzeitig beendet; der Plan ist ausführbar, aber vielleicht nicht der beste</translation>
    </message>
    <message>
        <source>needed by %1, play at %T2, lanes %3</source>
        <translation>gebraucht von %1, Spiel um %T2, Bahn %3</translation>
    </message>
    <message>
        <source>%1 wants the first pair, lanes %2, worked twice</source>
        <translation>%1 verlangt das erste Bahnpaar, Bahn %2, zweimal bearbeitet</translation>
    </message>
    <message>
        <source>must end by %T2: %1 asks for %3 to settle, and %4 is kept in reserve</source>
        <translation>muss bis %T2 enden: %1 verlangt %3 Ruhezeit, und %4 bleiben in Reserve</translation>
    </message>
    <message>
        <source>cannot begin before %T2, when %1 has cleared the lanes</source>
        <translation>kann nicht vor %T2 beginnen, erst dann hat %1 die Bahnen geräumt</translation>
    </message>
    <message>
        <source>the other lane of the pair is in play by %1 (%T2)</source>
        <translation>die andere Bahn des Paares wird von %1 bespielt (%T2)</translation>
    </message>
    <message>
        <source>bound by the shift &apos;%1&apos; (%T2)</source>
        <translation>gebunden durch die Schicht „%1“ (%T2)</translation>
    </message>
    <message>
        <source>%1 is at work elsewhere (%T2)</source>
        <translation>%1 arbeitet anderswo (%T2)</translation>
    </message>
    <message>
        <source>nobody of the shift &apos;%1&apos; is free (%T2)</source>
        <translation>niemand aus der Schicht „%1“ ist frei (%T2)</translation>
    </message>
    <message>
        <source>%1 is to leave the lanes stripped by the end of the day (%T2)</source>
        <translation>nach %1 sind die Bahnen bis zum Ende des Tages abzuziehen (%T2)</translation>
    </message>
    <message>
        <source>cannot begin before now (%T2)</source>
        <translation>kann nicht vor jetzt beginnen (%T2)</translation>
    </message>
    <message>
        <source>takes %2 of overtime in the shift &apos;%1&apos;</source>
        <translation>braucht %2 Überstunden in der Schicht „%1“</translation>
    </message>
    <message>
        <source>tight: ends %2 inside the reserve of %1</source>
        <translation>knapp: endet %2 innerhalb der Reserve von %1</translation>
    </message>
    <message>
        <source>late: ends %2 inside the settle time of %1</source>
        <translation>zu spät: endet %2 innerhalb der Ruhezeit von %1</translation>
    </message>
    <message>
        <source>refill %1 first (%2)</source>
        <translation>zuerst %1 nachfüllen (%2)</translation>
    </message>
    <message>
        <source>empty the waste tank of %1 first (%2)</source>
        <translation>zuerst den Schmutztank von %1 leeren (%2)</translation>
    </message>
    <message>
        <source>swap the pack of %1 first (%2)</source>
        <translation>zuerst den Akku von %1 wechseln (%2)</translation>
    </message>
    <message>
        <source>charge %1 first (%2)</source>
        <translation>zuerst %1 laden (%2)</translation>
    </message>
    <message>
        <source>a service duty of %1 comes first (%2)</source>
        <translation>zuerst ist %1 zu warten (%2)</translation>
    </message>
    <message>
        <source>%2 missing: the lanes are clear at %T3</source>
        <translation>es fehlen %2: die Bahnen sind um %T3 frei</translation>
    </message>
    <message>
        <source>nobody is at work in time (working time begins or ends at %T2)</source>
        <translation>niemand ist rechtzeitig im Dienst (Arbeitszeit beginnt oder endet um %T2)</translation>
    </message>
    <message>
        <source>out of service: lanes %2 or every machine</source>
        <translation>außer Betrieb: Bahn %2 oder alle Ölmaschinen</translation>
    </message>
    <message>
        <source>there is no machine</source>
        <translation>es gibt keine Ölmaschine</translation>
    </message>
    <message>
        <source>the pattern &apos;%2&apos; does not exist</source>
        <translation>das Ölmuster „%2“ gibt es nicht</translation>
    </message>
    <message>
        <source>%1 is busy; %2 missing</source>
        <translation>%1 ist beschäftigt; es fehlen %2</translation>
    </message>
    <message>
        <source>condition only was asked for, but lanes %2 carry another pattern</source>
        <translation>verlangt war nur ölen, aber auf Bahn %2 liegt ein anderes Ölmuster</translation>
    </message>
    <message>
        <source>more than %1 can do on full tanks and one charge: lanes %2</source>
        <translation>mehr, als %1 mit vollen Tanks und einer Akkuladung schafft: Bahn %2</translation>
    </message>
    <message>
        <source>%2 more overtime in the shift &apos;%1&apos; (until or from %T3)</source>
        <translation>%2 mehr Überstunden in der Schicht „%1“ (bis oder ab %T3)</translation>
    </message>
    <message numerus="yes">
        <source>a further machine (%n in all)</source>
        <translation>
            <numerusform>eine weitere Ölmaschine (%n insgesamt)</numerusform>
            <numerusform>eine weitere Ölmaschine (%n insgesamt)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>a further person in the shift &apos;%1&apos; (%n in all)</source>
        <translation>
            <numerusform>eine weitere Person in der Schicht „%1“ (%n insgesamt)</numerusform>
            <numerusform>eine weitere Person in der Schicht „%1“ (%n insgesamt)</numerusform>
        </translation>
    </message>
    <message>
        <source>ask less for %1: %W2</source>
        <translation>für %1 weniger verlangen: %W2</translation>
    </message>
    <message numerus="yes">
        <source>give %1 fewer lanes: %n could be made ready</source>
        <translation>
            <numerusform>%1 weniger Bahnen geben: %n könnte fertig werden</numerusform>
            <numerusform>%1 weniger Bahnen geben: %n könnten fertig werden</numerusform>
        </translation>
    </message>
    <message>
        <source>let %1 begin %2 later, at %T3</source>
        <translation>%1 um %2 später beginnen lassen, um %T3</translation>
    </message>
    <message>
        <source>Read all levels and write them above</source>
        <translation>Alle Füllstände ablesen und oben eintragen</translation>
    </message>
    <message>
        <source>Floor sign out; approaches clear and dry</source>
        <translation>Warnschild aufstellen; Anläufe frei und trocken</translation>
    </message>
    <message>
        <source>Refill %1 up to the lines</source>
        <translation>%1 bis zu den Marken nachfüllen</translation>
    </message>
    <message>
        <source>Empty the waste tank of %1 into the marked container</source>
        <translation>Schmutztank von %1 in den gekennzeichneten Behälter leeren</translation>
    </message>
    <message>
        <source>Swap the pack of %1; put the empty one on charge</source>
        <translation>Akku von %1 wechseln; den leeren laden</translation>
    </message>
    <message>
        <source>Charge %1</source>
        <translation>%1 laden</translation>
    </message>
    <message>
        <source>Service duty of %1</source>
        <translation>Wartung von %1</translation>
    </message>
    <message>
        <source>Bring %1 back to its bay</source>
        <translation>%1 zum Stellplatz zurückbringen</translation>
    </message>
    <message>
        <source>Machines off; wipe them down; look at brushes, blades, cloth</source>
        <translation>Ölmaschinen aus; abwischen; Bürsten, Abziehlippen und Tuch ansehen</translation>
    </message>
    <message>
        <source>Packs on charge, one at a time where they share an outlet</source>
        <translation>Akkus laden, an einer gemeinsamen Steckdose nacheinander</translation>
    </message>
    <message>
        <source>Record tonight&apos;s runs and write the hand-over</source>
        <translation>Läufe des Abends erfassen und Übergabenotiz schreiben</translation>
    </message>
    <message>
        <source>volts</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>conditioner</source>
        <translation>Bahnöl</translation>
    </message>
    <message>
        <source>cleaner</source>
        <translation>Reiniger</translation>
    </message>
    <message>
        <source>waste</source>
        <translation>Schmutztank</translation>
    </message>
    <message>
        <source>done at</source>
        <translation>fertig um</translation>
    </message>
    <message>
        <source>initials</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>%1 is out of service</source>
        <translation>%1 ist außer Betrieb</translation>
    </message>
    <message>
        <source>%1: nothing measured yet today; read volts and levels before you start</source>
        <translation>%1: heute noch nichts gemessen; vor dem Start Spannung und Füllstände ablesen</translation>
    </message>
    <message>
        <source>%1: %2; the pack counts as full from %3</source>
        <translation>%1: %2; der Akku gilt ab %3 als voll</translation>
    </message>
    <message>
        <source>%1 holds %2 of conditioner, but tonight takes %3</source>
        <translation>%1 enthält %2 Bahnöl, heute Abend sind aber %3 nötig</translation>
    </message>
    <message>
        <source>%1 holds %2 of cleaner, but tonight takes %3</source>
        <translation>%1 enthält %2 Reiniger, heute Abend sind aber %3 nötig</translation>
    </message>
    <message>
        <source>%1 has room for %2 of waste, but tonight gives %3</source>
        <translation>%1 hat im Schmutztank Platz für %2, heute Abend fallen aber %3 an</translation>
    </message>
    <message>
        <source>%1 can work %2 more lanes on this charge, but tonight needs %3</source>
        <translation>%1 schafft mit dieser Akkuladung noch %2 Bahnen, heute Abend sind aber %3 nötig</translation>
    </message>
    <message>
        <source>%1: holds no centre</source>
        <translation>%1: enthält kein Center</translation>
    </message>
    <message>
        <source>%1: made by an older version and cannot be written, so it cannot be brought up to date</source>
        <translation>%1: stammt von einer älteren Version und ist nicht schreibbar, lässt sich also nicht auf den neuen Stand bringen</translation>
    </message>
    <message>
        <source>the centre itself is neither added nor removed</source>
        <translation>das Center selbst wird weder hinzugefügt noch entfernt</translation>
    </message>
    <message>
        <source>a change without content</source>
        <translation>eine Änderung ohne Inhalt</translation>
    </message>
    <message>
        <source>&apos;%1&apos;: the change is from one row to another</source>
        <translation>„%1“: die Änderung führt von einem Datensatz zu einem anderen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is still used elsewhere and stays</source>
        <translation>„%1“ wird noch anderswo verwendet und bleibt</translation>
    </message>
    <message>
        <source>&apos;%1&apos; names something that does not exist</source>
        <translation>„%1“ nennt etwas, das es nicht gibt</translation>
    </message>
    <message>
        <source>&apos;%1&apos; cannot be stored: %2</source>
        <translation>„%1“ lässt sich nicht speichern: %2</translation>
    </message>
    <message>
        <source>%1: the id stands twice; nothing was imported</source>
        <translation>%1: die Kennung steht doppelt; nichts wurde importiert</translation>
    </message>
    <message>
        <source>%1: names something that does not exist; nothing was imported</source>
        <translation>%1: nennt etwas, das es nicht gibt; nichts wurde importiert</translation>
    </message>
    <message>
        <source>%1: cannot be stored (%2); nothing was imported</source>
        <translation>%1: lässt sich nicht speichern (%2); nichts wurde importiert</translation>
    </message>
    <message>
        <source>%1: larger than %2 bytes</source>
        <translation>%1: größer als %2 Byte</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has been corrected already; nothing was recorded</source>
        <translation>„%1“ wurde schon korrigiert; nichts wurde erfasst</translation>
    </message>
    <message>
        <source>the record &apos;%1&apos; ends before it starts; nothing was recorded</source>
        <translation>der Eintrag „%1“ endet, bevor er beginnt; nichts wurde erfasst</translation>
    </message>
    <message>
        <source>the record &apos;%1&apos; names lane %2; there are %3. Nothing was recorded</source>
        <translation>der Eintrag „%1“ nennt Bahn %2; vorhanden sind %3. Nichts wurde erfasst</translation>
    </message>
    <message>
        <source>the record &apos;%1&apos; names something that does not exist; nothing was recorded</source>
        <translation>der Eintrag „%1“ nennt etwas, das es nicht gibt; nichts wurde erfasst</translation>
    </message>
    <message>
        <source>the record &apos;%1&apos; cannot be stored: %2</source>
        <translation>der Eintrag „%1“ lässt sich nicht speichern: %2</translation>
    </message>
    <message>
        <source>%1: a backup can only take the place of a file</source>
        <translation>%1: eine Sicherung kann nur eine Datei ersetzen</translation>
    </message>
    <message>
        <source>%1: the copy is not equal to the centre and was not kept</source>
        <translation>%1: die Kopie gleicht dem Center nicht und wurde nicht behalten</translation>
    </message>
    <message>
        <source>more than one centre in one database: &apos;%1&apos;</source>
        <translation>mehr als ein Center in einer Datenbank: „%1“</translation>
    </message>
    <message>
        <source>lanes without their run: &apos;%1&apos;</source>
        <translation>Bahnen ohne ihren Lauf: „%1“</translation>
    </message>
    <message>
        <source>an operation without its record: &apos;%1&apos;</source>
        <translation>ein Vorgang ohne seinen Eintrag: „%1“</translation>
    </message>
    <message>
        <source>a record without its operation: &apos;%1&apos;</source>
        <translation>ein Eintrag ohne seinen Vorgang: „%1“</translation>
    </message>
    <message>
        <source>a row of %1 names a row of %2 that does not exist</source>
        <translation>ein Datensatz von %1 nennt einen Datensatz von %2, den es nicht gibt</translation>
    </message>
    <message>
        <source>the record &apos;%1&apos; names lane %2, which does not exist</source>
        <translation>der Eintrag „%1“ nennt Bahn %2, die es nicht gibt</translation>
    </message>
    <message>
        <source>%1 asks for the pattern &apos;%2&apos;, which does not exist</source>
        <translation>%1 verlangt das Ölmuster „%2“, das es nicht gibt</translation>
    </message>
    <message>
        <source>a version from the future: &apos;%1&apos;</source>
        <translation>eine Version aus der Zukunft: „%1“</translation>
    </message>
    <message>
        <source>a password does not belong in the address of a centre; use libpq&apos;s password file</source>
        <translation>ein Passwort gehört nicht in die Adresse eines Centers; bitte die Passwortdatei von libpq verwenden</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is neither a file nor postgresql://user@host/database</source>
        <translation>„%1“ ist weder eine Datei noch postgresql://user@host/database</translation>
    </message>
    <message>
        <source>%1: there is no such centre</source>
        <translation>%1: dieses Center gibt es nicht</translation>
    </message>
    <message>
        <source>%1: the file is damaged; nothing was changed. Restore a backup</source>
        <translation>%1: die Datei ist beschädigt; nichts wurde geändert. Bitte eine Sicherung wiederherstellen</translation>
    </message>
    <message>
        <source>%1: this is not a centre; nothing was changed</source>
        <translation>%1: das ist kein Center; nichts wurde geändert</translation>
    </message>
    <message>
        <source>%1: another program is writing; nothing was changed, try again</source>
        <translation>%1: ein anderes Programm schreibt gerade; nichts wurde geändert, bitte noch einmal versuchen</translation>
    </message>
    <message>
        <source>%1: cannot be reached</source>
        <translation>%1: nicht erreichbar</translation>
    </message>
    <message>
        <source>%1: made by a newer version of this program; not modified</source>
        <translation>%1: stammt von einer neueren Version dieses Programms; nicht verändert</translation>
    </message>
    <message>
        <source>%1: exists already; nothing was changed</source>
        <translation>%1: gibt es schon; nichts wurde geändert</translation>
    </message>
    <message>
        <source>%1: the disk is full; nothing was changed</source>
        <translation>%1: der Datenträger ist voll; nichts wurde geändert</translation>
    </message>
    <message>
        <source>%1: the driver for this kind of database is not installed</source>
        <translation>%1: der Treiber für diese Art von Datenbank ist nicht installiert</translation>
    </message>
    <message>
        <source>&apos;%1&apos; was changed meanwhile by %2, %3; nothing was overwritten</source>
        <translation>„%1“ wurde inzwischen von %2 geändert, %3; nichts wurde überschrieben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; was done already</source>
        <translation>„%1“ wurde schon erledigt</translation>
    </message>
    <message>
        <source>%1 can only be read; nothing was changed</source>
        <translation>%1 kann nur gelesen werden; nichts wurde geändert</translation>
    </message>
    <message>
        <source>the id &apos;%1&apos; already stands for another record; nothing was recorded</source>
        <translation>die Kennung „%1“ steht schon für einen anderen Eintrag; nichts wurde erfasst</translation>
    </message>
    <message>
        <source>%1: cannot be read as JSON (at byte %2)</source>
        <translation>%1: nicht als JSON lesbar (bei Byte %2)</translation>
    </message>
    <message>
        <source>%1: missing</source>
        <translation>%1: fehlt</translation>
    </message>
    <message>
        <source>%1: unknown key</source>
        <translation>%1: unbekannter Schlüssel</translation>
    </message>
    <message>
        <source>%1: this value cannot be used</source>
        <translation>%1: dieser Wert ist nicht verwendbar</translation>
    </message>
    <message>
        <source>%1: made by a newer version of this program; nothing was changed</source>
        <translation>%1: stammt von einer neueren Version dieses Programms; nichts wurde geändert</translation>
    </message>
    <message>
        <source>%1 works lane %2 at %3 while it is played on</source>
        <translation>%1 bearbeitet Bahn %2 (%3), während sie bespielt wird</translation>
    </message>
    <message>
        <source>%1 works lane %2 at %3 while its pair partner is played on</source>
        <translation>%1 bearbeitet Bahn %2 (%3), während die andere Bahn des Paares bespielt wird</translation>
    </message>
    <message>
        <source>%1 works lane %2 at %3 together with another machine</source>
        <translation>%1 bearbeitet Bahn %2 (%3) zugleich mit einer anderen Ölmaschine</translation>
    </message>
    <message>
        <source>%1 is to be in two places at once (%2, %3)</source>
        <translation>%1 soll an zwei Orten zugleich sein (%2, %3)</translation>
    </message>
    <message>
        <source>%1 has less time for lane %2 at %3 than it needs</source>
        <translation>%1 hat für Bahn %2 (%3) weniger Zeit als nötig</translation>
    </message>
    <message>
        <source>%1 is to start at %2, which has passed</source>
        <translation>%1 soll zu einer Zeit beginnen, die vorbei ist (%2)</translation>
    </message>
    <message>
        <source>nobody is there to run %1 at %2</source>
        <translation>niemand ist da, um %1 zu fahren (%2)</translation>
    </message>
    <message>
        <source>%1 is to run at %2, during a closure without staff</source>
        <translation>%1 soll während einer Schließung ohne Personal laufen (%2)</translation>
    </message>
    <message>
        <source>%1 may not work lane %2 (%3)</source>
        <translation>%1 darf Bahn %2 nicht bearbeiten (%3)</translation>
    </message>
    <message>
        <source>%1 may not lay the pattern &apos;%2&apos; (%3)</source>
        <translation>%1 darf das Ölmuster „%2“ nicht auftragen (%3)</translation>
    </message>
    <message>
        <source>%1 may not do this treatment (%2)</source>
        <translation>%1 darf diese Behandlung nicht ausführen (%2)</translation>
    </message>
    <message>
        <source>%1 works lane %2 at %3 while it is out of service</source>
        <translation>%1 bearbeitet Bahn %2 (%3), während sie außer Betrieb ist</translation>
    </message>
    <message>
        <source>%1 is out of service at %2</source>
        <translation>%1 ist außer Betrieb (%2)</translation>
    </message>
    <message>
        <source>%1 would run out of conditioner in the job of %2</source>
        <translation>%1 ginge im Auftrag (%2) das Bahnöl aus</translation>
    </message>
    <message>
        <source>%1 would run out of cleaner in the job of %2</source>
        <translation>%1 ginge im Auftrag (%2) der Reiniger aus</translation>
    </message>
    <message>
        <source>the waste tank of %1 would overflow in the job of %2</source>
        <translation>der Schmutztank von %1 liefe im Auftrag (%2) über</translation>
    </message>
    <message>
        <source>the pack of %1 would not last for the job of %2</source>
        <translation>der Akku von %1 reicht nicht für den Auftrag (%2)</translation>
    </message>
    <message>
        <source>%1 would pass a service duty in the job of %2</source>
        <translation>%1 überginge im Auftrag (%2) eine fällige Wartung</translation>
    </message>
    <message>
        <source>%1 would condition lane %2 at %3 over another pattern</source>
        <translation>%1 würde Bahn %2 (%3) über ein anderes Ölmuster ölen</translation>
    </message>
    <message>
        <source>the job of %2 names the machine or pattern &apos;%1&apos;, which does not exist</source>
        <translation>der Auftrag (%2) nennt die Ölmaschine oder das Ölmuster „%1“; das gibt es nicht</translation>
    </message>
    <message>
        <source>%1 mL</source>
        <translation>%1 ml</translation>
    </message>
    <message>
        <source>%1 L</source>
        <translation>%1 l</translation>
    </message>
    <message>
        <source>%1 fl oz</source>
        <translation>%1 fl oz</translation>
    </message>
    <message>
        <source>%1 gal</source>
        <translation>%1 gal</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>%1 V</source>
        <translation>%1 V</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>on day %1</source>
        <translation>am %1.</translation>
    </message>
    <message>
        <source>on the first %1</source>
        <translation>am ersten %1</translation>
    </message>
    <message>
        <source>on the second %1</source>
        <translation>am zweiten %1</translation>
    </message>
    <message>
        <source>on the third %1</source>
        <translation>am dritten %1</translation>
    </message>
    <message>
        <source>on the fourth %1</source>
        <translation>am vierten %1</translation>
    </message>
    <message>
        <source>on the last %1</source>
        <translation>am letzten %1</translation>
    </message>
    <message>
        <source>Every day</source>
        <translation>Täglich</translation>
    </message>
    <message>
        <source>Every %1 days</source>
        <translation>Alle %1 Tage</translation>
    </message>
    <message>
        <source>Every %1</source>
        <translation>Jeden %1</translation>
    </message>
    <message>
        <source>Every %1 weeks on %2</source>
        <translation>Alle %1 Wochen am %2</translation>
    </message>
    <message>
        <source>Every month %1</source>
        <translation>Jeden Monat %1</translation>
    </message>
    <message>
        <source>Every %1 months %2</source>
        <translation>Alle %1 Monate %2</translation>
    </message>
    <message>
        <source>Every year on %1</source>
        <translation>Jedes Jahr am %1</translation>
    </message>
    <message>
        <source> until %1</source>
        <translation> bis %1</translation>
    </message>
    <message numerus="yes">
        <source>, %n times in all</source>
        <translation>
            <numerusform>, insgesamt %n-mal</numerusform>
            <numerusform>, insgesamt %n-mal</numerusform>
        </translation>
    </message>
    <message>
        <source>, not on %1</source>
        <translation>, nicht am %1</translation>
    </message>
    <message>
        <source>, %1 moved to %2 %3</source>
        <translation>, %1 verschoben auf %2 %3</translation>
    </message>
    <message>
        <source>; no more dates</source>
        <translation>; keine weiteren Termine</translation>
    </message>
    <message>
        <source>; next: %1</source>
        <translation>; nächste: %1</translation>
    </message>
    <message>
        <source>; first: %1</source>
        <translation>; erste: %1</translation>
    </message>
    <message>
        <source>Cancelled</source>
        <translation>Abgesagt</translation>
    </message>
    <message>
        <source>Once, on %1</source>
        <translation>Einmalig, am %1</translation>
    </message>
    <message>
        <source>On single dates</source>
        <translation>An einzelnen Terminen</translation>
    </message>
    <message>
        <source>By the rule %1</source>
        <translation>Nach der Regel %1</translation>
    </message>
    <message>
        <source>start by %1, ready at %2</source>
        <translation>Beginn bis %1, fertig um %2</translation>
    </message>
    <message>
        <source>Order of work</source>
        <translation>Arbeitsfolge</translation>
    </message>
    <message>
        <source>Hand-over to the next shift:</source>
        <translation>Übergabe an die nächste Schicht:</translation>
    </message>
    <message>
        <source>Plan version %1</source>
        <translation>Planstand %1</translation>
    </message>
    <message>
        <source>Not confirmed yet</source>
        <translation>Noch nicht bestätigt</translation>
    </message>
    <message>
        <source>lanes %1, from lane %2 down</source>
        <translation>Bahnen %1, von Bahn %2 abwärts</translation>
    </message>
    <message>
        <source>lane %1</source>
        <translation>Bahn %1</translation>
    </message>
    <message>
        <source>lanes %1</source>
        <translation>Bahnen %1</translation>
    </message>
    <message>
        <source>conditioner %1</source>
        <translation>Bahnöl %1</translation>
    </message>
    <message>
        <source>cleaner %1</source>
        <translation>Reiniger %1</translation>
    </message>
    <message>
        <source>waste %1</source>
        <translation>Schmutztank %1</translation>
    </message>
    <message>
        <source>LATE by %1</source>
        <translation>ZU SPÄT um %1</translation>
    </message>
    <message>
        <source>TIGHT: %1 of the reserve used</source>
        <translation>KNAPP: %1 der Reserve verbraucht</translation>
    </message>
    <message>
        <source>%1 to spare</source>
        <translation>%1 Spielraum</translation>
    </message>
    <message>
        <source>for %1</source>
        <translation>für %1</translation>
    </message>
    <message>
        <source>tonight %1</source>
        <translation>heute %1</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Schmutztank</translation>
    </message>
    <message>
        <source>Lanes a charge</source>
        <translation>Bahnen je Ladung</translation>
    </message>
    <message>
        <source>UNMET: %1, %2, lanes %3 (%4)</source>
        <translation>NICHT ERFÜLLT: %1, %2, Bahn %3 (%4)</translation>
    </message>
    <message>
        <source>LATE: %1, %2, lanes %3 (%4)</source>
        <translation>ZU SPÄT: %1, %2, Bahn %3 (%4)</translation>
    </message>
    <message>
        <source>, %1 missing</source>
        <translation>, es fehlen %1</translation>
    </message>
    <message>
        <source>would help: %1</source>
        <translation>würde helfen: %1</translation>
    </message>
    <message>
        <source>might help: %1</source>
        <translation>könnte helfen: %1</translation>
    </message>
    <message>
        <source>lanes to treat: %1; nothing better exists</source>
        <translation>zu behandelnde Bahnen: %1; besser geht es nicht</translation>
    </message>
    <message>
        <source>lanes to treat: %1; not proven to be the best</source>
        <translation>zu behandelnde Bahnen: %1; nicht als bester Plan erwiesen</translation>
    </message>
    <message>
        <source>Batteries: charging gives off explosive gas. Air the room; no smoking, flame or sparks; protect eyes and hands; charger off first.</source>
        <translation>Akkus: Beim Laden entsteht explosionsfähiges Gas. Raum lüften; nicht rauchen, keine Flammen oder Funken; Augen und Hände schützen; Ladegerät zuerst aus.</translation>
    </message>
    <message>
        <source>Batteries.</source>
        <translation>Akkus.</translation>
    </message>
    <message>
        <source>Lifting: two people or the ramp; not on a slippery floor.</source>
        <translation>Heben: zu zweit oder über die Rampe; nicht auf rutschigem Boden.</translation>
    </message>
    <message>
        <source>Lifting.</source>
        <translation>Heben.</translation>
    </message>
    <message>
        <source>Slippery: keep off conditioned lanes and wet floors; wipe up drips.</source>
        <translation>Rutschgefahr: geölte Bahnen und nasse Böden nicht betreten; Tropfen aufwischen.</translation>
    </message>
    <message>
        <source>Chemicals.</source>
        <translation>Chemikalien.</translation>
    </message>
    <message>
        <source>Waste: not down a drain; ask the local wastewater authority.</source>
        <translation>Abfall: nicht in den Abfluss; die örtliche Abwasserbehörde fragen.</translation>
    </message>
    <message>
        <source>Ready %1, bring it to the lanes</source>
        <translation>%1 bereit machen, zu den Bahnen bringen</translation>
    </message>
    <message>
        <source>nothing to spare</source>
        <translation>kein Spielraum</translation>
    </message>
    <message>
        <source>Waste into the marked container; fill up the tanks</source>
        <translation>Schmutztanks in den gekennzeichneten Behälter leeren; Tanks auffüllen</translation>
    </message>
    <message>
        <source>lanes %1 out of service (%T2)</source>
        <translation>Bahn %1 außer Betrieb (%T2)</translation>
    </message>
    <message>
        <source>no machine may treat lanes %2 as asked</source>
        <translation>keine Ölmaschine darf Bahn %2 wie verlangt behandeln</translation>
    </message>
    <message>
        <source>on the last day</source>
        <translation>am letzten Tag</translation>
    </message>
    <message>
        <source>on days %1</source>
        <translation>am %1.</translation>
    </message>
    <message>
        <source>To another machine, %1: %2</source>
        <translation>Auf eine andere Maschine, %1: %2</translation>
    </message>
    <message>
        <source>In another order, %1: %2</source>
        <translation>In anderer Reihenfolge, %1: %2</translation>
    </message>
    <message>
        <source>From %1 to %2: %3</source>
        <translation>Von %1 auf %2: %3</translation>
    </message>
    <message>
        <source>Cannot be met: %1, %2, play begins %3</source>
        <translation>Nicht zu erfüllen: %1, %2, Spielbeginn %3</translation>
    </message>
    <message>
        <source>Would be ready late: %1, %2, play begins %3</source>
        <translation>Wäre zu spät fertig: %1, %2, Spielbeginn %3</translation>
    </message>
    <message>
        <source>; %1 are missing</source>
        <translation>; es fehlen %1</translation>
    </message>
    <message>
        <source>%1 more late</source>
        <translation>%1 mehr Verspätung</translation>
    </message>
    <message>
        <source>%1 less late</source>
        <translation>%1 weniger Verspätung</translation>
    </message>
    <message numerus="yes">
        <source>%n more demand(s) unmet</source>
        <translation>
            <numerusform>%n Anforderung mehr unerfüllt</numerusform>
            <numerusform>%n Anforderungen mehr unerfüllt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fewer demand(s) unmet</source>
        <translation>
            <numerusform>%n Anforderung weniger unerfüllt</numerusform>
            <numerusform>%n Anforderungen weniger unerfüllt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) added</source>
        <translation>
            <numerusform>%n Auftrag kommt dazu</numerusform>
            <numerusform>%n Aufträge kommen dazu</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) removed</source>
        <translation>
            <numerusform>%n Auftrag entfällt</numerusform>
            <numerusform>%n Aufträge entfallen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) moved</source>
        <translation>
            <numerusform>%n Auftrag verschiebt sich</numerusform>
            <numerusform>%n Aufträge verschieben sich</numerusform>
        </translation>
    </message>
    <message>
        <source>no job changes</source>
        <translation>kein Auftrag ändert sich</translation>
    </message>
    <message>
        <source>Proven: no plan does better.</source>
        <translation>Bewiesen: Kein Plan ist besser.</translation>
    </message>
    <message>
        <source>First look: the proof follows.</source>
        <translation>Erster Blick: Der Beweis folgt.</translation>
    </message>
    <message>
        <source>The best plan found: not proven to be the best.</source>
        <translation>Der beste gefundene Plan; nicht bewiesen, dass keiner besser ist.</translation>
    </message>
    <message>
        <source>%1 to %2: treatments %3, conditioner %4, cleaner %5</source>
        <translation>%1 bis %2: Behandlungen %3, Bahnöl %4, Reiniger %5</translation>
    </message>
    <message>
        <source>No longer %1: %2</source>
        <translation>Nicht mehr %1: %2</translation>
    </message>
    <message>
        <source>New %1: %2</source>
        <translation>Neu %1: %2</translation>
    </message>
    <message>
        <source>costs nothing</source>
        <translation>kostet nichts</translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) would not be ready as asked</source>
        <translation>
            <numerusform>%n Bahn würde nicht wie verlangt fertig</numerusform>
            <numerusform>%n Bahnen würden nicht wie verlangt fertig</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) would be late, by up to %3</source>
        <translation>
            <numerusform>%n Bahn würde zu spät fertig, um %3</numerusform>
            <numerusform>%n Bahnen würden zu spät fertig, um bis zu %3</numerusform>
        </translation>
    </message>
    <message>
        <source>%2 more overtime</source>
        <translation>%2 mehr Überstunden</translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) would be ready inside the reserve, by up to %3</source>
        <translation>
            <numerusform>%n Bahn würde erst innerhalb der Reserve fertig, um %3</numerusform>
            <numerusform>%n Bahnen würden erst innerhalb der Reserve fertig, um bis zu %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) would be up to %3 older when play begins</source>
        <translation>
            <numerusform>%n Bahn: Behandlung bei Spielbeginn %3 älter</numerusform>
            <numerusform>%n Bahnen: Behandlung bei Spielbeginn bis zu %3 älter</numerusform>
        </translation>
    </message>
    <message>
        <source>%2 less overtime</source>
        <translation>%2 weniger Überstunden</translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) would be ready with the reserve kept</source>
        <translation>
            <numerusform>%n Bahn würde mit voller Reserve fertig</numerusform>
            <numerusform>%n Bahnen würden mit voller Reserve fertig</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) would be up to %3 fresher when play begins</source>
        <translation>
            <numerusform>%n Bahn: Behandlung bei Spielbeginn %3 frischer</numerusform>
            <numerusform>%n Bahnen: Behandlung bei Spielbeginn bis zu %3 frischer</numerusform>
        </translation>
    </message>
    <message>
        <source>lanes %2 are in play until %T3 (%1)</source>
        <translation>auf Bahn %2 wird bis %T3 gespielt (%1)</translation>
    </message>
    <message>
        <source>lanes %2 are in play from %T3 (%1)</source>
        <translation>auf Bahn %2 wird ab %T3 gespielt (%1)</translation>
    </message>
    <message>
        <source>the other lanes of the pairs of lanes %2 are in play until %T3 (%1)</source>
        <translation>neben Bahn %2 wird im selben Bahnpaar bis %T3 gespielt (%1)</translation>
    </message>
    <message>
        <source>the other lanes of the pairs of lanes %2 are in play from %T3 (%1)</source>
        <translation>neben Bahn %2 wird im selben Bahnpaar ab %T3 gespielt (%1)</translation>
    </message>
    <message>
        <source>%1 is at other work until %T2</source>
        <translation>%1 ist bis %T2 anderweitig im Einsatz</translation>
    </message>
    <message>
        <source>%1 is wanted for other work from %T2</source>
        <translation>%1 wird ab %T2 anderweitig gebraucht</translation>
    </message>
    <message>
        <source>%1 is on lanes %2 at that time</source>
        <translation>%1 ist zu dieser Zeit auf Bahn %2</translation>
    </message>
    <message>
        <source>the shift &apos;%1&apos; can begin at %T2 at the earliest, overtime included</source>
        <translation>die Schicht „%1“ kann mit Überstunden frühestens um %T2 beginnen</translation>
    </message>
    <message>
        <source>the shift &apos;%1&apos; must end by %T2, overtime included</source>
        <translation>die Schicht „%1“ muss mit Überstunden spätestens um %T2 enden</translation>
    </message>
    <message>
        <source>everybody of the shift &apos;%1&apos; is at work between %T2 and %T3</source>
        <translation>alle aus der Schicht „%1“ sind zwischen %T2 und %T3 beschäftigt</translation>
    </message>
    <message>
        <source>nobody is there until %T2 (%1)</source>
        <translation>bis %T2 ist niemand da (%1)</translation>
    </message>
    <message>
        <source>nobody is there from %T2 (%1)</source>
        <translation>ab %T2 ist niemand da (%1)</translation>
    </message>
    <message>
        <source>it would have to begin before now (%T2)</source>
        <translation>sie müsste vor jetzt beginnen (%T2)</translation>
    </message>
    <message>
        <source>lanes to treat: %1</source>
        <translation>zu behandelnde Bahnen: %1</translation>
    </message>
    <message>
        <source>outings: %1, machine time %2</source>
        <translation>Fahrten: %1, Maschinenzeit %2</translation>
    </message>
    <message>
        <source>overtime: %1</source>
        <translation>Überstunden: %1</translation>
    </message>
    <message>
        <source>conditioner: %1, cleaner: %2</source>
        <translation>Bahnöl: %1, Reiniger: %2</translation>
    </message>
    <message>
        <source>demands unmet: %1, events late: %2</source>
        <translation>nicht erfüllte Anforderungen: %1, zu spät bediente Veranstaltungen: %2</translation>
    </message>
    <message>
        <source>days proven to be the best: %1 of %2</source>
        <translation>als bester Plan erwiesene Tage: %1 von %2</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>To spare</source>
        <translation>Spielraum</translation>
    </message>
    <message>
        <source>Lanes</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>Overtime</source>
        <translation>Überstunden</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Woche</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>Conditioner</source>
        <translation>Bahnöl</translation>
    </message>
    <message>
        <source>Cleaner</source>
        <translation>Reiniger</translation>
    </message>
    <message>
        <source>Tight days</source>
        <translation>Knappe Tage</translation>
    </message>
    <message numerus="yes">
        <source>%n demand(s) unmet</source>
        <translation>
            <numerusform>%n Anforderung nicht erfüllt</numerusform>
            <numerusform>%n Anforderungen nicht erfüllt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) late</source>
        <translation>
            <numerusform>%n Veranstaltung zu spät bedient</numerusform>
            <numerusform>%n Veranstaltungen zu spät bedient</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing to do</source>
        <translation>nichts zu tun</translation>
    </message>
    <message>
        <source>tight by %1</source>
        <translation>um %1 zu knapp</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message numerus="yes">
        <source>%n tight day(s)</source>
        <translation>
            <numerusform>%n knapper Tag</numerusform>
            <numerusform>%n knappe Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>No day is tight; least to spare</source>
        <translation>Kein Tag ist knapp; am wenigsten Spielraum</translation>
    </message>
    <message>
        <source>By week</source>
        <translation>Nach Wochen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what, why</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weitere</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>the outing can be %2 earlier, from %T3</source>
        <translation>die Fahrt kann %2 früher beginnen, um %T3</translation>
    </message>
    <message>
        <source>the outing can be %2 later, from %T3</source>
        <translation>die Fahrt kann %2 später beginnen, um %T3</translation>
    </message>
    <message>
        <source>the outing cannot be %2 earlier</source>
        <translation>die Fahrt kann nicht %2 früher beginnen</translation>
    </message>
    <message>
        <source>the outing cannot be %2 later</source>
        <translation>die Fahrt kann nicht %2 später beginnen</translation>
    </message>
    <message>
        <source>lengthwise level</source>
        <translation>Ebenheit längs</translation>
    </message>
    <message>
        <source>crosswise tilt</source>
        <translation>Querneigung</translation>
    </message>
    <message>
        <source>crown</source>
        <translation>Wölbung</translation>
    </message>
    <message>
        <source>depression</source>
        <translation>Mulde</translation>
    </message>
    <message>
        <source>at least three units on every oiled board</source>
        <translation>mindestens drei Einheiten auf jeder geölten Leiste</translation>
    </message>
    <message>
        <source>lowest film on an oiled board</source>
        <translation>kleinster Film auf einer geölten Leiste</translation>
    </message>
    <message>
        <source>mean error against the computed film</source>
        <translation>mittlere Abweichung vom berechneten Film</translation>
    </message>
    <message>
        <source>track ratio: boards 18 to 22 over boards 3 to 7 of both sides</source>
        <translation>Spurverhältnis: Leisten 18 bis 22 zu Leisten 3 bis 7 beider Seiten</translation>
    </message>
    <message>
        <source>departure from the true plane: at most 0.040 in (1.016 mm)</source>
        <translation>Abweichung von der wahren Ebene: höchstens 0,040 in (1,016 mm)</translation>
    </message>
    <message>
        <source>a page of the sport&apos;s governing body of about 2007; its suspension in a notice of 2019 that others repeat. The current rule book decides.</source>
        <translation>eine Seite des Verbands von etwa 2007; die Aussetzung in einer Mitteilung von 2019, die andere wiedergeben. Es entscheidet das geltende Regelwerk.</translation>
    </message>
    <message>
        <source>a general sports reference that repeats the rule, year not known. The current rule book decides.</source>
        <translation>ein allgemeines Nachschlagewerk zum Sport, das die Regel wiedergibt, Jahr unbekannt. Es entscheidet das geltende Regelwerk.</translation>
    </message>
    <message>
        <source>a general sports reference for the figure, year not known; that it holds for this measurement is from memory. The current rule book decides.</source>
        <translation>ein allgemeines Nachschlagewerk zum Sport für die Zahl, Jahr unbekannt; dass sie für diese Messung gilt, ist aus dem Gedächtnis. Es entscheidet das geltende Regelwerk.</translation>
    </message>
    <message>
        <source>a limit that this centre has set</source>
        <translation>eine Grenze, die dieses Center gesetzt hat</translation>
    </message>
    <message>
        <source>in force, as far as the source says</source>
        <translation>in Kraft, soweit die Quelle es sagt</translation>
    </message>
    <message>
        <source>not in force: suspended in %1 (in force from %2)</source>
        <translation>nicht in Kraft: %1 ausgesetzt (in Kraft ab %2)</translation>
    </message>
    <message>
        <source>the centre&apos;s own</source>
        <translation>eigene des Centers</translation>
    </message>
    <message>
        <source>out %1, back %2, whole lane %3</source>
        <translation>hin %1, zurück %2, ganze Bahn %3</translation>
    </message>
    <message>
        <source>conditioner %1: %2</source>
        <translation>Bahnöl %1: %2</translation>
    </message>
    <message>
        <source>without carry of the brush</source>
        <translation>ohne Nachlauf der Bürste</translation>
    </message>
    <message>
        <source>carry length %1 (%2)</source>
        <translation>Nachlauf %1 (%2)</translation>
    </message>
    <message>
        <source>as in a long run</source>
        <translation>wie in einem langen Lauf</translation>
    </message>
    <message>
        <source>lane %1 of a clean brush</source>
        <translation>Bahn %1 einer sauberen Bürste</translation>
    </message>
    <message>
        <source>laid on the lane %1; on the brush %2 before and %3 after</source>
        <translation>auf der Bahn %1; auf der Bürste vorher %2, nachher %3</translation>
    </message>
    <message>
        <source>from, on board</source>
        <translation>ab, auf Leiste</translation>
    </message>
    <message>
        <source>Film in units of 0.0167 mL a square foot, means of cells of %1</source>
        <translation>Film in Einheiten zu 0,0167 mL je Quadratfuß, Mittel über Zellen von %1</translation>
    </message>
    <message>
        <source>the carry length of the machine %1 is negative or longer than the lane</source>
        <translation>die Mitnahmelänge der Maschine %1 ist negativ oder länger als die Bahn</translation>
    </message>
    <message>
        <source>the limits for tape readings of %1 are out of range or reversed</source>
        <translation>die Grenzen für Filmmessungen von %1 sind außerhalb des Möglichen oder vertauscht</translation>
    </message>
    <message>
        <source>%1, %2: the fill of %3 took %4 for 1,000 of nominal, where %5 is usual; one fill alone does not vary by as much. Check the fill line, the runs since the fill before (%7) and leaks</source>
        <translation>%1, %2: Die Füllung vom %3 nahm %4 je 1.000 des Sollwerts, üblich sind %5; so stark schwankt eine einzelne Füllung nicht. Fülllinie, Läufe seit der vorigen Füllung (%7) und Undichtigkeiten prüfen</translation>
    </message>
    <message>
        <source>%1, %2: the fill of %3 took only %4 for 1,000 of nominal, where %5 is usual; one fill alone does not vary by as much. Check the fill line, the runs since the fill before (%7) and blocked tips</source>
        <translation>%1, %2: Die Füllung vom %3 nahm nur %4 je 1.000 des Sollwerts, üblich sind %5; so stark schwankt eine einzelne Füllung nicht. Fülllinie, Läufe seit der vorigen Füllung (%7) und verstopfte Spitzen prüfen</translation>
    </message>
    <message>
        <source>%1, %2: the fill of %3 differs from the one before by more than fills do; together they took %4 for 1,000 of nominal, where %5 is usual. Was the line met both times, and was everything poured written down?</source>
        <translation>%1, %2: Die Füllung vom %3 weicht von der vorigen stärker ab, als Füllungen es tun; zusammen nahmen sie %4 je 1.000 des Sollwerts, üblich sind %5. Wurde die Linie beide Male getroffen und alles Eingefüllte notiert?</translation>
    </message>
    <message>
        <source>%1, %2: up to the fill of %3 the smoothed average has risen beyond its limit: %4 for 1,000 of nominal over the last fills (%6), where %5 is usual, in %7 runs. The machine puts out more than it did</source>
        <translation>%1, %2: Bis zur Füllung vom %3 ist das geglättete Mittel über seine Grenze gestiegen: %4 je 1.000 des Sollwerts über die letzten Füllungen (%6), üblich sind %5, in %7 Läufen. Die Maschine gibt mehr ab als früher</translation>
    </message>
    <message>
        <source>%1, %2: up to the fill of %3 the smoothed average has fallen below its limit: %4 for 1,000 of nominal over the last fills (%6), where %5 is usual, in %7 runs. The machine puts out less than it did</source>
        <translation>%1, %2: Bis zur Füllung vom %3 ist das geglättete Mittel unter seine Grenze gefallen: %4 je 1.000 des Sollwerts über die letzten Füllungen (%6), üblich sind %5, in %7 Läufen. Die Maschine gibt weniger ab als früher</translation>
    </message>
    <message>
        <source>%1, %2: up to the fill of %3 small excesses have added up to more than chance: %4 for 1,000 of nominal over the last fills (%6), where %5 is usual, in %7 runs. The machine puts out more than it did</source>
        <translation>%1, %2: Bis zur Füllung vom %3 haben sich kleine Überschüsse zu mehr als Zufall summiert: %4 je 1.000 des Sollwerts über die letzten Füllungen (%6), üblich sind %5, in %7 Läufen. Die Maschine gibt mehr ab als früher</translation>
    </message>
    <message>
        <source>%1, %2: up to the fill of %3 small shortfalls have added up to more than chance: %4 for 1,000 of nominal over the last fills (%6), where %5 is usual, in %7 runs. The machine puts out less than it did</source>
        <translation>%1, %2: Bis zur Füllung vom %3 haben sich kleine Fehlmengen zu mehr als Zufall summiert: %4 je 1.000 des Sollwerts über die letzten Füllungen (%6), üblich sind %5, in %7 Läufen. Die Maschine gibt weniger ab als früher</translation>
    </message>
    <message>
        <source>%1, %2: %3 fills up to the line; drift is judged once there are %4 to compare with</source>
        <translation>%1, %2: %3 Füllungen bis zur Linie; beurteilt wird ab %4 Füllungen zum Vergleich</translation>
    </message>
    <message>
        <source>%1, %2: all fills of the baseline are the same to the drop, so nothing can be judged by them</source>
        <translation>%1, %2: Alle Füllungen des Vergleichs sind auf den Tropfen gleich; danach lässt sich nichts beurteilen</translation>
    </message>
    <message>
        <source>%1, %2: fills left out because the pattern of a run is not known: %3</source>
        <translation>%1, %2: Füllungen, die ausgelassen wurden, weil das Muster eines Laufs nicht bekannt ist: %3</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: empty</source>
        <translation>%1, Spalte „%2“: leer</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: &apos;%3&apos; where film in units from 0 to %4 is expected, with a decimal point</source>
        <translation>%1, Spalte „%2“: „%3“, erwartet wird Film in Einheiten von 0 bis %4 mit Dezimalpunkt</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: &apos;%3&apos; where feet from the foul line, 0 to %4, are expected</source>
        <translation>%1, Spalte „%2“: „%3“, erwartet werden Fuß ab der Foullinie, 0 bis %4</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: &apos;%3&apos; where a whole number from %4 to %5 is expected</source>
        <translation>%1, Spalte „%2“: „%3“, erwartet wird eine ganze Zahl von %4 bis %5</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: &apos;%3&apos; has a comma where a decimal point is expected; a mapping may say decimal: comma</source>
        <translation>%1, Spalte „%2“: „%3“ hat ein Komma, wo ein Dezimalpunkt erwartet wird; eine Zuordnung darf decimal: comma sagen</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: &apos;%3&apos; has a point where the mapping says that decimals have a comma</source>
        <translation>%1, Spalte „%2“: „%3“ hat einen Punkt, obwohl Dezimalzahlen laut Zuordnung ein Komma haben</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: &apos;%3&apos; where a time with its offset is expected, as 2026-11-12T18:30:00Z</source>
        <translation>%1, Spalte „%2“: „%3“, erwartet wird ein Zeitpunkt mit Zeitverschiebung wie 2026-11-12T18:30:00Z</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: &apos;%3&apos; where a date is expected, written as %4</source>
        <translation>%1, Spalte „%2“: „%3“, erwartet wird ein Datum in der Form %4</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: &apos;%3&apos; where a time of day is expected, written as %4</source>
        <translation>%1, Spalte „%2“: „%3“, erwartet wird eine Uhrzeit in der Form %4</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: &apos;%3&apos; where one of %4 is expected</source>
        <translation>%1, Spalte „%2“: „%3“, erwartet wird eines von %4</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: the centre has no &apos;%3&apos;</source>
        <translation>%1, Spalte „%2“: „%3“ gibt es in diesem Center nicht</translation>
    </message>
    <message>
        <source>%1: the column &apos;%2&apos; is no board of the lane; boards run from b1 to b39</source>
        <translation>%1: Die Spalte „%2“ ist keine Leiste der Bahn; es gibt b1 bis b39</translation>
    </message>
    <message>
        <source>%1: no board has film</source>
        <translation>%1: Auf keiner Leiste ist Film angegeben</translation>
    </message>
    <message>
        <source>there is no pattern &apos;%1&apos;</source>
        <translation>Es gibt kein Ölmuster „%1“</translation>
    </message>
    <message>
        <source>there is no machine &apos;%1&apos;</source>
        <translation>Es gibt keine Ölmaschine „%1“</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is not a number of lanes from 1 to %2</source>
        <translation>„%1“ ist keine Anzahl von Bahnen von 1 bis %2</translation>
    </message>
    <message>
        <source>tape reading: there is no lane %1; lanes run from 1 to %2</source>
        <translation>Filmmessung: Bahn %1 gibt es nicht; es gibt die Bahnen 1 bis %2</translation>
    </message>
    <message>
        <source>tape reading, lane %1: the distance %2 is not on the lane</source>
        <translation>Filmmessung, Bahn %1: Die Entfernung %2 liegt nicht auf der Bahn</translation>
    </message>
    <message>
        <source>tape reading, lane %1: the number of the lane in its run runs from 0 to %3, not %2</source>
        <translation>Filmmessung, Bahn %1: Die Nummer der Bahn im Lauf reicht von 0 bis %3, nicht %2</translation>
    </message>
    <message>
        <source>tape reading, lane %1, board %2: film runs from 0 to %3 units</source>
        <translation>Filmmessung, Bahn %1, Leiste %2: Film reicht von 0 bis %3 Einheiten</translation>
    </message>
    <message>
        <source>tape reading, lane %1: no board was measured</source>
        <translation>Filmmessung, Bahn %1: Keine Leiste wurde gemessen</translation>
    </message>
    <message>
        <source>%1 boards with film were read; a carry length needs %2 or more, where film was laid</source>
        <translation>%1 Leisten mit Film wurden gemessen; eine Mitnahmelänge braucht mindestens %2, auf denen Film lag</translation>
    </message>
    <message>
        <source>inspection: there is no lane %1; lanes run from 1 to %2</source>
        <translation>Prüfung: Bahn %1 gibt es nicht; es gibt die Bahnen 1 bis %2</translation>
    </message>
    <message>
        <source>inspection, lane %1: the distance %2 is not on the lane</source>
        <translation>Prüfung, Bahn %1: Die Entfernung %2 liegt nicht auf der Bahn</translation>
    </message>
    <message>
        <source>inspection, lane %1: a departure of %2 at %3 is out of range</source>
        <translation>Prüfung, Bahn %1: Eine Abweichung von %2 bei %3 ist außerhalb des Möglichen</translation>
    </message>
    <message>
        <source>inspection, lane %1: nothing was measured</source>
        <translation>Prüfung, Bahn %1: Nichts wurde gemessen</translation>
    </message>
    <message>
        <source>the record &apos;%1&apos; names a version of a pattern that does not exist</source>
        <translation>der Eintrag „%1“ nennt eine Fassung eines Musters, die es nicht gibt</translation>
    </message>
    <message>
        <source>what the pattern &apos;%1&apos; says is not among its versions</source>
        <translation>was das Muster „%1“ sagt, fehlt unter seinen Fassungen</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Bestellung</translation>
    </message>
    <message>
        <source>Draft: not placed yet</source>
        <translation>Entwurf: noch nicht bestellt</translation>
    </message>
    <message>
        <source>Article</source>
        <translation>Artikel</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Verbrauchsgut</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Gebinde</translation>
    </message>
    <message>
        <source>Each</source>
        <translation>Einzelpreis</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>Freight</source>
        <translation>Fracht</translation>
    </message>
    <message>
        <source>Ordered by %1</source>
        <translation>Bestellt von %1</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; is not a currency; write three capital letters, as EUR</source>
        <translation>%1: „%2“ ist keine Währung; drei Großbuchstaben, wie EUR</translation>
    </message>
    <message>
        <source>%1: give a day from today on, %2 days ahead at most</source>
        <translation>%1: einen Tag ab heute angeben, höchstens %2 Tage voraus</translation>
    </message>
    <message>
        <source>there is no supplier &apos;%1&apos;</source>
        <translation>es gibt keinen Lieferanten „%1“</translation>
    </message>
    <message>
        <source>there is nothing to order, so no page was written</source>
        <translation>es gibt nichts zu bestellen, daher wurde keine Seite geschrieben</translation>
    </message>
    <message>
        <source>&apos;%1&apos; has been moved already and keeps its unit</source>
        <translation>„%1“ wurde schon bewegt und behält seine Einheit</translation>
    </message>
    <message>
        <source>the supply &apos;%1&apos; has no name</source>
        <translation>der Vorrat „%1“ hat keinen Namen</translation>
    </message>
    <message>
        <source>two supplies are called &apos;%1&apos;</source>
        <translation>zwei Vorräte heißen „%1“</translation>
    </message>
    <message>
        <source>%1: the id &apos;%2&apos; belongs to the ledger itself</source>
        <translation>%1: die Kennung „%2“ gehört dem Lagerbuch selbst</translation>
    </message>
    <message>
        <source>%1: what a container holds is nothing or beyond reason</source>
        <translation>%1: ein Gebinde fasst nichts oder mehr als möglich</translation>
    </message>
    <message>
        <source>%1: the usual use is less than nothing or beyond reason</source>
        <translation>%1: der übliche Verbrauch ist negativ oder größer als möglich</translation>
    </message>
    <message>
        <source>%1: the storage limit is less than nothing or beyond reason</source>
        <translation>%1: die Lagergrenze ist negativ oder größer als möglich</translation>
    </message>
    <message>
        <source>%1: a shelf life of %2 days is not possible</source>
        <translation>%1: eine Haltbarkeit von %2 Tagen ist nicht möglich</translation>
    </message>
    <message>
        <source>%1: a service level of %2 per thousand is not possible; it lies between 0 and 1000</source>
        <translation>%1: ein Servicegrad von %2 Promille ist nicht möglich; er liegt zwischen 0 und 1000</translation>
    </message>
    <message>
        <source>%1: holding costs of %2 per thousand and year are less than nothing or beyond reason</source>
        <translation>%1: Lagerkosten von %2 Promille im Jahr sind negativ oder größer als möglich</translation>
    </message>
    <message>
        <source>%1: mixed with %2 parts of water; only cleaner is mixed, with 1000 parts at most</source>
        <translation>%1: mit %2 Teilen Wasser gemischt; nur Reiniger wird gemischt, mit höchstens 1000 Teilen</translation>
    </message>
    <message>
        <source>%1: only conditioner and cleaner are used from the tanks of machines</source>
        <translation>%1: nur Öl und Reiniger werden aus den Tanks der Maschinen verbraucht</translation>
    </message>
    <message>
        <source>the supplier &apos;%1&apos; has no name</source>
        <translation>der Lieferant „%1“ hat keinen Namen</translation>
    </message>
    <message>
        <source>%1: takes no orders on any day of the week</source>
        <translation>%1: nimmt an keinem Wochentag Bestellungen an</translation>
    </message>
    <message>
        <source>%1: a delivery time of %2 days is not possible</source>
        <translation>%1: eine Lieferzeit von %2 Tagen ist nicht möglich</translation>
    </message>
    <message>
        <source>%1: a price is less than nothing or beyond reason</source>
        <translation>%1: ein Preis ist negativ oder größer als möglich</translation>
    </message>
    <message>
        <source>%1: a price is in &apos;%2&apos;, but the centre buys in %3</source>
        <translation>%1: ein Preis ist in „%2“, die Anlage kauft aber in %3</translation>
    </message>
    <message>
        <source>%1: a pack holds nothing, or more than is possible</source>
        <translation>%1: eine Packung enthält nichts oder mehr als möglich</translation>
    </message>
    <message>
        <source>%1: there is no price</source>
        <translation>%1: es gibt keinen Preis</translation>
    </message>
    <message>
        <source>%1: the prices begin at %2 packs; there is none for fewer</source>
        <translation>%1: die Preise beginnen bei %2 Packungen; für weniger gibt es keinen</translation>
    </message>
    <message>
        <source>%1: the price from %3 packs stands after that from %2; they must ascend</source>
        <translation>%1: der Preis ab %3 Packungen steht hinter dem ab %2; sie müssen aufsteigen</translation>
    </message>
    <message>
        <source>%1: from %2 packs on, each pack costs more than before</source>
        <translation>%1: ab %2 Packungen kostet jede mehr als vorher</translation>
    </message>
    <message>
        <source>%1: a price from %2 packs on is beyond reason</source>
        <translation>%1: ein Preis ab %2 Packungen ist mehr als möglich</translation>
    </message>
    <message>
        <source>%1: %2 prices; there may be %3</source>
        <translation>%1: %2 Preise; erlaubt sind %3</translation>
    </message>
    <message>
        <source>the article &apos;%1…&apos; is too long</source>
        <translation>der Artikel „%1…“ ist zu lang</translation>
    </message>
    <message>
        <source>the number &apos;%1…&apos; is too long</source>
        <translation>die Nummer „%1…“ ist zu lang</translation>
    </message>
    <message>
        <source>order %1: placed, but on no date</source>
        <translation>Bestellung %1: aufgegeben, aber an keinem Tag</translation>
    </message>
    <message>
        <source>order %1: placed, but for nothing</source>
        <translation>Bestellung %1: aufgegeben, aber ohne Inhalt</translation>
    </message>
    <message>
        <source>order %1: more than %2 lines</source>
        <translation>Bestellung %1: mehr als %2 Zeilen</translation>
    </message>
    <message>
        <source>order %1: a line without a supply</source>
        <translation>Bestellung %1: eine Zeile ohne Vorrat</translation>
    </message>
    <message>
        <source>order %1: %2 packs cannot be ordered</source>
        <translation>Bestellung %1: %2 Packungen lassen sich nicht bestellen</translation>
    </message>
    <message>
        <source>order %1: a pack holds nothing, or more than is possible</source>
        <translation>Bestellung %1: eine Packung enthält nichts oder mehr als möglich</translation>
    </message>
    <message>
        <source>%1: %3 counted where the ledger has %2; check the unit, and say that you are sure</source>
        <translation>%1: %3 gezählt, wo das Bestandsbuch %2 hat; die Einheit prüfen und bestätigen</translation>
    </message>
    <message>
        <source>the movement &apos;%1&apos; moves nothing</source>
        <translation>die Bewegung „%1“ bewegt nichts</translation>
    </message>
    <message>
        <source>the movement &apos;%1&apos; has %2 entries; there may be %3</source>
        <translation>die Bewegung „%1“ hat %2 Posten; erlaubt sind %3</translation>
    </message>
    <message>
        <source>the movement &apos;%1&apos; is for %2, after it was recorded</source>
        <translation>die Bewegung „%1“ gilt für %2, nach ihrer Aufzeichnung</translation>
    </message>
    <message>
        <source>there is no supply &apos;%1&apos;; nothing was booked</source>
        <translation>es gibt keinen Vorrat „%1“; nichts wurde gebucht</translation>
    </message>
    <message>
        <source>%1: no such place; a tank belongs to a machine, and nothing else does</source>
        <translation>%1: diesen Ort gibt es nicht; ein Tank gehört zu einer Maschine, sonst nichts</translation>
    </message>
    <message>
        <source>%1: %2 cannot be moved</source>
        <translation>%1: %2 lassen sich nicht bewegen</translation>
    </message>
    <message>
        <source>%1: a receipt of %2; what goes back to the supplier is booked as returned</source>
        <translation>%1: ein Eingang von %2; was zum Lieferanten zurückgeht, wird als Rückgabe gebucht</translation>
    </message>
    <message>
        <source>%1: this kind of movement cannot bring %2 to this place</source>
        <translation>%1: diese Art Bewegung kann an diesem Ort nicht %2 bewirken</translation>
    </message>
    <message>
        <source>%1: what is taken away and what comes in differ by %2; nothing was booked</source>
        <translation>%1: was weggeht und was hinzukommt, unterscheidet sich um %2; nichts wurde gebucht</translation>
    </message>
    <message>
        <source>%1: %2 were to be taken where %3 are; nothing was booked</source>
        <translation>%1: %2 sollten entnommen werden, wo %3 sind; nichts wurde gebucht</translation>
    </message>
    <message>
        <source>%1: %2 were to be taken from the container &apos;%4&apos;, which holds %3; nothing was booked</source>
        <translation>%1: %2 sollten aus dem Gebinde „%4“ entnommen werden, das %3 enthält; nichts wurde gebucht</translation>
    </message>
    <message>
        <source>the movement &apos;%1&apos; is not the opposite of what it takes back; nothing was booked</source>
        <translation>die Bewegung „%1“ ist nicht das Gegenteil dessen, was sie zurücknimmt; nichts wurde gebucht</translation>
    </message>
    <message>
        <source>the count &apos;%1&apos; counts nothing</source>
        <translation>die Zählung „%1“ zählt nichts</translation>
    </message>
    <message>
        <source>the count &apos;%1&apos; has %2 lines; there may be %3</source>
        <translation>die Zählung „%1“ hat %2 Zeilen; erlaubt sind %3</translation>
    </message>
    <message>
        <source>there is no supply &apos;%1&apos;; nothing was recorded</source>
        <translation>es gibt keinen Vorrat „%1“; nichts wurde aufgezeichnet</translation>
    </message>
    <message>
        <source>%1: counted where no stock lies; a tank belongs to a machine</source>
        <translation>%1: gezählt, wo kein Vorrat liegt; ein Tank gehört zu einer Maschine</translation>
    </message>
    <message>
        <source>%1: %2 cannot have been counted</source>
        <translation>%1: %2 können nicht gezählt worden sein</translation>
    </message>
    <message>
        <source>%1: the same place was counted twice</source>
        <translation>%1: derselbe Ort wurde zweimal gezählt</translation>
    </message>
    <message>
        <source>%1: there is no supply &apos;%2&apos;; nothing was recorded</source>
        <translation>%1: es gibt keinen Vorrat „%2“; nichts wurde aufgezeichnet</translation>
    </message>
    <message>
        <source>%1: the wrong unit for %2; write %3. Nothing was recorded</source>
        <translation>%1: die falsche Einheit für %2; richtig ist %3. Nichts wurde aufgezeichnet</translation>
    </message>
    <message>
        <source>entries without their movement: &apos;%1&apos;</source>
        <translation>Posten ohne ihre Bewegung: „%1“</translation>
    </message>
    <message>
        <source>entries in another month than their movement: &apos;%1&apos;</source>
        <translation>Posten in einem anderen Monat als ihre Bewegung: „%1“</translation>
    </message>
    <message>
        <source>the movement &apos;%1&apos; does not sum to zero for %2</source>
        <translation>die Bewegung „%1“ geht für %2 nicht auf</translation>
    </message>
    <message>
        <source>the movement &apos;%1&apos; cannot be (%2)</source>
        <translation>die Bewegung „%1“ ist unmöglich (%2)</translation>
    </message>
    <message>
        <source>the movement &apos;%1&apos; is not the opposite of what it takes back</source>
        <translation>die Bewegung „%1“ ist nicht das Gegenteil dessen, was sie zurücknimmt</translation>
    </message>
    <message>
        <source>the movement &apos;%1&apos; comes from something that does not exist</source>
        <translation>die Bewegung „%1“ stammt aus etwas, das es nicht gibt</translation>
    </message>
    <message>
        <source>%1 names the supply &apos;%2&apos;, which does not exist</source>
        <translation>%1 nennt den Vorrat „%2“, den es nicht gibt</translation>
    </message>
    <message>
        <source>less than nothing is left of &apos;%1&apos; somewhere, and no movement says so</source>
        <translation>von „%1“ liegt irgendwo weniger als nichts, und keine Bewegung sagt es</translation>
    </message>
    <message>
        <source>the balance at the end of a month is not that of the movements: %1</source>
        <translation>der Bestand am Ende eines Monats ist nicht der aus den Bewegungen: %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 x %2</source>
        <translation>%1 x %2</translation>
    </message>
    <message>
        <source>approach cleaner</source>
        <translation>Anlaufreiniger</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>Tuch</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>pack</source>
        <translation>Akku</translation>
    </message>
    <message>
        <source>received</source>
        <translation>erhalten</translation>
    </message>
    <message>
        <source>opened</source>
        <translation>geöffnet</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>gefüllt</translation>
    </message>
    <message>
        <source>used</source>
        <translation>verbraucht</translation>
    </message>
    <message>
        <source>spilled</source>
        <translation>verschüttet</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>gezählt</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>disposed</source>
        <translation>entsorgt</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>Entwurf</translation>
    </message>
    <message>
        <source>placed</source>
        <translation>bestellt</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>abgeschlossen</translation>
    </message>
    <message>
        <source>shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>Tank</translation>
    </message>
    <message>
        <source>waste tank</source>
        <translation>Schmutztank</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>water main</source>
        <translation>Wasserleitung</translation>
    </message>
    <message>
        <source>lane</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>Abfluss</translation>
    </message>
    <message>
        <source>loss</source>
        <translation>Schwund</translation>
    </message>
    <message>
        <source>opening stock</source>
        <translation>Anfangsbestand</translation>
    </message>
    <message>
        <source>later</source>
        <translation>später</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>unter 1 %</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>über 99 %</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>No supplies are kept yet.</source>
        <translation>Noch werden keine Verbrauchsgüter geführt.</translation>
    </message>
    <message>
        <source>Order today from %1: %2.</source>
        <translation>Heute bei %1 bestellen: %2.</translation>
    </message>
    <message>
        <source>Order from %1 by %2: %3.</source>
        <translation>Bei %1 bis %2 bestellen: %3.</translation>
    </message>
    <message>
        <source>Nothing to order: %1 lasts until %2 at least (95 %).</source>
        <translation>Nichts zu bestellen: %1 reicht mindestens bis %2 (95 %).</translation>
    </message>
    <message>
        <source>Nothing to order: everything lasts past %1 (95 %).</source>
        <translation>Nichts zu bestellen: alles reicht über %1 hinaus (95 %).</translation>
    </message>
    <message>
        <source>%1 then lasts until %2.</source>
        <translation>%1 reicht dann bis %2.</translation>
    </message>
    <message>
        <source>A week later: %1 runs out before the delivery with %2 (now %3).</source>
        <translation>Eine Woche später: %1 geht mit %2 vor der Lieferung aus (jetzt %3).</translation>
    </message>
    <message>
        <source>A week earlier costs %1 more.</source>
        <translation>Eine Woche früher kostet %1 mehr.</translation>
    </message>
    <message>
        <source>A week earlier costs no more.</source>
        <translation>Eine Woche früher kostet nicht mehr.</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>A week</source>
        <translation>Je Woche</translation>
    </message>
    <message>
        <source>Runs out</source>
        <translation>Geht aus</translation>
    </message>
    <message>
        <source>Order by</source>
        <translation>Bestellen bis</translation>
    </message>
    <message>
        <source>%1: nobody sells it, and it falls below its service level on %2</source>
        <translation>%1: Niemand verkauft es, und es fällt am %2 unter seinen Servicegrad</translation>
    </message>
    <message>
        <source>%1: %2 takes no orders that would arrive in the time that is planned</source>
        <translation>%1: %2 nimmt keine Bestellungen an, die in der geplanten Zeit ankämen</translation>
    </message>
    <message>
        <source>%1: article &apos;%3&apos; of %2 is left out; its pack, prices or currency cannot be used</source>
        <translation>%1: Artikel „%3“ von %2 bleibt weg; Packung, Preise oder Währung sind nicht brauchbar</translation>
    </message>
    <message>
        <source>%1: %2 packs would be needed, which cannot be right; no order is planned for it</source>
        <translation>%1: Es wären %2 Packungen nötig, das kann nicht stimmen; dafür wird keine Bestellung geplant</translation>
    </message>
    <message>
        <source>%1: falls below its service level on %2, before the first order can arrive (%3)</source>
        <translation>%1: fällt am %2 unter seinen Servicegrad, bevor die erste Bestellung ankommen kann (%3)</translation>
    </message>
    <message>
        <source>%1: the store holds %2, too little for the service level until the next delivery; planned with no more beyond it than that takes</source>
        <translation>%1: Das Lager fasst %2, zu wenig für den Servicegrad bis zur nächsten Lieferung; geplant mit nicht mehr darüber hinaus als dafür nötig</translation>
    </message>
    <message>
        <source>%1: one pack is %2, and the store holds %3; planned all the same</source>
        <translation>%1: Eine Packung sind %2, das Lager fasst %3; trotzdem geplant</translation>
    </message>
    <message>
        <source>%1: does not keep for longer than %2 days, and the service level needs more at a time than is used until then; some may have to be thrown away</source>
        <translation>%1: hält sich nicht länger als %2 Tage, und der Servicegrad braucht auf einmal mehr, als bis dahin verbraucht wird; etwas davon muss vielleicht weggeworfen werden</translation>
    </message>
    <message>
        <source>%1: no plan was found whose orders all reach the minimum; planned without it</source>
        <translation>%1: Kein Plan gefunden, dessen Bestellungen alle den Mindestbestellwert erreichen; ohne ihn geplant</translation>
    </message>
    <message>
        <source>%1: of those who sell it only %2 was looked at, the cheapest for it alone</source>
        <translation>%1: Von denen, die es verkaufen, wurde nur %2 betrachtet, für sich allein am günstigsten</translation>
    </message>
    <message>
        <source>%1: planned in packs of one size, article &apos;%3&apos; of %2, because so many are needed</source>
        <translation>%1: in Packungen einer Größe geplant, Artikel „%3“ von %2, weil so viele nötig sind</translation>
    </message>
    <message>
        <source>%1: planned by %2 packs at a time, because so many are needed</source>
        <translation>%1: in Schritten von %2 Packungen geplant, weil so viele nötig sind</translation>
    </message>
    <message>
        <source>Placed on %1 it is there by %2.</source>
        <translation>Am %1 bestellt ist es bis %2 da.</translation>
    </message>
    <message>
        <source>The last day that is early enough is %1.</source>
        <translation>Der letzte Tag, der früh genug ist, ist %1.</translation>
    </message>
    <message>
        <source>Count sheet</source>
        <translation>Zählliste</translation>
    </message>
    <message>
        <source>Write what is really there; a line left empty is not counted.</source>
        <translation>Aufschreiben, was wirklich da ist; eine leere Zeile ist nicht gezählt.</translation>
    </message>
    <message>
        <source>Counted by</source>
        <translation>Gezählt von</translation>
    </message>
    <message>
        <source>Day and time</source>
        <translation>Tag und Uhrzeit</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Lot, container</source>
        <translation>Charge, Gebinde</translation>
    </message>
    <message>
        <source>Books</source>
        <translation>Buch</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Gezählt</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Checked by, on</source>
        <translation>Geprüft von, am</translation>
    </message>
    <message>
        <source>staff hours</source>
        <translation>Personalstunden</translation>
    </message>
    <message>
        <source>Product: %1 of conditioner, %2 of cleaner.</source>
        <translation>Mittel: %1 Bahnöl, %2 Reiniger.</translation>
    </message>
    <message>
        <source>Product: %1 (%2 of conditioner, %3 of cleaner).</source>
        <translation>Mittel: %1 (%2 Bahnöl, %3 Reiniger).</translation>
    </message>
    <message>
        <source>Work: %1.</source>
        <translation>Arbeit: %1.</translation>
    </message>
    <message>
        <source>For each of its %1 lanes: %2.</source>
        <translation>Für jede ihrer %1 Bahnen: %2.</translation>
    </message>
    <message>
        <source>For each of its %1 lanes: %2 and %3.</source>
        <translation>Für jede ihrer %1 Bahnen: %2 und %3.</translation>
    </message>
    <message>
        <source>Not in it, for want of a price: %1.</source>
        <translation>Nicht enthalten, weil ein Preis fehlt: %1.</translation>
    </message>
    <message>
        <source>What an hour of work costs is not known here; add it yourself.</source>
        <translation>Was eine Arbeitsstunde kostet, ist hier nicht bekannt; bitte selbst hinzurechnen.</translation>
    </message>
    <message>
        <source>No event needs lane care in this time.</source>
        <translation>In dieser Zeit braucht keine Veranstaltung Bahnpflege.</translation>
    </message>
    <message>
        <source>Begins</source>
        <translation>Beginnt</translation>
    </message>
    <message>
        <source>Event</source>
        <translation>Veranstaltung</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>A lane</source>
        <translation>Je Bahn</translation>
    </message>
    <message>
        <source>Work that no event needs: %1.</source>
        <translation>Arbeit, die keine Veranstaltung braucht: %1.</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: &apos;%3&apos; where a number from 0 to %4 is expected</source>
        <translation>%1, Spalte „%2“: „%3“, wo eine Zahl von 0 bis %4 erwartet wird</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: &apos;%3&apos; where money is expected, with %4 decimals at most</source>
        <translation>%1, Spalte „%2“: „%3“, wo ein Geldbetrag mit höchstens %4 Nachkommastellen erwartet wird</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: the unit is missing; there are %4</source>
        <translation>%1, Spalte „%2“: die Einheit fehlt; es gibt %4</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: &apos;%3&apos; is still to come</source>
        <translation>%1, Spalte „%2“: „%3“ liegt in der Zukunft</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: no tank of &apos;%3&apos; is for %4</source>
        <translation>%1, Spalte „%2“: kein Tank von „%3“ ist für %4</translation>
    </message>
    <message>
        <source>%1: this place stands already in line %2</source>
        <translation>%1: dieser Platz steht schon in Zeile %2</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: &apos;%3&apos;; a price list is of one supplier, named in its first row</source>
        <translation>%1, Spalte „%2“: „%3“; eine Preisliste ist von einem Lieferanten, dem ihrer ersten Zeile</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: from %3 packs; the price before it ends at %4</source>
        <translation>%1, Spalte „%2“: ab %3 Gebinden; der Preis davor endet bei %4</translation>
    </message>
    <message>
        <source>%1, column &apos;%2&apos;: from %3 packs; the price before it goes on to %4</source>
        <translation>%1, Spalte „%2“: ab %3 Gebinden; der Preis davor gilt bis %4</translation>
    </message>
    <message>
        <source>%1: %2: %4 counted where the ledger has %3; check the unit</source>
        <translation>%1: %2: %4 gezählt, wo das Bestandsbuch %3 hat; die Einheit prüfen</translation>
    </message>
    <message>
        <source>%1: %2: a pack of %3, where a container holds %4; check the unit</source>
        <translation>%1: %2: ein Gebinde von %3, wo ein Behälter %4 enthält; die Einheit prüfen</translation>
    </message>
    <message>
        <source>%1: %2: %3 a pack, far from the %4 of now; check the decimals</source>
        <translation>%1: %2: %3 je Gebinde, weit von den jetzigen %4; die Nachkommastellen prüfen</translation>
    </message>
    <message>
        <source>there are no rows &apos;%1&apos; of a plan; there are jobs, costs and staff-hours</source>
        <translation>Zeilen &apos;%1&apos; gibt es von einem Plan nicht; es gibt jobs, costs und staff-hours</translation>
    </message>
    <message>
        <source>of a plan only --kind staff-hours has a --pdf; the day&apos;s sheet has one too</source>
        <translation>von einem Plan hat nur --kind staff-hours ein --pdf; der Auftragszettel des Tages hat auch eines</translation>
    </message>
    <message>
        <source>%1: a price of nothing that is kept; choose the supply</source>
        <translation>%1: ein Preis für nichts, was geführt wird; den Vorrat wählen</translation>
    </message>
    <message>
        <source>%1: row %2 needs a number of packs and a price</source>
        <translation>%1: Zeile %2 braucht eine Zahl von Gebinden und einen Preis</translation>
    </message>
    <message>
        <source>a kept forecast is of no day</source>
        <translation>eine aufgehobene Vorhersage gehört zu keinem Tag</translation>
    </message>
    <message>
        <source>the forecast kept on %1 names a supply twice, none, or too many</source>
        <translation>die am %1 aufgehobene Vorhersage nennt ein Verbrauchsgut doppelt, keines oder zu viele</translation>
    </message>
    <message>
        <source>the forecast kept on %1: its spans of days do not ascend</source>
        <translation>die am %1 aufgehobene Vorhersage: Ihre Spannen von Tagen steigen nicht an</translation>
    </message>
    <message>
        <source>the forecast kept on %1: its amounts do not ascend or are beyond reason</source>
        <translation>die am %1 aufgehobene Vorhersage: Ihre Mengen steigen nicht an oder sind nicht plausibel</translation>
    </message>
    <message>
        <source>How well past forecasts held is not known yet: no two fills or counts lie a week apart.</source>
        <translation>Wie gut frühere Vorhersagen zutrafen, ist noch nicht bekannt: Keine zwei Füllungen oder Zählungen liegen eine Woche auseinander.</translation>
    </message>
    <message>
        <source>How well past forecasts held is not known: none was kept when a span began.</source>
        <translation>Wie gut frühere Vorhersagen zutrafen, ist nicht bekannt: Zu Beginn einer Spanne war keine aufgehoben.</translation>
    </message>
    <message>
        <source>One past forecast is known: what was used lay within the middle range %1 of 1 time and within the wide one %2 of 1.</source>
        <translation>Eine frühere Vorhersage ist bekannt: Der Verbrauch lag %1 von 1 Mal im mittleren Bereich und %2 von 1 Mal im weiten.</translation>
    </message>
    <message>
        <source>Of %1 past spans, %2 were within the middle range (expected about half) and %3 within the wide one (expected 9 in 10).</source>
        <translation>Von %1 früheren Spannen lagen %2 im mittleren Bereich (erwartet etwa die Hälfte) und %3 im weiten (erwartet 9 von 10).</translation>
    </message>
    <message>
        <source>! The ranges are too narrow: they held less often than they promise. Do not rely on them.</source>
        <translation>! Die Bereiche sind zu eng: Sie trafen seltener zu, als sie versprechen. Bitte nicht darauf verlassen.</translation>
    </message>
    <message>
        <source>! The ranges are too wide: they held more often than they promise.</source>
        <translation>! Die Bereiche sind zu weit: Sie trafen öfter zu, als sie versprechen.</translation>
    </message>
    <message>
        <source>That is too few to judge the ranges by.</source>
        <translation>Das sind zu wenige, um die Bereiche zu beurteilen.</translation>
    </message>
    <message>
        <source>The forecast missed by %1 a span on average, the average of the month before by %2.</source>
        <translation>Die Vorhersage lag im Mittel um %1 je Spanne daneben, der Durchschnitt des Vormonats um %2.</translation>
    </message>
    <message>
        <source>! The average of the month before would have been the better guess: it missed by %2 a span on average, the forecast by %1.</source>
        <translation>! Der Durchschnitt des Vormonats wäre die bessere Schätzung gewesen: Er lag im Mittel um %2 je Spanne daneben, die Vorhersage um %1.</translation>
    </message>
    <message>
        <source>Where last year is known, it missed by %1, the same weeks of last year by %2.</source>
        <translation>Wo das Vorjahr bekannt ist, lag sie um %1 daneben, dieselben Wochen des Vorjahrs um %2.</translation>
    </message>
    <message>
        <source>! The same weeks of last year would have been the better guess: they missed by %2, the forecast by %1.</source>
        <translation>! Dieselben Wochen des Vorjahrs wären die bessere Schätzung gewesen: Sie lagen um %2 daneben, die Vorhersage um %1.</translation>
    </message>
    <message>
        <source>Week %1, %2 to %3</source>
        <translation>Woche %1, %2 bis %3</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Outings</source>
        <translation>Fahrten</translation>
    </message>
    <message>
        <source>A machine that is attended binds one person from the moment it is readied until it is back. Overtime is what lies outside the paid time of every shift. Days ahead are those of the plan, days that are over those of the runs on record.</source>
        <translation>Eine begleitete Maschine bindet eine Person, vom Bereitstellen bis sie zurück ist. Überstunden sind, was außerhalb der bezahlten Zeit aller Schichten liegt. Kommende Tage sind die des Plans, vergangene die der aufgezeichneten Fahrten.</translation>
    </message>
    <message>
        <source>%1 no longer runs out about %2.</source>
        <translation>%1 geht um %2 nicht mehr aus.</translation>
    </message>
    <message>
        <source>%1 would run out too, about %2.</source>
        <translation>Auch %1 ginge aus, etwa %2.</translation>
    </message>
    <message numerus="yes">
        <source>%1 runs out %n day(s) earlier (%2).</source>
        <translation>
            <numerusform>%1 geht einen Tag früher aus (%2).</numerusform>
            <numerusform>%1 geht %n Tage früher aus (%2).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 runs out %n day(s) later (%2).</source>
        <translation>
            <numerusform>%1 geht einen Tag später aus (%2).</numerusform>
            <numerusform>%1 geht %n Tage später aus (%2).</numerusform>
        </translation>
    </message>
    <message>
        <source>No need to order %1 by %2.</source>
        <translation>%1 muss nicht bis %2 bestellt werden.</translation>
    </message>
    <message>
        <source>Order %1 too, by %2.</source>
        <translation>Auch %1 bestellen, bis %2.</translation>
    </message>
    <message>
        <source>Order %1 by %2 instead of %3.</source>
        <translation>%1 bis %2 bestellen statt bis %3.</translation>
    </message>
    <message>
        <source>Nothing runs out or has to be ordered on another day.</source>
        <translation>Nichts geht an einem anderen Tag aus oder muss an einem anderen Tag bestellt werden.</translation>
    </message>
    <message>
        <source>Product cost %1</source>
        <translation>Kosten der Mittel %1</translation>
    </message>
    <message>
        <source>Product cost %1, without what has no price: %2</source>
        <translation>Kosten der Mittel %1, ohne das, was keinen Preis hat: %2</translation>
    </message>
    <message>
        <source>under 1 in 2 years</source>
        <translation>unter 1 in 2 Jahren</translation>
    </message>
    <message>
        <source>about 1</source>
        <translation>etwa 1</translation>
    </message>
    <message>
        <source>about 1 in %1 weeks</source>
        <translation>etwa 1 in %1 Wochen</translation>
    </message>
    <message>
        <source>Service</source>
        <translation>Wartung</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Done by, on</source>
        <translation>Erledigt von, am</translation>
    </message>
    <message>
        <source>The house</source>
        <translation>Das Haus</translation>
    </message>
    <message numerus="yes">
        <source>%n more until %1</source>
        <translation>
            <numerusform>%n weitere bis %1</numerusform>
            <numerusform>%n weitere bis %1</numerusform>
        </translation>
    </message>
    <message>
        <source>the service item &apos;%1&apos; has no name</source>
        <translation>das Wartungsteil „%1“ hat keinen Namen</translation>
    </message>
    <message>
        <source>the duty &apos;%1&apos; has no name</source>
        <translation>die Aufgabe „%1“ hat keinen Namen</translation>
    </message>
    <message>
        <source>%1: there are two duties with one id</source>
        <translation>%1: zwei Aufgaben haben dieselbe Kennung</translation>
    </message>
    <message>
        <source>%1: never falls due; say after how much, or on which dates</source>
        <translation>%1: wird nie fällig; angeben, nach wie viel oder an welchen Tagen</translation>
    </message>
    <message>
        <source>%1: due after %2 is less than possible or beyond reason</source>
        <translation>%1: fällig nach %2 ist weniger als möglich oder unsinnig viel</translation>
    </message>
    <message>
        <source>%1: only days are counted where there is no machine</source>
        <translation>%1: ohne Maschine werden nur Tage gezählt</translation>
    </message>
    <message>
        <source>%1: one meter is counted twice</source>
        <translation>%1: ein Zähler steht zweimal da</translation>
    </message>
    <message>
        <source>%1: %2 minutes of work are not possible</source>
        <translation>%1: %2 Minuten Arbeit sind nicht möglich</translation>
    </message>
    <message>
        <source>%1: %2 of a part cannot be taken</source>
        <translation>%1: %2 eines Teils können nicht entnommen werden</translation>
    </message>
    <message>
        <source>there is no service item &apos;%1&apos;; nothing was recorded</source>
        <translation>es gibt kein Wartungsteil „%1“; nichts wurde eingetragen</translation>
    </message>
    <message>
        <source>%1 has no duty &apos;%2&apos;; nothing was recorded</source>
        <translation>%1 hat keine Aufgabe „%2“; nichts wurde eingetragen</translation>
    </message>
    <message>
        <source>%1: %2 is still to come; a service is recorded when it is done</source>
        <translation>%1: %2 steht noch bevor; eine Wartung wird eingetragen, wenn sie getan ist</translation>
    </message>
    <message>
        <source>%1: say which duty was done, or what was found</source>
        <translation>%1: angeben, welche Aufgabe erledigt oder was gefunden wurde</translation>
    </message>
    <message>
        <source>%1: no %3 minutes for &apos;%2&apos; before it is due, with the machine in its bay and somebody there</source>
        <translation>%1: keine %3 Minuten für „%2“ vor der Fälligkeit, in denen die Maschine an ihrem Platz und jemand da ist</translation>
    </message>
    <message>
        <source>%1: more was taken than the ledger has; recorded and flagged. Count it, or book what arrived</source>
        <translation>%1: mehr entnommen, als das Bestandsbuch hat; eingetragen und gekennzeichnet. Zählen oder buchen, was gekommen ist</translation>
    </message>
    <message>
        <source>%1: %2 is still to come; a counter is recorded when it is read</source>
        <translation>%1: %2 steht noch bevor; ein Zähler wird eingetragen, wenn er abgelesen ist</translation>
    </message>
    <message>
        <source>%1: a counter cannot show %2</source>
        <translation>%1: ein Zähler kann nicht %2 zeigen</translation>
    </message>
    <message>
        <source>%1: machines have counters of lanes, runs and minutes only</source>
        <translation>%1: Maschinen haben nur Zähler für Bahnen, Läufe und Minuten</translation>
    </message>
    <message>
        <source>%1: the counter runs backwards, from %3 to %2; if it was replaced, say so. Nothing was recorded</source>
        <translation>%1: der Zähler läuft rückwärts, von %3 auf %2; wurde er ersetzt, ist das anzugeben. Nichts wurde eingetragen</translation>
    </message>
    <message>
        <source>what the run &apos;%1&apos; did is missing from the meters, or counted though it was corrected</source>
        <translation>was der Lauf „%1“ getan hat, fehlt in den Zählern oder zählt, obwohl er berichtigt wurde</translation>
    </message>
    <message>
        <source>Services: %1</source>
        <translation>Wartungen: %1</translation>
    </message>
    <message>
        <source>had failed first: %1</source>
        <translation>vorher ausgefallen: %1</translation>
    </message>
    <message>
        <source>anyone</source>
        <translation>jeder</translation>
    </message>
    <message>
        <source>lead only</source>
        <translation>nur Leitung</translation>
    </message>
    <message>
        <source>licensed person only</source>
        <translation>nur Fachkraft</translation>
    </message>
    <message>
        <source>done in time</source>
        <translation>rechtzeitig erledigt</translation>
    </message>
    <message>
        <source>had failed</source>
        <translation>war ausgefallen</translation>
    </message>
    <message>
        <source>looked at</source>
        <translation>angesehen</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>zurückgezogen</translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) over</source>
        <translation>
            <numerusform>%n Bahn über</numerusform>
            <numerusform>%n Bahnen über</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) left</source>
        <translation>
            <numerusform>noch %n Bahn</numerusform>
            <numerusform>noch %n Bahnen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) over</source>
        <translation>
            <numerusform>%n Lauf über</numerusform>
            <numerusform>%n Läufe über</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n run(s) left</source>
        <translation>
            <numerusform>noch %n Lauf</numerusform>
            <numerusform>noch %n Läufe</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of work over</source>
        <translation>%1 Arbeit über</translation>
    </message>
    <message>
        <source>%1 of work left</source>
        <translation>noch %1 Arbeit</translation>
    </message>
    <message>
        <source>%1 over</source>
        <translation>%1 über</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>noch %1</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) over</source>
        <translation>
            <numerusform>%n Tag über</numerusform>
            <numerusform>%n Tage über</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) left</source>
        <translation>
            <numerusform>noch %n Tag</numerusform>
            <numerusform>noch %n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>never recorded</source>
        <translation>nie eingetragen</translation>
    </message>
    <message>
        <source>%1 at the earliest</source>
        <translation>frühestens %1</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>missing: %1</source>
        <translation>es fehlt: %1</translation>
    </message>
    <message>
        <source>%1 lanes, %2 runs, %3</source>
        <translation>%1 Bahnen, %2 Läufe, %3</translation>
    </message>
    <message>
        <source> (late: no room before)</source>
        <translation> (spät: vorher kein Platz)</translation>
    </message>
    <message>
        <source>Nothing is serviced yet: begin with the templates.</source>
        <translation>Noch wird nichts gewartet: mit den Vorlagen beginnen.</translation>
    </message>
    <message>
        <source>Overdue: %1.</source>
        <translation>Überfällig: %1.</translation>
    </message>
    <message>
        <source>Due today: %1.</source>
        <translation>Heute fällig: %1.</translation>
    </message>
    <message>
        <source>Nothing falls due in the time ahead.</source>
        <translation>In der Zeit voraus wird nichts fällig.</translation>
    </message>
    <message>
        <source>Nothing is due today. Next: %1, %2.</source>
        <translation>Heute ist nichts fällig. Als Nächstes: %1, %2.</translation>
    </message>
    <message>
        <source>When it fits</source>
        <translation>Wann es passt</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>takes %1: %2</source>
        <translation>nimmt %1: %2</translation>
    </message>
    <message>
        <source>life %2 of the list is no length above nothing</source>
        <translation>Lebensdauer %2 der Liste ist keine Länge über null</translation>
    </message>
    <message>
        <source>%2 failures are too few for a law of lives: it takes two that are not alike</source>
        <translation>%2 Ausfälle sind zu wenige für ein Lebensdauergesetz: Es braucht zwei, die nicht gleich sind</translation>
    </message>
    <message>
        <source>all %2 failures came at the same age: no law of lives follows from that</source>
        <translation>alle %2 Ausfälle kamen im selben Alter: daraus folgt kein Lebensdauergesetz</translation>
    </message>
    <message>
        <source>the lives are too long or too many to be reckoned with</source>
        <translation>die Lebensdauern sind zu lang oder zu viele, um mit ihnen zu rechnen</translation>
    </message>
    <message>
        <source>the costs of a replacement, planned and after a failure, must be above nothing</source>
        <translation>die Kosten eines Tauschs, geplant und nach einem Ausfall, müssen über null liegen</translation>
    </message>
    <message>
        <source>this law of lives has no mean: no best age follows from it</source>
        <translation>dieses Lebensdauergesetz hat keinen Mittelwert: daraus folgt kein bestes Alter</translation>
    </message>
    <message>
        <source>%1: %2 failures are known; a law of wear is shown after %3 more</source>
        <translation>%1: %2 Ausfälle sind bekannt; ein Verschleißgesetz erscheint nach %3 weiteren</translation>
    </message>
    <message>
        <source>%1: failures do not come with age, so replacing it early does not pay: wait until it fails</source>
        <translation>%1: Ausfälle kommen nicht mit dem Alter, früher zu tauschen lohnt nicht: bis zum Ausfall warten</translation>
    </message>
    <message>
        <source>%1: a failure costs no more than a planned replacement: wait until it fails</source>
        <translation>%1: Ein Ausfall kostet nicht mehr als ein geplanter Tausch: bis zum Ausfall warten</translation>
    </message>
    <message>
        <source>%1: too few failures to say that replacing it early pays; it may be better to wait until it fails</source>
        <translation>%1: zu wenige Ausfälle, um zu sagen, dass früheres Tauschen lohnt; womöglich wartet man besser bis zum Ausfall</translation>
    </message>
    <message>
        <source>%1: the interval that is set now must be above nothing</source>
        <translation>%1: Der jetzt eingestellte Abstand muss über null liegen</translation>
    </message>
    <message>
        <source>%1: %2 cannot be; volts are between 0 and 60</source>
        <translation>%1: %2 ist nicht möglich; Volt liegen zwischen 0 und 60</translation>
    </message>
    <message>
        <source>%1: a pack of %2 nominal cannot be</source>
        <translation>%1: einen Akku mit %2 Nennspannung gibt es nicht</translation>
    </message>
    <message>
        <source>%1: no table of volts is known for this chemistry, so limits cannot be judged; the maker&apos;s instructions decide</source>
        <translation>%1: Für diese Zellchemie ist keine Spannungstabelle bekannt, Grenzen lassen sich nicht beurteilen; die Anleitung des Herstellers entscheidet</translation>
    </message>
    <message>
        <source>%1: the table of volts for this chemistry is assumed; the maker&apos;s instructions decide</source>
        <translation>%1: Die Spannungstabelle dieser Zellchemie ist angenommen; die Anleitung des Herstellers entscheidet</translation>
    </message>
    <message>
        <source>%1: full at %2 is more than a pack of this chemistry reaches in that state (about %3)</source>
        <translation>%1: voll ab %2 ist mehr, als ein Akku dieser Zellchemie in diesem Zustand erreicht (etwa %3)</translation>
    </message>
    <message>
        <source>%1: fit to run at %2 is more than a pack of this chemistry reaches in that state (about %3)</source>
        <translation>%1: einsatzbereit ab %2 ist mehr, als ein Akku dieser Zellchemie in diesem Zustand erreicht (etwa %3)</translation>
    </message>
    <message>
        <source>%1: full at %2 is low: a pack of this chemistry with three quarters of its charge shows %3</source>
        <translation>%1: voll ab %2 ist niedrig: Ein zu drei Vierteln geladener Akku dieser Zellchemie zeigt %3</translation>
    </message>
    <message>
        <source>%1: the spare pack below %2 comes too late: a pack of this chemistry is empty at about %3</source>
        <translation>%1: Der Ersatzakku unter %2 kommt zu spät: Ein Akku dieser Zellchemie ist bei etwa %3 leer</translation>
    </message>
    <message>
        <source>%1: full at %2 is less than fit to run at %3</source>
        <translation>%1: voll ab %2 ist weniger als einsatzbereit ab %3</translation>
    </message>
    <message>
        <source>%1: the spare pack below %2 is more than fit to run at %3</source>
        <translation>%1: Ersatzakku unter %2 ist mehr als einsatzbereit ab %3</translation>
    </message>
    <message>
        <source>%1: the log has a charge of no lanes or without a day</source>
        <translation>%1: Das Protokoll hat eine Ladung ohne Bahnen oder ohne Tag</translation>
    </message>
    <message>
        <source>%1: %2 charges run down are too few for a trend; it takes %3</source>
        <translation>%1: %2 leergefahrene Ladungen sind zu wenige für einen Verlauf; es braucht %3</translation>
    </message>
    <message>
        <source>%1: a weight or distance of the lift cannot be</source>
        <translation>%1: Ein Gewicht oder Abstand beim Heben ist nicht möglich</translation>
    </message>
    <message>
        <source>%1 weighs %2 kg (%4 lb); one person should not lift more than %3 kg (%5 lb) in this way: two people or a lift</source>
        <translation>%1 wiegt %2 kg (%4 lb); eine Person sollte so nicht mehr als %3 kg (%5 lb) heben: zwei Personen oder eine Hebehilfe</translation>
    </message>
    <message>
        <source>%1 weighs %2 kg (%4 lb), more than two people should lift in this way (%3 kg or %5 lb each): use a lift</source>
        <translation>%1 wiegt %2 kg (%4 lb), mehr als zwei Personen so heben sollten (je %3 kg oder %5 lb): eine Hebehilfe benutzen</translation>
    </message>
    <message>
        <source>%1: fit to run at %2 is below an empty pack of this chemistry (about %3)</source>
        <translation>%1: einsatzbereit ab %2 liegt unter einem leeren Akku dieser Zellchemie (etwa %3)</translation>
    </message>
    <message>
        <source>%1: no loss of capacity can be seen that would leave too few lanes within ten years</source>
        <translation>%1: ein Verlust an Kapazität, der in zehn Jahren zu wenige Bahnen ließe, ist nicht zu erkennen</translation>
    </message>
    <message>
        <source>Rested volts</source>
        <translation>Ruhespannung</translation>
    </message>
    <message>
        <source>Waste in its tank</source>
        <translation>Schmutzwasser im Tank</translation>
    </message>
    <message>
        <source>Lanes left on the pack</source>
        <translation>Bahnen, für die der Akku noch reicht</translation>
    </message>
    <message>
        <source>%1 poured in</source>
        <translation>%1 eingefüllt</translation>
    </message>
    <message>
        <source>Cleaner poured in</source>
        <translation>Reiniger eingefüllt</translation>
    </message>
    <message>
        <source>Conditioner poured in</source>
        <translation>Bahnöl eingefüllt</translation>
    </message>
    <message>
        <source>Note for the next shift</source>
        <translation>Notiz für die nächste Schicht</translation>
    </message>
    <message>
        <source>V</source>
        <translation>V</translation>
    </message>
    <message>
        <source>lanes</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>mL</source>
        <translation>ml</translation>
    </message>
    <message>
        <source>fl oz</source>
        <translation>fl oz</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 to %2, lanes %3: %4</source>
        <translation>%1 bis %2, Bahnen %3: %4</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Notiz: %1</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>%1: about %2, %3</source>
        <translation>%1: etwa %2, %3</translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) new</source>
        <translation>
            <numerusform>%n Schritt neu</numerusform>
            <numerusform>%n Schritte neu</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) gone</source>
        <translation>
            <numerusform>%n Schritt weggefallen</numerusform>
            <numerusform>%n Schritte weggefallen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n step(s) at another time</source>
        <translation>
            <numerusform>%n Schritt zu anderer Zeit</numerusform>
            <numerusform>%n Schritte zu anderer Zeit</numerusform>
        </translation>
    </message>
    <message>
        <source>The plan has changed: %1. What is done stays done.</source>
        <translation>Der Plan ist ein anderer: %1. Was erledigt ist, bleibt erledigt.</translation>
    </message>
    <message>
        <source>level</source>
        <translation>Längsneigung</translation>
    </message>
    <message>
        <source>tilt</source>
        <translation>Querneigung</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>In words</source>
        <translation>In Worten</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Treatment</source>
        <translation>Behandlung</translation>
    </message>
    <message>
        <source>%1, version %2</source>
        <translation>%1, Version %2</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>Written down</source>
        <translation>Notiert</translation>
    </message>
    <message>
        <source> (poured %1)</source>
        <translation> (eingefüllt %1)</translation>
    </message>
    <message>
        <source>Lanes left on this charge</source>
        <translation>Bahnen mit dieser Ladung</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Duty</source>
        <translation>Pflicht</translation>
    </message>
    <message>
        <source>Meters</source>
        <translation>Zählerstände</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Cost besides parts</source>
        <translation>Kosten außer Teilen</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>Charge %1</translation>
    </message>
    <message>
        <source>%1 at today&apos;s price</source>
        <translation>%1 zum heutigen Preis</translation>
    </message>
    <message>
        <source>no price known</source>
        <translation>kein Preis bekannt</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Units, board 1 to 39</source>
        <translation>Einheiten, Leiste 1 bis 39</translation>
    </message>
    <message>
        <source>%1 at %2: %3 mm</source>
        <translation>%1 bei %2: %3 mm</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Movement</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Amounts</source>
        <translation>Mengen</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>poured %1 of conditioner and %2 of cleaner</source>
        <translation>%1 Bahnöl und %2 Reiniger eingefüllt</translation>
    </message>
    <message>
        <source>counter of runs: %1</source>
        <translation>Laufzähler: %1</translation>
    </message>
    <message>
        <source>counter of minutes: %1</source>
        <translation>Minutenzähler: %1</translation>
    </message>
    <message>
        <source>counter of lanes: %1</source>
        <translation>Bahnzähler: %1</translation>
    </message>
    <message>
        <source>a new counter</source>
        <translation>neuer Zähler</translation>
    </message>
    <message>
        <source>had run until it was done</source>
        <translation>war gelaufen, bis er leer war</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>measured: %1</source>
        <translation>gemessen: %1</translation>
    </message>
    <message>
        <source>order %1</source>
        <translation>Bestellung %1</translation>
    </message>
    <message>
        <source>replaces an entry that is not listed</source>
        <translation>ersetzt einen Eintrag, der nicht aufgeführt ist</translation>
    </message>
    <message>
        <source>replaces the entry of %1</source>
        <translation>ersetzt den Eintrag vom %1</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Füllung</translation>
    </message>
    <message>
        <source>Levels</source>
        <translation>Füllstände</translation>
    </message>
    <message>
        <source>Counter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>Incident</source>
        <translation>Vorfall</translation>
    </message>
    <message>
        <source>Hand-over</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>Tape reading</source>
        <translation>Filmmessung</translation>
    </message>
    <message>
        <source>Inspection</source>
        <translation>Vermessung</translation>
    </message>
    <message>
        <source>Stock count</source>
        <translation>Zählung</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Akku</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Item or product</source>
        <translation>Teil oder Mittel</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Zählerstand</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>%1 (does not stand)</source>
        <translation>%1 (gilt nicht)</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message numerus="yes">
        <source>%1 entry(s)</source>
        <translation>
            <numerusform>%1 Eintrag</numerusform>
            <numerusform>%1 Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 von %2 bis %3</translation>
    </message>
    <message numerus="yes">
        <source>%1 incident(s)</source>
        <translation>
            <numerusform>%1 Vorfall</numerusform>
            <numerusform>%1 Vorfälle</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 part(s) had failed</source>
        <translation>
            <numerusform>%1 Teil war ausgefallen</numerusform>
            <numerusform>%1 Teile waren ausgefallen</numerusform>
        </translation>
    </message>
    <message>
        <source>no incident and no failure</source>
        <translation>kein Vorfall und kein Ausfall</translation>
    </message>
    <message numerus="yes">
        <source>%1 run(s)</source>
        <translation>
            <numerusform>%1 Lauf</numerusform>
            <numerusform>%1 Läufe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 lane(s) treated</source>
        <translation>
            <numerusform>%1 Bahn behandelt</numerusform>
            <numerusform>%1 Bahnen behandelt</numerusform>
        </translation>
    </message>
    <message>
        <source>machines at work %1</source>
        <translation>Maschinen in Arbeit %1</translation>
    </message>
    <message numerus="yes">
        <source>%1 service(s)</source>
        <translation>
            <numerusform>%1 Wartung</numerusform>
            <numerusform>%1 Wartungen</numerusform>
        </translation>
    </message>
    <message>
        <source>service work %1</source>
        <translation>Wartungsarbeit %1</translation>
    </message>
    <message>
        <source>cost %1, of it parts %2</source>
        <translation>Kosten %1, davon Teile %2</translation>
    </message>
    <message numerus="yes">
        <source>%1 lane(s) treated by the machine</source>
        <translation>
            <numerusform>%1 Bahn von der Maschine behandelt</numerusform>
            <numerusform>%1 Bahnen von der Maschine behandelt</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 lanes between failures on average (%2 failed)</source>
        <translation>im Mittel %1 Bahnen zwischen Ausfällen (%2 ausgefallen)</translation>
    </message>
    <message>
        <source>nothing had failed</source>
        <translation>nichts war ausgefallen</translation>
    </message>
    <message>
        <source>service costs %1</source>
        <translation>Wartung kostet %1</translation>
    </message>
    <message>
        <source>service costs %1 per 1,000 lanes</source>
        <translation>Wartung kostet %1 je 1.000 Bahnen</translation>
    </message>
    <message>
        <source>parts %1</source>
        <translation>Teile %1</translation>
    </message>
    <message>
        <source>cushion brush</source>
        <translation>Auflagebürste</translation>
    </message>
    <message>
        <source>buffer brush</source>
        <translation>Verteilbürste</translation>
    </message>
    <message>
        <source>squeegee</source>
        <translation>Abzieher</translation>
    </message>
    <message>
        <source>cloth roll</source>
        <translation>Tuchrolle</translation>
    </message>
    <message>
        <source>filter</source>
        <translation>Filter</translation>
    </message>
    <message>
        <source>nozzles and lines</source>
        <translation>Düsen und Leitungen</translation>
    </message>
    <message>
        <source>wheels and belts</source>
        <translation>Räder und Riemen</translation>
    </message>
    <message>
        <source>charger</source>
        <translation>Ladegerät</translation>
    </message>
    <message>
        <source>approaches</source>
        <translation>Anläufe</translation>
    </message>
    <message>
        <source>gutters</source>
        <translation>Rinnen</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>inspect</source>
        <translation>prüfen</translation>
    </message>
    <message>
        <source>clean</source>
        <translation>reinigen</translation>
    </message>
    <message>
        <source>turn</source>
        <translation>wenden</translation>
    </message>
    <message>
        <source>replace</source>
        <translation>ersetzen</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leeren</translation>
    </message>
    <message>
        <source>calibrate</source>
        <translation>einstellen</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>hours of work</source>
        <translation>Arbeitsstunden</translation>
    </message>
    <message>
        <source>liquid through it</source>
        <translation>Flüssigkeit</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message numerus="yes">
        <source>%1 lane(s)</source>
        <translation>
            <numerusform>%1 Bahn</numerusform>
            <numerusform>%1 Bahnen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 day(s)</source>
        <translation>
            <numerusform>%1 Tag</numerusform>
            <numerusform>%1 Tage</numerusform>
        </translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>am %1</translation>
    </message>
    <message>
        <source>%1 %2 (%3 there)</source>
        <translation>%1 %2 (%3 da)</translation>
    </message>
    <message>
        <source>best replaced after %1 (from %2 on, no end is known)</source>
        <translation>am besten nach %1 getauscht (von %2 an, ein Ende ist nicht bekannt)</translation>
    </message>
    <message>
        <source>best replaced after %1 (%2 to %3)</source>
        <translation>am besten nach %1 getauscht (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1: half of them last %2 or longer. Type what a replacement costs, planned and after a failure: from that follows when it is best done.</source>
        <translation>%1: Die Hälfte hält %2 oder länger. Eingeben, was ein Tausch kostet, geplant und nach einem Ausfall: Daraus folgt, wann er am besten geschieht.</translation>
    </message>
    <message>
        <source>now it is after %1</source>
        <translation>jetzt nach %1</translation>
    </message>
    <message>
        <source>now it does not depend on that</source>
        <translation>jetzt hängt es davon nicht ab</translation>
    </message>
    <message>
        <source>%1: %2; %3.</source>
        <translation>%1: %2; %3.</translation>
    </message>
    <message>
        <source>%1: no replacement is recorded yet; how long it lasts is learned from the second one on.</source>
        <translation>%1: Noch ist kein Tausch eingetragen; wie lange es hält, lernt das Programm ab dem zweiten.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 of %3 known parts failed; when it is best replaced is told after %n more failure(s).</source>
        <translation>
            <numerusform>%1: %2 von %3 bekannten Teilen sind ausgefallen; wann am besten getauscht wird, steht nach %n weiterem Ausfall da.</numerusform>
            <numerusform>%1: %2 von %3 bekannten Teilen sind ausgefallen; wann am besten getauscht wird, steht nach %n weiteren Ausfällen da.</numerusform>
        </translation>
    </message>
    <message>
        <source>lead-acid, flooded</source>
        <translation>Blei, nass</translation>
    </message>
    <message>
        <source>lead-acid, AGM</source>
        <translation>Blei, AGM</translation>
    </message>
    <message>
        <source>lead-acid, gel</source>
        <translation>Blei, Gel</translation>
    </message>
    <message>
        <source>lithium iron phosphate</source>
        <translation>Lithium-Eisenphosphat</translation>
    </message>
    <message>
        <source>another chemistry</source>
        <translation>andere Chemie</translation>
    </message>
    <message>
        <source>just charged</source>
        <translation>frisch geladen</translation>
    </message>
    <message>
        <source>rested</source>
        <translation>ausgeruht</translation>
    </message>
    <message>
        <source>under load</source>
        <translation>unter Last</translation>
    </message>
    <message>
        <source>volts read</source>
        <translation>Volt abgelesen</translation>
    </message>
    <message>
        <source>put on the machine</source>
        <translation>auf die Maschine gesetzt</translation>
    </message>
    <message>
        <source>put on charge</source>
        <translation>ans Ladegerät gehängt</translation>
    </message>
    <message>
        <source>charged</source>
        <translation>geladen</translation>
    </message>
    <message>
        <source>on charge since %1</source>
        <translation>am Ladegerät seit %1</translation>
    </message>
    <message>
        <source>on the machine</source>
        <translation>auf der Maschine</translation>
    </message>
    <message>
        <source>beside the machine</source>
        <translation>neben der Maschine</translation>
    </message>
    <message>
        <source>; nobody wrote when it was charged</source>
        <translation>; niemand hat aufgeschrieben, wann er geladen wurde</translation>
    </message>
    <message numerus="yes">
        <source>%n lane(s) since it was charged</source>
        <translation>
            <numerusform>%n Bahn seit dem Laden</numerusform>
            <numerusform>%n Bahnen seit dem Laden</numerusform>
        </translation>
    </message>
    <message>
        <source>: %1 to %2 full</source>
        <translation>: zu %1 bis %2 voll</translation>
    </message>
    <message numerus="yes">
        <source>about %n lane(s) left</source>
        <translation>
            <numerusform>noch etwa %n Bahn</numerusform>
            <numerusform>noch etwa %n Bahnen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>tonight %n lane(s)</source>
        <translation>
            <numerusform>heute Abend %n Bahn</numerusform>
            <numerusform>heute Abend %n Bahnen</numerusform>
        </translation>
    </message>
    <message>
        <source>: read its rested volts to know whether it lasts</source>
        <translation>: die Ruhespannung ablesen, um zu wissen, ob er reicht</translation>
    </message>
    <message>
        <source>: it lasts (%1)</source>
        <translation>: er reicht (%1)</translation>
    </message>
    <message>
        <source>: it probably lasts (%1)</source>
        <translation>: er reicht wahrscheinlich (%1)</translation>
    </message>
    <message>
        <source>: it may not last (%1)</source>
        <translation>: er reicht vielleicht nicht (%1)</translation>
    </message>
    <message>
        <source>no charge is known yet: planning goes by the machine&apos;s setting</source>
        <translation>noch ist keine Ladung bekannt: geplant wird nach der Einstellung der Maschine</translation>
    </message>
    <message>
        <source>about %1 lanes a charge, in 19 of 20 cases at least %2</source>
        <translation>etwa %1 Bahnen je Ladung, in 19 von 20 Fällen mindestens %2</translation>
    </message>
    <message numerus="yes">
        <source> (%n charge(s)</source>
        <translation>
            <numerusform> (%n Ladung</numerusform>
            <numerusform> (%n Ladungen</numerusform>
        </translation>
    </message>
    <message>
        <source>, %1 of them cut short</source>
        <translation>, davon %1 vorzeitig beendet</translation>
    </message>
    <message>
        <source>%1 to %2: %3</source>
        <translation>%1 bis %2: %3</translation>
    </message>
    <message>
        <source> (then another one first)</source>
        <translation> (dann erst ein anderer)</translation>
    </message>
    <message>
        <source> (full %1 too late)</source>
        <translation> (%1 zu spät voll)</translation>
    </message>
    <message>
        <source>%1 fades: fewer than %2 lanes, as the busiest night took, about %3 (%4 to %5).</source>
        <translation>%1 lässt nach: weniger als %2 Bahnen, so viele wie der stärkste Abend brauchte, etwa im %3 (%4 bis %5).</translation>
    </message>
    <message>
        <source>No packs are kept yet: add one among the machine&apos;s items.</source>
        <translation>Noch sind keine Akkus angelegt: einen unter den Teilen der Maschine hinzufügen.</translation>
    </message>
    <message>
        <source>%1 may not last tonight: %2 for %3 lanes.</source>
        <translation>%1 reicht heute Abend vielleicht nicht: %2 für %3 Bahnen.</translation>
    </message>
    <message>
        <source>All packs last tonight, as far as is known; on charge now: %1.</source>
        <translation>Alle Akkus reichen heute Abend, soweit bekannt; jetzt am Ladegerät: %1.</translation>
    </message>
    <message>
        <source>All packs last tonight, as far as is known; none has to be charged now.</source>
        <translation>Alle Akkus reichen heute Abend, soweit bekannt; keiner muss jetzt geladen werden.</translation>
    </message>
    <message>
        <source>Look at tonight: who plays where, and what is to be run</source>
        <translation>Den Abend ansehen: wer wo spielt und was zu fahren ist</translation>
    </message>
    <message>
        <source>%1: read all levels</source>
        <translation>%1: alle Füllstände ablesen</translation>
    </message>
    <message>
        <source>%1: look over cloth, brushes and blades; nothing drips</source>
        <translation>%1: Tuch, Bürsten und Abzieher ansehen; nichts tropft</translation>
    </message>
    <message>
        <source>%1: waste into the marked container; fill up the tanks</source>
        <translation>%1: Schmutzwasser in den gekennzeichneten Behälter; Tanks auffüllen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no number; nothing was recorded. Leave the blank empty if it was not read</source>
        <translation>&apos;%1&apos; ist keine Zahl; nichts wurde erfasst. Das Feld leer lassen, wenn nicht abgelesen wurde</translation>
    </message>
    <message>
        <source>A pack gives 0 to %2 volts; nothing was recorded. Look at what was typed</source>
        <translation>Ein Akku gibt 0 bis %2 Volt; nichts wurde erfasst. Bitte die Eingabe ansehen</translation>
    </message>
    <message>
        <source>%1: between 0 and %2; nothing was recorded. Look at what was typed</source>
        <translation>%1: zwischen 0 und %2; nichts wurde erfasst. Bitte die Eingabe ansehen</translation>
    </message>
    <message>
        <source>A pack gives 0 to %2 lanes; nothing was recorded. Look at what was typed</source>
        <translation>Ein Akku reicht für 0 bis %2 Bahnen; nichts wurde erfasst. Bitte die Eingabe ansehen</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; is no date; write dates like %3, with commas between</source>
        <translation>%1: „%2“ ist kein Datum; Tage wie %3 schreiben, mit Kommas dazwischen</translation>
    </message>
    <message>
        <source>%1 has been recorded and stays, so that its history keeps its name; give it a longer interval, or retire the item</source>
        <translation>%1 wurde schon eingetragen und bleibt, damit die Geschichte den Namen behält; einen längeren Abstand geben oder das Teil ausmustern</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; is no date; write it like %3</source>
        <translation>%1: „%2“ ist kein Datum; so schreiben: %3</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; is no number of nothing or more</source>
        <translation>%1: „%2“ ist keine Zahl ab null</translation>
    </message>
    <message>
        <source>%1: say how much was done since then (%2); a good guess will do</source>
        <translation>%1: sagen, wie viel seither getan wurde (%2); eine gute Schätzung genügt</translation>
    </message>
    <message>
        <source>%1: say on which day it was last done</source>
        <translation>%1: sagen, an welchem Tag es zuletzt getan wurde</translation>
    </message>
    <message>
        <source>%1: is no pack, and has a pack&apos;s volts</source>
        <translation>%1: ist kein Akku und hat Voltwerte eines Akkus</translation>
    </message>
    <message>
        <source>there is no pack &apos;%1&apos;; nothing was recorded</source>
        <translation>es gibt keinen Akku „%1“; nichts wurde eingetragen</translation>
    </message>
    <message>
        <source>%1: %2 is still to come; a pack is recorded when it is handled</source>
        <translation>%1: %2 liegt noch vor uns; ein Akku wird eingetragen, wenn etwas mit ihm geschieht</translation>
    </message>
    <message>
        <source>%1: a reading needs the volts</source>
        <translation>%1: zu einer Ablesung gehören die Volt</translation>
    </message>
    <message>
        <source>the file &apos;%1&apos; has no name, or one that is too long; nothing was attached</source>
        <translation>die Datei &apos;%1&apos; hat keinen oder einen zu langen Namen; nichts wurde angehängt</translation>
    </message>
    <message>
        <source>%1 has %2 bytes; at most %3 can be attached. Nothing was attached</source>
        <translation>%1 hat %2 Bytes; höchstens %3 können angehängt werden. Nichts wurde angehängt</translation>
    </message>
    <message>
        <source>%1 is empty; nothing was attached</source>
        <translation>%1 ist leer; nichts wurde angehängt</translation>
    </message>
    <message>
        <source>%1 is no PNG, JPEG, WebP or PDF; nothing else can be attached. Nothing was attached</source>
        <translation>%1 ist weder PNG noch JPEG, WebP oder PDF; anderes kann nicht angehängt werden. Nichts wurde angehängt</translation>
    </message>
    <message>
        <source>the content of the attachment &apos;%1&apos; is not the one that was added</source>
        <translation>der Inhalt des Anhangs &apos;%1&apos; ist nicht der, der hinzugefügt wurde</translation>
    </message>
    <message>
        <source>%1 was not attached: files belong to a service or an incident that is recorded</source>
        <translation>%1 wurde nicht angehängt: Dateien gehören zu einer festgehaltenen Wartung oder einem Vorfall</translation>
    </message>
    <message>
        <source>%1 was not attached: its content is not in this database any more</source>
        <translation>%1 wurde nicht angehängt: Der Inhalt ist nicht mehr in dieser Datenbank</translation>
    </message>
    <message>
        <source>%1 cannot be read; nothing was attached</source>
        <translation>%1 ist nicht lesbar; nichts wurde angehängt</translation>
    </message>
    <message>
        <source>the attachment &apos;%1&apos; belongs to no service and no incident</source>
        <translation>der Anhang &apos;%1&apos; gehört zu keiner Wartung und keinem Vorfall</translation>
    </message>
    <message>
        <source>the content &apos;%1&apos; belongs to no attachment</source>
        <translation>der Inhalt &apos;%1&apos; gehört zu keinem Anhang</translation>
    </message>
    <message>
        <source>the incident &apos;%1&apos; follows up one that does not exist</source>
        <translation>der Vorfall &apos;%1&apos; antwortet auf einen, den es nicht gibt</translation>
    </message>
    <message>
        <source>On charge, one at a time</source>
        <translation>Am Ladegerät, einer nach dem anderen</translation>
    </message>
    <message>
        <source>%1 no longer falls due about %2.</source>
        <translation>%1 wird nicht mehr etwa am %2 fällig.</translation>
    </message>
    <message>
        <source>%1 falls due too, about %2.</source>
        <translation>%1 wird auch fällig, etwa am %2.</translation>
    </message>
    <message numerus="yes">
        <source>%1 falls due %n day(s) earlier (%2).</source>
        <translation>
            <numerusform>%1 wird %n Tag früher fällig (%2).</numerusform>
            <numerusform>%1 wird %n Tage früher fällig (%2).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 falls due %n day(s) later (%2).</source>
        <translation>
            <numerusform>%1 wird %n Tag später fällig (%2).</numerusform>
            <numerusform>%1 wird %n Tage später fällig (%2).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more duty(s) fall due on other days.</source>
        <translation>
            <numerusform>%n weitere Aufgabe wird an einem anderen Tag fällig.</numerusform>
            <numerusform>%n weitere Aufgaben werden an anderen Tagen fällig.</numerusform>
        </translation>
    </message>
    <message>
        <source>Waste emptied, measured</source>
        <translation>Schmutzwasser geleert, gemessen</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>followed up on %1: %2</source>
        <translation>geklärt am %1: %2</translation>
    </message>
    <message>
        <source>follows up: %1 of %2, %3</source>
        <translation>klärt: %1 vom %2, %3</translation>
    </message>
    <message>
        <source>follows up an entry that is not listed</source>
        <translation>klärt einen Eintrag, der nicht aufgeführt ist</translation>
    </message>
    <message>
        <source>the machine %1 must weigh more than nothing and at most 2,000 kg</source>
        <translation>die Maschine %1 muss mehr als nichts und höchstens 2.000 kg wiegen</translation>
    </message>
    <message>
        <source>the list of one supplier: name it by --supplier, one of: %2</source>
        <translation>die Liste eines Lieferanten: mit --supplier einen nennen von: %2</translation>
    </message>
    <message>
        <source>%1: charger off and unplugged; read the pack&apos;s volts</source>
        <translation>%1: Lader aus und abgesteckt; die Spannung des Akkus ablesen</translation>
    </message>
    <message>
        <source>%2 cannot be emptied; nothing was recorded. Look at what was typed</source>
        <translation>%2 lassen sich nicht leeren; nichts wurde festgehalten. Bitte die Eingabe ansehen</translation>
    </message>
    <message>
        <source>Charger off and unplugged; read the packs&apos; volts</source>
        <translation>Lader aus und abgesteckt; die Spannung der Akkus ablesen</translation>
    </message>
    <message>
        <source>emptied</source>
        <translation>geleert</translation>
    </message>
    <message>
        <source>%1: %2 is below %3; put the spare pack on before the run</source>
        <translation>%1: %2 liegt unter %3; vor dem Lauf den Ersatzakku anschließen</translation>
    </message>
    <message>
        <source>%1: %2 is below %3; charge the pack before the run</source>
        <translation>%1: %2 liegt unter %3; den Akku vor dem Lauf laden</translation>
    </message>
    <message>
        <source>%1: %2; the pack is fit to run from %3: charge it, or take another one</source>
        <translation>%1: %2; der Akku ist einsatzbereit ab %3: laden oder einen anderen nehmen</translation>
    </message>
    <message>
        <source>%1: %2 was not read in the state that the limit of %3 is for, so it says nothing about it</source>
        <translation>%1: %2 wurde nicht in dem Zustand gemessen, für den die Grenze von %3 gilt, und sagt darüber nichts</translation>
    </message>
    <message>
        <source>%1: empty the waste tank before the job at %T2 (lanes %4): it would overflow with a chance of %3 %</source>
        <translation>%1: den Schmutztank vor dem Auftrag um %T2 (Bahnen %4) leeren: er liefe mit einer Wahrscheinlichkeit von %3 % über</translation>
    </message>
    <message>
        <source>%1: %2 cannot be emptied; nothing was recorded. Look at what was typed</source>
        <translation>%1: %2 lassen sich nicht leeren; nichts wurde festgehalten. Bitte die Eingabe ansehen</translation>
    </message>
    <message>
        <source>%1: %2 were emptied, but the waste tank holds %3; kept and flagged, and nothing is learned from it. Look at what was typed</source>
        <translation>%1: %2 wurden geleert, aber der Schmutztank fasst %3; festgehalten und markiert, gelernt wird daraus nichts. Bitte die Eingabe ansehen</translation>
    </message>
    <message>
        <source>Waste tanks</source>
        <translation>Schmutztanks</translation>
    </message>
    <message>
        <source>full at %1 %2</source>
        <translation>voll ab %1 %2</translation>
    </message>
    <message>
        <source>fit to run at %1 %2</source>
        <translation>einsatzbereit ab %1 %2</translation>
    </message>
    <message>
        <source>spare pack on below %1 %2</source>
        <translation>Ersatzakku unter %1 %2</translation>
    </message>
    <message>
        <source>to be charged below %1 %2</source>
        <translation>laden unter %1 %2</translation>
    </message>
    <message>
        <source>the waste tank lasts, as far as is known</source>
        <translation>der Schmutztank reicht, soweit bekannt</translation>
    </message>
    <message>
        <source>the waste tank overflows with a chance of %1 %, unless it is emptied before</source>
        <translation>der Schmutztank läuft mit einer Wahrscheinlichkeit von %1 % über, wenn er vorher nicht geleert wird</translation>
    </message>
    <message>
        <source>about %1 of %2</source>
        <translation>etwa %1 von %2</translation>
    </message>
    <message>
        <source>; nothing emptied was measured yet, so what comes back is assumed</source>
        <translation>; noch nichts Geleertes wurde gemessen, der Rückfluss ist angenommen</translation>
    </message>
    <message numerus="yes">
        <source>; %1 % of the cleaner comes back (%n emptying(s) measured)</source>
        <translation>
            <numerusform>; %1 % des Reinigers kommen zurück (%n Leerung gemessen)</numerusform>
            <numerusform>; %1 % des Reinigers kommen zurück (%n Leerungen gemessen)</numerusform>
        </translation>
    </message>
    <message>
        <source>tonight: %1</source>
        <translation>heute Abend: %1</translation>
    </message>
    <message>
        <source>needed by %1, play on %2, lanes %3</source>
        <translation>gebraucht von %1, Spiel am %2, Bahn %3</translation>
    </message>
    <message>
        <source>&apos;%1&apos; is no date; write dates like %2, with commas between</source>
        <translation>„%1“ ist kein Datum; Tage wie %2 schreiben, mit Kommas dazwischen</translation>
    </message>
    <message>
        <source>%1 needs somebody who works there and signs records</source>
        <translation>%1 braucht jemanden, der dort arbeitet und Einträge zeichnet</translation>
    </message>
    <message>
        <source>say which lanes are out of service, or which machine</source>
        <translation>sagen, welche Bahnen außer Betrieb sind oder welche Maschine</translation>
    </message>
    <message>
        <source>%1: pack on charge, one at a time where packs share an outlet</source>
        <translation>%1: Akku ans Ladegerät, einer nach dem anderen, wenn sie sich eine Steckdose teilen</translation>
    </message>
</context>
</TS>
