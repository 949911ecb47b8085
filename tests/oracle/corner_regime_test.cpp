// SPDX-License-Identifier: GPL-3.0-or-later
// One corner of a real project against the closed forms of its regimes.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <optional>

#include "core/geometry/solve.h"
#include "tests/oracle/drafts.h"

namespace kerfwall::oracle {
namespace {

constexpr Point kCorner{400, 300};

// Lines A (level) and B meet at kCorner with `degrees` of waste between them; C and D close the face
// square to them 90 mm away, far outside the bit's reach.
Project cornerProject(double degrees, double kerf, double radius) {
    Project project = emptyPanel(1000, 900, {2 * radius, kerf, 160, 6});
    const double turn = degrees * std::numbers::pi / 180;
    const auto tenth = [](double mm) { return std::round(mm * 10) / 10; };
    const Point alongB{std::cos(turn), std::sin(turn)};
    const Point far{tenth(kCorner.x + 90 * alongB.x), tenth(kCorner.y + 90 * alongB.y)};
    addLine(project, "A", ByOffset{Edge::Bottom, kCorner.y});
    addLine(project, "B", ByAngle{Edge::Bottom, degrees, kCorner});
    addLine(project, "C", ByOffset{Edge::Left, kCorner.x + 90});
    addLine(project, "D", ByAngle{Edge::Bottom, degrees + 90, far});
    const Point half{std::cos(turn / 2), std::sin(turn / 2)};
    addCutout(project, {kCorner + 60 * half});
    return project;
}

struct Measured {
    double step = 0;
    Regime regime = Regime::Sound;
};

std::optional<Measured> solvedCorner(double degrees, double kerf, double radius) {
    const Solved solved = solve(cornerProject(degrees, kerf, radius));
    if (solved.cutouts.size() != 1) return std::nullopt;
    for (const Corner& corner : solved.cutouts[0].corners)
        if (distance(corner.point, kCorner) < 1e-6) return Measured{corner.step, corner.regime};
    return std::nullopt;
}

struct Formula {
    Regime regime = Regime::Sound;
    double step = 0;
};

// The regimes in their order: two kerfs w, bit r, angle t inside the waste, lips at w / sin t.
Formula formula(double degrees, double w, double r) {
    const double t = degrees * std::numbers::pi / 180;
    const double s = std::sin(t);
    const double c = std::cos(t);
    const double half = std::sin(t / 2);
    if (w >= 2 * r) return {Regime::FallsIn, 0};
    if (w <= r * (1 + c)) return {Regime::Sound, 0};
    if (degrees > 90 ? w <= 2 * r * half * (1 + c) : w <= 2 * r * std::cos(t / 2))
        return {Regime::Pivot,
                r - w / 2 - std::sqrt(r * r * half * half - w * w / 4 * std::pow(std::tan(t / 2), 2))};
    if (w <= 2 * r * s * s) return {Regime::TwoDips, r - std::sqrt(r * r - w * w / (4 * s * s))};
    return {Regime::DeepDip, r * (1 - std::abs(c)) + w * std::abs(c) - s * std::sqrt(w * (2 * r - w))};
}

// Expected from: a dense search (1e-7 mm) and a buffer library (3e-6), to the digits given.
TEST(CornerRegime, TheFiveMeasuredCorners) {
    struct Row {
        double degrees, w, r, step, digits;
    };
    for (const Row& row : {Row{90, 3.2, 3, 0.00716, 5e-6}, Row{120, 3.2, 6.35, 0.0000658, 5e-8},
                           Row{150, 3.2, 9.5, 0.55517, 5e-6}, Row{160, 3.2, 9.5, 1.14798, 5e-6},
                           Row{150, 2.2, 3, 0.86150, 5e-6}}) {
        SCOPED_TRACE(row.degrees);
        const auto corner = solvedCorner(row.degrees, row.w, row.r);
        ASSERT_TRUE(corner);
        EXPECT_NEAR(corner->step, row.step, row.digits);
    }
}

// At an acute corner the bit may fit where the kerfs cross, behind the lips it cannot pass: a part of its
// own, which the closed forms do not know. It does where the circle through corner and lips is larger
// than the bit, or, where a kerf's far side comes nearer than its lip, where w > r (1 + sin(t/2)).
bool hasPocket(double degrees, double w, double r) {
    const double t = degrees * std::numbers::pi / 180;
    if (degrees >= 90) return false;
    const double lip = w / std::sin(t);
    const double round = lip / (2 * std::cos(t / 2));
    const bool lipNearer = round * std::cos(t / 2) >= lip * std::cos(t);
    return lipNearer ? round > r : w > r * (1 + std::sin(t / 2));
}

// Where the lips lie farther from the corner than one bit diameter, so may the deepest place.
bool isOutOfReach(double degrees, double w, double r) {
    return w > 2 * r * std::sin(degrees * std::numbers::pi / 180);
}

// Expected from: the closed forms, over corners of 30 to 168 degrees.
void sweepRegime(Regime wanted) {
    int met = 0;
    for (int degrees = 30; degrees <= 168; degrees += 3)
        for (const double w : {1.8, 2.4, 3.2, 4.6, 5.9})
            for (const double r : {3.0, 4.75, 6.35, 9.5}) {
                const Formula expected = formula(degrees, w, r);
                if (expected.regime != wanted || hasPocket(degrees, w, r)) continue;
                if (wanted != Regime::Sound && isOutOfReach(degrees, w, r)) continue;
                SCOPED_TRACE(testing::Message() << degrees << " degrees, w " << w << ", r " << r);
                const auto corner = solvedCorner(degrees, w, r);
                ASSERT_TRUE(corner);
                EXPECT_NEAR(corner->step, expected.step, 1e-6);
                EXPECT_EQ(corner->regime, wanted);
                ++met;
            }
    EXPECT_GE(met, 20);
}

TEST(CornerRegime, SoundCornersHaveNoStep) { sweepRegime(Regime::Sound); }
TEST(CornerRegime, PivotCornersTurnOnBothLips) { sweepRegime(Regime::Pivot); }
TEST(CornerRegime, TwoDipsLeaveTheCornerStanding) { sweepRegime(Regime::TwoDips); }
TEST(CornerRegime, DeepDipsAreTangentToTheOtherLine) { sweepRegime(Regime::DeepDip); }

// Expected from: pencil. A kerf as wide as the bit lets the bearing in.
TEST(CornerRegime, ABitNotWiderThanTheKerfFallsIn) {
    const auto corner = solvedCorner(90, 6.2, 3);
    ASSERT_TRUE(corner);
    EXPECT_EQ(corner->regime, Regime::FallsIn);
}

// Expected from: pencil. w = r (1 + cos t) at the border: r 6.35 is sound up to 119.7 degrees with
// w 3.2, r 9.5 up to 131.5.
TEST(CornerRegime, TheLastSoundAngle) {
    EXPECT_EQ(solvedCorner(119.7, 3.2, 6.35)->regime, Regime::Sound);
    EXPECT_EQ(solvedCorner(119.8, 3.2, 6.35)->regime, Regime::Pivot);
    EXPECT_EQ(solvedCorner(131.5, 3.2, 9.5)->regime, Regime::Sound);
    EXPECT_NE(solvedCorner(131.7, 3.2, 9.5)->regime, Regime::Sound);
}

}  // namespace
}  // namespace kerfwall::oracle
