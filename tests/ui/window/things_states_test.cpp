// SPDX-License-Identifier: GPL-3.0-or-later
// Every state of what is picked and in hand, and of how the sheet is looked at: no text may be cut off in any.
#include "tests/core/laying/sheet.h"
#include "tests/ui/window/states_on_sheet.h"
#include "ui/remedy_button.h"

namespace kerfwall {
namespace {

class StatesOfThings;

struct State {
    const char* name;
    void (StatesOfThings::*reach)();
};

class StatesOfThings : public PicturedStates, public testing::WithParamInterface<State> {
    void layThings() {
        m_window.session().start(sheetOfThings());
        m_window.chooseTool(MainWindow::PickAt);
    }
    /// Ctrl and that key on the cutout, then what is typed.
    void begin(Qt::Key which, const char* field, const char* text) {
        layThings();
        click({200, 118});
        key(which, Qt::ControlModifier);
        auto* number = m_window.findChild<QLineEdit*>(QString::fromLatin1(field));
        ASSERT_TRUE(number && number->isVisible());
        number->selectAll();
        QTest::keyClicks(number, QString::fromLatin1(text));
        EXPECT_TRUE(m_window.session().isInHand());
    }
    void openSize(const char* text) {
        layThings();
        click({30, 146});
        key(Qt::Key_F12);
        auto* field = m_window.findChild<QLineEdit*>(QStringLiteral("sizeField"));
        ASSERT_TRUE(field->isVisible());
        field->selectAll();
        QTest::keyClicks(field, QString::fromLatin1(text));
    }

public:
    void severalPicked() {
        layThings();
        click({30, 90});
        for (const Point place : {Point{60, 20}, {345, 27}, {200, 118}}) click(place, Qt::ShiftModifier);
        EXPECT_EQ(m_window.selection().picked().count(), 4U);
    }
    void aBandInHand() {
        layThings();
        press({390, 200});
        moveTo({350, 170});
        moveTo({250, 12});
        EXPECT_FALSE(m_window.plan().tool()->inHand().faces.empty());
    }
    void measuring() {
        layThings();
        m_window.chooseTool(MainWindow::MeasureAt);
        click({30, 90});
        click({350, 146});
        EXPECT_FALSE(note().isEmpty());
    }
    void aSizeIsOpen() { openSize("60"); }
    void aSizeIsRefused() {
        openSize("900");
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        EXPECT_TRUE(m_window.findChild<QLabel*>(QStringLiteral("sizeTrouble"))->isVisible());
    }
    void moving() { begin(Qt::Key_M, "entry0", "20"); }
    void turning() { begin(Qt::Key_R, "entry0", "12"); }
    void copying() { begin(Qt::Key_K, "entry1", "70"); }
    void mirroring() {
        layThings();
        click({345, 27});
        key(Qt::Key_I, Qt::ControlModifier);
        EXPECT_TRUE(m_window.session().isInHand());
    }
    void turningIsRefused() {
        layThings();
        click({60, 20});
        key(Qt::Key_R, Qt::ControlModifier);
        QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("30"));
        EXPECT_TRUE(sentence().contains(QStringLiteral("turn it by quarters")));
    }
    void aCutoutIsDragged() {
        layThings();
        press({200, 118});
        moveTo({210, 118});
        moveTo({230, 130});
    }
    void aRemedyIsLookedAt() {
        openSample("mind_these.kerfwall");
        QTest::qWait(50);
        CardRow* row = rowWith("line");
        ASSERT_TRUE(row);
        QTest::mouseClick(row, Qt::LeftButton);
        QTest::qWait(20);
        for (RemedyButton* button : m_window.findChildren<RemedyButton*>()) {
            if (button->isVisible()) return button->setFocus(Qt::TabFocusReason);
        }
        FAIL() << "no remedy to be seen";
    }
    void aCornerCloseUp() {
        layWindow();
        m_window.plan().zoomAbout(14, pixel({110, 90}));
        m_window.chooseTool(MainWindow::BoreAt);
        moveTo({111, 91});
        EXPECT_FALSE(note().isEmpty());
    }
    void theUprightSideView() {
        openSample("crate_end.kerfwall");
        key(Qt::Key_F5);
    }
    void layersHidden() {
        openSample("crate_end.kerfwall");
        for (const Qt::Key layer : {Qt::Key_1, Qt::Key_3, Qt::Key_5, Qt::Key_7}) key(layer, Qt::AltModifier);
        EXPECT_FALSE(m_window.plan().layers().kerfs);
    }
    void aLineOffThePanel() {
        layRectangle();
        m_window.chooseTool(MainWindow::PickAt);
        click({200, 146});
        type("entry0", "270");
        EXPECT_EQ(m_window.session().solved().strays.size(), 1U);
    }
    void aWebTooThin() {
        layWindow();
        key(Qt::Key_F6);
        type("kerfDepth", "11");
        EXPECT_FALSE(m_window.session().findings().empty());
    }
    /// Forty lines, twenty each way, and every second face of the middle row waste.
    void aLargeProject() {
        Project large;
        large.panel.width = 1200;
        large.panel.height = 800;
        large.panel.thickness = 18;
        const auto add = [&large](const std::string& id, Edge from, double distance) {
            LayoutLine line;
            line.id = id;
            line.place = ByOffset{from, distance};
            large.lines.push_back(line);
        };
        for (int i = 0; i < 20; ++i) {
            add("H" + std::to_string(i), Edge::Bottom, 50 + 35.0 * i);
            add("V" + std::to_string(i), Edge::Left, 60 + 55.0 * i);
        }
        for (int i = 0; i < 9; ++i) large.cutouts.push_back({"cutout-" + std::to_string(i + 1), {{87.5 + 110.0 * i, 382.5}}, {}, {}, {}});
        m_window.session().start(large);
        m_window.plan().fit();
        m_window.chooseTool(MainWindow::PickAt);
        EXPECT_EQ(m_window.session().solved().cutouts.size(), 9U);
    }
};

constexpr State kStates[] = {
    {"several_picked", &StatesOfThings::severalPicked},
    {"a_band_in_hand", &StatesOfThings::aBandInHand},
    {"measuring", &StatesOfThings::measuring},
    {"a_size_is_open", &StatesOfThings::aSizeIsOpen},
    {"a_size_is_refused", &StatesOfThings::aSizeIsRefused},
    {"moving_by_numbers", &StatesOfThings::moving},
    {"turning", &StatesOfThings::turning},
    {"copying", &StatesOfThings::copying},
    {"mirroring", &StatesOfThings::mirroring},
    {"turning_is_refused", &StatesOfThings::turningIsRefused},
    {"a_cutout_is_dragged", &StatesOfThings::aCutoutIsDragged},
    {"a_remedy_is_looked_at", &StatesOfThings::aRemedyIsLookedAt},
    {"a_corner_close_up", &StatesOfThings::aCornerCloseUp},
    {"the_upright_side_view", &StatesOfThings::theUprightSideView},
    {"layers_hidden", &StatesOfThings::layersHidden},
    {"a_line_off_the_panel", &StatesOfThings::aLineOffThePanel},
    {"a_web_too_thin", &StatesOfThings::aWebTooThin},
    {"a_large_project", &StatesOfThings::aLargeProject},
};

void PrintTo(const State& state, std::ostream* out) { *out << state.name; }

TEST_P(StatesOfThings, ShowsWholeTexts) {
    (this->*GetParam().reach)();
    expectWholeTexts(GetParam().name);
}

INSTANTIATE_TEST_SUITE_P(Each, StatesOfThings, testing::ValuesIn(kStates),
                         [](const auto& each) { return std::string(each.param.name); });

}  // namespace
}  // namespace kerfwall
