// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/close_up.h"

#include <gtest/gtest.h>

#include "core/drawing/sign_at.h"
#include "core/shop/same_finding.h"
#include "tests/core/drawing/drawn_panel.h"

namespace kerfwall {
namespace {

struct Sheet {
    Project project = blankPanel(400, 250, 12);
    Solved solved;
    Finding finding;

    Sheet() {
        solved.bitRadius = 5;
        solved.lines = {sawnLine("A", {0, 90}, {400, 90}, Side::Left), sawnLine("C", {110, 0}, {110, 250}, Side::Right),
                        sawnLine("D", {290, 0}, {290, 250}, Side::Left)};
        finding.at = Point{110, 90};
    }
    CloseUp shown() const { return closeUp(project, solved, finding, {80, 40}).value(); }
};

std::vector<std::string> namesIn(const Drawing& drawing) {
    std::vector<std::string> names;
    for (const Label& label : marksOf<Label>(drawing, Ink::Text)) names.push_back(label.text);
    return names;
}

// Expected from: pencil. Three bits of 10 side by side.
TEST(CloseUp, IsWideEnoughForThreeBits) {
    const Sheet sheet;
    EXPECT_EQ(sheet.shown().across, 30);
    EXPECT_EQ(sheet.shown().middle, (Point{110, 90}));
}

// Expected from: pencil. Three times 25; and never more than 200.
TEST(CloseUp, IsWideEnoughForWhatIsMeasured) {
    Sheet sheet;
    sheet.finding.value = 14;
    sheet.finding.limit = 25;
    EXPECT_EQ(sheet.shown().across, 75);
    sheet.finding.value = 400;
    EXPECT_EQ(sheet.shown().across, 200);
}

// Expected from: pencil. 30 across and 15 up: from 95 to 125 and 82.5 to 97.5; A and C run through it, D does not.
TEST(CloseUp, NamesTheLinesThatAreSeen) {
    const Sheet sheet;
    EXPECT_EQ(namesIn(sheet.shown().drawing), (std::vector<std::string>{"A", "C"}));
    EXPECT_EQ(sheet.shown().words,
              "The plan 30.0 mm across, round 110.0 mm from the left and 90.0 mm from the bottom: line A with a kerf of "
              "3.2 mm and line C with a kerf of 3.2 mm.");
}

// Expected from: pencil. The names stand inside the picture.
TEST(CloseUp, NamesStandInThePicture) {
    const Sheet sheet;
    for (const Label& label : marksOf<Label>(sheet.shown().drawing, Ink::Text)) {
        EXPECT_GT(label.at.x, 95);
        EXPECT_LT(label.at.x, 125);
        EXPECT_GT(label.at.y, 82.5);
        EXPECT_LT(label.at.y, 97.5);
    }
}

TEST(CloseUp, AFindingWithoutAPlaceHasNone) {
    Sheet sheet;
    sheet.finding.at.reset();
    EXPECT_FALSE(closeUp(sheet.project, sheet.solved, sheet.finding, {80, 40}));
}

// Expected from: pencil. 3-4-5: the sign at (3, 4) is 5 off, the one at (0, 2) is 2 off.
TEST(SignAt, TheNearestWithinReachIsMeant) {
    std::vector<Finding> all(3);
    all[0].at = Point{3, 4};
    all[2].at = Point{0, 2};
    EXPECT_EQ(signAt(all, {0, 0}, 6), 2u);
    EXPECT_EQ(signAt(all, {3, 4}, 6), 0u);
    EXPECT_EQ(signAt(all, {0, 0}, 1.9), std::nullopt);
    all[2].at = all[0].at;
    EXPECT_EQ(signAt(all, {0, 0}, 6), 0u) << "the gravest lies on top";
}

// Expected from: pencil. The place moved with the line; another line's is another finding.
TEST(SameFinding, IsKnownAgainAfterAChange) {
    Finding nick;
    nick.code = "wall-nick";
    nick.lines = {"D", "J"};
    nick.at = Point{10, 0};
    Finding far = nick;
    far.at = Point{50, 0};
    Finding other = nick;
    other.lines = {"C", "J"};
    Finding milder = nick;
    milder.at = Point{12, 0};
    milder.severity = Severity::Care;
    EXPECT_EQ(sameFinding({other, far, milder}, nick), 2u);
    EXPECT_EQ(sameFinding({other}, nick), std::nullopt);
}

}  // namespace
}  // namespace kerfwall
