// SPDX-License-Identifier: GPL-3.0-or-later
// Every state of the sheet while a template is drawn, reached by hand: no text may be cut off in any.
#include "tests/ui/window/states_on_sheet.h"
#include "ui/notice_bar.h"

namespace kerfwall {
namespace {

class StatesOfTheSheet;

struct State {
    const char* name;
    void (StatesOfTheSheet::*reach)();
};

class StatesOfTheSheet : public PicturedStates, public testing::WithParamInterface<State> {
public:
    void emptySheet() {}
    void panelForm() { key(Qt::Key_F6); }
    void useForm() { key(Qt::Key_F7); }
    void wantedForm() { key(Qt::Key_F8); }
    void wantedShape(int shape) {
        key(Qt::Key_F8);
        m_window.findChild<QComboBox*>(QStringLiteral("wantedShape"))->setCurrentIndex(shape);
    }
    void wantedLegs() { wantedShape(1); }
    void wantedPolygon() { wantedShape(2); }
    void layingADrag() {
        layRectangle();
        press({0, 196});
        moveTo({200, 200});
        moveTo({400, 203});
        EXPECT_EQ(m_window.session().solved().lines.size(), 5U);
    }
    void aMirrorImageInHand() {
        drag({0, 90}, {400, 90});
        key(Qt::Key_Escape);
        press({0, 160});
        moveTo({200, 160});
        moveTo({300, 160.4});
        EXPECT_TRUE(note().contains(QStringLiteral("mirror")));
    }
    void clearOfASawnCorner() {
        openSample("bench_leg.kerfwall");
        press({400, 283});
        moveTo({300, 283});
        moveTo({120, 283.5});
    }
    void aLineOnItsForm() {
        layWindow();
        m_window.selection().pickLine("A");
        key(Qt::Key_L, Qt::ControlModifier);
    }
    void aMirrorImageOnItsForm() {
        openSample("bench_leg.kerfwall");
        m_window.selection().pickLine("M");
        key(Qt::Key_L, Qt::ControlModifier);
    }
    void aLineLiesOnAnother() {
        layRectangle();
        m_window.chooseTool(MainWindow::PickAt);
        Project next = project();
        next.lines[1].place = next.lines[0].place;
        m_window.session().change(QStringLiteral("Set line B"), next);
        m_window.selection().pickLine("B");
        EXPECT_EQ(m_window.session().solved().strays.size(), 1U);
    }
    void aMarkOnTheBack() {
        layWindow();
        Project next = project();
        next.lines.front().drawnOn = Face::Back;
        next.lines.front().cut = false;
        m_window.session().change(QStringLiteral("Mark"), next);
    }
    void aLineIsLaid() { drag({0, 90}, {400, 90}); }
    void aLineIsRefused() { drag({20, 0}, {200, 0}); }
    void overAFace() {
        layRectangle();
        m_window.chooseTool(MainWindow::WasteAt);
        moveTo({200, 118});
    }
    void wasteIsMarked() { layWindow(); }
    void overACorner() {
        layWindow();
        m_window.chooseTool(MainWindow::BoreAt);
        moveTo({111, 91});
    }
    void aCornerIsBored() {
        layWindow();
        m_window.chooseTool(MainWindow::BoreAt);
        click({111, 91});
        EXPECT_EQ(project().cutouts.front().corners.size(), 1U);
    }
    void aClampHoleIsDragged() {
        layWindow();
        m_window.chooseTool(MainWindow::ClampAt);
        press({1, 120});
        moveTo({1, 60});
    }
    void aBoreIsDragged() {
        layWindow();
        m_window.chooseTool(MainWindow::BoreAt);
        press({110, 90});
        moveTo({115, 95});
        moveTo({118, 98});
    }
    void theDepthOfAHoleIsDragged() {
        layWindow();
        m_window.chooseTool(MainWindow::ClampAt);
        click({1, 120});
        press({50, 120});
        moveTo({60, 120});
        moveTo({90, 120});
    }
    void overAnEdgeForAFence() {
        layWindow();
        m_window.chooseTool(MainWindow::FenceAt);
        m_window.selection().clear();
        moveTo({60, 3});
    }
    void aFenceIsDragged() {
        overAnEdgeForAFence();
        press({60, 1});
        moveTo({60, 20});
        moveTo({60, 35});
    }
    void aFenceIsPicked() {
        aFenceIsDragged();
        release({60, 35});
        EXPECT_EQ(m_window.selection().fence(), std::optional<std::size_t>(0));
    }
    void aFenceOnTheWrongFace() {
        aFenceIsPicked();
        Project next = project();
        next.fences.front().face = Face::Back;
        m_window.session().changeWhole(QStringLiteral("Set the fence"), next);
        EXPECT_FALSE(m_window.session().findings().empty());
    }
    void aLineIsPicked() {
        layWindow();
        m_window.chooseTool(MainWindow::PickAt);
        click({350, 90});
        EXPECT_EQ(m_window.selection().line(), "A");
    }
    void theCutIsMoved() {
        layWindow();
        m_window.chooseTool(MainWindow::CutAt);
        drag({200, 125}, {200, 100});
    }
    void crateEnd() { openSample("crate_end.kerfwall"); }
    void benchLeg() { openSample("bench_leg.kerfwall"); }
    void pennant() { openSample("stall_pennant.kerfwall"); }
    void roundWindow() { openSample("round_window.kerfwall"); }
    void manyFindings() { openSample("mind_these.kerfwall"); }
    void aFindingIsOpen() {
        openSample("mind_these.kerfwall");
        QTest::qWait(50);
        CardRow* row = rowWith("line");
        ASSERT_TRUE(row);
        QTest::mouseClick(row, Qt::LeftButton);
        EXPECT_TRUE(row->isChosen());
    }
    void aStepIsOpen() {
        openSample("crate_end.kerfwall");
        QTest::qWait(50);
        CardRow* row = rowWith("Rip fence");
        ASSERT_TRUE(row);
        QTest::mouseClick(row, Qt::LeftButton);
        EXPECT_TRUE(row->isChosen());
    }
    void aFileIsRefused() {
        m_window.openFile(file("no_such.kerfwall"));
        EXPECT_FALSE(m_window.notice().sentence().isEmpty());
    }
    void zoomedIn() {
        openSample("crate_end.kerfwall");
        m_window.plan().zoomAbout(6, pixel({139, 102}));
    }
};

constexpr State kStates[] = {
    {"empty_sheet", &StatesOfTheSheet::emptySheet},
    {"panel_form", &StatesOfTheSheet::panelForm},
    {"use_form", &StatesOfTheSheet::useForm},
    {"wanted_form", &StatesOfTheSheet::wantedForm},
    {"wanted_legs", &StatesOfTheSheet::wantedLegs},
    {"wanted_polygon", &StatesOfTheSheet::wantedPolygon},
    {"laying_a_drag", &StatesOfTheSheet::layingADrag},
    {"a_mirror_image_in_hand", &StatesOfTheSheet::aMirrorImageInHand},
    {"clear_of_a_sawn_corner", &StatesOfTheSheet::clearOfASawnCorner},
    {"a_line_on_its_form", &StatesOfTheSheet::aLineOnItsForm},
    {"a_mirror_image_on_its_form", &StatesOfTheSheet::aMirrorImageOnItsForm},
    {"a_line_lies_on_another", &StatesOfTheSheet::aLineLiesOnAnother},
    {"a_mark_on_the_back", &StatesOfTheSheet::aMarkOnTheBack},
    {"a_line_is_laid", &StatesOfTheSheet::aLineIsLaid},
    {"a_line_is_refused", &StatesOfTheSheet::aLineIsRefused},
    {"over_a_face", &StatesOfTheSheet::overAFace},
    {"waste_is_marked", &StatesOfTheSheet::wasteIsMarked},
    {"over_a_corner", &StatesOfTheSheet::overACorner},
    {"a_corner_is_bored", &StatesOfTheSheet::aCornerIsBored},
    {"a_clamp_hole_is_dragged", &StatesOfTheSheet::aClampHoleIsDragged},
    {"a_bore_is_dragged", &StatesOfTheSheet::aBoreIsDragged},
    {"a_holes_depth_is_dragged", &StatesOfTheSheet::theDepthOfAHoleIsDragged},
    {"over_an_edge_for_a_fence", &StatesOfTheSheet::overAnEdgeForAFence},
    {"a_fence_is_dragged", &StatesOfTheSheet::aFenceIsDragged},
    {"a_fence_is_picked", &StatesOfTheSheet::aFenceIsPicked},
    {"a_fence_on_the_wrong_face", &StatesOfTheSheet::aFenceOnTheWrongFace},
    {"a_line_is_picked", &StatesOfTheSheet::aLineIsPicked},
    {"the_cut_is_moved", &StatesOfTheSheet::theCutIsMoved},
    {"crate_end", &StatesOfTheSheet::crateEnd},
    {"bench_leg", &StatesOfTheSheet::benchLeg},
    {"pennant", &StatesOfTheSheet::pennant},
    {"round_window", &StatesOfTheSheet::roundWindow},
    {"many_findings", &StatesOfTheSheet::manyFindings},
    {"a_finding_is_open", &StatesOfTheSheet::aFindingIsOpen},
    {"a_step_is_open", &StatesOfTheSheet::aStepIsOpen},
    {"a_file_is_refused", &StatesOfTheSheet::aFileIsRefused},
    {"zoomed_in", &StatesOfTheSheet::zoomedIn},
};

void PrintTo(const State& state, std::ostream* out) { *out << state.name; }

TEST_P(StatesOfTheSheet, ShowsWholeTexts) {
    (this->*GetParam().reach)();
    expectWholeTexts(GetParam().name);
}

INSTANTIATE_TEST_SUITE_P(Each, StatesOfTheSheet, testing::ValuesIn(kStates),
                         [](const auto& each) { return std::string(each.param.name); });

}  // namespace
}  // namespace kerfwall
