// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/saw_choice.h"

#include <algorithm>

#include "core/shop/heading.h"
#include "core/shop/saw_reach.h"

namespace kerfwall {

namespace {

std::vector<SawKind> likedKinds(const Project& project, const LineRun& run) {
    using enum SawKind;
    if (project.lines.at(run.line).extent == Extent::Stopped) {
        return {GuideRail, SlidingMitre};
    }
    switch (headingFrom(project.panel.referenceEdge, run.from, run.to)) {
        case Heading::Along:
            return {RipFence, CrosscutSled, MitreGauge, GuideRail, SlidingMitre};
        case Heading::Square:
            return {CrosscutSled, MitreGauge, RipFence, SlidingMitre, GuideRail};
        case Heading::Askew:
            break;
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
    const bool stopped = project.lines.at(run.line).extent == Extent::Stopped;
    const AskedCut cut{run.from, run.to, kerfDepthOf(project), stopped};
    for (const Edge against : trueEdges(project.panel)) {
        for (std::size_t i = 0; i < saws.size(); ++i) {
            if (saws[i].kind == kind && reaches(saws[i], cut, against, project.panel)) {
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

std::vector<std::optional<std::size_t>> chooseSaws(const Project& project, const std::vector<LineRun>& runs) {
    std::vector<std::optional<std::size_t>> saws;
    saws.reserve(runs.size());
    for (const LineRun& run : runs) {
        saws.push_back(chooseSaw(project, run));
    }
    return saws;
}

}  // namespace kerfwall
