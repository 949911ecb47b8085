// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/fence_place.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"

namespace kerfwall {
namespace {

const char* faceWords(Face face) { return face == Face::Back ? "the back" : "the layout face"; }

std::optional<Finding> wrongFace(const Project& project, const Solved& solved, std::size_t index) {
    const Fence& fence = project.fences[index];
    const Face toWork = solved.use.againstWork;
    if (fence.face == toWork) return std::nullopt;
    Finding finding;
    finding.code = "fence-side";
    finding.severity = Severity::Stop;
    finding.fence = index;
    finding.at = fenceMiddle(project, solved, fence);
    if (const LineId* line = std::get_if<LineId>(&fence.along)) finding.lines = {*line};
    finding.text = std::string(fence.kind == FenceKind::Stop ? "Stop " : "Fence ") + std::to_string(index + 1) + ", " +
                   lengthWords(project, fence.height) + " high, stands on " + faceWords(fence.face) + ", but " +
                   faceWords(toWork) + " goes to the work. Fix it to " + faceWords(toWork) + ", or lay " +
                   faceWords(fence.face) + " on the work.";
    return finding;
}

}  // namespace

std::vector<Finding> fenceFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    for (std::size_t i = 0; i < project.fences.size(); ++i) addFinding(all, wrongFace(project, solved, i));
    return all;
}

}  // namespace kerfwall
