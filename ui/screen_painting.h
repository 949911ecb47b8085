// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/drawing/drawing.h"
#include "ui/look.h"
#include "ui/painter.h"
#include "ui/view_scale.h"

namespace kerfwall {

/// Paints a drawing on the screen in the colours worn now.
inline void paintOnScreen(QPainter& painter, const Drawing& drawing, const ViewScale& scale) {
    paintDrawing(painter, drawing, paletteOf(colours().dark ? PaletteKind::Dark : PaletteKind::Light),
                 screenView(scale.origin, scale.perMm));
}

}  // namespace kerfwall
