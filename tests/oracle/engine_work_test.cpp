// SPDX-License-Identifier: GPL-3.0-or-later
// The opening in the work, against trimming first and rolling again by exact unions.
#include <gtest/gtest.h>

#include <cmath>

#include "core/geometry/solve.h"
#include "tests/oracle/exact_opening.h"
#include "tests/oracle/exact_work.h"
#include "tests/oracle/layout_blocks.h"
#include "tests/oracle/neck_layouts.h"

namespace kerfwall::oracle {
namespace {

constexpr double kAreaBound = 1e-4;   // mm²
constexpr std::uint64_t kEach = 10;   // layouts of a kind
constexpr std::uint64_t kNecks = 25;  // of each kind of neck
constexpr int kDoubtsAllowed = 1;     // of a kind in which the engine may decline to answer

// Bush and cutter as parts of the trimming bit's diameter.
constexpr std::pair<double, double> kTools[] = {
    {0.75, 0.5}, {0.55, 0.55}, {0.9, 0.3}, {0.65, 0.8}, {0.4, 0.25}};

double tenth(double mm) { return std::round(mm * 10) / 10; }

Project withUse(Project project, std::uint64_t seed, bool inKerfs) {
    const auto [bush, cutter] = kTools[seed % std::size(kTools)];
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

/// Compares every cutout's work; false where the engine declined to answer for one.
bool compareWork(const Project& project, const Solved& solved, const PlainLayout& plain) {
    bool sure = true;
    for (std::size_t i = 0; i < plain.cutouts.size(); ++i) {
        SCOPED_TRACE("cutout " + std::to_string(i));
        sure = sure && solved.cutouts[i].doubts.empty();
        if (!solved.cutouts[i].doubts.empty()) continue;
        WorkQuestion question{&plain, i, {}, solved.use.guide / 2, solved.use.cutter / 2};
        if (solved.use.rides == Rides::Kerfs) question.kerfs = bandsAtHeight(project, plain);
        EXPECT_NEAR(solved.cutouts[i].work.area, exactWork(question).area, kAreaBound);
    }
    return sure;
}

struct WorkCase {
    LayoutKind kind;
    bool inKerfs;
};

void PrintTo(const WorkCase& shown, std::ostream* out) {
    *out << kindName(shown.kind) << (shown.inKerfs ? " in kerfs" : " clear");
}

class EngineOnWork : public testing::TestWithParam<WorkCase> {};

// Expected from: exact unions in which the bit trims first; within 1e-4 mm².
TEST_P(EngineOnWork, AGuideSmallerThanTheBit) {
    int doubtful = 0;
    for (std::uint64_t seed = 1; seed <= kEach; ++seed) {
        SCOPED_TRACE(kindName(GetParam().kind) + " " + std::to_string(seed));
        const Project project =
            withUse(seededLayout(GetParam().kind, seed).project, seed, GetParam().inKerfs);
        const auto plain = plainLayout(project);
        ASSERT_TRUE(plain);
        const Solved solved = solve(project);
        ASSERT_EQ(solved.cutouts.size(), plain->cutouts.size());
        if (!compareWork(project, solved, *plain)) ++doubtful;
    }
    EXPECT_LE(doubtful, kDoubtsAllowed);
}

class EngineOnNecks : public testing::TestWithParam<NeckKind> {};

// Expected from: the same exact unions, and those of the template's own opening; parts by the same.
TEST_P(EngineOnNecks, WorkAndOpening) {
    int doubtful = 0;
    for (std::uint64_t seed = 1; seed <= kNecks; ++seed) {
        SCOPED_TRACE(kindName(GetParam()) + " " + std::to_string(seed));
        for (const bool inKerfs : {false, true}) {
            SCOPED_TRACE(inKerfs ? "in kerfs" : "clear");
            const Project project = withUse(neckLayout(GetParam(), seed), seed, inKerfs);
            const auto plain = plainLayout(project);
            ASSERT_TRUE(plain);
            const Solved solved = solve(project);
            ASSERT_EQ(solved.cutouts.size(), 1u);
            if (!compareWork(project, solved, *plain)) {
                ++doubtful;
                continue;
            }
            const SolvedCutout& cutout = solved.cutouts[0];
            const OpeningAnswer exact = exactOpening({&*plain, 0, plain->bitRadius, plain->bitRadius});
            EXPECT_NEAR(cutout.opening.area, exact.area, kAreaBound);
            EXPECT_EQ(cutout.parts, exact.parts);
            double loops = 0;
            for (const OutlineLoop& loop : cutout.work.loops) loops += signedArea(loop);
            EXPECT_NEAR(loops, cutout.work.area, 1e-7) << "islands run clockwise";
        }
    }
    EXPECT_LE(doubtful, kDoubtsAllowed);
}

INSTANTIATE_TEST_SUITE_P(Seeded, EngineOnNecks,
                         testing::Values(NeckKind::Neck, NeckKind::Mouth, NeckKind::Ring),
                         [](const auto& shown) { return kindName(shown.param); });

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
