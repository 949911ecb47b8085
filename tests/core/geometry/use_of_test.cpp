// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/use_of.h"

#include <gtest/gtest.h>

#include "tests/core/geometry/projects.h"

namespace kerfwall::test {
namespace {

// All on a panel of 12 with the stock bench: trimming bit 12.7 with a bearing 5 long at its tip, kerfs
// min(12 / 2, max(5, 5 + 1)) = 6 deep. (project file, version 1)
Project panelOfTwelve() { return panelOf(400, 250); }

Project withBush(double bush, double length, Face againstWork) {
    Project project = panelOfTwelve();
    project.use.byBush = true;
    project.use.bush = bush;
    project.use.bushLength = length;
    project.use.againstWork = againstWork;
    return project;
}

Project withBearing(BearingAt at, Face againstWork) {
    Project project = panelOfTwelve();
    project.use.bearingAt = at;
    project.use.againstWork = againstWork;
    return project;
}

// Expected from: the project file's defaults.
TEST(UseOf, WhatIsNotSaidComesFromTheTrimmingBit) {
    const UseAnswer use = useOf(panelOfTwelve());
    EXPECT_EQ(use.cutter, 12.7);
    EXPECT_EQ(use.guide, 12.7);
    EXPECT_EQ(use.guideLength, 5);
    EXPECT_EQ(use.againstWork, Face::Layout);
    EXPECT_EQ(use.rides, Rides::Clear);
}

// Expected from: the project file: a bearing is as large as its bit unless it is given; a bush has its own size
// and stands out by its own length, its cutter the trimming bit unless it is given.
TEST(UseOf, GuideAndCutterAreTheirOwn) {
    Project project = panelOfTwelve();
    project.use.bit = 9.5;
    EXPECT_EQ(useOf(project).guide, 9.5);
    project.use.bearing = 16;
    EXPECT_EQ(useOf(project).guide, 16);
    EXPECT_EQ(useOf(project).cutter, 9.5);
    const UseAnswer bush = useOf(withBush(24, 8, Face::Layout));
    EXPECT_EQ(bush.guide, 24);
    EXPECT_EQ(bush.cutter, 12.7);
    EXPECT_EQ(bush.guideLength, 8);
}

// Expected from: the project file: the layout face with a bush or a hand-held router, the back on a table; what
// is said counts.
TEST(UseOf, TheFaceOnTheWorkFollowsTheRouter) {
    Project project = panelOfTwelve();
    EXPECT_EQ(useOf(project).againstWork, Face::Layout);
    project.use.router = Router::Table;
    EXPECT_EQ(useOf(project).againstWork, Face::Back);
    project.use.byBush = true;
    EXPECT_EQ(useOf(project).againstWork, Face::Layout);
    project.use.againstWork = Face::Back;
    EXPECT_EQ(useOf(project).againstWork, Face::Back);
}

// Expected from: pencil. Layout face on the work, a bush 8 long comes from the back: 12 - 8 = 4 to 12. It
// overlaps the kerfs' 6 by 2, yet with the layout face on the work the project file says: not in the kerfs.
TEST(UseOf, WithTheLayoutFaceOnTheWorkItRidesClear) {
    const UseAnswer use = useOf(withBush(24, 8, Face::Layout));
    EXPECT_EQ(use.bandFrom, 4);
    EXPECT_EQ(use.bandTo, 12);
    EXPECT_EQ(use.rides, Rides::Clear);
}

// Expected from: pencil. Back on the work, a bush comes from the layout face: 5 lies within the kerfs' 6,
// 6 just does, 6.5 reaches past.
TEST(UseOf, WithTheBackOnTheWorkItRidesInTheKerfsOnlyWithItsWholeLength) {
    const UseAnswer inside = useOf(withBush(24, 5, Face::Back));
    EXPECT_EQ(inside.bandFrom, 0);
    EXPECT_EQ(inside.bandTo, 5);
    EXPECT_EQ(inside.rides, Rides::Kerfs);
    EXPECT_EQ(useOf(withBush(24, 6, Face::Back)).rides, Rides::Kerfs);
    const UseAnswer past = useOf(withBush(24, 6.5, Face::Back));
    EXPECT_EQ(past.bandTo, 6.5);
    EXPECT_EQ(past.rides, Rides::Both);
}

// Expected from: pencil. Back on the work, a tip's bearing rides next to it, 7 to 12, under kerfs of 6; over
// kerfs of 8 it is met by both. A shank's rides at the layout face, 0 to 5, in the kerfs.
TEST(UseOf, WithTheBackOnTheWorkTheBearingsPlaceDecides) {
    Project project = withBearing(BearingAt::Tip, Face::Back);
    const UseAnswer tip = useOf(project);
    EXPECT_EQ(tip.bandFrom, 7);
    EXPECT_EQ(tip.bandTo, 12);
    EXPECT_EQ(tip.rides, Rides::Clear);
    project.kerfDepth = 7;
    EXPECT_EQ(useOf(project).rides, Rides::Clear) << "they end where it begins";
    project.kerfDepth = 8;
    EXPECT_EQ(useOf(project).rides, Rides::Both);
    const UseAnswer shank = useOf(withBearing(BearingAt::Shank, Face::Back));
    EXPECT_EQ(shank.bandFrom, 0);
    EXPECT_EQ(shank.bandTo, 5);
    EXPECT_EQ(shank.rides, Rides::Kerfs);
}

// Expected from: the project file: the trimming bit's own bearing counts where the use names none.
TEST(UseOf, TheBitsOwnBearingCountsWhereNoneIsNamed) {
    Project project = panelOfTwelve();
    project.use.againstWork = Face::Back;
    project.bench = stockBench();
    project.bench->trimBit->bearingAt = BearingAt::Shank;
    EXPECT_EQ(useOf(project).rides, Rides::Kerfs);
    project.use.bearingAt = BearingAt::Tip;
    EXPECT_EQ(useOf(project).rides, Rides::Clear);
}

// Expected from: a bush longer than the template is thick has no more than its 12 to ride on.
TEST(UseOf, TheBandEndsAtThePanelsFaces) {
    EXPECT_EQ(useOf(withBush(24, 15, Face::Layout)).bandFrom, 0);
    EXPECT_EQ(useOf(withBush(24, 15, Face::Back)).bandTo, 12);
}

// Expected from: the project file: `in_kerfs` is worked out only where it is absent.
TEST(UseOf, WhatIsSaidOfTheKerfsCounts) {
    Project layout = withBush(24, 5, Face::Layout);
    layout.use.inKerfs = true;
    EXPECT_EQ(useOf(layout).rides, Rides::Kerfs);
    Project back = withBush(24, 5, Face::Back);
    back.use.inKerfs = false;
    EXPECT_EQ(useOf(back).rides, Rides::Clear);
    EXPECT_NE(useOf(back).why, useOf(withBush(24, 5, Face::Back)).why);
}

}  // namespace
}  // namespace kerfwall::test
