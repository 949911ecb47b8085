// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

#include "core/shop/heading.h"
#include "tests/core/shop/hand_built.h"

// Each setting is carried out at a saw drawn in coordinates: the panel is turned over if it lies face down,
// laid with its edge on the fence, pushed to the stop, turned with the gauge; then the blade's band must lie
// on the kerf. Nothing here uses the rules by which settings are worked out, only what a step tells.
namespace kerfwall {
namespace {

constexpr double kClose = 1e-7;  ///< mm, rounding over a panel of 600

Point turnedBy(double degrees, Point place) {
    const double angle = degrees * std::numbers::pi / 180;
    return {place.x * std::cos(angle) - place.y * std::sin(angle),
            place.x * std::sin(angle) + place.y * std::cos(angle)};
}

Point middleOf(Edge edge, const Panel& panel) {
    const Point half{panel.width / 2, panel.height / 2};
    switch (edge) {
        case Edge::Bottom:
            return {half.x, 0};
        case Edge::Top:
            return {half.x, panel.height};
        case Edge::Left:
            return {0, half.y};
        case Edge::Right:
            break;
    }
    return {panel.width, half.y};
}

/// The panel as it lies: mirrored if face down, then turned so that the edge on the fence faces `towards`.
struct Lie {
    bool faceUp = true;
    double turn = 0;
    Point shift;

    [[nodiscard]] Point operator()(Point place) const {
        return turnedBy(turn, faceUp ? place : Point{-place.x, place.y}) + shift;
    }
};

Lie laid(const WorkStep& step, const Panel& panel, Point towards) {
    const Point centre{panel.width / 2, panel.height / 2};
    for (const double turn : {0.0, 90.0, 180.0, 270.0}) {
        const Lie lie{step.faceUp, turn, {}};
        if (length(unit(lie(middleOf(*step.against, panel)) - lie(centre)) - towards) < 1e-9) {
            return lie;
        }
    }
    throw std::logic_error("the edge cannot face the fence");
}

/// Expects the kerf's line and its far side on the band's two faces.
void expectInBand(const Lie& lie, const SolvedLine& line, double turn, double nearer, double farther,
                  double kerf) {
    const Kerf& is = line.kerfs[0];
    const Point waste = (is.side == Side::Left ? kerf : -kerf) * unit(leftOf(line.to - line.from));
    double low = 1e9;
    double high = -1e9;
    for (const Point place : {line.from, line.to, line.from + waste, line.to + waste}) {
        const double x = turnedBy(turn, lie(place)).x;
        low = std::min(low, x);
        high = std::max(high, x);
        const double off = std::min(std::abs(x - nearer), std::abs(x - farther));
        EXPECT_LT(off, kClose) << line.id;
    }
    EXPECT_NEAR(low, std::min(nearer, farther), kClose);
    EXPECT_NEAR(high, std::max(nearer, farther), kClose);
}

void expectRips(const Project& project, const WorkStep& step, const SolvedLine& line) {
    const Saw& saw = project.bench->saws[0];
    const double side = saw.fenceSide == Side::Right ? 1 : -1;
    Lie lie = laid(step, project.panel, {side, 0});
    lie.shift = {-lie(middleOf(*step.against, project.panel)).x, 0};  // the fence stands at x = 0
    const double nearer = -side * *step.setting.fence;
    expectInBand(lie, line, 0, nearer, nearer - side * saw.kerf, saw.kerf);
    const double ahead = lie(middleOf(*step.leads, project.panel)).y;
    for (const Edge edge : kEdges) {
        EXPECT_GE(ahead, lie(middleOf(edge, project.panel)).y);
    }
}

void expectStops(const Project& project, const Saw& saw, const WorkStep& step, const SolvedLine& line) {
    const bool far = saw.fenceFar || saw.kind == SawKind::SlidingMitre;
    Lie lie = laid(step, project.panel, {0, far ? 1.0 : -1.0});
    // The fence runs along y = 0, the blade's nearer face meets it at x = 0, the stop stands `stop` to one
    // side.
    const double side = *step.stopSide == Side::Right ? 1 : -1;
    const Point atStop = lie(middleOf(*step.stopEdge, project.panel));
    lie.shift = {side * *step.setting.stop - atStop.x, -lie(middleOf(*step.against, project.panel)).y};
    const Point centre = lie({project.panel.width / 2, project.panel.height / 2});
    EXPECT_GT(side * (side * *step.setting.stop - centre.x), 0)
        << "the panel lies on the blade's side of the stop";
    double turn = step.turn ? *step.setting.angle : 0;
    turn = step.turn == Side::Right ? -turn : turn;
    // An arm turns instead of the panel.
    expectInBand(lie, line, saw.kind == SawKind::SlidingMitre ? -turn : turn, 0, -side * saw.kerf, saw.kerf);
}

/// A random line across the panel: along, square to or up to 60 degrees off square to the reference edge.
SolvedLine randomLine(std::mt19937& dice, const Project& project, std::size_t saw) {
    const auto between = [&](double low, double high) {
        return low + (high - low) * static_cast<double>(dice() % 10000) / 10000;
    };
    const Panel& panel = project.panel;
    const bool upright = panel.referenceEdge == Edge::Bottom || panel.referenceEdge == Edge::Top;
    const bool along = saw == 0;
    const Side waste = dice() % 2 == 0 ? Side::Left : Side::Right;
    const double size = upright != along ? panel.width : panel.height;
    const double at = between(60, size - 60);
    const double lean = along || saw == 1 ? 0 : between(-50, 50);
    Point from = upright != along ? Point{at, 0} : Point{0, at};
    Point to = upright != along ? Point{at + lean, panel.height} : Point{panel.width, at + lean};
    if (dice() % 2 == 0) {
        std::swap(from, to);
    }
    return hand::lineOf(project, "X", from, to, waste, saw);
}

Project randomProject(std::mt19937& dice) {
    Project project = hand::panelOf(200 + dice() % 200, 200 + dice() % 200);
    project.panel.referenceEdge = kEdges.at(dice() % 4);
    project.panel.squareCorner =
        std::array{SquareCorner::Start, SquareCorner::End, SquareCorner::All}.at(dice() % 3);
    std::vector<Saw>& saws = project.bench->saws;
    saws[0].fenceSide = dice() % 2 == 0 ? Side::Left : Side::Right;
    saws[1].fenceFar = dice() % 2 == 0;
    saws[3].kind = SawKind::SlidingMitre;
    saws[3].maxCut = 600;
    return project;
}

// Expected from: law: carried out at the saw, each setting puts the blade where the kerf is drawn.
TEST(KerfLands, WhereItIsDrawnAtEverySawWithAFence) {
    std::mt19937 dice(20240611);
    for (int round = 0; round < 800; ++round) {
        const Project project = randomProject(dice);
        const std::size_t saw = dice() % 4;
        Solved solved;
        solved.lines = {randomLine(dice, project, saw)};
        const WorkStep step = hand::stepFor(plan(project, solved), "X");
        SCOPED_TRACE("round " + std::to_string(round) + ": " + step.text);
        if (saw == 0) {
            expectRips(project, step, solved.lines[0]);
        } else {
            ASSERT_TRUE(step.setting.stop);
            expectStops(project, project.bench->saws[saw], step, solved.lines[0]);
        }
        if (HasFailure()) {
            return;
        }
    }
}

}  // namespace
}  // namespace kerfwall
