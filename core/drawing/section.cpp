// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/section.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "core/drawing/hatch.h"

namespace kerfwall {
namespace {

constexpr int kRunOutPieces = 8;     // how finely a run-out along the cutting line is stepped
constexpr double kNoStretch = 1e-9;  // mm: shorter runs are not shown

/// A kerf as the cutting line meets it: the place along the kerf changes evenly with that along the cut.
struct Crossing {
    const SolvedLine* line = nullptr;
    const Kerf* kerf = nullptr;
    double bladeRadius = 0;
    double alongAt0 = 0;
    double alongPerMm = 0;
    double from = 0;
    double to = 0;
};

/// The places s for which low <= at0 + perMm * s <= high, narrowed from [from, to].
void narrow(double at0, double perMm, double low, double high, double& from, double& to) {
    if (perMm == 0) {
        if (at0 < low || at0 > high) to = from - 1;
        return;
    }
    const double a = (low - at0) / perMm;
    const double b = (high - at0) / perMm;
    from = std::max(from, std::min(a, b));
    to = std::min(to, std::max(a, b));
}

std::optional<Crossing> crossingOf(const Project& project, const SolvedLine& line, const Kerf& kerf,
                                   const CuttingLine& cut) {
    const Point heading = cutHeading(cut.direction);
    const Point along = unit(line.to - line.from);
    const Point across = (kerf.side == Side::Left ? 1.0 : -1.0) * leftOf(along);
    const Point origin = onCut(cut, 0) - line.from;
    Crossing crossing{
        &line, &kerf, 0, dot(origin, along), dot(heading, along), 0, cutLength(project.panel, cut.direction)};
    narrow(dot(origin, across), dot(heading, across), 0, kerf.width, crossing.from, crossing.to);
    if (kerf.stopped) {
        narrow(crossing.alongAt0, crossing.alongPerMm, kerf.surfaceFrom, kerf.surfaceTo, crossing.from,
               crossing.to);
    }
    if (!(crossing.to - crossing.from > kNoStretch)) return std::nullopt;
    const std::vector<Saw>& saws = benchOf(project).saws;
    if (kerf.saw && *kerf.saw < saws.size()) crossing.bladeRadius = saws[*kerf.saw].blade / 2;
    return crossing;
}

/// How deep the kerf is at that place along the cut; less than its whole depth in the blade's run-out.
double depthAt(const Crossing& crossing, double place) {
    const Kerf& kerf = *crossing.kerf;
    const double along = crossing.alongAt0 + crossing.alongPerMm * place;
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
    if (!kerf.stopped || crossing.alongPerMm == 0) return;
    const auto placeOf = [&](double along) { return (along - crossing.alongAt0) / crossing.alongPerMm; };
    for (const auto& [full, surface] :
         {std::pair{kerf.fullFrom, kerf.surfaceFrom}, std::pair{kerf.fullTo, kerf.surfaceTo}}) {
        for (int i = 0; i < kRunOutPieces; ++i) {
            const double place = placeOf(full + (surface - full) * i / kRunOutPieces);
            if (place > crossing.from && place < crossing.to) breaks.push_back(place);
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

std::vector<SectionRun> sectionAt(const Project& project, const Solved& solved, const CuttingLine& cut) {
    const double length = cutLength(project.panel, cut.direction);
    std::vector<double> breaks{0, length};
    std::vector<Crossing> kerfs;
    for (const SolvedLine& line : solved.lines) {
        for (const Kerf& kerf : line.kerfs) {
            if (const auto crossing = crossingOf(project, line, kerf, cut)) {
                addBreaks(*crossing, breaks);
                kerfs.push_back(*crossing);
            }
        }
    }
    std::vector<std::pair<double, double>> openings;
    for (const SolvedCutout& cutout : solved.cutouts) {
        const std::vector<double> at =
            crossings(cutout.opening.loops, onCut(cut, 0), cutHeading(cut.direction));
        for (std::size_t i = 0; i + 1 < at.size(); i += 2) {
            openings.emplace_back(at[i], at[i + 1]);
            breaks.push_back(std::clamp(at[i], 0.0, length));
            breaks.push_back(std::clamp(at[i + 1], 0.0, length));
        }
    }
    std::ranges::sort(breaks);
    std::vector<SectionRun> runs;
    double from = 0;
    for (const double to : breaks) {
        if (to - from <= kNoStretch && to < length) continue;
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

std::vector<double> projectedPlaces(const Project& project, const Solved& solved, const CuttingLine& cut) {
    std::vector<double> places{0, cutLength(project.panel, cut.direction)};
    for (const SectionRun& run : sectionAt(project, solved, cut)) {
        if (run.kind == SectionRun::Kind::Opening) places.insert(places.end(), {run.from, run.to});
    }
    return places;
}

}  // namespace kerfwall
