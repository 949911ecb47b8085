// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDir>
#include <QFile>
#include <QPushButton>

#include "tests/ui/window/hand_on_sheet.h"
#include "ui/side_view_panel.h"

namespace kerfwall {
namespace {

class Files : public HandOnSheet {
protected:
    void write(const QString& path, const char* text) {
        QFile out(path);
        ASSERT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(text);
    }
    void answer(const char* text) {
        for (QPushButton* button : m_window.notice().findChildren<QPushButton*>()) {
            if (button->text() == QString::fromLatin1(text) && button->isVisible()) return button->click();
        }
        FAIL() << "no such answer: " << text;
    }
    static constexpr const char* kSmall =
        R"({"format": "kerfwall-project", "version": 1, "title": "Stall shelf",
            "panel": {"width": 300, "height": 200, "thickness": 18}})";
};

TEST_F(Files, ABadFileIsRefusedOnTheSheetAndWhatWasOpenStays) {
    write(file("good.kerfwall"), kSmall);
    m_window.openFile(file("good.kerfwall"));
    const Project before = project();
    EXPECT_EQ(before.title, "Stall shelf");
    write(file("bad.kerfwall"), R"({"format": "kerfwall-project", "version": 1,
                                     "panel": {"width": -5, "height": 200, "thickness": 18}})");
    m_window.openFile(file("bad.kerfwall"));
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("/panel/width"))) << m_window.notice().sentence().toStdString();
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("bad.kerfwall")));
    EXPECT_EQ(project(), before);
    EXPECT_TRUE(m_window.session().path().endsWith(QStringLiteral("good.kerfwall")));
}

TEST_F(Files, AFileThatIsNotThereIsToldToo) {
    m_window.openFile(file("nowhere.kerfwall"));
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("nowhere.kerfwall")));
}

TEST_F(Files, ChangesAreAskedForBeforeTheyAreLost) {
    write(file("good.kerfwall"), kSmall);
    drag({0, 90}, {400, 90});
    m_window.openFile(file("good.kerfwall"));
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("not saved")));
    EXPECT_EQ(project().lines.size(), 1U);
    answer("Stay here");
    EXPECT_EQ(project().lines.size(), 1U);
    m_window.openFile(file("good.kerfwall"));
    answer("Go on without saving");
    EXPECT_EQ(project().title, "Stall shelf");
}

TEST_F(Files, ClosingAsksAndStaysOpen) {
    drag({0, 90}, {400, 90});
    m_window.close();
    EXPECT_TRUE(m_window.isVisible());
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("not saved")));
    answer("Go on without saving");
    EXPECT_FALSE(m_window.isVisible());
}

TEST_F(Files, UndoingBackToWhatWasSavedIsSaved) {
    drag({0, 90}, {400, 90});
    ASSERT_TRUE(m_window.saveTo(file("a.kerfwall")));
    EXPECT_TRUE(m_window.session().isSaved());
    drag({0, 120}, {400, 120});
    EXPECT_FALSE(m_window.session().isSaved());
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(m_window.session().isSaved());
}

TEST_F(Files, AFolderThatIsNotThereIsToldWhenSaving) {
    drag({0, 90}, {400, 90});
    EXPECT_FALSE(m_window.saveTo(file("no/such/folder/a.kerfwall")));
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("not saved")));
    EXPECT_FALSE(m_window.session().isSaved());
}

TEST_F(Files, EverySampleOpens) {
    QDir samples(QStringLiteral(KERFWALL_SAMPLES));
    const QStringList names = samples.entryList({QStringLiteral("*.kerfwall")});
    ASSERT_FALSE(names.isEmpty());
    for (const QString& name : names) {
        m_window.openFile(samples.filePath(name));
        EXPECT_EQ(m_window.notice().sentence(), QString()) << name.toStdString();
        EXPECT_TRUE(m_window.session().path().endsWith(name));
        EXPECT_FALSE(m_window.grab().isNull());
    }
}

TEST_F(Files, BothViewsCanBeReadAloud) {
    drag({0, 90}, {400, 90});
    QTest::qWait(300);
    EXPECT_TRUE(m_window.plan().accessibleDescription().contains(QStringLiteral("Line A")));
    auto* side = m_window.findChild<SideViewPanel*>();
    EXPECT_TRUE(side->accessibleDescription().contains(QStringLiteral("wood from 0")));
}

// A picture of the sheet for the README, made where KERFWALL_PICTURE names a file; elsewhere it is made and left.
TEST_F(Files, ThePictureOfTheSheetIsMadeByTheSheet) {
    QDir samples(QStringLiteral(KERFWALL_SAMPLES));
    m_window.resize(1360, 860);
    m_window.openFile(samples.filePath(QStringLiteral("crate_end.kerfwall")));
    m_window.chooseTool(MainWindow::PickAt);
    QTest::qWait(50);
    const QString wanted = qEnvironmentVariable("KERFWALL_PICTURE", file("window.png"));
    EXPECT_TRUE(m_window.grab().save(wanted));
    EXPECT_EQ(QImage(wanted).size(), QSize(1360, 860) * m_window.devicePixelRatio());
}

}  // namespace
}  // namespace kerfwall
