// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>
#include <sys/resource.h>

#include "core/says/project_text.h"
#include "tests/commands/crowded_projects.h"
#include "tests/commands/program.h"

namespace kerfwall {
namespace {

struct Spent {
    double seconds = 0;  ///< of processor time, by all children so far
    double megabytes = 0;  ///< the most that one of them held
};

Spent spentByChildren() {
    rusage used{};
    getrusage(RUSAGE_CHILDREN, &used);
    const auto seconds = [](const timeval& t) { return static_cast<double>(t.tv_sec) + 1e-6 * static_cast<double>(t.tv_usec); };
    return {seconds(used.ru_utime) + seconds(used.ru_stime), static_cast<double>(used.ru_maxrss) / 1024};
}

class Limits : public testing::TestWithParam<CrowdedProject> {};

// Expected from: the promise that any project within the file's limits is answered within 2 s and 500 MB. A guard
// against ways that never end, in processor time, which a busy machine does not lengthen.
TEST_P(Limits, AFullProjectIsAnsweredInTwoSecondsAndFiveHundredMegabytes) {
    const Workbench bench;
    bench.write(QStringLiteral("crowded.kerfwall"), writeProject(GetParam().project));
    const double before = spentByChildren().seconds;
    const Answer answer = bench.run({QStringLiteral("report"), QStringLiteral("crowded.kerfwall")});
    const Spent spent = spentByChildren();
    EXPECT_TRUE(answer.status == 0 || answer.status == 1) << answer.err.toStdString();
    EXPECT_TRUE(answer.out.endsWith("}\n"));
    EXPECT_LT(spent.seconds - before, 2);
    EXPECT_LT(spent.megabytes, 500);
}

INSTANTIATE_TEST_SUITE_P(Crowded, Limits, testing::ValuesIn(crowdedProjects()),
                         [](const auto& crowded) { return crowded.param.name; });

}  // namespace
}  // namespace kerfwall
