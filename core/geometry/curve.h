// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <utility>
#include <vector>

#include "core/geometry/point.h"

namespace kerfwall {

/// Stretches of a parameter, sorted and apart.
using Spans = std::vector<std::pair<double, double>>;

/// Takes [from, to] out of `spans`.
void takeOut(Spans& spans, double from, double to);
/// Adds [from, to] to `spans`, joining what touches.
void addSpan(Spans& spans, double from, double to);
/// `spans` without every stretch of `without`.
[[nodiscard]] Spans without(Spans spans, const Spans& without);

/// A directed straight stretch or arc, what is free on its left. Its parameter runs from 0 to `size`:
/// mm along a straight stretch, radians swept along an arc.
struct Curve {
    Point from;
    Point to;
    bool isArc = false;
    Point centre;
    double radius = 0;
    bool anticlockwise = true;
    double size = 0;
    std::size_t tag = 0;  ///< the caller's

    [[nodiscard]] Point at(double t) const;
    [[nodiscard]] Point tangentAt(double t) const;  ///< unit
    [[nodiscard]] double lengthInMm() const { return isArc ? size * radius : size; }
    /// The stretch from parameter `a` to `b`.
    [[nodiscard]] Curve part(double a, double b) const;
    [[nodiscard]] Curve reversed() const;
    [[nodiscard]] Box bounds() const;
};

[[nodiscard]] Curve straight(Point from, Point to, std::size_t tag = 0);
/// Requires  radius > 0; `size` in (0, 2π].
[[nodiscard]] Curve arc(Point centre, double radius, double startAngle, double size, bool anticlockwise,
                        std::size_t tag = 0);
/// The arc round `centre` from one point to another, less than a whole turn; none (size 0) where they meet.
[[nodiscard]] Curve arcThrough(Point centre, double radius, Point from, Point to, bool anticlockwise,
                               std::size_t tag = 0);

[[nodiscard]] double distanceTo(const Curve& curve, Point place);

/// Parameters at which a curve meets the endless line through `origin` along unit `direction`.
void meetLine(const Curve& curve, Point origin, Point direction, std::vector<double>& found);
/// Parameters at which a curve meets a circle.
void meetCircle(const Curve& curve, Point centre, double radius, std::vector<double>& found);

/// Curves joined to loops: `next[i]` follows `curves[i]`; kOpenEnd where nothing does.
struct Rim {
    static constexpr std::size_t kOpenEnd = static_cast<std::size_t>(-1);
    std::vector<Curve> curves;
    std::vector<std::size_t> next;

    [[nodiscard]] std::vector<std::vector<std::size_t>> loops() const;  ///< closed runs only
    [[nodiscard]] std::vector<std::vector<Curve>> closedRuns() const;   ///< the same, as curves
    /// Where a run longer than kJoin breaks off; shorter ones are rounding dust.
    [[nodiscard]] std::vector<std::size_t> openEnds() const;
    /// The rim without that dust: a disc is not to rest on it.
    [[nodiscard]] Rim withoutStubs() const;
    [[nodiscard]] double lengthOf(const std::vector<std::size_t>& run) const;  ///< mm

  private:
    [[nodiscard]] std::vector<std::vector<std::size_t>> openRuns() const;
};

/// Joins curves end to start, nearest first, within kJoin. Where several meet in one point each goes on
/// with the one that bounds the same free wedge.
[[nodiscard]] Rim joinToRim(std::vector<Curve> curves);

/// A rim turned about, its other side free.
[[nodiscard]] Rim reversed(const Rim& rim);

/// Signed area of a closed run of curves, mm².
[[nodiscard]] double signedArea(const std::vector<Curve>& loop);
/// How often a closed run turns round a place that is not on it, anticlockwise positive.
[[nodiscard]] int windingRound(const std::vector<Curve>& loop, Point place);

}  // namespace kerfwall
