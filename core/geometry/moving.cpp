// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/moving.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/clip.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/mirror_image.h"
#include "core/geometry/motion.h"
#include "core/geometry/whole_step.h"

namespace kerfwall {
namespace {

constexpr double kLongestId = 6;   // letters; beyond it an id is a name, not a number
constexpr double kAlongEdge = 1e-9;  // sine under which a line runs along an edge

LayoutLine* lineIn(Project& project, const LineId& id) {
    const auto found = std::ranges::find(project.lines, id, &LayoutLine::id);
    return found == project.lines.end() ? nullptr : &*found;
}

/// A mark pushed along its edge until the line through it lies `shift` further.
EdgeMark pushed(const Panel& panel, EdgeMark mark, Point shift, Point heading, double step) {
    const Point edge = edgeHeading(mark.edge);
    const double lean = cross(heading, edge);
    if (std::abs(lean) < kAlongEdge) return mark;
    const double at = mark.at + cross(heading, shift) / lean;
    return {mark.edge, std::clamp(stepped(at, step), 0.0, edgeLength(panel, mark.edge))};
}

/// Where a line runs, or would run.
struct Run {
    Point from;
    Point to;
};

struct Move {
    Project& project;
    const Solved& solved;
    Grip grip;
    Point grabbed;
    Point now;
    double step;

    Point shift() const { return now - grabbed; }
    void operator()(LayoutLine& line, int depth);
    void offset(LayoutLine& line, ByOffset place, const Run& run) const;
    void angle(LayoutLine& line, ByAngle place, const Run& run) const;
    void points(LayoutLine& line, ByPoints place, const Run& run) const;
    void marks(LayoutLine& line, ByMarks place, const Run& run) const;
    void mirror(const ByMirror& place, int depth);
};

void Move::offset(LayoutLine& line, ByOffset place, const Run& run) const {
    place.distance = stepped(place.distance + dot(shift(), leftOf(unit(run.to - run.from))), step);
    line.place = place;
}

void Move::angle(LayoutLine& line, ByAngle place, const Run& run) const {
    const Point heading = unit(run.to - run.from);
    const Point* through = std::get_if<Point>(&place.through);
    const Point before = through ? *through : run.from;
    const Point across = dot(shift(), leftOf(heading)) * leftOf(heading);
    // Along the axis that crosses the line best, so that the point stays on whole steps.
    Point after = before;
    if (std::abs(heading.y) < std::abs(heading.x)) {
        after.y = stepped(before.y + dot(across, across) / (across.y == 0 ? 1 : across.y), step);
    } else {
        after.x = stepped(before.x + dot(across, across) / (across.x == 0 ? 1 : across.x), step);
    }
    place.through = after;
    line.place = place;
}

void Move::points(LayoutLine& line, ByPoints place, const Run& run) const {
    const auto onSteps = [&](Point p) { return Point{stepped(p.x, step), stepped(p.y, step)}; };
    if (grip == Grip::From) {
        place.p = onSteps(now);
    } else if (grip == Grip::To) {
        place.q = onSteps(now);
    } else {
        const Point normal = leftOf(unit(run.to - run.from));
        const Point across = stepped(dot(shift(), normal), step) * normal;
        place.p = place.p + across;
        place.q = place.q + across;
    }
    if (place.p != place.q) line.place = place;
}

void Move::marks(LayoutLine& line, ByMarks place, const Run& run) const {
    const Panel& panel = project.panel;
    if (grip == Grip::Whole) {
        const Point heading = run.to - run.from;
        place.a = pushed(panel, place.a, shift(), heading, step);
        place.b = pushed(panel, place.b, shift(), heading, step);
    } else {
        EdgeMark& mark = grip == Grip::From ? place.a : place.b;
        mark = nearestMark(panel, now);
        mark.at = std::clamp(stepped(mark.at, step), 0.0, edgeLength(panel, mark.edge));
    }
    if (place.a.edge != place.b.edge) line.place = place;
}

void Move::mirror(const ByMirror& place, int depth) {
    LayoutLine* original = lineIn(project, place.of);
    if (!original) return;
    const auto motion = mirroring(project.panel, solved, place.about);
    if (!motion) return;
    grabbed = moved(*motion, grabbed);
    now = moved(*motion, now);
    (*this)(*original, depth + 1);
}

void Move::operator()(LayoutLine& line, int depth) {
    const auto found = runOf(solved, line.id);
    if (!found || depth > static_cast<int>(project.lines.size())) return;
    const Run run{found->first, found->second};
    if (const auto* offsetPlace = std::get_if<ByOffset>(&line.place)) offset(line, *offsetPlace, run);
    else if (const auto* anglePlace = std::get_if<ByAngle>(&line.place)) angle(line, *anglePlace, run);
    else if (const auto* pointsPlace = std::get_if<ByPoints>(&line.place)) points(line, *pointsPlace, run);
    else if (const auto* marksPlace = std::get_if<ByMarks>(&line.place)) marks(line, *marksPlace, run);
    else mirror(std::get<ByMirror>(line.place), depth);
}

bool names(const Base& base, const LineId& id) {
    const auto* line = std::get_if<LineId>(&base);
    return line && *line == id;
}

bool isLaidFrom(const Place& place, const LineId& id) {
    if (const auto* offset = std::get_if<ByOffset>(&place)) return names(offset->from, id);
    if (const auto* angle = std::get_if<ByAngle>(&place)) {
        const auto* crossing = std::get_if<CrossingOf>(&angle->through);
        return names(angle->from, id) || (crossing && (crossing->first == id || crossing->second == id));
    }
    if (const auto* mirror = std::get_if<ByMirror>(&place)) {
        const auto* about = std::get_if<LineId>(&mirror->about);
        return mirror->of == id || (about && *about == id);
    }
    return false;
}

void dropReferences(Project& project, const LineId& id) {
    for (Cutout& cutout : project.cutouts) {
        std::erase_if(cutout.corners, [&](const BoredCorner& c) { return c.first == id || c.second == id; });
    }
    std::erase_if(project.fences, [&](const Fence& fence) { return names(fence.along, id); });
    std::erase_if(project.record, [&](const Record& measure) {
        const auto inPair = [&](const auto& pair) { return pair && (pair->first == id || pair->second == id); };
        return (measure.line && measure.line->first == id) || inPair(measure.between) || inPair(measure.bore);
    });
}

}  // namespace

Place laidFromEdges(const Panel& panel, Point from, Point to) {
    const Point heading = unit(to - from);
    for (const Edge edge : {panel.referenceEdge, squareEdge(panel)}) {
        if (std::abs(cross(heading, edgeHeading(edge))) < kAlongEdge) {
            return ByOffset{edge, tidied(distanceFromEdge(panel, edge, from))};
        }
    }
    const auto clipped = clipToPanel(panel, from, heading).value_or(std::pair{from, to});
    EdgeMark a = nearestMark(panel, clipped.first), b = nearestMark(panel, clipped.second);
    if (a.edge == b.edge) return ByPoints{tidied(from), tidied(to)};
    a.at = tidied(a.at);
    b.at = tidied(b.at);
    return ByMarks{a, b};
}

Project moveLine(const Project& project, const Solved& solved, const LineId& id, Grip grip, Point grabbed, Point now,
                 double step) {
    Project moved = project;
    LayoutLine* line = lineIn(moved, id);
    if (line && grabbed != now) Move{moved, solved, grip, grabbed, now, step}(*line, 0);
    return moved;
}

Project withoutLine(const Project& project, const Solved& solved, const LineId& id) {
    Project rest = project;
    for (LayoutLine& line : rest.lines) {
        const SolvedLine* run = findLine(solved, line.id);
        if (run && isLaidFrom(line.place, id)) line.place = laidFromEdges(project.panel, run->from, run->to);
    }
    std::erase_if(rest.lines, [&](const LayoutLine& line) {
        return line.id == id || (isLaidFrom(line.place, id) && !findLine(solved, line.id));
    });
    dropReferences(rest, id);
    return rest;
}

int lineIdNumber(const LineId& id) {
    if (id.empty() || static_cast<double>(id.size()) > kLongestId) return 0;
    int number = 0;
    for (const char letter : id) {
        if (letter < 'A' || letter > 'Z') return 0;
        number = number * 26 + (letter - 'A' + 1);
    }
    return number;
}

LineId nextLineId(const Project& project, int highest) {
    for (const LayoutLine& line : project.lines) highest = std::max(highest, lineIdNumber(line.id));
    LineId id;
    for (int number = highest + 1; number > 0; number = (number - 1) / 26) {
        id.insert(id.begin(), static_cast<char>('A' + (number - 1) % 26));
    }
    return id;
}

}  // namespace kerfwall
