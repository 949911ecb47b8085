// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QPainterPath>
#include <QRectF>
#include <QString>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// A small picture of the template with a bar of its scale, laid out in mm on paper.
struct LabelOutline {
    QRectF panel;
    QPainterPath openings;
    std::vector<std::pair<QPointF, QString>> names;  ///< of several cutouts
    QLineF bar;
    QString barText;
};

/// The template and its bar in `frame`, as large as they fit, at its top. The bar is 1, 2 or 5 times a power of ten long,
/// in the project's units, as long as the panel is wide or shorter.
[[nodiscard]] LabelOutline labelOutline(const Project& project, const Solved& solved, const QRectF& frame);

void paintLabelOutline(QPainter& painter, const LabelOutline& outline);

/// The longest of 1, 2 and 5 times a power of ten that is not longer than `most`. Requires  most > 0.
[[nodiscard]] double roundLength(double most);

}  // namespace kerfwall
