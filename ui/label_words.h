// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "core/geometry/solved.h"
#include "core/shop/finding.h"

namespace kerfwall {

/// What the label of a finished template says, before it is laid out. Lengths in the project's units.
struct LabelWords {
    QString title;
    QStringList work;   ///< for each cutout what it cuts in the work
    QStringList facts;  ///< bush or bearing, cutters in turn, bearing band, the face on the work, the panel
    bool keepsSide = false;  ///< hand-held: the side of the router that is to stay towards the one who works is written in
    bool unsure = false;
};

[[nodiscard]] LabelWords labelWords(const Project& project, const Solved& solved, const std::vector<Finding>& findings);

}  // namespace kerfwall
