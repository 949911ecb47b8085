// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/rough_faces.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <optional>
#include <set>
#include <string>

#include "tests/oracle/exact_line.h"

namespace kerfwall::oracle {
namespace {

constexpr double kLeastFace = 0.5;  // mm²
constexpr double kAcross = 0.02;    // mm: a step over a side into the neighbour

struct RoughLine {
    Point p;
    Point way;  // unit
    std::size_t index = 0;
};

double sideOf(const RoughLine& line, Point at) { return cross(line.way, at - line.p); }

struct RoughFace {
    std::vector<Point> corners;
    std::vector<std::optional<std::size_t>> on;  // the line under the side from each corner; none: an edge
};

RoughFace clipped(const RoughFace& face, const RoughLine& line, double sign) {
    RoughFace kept;
    const std::size_t n = face.corners.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Point a = face.corners[i];
        const Point b = face.corners[(i + 1) % n];
        const double da = sign * sideOf(line, a);
        const double db = sign * sideOf(line, b);
        if (da >= 0) {
            kept.corners.push_back(a);
            kept.on.push_back(face.on[i]);
        }
        if ((da >= 0) != (db >= 0)) {
            kept.corners.push_back(a + (da / (da - db)) * (b - a));
            kept.on.push_back(da >= 0 ? std::optional(line.index) : face.on[i]);
        }
    }
    return kept;
}

struct Finder {
    std::vector<RoughLine> lines;
    Panel panel;

    std::string signs(Point at) const {
        std::string text;
        for (const RoughLine& line : lines) text += sideOf(line, at) > 0 ? '+' : '-';
        return text;
    }
    RoughFace faceRound(Point at) const {
        RoughFace face{{{0, 0}, {panel.width, 0}, {panel.width, panel.height}, {0, panel.height}}, {}};
        face.on.resize(4);
        for (const RoughLine& line : lines) face = clipped(face, line, sideOf(line, at) > 0 ? 1 : -1);
        return face;
    }
};

// Area and centroid of a convex polygon.
std::pair<double, Point> weigh(const std::vector<Point>& corners) {
    double area = 0;
    Point sum;
    for (std::size_t i = 1; i + 1 < corners.size(); ++i) {
        const double part = cross(corners[i] - corners[0], corners[i + 1] - corners[0]) / 2;
        area += part;
        sum = sum + (part / 3) * (corners[0] + corners[i] + corners[i + 1]);
    }
    return {area, area > 0 ? (1 / area) * sum : Point{}};
}

}  // namespace

std::vector<Point> seedsGrown(const Project& project, Point first, const std::vector<std::size_t>& own,
                              std::size_t most) {
    const auto exact = exactLines(project);
    if (!exact) return {};
    Finder finder{{}, project.panel};
    for (std::size_t i = 0; i < exact->size(); ++i)
        if (project.lines[i].cut)
            finder.lines.push_back({rounded((*exact)[i].p), unit(rounded((*exact)[i].d)), i});
    std::vector<Point> seeds;
    std::set<std::string> seen{finder.signs(first)};
    std::deque<Point> waiting{first};
    while (!waiting.empty() && seeds.size() < most) {
        const Point at = waiting.front();
        waiting.pop_front();
        const RoughFace face = finder.faceRound(at);
        const auto [area, middle] = weigh(face.corners);
        const Point seed{std::round(middle.x * 1000) / 1000, std::round(middle.y * 1000) / 1000};
        if (area < kLeastFace || finder.signs(seed) != finder.signs(at)) return {};
        seeds.push_back(seed);
        for (std::size_t i = 0; i < face.corners.size(); ++i) {
            if (!face.on[i] || std::find(own.begin(), own.end(), *face.on[i]) != own.end()) continue;
            const Point a = face.corners[i];
            const Point b = face.corners[(i + 1) % face.corners.size()];
            if (distance(a, b) < 1) continue;
            const Point over = 0.5 * (a + b) - kAcross * leftOf(unit(b - a));
            if (seen.insert(finder.signs(over)).second) waiting.push_back(over);
        }
    }
    return seeds;
}

}  // namespace kerfwall::oracle
