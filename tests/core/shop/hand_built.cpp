// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/shop/hand_built.h"

#include <algorithm>
#include <stdexcept>

namespace kerfwall::hand {

namespace {

Saw sawOf(const std::string& id, SawKind kind, double kerf, double blade) {
    Saw saw;
    saw.id = id;
    saw.kind = kind;
    saw.kerf = kerf;
    saw.blade = blade;
    return saw;
}

Corner cornerOf(const LineId& first, const LineId& second, Point at, Point towardsFirst,
                Point towardsSecond) {
    Corner corner;
    corner.first = first;
    corner.second = second;
    corner.point = at;
    corner.angle = 90;
    corner.radius = 6.35;
    corner.firstTangent = at + 6.35 * towardsFirst;
    corner.secondTangent = at + 6.35 * towardsSecond;
    return corner;
}

/// The mark where a line meets an edge there, ticked towards the waste.
void addMarks(const Project& project, SolvedLine& line, Point at, Point waste) {
    const double width = project.panel.width;
    const double height = project.panel.height;
    const auto add = [&](Edge edge, double along, double wasteAlong) {
        line.marks.push_back({{edge, along}, wasteAlong<0, wasteAlong> 0});
    };
    if (at.y == 0) {
        add(Edge::Bottom, at.x, waste.x);
    } else if (at.y == height) {
        add(Edge::Top, width - at.x, -waste.x);
    } else if (at.x == width) {
        add(Edge::Right, at.y, waste.y);
    } else {
        add(Edge::Left, height - at.y, -waste.y);
    }
}

}  // namespace

Bench workshop() {
    Bench bench;
    bench.saws = {sawOf("rip", SawKind::RipFence, 3.2, 254), sawOf("sled", SawKind::CrosscutSled, 3.2, 254),
                  sawOf("gauge", SawKind::MitreGauge, 3.2, 254), sawOf("rail", SawKind::GuideRail, 2.2, 160)};
    bench.trimBit = TrimBit{};
    bench.trimWith = Router::Table;
    bench.cornerDrill = 8;
    bench.bores = {20, 25, 30, 35, 40, 50};
    bench.circleBit = 8;
    return bench;
}

Project panelOf(double width, double height, double thickness) {
    Project project;
    project.panel.width = width;
    project.panel.height = height;
    project.panel.thickness = thickness;
    project.kerfDepth = 6;
    project.bench = workshop();
    return project;
}

SolvedLine lineOf(const Project& project, const LineId& id, Point from, Point to, Side waste, std::size_t saw,
                  double depth) {
    SolvedLine line;
    line.id = id;
    line.from = from;
    line.to = to;
    Kerf kerf;
    kerf.side = waste;
    kerf.saw = saw;
    kerf.width = project.bench->saws.at(saw).kerf;
    kerf.depth = depth;
    kerf.fullTo = kerf.surfaceTo = distance(from, to);
    line.kerfs = {kerf};
    const Point towards = waste == Side::Left ? leftOf(to - from) : -1.0 * leftOf(to - from);
    addMarks(project, line, from, towards);
    addMarks(project, line, to, towards);
    return line;
}

SolvedLine level(const Project& project, const LineId& id, double at, Side waste, std::size_t saw) {
    return lineOf(project, id, {0, at}, {project.panel.width, at}, waste, saw);
}

SolvedLine upright(const Project& project, const LineId& id, double at, Side waste, std::size_t saw) {
    return lineOf(project, id, {at, 0}, {at, project.panel.height}, waste, saw);
}

SolvedCutout windowOf(double left, double below, double right, double above) {
    SolvedCutout cutout;
    cutout.id = "window";
    const Point leftLow{left, below};
    const Point rightLow{right, below};
    const Point rightHigh{right, above};
    const Point leftHigh{left, above};
    cutout.walls = {{"A", leftLow, rightLow, Side::Left, 3, 0},
                    {"D", rightLow, rightHigh, Side::Left, 0, 1},
                    {"B", rightHigh, leftHigh, Side::Right, 1, 2},
                    {"C", leftHigh, leftLow, Side::Right, 2, 3}};
    cutout.corners = {
        cornerOf("A", "D", rightLow, {-1, 0}, {0, 1}), cornerOf("D", "B", rightHigh, {0, -1}, {-1, 0}),
        cornerOf("B", "C", leftHigh, {1, 0}, {0, -1}), cornerOf("C", "A", leftLow, {0, 1}, {1, 0})};
    cutout.parts = 1;
    cutout.widestAt = 0.5 * (leftLow + rightHigh);
    return cutout;
}

Job windowJob() {
    Job job{panelOf(400, 250), {}};
    job.solved.lines = {level(job.project, "A", 90, Side::Left), level(job.project, "B", 146, Side::Right),
                        upright(job.project, "C", 110, Side::Right),
                        upright(job.project, "D", 290, Side::Left)};
    job.solved.cutouts = {windowOf(110, 90, 290, 146)};
    job.solved.kerfDepth = 6;
    job.solved.bitRadius = 6.35;
    return job;
}

KerfAsked asked(const SolvedLine& line) { return askedOf(line, line.kerfs.at(0)); }

WorkStep stepFor(const OrderOfWork& order, const LineId& line) {
    for (const WorkStep& step : order.steps) {
        if (step.task == Task::Kerf && std::ranges::find(step.lines, line) != step.lines.end()) {
            return step;
        }
    }
    throw std::logic_error("no step cuts " + line);
}

}  // namespace kerfwall::hand
