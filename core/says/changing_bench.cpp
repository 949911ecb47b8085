// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/changing_bench.h"

#include <algorithm>

#include "core/says/length_text.h"

namespace kerfwall {
namespace {

std::string freshSawId(const Bench& bench, const std::string& usual) {
    std::string id = usual;
    for (int number = 2; findSaw(bench, id); ++number) id = usual + "-" + std::to_string(number);
    return id;
}

void forgetLostSaws(Project& project) {
    for (LayoutLine& line : project.lines) {
        if (line.saw && !findSaw(benchOf(project), *line.saw)) line.saw.reset();
    }
}

}  // namespace

Bench& ownBench(Project& project) {
    if (!project.bench) project.bench = stockBench();
    return *project.bench;
}

TrimBit& ownTrimBit(Project& project) {
    Bench& bench = ownBench(project);
    if (!bench.trimBit) bench.trimBit = TrimBit{};
    return *bench.trimBit;
}

Project withSaw(const Project& project, SawKind kind) {
    Project next = project;
    Bench& bench = ownBench(next);
    Saw saw = stockSaw(kind);
    saw.id = freshSawId(bench, saw.id);
    bench.saws.push_back(std::move(saw));
    return next;
}

Project withoutSaw(const Project& project, std::size_t saw) {
    Project next = project;
    std::vector<Saw>& saws = ownBench(next).saws;
    saws.erase(saws.begin() + static_cast<std::ptrdiff_t>(saw));
    forgetLostSaws(next);
    return next;
}

std::expected<Project, std::string> withSawCalled(const Project& project, std::size_t saw, const std::string& id) {
    Project next = project;
    Saw& named = ownBench(next).saws.at(saw);
    if (id.empty()) return std::unexpected("A saw needs a name; lines name it by that.");
    if (id == named.id) return next;
    if (findSaw(*next.bench, id)) return std::unexpected("There is a saw called " + id + " already; give this one another name.");
    for (LayoutLine& line : next.lines) {
        if (line.saw == named.id) line.saw = id;
    }
    named.id = id;
    return next;
}

std::expected<Project, std::string> withBench(const Project& project, const Bench& bench) {
    Project next = project;
    next.bench = bench;
    const double depth = kerfDepthOf(next);
    const auto small = std::ranges::find_if(bench.saws, [&](const Saw& saw) { return saw.blade <= 2 * depth; });
    if (small != bench.saws.end()) {
        return std::unexpected("The blade of saw " + small->id + " is not more than twice as wide as the kerfs are deep, " +
                               lengthWithUnit(depth, project.units) + "; set a lesser depth first.");
    }
    forgetLostSaws(next);
    return next;
}

}  // namespace kerfwall
