// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/mirrored.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

// Expected from: pencil. On a panel of 400, x 30 is 370 seen from the back; a text's left end is then its right one.
TEST(Mirrored, TurnsTheSheetOverLikeAPage) {
    Drawing drawing;
    drawing.bounds = {{-5, 0}, {400, 250}};
    drawing.marks.emplace_back(Stroke{Ink::LayoutLine, {30, 10}, {400, 20}, "A"});
    drawing.marks.emplace_back(Circle{Ink::ReliefHole, {100, 50}, 4, "w"});
    drawing.marks.emplace_back(Label{Ink::Text, {30, 10}, "A", 4, Anchor::Left, 20, "A"});
    drawing.marks.emplace_back(Area{Ink::Template, {circleLoop({100, 50}, 5)}, "w"});
    const Drawing back = mirrored(drawing, 400);
    EXPECT_EQ(back.bounds, (Box{{0, 0}, {405, 250}}));
    EXPECT_EQ(std::get<Stroke>(back.marks[0]), (Stroke{Ink::LayoutLine, {370, 10}, {0, 20}, "A"}));
    EXPECT_EQ(std::get<Circle>(back.marks[1]), (Circle{Ink::ReliefHole, {300, 50}, 4, "w"}));
    EXPECT_EQ(std::get<Label>(back.marks[2]), (Label{Ink::Text, {370, 10}, "A", 4, Anchor::Right, -20, "A"}));
    EXPECT_NEAR(signedArea(std::get<Area>(back.marks[3]).loops.front()), -signedArea(circleLoop({100, 50}, 5)), 1e-9)
        << "arcs turn the other way";
}

// Expected from: a law. Turned over twice it is what it was.
TEST(Mirrored, TwiceIsAsBefore) {
    Drawing drawing;
    drawing.bounds = {{0, 0}, {400, 250}};
    drawing.marks.emplace_back(Label{Ink::Text, {30, 10}, "A", 4, Anchor::Right, 0, "A"});
    drawing.marks.emplace_back(Dimension{{10, 20}, {50, 20}, 7, "40", "w", {}});
    drawing.marks.emplace_back(Area{Ink::Template, {circleLoop({100, 50}, 5)}, "w"});
    EXPECT_EQ(mirrored(mirrored(drawing, 400), 400), drawing);
}

}  // namespace
}  // namespace kerfwall
