// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QPainterPath>
#include <QPointF>
#include <vector>

#include "core/drawing/drawing.h"
#include "ui/palette.h"

namespace kerfwall {

/// Where a drawing lies on a painter and how large its line widths, dashes and texts are.
/// Device units are the painter's logical units, y down.
struct View {
    QPointF origin;        ///< device place of the drawing's (0, 0)
    double perMmX = 1;     ///< device units for one mm of the drawing along x, > 0
    double perMmY = 1;     ///< ... and along y
    double paperMm = 1;    ///< device units for one mm of line width, dash, sign and text
    double textScale = 1;  ///< larger or smaller texts
    bool screen = false;   ///< wide lines 2 units, narrow 1; text in whole units
    double lineScale = 1;  ///< thinner lines on paper: wide and narrow alike
    [[nodiscard]] QPointF toDevice(Point place) const {
        return {origin.x() + place.x * perMmX, origin.y() - place.y * perMmY};
    }
    [[nodiscard]] Point toDrawing(QPointF place) const {
        return {(place.x() - origin.x()) / perMmX, (origin.y() - place.y()) / perMmY};
    }
};

/// A view of a screen: `perMm` pixels for a mm of the drawing, 3.78 pixels for a mm of text and dash.
/// Source    1 in = 96 px (W3C CSS Values 3).
[[nodiscard]] View screenView(QPointF origin, double perMm, double textScale = 1);

/// A view of a page whose painter counts in mm: full size, times the printer's correction.
[[nodiscard]] View paperView(QPointF origin, double scaleX = 1, double scaleY = 1);

/// Paints a drawing. The one painting function behind the screen, the PDF and the picture.
/// Line types    ISO 128: wide 0.7, narrow 0.35 mm on paper; 2 : 1 on the screen.
/// Gives         arcs within 5 µm of the true arc for radii up to 13 m.
void paintDrawing(QPainter& painter, const Drawing& drawing, const Palette& palette, const View& view);

/// Loops as a path in device units, arcs as cubics; even-odd.
[[nodiscard]] QPainterPath pathOf(const std::vector<OutlineLoop>& loops, const View& view);

/// A run of pieces as a path in device units, left open where it does not close.
[[nodiscard]] QPainterPath runPath(const OutlineLoop& run, const View& view);

/// The sign of a finding: a filled square (stop), a triangle (care), a ring (note), about `size` device
/// units high, with a number or letter in it.
void paintSign(QPainter& painter, QPointF centre, double size, Severity severity, const QString& text,
               const Palette& palette);

/// A pen for a thin line that ends where it is told to.
[[nodiscard]] QPen thinPen(const QColor& colour, double width);

}  // namespace kerfwall
