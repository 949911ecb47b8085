// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/laid_cuts.h"

#include <algorithm>
#include <map>

#include "core/geometry/tolerance.h"
#include "core/shop/cut_choice.h"
#include "core/shop/limits.h"
#include "core/shop/run_out.h"

namespace kerfwall {

namespace {

std::set<LineSide> allOf(const Stops& stops) {
    std::set<LineSide> all = stops.said;
    all.insert(stops.byItself.begin(), stops.byItself.end());
    return all;
}

bool runOutFits(const Project& project, const KerfRun& run, const Kerf& kerf, const Solved& solved) {
    return !runsIntoWall(project, solved, solved.lines.at(run.on.line), kerf);
}

bool isCutBySome(const Project& project, const CutAsked& cut) { return !kerfWays(project, cut).front().is.beyondSaw; }

/// The run at each saw of the bench. What stops by itself goes to saws whose run-out crosses no wall, if there
/// are any.
CutAsked cutFor(const Project& project, const Arranged& arranged, const KerfRun& run, bool byItself,
                const Solved& solved) {
    const ArrangedLine& line = arranged.lines[run.on.line];
    CutAsked all{line.index, line.from, line.to, {}};
    for (std::size_t saw = 0; saw < benchOf(project).saws.size(); ++saw) {
        all.atSaw.emplace_back(laidKerf(project, run, saw).kerf);
    }
    if (!byItself) return all;
    CutAsked fitting = all;
    for (auto& kerf : fitting.atSaw) {
        if (!runOutFits(project, run, *kerf, solved)) kerf.reset();
    }
    return isCutBySome(project, fitting) ? fitting : all;
}

/// One run of a side, if it were stopped.
struct StoppedRun {
    KerfRun run;
    LaidKerf kerf;
};

/// Where along the line's side its kerf does harm that stopping it would spare.
class Harm {
  public:
    Harm(const Project& project, const Arranged& arranged, const Solved& solved)
        : m_project(project), m_arranged(arranged), m_solved(solved),
          m_thin(limitsOf("border-thin", project).care.value_or(0)) {
        const double limit = limitsOf("wall-nick", project).care.value_or(0);
        for (const SolvedCutout& cutout : solved.cutouts) {
            for (const Hollow& hollow : cutout.hollows) {
                if (!hollow.corner && cutout.parts > 0 && hollow.depth > limit + kOnLimit) m_nicks.push_back(&hollow);
            }
            for (const LostWall& lost : cutout.lost) m_lost.push_back(&lost);
        }
    }

    /// Whether its through kerf may do harm at all; without that nothing needs to be stopped to see.
    [[nodiscard]] bool isSuspected(const KerfRun& through) const {
        const LineId& id = lineId(m_project, m_arranged, through.on.line);
        return isNearEdge(through.walls.front(), through.walls.back(), through.length) ||
               std::ranges::any_of(m_lost, [&](const LostWall* lost) { return lost->line == id; }) ||
               std::ranges::any_of(m_nicks, [&](const Hollow* nick) { return isFrom(*nick, id); });
    }

    /// `stopped`: the side's kerfs, if they were stopped.
    /// `fits`: their run-outs cross no wall. A wall lost altogether is worse than a run-out across one.
    [[nodiscard]] bool isSparedBy(const LineSide& on, double width, const std::vector<StoppedRun>& stopped,
                                  bool fits) const {
        return sparesWall(on, stopped) || (fits && (sparesNick(on, width, stopped) || sparesBorder(on, stopped)));
    }

  private:
    [[nodiscard]] const ArrangedLine& line(const LineSide& on) const { return m_arranged.lines[on.line]; }

    [[nodiscard]] double along(const LineSide& on, Point place) const {
        return dot(place - line(on).from, line(on).direction);
    }

    static bool reaches(const std::vector<StoppedRun>& stopped, double from, double to) {
        return std::ranges::any_of(stopped, [&](const StoppedRun& side) {
            return std::ranges::any_of(side.kerf.below, [&](const auto& span) {
                return std::min(to, span.second) - std::max(from, span.first) > 0;
            });
        });
    }

    [[nodiscard]] bool sparesNick(const LineSide& on, double width, const std::vector<StoppedRun>& stopped) const {
        const LineId& id = lineId(m_project, m_arranged, on.line);
        const Point waste = (on.side == Side::Left ? 1.0 : -1.0) * leftOf(line(on).direction);
        const double near = m_solved.bitRadius;
        return std::ranges::any_of(m_nicks, [&](const Hollow* nick) {
            const double across = dot(nick->at - line(on).from, waste);
            const double at = along(on, nick->at);
            return isFrom(*nick, id) && across >= -near && across <= width + near &&
                   !reaches(stopped, at, at + kShortestWall);
        });
    }

    [[nodiscard]] bool sparesWall(const LineSide& on, const std::vector<StoppedRun>& stopped) const {
        const LineId& id = lineId(m_project, m_arranged, on.line);
        return std::ranges::any_of(m_lost, [&](const LostWall* lost) {
            const auto [from, to] = std::minmax({along(on, lost->from), along(on, lost->to)});
            return lost->line == id && !reaches(stopped, from, to);
        });
    }

    /// A border that the through kerf weakens and the stopped one leaves whole at the panel's edge.
    [[nodiscard]] bool sparesBorder(const LineSide& on, const std::vector<StoppedRun>& stopped) const {
        const double length = distance(line(on).from, line(on).to);
        const StoppedRun& first = stopped.front();
        const StoppedRun& last = stopped.back();
        return (first.kerf.kerf.stopped && first.kerf.kerf.surfaceFrom > 0 && first.run.walls.front().from < m_thin) ||
               (last.kerf.kerf.stopped && last.kerf.kerf.surfaceTo < length &&
                length - last.run.walls.back().to < m_thin);
    }

    [[nodiscard]] bool isNearEdge(const WallOnLine& first, const WallOnLine& last, double length) const {
        return first.from < m_thin || length - last.to < m_thin;
    }

    /// Whether that line's kerf crosses there: it is a lip and not the nicked wall's own.
    static bool isFrom(const Hollow& nick, const LineId& id) {
        return nick.wall != id && std::ranges::find(nick.lips, id) != nick.lips.end();
    }

    const Project& m_project;
    const Arranged& m_arranged;
    const Solved& m_solved;
    double m_thin;  ///< mm
    std::vector<const Hollow*> m_nicks;  ///< those that count
    std::vector<const LostWall*> m_lost;
};

}  // namespace

LaidCuts layCuts(const Project& project, const Arranged& arranged, const std::vector<Border>& borders,
                 const Stops& stops, const Solved& solved) {
    LaidCuts cuts;
    cuts.runs = kerfRuns(project, arranged, borders, allOf(stops));
    std::vector<CutAsked> asked;
    for (const KerfRun& run : cuts.runs) {
        asked.push_back(cutFor(project, arranged, run, stops.byItself.contains(run.on), solved));
    }
    const ChosenCuts chosen = chooseCuts(project, asked);
    std::vector<std::optional<std::size_t>> saws;
    for (const CutChoice& cut : chosen.cuts) saws.push_back(cut.saw);
    cuts.kerfs = layKerfs(project, cuts.runs, saws);
    for (std::size_t i = 0; i < cuts.kerfs.size(); ++i) cuts.kerfs[i].kerf.way = chosen.cuts[i].way;
    cuts.leastSetups = chosen.lowerBound;
    return cuts;
}

std::set<LineSide> sidesToStop(const Project& project, const Arranged& arranged, const std::vector<Border>& borders,
                               const Stops& stops, const LaidCuts& cuts, const Solved& solved) {
    const Harm harm(project, arranged, solved);
    std::map<LineSide, double> candidates;  // with the width of the through kerf
    std::set<LineSide> tried = allOf(stops);
    for (std::size_t i = 0; i < cuts.runs.size(); ++i) {
        const LineSide& on = cuts.runs[i].on;
        const Extent extent = project.lines[arranged.lines[on.line].index].extent;
        if (extent != Extent::Auto || tried.contains(on) || !harm.isSuspected(cuts.runs[i])) continue;
        candidates.emplace(on, cuts.kerfs[i].kerf.width);
    }
    if (candidates.empty()) return {};
    for (const auto& [on, width] : candidates) tried.insert(on);
    const std::vector<KerfRun> runs = kerfRuns(project, arranged, borders, tried);
    std::set<LineSide> found;
    for (const auto& [on, width] : candidates) {
        std::vector<StoppedRun> stopped;
        bool canBe = true;
        bool fits = true;
        for (const KerfRun& run : runs) {
            if (run.on != on || !canBe) continue;
            const auto ways = kerfWays(project, cutFor(project, arranged, run, true, solved));
            canBe = !ways.front().is.beyondSaw;
            stopped.push_back({run, laidKerf(project, run, ways.front().saw)});
            fits = fits && runOutFits(project, run, stopped.back().kerf.kerf, solved);
        }
        if (canBe && harm.isSparedBy(on, width, stopped, fits)) found.insert(on);
    }
    return found;
}

}  // namespace kerfwall
