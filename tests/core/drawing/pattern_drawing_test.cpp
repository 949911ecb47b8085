// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/pattern_drawing.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <sstream>

#include "core/geometry/solve.h"
#include "core/says/project_text.h"
#include "tests/core/drawing/drawn_panel.h"

namespace kerfwall {
namespace {

Project sample(const std::string& name) {
    std::ifstream file(std::string(KERFWALL_SAMPLES) + "/" + name);
    std::ostringstream text;
    text << file.rdbuf();
    return readProject(text.str()).value();
}

Drawing patternOf(const Project& project) { return patternDrawing(project, solve(project)); }

TEST(PatternDrawing, LaysEachLineOnceFromEdgeToEdge) {
    const Project project = sample("crate_end.kerfwall");
    const Solved solved = solve(project);
    const auto strokes = marksOf<Stroke>(patternDrawing(project, solved), Ink::LayoutLine);
    for (const SolvedLine& line : solved.lines) {
        EXPECT_EQ(std::ranges::count(strokes, line.id, &Stroke::id), 1);
        EXPECT_NE(std::ranges::find(strokes, Stroke{Ink::LayoutLine, line.from, line.to, line.id}), strokes.end()) << line.id;
    }
}

// Expected from: the panel frame. Names stand at both ends, inside the panel.
TEST(PatternDrawing, NamesEachLineAtBothEnds) {
    const Project project = sample("crate_end.kerfwall");
    const auto labels = marksOf<Label>(patternOf(project), Ink::Text);
    for (const LayoutLine& line : project.lines) EXPECT_EQ(std::ranges::count(labels, line.id, &Label::text), 2) << line.id;
}

// Expected from: pencil. A window from 110 to 290 and 90 to 146: its middle lies at (200, 118).
TEST(PatternDrawing, RunsCentreLinesThroughEachCutout) {
    Solved solved = windowInPanel();
    solved.cutouts.front().drawn = makeOutline({polygonLoop({{110, 90}, {290, 90}, {290, 146}, {110, 146}})});
    const auto centres = marksOf<Stroke>(patternDrawing(blankPanel(400, 250, 12), solved), Ink::Centre);
    const auto through = [&](auto same) { return std::ranges::any_of(centres, same); };
    EXPECT_TRUE(through([](const Stroke& s) { return s.from.y == 118 && s.to.y == 118 && s.from.x < 110 && s.to.x > 290; }));
    EXPECT_TRUE(through([](const Stroke& s) { return s.from.x == 200 && s.to.x == 200 && s.from.y < 90 && s.to.y > 146; }));
}

// Expected from: geometry. A bore of R in a corner touches both its lines: its centre lies R from each, and the tangent marks
// stand where it touches, square across the line.
TEST(PatternDrawing, ShowsBoresAndWhereTrimmingStops) {
    const Project project = sample("round_window.kerfwall");
    const Solved solved = solve(project);
    const Drawing drawing = patternDrawing(project, solved);
    const auto circles = marksOf<Circle>(drawing, Ink::ReliefHole);
    const auto ticks = marksOf<Stroke>(drawing, Ink::EdgeTick);
    int bored = 0;
    for (const Corner& corner : solved.cutouts.front().corners) {
        if (corner.regime != Regime::Bored) continue;
        ++bored;
        const bool found = std::ranges::any_of(circles, [&](const Circle& circle) {
            return std::abs(circle.radius - *corner.boreRadius) < 1e-9 &&
                   std::abs(distance(circle.centre, corner.firstTangent) - circle.radius) < 1e-6 &&
                   std::abs(distance(circle.centre, corner.secondTangent) - circle.radius) < 1e-6;
        });
        EXPECT_TRUE(found);
        for (const Point tangent : {corner.firstTangent, corner.secondTangent}) {
            EXPECT_TRUE(std::ranges::any_of(ticks, [&](const Stroke& tick) {
                const bool middle = distance(0.5 * (tick.from + tick.to), tangent) < 1e-6;
                return middle && std::abs(dot(tick.to - tick.from, tangent - corner.point)) < 1e-6;
            }));
        }
    }
    EXPECT_GT(bored, 0);
}

TEST(PatternDrawing, LeavesOutWhatTheProjectSays) {
    Project project = sample("round_window.kerfwall");
    const auto count = [&](Ink ink) {
        const Drawing drawing = patternOf(project);
        return marksOf<Stroke>(drawing, ink).size() + marksOf<Area>(drawing, ink).size() + marksOf<Circle>(drawing, ink).size();
    };
    for (const auto& [layer, ink] : {std::pair{PatternLayer::Kerfs, Ink::KerfBand}, std::pair{PatternLayer::Waste, Ink::Waste},
                                     std::pair{PatternLayer::Template, Ink::Template}, std::pair{PatternLayer::Work, Ink::Work},
                                     std::pair{PatternLayer::Holes, Ink::ReliefHole}, std::pair{PatternLayer::Tangents, Ink::EdgeTick},
                                     std::pair{PatternLayer::Reference, Ink::ReferenceEdge},
                                     std::pair{PatternLayer::EdgeMarks, Ink::WasteTick}}) {
        project.printing.leaveOut.clear();
        EXPECT_GT(count(ink), 0U) << static_cast<int>(layer);
        project.printing.leaveOut = {layer};
        EXPECT_EQ(count(ink), 0U) << static_cast<int>(layer);
        EXPECT_GT(count(Ink::LayoutLine), 0U);
    }
    project.printing.leaveOut = {PatternLayer::Names};
    EXPECT_TRUE(marksOf<Label>(patternOf(project), Ink::Text).empty());
}

// Expected from: pencil, and ISO 128 for the layout face's pattern: hidden lines are dashed. 50 from the left is 350 from the back.
TEST(PatternDrawing, HidesNoLayoutLineOnTheBack) {
    Project project = blankPanel(400, 250, 12);
    for (const auto& [id, face] : {std::pair{"A", Face::Layout}, std::pair{"B", Face::Back}, std::pair{"C", Face::Both}}) {
        LayoutLine line;
        line.id = id;
        line.drawnOn = face;
        line.place = ByOffset{Edge::Left, 50.0 * static_cast<double>(project.lines.size() + 1)};
        project.lines.push_back(line);
    }
    EXPECT_EQ(marksOf<Stroke>(patternOf(project), Ink::BackLine).size(), 1U);
    project.printing.face = Face::Back;
    const Drawing drawing = patternOf(project);
    EXPECT_TRUE(marksOf<Stroke>(drawing, Ink::BackLine).empty());
    const auto lines = marksOf<Stroke>(drawing, Ink::LayoutLine);
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_NEAR(lines[0].from.x, 350, 1e-9);
}

TEST(PatternDrawing, StaysInsideThePanel) {
    for (const char* name : {"crate_end.kerfwall", "round_window.kerfwall", "bench_leg.kerfwall"}) {
        const Project project = sample(name);
        for (const Stroke& stroke : marksOf<Stroke>(patternOf(project), Ink::ReferenceEdge)) {
            for (const Point place : {stroke.from, stroke.to}) {
                EXPECT_TRUE(place.x >= -2.3 && place.y >= -1e-9 && place.x <= project.panel.width + 2.3 &&
                            place.y <= project.panel.height + 1e-9)
                    << name;
            }
        }
    }
}

// Expected from: pencil. A panel of 800 x 1100 with one line across near its foot: of 3 x 3 sheets of a3 the middle one is blank.
TEST(PatternDrawing, LeavesBlankSheetsOut) {
    Project project = blankPanel(800, 1100, 12);
    LayoutLine line;
    line.id = "A";
    line.place = ByOffset{Edge::Bottom, 100};
    project.lines.push_back(line);
    EXPECT_EQ(patternSheets(project, solve(project), *paperOf("a3", project.panel)).sheets.size(), 8U);
    project.lines.front().place = ByOffset{Edge::Bottom, 600};
    EXPECT_EQ(patternSheets(project, solve(project), *paperOf("a3", project.panel)).sheets.size(), 9U);
}

}  // namespace
}  // namespace kerfwall
