// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "core/drawing/hatch.h"
#include "core/drawing/side_view.h"

namespace kerfwall {
namespace {

constexpr int kRunOutPieces = 8;     // how finely a run-out along the cutting line is stepped
constexpr double kNoStretch = 1e-9;  // mm: shorter runs are not shown

/// A kerf as the level line meets it: place along the line and across it change evenly with x.
struct Crossing {
    const SolvedLine* line = nullptr;
    const Kerf* kerf = nullptr;
    double bladeRadius = 0;
    double alongAt0 = 0;
    double alongPerX = 0;
    double from = 0;
    double to = 0;
};

/// The x for which low <= at0 + perX * x <= high, narrowed from [from, to].
void narrow(double at0, double perX, double low, double high, double& from, double& to) {
    if (perX == 0) {
        if (at0 < low || at0 > high) to = from - 1;
        return;
    }
    const double a = (low - at0) / perX;
    const double b = (high - at0) / perX;
    from = std::max(from, std::min(a, b));
    to = std::min(to, std::max(a, b));
}

std::optional<Crossing> crossingOf(const Project& project, const SolvedLine& line, const Kerf& kerf,
                                   double height) {
    const Point along = unit(line.to - line.from);
    const Point across = (kerf.side == Side::Left ? 1.0 : -1.0) * leftOf(along);
    const Point origin = Point{0, height} - line.from;
    Crossing crossing{&line, &kerf, 0, dot(origin, along), along.x, 0, project.panel.width};
    narrow(dot(origin, across), across.x, 0, kerf.width, crossing.from, crossing.to);
    if (kerf.stopped) {
        narrow(crossing.alongAt0, crossing.alongPerX, kerf.surfaceFrom, kerf.surfaceTo, crossing.from,
               crossing.to);
    }
    if (!(crossing.to - crossing.from > kNoStretch)) return std::nullopt;
    const std::vector<Saw>& saws = benchOf(project).saws;
    if (kerf.saw && *kerf.saw < saws.size()) crossing.bladeRadius = saws[*kerf.saw].blade / 2;
    return crossing;
}

/// How deep the kerf is at x; less than its whole depth in the blade's run-out.
double depthAt(const Crossing& crossing, double x) {
    const Kerf& kerf = *crossing.kerf;
    const double along = crossing.alongAt0 + crossing.alongPerX * x;
    const double past = std::max({0.0, kerf.fullFrom - along, along - kerf.fullTo});
    if (!kerf.stopped || past == 0) return kerf.depth;
    const double radius = crossing.bladeRadius;
    if (past >= radius) return 0;
    return std::max(0.0, std::sqrt(radius * radius - past * past) - (radius - kerf.depth));
}

void addBreaks(const Crossing& crossing, std::vector<double>& breaks) {
    breaks.push_back(crossing.from);
    breaks.push_back(crossing.to);
    const Kerf& kerf = *crossing.kerf;
    if (!kerf.stopped || crossing.alongPerX == 0) return;
    const auto placeOf = [&](double along) { return (along - crossing.alongAt0) / crossing.alongPerX; };
    for (const auto& [full, surface] :
         {std::pair{kerf.fullFrom, kerf.surfaceFrom}, std::pair{kerf.fullTo, kerf.surfaceTo}}) {
        for (int i = 0; i < kRunOutPieces; ++i) {
            const double x = placeOf(full + (surface - full) * i / kRunOutPieces);
            if (x > crossing.from && x < crossing.to) breaks.push_back(x);
        }
    }
}

SectionRun runAt(double from, double to, const std::vector<Crossing>& kerfs,
                 const std::vector<std::pair<double, double>>& openings) {
    const double middle = (from + to) / 2;
    SectionRun run{SectionRun::Kind::Wood, from, to, 0, {}};
    for (const auto& [low, high] : openings) {
        if (middle > low && middle < high) {
            run.kind = SectionRun::Kind::Opening;
            return run;
        }
    }
    for (const Crossing& kerf : kerfs) {
        if (middle < kerf.from || middle > kerf.to) continue;
        const double depth = depthAt(kerf, middle);
        if (depth <= run.depth) continue;
        run.kind = SectionRun::Kind::Kerf;
        run.depth = depth;
        run.line = kerf.line->id;
    }
    return run;
}

}  // namespace

std::vector<SectionRun> sectionAt(const Project& project, const Solved& solved, double height) {
    std::vector<double> breaks{0, project.panel.width};
    std::vector<Crossing> kerfs;
    for (const SolvedLine& line : solved.lines) {
        for (const Kerf& kerf : line.kerfs) {
            if (const auto crossing = crossingOf(project, line, kerf, height)) {
                addBreaks(*crossing, breaks);
                kerfs.push_back(*crossing);
            }
        }
    }
    std::vector<std::pair<double, double>> openings;
    for (const SolvedCutout& cutout : solved.cutouts) {
        const std::vector<double> at = crossings(cutout.opening.loops, {0, height}, {1, 0});
        for (std::size_t i = 0; i + 1 < at.size(); i += 2) {
            openings.emplace_back(at[i], at[i + 1]);
            breaks.push_back(std::clamp(at[i], 0.0, project.panel.width));
            breaks.push_back(std::clamp(at[i + 1], 0.0, project.panel.width));
        }
    }
    std::ranges::sort(breaks);
    std::vector<SectionRun> runs;
    double from = 0;
    for (const double to : breaks) {
        if (to - from <= kNoStretch && to < project.panel.width) continue;
        if (to <= from) continue;
        const SectionRun next = runAt(from, to, kerfs, openings);
        from = to;
        const bool same = !runs.empty() && runs.back().kind == next.kind && runs.back().depth == next.depth &&
                          runs.back().line == next.line;
        if (same) {
            runs.back().to = to;
        } else {
            runs.push_back(next);
        }
    }
    return runs;
}

}  // namespace kerfwall
