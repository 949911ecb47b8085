// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/measured_edge.h"

#include <gtest/gtest.h>

namespace kerfwall {
namespace {

// Expected from: the project file: only with four true corners may the edge opposite the reference edge be used; an
// end where its corner is true. Left edge: it starts at the top, so its start corner is the top-left one.
TEST(MeasuredEdge, IsTheReferenceEdgeAndTheEndsWithATrueCorner) {
    Panel panel{400, 250, 12, "mdf", Edge::Left, SquareCorner::Start, ""};
    EXPECT_TRUE(isMeasuredFrom(panel, Edge::Left));
    EXPECT_TRUE(isMeasuredFrom(panel, Edge::Top));
    EXPECT_FALSE(isMeasuredFrom(panel, Edge::Bottom));
    EXPECT_FALSE(isMeasuredFrom(panel, Edge::Right));
    panel.squareCorner = SquareCorner::End;
    EXPECT_FALSE(isMeasuredFrom(panel, Edge::Top));
    EXPECT_TRUE(isMeasuredFrom(panel, Edge::Bottom));
    panel.squareCorner = SquareCorner::Both;
    EXPECT_TRUE(isMeasuredFrom(panel, Edge::Top) && isMeasuredFrom(panel, Edge::Bottom));
    EXPECT_FALSE(isMeasuredFrom(panel, Edge::Right));
    panel.squareCorner = SquareCorner::All;
    EXPECT_TRUE(isMeasuredFrom(panel, Edge::Right));
    panel.squareCorner = SquareCorner::None;
    EXPECT_FALSE(isMeasuredFrom(panel, Edge::Top) || isMeasuredFrom(panel, Edge::Bottom));
}

}  // namespace
}  // namespace kerfwall
