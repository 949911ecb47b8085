// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>

#include "core/drawing/drawing.h"

namespace kerfwall {

/// A drawing of the panel frame as SVG, one user unit a millimetre, as large as the panel: x right and y
/// down from the panel's top-left corner. Groups `lines`, `kerfs`, `template`, `work`, `marks`; each
/// layout line one <line> whose id is the line's (with "line-" before it where a group has that name).
[[nodiscard]] QByteArray svgOf(const Drawing& drawing, double width, double height, const QString& title);

}  // namespace kerfwall
