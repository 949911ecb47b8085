// SPDX-License-Identifier: GPL-3.0-or-later
// What a drag recomputes: geometry, what to mind, the order of work. Medians over repetitions; the same
// question asked of a general polygon library in the same run.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <vector>

#include "core/geometry/solve.h"
#include "core/shop/finding.h"
#include "core/shop/order_of_work.h"
#include "tests/bench/bench_layouts.h"
#include "tests/oracle/clipper_opening.h"

namespace kerfwall::bench {
namespace {

constexpr int kPlaces = 8;  // places the dragged line is put to in turn

std::vector<Project> drag(const Project& project) {
    std::vector<Project> places;
    for (int step = 0; step < kPlaces; ++step) places.push_back(dragged(project, step));
    return places;
}

void recompute(benchmark::State& state, const Project& project, bool all) {
    const std::vector<Project> places = drag(project);
    std::size_t at = 0;
    for (auto _ : state) {
        const Project& place = places[at++ % kPlaces];
        const Solved solved = solve(place);
        if (all) {
            benchmark::DoNotOptimize(findings(place, solved));
            benchmark::DoNotOptimize(plan(place, solved));
        }
        benchmark::DoNotOptimize(solved);
    }
}

void dragWindows(benchmark::State& state) {
    recompute(state, windows(static_cast<int>(state.range(0))), true);
}
/// Every kerf nicks other windows' walls and is stopped by the program: solved once through, once stopped.
void dragWindowsThatStop(benchmark::State& state) {
    Project project = windows(static_cast<int>(state.range(0)));
    for (LayoutLine& line : project.lines) line.extent = Extent::Auto;
    recompute(state, project, true);
}
void dragRound(benchmark::State& state) {
    recompute(state, roundCutout(static_cast<int>(state.range(0))), true);
}
void solveRound(benchmark::State& state) {
    recompute(state, roundCutout(static_cast<int>(state.range(0))), false);
}
// The opening alone, by union and offset at 1 nm with arcs to 5e-5 mm; faces and kerfs are given to it.
void offsetRound(benchmark::State& state) {
    const auto layout = oracle::plainLayout(roundCutout(static_cast<int>(state.range(0))));
    for (auto _ : state)
        benchmark::DoNotOptimize(oracle::clipperOpening({&*layout, 0, layout->bitRadius, layout->bitRadius}));
}

void repeated(benchmark::internal::Benchmark* bench) {
    bench->Arg(12)->Arg(40)->Arg(200)->Unit(benchmark::kMillisecond)->Repetitions(5)->ReportAggregatesOnly();
}

BENCHMARK(dragWindows)->Apply(repeated);
BENCHMARK(dragWindowsThatStop)->Apply(repeated);
BENCHMARK(dragRound)->Apply(repeated);
BENCHMARK(solveRound)->Apply(repeated);
BENCHMARK(offsetRound)
    ->Arg(12)
    ->Arg(40)
    ->Unit(benchmark::kMillisecond)
    ->Repetitions(3)
    ->ReportAggregatesOnly();

}  // namespace
}  // namespace kerfwall::bench
