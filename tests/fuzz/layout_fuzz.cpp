// SPDX-License-Identifier: GPL-3.0-or-later
// Searches for layouts on which the engine is wrong in silence. See tests/oracle/judged.h.
#include <array>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

#include "core/says/project_text.h"
#include "tests/oracle/judged.h"
#include "tests/oracle/layout_from_bytes.h"

namespace {

using namespace kerfwall;

struct Tally {
    std::array<long, 4> verdicts{};
    long refused = 0;
    ~Tally() {
        std::fprintf(stderr, "agrees %ld, doubted %ld, unanswered %ld, wrong %ld, no layout %ld\n", verdicts[0],
                     verdicts[1], verdicts[2], verdicts[3], refused);
    }
};
Tally tally;

[[noreturn]] void report(const Project& project, const std::string& why) {
    std::fprintf(stderr, "%s\n%s\n", why.c_str(), writeProject(project).c_str());
    std::abort();
}

}  // namespace

// The exact route allocates without end: keeping a long stack of each allocation takes two thirds of the time.
extern "C" const char* __asan_default_options() { return "malloc_context_size=1:quarantine_size_mb=8"; }

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto project = oracle::layoutFromBytes({data, size});
    if (!project) {
        ++tally.refused;
        return -1;
    }
    const auto read = readProject(writeProject(*project));
    if (!read) report(*project, "the reader refuses the layout: " + read.error().pointer + " " + read.error().sentence);
    if (*read != *project) report(*project, "the layout does not come back from its file");
    const oracle::Judgement judged = oracle::judge(*project);
    ++tally.verdicts[static_cast<std::size_t>(judged.verdict)];
    if (judged.verdict == oracle::Verdict::Wrong) report(*project, judged.why);
    return 0;
}
