// The program's own icons, drawn as strokes in the colour of the text around them, so that they follow the palette live.
//
//     button->setIcon(glyph("lanes"));
#pragma once

#include <QIcon>

namespace laneward {

/// "today", "calendar", "lanes"; an unknown name gives an empty square. Also "laneward", the program's mark.
QIcon glyph(const QString& name);

}  // namespace laneward
