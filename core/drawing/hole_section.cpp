// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/hole_section.h"

#include <algorithm>
#include <cmath>

#include "core/shop/panel_edges.h"

namespace kerfwall {
namespace {

using Into = HoleBreak::Into;
using Kind = SectionRun::Kind;

struct Stretch {
    double from = 0;
    double to = 0;
};

/// Where the bore stands out of the panel, above its layout face or below its back.
void addFaceBreaks(HoleSection& shown, const Stretch& over, double thickness) {
    const double top = shown.axis - shown.half;
    const double bottom = shown.axis + shown.half;
    if (top < 0) shown.breaks.push_back({Into::Face, over.from, over.to, top, std::min(0.0, bottom)});
    if (bottom > thickness) {
        shown.breaks.push_back({Into::Face, over.from, over.to, std::max(thickness, top), bottom});
    }
}

void addVoidBreaks(HoleSection& shown, const Stretch& over, const std::vector<SectionRun>& runs) {
    const double top = shown.axis - shown.half;
    const double bottom = shown.axis + shown.half;
    for (const SectionRun& run : runs) {
        const double from = std::max(run.from, over.from);
        const double to = std::min(run.to, over.to);
        if (!(to > from)) continue;
        if (run.kind == Kind::Opening) shown.breaks.push_back({Into::Opening, from, to, top, bottom});
        if (run.kind == Kind::Kerf && run.depth > top) {
            shown.breaks.push_back({Into::Kerf, from, to, top, std::min(run.depth, bottom)});
        }
    }
}

HoleSection lyingSection(const Project& project, const Solved& solved, const OutlinePiece& axis,
                         double radius, const CuttingLine& cut, HoleSection shown) {
    const double aside = std::abs(beyondCut(cut, axis.from));
    shown.lying = true;
    shown.cut = aside < radius;
    shown.mouth = alongCut(cut, axis.from);
    shown.point = alongCut(cut, axis.to);
    shown.half = shown.cut ? std::sqrt((radius - aside) * (radius + aside)) : radius;
    const Stretch over{std::min(shown.mouth, shown.point), std::max(shown.mouth, shown.point)};
    const CuttingLine plane = shown.cut ? cut : cutThrough(project.panel, cut.direction, axis.from);
    addFaceBreaks(shown, over, project.panel.thickness);
    addVoidBreaks(shown, over, sectionAt(project, solved, plane));
    return shown;
}

HoleSection endOnSection(const Project& project, const Solved& solved, const OutlinePiece& axis,
                         double radius, const CuttingLine& cut, HoleSection shown) {
    shown.mouth = shown.point = alongCut(cut, axis.from);
    shown.half = radius;
    const double first = beyondCut(cut, axis.from);
    const double last = beyondCut(cut, axis.to);
    shown.cut = std::min(first, last) <= 0 && std::max(first, last) >= 0;
    const Stretch over{shown.mouth - radius, shown.mouth + radius};
    addFaceBreaks(shown, over, project.panel.thickness);
    if (shown.cut) addVoidBreaks(shown, over, sectionAt(project, solved, cut));
    return shown;
}

}  // namespace

HoleSection holeSection(const Project& project, const Solved& solved, const ClampHole& hole,
                        const CuttingLine& cut) {
    const OutlinePiece axis = axisOf(project.panel, hole);
    HoleSection shown;
    shown.axis = heightOf(project.panel, hole);
    const bool fromSide = hole.edge == Edge::Left || hole.edge == Edge::Right;
    const bool lying = fromSide == (cut.direction == CutDirection::Level);
    return lying ? lyingSection(project, solved, axis, hole.diameter / 2, cut, shown)
                 : endOnSection(project, solved, axis, hole.diameter / 2, cut, shown);
}

}  // namespace kerfwall
