// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSettings>
#include <QTemporaryDir>
#include <QtTest/QTest>

#include "ui/main_window.h"
#include "ui/notice_bar.h"
#include "ui/plan_view.h"
#include "ui/tool.h"

namespace kerfwall {

/// A place in a failed test's message.
inline void PrintTo(const ByOffset& place, std::ostream* out) { *out << "offset " << place.distance; }

/// A window on a blank sheet of 400 x 250 x 12 and a hand that works in it by real mouse and key events.
class HandOnSheet : public testing::Test {
protected:
    void SetUp() override {
        QCoreApplication::setOrganizationName(QStringLiteral("KerfwallTest"));
        QSettings::setDefaultFormat(QSettings::IniFormat);
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, m_dir.path());
        wear(*qApp, Look::Light);
        m_window.resize(1280, 800);
        m_window.show();
        m_window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&m_window));
    }

    const Project& project() { return m_window.session().project(); }
    QString file(const char* name) { return m_dir.filePath(QString::fromLatin1(name)); }
    QPoint pixel(Point place) { return m_window.plan().viewScale().toScreen(place).toPoint(); }

    void press(Point place, Qt::KeyboardModifiers keys = Qt::NoModifier) {
        QTest::mousePress(&m_window.plan(), Qt::LeftButton, keys, pixel(place));
    }
    void moveTo(Point place) {
        // A cursor that an earlier test left there would not move, and nobody would hear of it.
        const QPoint global = m_window.plan().mapToGlobal(pixel(place));
        if (QCursor::pos() == global) QCursor::setPos(global + QPoint(1, 1));
        QTest::mouseMove(&m_window.plan(), pixel(place));
    }
    void release(Point place, Qt::KeyboardModifiers keys = Qt::NoModifier) {
        QTest::mouseRelease(&m_window.plan(), Qt::LeftButton, keys, pixel(place));
    }
    void drag(Point from, Point to) {
        press(from);
        moveTo({(from.x + to.x) / 2, (from.y + to.y) / 2});
        moveTo(to);
        release(to);
    }
    void click(Point place, Qt::KeyboardModifiers keys = Qt::NoModifier) {
        moveTo(place);
        press(place, keys);
        release(place, keys);
    }
    void key(Qt::Key which, Qt::KeyboardModifiers keys = Qt::NoModifier) { QTest::keyClick(&m_window.plan(), which, keys); }
    void type(const char* name, const char* text) {
        auto* field = m_window.findChild<QLineEdit*>(QString::fromLatin1(name));
        ASSERT_TRUE(field) << name;
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, QString::fromLatin1(text));
        QTest::keyClick(field, Qt::Key_Return);
    }
    QString sentence() { return m_window.findChild<QLabel*>(QStringLiteral("sentence"))->text(); }

    /// Drags, types into the entry line's first field and lays by Enter.
    void dragTyping(Point from, Point to, const char* text) {
        press(from);
        moveTo({(from.x + to.x) / 2, (from.y + to.y) / 2});
        moveTo(to);
        QTest::keyClicks(&m_window.plan(), QString::fromLatin1(text).left(1));
        auto* field = m_window.findChild<QLineEdit*>(QStringLiteral("entry0"));
        QTest::keyClicks(field, QString::fromLatin1(text).mid(1));
        QTest::keyClick(field, Qt::Key_Return);
        release(to);
    }
    QString note() { return m_window.plan().tool()->inHand().note; }

    /// Types into a field without Return.
    void fill(const char* name, const char* text) {
        auto* field = m_window.findChild<QLineEdit*>(QString::fromLatin1(name));
        ASSERT_TRUE(field && field->isVisible()) << name;
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, QString::fromLatin1(text));
    }
    /// Goes down a choice by the keyboard.
    void choose(const char* name, int times) {
        auto* box = m_window.findChild<QComboBox*>(QString::fromLatin1(name));
        ASSERT_TRUE(box && box->isVisible()) << name;
        box->setFocus();
        for (int i = 0; i < times; ++i) QTest::keyClick(box, Qt::Key_Down);
    }

    void layRectangle() {
        m_window.chooseTool(MainWindow::LayAt);
        drag({0, 90}, {400, 90});
        drag({0, 146}, {400, 146});
        drag({110, 0}, {110, 250});
        dragTyping({290, 0}, {290, 250}, "290");  // typed: by the drag alone it would be the mirror image of C
    }
    /// The same with the waste between the lines marked: a window of 180 x 56.
    void layWindow() {
        layRectangle();
        m_window.chooseTool(MainWindow::WasteAt);
        click({200, 118});
        ASSERT_EQ(project().cutouts.size(), 1U);
    }
    Place placeOf(const LineId& id) {
        const LayoutLine* line = findLine(project(), id);
        EXPECT_TRUE(line) << id;
        return line ? line->place : Place{};
    }

    QTemporaryDir m_dir;
    MainWindow m_window;
};

}  // namespace kerfwall
