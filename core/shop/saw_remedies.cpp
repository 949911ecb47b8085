// SPDX-License-Identifier: GPL-3.0-or-later
// Remedies at the saw: a kerf that stops or runs through, a narrower one, another depth; declared in remedy_ways.h.
#include <algorithm>
#include <cmath>

#include "core/geometry/kerf_layout.h"
#include "core/shop/finding_words.h"
#include "core/shop/heading.h"
#include "core/shop/limits.h"
#include "core/shop/panel_edges.h"
#include "core/shop/remedy_ways.h"
#include "core/shop/saw_reach.h"
#include "core/shop/trimming.h"
#include "core/shop/word_list.h"

namespace kerfwall {
namespace {

LayoutLine& lineOf(Project& project, const LineId& id) {
    return *std::ranges::find(project.lines, id, &LayoutLine::id);
}

/// The lines whose kerfs run where they should not.
std::vector<LineId> crossingLines(const Minded& minded) {
    const Finding& finding = minded.finding;
    std::vector<LineId> lines = finding.lines;
    if (finding.code == "wall-nick" && lines.size() > 1) lines.erase(lines.begin());
    if (finding.code != "corner-groove") return lines;
    lines.clear();
    for (const SolvedCutout& cutout : minded.solved.cutouts) {
        for (const Hollow& hollow : cutout.hollows) {
            if (cutout.id != finding.cutout || !finding.at || hollow.at != *finding.at) continue;
            std::ranges::copy_if(hollow.lips, std::back_inserter(lines), [&](const LineId& id) {
                return std::ranges::find(finding.lines, id) == finding.lines.end();
            });
        }
    }
    return lines;
}

bool isReached(const Project& project, const Saw& saw, const SolvedLine& line, bool stopped) {
    const AskedCut cut{line.from, line.to, kerfDepthOf(project), stopped};
    return std::ranges::any_of(trueEdges(project.panel),
                               [&](Edge edge) { return reaches(saw, cut, edge, project.panel); });
}

const Saw* stoppingSaw(const Minded& minded, const std::vector<LineId>& lines) {
    for (const SawKind kind : {SawKind::GuideRail, SawKind::SlidingMitre}) {
        for (const Saw& saw : benchOf(minded.project).saws) {
            const bool all = std::ranges::all_of(lines, [&](const LineId& id) {
                const SolvedLine* line = findLine(minded.solved, id);
                return line && isReached(minded.project, saw, *line, true);
            });
            if (saw.kind == kind && all) return &saw;
        }
    }
    return nullptr;
}

Way stopped(const Minded& minded) {
    const std::vector<LineId> lines = crossingLines(minded);
    const Saw* saw = lines.empty() ? nullptr : stoppingSaw(minded, lines);
    if (saw == nullptr) return {};
    Change change{"Stop the kerf of " + listText(lines) + " with saw " + saw->id + "; it runs out over " +
                      lengthWords(minded.project, reachOfRound(saw->blade, minded.solved.kerfDepth, 0)),
                  minded.project};
    for (const LineId& id : lines) {
        LayoutLine& line = lineOf(change.project, id);
        line.extent = Extent::Stopped;
        line.saw = saw->id;
    }
    return {std::move(change)};
}

Way through(const Minded& minded) {
    if (minded.finding.lines.empty()) return {};
    const LineId& id = minded.finding.lines.front();
    const SolvedLine* run = findLine(minded.solved, id);
    Change change{"", minded.project};
    LayoutLine& line = lineOf(change.project, id);
    if (run == nullptr || line.extent != Extent::Stopped) return {};
    line.extent = Extent::Through;
    change.words = "Let the kerf of " + id + " run through, " +
                   lengthWords(minded.project, distance(run->from, run->to)) + " long";
    return {std::move(change)};
}

double widestOf(const Solved& solved, const LineId& id) {
    const SolvedLine* line = findLine(solved, id);
    double widest = 0;
    if (line) {
        for (const Kerf& kerf : line->kerfs) widest = std::max(widest, kerf.width);
    }
    return widest;
}

/// Those of the lines that `saw` would cut narrower sawn with it; none where it cannot.
std::optional<Change> sawnWith(const Minded& minded, const std::vector<LineId>& lines, const Saw& saw) {
    Change change{"", minded.project};
    std::vector<LineId> sawn;
    for (const LineId& id : lines) {
        const SolvedLine* run = findLine(minded.solved, id);
        if (!run || widestOf(minded.solved, id) <= saw.kerf + kOnLimit) continue;
        LayoutLine& line = lineOf(change.project, id);
        if (!isReached(minded.project, saw, *run, line.extent == Extent::Stopped)) return std::nullopt;
        line.saw = saw.id;
        sawn.push_back(id);
    }
    if (sawn.empty()) return std::nullopt;
    change.words = "Saw " + listText(sawn) + " with saw " + saw.id + ", whose kerf is " +
                   lengthWords(minded.project, saw.kerf);
    return change;
}

/// All of the lines sawn with `saw`; none where it cannot.
std::optional<Change> allSawnWith(const Minded& minded, const std::vector<LineId>& lines, const Saw& saw) {
    Change change{"Saw " + listText(lines) + " with saw " + saw.id + ", whose kerf is " +
                      lengthWords(minded.project, saw.kerf),
                  minded.project};
    for (const LineId& id : lines) {
        const SolvedLine* run = findLine(minded.solved, id);
        LayoutLine& line = lineOf(change.project, id);
        if (!run || !isReached(minded.project, saw, *run, line.extent == Extent::Stopped)) return std::nullopt;
        line.saw = saw.id;
    }
    return change;
}

Way narrower(const Minded& minded) {
    std::vector<LineId> lines = minded.finding.lines;
    if (minded.finding.code == "wall-nick") lines = crossingLines(minded);
    std::vector<Saw> saws = benchOf(minded.project).saws;
    std::ranges::stable_sort(saws, std::greater{}, &Saw::kerf);
    Way way;
    for (const Saw& saw : saws) {
        if (auto change = sawnWith(minded, lines, saw)) way.push_back(std::move(*change));
    }
    return way;
}

/// Lines with a kerf too narrow for the rough cut sawn with a saw whose kerf gives it room, the narrowest such first.
Way wider(const Minded& minded) {
    std::vector<Saw> saws = benchOf(minded.project).saws;
    std::ranges::stable_sort(saws, {}, &Saw::kerf);
    Way way;
    for (const Saw& saw : saws) {
        if (saw.kerf < minded.finding.limit.value_or(0) - kOnLimit) continue;
        if (auto change = allSawnWith(minded, minded.finding.lines, saw)) way.push_back(std::move(*change));
    }
    return way;
}

/// Lines whose panel is too small for the rip fence sawn where it is clamped or carried.
Way offTheFence(const Minded& minded) {
    Way way;
    for (const Saw& saw : benchOf(minded.project).saws) {
        if (saw.kind == SawKind::RipFence) continue;
        if (auto change = allSawnWith(minded, minded.finding.lines, saw)) way.push_back(std::move(*change));
    }
    return way;
}

Way anySaw(const Minded& minded) {
    Way way;
    for (const Saw& saw : benchOf(minded.project).saws) {
        if (auto change = allSawnWith(minded, minded.finding.lines, saw)) way.push_back(std::move(*change));
    }
    return way;
}

/// The saws' blades are more than twice as wide as a kerf is deep.
bool isDepth(const Project& project, double depth) {
    return depth > 0 && depth < project.panel.thickness &&
           std::ranges::all_of(benchOf(project).saws, [&](const Saw& saw) { return saw.blade > 2 * depth; });
}

void addDepth(Way& way, const Project& project, double depth) {
    if (!isDepth(project, depth)) return;
    Change change{"Saw the kerfs " + lengthWords(project, depth) + " deep", project};
    change.project.kerfDepth = depth;
    way.push_back(std::move(change));
}

double wishOf(const LimitPair& limits) { return std::max(limits.care.value_or(0), limits.stop.value_or(0)); }

Way otherDepth(const Minded& minded) {
    const Project& project = minded.project;
    const Finding& finding = minded.finding;
    const double thickness = project.panel.thickness;
    const TrimBit bit = trimBitOf(project);
    Way way;
    if (finding.code == "web-thin" && !finding.fence) {
        addDepth(way, project, setAtMost(project, thickness - wishOf(limitsOf("web-thin", project))));
    } else if (finding.code == "wall-low") {
        addDepth(way, project, setAtLeast(project, bit.bearingLength + kBearingAboveFloor));
        addDepth(way, project, setAtLeast(project, wishOf(limitsOf("wall-low", project))));
    } else if (finding.code == "web-ride") {
        addDepth(way, project, setAtMost(project, thickness - wishOf(limitsOf("web-ride", project))));
    } else if (finding.code == "bit-short" && finding.value) {
        addDepth(way, project, setAtLeast(project, thickness + kBearingAboveFloor - bit.cuttingLength));
    } else if (finding.code == "hole-kerf" && finding.limit) {
        addDepth(way, project, setAtMost(project, *finding.limit - wishOf(limitsOf("hole-wall", project))));
    }
    return way;
}

Way shallowerGroove(const Minded& minded) {
    const Finding& finding = minded.finding;
    if (finding.code != "web-thin" || !finding.fence || !finding.value) return {};
    const Project& project = minded.project;
    const double less = wishOf(limitsOf("web-thin", project)) - *finding.value;
    const double groove = setAtMost(project, std::max(0.0, project.fences[*finding.fence].groove - less));
    const std::string fence = "fence " + std::to_string(*finding.fence + 1);
    Change change{groove > 0 ? "Cut the groove of " + fence + " " + lengthWords(project, groove) + " deep"
                             : "Fix " + fence + " without its groove of " +
                                   lengthWords(project, project.fences[*finding.fence].groove),
                  project};
    change.project.fences[*finding.fence].groove = groove;
    return {std::move(change)};
}

}  // namespace

std::vector<Way> stopWays(const Minded& minded) {
    const std::string& code = minded.finding.code;
    if (code == "runout" || code == "bench-limit") return {through(minded)};
    if (code == "wall-nick" || code == "corner-groove" || code == "wall-lost" || code == "hole-kerf") {
        return {stopped(minded)};
    }
    return {};
}

std::vector<Way> sawWays(const Minded& minded) {
    const std::string& code = minded.finding.code;
    if (minded.finding.lines.empty()) return {};
    if (code == "corner-groove" || code == "wall-nick" || code == "hole-kerf") return {narrower(minded)};
    if (code == "runout" || code == "bench-limit" || code == "edge-untrue") return {anySaw(minded)};
    if (code == "rough-room") return {wider(minded)};
    if (code == "small-stock") return {offTheFence(minded)};
    return {};
}

std::vector<Way> depthWays(const Minded& minded) { return {otherDepth(minded), shallowerGroove(minded)}; }

}  // namespace kerfwall
