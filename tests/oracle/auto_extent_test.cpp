// SPDX-License-Identifier: GPL-3.0-or-later
// Kerfs that stop by themselves, against every choice of extents tried.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "core/geometry/solve.h"
#include "core/says/project_text.h"
#include "core/shop/finding.h"
#include "tests/oracle/layouts.h"

namespace kerfwall::oracle {
namespace {

constexpr std::size_t kMostLines = 6;

struct Minded {
    std::ptrdiff_t nicks = 0;
    std::ptrdiff_t crossings = 0;  ///< run-outs across a wall
};

Minded mindedIn(const Project& project) {
    Minded minded;
    for (const Finding& finding : findings(project, solve(project))) {
        minded.nicks += finding.code == "wall-nick" ? 1 : 0;
        minded.crossings += finding.code == "runout" && finding.severity == Severity::Stop ? 1 : 0;
    }
    return minded;
}

/// The lines left to the program that have kerfs.
std::vector<std::size_t> leftToTheProgram(const Project& project) {
    std::vector<std::size_t> lines;
    for (const SolvedLine& line : solve(project).lines) {
        if (!line.kerfs.empty() && project.lines[line.index].extent == Extent::Auto) lines.push_back(line.index);
    }
    return lines;
}

/// The fewest nicks of all choices of through and stopped whose run-outs cross no wall.
std::ptrdiff_t fewestNicks(const Project& project, const std::vector<std::size_t>& lines) {
    std::ptrdiff_t fewest = 1000;
    for (unsigned stopped = 0; stopped < (1u << lines.size()); ++stopped) {
        Project tried = project;
        for (std::size_t i = 0; i < lines.size(); ++i) {
            tried.lines[lines[i]].extent = (stopped >> i & 1u) != 0 ? Extent::Stopped : Extent::Through;
        }
        const Minded minded = mindedIn(tried);
        if (minded.crossings == 0) fewest = std::min(fewest, minded.nicks);
    }
    return fewest;
}

// Expected from: every choice of extents tried, on 300 seeded layouts of joined faces whose up to six kerfs are
// left to the program. All their saws can stop.
TEST(AutoExtent, KeepsNoNickThatAStopCouldHaveSpared) {
    int tried = 0;
    int nicked = 0;
    int spared = 0;
    for (std::uint64_t seed = 1; tried < 300; ++seed) {
        ASSERT_LT(seed, 5000u);
        Project project = seededLayout(LayoutKind::Joined, seed).project;
        for (LayoutLine& line : project.lines) line.extent = Extent::Auto;
        const std::vector<std::size_t> lines = leftToTheProgram(project);
        if (lines.empty() || lines.size() > kMostLines || project.cutouts.empty()) continue;
        ++tried;
        const Minded is = mindedIn(project);
        EXPECT_LE(is.nicks, fewestNicks(project, lines)) << "seed " << seed;
        Project through = project;
        for (LayoutLine& line : through.lines) line.extent = Extent::Through;
        const std::ptrdiff_t before = mindedIn(through).nicks;
        nicked += before > 0 ? 1 : 0;
        spared += is.nicks < before ? 1 : 0;
    }
    EXPECT_GT(nicked, 30) << "kerfs must nick, or the test says little";
    EXPECT_GT(spared, 20);
    RecordProperty("nicked_when_through", nicked);
    RecordProperty("spared_by_stops", spared);
}

// Expected from: every choice of extents tried.
TEST(AutoExtent, NoSampleKeepsANickThatAStopCouldHaveSpared) {
    for (const std::string name : {"crate_end", "bench_leg", "stall_pennant", "round_window", "mind_these"}) {
        std::ifstream file(std::string(KERFWALL_SAMPLES) + "/" + name + ".kerfwall");
        std::stringstream text;
        text << file.rdbuf();
        const auto project = readProject(text.str());
        ASSERT_TRUE(project) << name;
        std::vector<std::size_t> lines = leftToTheProgram(*project);
        lines.resize(std::min(lines.size(), kMostLines));
        EXPECT_LE(mindedIn(*project).nicks, fewestNicks(*project, lines)) << name;
    }
}

}  // namespace
}  // namespace kerfwall::oracle
