// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/mirror_image.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

double away(Point from, Point along, Point place) { return std::abs(cross(along, place - from)); }

bool liesOnALine(const Solved& solved, const NearImage& image) {
    return std::ranges::any_of(solved.lines, [&](const SolvedLine& line) {
        const Point along = unit(line.to - line.from);
        return away(line.from, along, image.from) < kDoubt && away(line.from, along, image.to) < kDoubt;
    });
}

}  // namespace

std::optional<MirrorAxis> mirrorAxis(const Panel& panel, const Solved& solved, const std::variant<Centre, LineId>& about) {
    if (const auto* centre = std::get_if<Centre>(&about)) {
        return MirrorAxis{{panel.width / 2, panel.height / 2}, *centre == Centre::Upright ? Point{0, 1} : Point{1, 0}};
    }
    const SolvedLine* line = findLine(solved, std::get<LineId>(about));
    if (!line) return std::nullopt;
    return MirrorAxis{line->from, unit(line->to - line->from)};
}

Point mirrored(const MirrorAxis& axis, Point place) {
    const Point off = place - axis.on;
    return axis.on + 2 * dot(off, axis.along) * axis.along - off;
}

std::optional<NearImage> mirrorNear(const Panel& panel, const Solved& solved, const LineId& axis, Point start, Point end,
                                    double reach) {
    std::vector<std::variant<Centre, LineId>> abouts{Centre::Upright, Centre::Level};
    if (!axis.empty()) abouts.emplace_back(axis);
    std::optional<NearImage> best;
    double nearest = reach;
    for (const auto& about : abouts) {
        const auto mirror = mirrorAxis(panel, solved, about);
        if (!mirror) continue;
        for (const SolvedLine& line : solved.lines) {
            const NearImage image{{line.id, about}, mirrored(*mirror, line.from), mirrored(*mirror, line.to)};
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
