// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <optional>

#include "core/geometry/solved.h"

namespace kerfwall {

/// A drag across the panel that is to become a line, and what was typed meanwhile.
struct LayingWish {
    Point start;       ///< where the drag began, panel frame
    Point end;         ///< where it is now
    double reach = 5;  ///< mm within which a place holds on to an edge, a mark, a crossing, an angle
    double step = 1;   ///< mm: edge marks fall on whole steps
    bool snap = true;  ///< false: only rounded to kLooseStep
    std::optional<double> distance;  ///< typed: mm from `LaidLine::distanceFrom` where the line begins
    std::optional<double> angle;     ///< typed: degrees from `LaidLine::angleFrom`
};
inline constexpr double kLooseStep = 0.01;  ///< mm; finer than any pencil, coarse enough to be read

/// Where a laid line meets the panel's border, as a maker sets it off.
struct LaidEnd {
    Point place;
    Edge edge = Edge::Bottom;  ///< on which it lies
    double at = 0;             ///< mm along it, from the reference edge or the edge square to it
    bool operator==(const LaidEnd&) const = default;
};

/// A line as it would be laid.
struct LaidLine {
    Place place;          ///< ByOffset where it is parallel to an edge or a line, else ByAngle, ByMarks, ByPoints
    Base distanceFrom;    ///< what `distance` counts from
    double distance = 0;  ///< mm, where the line begins
    Edge angleFrom = Edge::Bottom;
    double angle = 0;  ///< degrees anticlockwise from that edge, over -90 to 90
    LaidEnd from;      ///< where it enters and leaves the panel, in the direction of the drag
    LaidEnd to;
    bool operator==(const LaidLine&) const = default;
};

enum class NoLine {
    TooShort,     ///< both ends hold on to one place, or to one edge
    OffThePanel,  ///< it would not run over the panel
    OnALine,      ///< it would lie on a line that is already there
};

/// The line a drag from `start` to `end` lays. Within reach its ends hold on to crossings, corners and
/// marks already laid, else to whole steps from the reference edge and the edge square to it; its direction
/// holds on to parallel and square, to the directions of other lines, to whole and to half degrees.
/// Requires  reach > 0, step > 0, all numbers finite. (asserted)
/// Refuses   see NoLine.
[[nodiscard]] std::expected<LaidLine, NoLine> layLine(const Project& project, const Solved& solved,
                                                      const LayingWish& wish);

}  // namespace kerfwall
