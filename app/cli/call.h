// One call of a command, and what most commands do first. Internal to this room.
#pragma once

#include "app/cli/commands.h"
#include "core/documents/wording.h"
#include "core/storage/store.h"

#include <QCommandLineParser>
#include <QJsonObject>

#include <memory>

namespace laneward::cli {

struct Call {
    QString command;
    QStringList arguments;  ///< after the command
    const QCommandLineParser& options;
    const Start& start;
    Streams streams;
};

/// Exit status, or an error that becomes one line and an exit status.
using Status = Result<int>;

/// A centre with its season, seen at one moment.
struct Loaded {
    std::unique_ptr<Store> store;
    SeasonState season;
    Speech speech;
    Instant now;
};

Result<Loaded> load(const Call& call, Access access);
Result<std::unique_ptr<Store>> openStore(const Call& call, Access access);
/// Records with what they book in the stock ledger.
Result<std::vector<Record>> booked(const Loaded& loaded, const std::vector<Record>& records);
/// They are appended, all or none.
Outcome appendBooked(const Loaded& loaded, const std::vector<Record>& records);
/// `--now` as wall time of `zone`, else the system's clock.
Instant nowOf(const Call& call, const Zone& zone);
Speech speechOf(const Centre& centre);

Error wrongUsage(const char* rule, const QString& subject, std::vector<Value> values = {});
/// --format, one of `known`; the first one is the default.
Result<QString> formatOf(const Call& call, const QStringList& known);
/// --NAME as a date, `otherwise` when it is not given.
Result<QDate> dateOption(const Call& call, const QString& name, QDate otherwise);
/// --from and --days.
Result<DateRange> rangeOf(const Call& call, QDate today, int days);
/// The only argument of a command.
Result<QString> onlyArgument(const Call& call, const QString& what);
Outcome noArguments(const Call& call);

/// At most limits::importBytes and one more, so that the reader sees that a file is too large. Refuses what is not a file.
Result<QByteArray> fileContent(const QString& path);
/// Refuses to put a file in the place of a device, pipe or folder.
Outcome mayBeWritten(const QString& path);
/// Whole or not at all.
Outcome writeFile(const QString& path, const QByteArray& content);

void print(const Call& call, const QString& text);
void print(const Call& call, const QJsonObject& object);
void print(const Call& call, const QByteArray& bytes);

}  // namespace laneward::cli
