// Gives the blocks of a BlockView to assistive technology as the items of a list.
#pragma once

namespace laneward {

/// Tells the toolkit once how to describe a BlockView; further calls change nothing.
void installBlockAccessibility();

}  // namespace laneward
