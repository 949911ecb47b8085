// SPDX-License-Identifier: GPL-3.0-or-later
// Flex on hostile layouts: an answer or none, in time, and never one that cannot be: 600 layouts, 40 of each of fifteen kinds.
#include <gtest/gtest.h>

#include <cmath>
#include <ctime>

#include "core/geometry/solve.h"
#include "core/strength/flex.h"
#include "tests/oracle/hostile_layouts.h"

namespace kerfwall::oracle {
namespace {

constexpr std::uint64_t kSeedsEach = 40;
constexpr double kMostSeconds = 4;  // of the processor; a guard against refining without end, not a measure of speed

/// Whether some of the wall is left to be pushed.
bool hasPlace(const Outline& opening, const Wall& wall) {
    for (const OutlineLoop& loop : opening.loops) {
        for (const OutlinePiece& piece : loop) {
            const Point middle = 0.5 * (piece.from + piece.to);
            if (!piece.isArc && piece.on == wall.line && distance(piece.from, piece.to) > 1 && dot(middle - wall.from, middle - wall.to) < 0) return true;
        }
    }
    return false;
}

class HostileFlex : public testing::TestWithParam<int> {};

// A law: a push never moves what it pushes against itself, and what is worked out is finite. That most layouts are answered shows
// that the guard against slivers is not the answer to everything.
TEST_P(HostileFlex, EveryAnswerCanBe) {
    const auto kind = static_cast<HostileKind>(GetParam());
    int walls = 0;
    int answered = 0;
    for (std::uint64_t seed = 1; seed <= kSeedsEach; ++seed) {
        SCOPED_TRACE(kindName(kind) + " seed " + std::to_string(seed));
        Project project = hostileLayout(kind, seed);
        project.plan.held = {Edge::Left, Edge::Bottom};
        const std::clock_t start = std::clock();
        const Solved solved = withFlex(project, solve(project));
        EXPECT_LT(static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC, kMostSeconds);
        for (const SolvedCutout& cutout : solved.cutouts) {
            if (cutout.opening.loops.empty()) continue;
            for (const Wall& wall : cutout.walls) {
                walls += hasPlace(cutout.opening, wall) ? 1 : 0;
                if (!wall.give) continue;
                ++answered;
                EXPECT_TRUE(std::isfinite(wall.give->gives) && wall.give->gives >= 0) << wall.line;
            }
        }
    }
    RecordProperty("answered", std::to_string(answered) + " of " + std::to_string(walls));
    EXPECT_GT(answered, walls / 2) << walls;
}

INSTANTIATE_TEST_SUITE_P(Kinds, HostileFlex, testing::Range(0, kHostileKinds),
                         [](const auto& one) { return kindName(static_cast<HostileKind>(one.param)); });

}  // namespace
}  // namespace kerfwall::oracle
