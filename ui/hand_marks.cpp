// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hand_marks.h"

#include "ui/screen_painting.h"

namespace kerfwall {
namespace {

constexpr double kHoldHalf = 7;  // pixels: from the middle to a corner of the open square, clear of the spot inside

}  // namespace

void paintHolds(QPainter& painter, const ViewScale& scale, const InHand& shown) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(drawingColours().tool, 1.5, Qt::DashLine));
    for (const auto& [from, to] : shown.references) painter.drawLine(scale.toScreen(from), scale.toScreen(to));
    painter.setPen(QPen(drawingColours().tool, 1.5));
    for (const Point at : shown.holds) {
        const QPointF centre = scale.toScreen(at);
        painter.drawPolygon(QPolygonF({centre + QPointF(0, -kHoldHalf), centre + QPointF(kHoldHalf, 0),
                                       centre + QPointF(0, kHoldHalf), centre + QPointF(-kHoldHalf, 0)}));
    }
}

}  // namespace kerfwall
