// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/face_seeds.h"

#include <cmath>

#include "core/geometry/clip.h"

namespace kerfwall {
namespace {

using Polygon = std::vector<Point>;

constexpr double kSliver = 0.01;  // mm²: the longest line there is, out of its place by a nanometre, leaves 0.004

Polygon panelPolygon(const Panel& panel) { return {{0, 0}, {panel.width, 0}, {panel.width, panel.height}, {0, panel.height}}; }

Polygon onPanel(const Panel& panel, Polygon region) {
    const Polygon border = panelPolygon(panel);
    for (std::size_t i = 0; i < border.size() && !region.empty(); ++i) {
        region = leftPart(region, border[i], border[(i + 1) % border.size()]);
    }
    return region;
}

bool isWide(const Polygon& polygon) { return polygon.size() > 2 && std::abs(polygonArea(polygon)) > kSliver; }

}  // namespace

bool isInFace(const Polygon& face, Point place) {
    for (std::size_t i = 0; i < face.size(); ++i) {
        if (cross(face[(i + 1) % face.size()] - face[i], place - face[i]) <= 0) return false;
    }
    return !face.empty();
}

Point seedOf(const Polygon& face) {
    const Point centre = polygonCentre(face);
    const Point tenth{std::round(centre.x * 10) / 10, std::round(centre.y * 10) / 10};
    return isInFace(face, tenth) ? tenth : centre;
}

Polygon faceRound(const Panel& panel, const std::vector<SolvedLine>& lines, Point place) {
    Polygon face = panelPolygon(panel);
    for (const SolvedLine& line : lines) {
        if (!line.cut || face.empty()) continue;
        const bool left = cross(line.to - line.from, place - line.from) > 0;
        face = left ? leftPart(face, line.from, line.to) : leftPart(face, line.to, line.from);
    }
    return face;
}

std::vector<Point> seedsWithin(const Panel& panel, const std::vector<SolvedLine>& lines, const Polygon& region) {
    std::vector<Polygon> parts{onPanel(panel, polygonArea(region) < 0 ? Polygon(region.rbegin(), region.rend()) : region)};
    for (const SolvedLine& line : lines) {
        if (!line.cut) continue;
        std::vector<Polygon> halves;
        for (const Polygon& part : parts) {
            for (Polygon& half : std::vector{leftPart(part, line.from, line.to), leftPart(part, line.to, line.from)}) {
                if (isWide(half)) halves.push_back(std::move(half));
            }
        }
        parts = std::move(halves);
    }
    std::vector<Point> seeds;
    for (const Polygon& part : parts) {
        if (isWide(part)) seeds.push_back(seedOf(part));
    }
    return seeds;
}

}  // namespace kerfwall
