// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/panel_after.h"

#include <algorithm>

namespace kerfwall {
namespace {

template <typename Thing>
void append(std::vector<Thing>& all, const std::vector<Thing>& more) {
    all.insert(all.end(), more.begin(), more.end());
}

/// Two stopped kerfs on one side of a line are told apart by their plunge marks.
bool isCutBy(const WorkStep& step, std::size_t at, const Kerf& kerf) {
    if (step.sides.at(at) != kerf.side) return false;
    const auto& plunge = step.setting.plunge;
    return !plunge || !kerf.stopped || (plunge->fullFrom == kerf.fullFrom && plunge->fullTo == kerf.fullTo);
}

std::vector<KerfPlace> kerfsOf(const Solved& solved, const WorkStep& step) {
    std::vector<KerfPlace> places;
    for (std::size_t at = 0; at < step.sides.size(); ++at) {
        const auto line = std::ranges::find(solved.lines, step.lines.at(at), &SolvedLine::id);
        if (line == solved.lines.end()) continue;
        for (std::size_t kerf = 0; kerf < line->kerfs.size(); ++kerf) {
            const KerfPlace place{static_cast<std::size_t>(line - solved.lines.begin()), kerf};
            if (isCutBy(step, at, line->kerfs[kerf])) places.push_back(place);
        }
    }
    return places;
}

std::vector<std::size_t> cutoutOf(const Solved& solved, const WorkStep& step) {
    const auto cutout = std::ranges::find(solved.cutouts, step.cutout, &SolvedCutout::id);
    if (cutout == solved.cutouts.end() || cutout->opening.loops.empty()) return {};
    return {static_cast<std::size_t>(cutout - solved.cutouts.begin())};
}

}  // namespace

WorkDone doneBy(const Solved& solved, const WorkStep& step) {
    WorkDone done;
    switch (step.task) {
        case Task::Mark:
            done.marks = step.see;
            done.lines = step.lines;
            break;
        case Task::Bore:
        case Task::Drill:
            done.holes = step.bores;
            break;
        case Task::Kerf:
            done.kerfs = kerfsOf(solved, step);
            break;
        case Task::Rough:
            done.sawnOut = cutoutOf(solved, step);
            break;
        case Task::Trim:
            done.trimmed = cutoutOf(solved, step);
            break;
        case Task::Hand:
            done.cleaned = cutoutOf(solved, step);
            break;
        case Task::Hole:
            done.clampHoles = step.clampHoles;
            break;
        case Task::Fence:
            if (step.fence) (step.setting.depth ? done.grooves : done.fences) = {*step.fence};
            break;
        case Task::Label:
            break;
    }
    return done;
}

PanelAfter panelAfter(const Solved& solved, const OrderOfWork& order, std::size_t index) {
    PanelAfter after;
    for (std::size_t i = 0; i < index; ++i) {
        const WorkDone step = doneBy(solved, order.steps.at(i));
        append(after.before.marks, step.marks);
        append(after.before.lines, step.lines);
        append(after.before.kerfs, step.kerfs);
        append(after.before.holes, step.holes);
        append(after.before.sawnOut, step.sawnOut);
        append(after.before.trimmed, step.trimmed);
        append(after.before.cleaned, step.cleaned);
        append(after.before.clampHoles, step.clampHoles);
        append(after.before.grooves, step.grooves);
        append(after.before.fences, step.fences);
    }
    after.here = doneBy(solved, order.steps.at(index));
    return after;
}

}  // namespace kerfwall
