// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/says/project.h"

namespace kerfwall {

/// A hole that can be placed: what a clamp of the bench asks for, or what the drill at hand makes. mm.
struct HoleKind {
    double diameter = 0;
    double depth = 0;
    std::optional<std::size_t> clamp;  ///< into the bench's clamps
    bool operator==(const HoleKind&) const = default;
};

/// One for each clamp of the bench that needs a hole, in its order, as deep as its insert; then the corner drill or what the panel's
/// thickness bears, of a usual depth.
[[nodiscard]] std::vector<HoleKind> holesAtHand(const Project& project);

/// Where a hand places a hole.
struct HoleWish {
    Point place;
    double reach = 5;  ///< mm within which an edge holds on
    double step = 1;   ///< mm
    HoleKind kind;
    std::optional<Edge> edge;  ///< that the drag began at; none: the nearest
};

/// The clamp hole a wish gives, on whole steps along its edge. As deep as its kind, at most to the middle of the panel;
/// where the drag has left its edge's reach, as deep as the place lies in.
[[nodiscard]] ClampHole clampHoleFor(const Project& project, const HoleWish& wish);

/// What of a hole is taken hold of: all of it, to slide it along its edge, or its point, to drill it deeper.
enum class HoleGrip { Whole, Point };
struct NearHole {
    std::size_t hole = 0;
    HoleGrip grip = HoleGrip::Whole;
    bool operator==(const NearHole&) const = default;
};

/// The clamp hole under a place, within `reach` mm; by its point where that is nearer than half its depth.
[[nodiscard]] std::optional<NearHole> holeGripNear(const Project& project, Point place, double reach);

/// A hole's depth where its point lies as far in as `place`: held on to a clamp's insert within `hold`, else on whole
/// steps, and blind. mm.
[[nodiscard]] double depthAt(const Project& project, Edge edge, Point place, double step, double hold);

/// The project with that hole that deep, but no less than kLeastDepth and blind.
/// Requires  the hole is there.
[[nodiscard]] Project withHoleDepth(const Project& project, std::size_t hole, double depth);
inline constexpr double kLeastDepth = 1;  ///< mm; less is a mark, not a hole

/// The project with that hole where `place` is nearest to an edge, on whole `step`s.
/// Requires  the hole is there.
[[nodiscard]] Project withHoleAt(const Project& project, std::size_t hole, Point place, double step);

/// The project with that hole moved along its edge by what of `shift` runs along it, within the edge.
/// Requires  the hole is there.
[[nodiscard]] Project withHoleMoved(const Project& project, std::size_t hole, Point shift);

/// The same, and drilled deeper by what of `shift` runs into the panel.
[[nodiscard]] Project withHoleNudged(const Project& project, std::size_t hole, Point shift);

}  // namespace kerfwall
