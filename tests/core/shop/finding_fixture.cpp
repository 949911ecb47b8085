// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/shop/finding_fixture.h"

#include <algorithm>
#include <array>

#include "core/geometry/distance.h"
#include "core/geometry/wanted_outline.h"

namespace kerfwall::testing_bench {
namespace {

const std::array<LineId, 4> kSides{"A", "D", "B", "C"};

std::vector<Point> pointsOf(Box box) {
    return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
}

Outline rounded(Box box, double radius) {
    const std::array<double, 4> radii{radius, radius, radius, radius};
    OutlineLoop loop = roundedLoop(pointsOf(box), radii);
    std::size_t side = 0;
    for (OutlinePiece& piece : loop) {
        if (!piece.isArc) {
            piece.on = kSides[side++ % 4];
        }
    }
    return makeOutline({loop});
}

}  // namespace

Project panelOf(double width, double height, double thickness) {
    Project project;
    project.panel.width = width;
    project.panel.height = height;
    project.panel.thickness = thickness;
    return project;
}

SolvedLine lineWithKerf(const LineId& id, Point from, Point to, Side side, double width, double depth) {
    SolvedLine line;
    line.id = id;
    line.from = from;
    line.to = to;
    Kerf kerf;
    // The stock bench: rip fence along the bottom edge, sled square to it, rail askew.
    kerf.saw = from.y == to.y ? 0 : from.x == to.x ? 1 : 3;
    kerf.side = side;
    kerf.width = width;
    kerf.depth = depth;
    kerf.fullTo = kerf.surfaceTo = distance(from, to);
    line.kerfs = {kerf};
    return line;
}

Solved answerFor(const Project& project, double bit) {
    Solved solved;
    solved.bitRadius = bit / 2;
    solved.kerfDepth = project.kerfDepth.value_or(6);
    solved.use.guide = bit;
    solved.use.cutter = bit;
    solved.use.guideLength = 5;
    return solved;
}

SolvedCutout rectangle(const std::string& id, Box box, double radius, double offset) {
    const std::vector<Point> points = pointsOf(box);
    SolvedCutout cutout;
    cutout.id = id;
    cutout.parts = 1;
    cutout.drawn = rounded(box, 0);
    cutout.faces = {points};
    cutout.opening = rounded(box, radius);
    const Point in{offset, offset};
    cutout.work = rounded({box.low + in, box.high - in}, radius);
    cutout.widest = std::min(box.high.x - box.low.x, box.high.y - box.low.y);
    cutout.widestAt = 0.5 * (box.low + box.high);
    for (std::size_t i = 0; i < 4; ++i) {
        Wall wall;
        wall.line = kSides[i];
        wall.from = points[i];
        wall.to = points[(i + 1) % 4];
        wall.startCorner = i;
        wall.endCorner = (i + 1) % 4;
        cutout.walls.push_back(wall);
        Corner corner;
        corner.first = kSides[(i + 3) % 4];
        corner.second = kSides[i];
        corner.point = points[i];
        corner.angle = 90;
        corner.radius = radius;
        corner.firstTangent = points[i] + radius * unit(points[(i + 3) % 4] - points[i]);
        corner.secondTangent = points[i] + radius * unit(points[(i + 1) % 4] - points[i]);
        corner.shortBy = radius * (std::sqrt(2.0) - 1);
        cutout.corners.push_back(corner);
    }
    return cutout;
}

void put(Project& project, Solved& solved, SolvedCutout cutout) {
    cutout.index = project.cutouts.size();
    Cutout said;
    said.id = cutout.id;
    project.cutouts.push_back(said);
    solved.cutouts.push_back(std::move(cutout));
}

std::vector<Finding> only(const std::vector<Finding>& all, const std::string& code) {
    std::vector<Finding> some;
    std::ranges::copy_if(all, std::back_inserter(some),
                         [&](const Finding& finding) { return finding.code == code; });
    return some;
}

bool saysANumber(const std::string& text) {
    return !text.empty() && text.back() == '.' &&
           std::ranges::any_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

}  // namespace kerfwall::testing_bench
