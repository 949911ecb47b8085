// SPDX-License-Identifier: GPL-3.0-or-later
// How far walls give comes a moment after each change: found, told, and gone with what holds the template.
#include <algorithm>

#include "tests/core/geometry/projects.h"
#include "tests/ui/window/hand_on_sheet.h"
#include "ui/session.h"

namespace kerfwall {
namespace {

class FlexOnSheet : public HandOnSheet {
  protected:
    bool isTold() {
        const auto& all = m_window.session().findings();
        return std::ranges::find(all, "arm-flex", &Finding::code) != all.end();
    }
    /// An arm of 60 x 350, held at its root's side.
    static Project arm() {
        Project project = test::panelOf(500, 300);
        project.lines = {test::offsetLine("A", Edge::Bottom, 60), test::offsetLine("C", Edge::Left, 150)};
        project.cutouts = {test::cutoutAt("corner", {{300, 200}})};
        project.plan.held = {Edge::Left};
        return project;
    }
};

TEST_F(FlexOnSheet, AnArmThatGivesIsToldAMomentLater) {
    m_window.session().start(arm());
    EXPECT_FALSE(isTold());
    QTRY_VERIFY_WITH_TIMEOUT(isTold(), 5000);
    Project wide = arm();
    std::get<ByOffset>(wide.lines[0].place).distance = 140;
    m_window.session().change(QStringLiteral("Make it wider"), wide);
    EXPECT_FALSE(isTold());
    QTest::qWait(900);
    EXPECT_FALSE(isTold());
}

TEST_F(FlexOnSheet, WhatHoldsItIsSaidOnTheForm) {
    m_window.session().start(arm());
    key(Qt::Key_F7);
    auto* held = m_window.findChild<QComboBox*>(QStringLiteral("useHeld"));
    ASSERT_NE(held, nullptr);
    EXPECT_EQ(held->currentIndex(), 4);
    held->setFocus();
    QTest::keyClick(held, Qt::Key_End);
    EXPECT_EQ(project().plan.held, (std::vector<std::variant<Edge, HeldBy>>{HeldBy::Work}));
    EXPECT_FALSE(m_window.session().whole().solved.cutouts[0].walls[0].give.has_value());
    QTest::keyClick(held, Qt::Key_Home);
    EXPECT_TRUE(project().plan.held.empty());
    Project several = arm();
    several.plan.held = {Edge::Left, HeldBy::Clamps};
    m_window.session().change(QStringLiteral("From a file"), several);
    EXPECT_EQ(held->currentIndex(), 7);
    EXPECT_TRUE(m_window.session().whole().solved.cutouts[0].walls[0].give.has_value());
}

}  // namespace
}  // namespace kerfwall
