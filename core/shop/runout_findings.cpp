// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/run_out.h"

namespace kerfwall {
namespace {

Finding runout(const Project& project, const RunOut& end, const RunOutMet& met) {
    Finding finding;
    finding.code = "runout";
    finding.severity = met.severity;
    finding.at = end.line.from + (end.full + end.way * met.room) * unit(end.line.to - end.line.from);
    finding.lines = {end.line.id};
    if (!met.wall.empty()) {
        finding.lines.push_back(met.wall);
    }
    finding.cutout = met.cutout;
    finding.hole = met.hole;
    finding.value = end.surface;
    finding.limit = met.room;
    finding.unit = "mm";
    const double depth = end.kerf.depth;
    const double blade = met.room * met.room / depth + depth;
    finding.text = "The stopped kerf of " + end.line.id + " runs out over " +
                   lengthWords(project, end.surface) + " and meets " + met.what + "; there is room for " +
                   lengthWords(project, met.room) + ". Stop it " +
                   atLeastWords(project, end.surface - met.room) + " earlier and finish the wall by hand";
    finding.text += blade >= 80 ? ", or take a blade of " + atMostWords(project, blade) + " or less." : ".";
    return finding;
}

}  // namespace

std::vector<Finding> runoutFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    for (const SolvedLine& line : solved.lines) {
        for (const Kerf& kerf : line.kerfs) {
            for (const RunOut& end : runOutsOf(line, kerf)) {
                if (const auto met = metBy(project, solved, end)) {
                    all.push_back(runout(project, end, *met));
                }
            }
        }
    }
    return all;
}

}  // namespace kerfwall
