// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/work_reasons.h"

#include <algorithm>
#include <span>

#include "core/shop/heading.h"
#include "core/shop/limits.h"

namespace kerfwall {
namespace {

constexpr const char* kThinBorder = "Through kerfs come before stopped ones, which spare a thin border.";
constexpr const char* kGroove = "Grooves for a fence are cut while the panel still has its reference edge.";

bool sharesLine(const WorkStep& one, const WorkStep& other) {
    return std::ranges::any_of(one.lines, [&](const LineId& line) {
        return std::ranges::find(other.lines, line) != other.lines.end();
    });
}

/// A kerf waits only for the bores on its own lines; other work waits for every step of the task before it.
bool waitsFor(const WorkStep& step, const WorkStep& earlier, const WorkRule& rule) {
    if (step.task != rule.then || earlier.task != rule.first || isGroove(earlier)) return false;
    return rule.first != Task::Bore || rule.then != Task::Kerf || sharesLine(step, earlier);
}

bool sparesThinBorder(const WorkStep& step, const Project& project, const Solved& solved) {
    return step.setting.plunge && std::ranges::any_of(step.lines, [&](const LineId& id) {
        const SolvedLine* line = findLine(solved, id);
        return line && kerfwall::sparesThinBorder(project, *line);
    });
}

std::string becauseOf(const WorkStep& step, std::span<const WorkStep> before) {
    if (isGroove(step)) return kGroove;
    for (const WorkRule& rule : workRules()) {
        if (std::ranges::any_of(before, [&](const WorkStep& each) { return waitsFor(step, each, rule); })) {
            return rule.because;
        }
    }
    return "";
}

}  // namespace

const std::vector<WorkRule>& workRules() {
    using enum Task;
    static const std::vector<WorkRule> rules{
        {Mark, Mark, "The edge is trued before anything is measured from it."},
        {Mark, Bore, "The edges are checked before centres are measured from them."},
        {Bore, Kerf, "Bores come before the kerfs that must touch them."},
        {Mark, Kerf, "Marks come before the kerfs that are cut to them."},
        {Kerf, Drill, "Kerfs come before the relief holes, which stand between them."},
        {Drill, Rough, "Holes come before the rough cut, which starts and turns in them."},
        {Kerf, Rough, "Kerfs come before the rough cut, which runs inside them."},
        {Rough, Trim, "The rough cut comes before trimming: nothing may stand in the bearing's way."},
        {Trim, Hand, "Trimming stops at the bores; what it leaves there is cleaned after it."},
        {Trim, Fence, "Fences are fixed when no saw or router has to pass them any more."},
        {Fence, Hole, "Clamp holes come last, with the depth stop, when nothing more weakens the panel."},
        {Trim, Hole, "Clamp holes come last, with the depth stop, when nothing more weakens the panel."},
    };
    return rules;
}

bool isGroove(const WorkStep& step) { return step.task == Task::Fence && step.setting.depth; }

bool sparesThinBorder(const Project& project, const SolvedLine& line) {
    const double care = limitsOf("border-thin", project).care.value_or(0);
    const double run = distance(line.from, line.to);
    const auto isThin = [&](double border) { return border > kAtTheEdge && border < care - kOnLimit; };
    return std::ranges::any_of(line.kerfs, [&](const Kerf& kerf) {
        return kerf.stopped && (isThin(kerf.fullFrom) || isThin(run - kerf.fullTo));
    });
}

void sortThinBordersLast(std::vector<WorkStep>& kerfs, const Project& project, const Solved& solved) {
    std::ranges::stable_partition(
        kerfs, [&](const WorkStep& step) { return !sparesThinBorder(step, project, solved); });
}

void giveReasons(std::vector<WorkStep>& steps, const Project& project, const Solved& solved) {
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const std::span<const WorkStep> before(steps.data(), i);
        const bool afterThrough = std::ranges::any_of(
            before, [](const WorkStep& each) { return each.task == Task::Kerf && !each.setting.plunge; });
        const bool thin = afterThrough && steps[i].task == Task::Kerf && sparesThinBorder(steps[i], project, solved);
        steps[i].because = thin ? kThinBorder : becauseOf(steps[i], before);
    }
}

}  // namespace kerfwall
