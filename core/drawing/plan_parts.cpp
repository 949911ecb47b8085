// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/plan_parts.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/edge_place.h"
#include "core/geometry/kerf_band.h"

namespace kerfwall {
namespace {

void addOutlinedKerf(Drawing& drawing, const Panel& panel, const SolvedLine& line, const Kerf& kerf) {
    const Point along = unit(line.to - line.from);
    const Point far = line.from + kerf.width * kerfSide(line, kerf);
    // The far side runs on past the clipped band's corners where the line meets the edge askew.
    const std::vector<Point> band = kerfBand(panel, line, kerf, kerf.fullFrom, kerf.fullTo);
    double low = INFINITY;
    double high = -INFINITY;
    for (const Point place : band) {
        if (std::abs(cross(along, place - far)) > 1e-6 * std::max(1.0, kerf.width)) continue;
        low = std::min(low, dot(along, place - far));
        high = std::max(high, dot(along, place - far));
    }
    if (low < high) {
        drawing.marks.emplace_back(Stroke{Ink::KerfBand, far + low * along, far + high * along, line.id});
    }
}

void addRunOut(Drawing& drawing, const Panel& panel, const SolvedLine& line, const Kerf& kerf, double from,
               double to) {
    if (!(to > from)) return;
    const std::vector<Point> band = kerfBand(panel, line, kerf, from, to);
    if (band.size() > 2) drawing.marks.emplace_back(Area{Ink::RunOut, {polygonLoop(band)}, line.id});
}

}  // namespace

Run edgeRun(const Panel& panel, Edge edge) {
    return {markPlace(panel, {edge, 0}), edgeHeading(edge), edgeLength(panel, edge)};
}

OutlineLoop rectangleLoop(Point low, Point high) {
    return polygonLoop({low, {high.x, low.y}, high, {low.x, high.y}});
}

void addKerfs(Drawing& drawing, const Project& project, const Solved& solved, const PlanLayers& layers) {
    for (const SolvedLine& line : solved.lines) {
        for (const Kerf& kerf : line.kerfs) {
            if (layers.fills) {
                const std::vector<Point> band =
                    kerfBand(project.panel, line, kerf, kerf.fullFrom, kerf.fullTo);
                if (band.size() > 2)
                    drawing.marks.emplace_back(Area{Ink::KerfBand, {polygonLoop(band)}, line.id});
            } else {
                addOutlinedKerf(drawing, project.panel, line, kerf);
            }
            if (!layers.runOut || !kerf.stopped) continue;
            addRunOut(drawing, project.panel, line, kerf, kerf.surfaceFrom, kerf.fullFrom);
            addRunOut(drawing, project.panel, line, kerf, kerf.fullTo, kerf.surfaceTo);
        }
    }
}

void addOpenings(Drawing& drawing, const Solved& solved) {
    for (const SolvedCutout& cutout : solved.cutouts) {
        const bool opened = !cutout.opening.loops.empty();
        if (opened) {
            drawing.marks.emplace_back(Area{Ink::Template, cutout.opening.loops, cutout.id});
        } else if (!cutout.drawn.loops.empty()) {
            drawing.marks.emplace_back(Area{Ink::DrawnCutout, cutout.drawn.loops, cutout.id});
        }
    }
}

void addWork(Drawing& drawing, const Project& project, const Solved& solved, const PlanLayers& layers) {
    if (layers.workpiece && project.workpiece) {
        if (project.workpiece->outline.size() > 2) {
            drawing.marks.emplace_back(
                Area{Ink::Workpiece, {polygonLoop(project.workpiece->outline)}, "workpiece"});
        }
        for (const WorkPart& part : project.workpiece->parts) {
            if (part.outline.size() < 3) continue;
            drawing.marks.emplace_back(Area{Ink::Workpiece, {polygonLoop(part.outline)}, "workpiece"});
        }
    }
    if (!layers.work) return;
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (cutout.work.loops.empty()) continue;
        drawing.marks.emplace_back(Area{Ink::Work, cutout.work.loops, cutout.id});
    }
}

void addSigns(Drawing& drawing, const std::vector<Finding>& findings) {
    for (std::size_t i = findings.size(); i-- > 0;) {  // the gravest last, so that it lies on top
        const Finding& finding = findings[i];
        if (!finding.at) continue;
        const Ink ink = finding.severity == Severity::Stop   ? Ink::FindingStop
                        : finding.severity == Severity::Care ? Ink::FindingCare
                                                             : Ink::FindingNote;
        drawing.marks.emplace_back(Circle{ink, *finding.at, 0, std::to_string(i + 1)});
    }
}

}  // namespace kerfwall
