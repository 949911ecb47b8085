// SPDX-License-Identifier: GPL-3.0-or-later
// Steps of 1e-9 to 1e-6 mm are where rolling with tolerances goes wrong in silence.
#include <gtest/gtest.h>

#include <cmath>

#include "core/geometry/solve.h"
#include "tests/core/geometry/law_layouts.h"

namespace kerfwall::laws {
namespace {

// One line moved `by` mm to its left.
Project nudged(const Project& project, std::size_t line, double by) {
    Project result = project;
    ByPoints& place = std::get<ByPoints>(result.lines[line].place);
    const Point side = by * leftOf(unit(place.q - place.p));
    place = {place.p + side, place.q + side};
    return result;
}

// Expected from: a border moves at most as far as the line that makes it, so the area moves by less than
// perimeter x shift + 1e-6 mm²; or the engine says that it will not guess.
void expectSteady(const Project& project) {
    const Solved base = solve(project);
    ASSERT_EQ(base.cutouts.size(), 1u);
    for (std::size_t line = 0; line < project.lines.size(); ++line)
        for (const double shift : {1e-9, -1e-9, 1e-8, -1e-8, 1e-7, -1e-7, 1e-6, -1e-6}) {
            SCOPED_TRACE(testing::Message() << "line " << line + 1 << " by " << shift);
            const Solved after = solve(nudged(project, line, shift));
            ASSERT_EQ(after.cutouts.size(), 1u);
            const SolvedCutout& a = base.cutouts[0];
            const SolvedCutout& b = after.cutouts[0];
            if (!a.doubts.empty() || !b.doubts.empty()) continue;
            EXPECT_NEAR(a.opening.area, b.opening.area, a.opening.perimeter * std::abs(shift) + 1e-6);
        }
}

TEST(NanometreLaw, OrdinaryLayoutsMoveWithTheirLines) {
    for (std::uint64_t seed = 101; seed <= 130; ++seed) {
        SCOPED_TRACE(seed);
        expectSteady(seededProject(seed));
    }
}

// Lines through one point, walls on one line, gaps of exactly one bit.
TEST(NanometreLaw, LayoutsOnAGridMoveWithTheirLinesOrAreDoubted) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        SCOPED_TRACE(seed);
        expectSteady(gridProject(seed));
    }
}

}  // namespace
}  // namespace kerfwall::laws
