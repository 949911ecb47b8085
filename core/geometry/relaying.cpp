// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/relaying.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/geometry/bases.h"
#include "core/geometry/angle.h"
#include "core/geometry/clip.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/heading_hold.h"
#include "core/geometry/mirror_image.h"
#include "core/geometry/motion.h"
#include "core/says/line_names.h"

namespace kerfwall {
namespace {

constexpr double kParallel = 1e-9;  // sine
using Run = std::pair<Point, Point>;

/// A line that is laid anew, and what it is laid from meanwhile.
class Relaying {
public:
    Relaying(const Project& project, const Solved& solved, const LineId& id, const Run& run)
        : m_project(project), m_panel(project.panel), m_solved(solved), m_id(id), m_run(run), m_heading(unit(run.second - run.first)),
          m_place(findLine(project, id)->place) {}

    Place offset() const;
    Place angle() const;
    Place points() const { return ByPoints{tidied(m_run.first), tidied(m_run.second)}; }
    Place marks() const;
    std::expected<Place, NoRelaying> mirror() const;

private:
    std::optional<Run> runOfBase(const Base& base) const;
    Base ownBase() const;
    ByOffset offsetFrom(const Base& base, const Run& run, Point through) const;

    const Project& m_project;
    const Panel& m_panel;
    const Solved& m_solved;
    const LineId& m_id;
    Run m_run;
    Point m_heading;
    Place m_place;
};

std::optional<Run> Relaying::runOfBase(const Base& base) const {
    if (const auto* id = std::get_if<LineId>(&base)) return runOf(m_solved, *id);
    const Edge edge = std::get<Edge>(base);
    return Run{markPlace(m_panel, {edge, 0}), markPlace(m_panel, {edge, edgeLength(m_panel, edge)})};
}

/// What it is laid from now, else the edge it runs along.
Base Relaying::ownBase() const {
    if (const auto* offset = std::get_if<ByOffset>(&m_place)) return offset->from;
    if (const auto* angle = std::get_if<ByAngle>(&m_place)) return angle->from;
    return edgeAlong(m_panel, m_heading);
}

ByOffset Relaying::offsetFrom(const Base& base, const Run& run, Point through) const {
    return {base, tidied(dot(through - run.first, leftOf(unit(run.second - run.first))))};
}

Place Relaying::offset() const {
    // An offset has its base's direction: where another line hangs on this one, that must stay as it is.
    const bool mayTurn = linesLaidFrom(m_project, m_id).empty();
    for (const bool turned : {false, true}) {
        for (const Base& base : basesFor(m_project, m_id)) {
            const auto run = runOfBase(base);
            if (!run) continue;
            const Point along = unit(run->second - run->first);
            const bool fits = mayTurn || turned || dot(along, m_heading) > 0;
            if (fits && std::abs(cross(along, m_heading)) < kParallel) return offsetFrom(base, *run, m_run.first);
        }
    }
    const Base base = ownBase();
    const auto run = runOfBase(base);
    const Point middle = 0.5 * (m_run.first + m_run.second);
    return run ? offsetFrom(base, *run, middle) : ByOffset{m_panel.referenceEdge, distanceFromEdge(m_panel, m_panel.referenceEdge, middle)};
}

Place Relaying::angle() const {
    Base base = ownBase();
    auto run = runOfBase(base);
    if (!run) run = runOfBase(base = m_panel.referenceEdge);
    const Point along = unit(run->second - run->first);
    const double turn = degrees(std::atan2(cross(along, m_heading), dot(along, m_heading)));
    return ByAngle{base, tidiedAngle(turn), tidied(m_run.first)};
}

Place Relaying::marks() const {
    EdgeMark a = nearestMark(m_panel, m_run.first);
    EdgeMark b = nearestMark(m_panel, m_run.second);
    // From corner to corner both may be found on one edge.
    for (const Edge edge : kEdges) {
        if (a.edge != b.edge) break;
        const EdgeMark other = markOnEdge(m_panel, edge, m_run.second);
        if (edge != a.edge && distance(markPlace(m_panel, other), m_run.second) < kParallel) b = other;
    }
    return ByMarks{{a.edge, tidied(a.at)}, {b.edge, tidied(b.at)}};
}

std::expected<Place, NoRelaying> Relaying::mirror() const {
    std::optional<ByMirror> best;
    double nearest = std::numeric_limits<double>::infinity();
    for (const LineId& of : linesFor(m_project, m_id)) {
        const auto run = runOf(m_solved, of);
        if (!run) continue;
        for (const Centre about : {Centre::Upright, Centre::Level}) {
            const Motion motion = *mirroring(m_panel, m_solved, about);
            const Point from = moved(motion, run->first), to = moved(motion, run->second);
            const double same = std::max(distance(from, m_run.first), distance(to, m_run.second));
            const double back = std::max(distance(from, m_run.second), distance(to, m_run.first));
            if (std::min(same, back) >= nearest) continue;
            nearest = std::min(same, back);
            best = ByMirror{of, about};
        }
    }
    if (!best) return std::unexpected(NoRelaying::NoOtherLine);
    return *best;
}

}  // namespace

Way wayOf(const Place& place) { return static_cast<Way>(place.index()); }

std::vector<LineId> linesFor(const Project& project, const LineId& id) {
    const std::set<LineId> hanging = linesLaidFrom(project, id);
    std::vector<LineId> lines;
    for (const LayoutLine& line : project.lines) {
        if (line.id != id && !hanging.contains(line.id)) lines.push_back(line.id);
    }
    return lines;
}

std::vector<Base> basesFor(const Project& project, const LineId& id) {
    std::vector<Base> bases = edgeBases(project.panel);
    for (const LineId& line : linesFor(project, id)) bases.emplace_back(line);
    return bases;
}

std::vector<CrossingOf> crossingsFor(const Project& project, const Solved& solved, const LineId& id, std::size_t most) {
    const auto run = runOf(solved, id);
    const std::vector<LineId> lines = linesFor(project, id);
    std::vector<std::pair<double, CrossingOf>> found;
    const auto* place = std::get_if<ByAngle>(&findLine(project, id)->place);
    const auto* now = place ? std::get_if<CrossingOf>(&place->through) : nullptr;
    for (std::size_t i = 0; run && i < lines.size(); ++i) {
        for (std::size_t j = i + 1; j < lines.size(); ++j) {
            const SolvedLine *first = findLine(solved, lines[i]), *second = findLine(solved, lines[j]);
            const auto meet = first && second ? crossingPlace(*first, *second) : std::nullopt;
            const CrossingOf crossing{lines[i], lines[j]};
            const bool isNow = now && (*now == crossing || *now == CrossingOf{crossing.second, crossing.first});
            if (!meet || isNow) continue;
            found.emplace_back(std::abs(cross(unit(run->second - run->first), *meet - run->first)), crossing);
        }
    }
    std::ranges::stable_sort(found, {}, &std::pair<double, CrossingOf>::first);
    std::vector<CrossingOf> crossings;
    if (now) crossings.push_back(*now);
    for (const auto& [away, crossing] : found) {
        if (crossings.size() < most) crossings.push_back(crossing);
    }
    return crossings;
}

std::expected<Place, NoRelaying> relaid(const Project& project, const Solved& solved, const LineId& id, Way way) {
    const Place& now = findLine(project, id)->place;
    if (wayOf(now) == way) return now;
    const auto run = runOf(solved, id);
    if (!run) return std::unexpected(NoRelaying::NoPlace);
    const Relaying relaying(project, solved, id, *run);
    switch (way) {
        case Way::Offset: return relaying.offset();
        case Way::Angle: return relaying.angle();
        case Way::Points: return relaying.points();
        case Way::Marks: return relaying.marks();
        case Way::Mirror: return relaying.mirror();
    }
    return now;
}

Place laidThrough(const Project& project, const Solved& solved, const LineId& id, std::optional<CrossingOf> crossing) {
    ByAngle place = std::get<ByAngle>(findLine(project, id)->place);
    const auto run = runOf(solved, id);
    const auto* now = std::get_if<CrossingOf>(&place.through);
    if (crossing) {
        place.through = *crossing;
    } else if (now) {
        const SolvedLine *first = findLine(solved, now->first), *second = findLine(solved, now->second);
        const auto meet = first && second ? crossingPlace(*first, *second) : std::nullopt;
        place.through = tidied(meet ? *meet : run ? run->first : Point{});
    }
    return place;
}

}  // namespace kerfwall
