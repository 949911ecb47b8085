// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/fence_section.h"

#include "core/drawing/hatch.h"
#include "core/geometry/fence_place.h"

namespace kerfwall {

std::vector<FenceSection> fenceSections(const Project& project, const Solved& solved,
                                        const CuttingLine& cut) {
    std::vector<FenceSection> sections;
    const double thickness = project.panel.thickness;
    for (std::size_t i = 0; i < project.fences.size(); ++i) {
        const Fence& fence = project.fences[i];
        const std::vector<Point> body = fenceBody(project, solved, fence);
        if (body.empty()) continue;
        const std::vector<double> at =
            crossings({polygonLoop(body)}, onCut(cut, 0), cutHeading(cut.direction));
        if (at.size() < 2) continue;
        const bool above = fence.face == Face::Layout;
        sections.push_back({i, at.front(), at.back(), above ? -fence.height : thickness - fence.groove,
                            above ? fence.groove : thickness + fence.height});
    }
    return sections;
}

}  // namespace kerfwall
