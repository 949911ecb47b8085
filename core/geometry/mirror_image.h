// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <variant>

#include "core/geometry/solved.h"

namespace kerfwall {

/// A straight line to mirror about.
struct MirrorAxis {
    Point on;
    Point along;  ///< unit
};

/// The axis a mirror image is laid about; none where it is a line that is not on the panel.
[[nodiscard]] std::optional<MirrorAxis> mirrorAxis(const Panel& panel, const Solved& solved,
                                                   const std::variant<Centre, LineId>& about);

/// The mirror image of a place.
[[nodiscard]] Point mirrored(const MirrorAxis& axis, Point place);

/// A mirror image that two places lie on.
struct NearImage {
    ByMirror place;
    Point from;  ///< of the image, in its direction
    Point to;
};

/// The mirror image of a line about one of the panel's centre lines, or about `axis` ("" for none), that passes
/// nearest to both places; none where each passes one of them by more than `reach` mm, or lies on a line that is there.
[[nodiscard]] std::optional<NearImage> mirrorNear(const Panel& panel, const Solved& solved, const LineId& axis, Point start,
                                                  Point end, double reach);

}  // namespace kerfwall
