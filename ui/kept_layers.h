// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

#include "core/drawing/plan_drawing.h"

namespace kerfwall {

/// A layer of the plan that can be shown or hidden.
struct LayerChoice {
    bool PlanLayers::*layer;
    QString key;   ///< what it is kept under, and the name of its menu entry
    QString text;
};

/// In the order of the menu.
[[nodiscard]] std::vector<LayerChoice> layerChoices();

/// The layers as they were left the last time; all of them at first.
[[nodiscard]] PlanLayers keptLayers();
void keepLayers(const PlanLayers& layers);

}  // namespace kerfwall
