#include "app/cli/call.h"

#include "core/storage/booked.h"

#include "core/base/clock.h"
#include "core/base/limits.h"

#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QLocale>
#include <QSaveFile>

namespace laneward::cli {

namespace {

constexpr int mostDays = limits::expansionYears * 365;

}  // namespace

Result<std::vector<Record>> booked(const Loaded& loaded, const std::vector<Record>& records) {
    const Result<UseFactors> factors =
        loaded.season.supplies.empty() ? UseFactors{} : learnedFactors(*loaded.store, loaded.season, loaded.now);
    if (!factors) return factors.error();
    return withBookings(*loaded.store, loaded.season, *factors, records);
}

Outcome appendBooked(const Loaded& loaded, const std::vector<Record>& records) {
    const Result<std::vector<Record>> all = booked(loaded, records);
    return all ? loaded.store->append(*all) : Outcome(all.error());
}

Instant nowOf(const Call& call, const Zone& zone) {
    return call.start.now ? zone.toInstant(*call.start.now) : SystemClock().now();
}

Speech speechOf(const Centre& centre) { return {QLocale(), zoneOf(centre), centre.facts.settings.units}; }

Result<std::unique_ptr<Store>> openStore(const Call& call, Access access) {
    const Result<Location> location = Location::parse(call.start.centre);
    if (!location) return location.error();
    Result<std::unique_ptr<Store>> store = Store::open(*location, access);
    if (store || access != Access::ReadOnly || store.error().finding.rule != "store.older-schema") return store;
    // Whoever comes first behind a new version brings the centre up to date, a scheduled command no less than the window.
    if (const auto raised = Store::open(*location, Access::ReadWrite); !raised) return raised.error();
    return Store::open(*location, access);
}

Result<Loaded> load(const Call& call, Access access) {
    Result<std::unique_ptr<Store>> store = openStore(call, access);
    if (!store) return store.error();
    // The window of the load is a matter of weeks: UTC does until the centre has said what its zone is.
    Result<SeasonState> season = (*store)->load(nowOf(call, Zone()));
    if (!season) return season.error();
    const Speech speech = speechOf(season->centre);
    const Instant now = nowOf(call, speech.zone);
    return Loaded{std::move(*store), std::move(*season), speech, now};
}

Error wrongUsage(const char* rule, const QString& subject, std::vector<Value> values) {
    return fault(ErrorKind::Usage, rule, subject, std::move(values));
}

Result<QString> formatOf(const Call& call, const QStringList& known) {
    const QString format = call.options.value("format");
    if (format.isEmpty()) return known.first();
    if (!known.contains(format)) return wrongUsage("cli.bad-format", format, {known.join(", ")});
    return format;
}

Result<QDate> dateOption(const Call& call, const QString& name, QDate otherwise) {
    if (!call.options.isSet(name)) return otherwise;
    const QDate date = QDate::fromString(call.options.value(name), Qt::ISODate);
    if (!date.isValid() || date.year() < 1970 || date.year() > 2099) return wrongUsage("cli.bad-date", call.options.value(name));
    return date;
}

Result<DateRange> rangeOf(const Call& call, QDate today, int days) {
    const Result<QDate> from = dateOption(call, "from", today);
    if (!from) return from.error();
    if (call.options.isSet("days")) {
        bool good = false;
        days = call.options.value("days").toInt(&good);
        if (!good || days < 1 || days > mostDays) {
            return wrongUsage("cli.bad-days", call.options.value("days"), {std::int64_t{mostDays}});
        }
    }
    return DateRange{*from, from->addDays(days - 1)};
}

Result<QString> onlyArgument(const Call& call, const QString& what) {
    if (call.arguments.isEmpty()) return wrongUsage("cli.missing-argument", call.command, {what});
    if (call.arguments.size() > 1) return wrongUsage("cli.too-many-arguments", call.arguments[1]);
    return call.arguments.first();
}

Outcome noArguments(const Call& call) {
    if (!call.arguments.isEmpty()) return wrongUsage("cli.too-many-arguments", call.arguments.first());
    return Nothing{};
}

Result<QByteArray> fileContent(const QString& path) {
    const QFileInfo info(path);
    QFile file(path);
    // A pipe without a writer would keep us waiting for ever.
    if (info.exists() && !info.isFile()) return fault(ErrorKind::Io, "file.not-a-file", path);
    if (!file.open(QIODevice::ReadOnly)) return fault(ErrorKind::Io, "file.not-read", path, {file.errorString()});
    const QByteArray content = file.read(limits::importBytes + 1);
    if (file.error() != QFileDevice::NoError) return fault(ErrorKind::Io, "file.not-read", path, {file.errorString()});
    return content;
}

Outcome mayBeWritten(const QString& path) {
    if (QFileInfo::exists(path) && !QFileInfo(path).isFile()) return fault(ErrorKind::Io, "file.not-a-file", path);
    return Nothing{};
}

Outcome writeFile(const QString& path, const QByteArray& content) {
    const Outcome allowed = mayBeWritten(path);
    if (!allowed) return allowed;
    QSaveFile file(path);
    const bool written = file.open(QIODevice::WriteOnly) && file.write(content) == content.size() && file.commit();
    if (!written) return fault(ErrorKind::Io, "file.not-written", path, {file.errorString()});
    return Nothing{};
}

void print(const Call& call, const QByteArray& bytes) { call.streams.out.write(bytes); }
void print(const Call& call, const QString& text) { print(call, text.toUtf8()); }
void print(const Call& call, const QJsonObject& object) { print(call, QJsonDocument(object).toJson(QJsonDocument::Indented)); }

}  // namespace laneward::cli
