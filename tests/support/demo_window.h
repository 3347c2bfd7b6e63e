// The demo centre in its window of 1280 x 720, on a Thursday afternoon, with somebody at the desk.
#pragma once

#include "app/demo/demo_centre.h"
#include "app/window/centre_making.h"
#include "app/window/main_window.h"

#include <QTemporaryDir>
#include <QTest>

namespace support {

// Thursday 2026-11-12, 15:00 in London: both machines still have the day's work before them.
inline constexpr laneward::Instant afternoon{1'794'495'600};

struct DemoWindow {
    QTemporaryDir folder;
    laneward::FixedClock clock{afternoon};
    laneward::MainWindow window{clock};

    DemoWindow() {
        using namespace laneward;
        const Location place{Location::Kind::Sqlite, folder.filePath("demo.laneward"), {}};
        if (!makeCentre(place, demoCentre(clock.now()), clock.now()) || !window.openCentre(place)) qFatal("no demo");
        window.resize(1280, 720);
        window.show();
        if (!QTest::qWaitForWindowExposed(&window)) qFatal("the window is not shown");
        session().setPerson({"nell"});
    }
    laneward::Session& session() { return window.workspace()->session(); }
};

}  // namespace support
