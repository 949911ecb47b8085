// SPDX-License-Identifier: GPL-3.0-or-later
// The main job from end to end: four drags and a click, saved, opened again, published.
#include <QFile>

#include "tests/ui/window/hand_on_sheet.h"

namespace kerfwall {
namespace {

using Rectangle = HandOnSheet;

// Expected from: pencil. The drags run at y 90 and 146 and at x 110 and 290, so the lines are offsets from the
// bottom (reference) edge and from the left edge (its true corner); the face between has its centre at (200, 118).
Project expectedRectangle() {
    Project project;
    project.panel.width = 400;
    project.panel.height = 250;
    project.panel.thickness = 12;
    const auto line = [&](const char* id, Edge from, double distance) {
        LayoutLine laid;
        laid.id = id;
        laid.place = ByOffset{from, distance};
        project.lines.push_back(laid);
    };
    line("A", Edge::Bottom, 90);
    line("B", Edge::Bottom, 146);
    line("C", Edge::Left, 110);
    line("D", Edge::Left, 290);
    project.cutouts.push_back({"cutout-1", {{200, 118}}, {}, {}, {}});
    return project;
}

TEST_F(Rectangle, FourDragsAndAClickGiveTheProjectFieldByField) {
    layRectangle();
    key(Qt::Key_3);
    click({180, 120});
    const Project expected = expectedRectangle();
    EXPECT_EQ(project().panel, expected.panel);
    EXPECT_EQ(project().lines, expected.lines);
    EXPECT_EQ(project().cutouts, expected.cutouts);
    EXPECT_EQ(project().clampHoles, expected.clampHoles);
    EXPECT_EQ(project().use, expected.use);
    EXPECT_EQ(project(), expected);
}

// Expected from: pencil. An opening of 180 x 56 whose four corners keep an arc of the stock bit's 6.35:
// 10080 - (4 - pi) 6.35 squared = 10045.386.
TEST_F(Rectangle, TheTemplatesOpeningFollowsAtOnce) {
    layRectangle();
    key(Qt::Key_3);
    click({180, 120});
    const Solved& solved = m_window.session().solved();
    ASSERT_EQ(solved.cutouts.size(), 1U);
    EXPECT_NEAR(solved.cutouts.front().opening.area, 10045.386, 0.001);
}

TEST_F(Rectangle, SavedAndOpenedAgainItIsTheSame) {
    layRectangle();
    key(Qt::Key_3);
    click({180, 120});
    const Project before = project();
    ASSERT_TRUE(m_window.saveTo(file("rectangle.kerfwall")));
    EXPECT_TRUE(m_window.session().isSaved());
    m_window.session().startNew();
    EXPECT_TRUE(project().lines.empty());
    m_window.openFile(file("rectangle.kerfwall"));
    EXPECT_EQ(project(), before);
    EXPECT_EQ(m_window.notice().sentence(), QString());
}

TEST_F(Rectangle, ItsPapersAreAPatternOfFullSizeAndAReport) {
    layRectangle();
    key(Qt::Key_3);
    click({180, 120});
    ASSERT_TRUE(m_window.publishTo(file("papers")));
    QFile pattern(file("papers/pattern.pdf"));
    ASSERT_TRUE(pattern.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pattern.readAll().startsWith("%PDF-"));
    QFile report(file("papers/report.json"));
    ASSERT_TRUE(report.open(QIODevice::ReadOnly));
    EXPECT_TRUE(report.readAll().contains("kerfwall-report"));
}

}  // namespace
}  // namespace kerfwall
