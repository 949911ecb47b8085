// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/limits.h"

#include <algorithm>
#include <string>

#include "core/geometry/use_of.h"

namespace kerfwall {

LimitPair startingLimits(std::string_view code, const Project& project, bool betweenOpenings) {
    if (code == "corner-groove" || code == "wall-nick") {
        return {0.05, 0.3};
    }
    if (code == "corner-short") {
        return {10.0, std::nullopt};
    }
    if (code == "web-thin") {
        return {5.0, std::max(3.0, project.panel.thickness / 3)};
    }
    if (code == "wall-low") {
        const double bearing = trimBitOf(project).bearingLength;
        return {bearing, std::max(2.5, bearing / 2)};
    }
    if (code == "border-thin") {
        return betweenOpenings ? LimitPair{15.0, 8.0} : LimitPair{25.0, 10.0};
    }
    if (code == "rough-room") {
        return {2.0, std::nullopt};
    }
    if (code == "drill-wide") {
        return {std::nullopt, 0.0};
    }
    if (code == "web-ride") {
        const double length = useOf(project).guideLength;
        return {length + 0.5, length / 2};
    }
    if (code == "first-pass") {
        const double cutter = useOf(project).cutter;
        return {cutter / 2, 2 * cutter};
    }
    if (code == "small-stock") {
        return {300.0, 150.0};
    }
    if (code == "hole-through") {
        return {5.0, 1.0};
    }
    if (code == "hole-wall") {
        return {3.5, 2.5};
    }
    if (code == "bush-fit") {
        return {3.0, std::nullopt};
    }
    if (code == "arm-flex") {
        return {0.3, std::nullopt};
    }
    if (code == "work-size") {
        return {0.2, 1.0};
    }
    return {};
}

LimitPair limitsOf(std::string_view code, const Project& project, bool betweenOpenings) {
    LimitPair pair = startingLimits(code, project, betweenOpenings);
    const auto own = project.limits.find(std::string(code));
    if (own != project.limits.end()) {
        pair.care = own->second.care ? own->second.care : pair.care;
        pair.stop = own->second.stop ? own->second.stop : pair.stop;
    }
    return pair;
}

std::optional<Crossed> crossedAbove(double value, const LimitPair& limits) {
    if (limits.stop && value > *limits.stop + kOnLimit) {
        return Crossed{Severity::Stop, *limits.stop};
    }
    if (limits.care && value > *limits.care + kOnLimit) {
        return Crossed{Severity::Care, *limits.care};
    }
    return std::nullopt;
}

std::optional<Crossed> crossedBelow(double value, const LimitPair& limits) {
    if (limits.stop && value < *limits.stop - kOnLimit) {
        return Crossed{Severity::Stop, *limits.stop};
    }
    if (limits.care && value < *limits.care - kOnLimit) {
        return Crossed{Severity::Care, *limits.care};
    }
    return std::nullopt;
}

}  // namespace kerfwall
