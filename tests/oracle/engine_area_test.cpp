// SPDX-License-Identifier: GPL-3.0-or-later
// The engine against both routes on every seeded layout.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/geometry/solve.h"
#include "tests/oracle/clipper_opening.h"
#include "tests/oracle/exact_opening.h"
#include "tests/oracle/layout_blocks.h"
#include "tests/oracle/outline_measure.h"

namespace kerfwall::oracle {
namespace {

constexpr double kAreaBound = 1e-4;  // mm², engine against the exact union of capsules
constexpr double kStepBound = 1e-6;  // mm
constexpr int kDoubtsAllowed = 1;    // layouts of a block in which the engine may decline to answer

std::string placeText(const SeededLayout& layout, std::size_t cutout) {
    return kindName(layout.kind) + " " + std::to_string(layout.seed) + " cutout " + std::to_string(cutout);
}

class EngineOnLayouts : public testing::TestWithParam<LayoutBlock> {};

void compareDrawing(const Solved& solved, const PlainLayout& plain) {
    ASSERT_TRUE(solved.troubles.empty()) << solved.troubles.front().sentence;
    ASSERT_EQ(solved.lines.size(), plain.lines.size());
    for (std::size_t i = 0; i < plain.lines.size(); ++i) {
        EXPECT_NEAR(distance(solved.lines[i].from, plain.lines[i].from), 0, 1e-9);
        EXPECT_NEAR(distance(solved.lines[i].to, plain.lines[i].to), 0, 1e-9);
    }
    ASSERT_EQ(solved.cutouts.size(), plain.cutouts.size());
    for (std::size_t i = 0; i < plain.cutouts.size(); ++i) {
        SCOPED_TRACE("cutout " + std::to_string(i));
        const SolvedCutout& got = solved.cutouts[i];
        const PlainCutout& expected = plain.cutouts[i];
        EXPECT_NEAR(got.drawnArea, exactDrawnArea(expected), 1e-8);
        EXPECT_NEAR(got.drawn.area, expected.drawnArea, 1e-7);
        EXPECT_EQ(got.open, expected.open);
        EXPECT_EQ(got.faces.size(), expected.faces.size());
        EXPECT_EQ(got.walls.size(), expected.walls.size());
        EXPECT_EQ(got.corners.size(), expected.corners.size());
    }
}

// Expected from: faces by half-planes in exact fractions, areas by CGAL's polygon sets.
TEST_P(EngineOnLayouts, LinesFacesWallsAndDrawnAreas) {
    for (const SeededLayout& layout : GetParam().layouts()) {
        SCOPED_TRACE(placeText(layout, 0));
        const auto plain = plainLayout(layout.project);
        ASSERT_TRUE(plain);
        compareDrawing(solve(layout.project), *plain);
    }
}

// Expected from: the exact union of capsules, within 1e-4 mm², and a polygon library's chords.
TEST_P(EngineOnLayouts, OpeningArea) {
    int doubtful = 0;
    for (const SeededLayout& layout : GetParam().layouts()) {
        const auto plain = plainLayout(layout.project);
        ASSERT_TRUE(plain);
        const Solved solved = solve(layout.project);
        ASSERT_EQ(solved.cutouts.size(), plain->cutouts.size());
        bool doubt = false;
        for (std::size_t i = 0; i < plain->cutouts.size(); ++i) {
            SCOPED_TRACE(placeText(layout, i));
            const SolvedCutout& cutout = solved.cutouts[i];
            if (!cutout.doubts.empty()) {
                doubt = true;
                continue;
            }
            const OpeningQuestion question{&*plain, i, plain->bitRadius, plain->bitRadius};
            const OpeningAnswer exact = exactOpening(question);
            EXPECT_NEAR(cutout.opening.area, exact.area, kAreaBound);
            EXPECT_NEAR(cutout.opening.area, clipperOpening(question).area, clipperTolerance(exact));
            EXPECT_NEAR(cutout.opening.perimeter, exact.perimeter, 1e-4);
            EXPECT_EQ(cutout.parts, exact.parts);
        }
        if (doubt) ++doubtful;
    }
    EXPECT_LE(doubtful, kDoubtsAllowed);
}

// Expected from: dense search along the exact border of the union of capsules.
TEST_P(EngineOnLayouts, StepsAtCorners) {
    for (const SeededLayout& layout : GetParam().layouts()) {
        const auto plain = plainLayout(layout.project);
        ASSERT_TRUE(plain);
        const Solved solved = solve(layout.project);
        ASSERT_EQ(solved.cutouts.size(), plain->cutouts.size());
        for (std::size_t i = 0; i < plain->cutouts.size(); ++i) {
            SCOPED_TRACE(placeText(layout, i));
            if (!solved.cutouts[i].doubts.empty()) continue;
            const OpeningAnswer exact = exactOpening({&*plain, i, plain->bitRadius, plain->bitRadius});
            for (const Corner& corner : solved.cutouts[i].corners) {
                SCOPED_TRACE(corner.first + " " + corner.second);
                EXPECT_NEAR(
                    corner.step,
                    greatestStep(exact.border, plain->cutouts[i].faces, corner.point, 2 * plain->bitRadius),
                    kStepBound);
            }
        }
    }
}

// Expected from: the opening in the work is the void's room for the larger of bit and bush, swept by
// cutter radius + max(0, bit radius - bush radius).
TEST_P(EngineOnLayouts, WorkAreaWithABush) {
    static constexpr std::pair<double, double> kBushes[] = {{30, 12.7}, {24, 8}, {17, 10}, {10, 6}};
    for (const SeededLayout& layout : GetParam().layouts()) {
        if (layout.kind == LayoutKind::Open || layout.seed % 2 == 1) continue;
        Project project = layout.project;
        const auto [bush, cutter] = kBushes[(layout.seed / 2) % std::size(kBushes)];
        project.use.byBush = true;
        project.use.bush = bush;
        project.use.bit = cutter;
        project.use.inKerfs = false;
        const auto plain = plainLayout(project);
        ASSERT_TRUE(plain);
        if (bush / 2 < plain->bitRadius) continue;  // a neck may pass the smaller bush: rolled again
        const Solved solved = solve(project);
        for (std::size_t i = 0; i < plain->cutouts.size(); ++i) {
            SCOPED_TRACE(placeText(layout, i) + " bush " + std::to_string(bush));
            if (!solved.cutouts[i].doubts.empty()) continue;
            const OpeningAnswer exact = exactOpening({&*plain, i, bush / 2, cutter / 2});
            EXPECT_NEAR(solved.cutouts[i].work.area, exact.area, kAreaBound);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Seeded, EngineOnLayouts, testing::ValuesIn(layoutBlocks()), blockName);

}  // namespace
}  // namespace kerfwall::oracle
