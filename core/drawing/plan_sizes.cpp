// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <set>

#include "core/drawing/plan_parts.h"
#include "core/drawing/drawn_size.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kAway = 11;  // from the opening to its first dimension line
constexpr double kStep = 8;   // from one dimension line to the next
constexpr std::size_t kMostSizes = 12;
constexpr double kSquareTo = 1e-9;  // sine of the angle under which a wall counts as along an edge

struct SizeLayout {
    const Project& project;
    const SolvedCutout& cutout;
    double scale = 1;
    int level = 0;    // dimension lines already laid below the opening
    int upright = 0;  // ... and to the right of it
};

void addDimension(Drawing& drawing, const SizeLayout& at, Point from, Point to, double offset, double size) {
    drawing.marks.emplace_back(Dimension{from, to, offset, drawnSize(size, at.project.units), at.cutout.id});
}

/// Both walls upright: the size runs along x, below the opening, in a chain from the panel's left edge.
void addLevelSize(Drawing& drawing, SizeLayout& at, const Wall& first, const Wall& second) {
    const double x0 = std::min(first.from.x, second.from.x);
    const double x1 = std::max(first.from.x, second.from.x);
    const double low = std::min({first.from.y, first.to.y, second.from.y, second.to.y});
    const double away = (kAway + kStep * at.level) * at.scale;
    const bool chain = at.level++ == 0;
    // Right of +x is down; where the opening stands low on the panel the line goes inside it.
    const double offset = low > away + 2 * at.scale ? -away : std::min(away, at.cutout.widest / 4);
    addDimension(drawing, at, {x0, low}, {x1, low}, offset, x1 - x0);
    if (chain && x0 > 0) addDimension(drawing, at, {0, low}, {x0, low}, offset, x0);
}

void addUprightSize(Drawing& drawing, SizeLayout& at, const Wall& first, const Wall& second) {
    const double y0 = std::min(first.from.y, second.from.y);
    const double y1 = std::max(first.from.y, second.from.y);
    const double right = std::max({first.from.x, first.to.x, second.from.x, second.to.x});
    const double away = (kAway + 5 + kStep * at.upright) * at.scale;
    const bool chain = at.upright++ == 0;
    const bool room = at.project.panel.width - right > away + 4 * at.scale;
    const double offset = room ? -away : std::min(away, at.cutout.widest / 4);
    addDimension(drawing, at, {right, y0}, {right, y1}, offset, y1 - y0);
    if (chain && y0 > 0) addDimension(drawing, at, {right, 0}, {right, y0}, offset, y0);
}

Point footOn(const Wall& wall, Point place) {
    const Point along = unit(wall.to - wall.from);
    return wall.from + dot(along, place - wall.from) * along;
}

/// Askew but parallel: straight across from the middle of the shorter wall.
void addAskewSize(Drawing& drawing, SizeLayout& at, const Wall& first, const Wall& second, double size) {
    const bool firstShorter = distance(first.from, first.to) < distance(second.from, second.to);
    const Wall& shorter = firstShorter ? first : second;
    const Wall& other = firstShorter ? second : first;
    const Point middle = 0.5 * (shorter.from + shorter.to);
    addDimension(drawing, at, middle, footOn(other, middle), 0, size);
}

/// Splayed: the size at both ends of the stretch where the walls face each other.
void addSplayedSize(Drawing& drawing, SizeLayout& at, const Wall& first, const Wall& second,
                    std::pair<double, double> ends) {
    const double room = distance(first.from, first.to);
    const double in = std::min(4 * at.scale, room / 8);
    const Point along = unit(first.to - first.from);
    const Point a = first.from + in * along;
    const Point b = first.to - in * along;
    addDimension(drawing, at, a, second.to + dot(a - first.from, along) * unit(second.from - second.to), 0,
                 ends.first);
    addDimension(drawing, at, b, second.from - in * unit(second.from - second.to), 0, ends.second);
}

bool isAlong(const Wall& wall, Point direction) {
    return std::abs(cross(unit(wall.to - wall.from), direction)) < kSquareTo;
}

void addSize(Drawing& drawing, SizeLayout& at, const FacingSize& size) {
    const Wall& first = at.cutout.walls[size.firstWall];
    const Wall& second = at.cutout.walls[size.secondWall];
    if (size.atEnds) {
        addSplayedSize(drawing, at, first, second, *size.atEnds);
    } else if (isAlong(first, {0, 1})) {
        addLevelSize(drawing, at, first, second);
    } else if (isAlong(first, {1, 0})) {
        addUprightSize(drawing, at, first, second);
    } else {
        addAskewSize(drawing, at, first, second, size.distance);
    }
}

}  // namespace

void addSizes(Drawing& drawing, const Project& project, const Solved& solved, const PlanLayers& layers) {
    for (const SolvedCutout& cutout : solved.cutouts) {
        SizeLayout at{project, cutout, layers.markScale};
        std::set<std::pair<LineId, LineId>> shown;  // walls of the same two lines say the same
        for (const FacingSize& size : cutout.sizes) {
            if (shown.size() >= kMostSizes) break;
            if (size.firstWall >= cutout.walls.size() || size.secondWall >= cutout.walls.size()) continue;
            if (!shown.insert(std::minmax(size.first, size.second)).second) continue;
            addSize(drawing, at, size);
        }
    }
}

}  // namespace kerfwall
