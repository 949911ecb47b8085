// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drawing/drawing.h"
#include "ui/look.h"
#include "ui/painter.h"
#include "ui/view_scale.h"

namespace kerfwall {

/// The drawing's colours that go with the window's.
[[nodiscard]] inline Palette drawingColours() {
    return paletteOf(colours().dark ? PaletteKind::Dark : PaletteKind::Light);
}

/// Paints a drawing on the screen in the colours worn now.
inline void paintOnScreen(QPainter& painter, const Drawing& drawing, const ViewScale& scale) {
    paintDrawing(painter, drawing, drawingColours(), screenView(scale.origin, scale.perMm));
}

/// The frame of a view that has the keyboard.
inline void paintFocus(QPainter& painter, const QRect& view) {
    constexpr int kWide = 2;  // pixels
    const QColor colour = colours().accent;
    for (const int y : {view.top(), view.bottom() + 1 - kWide}) painter.fillRect(view.left(), y, view.width(), kWide, colour);
    for (const int x : {view.left(), view.right() + 1 - kWide}) painter.fillRect(x, view.top(), kWide, view.height(), colour);
}

}  // namespace kerfwall
