// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>

#include "core/geometry/point.h"

namespace kerfwall {

/// How millimetres of the panel frame lie on the screen: y up there, down here.
struct ViewScale {
    double perMm = 1;      ///< pixels for 1 mm
    QPointF origin;        ///< where the panel's bottom-left corner lies, pixels
    bool operator==(const ViewScale&) const = default;

    /// mm of the panel for one mm on the screen, at 96 pixels an inch. (W3C CSS Values 3)
    double markScale() const { return 96 / 25.4 / perMm; }
    QPointF toScreen(Point place) const { return {origin.x() + place.x * perMm, origin.y() - place.y * perMm}; }
    Point toPanel(QPointF pixel) const { return {(pixel.x() - origin.x()) / perMm, (origin.y() - pixel.y()) / perMm}; }
};

}  // namespace kerfwall
