// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>

#include "tests/core/laying/sheet.h"
#include "tests/ui/window/hand_on_sheet.h"

namespace kerfwall {

/// The window with that sheet (sheet.h) and the pick tool in hand.
class ThingsOnSheet : public HandOnSheet {
protected:
    void SetUp() override {
        HandOnSheet::SetUp();
        m_window.session().start(sheetOfThings());
        ASSERT_TRUE(m_window.saveTo(file("things.kerfwall")));
        m_window.chooseTool(MainWindow::PickAt);
    }
    const Picked& picked() { return m_window.selection().picked(); }
    void pick(const Picked& things) { m_window.selection().pick(things); }
    /// Types into the entry line's field without Return.
    void fill(const char* name, const char* text) {
        auto* field = m_window.findChild<QLineEdit*>(QString::fromLatin1(name));
        ASSERT_TRUE(field && field->isVisible()) << name;
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, QString::fromLatin1(text));
    }
    /// Goes down a choice of the entry line by the keyboard.
    void choose(const char* name, int times) {
        auto* box = m_window.findChild<QComboBox*>(QString::fromLatin1(name));
        ASSERT_TRUE(box && box->isVisible()) << name;
        box->setFocus();
        for (int i = 0; i < times; ++i) QTest::keyClick(box, Qt::Key_Down);
    }
    /// Return wherever the focus is.
    void enter() { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return); }
    const Fence& fence() { return project().fences.front(); }
};

}  // namespace kerfwall
