// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/saw_choice.h"

#include <algorithm>
#include <cmath>

#include "core/shop/heading.h"

namespace kerfwall {

namespace {

/// A wedge steeper than this slides along the sled's fence, degrees. Common practice, no source.
constexpr double kSteepestWedge = 10;

/// Whether the saw reaches the run with that edge on its fence. A rail lies on the marks and needs none.
bool reaches(const Saw& saw, const LineRun& run, Edge against, const Panel& panel) {
    const Heading heading = headingFrom(against, run.from, run.to);
    const double lean = std::abs(leanFrom(against, run.from, run.to));
    const double cut = distance(run.from, run.to);
    switch (saw.kind) {
        case SawKind::RipFence:
            return heading == Heading::Along && depthFrom(against, run.from, panel) <= saw.maxFence;
        case SawKind::CrosscutSled: return lean <= kSteepestWedge && cut <= saw.maxCut;
        case SawKind::MitreGauge: return lean <= saw.maxAngle;
        case SawKind::GuideRail: return cut <= saw.railLength;
        case SawKind::SlidingMitre: return lean <= saw.maxAngle && cut <= saw.maxCut;
    }
    return false;
}

std::vector<SawKind> likedKinds(const Project& project, const LineRun& run) {
    using enum SawKind;
    if (project.lines.at(run.line).extent == Extent::Stopped) {
        return {GuideRail, SlidingMitre};
    }
    switch (headingFrom(project.panel.referenceEdge, run.from, run.to)) {
        case Heading::Along: return {RipFence, CrosscutSled, MitreGauge, GuideRail, SlidingMitre};
        case Heading::Square: return {CrosscutSled, MitreGauge, RipFence, SlidingMitre, GuideRail};
        case Heading::Askew: break;
    }
    if (project.plan.prefer == Prefer::SeenLines) {
        return {GuideRail, SlidingMitre, MitreGauge, CrosscutSled};
    }
    return {MitreGauge, GuideRail, SlidingMitre, CrosscutSled};
}

std::optional<std::size_t> sawNamed(const Bench& bench, const std::string& id) {
    const auto found = std::ranges::find(bench.saws, id, &Saw::id);
    if (found == bench.saws.end()) {
        return std::nullopt;
    }
    return static_cast<std::size_t>(found - bench.saws.begin());
}

std::optional<std::size_t> sawOfKind(const Project& project, const LineRun& run, SawKind kind) {
    const std::vector<Saw>& saws = benchOf(project).saws;
    for (const Edge against : trueEdges(project.panel)) {
        for (std::size_t i = 0; i < saws.size(); ++i) {
            if (saws[i].kind == kind && reaches(saws[i], run, against, project.panel)) {
                return i;
            }
        }
    }
    return std::nullopt;
}

std::optional<std::size_t> chooseSaw(const Project& project, const LineRun& run) {
    if (const auto& named = project.lines.at(run.line).saw) {
        return sawNamed(benchOf(project), *named);
    }
    for (const SawKind kind : likedKinds(project, run)) {
        if (const auto saw = sawOfKind(project, run, kind)) {
            return saw;
        }
    }
    return std::nullopt;
}

}  // namespace

std::vector<std::optional<std::size_t>> chooseSaws(const Project& project,
                                                   const std::vector<LineRun>& runs) {
    std::vector<std::optional<std::size_t>> saws;
    saws.reserve(runs.size());
    for (const LineRun& run : runs) {
        saws.push_back(chooseSaw(project, run));
    }
    return saws;
}

}  // namespace kerfwall
