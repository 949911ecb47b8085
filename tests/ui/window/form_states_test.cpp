// SPDX-License-Identifier: GPL-3.0-or-later
// Every form, notice and menu that lies on the sheet, reached by hand: no text may be cut off in any.
#include <QDir>
#include <QFile>
#include <QPlainTextEdit>
#include <QPushButton>

#include "tests/ui/window/states_on_sheet.h"
#include "ui/job_card.h"
#include "ui/print_form.h"
#include "ui/shelf.h"

namespace kerfwall {
namespace {

class StatesOfForms;

struct State {
    const char* name;
    void (StatesOfForms::*reach)();
};

class StatesOfForms : public PicturedStates, public testing::WithParamInterface<State> {
    void press(const char* name) {
        auto* button = m_window.findChild<QPushButton*>(QString::fromLatin1(name));
        ASSERT_TRUE(button) << name;
        QTest::qWait(5);  // until the column is laid out
        m_window.findChild<JobCard*>()->ensureWidgetVisible(button);
        QTest::mouseClick(button, Qt::LeftButton);
    }
    void listCorners(const char* corners) {
        key(Qt::Key_F8);
        choose("wantedShape", 2);
        auto* list = m_window.findChild<QPlainTextEdit*>(QStringLiteral("wantedCorners"));
        list->setFocus();
        QTest::keyClicks(list, QString::fromLatin1(corners));
    }
    void askForLegs(const char* top) {
        key(Qt::Key_F8);
        choose("wantedShape", 1);
        fill("wantedSpan", "200");
        fill("wantedLegHeight", "150");
        fill("wantedLegTop", top);
    }
    void openMenu(int index) {
        auto* bar = m_window.findChild<QMenuBar*>();
        ASSERT_GT(bar->actions().size(), index);
        bar->setActiveAction(bar->actions().at(index));
        QMenu* menu = bar->actions().at(index)->menu();
        ASSERT_TRUE(menu->isVisible());
        EXPECT_LE(menu->sizeHint().height(), m_window.height() - bar->height()) << "it would not fit under the menu bar";
        EXPECT_LE(menu->sizeHint().width(), m_window.width());
    }
    void openSubmenu(int index, const char* text) {
        openMenu(index);
        QMenu* menu = m_window.findChild<QMenuBar*>()->actions().at(index)->menu();
        for (QAction* action : menu->actions()) {
            if (action->menu() && action->text().remove(QLatin1Char('&')) == QString::fromLatin1(text)) menu->setActiveAction(action);
        }
        QTest::keyClick(menu, Qt::Key_Right);
        EXPECT_NE(QApplication::activePopupWidget(), menu) << text;
    }
    void TearDown() override {
        while (QWidget* menu = QApplication::activePopupWidget()) menu->close();
        PicturedStates::TearDown();
    }

public:
    void rackAndShelf() {
        QDir(m_dir.path()).mkpath(QStringLiteral("shelf"));
        for (const char* name : {"bench_leg.kerfwall", "round_window.kerfwall", "stall_pennant.kerfwall"}) {
            QFile::copy(QStringLiteral(KERFWALL_SAMPLES "/") + QString::fromLatin1(name), file("shelf/") + QString::fromLatin1(name));
        }
        keepShelfFolder(file("shelf"));
        m_window.session().startNew();
    }
    void aWindowIsWanted() {
        key(Qt::Key_F8);
        fill("wantedWidth", "110");
        fill("wantedHeight", "35");
        fill("wantedCorner", "10");
    }
    void aWindowIsRefused() {
        key(Qt::Key_F8);
        fill("wantedWidth", "381");
        fill("wantedHeight", "60");
    }
    void aWindowIsWantedOnTheWork() {
        aWindowIsWanted();
        choose("wantedPlacedOn", 1);
        fill("wantedWorkWidth", "360");
        fill("wantedWorkHeight", "200");
        choose("wantedUpFrom", 2);
    }
    void legsAreWanted() { askForLegs("60"); }
    void legsAreRefused() { askForLegs("100"); }
    void aPolygonIsWanted() { listCorners("110, 60\r300, 60\r270, 125\r300, 190\r110, 190"); }
    void aPolygonIsRefused() { listCorners("100, 60\r200, 160\r200, 60\r100, 160"); }
    void cornersAreClicked() {
        key(Qt::Key_F8);
        choose("wantedShape", 2);
        press("wantedClick");
        for (const Point corner : {Point{100, 60}, {200, 60}, {200, 140}}) click(corner);
    }
    void benchForm() { key(Qt::Key_F7, Qt::ShiftModifier); }
    void ripFence() { unfold("saw0"); }
    void sled() { unfold("saw1"); }
    void mitreGauge() { unfold("saw2"); }
    void guideRail() { unfold("saw3"); }
    void clamp() {
        benchForm();
        press("addClamp");
    }
    void unfold(const char* saw) {
        benchForm();
        press(saw);
    }
    void anEntryIsRefused() {
        benchForm();
        type("bores", "20; 900");
    }
    void bushInUse() {
        key(Qt::Key_F7);
        choose("useBy", 1);
    }
    void workpiece() {
        layWindow();
        key(Qt::Key_F8, Qt::ShiftModifier);
        type("workWidth", "260");
        type("workHeight", "180");
        type("workLeft", "60");
        type("workBottom", "30");
        type("workThickness", "18");
    }
    void workpieceIsRefused() {
        key(Qt::Key_F8, Qt::ShiftModifier);
        type("workWidth", "0");
    }
    void recordIsAnswered() {
        layWindow();
        key(Qt::Key_E, Qt::ControlModifier);
        type("recordSize", "89.7");
        choose("recordWhat", 2);
        type("recordSize", "145.6");
    }
    void printForm() {
        layWindow();
        key(Qt::Key_P, Qt::ControlModifier);
    }
    void printOnItsSide() {
        m_window.findChild<PrintForm*>()->askForPrinters([] { return QStringList{QStringLiteral("A printer with a long name in the office upstairs")}; });
        printForm();
        choose("printPrinter", 0);
        choose("printLie", 2);
    }
    void printIsCorrected() {
        printForm();
        type("levelNominal", "100");
        type("levelMeasured", "99.2");
        type("uprightNominal", "100");
        type("uprightMeasured", "93.75");
    }
    void aReadingIsRefused() {
        printForm();
        type("levelMeasured", "120");
    }
    void noPrinter() {
        printForm();
        press("printNow");
    }
    void printOnASheetAsLarge() {
        printForm();
        choose("printPaper", 7);
    }
    void lifeSize() {
        layWindow();
        key(Qt::Key_F3);
    }
    void keysAreTold() {
        layWindow();
        key(Qt::Key_F1);
    }
    void fileMenu() { openMenu(0); }
    void editMenu() {
        layWindow();
        openMenu(1);
    }
    void panelMenu() { openMenu(2); }
    void benchMenu() { openMenu(3); }
    void viewMenu() { openMenu(4); }
    void sideViewMenu() { openSubmenu(4, "Side views"); }
    void layerMenu() { openSubmenu(4, "Shown on the plan"); }
    void helpMenu() { openMenu(5); }
};

constexpr State kStates[] = {
    {"rack_and_shelf", &StatesOfForms::rackAndShelf},
    {"a_window_is_wanted", &StatesOfForms::aWindowIsWanted},
    {"a_window_is_refused", &StatesOfForms::aWindowIsRefused},
    {"a_window_is_wanted_on_the_work", &StatesOfForms::aWindowIsWantedOnTheWork},
    {"legs_are_wanted", &StatesOfForms::legsAreWanted},
    {"legs_are_refused", &StatesOfForms::legsAreRefused},
    {"a_polygon_is_wanted", &StatesOfForms::aPolygonIsWanted},
    {"a_polygon_is_refused", &StatesOfForms::aPolygonIsRefused},
    {"corners_are_clicked", &StatesOfForms::cornersAreClicked},
    {"bench_form", &StatesOfForms::benchForm},
    {"bench_rip_fence", &StatesOfForms::ripFence},
    {"bench_sled", &StatesOfForms::sled},
    {"bench_mitre_gauge", &StatesOfForms::mitreGauge},
    {"bench_guide_rail", &StatesOfForms::guideRail},
    {"bench_clamp", &StatesOfForms::clamp},
    {"bench_entry_is_refused", &StatesOfForms::anEntryIsRefused},
    {"bush_in_use", &StatesOfForms::bushInUse},
    {"workpiece_form", &StatesOfForms::workpiece},
    {"workpiece_is_refused", &StatesOfForms::workpieceIsRefused},
    {"record_is_answered", &StatesOfForms::recordIsAnswered},
    {"print_form", &StatesOfForms::printForm},
    {"print_on_its_side", &StatesOfForms::printOnItsSide},
    {"print_is_corrected", &StatesOfForms::printIsCorrected},
    {"print_reading_is_refused", &StatesOfForms::aReadingIsRefused},
    {"print_no_printer", &StatesOfForms::noPrinter},
    {"print_on_a_sheet_as_large", &StatesOfForms::printOnASheetAsLarge},
    {"life_size_form", &StatesOfForms::lifeSize},
    {"keys_are_told", &StatesOfForms::keysAreTold},
    {"menu_file", &StatesOfForms::fileMenu},
    {"menu_edit", &StatesOfForms::editMenu},
    {"menu_panel", &StatesOfForms::panelMenu},
    {"menu_bench", &StatesOfForms::benchMenu},
    {"menu_view", &StatesOfForms::viewMenu},
    {"menu_side_views", &StatesOfForms::sideViewMenu},
    {"menu_layers", &StatesOfForms::layerMenu},
    {"menu_help", &StatesOfForms::helpMenu},
};

void PrintTo(const State& state, std::ostream* out) { *out << state.name; }

TEST_P(StatesOfForms, ShowsWholeTexts) {
    (this->*GetParam().reach)();
    expectWholeTexts(GetParam().name);
}

INSTANTIATE_TEST_SUITE_P(Each, StatesOfForms, testing::ValuesIn(kStates),
                         [](const auto& each) { return std::string(each.param.name); });

}  // namespace
}  // namespace kerfwall
