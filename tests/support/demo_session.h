// A session on the demo centre, made once per program, as of a Thursday afternoon.
#pragma once

#include "app/demo/demo_centre.h"
#include "app/edits/session.h"
#include "core/base/clock.h"

#include <QTemporaryDir>

namespace support {

class DemoSession {
public:
    DemoSession() {
        const laneward::Location place{laneward::Location::Kind::Sqlite, m_directory.filePath("demo.laneward"), {}};
        const laneward::CentreFile demo = laneward::demoCentre(m_clock.now());
        auto store = laneward::Store::open(place, laneward::Access::Create);
        if (!store) qFatal("demo: %s", store.error().finding.rule.constData());
        const laneward::PersonId person = demo.season.centre.people.front().id;
        if (!(*store)->replaceAll(demo.season, demo.history, person, m_clock.now())) qFatal("demo: not stored");
        m_session = std::make_unique<laneward::Session>(*std::move(store), m_clock);
        m_session->setPerson(person);
    }
    laneward::Session& session() { return *m_session; }

private:
    QTemporaryDir m_directory;
    laneward::FixedClock m_clock{laneward::Instant{1'794'501'780}};  // 2026-11-12T16:43Z
    std::unique_ptr<laneward::Session> m_session;
};

}  // namespace support
