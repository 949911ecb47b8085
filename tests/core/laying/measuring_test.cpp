// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/measuring.h"

#include <gtest/gtest.h>

#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

Measurable at(const Project& project, Point place) {
    const auto found = measurableNear(project, solve(project), place, 3);
    EXPECT_TRUE(found.has_value());
    return found.value_or(Measurable{});
}

TEST(Measuring, FindsPlacesBeforeStraights) {
    const Project project = sheetOfThings();
    EXPECT_EQ(at(project, {111, 91}).on, MeasuredOn::Crossing);
    EXPECT_EQ(at(project, {111, 91}).first, "A");
    EXPECT_EQ(at(project, {111, 91}).second, "C");
    EXPECT_EQ(at(project, {1, 1}).on, MeasuredOn::PanelCorner);
    EXPECT_EQ(at(project, {60, 41}).on, MeasuredOn::HoleEnd);
    EXPECT_EQ(at(project, {311, 34}).on, MeasuredOn::Corner);
    EXPECT_EQ(at(project, {50, 91}).on, MeasuredOn::Line);
    EXPECT_EQ(at(project, {200, 146}).on, MeasuredOn::Line);  // before the opening that runs along it
    EXPECT_EQ(at(project, {150, 1}).first, "bottom");
    EXPECT_EQ(at(project, {62, 20}).on, MeasuredOn::Hole);
    EXPECT_EQ(at(project, {345, 36}).on, MeasuredOn::Fence);
    EXPECT_FALSE(measurableNear(project, solve(project), {350, 200}, 3));
}

// Expected from: pencil. From the crossing (110, 90) to the crossing (290, 146): 180 across, 56 up, root of 35536.
TEST(Measuring, BetweenTwoPlaces) {
    const Project project = gridOfFour();
    const Measurement measured = measure(at(project, {110, 90}), at(project, {290, 146}));
    EXPECT_EQ(measured.across, 180);
    EXPECT_EQ(measured.up, 56);
    EXPECT_NEAR(measured.distance, 188.510, 0.001);
    EXPECT_FALSE(measured.angle);
}

TEST(Measuring, BetweenParallelsAndFromAPlaceSquareToALine) {
    const Project project = gridOfFour();
    const Measurement measured = measure(at(project, {50, 90}), at(project, {350, 146}));
    EXPECT_TRUE(measured.isParallel);
    EXPECT_EQ(measured.distance, 56);
    EXPECT_EQ(measure(at(project, {110, 90}), at(project, {150, 146})).distance, 56);
    EXPECT_EQ(measure(at(project, {290, 50}), at(project, {110, 90})).distance, 180);
    EXPECT_EQ(measure(at(project, {150, 0}), at(project, {50, 90})).distance, 90);
}

// Expected from: pencil. A climb of 12 degrees against a fall of 25 makes 37; it crosses the level line at its own angle.
TEST(Measuring, BetweenSlantingLinesTheSmallerAngle) {
    Project project = gridOfFour();
    addLine(project, "E", ByAngle{Edge::Bottom, 12, Point{0, 20}});
    addLine(project, "F", ByAngle{Edge::Bottom, 155, Point{0, 240}});
    const Solved solved = solve(project);
    const auto onLine = [&](const LineId& id) {
        const SolvedLine* line = findLine(solved, id);
        Measurable thing;
        thing.kind = Measurable::Kind::Straight;
        thing.from = thing.at = line->from;
        thing.to = line->to;
        return thing;
    };
    EXPECT_NEAR(measure(onLine("E"), onLine("F")).angle.value_or(0), 37, 1e-7);
    EXPECT_NEAR(measure(onLine("E"), onLine("C")).angle.value_or(0), 78, 1e-7);
    EXPECT_NEAR(angleFromReference(project.panel, onLine("F")), -25, 1e-7);
    EXPECT_NEAR(angleFromReference(project.panel, onLine("C")), 90, 1e-7);
}

// Expected from: the stock bit of 12.7: a sound corner's arc of 6.35, its centre 6.35 from both lines, at (116.35, 96.35).
TEST(Measuring, AnArcOfTheOpeningHasItsRadiusAndCountsFromItsCentre) {
    const Project project = sheetOfThings();
    const Point onArc = Point{116.35, 96.35} + 6.35 * unit({-1, -1});
    const auto arc = measurableNear(project, solve(project), onArc, 0.5);
    ASSERT_TRUE(arc.has_value());
    EXPECT_EQ(arc->kind, Measurable::Kind::Arc);
    EXPECT_EQ(arc->on, MeasuredOn::Opening);
    EXPECT_NEAR(arc->radius, 6.35, 1e-9);
    EXPECT_NEAR(measure(*arc, at(project, {290, 50})).distance, 290 - 116.35, 1e-9);
}

}  // namespace
}  // namespace kerfwall
