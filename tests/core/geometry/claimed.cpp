// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/geometry/claimed.h"

#include <utility>

#include "core/shop/laid_cuts.h"

namespace kerfwall::test {

std::vector<Claimed> claimed(const Project& project) {
    const double radius = trimBitOf(project).diameter / 2;
    return claimed(project, radius, radius);
}

std::vector<Claimed> claimed(const Project& project, double room, double sweep) {
    const Arranged arranged = arrange(project);
    std::vector<Border> borders;
    for (const ArrangedCutout& cutout : arranged.cutouts) {
        borders.push_back(borderOf(project, arranged, cutout, trimBitOf(project).diameter / 2));
    }
    const std::vector<LaidKerf> kerfs =
        layCuts(project, arranged, borders, {saidToStop(project, arranged), {}}, Solved{}).kerfs;
    std::vector<Claimed> all;
    for (std::size_t i = 0; i < borders.size(); ++i) {
        const double margin = 2 * room + 1.07;
        const Box& bounds = borders[i].drawn.bounds;
        const Frame frame = frameOf({bounds.low - Point{margin, margin}, bounds.high + Point{margin, margin}});
        Claimed made;
        made.rim = voidRim(project, arranged, arranged.cutouts[i], borders[i], kerfs, frame);
        made.opening = openingOf(made.rim, room, sweep, arranged.cutouts[i].faces, project, arranged);
        made.room = room;
        made.sweep = sweep;
        made.panel = project.panel;
        all.push_back(std::move(made));
    }
    return all;
}

}  // namespace kerfwall::test
