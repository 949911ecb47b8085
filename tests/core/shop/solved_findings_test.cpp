// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/geometry/solve.h"
#include "core/says/project_text.h"
#include "tests/core/shop/finding_fixture.h"

namespace kerfwall {
namespace {

using namespace testing_bench;

// Findings from a project's text on, on a panel of 500 x 400 x 18.
std::vector<Finding> mind(const std::string& rest) {
    const auto project = readProject(
        R"({"format": "kerfwall-project", "version": 1, "panel": {"width": 500, "height": 400, "thickness": 18}, )" +
        rest + "}");
    EXPECT_TRUE(project) << (project ? "" : project.error().pointer + " " + project.error().sentence);
    return project ? findings(*project, solve(*project)) : std::vector<Finding>{};
}

std::string level(const std::string& id, double up, const std::string& more = "") {
    return R"({"id": ")" + id + R"(", "place": {"by": "offset", "from": "bottom", "distance": )" +
           std::to_string(up) + "}" + more + "}";
}

std::string upright(const std::string& id, double right, const std::string& more = "") {
    return R"({"id": ")" + id + R"(", "place": {"by": "offset", "from": "left", "distance": )" +
           std::to_string(right) + "}" + more + "}";
}

// Two windows, 100 high, side by side with the one line M between them.
// Expected from: pencil. M keeps no wood over its 100 mm; nothing is left between the openings.
TEST(SolvedFindings, ALineSharedByTwoCutoutsKeepsNoWall) {
    const auto all =
        mind(R"("lines": [)" + level("A", 100) + "," + level("B", 200) + "," + upright("C", 100) + "," +
             upright("M", 200) + "," + upright("D", 300) +
             R"(], "cutouts": [{"id": "one", "seeds": [[150, 150]]}, {"id": "two", "seeds": [[250, 150]]}])");
    const auto lost = only(all, "wall-lost");
    ASSERT_FALSE(lost.empty());
    EXPECT_EQ(lost[0].severity, Severity::Stop);
    EXPECT_EQ(lost[0].lines, std::vector<LineId>{"M"});
    EXPECT_NEAR(*lost[0].value, 100, 1e-6);
    const auto thin = only(all, "border-thin");
    ASSERT_EQ(thin.size(), 1u);
    EXPECT_EQ(thin[0].severity, Severity::Stop);
    EXPECT_NEAR(*thin[0].value, 0, 1e-6);
}

// Expected from: pencil. C stopped with the rail saw: full depth up to 200 - 6.35, run-out sqrt(6 * 154), so
// it ends at 224.05 on the face and meets a cutout that begins at 220, 26.35 past its full depth; not one at
// 225. C's own upper wall B belongs to its corner.
TEST(SolvedFindings, AStoppedKerfsRunOutMeetsTheNextCutout) {
    const std::string stopped = R"(, "saw": "rail", "extent": "stopped")";
    for (const double next : {220.0, 225.0}) {
        const auto all = mind(
            R"("lines": [)" + level("A", 100) + "," + level("B", 200) + "," + upright("C", 150, stopped) +
            "," + upright("D", 300) + "," + level("E", next) + "," + level("F", 300) + "," +
            upright("G", 100) + "," +
            R"({"id": "H", "place": {"by": "offset", "from": "right", "distance": 100}})" +
            R"(], "cutouts": [{"id": "low", "seeds": [[200, 150]]}, {"id": "high", "seeds": [[125, 250], [200, 250]]}])");
        const auto some = only(all, "runout");
        ASSERT_EQ(some.size(), next < 224 ? 1u : 0u) << next;
        if (!some.empty()) {
            EXPECT_EQ(some[0].severity, Severity::Care);
            EXPECT_EQ(some[0].cutout, "high");
            EXPECT_NEAR(*some[0].value, std::sqrt(6.0 * 154.0), 1e-9);
            EXPECT_NEAR(*some[0].limit, 26.35, 1e-6);
        }
    }
}

// Expected from: w >= 2 r: a kerf of 8 against a bit of 6. At 90 degrees a bit of 16 mends it.
TEST(SolvedFindings, ABearingThatFallsIntoAWideKerf) {
    const auto all = mind(R"("lines": [)" + level("A", 100) + "," + level("B", 200) + "," +
                          upright("C", 100) + "," + upright("D", 300) +
                          R"(], "cutouts": [{"id": "w", "seeds": [[150, 150]]}],
        "bench": {"saws": [{"id": "dado", "kind": "rip-fence", "kerf": 8, "blade": 200}], "trim_bit": {"diameter": 6}, "circle_bit": 6})");
    const auto some = only(all, "corner-groove");
    ASSERT_EQ(some.size(), 4u);
    for (const Finding& finding : some) {
        EXPECT_EQ(finding.severity, Severity::Stop);
        EXPECT_NE(finding.text.find("A bit of 16.0 mm or more"), std::string::npos) << finding.text;
    }
}

// Two rooms 100 high joined by a neck of 10 between P and Q.
// Expected from: pencil. 12.7 - 10 = 2.7.
TEST(SolvedFindings, ANeckBetweenTwoRooms) {
    const auto all = mind(
        R"("lines": [)" + level("A", 100) + "," + level("B", 200) + "," + level("P", 145) + "," +
        level("Q", 155) + "," + upright("C", 100) + "," + upright("D", 200) + "," + upright("E", 240) + "," +
        upright("F", 340) +
        R"(], "cutouts": [{"id": "rooms", "seeds": [[150, 120], [150, 150], [150, 180], [220, 150], [290, 120], [290, 150], [290, 180]]}])");
    const auto some = only(all, "narrow");
    ASSERT_EQ(some.size(), 1u);
    EXPECT_EQ(some[0].severity, Severity::Stop);
    ASSERT_TRUE(some[0].value);
    EXPECT_NEAR(*some[0].value, 10, 1e-6);
    EXPECT_EQ(some[0].limit, 12.7);
    EXPECT_NE(some[0].text.find("move a line by 2.7 mm"), std::string::npos) << some[0].text;
}

// Expected from: pencil. A corner of 36.87 degrees (3 up for 4 across): the arc stops r (1 / sin(18.435) -
// 1), with sin = 1 / sqrt 10: 6.35 (3.1623 - 1) = 13.73.
TEST(SolvedFindings, APointedCorner) {
    const auto all = mind(
        R"("lines": [)" + level("A", 100) + "," + upright("D", 300) +
        R"(, {"id": "S", "place": {"by": "points", "p": [100, 100], "q": [180, 160]}}], "cutouts": [{"id": "wedge", "seeds": [[250, 130]]}])");
    const auto some = only(all, "corner-short");
    ASSERT_EQ(some.size(), 1u);
    EXPECT_EQ(some[0].severity, Severity::Care);
    EXPECT_NEAR(*some[0].value, 6.35 * (std::sqrt(10.0) - 1), 1e-9);
    EXPECT_NEAR(distance(*some[0].at, {100, 100}), 0, 1e-9);
}

TEST(SolvedFindings, TroubleOfDrawingStops) {
    const auto all = mind(R"("lines": [)" + level("A", 100) + "," + level("A2", 100) +
                          R"(], "cutouts": [{"id": "w", "seeds": [[150, 500]]}])");
    const auto some = only(all, "drawing");
    ASSERT_GE(some.size(), 2u);
    for (const Finding& finding : some) {
        EXPECT_EQ(finding.severity, Severity::Stop);
        EXPECT_TRUE(saysANumber(finding.text)) << finding.text;
    }
}

// Law: the mirrored project minds the same things, at mirrored places.
TEST(SolvedFindings, MirroringChangesNothingButThePlaces) {
    const auto lines = [](bool mirrored) {
        const auto at = [&](double x) { return mirrored ? 500 - x : x; };
        return R"("lines": [)" + level("A", 100) + "," + level("B", 200) + "," + upright("C", at(15)) + "," +
               upright("D", at(120)) + "," + upright("E", at(130)) + "," + upright("F", at(260)) + "," +
               level("J", 150) + R"(], "cutouts": [{"id": "w", "seeds": [[)" + std::to_string(at(60)) +
               R"(, 120], [)" + std::to_string(at(60)) + R"(, 170]]}, {"id": "v", "seeds": [[)" +
               std::to_string(at(200)) + R"(, 170]]}], "clamp_holes": [{"edge": "top", "at": )" +
               std::to_string(mirrored ? 200 : 300) + R"(, "diameter": 13, "depth": 198}])";
    };
    const auto plain = mind(lines(false));
    const auto mirrored = mind(lines(true));
    ASSERT_GE(plain.size(), 5u);
    ASSERT_EQ(mirrored.size(), plain.size());
    for (const Finding& finding : plain) {
        const bool found = std::ranges::any_of(mirrored, [&](const Finding& other) {
            return other.code == finding.code && other.severity == finding.severity &&
                   other.value.has_value() == finding.value.has_value() &&
                   std::abs(other.value.value_or(0) - finding.value.value_or(0)) < 1e-6 &&
                   distance({500 - other.at->x, other.at->y}, *finding.at) < 1e-6;
        });
        EXPECT_TRUE(found) << finding.text;
    }
}

}  // namespace
}  // namespace kerfwall
