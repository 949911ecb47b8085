// SPDX-License-Identifier: GPL-3.0-or-later
// What the checks of the engine's own answer cost beside the recomputing they are part of: both timed in turn in
// one run, so that a busy machine slows both. `share` is checks over everything recomputed, in the processor's time.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <ctime>
#include <string>

#include "core/geometry/solve.h"
#include "core/shop/finding.h"
#include "core/shop/order_of_work.h"
#include "tests/bench/bench_layouts.h"
#include "tests/core/geometry/claimed.h"

namespace kerfwall::bench {
namespace {

double secondsNow() {
    timespec now{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

/// The least of some repetitions: what else the machine does only adds.
struct Least {
    double seconds = 1e9;
    template <class Do>
    void time(const Do& act) {
        const double start = secondsNow();
        act();
        seconds = std::min(seconds, secondsNow() - start);
    }
};

void checks(benchmark::State& state, const Project& project) {
    const std::vector<test::Claimed> claims = test::claimed(project);
    Least all;
    Least geometry;
    Least proof;
    for (auto _ : state) {
        Solved solved;
        geometry.time([&] { solved = solve(project); });
        all.time([&] {
            const Solved again = solve(project);
            benchmark::DoNotOptimize(findings(project, again));
            benchmark::DoNotOptimize(plan(project, again));
        });
        proof.time([&] {
            for (const test::Claimed& claim : claims) benchmark::DoNotOptimize(claim.doubts());
            for (const SolvedCutout& cutout : solved.cutouts) {
                benchmark::DoNotOptimize(doubtsAbout(cutout, solved.bitRadius));
            }
        });
    }
    state.counters["checks_ms"] = 1e3 * proof.seconds;
    state.counters["all_ms"] = 1e3 * all.seconds;
    state.counters["share_of_solve"] = proof.seconds / geometry.seconds;
    state.counters["share"] = proof.seconds / all.seconds;
}

BENCHMARK_CAPTURE(checks, , roundCutout(40))->Name("checks_40_lines")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(checks, , roundCutout(200))->Name("checks_200_lines")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(checks, , windows(40))->Name("checks_40_lines_in_windows")->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace kerfwall::bench
