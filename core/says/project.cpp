// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/project.h"

#include <algorithm>

namespace kerfwall {

const Bench& benchOf(const Project& project) {
    static const Bench stock = stockBench();
    return project.bench ? *project.bench : stock;
}

TrimBit trimBitOf(const Project& project) { return benchOf(project).trimBit.value_or(TrimBit{}); }

double kerfDepthOf(const Project& project) {
    if (project.kerfDepth) {
        return *project.kerfDepth;
    }
    // The bearing needs its own length of wall and a little more; thin panels allow half of theirs.
    const double needed = std::max(5.0, trimBitOf(project).bearingLength + 1);
    return std::min(project.panel.thickness / 2, needed);
}

const LayoutLine* findLine(const Project& project, const LineId& id) {
    const auto found = std::ranges::find(project.lines, id, &LayoutLine::id);
    return found == project.lines.end() ? nullptr : &*found;
}

}  // namespace kerfwall
