// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/swept_region.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

bool holdsPlace(const Box& box, Point p) {
    return p.x >= box.low.x && p.x <= box.high.x && p.y >= box.low.y && p.y <= box.high.y;
}

/// Where `curve` meets the line: into `on` what lies along it, into `marks` the rest.
void meet(const RimLine& line, const Curve& curve, Spans& on, std::vector<double>& marks) {
    const double from = cross(line.along, curve.from - line.origin);
    const double to = cross(line.along, curve.to - line.origin);
    const double atFrom = dot(line.along, curve.from - line.origin);
    const double atTo = dot(line.along, curve.to - line.origin);
    if (std::abs(from) < kTouch) marks.push_back(atFrom);
    if (std::abs(to) < kTouch) marks.push_back(atTo);
    if (!curve.isArc) {
        if (std::abs(from) <= kSameSide && std::abs(to) <= kSameSide) {
            addSpan(on, std::min(atFrom, atTo), std::max(atFrom, atTo));
        } else if ((from > 0) != (to > 0)) {
            marks.push_back(atFrom + from / (from - to) * (atTo - atFrom));
        }
        return;
    }
    const double off = cross(line.along, curve.centre - line.origin);
    if (curve.radius - std::abs(off) < kTouch) return;
    const double foot = dot(line.along, curve.centre - line.origin);
    const double half = std::sqrt((curve.radius - off) * (curve.radius + off));
    constexpr double kNearTheArc = 1e-6;  // a mark too many does no harm
    for (const double at : {foot - half, foot + half}) {
        if (distanceTo(curve, line.place(at)) < kNearTheArc) marks.push_back(at);
    }
}

}  // namespace

void crossLine(const Curve& arc, Point origin, Point direction, std::vector<double>& marks) {
    const double off = cross(direction, arc.centre - origin);
    if (std::abs(std::abs(off) - arc.radius) >= kTouch) meetLine(arc, origin, direction, marks);
}

void crossCircle(const Curve& arc, Point centre, double radius, std::vector<double>& marks) {
    const double gap = distance(arc.centre, centre);
    const bool touches = std::abs(gap - std::abs(arc.radius - radius)) < kTouch ||
                         std::abs(gap - (arc.radius + radius)) < kTouch;
    if (!touches) meetCircle(arc, centre, radius, marks);
}

SweptRegion::SweptRegion(const Rim& rim) {
    for (std::vector<Curve>& run : rim.closedRuns()) {
        if (std::abs(signedArea(run)) < kDust) continue;
        Box bounds = run.front().bounds();
        for (const Curve& curve : run) {
            const Box box = curve.bounds();
            bounds.low = {std::min(bounds.low.x, box.low.x), std::min(bounds.low.y, box.low.y)};
            bounds.high = {std::max(bounds.high.x, box.high.x), std::max(bounds.high.y, box.high.y)};
            m_curves.push_back(curve);
        }
        m_loops.push_back({std::move(run), bounds});
    }
}

bool SweptRegion::holds(Point place) const {
    int turns = 0;
    for (const Loop& loop : m_loops) {
        if (holdsPlace(loop.bounds, place)) turns += windingRound(loop.curves, place);
    }
    return turns != 0;
}

bool SweptRegion::isOnRim(Point place) const {
    return std::ranges::any_of(m_curves,
                               [&](const Curve& curve) { return distanceTo(curve, place) < kTouch; });
}

Spans SweptRegion::coverOn(const RimLine& line) const {
    Spans covered;
    std::vector<double> met;
    for (const Curve& curve : m_curves) meet(line, curve, covered, met);
    const Spans beside = without(line.spans, covered);
    for (const auto& [from, to] : beside) {
        std::vector<double> marks{from, to};
        std::ranges::copy_if(met, std::back_inserter(marks), [&](double at) { return at > from && at < to; });
        std::ranges::sort(marks);
        for (std::size_t i = 0; i + 1 < marks.size(); ++i) {
            if (marks[i + 1] - marks[i] < kBite) continue;
            const double middle = (marks[i] + marks[i + 1]) / 2;
            if (holds(line.place(middle))) addSpan(covered, marks[i], marks[i + 1]);
        }
    }
    return covered;
}

void SweptRegion::markOn(const Curve& arc, std::vector<double>& marks) const {
    for (const Curve& curve : m_curves) {
        if (curve.isArc)
            crossCircle(arc, curve.centre, curve.radius, marks);
        else
            crossLine(arc, curve.from, curve.tangentAt(0), marks);
        for (const Point end : {curve.from, curve.to}) {
            if (std::abs(distance(end, arc.centre) - arc.radius) < kTouch) {
                meetLine(arc, arc.centre, unit(end - arc.centre), marks);
            }
        }
    }
}

}  // namespace kerfwall
