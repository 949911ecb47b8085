// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/use_of.h"

#include <algorithm>

namespace kerfwall {
namespace {

/// The band below the layout face in which bush or bearing rides.
void placeBand(UseAnswer& use, const Project& project) {
    const double thickness = project.panel.thickness;
    const double size = std::min(use.guideLength, thickness);
    const BearingAt at = project.use.bearingAt.value_or(trimBitOf(project).bearingAt);
    const bool nextToWork = !project.use.byBush && at == BearingAt::Tip;
    const bool fromLayoutFace = use.againstWork == Face::Back && !nextToWork;
    use.bandFrom = fromLayoutFace ? 0 : thickness - size;
    use.bandTo = fromLayoutFace ? size : thickness;
}

void decideRides(UseAnswer& use, const Project& project) {
    const double depth = kerfDepthOf(project);
    const std::string guide = project.use.byBush ? "the bush" : "the bearing";
    if (project.use.inKerfs) {
        use.rides = *project.use.inKerfs ? Rides::Kerfs : Rides::Clear;
        use.why = *project.use.inKerfs ? "the project says that " + guide + " rides at the kerfs' height"
                                       : "the project says that " + guide + " rides clear of the kerfs";
        return;
    }
    if (use.againstWork == Face::Layout || use.bandFrom >= depth) {
        use.rides = Rides::Clear;
        use.why = guide + " rides below the kerfs, on the trimmed wall alone";
    } else if (use.bandTo <= depth) {
        use.rides = Rides::Kerfs;
        use.why = "the whole length of " + guide + " lies within the kerfs' depth, so it meets their mouths again";
    } else {
        use.rides = Rides::Both;
        use.why = guide + " reaches past the kerfs and is held by the trimmed wall below them";
    }
}

}  // namespace

UseAnswer useOf(const Project& project) {
    const Use& said = project.use;
    const TrimBit trim = trimBitOf(project);
    UseAnswer use;
    use.cutter = said.bit.value_or(trim.diameter);
    use.guide = said.byBush ? said.bush.value_or(use.cutter) : said.bearing.value_or(use.cutter);
    use.guideLength = said.byBush ? said.bushLength : trim.bearingLength;
    const bool layoutOnWork = said.byBush || said.router == Router::Hand;
    use.againstWork = said.againstWork.value_or(layoutOnWork ? Face::Layout : Face::Back);
    placeBand(use, project);
    decideRides(use, project);
    return use;
}

}  // namespace kerfwall
