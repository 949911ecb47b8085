// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/kerf_steps.h"

#include <algorithm>
#include <set>
#include <tuple>

#include "core/shop/cautions.h"
#include "core/shop/kerf_text.h"

namespace kerfwall {

namespace {

/// A line that names a saw which cannot cut it, or that no saw on the bench can: only its marks are left.
Way markedWay(std::optional<std::size_t> saw) {
    Way way;
    way.saw = saw;
    way.toMarks = true;
    way.beyondSaw = true;
    return way;
}

Way bestWay(const Project& project, const SolvedLine& line, const Kerf& kerf) {
    if (!kerf.saw) {
        return markedWay(std::nullopt);
    }
    const std::vector<Way> ways = waysAt(project, *kerf.saw, askedOf(line, kerf));
    return ways.empty() ? markedWay(kerf.saw) : ways.front();
}

}  // namespace

std::vector<PlannedKerf> plannedKerfs(const Project& project, const Solved& solved) {
    std::vector<PlannedKerf> planned;
    for (std::size_t i = 0; i < solved.lines.size(); ++i) {
        for (std::size_t k = 0; k < solved.lines[i].kerfs.size(); ++k) {
            planned.push_back({i, k, bestWay(project, solved.lines[i], solved.lines[i].kerfs[k])});
        }
    }
    std::ranges::stable_sort(planned, {}, [&](const PlannedKerf& kerf) {
        const std::size_t last = benchOf(project).saws.size();
        return std::tuple(kerf.way.saw.value_or(last), solved.lines[kerf.line].kerfs[kerf.kerf].stopped);
    });
    return planned;
}

namespace {

/// Every set-up any plan could cut the kerf with.
std::set<std::string> possibleSetups(const Project& project, const SolvedLine& line, const Kerf& kerf) {
    std::set<std::string> keys;
    for (std::size_t saw = 0; saw < benchOf(project).saws.size(); ++saw) {
        for (const Way& way : waysAt(project, saw, askedOf(line, kerf))) {
            keys.insert(setupKey(way, line.id));
        }
    }
    keys.insert(setupKey(bestWay(project, line, kerf), line.id));
    return keys;
}

/// Kerfs no two of which can share a set-up, picked greedily, those with the fewest ways first: each needs
/// one of its own, whatever the plan.
int boundBelow(const Project& project, const Solved& solved) {
    std::vector<std::set<std::string>> kerfs;
    for (const SolvedLine& line : solved.lines) {
        for (const Kerf& kerf : line.kerfs) {
            kerfs.push_back(possibleSetups(project, line, kerf));
        }
    }
    std::ranges::sort(kerfs, [](const auto& one, const auto& other) {
        return one.size() != other.size() ? one.size() < other.size() : one < other;
    });
    std::set<std::string> taken;
    int bound = 0;
    for (const auto& keys : kerfs) {
        if (std::ranges::none_of(keys, [&](const std::string& key) { return taken.contains(key); })) {
            taken.insert(keys.begin(), keys.end());
            ++bound;
        }
    }
    return bound;
}

/// What one step holds. Cut to marks, the two sides of one line are two steps of one set-up.
std::string stepKey(const PlannedKerf& planned, const SolvedLine& line) {
    const Way& way = planned.way;
    const auto edge = [](std::optional<Edge> is) { return is ? std::to_string(static_cast<int>(*is)) : "-"; };
    return setupKey(way, line.id) + " against " + edge(way.against) + " end " + edge(way.stopEdge) +
           (way.toMarks ? " kerf " + std::to_string(planned.kerf) : "");
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
        way.saw ? sawCautions(project, benchOf(project).saws[*way.saw].kind) : taskCautions(Task::Kerf);
    return step;
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
    std::set<std::string> setups;
    for (const PlannedKerf& planned : plannedKerfs(project, solved)) {
        const SolvedLine& line = solved.lines[planned.line];
        setups.insert(setupKey(planned.way, line.id));
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
    answer.lowerBound = boundBelow(project, solved);
    for (const auto& [key, planned] : groups) {
        answer.steps.push_back(stepOf(project, solved, planned));
    }
    return answer;
}

}  // namespace kerfwall
