// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/measurable.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/shop/measured_words.h"
#include "tests/core/shop/recorded_window.h"

namespace kerfwall {
namespace {

// Expected from: pencil, recorded_window.h on 400 x 250: each wall from the edge at its fence or stop, then from the
// opposite one; the opening both ways.
TEST(Measurable, WallsFromTheirEdgesAndAcross) {
    Project project = hand::recordedWindow();
    const Solved solved = solve(project);
    const auto all = measurables(project, solved, plan(project, solved));
    std::vector<std::string> words;
    for (const Record& each : all) words.push_back(recordWords(project, each));
    EXPECT_EQ(words, (std::vector<std::string>{"A, 90.0 mm from the bottom edge", "A, 160.0 mm from the top edge",
                                               "B, 146.0 mm from the bottom edge", "B, 104.0 mm from the top edge",
                                               "C, 110.0 mm from the left edge", "C, 290.0 mm from the right edge",
                                               "D, 290.0 mm from the left edge", "D, 110.0 mm from the right edge",
                                               "B to A, 56.0 mm", "C to D, 180.0 mm"}));
}

// Expected from: the promise: an askew wall runs along no edge; a bored corner has its diameter.
TEST(Measurable, AskewAcrossAloneAndBores) {
    Project project = hand::recordedWindow();
    project.lines[3].place = ByAngle{Edge::Left, 5, Point{290, 118}};
    project.cutouts[0].corners = {{"A", "C", 20, {}}};
    project.cutouts[0].wanted.reset();
    const Solved solved = solve(project);
    const auto all = measurables(project, solved, plan(project, solved));
    EXPECT_TRUE(std::ranges::none_of(all, [](const Record& each) { return each.line && each.line->first == "D"; }));
    ASSERT_TRUE(all.back().bore);
    EXPECT_EQ(all.back().measured, 40);
}

}  // namespace
}  // namespace kerfwall
