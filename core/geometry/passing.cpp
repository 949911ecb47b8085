// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/passing.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/clearing.h"
#include "core/geometry/clip.h"
#include "core/geometry/tangent.h"

namespace kerfwall {
namespace {

constexpr double kSameHeading = 1e-9;  // sine under which two lines are parallel

class Passes {
public:
    Passes(Point place, Point heading, double reach) : m_place(place), m_heading(heading), m_nearest(reach) {}

    void offer(Point on, const Hold& hold) {
        const double away = std::abs(cross(m_heading, on - m_place));
        if (away >= m_nearest) return;
        m_nearest = away;
        m_best = Passing{on, hold};
    }
    void offerCrossings(const Solved& solved);
    void offerBores(const Solved& solved);
    const std::optional<Passing>& best() const { return m_best; }

private:
    bool runsAlong(const SolvedLine& line) const {
        return std::abs(cross(m_heading, unit(line.to - line.from))) < kSameHeading;
    }

    Point m_place;
    Point m_heading;
    double m_nearest;
    std::optional<Passing> m_best;
};

void Passes::offerCrossings(const Solved& solved) {
    for (std::size_t i = 0; i < solved.lines.size(); ++i) {
        for (std::size_t j = i + 1; j < solved.lines.size(); ++j) {
            const SolvedLine &first = solved.lines[i], &second = solved.lines[j];
            if (runsAlong(first) || runsAlong(second)) continue;  // it would lie on that line
            const auto meet = crossingPlace(first, second);
            if (!meet) continue;
            Hold hold;
            hold.on = HoldOn::Crossing;
            hold.at = *meet;
            hold.first = first.id;
            hold.second = second.id;
            offer(*meet, hold);
        }
    }
}

void Passes::offerBores(const Solved& solved) {
    for (const BoreCircle& bore : boreCircles(solved)) {
        for (const double side : {1.0, -1.0}) {
            const Point touch = bore.centre + side * bore.radius * leftOf(m_heading);
            const auto isThere = [&](const SolvedLine& line) {
                return runsAlong(line) && std::abs(cross(m_heading, touch - line.from)) < kSameHeading * bore.radius;
            };
            if (std::ranges::any_of(solved.lines, isThere)) continue;  // the corner's own line
            Hold hold;
            hold.on = HoldOn::Bore;
            hold.at = touch;
            hold.first = bore.first;
            hold.second = bore.second;
            offer(touch, hold);
        }
    }
}

}  // namespace

std::optional<Passing> passingNear(const Project& project, const Solved& solved, Point place, Point heading, double margin,
                                   double reach) {
    Passes passes(place, heading, reach);
    passes.offerCrossings(solved);
    passes.offerBores(solved);
    for (const Clearing& clearing : clearingsAlong(project, solved, heading, margin)) {
        Hold hold;
        hold.on = HoldOn::SawnCorner;
        hold.at = clearing.corner;
        passes.offer(clearing.place, hold);
    }
    return passes.best();
}

}  // namespace kerfwall
