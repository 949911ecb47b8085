// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAction>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>

#include "core/says/project_text.h"
#include "tests/ui/window/hand_on_sheet.h"
#include "ui/first_sheet.h"
#include "ui/rack.h"
#include "ui/shelf.h"

namespace kerfwall {
namespace {

class FirstOnSheet : public HandOnSheet {
protected:
    FirstSheet* first() { return m_window.findChild<FirstSheet*>(); }
    QList<QPushButton*> offers(const char* name) { return first()->findChildren<QPushButton*>(QString::fromLatin1(name)); }
    QPushButton* offerWith(const char* name, const char* words) {
        for (QPushButton* button : offers(name)) {
            if (button->accessibleName().contains(QString::fromUtf8(words))) return button;
        }
        return nullptr;
    }
    void take(const char* name, const char* words) {
        QPushButton* button = offerWith(name, words);
        ASSERT_TRUE(button) << name << ": " << words;
        QTest::mouseClick(button, Qt::LeftButton);
    }
    void keyOn(Qt::Key which) { QTest::keyClick(QApplication::focusWidget(), which); }
    void putOnShelf(const char* name) {
        QDir(m_dir.path()).mkpath(QStringLiteral("shelf"));
        const QString from = QStringLiteral(KERFWALL_SAMPLES "/") + QString::fromLatin1(name);
        ASSERT_TRUE(QFile::copy(from, file("shelf/") + QString::fromLatin1(name)));
        keepShelfFolder(file("shelf"));
    }
    void showAnew() { m_window.session().startNew(); }
    void openPanelMenu() {
        auto* bar = m_window.findChild<QMenuBar*>();
        QMenu* menu = bar->actions().at(3)->menu();
        for (QAction* action : bar->actions()) {
            if (action->menu() && action->menu()->actions().contains(rackAction())) menu = action->menu();
        }
        Q_EMIT menu->aboutToShow();
    }
    QAction* rackAction() { return m_window.findChild<QAction*>(QStringLiteral("rack")); }
};

TEST_F(FirstOnSheet, AnEmptySheetOffersHowToBegin) {
    ASSERT_TRUE(first()->isVisible());
    EXPECT_EQ(offers("beginWanted").size(), 1);
    EXPECT_EQ(offers("panelHere").size(), 1);
    EXPECT_EQ(offers("sample").size(), 5);
    EXPECT_EQ(offers("chooseShelf").size(), 1);
    EXPECT_FALSE(m_window.findChild<QWidget*>(QStringLiteral("firstLast"))->isVisible());
}

// Expected from: the rack's common sizes: 600 x 400 x 12 is one.
TEST_F(FirstOnSheet, APanelOfTheRackIsTaken) {
    take("rackPanel", "600 × 400 × 12");
    EXPECT_EQ(project().panel.width, 600);
    EXPECT_EQ(project().panel.height, 400);
    EXPECT_EQ(project().panel.thickness, 12);
    EXPECT_FALSE(first()->isVisible());
    EXPECT_EQ(QApplication::focusWidget(), &m_window.plan());
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(project().panel.width, 400);
}

TEST_F(FirstOnSheet, ThePanelThatLiesHereWillDo) {
    const Project before = project();
    take("panelHere", "400 × 250 × 12");
    EXPECT_FALSE(first()->isVisible());
    EXPECT_EQ(project(), before);
    EXPECT_TRUE(m_window.session().isSaved());
}

TEST_F(FirstOnSheet, AClickBesideTheOffersIsNoneOnThePlan) {
    auto* page = first()->findChild<QWidget*>(QStringLiteral("firstPage"));
    QTest::mouseClick(page, Qt::LeftButton, Qt::NoModifier, QPoint(page->width() - 4, page->height() - 4));
    EXPECT_TRUE(first()->isVisible());
    EXPECT_FALSE(m_window.session().isInHand());
}

TEST_F(FirstOnSheet, EachShapeOpensItsForm) {
    const std::pair<const char*, const char*> shapes[] = {
        {"beginWanted", "wantedWidth"}, {"beginShape1", "wantedSpan"}, {"beginShape2", "wantedCorners"}};
    for (const auto& [name, field] : shapes) {
        take(name, "");
        EXPECT_EQ(QApplication::focusWidget()->objectName(), QString::fromLatin1(field));
        EXPECT_FALSE(first()->isVisible());
        keyOn(Qt::Key_Escape);
        EXPECT_TRUE(first()->isVisible());
    }
}

// Expected from: the sample file; it is nobody's file yet, and nothing is lost with it.
TEST_F(FirstOnSheet, ASampleOpensWithoutAFileAndAsksNothingUntilItIsChanged) {
    take("sample", "Crate end, hand-hold");
    EXPECT_EQ(project().title, "Crate end, hand-hold");
    EXPECT_EQ(project().lines.size(), 4u);
    EXPECT_TRUE(m_window.session().path().isEmpty());
    EXPECT_TRUE(m_window.session().isSaved());
    EXPECT_FALSE(first()->isVisible());
    Project changed = project();
    changed.title = "Mine";
    m_window.session().change(QStringLiteral("Name"), changed);
    EXPECT_FALSE(m_window.session().isSaved());
}

TEST_F(FirstOnSheet, TheShelfShowsTitleAndSize) {
    putOnShelf("bench_leg.kerfwall");
    putOnShelf("round_window.kerfwall");
    showAnew();
    ASSERT_EQ(offers("shelfFile").size(), 2);
    EXPECT_EQ(offers("shelfFile").at(0)->text(), QStringLiteral("Garden bench, leg frame\n500 × 400 × 18 mm"));
    take("shelfFile", "leg frame");
    EXPECT_EQ(project().title, "Garden bench, leg frame");
    EXPECT_EQ(m_window.session().path(), file("shelf/bench_leg.kerfwall"));
    EXPECT_TRUE(m_window.session().isSaved());
    EXPECT_FALSE(first()->isVisible());
}

TEST_F(FirstOnSheet, AFileThatCannotBeReadIsToldOnTheSheet) {
    QDir(m_dir.path()).mkpath(QStringLiteral("shelf"));
    QFile broken(file("shelf/broken.kerfwall"));
    ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
    broken.write("{");
    broken.close();
    keepShelfFolder(file("shelf"));
    showAnew();
    take("shelfFile", "broken, can't be read");
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("broken.kerfwall")));
    EXPECT_TRUE(first()->isVisible());
}

TEST_F(FirstOnSheet, FilesOpenLatelyAreOffered) {
    putOnShelf("crate_end.kerfwall");
    keepShelfFolder({});
    m_window.openFile(file("shelf/crate_end.kerfwall"));
    showAnew();
    ASSERT_EQ(offers("lastFile").size(), 1);
    take("lastFile", "Crate end");
    EXPECT_EQ(m_window.session().path(), file("shelf/crate_end.kerfwall"));
}

TEST_F(FirstOnSheet, ItIsGoneAsSoonAsSomethingIsLaid) {
    drag({0, 90}, {400, 90});
    EXPECT_FALSE(first()->isVisible());
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(first()->isVisible()) << "the hand is at work";
    showAnew();
    EXPECT_TRUE(first()->isVisible());
}

TEST_F(FirstOnSheet, TheEntryLineSaysWhatToDo) {
    EXPECT_TRUE(sentence().startsWith(QStringLiteral("Take one of the offers")));
    keyOn(Qt::Key_Escape);
    EXPECT_TRUE(sentence().startsWith(QStringLiteral("Drag from one edge")));
}

TEST_F(FirstOnSheet, TakingAToolPutsItAside) {
    keyOn(Qt::Key_2);
    EXPECT_FALSE(first()->isVisible());
    showAnew();
    EXPECT_TRUE(first()->isVisible());
}

TEST_F(FirstOnSheet, AnotherPanelFromTheFormPutsItAside) {
    key(Qt::Key_F6);
    type("panelWidth", "500");
    QTest::mouseClick(m_window.findChild<QPushButton*>(QStringLiteral("formDone")), Qt::LeftButton);
    EXPECT_FALSE(first()->isVisible());
}

// Expected from: the order of the offers: three sizes, the panel here, the rack's.
TEST_F(FirstOnSheet, ByKeysAlone) {
    ASSERT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("beginWanted"));
    for (int i = 0; i < 4; ++i) keyOn(Qt::Key_Down);
    keyOn(Qt::Key_Up);
    keyOn(Qt::Key_Down);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("rackPanel"));
    keyOn(Qt::Key_Up);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("panelHere"));
    keyOn(Qt::Key_Tab);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("rackPanel"));
    keyOn(Qt::Key_Return);
    EXPECT_EQ(project().panel.width, 600);
    EXPECT_FALSE(first()->isVisible());
}

TEST_F(FirstOnSheet, EscPutsItAside) {
    keyOn(Qt::Key_Escape);
    EXPECT_FALSE(first()->isVisible());
    EXPECT_EQ(QApplication::focusWidget(), &m_window.plan());
}

// Expected from: pencil. 600 mm are 23 5/8 in.
TEST_F(FirstOnSheet, SizesFollowTheUnits) {
    key(Qt::Key_F9);
    EXPECT_TRUE(first()->isVisible());
    EXPECT_TRUE(offerWith("rackPanel", "23 5/8 × 15 3/4"));
}

TEST_F(FirstOnSheet, ThisSizeIsPutInTheRackAndTakenOut) {
    key(Qt::Key_F6);
    type("panelWidth", "470");
    openPanelMenu();
    EXPECT_EQ(rackAction()->text(), QStringLiteral("&Put this size in the rack"));
    rackAction()->trigger();
    EXPECT_TRUE(liesInRack({470, 250, 12}));
    QTest::mouseClick(m_window.findChild<QPushButton*>(QStringLiteral("formDone")), Qt::LeftButton);
    showAnew();
    EXPECT_TRUE(offerWith("rackPanel", "470 × 250 × 12"));
    take("rackPanel", "470 × 250 × 12");
    openPanelMenu();
    EXPECT_EQ(rackAction()->text(), QStringLiteral("&Take this size out of the rack"));
    rackAction()->trigger();
    EXPECT_FALSE(liesInRack({470, 250, 12}));
    EXPECT_TRUE(liesInRack({600, 400, 12}));
}

}  // namespace
}  // namespace kerfwall
