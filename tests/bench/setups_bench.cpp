// SPDX-License-Identifier: GPL-3.0-or-later
// The fewest set-ups: ways for all kerfs chosen together, 40 kerfs of two seeds and 200. The same set-ups and
// kerfs asked of a general integer programming library in the same run, where that is installed.
#include <benchmark/benchmark.h>

#include <map>
#include <set>

#include "core/shop/cut_choice.h"
#include "tests/oracle/setup_questions.h"

#ifdef KERFWALL_GLPK
#include <glpk.h>
#endif

namespace kerfwall::bench {
namespace {

void chooseSetups(benchmark::State& state) {
    const oracle::SetupQuestion question =
        oracle::setupQuestion(static_cast<int>(state.range(0)), static_cast<std::uint64_t>(state.range(1)));
    ChosenCuts chosen;
    for (auto _ : state) {
        chosen = chooseCuts(question.project, question.cuts);
        benchmark::DoNotOptimize(chosen);
    }
    state.counters["setups"] = chosen.setups;
    state.counters["bound"] = chosen.lowerBound;
}
BENCHMARK(chooseSetups)
    ->Args({40, 1})
    ->Args({40, 2})
    ->Args({200, 1})
    ->Args({200, 2})
    ->Unit(benchmark::kMillisecond);

#ifdef KERFWALL_GLPK
/// One column a set-up, one row a kerf that some column must do.
void generalSetups(benchmark::State& state) {
    const oracle::SetupQuestion question =
        oracle::setupQuestion(static_cast<int>(state.range(0)), static_cast<std::uint64_t>(state.range(1)));
    std::map<std::string, std::set<int>> kerfsOf;
    for (std::size_t i = 0; i < question.cuts.size(); ++i) {
        for (const KerfWay& way : kerfWays(question.project, question.cuts[i])) {
            kerfsOf[way.setup].insert(static_cast<int>(i) + 1);
        }
    }
    double least = 0;
    glp_term_out(GLP_OFF);
    for (auto _ : state) {
        glp_prob* asked = glp_create_prob();
        glp_add_rows(asked, static_cast<int>(question.cuts.size()));
        for (int row = 1; row <= static_cast<int>(question.cuts.size()); ++row) {
            glp_set_row_bnds(asked, row, GLP_LO, 1, 0);
        }
        int column = glp_add_cols(asked, static_cast<int>(kerfsOf.size()));
        for (const auto& [setup, kerfs] : kerfsOf) {
            std::vector<int> rows{0};
            rows.insert(rows.end(), kerfs.begin(), kerfs.end());
            const std::vector<double> ones(rows.size(), 1);
            glp_set_mat_col(asked, column, static_cast<int>(kerfs.size()), rows.data(), ones.data());
            glp_set_obj_coef(asked, column, 1);
            glp_set_col_kind(asked, column++, GLP_BV);
        }
        glp_iocp how;
        glp_init_iocp(&how);
        how.presolve = GLP_ON;
        how.tm_lim = 20'000;
        glp_intopt(asked, &how);
        least = glp_mip_obj_val(asked);
        glp_delete_prob(asked);
    }
    state.counters["setups"] = least;
}
BENCHMARK(generalSetups)
    ->Args({40, 1})
    ->Args({40, 2})
    ->Args({200, 1})
    ->Args({200, 2})
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1);
#endif

}  // namespace
}  // namespace kerfwall::bench
