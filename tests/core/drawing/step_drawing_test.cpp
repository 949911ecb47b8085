// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/step_drawing.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

#include "core/drawing/lying.h"
#include "core/geometry/solve.h"
#include "core/says/project_text.h"
#include "core/shop/plunge_places.h"
#include "tests/core/drawing/drawn_panel.h"
#include "tests/core/shop/hand_built.h"

namespace kerfwall {
namespace {

struct Planned {
    Project project;
    Solved solved;
    OrderOfWork order;

    [[nodiscard]] Drawing picture(std::size_t index) const { return stepDrawing(project, solved, order, index, 1); }
    [[nodiscard]] std::size_t stepOf(const LineId& line) const {
        const auto step = std::ranges::find_if(order.steps, [&](const WorkStep& is) {
            return is.task == Task::Kerf && std::ranges::find(is.lines, line) != is.lines.end();
        });
        return static_cast<std::size_t>(step - order.steps.begin());
    }
    [[nodiscard]] std::size_t stepOf(Task task) const {
        return static_cast<std::size_t>(std::ranges::find(order.steps, task, &WorkStep::task) - order.steps.begin());
    }
};

Planned planned(Project project) {
    Planned answer{std::move(project), {}, {}};
    answer.solved = solve(answer.project);
    answer.order = plan(answer.project, answer.solved);
    return answer;
}

Planned sample(const std::string& name) {
    std::ifstream file(std::string(KERFWALL_SAMPLES) + "/" + name + ".kerfwall");
    std::ostringstream text;
    text << file.rdbuf();
    return planned(readProject(text.str()).value());
}

/// A window on a 400 x 250 panel: A at 90, B at 146, C at 110, D at 290, waste between; on the stock bench.
Planned window() {
    Project project = hand::panelOf(400, 250);
    const auto offset = [](const LineId& id, Edge from, double distance) {
        LayoutLine line;
        line.id = id;
        line.place = ByOffset{from, distance};
        return line;
    };
    project.lines = {offset("A", Edge::Bottom, 90), offset("B", Edge::Bottom, 146), offset("C", Edge::Left, 110),
                     offset("D", Edge::Left, 290)};
    Cutout cutout;
    cutout.id = "window";
    cutout.seeds = {{200, 118}};
    project.cutouts = {cutout};
    return planned(project);
}

Box boxOf(const std::vector<OutlineLoop>& loops) { return makeOutline(loops).bounds; }

template <typename Kind>
std::vector<Kind> named(const Drawing& drawing, const std::string& id) {
    std::vector<Kind> found;
    for (const Mark& mark : drawing.marks) {
        const Kind* kind = std::get_if<Kind>(&mark);
        if (kind && kind->id == id) found.push_back(*kind);
    }
    return found;
}

// Pencil: B at 146 from the bottom edge on the fence, waste between line and fence: 142.8 to the blade's nearer face.
TEST(StepDrawing, TheFenceIsDimensionedToTheNearerFaceOfTheKerf) {
    const Planned job = window();
    const Drawing drawing = job.picture(job.stepOf("B"));
    const auto sizes = named<Dimension>(drawing, "fence");
    ASSERT_EQ(sizes.size(), 1U);
    EXPECT_EQ(sizes[0].text, "142.8");
    const auto here = marksOf<Area>(drawing, Ink::Here);
    ASSERT_EQ(here.size(), 1U);
    const Box kerf = boxOf(here[0].loops);
    const Box bar = boxOf(named<Area>(drawing, "fence").at(0).loops);
    EXPECT_NEAR(sizes[0].from.x, bar.low.x, 1e-9);  // the fence's face, on the right
    EXPECT_NEAR(sizes[0].to.x, kerf.high.x, 1e-9);  // and the kerf's face next to it
    EXPECT_NEAR(kerf.high.x - kerf.low.x, 3.2, 1e-9);
}

// Pencil: C at 110 from the left end, waste beyond: 110 from a stop at the left end. Face down that end lies right.
TEST(StepDrawing, TheStopIsDimensionedAlongTheFenceOnTheSideItStands) {
    const Planned job = window();
    const std::size_t index = job.stepOf("C");
    ASSERT_TRUE(job.order.steps[index].setting.stop);
    const Drawing drawing = job.picture(index);
    const auto sizes = named<Dimension>(drawing, "stop");
    ASSERT_EQ(sizes.size(), 1U);
    EXPECT_EQ(sizes[0].text, "110");
    const Box kerf = boxOf(marksOf<Area>(drawing, Ink::Here).at(0).loops);
    const Box block = boxOf(named<Area>(drawing, "stop").at(0).loops);
    EXPECT_EQ(job.order.steps[index].stopSide, Side::Right);
    EXPECT_NEAR(block.low.x, sizes[0].from.x, 1e-9);
    EXPECT_NEAR(kerf.high.x, sizes[0].to.x, 1e-9);
    EXPECT_NEAR(block.low.x - kerf.high.x, 110, 1e-9);
}

// What is written reads from below or from the right: on the edges that lie upright it is turned a quarter.
TEST(StepDrawing, EdgeNamesRunAlongTheirEdges) {
    const Planned job = window();
    const Drawing drawing = job.picture(job.stepOf("C"));
    EXPECT_NEAR(named<Label>(drawing, "edge left").at(0).turn, 90, 1e-9);
    EXPECT_NEAR(named<Label>(drawing, "edge top").at(0).turn, 0, 1e-9);
    EXPECT_GT(named<Label>(drawing, "edge left").at(0).at.x, named<Label>(drawing, "edge right").at(0).at.x);
}

// A stopped cut's marks stand where the saw comes to them, and say how far that is from where it starts.
TEST(StepDrawing, PlungeMarksAreMeasuredFromTheBlade) {
    const Planned job = sample("stall_pennant");
    int stopped = 0;
    for (std::size_t i = 0; i < job.order.steps.size(); ++i) {
        const auto places = plungeFromStart(job.project.panel, job.solved, job.order.steps[i]);
        if (!places) continue;
        ++stopped;
        const Drawing drawing = job.picture(i);
        const auto blade = boxOf(named<Area>(drawing, "blade").at(0).loops);
        const Point start = 0.5 * (blade.low + blade.high);
        std::vector<double> away;
        for (const Stroke& mark : named<Stroke>(drawing, "plunge")) {
            away.push_back(distance(start, 0.5 * (mark.from + mark.to)));
        }
        ASSERT_EQ(away.size(), 4U);  // meets the face, full depth from and to, leaves the face
        EXPECT_TRUE(std::ranges::is_sorted(away));
        EXPECT_NEAR(away[2] - away[1], places->fullTo - places->fullFrom, 1);  // the ticks lean to either side
    }
    EXPECT_GT(stopped, 0);
}

// The blade meets the end that leads: above the panel at a table saw, in line with the kerf.
TEST(StepDrawing, TheBladeStandsBeforeTheEndThatLeadsInLineWithTheKerf) {
    const Planned job = window();
    for (const LineId line : {"A", "B", "C", "D"}) {
        const Drawing drawing = job.picture(job.stepOf(line));
        const Box kerf = boxOf(marksOf<Area>(drawing, Ink::Here).at(0).loops);
        const Box blade = boxOf(named<Area>(drawing, "blade").at(0).loops);
        EXPECT_NEAR(blade.low.x, kerf.low.x, 1e-9) << line;
        EXPECT_NEAR(blade.high.x, kerf.high.x, 1e-9) << line;
        EXPECT_GT(blade.low.y, kerf.high.y) << line;
    }
}

// What lies on the face that is down is hidden: earlier kerfs are dashed, and no layout line shows.
TEST(StepDrawing, FaceDownEarlierKerfsAreHiddenAndFaceUpTheyAreSeen) {
    const Planned job = window();
    const std::size_t second = std::max({job.stepOf("A"), job.stepOf("B"), job.stepOf("C"), job.stepOf("D")});
    ASSERT_FALSE(job.order.steps[second].faceUp);
    const Drawing down = job.picture(second);
    EXPECT_EQ(marksOf<Area>(down, Ink::Hidden).size(), 3U);
    EXPECT_TRUE(marksOf<Area>(down, Ink::KerfBand).empty());
    EXPECT_TRUE(marksOf<Stroke>(down, Ink::LayoutLine).empty());
    const Drawing up = job.picture(job.stepOf(Task::Rough));
    EXPECT_EQ(marksOf<Area>(up, Ink::KerfBand).size(), 4U);
    EXPECT_EQ(marksOf<Stroke>(up, Ink::LayoutLine).size(), 4U);
}

// Pencil: kerfs of 3.2 leave up to 2.7 to trim, so the waste sawn out is 180 - 5.4 by 56 - 5.4.
TEST(StepDrawing, TheRoughCutLeavesItsRestInsideTheKerfs) {
    const Planned job = window();
    const auto here = marksOf<Area>(job.picture(job.stepOf(Task::Rough)), Ink::Here);
    ASSERT_EQ(here.size(), 1U);
    const Box sawn = boxOf(here[0].loops);
    EXPECT_NEAR(sawn.high.x - sawn.low.x, 174.6, 1e-9);
    EXPECT_NEAR(sawn.high.y - sawn.low.y, 50.6, 1e-9);
}

// The issue: the last picture equals the template's outline. It lies as on the plan, so to the last digit.
TEST(StepDrawing, TheLastPicturesOutlineIsTheTemplatesOpening) {
    for (const std::string name : {"crate_end", "bench_leg", "round_window", "stall_pennant", "mind_these"}) {
        const Planned job = sample(name);
        ASSERT_FALSE(job.order.steps.empty()) << name;
        const auto drawn = marksOf<Area>(job.picture(job.order.steps.size() - 1), Ink::Template);
        std::size_t at = 0;
        for (const SolvedCutout& cutout : job.solved.cutouts) {
            if (cutout.opening.loops.empty()) continue;
            ASSERT_LT(at, drawn.size()) << name;
            EXPECT_EQ(drawn[at].id, cutout.id) << name;
            EXPECT_EQ(drawn[at++].loops, cutout.opening.loops) << name;
        }
        EXPECT_EQ(at, drawn.size()) << name;
        EXPECT_GT(at, 0U) << name;
    }
}

// The step's own numbers, wherever a saw has one: every fence and stop of every sample is written on its picture.
TEST(StepDrawing, EveryStepOfEverySampleCarriesItsFenceAndStop) {
    for (const std::string name : {"crate_end", "bench_leg", "round_window", "stall_pennant", "mind_these"}) {
        const Planned job = sample(name);
        for (std::size_t i = 0; i < job.order.steps.size(); ++i) {
            const WorkStep& step = job.order.steps[i];
            if (step.task != Task::Kerf) continue;
            const Drawing drawing = job.picture(i);
            const auto length = [&](const std::string& id) {
                const auto sizes = named<Dimension>(drawing, id);
                return sizes.empty() ? -1 : distance(sizes[0].from, sizes[0].to);
            };
            if (step.setting.fence) {
                EXPECT_NEAR(length("fence"), *step.setting.fence, 1e-9) << name << i;
            }
            if (step.setting.stop) {
                EXPECT_NEAR(length("stop"), *step.setting.stop, 1e-9) << name << i;
            }
        }
    }
}

// lie.h's table: clockwise round an opening keeps its middle on the right, as the panel lies.
TEST(StepDrawing, TheBitsWayRunsAsTheFeedSays) {
    const Planned job = window();
    const std::size_t index = job.stepOf(Task::Trim);
    const WorkStep& step = job.order.steps[index];
    const Drawing drawing = job.picture(index);
    const auto arrow = named<Stroke>(drawing, "feed");
    ASSERT_EQ(arrow.size(), 1U);
    const Point middle = lyingAt(job.project, step).put({200, 118});
    const double turn = cross(arrow[0].to - arrow[0].from, middle - arrow[0].from);
    EXPECT_EQ(turn < 0, step.setting.feedClockwise.value());
}

// A law: the arrow runs beside the wall that the text names, a bit's radius off it.
TEST(StepDrawing, TheBitsWayLiesAtTheWallTheTextNames) {
    int told = 0;
    for (const char* name : {"crate_end", "bench_leg", "stall_pennant", "round_window"}) {
        const Planned job = sample(name);
        for (std::size_t i = 0; i < job.order.steps.size(); ++i) {
            const WorkStep& step = job.order.steps[i];
            const std::size_t at = step.text.find("Along ");
            if (step.task != Task::Trim || at == std::string::npos) continue;
            ++told;
            const LineId id = step.text.substr(at + 6, step.text.find(" that is", at) - at - 6);
            const SolvedLine* line = findLine(job.solved, id);
            ASSERT_NE(line, nullptr) << id;
            const Lying lying = lyingAt(job.project, step);
            const Point along = unit(lying.put(line->to) - lying.put(line->from));
            for (const Stroke& arrow : named<Stroke>(job.picture(i), "feed")) {
                EXPECT_NEAR(cross(along, unit(arrow.to - arrow.from)), 0, 1e-9) << name;
                EXPECT_NEAR(std::abs(cross(along, arrow.from - lying.put(line->from))), job.solved.bitRadius, 1e-6) << name;
            }
        }
    }
    EXPECT_GE(told, 3);
}

// Pencil, from the file: bores of radius 25 tangent to x 120 and 280, y 140 and 260; at the press the fence stands 165, then
// 235 from the spindle, and both rows have their centres 145 and 255 from the stop.
TEST(StepDrawing, BoresAreDimensionedFromFenceAndStop) {
    const Planned job = sample("round_window");
    const std::size_t first = job.stepOf(Task::Bore);
    std::vector<std::string> fences;
    for (const std::size_t index : {first, first + 1}) {
        ASSERT_EQ(job.order.steps[index].task, Task::Bore);
        const Drawing drawing = job.picture(index);
        std::vector<std::string> stops;
        for (const Dimension& size : named<Dimension>(drawing, "stop")) stops.push_back(size.text);
        EXPECT_EQ(stops, (std::vector<std::string>{"145", "255"}));
        for (const Dimension& size : named<Dimension>(drawing, "fence")) fences.push_back(size.text);
        const Box bar = boxOf(named<Area>(drawing, "fence").at(0).loops);
        const Box panel = boxOf(marksOf<Area>(drawing, Ink::PanelFill).at(0).loops);
        EXPECT_GE(bar.low.y, panel.high.y - 1e-9);  // behind the panel
    }
    std::ranges::sort(fences);
    EXPECT_EQ(fences, (std::vector<std::string>{"165", "235"}));
}

// Pencil: A lies 90 and B 146 above the bottom edge, C 110 and D 290 from the left; each at the end that is looked at.
TEST(StepDrawing, MarksCarryTheirMeasure) {
    const Planned job = window();
    const std::size_t index = job.stepOf(Task::Mark) + 1;
    std::map<std::string, int> count;
    for (const Label& label : named<Label>(job.picture(index), "measure")) ++count[label.text];
    EXPECT_EQ(count["90"], 1);
    EXPECT_EQ(count["146"], 1);
    EXPECT_EQ(count["110"], 1);
    EXPECT_EQ(count["290"], 1);
}

// A law: the room holds all that is drawn, whatever the scale.
TEST(StepDrawing, TheRoomHoldsAllThatIsDrawn) {
    for (const std::string name : {"crate_end", "bench_leg", "stall_pennant"}) {
        const Planned job = sample(name);
        for (std::size_t i = 0; i < job.order.steps.size(); ++i) {
            const double scale = fittingScale(stepRoom(job.project, job.solved, job.order, i), 140, 110);
            const Drawing drawing = stepDrawing(job.project, job.solved, job.order, i, scale);
            EXPECT_LE(drawing.bounds.high.x - drawing.bounds.low.x, 140 * scale + 1e-9);
            EXPECT_LE(drawing.bounds.high.y - drawing.bounds.low.y, 110 * scale + 1e-9);
            for (const Mark& mark : drawing.marks) {
                const Area* area = std::get_if<Area>(&mark);
                if (!area || area->loops.empty()) continue;
                const Box box = boxOf(area->loops);
                EXPECT_GE(box.low.x, drawing.bounds.low.x) << name << i << area->id;
                EXPECT_GE(box.low.y, drawing.bounds.low.y) << name << i << area->id;
                EXPECT_LE(box.high.x, drawing.bounds.high.x) << name << i << area->id;
                EXPECT_LE(box.high.y, drawing.bounds.high.y) << name << i << area->id;
            }
        }
    }
}

}  // namespace
}  // namespace kerfwall
