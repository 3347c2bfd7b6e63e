// The house view: where things stand, what keys and mouse do, what a screen reader hears, and that every colour can be read.
#include "app/widgets/house_view.h"
#include "tests/support/looks.h"
#include "tests/support/made_house.h"

#include <QAccessible>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

using namespace laneward;
using support::at;

class HouseViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void lanesRunFromLeftToRightInPairs();
    void lanesDoNotTurnRound();
    void timeRunsDown();
    void levelsFitTheirTime();
    void clocksThatChangeKeepTheirHours();
    void rowsKeepJobsApart();
    void everyBlockIsReachedByKeys();
    void enterMenuAndClickAreHeard();
    void aClickBesideAsksForTheMoment();
    void wheelAndKeysZoomAtThePointer();
    void selectionSurvivesNewData();
    void aScreenReaderHearsEveryBlock();
    void coloursCanBeRead_data();
    void coloursCanBeRead();
    void kindsDifferWithoutColour();
    void pictures();
};

namespace {

std::unique_ptr<HouseView> viewOf(HouseData data, QSize size = {1000, 620}) {
    auto view = std::make_unique<HouseView>();
    view->resize(size);
    view->show();
    view->setData(std::move(data), support::plainSpeech());
    return view;
}

int indexOf(const HouseView& view, const QString& key) {
    for (int i = 0; i < view.blockCount(); ++i) {
        if (view.block(i).key == key) return i;
    }
    return -1;
}

}  // namespace

void HouseViewTest::lanesRunFromLeftToRightInPairs() {
    const HouseLayout layout(support::madeHouse(), {}, 800);
    for (int lane = 1; lane < 24; ++lane) {
        const double gap = layout.laneLeft(lane + 1) - layout.laneLeft(lane) - layout.laneWidth();
        const double pairGap = layout.laneLeft(3) - layout.laneLeft(2) - layout.laneWidth();
        QVERIFY(gap > 0);
        if (lane % 2 == 1)
            QVERIFY2(gap < pairGap / 2, "a pair stands close");
        else
            QVERIFY(qAbs(gap - pairGap) < 1e-9);
        QCOMPARE(layout.laneAt(layout.laneLeft(lane) + 1), lane);
    }
    QVERIFY(layout.lastLane() <= HouseMetrics().width);
    QCOMPARE(layout.laneAt(0), 0);
}

void HouseViewTest::lanesDoNotTurnRound() {
    HouseMetrics metrics;
    metrics.mirrored = true;
    const HouseLayout layout(support::madeHouse(), metrics, 800);
    QVERIFY(layout.laneLeft(1) < layout.laneLeft(2));
    QVERIFY(layout.firstLane() < metrics.gutter);                      // the hours went to the right …
    QVERIFY(layout.lastLane() <= metrics.width - metrics.gutter + 1);  // … and have their room there
}

void HouseViewTest::timeRunsDown() {
    const HouseData data = support::madeHouse();
    const HouseLayout layout(data, {}, 960);
    QCOMPARE(layout.y(at(0)), 0.0);
    QCOMPARE(layout.y(at(720)), 480.0);
    QCOMPARE(layout.timeAt(480), at(720));
    const QRectF fours = layout.items()[1].rect;
    QVERIFY(qAbs(fours.top() - layout.y(at(810))) < 1);
    QVERIFY(qAbs(fours.height() - 180 / 1'440.0 * 960) < 1);
    QVERIFY(fours.left() >= layout.laneLeft(1) && fours.right() <= layout.laneLeft(12) + layout.laneWidth());
}

void HouseViewTest::levelsFitTheirTime() {
    QCOMPARE(dayHeightFor(HouseZoom::Evening, 600), 1'800.0);
    QCOMPARE(dayHeightFor(HouseZoom::Day, 600), 600.0);
    for (double height : {300.0, 620.0, 2'000.0}) {
        for (HouseZoom zoom : {HouseZoom::Evening, HouseZoom::Day, HouseZoom::Week, HouseZoom::Month, HouseZoom::Season})
            QCOMPARE(int(zoomOf(dayHeightFor(zoom, height), height)), int(zoom));
    }
}

void HouseViewTest::clocksThatChangeKeepTheirHours() {
    const Zone berlin = *Zone::load("Europe/Berlin");
    HouseData data;
    data.lanes = 2;
    data.zone = berlin;
    for (int day = 0; day < 2; ++day)
        data.days.push_back(berlin.toInstant({QDate(2026, 3, 28).addDays(day), QTime(0, 0)}));
    data.range = {data.days.front(), berlin.toInstant({QDate(2026, 3, 30), QTime(0, 0)})};
    const HouseLayout layout(data, {}, 300);
    QCOMPARE((data.range.end - data.range.begin).value, 47 * 3'600);
    for (const HouseLayout::Tick& tick : layout.ticks()) {
        const QTime wall = berlin.toLocal(tick.at).time;
        QVERIFY2(wall.hour() % 3 == 0 && wall.minute() == 0, qPrintable(wall.toString()));
    }
}

void HouseViewTest::rowsKeepJobsApart() {
    const HouseData data = support::madeHouse(24, 31);
    const HouseLayout layout(data, {}, 24);
    QVERIFY(layout.isRows());
    for (size_t i = 0; i < data.items.size(); ++i) {
        if (data.items[i].kind != HouseItem::Kind::Job) continue;
        QVERIFY(layout.items()[i].rect.height() >= 2);
        for (size_t j = i + 1; j < data.items.size(); ++j) {
            if (data.items[j].kind == HouseItem::Kind::Job) QVERIFY(!layout.items()[i].rect.intersects(layout.items()[j].rect));
        }
    }
}

void HouseViewTest::everyBlockIsReachedByKeys() {
    const auto view = viewOf(support::madeHouse());
    view->setFocus(Qt::TabFocusReason);
    QSet<int> seen;
    QTest::keyClick(view.get(), Qt::Key_Home);
    seen.insert(view->current());
    for (int i = 0; i < view->blockCount(); ++i) {
        QTest::keyClick(view.get(), Qt::Key_Down, Qt::ControlModifier);
        seen.insert(view->current());
    }
    QCOMPARE(int(seen.size()), view->blockCount());
    view->setCurrent(indexOf(*view, "event:seniors"));
    QTest::keyClick(view.get(), Qt::Key_Down);
    const QRectF next = view->block(view->current()).rect;
    QVERIFY(next.top() > view->block(indexOf(*view, "event:seniors")).rect.top());
    QTest::keyClick(view.get(), Qt::Key_Up);
    QCOMPARE(view->current(), indexOf(*view, "event:seniors"));
}

void HouseViewTest::enterMenuAndClickAreHeard() {
    const auto view = viewOf(support::madeHouse());
    view->scrollTo(at(520));
    QSignalSpy opened(view.get(), &BlockView::activated);
    QSignalSpy menu(view.get(), &BlockView::menuAsked);
    const int seniors = indexOf(*view, "event:seniors");
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, view->blockRect(seniors).center());
    QCOMPARE(view->current(), seniors);
    QTest::keyClick(view.get(), Qt::Key_Return);
    QTest::mouseDClick(view->viewport(), Qt::LeftButton, {}, view->blockRect(seniors).center());
    QCOMPARE(opened.count(), 2);
    QCOMPARE(opened.first().first().toInt(), seniors);
    QContextMenuEvent event(QContextMenuEvent::Keyboard, {}, {});
    QApplication::sendEvent(view->viewport(), &event);
    QCOMPARE(menu.count(), 1);
}

void HouseViewTest::aClickBesideAsksForTheMoment() {
    const auto view = viewOf(support::madeHouse());
    view->scrollTo(at(0));
    QSignalSpy moment(view.get(), &HouseView::momentChosen);
    const QPoint spot =
        view->toViewport(QRectF(view->layout().laneLeft(9) + 3, view->layout().y(at(120)), 1, 1)).center().toPoint();
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, spot);
    QCOMPARE(moment.count(), 1);
    QVERIFY(qAbs(moment.first().first().toLongLong() - at(120).seconds) < 120);
}

void HouseViewTest::wheelAndKeysZoomAtThePointer() {
    const auto view = viewOf(support::madeHouse(24, 7));
    view->setZoom(HouseZoom::Week);
    const double before = view->layout().dayHeight();
    QTest::keyClick(view.get(), Qt::Key_Plus);
    QVERIFY(view->layout().dayHeight() > before);
    QTest::keyClick(view.get(), Qt::Key_Minus);
    QVERIFY(qAbs(view->layout().dayHeight() - before) < 1e-6);
    view->setZoom(HouseZoom::Day);
    const QPointF spot(400, 300);
    const auto under = [&] {
        return view->layout().timeAt(spot.y() + view->layout().y(view->layout().timeAt(0)) -
                                     view->toViewport(QRectF(0, 0, 1, 1)).top());
    };
    const Instant held = under();
    QWheelEvent turn(spot, view->viewport()->mapToGlobal(spot), {}, {0, 120}, Qt::NoButton, Qt::ControlModifier,
                     Qt::NoScrollPhase, false);
    QApplication::sendEvent(view->viewport(), &turn);
    QVERIFY(view->layout().dayHeight() > dayHeightFor(HouseZoom::Day, 500));
    QVERIFY(qAbs((under() - held).value) < 400);
}

void HouseViewTest::selectionSurvivesNewData() {
    const auto view = viewOf(support::madeHouse());
    view->setCurrent(indexOf(*view, "event:fours"));
    HouseData data = support::madeHouse();
    data.items.erase(data.items.begin());
    view->setData(data, support::plainSpeech());
    QCOMPARE(view->currentKey(), QString("event:fours"));
    data.items.erase(data.items.begin());
    view->setData(data, support::plainSpeech());
    QCOMPARE(view->current(), -1);
}

void HouseViewTest::aScreenReaderHearsEveryBlock() {
    const auto view = viewOf(support::madeHouse());
    view->activateWindow();
    view->setFocus();
    QAccessibleInterface* list = QAccessible::queryAccessibleInterface(view.get());
    QVERIFY(list);
    QCOMPARE(list->role(), QAccessible::List);
    QCOMPARE(list->childCount(), view->blockCount());
    const int fours = indexOf(*view, "event:fours");
    QAccessibleInterface* item = list->child(fours);
    QCOMPARE(item->text(QAccessible::Name), QString("Lanes 1-12, Thursday Fours"));
    QCOMPARE(item->role(), QAccessible::ListItem);
    QCOMPARE(list->indexOfChild(item), fours);
    QVERIFY(!item->rect().isEmpty());
    QSignalSpy opened(view.get(), &BlockView::activated);
    item->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    QCOMPARE(opened.count(), 1);
    QVERIFY(item->state().selected);
    view->setData(support::madeHouse(2), support::plainSpeech());
    QVERIFY2(!list->child(view->blockCount()), "no child beyond the last block");
}

void HouseViewTest::coloursCanBeRead_data() {
    QTest::addColumn<QPalette>("palette");
    QTest::newRow("light") << support::lightPalette();
    QTest::newRow("dark") << support::darkPalette();
    QTest::newRow("high contrast") << support::contrastPalette();
    QTest::newRow("pale highlight") << support::paletteOf("#ffffff", "#ffffff", "#404040", "#dff0ff", "#000000");
    QTest::newRow("grey") << support::paletteOf("#808080", "#8a8a8a", "#000000", "#909090", "#ffffff");
}

void HouseViewTest::coloursCanBeRead() {
    QFETCH(QPalette, palette);
    const Shades shades = shadesOf(palette);
    for (int kind = 0; kind <= int(EventKind::Other); ++kind) {
        const QColor fill = shades.event(EventKind(kind));
        QVERIFY(contrast(shades.text, fill) >= textContrast);
        QVERIFY(contrast(shades.quiet, fill) >= textContrast);
        QVERIFY(contrast(shades.edge, fill) >= markContrast);
        QVERIFY(contrast(shades.job, fill) >= markContrast);
    }
    for (const QColor& words : {shades.text, shades.quiet, shades.now, shades.bad})
        QVERIFY(contrast(words, shades.base) >= textContrast);
    QVERIFY(contrast(shades.onJob, shades.job) >= textContrast);
    QVERIFY(contrast(shades.job, shades.base) >= markContrast);
    QVERIFY(contrast(shades.focus, shades.base) >= markContrast);
}

void HouseViewTest::kindsDifferWithoutColour() {
    // Painted in grey, the three kinds and the six states are nine different pictures.
    HouseInk ink;
    ink.shades = shadesOf(support::lightPalette());
    ink.now = at(10);
    const HouseLayout::Placed place{QRectF(10, 10, 120, 30), {QRectF(10, 10, 120, 30)}};
    const auto painted = [&](Treatment treatment, JobState state) {
        QImage image(140, 60, QImage::Format_Grayscale8);
        image.fill(Qt::white);
        QPainter painter(&image);
        HouseItem item = support::bar("job:x", 0, LaneSet::range(1, 6), treatment, state);
        item.late.clear();
        HousePainter(painter, ink).item(item, place, itemText(item, place.rect, ink), Look::Plain);
        return image;
    };
    QList<QImage> all;
    for (Treatment treatment : allTreatments) {
        for (JobState state :
             {JobState::Proposed, JobState::Confirmed, JobState::UnderWay, JobState::Done, JobState::CutShort, JobState::Dropped})
            all << painted(treatment, state);
    }
    for (qsizetype i = 0; i < all.size(); ++i) {
        for (qsizetype j = i + 1; j < all.size(); ++j)
            QVERIFY2(all[i] != all[j], qPrintable(QString("%1 and %2 look alike").arg(i).arg(j)));
    }
}

void HouseViewTest::pictures() {
    const QList<std::pair<QString, QPalette>> looks{
        {"light", support::lightPalette()}, {"dark", support::darkPalette()}, {"contrast", support::contrastPalette()}};
    for (const auto& [name, palette] : looks) {
        const auto view = viewOf(support::madeHouse(), {1100, 700});
        view->setPalette(palette);
        view->scrollTo(at(530));
        view->setCurrent(indexOf(*view, "event:fours"));
        QVERIFY(support::picture(*view, "house_marks_" + name));
    }
    const auto view = viewOf(support::madeHouse(), {1100, 700});
    view->setLayoutDirection(Qt::RightToLeft);
    view->scrollTo(at(530));
    QVERIFY(support::picture(*view, "house_marks_rtl"));
    const auto month = viewOf(support::madeHouse(24, 31), {1100, 700});
    month->setZoom(HouseZoom::Month);
    QVERIFY(support::picture(*month, "house_marks_month"));
}

QTEST_MAIN(HouseViewTest)
#include "tst_house_view.moc"
