#include "core/storage/pattern_versions.h"

#include <algorithm>

namespace laneward {

Result<std::vector<PatternVersion>> versionsWhere(Database& database, const CentreId& centre, const QString& where,
                                                  std::vector<QVariant> values) {
    values.insert(values.begin(), centre.value);
    const auto rows = database.rows(selectStatement(tableOf<PatternVersion>, columnsOf<PatternVersion>(), false, where), values);
    if (!rows) return rows.error();
    Result<std::vector<PatternVersion>> all = decoded<PatternVersion>(database, *rows);
    if (all)
        std::sort(all->begin(), all->end(), [](const PatternVersion& a, const PatternVersion& b) {
            return std::tie(a.pattern.id, a.pattern.edition) < std::tie(b.pattern.id, b.pattern.edition);
        });
    return all;
}

Outcome insertVersion(Database& database, const CentreId& centre, const PatternVersion& version) {
    return insertRow(database, centre, version, 0);
}

Outcome settleEdition(Database& database, const CentreId& centre, Pattern& pattern, Instant at, const PersonId& person) {
    const auto known = versionsWhere(database, centre, QStringLiteral("AND pattern = ?"), {pattern.id.value});
    if (!known) return known.error();
    std::optional<std::int64_t> same;
    std::int64_t last = 0;
    for (const PatternVersion& version : *known) {
        const std::int64_t edition = version.pattern.edition;
        last = std::max(last, edition);
        if (sameRecipe(version.pattern, pattern) && (!same || edition == pattern.edition)) same = edition;
    }
    pattern.edition = same.value_or(last + 1);
    if (same) return Nothing{};
    PatternVersion made{pattern, at, person};
    return insertVersion(database, centre, made);
}

Result<bool> knowsVersion(Database& database, const CentreId& centre, const PatternId& pattern, std::int64_t edition) {
    if (edition == 0) return true;
    const Result<QVariant> found =
        database.value(QStringLiteral("SELECT edition FROM pattern_versions WHERE centre_id = ? AND pattern = ? AND edition = ?"),
                       {centre.value, pattern.value, qint64{edition}});
    return found ? Result<bool>(found->isValid()) : found.error();
}

}  // namespace laneward
