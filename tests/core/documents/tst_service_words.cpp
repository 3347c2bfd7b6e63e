// What falls due in words, and the templates that a centre begins with.
#include "core/documents/cautions.h"
#include "core/documents/service_templates.h"
#include "core/documents/service_words.h"

#include <QJsonArray>
#include <QTest>

#include <algorithm>
#include <set>

using namespace laneward;

namespace {

const QDate today{2026, 11, 12};

Speech plain() { return {QLocale::c(), *Zone::load("Europe/London"), UnitSystem::Metric}; }

DueRange dueOn(int early, int likely, int late, MeterKind by, std::int64_t left) {
    DueRange due;
    due.early = today.addDays(early);
    due.likely = today.addDays(likely);
    due.late = today.addDays(late);
    due.by = by;
    due.left = left;
    return due;
}

SeasonState house() {
    SeasonState season;
    season.centre.facts.name = "Test House";
    Machine machine;
    machine.id = {"m"};
    machine.name = "Egret";
    season.centre.machines = {machine};
    season.supplies = {Supply{{"blade"}, "Blade", SupplyKind::Part}};
    season.items =
        templatesFor(machine, [](const QString& word) { return word; }, {{ItemKind::Squeegee, {{"blade"}, Amount{2}}}});
    return season;
}

ServiceOutlook outlookOf(const std::vector<std::pair<const char*, DueRange>>& duties) {
    ServiceOutlook outlook;
    outlook.today = today;
    for (const auto& [duty, due] : duties) {
        const QString id = QString::fromLatin1(duty);
        outlook.due.push_back({{id.left(id.lastIndexOf('-'))}, {id}, {"m"}, due, {}});
    }
    return outlook;
}

}  // namespace

class ServiceWordsTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void templatesAreSound();
    void everyCautionOfATemplateIsKnown();
    void approachesTakeTheirOwnCleanerOnly();
    void partsGoToReplacements();
    void whatIsLeft_data();
    void whatIsLeft();
    void whenItIsDue();
    void theHeadlineSaysWhatMatters();
    void theListHoldsWhatIsDueBy();
    void jsonHasItsKeys();
    void totalsAddUp();
};

void ServiceWordsTest::templatesAreSound() {
    std::vector<ServiceItem> items = house().items;
    for (const ServiceItem& item : templatesForCentre([](const QString& word) { return word; })) {
        QVERIFY(item.machine.isEmpty());
        items.push_back(item);
    }
    std::set<QString> ids;
    std::set<ItemKind> kinds;
    for (const ServiceItem& item : items) {
        QVERIFY2(faultsOf(item, "EUR").empty(), qPrintable(item.id.value));
        QVERIFY(ids.insert(item.id.value).second);
        QVERIFY2(item.note.contains("no source"), qPrintable(item.note));
        kinds.insert(item.kind);
        for (const Duty& duty : item.duties) {
            QVERIFY2(ids.insert(duty.id.value).second, qPrintable(duty.id.value));
            QVERIFY2(!duty.steps.empty() && duty.minutes > 0, qPrintable(duty.name));
        }
    }
    QCOMPARE(kinds.size(), size_t(12));  // all but 'other'
}

void ServiceWordsTest::everyCautionOfATemplateIsKnown() {
    for (const ServiceItem& item : house().items) {
        for (const Duty& duty : item.duties) {
            QVERIFY2(!duty.cautions.empty(), qPrintable(duty.name));
            for (const QByteArray& caution : duty.cautions)
                QVERIFY2(*cautionOf(caution).source != 0, caution.constData());
            // A machine that is opened is switched off first; only a pack that is taken out is not run.
            if (duty.opensUp && item.kind != ItemKind::Pack)
                QVERIFY2(duty.steps.front().contains("Switch the machine off"), qPrintable(duty.name));
        }
    }
}

void ServiceWordsTest::approachesTakeTheirOwnCleanerOnly() {
    for (const ServiceItem& item : templatesForCentre([](const QString& word) { return word; })) {
        if (item.kind != ItemKind::Approach) continue;
        const auto cleaning =
            std::find_if(item.duties.begin(), item.duties.end(), [](const Duty& duty) { return duty.kind == DutyKind::Clean; });
        QVERIFY(cleaning != item.duties.end());
        const auto only = [](const QString& step) { return step.contains("approach cleaner only"); };
        QVERIFY(std::any_of(cleaning->steps.begin(), cleaning->steps.end(), only));
    }
}

void ServiceWordsTest::partsGoToReplacements() {
    int taking = 0;
    for (const ServiceItem& item : house().items) {
        for (const Duty& duty : item.duties) {
            if (duty.parts.empty()) continue;
            ++taking;
            QCOMPARE(duty.kind, DutyKind::Replace);
            QCOMPARE(item.kind, ItemKind::Squeegee);
            QCOMPARE(duty.parts.front().amount, Amount{2});
        }
    }
    QCOMPARE(taking, 1);
}

void ServiceWordsTest::whatIsLeft_data() {
    QTest::addColumn<int>("by");
    QTest::addColumn<qint64>("left");
    QTest::addColumn<QString>("said");
    QTest::newRow("lanes") << int(MeterKind::Lanes) << qint64{120} << "120 lane(s) left";
    QTest::newRow("lanes over") << int(MeterKind::Lanes) << qint64{-1} << "1 lane(s) over";
    QTest::newRow("runs") << int(MeterKind::Runs) << qint64{7} << "7 run(s) left";
    QTest::newRow("work") << int(MeterKind::Minutes) << qint64{90} << "1 h 30 min of work left";
    QTest::newRow("volume over") << int(MeterKind::Volume) << qint64{-2'500'000} << "2.5 L over";
    QTest::newRow("days") << int(MeterKind::Days) << qint64{0} << "0 day(s) left";
    QTest::newRow("days over") << int(MeterKind::Days) << qint64{-4} << "4 day(s) over";
}

void ServiceWordsTest::whatIsLeft() {
    QFETCH(int, by);
    QFETCH(qint64, left);
    QFETCH(QString, said);
    QCOMPARE(leftText(dueOn(0, 0, 0, MeterKind(by), left), plain()), said);
}

void ServiceWordsTest::whenItIsDue() {
    QCOMPARE(dueText(dueOn(0, 0, 0, MeterKind::Days, -4), today, plain()), QString("overdue"));
    QCOMPARE(dueText(dueOn(0, 0, 0, MeterKind::Days, 0), today, plain()), QString("today"));
    QCOMPARE(dueText(dueOn(5, 5, 5, MeterKind::Days, 5), today, plain()), QString("Tue 2026-11-17"));
    QCOMPARE(dueText(dueOn(2, 4, 7, MeterKind::Lanes, 99), today, plain()),
             QString("Mon 2026-11-16 (Sat 2026-11-14 to Thu 2026-11-19)"));
    DueRange far = dueOn(2, 4, 7, MeterKind::Lanes, 99);
    far.late.reset();
    QCOMPARE(dueText(far, today, plain()), QString("Mon 2026-11-16 (Sat 2026-11-14 to later)"));
    far.likely.reset();
    QCOMPARE(dueText(far, today, plain()), QString("Sat 2026-11-14 at the earliest"));
    far.early.reset();
    QCOMPARE(dueText(far, today, plain()), QString("later"));
    far.neverDone = true;
    QCOMPARE(dueText(far, today, plain()), QString("never recorded"));
}

void ServiceWordsTest::theHeadlineSaysWhatMatters() {
    const SeasonState season = house();
    const auto said = [&](const std::vector<std::pair<const char*, DueRange>>& duties) {
        return serviceHeadline(outlookOf(duties), season, plain());
    };
    QCOMPARE(said({}), QString("Nothing is serviced yet: begin with the templates."));
    QCOMPARE(said({{"m-filter-clean", dueOn(3, 3, 3, MeterKind::Days, 3)}}),
             QString("Nothing is due today. Next: Egret: Clean the filters, Sun 2026-11-15."));
    QCOMPARE(said({{"m-pack-inspect", dueOn(0, 0, 0, MeterKind::Days, -2)},
                   {"m-squeegee-turn", dueOn(0, 0, 1, MeterKind::Lanes, 6)},
                   {"m-filter-clean", dueOn(3, 3, 3, MeterKind::Days, 3)}}),
             QString("Overdue: Egret: Inspect the pack. Due today: Egret: Turn the squeegee blades."));
    DueRange far = dueOn(0, 0, 0, MeterKind::Lanes, 5'000);
    far.early = far.likely = far.late = std::nullopt;
    QCOMPARE(said({{"m-filter-clean", far}}), QString("Nothing falls due in the time ahead."));
}

void ServiceWordsTest::theListHoldsWhatIsDueBy() {
    const ServiceOutlook outlook = outlookOf(
        {{"m-pack-inspect", dueOn(0, 0, 0, MeterKind::Days, -2)}, {"m-filter-clean", dueOn(3, 3, 3, MeterKind::Days, 3)}});
    QCOMPARE(dueBy(outlook, today).size(), size_t(1));
    QCOMPARE(dueBy(outlook, today.addDays(2)).size(), size_t(1));
    QCOMPARE(dueBy(outlook, today.addDays(3)).size(), size_t(2));
}

void ServiceWordsTest::jsonHasItsKeys() {
    const SeasonState season = house();
    ServiceOutlook outlook = outlookOf({{"m-squeegee-replace", dueOn(2, 4, 7, MeterKind::Lanes, 99)}});
    outlook.due.front().missing = {{{"blade"}, Amount{1}}};
    PackOutlook packs;
    packs.packs = {{{{"m-pack"}, {"m"}, true, false, {}, 12, {}, {}, {}, 0, {}}, 3, 1, 38.5, 30, {}, 26.5, 20, 0.25}};
    packs.turns = {{{"m-pack"}, {Instant{0}, Instant{3'600}}, true, minutes(5)}};
    const ServiceList list{outlook, season, today.addDays(30), packs};
    const QJsonObject duty = serviceJson(list, plain())["duties"].toArray().first().toObject();
    QCOMPARE(duty.keys(), (QStringList{"by", "due_early", "due_late", "due_likely", "duty", "item", "item_name", "kind", "left",
                                       "machine", "minutes", "missing", "name", "never_done", "skill", "used_permille"}));
    QCOMPARE(duty["missing"].toArray().first()["amount_pieces"].toInt(), 1);
    QVERIFY(serviceText(list, plain()).contains("missing: Blade 1"));
    QVERIFY(serviceCsv(list).contains("Replace the squeegee blades"));
    const QJsonObject pack = serviceJson(list, plain())["packs"].toArray().first().toObject();
    QCOMPARE(pack["usual_lanes_permille"].toInt(), 38'500);
    QCOMPARE(pack["finishes_permille"].toInt(), 250);
    QVERIFY(pack["since"].isNull() && pack["volts_mv"].isNull() && pack["on_machine"].toBool());
    QCOMPARE(serviceJson(list, plain())["charging"].toArray().first().toObject()["late_s"].toInt(), 300);
    for (const char* said : {"nobody wrote when it was charged", "tonight 20 lane(s): it may not last (25 %)", "at least 30",
                             "1 of them cut short", "full 5 min too late"})
        QVERIFY2(serviceText(list, plain()).simplified().contains(said), qPrintable(serviceText(list, plain())));
}

void ServiceWordsTest::totalsAddUp() {
    SeasonState season = house();
    season.centre.facts.settings.currency = "EUR";
    std::vector<ServiceRecord> records(2);
    records[0].item = {"m-squeegee"};
    records[0].duty = {"m-squeegee-replace"};
    records[0].minutes = 20;
    records[0].parts = {{{"blade"}, Amount{2}, {}}};
    records[1] = records[0];
    records[1].result = ServiceResult::Failed;
    records[1].cost = {1'250, "EUR"};
    const QJsonObject totals = historyJson(records, season, plain())["totals"].toObject();
    QCOMPARE(totals["records"].toInt(), 2);
    QCOMPARE(totals["failures"].toInt(), 1);
    QCOMPARE(totals["minutes"].toInt(), 40);
    QCOMPARE(totals["cost_minor"].toInt(), 1'250);
    QCOMPARE(totals["parts"].toArray().first()["amount_pieces"].toInt(), 4);
    QVERIFY(historyText(records, season, plain()).contains("Services: 2, had failed first: 1, 40 min, 12.50 EUR, Blade 4"));
}

QTEST_MAIN(ServiceWordsTest)
#include "tst_service_words.moc"
