// SPDX-License-Identifier: GPL-3.0-or-later
// Steps of the order of work shown in place of the plan: no text may be cut off in any.
#include "tests/ui/window/states_on_sheet.h"
#include "ui/step_view.h"

namespace kerfwall {
namespace {

class StatesOfSteps;

struct State {
    const char* name;
    void (StatesOfSteps::*reach)();
};

class StatesOfSteps : public PicturedStates, public testing::WithParamInterface<State> {
public:
    template <typename Fits>
    void openStep(const Fits& fits) {
        const auto& steps = m_window.session().order().steps;
        const auto step = std::ranges::find_if(steps, fits);
        ASSERT_NE(step, steps.end());
        for (auto i = steps.begin(); i <= step; ++i) QTest::keyClick(&m_window, Qt::Key_F11);
        EXPECT_EQ(m_window.findChild<StepView*>()->step(), static_cast<std::size_t>(step - steps.begin()));
    }
    void openTask(Task task) {
        openStep([task](const WorkStep& step) { return step.task == task && (task != Task::Mark || !step.lines.empty()); });
    }
    void openSaw(SawKind kind) {
        openStep([this, kind](const WorkStep& step) {
            const Saw* saw = findSaw(benchOf(project()), step.saw);
            return saw && saw->kind == kind;
        });
    }
    void marks() {
        openSample("crate_end.kerfwall");
        openTask(Task::Mark);
    }
    void ripFaceDown() {
        openSample("crate_end.kerfwall");
        openSaw(SawKind::RipFence);
    }
    void sledFaceDown() {
        openSample("crate_end.kerfwall");
        openSaw(SawKind::CrosscutSled);
    }
    void railFaceUp() {
        openSample("stall_pennant.kerfwall");
        openSaw(SawKind::GuideRail);
    }
    void gaugeTurned() {
        openSample("bench_leg.kerfwall");
        openSaw(SawKind::MitreGauge);
    }
    /// A line as far from the top edge as another from the bottom, on a panel true all round, and a fence too short to
    /// reach it otherwise.
    void turnedEndForEnd() {
        openSample("crate_end.kerfwall");
        Project next = project();
        next.panel.squareCorner = SquareCorner::All;
        next.plan.prefer = Prefer::FewestSetups;
        const double across = next.panel.height;
        next.lines[0].place = ByOffset{Edge::Bottom, 60};
        next.lines[1].place = ByOffset{Edge::Bottom, across - 60};
        next.bench = benchOf(next);
        next.bench->saws[0].maxFence = 100;
        m_window.session().changeWhole(QStringLiteral("Centre it"), next);
        openStep([](const WorkStep& step) { return step.against == Edge::Top; });
    }
    void armTurnedFaceUp() {
        openSample("bench_leg.kerfwall");
        Project next = project();
        Bench bench = benchOf(next);
        Saw saw;
        saw.id = "arm";
        saw.kind = SawKind::SlidingMitre;
        bench.saws = {saw};
        next.bench = bench;
        m_window.session().changeWhole(QStringLiteral("Another bench"), next);
        openStep([](const WorkStep& step) { return step.turn.has_value(); });
    }
    void bores() {
        openSample("round_window.kerfwall");
        openTask(Task::Bore);
    }
    void rough() {
        openSample("stall_pennant.kerfwall");
        openTask(Task::Rough);
    }
    void trim() {
        openSample("crate_end.kerfwall");
        openTask(Task::Trim);
    }
    void clampHoles() {
        openSample("bench_leg.kerfwall");
        openTask(Task::Hole);
    }
    void theLast() {
        openSample("bench_leg.kerfwall");
        openTask(Task::Label);
    }
};

constexpr State kStates[] = {
    {"step_marks", &StatesOfSteps::marks},
    {"step_rip_face_down", &StatesOfSteps::ripFaceDown},
    {"step_sled_face_down", &StatesOfSteps::sledFaceDown},
    {"step_rail_face_up", &StatesOfSteps::railFaceUp},
    {"step_gauge_turned", &StatesOfSteps::gaugeTurned},
    {"step_turned_end_for_end", &StatesOfSteps::turnedEndForEnd},
    {"step_arm_turned_face_up", &StatesOfSteps::armTurnedFaceUp},
    {"step_bores", &StatesOfSteps::bores},
    {"step_rough", &StatesOfSteps::rough},
    {"step_trim", &StatesOfSteps::trim},
    {"step_clamp_holes", &StatesOfSteps::clampHoles},
    {"step_last", &StatesOfSteps::theLast},
};

void PrintTo(const State& state, std::ostream* out) { *out << state.name; }

TEST_P(StatesOfSteps, ShowsWholeTexts) {
    (this->*GetParam().reach)();
    expectWholeTexts(GetParam().name);
}

INSTANTIATE_TEST_SUITE_P(Each, StatesOfSteps, testing::ValuesIn(kStates),
                         [](const auto& each) { return std::string(each.param.name); });

}  // namespace
}  // namespace kerfwall
