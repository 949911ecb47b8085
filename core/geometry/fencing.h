// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <utility>

#include "core/geometry/fence_place.h"

namespace kerfwall {

/// What a fence or a stop is made of when a hand places it, mm.
struct FenceKindOf {
    FenceKind kind = FenceKind::Straight;
    double width = 20;
    double height = 15;
    double groove = 0;
    Face face = Face::Layout;
    bool operator==(const FenceKindOf&) const = default;
};

/// What a hand places next: made as the project's last fence or stop; else a usual one in the project's units, no higher
/// than the workpiece. On the face that goes to the work.
/// Source    common practice, no source.
[[nodiscard]] FenceKindOf nextFence(const Project& project, const Solved& solved, FenceKind kind);

/// What a fence placed here runs along: the line nearest within `reach` mm, else the edge nearest within `edgeReach`.
[[nodiscard]] std::optional<Base> fenceBaseNear(const Project& project, const Solved& solved, Point place, double reach,
                                                double edgeReach);

/// Where a hand places a fence.
struct FenceWish {
    Base along;
    FenceKindOf of;
    Point place;                   ///< a stop stands here along `along`
    std::optional<double> offset;  ///< mm of the face to the left of `along`; none: body beside it, on the panel
    double step = 1;               ///< mm
};

/// The fence a wish gives. Its body stands off the nearest cutout, or off the panel's middle where there is none. A
/// straight one runs over the panel; a stop is kStopLength long round the place.
/// Gives     none where what it runs along is in trouble, or it would lie off the panel.
[[nodiscard]] std::optional<Fence> fenceFor(const Project& project, const Solved& solved, const FenceWish& wish);
inline constexpr double kStopLength = 40;  ///< mm; common practice, no source

/// How far a place lies to the left of an edge or a line, on whole steps, mm.
/// Gives     none where the line is in trouble.
[[nodiscard]] std::optional<double> offsetAt(const Project& project, const Solved& solved, const Base& along, Point place, double step);

/// What of a fence is taken hold of: its face, to set its offset, or one of its ends.
enum class FenceGrip { Face, From, To };
struct NearFence {
    std::size_t fence = 0;
    FenceGrip grip = FenceGrip::Face;
    bool operator==(const NearFence&) const = default;
};

/// The fence under a place, within `reach` mm of its body; by an end where that is nearer than `reach` and than a
/// third of its length.
[[nodiscard]] std::optional<NearFence> fenceNear(const Project& project, const Solved& solved, Point place, double reach);

/// The project with that fence carried from `grabbed` to `now`: by its face its offset changes, and a stop slides
/// along as well; by an end it grows or shrinks, no shorter than kShortestFence. What changes falls on whole steps.
/// Requires  the fence is there.
[[nodiscard]] Project withFenceCarried(const Project& project, const Solved& solved, NearFence held, Point grabbed, Point now, double step);
inline constexpr double kShortestFence = 1;  ///< mm

/// The project with that fence moved by `shift`: across it the offset, along it both ends.
/// Requires  the fence is there.
[[nodiscard]] Project withFenceNudged(const Project& project, const Solved& solved, std::size_t fence, Point shift);

/// The project with that fence longer by `by` mm at its far end, no shorter than kShortestFence.
/// Requires  the fence is there.
[[nodiscard]] Project withFenceLonger(const Project& project, std::size_t fence, double by);

/// The two ends of the face the work touches; none where what it runs along is in trouble.
[[nodiscard]] std::optional<std::pair<Point, Point>> fenceFace(const Project& project, const Solved& solved, const Fence& fence);

/// How far the face is from the nearest opening in the work, mm, which is where a cut will lie in a piece held to it.
/// Gives     none where there is no opening, or as fenceFace.
[[nodiscard]] std::optional<double> faceToWork(const Project& project, const Solved& solved, const Fence& fence);

}  // namespace kerfwall
