// SPDX-License-Identifier: GPL-3.0-or-later
// Remedies for an edge that is not said to be true; declared in remedy_ways.h.
#include "core/geometry/edge_place.h"
#include "core/says/line_names.h"
#include "core/shop/finding_words.h"
#include "core/shop/heading.h"
#include "core/shop/measured_edge.h"
#include "core/shop/remedy_ways.h"
#include "core/shop/step_text.h"

namespace kerfwall {
namespace {

/// A line laid by a distance from an edge that may not be measured from, laid from the one opposite. It runs the other
/// way then, so nothing may hang on it.
Way fromOtherEdge(const Minded& minded) {
    const LineId& id = minded.finding.lines.front();
    const LayoutLine* line = findLine(minded.project, id);
    const ByOffset* offset = line ? std::get_if<ByOffset>(&line->place) : nullptr;
    const Edge* from = offset ? std::get_if<Edge>(&offset->from) : nullptr;
    const Panel& panel = minded.project.panel;
    if (!from || isMeasuredFrom(panel, *from) || !isMeasuredFrom(panel, oppositeOf(*from)) ||
        !linesLaidFrom(minded.project, id).empty()) {
        return {};
    }
    const Edge other = oppositeOf(*from);
    const double distance = edgeLength(panel, nextOf(*from)) - offset->distance;
    Change change{"Lay " + id + " " + lengthWords(minded.project, distance) + " from the " + edgeWord(other) + " edge",
                  minded.project};
    for (LayoutLine& each : change.project.lines) {
        if (each.id == id) each.place = ByOffset{other, distance};
    }
    return {std::move(change)};
}

Change saidTrue(const Minded& minded, SquareCorner corner, const std::string& which) {
    Change change{"True " + which + " to 90° and say so", minded.project};
    change.project.panel.squareCorner = corner;
    return change;
}

/// One more corner said to be true, or all four.
std::vector<Way> trued(const Minded& minded) {
    const Panel& panel = minded.project.panel;
    const Edge reference = panel.referenceEdge;
    const auto corner = [&](Edge end) { return "the " + cornerWord(reference, end); };
    const std::string start = corner(previousOf(reference)), end = corner(nextOf(reference));
    std::vector<Way> ways;
    switch (panel.squareCorner) {
        case SquareCorner::None:
            ways.push_back({saidTrue(minded, SquareCorner::Start, start), saidTrue(minded, SquareCorner::End, end)});
            break;
        case SquareCorner::Start:
            ways.push_back({saidTrue(minded, SquareCorner::Both, end)});
            break;
        case SquareCorner::End:
            ways.push_back({saidTrue(minded, SquareCorner::Both, start)});
            break;
        case SquareCorner::Both:
        case SquareCorner::All:
            break;
    }
    const std::string size = lengthWords(minded.project, panel.width) + " × " + lengthWords(minded.project, panel.height);
    ways.push_back({saidTrue(minded, SquareCorner::All, "all four corners of the panel, " + size + ",")});
    return ways;
}

}  // namespace

std::vector<Way> edgeWays(const Minded& minded) {
    const bool isBeyond = minded.finding.code == "bench-limit";
    if ((minded.finding.code != "edge-untrue" && !isBeyond) || minded.finding.lines.empty()) return {};
    std::vector<Way> ways;
    if (!isBeyond) ways.push_back(fromOtherEdge(minded));
    for (Way& way : trued(minded)) ways.push_back(std::move(way));
    return ways;
}

}  // namespace kerfwall
