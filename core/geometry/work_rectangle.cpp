// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/work_rectangle.h"

#include <algorithm>

#include "core/geometry/clip.h"
#include "core/geometry/work_moving.h"

namespace kerfwall {
namespace {

std::vector<Point> cornersOf(const Box& box) { return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}}; }

}  // namespace

std::optional<Box> workBounds(const Project& project) {
    if (!project.workpiece) return std::nullopt;
    std::vector<Point> corners = project.workpiece->outline;
    for (const WorkPart& part : project.workpiece->parts) corners.insert(corners.end(), part.outline.begin(), part.outline.end());
    return corners.empty() ? std::nullopt : std::optional(boundsOf(corners));
}

bool isWorkRectangle(const Project& project) {
    const auto bounds = workBounds(project);
    if (!bounds) return true;
    const std::vector<Point> corners = cornersOf(*bounds);
    const std::vector<Point>& outline = project.workpiece->outline;
    return project.workpiece->parts.empty() && std::ranges::is_permutation(outline, corners);
}

Project withWorkRectangle(Project project, const Box& box) {
    if (!project.workpiece) project.workpiece.emplace();
    project.workpiece->outline = cornersOf(box);
    return project;
}

Project withWorkAt(Project project, Point low) {
    const auto bounds = workBounds(project);
    if (bounds) project.workpiece = moved(*project.workpiece, shiftBy(low - bounds->low));
    return project;
}

}  // namespace kerfwall
