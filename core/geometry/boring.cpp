// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/boring.h"

#include <algorithm>

namespace kerfwall {
namespace {

bool isAt(const BoredCorner& bore, const Corner& corner) {
    return (bore.first == corner.first && bore.second == corner.second) ||
           (bore.first == corner.second && bore.second == corner.first);
}

}  // namespace

double usualBoreRadius(const Project& project) {
    const double bit = trimBitOf(project).diameter;
    double best = 2 * bit;
    bool found = false;
    for (const double bore : benchOf(project).bores) {
        if (bore <= bit || (found && bore >= best)) continue;
        best = bore;
        found = true;
    }
    return best / 2;
}

std::optional<double> boreRadiusAt(const Project& project, const SolvedCutout& cutout, const Corner& corner) {
    for (const BoredCorner& bore : project.cutouts.at(cutout.index).corners) {
        if (isAt(bore, corner)) return bore.radius;
    }
    return std::nullopt;
}

Project withBore(const Project& project, const SolvedCutout& cutout, const Corner& corner,
                 std::optional<double> radius) {
    Project next = project;
    std::vector<BoredCorner>& bores = next.cutouts.at(cutout.index).corners;
    const auto found = std::ranges::find_if(bores, [&](const BoredCorner& bore) { return isAt(bore, corner); });
    if (!radius) {
        if (found != bores.end()) bores.erase(found);
    } else if (found != bores.end()) {
        found->radius = *radius;
    } else {
        bores.push_back({corner.first, corner.second, *radius, {}});
    }
    return next;
}

}  // namespace kerfwall
