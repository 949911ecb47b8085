// SPDX-License-Identifier: GPL-3.0-or-later
// Remedies for a fence on the face that does not go to the work; declared in remedy_ways.h.
#include "core/shop/finding_words.h"
#include "core/shop/remedy_ways.h"

namespace kerfwall {
namespace {

const char* faceWords(Face face) { return face == Face::Back ? "the back" : "the layout face"; }

}  // namespace

std::vector<Way> faceWays(const Minded& minded) {
    if (minded.finding.code != "fence-side" || !minded.finding.fence) return {};
    const Fence& fence = minded.project.fences[*minded.finding.fence];
    const Face toWork = minded.solved.use.againstWork;
    const std::string name = (fence.kind == FenceKind::Stop ? "stop " : "fence ") + std::to_string(*minded.finding.fence + 1);
    const std::string high = lengthWords(minded.project, fence.height) + " high";
    Change fixed{"Fix " + name + ", " + high + ", to " + faceWords(toWork), minded.project};
    fixed.project.fences[*minded.finding.fence].face = toWork;
    Change laid{std::string("Lay ") + faceWords(fence.face) + " on the work, where " + name + " stands, " + high,
                minded.project};
    laid.project.use.againstWork = fence.face;
    return {{std::move(fixed)}, {std::move(laid)}};
}

}  // namespace kerfwall
