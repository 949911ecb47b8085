// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/shop/order_of_work.h"

namespace kerfwall {

/// One way to cut one kerf: a saw, its setting, and how the panel lies there.
struct Way {
    std::optional<std::size_t> saw;  ///< index into the bench's saws; none where no saw can
    Setting setting;
    bool faceUp = true;
    std::optional<Edge> against;
    std::optional<Edge> stopEdge;
    std::optional<Side> stopSide;
    std::optional<Edge> leads;
    std::optional<Side> turn;
    bool beyondSaw = false;  ///< the line names a saw that cannot make this cut, or none on the bench can
    bool toMarks = false;    ///< neither fence nor stop gives the place: it is cut to its edge marks
    bool operator==(const Way&) const = default;
};

/// What a way is worked out from.
struct KerfAsked {
    Point from;  ///< the line's run on the panel, in its direction
    Point to;
    Point waste;  ///< of length 1, square to the line, towards the kerf
    double depth = 0;
    bool stopped = false;
    PlungeMarks plunge;  ///< stopped only
};
[[nodiscard]] KerfAsked askedOf(const SolvedLine& line, const Kerf& kerf);
[[nodiscard]] KerfAsked askedOf(Point from, Point to, const Kerf& kerf);

/// A line that names a saw which cannot cut it, or that no saw on the bench can: only its marks are left.
[[nodiscard]] Way markedWay(std::optional<std::size_t> saw);

/// From a fence's or stop's face to the nearer face of the blade, mm, for a line `at` mm from it: the
/// kerf lies beyond the line, or between the line and the face.
[[nodiscard]] inline double nearerFace(double at, bool wasteBeyond, double kerf) {
    return wasteBeyond ? at : at - kerf;
}

/// The ends of that edge a stop may touch: those with a true corner, its start first.
[[nodiscard]] std::vector<Edge> trueEnds(const Panel& panel, Edge against);

/// All ways the saw can cut the kerf, the best first: the reference edge before others, with a stop before
/// to marks. Empty where it cannot.
[[nodiscard]] std::vector<Way> waysAt(const Project& project, std::size_t saw, const KerfAsked& kerf);

/// What makes two kerfs one set-up: equal texts exactly where saw and setting are the same, to 1 nm.
/// Cut to marks, each line is a set-up of its own.
/// Source    the report, version 1, "Settings in a step".
[[nodiscard]] std::string setupKey(const Way& way, const LineId& line);

}  // namespace kerfwall
