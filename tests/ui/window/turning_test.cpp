// SPDX-License-Identifier: GPL-3.0-or-later
// Turning, mirroring and copying x a line, several lines, a cutout, a clamp hole, a fence.
#include "tests/ui/window/things_on_sheet.h"

namespace kerfwall {
namespace {

using TurningByHand = ThingsOnSheet;
using MirroringByHand = ThingsOnSheet;
using CopyingByHand = ThingsOnSheet;

Place up(double mm) { return ByOffset{Edge::Bottom, mm}; }
Place across(double mm) { return ByOffset{Edge::Left, mm}; }

// Expected from: pencil. The line's middle is (200, 90); its start (0, 90) goes to 200 - 200 cos 30, 90 - 200 sin 30.
TEST_F(TurningByHand, ALineTurnsAboutItsMiddleByATypedAngle) {
    click({30, 90});
    key(Qt::Key_R, Qt::ControlModifier);
    fill("entry0", "30");
    enter();
    EXPECT_EQ(placeOf("A"), Place(ByAngle{Edge::Bottom, 30, Point{26.794919, -10}}));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Turn line A"));
}

// Expected from: pencil. A quarter turn about (200, 118): y 90 goes to x 228, y 146 to x 172.
TEST_F(TurningByHand, SeveralLinesTurnAboutAClickedPlace) {
    pick({{"A", "B"}, {}, {}, {}, false});
    key(Qt::Key_R, Qt::ControlModifier);
    fill("entry0", "90");
    click({200, 118});
    key(Qt::Key_Return);
    EXPECT_EQ(placeOf("A"), across(228));
    EXPECT_EQ(placeOf("B"), across(172));
}

TEST_F(TurningByHand, ACutoutTurnsWithItsWallsAndKeepsItsArea) {
    pick(onlyCutout("window"));
    key(Qt::Key_R, Qt::ControlModifier);
    fill("entry0", "12");
    enter();
    ASSERT_EQ(project().cutouts.size(), 1U);
    EXPECT_EQ(project().cutouts.front().seeds, (std::vector<Point>{{200, 118}}));
    ASSERT_EQ(m_window.session().solved().cutouts.size(), 1U);
    EXPECT_NEAR(m_window.session().solved().cutouts.front().drawnArea, 180 * 56, 1e-3);
    EXPECT_EQ(std::get<ByAngle>(placeOf("A")).angle, 12);
}

// Expected from: pencil. Half a turn about (200, 125) takes the hole to the top edge and the fence to x 20 to 90, y 230.
TEST_F(TurningByHand, AHoleAndAFenceTurnByQuartersOnly) {
    pick({{}, {}, {0}, {0}, false});
    key(Qt::Key_R, Qt::ControlModifier);
    fill("entry1", "200");
    fill("entry2", "125");
    fill("entry0", "30");
    EXPECT_TRUE(sentence().contains(QStringLiteral("turn it")));
    enter();
    EXPECT_FALSE(m_window.session().isInHand() && m_window.session().project() != m_window.session().before());
    fill("entry0", "180");
    enter();
    EXPECT_EQ(project().clampHoles.front().edge, Edge::Top);
    EXPECT_EQ(project().clampHoles.front().at, 60);
    EXPECT_EQ(fence().offset, 230);
    EXPECT_EQ(fence().from, 20);
    EXPECT_EQ(fence().body, Side::Right);
}

TEST_F(MirroringByHand, ALineGetsACopyThatFollows) {
    m_window.chooseTool(MainWindow::LayAt);
    drag({60, 0}, {60, 250});
    m_window.chooseTool(MainWindow::PickAt);
    click({60, 200});
    key(Qt::Key_I, Qt::ControlModifier);
    enter();
    EXPECT_EQ(placeOf("F"), Place(ByMirror{"E", Centre::Upright}));
    EXPECT_EQ(picked(), onlyLine("F"));
}

TEST_F(MirroringByHand, SeveralLinesAreTurnedOverForGood) {
    pick({{"A", "B"}, {}, {}, {}, false});
    key(Qt::Key_I, Qt::ControlModifier);
    choose("choice0", 1);
    choose("choice1", 2);
    enter();
    EXPECT_EQ(placeOf("A"), up(160));
    EXPECT_EQ(placeOf("B"), up(104));
    EXPECT_EQ(project().lines.size(), 4U);
}

// Expected from: pencil. About the line y 160 the walls y 90 and 146 go to y 230 and 174.
TEST_F(MirroringByHand, ACutoutIsMirroredAboutAClickedLine) {
    m_window.chooseTool(MainWindow::LayAt);
    dragTyping({0, 160}, {400, 160}, "160");  // typed: by the drag alone it would be the mirror image of A
    m_window.chooseTool(MainWindow::PickAt);
    pick(onlyCutout("window"));
    key(Qt::Key_I, Qt::ControlModifier);
    click({30, 160});
    key(Qt::Key_Return);
    ASSERT_EQ(project().cutouts.size(), 2U);
    EXPECT_EQ(project().cutouts.back().seeds, (std::vector<Point>{{200, 202}}));
    EXPECT_EQ(placeOf("F"), Place(ByMirror{"A", LineId("E")}));
    EXPECT_EQ(placeOf("G"), Place(ByMirror{"B", LineId("E")}));
    // What it mirrors moves it along.
    pick(onlyLine("A"));
    key(Qt::Key_Down);
    const SolvedLine* image = findLine(m_window.session().solved(), "F");
    ASSERT_TRUE(image);
    EXPECT_NEAR(image->from.y, 231, 1e-6);
}

TEST_F(MirroringByHand, AHoleAndAFenceGetCopiesOfTheirOwn) {
    pick({{}, {}, {0}, {0}, false});
    key(Qt::Key_I, Qt::ControlModifier);
    choose("choice1", 1);
    enter();
    ASSERT_EQ(project().clampHoles.size(), 2U);
    EXPECT_EQ(project().clampHoles.back().at, 340);
    ASSERT_EQ(project().fences.size(), 2U);
    EXPECT_EQ(project().fences.back().from, 20);
    EXPECT_EQ(project().fences.back().to, 90);
}

TEST_F(MirroringByHand, WhatIsThereAlreadyIsToldAndNothingIsMade) {
    pick(onlyLine("C"));
    key(Qt::Key_I, Qt::ControlModifier);
    EXPECT_TRUE(sentence().contains(QStringLiteral("the same lies already")));
    enter();
    EXPECT_EQ(project().lines.size(), 4U);
    key(Qt::Key_Escape);
    EXPECT_TRUE(m_window.session().undoName().isEmpty());
}

TEST_F(CopyingByHand, ALineIsRepeatedAtADistance) {
    pick(onlyLine("D"));
    key(Qt::Key_K, Qt::ControlModifier);
    fill("entry0", "25");
    choose("choice2", 2);
    enter();
    EXPECT_EQ(placeOf("E"), across(315));
    EXPECT_EQ(placeOf("F"), across(340));
    EXPECT_EQ(placeOf("G"), across(365));
    EXPECT_EQ(picked(), (Picked{{"E", "F", "G"}, {}, {}, {}, false}));
    EXPECT_EQ(m_window.session().undoName(), QStringLiteral("Copy line D"));
}

TEST_F(CopyingByHand, ACutoutIsCopiedWithItsWalls) {
    pick(onlyCutout("window"));
    key(Qt::Key_K, Qt::ControlModifier);
    fill("entry1", "70");
    enter();
    EXPECT_EQ(placeOf("E"), up(160));
    EXPECT_EQ(placeOf("F"), up(216));
    ASSERT_EQ(m_window.session().solved().cutouts.size(), 2U);
    EXPECT_NEAR(m_window.session().solved().cutouts.back().drawnArea, 180 * 56, 1e-6);
}

TEST_F(CopyingByHand, AHoleAndAFenceAreCopiedAtADistance) {
    pick({{}, {}, {0}, {0}, false});
    key(Qt::Key_K, Qt::ControlModifier);
    fill("entry0", "-30");
    enter();
    ASSERT_EQ(project().clampHoles.size(), 2U);
    EXPECT_EQ(project().clampHoles.back().at, 30);
    ASSERT_EQ(project().fences.size(), 2U);
    EXPECT_EQ(project().fences.back().from, 280);
}

TEST_F(CopyingByHand, SeveralThingsAreCopiedTogether) {
    pick({{"C", "D"}, {}, {0}, {0}, false});
    key(Qt::Key_K, Qt::ControlModifier);
    fill("entry0", "15");
    enter();
    EXPECT_EQ(placeOf("E"), across(125));
    EXPECT_EQ(placeOf("F"), across(305));
    EXPECT_EQ(project().clampHoles.back().at, 75);
    EXPECT_EQ(project().fences.back().from, 325);
}

}  // namespace
}  // namespace kerfwall
