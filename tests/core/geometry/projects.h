// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/says/project.h"

namespace kerfwall::test {

/// A bare panel of 12 mm with the stock bench.
inline Project panelOf(double width, double height) {
    Project project;
    project.panel.width = width;
    project.panel.height = height;
    project.panel.thickness = 12;
    return project;
}

inline LayoutLine lineAt(std::string id, Place place) {
    LayoutLine line;
    line.id = std::move(id);
    line.place = std::move(place);
    return line;
}

inline LayoutLine offsetLine(std::string id, Base from, double distance) {
    return lineAt(std::move(id), ByOffset{std::move(from), distance});
}

inline Cutout cutoutAt(std::string id, std::vector<Point> seeds) {
    Cutout cutout;
    cutout.id = std::move(id);
    cutout.seeds = std::move(seeds);
    return cutout;
}

/// Lines A (90 up), B (146 up), C (110 in), D (290 in) on a 400 x 250 panel, their middle a cutout of 180 x 56.
inline Project windowProject() {
    Project project = panelOf(400, 250);
    project.lines = {offsetLine("A", Edge::Bottom, 90), offsetLine("B", Edge::Bottom, 146),
                     offsetLine("C", Edge::Left, 110), offsetLine("D", Edge::Left, 290)};
    project.cutouts = {cutoutAt("window", {{200, 120}})};
    return project;
}

/// The same kerf for every saw, and a bit.
inline void setTools(Project& project, double kerf, double bit) {
    Bench bench = stockBench();
    for (Saw& saw : bench.saws) saw.kerf = kerf;
    bench.trimBit->diameter = bit;
    project.bench = bench;
}

}  // namespace kerfwall::test
