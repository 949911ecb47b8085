// SPDX-License-Identifier: GPL-3.0-or-later
// What the Web Content Accessibility Guidelines 2.2 ask of text, lines, controls and targets, computed from the
// colours the window wears and from its widgets as they are laid out.
#include <QAbstractButton>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QPlainTextEdit>

#include "tests/ui/window/hand_on_sheet.h"
#include "ui/card_row.h"
#include "ui/palette.h"

namespace kerfwall {
namespace {

constexpr double kText = 4.5;    // : 1, WCAG 2.2, 1.4.3
constexpr double kNonText = 3;   // : 1, 1.4.11
constexpr int kSmallestTarget = 24;  // CSS pixels both ways, 2.5.8

class ForEveryone : public HandOnSheet, public testing::WithParamInterface<Look> {
protected:
    void SetUp() override {
        HandOnSheet::SetUp();
        wear(*qApp, GetParam());
    }
    void TearDown() override { wear(*qApp, Look::Light); }
};
using ColoursOfTheWindow = ForEveryone;

void expectContrast(const QColor& first, const QColor& second, double least, const char* what) {
    EXPECT_GE(contrast(first, second), least) << what << ": " << first.name().toStdString() << " on " << second.name().toStdString();
}

// Expected from: WCAG 2.2, 1.4.3: text stands out 4.5 : 1 from what it is written on.
TEST_P(ColoursOfTheWindow, LetTextBeRead) {
    const WindowColours& c = colours();
    for (const QColor& behind : {c.desk, c.strip, c.column, c.accentTint}) {
        expectContrast(c.ink, behind, kText, "text");
        expectContrast(c.faint, behind, kText, "faint text");
        expectContrast(c.accent, behind, kText, "links");
    }
    for (const QColor& behind : {c.stopTint, c.careTint}) expectContrast(c.ink, behind, kText, "a finding's sentence");
    expectContrast(c.stop, c.stopTint, kText, "a stop's heading");
    expectContrast(c.care, c.careTint, kText, "a care's heading");
    expectContrast(c.stop, c.column, kText, "a field's trouble");
    const QPalette palette = qApp->palette();
    expectContrast(palette.color(QPalette::HighlightedText), palette.color(QPalette::Highlight), kText, "picked text");
    expectContrast(palette.color(QPalette::PlaceholderText), palette.color(QPalette::Base), kText, "what an empty field means");
}

// Expected from: WCAG 2.2, 1.4.11: what a control is known by stands out 3 : 1: a field's border, the ring of focus,
// the frame of trouble.
TEST_P(ColoursOfTheWindow, LetControlsBeFound) {
    const WindowColours& c = colours();
    for (const QColor& behind : {c.desk, c.strip, c.column}) {
        expectContrast(c.field, behind, kNonText, "a field's border");
        expectContrast(c.accent, behind, kNonText, "the ring of focus");
        expectContrast(c.stop, behind, kNonText, "the frame of trouble");
    }
    expectContrast(c.accent, c.accentTint, kNonText, "the ring on what is picked");
    const Palette drawing = paletteOf(c.dark ? PaletteKind::Dark : PaletteKind::Light);
    for (const QColor& behind : {c.desk, drawing.board}) {
        for (const QColor& line : {drawing.ink, drawing.work, drawing.tool, drawing.stop, drawing.care, drawing.note}) {
            expectContrast(line, behind, kNonText, "a line of the drawing");
        }
    }
}

INSTANTIATE_TEST_SUITE_P(LightAndDark, ColoursOfTheWindow, testing::Values(Look::Light, Look::Dark),
                         [](const auto& each) { return each.param == Look::Dark ? "Dark" : "Light"; });

using TargetsOnTheSheet = HandOnSheet;

bool isTarget(const QWidget* widget) {
    return qobject_cast<const QAbstractButton*>(widget) || qobject_cast<const QLineEdit*>(widget) ||
           qobject_cast<const QComboBox*>(widget) || qobject_cast<const CardRow*>(widget);
}

void expectTargets(const QWidget& window, const std::string& where) {
    int found = 0;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (!isTarget(widget) || !widget->isVisible() || qobject_cast<const QComboBox*>(widget->parentWidget())) continue;
        ++found;
        EXPECT_GE(std::min(widget->width(), widget->height()), kSmallestTarget)
            << where << ": " << widget->metaObject()->className() << ' ' << widget->objectName().toStdString() << ' '
            << widget->accessibleName().toStdString() << ' ' << widget->width() << " x " << widget->height();
    }
    EXPECT_GT(found, 8) << where;
}

// Expected from: WCAG 2.2, 2.5.8: 24 by 24 CSS pixels.
TEST_F(TargetsOnTheSheet, AreLargeEnoughInEveryStateOfTheSheet) {
    expectTargets(m_window, "empty sheet");
    layRectangle();
    m_window.chooseTool(MainWindow::WasteAt);
    click({200, 118});
    QTest::qWait(20);
    for (int tool = MainWindow::PickAt; tool <= MainWindow::CutAt; ++tool) {
        m_window.chooseTool(tool);
        expectTargets(m_window, "tool " + std::to_string(tool));
    }
}

// Every menu and every form that a menu opens.
TEST_F(TargetsOnTheSheet, AreLargeEnoughInMenusAndForms) {
    auto* bar = m_window.findChild<QMenuBar*>();
    ASSERT_TRUE(bar);
    for (const QAction* top : bar->actions()) {
        EXPECT_GE(bar->actionGeometry(const_cast<QAction*>(top)).height(), kSmallestTarget) << top->text().toStdString();
        QMenu* menu = top->menu();
        ASSERT_TRUE(menu) << top->text().toStdString();
        menu->ensurePolished();
        menu->adjustSize();
        for (QAction* action : menu->actions()) {
            if (action->isSeparator()) continue;
            EXPECT_GE(menu->actionGeometry(action).height(), kSmallestTarget) << action->text().toStdString();
        }
    }
    for (const Qt::Key form : {Qt::Key_F6, Qt::Key_F7, Qt::Key_F8}) {
        key(form);
        QTest::qWait(20);
        expectTargets(m_window, "form F" + std::to_string(form - Qt::Key_F1 + 1));
    }
}

// Expected from: WCAG 2.2, 2.5.8. What lies on the plan is caught within 12 pixels all round.
TEST_F(TargetsOnTheSheet, AreLargeEnoughOnThePlan) {
    layRectangle();
    m_window.chooseTool(MainWindow::WasteAt);
    click({200, 118});
    Project next = project();
    next.clampHoles.push_back({"h", Edge::Right, 60, 10, 60, {}, {}});
    m_window.session().change(QStringLiteral("Add"), next);
    m_window.chooseTool(MainWindow::PickAt);
    const double within = (kSmallestTarget / 2 - 1) / m_window.plan().viewScale().perMm;  // mm
    click({60, 90 + within});
    EXPECT_EQ(m_window.selection().line(), "A");
    click({60, 90 - within});
    EXPECT_EQ(m_window.selection().line(), "A");
    click({400 + within, 60});
    EXPECT_EQ(m_window.selection().hole(), std::optional<std::size_t>(0));
    m_window.chooseTool(MainWindow::BoreAt);
    click({110 + within, 90 + within});
    EXPECT_EQ(project().cutouts.front().corners.size(), 1U);
}

}  // namespace
}  // namespace kerfwall
