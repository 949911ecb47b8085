// SPDX-License-Identifier: GPL-3.0-or-later
// Remedies from the bench: another bit, another bush, a bore; declared in remedy_ways.h.
#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/geometry/boring.h"
#include "core/shop/bore.h"
#include "core/shop/finding_words.h"
#include "core/shop/from_wanted.h"
#include "core/shop/limits.h"
#include "core/shop/remedy_ways.h"
#include "core/shop/word_list.h"

namespace kerfwall {
namespace {

constexpr std::size_t kMostOfAKind = 6;  // tools tried of one kind, the nearest sizes first

bool isOneOf(const std::string& code, std::initializer_list<const char*> codes) {
    return std::ranges::find(codes, code) != codes.end();
}

/// The project trimmed with another bit from its bench; the one there now goes back among the others. What the finished
/// template steers stays as it is.
Project trimmedWith(const Project& project, double diameter) {
    Project next = project;
    Bench& bench = next.bench.emplace(benchOf(project));
    const TrimBit now = trimBitOf(project);
    std::erase(bench.bits, diameter);
    if (bench.trimBit) bench.bits.push_back(now.diameter);
    bench.trimBit = now;
    bench.trimBit->diameter = diameter;
    if (next.use.byBush && !next.use.bit) next.use.bit = now.diameter;
    return next;
}

/// Sizes on one side of `now`, or on both (`way` 0), the nearest first.
std::vector<double> nearestSizes(std::vector<double> sizes, double now, int way) {
    std::erase_if(sizes, [&](double size) { return size == now || (size - now) * way < 0; });
    std::ranges::stable_sort(sizes, {}, [&](double size) { return std::abs(size - now); });
    if (sizes.size() > kMostOfAKind) sizes.resize(kMostOfAKind);
    return sizes;
}

const SolvedCutout* cutoutOf(const Minded& minded) {
    const auto found = std::ranges::find(minded.solved.cutouts, minded.finding.cutout, &SolvedCutout::id);
    return found == minded.solved.cutouts.end() ? nullptr : &*found;
}

bool isOnLines(const Corner& corner, const std::vector<LineId>& lines) {
    return lines.size() == 2 && ((corner.first == lines[0] && corner.second == lines[1]) ||
                                 (corner.first == lines[1] && corner.second == lines[0]));
}

std::string cornersText(const std::vector<const Corner*>& corners) {
    if (corners.size() > 2) return std::to_string(corners.size()) + " corners";
    std::vector<std::string> names;
    for (const Corner* corner : corners) names.push_back(corner->first + " with " + corner->second);
    return (names.size() > 1 ? "the corners of " : "the corner of ") + listText(names);
}

/// Those corners bored to `radius`, where a drill or the circle jig can.
void addBore(Way& way, const Minded& minded, const SolvedCutout& cutout, const std::vector<const Corner*>& corners,
             double radius) {
    const BoreTool tool = boreToolFor(benchOf(minded.project), radius);
    if (corners.empty() || radius > kLargestBore || (!tool.drill && !tool.pivotToFar)) return;
    Change change{"Bore " + cornersText(corners) +
                      (tool.drill ? " with the drill of " + lengthWords(minded.project, 2 * radius)
                                  : " to a radius of " + lengthWords(minded.project, radius) + " on the circle jig"),
                  minded.project};
    for (const Corner* corner : corners) change.project = withBore(change.project, cutout, *corner, radius);
    way.push_back(std::move(change));
}

/// Bores that are wide enough for the kerfs to end before their tangent points, the smallest first.
Way boresAtCorner(const Minded& minded, const SolvedCutout& cutout, const Corner& corner) {
    const auto width = [&](const LineId& id) {
        const SolvedLine* line = findLine(minded.solved, id);
        return line && !line->kerfs.empty() ? std::ranges::max(line->kerfs, {}, &Kerf::width).width : 0.0;
    };
    const double kerf = std::max(width(corner.first), width(corner.second));
    const double share = 1 + std::cos(radians(corner.angle));
    const double least = std::max({kerf / std::max(share, 1e-3), corner.boreRadius.value_or(0), minded.solved.bitRadius});
    std::vector<double> bores = benchOf(minded.project).bores;
    std::ranges::sort(bores);
    Way way;
    for (const double bore : bores) {
        const bool isWider = bore / 2 > std::max(corner.boreRadius.value_or(0), minded.solved.bitRadius) + kOnLimit;
        if (bore / 2 >= least - kOnLimit && isWider && way.size() < kMostOfAKind) {
            addBore(way, minded, cutout, {&corner}, bore / 2);
        }
    }
    addBore(way, minded, cutout, {&corner}, setAtLeast(minded.project, std::max(least, minded.solved.bitRadius + 0.5)));
    return way;
}

/// A corner whose bore no drill has: the drills nearest to it, at all corners with that bore.
Way otherDrills(const Minded& minded, const SolvedCutout& cutout) {
    if (!minded.finding.value) return {};
    std::vector<const Corner*> corners;
    for (const Corner& corner : cutout.corners) {
        if (corner.boreRadius == *minded.finding.value / 2) corners.push_back(&corner);
    }
    Way way;
    for (const double bore : nearestSizes(benchOf(minded.project).bores, *minded.finding.value, 0)) {
        if (bore / 2 > minded.solved.bitRadius) addBore(way, minded, cutout, corners, bore / 2);
    }
    return way;
}

/// Relief holes with another drill at hand, the largest that fits first, or none at all.
std::vector<Way> otherReliefDrill(const Minded& minded) {
    const double bit = 2 * minded.solved.bitRadius;
    std::vector<double> drills = benchOf(minded.project).bores;
    std::erase_if(drills, [&](double drill) { return drill > bit + kOnLimit; });
    std::ranges::sort(drills, std::greater{});
    Way smaller, none;
    for (const double drill : drills) {
        smaller.push_back({"Drill the relief holes with " + lengthWords(minded.project, drill), minded.project});
        smaller.back().project.bench.emplace(benchOf(minded.project)).cornerDrill = drill;
    }
    const double now = benchOf(minded.project).cornerDrill.value_or(0);
    none.push_back({"Drill no relief holes of " + lengthWords(minded.project, now) + "; saw on into the corners",
                    minded.project});
    none.back().project.bench.emplace(benchOf(minded.project)).cornerDrill.reset();
    return {std::move(smaller), std::move(none)};
}

std::string steeringText(const Project& project, const Steering& steering) {
    return std::string("Steer the ") + lengthWords(project, steering.cutter) + " bit by the " +
           (steering.byBush ? "bush of " : "bearing of ") + lengthWords(project, steering.guide);
}

std::vector<Steering> steeringsAtHand(const Minded& minded) {
    const Bench& bench = benchOf(minded.project);
    const UseAnswer& now = minded.solved.use;
    std::vector<double> bushes = bench.bushes, bits = bench.bits;
    if (minded.project.use.byBush) bushes.push_back(now.guide);
    bits.push_back(now.cutter);
    if (bench.trimBit) bits.push_back(bench.trimBit->diameter);
    std::vector<Steering> all;
    if (bench.trimBit) all.push_back({false, bench.trimBit->diameter, bench.trimBit->diameter});
    for (const double bush : bushes) {
        for (const double bit : bits) {
            if (bush - bit >= kBushRoom) all.push_back({true, bush, bit});
        }
    }
    const auto isNow = [&](const Steering& each) {
        return each.byBush == minded.project.use.byBush && each.guide == now.guide && each.cutter == now.cutter;
    };
    std::erase_if(all, isNow);
    std::ranges::stable_sort(all, {}, [&](const Steering& each) {
        return std::abs(each.guide - now.guide) + std::abs(each.cutter - now.cutter);
    });
    return all;
}

}  // namespace

Way boresForWish(const Minded& minded) {
    const SolvedCutout* cutout = cutoutOf(minded);
    const auto wanted = cutout ? minded.project.cutouts[cutout->index].wanted : std::nullopt;
    if (!wanted) return {};
    const UseAnswer& use = minded.solved.use;
    std::vector<const Corner*> corners;
    for (const Corner& corner : cutout->corners) {
        const double left = use.cutter / 2 + std::max(0.0, corner.radius - use.guide / 2);
        if (corner.angle < 180 && left < wanted->cornerRadius) corners.push_back(&corner);
    }
    Way way;
    addBore(way, minded, *cutout, corners, wanted->cornerRadius + (use.guide - use.cutter) / 2);
    return way;
}

std::vector<Way> bitWays(const Minded& minded) {
    const std::string& code = minded.finding.code;
    const bool wider = isOneOf(code, {"corner-groove", "wall-nick", "drill-wide"});
    if (!wider && !isOneOf(code, {"narrow", "corner-overlap", "corner-short"})) return {};
    Way way;
    const double now = trimBitOf(minded.project).diameter;
    for (const double size : nearestSizes(benchOf(minded.project).bits, now, wider ? 1 : -1)) {
        way.push_back({"Trim with the bit of " + lengthWords(minded.project, size), trimmedWith(minded.project, size)});
    }
    return {std::move(way)};
}

std::vector<Way> useWays(const Minded& minded) {
    if (!isOneOf(minded.finding.code, {"narrow", "work-size", "bush-corner", "corner-short"})) return {};
    Way way;
    for (const Steering& steering : steeringsAtHand(minded)) {
        if (way.size() == kMostOfAKind) break;
        way.push_back({steeringText(minded.project, steering), steeredBy(minded.project, steering)});
    }
    return {std::move(way)};
}

std::vector<Way> boreWays(const Minded& minded) {
    const SolvedCutout* cutout = cutoutOf(minded);
    if (cutout == nullptr) return {};
    const std::string& code = minded.finding.code;
    if (code == "drill-wide") return otherReliefDrill(minded);
    if (code == "bore-missing") return {otherDrills(minded, *cutout)};
    if (code == "bush-corner" || code == "work-size") return {boresForWish(minded)};
    if (code != "corner-groove") return {};
    for (const Corner& corner : cutout->corners) {
        if (corner.angle < 180 && isOnLines(corner, minded.finding.lines)) return {boresAtCorner(minded, *cutout, corner)};
    }
    return {};
}

}  // namespace kerfwall
