// The evening of evening.h with supplies, a supplier and a ledger whose numbers are known.
//
// Fenlight: 10 L sealed and 2 L open. Sluice: 20 L. Cloth roll: 100 m. Squeegee blade set: none, so that one has to be ordered.
#pragma once

#include "tests/support/evening_session.h"

namespace support {

inline laneward::Movement stockMove(const QString& id, laneward::MovementKind kind, const laneward::SupplyId& supply,
                                    std::pair<laneward::Place::Kind, laneward::Place::Kind> way, std::int64_t amount) {
    using namespace laneward;
    Movement movement;
    movement.id = {id};
    movement.kind = kind;
    movement.at = eveningNow - hours(24 * 20);
    movement.person = {"ada"};
    movement.recordedAt = movement.at;
    movement.entries = {{{supply, {way.first, {}, 0}, {}, {}}, Amount{-amount}},
                        {{supply, {way.second, {}, 0}, {}, {}}, Amount{amount}}};
    return movement;
}

inline std::vector<laneward::Movement> knownMovements() {
    using namespace laneward;
    using Kind = Place::Kind;
    const std::pair in{Kind::Supplier, Kind::Shelf};
    std::vector<Movement> all{stockMove("m-fen", MovementKind::Received, {"fen"}, in, 15'000'000),
                              stockMove("m-fen-open", MovementKind::Opened, {"fen"}, {Kind::Shelf, Kind::Open}, 5'000'000),
                              stockMove("m-fen-used", MovementKind::Used, {"fen"}, {Kind::Open, Kind::Lane}, 3'000'000),
                              stockMove("m-sluice", MovementKind::Received, {"sluice"}, in, 20'000'000),
                              stockMove("m-cloth", MovementKind::Received, {"cloth"}, in, 100'000)};
    for (size_t n = 0; n < all.size(); ++n) {
        all[n].at = all[n].at + minutes(std::int64_t(n));
        all[n].recordedAt = all[n].at;
    }
    return all;
}

inline laneward::SeasonState stockedSeason() {
    using namespace laneward;
    SeasonState season = eveningSeason();
    const auto supply = [&](const char* id, const char* name, SupplyKind kind, std::int64_t container) {
        Supply made;
        made.id = {id};
        made.name = name;
        made.kind = kind;
        made.container = {container};
        made.basis = kind == SupplyKind::Part    ? UseBasis::WhenServiced
                     : kind == SupplyKind::Cloth ? UseBasis::PerLaneCleaned
                                                 : UseBasis::Machine;
        if (kind == SupplyKind::Cloth) made.usualUse = {300};
        return made;
    };
    season.supplies = {supply("blades", "Squeegee blade set", SupplyKind::Part, 1),
                       supply("cloth", "Cloth roll", SupplyKind::Cloth, 50'000),
                       supply("fen", "Fenlight", SupplyKind::Conditioner, 5'000'000),
                       supply("sluice", "Sluice", SupplyKind::Cleaner, 20'000'000)};
    season.supplies[3].waterParts = 4;
    Supplier supplier;
    supplier.id = {"teasel"};
    supplier.name = "Teasel Stores";
    supplier.address = "1 Invented Way";
    supplier.freight = {1'200, "EUR"};
    supplier.freeFreightFrom = Money{50'000, "EUR"};
    supplier.minimumOrder = {0, "EUR"};
    season.suppliers = {supplier};
    const auto offer = [&](const char* id, const char* of, std::int64_t pack, std::int64_t each) {
        return Offer{{id}, {"teasel"}, {of}, QString("T-") + of, {pack}, {{1, {each, "EUR"}}}, false, 0};
    };
    season.offers = {offer("o-blades", "blades", 1, 6'120), offer("o-cloth", "cloth", 50'000, 3'100),
                     offer("o-fen", "fen", 5'000'000, 15'900), offer("o-sluice", "sluice", 20'000'000, 14'250)};
    return season;
}

/// A centre file with it.
class StockedHouse {
public:
    explicit StockedHouse(std::vector<laneward::Movement> movements = knownMovements(),
                          const laneward::SeasonState& season = stockedSeason()) {
        using namespace laneward;
        const Result<std::unique_ptr<Store>> store = Store::open(location(), Access::Create);
        if (!store) qFatal("stocked house: %s", store.error().finding.rule.constData());
        HistorySlice history;
        history.movements = std::move(movements);
        const Outcome filled = (*store)->replaceAll(season, history, {"ada"}, eveningNow);
        if (!filled)
            qFatal("stocked house: %s %s", filled.error().finding.rule.constData(), qPrintable(filled.error().finding.subject));
    }

    laneward::Location location() const {
        return {laneward::Location::Kind::Sqlite, m_directory.filePath("stocked.laneward"), {}};
    }
    std::unique_ptr<laneward::Session> session() const {
        auto store = laneward::Store::open(location(), laneward::Access::ReadWrite);
        if (!store) qFatal("stocked house: %s", store.error().finding.rule.constData());
        auto session = std::make_unique<laneward::Session>(*std::move(store), m_clock);
        session->setPerson({"ada"});
        return session;
    }

private:
    QTemporaryDir m_directory;
    laneward::FixedClock m_clock{eveningNow};
};

}  // namespace support
