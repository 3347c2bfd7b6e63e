// Which stored version a row has at each point of the undo stack.
//
// Undoing writes an old content under a new version, so the versions that an edit once read are no use to the edits below it on
// the stack. Each point in a row's life therefore has a cell that holds the version under which it is stored now; the edits
// before and after that point share the cell. A row that somebody else has changed has another version than its cell, and the
// store refuses the edit as a conflict.
#pragma once

#include "core/storage/edit.h"

#include <QHash>

#include <memory>

namespace laneward {

using VersionCell = std::shared_ptr<std::int64_t>;

/// The cells of one change: where the row was and where it went.
struct Passage {
    VersionCell from;
    VersionCell to;
};

/// Kind and id of the row that a change is about.
QString rowKey(const Change& change);

class RowVersions {
public:
    /// Cells for a new edit, in the order of its changes.
    std::vector<Passage> passages(const std::vector<Change>& changes);
    /// Puts the versions of the `from` cells into the changes' `before`.
    static void expect(std::vector<Change>& changes, const std::vector<Passage>& passages);
    /// Keeps what the store wrote: `counter` is its counter-edit, whose `before` holds the new versions.
    void written(const std::vector<Change>& counter, const std::vector<Passage>& passages);

private:
    QHash<QString, VersionCell> m_live;
};

}  // namespace laneward
