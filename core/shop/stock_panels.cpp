// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/stock_panels.h"

#include <cmath>
#include <tuple>
#include <utility>

#include "core/says/length_text.h"
#include "core/shop/limits.h"

namespace kerfwall {
namespace {

// As the project file has them, mm.
constexpr double kLeastSide = 10, kMostSide = 3000;
constexpr double kLeastThickness = 3, kMostThickness = 60;

bool holds(const StockPanel& panel, const Blank& blank) {
    return panel.width >= blank.width - kOnLimit && panel.height >= blank.height - kOnLimit;
}

StockPanel turned(StockPanel panel) {
    std::swap(panel.width, panel.height);
    return panel;
}

}  // namespace

bool isPanelSize(const StockPanel& panel) {
    const auto isSide = [](double mm) { return mm >= kLeastSide && mm <= kMostSide; };
    return isSide(panel.width) && isSide(panel.height) && panel.thickness >= kLeastThickness && panel.thickness <= kMostThickness;
}

std::optional<StockPanel> smallestHolding(const std::vector<StockPanel>& rack, const Blank& blank) {
    const auto rank = [](const StockPanel& panel) { return std::tuple(panel.width * panel.height, panel.thickness); };
    std::optional<StockPanel> best;
    for (const StockPanel& panel : rack) {
        for (const StockPanel& laid : {panel, turned(panel)}) {
            if (holds(laid, blank) && (!best || rank(laid) < rank(*best))) best = laid;
        }
    }
    return best;
}

Blank roundedUp(const Blank& blank, Units units) {
    const double step = units == Units::Inches ? kMillimetresPerInch / 2 : kBlankStep;
    const auto up = [step](double mm) { return std::ceil(mm / step - kOnLimit) * step; };
    return {up(blank.width), up(blank.height)};
}

Project onPanel(const Project& project, const StockPanel& panel) {
    Project next = project;
    next.panel.width = panel.width;
    next.panel.height = panel.height;
    next.panel.thickness = panel.thickness;
    if (next.kerfDepth && *next.kerfDepth >= panel.thickness) next.kerfDepth.reset();
    return next;
}

bool isPanelFree(const Project& project) {
    return project.lines.empty() && project.cutouts.empty() && project.clampHoles.empty() && project.fences.empty();
}

}  // namespace kerfwall
