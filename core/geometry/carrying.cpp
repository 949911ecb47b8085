// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/carrying.h"

#include <algorithm>

#include "core/geometry/clip.h"
#include "core/geometry/face_seeds.h"
#include "core/geometry/fence_place.h"
#include "core/geometry/fixture_moving.h"
#include "core/geometry/picking.h"
#include "core/geometry/placing.h"
#include "core/geometry/work_moving.h"

namespace kerfwall {
namespace {

template <typename Names, typename Name>
bool among(const Names& names, const Name& name) {
    return std::ranges::find(names, name) != names.end();
}

class Carrying {
public:
    Carrying(const Project& project, const Solved& solved, const Picked& picked, const Motion& motion)
        : m_project(project), m_solved(solved), m_picked(picked), m_motion(motion), m_next(project) {}

    std::expected<Project, NoCarrying> operator()();

private:
    bool carryLines();
    void carryCutout(const SolvedCutout& cutout, const std::vector<SolvedLine>& lines);
    bool carryHoles();
    bool carryFences(const Solved& after);

    const Project& m_project;
    const Solved& m_solved;
    const Picked& m_picked;
    const Motion& m_motion;
    Project m_next;
};

bool Carrying::carryLines() {
    const Renamed along = [&](const LineId& id) { return among(m_picked.lines, id) ? std::optional(id) : std::nullopt; };
    std::map<LineId, LineRun> runs;
    for (LayoutLine& line : m_next.lines) {
        const SolvedLine* run = along(line.id) ? findLine(m_solved, line.id) : nullptr;
        if (!run) continue;
        const LineRun after{moved(m_motion, run->from), moved(m_motion, run->to)};
        if (!isShift(m_motion) && !clipToPanel(m_next.panel, after.first, after.second - after.first)) return false;
        line.place = placeAfter(m_next.panel, m_solved, line.place, {run->from, run->to}, m_motion, along);
        runs.emplace(line.id, after);
    }
    m_next = settle(std::move(m_next), runs);
    return true;
}

void Carrying::carryCutout(const SolvedCutout& cutout, const std::vector<SolvedLine>& lines) {
    Cutout& next = m_next.cutouts.at(cutout.index);
    std::vector<Point> seeds;
    for (std::vector<Point> face : cutout.faces) {
        for (Point& corner : face) corner = moved(m_motion, corner);
        const std::vector<Point> within = seedsWithin(m_next.panel, lines, face);
        seeds.insert(seeds.end(), within.begin(), within.end());
    }
    if (!seeds.empty()) next.seeds = std::move(seeds);
    if (next.wanted) next.wanted = moved(*next.wanted, m_motion);
}

bool Carrying::carryHoles() {
    for (const std::size_t hole : m_picked.holes) {
        const auto next = movedHole(m_next.panel, m_next.clampHoles[hole], m_motion);
        if (!next) return false;
        m_next.clampHoles[hole] = *next;
    }
    return true;
}

bool Carrying::carryFences(const Solved& after) {
    for (const std::size_t fence : m_picked.fences) {
        const std::vector<Point> before = fenceBody(m_project, m_solved, m_project.fences[fence]);
        if (before.empty()) continue;
        const auto next = movedFence(m_next.panel, after, m_next.fences[fence], before, m_motion);
        if (!next) return false;
        m_next.fences[fence] = *next;
    }
    return true;
}

std::expected<Project, NoCarrying> Carrying::operator()() {
    if (!carryLines()) return std::unexpected(NoCarrying::OffThePanel);
    if (!m_picked.cutouts.empty() || !m_picked.fences.empty()) {
        const Solved after = linesAlone(m_next);
        for (const SolvedCutout& cutout : m_solved.cutouts) {
            if (among(m_picked.cutouts, cutout.id)) carryCutout(cutout, after.lines);
        }
        if (!carryFences(after)) return std::unexpected(NoCarrying::FenceAlone);
    }
    if (!carryHoles()) return std::unexpected(NoCarrying::HoleOffEdges);
    if (m_picked.workpiece) m_next.workpiece = moved(*m_next.workpiece, m_motion);
    return m_next;
}

/// The lines of a cutout's walls and of its bored corners.
std::vector<LineId> linesOf(const Project& project, const SolvedCutout& cutout) {
    std::vector<LineId> lines;
    const auto add = [&](const LineId& id) {
        if (findLine(project, id) && !among(lines, id)) lines.push_back(id);
    };
    for (const Wall& wall : cutout.walls) add(wall.line);
    for (const BoredCorner& corner : project.cutouts.at(cutout.index).corners) {
        add(corner.first);
        add(corner.second);
    }
    return lines;
}

}  // namespace

Picked withWalls(const Project& project, const Solved& solved, const Picked& picked) {
    Picked all = picked;
    for (const SolvedCutout& cutout : solved.cutouts) {
        const std::vector<LineId> lines = linesOf(project, cutout);
        const auto isPicked = [&](const LineId& id) { return among(picked.lines, id); };
        if (among(picked.cutouts, cutout.id)) all = with(std::move(all), {lines, {}, {}, {}, false});
        else if (!lines.empty() && std::ranges::all_of(lines, isPicked)) all = with(std::move(all), onlyCutout(cutout.id));
    }
    return all;
}

std::expected<Project, NoCarrying> carried(const Project& project, const Solved& solved, const Picked& picked, const Motion& motion) {
    const Picked all = withWalls(project, solved, stillThere(project, picked));
    return Carrying(project, solved, all, motion)();
}

Project nudged(const Project& project, const Solved& solved, const Picked& picked, Point shift) {
    const LayoutLine* line = picked.count() == 1 && !picked.lines.empty() ? findLine(project, picked.lines.front()) : nullptr;
    const auto* image = line ? std::get_if<ByMirror>(&line->place) : nullptr;
    const auto mirror = image ? mirroring(project.panel, solved, image->about) : std::nullopt;
    // No line mirrors itself through others, so this ends.
    if (mirror) return nudged(project, solved, onlyLine(image->of), headed(*mirror, shift));
    return carried(project, solved, picked, shiftBy(shift)).value_or(project);
}

}  // namespace kerfwall
