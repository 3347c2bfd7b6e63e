#include "app/demo/demo_parts.h"

#include <span>

namespace laneward::demo {

namespace {

struct Row {
    Direction direction;
    int firstBoard;
    int lastBoard;
    int laps;
    int fromFeet;
    int toFeet;
    int slot = 0;
};

struct Recipe {
    const char* id;
    const char* name;
    int endFeet;
    int dose;  ///< microlitres per board and lap
    const char* note;
    std::span<const Row> rows;
};

constexpr Direction out = Direction::Out;
constexpr Direction back = Direction::Back;

constexpr Row avocet[] = {{out, 2, 38, 2, 0, 6},    {out, 6, 34, 3, 6, 18},  {out, 9, 31, 3, 18, 28}, {out, 4, 36, 1, 28, 39},
                          {back, 3, 37, 2, 20, 35}, {back, 8, 32, 3, 8, 20}, {back, 11, 29, 2, 0, 8}};
constexpr Row bittern[] = {{out, 2, 38, 1, 0, 8},     {out, 8, 32, 4, 8, 16},   {out, 11, 29, 4, 16, 24}, {out, 2, 38, 1, 24, 38},
                           {back, 12, 28, 4, 18, 30}, {back, 10, 30, 3, 9, 18}, {back, 6, 34, 1, 0, 9}};
constexpr Row curlew[] = {{out, 2, 38, 2, 0, 9},    {out, 7, 33, 3, 9, 20},   {out, 10, 30, 3, 20, 31}, {out, 2, 38, 1, 31, 41},
                          {back, 9, 31, 3, 20, 33}, {back, 12, 28, 3, 7, 20}, {back, 13, 27, 1, 0, 7}};
constexpr Row heron[] = {{out, 2, 38, 3, 0, 12},     {out, 4, 36, 3, 12, 26},  {out, 8, 32, 2, 26, 36, 1},
                         {out, 2, 38, 1, 36, 45, 1}, {back, 5, 35, 3, 24, 39}, {back, 9, 31, 2, 10, 24},
                         {back, 12, 28, 1, 0, 10}};
constexpr Row nightjar[] = {{out, 2, 38, 2, 0, 10},     {out, 6, 34, 3, 10, 22},  {out, 9, 31, 3, 22, 34, 1},
                            {out, 2, 38, 1, 34, 43, 1}, {back, 7, 33, 3, 22, 37}, {back, 11, 29, 3, 8, 22}};
constexpr Row teal[] = {{out, 2, 38, 2, 0, 10},  {out, 7, 33, 3, 10, 20},  {out, 10, 30, 3, 20, 28},
                        {out, 2, 38, 1, 28, 34}, {back, 9, 31, 3, 12, 26}, {back, 12, 28, 3, 0, 12}};
constexpr Row wren[] = {{out, 2, 38, 1, 0, 8},   {out, 9, 31, 4, 8, 16},    {out, 11, 29, 4, 16, 23},
                        {out, 2, 38, 1, 23, 36}, {back, 12, 28, 3, 16, 29}, {back, 10, 30, 3, 0, 16}};

constexpr Recipe recipes[] = {
    {"avocet-39", "Avocet 39", 39, 45, "Even, for experienced leagues.", avocet},
    {"bittern-38", "Bittern 38", 38, 45, "", bittern},
    {"curlew-41", "Curlew 41", 41, 50, "", curlew},
    {"heron-45", "Heron 45", 45, 50, "Tournament pattern; needs both conditioners.", heron},
    {"nightjar-43", "Nightjar 43", 43, 50, "Scratch league; needs both conditioners.", nightjar},
    {"teal-34", "Teal 34", 34, 40, "Short, for practice and juniors.", teal},
    {"wren-36", "Wren 36", 36, 45, "The house pattern.", wren},
};

Pattern patternOf(const Recipe& recipe) {
    Pattern pattern;
    pattern.id = {QString::fromLatin1(recipe.id)};
    pattern.name = QString::fromLatin1(recipe.name);
    pattern.end = feet(recipe.endFeet);
    pattern.note = QString::fromLatin1(recipe.note);
    for (const Row& row : recipe.rows) {
        pattern.strokes.push_back({row.direction, row.firstBoard, row.lastBoard, row.laps, Microlitres{recipe.dose},
                                   feet(row.fromFeet), feet(row.toFeet), row.slot});
    }
    return pattern;
}

constexpr int houseEditions = 3;

/// The house pattern before it was changed: first with less on the way back, then with less at each lap.
Pattern earlier(Pattern house, int edition) {
    house.edition = edition;
    for (Stroke& stroke : house.strokes)
        stroke.dose = Microlitres{edition == 1 ? 43 : 44};
    if (edition == 1) house.strokes.back().to = feet(14);
    house.note = edition == 1 ? "The house pattern, first try." : "The house pattern.";
    return house;
}

}  // namespace

std::vector<Pattern> patterns() {
    std::vector<Pattern> all;
    for (const Recipe& recipe : recipes) {
        all.push_back(patternOf(recipe));
        all.back().edition = all.back().id.value == "wren-36" ? houseEditions : 1;
    }
    return all;
}

std::vector<PatternVersion> patternVersions(const Centre& centre, QDate today) {
    const auto since = [&](int daysAgo) { return dayOf(centre, today.addDays(-daysAgo)).begin + minutes(5 * 60); };
    std::vector<PatternVersion> all;
    for (const Pattern& pattern : patterns()) {
        const bool isHouse = pattern.edition == houseEditions;
        if (isHouse) {
            all.push_back({earlier(pattern, 1), since(historyDays + 30), {"rowan"}});
            all.push_back({earlier(pattern, 2), since(251), {"tamsin"}});
        }
        all.push_back({pattern, since(isHouse ? 118 : historyDays + 30), {isHouse ? "tamsin" : "rowan"}});
    }
    return all;
}

std::int64_t editionAt(const std::vector<PatternVersion>& versions, const PatternId& pattern, Instant t) {
    std::int64_t edition = 0;
    for (const PatternVersion& version : versions)
        if (version.pattern.id == pattern && version.since <= t) edition = version.pattern.edition;
    return edition;
}

const Pattern* versionOf(const std::vector<PatternVersion>& versions, const PatternId& pattern, std::int64_t edition) {
    for (const PatternVersion& version : versions)
        if (version.pattern.id == pattern && version.pattern.edition == edition) return &version.pattern;
    return nullptr;
}

}  // namespace laneward::demo
