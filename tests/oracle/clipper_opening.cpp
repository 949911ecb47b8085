// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/clipper_opening.h"

#include <cmath>
#include <numbers>
#include <polyclipping/clipper.hpp>

namespace kerfwall::oracle {
namespace {

using namespace ClipperLib;

constexpr double kNanometres = 1e6;     // in a millimetre
constexpr double kArcTolerance = 5e-5;  // mm
constexpr double kSliver = 1e-5;        // mm²: what rounding to nanometres leaves along 10 mm
constexpr double kHealed = 3e-6;        // mm: two kerfs on both sides of one line, each rounded by itself
constexpr double kInside = 2e-6;        // mm inside the panel's edge at which the sweep is cut off

IntPoint nanometres(Point p) { return {std::llround(p.x * kNanometres), std::llround(p.y * kNanometres)}; }

Path pathOf(const std::vector<Point>& corners) {
    Path path;
    for (const Point& corner : corners) path.push_back(nanometres(corner));
    if (!Orientation(path)) ReversePath(path);
    return path;
}

Path boxPath(Point low, Point high) { return pathOf({low, {high.x, low.y}, high, {low.x, high.y}}); }

Paths combined(ClipType how, const Paths& subject, const Paths& clip) {
    Clipper clipper;
    clipper.AddPaths(subject, ptSubject, true);
    clipper.AddPaths(clip, ptClip, true);
    Paths result;
    clipper.Execute(how, result, pftNonZero, pftNonZero);
    return result;
}

double areaOf(const Paths& paths) {
    double area = 0;
    for (const Path& path : paths) area += Area(path) / (kNanometres * kNanometres);
    return area;
}

// A region's parts, each an outer path with its holes.
std::vector<Paths> partsOf(const Paths& region) {
    Clipper clipper;
    clipper.AddPaths(region, ptSubject, true);
    PolyTree tree;
    clipper.Execute(ctUnion, tree, pftNonZero, pftNonZero);
    std::vector<Paths> parts;
    for (const PolyNode* node = tree.GetFirst(); node; node = node->GetNext()) {
        if (node->IsHole()) continue;
        Paths part{node->Contour};
        for (const PolyNode* hole : node->Childs) part.push_back(hole->Contour);
        parts.push_back(part);
    }
    return parts;
}

Paths offsetBy(const Paths& region, double distance) {
    ClipperOffset offset(2, kArcTolerance * kNanometres);
    offset.AddPaths(region, jtRound, etClosedPolygon);
    Paths result;
    offset.Execute(result, distance * kNanometres);
    return result;
}

Path arcPath(const PlainRound& round) {
    // The wood kept at a bored corner: corner, along the second wall, back along the arc.
    const Point a = round.second - round.centre;
    const Point b = round.first - round.centre;
    const double turn = std::atan2(cross(a, b), dot(a, b));
    const int steps = std::max(
        2, static_cast<int>(std::ceil(std::abs(turn) / (2 * std::acos(1 - kArcTolerance / round.radius)))));
    std::vector<Point> corners{round.corner};
    for (int i = 0; i <= steps; ++i) {
        const double at = turn * i / steps;
        corners.push_back({round.centre.x + a.x * std::cos(at) - a.y * std::sin(at),
                           round.centre.y + a.x * std::sin(at) + a.y * std::cos(at)});
    }
    return pathOf(corners);
}

Path discPath(const PlainRound& round) {
    const int steps =
        static_cast<int>(std::ceil(std::numbers::pi / std::acos(1 - kArcTolerance / round.radius)));
    const Point a = round.first - round.centre;
    std::vector<Point> corners;
    for (int i = 0; i < steps; ++i) {
        const double at = 2 * std::numbers::pi * i / steps;
        corners.push_back({round.centre.x + a.x * std::cos(at) - a.y * std::sin(at),
                           round.centre.y + a.x * std::sin(at) + a.y * std::cos(at)});
    }
    return pathOf(corners);
}

Path bandPath(const PlainBand& band) {
    const Point along = unit(band.to - band.from);
    const Point across = (band.left ? 1.0 : -1.0) * leftOf(along);
    const Point a = band.from + band.s0 * along;
    const Point b = band.from + band.s1 * along;
    return pathOf({a, b, b + band.width * across, a + band.width * across});
}

// Where kerfs lie on both sides of one line, rounding must leave no film of wood between them.
Paths films(const PlainLayout& layout) {
    Paths strips;
    for (const PlainBand& left : layout.bands)
        for (const PlainBand& right : layout.bands) {
            if (left.line != right.line || !left.left || right.left) continue;
            const double s0 = std::max(left.s0, right.s0);
            const double s1 = std::min(left.s1, right.s1);
            if (s1 <= s0) continue;
            const Point along = unit(left.to - left.from);
            const Point half = kHealed * leftOf(along);
            const Point a = left.from + s0 * along;
            const Point b = left.from + s1 * along;
            strips.push_back(pathOf({a - half, b - half, b + half, a + half}));
        }
    return strips;
}

Paths facesOf(const PlainCutout& cutout) {
    Paths faces;
    for (const std::vector<Point>& face : cutout.faces) faces.push_back(pathOf(face));
    return combined(ctUnion, faces, {});
}

Paths voidOf(const PlainLayout& layout, const PlainCutout& cutout, double world) {
    Paths kept;
    for (const PlainRound& round : cutout.rounds) kept.push_back(arcPath(round));
    Paths empty = combined(ctDifference, facesOf(cutout), kept);
    for (const PlainRound& round : cutout.rounds) empty.push_back(discPath(round));
    const Paths outside =
        combined(ctDifference, {boxPath({-world, -world}, {layout.width + world, layout.height + world})},
                 {boxPath({0, 0}, {layout.width, layout.height})});
    empty.insert(empty.end(), outside.begin(), outside.end());
    Paths kerfs = films(layout);
    for (const PlainBand& band : layout.bands)
        if (band.s1 > band.s0) kerfs.push_back(bandPath(band));
    return combined(ctUnion, empty, kerfs);
}

}  // namespace

double clipperTolerance(const OpeningAnswer& exact) {
    return 2 / kNanometres * exact.perimeter + 2 * (2.0 / 3) * kArcTolerance * exact.arcLength + 1e-3;
}

OpeningAnswer clipperOpening(const OpeningQuestion& question) {
    const PlainLayout& layout = *question.layout;
    const PlainCutout& cutout = layout.cutouts[question.cutout];
    const Paths drawn = facesOf(cutout);
    const double world = 4 * (question.erode + question.dilate) + 10;
    OpeningAnswer answer;
    Paths opened;
    for (const Paths& part : partsOf(offsetBy(voidOf(layout, cutout, world), -question.erode))) {
        if (areaOf(combined(ctIntersection, part, drawn)) < kSliver) continue;
        ++answer.parts;
        const Paths swept = offsetBy(part, question.dilate);
        opened.insert(opened.end(), swept.begin(), swept.end());
    }
    opened = combined(ctUnion, opened, {});
    opened = combined(ctIntersection, opened,
                      {boxPath({kInside, kInside}, {layout.width - kInside, layout.height - kInside})});
    for (const Paths& part : partsOf(opened)) {
        if (areaOf(combined(ctIntersection, part, drawn)) < kSliver) continue;
        answer.area += areaOf(part);
        for (const Path& path : part)
            for (std::size_t i = 0; i < path.size(); ++i) {
                const IntPoint& a = path[i];
                const IntPoint& b = path[(i + 1) % path.size()];
                answer.perimeter +=
                    std::hypot(static_cast<double>(b.X - a.X), static_cast<double>(b.Y - a.Y)) / kNanometres;
            }
    }
    return answer;
}

}  // namespace kerfwall::oracle
