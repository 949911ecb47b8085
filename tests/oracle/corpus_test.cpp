// SPDX-License-Identifier: GPL-3.0-or-later
// The fuzz target's corpus, judged in every run of the tests.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "core/says/project_text.h"
#include "tests/oracle/judged.h"
#include "tests/oracle/layout_from_bytes.h"

namespace kerfwall::oracle {
namespace {

struct Spelt {
    std::string name;
    std::vector<std::uint8_t> bytes;
};

std::vector<Spelt> corpus() {
    std::vector<Spelt> all;
    for (const auto& entry : std::filesystem::directory_iterator(KERFWALL_CORPUS)) {
        std::ifstream file(entry.path(), std::ios::binary);
        all.push_back({entry.path().filename().string(), {std::istreambuf_iterator<char>(file), {}}});
    }
    std::ranges::sort(all, {}, &Spelt::name);
    return all;
}

// Expected from: the exact union of capsules, as `judge` has it.
TEST(Corpus, NoLayoutIsAnsweredWrongInSilence) {
    const std::vector<Spelt> all = corpus();
    ASSERT_FALSE(all.empty());
    std::size_t agreeing = 0;
    for (const Spelt& spelt : all) {
        SCOPED_TRACE(spelt.name);
        const auto project = layoutFromBytes(spelt.bytes);
        if (!project) continue;
        const Judgement judged = judge(*project);
        EXPECT_NE(judged.verdict, Verdict::Wrong) << judged.why;
        agreeing += judged.verdict == Verdict::Agrees ? 1 : 0;
    }
    EXPECT_GT(agreeing, all.size() / 4) << "a corpus that is doubted throughout judges nothing";
}

// Expected from: the project file's own rules; what is written reads back as an equal value.
TEST(Corpus, EveryLayoutIsOneTheProjectFileAccepts) {
    for (const Spelt& spelt : corpus()) {
        SCOPED_TRACE(spelt.name);
        const auto project = layoutFromBytes(spelt.bytes);
        if (!project) continue;
        const auto read = readProject(writeProject(*project));
        ASSERT_TRUE(read) << read.error().pointer << ' ' << read.error().sentence;
        EXPECT_EQ(*read, *project);
    }
}

}  // namespace
}  // namespace kerfwall::oracle
