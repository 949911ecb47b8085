// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/picking.h"

#include <algorithm>

#include "core/geometry/clip.h"
#include "core/geometry/curve.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/face_seeds.h"
#include "core/geometry/fence_place.h"
#include "core/geometry/nearest.h"

namespace kerfwall {
namespace {

using Corners = std::vector<Point>;

std::vector<Corners> workpieceCorners(const Project& project) {
    std::vector<Corners> outlines;
    if (!project.workpiece) return outlines;
    if (project.workpiece->outline.size() > 2) outlines.push_back(project.workpiece->outline);
    for (const WorkPart& part : project.workpiece->parts) {
        if (part.outline.size() > 2) outlines.push_back(part.outline);
    }
    return outlines;
}

bool isOnBorder(const Corners& corners, Point place, double reach) {
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Curve side = straight(corners[i], corners[(i + 1) % corners.size()]);
        if (side.size > 0 && distanceTo(side, place) <= reach) return true;
    }
    return false;
}

/// Inside a convex polygon, whichever way it runs: a fence's runs as its body lies.
bool isWithin(Corners corners, Point place) {
    if (polygonArea(corners) < 0) std::ranges::reverse(corners);
    return isInFace(corners, place);
}

bool isInBox(const Box& box, Point place) {
    return place.x >= box.low.x && place.x <= box.high.x && place.y >= box.low.y && place.y <= box.high.y;
}

bool areInBox(const Box& box, const Corners& corners) {
    return !corners.empty() && std::ranges::all_of(corners, [&](Point corner) { return isInBox(box, corner); });
}

/// The band's part on either side of the line: both are there where the line crosses it.
bool crosses(const SolvedLine& line, const Box& box) {
    if (isInBox(box, line.from) || isInBox(box, line.to)) return true;
    const Corners band{box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
    const Corners left = leftPart(band, line.from, line.to);
    const Corners right = leftPart(band, line.to, line.from);
    if (left.size() < 3 || right.size() < 3) return false;
    const Point along = unit(line.to - line.from);
    // The endless line crosses; a band off the panel lies before or behind its run.
    const auto isBehind = [&](Point corner) { return dot(corner - line.from, along) < 0; };
    const auto isBefore = [&](Point corner) { return dot(corner - line.to, along) > 0; };
    return !std::ranges::all_of(band, isBehind) && !std::ranges::all_of(band, isBefore);
}

Corners boxCorners(const Box& box) {
    return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
}

const SolvedCutout* findCutout(const Solved& solved, const std::string& id) {
    const auto found = std::ranges::find(solved.cutouts, id, &SolvedCutout::id);
    return found == solved.cutouts.end() ? nullptr : &*found;
}

}  // namespace

std::vector<Point> holeCorners(const Panel& panel, const ClampHole& hole) {
    const Point mouth = markPlace(panel, {hole.edge, hole.at});
    const Point half = hole.diameter / 2 * edgeHeading(hole.edge);
    const Point deep = hole.depth * leftOf(edgeHeading(hole.edge));
    return {mouth - half, mouth + half, mouth + half + deep, mouth - half + deep};
}

Picked thingAt(const Project& project, const Solved& solved, Point place, double reach) {
    if (const auto line = lineNear(solved, place, reach)) return onlyLine(line->id);
    if (const auto hole = holeNear(project, place, reach)) return onlyHole(*hole);
    for (std::size_t i = 0; i < project.fences.size(); ++i) {
        const Corners body = fenceBody(project, solved, project.fences[i]);
        if (body.empty()) continue;
        if (isOnBorder(body, place, reach) || isWithin(body, place)) return onlyFence(i);
    }
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (isInside(cutout.drawn, place)) return onlyCutout(cutout.id);
    }
    for (const Corners& corners : workpieceCorners(project)) {
        if (isOnBorder(corners, place, reach)) return onlyWorkpiece();
    }
    return {};
}

Picked thingsInBand(const Project& project, const Solved& solved, Point from, Point to) {
    const Box band{{std::min(from.x, to.x), std::min(from.y, to.y)}, {std::max(from.x, to.x), std::max(from.y, to.y)}};
    Picked picked;
    for (const SolvedLine& line : solved.lines) {
        if (crosses(line, band)) picked.lines.push_back(line.id);
    }
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (areInBox(band, boxCorners(cutout.drawn.bounds))) picked.cutouts.push_back(cutout.id);
    }
    for (std::size_t i = 0; i < project.clampHoles.size(); ++i) {
        if (areInBox(band, holeCorners(project.panel, project.clampHoles[i]))) picked.holes.push_back(i);
    }
    for (std::size_t i = 0; i < project.fences.size(); ++i) {
        if (areInBox(band, fenceBody(project, solved, project.fences[i]))) picked.fences.push_back(i);
    }
    const std::vector<Corners> work = workpieceCorners(project);
    picked.workpiece = !work.empty() && std::ranges::all_of(work, [&](const Corners& corners) { return areInBox(band, corners); });
    return picked;
}

std::vector<Picked> thingsOf(const Project& project, const Solved& solved) {
    std::vector<Picked> things;
    for (const LayoutLine& line : project.lines) things.push_back(onlyLine(line.id));
    for (std::size_t i = 0; i < project.clampHoles.size(); ++i) things.push_back(onlyHole(i));
    for (std::size_t i = 0; i < project.fences.size(); ++i) things.push_back(onlyFence(i));
    for (const SolvedCutout& cutout : solved.cutouts) things.push_back(onlyCutout(cutout.id));
    if (project.workpiece) things.push_back(onlyWorkpiece());
    return things;
}

Picked everythingOf(const Project& project, const Solved& solved) {
    Picked all;
    for (const Picked& thing : thingsOf(project, solved)) all = with(std::move(all), thing);
    return all;
}

Picked stillThere(const Project& project, Picked picked) {
    std::erase_if(picked.lines, [&](const LineId& id) { return !findLine(project, id); });
    std::erase_if(picked.cutouts, [&](const std::string& id) {
        return std::ranges::find(project.cutouts, id, &Cutout::id) == project.cutouts.end();
    });
    std::erase_if(picked.holes, [&](std::size_t hole) { return hole >= project.clampHoles.size(); });
    std::erase_if(picked.fences, [&](std::size_t fence) { return fence >= project.fences.size(); });
    picked.workpiece = picked.workpiece && project.workpiece;
    return picked;
}

std::vector<std::vector<Point>> outlinesOf(const Project& project, const Solved& solved, const Picked& picked) {
    std::vector<Corners> outlines;
    for (const LineId& id : picked.lines) {
        if (const auto run = runOf(solved, id)) outlines.push_back({run->first, run->second});
    }
    for (const std::string& id : picked.cutouts) {
        const SolvedCutout* cutout = findCutout(solved, id);
        if (cutout) outlines.insert(outlines.end(), cutout->faces.begin(), cutout->faces.end());
    }
    for (const std::size_t hole : picked.holes) {
        if (hole < project.clampHoles.size()) outlines.push_back(holeCorners(project.panel, project.clampHoles[hole]));
    }
    for (const std::size_t fence : picked.fences) {
        if (fence < project.fences.size()) outlines.push_back(fenceBody(project, solved, project.fences[fence]));
    }
    if (picked.workpiece) {
        for (Corners& corners : workpieceCorners(project)) outlines.push_back(std::move(corners));
    }
    return outlines;
}

Box boundsOf(const Project& project, const Solved& solved, const Picked& picked) {
    Corners all;
    for (const Corners& corners : outlinesOf(project, solved, picked)) all.insert(all.end(), corners.begin(), corners.end());
    return all.empty() ? Box{} : boundsOf(all);
}

}  // namespace kerfwall
