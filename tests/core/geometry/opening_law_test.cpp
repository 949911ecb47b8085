// SPDX-License-Identifier: GPL-3.0-or-later
// Laws the opening keeps whatever is drawn; each over fixed seeds.
#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <utility>

#include "core/geometry/solve.h"
#include "tests/core/geometry/law_layouts.h"

namespace kerfwall::laws {
namespace {

constexpr std::uint64_t kSeeds = 40;
constexpr double kSameArea = 1e-7;  // mm²: doubles of 600 mm squared, summed over some dozens of pieces

const SolvedCutout& only(const Solved& solved) {
    EXPECT_TRUE(solved.troubles.empty());
    EXPECT_EQ(solved.cutouts.size(), 1u);
    return solved.cutouts.front();
}

void expectSame(const Project& project, const Project& changed) {
    const Solved before = solve(project);
    const Solved after = solve(changed);
    const SolvedCutout& a = only(before);
    const SolvedCutout& b = only(after);
    if (!a.doubts.empty() || !b.doubts.empty()) return;
    EXPECT_NEAR(a.drawnArea, b.drawnArea, kSameArea);
    EXPECT_NEAR(a.opening.area, b.opening.area, kSameArea);
    EXPECT_NEAR(a.opening.perimeter, b.opening.perimeter, kSameArea);
    EXPECT_NEAR(a.work.area, b.work.area, kSameArea);
    EXPECT_NEAR(a.widest, b.widest, kSameArea);
    EXPECT_EQ(a.parts, b.parts);
    EXPECT_EQ(a.walls.size(), b.walls.size());
    EXPECT_EQ(a.corners.size(), b.corners.size());
    EXPECT_EQ(a.hollows.size(), b.hollows.size());
    EXPECT_EQ(a.opening.loops.size(), b.opening.loops.size());
}

// Expected from: a mirror keeps lengths, and the waste side follows the cutout.
TEST(OpeningLaw, AMirrorChangesNothing) {
    for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        const Project project = seededProject(seed);
        expectSame(project, moved(project, [](Point p) { return Point{600 - p.x, p.y}; }));
    }
}

// Expected from: a turn keeps lengths; the panel's sides are swapped.
TEST(OpeningLaw, AQuarterTurnChangesNothing) {
    for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        const Project project = seededProject(seed);
        Project turned = moved(project, [](Point p) { return Point{500 - p.y, p.x}; });
        std::swap(turned.panel.width, turned.panel.height);
        expectSame(project, turned);
    }
}

// Expected from: a shift keeps lengths; a closed cutout does not feel where the panel ends.
TEST(OpeningLaw, AShiftOnALargerPanelChangesNothing) {
    for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        const Project project = seededProject(seed);
        Project shifted = moved(project, [](Point p) { return Point{p.x + 412.3, p.y + 207.6}; });
        shifted.panel.width = 1300;
        shifted.panel.height = 1000;
        expectSame(project, shifted);
    }
}

// Expected from: a layout is a set of lines.
TEST(OpeningLaw, TheOrderOfLinesChangesNothing) {
    for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        const Project project = seededProject(seed);
        Project reordered = project;
        std::reverse(reordered.lines.begin(), reordered.lines.end());
        expectSame(project, reordered);
        std::rotate(reordered.lines.begin(), reordered.lines.begin() + 2, reordered.lines.end());
        expectSame(project, reordered);
    }
}

// Expected from: a line has no direction but for its left and right, which follow it.
TEST(OpeningLaw, TurningALineRoundChangesNothing) {
    for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        const Project project = seededProject(seed);
        Project turned = project;
        for (std::size_t i = 0; i < turned.lines.size(); i += 2) {
            ByPoints& place = std::get<ByPoints>(turned.lines[i].place);
            std::swap(place.p, place.q);
        }
        expectSame(project, turned);
    }
}

// Expected from: same input, same answer, bit for bit.
TEST(OpeningLaw, TheSameProjectGivesTheSameAnswer) {
    for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
        const Project project = seededProject(seed);
        EXPECT_EQ(solve(project), solve(project)) << seed;
    }
}

// Expected from: areas add up: loops to the outline, faces to the drawn cutout.
TEST(OpeningLaw, AreasAddUp) {
    for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        const Solved solved = solve(seededProject(seed));
        const SolvedCutout& cutout = only(solved);
        double loops = 0;
        for (const OutlineLoop& loop : cutout.opening.loops) loops += signedArea(loop);
        EXPECT_NEAR(loops, cutout.opening.area, kSameArea);
        double faces = 0;
        for (const std::vector<Point>& face : cutout.faces)
            for (std::size_t i = 0; i < face.size(); ++i)
                faces += cross(face[i], face[(i + 1) % face.size()]) / 2;
        EXPECT_NEAR(faces, cutout.drawnArea, kSameArea);
    }
}

// Expected from: the opening is void: a smaller bit sweeps all that a larger one sweeps, so it opens
// at least as much.
TEST(OpeningLaw, ASmallerBitOpensNoLess) {
    for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
        SCOPED_TRACE(seed);
        Project project = seededProject(seed);
        double last = 0;
        for (const double bit : {18.0, 14.0, 10.0, 7.0}) {
            project.bench->trimBit->diameter = bit;
            const Solved solved = solve(project);
            if (!only(solved).doubts.empty()) continue;
            EXPECT_GE(only(solved).opening.area, last - kSameArea);
            last = only(solved).opening.area;
        }
    }
}

}  // namespace
}  // namespace kerfwall::laws
