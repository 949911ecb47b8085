// SPDX-License-Identifier: GPL-3.0-or-later
// The engine against the exact route on the samples themselves.
#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

#include "core/geometry/solve.h"
#include "core/says/project_text.h"
#include "tests/oracle/exact_opening.h"
#include "tests/oracle/outline_measure.h"

namespace kerfwall::oracle {
namespace {

class EngineOnSamples : public testing::TestWithParam<const char*> {};

Project sampleProject(const std::string& name) {
    std::ifstream file(std::string(KERFWALL_SAMPLES) + "/" + name + ".kerfwall");
    const auto read = readProject(std::string(std::istreambuf_iterator<char>(file), {}));
    return read ? *read : Project{};
}

/// The exact route wants the bench and every line's saw named: those the answer stands on.
void nameSaws(Project& project, const Solved& solved) {
    const Bench bench = benchOf(project);
    project.bench = bench;
    for (LayoutLine& line : project.lines) {
        const SolvedLine* laid = findLine(solved, line.id);
        const bool cut = laid && !laid->kerfs.empty() && laid->kerfs.front().saw;
        line.saw = bench.saws.at(cut ? *laid->kerfs.front().saw : 0).id;
    }
}

// Expected from: the exact union of capsules, within 1e-4 mm²; steps by dense search along its border.
TEST_P(EngineOnSamples, OpeningAndSteps) {
    Project project = sampleProject(GetParam());
    ASSERT_FALSE(project.cutouts.empty());
    const Solved solved = solve(project);
    nameSaws(project, solved);
    const auto plain = plainLayout(project);
    ASSERT_TRUE(plain);
    ASSERT_EQ(solved.cutouts.size(), plain->cutouts.size());
    for (std::size_t i = 0; i < plain->cutouts.size(); ++i) {
        const SolvedCutout& cutout = solved.cutouts[i];
        SCOPED_TRACE(cutout.id);
        EXPECT_TRUE(cutout.doubts.empty());
        const OpeningAnswer exact = exactOpening({&*plain, i, plain->bitRadius, plain->bitRadius});
        EXPECT_NEAR(cutout.opening.area, exact.area, 1e-4);
        EXPECT_NEAR(cutout.opening.perimeter, exact.perimeter, 1e-4);
        EXPECT_EQ(cutout.parts, exact.parts);
        for (const Corner& corner : cutout.corners) {
            SCOPED_TRACE(corner.first + " " + corner.second);
            const double step = greatestStep(exact.border, plain->cutouts[i].faces, corner.point, 2 * plain->bitRadius);
            EXPECT_NEAR(corner.step, step, 1e-6);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Samples, EngineOnSamples,
                         testing::Values("crate_end", "bench_leg", "stall_pennant", "round_window", "mind_these"),
                         [](const auto& sample) { return std::string(sample.param); });

}  // namespace
}  // namespace kerfwall::oracle
