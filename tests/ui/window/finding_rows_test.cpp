// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDir>

#include "core/shop/remedies.h"
#include "tests/ui/window/hand_on_sheet.h"
#include "ui/card_row.h"
#include "ui/job_card.h"
#include "ui/place_picture.h"
#include "ui/remedy_button.h"

namespace kerfwall {
namespace {

class FindingRows : public HandOnSheet {
protected:
    void SetUp() override {
        HandOnSheet::SetUp();
        m_window.openFile(QStringLiteral(KERFWALL_SAMPLES "/mind_these.kerfwall"));
        settle();
    }
    void settle() { QTest::qWait(5); }
    /// What a change stirred up has come to rest, and what can be done is looked for again.
    bool waitForRemedies() {
        return QTest::qWaitFor([this] { return !remedyButtons().empty(); });
    }
    std::size_t indexOf(const char* code) {
        const auto& all = m_window.session().findings();
        const auto found = std::ranges::find(all, std::string(code), &Finding::code);
        EXPECT_NE(found, all.end()) << code;
        return static_cast<std::size_t>(found - all.begin());
    }
    CardRow* rowOf(std::size_t index) {
        for (CardRow* row : m_window.findChildren<CardRow*>()) {
            const bool isFinding = row->accessibleName().contains(QStringLiteral("Stop")) ||
                                   row->accessibleName().contains(QStringLiteral("care")) ||
                                   row->accessibleName().contains(QStringLiteral("Note"));
            const QString number = QString::number(index + 1) + QLatin1Char('.');
            if (row->isVisible() && isFinding && row->accessibleName().startsWith(number)) return row;
        }
        ADD_FAILURE() << "no row for finding " << index;
        return nullptr;
    }
    void openRow(const char* code) {
        CardRow* row = rowOf(indexOf(code));
        m_window.findChild<JobCard*>()->ensureWidgetVisible(row);
        QTest::mouseClick(row, Qt::LeftButton, {}, {50, 10});
        QTest::qWait(5);  // until the column is laid out anew
    }
    std::vector<RemedyButton*> remedyButtons() {
        std::vector<RemedyButton*> shown;
        for (RemedyButton* button : m_window.findChildren<RemedyButton*>()) {
            if (button->isVisible()) shown.push_back(button);
        }
        return shown;
    }
    RemedyButton* remedy(const char* words) {
        for (RemedyButton* button : remedyButtons()) {
            if (button->text().startsWith(QString::fromUtf8(words))) return button;
        }
        ADD_FAILURE() << "no remedy " << words;
        return nullptr;
    }
    PlacePicture* picture() { return m_window.findChild<PlacePicture*>(QStringLiteral("placePicture")); }
    QString undoName() { return m_window.session().undoName(); }
    const LayoutLine& line(const LineId& id) { return *findLine(project(), id); }
    /// Opens, presses, and looks that undo brings everything back.
    void pressRemedy(const char* code, const char* words) {
        const Project before = project();
        openRow(code);
        RemedyButton* button = remedy(words);
        ASSERT_TRUE(button);
        const QString whole = button->text();
        QTest::mouseClick(button, Qt::LeftButton);
        EXPECT_NE(project(), before);
        EXPECT_EQ(undoName(), whole);
        m_after = project();
        key(Qt::Key_Z, Qt::ControlModifier);
        EXPECT_EQ(project(), before);
        m_window.session().redo();
        EXPECT_EQ(project(), m_after);
    }

    Project m_after;
};

// Expected from: the contract of the column: opened, a row says its whole sentence, shows its place and what can be done.
TEST_F(FindingRows, ARowOpensOnItsSentenceItsPictureAndItsRemedies) {
    CardRow* row = rowOf(indexOf("wall-nick"));
    const int closed = row->height();
    EXPECT_FALSE(picture()->isVisible());
    openRow("wall-nick");
    settle();
    EXPECT_TRUE(row->isChosen());
    EXPECT_GT(row->height(), closed);
    EXPECT_TRUE(picture()->isVisible());
    EXPECT_TRUE(picture()->accessibleDescription().contains(QStringLiteral("line J with a kerf of 3.2 mm")))
        << picture()->accessibleDescription().toStdString();
    EXPECT_FALSE(remedyButtons().empty());
    QTest::mouseClick(row, Qt::LeftButton, {}, {50, 10});
    EXPECT_FALSE(picture()->isVisible());
    EXPECT_TRUE(remedyButtons().empty());
}

// Expected from: WCAG 2.2, 2.5.8: targets of at least 24 x 24 px; names for a screen reader.
TEST_F(FindingRows, RemediesAreLargeEnoughAndHaveNames) {
    for (const char* code : {"corner-groove", "narrow", "work-size", "bush-corner"}) {
        openRow(code);
        settle();
        ASSERT_FALSE(remedyButtons().empty()) << code;
        for (RemedyButton* button : remedyButtons()) {
            EXPECT_GE(button->height(), 24);
            EXPECT_GE(button->width(), 24);
            EXPECT_EQ(button->accessibleName(), button->text());
            EXPECT_GE(button->height(), button->heightForWidth(button->width())) << "its words are cut off";
        }
    }
}

TEST_F(FindingRows, AStoppedKerfIsOneStep) {
    pressRemedy("wall-nick", "Stop the kerf of J");
    EXPECT_EQ(line("J").extent, Extent::Stopped);
}

TEST_F(FindingRows, ANarrowerKerfIsOneStep) {
    pressRemedy("corner-groove", "Saw H and S with saw rail");
    EXPECT_EQ(line("H").saw, "rail");
}

TEST_F(FindingRows, ABoreIsOneStep) {
    pressRemedy("corner-groove", "Bore the corner of H with S");
    EXPECT_EQ(project().cutouts[2].corners.size(), 2u);
}

TEST_F(FindingRows, AMovedLineIsOneStep) {
    pressRemedy("narrow", "Move line F by 14.2 mm");
    EXPECT_EQ(placeOf("F"), Place(ByOffset{Edge::Left, 324.2}));
    EXPECT_TRUE(m_window.session().solved().cutouts.size() == 3u) << "its waste stays marked";
}

TEST_F(FindingRows, AMovedHoleIsOneStep) {
    pressRemedy("hole-through", "Move clamp hole left");
    EXPECT_GT(project().clampHoles[0].at, 330);
}

TEST_F(FindingRows, AShallowerHoleIsOneStep) {
    pressRemedy("hole-through", "Drill clamp hole left 95.0 mm deep");
    EXPECT_EQ(project().clampHoles[0].depth, 95);
}

TEST_F(FindingRows, MovedWallsAndBoresAreOneStep) {
    pressRemedy("work-size", "Move lines C, A, D and B");
    EXPECT_EQ(placeOf("A"), Place(ByOffset{Edge::Bottom, 119.35}));
    EXPECT_EQ(project().cutouts[0].corners.size(), 4u);
}

TEST_F(FindingRows, AnotherWishIsOneStep) {
    pressRemedy("bush-corner", "Ask for corners of 6.35 mm");
    EXPECT_EQ(project().cutouts[0].wanted->cornerRadius, 6.35);
}

TEST_F(FindingRows, AnotherDrillIsOneStep) {
    pressRemedy("bore-missing", "Bore the corner of J with H with the drill of 40.0 mm");
    EXPECT_EQ(project().cutouts[2].corners[0].radius, 20);
}

// Expected from: the stock bench with a smaller bit beside it.
TEST_F(FindingRows, AnotherBitFromTheBenchIsOneStep) {
    Project next = project();
    next.bench = stockBench();
    next.bench->bits = {9.5};
    next.use = Use{};
    m_window.session().change(QStringLiteral("Another bench"), next);
    settle();
    pressRemedy("narrow", "Trim with the bit of 9.5 mm");
    EXPECT_EQ(project().bench->trimBit->diameter, 9.5);
}

TEST_F(FindingRows, AnotherKerfDepthIsOneStep) {
    Project next = project();
    next.kerfDepth = 14;
    m_window.session().change(QStringLiteral("Deeper"), next);
    settle();
    pressRemedy("web-thin", "Saw the kerfs 12.0 mm deep");
    EXPECT_EQ(project().kerfDepth, 12);
}

// Expected from: everything by keyboard: Enter opens, Tab goes to the remedies, Enter applies, the row keeps the focus.
TEST_F(FindingRows, ByKeyboardAlone) {
    CardRow* row = rowOf(indexOf("wall-nick"));
    row->setFocus(Qt::TabFocusReason);
    QTest::keyClick(row, Qt::Key_Return);
    ASSERT_EQ(remedyButtons().size(), 1u);
    QTest::keyClick(row, Qt::Key_Tab);
    ASSERT_EQ(QApplication::focusWidget(), remedyButtons().front());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_EQ(line("J").extent, Extent::Stopped);
    settle();
    EXPECT_TRUE(qobject_cast<CardRow*>(QApplication::focusWidget())) << "the keyboard goes on from the column";
    EXPECT_TRUE(remedyButtons().empty());
}

// Expected from: a remedy that is looked at shows its own geometry: the line moves out of the picture's words.
TEST_F(FindingRows, ARemedyLookedAtShowsWhatItWouldBe) {
    openRow("corner-groove");
    const QString now = picture()->accessibleDescription();
    RemedyButton* kerf = remedy("Saw H and S with saw rail");
    kerf->setFocus(Qt::TabFocusReason);
    EXPECT_TRUE(picture()->accessibleDescription().contains(QStringLiteral("line S with a kerf of 2.2 mm")));
    kerf->clearFocus();
    EXPECT_EQ(picture()->accessibleDescription(), now);
}

// Expected from: pencil. Opened, a finding is ringed on the plan; out of view it is brought into it, at the same scale.
TEST_F(FindingRows, OpeningBringsThePlaceIntoView) {
    PlanView& plan = m_window.plan();
    plan.zoomAbout(8, QPointF(pixel({50, 450})));
    const double scale = plan.viewScale().perMm;
    const Point place = *m_window.session().findings()[indexOf("corner-groove")].at;
    ASSERT_FALSE(plan.rect().contains(pixel(place)));
    openRow("corner-groove");
    EXPECT_TRUE(plan.rect().contains(pixel(place)));
    EXPECT_EQ(plan.viewScale().perMm, scale);
    const ViewScale seen = plan.viewScale();
    openRow("corner-groove");
    openRow("corner-groove");
    EXPECT_EQ(plan.viewScale(), seen) << "what is in view stays where it is";
}

TEST_F(FindingRows, ASignClickedWithThePickToolOpensItsRow) {
    m_window.chooseTool(MainWindow::PickAt);
    const std::size_t index = indexOf("narrow");
    click(*m_window.session().findings()[index].at);
    EXPECT_TRUE(rowOf(index)->isChosen());
    EXPECT_FALSE(remedyButtons().empty());
    EXPECT_EQ(undoName(), QString()) << "looking changes nothing";
}

TEST_F(FindingRows, AnotherToolDoesNotOpenRows) {
    m_window.chooseTool(MainWindow::BoreAt);
    click(*m_window.session().findings()[indexOf("wall-nick")].at);
    EXPECT_TRUE(remedyButtons().empty());
}

// Expected from: the row follows its finding; remedies are looked for anew once the drawing rests.
TEST_F(FindingRows, AnOpenRowFollowsItsFinding) {
    openRow("wall-nick");
    const Finding opened = m_window.session().findings()[indexOf("wall-nick")];
    Project next = project();
    next.clampHoles.clear();
    m_window.session().change(QStringLiteral("No holes"), next);
    settle();
    EXPECT_TRUE(remedyButtons().empty()) << "old remedies are for an old project";
    EXPECT_TRUE(rowOf(indexOf("wall-nick"))->isChosen());
    ASSERT_TRUE(waitForRemedies());
    QTest::mouseClick(remedyButtons().front(), Qt::LeftButton);
    EXPECT_TRUE(project().clampHoles.empty());
    EXPECT_EQ(line("J").extent, Extent::Stopped);
}

TEST_F(FindingRows, ARowWhoseFindingIsGoneCloses) {
    openRow("hole-wall");
    ASSERT_TRUE(picture()->isVisible());
    Project next = project();
    next.clampHoles.clear();
    m_window.session().change(QStringLiteral("No holes"), next);
    settle();
    EXPECT_FALSE(picture()->isVisible());
    EXPECT_TRUE(remedyButtons().empty());
}

// Pictures for a person to judge: KERFWALL_FINDING_PICTURES names their folder.
TEST_F(FindingRows, FindingPictures) {
    const QString folder = qEnvironmentVariable("KERFWALL_FINDING_PICTURES");
    if (folder.isEmpty()) GTEST_SKIP() << "no folder named";
    for (const Look look : {Look::Light, Look::Dark}) {
        m_window.setLook(look);
        for (const QSize size : {QSize(1280, 720), QSize(1024, 680)}) {
            m_window.resize(size);
            for (const char* code : {"corner-groove", "wall-nick", "narrow", "border-thin", "hole-kerf", "work-size"}) {
                openRow(code);
                QTest::qWait(30);
                m_window.grab().save(QDir(folder).filePath(QStringLiteral("%1-%2-%3.png")
                                                               .arg(QString::fromLatin1(code))
                                                               .arg(size.width())
                                                               .arg(look == Look::Dark ? QStringLiteral("dark") : QStringLiteral("light"))));
                openRow(code);
            }
        }
    }
}

}  // namespace
}  // namespace kerfwall
