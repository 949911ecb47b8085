// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kept_work.h"

#include <QDir>
#include <QFile>
#include <QPushButton>

#include "tests/core/geometry/projects.h"
#include "tests/ui/window/hand_on_sheet.h"

namespace kerfwall {
namespace {

class KeptWorkOnSheet : public HandOnSheet {
  protected:
    QString folder() { return file("unsaved"); }
    QStringList kept() { return QDir(folder()).entryList({QStringLiteral("*.json")}, QDir::Files); }

    void changeIt() {
        m_window.session().start(test::windowProject());
        Project next = project();
        next.title = "Stall shutter";
        m_window.session().change(QStringLiteral("Name it"), next);
    }

    /// As a program that ended leaves it: nobody holds its lock.
    void leaveBehind(const Project& project, const QString& path) {
        MainWindow other;
        other.keepUnsaved(folder());
        other.session().takeUp(project, path);
        other.findChild<KeptWork*>()->keep();
        ASSERT_EQ(kept().size(), 1);
        EXPECT_TRUE(QFile::copy(QDir(folder()).filePath(kept().front()), QDir(folder()).filePath(QStringLiteral("left-1.json"))));
    }

    void answer(const QString& words) {
        for (QPushButton* button : m_window.notice().findChildren<QPushButton*>()) {
            if (button->isVisible() && button->text().remove(QLatin1Char('&')) == words) return QTest::mouseClick(button, Qt::LeftButton);
        }
        ADD_FAILURE() << words.toStdString();
    }
};

// A law: what is not saved lies on the disk a moment later, what is saved does not, and while its program runs it is not lost.
TEST_F(KeptWorkOnSheet, WhatIsNotSavedIsKeptUntilItIs) {
    m_window.keepUnsaved(folder());
    changeIt();
    auto* keeper = m_window.findChild<KeptWork*>();
    QTRY_COMPARE_WITH_TIMEOUT(kept().size(), 1, 5000);
    EXPECT_TRUE(lostWorkIn(folder()).empty()) << "its program runs";
    ASSERT_TRUE(m_window.session().save(file("shutter.kerfwall")));
    EXPECT_TRUE(kept().isEmpty());
    keeper->keep();
    EXPECT_TRUE(kept().isEmpty());
}

TEST_F(KeptWorkOnSheet, LostWorkIsOfferedAndTakenUpAsNotSaved) {
    Project lost = test::windowProject();
    lost.title = "Stall shutter";
    leaveBehind(lost, file("shutter.kerfwall"));
    m_window.keepUnsaved(folder());
    m_window.offerLostWork();
    EXPECT_TRUE(m_window.notice().sentence().contains(QStringLiteral("Stall shutter"))) << m_window.notice().sentence().toStdString();
    answer(QStringLiteral("Take it up again"));
    EXPECT_EQ(project(), lost);
    EXPECT_EQ(m_window.session().path(), QFileInfo(file("shutter.kerfwall")).absoluteFilePath());
    EXPECT_FALSE(m_window.session().isSaved());
    EXPECT_FALSE(kept().contains(QStringLiteral("left-1.json")));
    EXPECT_EQ(kept().size(), 1) << "kept anew until it is saved";
}

TEST_F(KeptWorkOnSheet, ThrownAwayItIsGoneAndLeftItIsOfferedAgain) {
    leaveBehind(test::windowProject(), {});
    m_window.keepUnsaved(folder());
    m_window.offerLostWork();
    answer(QStringLiteral("Ask again next time"));
    EXPECT_EQ(lostWorkIn(folder()).size(), 1U);
    m_window.offerLostWork();
    answer(QStringLiteral("Throw it away"));
    EXPECT_TRUE(lostWorkIn(folder()).empty());
    EXPECT_TRUE(kept().isEmpty());
}

}  // namespace
}  // namespace kerfwall
