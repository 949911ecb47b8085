// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/id_label.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/drawing/pattern_drawing.h"
#include "core/geometry/solve.h"
#include "tests/core/drawing/drawn_panel.h"
#include "tests/core/geometry/projects.h"

namespace kerfwall {
namespace {

/// Where a label's letters end, as usual letters are 0.62 of their height wide.
Point endOf(const Label& label) {
    const double turn = label.turn * std::acos(-1.0) / 180;
    const double length = 0.62 * label.height * static_cast<double>(label.text.size());
    return label.at + (label.anchor == Anchor::Left ? length : -length) * Point{std::cos(turn), std::sin(turn)};
}

// Expected from: what it is for: a short id stands level in the middle; a long one begins at its start and runs on along the way,
// read from below or from the right.
TEST(IdLabel, ALongOneRunsAlongItsWay) {
    EXPECT_EQ(idLabel("AB", {{10, 20}, {0, 1}, 8, 5, 1}).anchor, Anchor::Middle);
    EXPECT_NEAR(idLabel("AB", {{10, 20}, {0, 1}, 8, 5, 1}).at.y, 28 - 0.36 * 4, 1e-9);
    for (const Point way : {Point{1, 0}, Point{-1, 0}, Point{0, 1}, Point{0, -1}}) {
        const Label label = idLabel("left-rail", {{100, 100}, way, 8, 5, 2});
        EXPECT_TRUE(label.turn == 0 || label.turn == 90) << label.turn;
        EXPECT_NEAR(dot(label.at - Point{100, 100}, way), 10, 1e-9) << "5 mm on paper, 2 mm of the drawing each";
        EXPECT_GT(dot(endOf(label) - label.at, way), 20);
    }
}

TEST(IdLabel, APicturesIsShortenedInItsMiddle) {
    EXPECT_EQ(pictureId("foot-of-rail"), "foot-of-rail");
    EXPECT_EQ(pictureId("left-end-of-the-hold"), "left-e\u2026-hold");
}

// A law: on a pattern, which may end at the panel's edges, no name is cut off by them, on either face.
TEST(IdLabel, LongNamesStayOnThePattern) {
    Project project = test::windowProject();
    for (LayoutLine& line : project.lines) line.id = "the-line-that-is-named-" + line.id;
    for (const Face face : {Face::Layout, Face::Back}) {
        project.printing.face = face;
        std::size_t names = 0;
        for (const Mark& mark : patternDrawing(project, solve(project)).marks) {
            const auto* label = std::get_if<Label>(&mark);
            if (!label || !label->text.starts_with("the-line")) continue;
            ++names;
            for (const Point place : {label->at, endOf(*label)}) {
                EXPECT_TRUE(place.x > 0 && place.y > 0 && place.x < project.panel.width && place.y < project.panel.height) << label->text;
            }
        }
        EXPECT_EQ(names, 8U);
    }
}

}  // namespace
}  // namespace kerfwall
