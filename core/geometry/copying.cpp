// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/copying.h"

#include <algorithm>

#include "core/geometry/clip.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/face_seeds.h"
#include "core/geometry/fence_place.h"
#include "core/geometry/fixture_moving.h"
#include "core/geometry/marking.h"
#include "core/geometry/moving.h"
#include "core/geometry/picking.h"
#include "core/geometry/placing.h"
#include "core/geometry/solve.h"
#include "core/geometry/work_moving.h"

namespace kerfwall {
namespace {

using About = std::variant<Centre, LineId>;

constexpr double kSamePlace = 1e-3;  // mm; fixtures nearer than this are one

/// The line of the project that lies along a run; "" for none.
LineId lineAlong(const Solved& lines, const LineRun& run) {
    const auto found = std::ranges::find_if(lines.lines, [&](const SolvedLine& line) { return areOnOneLine({line.from, line.to}, run); });
    return found == lines.lines.end() ? LineId{} : found->id;
}

bool isMarked(const Solved& solved, Point place) {
    return std::ranges::any_of(solved.cutouts, [&](const SolvedCutout& cutout) { return isInside(cutout.drawn, place); });
}

bool isSameHole(const ClampHole& one, const ClampHole& other) {
    return one.edge == other.edge && std::abs(one.at - other.at) < kSamePlace;
}

bool isSameFence(const Fence& one, const Fence& other) {
    return one.along == other.along && std::abs(one.offset - other.offset) < kSamePlace && std::abs(one.from - other.from) < kSamePlace;
}

/// One copy of the things, put onto a project.
class Copying {
public:
    /// `there`: what `onto` is before.
    Copying(Copies& onto, const Solved& there, const Copied& things, const Motion& motion, const std::optional<About>& follows, int highestLine)
        : m_onto(onto), m_there(there), m_things(things), m_motion(motion), m_follows(follows), m_highestLine(highestLine) {}

    std::expected<void, NoCarrying> operator()();

private:
    bool copyLines();
    void copyCutout(const SolvedCutout& cutout, const std::vector<SolvedLine>& lines);
    bool copyHoles();
    bool copyFences(const Solved& after);
    LineRun after(const SolvedLine& line) const { return {moved(m_motion, line.from), moved(m_motion, line.to)}; }
    std::optional<LineId> renamed(const LineId& id) const {
        const auto found = m_names.find(id);
        return found == m_names.end() ? std::nullopt : std::optional(found->second);
    }

    Copies& m_onto;
    const Solved& m_there;
    const Copied& m_things;
    const Motion& m_motion;
    const std::optional<About>& m_follows;
    int m_highestLine;
    std::map<LineId, LineId> m_names;  // of the things' lines, here
};

bool Copying::copyLines() {
    std::vector<const SolvedLine*> fresh;
    for (const SolvedLine& line : m_things.solved.lines) {
        if (std::ranges::find(m_things.picked.lines, line.id) == m_things.picked.lines.end()) continue;
        const LineRun run = after(line);
        if (!clipToPanel(m_onto.project.panel, run.first, run.second - run.first)) return false;
        m_names[line.id] = lineAlong(m_there, run);
        if (m_names[line.id].empty()) fresh.push_back(&line);
    }
    std::map<LineId, LineRun> runs;
    for (const SolvedLine* line : fresh) {
        LayoutLine copy = m_things.from.lines.at(line->index);
        copy.id = nextLineId(m_onto.project, m_highestLine);
        m_names[line->id] = copy.id;
        runs.emplace(copy.id, after(*line));
        m_onto.project.lines.push_back(copy);
        m_onto.picked.lines.push_back(copy.id);
    }
    const Renamed along = [this](const LineId& id) { return renamed(id); };
    for (const SolvedLine* line : fresh) {
        LayoutLine& copy = *std::ranges::find(m_onto.project.lines, m_names.at(line->id), &LayoutLine::id);
        if (m_follows) copy.place = ByMirror{line->id, *m_follows};
        else copy.place = placeAfter(m_onto.project.panel, m_things.solved, copy.place, {line->from, line->to}, m_motion, along);
        if (copy.saw && !findSaw(benchOf(m_onto.project), *copy.saw)) copy.saw.reset();
    }
    m_onto.project = settle(std::move(m_onto.project), runs);
    return true;
}

void Copying::copyCutout(const SolvedCutout& cutout, const std::vector<SolvedLine>& lines) {
    Cutout copy = m_things.from.cutouts.at(cutout.index);
    copy.seeds.clear();
    for (std::vector<Point> face : cutout.faces) {
        for (Point& corner : face) corner = moved(m_motion, corner);
        for (const Point seed : seedsWithin(m_onto.project.panel, lines, face)) copy.seeds.push_back(seed);
    }
    const bool isTaken = std::ranges::any_of(copy.seeds, [&](Point seed) { return isMarked(m_there, seed); });
    if (copy.seeds.empty() || isTaken) return;
    copy.id = freshCutoutId(m_onto.project);
    for (BoredCorner& corner : copy.corners) {
        corner.first = renamed(corner.first).value_or(corner.first);
        corner.second = renamed(corner.second).value_or(corner.second);
    }
    if (copy.wanted) copy.wanted = moved(*copy.wanted, m_motion);
    m_onto.picked.cutouts.push_back(copy.id);
    m_onto.project.cutouts.push_back(std::move(copy));
}

bool Copying::copyHoles() {
    std::vector<ClampHole>& holes = m_onto.project.clampHoles;
    for (const std::size_t index : m_things.picked.holes) {
        auto copy = movedHole(m_onto.project.panel, m_things.from.clampHoles.at(index), m_motion);
        if (!copy) return false;
        if (std::ranges::any_of(holes, [&](const ClampHole& hole) { return isSameHole(hole, *copy); })) continue;
        copy->id.clear();
        m_onto.picked.holes.push_back(holes.size());
        holes.push_back(*copy);
    }
    return true;
}

bool Copying::copyFences(const Solved& solvedAfter) {
    std::vector<Fence>& fences = m_onto.project.fences;
    for (const std::size_t index : m_things.picked.fences) {
        const Fence& fence = m_things.from.fences.at(index);
        const std::vector<Point> before = fenceBody(m_things.from, m_things.solved, fence);
        if (before.empty()) continue;
        Fence copy = fence;
        const auto* along = std::get_if<LineId>(&fence.along);
        if (along) copy.along = renamed(*along).value_or(*along);
        const auto next = movedFence(m_onto.project.panel, solvedAfter, copy, before, m_motion);
        if (!next) return false;
        if (std::ranges::any_of(fences, [&](const Fence& there) { return isSameFence(there, *next); })) continue;
        m_onto.picked.fences.push_back(fences.size());
        fences.push_back(*next);
    }
    return true;
}

std::expected<void, NoCarrying> Copying::operator()() {
    if (!copyLines()) return std::unexpected(NoCarrying::OffThePanel);
    const Solved lines = linesAlone(m_onto.project);
    for (const SolvedCutout& cutout : m_things.solved.cutouts) {
        const bool isPicked = std::ranges::find(m_things.picked.cutouts, cutout.id) != m_things.picked.cutouts.end();
        if (isPicked) copyCutout(cutout, lines.lines);
    }
    if (!copyHoles()) return std::unexpected(NoCarrying::HoleOffEdges);
    if (!copyFences(lines)) return std::unexpected(NoCarrying::FenceAlone);
    if (m_things.picked.workpiece && !m_onto.project.workpiece && m_things.from.workpiece) {
        m_onto.project.workpiece = moved(*m_things.from.workpiece, m_motion);
        m_onto.picked.workpiece = true;
    }
    return {};
}

std::expected<Copies, NoCarrying> copies(const Project& onto, const Copied& things, const std::vector<Motion>& motions,
                                         const std::optional<About>& follows, int highestLine) {
    const Picked all = withWalls(things.from, things.solved, stillThere(things.from, things.picked));
    const Copied whole{things.from, things.solved, all};
    Copies made{onto, {}};
    for (const Motion& motion : motions) {
        const Project before = made.project;
        const Solved there = solve(before);
        const auto done = Copying(made, there, whole, motion, follows, highestLine)();
        if (!done) return std::unexpected(done.error());
        // New walls may cross what was marked before.
        made.project = carryCutouts(before, there, std::move(made.project));
    }
    if (made.picked.isEmpty()) return std::unexpected(NoCarrying::NothingNew);
    return made;
}

}  // namespace

std::expected<Copies, NoCarrying> copiedOnto(const Project& onto, const Copied& things, const std::vector<Motion>& motions, int highestLine) {
    return copies(onto, things, motions, std::nullopt, highestLine);
}

std::expected<Copies, NoCarrying> mirroredCopies(const Copied& things, const About& about, int highestLine) {
    const auto motion = mirroring(things.from.panel, things.solved, about);
    if (!motion) return std::unexpected(NoCarrying::NothingNew);
    return copies(things.from, things, {*motion}, about, highestLine);
}

}  // namespace kerfwall
