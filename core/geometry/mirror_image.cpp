// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/mirror_image.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

using About = std::variant<Centre, LineId>;
using Run = std::pair<Point, Point>;

double away(Point from, Point along, Point place) { return std::abs(cross(along, place - from)); }

bool liesOnALine(const Solved& solved, const NearImage& image) {
    return std::ranges::any_of(solved.lines, [&](const SolvedLine& line) {
        const Point along = unit(line.to - line.from);
        return away(line.from, along, image.from) < kDoubt && away(line.from, along, image.to) < kDoubt;
    });
}

}  // namespace

std::optional<Run> axisRun(const Panel& panel, const Solved& solved, const About& about) {
    if (const auto* centre = std::get_if<Centre>(&about)) {
        const Point middle{panel.width / 2, panel.height / 2};
        return *centre == Centre::Upright ? Run{{middle.x, 0}, {middle.x, panel.height}} : Run{{0, middle.y}, {panel.width, middle.y}};
    }
    const SolvedLine* line = findLine(solved, std::get<LineId>(about));
    if (!line) return std::nullopt;
    return Run{line->from, line->to};
}

std::optional<Motion> mirroring(const Panel& panel, const Solved& solved, const About& about) {
    const auto axis = axisRun(panel, solved, about);
    if (!axis) return std::nullopt;
    return mirrorAbout(axis->first, axis->second - axis->first);
}

std::optional<NearImage> mirrorNear(const Panel& panel, const Solved& solved, const LineId& axis, Point start, Point end,
                                    double reach) {
    std::vector<About> abouts{Centre::Upright, Centre::Level};
    if (!axis.empty()) abouts.emplace_back(axis);
    std::optional<NearImage> best;
    double nearest = reach;
    for (const auto& about : abouts) {
        const auto mirror = mirroring(panel, solved, about);
        if (!mirror) continue;
        for (const SolvedLine& line : solved.lines) {
            const NearImage image{{line.id, about}, moved(*mirror, line.from), moved(*mirror, line.to)};
            const Point along = unit(image.to - image.from);
            const double strays = std::max(away(image.from, along, start), away(image.from, along, end));
            if (strays > nearest || liesOnALine(solved, image)) continue;
            nearest = strays;
            best = image;
        }
    }
    return best;
}

}  // namespace kerfwall
