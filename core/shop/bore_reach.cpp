// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/bore_reach.h"

#include <algorithm>
#include <cmath>

#include "core/shop/bore.h"

namespace kerfwall {
namespace {

bool isOf(const std::pair<LineId, LineId>& lines, const Corner& corner) {
    return (lines.first == corner.first && lines.second == corner.second) ||
           (lines.first == corner.second && lines.second == corner.first);
}

/// The diameter last recorded for that corner.
std::optional<double> measuredBore(const Project& project, const Corner& corner) {
    std::optional<double> diameter;
    for (const Record& record : project.record) {
        if (record.bore && isOf(*record.bore, corner)) diameter = record.measured;
    }
    return diameter;
}

}  // namespace

std::vector<BoreReach> boresAt(const Project& project, const Solved& solved, const LineId& line, Side waste) {
    std::vector<BoreReach> bores;
    std::vector<const Corner*> told;
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const Wall& wall : cutout.walls) {
            if (wall.line != line || wall.waste != waste) continue;
            for (const auto& end : {wall.startCorner, wall.endCorner}) {
                const Corner* corner = end ? &cutout.corners[*end] : nullptr;
                if (!corner || !isBored(*corner, solved) || std::ranges::find(told, corner) != told.end()) continue;
                told.push_back(corner);
                const auto measured = measuredBore(project, *corner);
                const double planned = 2 * *corner->boreRadius;
                bores.push_back({corner->first, corner->second, (measured.value_or(planned) - planned) / 2,
                                 measured.has_value()});
            }
        }
    }
    return bores;
}

const BoreReach& outermost(const std::vector<BoreReach>& bores) {
    return *std::ranges::max_element(bores, {}, &BoreReach::past);
}

double restAt(double radius, double past) { return radius - std::sqrt(radius * radius - past * past); }

double stopShortFor(double radius, double thick) { return std::sqrt(thick * (2 * radius - thick)); }

}  // namespace kerfwall
