// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/plunge_places.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "core/geometry/solve.h"
#include "core/says/project_text.h"
#include "core/shop/step_text.h"
#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

WorkStep stoppedStep(Edge leads) {
    WorkStep step;
    step.task = Task::Kerf;
    step.lines = {"A"};
    step.sides = {Side::Left};
    step.leads = leads;
    step.setting.plunge = PlungeMarks{60, 120, 30, 150};
    return step;
}

// Pencil: A runs 400 from the left to the right edge. Started at the right, 400 - 120 = 280 comes first.
TEST(PlungePlaces, AreMeasuredFromTheEndThatLeads) {
    const Project project = hand::panelOf(400, 250);
    Solved solved;
    solved.lines = {hand::level(project, "A", 90, Side::Left, 3)};
    EXPECT_EQ(plungeFromStart(project.panel, solved, stoppedStep(Edge::Left)), (PlungeMarks{60, 120, 30, 150}));
    EXPECT_EQ(plungeFromStart(project.panel, solved, stoppedStep(Edge::Right)), (PlungeMarks{280, 340, 250, 370}));
}

TEST(PlungePlaces, AThroughCutHasNone) {
    WorkStep step = stoppedStep(Edge::Left);
    step.setting.plunge.reset();
    const Project project = hand::panelOf(400, 250);
    Solved solved;
    solved.lines = {hand::level(project, "A", 90, Side::Left, 3)};
    EXPECT_EQ(plungeFromStart(project.panel, solved, step), std::nullopt);
}

// A law: a step's words and these are one. Every place inside the panel stands in the text.
TEST(PlungePlaces, AreTheOnesTheStepsTextNames) {
    std::ifstream file(std::string(KERFWALL_SAMPLES) + "/stall_pennant.kerfwall");
    std::ostringstream text;
    text << file.rdbuf();
    const Project project = readProject(text.str()).value();
    const Solved solved = solve(project);
    int stopped = 0;
    for (const WorkStep& step : plan(project, solved).steps) {
        const auto places = plungeFromStart(project.panel, solved, step);
        if (!places) continue;
        ++stopped;
        for (const double place : {places->fullFrom, places->fullTo, places->surfaceFrom, places->surfaceTo}) {
            EXPECT_NE(step.text.find(sizeText(project, place)), std::string::npos) << place << ": " << step.text;
        }
    }
    EXPECT_GT(stopped, 0);
}

}  // namespace
}  // namespace kerfwall
