// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/drafts.h"

#include <utility>

namespace kerfwall::oracle {

Project emptyPanel(double width, double height, const Tools& tools) {
    Project project;
    project.panel.width = width;
    project.panel.height = height;
    project.panel.thickness = 18;
    project.kerfDepth = tools.kerfDepth;
    Saw saw;
    saw.id = "rail";
    saw.kind = SawKind::GuideRail;
    saw.kerf = tools.kerf;
    saw.blade = tools.blade;
    Bench bench;
    bench.saws.push_back(saw);
    bench.trimBit = TrimBit{};
    bench.trimBit->diameter = tools.bit;
    project.bench = bench;
    return project;
}

LineId addLine(Project& project, const std::string& id, const Place& place, Extent extent) {
    LayoutLine line;
    line.id = id;
    line.place = place;
    line.saw = "rail";
    line.extent = extent;
    project.lines.push_back(line);
    return id;
}

Cutout& addCutout(Project& project, std::vector<Point> seeds) {
    Cutout cutout;
    cutout.id = "cut" + std::to_string(project.cutouts.size() + 1);
    cutout.seeds = std::move(seeds);
    project.cutouts.push_back(cutout);
    return project.cutouts.back();
}

Project windowProject(Point low, Point high, const Tools& tools, Extent extent) {
    Project project = emptyPanel(400, 300, tools);
    addLine(project, "S", ByOffset{Edge::Bottom, low.y}, extent);
    addLine(project, "E", ByOffset{Edge::Left, high.x}, extent);
    addLine(project, "N", ByOffset{Edge::Bottom, high.y}, extent);
    addLine(project, "W", ByOffset{Edge::Left, low.x}, extent);
    addCutout(project, {0.5 * (low + high)});
    return project;
}

}  // namespace kerfwall::oracle
