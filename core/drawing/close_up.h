// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/drawing/drawing.h"
#include "core/shop/finding.h"

namespace kerfwall {

/// How large a picture is, mm on the screen.
struct PictureSize {
    double width = 0;
    double height = 0;
};

/// The plan round the place of a finding, at a larger scale.
struct CloseUp {
    Point middle;       ///< panel frame
    double across = 0;  ///< mm of the panel over the picture's width
    Drawing drawing;    ///< the plan without signs and dimensions, the lines in it named where they enter the picture
    std::string words;  ///< what is to be seen, for one who does not see it; lengths in the project's units
};

/// Shown wide enough for three trimming bits side by side, and for three times what the finding measures, 20 to 200 mm.
/// `project` and `solved` may be the ones after a remedy: the place is the finding's all the same.
/// Requires  a size over 0.
/// None      where the finding has no place on the plan.
[[nodiscard]] std::optional<CloseUp> closeUp(const Project& project, const Solved& solved, const Finding& finding,
                                             PictureSize size);

}  // namespace kerfwall
