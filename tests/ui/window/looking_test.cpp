// SPDX-License-Identifier: GPL-3.0-or-later
// Zoomed, moved about, fitted, at life size, at the next finding; layers shown and hidden. Each by wheel, drag, key or menu.
#include <QAction>
#include <QWheelEvent>

#include "tests/ui/window/hand_on_sheet.h"
#include "ui/card_row.h"
#include "ui/screen_bar.h"
#include "ui/sheet_views.h"

namespace kerfwall {
namespace {

class Looking : public HandOnSheet {
protected:
    const ViewScale& scale() { return m_window.plan().viewScale(); }
    void turnWheel(QPointF pixel, QPoint eighths, Qt::KeyboardModifiers keys = Qt::NoModifier) {
        QWheelEvent event(pixel, m_window.plan().mapToGlobal(pixel), {}, eighths, Qt::NoButton, keys, Qt::NoScrollPhase, false);
        QApplication::sendEvent(&m_window.plan(), &event);
    }
    void dragPixels(Qt::MouseButton button, QPoint from, QPoint to) {
        QTest::mousePress(&m_window.plan(), button, {}, from);
        // QTest sends moves without a button held; the plan goes by what was pressed.
        QTest::mouseMove(&m_window.plan(), (from + to) / 2);
        QTest::mouseMove(&m_window.plan(), to);
        QTest::mouseRelease(&m_window.plan(), button, {}, to);
    }
    QPointF middle() { return QRectF(m_window.plan().rect()).center(); }
    QAction* action(const char* name) { return m_window.findChild<QAction*>(QString::fromLatin1(name)); }
    CardRow* chosenRow() {
        for (CardRow* row : m_window.findChildren<CardRow*>()) {
            if (row->isChosen()) return row;
        }
        return nullptr;
    }
    /// A panel with two clamp holes too near its faces: two findings.
    void drillTwoBadHoles() {
        Project next = project();
        next.clampHoles.push_back({"p", Edge::Left, 50, 10, 60, 2, {}});
        next.clampHoles.push_back({"q", Edge::Right, 60, 10, 60, 2, {}});
        m_window.session().change(QStringLiteral("Drill"), next);
        ASSERT_EQ(m_window.session().findings().size(), 2U);
    }
    void expectMoved(const ViewScale& before, QPointF by) {
        EXPECT_EQ(scale().perMm, before.perMm);
        EXPECT_NEAR(scale().origin.x(), before.origin.x() + by.x(), 1e-9);
        EXPECT_NEAR(scale().origin.y(), before.origin.y() + by.y(), 1e-9);
    }
};

// Expected from: a notch is 120 eighths of a degree and moves the sheet 60 pixels, half as many.
TEST_F(Looking, TheWheelAloneMovesTheSheet) {
    ViewScale before = scale();
    turnWheel({300, 200}, {0, 120});
    expectMoved(before, {0, 60});
    before = scale();
    turnWheel({300, 200}, {0, -240}, Qt::ShiftModifier);
    expectMoved(before, {-120, 0});
}

TEST_F(Looking, TheMiddleButtonDragsTheSheet) {
    const ViewScale before = scale();
    dragPixels(Qt::MiddleButton, {300, 300}, {340, 250});
    expectMoved(before, {40, -50});
    EXPECT_TRUE(project().lines.empty());
}

TEST_F(Looking, SpaceHeldDragsTheSheetAndLaysNothing) {
    const ViewScale before = scale();
    m_window.chooseTool(MainWindow::LayAt);
    QTest::keyPress(&m_window.plan(), Qt::Key_Space);
    dragPixels(Qt::LeftButton, pixel({0, 90}), pixel({0, 90}) + QPoint(60, 20));
    QTest::keyRelease(&m_window.plan(), Qt::Key_Space);
    expectMoved(before, {60, 20});
    EXPECT_TRUE(project().lines.empty());
    drag({0, 90}, {400, 90});
    EXPECT_EQ(project().lines.size(), 1U) << "with Space let go the tool has its button back";
}

TEST_F(Looking, CtrlAndTheArrowKeysMoveTheSheet) {
    const ViewScale before = scale();
    key(Qt::Key_Right, Qt::ControlModifier);
    expectMoved(before, {-60, 0});
    key(Qt::Key_Up, Qt::ControlModifier | Qt::ShiftModifier);
    expectMoved(before, {-60, 300});
}

TEST_F(Looking, CtrlPlusAndMinusZoomAboutTheMiddle) {
    const ViewScale before = scale();
    const Point kept = before.toPanel(middle());
    key(Qt::Key_Plus, Qt::ControlModifier);
    EXPECT_NEAR(scale().perMm / before.perMm, 1.25, 1e-12);
    EXPECT_NEAR(scale().toPanel(middle()).x, kept.x, 1e-9);
    key(Qt::Key_Minus, Qt::ControlModifier);
    EXPECT_NEAR(scale().perMm / before.perMm, 1, 1e-12);
    turnWheel({100, 100}, {0, 360}, Qt::ControlModifier);
    key(Qt::Key_0, Qt::ControlModifier);
    EXPECT_EQ(scale(), before) << "the whole panel again";
}

// Expected from: pencil. A hole 60 deep and 5 across from the left edge at y 100 spans x 0 to 60 about y 100.
TEST_F(Looking, F2BringsWhatIsPickedCloseUp) {
    Project next = project();
    next.clampHoles.push_back({"p", Edge::Left, 150, 5, 60, {}, {}});
    m_window.session().change(QStringLiteral("Drill"), next);
    const ViewScale before = scale();
    key(Qt::Key_F2);
    EXPECT_EQ(scale(), before) << "nothing is picked";
    m_window.selection().pickHole(0);
    key(Qt::Key_F2);
    EXPECT_GT(scale().perMm, 2 * before.perMm);
    EXPECT_LT(QLineF(scale().toScreen({30, 100}), middle()).length(), 60) << "in the middle, but for the rulers";
    for (const Point end : {Point{0, 100}, Point{60, 100}}) EXPECT_TRUE(m_window.plan().rect().contains(pixel(end)));
}

// Expected from: pencil. A bar of n pixels that a ruler finds 150 mm long: n / 150 pixels are 1 mm.
TEST_F(Looking, LifeSizeIsTrueOnceARulerWasHeldToTheScreen) {
    key(Qt::Key_F3);
    auto* bar = m_window.findChild<ScreenBar*>();
    ASSERT_TRUE(bar->isVisible()) << "no ruler was held to this screen yet";
    const int length = bar->barLength();
    type("screenBarLength", "150");
    EXPECT_NEAR(scale().perMm, length / 150.0, 1e-12);
    EXPECT_EQ(bar->barLength(), length) << "the bar stays as long as it was measured";
    QTest::keyClick(m_window.findChild<QLineEdit*>(QStringLiteral("screenBarLength")), Qt::Key_Escape);
    EXPECT_FALSE(bar->isVisible());
    key(Qt::Key_0, Qt::ControlModifier);
    key(Qt::Key_F3);
    EXPECT_NEAR(scale().perMm, length / 150.0, 1e-12);
    EXPECT_FALSE(bar->isVisible()) << "it is asked for once";
    MainWindow next;
    next.show();
    next.plan().showLifeSize();
    EXPECT_NEAR(next.plan().viewScale().perMm, length / 150.0, 1e-12) << "kept for this screen";
}

TEST_F(Looking, ARulerReadingOfNonsenseIsToldAndNotTaken) {
    key(Qt::Key_F3);
    const double before = scale().perMm;
    type("screenBarLength", "3");
    EXPECT_EQ(scale().perMm, before);
    EXPECT_TRUE(m_window.findChild<QLabel*>(QStringLiteral("screenAnswer"))->text().contains(QStringLiteral("10 to 2000")));
}

TEST_F(Looking, F4GoesFromFindingToFindingAndBack) {
    drillTwoBadHoles();
    const auto expectAt = [this](std::size_t index) {
        ASSERT_TRUE(chosenRow());
        EXPECT_TRUE(chosenRow()->accessibleName().startsWith(QString::number(index + 1)));
        const QPointF at = scale().toScreen(*m_window.session().findings()[index].at);
        EXPECT_LT((at - middle()).manhattanLength(), 60) << "in the middle, but for the rulers";
        EXPECT_GT(scale().perMm, 3) << "close up";
    };
    key(Qt::Key_F4);
    expectAt(0);
    key(Qt::Key_F4);
    expectAt(1);
    key(Qt::Key_F4);
    expectAt(0);
    key(Qt::Key_F4, Qt::ShiftModifier);
    expectAt(1);
    key(Qt::Key_F4, Qt::ShiftModifier);
    expectAt(0);
}

TEST_F(Looking, WithNothingToMindF4SaysSo) {
    const ViewScale before = scale();
    key(Qt::Key_F4);
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("no finding")));
    EXPECT_EQ(scale(), before);
}

TEST_F(Looking, ANoticeLiesOverTheViewsAndMovesNothing) {
    const ViewScale before = scale();
    const QRect plan = m_window.plan().geometry();
    m_window.notice().tell(QString(300, QLatin1Char('w')).replace(40, 1, QStringLiteral(" ")));
    QTest::qWait(20);
    EXPECT_EQ(scale(), before);
    EXPECT_EQ(m_window.plan().geometry(), plan);
    auto* views = m_window.findChild<SheetViews*>();
    EXPECT_EQ(m_window.notice().geometry().topLeft(), QPoint(0, 0));
    EXPECT_EQ(m_window.notice().width(), views->width());
    EXPECT_GE(m_window.notice().height(), m_window.notice().findChild<QLabel*>()->heightForWidth(m_window.notice().findChild<QLabel*>()->width()));
}

TEST_F(Looking, EveryLayerIsHiddenAndShownByMenuAndByKey) {
    const std::vector<std::pair<const char*, bool PlanLayers::*>> layers{
        {"kerfs", &PlanLayers::kerfs}, {"runOut", &PlanLayers::runOut}, {"edgeMarks", &PlanLayers::edgeMarks},
        {"template", &PlanLayers::opening}, {"work", &PlanLayers::work}, {"workpiece", &PlanLayers::workpiece},
        {"dimensions", &PlanLayers::dimensions}, {"findings", &PlanLayers::findings}};
    int digit = Qt::Key_1;
    for (const auto& [name, layer] : layers) {
        ASSERT_TRUE(action(name)) << name;
        action(name)->trigger();
        EXPECT_FALSE(m_window.plan().layers().*layer) << name;
        EXPECT_FALSE(QSettings().value(QStringLiteral("layers/") + QString::fromLatin1(name)).toBool()) << "kept";
        key(static_cast<Qt::Key>(digit++), Qt::AltModifier);
        EXPECT_TRUE(m_window.plan().layers().*layer) << name;
    }
    key(Qt::Key_1, Qt::AltModifier);
    key(Qt::Key_7, Qt::AltModifier);
    MainWindow next;
    EXPECT_FALSE(next.plan().layers().kerfs);
    EXPECT_FALSE(next.plan().layers().dimensions);
    EXPECT_TRUE(next.plan().layers().findings);
    key(Qt::Key_0, Qt::AltModifier);
    EXPECT_TRUE(m_window.plan().layers().kerfs);
    EXPECT_TRUE(m_window.plan().layers().dimensions);
}

// Expected from: the law that a kept picture is the picture that would be painted.
TEST_F(Looking, WhatIsKeptFromFrameToFrameIsWhatWouldBePainted) {
    const auto painted = [this] {
        // A window of its own has nothing kept; it is brought to the same state.
        MainWindow fresh;
        fresh.resize(m_window.size());
        fresh.session().start(project());
        fresh.plan().setLayers(m_window.plan().layers());
        for (const CutDirection direction : kCutDirections) fresh.session().moveCut(m_window.session().cut(direction));
        fresh.chooseTool(MainWindow::PickAt);
        fresh.show();
        fresh.plan().setFocus();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&fresh));
        const QImage image = fresh.plan().grab().toImage();
        return image;
    };
    const auto kept = [this] {
        m_window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_window));
        m_window.plan().setFocus();
        for (int i = 0; i < 3; ++i) m_window.plan().grab();
        return m_window.plan().grab().toImage();
    };
    m_window.chooseTool(MainWindow::PickAt);
    EXPECT_EQ(kept(), painted());
    layRectangle();
    m_window.chooseTool(MainWindow::PickAt);
    m_window.selection().clear();
    EXPECT_EQ(kept(), painted()) << "lines laid";
    m_window.session().moveCut({CutDirection::Level, 30});
    EXPECT_EQ(kept(), painted()) << "the cut moved";
    key(Qt::Key_1, Qt::AltModifier);
    EXPECT_EQ(kept(), painted()) << "a layer hidden";
    wear(*qApp, Look::Dark);
    EXPECT_EQ(kept(), painted()) << "another look";
}

// Expected from: pencil. Ten notches zoom to over 8 pixels for 1 mm, where Shift moves 5 mm: from the middle at 200, 30
// times to the left ends at 50, which lay far off the view.
TEST_F(Looking, TheKeysPointerStaysInView) {
    turnWheel(middle(), {0, 1200}, Qt::ControlModifier);
    ASSERT_FALSE(m_window.plan().rect().contains(pixel({50, 125})));
    for (int i = 0; i < 30; ++i) key(Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_TRUE(m_window.plan().rect().contains(pixel({50, 125})));
}

}  // namespace
}  // namespace kerfwall
