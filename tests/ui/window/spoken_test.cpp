// SPDX-License-Identifier: GPL-3.0-or-later
// The plan in words says all that the plan shows.
#include "ui/spoken.h"

#include "tests/ui/window/hand_on_sheet.h"

namespace kerfwall {
namespace {

class Spoken : public HandOnSheet {
protected:
    void expectSaid(const char* words) {
        const QString all = planInWords(m_window.session());
        EXPECT_TRUE(all.contains(QString::fromUtf8(words))) << words << "\n--- in ---\n" << all.toStdString();
    }
};

// Expected from: pencil, for a window of 180 x 56 with one corner bored, a hole and a fence.
TEST_F(Spoken, PlanWithAllThatCanLieOnIt) {
    layRectangle();
    m_window.chooseTool(MainWindow::WasteAt);
    click({200, 118});
    Project next = project();
    next.cutouts.front().corners.push_back({"A", "C", 12, {}});
    next.clampHoles.push_back({"h", Edge::Left, 132, 5, 60, {}, {}});
    next.fences.push_back({Edge::Bottom, 40, Side::Left, 100, 300, 18, 20, 0, FenceKind::Straight, Face::Back, {}});
    next.workpiece.emplace();
    next.workpiece->outline = {{20, 20}, {380, 20}, {380, 230}, {20, 230}};
    m_window.session().change(QStringLiteral("Add"), next);
    expectSaid("Panel 400.0 mm wide, 250.0 mm high, 12.0 mm thick; reference edge: bottom edge.");
    expectSaid("Line A from");
    expectSaid("Opening in the template 180.0 mm by 56.0 mm.");
    expectSaid("bored with radius 12.0 mm.");
    expectSaid("in the work.");
    expectSaid("Clamp hole 1: left edge at 132.0 mm, 5.0 mm across, 60.0 mm deep.");
    expectSaid("its face 40.0 mm from it, from 100.0 mm to 300.0 mm, 18.0 mm wide and 20.0 mm high, on the back.");
    expectSaid("The outline of the work is drawn.");
    expectSaid("Cut level for the side view 125.0 mm above the bottom edge.");
    EXPECT_FALSE(planInWords(m_window.session()).contains(QStringLiteral("Cut upright"))) << "its side view is not shown";
    key(Qt::Key_F5);
    expectSaid("Cut upright for the side view 200.0 mm from the left edge.");
    for (const Finding& finding : m_window.session().findings()) expectSaid(finding.text.c_str());
    m_window.session().moveCut({CutDirection::Upright, 150});
    EXPECT_TRUE(sideViewInWords(m_window.session(), CutDirection::Upright).contains(QStringLiteral("Fence 1 is cut from 40.0 mm to 58.0 mm")));
}

}  // namespace
}  // namespace kerfwall
