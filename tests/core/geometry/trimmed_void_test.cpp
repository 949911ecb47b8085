// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/trimmed_void.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/geometry/opening.h"
#include "tests/core/geometry/projects.h"
#include "tests/core/geometry/rim_measure.h"

namespace kerfwall::test {
namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kBitRadius = 6.35;
const Frame kFrame = frameOf({{-50, -50}, {450, 300}});

enum class Guide { Clear, InKerfs };

/// The rim round what is void once the first cutout is trimmed with a bit of 12.7.
VoidRim trimmedRim(Project project, double kerf, Guide guide) {
    setTools(project, kerf, 2 * kBitRadius);
    const Arranged arranged = arrange(project);
    const std::vector<Border> borders{borderOf(project, arranged, arranged.cutouts.at(0), kBitRadius)};
    const std::vector<KerfRun> runs = kerfRuns(project, arranged, borders, saidToStop(project, arranged));
    const std::vector<LaidKerf> kerfs =
        layKerfs(project, runs, std::vector<std::optional<std::size_t>>(runs.size(), 3));
    const VoidRim drawn = voidRim(project, arranged, arranged.cutouts[0], borders[0], kerfs, kFrame);
    const Opening trimmed =
        openingOf(drawn, kBitRadius, kBitRadius, arranged.cutouts[0].faces, project, arranged);
    return trimmedVoidRim(project, arranged, borders[0],
                          guide == Guide::InKerfs ? kerfs : std::vector<LaidKerf>{}, trimmed.swept, kFrame);
}

// Expected from: pencil. Clear of the kerfs nothing but the window with its four rounds is open, and all off
// the panel: 175000 - 100000 in a frame of 500 x 350.
TEST(TrimmedVoid, ClearOfTheKerfsOnlyTheSweepIsOpen) {
    const VoidRim made = trimmedRim(windowProject(), 1.5, Guide::Clear);
    EXPECT_TRUE(made.doubts.empty());
    EXPECT_TRUE(made.rim.openEnds().empty());
    EXPECT_EQ(made.rim.loops().size(), 3u) << "the frame, the panel's edge, the window";
    EXPECT_NEAR(voidArea(made), 75000 + 10080 - (4 - kPi) * kBitRadius * kBitRadius, 1e-6);
    EXPECT_NEAR(lengthOf(made, VoidSide::Kind::Wall), 2 * (180 + 56) - 8 * kBitRadius, 1e-9);
    EXPECT_NEAR(lengthOf(made, VoidSide::Kind::Bore), 2 * kPi * kBitRadius, 1e-9);
}

// Expected from: pencil. Kerfs of 1.5 run on through the corners. Of each round they leave a three-cornered
// stump: beyond 1.5 from both walls, outside the bit's circle, which stands 6.35 from both and is 4.85 and
// sqrt(6.35² - 4.85²) from the stump's points. All else of the void is as it is drawn (four blocks at the
// corners, four at the sides).
TEST(TrimmedVoid, InTheKerfsBandStumpsStandWhereTheBitLeftTheCorners) {
    const VoidRim made = trimmedRim(windowProject(), 1.5, Guide::InKerfs);
    EXPECT_TRUE(made.doubts.empty());
    EXPECT_EQ(made.rim.loops().size(), 13u) << "the frame, eight blocks, four stumps";
    const double across = kBitRadius - 1.5;
    const double reach = std::sqrt(kBitRadius * kBitRadius - across * across);
    const double angle = std::asin(across / kBitRadius) - std::asin(reach / kBitRadius);
    // Square 0..across in both, less the sector between the points and the two triangles beside it.
    const double stump = across * across - kBitRadius * kBitRadius * angle / 2 - across * reach;
    const double blocks = 2 * 110 * 90 + 2 * 110 * 104 + 2 * 110 * (56 - 3) + (180 - 3) * (90 + 104);
    EXPECT_NEAR(voidArea(made), 175000 - blocks - 4 * stump, 1e-6);
    EXPECT_NEAR(lengthOf(made, VoidSide::Kind::Bore), 4 * kBitRadius * angle, 1e-9);
}

// Expected from: pencil. A kerf of 1.86 and more, r (1 - sin 45°), opens the whole corner: no stump, eight
// blocks.
TEST(TrimmedVoid, AWiderKerfLeavesNoStump) {
    const VoidRim made = trimmedRim(windowProject(), 1.9, Guide::InKerfs);
    EXPECT_TRUE(made.doubts.empty());
    EXPECT_EQ(made.rim.loops().size(), 9u);
    EXPECT_EQ(lengthOf(made, VoidSide::Kind::Bore), 0);
}

// Expected from: pencil. Bored to 20 at A and C: clear of the kerfs that corner keeps the bore's quarter.
TEST(TrimmedVoid, ABoreCountsAtEveryHeight) {
    Project project = windowProject();
    project.cutouts[0].corners = {{"A", "C", 20, ""}};
    const VoidRim made = trimmedRim(project, 1.5, Guide::Clear);
    EXPECT_TRUE(made.doubts.empty());
    EXPECT_NEAR(lengthOf(made, VoidSide::Kind::Bore), kPi / 2 * (20 + 3 * kBitRadius), 1e-9);
    EXPECT_NEAR(voidArea(made), 85080 - (1 - kPi / 4) * (400 + 3 * kBitRadius * kBitRadius), 1e-6);
}

// Expected from: pencil. At the kerfs' height both kerfs of 1.5 run on through the bored corner and cut the
// bore's quarter off 1.5 from its tangents, 18.5 from its centre.
TEST(TrimmedVoid, InTheKerfsBandTheyCutIntoTheBoresRound) {
    Project project = windowProject();
    project.cutouts[0].corners = {{"A", "C", 20, ""}};
    const VoidRim made = trimmedRim(project, 1.5, Guide::InKerfs);
    EXPECT_TRUE(made.doubts.empty());
    EXPECT_EQ(made.rim.loops().size(), 13u);
    const double left = kBitRadius * (std::asin(4.85 / kBitRadius) - std::acos(4.85 / kBitRadius));
    EXPECT_NEAR(lengthOf(made, VoidSide::Kind::Bore), 20 * (std::asin(0.925) - std::acos(0.925)) + 3 * left,
                1e-9);
}

}  // namespace
}  // namespace kerfwall::test
