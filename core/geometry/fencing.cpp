// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/fencing.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/geometry/clip.h"
#include "core/geometry/distance.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/nearest.h"
#include "core/geometry/whole_step.h"

namespace kerfwall {
namespace {

constexpr double kFurthest = 10000;  // mm, as the project file says
constexpr double kThreeQuarters = 19.05, kHalf = 12.7;  // of an inch, mm

double along(const Straight& straight, Point place) { return dot(place - straight.start, straight.along); }
double leftBy(const Straight& straight, Point place) { return dot(place - straight.start, leftOf(straight.along)); }

/// The middle of the cutout nearest to a place, or of the panel.
Point steeredAt(const Project& project, const Solved& solved, Point place) {
    std::optional<Point> best;
    for (const SolvedCutout& cutout : solved.cutouts) {
        const Point middle = 0.5 * (cutout.drawn.bounds.low + cutout.drawn.bounds.high);
        if (!best || distance(middle, place) < distance(*best, place)) best = middle;
    }
    return best.value_or(0.5 * Point{project.panel.width, project.panel.height});
}

/// What of the face lies on the panel, along its straight, on whole steps inwards.
std::optional<std::pair<double, double>> spanOnPanel(const Panel& panel, const Straight& straight, double offset, double step) {
    const Point start = straight.start + offset * leftOf(straight.along);
    const auto run = clipToPanel(panel, start, straight.along);
    if (!run) return std::nullopt;
    // A whole number of steps in decimals is missed by a rounding error as often as not.
    const double slack = step * 1e-6;
    const double low = std::ceil((along(straight, run->first) - slack) / step) * step;
    const double high = std::floor((along(straight, run->second) + slack) / step) * step;
    if (high - low < kShortestFence) return std::nullopt;
    return std::pair{low, high};
}

}  // namespace

FenceKindOf nextFence(const Project& project, const Solved& solved, FenceKind kind) {
    FenceKindOf next;
    if (!project.fences.empty()) {
        const Fence& last = project.fences.back();
        next.width = last.width;
        next.height = last.height;
        next.groove = last.groove;
    } else {
        if (project.units == Units::Inches) {
            next.width = kThreeQuarters;
            next.height = kHalf;
        }
        if (project.workpiece && project.workpiece->thickness) next.height = std::min(next.height, *project.workpiece->thickness);
    }
    next.kind = kind;
    next.face = solved.use.againstWork;
    return next;
}

std::optional<Base> fenceBaseNear(const Project& project, const Solved& solved, Point place, double reach, double edgeReach) {
    if (const auto line = lineNear(solved, place, reach)) return line->id;
    const EdgeMark mark = nearestMark(project.panel, place);
    if (distance(markPlace(project.panel, mark), place) > edgeReach) return std::nullopt;
    return mark.edge;
}

std::optional<double> offsetAt(const Project& project, const Solved& solved, const Base& base, Point place, double step) {
    const auto straight = straightOf(project.panel, solved, base);
    if (!straight) return std::nullopt;
    return std::clamp(stepped(leftBy(*straight, place), step), -kFurthest, kFurthest);
}

std::optional<Fence> fenceFor(const Project& project, const Solved& solved, const FenceWish& wish) {
    const auto straight = straightOf(project.panel, solved, wish.along);
    if (!straight) return std::nullopt;
    Fence fence;
    fence.along = wish.along;
    fence.width = wish.of.width;
    fence.height = wish.of.height;
    fence.groove = wish.of.groove;
    fence.kind = wish.of.kind;
    fence.face = wish.of.face;
    const double edgeWidth = std::holds_alternative<Edge>(wish.along) ? fence.width : 0;
    fence.offset = wish.offset.value_or(edgeWidth);
    const auto span = spanOnPanel(project.panel, *straight, fence.offset, wish.step);
    if (!span) return std::nullopt;
    std::tie(fence.from, fence.to) = *span;
    if (fence.kind == FenceKind::Stop) {
        const double half = std::min(kStopLength, span->second - span->first) / 2;
        const double middle = std::clamp(along(*straight, wish.place), span->first + half, span->second - half);
        fence.from = stepped(middle - half, wish.step);
        fence.to = fence.from + 2 * half;
    }
    const Point steered = steeredAt(project, solved, wish.place);
    fence.body = leftBy(*straight, steered) > fence.offset ? Side::Right : Side::Left;
    return fence;
}

std::optional<std::pair<Point, Point>> fenceFace(const Project& project, const Solved& solved, const Fence& fence) {
    const std::vector<Point> body = fenceBody(project, solved, fence);
    if (body.empty()) return std::nullopt;
    return std::pair{body[0], body[1]};
}

std::optional<NearFence> fenceNear(const Project& project, const Solved& solved, Point place, double reach) {
    for (std::size_t i = project.fences.size(); i-- > 0;) {  // the one drawn last lies on top
        const Fence& fence = project.fences[i];
        const auto straight = straightOf(project.panel, solved, fence.along);
        if (!straight) continue;
        const double at = along(*straight, place), off = leftBy(*straight, place) - fence.offset;
        const double into = fence.body == Side::Left ? off : -off;
        const auto [low, high] = std::minmax(fence.from, fence.to);
        if (at < low - reach || at > high + reach || into < -reach || into > fence.width + reach) continue;
        const double hold = std::min(reach, (high - low) / 3);
        FenceGrip grip = FenceGrip::Face;
        if (std::abs(at - fence.from) <= hold) grip = FenceGrip::From;
        if (std::abs(at - fence.to) <= hold) grip = FenceGrip::To;
        // Past an end it is that end which is meant.
        if (at < low) grip = fence.from < fence.to ? FenceGrip::From : FenceGrip::To;
        if (at > high) grip = fence.from < fence.to ? FenceGrip::To : FenceGrip::From;
        return NearFence{i, grip};
    }
    return std::nullopt;
}

Project withFenceCarried(const Project& project, const Solved& solved, NearFence held, Point grabbed, Point now, double step) {
    Project next = project;
    Fence& fence = next.fences.at(held.fence);
    const auto straight = straightOf(project.panel, solved, fence.along);
    if (!straight) return next;
    const double slid = along(*straight, now) - along(*straight, grabbed);
    const bool onwards = fence.from < fence.to;
    if (held.grip == FenceGrip::From) {
        const double from = stepped(fence.from + slid, step);
        fence.from = onwards ? std::min(from, fence.to - kShortestFence) : std::max(from, fence.to + kShortestFence);
        return next;
    }
    if (held.grip == FenceGrip::To) {
        const double to = stepped(fence.to + slid, step);
        fence.to = onwards ? std::max(to, fence.from + kShortestFence) : std::min(to, fence.from - kShortestFence);
        return next;
    }
    const double across = leftBy(*straight, now) - leftBy(*straight, grabbed);
    fence.offset = std::clamp(stepped(fence.offset + across, step), -kFurthest, kFurthest);
    if (fence.kind == FenceKind::Stop) {
        const double from = stepped(fence.from + slid, step);
        fence.to += from - fence.from;
        fence.from = from;
    }
    return next;
}

Project withFenceNudged(const Project& project, const Solved& solved, std::size_t index, Point shift) {
    Project next = project;
    Fence& fence = next.fences.at(index);
    const auto straight = straightOf(project.panel, solved, fence.along);
    if (!straight) return next;
    const double slid = dot(shift, straight->along);
    fence.from += slid;
    fence.to += slid;
    fence.offset = std::clamp(fence.offset + dot(shift, leftOf(straight->along)), -kFurthest, kFurthest);
    return next;
}

std::optional<double> faceToWork(const Project& project, const Solved& solved, const Fence& fence) {
    const auto face = fenceFace(project, solved, fence);
    if (!face) return std::nullopt;
    std::optional<double> least;
    for (const SolvedCutout& cutout : solved.cutouts) {
        const auto gap = gapBetween(straight(face->first, face->second), cutout.work);
        if (gap && (!least || gap->distance < *least)) least = gap->distance;
    }
    return least;
}

Project withFenceLonger(const Project& project, std::size_t index, double by) {
    Project next = project;
    Fence& fence = next.fences.at(index);
    const double way = fence.from < fence.to ? 1 : -1;
    fence.to = fence.from + way * std::max(kShortestFence, std::abs(fence.to - fence.from) + by);
    return next;
}

}  // namespace kerfwall
