#include "core/documents/wording.h"

#include <QHash>

namespace laneward {

namespace {

/// Characters that are invisible or turn the text around them: named as Unicode abbreviates them.
QString markOf(char32_t c) {
    static const QHash<char32_t, QString> names{
        {0x0009, "TAB"}, {0x000a, "LF"},  {0x000d, "CR"},  {0x061c, "ALM"}, {0x200b, "ZWSP"}, {0x200e, "LRM"}, {0x200f, "RLM"},
        {0x2028, "LS"},  {0x2029, "PS"},  {0x202a, "LRE"}, {0x202b, "RLE"}, {0x202c, "PDF"},  {0x202d, "LRO"}, {0x202e, "RLO"},
        {0x2066, "LRI"}, {0x2067, "RLI"}, {0x2068, "FSI"}, {0x2069, "PDI"}, {0xfeff, "BOM"}};
    const auto named = names.find(c);
    const bool control = c < 0x20 || (c >= 0x7f && c < 0xa0);
    if (named != names.end()) return QString(u'‹') + *named + u'›';
    if (!control) return {};
    return QString(u'‹') + "U+" + QString::number(uint(c), 16).toUpper().rightJustified(4, '0') + u'›';
}

}  // namespace

QString shown(const QString& name) {
    QString out;
    out.reserve(name.size());
    for (qsizetype i = 0; i < name.size(); ++i) {
        const QChar c = name[i];
        if (c.isHighSurrogate() && i + 1 < name.size() && name[i + 1].isLowSurrogate()) {
            out += c;
            out += name[++i];
            continue;
        }
        if (c.isSurrogate()) {
            out += QChar::ReplacementCharacter;
            continue;
        }
        const QString mark = markOf(c.unicode());
        out += mark.isEmpty() ? QString(c) : mark;
    }
    return out;
}

}  // namespace laneward
