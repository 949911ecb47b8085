// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/line_names.h"

#include <gtest/gtest.h>

#include "core/says/project_text.h"
#include "tests/core/laying/sheet.h"

namespace kerfwall {
namespace {

/// Lines that name A in every way, a bore, a fence and measures at it.
Project namingA() {
    Project project = gridOfFour();
    addLine(project, "E", ByOffset{LineId("A"), 10});
    addLine(project, "F", ByAngle{LineId("A"), 30, CrossingOf{"A", "C"}});
    addLine(project, "G", ByMirror{"A", Centre::Level});
    addLine(project, "H", ByMirror{"C", LineId("A")});
    project.cutouts.push_back({"cutout-1", {{200, 118}}, {{"C", "A", 10, {}}}, {}, {}});
    Fence fence;
    fence.along = LineId("A");
    fence.to = 100;
    fence.width = fence.height = 20;
    project.fences.push_back(fence);
    Record record;
    record.between = std::pair<LineId, LineId>{"A", "B"};
    record.measured = 56;
    project.record.push_back(record);
    return project;
}

TEST(LineNames, ARenamedLineIsCalledSoEverywhere) {
    const auto next = renamedLine(namingA(), "A", "sole");
    ASSERT_TRUE(next);
    const std::string text = writeProject(*next);
    EXPECT_EQ(text.find("\"A\""), std::string::npos);
    EXPECT_TRUE(readProject(text));
    const auto back = renamedLine(*next, "sole", "A");
    ASSERT_TRUE(back);
    EXPECT_EQ(*back, namingA());
}

// Expected from: the project file: 1 to 24 letters, digits, - or _; no edge's name; each its own.
TEST(LineNames, RefusesWhatIsNoNameAnEdgesOrAnotherLines) {
    const Project project = gridOfFour();
    for (const char* name : {"", "A B", "Ä", "top", "B", "abcdefghijklmnopqrstuvwxy"}) {
        EXPECT_FALSE(renamedLine(project, "A", name)) << name;
    }
    EXPECT_TRUE(renamedLine(project, "A", "abcdefghijklmnopqrstuvwx"));
    EXPECT_TRUE(renamedLine(project, "A", "A"));
}

TEST(LineNames, TellWhatHangsOnALineThroughOthersToo) {
    Project project = namingA();
    addLine(project, "I", ByOffset{LineId("E"), 5});
    EXPECT_EQ(linesLaidFrom(project, "A"), (std::set<LineId>{"E", "F", "G", "H", "I"}));
    EXPECT_EQ(linesLaidFrom(project, "C"), (std::set<LineId>{"F", "H"}));
    EXPECT_TRUE(linesLaidFrom(project, "B").empty());
}

}  // namespace
}  // namespace kerfwall
