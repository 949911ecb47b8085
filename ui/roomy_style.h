// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProxyStyle>

namespace kerfwall {

/// Qt's plain style with room for a finger: no button, field, choice or menu entry is smaller than 24 pixels.
/// Source    WCAG 2.2, 2.5.8, target size (minimum).
class RoomyStyle : public QProxyStyle {
    Q_OBJECT

public:
    RoomyStyle();

    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                           const QWidget* widget) const override;
    /// Faint words have no second shadow: over a dark ground they could not be read.
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget, QStyleHintReturn* more) const override;
};

inline constexpr int kLeastTarget = 24;  ///< device-independent pixels

}  // namespace kerfwall
