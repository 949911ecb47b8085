// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/kerf_steps.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>
#include <tuple>

#include "core/shop/cautions.h"
#include "core/shop/heading.h"
#include "core/shop/kerf_text.h"
#include "core/shop/word_list.h"

namespace kerfwall {

namespace {

Way chosenWay(const Project& project, const SolvedLine& line, const Kerf& kerf) {
    if (!kerf.saw) {
        return markedWay(std::nullopt);
    }
    const std::vector<Way> ways = waysAt(project, *kerf.saw, askedOf(line, kerf));
    return kerf.way < ways.size() ? ways[kerf.way] : markedWay(kerf.saw);
}

/// Saws that stop no kerf first, through kerfs before stopped ones; at one saw angle by angle and edge by edge on the
/// fence (a set-up for several edges with the first of them), from the nearest setting to the farthest.
void putInOrder(std::vector<PlannedKerf>& planned, const Project& project, const Solved& solved) {
    const std::size_t last = benchOf(project).saws.size();
    const auto isStopped = [&](const PlannedKerf& is) { return solved.lines[is.line].kerfs[is.kerf].stopped; };
    std::set<std::size_t> stopping;
    for (const PlannedKerf& is : planned) {
        if (isStopped(is)) stopping.insert(is.way.saw.value_or(last));
    }
    const auto rank = [&](const PlannedKerf& is) {
        const auto edges = trueEdges(project.panel);
        return is.way.against ? std::ranges::find(edges, *is.way.against) - edges.begin() : 0;
    };
    std::map<std::string, std::ptrdiff_t> firstEdge;
    std::vector<std::ptrdiff_t*> firstOf;  // beside `planned`: its set-up's first edge
    for (const PlannedKerf& is : planned) {
        const auto [known, isNew] = firstEdge.try_emplace(setupKey(is.way, solved.lines[is.line].id), rank(is));
        known->second = std::min(known->second, rank(is));
        firstOf.push_back(&known->second);
    }
    const auto placeOf = [&](std::size_t i) {
        const PlannedKerf& is = planned[i];
        const std::size_t saw = is.way.saw.value_or(last);
        const Setting& set = is.way.setting;
        return std::tuple(stopping.contains(saw), saw, isStopped(is), is.way.toMarks, set.angle.value_or(0), is.way.turn,
                          *firstOf[i], is.way.stopSide, set.fence ? *set.fence : set.stop.value_or(0), rank(is));
    };
    std::vector<std::size_t> order(planned.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, placeOf);
    std::vector<PlannedKerf> sorted;
    for (const std::size_t i : order) sorted.push_back(planned[i]);
    planned = std::move(sorted);
}

}  // namespace

std::vector<PlannedKerf> plannedKerfs(const Project& project, const Solved& solved) {
    std::vector<PlannedKerf> planned;
    for (std::size_t i = 0; i < solved.lines.size(); ++i) {
        for (std::size_t k = 0; k < solved.lines[i].kerfs.size(); ++k) {
            planned.push_back({i, k, chosenWay(project, solved.lines[i], solved.lines[i].kerfs[k])});
        }
    }
    putInOrder(planned, project, solved);
    return planned;
}

namespace {

/// What one step holds. Cut to marks, the two sides of one line are two steps of one set-up.
std::string stepKey(const PlannedKerf& planned, const SolvedLine& line) {
    const Way& way = planned.way;
    const auto edge = [](std::optional<Edge> is) { return is ? std::to_string(static_cast<int>(*is)) : "-"; };
    return setupKey(way, line.id) + " against " + edge(way.against) + " end " + edge(way.stopEdge) +
           (way.toMarks ? " kerf " + std::to_string(planned.kerf) : "");
}

/// What is said where the setting is the step before's: only the panel is turned.
std::string turnedText(const Way& before, const Way& way, const std::vector<LineId>& lines) {
    if (!before.against || !way.against || *before.against == *way.against) {
        return "The setting stays as it is. ";
    }
    const bool endForEnd = *way.against == oppositeOf(*before.against);
    if (!endForEnd) {
        return "The setting stays as it is: turn the panel a quarter round. ";
    }
    return "The setting stays as it is: turn the panel end for end, and " + listText(lines) +
           " come out at the same distance from their edges, centred by themselves. ";
}

WorkStep stepOf(const Project& project, const Solved& solved, const std::vector<PlannedKerf>& planned) {
    const Way& way = planned.front().way;
    WorkStep step;
    step.task = Task::Kerf;
    step.saw = way.saw ? benchOf(project).saws[*way.saw].id : "";
    step.setting = way.setting;
    step.faceUp = way.faceUp;
    step.against = way.against;
    step.stopEdge = way.stopEdge;
    step.stopSide = way.stopSide;
    step.leads = way.leads;
    step.turn = way.turn;
    for (const PlannedKerf& kerf : planned) {
        const SolvedLine& line = solved.lines[kerf.line];
        step.lines.push_back(line.id);
        step.sides.push_back(line.kerfs[kerf.kerf].side);
        const std::vector<EdgeMark> marks = marksInView(line, way);
        step.see.insert(step.see.end(), marks.begin(), marks.end());
    }
    step.text = kerfText(project, solved, planned);
    step.cautions =
        way.saw ? sawCautions(project, benchOf(project).saws[*way.saw].kind, way.setting.plunge.has_value())
                : taskCautions(Task::Kerf);
    return step;
}

bool isSameSetup(const PlannedKerf& one, const PlannedKerf& other, const Solved& solved) {
    return setupKey(one.way, solved.lines[one.line].id) == setupKey(other.way, solved.lines[other.line].id);
}

std::vector<LineId> turnedLines(const std::vector<PlannedKerf>& before, const std::vector<PlannedKerf>& now,
                                const Solved& solved) {
    std::vector<LineId> lines;
    for (const auto* planned : {&before, &now}) {
        for (const PlannedKerf& kerf : *planned) {
            const LineId& id = solved.lines[kerf.line].id;
            if (std::ranges::find(lines, id) == lines.end()) {
                lines.push_back(id);
            }
        }
    }
    return lines;
}

}  // namespace

std::vector<EdgeMark> marksInView(const SolvedLine& line, const Way& way) {
    std::vector<EdgeMark> free;
    for (const LineMark& mark : line.marks) {
        if (mark.mark.edge != way.against) {
            free.push_back(mark.mark);
        }
    }
    const auto leading =
        std::ranges::find(free, way.leads, [](const EdgeMark& mark) { return std::optional(mark.edge); });
    if (way.against && leading != free.end()) {
        return {*leading};
    }
    return free;
}

KerfSteps kerfSteps(const Project& project, const Solved& solved) {
    std::vector<std::pair<std::string, std::vector<PlannedKerf>>> groups;
    std::map<std::string, Setting> setups;
    for (PlannedKerf& planned : plannedKerfs(project, solved)) {
        const SolvedLine& line = solved.lines[planned.line];
        // Worked out from two edges one setting differs in its last digits: it is told as it was first.
        planned.way.setting = setups.try_emplace(setupKey(planned.way, line.id), planned.way.setting).first->second;
        const std::string key = stepKey(planned, line);
        const auto known = std::ranges::find(groups, key, [](const auto& group) { return group.first; });
        if (known != groups.end()) {
            known->second.push_back(planned);
        } else {
            groups.push_back({key, {planned}});
        }
    }
    KerfSteps answer;
    answer.setups = static_cast<int>(setups.size());
    answer.lowerBound = std::min(solved.leastSetups, answer.setups);
    const std::vector<PlannedKerf>* before = nullptr;
    for (const auto& [key, planned] : groups) {
        WorkStep step = stepOf(project, solved, planned);
        if (before != nullptr && isSameSetup(before->front(), planned.front(), solved)) {
            step.text.insert(0, turnedText(before->front().way, planned.front().way, turnedLines(*before, planned, solved)));
        }
        answer.steps.push_back(std::move(step));
        before = &planned;
    }
    return answer;
}

}  // namespace kerfwall
