// Texts that break programs which paste them into something: SQL, markup, file names, lines, layouts.
#pragma once

#include <QStringList>

namespace support {

/// All storable; at least forty of them try to be SQL.
QStringList hostileTexts();

}  // namespace support
