// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>

#include "ui/tool.h"
#include "ui/view_scale.h"

namespace kerfwall {

/// Paints what a line in hand holds on to: the lines and edges meant, dashed, and a small open square on its corner at each place.
void paintHolds(QPainter& painter, const ViewScale& scale, const InHand& shown);

}  // namespace kerfwall
