// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/remedies.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/geometry/solve.h"
#include "core/says/project_text.h"
#include "tests/core/shop/finding_fixture.h"

namespace kerfwall {
namespace {

using namespace testing_bench;

struct Job {
    Project project;
    Solved solved;
    std::vector<Finding> minded;

    explicit Job(Project said) : project(std::move(said)) {
        solved = solve(project);
        minded = findings(project, solved);
    }
    [[nodiscard]] Finding first(const std::string& code) const {
        const auto found = only(minded, code);
        EXPECT_FALSE(found.empty()) << "no " << code;
        return found.empty() ? Finding{} : found.front();
    }
    [[nodiscard]] std::vector<Remedy> mended(const std::string& code) const {
        return remedies(project, solved, first(code));
    }
};

Project sampleProject(const std::string& name) {
    std::ifstream file(std::filesystem::path(KERFWALL_SAMPLES) / (name + ".kerfwall"), std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return readProject(text.str()).value();
}

Job mindThese() { return Job(sampleProject("mind_these")); }

LayoutLine offsetLine(const LineId& id, Edge from, double distance) {
    LayoutLine line;
    line.id = id;
    line.place = ByOffset{from, distance};
    return line;
}

/// A window between A (bottom, 90), B (146), C (left, 110) and D (290) on a panel of 400 x 250.
Project window(double thickness = 12) {
    Project project = panelOf(400, 250, thickness);
    // The left edge runs downwards: what lies in the panel lies on its left.
    project.lines = {offsetLine("A", Edge::Bottom, 90), offsetLine("B", Edge::Bottom, 146),
                     offsetLine("C", Edge::Left, 110), offsetLine("D", Edge::Left, 290)};
    project.cutouts = {{"window", {{200, 118}}, {}, {}, {}}};
    return project;
}

const LayoutLine& lineOf(const Project& project, const LineId& id) { return *findLine(project, id); }

std::vector<std::string> wordsOf(const std::vector<Remedy>& all) {
    std::vector<std::string> words;
    for (const Remedy& remedy : all) words.push_back(remedy.words);
    return words;
}

const Remedy* startingWith(const std::vector<Remedy>& all, const std::string& words) {
    const auto found = std::ranges::find_if(all, [&](const Remedy& each) { return each.words.starts_with(words); });
    EXPECT_NE(found, all.end()) << words << " is not among " << testing::PrintToString(wordsOf(all));
    return found == all.end() ? nullptr : &*found;
}

// Expected from: pencil. A blade of 160 sunk by 6 runs out over sqrt(6 (160 - 6)) = 30.397 mm.
TEST(Remedies, ANickIsStoppedByTheRail) {
    const auto mended = mindThese().mended("wall-nick");
    const Remedy* stop = startingWith(mended, "Stop the kerf of J with saw rail; it runs out over 30.4 mm");
    ASSERT_TRUE(stop);
    EXPECT_EQ(lineOf(stop->project, "J").extent, Extent::Stopped);
    EXPECT_EQ(lineOf(stop->project, "J").saw, "rail");
    EXPECT_TRUE(stop->clears);
}

// Expected from: the table of corner regimes. 135 degrees, r 6.35, w 2.2: pivot, e = 0.0188 < 0.05.
TEST(Remedies, AGrooveIsMendedByANarrowerKerf) {
    const auto mended = mindThese().mended("corner-groove");
    const Remedy* kerf = startingWith(mended, "Saw H and S with saw rail, whose kerf is 2.2 mm");
    ASSERT_TRUE(kerf);
    EXPECT_EQ(lineOf(kerf->project, "S").saw, "rail");
}

// Expected from: pencil. R (1 + cos 135) is 2.93 for the drill of 20 and 3.66 for that of 25; the kerf is 3.2.
TEST(Remedies, AGrooveIsBoredByTheSmallestDrillThatIsWideEnough) {
    const auto mended = mindThese().mended("corner-groove");
    const Remedy* bore = startingWith(mended, "Bore the corner of H with S with the drill of 25.0 mm");
    ASSERT_TRUE(bore);
    ASSERT_EQ(bore->project.cutouts[2].corners.size(), 2u);
    EXPECT_EQ(bore->project.cutouts[2].corners[1].radius, 12.5);
}

// Expected from: pencil. With no drill at hand the jig cuts 3.2 / (1 + cos 135) = 10.925, up to the next tenth.
TEST(Remedies, WithoutADrillTheCircleJigBoresIt) {
    Project project = sampleProject("mind_these");
    project.bench = stockBench();
    project.bench->bores.clear();
    const auto mended = Job(project).mended("corner-groove");
    const Remedy* bore = startingWith(mended, "Bore the corner of H with S to a radius of 11.0 mm on the circle jig");
    ASSERT_TRUE(bore);
    EXPECT_EQ(bore->project.cutouts[2].corners[1].radius, 11.0);
}

// Expected from: the table of corner regimes. 150 degrees and a kerf of 1.8: with 12.7 the bit bites 0.318, with 16 still
// 0.078, with 22 only 0.020 past the line. The old bit goes back to the bench.
TEST(Remedies, AGrooveIsTrimmedWithAWideEnoughBitOfTheBench) {
    Project project = panelOf(400, 250, 12);
    LayoutLine slanting;
    slanting.id = "S";
    slanting.place = ByPoints{{250, 60}, {50, 60 + 200 * std::tan(M_PI / 6)}};
    project.lines = {offsetLine("A", Edge::Bottom, 60), offsetLine("C", Edge::Left, 130),
                     offsetLine("D", Edge::Left, 330), offsetLine("B", Edge::Bottom, 190), slanting};
    project.cutouts = {{"window", {{280, 150}}, {}, {}, {}}};
    project.bench = stockBench();
    project.bench->bits = {9.5, 16, 22};
    for (Saw& saw : project.bench->saws) saw.kerf = 1.8;
    const auto mended = Job(project).mended("corner-groove");
    const Remedy* bit = startingWith(mended, "Trim with the bit of 22.0 mm");
    ASSERT_TRUE(bit);
    EXPECT_EQ(bit->project.bench->trimBit->diameter, 22);
    EXPECT_EQ(bit->project.bench->bits, (std::vector<double>{9.5, 16, 12.7}));
    EXPECT_TRUE(bit->clears);
}

// Expected from: pencil. A 10 mm slot is trimmed by the bit of 9.5; the bush of 24 and the bit of 12.7 in use stay, so
// here, by a bearing of its own size, the whole slot is cut.
TEST(Remedies, ANarrowSlotIsTrimmedWithASmallerBit) {
    Project project = window();
    project.lines[1] = offsetLine("B", Edge::Bottom, 100);
    project.cutouts[0].seeds = {{200, 95}};
    project.bench = stockBench();
    project.bench->bits = {8, 9.5, 16};
    const Remedy* bit = startingWith(Job(project).mended("narrow"), "Trim with the bit of 9.5 mm");
    ASSERT_TRUE(bit);
}

// Expected from: pencil. The slot of 10 must pass the bush of 24: 14, and 0.2 over, or it lies on the border of fitting.
TEST(Remedies, ANarrowSlotIsWidenedByEitherOfItsLines) {
    const auto mended = mindThese().mended("narrow");
    ASSERT_EQ(wordsOf(mended), (std::vector<std::string>{"Move line E by 14.2 mm", "Move line F by 14.2 mm"}));
    EXPECT_EQ(lineOf(mended[0].project, "E").place, Place(ByOffset{Edge::Left, 285.8}));
    EXPECT_EQ(lineOf(mended[1].project, "F").place, Place(ByOffset{Edge::Left, 324.2}));
}

// Expected from: pencil. 14.67 are left and 25 asked for: 10.33, up to the next tenth; away from the right edge.
TEST(Remedies, AThinBorderIsWidened) {
    const auto mended = mindThese().mended("border-thin");
    const Remedy* line = startingWith(mended, "Move line H by 10.4 mm");
    ASSERT_TRUE(line);
    EXPECT_EQ(lineOf(line->project, "H").place, Place(ByOffset{Edge::Left, 674.6}));
}

// Expected from: pencil. In inches a line moves by whole 1/64: 10.33 mm is 26.03 of them, so 27/64.
TEST(Remedies, InInchesALineMovesByWholeSixtyFourths) {
    Project project = sampleProject("mind_these");
    project.units = Units::Inches;
    const auto mended = Job(project).mended("border-thin");
    ASSERT_TRUE(startingWith(mended, "Move line H by 27/64\""));
}

// Expected from: pencil. It ends 3 mm from the window, 97 deep; 5 mm of wood are left at 95.
TEST(Remedies, AHoleIsDrilledShallower) {
    const auto mended = mindThese().mended("hole-through");
    const Remedy* hole = startingWith(mended, "Drill clamp hole left 95.0 mm deep");
    ASSERT_TRUE(hole);
    EXPECT_EQ(hole->project.clampHoles[0].depth, 95);
}

// Expected from: pencil. The left edge runs down from the top, 500 long: the hole at 330 lies 170 above the bottom. The
// window ends at 120, 380 from the top, and the hole's flank wants 5 from its corner's round.
TEST(Remedies, AHoleMovesAlongItsEdgeClearOfTheWindow) {
    const auto mended = mindThese().mended("hole-through");
    const Remedy* hole = startingWith(mended, "Move clamp hole left by ");
    ASSERT_TRUE(hole);
    EXPECT_GT(hole->project.clampHoles[0].at, 380);
    EXPECT_LT(hole->project.clampHoles[0].at, 392);
}

// Expected from: pencil. (18 - 11) / 2 = 3.5 mm above and below, the limit.
TEST(Remedies, AHoleIsDrilledThinner) {
    const auto mended = mindThese().mended("hole-wall");
    const Remedy* hole = startingWith(mended, "Drill clamp hole left 11.0 mm across");
    ASSERT_TRUE(hole);
    EXPECT_EQ(hole->project.clampHoles[0].diameter, 11);
}

// Expected from: pencil. Clamps say which drills there are.
TEST(Remedies, AHoleIsDrilledForAnotherClampOfTheBench) {
    Project project = sampleProject("mind_these");
    project.bench = stockBench();
    project.bench->clamps = {{12, 0, 0, 0, {}}, {8, 0, 0, 0, {}}};
    const Remedy* hole = startingWith(Job(project).mended("hole-wall"), "Drill clamp hole left 8.0 mm across");
    ASSERT_TRUE(hole);
}

// Expected from: pencil. An axis 5 below the face leaves a 6 mm hole 2 above it; on the middle of 12 it has 3, in 16 mm 5.
TEST(Remedies, AHoleIsDrilledAtMidThickness) {
    Project project = window(16);
    project.clampHoles = {{"", Edge::Left, 200, 6, 40, 5.0, {}}};
    const Remedy* hole = startingWith(Job(project).mended("hole-wall"),
                                      "Drill clamp hole 1 with its axis 8.0 mm below the layout face");
    ASSERT_TRUE(hole);
    EXPECT_EQ(hole->project.clampHoles[0].height, 8.0);
}

// Expected from: pencil. A's kerf lies from 120 on, and the hole comes from the bottom edge.
TEST(Remedies, AKerfOverAHoleIsStoppedOrTheHoleEndsBeforeIt) {
    const auto mended = mindThese().mended("hole-kerf");
    ASSERT_TRUE(startingWith(mended, "Stop the kerf of A with saw rail"));
    const Remedy* hole = startingWith(mended, "Drill clamp hole bottom 120.0 mm deep");
    ASSERT_TRUE(hole);
    EXPECT_EQ(hole->project.clampHoles[1].depth, 120);
}

// Expected from: pencil. 12 mm less the 5 that should be left under the kerfs.
TEST(Remedies, AThinWebAsksForShallowerKerfs) {
    Project project = window();
    project.kerfDepth = 8;
    const Remedy* depth = startingWith(Job(project).mended("web-thin"), "Saw the kerfs 7.0 mm deep");
    ASSERT_TRUE(depth);
    EXPECT_EQ(depth->project.kerfDepth, 7.0);
}

// Expected from: pencil. The bearing is 5 long and runs 1 above the floor.
TEST(Remedies, ALowWallAsksForDeeperKerfs) {
    Project project = window();
    project.kerfDepth = 3;
    const Remedy* depth = startingWith(Job(project).mended("wall-low"), "Saw the kerfs 6.0 mm deep");
    ASSERT_TRUE(depth);
}

// Expected from: pencil. Cutting 12 of 18 mm, 1 mm of it above the floor: the kerfs are 18 + 1 - 12 = 7 deep.
TEST(Remedies, AShortBitAsksForDeeperKerfs) {
    Project project = window(18);
    project.bench = stockBench();
    project.bench->trimBit->cuttingLength = 12;
    ASSERT_TRUE(startingWith(Job(project).mended("bit-short"), "Saw the kerfs 7.0 mm deep"));
}

// Expected from: pencil. A groove of 9 in 12 mm leaves 3; 5 are asked for, so 7.
TEST(Remedies, ADeepGrooveIsCutShallower) {
    Project project = window();
    Fence fence;
    fence.along = Edge::Bottom;
    fence.offset = 20;
    fence.width = 15;
    fence.to = 100;
    fence.groove = 9;
    project.fences = {fence};
    const Remedy* groove = startingWith(Job(project).mended("web-thin"), "Cut the groove of fence 1 7.0 mm deep");
    ASSERT_TRUE(groove);
    EXPECT_EQ(groove->project.fences[0].groove, 7.0);
}

// Expected from: pencil. Held by hand the layout face goes to the work; either the fence or the template turns over.
TEST(Remedies, AFenceOnTheWrongFaceIsFixedToTheOtherOrTheOtherIsLaidOnTheWork) {
    Project project = window();
    Fence fence;
    fence.along = Edge::Bottom;
    fence.offset = 20;
    fence.width = 15;
    fence.height = 18;
    fence.to = 100;
    fence.face = Face::Back;
    project.fences = {fence};
    const auto mended = Job(project).mended("fence-side");
    ASSERT_EQ(wordsOf(mended),
              (std::vector<std::string>{"Fix fence 1, 18.0 mm high, to the layout face",
                                        "Lay the back on the work, where fence 1 stands, 18.0 mm high"}));
    EXPECT_EQ(mended[0].project.fences[0].face, Face::Layout);
    EXPECT_EQ(mended[1].project.use.againstWork, Face::Back);
}

// Expected from: pencil. Walls stand (24 - 12.7) / 2 = 5.65 outside: A 119.35, B 220.65, C 99.35, D 240.65; corners of 8
// want bores of 8 + 5.65.
TEST(Remedies, AWindowOfTheWrongSizeGetsItsWallsMoved) {
    const auto mended = mindThese().mended("work-size");
    const Remedy* walls = startingWith(mended, "Move lines C, A, D and B by up to 0.65 mm to the size wanted");
    ASSERT_TRUE(walls);
    EXPECT_EQ(lineOf(walls->project, "A").place, Place(ByOffset{Edge::Bottom, 119.35}));
    EXPECT_EQ(lineOf(walls->project, "B").place, Place(ByOffset{Edge::Bottom, 220.65}));
    EXPECT_EQ(walls->project.cutouts[0].corners.at(0).radius, 13.65);
}

// Expected from: pencil. Walls 5.65 outside the edges wanted suit (24 - 12.7) / 2 = 5.65 and no other pair at hand.
TEST(Remedies, AWindowOfTheWrongSizeGetsAnotherBush) {
    Project project = window();
    project.use.byBush = true;
    project.use.bush = 17;
    project.use.bit = 12.7;
    project.bench = stockBench();
    project.bench->bushes = {17, 24, 30};
    project.cutouts[0].wanted = Wanted{{{115.65, 95.65}, {284.35, 95.65}, {284.35, 140.35}, {115.65, 140.35}}, 6.35, {}};
    const Remedy* bush = startingWith(Job(project).mended("work-size"), "Steer the 12.7 mm bit by the bush of 24.0 mm");
    ASSERT_TRUE(bush);
    EXPECT_EQ(bush->project.use.bush, 24);
}

// Expected from: pencil. 8 + 5.65 is what the bores must be; else the work gets the cutter's 6.35.
TEST(Remedies, ACornerOfAnotherRadiusIsBoredOrAskedForAsItIs) {
    const auto mended = mindThese().mended("bush-corner");
    ASSERT_TRUE(startingWith(mended, "Bore 4 corners to a radius of 13.65 mm on the circle jig"));
    const Remedy* wish = startingWith(mended, "Ask for corners of 6.35 mm radius in the work");
    ASSERT_TRUE(wish);
    EXPECT_EQ(wish->project.cutouts[0].wanted->cornerRadius, 6.35);
}

// Expected from: pencil. A square wish gets the bit's 6.35 where nothing squares it by hand.
TEST(Remedies, ASharpWishTakesWhatTheBitLeaves) {
    Project project = window();
    project.cutouts[0].wanted = Wanted{{{110, 90}, {290, 90}, {290, 146}, {110, 146}}, 0, {}};
    const Remedy* wish =
        startingWith(Job(project).mended("corner-short"), "Ask for corners of 6.35 mm radius in the work");
    ASSERT_TRUE(wish);
}

// Expected from: pencil. Of 20 to 50 the drill of 40 is nearest to 44.
TEST(Remedies, AMissingDrillIsReplacedByTheNearest) {
    const auto mended = mindThese().mended("bore-missing");
    ASSERT_EQ(wordsOf(mended), (std::vector<std::string>{"Bore the corner of J with H with the drill of 40.0 mm"}));
    EXPECT_EQ(mended[0].project.cutouts[2].corners, (std::vector<BoredCorner>{{"H", "J", 20, {}}}));
}

// Expected from: pencil. Either of two lines on one another may go.
TEST(Remedies, ALineOnAnotherIsTakenAway) {
    Project project = window();
    project.lines.push_back(offsetLine("E", Edge::Bottom, 90));
    const auto mended = Job(project).mended("drawing");
    ASSERT_TRUE(startingWith(mended, "Take line E away"));
    EXPECT_EQ(mended[0].project, window());
}

// Expected from: pencil. A seed on line A marks nothing.
TEST(Remedies, ASeedOnALineIsUnmarked) {
    Project project = window();
    project.cutouts.push_back({"other", {{50, 90}}, {}, {}, {}});
    const auto mended = Job(project).mended("drawing");
    ASSERT_TRUE(startingWith(mended, "Unmark the waste of cutout other at 50.0 mm from the left"));
    EXPECT_EQ(mended[0].project, window());
}

// Expected from: pencil. A and B run side by side: no corner to bore.
TEST(Remedies, ABoreAtNoCornerIsLeftOut) {
    Project project = window();
    project.cutouts[0].corners = {{"A", "B", 10, {}}};
    const auto mended = Job(project).mended("drawing");
    ASSERT_TRUE(startingWith(mended, "Leave out the bore of 10.0 mm radius at A and B"));
    EXPECT_EQ(mended[0].project, window());
}

// Expected from: pencil. A rip fence cannot cut square to the reference edge; the sled can.
TEST(Remedies, AKerfNoNamedSawCanCutIsGivenToOneThatCan) {
    Project project = window();
    project.lines[0].extent = Extent::Stopped;
    project.bench = stockBench();
    std::erase_if(project.bench->saws, [](const Saw& saw) { return saw.kind == SawKind::GuideRail; });
    const auto mended = Job(project).mended("bench-limit");
    const Remedy* run = startingWith(mended, "Let the kerf of A run through, 400.0 mm long");
    ASSERT_TRUE(run);
    EXPECT_EQ(lineOf(run->project, "A").extent, Extent::Through);
}

// Expected from: pencil. Only a bit changes: what the finished template steers is as it was.
TEST(Remedies, AnotherTrimmingBitLeavesTheToolsInUse) {
    Project project = window();
    project.lines[1] = offsetLine("B", Edge::Bottom, 100);
    project.cutouts[0].seeds = {{200, 95}};
    project.bench = stockBench();
    project.bench->bits = {8};
    project.use.byBush = true;
    project.use.bush = 9;
    const auto mended = Job(project).mended("narrow");
    const Remedy* bit = startingWith(mended, "Trim with the bit of 8.0 mm");
    ASSERT_TRUE(bit);
    EXPECT_EQ(bit->project.use.bit, 12.7);
}

// --- laws ---------------------------------------------------------------------------------------

std::ptrdiff_t countOf(const std::vector<Finding>& all, const Finding& like, bool asGrave) {
    return std::ranges::count_if(all, [&](const Finding& each) {
        return each.code == like.code && each.cutout == like.cutout && each.hole == like.hole &&
               (!asGrave || each.severity <= like.severity);
    });
}

void keepsItsWord(const Job& job, const Finding& finding, const Remedy& remedy) {
    SCOPED_TRACE(finding.code + ": " + remedy.words);
    const auto written = readProject(writeProject(remedy.project));
    ASSERT_TRUE(written) << written.error().pointer << written.error().sentence;
    EXPECT_EQ(*written, remedy.project);
    EXPECT_EQ(solve(remedy.project), remedy.solved);
    const std::vector<Finding> after = findings(remedy.project, remedy.solved);
    EXPECT_LT(countOf(after, finding, true), countOf(job.minded, finding, true));
    for (const Finding& each : after) {
        if (each.severity != Severity::Stop) continue;
        EXPECT_LE(countOf(after, each, true), countOf(job.minded, each, true)) << each.text;
    }
    const auto weigh = [](const std::vector<Finding>& all) {
        return std::pair(std::ranges::count(all, Severity::Stop, &Finding::severity),
                         std::ranges::count(all, Severity::Care, &Finding::severity));
    };
    const auto allowed = weigh(job.minded);
    EXPECT_TRUE(finding.severity == Severity::Note ? weigh(after) <= allowed : weigh(after) < allowed);
    EXPECT_NE(remedy.project, job.project);
    EXPECT_TRUE(finding.code == "drawing" || saysANumber(remedy.words + ".")) << remedy.words;
}

void keepAllWords(Project project) {
    const Job job(std::move(project));
    for (const Finding& finding : job.minded) {
        const std::vector<Remedy> mended = remedies(job.project, job.solved, finding);
        EXPECT_LE(mended.size(), kMostRemedies);
        EXPECT_EQ(remedies(job.project, job.solved, finding), mended) << "not the same twice";
        for (std::size_t i = 0; i < mended.size(); ++i) {
            keepsItsWord(job, finding, mended[i]);
            for (std::size_t j = 0; j < i; ++j) EXPECT_NE(mended[i].project, mended[j].project) << mended[i].words;
        }
    }
}

const std::vector<std::string> kSamples{"bench_leg", "crate_end", "stall_pennant", "round_window", "mind_these"};

// Expected from: the contract of `remedies`, held against the findings of the project that each gives.
TEST(RemediesLaw, EachKeepsItsWordOnAllSamples) {
    for (const std::string& name : kSamples) {
        SCOPED_TRACE(name);
        keepAllWords(sampleProject(name));
    }
}

// Expected from: the same; samples spoiled by another depth, another bit, wide kerfs, strict limits, inches.
TEST(RemediesLaw, EachKeepsItsWordOnSpoiledSamples) {
    for (const std::string& name : kSamples) {
        SCOPED_TRACE(name);
        Project project = sampleProject(name);
        project.bench = benchOf(project);
        project.bench->bits = {6, 9.5, 16, 19, 25};
        project.bench->bushes = {17, 24, 30, 40};
        keepAllWords(project);
        Project deep = project;
        deep.kerfDepth = project.panel.thickness - 3.5;
        keepAllWords(deep);
        Project shallow = project;
        shallow.kerfDepth = 2.6;
        keepAllWords(shallow);
        Project thick = project;
        thick.units = Units::Inches;
        thick.bench->trimBit->diameter = 22;
        for (Saw& saw : thick.bench->saws) saw.kerf += 1.5;
        keepAllWords(thick);
        Project strict = project;
        strict.limits["border-thin"] = {60.0, 30.0, {}, {}};
        strict.limits["hole-wall"] = {5.0, 4.0, {}, {}};
        keepAllWords(strict);
    }
}

// Expected from: the sample's notes: each of its faults can be mended.
TEST(RemediesLaw, EverythingToMindOnPurposeCanBeMended) {
    const Job job = mindThese();
    for (const Finding& finding : job.minded) {
        EXPECT_FALSE(remedies(job.project, job.solved, finding).empty()) << finding.code << ": " << finding.text;
    }
}

// Expected from: what cannot be tried is not promised: nothing is offered for a finding of another project.
TEST(RemediesLaw, AFindingThatIsNotThereHasNoRemedy) {
    const Job job{window()};
    EXPECT_TRUE(remedies(job.project, job.solved, mindThese().first("wall-nick")).empty());
}

}  // namespace
}  // namespace kerfwall
