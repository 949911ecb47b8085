// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QRectF>
#include <vector>

#include "core/shop/finding.h"
#include "ui/painter.h"

namespace kerfwall {

/// The plan and the side view under it, on one horizontal scale, with their titles and the projection
/// symbol: as the setup sheet and the picture show them.
struct TwoViews {
    Drawing plan;
    Drawing side;
    View planView;
    View sideView;
    QRectF frame;             ///< as far as they need it
    double exaggeration = 1;  ///< of the side view's heights
    double scale = 1;         ///< true millimetres for one mm on paper
    double cutHeight = 0;     ///< y of the cutting line
};

/// Lays both views out in `frame`, as large as they fit. `unit`: device units for one mm of line width
/// and text. Requires  a frame wide and high enough for the titles.
[[nodiscard]] TwoViews twoViews(const Project& project, const Solved& solved,
                                const std::vector<Finding>& findings, const QRectF& frame, double unit);

void paintTwoViews(QPainter& painter, const TwoViews& views, const Palette& palette);

/// The height at which the side view cuts: through the widest place of the first cutout that is open
/// there, else the middle of the panel. mm.
[[nodiscard]] double cutHeight(const Project& project, const Solved& solved);

}  // namespace kerfwall
