// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <expected>
#include <optional>
#include <vector>

#include "core/geometry/hold.h"
#include "core/geometry/solved.h"

namespace kerfwall {

inline constexpr double kUsualMargin = 0.5;  ///< mm; a saw's tooth marks are less deep. Common practice, no source.

/// A drag across the panel that is to become a line, and what was typed meanwhile.
struct LayingWish {
    Point start;       ///< where the drag began, panel frame
    Point end;         ///< where it is now
    double reach = 5;  ///< mm within which a place holds on to an edge, a mark, a crossing, an angle
    double step = 1;   ///< mm: edge marks fall on whole steps
    bool snap = true;  ///< false: holds on to nothing, only rounded to kLooseStep
    LineId axis;       ///< a line picked to mirror about, "" for none
    double margin = kUsualMargin;  ///< mm by which the cutter's arc is to clear the work's sawn corner
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
    Place place;
    Base distanceFrom;    ///< what `distance` counts from
    double distance = 0;  ///< mm, where the line begins
    Base angleFrom = Edge::Bottom;
    double angle = 0;  ///< degrees anticlockwise from that edge or line, over -90 to 90
    LaidEnd from;      ///< where it enters and leaves the panel, in the direction of the drag
    LaidEnd to;
    std::vector<Hold> holds;  ///< what it holds on to: its direction first, then its ends
    bool operator==(const LaidLine&) const = default;
};

enum class NoLine {
    TooShort,     ///< both ends hold on to one place, or to one edge
    OffThePanel,  ///< it would not run over the panel
    OnALine,      ///< it would lie on a line that is already there
};

/// The line a drag from `start` to `end` lays. First of what lies within reach:
///   1. the mirror image of a line about a centre line of the panel or about `axis`: ByMirror;
///   2. parallel or square to an edge; 3. a tangent to one bore or two; 4. parallel or square to a slanting line; 5. whole
///      and half degrees. Parallel: ByOffset; otherwise ByAngle.
/// Its ends hold on as holdEnd says; a line whose direction holds and whose ends do not goes through a crossing, touches
/// a bore or clears a sawn corner of the work where one is near. Through a crossing it is laid by that crossing. A line
/// that runs free is laid by two marks where both ends lie on edges, else by two points. What is typed wins.
/// Requires  reach > 0, step > 0, margin >= 0, all numbers finite. (asserted)
/// Refuses   see NoLine.
[[nodiscard]] std::expected<LaidLine, NoLine> layLine(const Project& project, const Solved& solved,
                                                      const LayingWish& wish);

}  // namespace kerfwall
