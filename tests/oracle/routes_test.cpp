// SPDX-License-Identifier: GPL-3.0-or-later
// The two routes the engine is judged by, judged themselves: by closed forms, and by each other.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/oracle/clipper_opening.h"
#include "tests/oracle/exact_opening.h"
#include "tests/oracle/layout_blocks.h"
#include "tests/oracle/outline_measure.h"

namespace kerfwall::oracle {
namespace {

void addThrough(PlainLayout& layout, Point from, Point to, bool left, double width) {
    layout.bands.push_back({from, to, -60, distance(from, to) + 60, left, width, layout.bands.size()});
}

// A window of 80 by 60 with a kerf inside each of its four lines.
PlainLayout rectangle(double bit, double kerf) {
    PlainLayout layout{200, 150, bit, {}, {}, {}};
    PlainCutout cutout;
    cutout.faces = {{{50, 40}, {130, 40}, {130, 100}, {50, 100}}};
    layout.cutouts.push_back(cutout);
    addThrough(layout, {0, 40}, {200, 40}, true, kerf);
    addThrough(layout, {130, 0}, {130, 150}, true, kerf);
    addThrough(layout, {0, 100}, {200, 100}, false, kerf);
    addThrough(layout, {50, 0}, {50, 150}, false, kerf);
    return layout;
}

// Expected from: pencil. w <= r at a square corner: four quarter rounds, each corner loses (1 - pi/4) r^2.
TEST(Routes, SoundRectangleLosesFourRoundedCorners) {
    const PlainLayout layout = rectangle(6.35, 3.2);
    const double expected = 80 * 60 - (4 - std::numbers::pi) * 6.35 * 6.35;
    const OpeningAnswer exact = exactOpening({&layout, 0, 6.35, 6.35});
    EXPECT_NEAR(exact.area, expected, 1e-9);
    EXPECT_NEAR(exact.perimeter, 280 - 8 * 6.35 + 2 * std::numbers::pi * 6.35, 1e-9);
    EXPECT_NEAR(clipperOpening({&layout, 0, 6.35, 6.35}).area, expected, clipperTolerance(exact));
}

// Expected from: dense search (1e-7 mm) and a buffer library: 0.00716 for a square corner, w 3.2, r 3.
TEST(Routes, PivotAtASquareCornerBitesByTheKnownAmount) {
    const PlainLayout layout = rectangle(3, 3.2);
    const OpeningAnswer exact = exactOpening({&layout, 0, 3, 3});
    EXPECT_NEAR(greatestStep(exact.border, layout.cutouts[0].faces, {50, 40}, 6), 0.00716, 5e-6);
}

// Expected from: pencil. Room 80 - 2 s by 60 - 2 s, swept by rho: a rectangle with rounds of rho.
TEST(Routes, UnequalRadiiMoveTheWallsByTheirDifference) {
    const PlainLayout layout = rectangle(6.35, 3.2);
    const double in = 15 - 6.35;
    const double expected = (80 - 2 * in) * (60 - 2 * in) - (4 - std::numbers::pi) * 6.35 * 6.35;
    const OpeningAnswer exact = exactOpening({&layout, 0, 15, 6.35});
    EXPECT_NEAR(exact.area, expected, 1e-9);
    EXPECT_NEAR(clipperOpening({&layout, 0, 15, 6.35}).area, expected, clipperTolerance(exact));
}

// Expected from: pencil. Each bored corner loses (1 - pi/4) R^2, whatever bit trims it.
TEST(Routes, BoredRectangleLosesTheBoresCorners) {
    PlainLayout layout = rectangle(6.35, 3.2);
    layout.cutouts[0].rounds = {{{50, 40}, {70, 60}, {50, 60}, {70, 40}, 20},
                                {{130, 40}, {110, 60}, {110, 40}, {130, 60}, 20}};
    for (PlainBand& band : layout.bands) {
        if (band.line == 0) band.s0 = 70, band.s1 = 110;
        if (band.line == 1 || band.line == 3) band.s0 = 60;
    }
    const double round = 1 - std::numbers::pi / 4;
    const double expected = 80 * 60 - 2 * round * 400 - 2 * round * 6.35 * 6.35;
    const OpeningAnswer exact = exactOpening({&layout, 0, 6.35, 6.35});
    EXPECT_NEAR(exact.area, expected, 1e-9);
    EXPECT_NEAR(clipperOpening({&layout, 0, 6.35, 6.35}).area, expected, clipperTolerance(exact));
}

// Expected from: pencil. Cut through by the panel's edge the window keeps two rounded corners.
TEST(Routes, AnOpenRectangleKeepsTwoRoundedCorners) {
    PlainLayout layout = rectangle(6.35, 3.2);
    layout.height = 80;
    layout.bands.erase(layout.bands.begin() + 2);
    layout.cutouts[0].faces = {{{50, 40}, {130, 40}, {130, 80}, {50, 80}}};
    const double expected = 80 * 40 - (2 - std::numbers::pi / 2) * 6.35 * 6.35;
    const OpeningAnswer exact = exactOpening({&layout, 0, 6.35, 6.35});
    EXPECT_NEAR(exact.area, expected, 1e-6);
    EXPECT_NEAR(clipperOpening({&layout, 0, 6.35, 6.35}).area, expected, clipperTolerance(exact));
}

class RoutesOnLayouts : public testing::TestWithParam<LayoutBlock> {};

// Expected from: two libraries that share no code; see clipperTolerance for what rounding allows.
TEST_P(RoutesOnLayouts, Agree) {
    for (const SeededLayout& layout : GetParam().layouts()) {
        const auto plain = plainLayout(layout.project);
        ASSERT_TRUE(plain);
        for (std::size_t i = 0; i < plain->cutouts.size(); ++i) {
            SCOPED_TRACE(kindName(layout.kind) + " " + std::to_string(layout.seed) + " cutout " +
                         std::to_string(i));
            const OpeningQuestion question{&*plain, i, plain->bitRadius, plain->bitRadius};
            const OpeningAnswer exact = exactOpening(question);
            const OpeningAnswer chords = clipperOpening(question);
            EXPECT_NEAR(exact.area, chords.area, clipperTolerance(exact));
            EXPECT_EQ(exact.parts, chords.parts);
            EXPECT_NEAR(exactDrawnArea(plain->cutouts[i]), plain->cutouts[i].drawnArea, 1e-8);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Seeded, RoutesOnLayouts, testing::ValuesIn(layoutBlocks()), blockName);

}  // namespace
}  // namespace kerfwall::oracle
