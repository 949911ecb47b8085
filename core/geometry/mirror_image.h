// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <utility>
#include <variant>

#include "core/geometry/motion.h"
#include "core/geometry/solved.h"

namespace kerfwall {

/// The mirroring about a centre line of the panel or a line; none where that line is in trouble or not there.
[[nodiscard]] std::optional<Motion> mirroring(const Panel& panel, const Solved& solved, const std::variant<Centre, LineId>& about);

/// The run over the panel of what is mirrored about; none as above.
[[nodiscard]] std::optional<std::pair<Point, Point>> axisRun(const Panel& panel, const Solved& solved,
                                                             const std::variant<Centre, LineId>& about);

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
