// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet with letters half as large again, as a desktop may ask for, on the smallest window.
#include <QAbstractButton>

#include "tests/ui/window/hand_on_sheet.h"
#include "ui/elided_label.h"
#include "ui/sheet_views.h"

namespace kerfwall {
namespace {

class LargeLetters : public testing::Test {
protected:
    LargeLetters() : m_before(QApplication::font()) {
        QCoreApplication::setOrganizationName(QStringLiteral("KerfwallTest"));
        QSettings::setDefaultFormat(QSettings::IniFormat);
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, m_dir.path());
        QFont large = m_before;
        large.setPointSizeF(1.5 * large.pointSizeF());
        QApplication::setFont(large);
        wear(*qApp, Look::Light);
    }
    ~LargeLetters() override {
        QApplication::setFont(m_before);
        wear(*qApp, Look::Light);
    }
    static std::string cutOff(const QWidget& window) {
        for (const QWidget* widget : window.findChildren<QWidget*>()) {
            const auto* label = qobject_cast<const QLabel*>(widget);
            const auto* button = qobject_cast<const QAbstractButton*>(widget);
            if (!widget->isVisible() || (!label && !button)) continue;
            const QSize needs = button ? button->sizeHint() : label->minimumSizeHint();
            const int high = label && label->hasHeightForWidth() ? label->heightForWidth(label->width()) : needs.height();
            const bool wraps = label && label->wordWrap();
            if ((!wraps && widget->width() < needs.width()) || widget->height() < high) {
                return (label ? label->text() : button->text()).toStdString();
            }
        }
        return {};
    }

    QFont m_before;
    QTemporaryDir m_dir;
};

TEST_F(LargeLetters, TheSmallestWindowKeepsItsSizeAndItsTexts) {
    MainWindow window;
    window.openFile(QStringLiteral(KERFWALL_SAMPLES "/crate_end.kerfwall"));
    window.resize(1024, 680);
    window.show();
    QTest::qWait(50);
    for (const SheetViews::Sides sides : {SheetViews::Sides::FromBottom, SheetViews::Sides::FromRight}) {
        window.findChild<SheetViews*>()->wishFor(sides);
        QTest::qWait(50);
        EXPECT_EQ(window.size(), QSize(1024, 680));
        EXPECT_EQ(cutOff(window), "");
    }
}

TEST_F(LargeLetters, WhatIsLeftOutOfTheHeaderIsReadUnderThePointer) {
    MainWindow window;
    window.openFile(QStringLiteral(KERFWALL_SAMPLES "/crate_end.kerfwall"));
    window.resize(1024, 680);
    window.show();
    QTest::qWait(50);
    for (const ElidedLabel* label : window.findChildren<ElidedLabel*>()) {
        EXPECT_EQ(label->accessibleName(), label->whole());
        EXPECT_LE(label->fontMetrics().horizontalAdvance(label->text()), label->width());
        if (label->text() != label->whole()) { EXPECT_EQ(label->toolTip(), label->whole()); }
    }
}

}  // namespace
}  // namespace kerfwall
