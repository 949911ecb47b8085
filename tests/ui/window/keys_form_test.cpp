// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/keys_form.h"

#include <QAction>
#include <QLabel>
#include <QPushButton>

#include "tests/core/geometry/projects.h"
#include "tests/ui/window/hand_on_sheet.h"

namespace kerfwall {
namespace {

using KeysOnSheet = HandOnSheet;

// A law: what the menus answer to stands on the list, none left out, and the list goes by Esc and by its button.
TEST_F(KeysOnSheet, TheListHoldsEveryKeyOfTheMenus) {
    m_window.session().start(test::windowProject());
    m_window.plan().setFocus();
    key(Qt::Key_F1);
    auto* form = m_window.findChild<KeysForm*>();
    ASSERT_TRUE(form->isVisible());
    QStringList told;
    for (const QLabel* label : form->findChildren<QLabel*>(QStringLiteral("key"))) told << label->text().split(QStringLiteral(", "));
    int keys = 0;
    for (const QAction* action : m_window.findChildren<QAction*>()) {
        if (action->text().isEmpty() || action->associatedObjects().isEmpty()) continue;
        for (const QKeySequence& shortcut : action->shortcuts()) {
            ++keys;
            EXPECT_TRUE(told.contains(shortcut.toString(QKeySequence::NativeText))) << action->text().toStdString();
        }
    }
    EXPECT_GT(keys, 30);
    QTest::keyClick(m_window.focusWidget(), Qt::Key_Escape);
    EXPECT_FALSE(form->isVisible());
    EXPECT_EQ(m_window.focusWidget(), &m_window.plan());
    key(Qt::Key_F1);
    QTest::mouseClick(form->findChild<QPushButton*>(QStringLiteral("keysDone")), Qt::LeftButton);
    EXPECT_FALSE(form->isVisible());
}

}  // namespace
}  // namespace kerfwall
