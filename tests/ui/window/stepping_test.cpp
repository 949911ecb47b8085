// SPDX-License-Identifier: GPL-3.0-or-later
// The order of work, step by step, by key and mouse events.
#include <QAction>
#include <QPushButton>
#include <QScreen>

#include "tests/ui/window/hand_on_sheet.h"
#include "ui/card_row.h"
#include "ui/screen_scale.h"
#include "ui/step_figures.h"
#include "ui/step_view.h"

namespace kerfwall {
namespace {

class SteppingByHand : public HandOnSheet {
protected:
    void SetUp() override {
        HandOnSheet::SetUp();
        layWindow();
        settle();
    }
    void settle() { QTest::qWait(20); }
    const std::vector<WorkStep>& steps() { return m_window.session().order().steps; }
    StepView& view() { return *m_window.findChild<StepView*>(); }
    int shown() { return view().step() ? steps().at(*view().step()).number : 0; }
    QString title() { return view().findChild<QLabel*>(QStringLiteral("sectionTitle"))->text(); }
    void stepKey(Qt::Key which) { QTest::keyClick(&view(), which); }
    std::size_t stepCutting(const LineId& line) {
        const auto step = std::ranges::find_if(steps(), [&](const WorkStep& is) {
            return is.task == Task::Kerf && std::ranges::find(is.lines, line) != is.lines.end();
        });
        return static_cast<std::size_t>(step - steps().begin());
    }
    /// The row of a step; its name begins with the number, and its words are the step's.
    CardRow* rowOf(std::size_t step) {
        for (CardRow* row : m_window.findChildren<CardRow*>()) {
            const bool isStep = row->accessibleDescription().startsWith(QString::fromStdString(steps().at(step).text));
            const QString number = QString::number(step + 1) + QLatin1Char('.');
            if (isStep && row->accessibleName().startsWith(number)) return row;
        }
        ADD_FAILURE() << "no row for step " << step;
        return nullptr;
    }
    void clickButton(const char* name) {
        QTest::mouseClick(view().findChild<QPushButton*>(QString::fromLatin1(name)), Qt::LeftButton);
    }
};

TEST_F(SteppingByHand, AClickOnAStepsRowShowsItInPlaceOfThePlanAndAnotherPutsItAway) {
    CardRow* row = rowOf(2);
    QTest::mouseClick(row, Qt::LeftButton);
    EXPECT_EQ(shown(), 3);
    EXPECT_TRUE(view().isVisible());
    EXPECT_FALSE(m_window.plan().isVisible());
    EXPECT_TRUE(row->isChosen());
    QTest::mouseClick(row, Qt::LeftButton);
    EXPECT_EQ(shown(), 0);
    EXPECT_TRUE(m_window.plan().isVisible());
    EXPECT_FALSE(row->isChosen());
}

TEST_F(SteppingByHand, AKeyOpensTheFirstStepAndTheArrowsAndPagesGoOn) {
    key(Qt::Key_F11);
    EXPECT_EQ(shown(), 1);
    EXPECT_TRUE(view().hasFocus());
    stepKey(Qt::Key_Right);
    stepKey(Qt::Key_Down);
    stepKey(Qt::Key_PageDown);
    EXPECT_EQ(shown(), 4);
    stepKey(Qt::Key_Left);
    stepKey(Qt::Key_Up);
    stepKey(Qt::Key_PageUp);
    EXPECT_EQ(shown(), 1);
    stepKey(Qt::Key_PageUp);
    EXPECT_EQ(shown(), 1);
    stepKey(Qt::Key_End);
    EXPECT_EQ(shown(), steps().back().number);
    stepKey(Qt::Key_Right);
    EXPECT_EQ(shown(), steps().back().number);
    stepKey(Qt::Key_Home);
    EXPECT_EQ(shown(), 1);
    QTest::keyClick(&view(), Qt::Key_F11);
    EXPECT_EQ(shown(), 2);
    QTest::keyClick(&view(), Qt::Key_F11, Qt::ShiftModifier);
    EXPECT_EQ(shown(), 1);
}

TEST_F(SteppingByHand, EscLeadsBackToThePlanAndTheKeyBackToTheStep) {
    key(Qt::Key_F11);
    stepKey(Qt::Key_Right);
    stepKey(Qt::Key_Escape);
    EXPECT_EQ(shown(), 0);
    EXPECT_TRUE(m_window.plan().hasFocus());
    key(Qt::Key_F11);
    EXPECT_EQ(shown(), 2);
}

TEST_F(SteppingByHand, ItsButtonsDoTheSameForTheMouse) {
    key(Qt::Key_F11);
    EXPECT_FALSE(view().findChild<QPushButton*>(QStringLiteral("previousStep"))->isEnabled());
    clickButton("nextStep");
    EXPECT_EQ(shown(), 2);
    clickButton("previousStep");
    EXPECT_EQ(shown(), 1);
    clickButton("closeStep");
    EXPECT_EQ(shown(), 0);
}

TEST_F(SteppingByHand, TheRowGoesAlongWithTheStep) {
    key(Qt::Key_F11);
    stepKey(Qt::Key_Right);
    EXPECT_TRUE(rowOf(1)->isChosen());
    EXPECT_FALSE(rowOf(0)->isChosen());
}

// An edit that puts a bore before the kerfs renumbers them: the step open is still the one that cuts A.
TEST_F(SteppingByHand, AnOpenStepBelongsToItsKerfNotToItsNumber) {
    const std::size_t before = stepCutting("A");
    QTest::mouseClick(rowOf(before), Qt::LeftButton);
    Project next = project();
    next.cutouts.front().corners = {BoredCorner{"A", "C", 10, {}}};
    m_window.session().change(QStringLiteral("Bore a corner"), next);
    const std::size_t after = stepCutting("A");
    ASSERT_EQ(after, before + 1);
    EXPECT_EQ(view().step(), after);
    settle();
    EXPECT_TRUE(rowOf(after)->isChosen());
    EXPECT_TRUE(title().startsWith(QStringLiteral("Step %1 of %2").arg(after + 1).arg(steps().size())));
    m_window.session().undo();
    EXPECT_EQ(view().step(), before);
}

TEST_F(SteppingByHand, AStepThatIsGoneLeadsBackToThePlan) {
    QTest::mouseClick(rowOf(stepCutting("A")), Qt::LeftButton);
    Project next = project();
    next.cutouts.clear();
    m_window.session().change(QStringLiteral("Unmark the waste"), next);
    EXPECT_EQ(shown(), 0);
    EXPECT_TRUE(m_window.plan().isVisible());
}

TEST_F(SteppingByHand, TakingAToolLeadsBackToThePlan) {
    key(Qt::Key_F11);
    QTest::keyClick(&view(), Qt::Key_2);
    EXPECT_EQ(shown(), 0);
    EXPECT_TRUE(m_window.plan().hasFocus());
}

TEST_F(SteppingByHand, AnotherFileLeadsBackToThePlanAndBeginsAtTheFirstStep) {
    key(Qt::Key_F11);
    stepKey(Qt::Key_End);
    ASSERT_TRUE(m_window.session().open(QStringLiteral(KERFWALL_SAMPLES "/crate_end.kerfwall")));
    EXPECT_EQ(shown(), 0);
    key(Qt::Key_F11);
    EXPECT_EQ(shown(), 1);
}

TEST_F(SteppingByHand, OnASheetWithoutWorkTheKeySaysWhatIsMissing) {
    Project next = project();
    next.lines.clear();
    next.cutouts.clear();
    m_window.session().change(QStringLiteral("Clear"), next);
    key(Qt::Key_F11);
    EXPECT_EQ(shown(), 0);
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("order of work")));
}

// The issue: large enough to read across a bench, about 10 mm high.
TEST_F(SteppingByHand, SettingsStandInFiguresTenMillimetresHigh) {
    QTest::mouseClick(rowOf(stepCutting("A")), Qt::LeftButton);
    const auto* figures = view().findChild<StepFigures*>();
    EXPECT_NEAR(figures->figureHeight() / pixelsPerMm(*m_window.screen()), 10, 0.3);
    EXPECT_EQ(figures->accessibleName(), QStringLiteral("Fence 90 mm, Blade up 6 mm"));
}

// Pencil: A at 90 with the waste beyond; 90 / 25.4 is 3.543, 6 / 25.4 is 0.236.
TEST_F(SteppingByHand, InInchesTheFiguresAreInches) {
    QTest::mouseClick(rowOf(stepCutting("A")), Qt::LeftButton);
    m_window.findChild<QAbstractButton*>(QStringLiteral("units"))->click();
    EXPECT_EQ(view().findChild<StepFigures*>()->accessibleName(), QStringLiteral("Fence 3.543 \", Blade up 0.236 \""));
}

TEST_F(SteppingByHand, AScreenReaderHearsTheWholeStep) {
    const std::size_t step = stepCutting("A");
    QTest::mouseClick(rowOf(step), Qt::LeftButton);
    EXPECT_TRUE(view().accessibleName().startsWith(QStringLiteral("Step %1 of").arg(step + 1)));
    EXPECT_TRUE(view().accessibleDescription().contains(QString::fromStdString(steps()[step].text)));
    EXPECT_TRUE(view().accessibleDescription().contains(QStringLiteral("layout face down")));
}

// A law: a picture stays within its view, and what lies face down shows no layout line.
TEST_F(SteppingByHand, EveryStepPaintsAPictureOfItsOwn) {
    key(Qt::Key_F11);
    QImage last;
    for (std::size_t i = 0; i < steps().size(); ++i) {
        const QImage now = view().grab().toImage();
        EXPECT_NE(now, last) << i;
        last = now;
        stepKey(Qt::Key_Right);
    }
}

}  // namespace
}  // namespace kerfwall
