// SPDX-License-Identifier: GPL-3.0-or-later
// A sound answer is proved without a doubt; one spoiled by hand is doubted at the place where it was spoiled.
#include "core/geometry/proof.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <limits>
#include <sstream>

#include "core/geometry/solve.h"
#include "core/geometry/tolerance.h"
#include "core/says/project_text.h"
#include "tests/core/geometry/claimed.h"
#include "tests/core/geometry/law_layouts.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall {
namespace {

using namespace test;

/// The opening of 180 x 56 from (110, 90) to (290, 146), rounds of 6.35 in its corners.
Claimed windowClaim() { return claimed(windowProject()).front(); }

/// Eight of nine faces of 60 by 60 from (100, 40): an island of 60 by 60 is left standing in the middle.
Project ringProject() {
    Project project = panelOf(400, 260);
    for (int i = 0; i < 4; ++i) {
        project.lines.push_back(offsetLine("H" + std::to_string(i), Edge::Bottom, 40 + 60 * i));
        project.lines.push_back(offsetLine("V" + std::to_string(i), Edge::Left, 100 + 60 * i));
    }
    Cutout ring = cutoutAt("ring", {});
    for (int column = 0; column < 3; ++column) {
        for (int row = 0; row < 3; ++row) {
            if (column != 1 || row != 1) ring.seeds.push_back({130.0 + 60 * column, 70.0 + 60 * row});
        }
    }
    project.cutouts = {ring};
    return project;
}

/// The same window, open at the panel's bottom edge.
Project notchProject() {
    Project project = windowProject();
    project.cutouts = {cutoutAt("notch", {{200, 40}})};
    return project;
}

/// The piece of the first loop whose middle is nearest to a place.
std::size_t pieceNear(const Claimed& claim, Point place) {
    const OutlineLoop& loop = claim.opening.outline.loops.front();
    const auto away = [&](const OutlinePiece& piece) { return distance(0.5 * (piece.from + piece.to), place); };
    return static_cast<std::size_t>(std::ranges::min_element(loop, {}, away) - loop.begin());
}

OutlineLoop& firstLoop(Claimed& claim) { return claim.opening.outline.loops.front(); }

/// The one doubt there is, says that and lies within `reach` of the place.
void expectOnly(const std::vector<Doubt>& doubts, const std::string& words, Point place, double reach = 0.01) {
    ASSERT_EQ(doubts.size(), 1u) << (doubts.empty() ? "none" : doubts.back().what);
    EXPECT_NE(doubts[0].what.find(words), std::string::npos) << doubts[0].what;
    EXPECT_LE(distance(doubts[0].at, place), reach) << doubts[0].at.x << ", " << doubts[0].at.y;
}

/// One of the doubts says that, within `reach` of the place.
void expectAmong(const std::vector<Doubt>& doubts, const std::string& words, Point place, double reach = 0.01) {
    EXPECT_TRUE(std::ranges::any_of(doubts, [&](const Doubt& doubt) {
        return doubt.what.find(words) != std::string::npos && distance(doubt.at, place) <= reach;
    })) << (doubts.empty() ? "none" : doubts.front().what);
}

Outline turnedRound(Outline outline) {
    for (OutlineLoop& loop : outline.loops) {
        std::ranges::reverse(loop);
        for (OutlinePiece& piece : loop) {
            std::swap(piece.from, piece.to);
            piece.turn = piece.turn == Turn::Left ? Turn::Right : Turn::Left;
        }
    }
    return makeOutline(outline.loops);
}

// --- sound answers ---

TEST(Proof, DoubtsNothingInTheSamples) {
    for (const auto& entry : std::filesystem::directory_iterator(KERFWALL_SAMPLES)) {
        if (entry.path().extension() != ".kerfwall") continue;
        std::ifstream file(entry.path(), std::ios::binary);
        std::ostringstream text;
        text << file.rdbuf();
        const auto project = readProject(text.str());
        ASSERT_TRUE(project) << entry.path();
        for (const SolvedCutout& cutout : solve(*project).cutouts) {
            EXPECT_TRUE(cutout.doubts.empty()) << entry.path() << ": " << cutout.doubts.front().what;
        }
    }
}

TEST(Proof, DoubtsNothingInTwoHundredLayouts) {
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        for (const SolvedCutout& cutout : solve(laws::seededProject(seed)).cutouts) {
            EXPECT_TRUE(cutout.doubts.empty()) << seed << ": " << cutout.doubts.front().what;
        }
    }
}

// A bush larger than its cutter, one smaller than the bit, one smaller than its cutter; clear of the kerfs and in them.
TEST(Proof, DoubtsNothingWhereABushRides) {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        for (const auto& [bush, bit] : {std::pair{30.0, 12.7}, std::pair{7.0, 6.0}, std::pair{6.0, 8.0}}) {
            Project project = laws::seededProject(seed);
            project.use.byBush = true;
            project.use.bush = bush;
            project.use.bit = bit;
            project.use.inKerfs = seed % 2 == 0;
            for (const SolvedCutout& cutout : solve(project).cutouts) {
                EXPECT_TRUE(cutout.doubts.empty()) << seed << ", " << bush << ": " << cutout.doubts.front().what;
            }
        }
    }
}

// Gaps of exactly one bit are doubted by `solve` for what they are; the opening that was made is sound all the same.
TEST(Proof, DoubtsNothingOnAGrid) {
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        for (const Claimed& claim : claimed(laws::gridProject(seed))) {
            EXPECT_TRUE(claim.doubts().empty()) << seed << ": " << claim.doubts().front().what;
        }
    }
}

// Kerfs as wide as the bit's radius: a kerf's inner wall lies on one line with the way of the disc. (a fixed bug)
TEST(Proof, DoubtsNothingWhereAKerfsWallLiesInLineWithTheDiscsWay) {
    for (const std::uint64_t seed : {143, 169, 218}) {
        Project project = laws::gridProject(seed);
        for (Saw& saw : project.bench->saws) saw.kerf = 5;
        for (const Claimed& claim : claimed(project)) EXPECT_TRUE(claim.doubts().empty()) << seed;
    }
}

TEST(Proof, DoubtsNothingRoundAnIslandNorAtAnEdge) {
    EXPECT_EQ(claimed(ringProject()).front().opening.outline.loops.size(), 2u);
    EXPECT_TRUE(claimed(ringProject()).front().doubts().empty());
    EXPECT_TRUE(claimed(notchProject()).front().doubts().empty());
}

// --- loops ---

TEST(Proof, DoubtsALoopThatDoesNotClose) {
    Claimed claim = windowClaim();
    OutlinePiece& piece = firstLoop(claim)[pieceNear(claim, {200, 90})];
    piece.to.x = std::nextafter(piece.to.x, 1e9);
    expectOnly(claim.doubts(), "does not close", piece.to);
}

TEST(Proof, DoubtsALoopThatRunsTheWrongWay) {
    SolvedCutout cutout = solve(windowProject()).cutouts.front();
    cutout.work = turnedRound(cutout.work);
    const std::vector<Doubt> doubts = doubtsAbout(cutout, 6.35);
    ASSERT_EQ(doubts.size(), 1u);
    EXPECT_NE(doubts[0].what.find("wrong way"), std::string::npos) << doubts[0].what;
    EXPECT_NEAR(doubts[0].at.x, 200, 0.01) << "the middle of a long side";
}

// The island's loop alone: no outer loop has it.
TEST(Proof, DoubtsAnIslandInNothing) {
    SolvedCutout cutout = solve(ringProject()).cutouts.front();
    ASSERT_EQ(cutout.work.loops.size(), 2u);
    cutout.work = makeOutline({cutout.work.loops[1]});
    const std::vector<Doubt> doubts = doubtsAbout(cutout, 6.35);
    ASSERT_EQ(doubts.size(), 1u);
    EXPECT_NE(doubts[0].what.find("wrong way"), std::string::npos) << doubts[0].what;
}

// --- rounds and joints ---

TEST(Proof, DoubtsARoundOfAnotherRadius) {
    Claimed claim = windowClaim();
    const std::size_t at = pieceNear(claim, {288.2, 91.8});
    ASSERT_TRUE(firstLoop(claim)[at].isArc);
    firstLoop(claim)[at].radius += 1e-7;
    expectOnly(claim.doubts(), "radius", {288.14, 91.86});
}

// Expected from: pencil. The joint slid along the wall by 1e-4 turns the round by 1e-4 / 6.35 = 1.6e-5 there, more than
// 2 sqrt(2 kBite / 6.35) = 1.1e-5, and takes its end only 8e-10 off its circle.
TEST(Proof, DoubtsARoundThatMeetsItsWallWithAKink) {
    Claimed claim = windowClaim();
    const std::size_t at = pieceNear(claim, {200, 90});
    OutlineLoop& loop = firstLoop(claim);
    loop[at].to.x -= 1e-4;
    loop[(at + 1) % loop.size()].from = loop[at].to;
    expectOnly(claim.doubts(), "run on", {283.65, 90});
}

TEST(Proof, DoubtsACornerThatNoBitLeaves) {
    Claimed claim = windowClaim();
    const std::size_t at = pieceNear(claim, {288.2, 91.8});
    OutlineLoop& loop = firstLoop(claim);
    loop[(at + loop.size() - 1) % loop.size()].to = {290, 90};
    loop[(at + 1) % loop.size()].from = {290, 90};
    loop.erase(loop.begin() + static_cast<std::ptrdiff_t>(at));
    auto& sources = claim.opening.sources.front();
    sources.erase(sources.begin() + static_cast<std::ptrdiff_t>(at));
    expectAmong(claim.doubts(), "no bit leaves", {290, 90});
}

// --- clearance ---

TEST(Proof, DoubtsAWallThatStandsCloserByAHundredthOfAMicrometre) {
    Claimed claim = windowClaim();
    for (Curve& wall : claim.rim.rim.curves) {
        if (claim.rim.sides[wall.tag].kind != VoidSide::Kind::Wall || wall.from.y != 90 || wall.to.y != 90) continue;
        wall.from.y += 1e-5;
        wall.to.y += 1e-5;
    }
    const std::vector<Doubt> doubts = claim.doubts();
    ASSERT_EQ(doubts.size(), 5u) << "the wall's piece, the rounds at its ends, the side walls that end in those";
    expectAmong(doubts, "nearer", {200, 90});
    expectAmong(doubts, "nearer", {111.86, 91.86});
    expectAmong(doubts, "nearer", {288.14, 91.86});
}

TEST(Proof, DoubtsAWallThatIsNotTouched) {
    Claimed claim = windowClaim();
    for (Curve& wall : claim.rim.rim.curves) {
        if (claim.rim.sides[wall.tag].kind != VoidSide::Kind::Wall || wall.from.y != 90 || wall.to.y != 90) continue;
        wall.from.y -= 1e-5;
        wall.to.y -= 1e-5;
    }
    expectAmong(claim.doubts(), "does not touch", {200, 90});
}

TEST(Proof, DoubtsAPieceMovedIntoTheOpening) {
    Claimed claim = windowClaim();
    OutlineLoop& loop = firstLoop(claim);
    const std::size_t at = pieceNear(claim, {200, 146});
    loop[at].from.y -= 1e-5;
    loop[at].to.y -= 1e-5;
    loop[(at + 1) % loop.size()].from = loop[at].to;
    loop[(at + loop.size() - 1) % loop.size()].to = loop[at].from;
    expectAmong(claim.doubts(), "does not touch", {200, 146});
}

// Expected from: the corner's regime. A kerf as wide as 1.5 times the bit's radius lets it drop against the lips.
TEST(Proof, DoubtsALipThatIsNotTouched) {
    Project project = windowProject();
    setTools(project, 8, 10);
    Claimed claim = claimed(project).front();
    ASSERT_TRUE(claim.doubts().empty());
    auto& sources = claim.opening.sources.front();
    const auto onLip = std::ranges::find_if(sources, [](const PieceSource& source) {
        return source.contacts.size() == 2 && source.contacts.front().onLip;
    });
    ASSERT_NE(onLip, sources.end());
    onLip->contacts.front().lip.x += 1e-5;
    const OutlinePiece& piece = firstLoop(claim)[static_cast<std::size_t>(onLip - sources.begin())];
    expectOnly(claim.doubts(), "does not touch", piece.from, 10);
}

// --- what lies inside, and areas ---

TEST(Proof, DoubtsAnOpeningThatLostItsIsland) {
    Claimed claim = claimed(ringProject()).front();
    const Outline whole = claim.opening.outline;
    ASSERT_LT(signedArea(whole.loops[1]), 0);
    claim.opening.outline = makeOutline({whole.loops[0]});
    claim.opening.sources.resize(1);
    const std::vector<Doubt> doubts = claim.doubts();
    expectAmong(doubts, "wood", {190, 130}, 31);
    expectAmong(doubts, "add up", whole.loops[0].front().from);
}

TEST(Proof, DoubtsAnAreaThatIsNotItsLoops) {
    SolvedCutout cutout = solve(windowProject()).cutouts.front();
    cutout.work.area += 1e-5;
    expectOnly(doubtsAbout(cutout, 6.35), "add up", cutout.work.loops.front().front().from);
}

// Where the room is smaller than the opening says, what the disc sweeps does not come to the opening's area.
TEST(Proof, DoubtsAnOpeningLargerThanItsRoomCanSweep) {
    Claimed claim = windowClaim();
    for (Curve& way : claim.opening.room.chosen.curves) {
        for (Point* end : {&way.from, &way.to}) {
            if (end->x > 200) end->x -= 1e-5;
        }
    }
    expectAmong(claim.doubts(), "add up", firstLoop(claim).front().from);
}

TEST(Proof, DoubtsAnOpeningThatLostWallsAtTheEdge) {
    Claimed claim = claimed(notchProject()).front();
    claim.opening.outline = {};
    claim.opening.sources.clear();
    expectAmong(claim.doubts(), "not in the outline", {200, 90});
}

TEST(Proof, DoubtsADrawnCutoutWithoutOneOfItsFaces) {
    SolvedCutout cutout = solve(ringProject()).cutouts.front();
    EXPECT_TRUE(doubtsAbout(cutout, 6.35).empty());
    cutout.faces.pop_back();
    expectOnly(doubtsAbout(cutout, 6.35), "drawn cutout", cutout.widestAt);
}

TEST(Proof, DoubtsARoomWhereNothingIsOpened) {
    SolvedCutout cutout = solve(windowProject()).cutouts.front();
    cutout.opening = {};
    expectOnly(doubtsAbout(cutout, 6.35), "opens nothing", cutout.widestAt);
}

// --- doubts ---

TEST(Proof, SaysNothingTwiceAtAPlaceDoubtedBefore) {
    Claimed claim = windowClaim();
    OutlinePiece& piece = firstLoop(claim)[pieceNear(claim, {200, 90})];
    piece.to.x = std::nextafter(piece.to.x, 1e9);
    claim.opening.doubts = {{piece.to + Point{5, 5}, "doubted before."}};
    EXPECT_TRUE(claim.doubts().empty());
}

// Expected from: doubts.h. Every round and wall is wrong, six places are told.
TEST(Proof, TellsAFewPlacesWhereEverythingIsWrong) {
    Claimed claim = claimed(ringProject()).front();
    claim.room += 0.1;
    EXPECT_EQ(claim.doubts().size(), 6u);
}

TEST(Proof, TakesPiecesWithoutSourcesAndPlacesThatAreNoNumbers) {
    Claimed claim = windowClaim();
    claim.opening.sources.clear();
    EXPECT_FALSE(claim.doubts().empty());
    claim = windowClaim();
    firstLoop(claim).front().to.x = std::numeric_limits<double>::quiet_NaN();
    EXPECT_FALSE(claim.doubts().empty());
}

}  // namespace
}  // namespace kerfwall
