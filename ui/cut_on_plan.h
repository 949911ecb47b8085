// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSize>
#include <optional>

#include "core/drawing/cutting_line.h"
#include "ui/view_scale.h"

class QPainter;

namespace kerfwall {

class Session;

/// The cutting lines of the side views that are shown, with their handles at the panel's rim and arrows the way
/// one looks.
void paintCuts(QPainter& painter, const Session& session, const ViewScale& scale);

/// Thin lines from the plan towards that side view: the panel's sides, and where walls are cut. `plan`: the size
/// of the plan's widget.
void paintProjection(QPainter& painter, const Session& session, const ViewScale& scale, CutDirection to, QSize plan);

/// The cutting line whose handle lies under the pointer.
[[nodiscard]] std::optional<CutDirection> cutHandleAt(const Session& session, const ViewScale& scale, QPointF pixel);

}  // namespace kerfwall
