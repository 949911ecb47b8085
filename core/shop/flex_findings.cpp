// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"
#include "core/strength/flex.h"

namespace kerfwall {
namespace {

constexpr double kStep = 0.25;  // mm, in which the wood behind a wall is measured

/// How wide the wood stands behind a wall at a place: as far as the push goes on in it.
double widthBehind(const Project& project, const Solved& solved, const Wall& wall, Point at) {
    const Point push = -1.0 * leftOf(unit(wall.to - wall.from));
    const Panel& panel = project.panel;
    double width = 0;
    for (;; width += kStep) {
        const Point place = at + (width + kStep / 2) * push;
        if (place.x < 0 || place.y < 0 || place.x > panel.width || place.y > panel.height) return width;
        const auto isOpen = [&](const SolvedCutout& cutout) { return isInside(cutout.opening, place); };
        if (std::ranges::any_of(solved.cutouts, isOpen)) return width;
    }
}

std::string pushWords(const Project& project) {
    return std::to_string(static_cast<int>(std::lround(sidePushOf(project)))) + " N";
}

}  // namespace

std::vector<Finding> flexFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const Wall& wall : cutout.walls) {
            const auto crossed = wall.give ? crossedAbove(wall.give->gives, limitsOf("arm-flex", project)) : std::nullopt;
            if (!crossed) {
                continue;
            }
            const double width = widthBehind(project, solved, wall, wall.give->at);
            // Bending goes with the third power of an arm's width.
            const double needed = width * std::cbrt(wall.give->gives / crossed->limit);
            Finding finding = measuredFinding("arm-flex", crossed->severity, wall.give->gives, crossed->limit);
            finding.at = wall.give->at;
            finding.lines = {wall.line};
            finding.cutout = cutout.id;
            finding.text = "Wall " + wall.line + " of " + cutout.id + " gives " + lengthWords(project, wall.give->gives) +
                           " under a side push of " + pushWords(project) + ", more than " + lengthWords(project, crossed->limit) +
                           ": the wood behind it is " + lengthWords(project, width) + " wide. Some " + atLeastWords(project, needed) +
                           " would do, or a clamp near it. Worked with the board's flatwise stiffness; edgewise boards give more.";
            all.push_back(std::move(finding));
        }
    }
    return all;
}

}  // namespace kerfwall
