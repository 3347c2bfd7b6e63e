// Plain text for an 80-column terminal. Internal to this room.
#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace laneward {

inline constexpr int textColumns = 80;

/// Filled up with spaces to `width`; at least one space follows.
QString padded(const QString& text, int width);
QString heading(const QString& text);
/// Left and right on one line.
QString spread(const QString& left, const QString& right);
/// Words on as many lines as they need, each after `indent` spaces; the first line begins with `lead` instead.
QString wrapped(const QString& text, int indent, const QString& lead = {});
/// Columns as wide as their longest cell.
QString table(const std::vector<QStringList>& rows, int indent);

}  // namespace laneward
