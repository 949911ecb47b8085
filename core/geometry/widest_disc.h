// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/outline.h"

namespace kerfwall {

/// The largest disc inside a drawn cutout, cut off at the panel's edge. Straight outlines only.
struct WidestDisc {
    Point centre;
    double diameter = 0;
};

/// Gives     a diameter within 1e-9 mm of the largest; of several equal discs any one.
[[nodiscard]] WidestDisc widestDisc(const Outline& drawn);

}  // namespace kerfwall
