// SPDX-License-Identifier: GPL-3.0-or-later
// Never wrong in silence: 10,050 hostile layouts, 670 of each of fifteen kinds, each the exact union's answer or
// said to be unsure. The seeds stand in the tests' names; KERFWALL_FIRST_SEED=10001 in the environment looks at
// others.
#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <string>

#include "core/geometry/solve.h"
#include "core/says/project_text.h"
#include "core/shop/finding.h"
#include "core/shop/order_of_work.h"
#include "tests/oracle/hostile_layouts.h"
#include "tests/oracle/judged.h"

namespace kerfwall::oracle {
namespace {

constexpr std::uint64_t kSeedsEach = 670;
constexpr std::uint64_t kInOneTest = 67;
constexpr double kMostSeconds = 2;

struct SeedRun {
    HostileKind kind = HostileKind::NearParallel;
    std::uint64_t first = 1;
};

std::vector<SeedRun> seedRuns() {
    std::vector<SeedRun> runs;
    for (int kind = 0; kind < kHostileKinds; ++kind)
        for (std::uint64_t first = 1; first <= kSeedsEach; first += kInOneTest)
            runs.push_back({static_cast<HostileKind>(kind), first});
    return runs;
}

std::string runName(const testing::TestParamInfo<SeedRun>& info) {
    return kindName(info.param.kind) + "_seeds_" + std::to_string(info.param.first) + "_to_" +
           std::to_string(info.param.first + kInOneTest - 1);
}

void PrintTo(const SeedRun& run, std::ostream* out) { *out << kindName(run.kind) << " from seed " << run.first; }

std::uint64_t seedShift() {
    const char* first = std::getenv("KERFWALL_FIRST_SEED");
    return first ? std::strtoull(first, nullptr, 10) - 1 : 0;
}

// The whole way from a project to its order of work; gives the seconds it took.
double secondsFor(const Project& project) {
    const auto start = std::chrono::steady_clock::now();
    const Solved solved = solve(project);
    const std::vector<Finding> found = findings(project, solved);
    const OrderOfWork order = plan(project, solved);
    // A panel that is all waste has no wall, and nothing to do or to mind.
    const bool hasWalls = std::ranges::any_of(solved.cutouts, [](const auto& cutout) { return !cutout.walls.empty(); });
    EXPECT_TRUE(!hasWalls || !found.empty() || !order.steps.empty());
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

class HostileLayouts : public testing::TestWithParam<SeedRun> {};

// Expected from: the exact union of capsules (judged.h). A guard against endless ways, not a measure of speed: the
// slowest takes hundredths of the seconds allowed.
TEST_P(HostileLayouts, AgreeWithTheExactUnionOrSayTheyAreUnsure) {
    int answered = 0;
    for (std::uint64_t i = 0; i < kInOneTest; ++i) {
        const std::uint64_t seed = GetParam().first + i + seedShift();
        SCOPED_TRACE(kindName(GetParam().kind) + " seed " + std::to_string(seed));
        const Project project = hostileLayout(GetParam().kind, seed);
        EXPECT_TRUE(readProject(writeProject(project)));
        EXPECT_LT(secondsFor(project), kMostSeconds);
        const Judgement judged = judge(project);
        EXPECT_NE(judged.verdict, Verdict::Wrong) << judged.why;
        EXPECT_NE(judged.verdict, Verdict::Unanswered) << judged.why;
        answered += judged.verdict == Verdict::Agrees;
    }
    EXPECT_GE(answered, static_cast<int>(kInOneTest / 3)) << "an engine that always doubts is never wrong";
}

INSTANTIATE_TEST_SUITE_P(Seeded, HostileLayouts, testing::ValuesIn(seedRuns()), runName);

}  // namespace
}  // namespace kerfwall::oracle
