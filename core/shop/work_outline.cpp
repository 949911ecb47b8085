// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/work_outline.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/geometry/clip.h"
#include "core/geometry/wanted_sides.h"
#include "core/shop/finding_words.h"

namespace kerfwall {

std::expected<Project, std::string> withWorkOutline(Project project, std::vector<Point> outline) {
    if (outline.size() < 3) return std::unexpected("A workpiece has at least 3 corners; draw it with more.");
    if (std::ranges::any_of(outline, [](Point p) { return std::abs(p.x) > kFarthestWork || std::abs(p.y) > kFarthestWork; })) {
        return std::unexpected("The workpiece would reach farther than " + lengthWords(project, kFarthestWork) + " from the panel's corner; draw it nearer or smaller.");
    }
    if (const auto crossed = crossingSides(outline)) {
        const Point at = outline[crossed->first];
        return std::unexpected("The outline crosses or touches itself on the side that begins " + lengthWords(project, at.x) + " right of the left edge and " +
                               lengthWords(project, at.y) + " above the bottom edge; draw it so that it runs once round the workpiece.");
    }
    if (polygonArea(outline) < 0) std::ranges::reverse(outline);
    if (!project.workpiece) project.workpiece.emplace();
    project.workpiece->outline = std::move(outline);
    project.workpiece->parts.clear();
    return project;
}

}  // namespace kerfwall
