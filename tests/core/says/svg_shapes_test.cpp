// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/svg_shapes.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "core/says/svg_path.h"

namespace kerfwall {
namespace {

using Attributes = std::map<std::string, std::string, std::less<>>;

std::expected<std::vector<Point>, std::string> cornersOf(const std::string& element, const Attributes& attributes) {
    const auto data = svgShapeData(element, [&](std::string_view name) -> std::optional<std::string> {
        const auto found = attributes.find(name);
        return found == attributes.end() ? std::nullopt : std::optional(found->second);
    });
    if (!data) return std::unexpected(data.error());
    return readSvgPath(*data, 0.05);
}

// Expected from: pencil.
TEST(SvgShapes, PolygonsAndRectanglesHaveTheirCorners) {
    const std::vector<Point> square{{10, 20}, {40, 20}, {40, 60}, {10, 60}};
    EXPECT_EQ(cornersOf("polygon", {{"points", "10,20 40,20 40,60 10,60"}}), square);
    EXPECT_EQ(cornersOf("polyline", {{"points", "10 20 40 20 40 60 10 60 10 20"}}), square);
    EXPECT_EQ(cornersOf("rect", {{"x", "10"}, {"y", "20"}, {"width", "30"}, {"height", "40"}})->size(), 4U);
    // In mm a length counts in px: 25.4 mm are 96 user units.
    EXPECT_NEAR((*cornersOf("rect", {{"width", "25.4mm"}, {"height", "10"}}))[1].x, 96, 1e-9);
}

// Expected from: pencil: all places of a circle are its radius from its centre; a rectangle's round of 5 touches 5 from
// the corner, and nothing lies within 5 (1 - 1/√2) √2 = 2.071 of the sharp corner.
TEST(SvgShapes, RoundsAreArcs) {
    const auto circle = cornersOf("circle", {{"cx", "3"}, {"cy", "4"}, {"r", "50"}});
    ASSERT_TRUE(circle);
    for (const Point& corner : *circle) EXPECT_NEAR(distance(corner, {3, 4}), 50, 1e-9);
    const auto rect = cornersOf("rect", {{"width", "100"}, {"height", "60"}, {"rx", "5"}});
    ASSERT_TRUE(rect);
    double nearest = 1000;
    for (const Point& corner : *rect) nearest = std::min(nearest, distance(corner, {100, 60}));
    EXPECT_NEAR(nearest, 5 * (std::sqrt(2) - 1), 0.05);
    EXPECT_TRUE(cornersOf("ellipse", {{"rx", "5"}, {"ry", "3"}}));
}

TEST(SvgShapes, RefusesWhatIsMissing) {
    EXPECT_NE(cornersOf("path", {}).error().find("has no data"), std::string::npos);
    EXPECT_NE(cornersOf("circle", {}).error().find("circle's r is not above zero"), std::string::npos);
    EXPECT_NE(cornersOf("rect", {{"width", "50%"}, {"height", "3"}}).error().find("rect's width is \u201c50%\u201d"), std::string::npos);
    EXPECT_NE(cornersOf("polyline", {{"points", "0 0 1 0 1 1"}}).error().find("is open"), std::string::npos);
}

}  // namespace
}  // namespace kerfwall
