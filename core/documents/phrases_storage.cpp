#include "core/documents/phrases.h"

#include <QtGlobal>

namespace laneward {

namespace {

constexpr Phrase phrases[] = {
    {"store.no-centre", QT_TRANSLATE_NOOP("wording", "%1: holds no centre")},
    {"store.older-schema",
     QT_TRANSLATE_NOOP("wording", "%1: made by an older version and cannot be written, so it cannot be brought up to date")},
    {"edit.centre-stays", QT_TRANSLATE_NOOP("wording", "the centre itself is neither added nor removed")},
    {"edit.empty", QT_TRANSLATE_NOOP("wording", "a change without content")},
    {"edit.other-row", QT_TRANSLATE_NOOP("wording", "'%1': the change is from one row to another")},
    {"edit.still-used", QT_TRANSLATE_NOOP("wording", "'%1' is still used elsewhere and stays")},
    {"edit.unit-stays", QT_TRANSLATE_NOOP("wording", "'%1' has been moved already and keeps its unit")},
    {"edit.unknown-reference", QT_TRANSLATE_NOOP("wording", "'%1' names something that does not exist")},
    {"edit.unstorable", QT_TRANSLATE_NOOP("wording", "'%1' cannot be stored: %2")},
    {"import.id-twice", QT_TRANSLATE_NOOP("wording", "%1: the id stands twice; nothing was imported")},
    {"import.unknown-reference", QT_TRANSLATE_NOOP("wording", "%1: names something that does not exist; nothing was imported")},
    {"import.unstorable", QT_TRANSLATE_NOOP("wording", "%1: cannot be stored (%2); nothing was imported")},
    {"json.too-large", QT_TRANSLATE_NOOP("wording", "%1: larger than %2 bytes")},
    {"record.already-corrected", QT_TRANSLATE_NOOP("wording", "'%1' has been corrected already; nothing was recorded")},
    {"record.ends-before-start", QT_TRANSLATE_NOOP("wording", "the record '%1' ends before it starts; nothing was recorded")},
    {"record.unknown-lane", QT_TRANSLATE_NOOP("wording", "the record '%1' names lane %2; there are %3. Nothing was recorded")},
    {"record.unknown-reference",
     QT_TRANSLATE_NOOP("wording", "the record '%1' names something that does not exist; nothing was recorded")},
    {"record.unstorable", QT_TRANSLATE_NOOP("wording", "the record '%1' cannot be stored: %2")},
    {"restore.files-only", QT_TRANSLATE_NOOP("wording", "%1: a backup can only take the place of a file")},
    {"backup.differs", QT_TRANSLATE_NOOP("wording", "%1: the copy is not equal to the centre and was not kept")},
    {"check.centres", QT_TRANSLATE_NOOP("wording", "more than one centre in one database: '%1'")},
    {"check.integrity", QT_TRANSLATE_NOOP("wording", "%1: %2")},
    {"check.lane-without-run", QT_TRANSLATE_NOOP("wording", "lanes without their run: '%1'")},
    {"check.operation-without-record", QT_TRANSLATE_NOOP("wording", "an operation without its record: '%1'")},
    {"check.record-without-operation", QT_TRANSLATE_NOOP("wording", "a record without its operation: '%1'")},
    {"check.reference", QT_TRANSLATE_NOOP("wording", "a row of %1 names a row of %2 that does not exist")},
    {"check.unknown-lane", QT_TRANSLATE_NOOP("wording", "the record '%1' names lane %2, which does not exist")},
    {"check.unknown-pattern", QT_TRANSLATE_NOOP("wording", "%1 asks for the pattern '%2', which does not exist")},
    {"check.unknown-answered", QT_TRANSLATE_NOOP("wording", "the incident '%1' follows up one that does not exist")},
    {"check.unknown-pattern-version",
     QT_TRANSLATE_NOOP("wording", "the record '%1' names a version of a pattern that does not exist")},
    {"check.pattern-without-version", QT_TRANSLATE_NOOP("wording", "what the pattern '%1' says is not among its versions")},
    {"check.version-ahead", QT_TRANSLATE_NOOP("wording", "a version from the future: '%1'")},
    {"location.password",
     QT_TRANSLATE_NOOP("wording", "a password does not belong in the address of a centre; use libpq's password file")},
    {"location.unreadable", QT_TRANSLATE_NOOP("wording", "'%1' is neither a file nor postgresql://user@host/database")},
    {"store.missing", QT_TRANSLATE_NOOP("wording", "%1: there is no such centre")},
    {"store.damaged", QT_TRANSLATE_NOOP("wording", "%1: the file is damaged; nothing was changed. Restore a backup")},
    {"store.not-a-database", QT_TRANSLATE_NOOP("wording", "%1: this is not a centre; nothing was changed")},
    {"store.locked", QT_TRANSLATE_NOOP("wording", "%1: another program is writing; nothing was changed, try again")},
    {"store.unreachable", QT_TRANSLATE_NOOP("wording", "%1: cannot be reached")},
    {"store.newer-schema", QT_TRANSLATE_NOOP("wording", "%1: made by a newer version of this program; not modified")},
    {"store.exists", QT_TRANSLATE_NOOP("wording", "%1: exists already; nothing was changed")},
    {"store.disk-full", QT_TRANSLATE_NOOP("wording", "%1: the disk is full; nothing was changed")},
    {"store.no-driver", QT_TRANSLATE_NOOP("wording", "%1: the driver for this kind of database is not installed")},
    {"edit.conflict", QT_TRANSLATE_NOOP("wording", "'%1' was changed meanwhile by %2, %3; nothing was overwritten")},
    {"edit.already-done", QT_TRANSLATE_NOOP("wording", "'%1' was done already")},
    {"edit.read-only", QT_TRANSLATE_NOOP("wording", "%1 can only be read; nothing was changed")},
    {"record.id-taken", QT_TRANSLATE_NOOP("wording", "the id '%1' already stands for another record; nothing was recorded")},
    {"json.unreadable", QT_TRANSLATE_NOOP("wording", "%1: cannot be read as JSON (at byte %2)")},
    {"json.missing-key", QT_TRANSLATE_NOOP("wording", "%1: missing")},
    {"json.unknown-key", QT_TRANSLATE_NOOP("wording", "%1: unknown key")},
    {"json.bad-value", QT_TRANSLATE_NOOP("wording", "%1: this value cannot be used")},
    {"centre-file.newer", QT_TRANSLATE_NOOP("wording", "%1: made by a newer version of this program; nothing was changed")},
};

}  // namespace

std::span<const Phrase> storagePhrases() { return phrases; }

}  // namespace laneward
