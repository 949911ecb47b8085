// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/running_sizes.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <map>

#include "core/geometry/solve.h"
#include "tests/core/drawing/drawn_panel.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall {
namespace {

// Expected from: pencil. 10 and 11 share their middle 10.5, a half step of 4 to either side; 30 has room.
TEST(MovedApart, TakesTheNearestPlacesWithThatGap) {
    EXPECT_EQ(movedApart({}, 4), std::vector<double>{});
    EXPECT_EQ(movedApart({10, 11, 30}, 4), (std::vector<double>{8.5, 12.5, 30}));
    EXPECT_EQ(movedApart({5, 5, 5}, 2), (std::vector<double>{3, 5, 7}));
    EXPECT_EQ(movedApart({0, 100}, 4), (std::vector<double>{0, 100}));
}

/// A window of 180 x 56 and one close beside it, so that the numbers have to make room.
Project twoWindows() {
    Project project = test::windowProject();
    project.lines.push_back(test::offsetLine("E", Edge::Left, 300));
    project.lines.push_back(test::offsetLine("F", Edge::Left, 360));
    project.cutouts.push_back(test::cutoutAt("second", {{330, 120}}));
    return project;
}

// Expected from: the holes themselves: each distance from the left end and from the reference edge stands once, and no two numbers
// lie over one another (letters 0.62 of their height wide).
TEST(RunningSizes, EachDistanceStandsOnceAndNoneOverAnother) {
    const Project project = twoWindows();
    const Solved solved = solve(project);
    const OrderOfWork order = plan(project, solved);
    int drillSteps = 0;
    for (std::size_t i = 0; i < order.steps.size(); ++i) {
        if (order.steps[i].task != Task::Drill) continue;
        ++drillSteps;
        constexpr double kScale = 5;  // 400 on 80 mm of paper
        const Drawing drawing = stepDrawing(project, solved, order, i, kScale);
        std::map<std::string, int> told;
        std::vector<Box> boxes;
        for (const Mark& mark : drawing.marks) {
            const auto* label = std::get_if<Label>(&mark);
            if (!label || label->id != "hole") continue;
            ++told[label->text];
            const double length = 0.62 * label->height * kScale * static_cast<double>(label->text.size());
            const double high = 0.7 * label->height * kScale;
            const double start = label->anchor == Anchor::Left ? 0 : -length;
            const Point at = label->at;
            boxes.push_back(label->turn == 0 ? Box{{at.x + start, at.y}, {at.x + start + length, at.y + high}}
                                             : Box{{at.x - high, at.y + start}, {at.x, at.y + start + length}});
        }
        for (const ReliefHole& hole : order.steps[i].bores) {
            for (const double off : {hole.centre.x, hole.centre.y}) {
                std::array<char, 32> text{};
                std::snprintf(text.data(), text.size(), "%g", std::round(off * 100) / 100);
                EXPECT_EQ(told[text.data()], 1) << text.data();
            }
        }
        for (std::size_t a = 0; a < boxes.size(); ++a) {
            EXPECT_TRUE(boxes[a].low.x >= drawing.bounds.low.x && boxes[a].high.x <= drawing.bounds.high.x && boxes[a].low.y >= drawing.bounds.low.y &&
                        boxes[a].high.y <= drawing.bounds.high.y)
                << "inside the picture";
            for (std::size_t b = a + 1; b < boxes.size(); ++b) {
                const bool apart = boxes[a].high.x <= boxes[b].low.x || boxes[b].high.x <= boxes[a].low.x || boxes[a].high.y <= boxes[b].low.y ||
                                   boxes[b].high.y <= boxes[a].low.y;
                EXPECT_TRUE(apart) << a << " and " << b;
            }
        }
    }
    EXPECT_GT(drillSteps, 0);
}

}  // namespace
}  // namespace kerfwall
