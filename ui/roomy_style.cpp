// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/roomy_style.h"

#include <QStyleOptionMenuItem>

namespace kerfwall {
namespace {

bool isSeparator(const QStyleOption* option) {
    const auto* item = qstyleoption_cast<const QStyleOptionMenuItem*>(option);
    return item && item->menuItemType == QStyleOptionMenuItem::Separator;
}

}  // namespace

RoomyStyle::RoomyStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

QSize RoomyStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                                   const QWidget* widget) const {
    const QSize plain = QProxyStyle::sizeFromContents(type, option, size, widget);
    switch (type) {
        case CT_MenuItem:
            if (isSeparator(option)) return plain;
            [[fallthrough]];
        case CT_PushButton:
        case CT_ToolButton:
        case CT_ComboBox:
        case CT_LineEdit:
        case CT_CheckBox:
        case CT_RadioButton:
        case CT_SpinBox:
        case CT_ItemViewItem:
        case CT_MenuBarItem:
            return plain.expandedTo({kLeastTarget, kLeastTarget});
        default:
            return plain;
    }
}

int RoomyStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget, QStyleHintReturn* more) const {
    return hint == SH_EtchDisabledText ? 0 : QProxyStyle::styleHint(hint, option, widget, more);
}

}  // namespace kerfwall
