// SPDX-License-Identifier: GPL-3.0-or-later
// The shop tried out some thousand times: settings are off by chance, the panel is laid against fence and stop, the
// blade's two sides are found in the saw's own frame and carried back to the panel, and sizes and angles are measured.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <numbers>
#include <random>

#include "core/geometry/angle.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/solve.h"
#include "core/shop/exactness.h"
#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

/// The error of that source, ± its limit; the same each time it is asked for in one trial.
using Chance = std::function<double(const std::string&, double)>;

struct Straight {
    Point at;
    Point along;
};

/// The panel as it really is, laid face down with an edge on a fence that runs across the push, near the operator.
struct Laid {
    double width;
    double height;
    Edge against;
    double startsAt;  ///< where the edge's start corner lies along the fence, to the operator's right

    /// A place in the saw's frame, x to the right along the fence, y away from the operator, back to the panel's frame.
    Point backToPanel(Point at) const {
        const double along = startsAt - at.x;  // face down edges run to the left
        switch (against) {
            case Edge::Bottom: return {along, at.y};
            case Edge::Right: return {width - at.y, along};
            case Edge::Top: return {width - along, height - at.y};
            case Edge::Left: return {at.y, height - along};
        }
        return {};
    }
};

class Trial {
  public:
    Trial(const Project& project, Chance chance) : m_project(project), m_chance(std::move(chance)) {
        const double read = project.panel.squareCorner == SquareCorner::All ? 0.15 : 0.5;
        m_width = project.panel.width + m_chance("width", read);
        m_height = project.panel.height + m_chance("height", read);
    }

    Straight wall(const SolvedLine& line, const WorkStep& step) const {
        const Saw& saw = *findSaw(benchOf(m_project), step.saw);
        if (step.setting.fence) return nearest(ripped(saw, step), line);
        if (step.setting.stop) return nearest(crossCut(saw, step), line);
        const Point left = leftOf(unit(line.to - line.from));
        const auto mark = [&](Point end, const char* which) {
            return end + m_chance("mark" + line.id + which, saw.repeatability) * left;
        };
        const Point from = mark(line.from, "from"), to = mark(line.to, "to");
        return {from, unit(to - from)};
    }

  private:
    double settingOff(const Saw& saw, const WorkStep& step) const {
        const Setting& set = step.setting;
        return m_chance("set" + saw.id + std::to_string(set.fence.value_or(0)) + "/" + std::to_string(set.stop.value_or(0)) +
                            (step.stopSide == Side::Left ? "l" : "r") + std::to_string(set.angle.value_or(0)),
                        saw.repeatability);
    }

    /// Both sides of the kerf: the panel's edge on the fence is the x axis, the blade runs along it.
    std::vector<Straight> ripped(const Saw& saw, const WorkStep& step) const {
        const double near = *step.setting.fence + settingOff(saw, step);
        const double far = near + saw.kerf + m_chance("kerf" + saw.id, saw.kerfPlusMinus);
        const Laid laid{m_width, m_height, *step.against, 0};
        return {back(laid, {0, near}, {1, near}), back(laid, {0, far}, {1, far})};
    }

    /// The blade's nearer side passes through the origin on the fence; the stop stands to the left or right of it.
    std::vector<Straight> crossCut(const Saw& saw, const WorkStep& step) const {
        const bool isRight = (step.stopSide == Side::Right) != (saw.kind == SawKind::CrosscutSled && saw.fenceFar);
        const double off = *step.setting.stop + settingOff(saw, step);
        const bool startsAtStop = *step.stopEdge == (*step.against == Edge::Bottom  ? Edge::Left
                                                     : *step.against == Edge::Right ? Edge::Bottom
                                                     : *step.against == Edge::Top   ? Edge::Right
                                                                                    : Edge::Top);
        EXPECT_EQ(startsAtStop, isRight) << "face down the edge runs to the operator's left";
        const bool isLevel = *step.against == Edge::Bottom || *step.against == Edge::Top;
        const double edge = isLevel ? m_width : m_height;
        const Laid laid{m_width, m_height, *step.against, isRight ? off : edge - off};
        const double angle = step.setting.angle.value_or(0);
        // The panel turned to the left sees the blade's path turned to the right.
        const double turned = (step.turn == Side::Left ? 1 : -1) * radians(angle);
        const std::string name = angle == 0 ? "square" + saw.id
                                            : "turned" + saw.id + std::to_string(angle) + (step.turn == Side::Left ? "l" : "r");
        const double path = turned + std::atan(m_chance(name, saw.squareness / 1000));
        const Point along{std::sin(path), std::cos(path)};
        const double width = saw.kerf + m_chance("kerf" + saw.id, saw.kerfPlusMinus);
        const Point across{(isRight ? -1 : 1) * width / std::cos(path), 0};
        return {back(laid, {0, 0}, along), back(laid, across, across + along)};
    }

    static Straight back(const Laid& laid, Point from, Point to) {
        const Point a = laid.backToPanel(from), b = laid.backToPanel(to);
        return {a, unit(b - a)};
    }

    /// Of the kerf's two sides the one on the line.
    static Straight nearest(const std::vector<Straight>& sides, const SolvedLine& line) {
        const auto off = [&](const Straight& side) {
            return std::abs(cross(side.along, 0.5 * (line.from + line.to) - side.at));
        };
        const Straight& side = off(sides[0]) < off(sides[1]) ? sides[0] : sides[1];
        EXPECT_LT(off(side), 1.5) << line.id << ": the kerf has a side on its line";
        return side;
    }

    const Project& m_project;
    Chance m_chance;
    double m_width;
    double m_height;
};

/// The least and greatest of what was measured, and its standard deviation.
struct Spread {
    double low = 1e9, high = -1e9, first = 0, sum = 0, squares = 0;
    int count = 0;
    void add(double value) {
        if (count == 0) first = value;
        low = std::min(low, value);
        high = std::max(high, value);
        sum += value - first;  // taken about the first, so that rounding does not count
        squares += (value - first) * (value - first);
        ++count;
    }
    double deviation() const { return std::sqrt(std::max(0.0, squares / count - (sum / count) * (sum / count))); }
};

struct Job {
    Project project;
    Solved solved;
    OrderOfWork order;
    explicit Job(Project said) : project(std::move(said)), solved(solve(project)), order(plan(project, solved)) {}
    const WorkStep& stepFor(const Wall& wall) const {
        for (const WorkStep& step : order.steps) {
            for (std::size_t i = 0; step.task == Task::Kerf && i < step.lines.size(); ++i) {
                if (step.lines[i] == wall.line && step.sides[i] == wall.waste) return step;
            }
        }
        throw std::logic_error("no step cuts " + wall.line);
    }
};

Point meetAt(const Straight& one, const Straight& other) {
    return one.at + (cross(other.at - one.at, other.along) / cross(one.along, other.along)) * one.along;
}

/// From the place on the first wall `at` along it, square to it, to the second.
double measured(const Wall& first, const Straight& one, const Straight& other, double at) {
    const Point foot = first.from + at * unit(first.to - first.from);
    const Point place = one.at + dot(foot - one.at, one.along) * one.along;
    return distance(place, meetAt({place, leftOf(one.along)}, other));
}

double splay(const Straight& one, const Straight& other) {
    return std::atan2(cross(one.along, other.along), dot(one.along, other.along));
}

/// Where along the first wall the second begins and ends to stand opposite.
std::pair<double, double> opposite(const Wall& first, const Wall& second) {
    const Point u = unit(first.to - first.from);
    double a = dot(second.from - first.from, u), b = dot(second.to - first.from, u);
    if (a > b) std::swap(a, b);
    return {std::max(0.0, a), std::min(distance(first.from, first.to), b)};
}

/// What `trials` trials of all sizes and angles of the first cutout give. What is likely of rectangular sources is a
/// standard deviation times sqrt 3 (GUM 4.3.7), so that one source's is its own limit.
void expectAgreement(const Job& job, unsigned seed) {
    constexpr int kTrials = 20000;
    const SolvedCutout& cutout = job.solved.cutouts.at(0);
    std::vector<std::pair<Spread, Spread>> sizes(cutout.sizes.size());
    std::vector<Spread> angles(cutout.corners.size());
    std::mt19937 dice(seed);
    const auto wallAt = [&](std::size_t corner, auto member) {
        return std::ranges::find(cutout.walls, std::optional(corner), member) - cutout.walls.begin();
    };
    for (int i = 0; i < kTrials; ++i) {
        std::map<std::string, double> drawn;
        const Chance chance = [&](const std::string& source, double limit) {
            if (!drawn.contains(source)) drawn[source] = std::uniform_real_distribution(-limit, limit)(dice);
            return drawn[source];
        };
        const Trial trial(job.project, chance);
        std::vector<Straight> walls;
        for (const Wall& wall : cutout.walls) {
            walls.push_back(trial.wall(*findLine(job.solved, wall.line), job.stepFor(wall)));
        }
        for (std::size_t s = 0; s < sizes.size(); ++s) {
            const FacingSize& size = cutout.sizes[s];
            const Wall& first = cutout.walls[size.firstWall];
            const auto [low, high] = opposite(first, cutout.walls[size.secondWall]);
            sizes[s].first.add(measured(first, walls[size.firstWall], walls[size.secondWall], low));
            sizes[s].second.add(measured(first, walls[size.firstWall], walls[size.secondWall], high));
        }
        for (std::size_t c = 0; c < angles.size(); ++c) {
            angles[c].add(splay(walls.at(static_cast<std::size_t>(wallAt(c, &Wall::endCorner))),
                                walls.at(static_cast<std::size_t>(wallAt(c, &Wall::startCorner)))));
        }
    }
    const CutoutExactness told = exactness(job.project, job.solved, job.order).at(0);
    const auto likely = [](const Spread& spread) { return spread.deviation() * std::numbers::sqrt3; };
    const auto reach = [](const Spread& spread) { return (spread.high - spread.low) / 2; };
    ASSERT_FALSE(sizes.empty());
    for (std::size_t s = 0; s < sizes.size(); ++s) {
        SCOPED_TRACE(cutout.sizes[s].first + " " + cutout.sizes[s].second);
        const PlusMinus& is = told.sizes.at(s).value().plusMinus;
        const double seen = std::max(likely(sizes[s].first), likely(sizes[s].second));
        EXPECT_GT(is.likely, 0.05);
        EXPECT_NEAR(seen / is.likely, 1, 0.05);
        const double farthest = std::max(reach(sizes[s].first), reach(sizes[s].second));
        EXPECT_LT(farthest, is.worst * 1.001);
        EXPECT_GT(farthest, is.worst * 0.6);
    }
    for (std::size_t c = 0; c < angles.size(); ++c) {
        const PlusMinus& is = told.angles.at(c).value().plusMinus;
        SCOPED_TRACE(cutout.corners[c].first + " " + cutout.corners[c].second);
        EXPECT_NEAR(degrees(likely(angles[c])), is.likely, is.likely * 0.05 + 1e-9);
        EXPECT_LT(degrees(reach(angles[c])), is.worst * 1.001 + 1e-9);
    }
}

LayoutLine offsetLine(const LineId& id, Edge from, double distance) {
    LayoutLine line;
    line.id = id;
    line.place = ByOffset{from, distance};
    return line;
}

Project window() {
    Project project = hand::panelOf(400, 250);
    for (Saw& saw : project.bench->saws) {
        saw.repeatability = saw.kind == SawKind::RipFence ? 0.15 : 0.1;
        saw.kerfPlusMinus = 0.08;
        saw.squareness = 0.3;
    }
    project.lines = {offsetLine("A", Edge::Bottom, 90), offsetLine("B", Edge::Bottom, 146),
                     offsetLine("C", Edge::Left, 110), offsetLine("D", Edge::Left, 290)};
    project.cutouts = {{"window", {{200, 118}}, {}, {}, {}}};
    return project;
}

WorkStep& stepOf(Job& job, const LineId& line) {
    for (WorkStep& step : job.order.steps) {
        if (step.task == Task::Kerf && step.lines == std::vector<LineId>{line}) return step;
    }
    throw std::logic_error("no step cuts " + line + " alone");
}

TEST(ExactnessTrial, OfAWindowAtFenceAndSled) { expectAgreement(Job(window()), 1); }

// B and D turned end for end at the settings of A and C: what is one setting, and the panel's sizes, come in.
TEST(ExactnessTrial, TurnedEndForEnd) {
    Project project = window();
    project.panel.squareCorner = SquareCorner::All;
    std::get<ByOffset>(project.lines[1].place).distance = 160;
    Job job(project);
    WorkStep& b = stepOf(job, "B");
    b.setting.fence = 90;
    b.against = Edge::Top;
    WorkStep& d = stepOf(job, "D");
    d.setting.stop = 110;
    d.against = Edge::Top;
    d.stopEdge = Edge::Right;
    expectAgreement(job, 2);
}

// C on the sled with the bottom edge on its fence, D with the top edge: both lean one way about places 250 apart. A
// lean of 3 over a metre, so that it counts.
TEST(ExactnessTrial, FromBothEdgesOnTheSled) {
    Project project = window();
    project.panel.squareCorner = SquareCorner::All;
    project.bench->saws[1].squareness = 3;
    Job job(project);
    WorkStep& d = stepOf(job, "D");
    d.against = Edge::Top;
    d.stopSide = Side::Left;
    d.setting.stop = 290 - 3.2;
    d.stopEdge = Edge::Left;
    expectAgreement(job, 3);
}

// A on the sled too, the left edge on its fence and the bottom edge at its stop: it leans as C and D do, and the angles
// between them stay.
TEST(ExactnessTrial, TwoNeighboursOnOneSled) {
    Project project = window();
    project.panel.squareCorner = SquareCorner::All;
    Job job(project);
    WorkStep& a = stepOf(job, "A");
    a.saw = "sled";
    a.setting.fence.reset();
    a.setting.stop = 90;
    a.against = Edge::Left;
    a.stopEdge = Edge::Bottom;
    a.stopSide = Side::Left;
    expectAgreement(job, 6);
    for (std::size_t corner = 0; corner < 4; ++corner) {
        const Corner& is = job.solved.cutouts[0].corners[corner];
        const double off = exactness(job.project, job.solved, job.order)[0].angles[corner].value().plusMinus.worst;
        EXPECT_NEAR(off, is.first == "A" || is.second == "A" ? 0 : degrees(0.0003), 1e-9);
    }
}

// C along the sled, D along a rail on two marks: D turns by itself.
TEST(ExactnessTrial, WithARailOnMarks) {
    Project project = window();
    project.lines[3].saw = "rail";
    expectAgreement(Job(project), 4);
}

// Splayed walls on a gauge turned left and right by 6 degrees, square within 2 over a metre.
TEST(ExactnessTrial, OfSplayedWallsOnATurnedGauge) {
    Project project = window();
    project.bench->saws[2].squareness = 2;
    project.lines[2].place = ByAngle{Edge::Left, 6, Point{110, 90}};
    project.lines[3].place = ByAngle{Edge::Right, -6, Point{290, 90}};
    project.lines[2].saw = project.lines[3].saw = "gauge";
    const Job job(project);
    ASSERT_EQ(job.solved.cutouts.at(0).sizes.size(), 2U);
    expectAgreement(job, 5);
}

}  // namespace
}  // namespace kerfwall
