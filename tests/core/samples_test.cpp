// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <map>
#include <numbers>
#include <sstream>

#include "core/geometry/solve.h"
#include "core/says/project_text.h"
#include "tests/core/shop/finding_fixture.h"

namespace kerfwall {
namespace {

using namespace testing_bench;

constexpr double kPencil = 1e-6;

struct Sample {
    Project project;
    Solved solved;
    std::vector<Finding> minded;
};

Sample sample(const std::string& name) {
    std::ifstream file(std::filesystem::path(KERFWALL_SAMPLES) / (name + ".kerfwall"), std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    const auto project = readProject(text.str());
    EXPECT_TRUE(project) << name << (project ? "" : project.error().pointer + " " + project.error().sentence);
    if (!project) {
        return {};
    }
    Sample read{*project, solve(*project), {}};
    read.minded = findings(read.project, read.solved);
    return read;
}

// A rectangle with its corners rounded: a b - (4 - pi) r^2.
double roundedArea(double a, double b, double r) { return a * b - (4 - std::numbers::pi) * r * r; }

std::string codesOf(const std::vector<Finding>& minded) {
    std::string codes;
    for (const Finding& finding : minded) {
        codes += finding.code + ": " + finding.text + "\n";
    }
    return codes;
}

// Expected from: pencil. Walls stand (24 - 12.7) / 2 = 5.65 outside the wanted 110 x 35: 121.3 x 46.3.
TEST(Samples, CrateEndCutsTheHandHoldAsWanted) {
    const Sample crate = sample("crate_end");
    EXPECT_TRUE(crate.minded.empty()) << codesOf(crate.minded);
    ASSERT_EQ(crate.solved.cutouts.size(), 1u);
    EXPECT_NEAR(crate.solved.cutouts[0].opening.area, roundedArea(121.3, 46.3, 6.35), kPencil);
    EXPECT_NEAR(crate.solved.cutouts[0].work.area, roundedArea(110, 35, 6.35), kPencil);
    EXPECT_NEAR(crate.solved.cutouts[0].work.bounds.low.x, 145, kPencil);
    EXPECT_NEAR(crate.solved.cutouts[0].work.bounds.high.y, 142.5, kPencil);
}

// Expected from: pencil. Trapezium 300 high, 160 wide at its head and 160 + 2 * 300 tan 3 at its mouth; each
// corner of 93 degrees loses r^2 (cot 46.5 - 87 pi / 360).
TEST(Samples, BenchLegRunsOutAtTheEdge) {
    const Sample bench = sample("bench_leg");
    EXPECT_TRUE(bench.minded.empty()) << codesOf(bench.minded);
    const double degree = std::numbers::pi / 180;
    const double drawn = 300 * (160 + 300 * std::tan(3 * degree));
    const double lost = 6.35 * 6.35 * (1 / std::tan(46.5 * degree) - 87 * degree / 2);
    EXPECT_TRUE(bench.solved.cutouts.at(0).open);
    // A line laid by an angle is rounded to 1 nm at 1000 mm, so to 0.15 nm at 300: two slim triangles.
    EXPECT_NEAR(bench.solved.cutouts.at(0).opening.area, drawn - 2 * lost, 300 * 1.5e-7);
}

// Expected from: pencil. 260 x 120 less the tail, 40 x 120 / 2. A tip's angle has the tangent 60 / 40, so it
// is 56.31 degrees and its arc stops r (1 / sin(28.155) - 1) = 7.107 short.
TEST(Samples, StallPennantHasThreeFacesAndAnInwardCorner) {
    const Sample pennant = sample("stall_pennant");
    EXPECT_TRUE(pennant.minded.empty()) << codesOf(pennant.minded);
    const SolvedCutout& cutout = pennant.solved.cutouts.at(0);
    EXPECT_EQ(cutout.faces.size(), 3u);
    EXPECT_NEAR(cutout.drawnArea, 260 * 120 - 40 * 120 / 2.0, kPencil);
    int inward = 0;
    double shortest = 0;
    for (const Corner& corner : cutout.corners) {
        inward += corner.angle > 180 ? 1 : 0;
        shortest = std::max(shortest, corner.shortBy);
    }
    EXPECT_EQ(inward, 1);
    EXPECT_NEAR(shortest, 6.35 * (1 / std::sin(std::atan2(60, 40) / 2) - 1), kPencil);
}

// Expected from: pencil. Run on through, N1's kerf of 2.2 crosses the edge T at 56.31 degrees: the bearing
// dips r - sqrt(r^2 - w^2 / (4 sin^2)); so do N2's across B.
TEST(Samples, StallPennantWouldBeNickedByThroughKerfs) {
    Sample pennant = sample("stall_pennant");
    for (LayoutLine& line : pennant.project.lines) {
        line.extent = Extent::Through;
    }
    const auto nicks = only(findings(pennant.project, solve(pennant.project)), "wall-nick");
    ASSERT_EQ(nicks.size(), 2u);
    const double half = 2.2 / (2 * std::sin(std::atan2(60, 40)));
    EXPECT_NEAR(*nicks[0].value, 6.35 - std::sqrt(6.35 * 6.35 - half * half), kPencil);
}

// Expected from: pencil. 160 x 120 with corners of 25.
TEST(Samples, RoundWindowKeepsItsBoredCorners) {
    const Sample window = sample("round_window");
    EXPECT_TRUE(window.minded.empty()) << codesOf(window.minded);
    EXPECT_NEAR(window.solved.cutouts.at(0).opening.area, roundedArea(160, 120, 25), kPencil);
    EXPECT_NEAR(window.solved.cutouts.at(0).work.area, roundedArea(160, 120, 25), kPencil);
}

// Expected from: the sample's notes, each thing made faulty on purpose.
TEST(Samples, MindTheseShowsWhatItsNotesSay) {
    const Sample faulty = sample("mind_these");
    std::map<std::string, int> counts;
    for (const Finding& finding : faulty.minded) {
        ++counts[finding.code];
        EXPECT_NE(faulty.project.notes.find("(" + finding.code + ")"), std::string::npos) << finding.code;
    }
    const std::map<std::string, int> expected{{"narrow", 1},      {"corner-groove", 2}, {"wall-nick", 2},
                                              {"border-thin", 1}, {"work-size", 1},     {"bush-corner", 1},
                                              {"hole-wall", 1},   {"hole-through", 1},  {"hole-kerf", 1},
                                              {"bore-missing", 1}};
    EXPECT_EQ(counts, expected) << codesOf(faulty.minded);
}

// Expected from: pencil. Pivot at 135 degrees, r 6.35, w 3.2: r - w / 2 - sqrt(r^2 sin^2(67.5) - w^2 / 4
// tan^2(67.5)); a kerf square across a wall: r - sqrt(r^2 - w^2 / 4); 15 less the bite; 130 against 128.7 on
// both sides: 0.65.
TEST(Samples, MindTheseHasTheValuesWorkedByPencil) {
    const Sample faulty = sample("mind_these");
    const double r = 6.35;
    const double w = 3.2;
    const double half = 67.5 * std::numbers::pi / 180;
    const double bite =
        r - w / 2 -
        std::sqrt(r * r * std::sin(half) * std::sin(half) - w * w / 4 * std::tan(half) * std::tan(half));
    const auto value = [&](const char* code) { return only(faulty.minded, code).at(0).value.value_or(0); };
    EXPECT_NEAR(value("corner-groove"), bite, kPencil);
    EXPECT_NEAR(value("wall-nick"), r - std::sqrt(r * r - w * w / 4), kPencil);
    EXPECT_NEAR(value("border-thin"), 15 - bite, kPencil);
    EXPECT_NEAR(value("work-size"), 0.65, 2e-3);
    EXPECT_NEAR(value("narrow"), 10, kPencil);
    EXPECT_NEAR(value("hole-through"), 3, kPencil);
    EXPECT_NEAR(value("hole-wall"), 3, kPencil);
    EXPECT_NEAR(value("hole-kerf"), 6, kPencil);
    EXPECT_NEAR(value("bush-corner"), 6.35, kPencil);
    EXPECT_NEAR(value("bore-missing"), 44, kPencil);
    EXPECT_EQ(only(faulty.minded, "corner-groove").at(0).severity, Severity::Stop);
    EXPECT_EQ(only(faulty.minded, "wall-nick").at(0).severity, Severity::Care);
}

TEST(Samples, EveryTextCarriesANumberAndEndsInARemedy) {
    for (const char* name : {"mind_these", "crate_end", "bench_leg", "stall_pennant", "round_window"}) {
        for (const Finding& finding : sample(name).minded) {
            EXPECT_TRUE(saysANumber(finding.text)) << finding.text;
            // What is the matter, then what to do about it.
            EXPECT_NE(finding.text.find(". "), std::string::npos) << finding.text;
        }
    }
}

// Law: whatever units the project shows, the findings are the same; only their texts differ.
TEST(Samples, UnitsChangeNothingButTheTexts) {
    Sample faulty = sample("mind_these");
    faulty.project.units = Units::Inches;
    std::vector<Finding> inches = findings(faulty.project, faulty.solved);
    ASSERT_EQ(inches.size(), faulty.minded.size());
    for (std::size_t i = 0; i < inches.size(); ++i) {
        EXPECT_NE(inches[i].text, faulty.minded[i].text);
        EXPECT_EQ(inches[i].text.find(" mm"), std::string::npos) << inches[i].text;
        inches[i].text = faulty.minded[i].text;
    }
    EXPECT_EQ(inches, faulty.minded);
}

}  // namespace
}  // namespace kerfwall
