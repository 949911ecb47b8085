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
    /// Return wherever the focus is.
    void enter() { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return); }
    const Fence& fence() { return project().fences.front(); }
};

}  // namespace kerfwall
