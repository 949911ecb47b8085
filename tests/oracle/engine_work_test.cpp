// SPDX-License-Identifier: GPL-3.0-or-later
// The opening in the work, against trimming first and rolling again by exact unions.
#include <gtest/gtest.h>

#include <cmath>

#include "core/geometry/solve.h"
#include "tests/oracle/exact_work.h"
#include "tests/oracle/layout_blocks.h"

namespace kerfwall::oracle {
namespace {

constexpr double kAreaBound = 1e-4;  // mm²
constexpr std::uint64_t kEach = 10;  // layouts of a kind
constexpr int kDoubtsAllowed = 1;    // of a kind in which the engine may decline to answer

// Bush and cutter as parts of the trimming bit's diameter: the bush always the smaller of the two first.
constexpr std::pair<double, double> kTools[] = {{0.75, 0.5}, {0.55, 0.55}, {0.9, 0.3}, {0.65, 0.8}, {0.4, 0.25}};

struct WorkCase {
    LayoutKind kind;
    bool inKerfs;
};

void PrintTo(const WorkCase& shown, std::ostream* out) { *out << kindName(shown.kind) << (shown.inKerfs ? " in kerfs" : " clear"); }

class EngineOnWork : public testing::TestWithParam<WorkCase> {};

double tenth(double mm) { return std::round(mm * 10) / 10; }

Project withUse(const SeededLayout& layout, bool inKerfs) {
    Project project = layout.project;
    const auto [bush, cutter] = kTools[layout.seed % std::size(kTools)];
    project.use.byBush = true;
    project.use.bush = tenth(bush * project.bench->trimBit->diameter);
    project.use.bit = tenth(cutter * project.bench->trimBit->diameter);
    project.use.inKerfs = inKerfs;
    return project;
}

// In the kerfs' band a through kerf runs on past a bored corner.
std::vector<PlainBand> bandsAtHeight(const Project& project, const PlainLayout& plain) {
    constexpr double kBeyond = 60;
    std::vector<PlainBand> bands = plain.bands;
    for (PlainBand& band : bands) {
        if (project.lines[band.line].extent == Extent::Stopped) continue;
        band.s0 = -kBeyond;
        band.s1 = distance(band.from, band.to) + kBeyond;
    }
    return bands;
}

// Expected from: exact unions in which the bit trims first; within 1e-4 mm².
TEST_P(EngineOnWork, AGuideSmallerThanTheBit) {
    int doubtful = 0;
    for (std::uint64_t seed = 1; seed <= kEach; ++seed) {
        const SeededLayout layout = seededLayout(GetParam().kind, seed);
        const Project project = withUse(layout, GetParam().inKerfs);
        const auto plain = plainLayout(project);
        ASSERT_TRUE(plain);
        const Solved solved = solve(project);
        ASSERT_EQ(solved.cutouts.size(), plain->cutouts.size());
        ASSERT_EQ(solved.use.rides, GetParam().inKerfs ? Rides::Kerfs : Rides::Clear);
        bool doubt = false;
        for (std::size_t i = 0; i < plain->cutouts.size(); ++i) {
            SCOPED_TRACE(kindName(layout.kind) + " " + std::to_string(seed) + " cutout " + std::to_string(i));
            doubt = doubt || !solved.cutouts[i].doubts.empty();
            if (!solved.cutouts[i].doubts.empty()) continue;
            WorkQuestion question{&*plain, i, {}, solved.use.guide / 2, solved.use.cutter / 2};
            if (GetParam().inKerfs) question.kerfs = bandsAtHeight(project, *plain);
            const WorkAnswer exact = exactWork(question);
            EXPECT_NEAR(solved.cutouts[i].work.area, exact.area, kAreaBound);
        }
        if (doubt) ++doubtful;
    }
    EXPECT_LE(doubtful, kDoubtsAllowed);
}

std::vector<WorkCase> workCases() {
    std::vector<WorkCase> cases;
    for (int kind = 0; kind < 8; ++kind) {
        for (const bool inKerfs : {false, true}) cases.push_back({static_cast<LayoutKind>(kind), inKerfs});
    }
    return cases;
}

INSTANTIATE_TEST_SUITE_P(Seeded, EngineOnWork, testing::ValuesIn(workCases()), [](const auto& shown) {
    return kindName(shown.param.kind) + (shown.param.inKerfs ? "_kerfs" : "_clear");
});

}  // namespace
}  // namespace kerfwall::oracle
