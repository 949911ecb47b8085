// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/wanted_sides.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/geometry/clip.h"
#include "core/geometry/distance.h"
#include "core/geometry/outline.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

Point cornerAfter(const std::vector<Point>& polygon, std::size_t corner) { return polygon[(corner + 1) % polygon.size()]; }

Point cornerBefore(const std::vector<Point>& polygon, std::size_t corner) {
    return polygon[(corner + polygon.size() - 1) % polygon.size()];
}

OutlinePiece sideOf(const std::vector<Point>& polygon, std::size_t side) {
    return straight(polygon[side], cornerAfter(polygon, side));
}

bool areNeighbours(std::size_t count, std::size_t first, std::size_t second) {
    return second - first == 1 || (first == 0 && second == count - 1);
}

// Neighbours that double back on one another.
bool foldsBack(const std::vector<Point>& polygon, std::size_t corner) {
    const Point in = unit(polygon[corner] - cornerBefore(polygon, corner));
    const Point out = unit(cornerAfter(polygon, corner) - polygon[corner]);
    return std::abs(cross(in, out)) < kNearlyParallel && dot(in, out) < 0;
}

// Whether that gap is the length of the one side between two sides.
bool isSideBetween(const std::vector<Point>& polygon, std::size_t first, std::size_t second, const Gap& gap) {
    const auto spans = [&](std::size_t from, std::size_t to) {
        return (to + polygon.size() - from) % polygon.size() == 2 && gap.distance >= length(cornerAfter(polygon, from) - polygon[to]) - kBite;
    };
    return spans(first, second) || spans(second, first);
}

}  // namespace

std::optional<std::pair<std::size_t, std::size_t>> crossingSides(const std::vector<Point>& polygon) {
    const std::size_t n = polygon.size();
    for (std::size_t i = 0; i < n; ++i) {
        const std::size_t before = (i + n - 1) % n;
        if (foldsBack(polygon, i)) return std::pair(std::min(before, i), std::max(before, i));
    }
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = i + 1; j < n; ++j) {
            if (areNeighbours(n, i, j)) continue;
            if (gapBetween(sideOf(polygon, i), sideOf(polygon, j)).distance <= kDoubt) return std::pair(i, j);
        }
    }
    return std::nullopt;
}

double angleAt(const std::vector<Point>& polygon, std::size_t corner) {
    const Point in = polygon[corner] - cornerBefore(polygon, corner);
    const Point out = cornerAfter(polygon, corner) - polygon[corner];
    return 180 - degrees(std::atan2(cross(in, out), dot(in, out)));
}

std::vector<Point> movedOut(const std::vector<Point>& polygon, double by) {
    if (by == 0) return polygon;
    std::vector<Point> moved;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point in = unit(polygon[i] - cornerBefore(polygon, i));
        const Point out = unit(cornerAfter(polygon, i) - polygon[i]);
        moved.push_back(polygon[i] + (by / cross(in, out)) * (in - out));
    }
    return moved;
}

std::optional<std::size_t> turnedSide(const std::vector<Point>& polygon, const std::vector<Point>& moved) {
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        if (dot(cornerAfter(polygon, i) - polygon[i], cornerAfter(moved, i) - moved[i]) <= 0) return i;
    }
    return std::nullopt;
}

std::optional<Neck> narrowestNeck(const std::vector<Point>& polygon) {
    const Outline outline = makeOutline({polygonLoop(polygon)});
    const std::size_t n = polygon.size();
    std::optional<Neck> narrowest;
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = i + 1; j < n; ++j) {
            if (areNeighbours(n, i, j)) continue;
            const Gap gap = gapBetween(sideOf(polygon, i), sideOf(polygon, j));
            if (narrowest && gap.distance >= narrowest->width) continue;
            if (isSideBetween(polygon, i, j, gap) || !isInside(outline, 0.5 * (gap.first + gap.second))) continue;
            narrowest = Neck{gap.distance, i, j};
        }
    }
    return narrowest;
}

std::vector<std::vector<Point>> facesWithin(const Panel& panel, const std::vector<Point>& polygon) {
    std::vector<std::vector<Point>> faces{{{0, 0}, {panel.width, 0}, {panel.width, panel.height}, {0, panel.height}}};
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point p = polygon[i];
        const Point q = cornerAfter(polygon, i);
        std::vector<std::vector<Point>> parts;
        for (const auto& face : faces) {
            for (auto part : {leftPart(face, p, q), leftPart(face, q, p)}) {
                if (part.size() > 2 && polygonArea(part) > kDust) parts.push_back(std::move(part));
            }
        }
        faces = std::move(parts);
    }
    const Outline outline = makeOutline({polygonLoop(polygon)});
    std::erase_if(faces, [&](const auto& face) { return !isInside(outline, polygonCentre(face)); });
    return faces;
}

bool runsThroughFace(Point p, Point q, const std::vector<Point>& face) {
    const Point along = unit(q - p);
    const auto [low, high] = std::ranges::minmax(face, {}, [&](Point corner) { return cross(along, corner - p); });
    return cross(along, low - p) < -kDoubt && cross(along, high - p) > kDoubt;
}

}  // namespace kerfwall
